"""A knitter with a needle and no arithmetic: works row bodies stitch by stitch.

It shares nothing with the compiler. A body is cut into words and unrolled, then worked over a
list of loops; a fill is worked again and again until only the stitches that the rest of the row
needs are left. It reads the part of the notation that the corpus in `patterns` uses.
"""

from __future__ import annotations

import re
from collections.abc import Iterator
from dataclasses import dataclass, field
from fractions import Fraction
from functools import lru_cache
from math import floor


class CannotWork(Exception):
    """The row cannot be worked over the stitches that hang there; `line` is the row's (from 1)."""

    line: int = 0


class CannotRead(Exception):
    """A line that this small reader does not know."""


@dataclass(eq=False, slots=True)
class Marker:
    """A ring on the needle."""


@dataclass(eq=False, slots=True)
class Loop:
    """A stitch on the needle."""


STITCH = Loop()  # one stands for all: nothing tells them apart
Needle = list[Loop | Marker]


@dataclass(frozen=True, slots=True)
class Fill:
    """Words to be worked as often as they fit."""

    words: tuple[Word, ...]


@dataclass(frozen=True, slots=True)
class Word:
    """One stitch: how many loops it takes and makes, or a marker word (``pm``, ``sm``, ``rm``)."""

    text: str
    takes: int = 0
    makes: int = 0
    is_marker: bool = False


Own = dict[str, tuple[int, int]]
"""A file's own stitches: word to (takes, makes)."""

_TAKES_MAKES: dict[str, tuple[int, int]] = {
    "k": (1, 1), "p": (1, 1), "sl": (1, 1),
    "yo": (0, 1), "m1": (0, 1), "m1l": (0, 1), "m1r": (0, 1), "m1p": (0, 1),
    "kfb": (1, 2), "pfb": (1, 2),
    "ssk": (2, 1), "ssp": (2, 1), "skp": (2, 1),
    "sssk": (3, 1), "sk2p": (3, 1), "s2kp": (3, 1), "cdd": (3, 1),
    "drop": (1, 0), "bo": (1, 0), "co": (0, 1), "rt": (2, 2), "lt": (2, 2),
}  # fmt: skip
_MODIFIERS = ("wyif", "wyib", "kwise", "pwise", "tbl")
_TOKEN = re.compile(r"[a-z][\w]*(?:/\d+)*|\d+(?:/\d+)*|[*()]|[,\s]+")


def _number(text: str, size: int) -> int:
    parts = [int(part) for part in text.split("/")]
    return parts[0] if len(parts) == 1 else parts[size]


def _words_of(text: str, own: Own, size: int) -> list[Word]:
    """A token such as ``k2tog``, ``k12`` or ``k10/12`` as single stitches."""
    if text in ("pm", "sm", "rm"):
        return [Word(text, is_marker=True)]
    for known in (own, _TAKES_MAKES):
        if text in known:
            return [Word(text, *known[text])]
    together = re.fullmatch(r"([kp](\d+)tog)(\d*)", text)
    if together:
        return [Word(together[1], int(together[2]), 1)] * int(together[3] or 1)
    cable = re.fullmatch(r"c(\d+)[fb]", text)
    if cable:
        return [Word(text, int(cable[1]), int(cable[1]))]
    counted = re.fullmatch(r"([a-z]\w*?)(\d+(?:/\d+)*)", text)
    if counted and (counted[1] in own or counted[1] in _TAKES_MAKES):
        takes, makes = own.get(counted[1]) or _TAKES_MAKES[counted[1]]
        return [Word(counted[1], takes, makes)] * _number(counted[2], size)
    raise CannotRead(f"stitch {text!r}")


def read_body(body: str, own: Own | None = None, size: int = 0) -> list[Word | Fill]:
    """Cut a body into single stitches and fills, with every group unrolled."""
    return list(_read_body(body, tuple((own or {}).items()), size))


@lru_cache(maxsize=1000)
def _read_body(
    body: str, own: tuple[tuple[str, tuple[int, int]], ...], size: int
) -> tuple[Word | Fill, ...]:
    text = body.strip().lower().replace("×", "x")
    tokens: list[str] = []
    at = 0
    while at < len(text):
        match = _TOKEN.match(text, at)
        if match is None:
            raise CannotRead(f"{text[at:]!r} in {body!r}")
        if match[0].strip(", \t"):
            tokens.append(match[0])
        at = match.end()
    if tokens in (["knit"], ["purl"]):
        return (Fill((Word(tokens[0][0], 1, 1),)),)
    steps, end = _read_steps(tokens, 0, dict(own), size, "")
    if end != len(tokens):
        raise CannotRead(f"{tokens[end]!r} in {body!r}")
    return tuple(steps)


def _read_steps(
    tokens: list[str], at: int, own: Own, size: int, closes: str
) -> tuple[list[Word | Fill], int]:
    steps: list[Word | Fill] = []
    while at < len(tokens) and tokens[at] != closes:
        token = tokens[at]
        if token == "*":
            inner, at = _read_steps(tokens, at + 1, own, size, "*")
            if at >= len(tokens):
                raise CannotRead("a fill that does not close")
            steps.append(Fill(tuple(_only_words(inner))))
            at += 1
        elif token == "(":
            inner, at = _read_steps(tokens, at + 1, own, size, ")")
            if at >= len(tokens):
                raise CannotRead("a group that does not close")
            group, at = _tail(tokens, at + 1, inner, size)
            steps += group
        elif token == ")":
            raise CannotRead("a group that does not open")
        elif token in _MODIFIERS:
            at += 1
        else:
            steps += _words_of(token, own, size)
            at += 1
    return steps, at


def _only_words(steps: list[Word | Fill]) -> Iterator[Word]:
    for step in steps:
        if isinstance(step, Fill):
            raise CannotRead("a fill inside a fill")
        yield step


def _tail(
    tokens: list[str], at: int, inner: list[Word | Fill], size: int
) -> tuple[list[Word | Fill], int]:
    """What stands behind a group: ``x4``, or ``in 1``, or nothing."""
    following = tokens[at] if at < len(tokens) else ""
    times = re.fullmatch(r"x(\d+(?:/\d+)*)", following)
    if times:
        return inner * _number(times[1], size), at + 1
    if following == "x":
        return inner * _number(tokens[at + 1], size), at + 2
    if following == "in":
        into = _number(tokens[at + 1], size)
        made = sum(word.makes for word in _only_words(inner))
        return [Word("in", into, made)], at + 2
    return inner, at


def work_row(steps: list[Word | Fill], needle: Needle) -> Needle:
    """Work a row over a needle, the first stitch to be met first; gives the other needle.

    Raises `CannotWork` where stitches are missing or left over, a fill does not come out, or a
    marker is not where it should be.
    """
    left = list(reversed(needle))  # the next loop is the last of the list
    right: Needle = []
    speaks_of_markers = any(isinstance(s, Word) and s.is_marker for s in steps)
    rings = stitches(needle) < len(needle)
    hands = _Hands(left, right, speaks_of_markers, rings)
    for at, step in enumerate(steps):
        if isinstance(step, Fill):
            hands.fill(step, steps[at + 1 :])
        else:
            hands.work(step)
    if not speaks_of_markers:
        hands.slip_markers()
    if left:
        raise CannotWork(f"{len(left)} left on the needle")
    return right


@dataclass(slots=True)
class _Hands:
    left: Needle
    right: Needle
    speaks_of_markers: bool
    rings: bool

    def slip_markers(self) -> None:
        while self.left and isinstance(self.left[-1], Marker):
            self.right.append(self.left.pop())

    def work(self, word: Word) -> None:
        if word.is_marker:
            if word.text == "pm":
                self.right.append(Marker())
                return
            if not self.left or not isinstance(self.left[-1], Marker):
                raise CannotWork(f"no marker to {word.text}")
            ring = self.left.pop()
            if word.text == "sm":
                self.right.append(ring)
            return
        if self.rings and not self.speaks_of_markers:
            if word.takes != word.makes:
                raise CannotWork(f"{word.text} moves stitches past a marker unsaid")
            for _ in range(word.takes):
                self.slip_markers()
                if not self.left:
                    raise CannotWork(f"no stitch left for {word.text}")
                self.right.append(self.left.pop())
            return
        left, right = self.left, self.right
        for _ in range(word.takes):
            if not left:
                raise CannotWork(f"no stitch left for {word.text}")
            if left.pop() is not STITCH:
                raise CannotWork(f"a marker in the way of {word.text}")
        for _ in range(word.makes):
            right.append(STITCH)

    def fill(self, fill: Fill, rest: list[Word | Fill]) -> None:
        needed = _stitches_up_to_marker(rest)
        if not any(word.takes for word in fill.words):
            raise CannotWork("a fill that takes no stitch never ends")
        hanging = self._before_marker()
        while hanging > needed:
            for word in fill.words:
                self.work(word)
                hanging -= word.takes
        if hanging < needed:
            raise CannotWork("the fill does not come out even")

    def _before_marker(self) -> int:
        """The loops up to the next ring that this row has to name, or to the end."""
        if not self.speaks_of_markers:
            return stitches(self.left)
        count = 0
        for x in reversed(self.left):
            if isinstance(x, Marker):
                break
            count += 1
        return count


def _stitches_up_to_marker(steps: list[Word | Fill]) -> int:
    needed = 0
    for step in steps:
        if isinstance(step, Fill):
            raise CannotWork("two fills with no marker between them")
        if step.text in ("sm", "rm"):
            break
        needed += step.takes
    return needed


def stitches(needle: Needle) -> int:
    return needle.count(STITCH)


# --- whole files ---------------------------------------------------------------------------------


@dataclass(frozen=True, slots=True)
class RowText:
    """A body and the writer's claim behind ``=>`` (empty where there is none)."""

    body: str
    claim: str
    line: int = 0

    @staticmethod
    def of(text: str, line: int = 0) -> RowText:
        body, _, claim = text.partition("=>")
        return RowText(body.strip(), claim.strip().replace(" ", ""), line)


class Line(str):
    """A line of the source that knows its number, counted from 1."""

    number: int = 0


@dataclass(slots=True)
class MotifText:
    """A motif as text: its rows in order."""

    name: str
    form: tuple[int, int] | None
    starts_ws: bool
    rows: list[RowText] = field(default_factory=list)


@dataclass(slots=True)
class FileText:
    """A source cut into lines of motifs and of its one piece."""

    motifs: dict[str, MotifText]
    own: Own
    in_round: bool
    starts_ws: bool
    lines: list[Line]
    measures: dict[str, str]


def parse_form(text: str) -> tuple[int, int]:
    """``18n`` or ``6n + 5`` or ``12`` as (stitches for each n, stitches besides)."""
    compact = text.replace(" ", "").replace("−", "-").lower()
    match = re.fullmatch(r"(?:(\d*)n)?([+-]?\d+)?", compact)
    if match is None or not compact:
        raise CannotRead(f"form {text!r}")
    unit = 0 if match[1] is None else int(match[1] or 1)
    return unit, int(match[2] or 0)


_ROW = re.compile(r"(rows?|rounds?)\s*([\d\s,/-]*)(?:in\s+\w+\s*)?:\s*(.*)")
_EVERY = re.compile(r"every\s+(?:(rs|ws|even|odd)\s+)?(?:row|round)\s*(?:in\s+\w+\s*)?:\s*(.*)")
_MOTIF = re.compile(r"motif\s+([\w-]+)(?:\s+over\s+([\dn+ -]+?))?(\s+starts ws)?\s*")


def _numbers(text: str) -> list[int]:
    numbers: list[int] = []
    for part in text.split(","):
        ends = [int(x) for x in part.split("-")]
        numbers += range(ends[0], ends[-1] + 1)
    return numbers


def read_file(text: str) -> FileText:
    """Read a source of the corpus. Raises `CannotRead` where a line is not known."""
    motif_blocks: list[tuple[MotifText, list[Line]]] = []
    file = FileText({}, {}, False, False, [], {})
    where: list[Line] | None = None
    for number, raw in enumerate(text.splitlines(), 1):
        line = raw.split("--")[0].strip()
        lowered = Line(line.lower())
        lowered.number = number
        if not line:
            continue
        first = lowered.split()[0]
        if first == "motif":
            match = _MOTIF.fullmatch(lowered)
            if match is None:
                raise CannotRead(line)
            form = parse_form(match[2]) if match[2] else None
            motif_blocks.append((MotifText(match[1], form, bool(match[3])), []))
            where = motif_blocks[-1][1]
        elif first == "piece":
            if file.lines:
                raise CannotRead("a second piece")
            file.in_round = "round" in lowered.split()[2:]
            file.starts_ws = lowered.endswith("starts ws")
            where = file.lines
            where.append(lowered)
        elif first == "stitch":
            match = re.match(r"stitch (\w+).*takes (\d+), makes (\d+)", lowered)
            if match is None:
                raise CannotRead(line)
            file.own[match[1]] = (int(match[2]), int(match[3]))
        elif first in ("yarn", "shade", "strand", "pattern"):
            where = None
        elif first in ("note", "section") and where is not None:
            continue
        elif where is None:
            file.measures[first] = lowered
        elif first == "edge":
            continue
        else:
            where.append(lowered)
    for motif, lines in motif_blocks:
        motif.rows = _motif_rows(motif, lines)
        file.motifs[motif.name] = motif
    return file


def _motif_rows(motif: MotifText, lines: list[Line]) -> list[RowText]:
    given: dict[int, RowText] = {}
    every: dict[str, RowText] = {}
    for line in lines:
        match = _EVERY.fullmatch(line)
        if match:
            every[match[1] or "all"] = RowText.of(match[2], line.number)
            continue
        match = _ROW.fullmatch(line)
        if match is None:
            raise CannotRead(line)
        for number in _numbers(match[2]):
            if number in given:
                raise CannotRead(f"row {number} of {motif.name} twice")
            given[number] = RowText.of(match[3], line.number)
    last = max(given, default=0)
    if not given:
        last = 1 if set(every) == {"all"} else 2
    elif last % 2 == 1 and set(every) & {"ws", "even", "rs", "odd"}:
        last += _given_by(last + 1, every, motif.starts_ws) is not None
    rows: list[RowText] = []
    for number in range(1, last + 1):
        row = given.get(number) or _given_by(number, every, motif.starts_ws)
        body = row.body if row else ""
        for _ in lines:
            if body.startswith("as "):
                target = int(body.split()[-1])
                other = given.get(target) or _given_by(target, every, motif.starts_ws)
                body = other.body if other else ""
        if row is None or not body or body.startswith("as "):
            raise CannotRead(f"no row {number} in {motif.name}")
        rows.append(RowText(body, row.claim, row.line))
    return rows


def _given_by(number: int, every: dict[str, RowText], starts_ws: bool) -> RowText | None:
    odd = number % 2 == 1
    for word in ("odd" if odd else "even", "rs" if odd != starts_ws else "ws", "all"):
        if word in every:
            return every[word]
    return None


@dataclass(slots=True)
class Knitting:
    """The needle as it stands; after each row so far, its count and whether it was on the RS."""

    needle: Needle
    own: Own
    in_round: bool = False
    rs_next: bool = True
    size: int = 0
    counts: list[int] = field(default_factory=list)
    right_sides: list[bool] = field(default_factory=list)
    read: dict[str, list[Word | Fill]] = field(default_factory=dict)

    def work(self, row: RowText) -> None:
        """Work the next row. Raises `CannotWork`, also where the claim is wrong."""
        try:
            self._work(row)
        except CannotWork as error:
            error.line = row.line
            raise

    def _work(self, row: RowText) -> None:
        if row.body not in self.read:
            self.read[row.body] = read_body(row.body, self.own, self.size)
        before = stitches(self.needle)
        made = work_row(self.read[row.body], self.needle)
        self.needle = made if self.in_round else made[::-1]
        count = stitches(made)
        self.counts.append(count)
        self.right_sides.append(self.in_round or self.rs_next)
        self.rs_next = not self.rs_next
        if row.claim:
            sign = row.claim[0] if row.claim[0] in "+-" else ""
            said = _number(row.claim.lstrip("+-"), self.size)
            wanted = {"": said, "+": before + said, "-": before - said}[sign]
            if count != wanted:
                raise CannotWork(f"{count} stitches where {row.claim} is claimed")


def cast_on(count: int) -> Needle:
    return [STITCH] * count


def works_on(motif: MotifText, count: int, own: Own, in_round: bool = False) -> bool:
    """Whether every row of a motif can be worked, one after the other, from `count` stitches."""
    knitting = Knitting(cast_on(count), own, in_round)
    try:
        for row in motif.rows:
            knitting.work(RowText(row.body, ""))
    except CannotWork:
        return False
    return True


@dataclass(frozen=True, slots=True)
class Knitted:
    """A whole piece: what was cast on, and each row's count and side."""

    cast_on: int
    counts: list[int]
    right_sides: list[bool]


def knit_file(text: str, size: int = 0) -> Knitted:
    """Knit the piece of a source. Raises `CannotWork` where it cannot be done as written."""
    file = read_file(text)
    work: Knitting | None = None
    first = 0
    for line in file.lines[1:]:
        try:
            if line.startswith("cast on"):
                first = _cast_on(line, file, size)
                work = Knitting(cast_on(first), file.own, file.in_round, not file.starts_ws, size)
                continue
            if work is None:
                raise CannotRead(f"{line!r} before the cast-on")
            if line.startswith("bind off"):
                return Knitted(first, work.counts, work.right_sides)
            _piece_line(line, file, work)
        except CannotWork as error:
            error.line = error.line or line.number
            raise
    raise CannotRead("the piece is never bound off")


def _piece_line(line: Line, file: FileText, work: Knitting) -> None:
    if line == "join round":
        work.in_round = True
    elif line.startswith("work "):
        _work(line, file, work)
    else:
        match = _ROW.fullmatch(line)
        if match is None:
            raise CannotRead(line)
        row = RowText.of(match[3], line.number)
        for _ in range(_number(match[2].strip() or "1", work.size)):
            work.work(row)


def _cast_on(line: str, file: FileText, size: int) -> int:
    if "for width" not in line:
        return _number(line.split()[2], size)
    # The count nearest to the width that the motifs can take, found by trying one after another.
    per_cm = _gauge(file)[0]
    wanted = _centimetres(file.measures["width"], size) * per_cm
    near = range(max(floor(wanted) - 100, 1), floor(wanted) + 102)
    for count in sorted(near, key=lambda n: (abs(n - wanted), -n)):
        if all(_takes(m, count, file) for m in file.motifs.values()):
            return count
    raise CannotWork("no count near the width")


def _takes(motif: MotifText, count: int, file: FileText) -> bool:
    return _on_form(motif, count) and works_on(motif, count, file.own, file.in_round)


def _on_form(motif: MotifText, count: int) -> bool:
    """Whether a count is on a motif's form for some n from 1 on, tried one after another."""
    if motif.form is None:
        return True
    unit, fixed = motif.form
    return any(unit * n + fixed == count for n in range(1, count + 2))


def _gauge(file: FileText) -> tuple[Fraction, Fraction]:
    """Stitches and rows to a centimetre."""
    match = re.match(
        r"gauge (\d+) stitches (\d+) (?:rows|rounds) = (\d+) (cm|in)", file.measures["gauge"]
    )
    if match is None:
        raise CannotRead(file.measures["gauge"])
    over = int(match[3]) * _CENTIMETRES[match[4]]
    return int(match[1]) / over, int(match[2]) / over


_CENTIMETRES = {"cm": Fraction(1), "in": Fraction(254, 100)}


def _centimetres(measure: str, size: int) -> Fraction:
    """The length of a line such as ``width 28/34 in``."""
    match = re.match(r"(?:width|length) ([\d/]+) (cm|in)$", measure)
    if match is None:
        raise CannotRead(measure)
    return _number(match[1], size) * _CENTIMETRES[match[2]]


def _work(line: str, file: FileText, work: Knitting) -> None:
    words = line.split()
    motif = file.motifs[words[1]]
    rows, size = motif.rows, work.size
    if not _on_form(motif, stitches(work.needle)):
        raise CannotWork(f"{stitches(work.needle)} stitches are not on the form of {motif.name}")
    amount = " ".join(words[2:])

    def once() -> None:
        for row in rows:
            work.work(row)

    times = re.fullmatch(r"x\s?(\d+(?:/\d+)*)", amount)
    for_rows = re.fullmatch(r"for (\d+(?:/\d+)*) (?:rows|rounds)", amount)
    until = re.fullmatch(r"until (\d+(?:/\d+)*) stitches", amount)
    to = re.fullmatch(r"to (?:length|(\d+(?:/\d+)*) cm)(?: - (\d+) rows)?", amount)
    if times:
        for _ in range(_number(times[1], size)):
            once()
    elif for_rows:
        for at in range(_number(for_rows[1], size)):
            work.work(rows[at % len(rows)])
    elif until:
        target = _number(until[1], size)
        for _ in range(1000):
            if stitches(work.needle) == target:
                return
            once()
        raise CannotWork(f"{target} stitches are never reached")
    elif to:
        length = f"length {to[1]} cm" if to[1] else file.measures["length"]
        wanted = _centimetres(length, size) * _gauge(file)[1] - int(to[2] or 0)
        for _ in range(floor((wanted - len(work.counts)) / len(rows) + Fraction(1, 2))):
            once()
    else:
        raise CannotRead(line)
