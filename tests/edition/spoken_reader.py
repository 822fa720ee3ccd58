"""Readers of the spoken edition: what its lines take from the left needle and put on the right.

They know the sentences of a language and nothing of the project. Rows that stop at a marker or a
gap are not understood: where those are, no row says.
"""

from __future__ import annotations

import re
from collections.abc import Callable
from dataclasses import dataclass

Counts = tuple[int, int]  # stitches taken off the left needle, stitches made


class NotUnderstood(AssertionError):
    """A line that the reader does not know."""


@dataclass(frozen=True)
class Tongue:
    """How a language says it: patterns of lines in small letters, without their last point."""

    label: str  # first, last
    count: str  # the number
    strand: str
    whole: tuple[str, ...]
    repeat: tuple[str, ...]  # each with the groups takes (or none), times, steps
    times: str  # the beginning of steps that are worked so often
    each: str  # number, one step
    then: str  # ends such steps, where others follow
    until: tuple[str, ...]  # with a group left (or none): plain stitches
    until_steps: tuple[str, ...]  # with the groups left (or none) and steps
    turns: str
    steps: tuple[tuple[str, Callable[..., Counts]], ...]


def same(number: str) -> Counts:
    return int(number), int(number)


def to_one(number: str) -> Counts:
    return int(number), 1


def made(number: str) -> Counts:
    return 0, int(number)


def times(takes: int, makes: int) -> Callable[[str | None], Counts]:
    def said(number: str | None) -> Counts:
        return takes * int(number or 1), makes * int(number or 1)

    return said


_EN = Tongue(
    label=r"(?:rows?|rounds?) (\d+)(?: to (\d+))?(?:, right side|, wrong side|, each the same)?",
    count=r"(\d+) stitch(?:es)?",
    strand="with strand ",
    whole=("knit every stitch", "purl every stitch"),
    repeat=(
        r"repeat the next (?P<takes>\d+) stitches (?P<times>\d+) times: (?P<steps>.*)",
        r"repeat the next stitch (?P<times>\d+) times: (?P<steps>.*)",
    ),
    times=r"(\d+) times: ",
    each=r"(?P<steps>.*), (?P<times>\d+) times",
    then=", then ",
    until=(r"(?:knit|purl) until (?P<left>\d+) (?:is|are) left", r"(?:knit|purl) to the end"),
    until_steps=(
        r"repeat until (?P<left>\d+) (?:is|are) left: (?P<steps>.*)",
        r"repeat to the end: (?P<steps>.*)",
    ),
    turns=r"(?:turn|wrap the next stitch and turn)",
    steps=(
        (r"(?:knit|purl) (\d+)(?: through the back loop)?", same),
        (r"slip (\d+)(?: with yarn in (?:front|back))?(?: (?:knit|purl)wise)?", same),
        (r"(?:knit|purl) (\d+) together(?: through the back loop)?", to_one),
        (
            r"slip, slip, (?:knit|purl) the 2 slipped stitches together(?:, (\d+) times)?",
            times(2, 1),
        ),
        (r"slip 1, knit 1, pass the slipped stitch over(?:, (\d+) times)?", times(2, 1)),
        (r"slip 1, knit 2 together, pass the slipped stitch over(?:, (\d+) times)?", times(3, 1)),
        (r"centred double decrease(?:, (\d+) times)?", times(3, 1)),
        (r"yarn over(?:, (\d+) times)?", times(0, 1)),
        (r"make 1(?: left| right| purlwise)?(?:, (\d+) times)?", times(0, 1)),
        (r"(?:knit|purl) into the front and back of the next stitch", lambda: (1, 2)),
        (
            r"(?:knit|purl) into the front and back of each of the next (\d+) stitches",
            times(1, 2),
        ),
        (r"(?:place a|slip the|remove the) marker", lambda: (0, 0)),
        (r"cable (\d+) (?:front|back)", same),
        (r"place the next (\d+) stitch(?:es)? on a holder for .*", times(1, 0)),
        (r"pick up and knit (\d+) stitch(?:es)?(?: along the .* edge)?", made),
        (r"cast on (\d+) stitch(?:es)?", made),
    ),
)
_DE = Tongue(
    label=r"(?:reihen?|runden?) (\d+)(?: bis (\d+))?(?:, hinreihe|, rückreihe|, alle gleich)?",
    count=r"(\d+) maschen?",
    strand="mit faden ",
    whole=("alle maschen rechts", "alle maschen links"),
    repeat=(
        r"die nächsten (?P<takes>\d+) maschen (?P<times>\d+)-mal wiederholen: (?P<steps>.*)",
        r"die nächste masche (?P<times>\d+)-mal wiederholen: (?P<steps>.*)",
    ),
    times=r"(\d+)-mal: ",
    each=r"(?P<times>\d+)-mal (?P<steps>.*)",
    then=", dann ",
    until=(
        r"(?:rechts|links) stricken, bis (?P<left>\d+) (?:masche übrig ist|maschen übrig sind)",
        r"(?:rechts|links) stricken bis zum ende",
    ),
    until_steps=(
        r"wiederholen, bis (?P<left>\d+) (?:masche übrig ist|maschen übrig sind): (?P<steps>.*)",
        r"wiederholen bis zum ende: (?P<steps>.*)",
    ),
    turns=r"(?:die nächste masche wickeln und )?wenden",
    steps=(
        (r"(\d+) maschen? (?:rechts|links)(?: verschränkt)?", same),
        (
            r"(\d+) maschen?(?: mit dem faden (?:vor|hinter) der arbeit"
            r"| wie zum (?:rechts|links)stricken)? abheben",
            same,
        ),
        (r"(\d+) maschen (?:rechts|links)(?: verschränkt)? zusammenstricken", to_one),
        (
            r"2 maschen einzeln wie zum rechtsstricken abheben und (?:rechts|links) verschränkt "
            r"zusammenstricken",
            lambda: (2, 1),
        ),
        (
            r"(?:(\d+)-mal: )?1 masche abheben, 1 masche rechts und die abgehobene masche "
            r"überziehen",
            times(2, 1),
        ),
        (
            r"(?:(\d+)-mal: )?1 masche abheben, 2 maschen rechts zusammenstricken und die "
            r"abgehobene masche überziehen",
            times(3, 1),
        ),
        (r"(\d+) zentrierte doppelte abnahmen?", times(3, 1)),
        (r"(\d+) umschl[aä]ge?", made),
        (r"1 (?:linke )?masche aus dem querfaden (?:nach \w+ geneigt )?zunehmen", lambda: (0, 1)),
        (r"die nächste masche erst \w+ und dann \w+ verschränkt stricken", lambda: (1, 2)),
        (r"die nächsten (\d+) maschen je erst \w+ und dann \w+ verschränkt stricken", times(1, 2)),
        (r"(?:einen|den) maschenmarkierer (?:setzen|abheben|entfernen)", lambda: (0, 0)),
        (r"zopf über (\d+) maschen, die zopfnadel (?:vor|hinter) der arbeit", same),
        (r"die nächsten (\d+) maschen für .* stilllegen", times(1, 0)),
        (r"(\d+) maschen?(?: entlang der kante \(.*\))? auffassen und rechts stricken", made),
        (r"(\d+) maschen? anschlagen", made),
    ),
)
_FR = Tongue(
    label=r"(?:rangs?|tours?) (\d+)(?: à (\d+))?(?:, sur l’endroit|, sur l’envers|, tous pareils)?",
    count=r"(\d+) mailles?",
    strand="avec le brin ",
    whole=("tricoter toutes les mailles à l’endroit", "tricoter toutes les mailles à l’envers"),
    repeat=(
        r"répéter (?P<times>\d+) fois les (?P<takes>\d+) mailles suivantes : (?P<steps>.*)",
        r"répéter (?P<times>\d+) fois la maille suivante : (?P<steps>.*)",
    ),
    times=r"(\d+) fois : ",
    each=r"(?P<times>\d+) fois (?P<steps>.*)",
    then=", puis ",
    until=(
        r"tricoter à l’(?:endroit|envers) jusqu’à ce qu’il reste (?P<left>\d+) mailles?",
        r"tricoter à l’(?:endroit|envers) jusqu’à la fin",
    ),
    until_steps=(
        r"répéter jusqu’à ce qu’il reste (?P<left>\d+) mailles? : (?P<steps>.*)",
        r"répéter jusqu’à la fin : (?P<steps>.*)",
    ),
    turns=r"(?:envelopper la maille suivante et )?tourner",
    steps=(
        (r"(\d+) mailles? (?:endroit|envers)(?: torse)?", same),
        (
            r"glisser (\d+) mailles?(?: avec le fil (?:devant|derrière)"
            r"| comme à l’(?:endroit|envers))?",
            same,
        ),
        (
            r"(\d+) mailles ensemble à l’(?:endroit|envers)(?: par le brin arrière)?",
            to_one,
        ),
        (
            r"glisser 2 mailles une à une comme à l’endroit et les tricoter ensemble à "
            r"l’(?:endroit|envers) par le brin arrière",
            lambda: (2, 1),
        ),
        (
            r"(?:(\d+) fois : )?glisser 1 maille, 1 maille endroit et rabattre la maille glissée",
            times(2, 1),
        ),
        (
            r"(?:(\d+) fois : )?glisser 1 maille, 2 mailles ensemble à l’endroit et rabattre la "
            r"maille glissée",
            times(3, 1),
        ),
        (r"(\d+) doubles? diminutions? centrées?", times(3, 1)),
        (r"(\d+) jetés?", made),
        (r"(\d+) augmentations? intercalaires?(?: à \w+| à l’envers)?", made),
        (
            r"tricoter la maille suivante à l’(?:endroit|envers) par devant puis par derrière",
            lambda: (1, 2),
        ),
        (
            r"tricoter chacune des (\d+) mailles suivantes à l’(?:endroit|envers) par devant puis "
            r"par derrière",
            times(1, 2),
        ),
        (r"(?:placer un|glisser le|retirer le) marqueur", lambda: (0, 0)),
        (r"torsade sur (\d+) mailles, l’aiguille auxiliaire (?:devant|derrière)", same),
        (r"mettre les (\d+) mailles suivantes en attente pour .*", times(1, 0)),
        (r"relever (\d+) mailles? à l’endroit(?: le long du bord \(.*\))?", made),
        (r"monter (\d+) mailles?", made),
    ),
)
_ES = Tongue(
    label=r"(?:hileras?|vueltas?) (\d+)(?: a (\d+))?"
    r"(?:, por el derecho|, por el revés|, todas iguales)?",
    count=r"(\d+) puntos?",
    strand="con la hebra ",
    whole=("tejer todos los puntos del derecho", "tejer todos los puntos del revés"),
    repeat=(
        r"repetir (?P<times>\d+) veces los (?P<takes>\d+) puntos siguientes: (?P<steps>.*)",
        r"repetir (?P<times>\d+) veces el punto siguiente: (?P<steps>.*)",
    ),
    times=r"(\d+) veces: ",
    each=r"(?P<times>\d+) veces (?P<steps>.*)",
    then=", luego ",
    until=(
        r"tejer del (?:derecho|revés) hasta que (?:quede|queden) (?P<left>\d+) puntos?",
        r"tejer del (?:derecho|revés) hasta el final",
    ),
    until_steps=(
        r"repetir hasta que (?:quede|queden) (?P<left>\d+) puntos?: (?P<steps>.*)",
        r"repetir hasta el final: (?P<steps>.*)",
    ),
    turns=r"(?:envolver el punto siguiente y )?girar",
    steps=(
        (r"(\d+) puntos?(?: retorcidos?)? del (?:derecho|revés)", same),
        (
            r"deslizar (\d+) puntos?(?: con la hebra (?:delante|detrás)"
            r"| como del (?:derecho|revés))?",
            same,
        ),
        (r"(\d+) puntos juntos del (?:derecho|revés)(?: por la hebra de atrás)?", to_one),
        (
            r"deslizar 2 puntos de uno en uno como del derecho y tejerlos juntos del "
            r"(?:derecho|revés) por la hebra de atrás",
            lambda: (2, 1),
        ),
        (
            r"(?:(\d+) veces: )?deslizar 1 punto, 1 punto del derecho y pasar el punto deslizado "
            r"por encima",
            times(2, 1),
        ),
        (
            r"(?:(\d+) veces: )?deslizar 1 punto, 2 puntos juntos del derecho y pasar el punto "
            r"deslizado por encima",
            times(3, 1),
        ),
        (r"(\d+) disminuci(?:ón|ones) dobles? centradas?", times(3, 1)),
        (r"(\d+) lazadas?", made),
        (r"(\d+) aumentos? intercalados?(?: a la \w+| del revés)?", made),
        (r"tejer el punto siguiente del \w+ por delante y por detrás", lambda: (1, 2)),
        (
            r"tejer cada uno de los (\d+) puntos siguientes del \w+ por delante y por detrás",
            times(1, 2),
        ),
        (r"(?:colocar un|pasar el|quitar el) marcador", lambda: (0, 0)),
        (r"trenza de (\d+) puntos, la aguja auxiliar por (?:delante|detrás)", same),
        (r"dejar los (\d+) puntos siguientes en espera para .*", times(1, 0)),
        (r"recoger y tejer (\d+) puntos? del derecho(?: a lo largo del borde \(.*\))?", made),
        (r"montar (\d+) puntos?", made),
    ),
)
TONGUES = {"en": _EN, "de": _DE, "fr": _FR, "es": _ES}


def plain(line: str) -> str:
    return line.replace("\u00a0", " ").strip().removesuffix(".").lower()


def _one(text: str, tongue: Tongue) -> Counts:
    for pattern, said in tongue.steps:
        match = re.fullmatch(pattern, text)
        if match:
            return said(*match.groups())
    match = re.fullmatch(tongue.each, text)
    if match:
        takes, makes = _one(match["steps"], tongue)
        return takes * int(match["times"]), makes * int(match["times"])
    raise NotUnderstood(text)


def _run(text: str, tongue: Tongue) -> Counts:
    """Steps said in one breath."""
    takes, makes, rest = _sequence(text, tongue)
    if rest:
        raise NotUnderstood(text)
    return takes, makes


def _sequence(text: str, tongue: Tongue) -> tuple[int, int, str]:
    """Steps up to the word that ends them, and what follows that word."""
    takes = makes = 0
    while text:
        end = _longest(text, tongue)
        if end:
            a, b = _one(text[:end], tongue)
            takes, makes, text = takes + a, makes + b, text[end:]
            if text.startswith(tongue.then):
                return takes, makes, text.removeprefix(tongue.then)
            text = text.removeprefix(", ")
            continue
        match = re.match(tongue.times, text)
        if match is None:
            raise NotUnderstood(text)
        a, b, text = _sequence(text[match.end() :], tongue)
        takes, makes = takes + a * int(match[1]), makes + b * int(match[1])
    return takes, makes, ""


def _longest(text: str, tongue: Tongue) -> int:
    """Where the longest start of `text` ends that is one step (some hold commas); 0: none is."""
    for end in sorted({len(text), *(m.start() for m in re.finditer(", ", text))}, reverse=True):
        try:
            _one(text[:end], tongue)
        except NotUnderstood:
            continue
        return end
    return 0


def read_line(text: str, have: int, tongue: Tongue) -> Counts:
    """What a line of a row takes and makes, of `have` stitches that are left."""
    if text in tongue.whole:
        return have, have
    for pattern in tongue.repeat:
        match = re.fullmatch(pattern, text)
        if match:
            takes, makes = _run(match["steps"], tongue)
            assert takes == int(match.groupdict().get("takes") or 1), text
            return takes * int(match["times"]), makes * int(match["times"])
    for pattern in tongue.until:
        match = re.fullmatch(pattern, text)
        if match:
            number = have - int(match.groupdict().get("left") or 0)
            return number, number
    for pattern in tongue.until_steps:
        match = re.fullmatch(pattern, text)
        if match:
            cover = have - int(match.groupdict().get("left") or 0)
            takes, makes = _run(match["steps"], tongue)
            assert cover % takes == 0, f"{text}: {cover} by {takes}"
            return cover, cover // takes * makes
    return _run(text, tongue)


@dataclass(frozen=True)
class SaidRow:
    """A row as it is said: its numbers, its lines, and the count after it."""

    first: int
    last: int
    lines: tuple[str, ...]
    count: int


def rows_of(text: str, tongue: Tongue) -> list[SaidRow]:
    """The rows of a spoken edition that have a number."""
    found = []
    for block in text.split("\n\n"):
        lines = [plain(line) for line in block.splitlines()]
        label = re.fullmatch(tongue.label, lines[0])
        count = re.fullmatch(tongue.count, lines[-1])
        if label is None:
            continue
        assert count, f"no count: {block}"
        steps = tuple(line for line in lines[1:-1] if not line.startswith(tongue.strand))
        first = int(label[1])
        found.append(SaidRow(first, int(label[2] or first), steps, int(count[1])))
    return found


def turns(row: SaidRow, tongue: Tongue) -> bool:
    """Whether a row is turned before its end."""
    return any(re.fullmatch(tongue.turns, line) for line in row.lines)


def read_row(row: SaidRow, have: int, tongue: Tongue, short: bool = False) -> int:
    """How many stitches are on the needle after a row. Raises AssertionError where it is wrong.

    `short`: the row before it was turned, so that some of what is there lies behind it.
    """
    left, new = have, 0
    for line in row.lines:
        if re.fullmatch(tongue.turns, line):
            return left + new
        takes, makes = read_line(line, left, tongue)
        left, new = left - takes, new + makes
    assert left == 0 or short, f"{left} are left: {row}"
    assert left >= 0, f"{-left} are missing: {row}"
    return left + new
