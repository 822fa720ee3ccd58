"""How a pattern says its rows: the one place where the sentences of the instructions stand.

`PieceWriter` and `Phraser` know what is worked and how often; a voice makes the words of it. This
one is the trade's printed English; other voices say the same in other words.
"""

from __future__ import annotations

from collections.abc import Callable, Sequence

from loopwright.edition.catalogue import ENGLISH, Catalogue
from loopwright.edition.numbers import in_words, sized
from loopwright.model.stitch import Stitch
from loopwright.record import dataclass, field

_SINGLE = {"k", "p", "sl"}  # printed with their count: k2
# Of these nobody asks how many stitches they take and make.
_PLAIN_KINDS = {"marker", "turn", "slip", "bind", "cast", "drop"}
_COUNTED_KINDS = {"bind", "cast", "drop"}
MODIFIERS = {
    "wyif": "with yarn in front",
    "wyib": "with yarn in back",
    "kwise": "knitwise",
    "pwise": "purlwise",
    "tbl": "through the back loop",
}


@dataclass(slots=True)
class Used:
    """The abbreviations that were printed: what they mean, and what the stitch takes and makes.

    They are those of a `catalogue`: the words of one language.
    """

    catalogue: Catalogue = ENGLISH
    found: dict[str, tuple[str, str]] = field(default_factory=dict)

    def term(self, *names: str) -> None:
        """General words of the trade: st, sts, rep, RS …"""
        for name in names:
            short, meaning = self.catalogue.term(name)
            if meaning:
                self.found.setdefault(short, (meaning, ""))

    def stitch(self, stitch: Stitch, between: str = "") -> None:
        plain = stitch.word in ("k", "p") or stitch.kind in _PLAIN_KINDS
        note = ""
        if not plain:
            say = self.catalogue.say
            note = say("takes {takes}, makes {makes}", takes=stitch.takes, makes=stitch.makes)
        short, meaning = self.catalogue.stitch(stitch, between)
        self.found.setdefault(bare(short), (meaning, note))

    def modifier(self, word: str) -> None:
        short, meaning = self.catalogue.modifier(word, MODIFIERS[word])
        self.found.setdefault(short, (meaning, ""))


def bare(short: str) -> str:
    """An abbreviation without the place of its number: ``M re`` of ``{n} M re``."""
    return " ".join(short.replace("{n}", " ").split())


@dataclass(frozen=True, slots=True)
class Unit:
    """A fill as it is said.

    `units` are its steps in words, `takes` the stitches of one repeat, `only` its one plain
    stitch (k or p) where it is no more than that. `often` is how often it is worked where that
    is one number; `left` are the stitches that follow it (one number a size) up to `place`: the
    end, a ``marker`` or the ``gap``.
    """

    units: tuple[str, ...]
    takes: int
    only: Stitch | None
    often: int | None
    left: tuple[int, ...]
    place: str


class Voice:
    """The printed English of the trade, with its abbreviations; notes in `used` what it used.

    With another `catalogue` the same sentences come in another language. Every message is a
    whole sentence or a part that keeps its place, so that a catalogue can turn its words round.
    """

    all_counts = False
    """Whether the count is said after every row, even where it stays."""
    written_out = False
    """Whether every row of a motif is given in its place, none by "every foll" or by its number."""
    then = " "
    """What stands between two sentences of one instruction."""

    def __init__(self, catalogue: Catalogue = ENGLISH) -> None:
        self.catalogue = catalogue
        self.used = Used(catalogue)

    def t(self, message: str, **parts: object) -> str:
        """A message in the catalogue's language, with its parts put in."""
        return self.catalogue.say(message, **parts)

    def several(self, message: str, values: Sequence[int], **parts: object) -> str:
        """A message with amounts as of `amount`: other languages have a form for one alone."""
        number = 1 if set(values) == {1} else 2
        return self.catalogue.many(message, message, number, **self.amount(values), **parts)

    def sized(self, values: Sequence[int], show: Callable[[int], str] = str) -> str:
        """``180 (240, 300)``, parted as the language parts numbers."""
        return sized(values, show, self.catalogue.between_sizes)

    def number(self, number: int) -> str:
        """``seven``; a figure where the trade, or the language, writes one."""
        return in_words(number) if self.catalogue.in_words else str(number)

    # --- stitches -------------------------------------------------------------

    def sts(self, values: Sequence[int]) -> str:
        """``st`` or ``sts``."""
        word = "st" if set(values) == {1} else "sts"
        self.used.term(word)
        return self.catalogue.term(word)[0]

    def some(self, values: Sequence[int]) -> str:
        """``180 (240, 300) sts``."""
        return f"{self.sized(values)} {self.sts(values)}"

    def amount(self, values: Sequence[int]) -> dict[str, str]:
        """`some` whole as ``sts``; its parts as ``n`` and ``st`` for a language that parts them."""
        return {"sts": self.some(values), "n": self.sized(values), "st": self.sts(values)}

    def whole(self, word: str) -> str:
        return self.t("knit") if word == "k" else self.t("purl")

    def stitches(
        self, stitch: Stitch, values: Sequence[int], modifiers: Sequence[str], between: str = ""
    ) -> str:
        """``k2``, ``ssk``, ``yo twice``, ``BO 3 sts``.

        `between` says what lies before and after it (``kp``: a knit and a purl stitch): in some
        usage a yarn over has a name for each.
        """
        self.used.stitch(stitch, between)
        tail = ""
        for modifier in modifiers:
            self.used.modifier(modifier)
            tail += f" {self.catalogue.modifier(modifier, '')[0]}"
        short = self.catalogue.stitch(stitch, between)[0]
        if "{n}" in short:
            return short.replace("{n}", self.sized(values)) + tail
        if stitch.word in _SINGLE:
            return f"{short}{self.sized(values)}{tail}"
        if stitch.kind in _COUNTED_KINDS:
            return f"{short} {self.some(values)}{tail}"
        if set(values) == {1}:
            return f"{short}{tail}"
        return self.t("{stitch} {times}", stitch=f"{short}{tail}", times=self.times(values))

    def times(self, values: Sequence[int]) -> str:
        """``once``, ``twice``, ``4 times``, ``4 (5, 6) times``."""
        if set(values) == {1}:
            return self.t("once")
        return self.t("twice") if set(values) == {2} else self.t("{n} times", n=self.sized(values))

    def steps(self, parts: Sequence[str]) -> str:
        """The steps of a row, one after the other."""
        return ", ".join(parts)

    def group(self, inner: Sequence[str], values: Sequence[int], nested: bool) -> str:
        """Steps worked several times; `nested` where another group stands among them."""
        if set(values) == {1}:
            return ", ".join(inner)
        left, right = ("[", "]") if nested else ("(", ")")
        steps = f"{left}{', '.join(inner)}{right}"
        return self.t("{steps} {times}", steps=steps, times=self.times(values))

    def into(self, inner: Sequence[str], values: Sequence[int], nested: bool) -> str:
        """Steps all worked into the next stitch or stitches."""
        left, right = ("[", "]") if nested else ("(", ")")
        steps = f"{left}{', '.join(inner)}{right}"
        if set(values) == {1}:
            return self.t("{steps} in next {st}", steps=steps, st=self.sts(values))
        return self.t("{steps} in next {sts}", steps=steps, **self.amount(values))

    def fill(self, unit: Unit) -> str:
        """``*k1, p1; rep from * to last 2 sts``, ``k to end``."""
        end = self.end(unit)
        if unit.only is not None:
            short = bare(self.catalogue.stitch(unit.only)[0])
            return self.t("{stitch} to {end}", stitch=short, end=end)
        self.used.term("rep")
        return self.t("*{steps}; rep from * to {end}", steps=", ".join(unit.units), end=end)

    def end(self, unit: Unit) -> str:
        """Where a fill stops: ``end``, ``last 2 sts``, ``marker``, ``2 sts before marker``."""
        if set(unit.left) == {0}:
            if unit.place:
                return self.t("marker") if unit.place == "marker" else self.t("gap")
            return self.t("end")
        parts = self.amount(unit.left)
        if unit.place == "marker":
            return self.t("{sts} before marker", **parts)
        if unit.place:
            return self.t("{sts} before gap", **parts)
        if set(unit.left) == {1}:
            return self.t("last {st}", st=self.sts(unit.left))
        return self.t("last {sts}", **parts)

    def hold(self, values: Sequence[int], name: str) -> str:
        plural = "place next {sts} on a holder for {name}"
        return self.several(plural, values, name=name)

    def take(self, name: str) -> str:
        message = "slip the held {name} {sts} back to the left needle"
        return self.t(message, name=name, sts=self.sts((2,)))

    def pick(self, values: Sequence[int], edge: str) -> str:
        parts = self.amount(values)
        if edge:
            parts["edge"] = self.catalogue.name(edge)
            return self.t("pick up and knit {sts} along the {edge} edge", **parts)
        return self.t("pick up and knit {sts}", **parts)

    # --- rows -------------------------------------------------------------

    def row(self, body: str, strand: str | None) -> str:
        """The sentence of a row; `strand` where the row names one of several."""
        return self._sentence(body, strand)

    def _sentence(self, text: str, strand: str | None = None) -> str:
        if strand:
            text = self.t("With {strand}, {text}", strand=strand, text=text)
        return f"{text[:1].upper()}{text[1:]}."

    def side(self, rs: bool) -> str:
        side = "RS" if rs else "WS"
        self.used.term(side)
        return self.catalogue.term(side)[0]

    def word(self, in_round: bool, plural: bool) -> str:
        """``Row``, ``Rows``, ``Rnd`` or ``Rnds``."""
        if not in_round:
            return self.t("Rows") if plural else self.t("Row")
        self.used.term("rnds" if plural else "rnd")
        return self.t("Rnds") if plural else self.t("Rnd")

    def label(self, first: int, last: int, in_round: bool, rs: bool) -> str:
        """``Row 3 (RS):``, ``Rnd 3:``, ``Rows 3–6:``."""
        if last > first:
            rows = self.word(in_round, True)
            return self.t("{rows} {first}–{last}:", rows=rows, first=first, last=last)
        if in_round:
            return self.t("{row} {n}:", row=self.word(True, False), n=first)
        parts = {"row": self.word(False, False), "side": self.side(rs)}
        return self.t("{row} {n} ({side}):", n=first, **parts)

    def next_label(self, rows: Sequence[int], in_round: bool, rs: bool) -> str:
        """The label where the sizes have come to different row numbers."""
        if set(rows) == {1}:
            if in_round:
                self.used.term("rnd")
                return self.t("Next rnd:")
            return self.t("Next row ({side}):", side=self.side(rs))
        if in_round:
            self.used.term("rnds")
            return self.t("Next {n} rnds:", n=self.sized(rows))
        return self.t("Next {n} rows:", n=self.sized(rows))

    def every_label(self, first: int, last: int, in_round: bool, rs: bool, rest: bool) -> str:
        """A row worked in every other row; `rest`: in every row that is not given."""
        self.used.term("foll")
        if not in_round:
            message = "Row {first} and every foll {side} row to Row {last}:"
            return self.t(message, first=first, side=self.side(rs), last=last)
        self.used.term("rnd")
        if rest:
            message = "Rnd {first} and every rnd not given, to Rnd {last}:"
        else:
            message = "Rnd {first} and every foll alternate rnd to Rnd {last}:"
        return self.t(message, first=first, last=last)

    def count(self, values: Sequence[int | None]) -> str:
        """``(240 sts)``, ``(180, 240, 300 sts)``; ``(–, 240 sts)`` for a size without the row."""
        texts = ["–" if value is None else str(value) for value in values]
        shown = texts[0] if len(set(texts)) == 1 else self.catalogue.between_sizes.join(texts)
        sts = self.sts([value or 0 for value in values])
        return self.t("({n} {sts})", n=shown, sts=sts)

    # --- changes that are spread -------------------------------------------------------------

    def unit(self, in_round: bool, plural: bool) -> str:
        """``row``, ``rows``, ``rnd`` or ``rnds``, inside a sentence."""
        if not in_round:
            return self.t("rows") if plural else self.t("row")
        self.used.term("rnds" if plural else "rnd")
        return self.t("rnds") if plural else self.t("rnd")

    def rows(self, in_round: bool, plural: bool) -> dict[str, str]:
        """The word for rows as ``row`` or ``rows``, and as it is inside a sentence, ``unit``."""
        name = "rows" if plural else "row"
        return {name: self.word(in_round, plural), "unit": self.unit(in_round, plural)}

    def shaping_label(self, in_round: bool) -> str:
        if in_round:
            self.used.term("rnd")
            return self.t("Shaping rnd:")
        return self.t("Shaping row ({side}):", side=self.side(True))

    def named_label(self, name: str, number: int, in_round: bool, rs: bool) -> str:
        """The label of a row that is known by its motif: ``Plain row 2 (WS):``."""
        parts = {"name": f"{name[:1].upper()}{name[1:]}", "row": self.unit(in_round, False)}
        if in_round:
            return self.t("{name} {row} {n}:", n=number, **parts)
        return self.t("{name} {row} {n} ({side}):", n=number, side=self.side(rs), **parts)

    def changed_by(self, change: int) -> str:
        """``(2 sts fewer)``."""
        sts = self.some((abs(change),))
        return self.t("({sts} more)", sts=sts) if change > 0 else self.t("({sts} fewer)", sts=sts)

    def evenly(self, one: str, often: Sequence[int], purl: bool) -> str:
        """A stitch spread over the row, where the gaps differ from repeat to repeat."""
        if purl:
            message = "{steps} {times}, evenly spread, purling the stitches between"
        else:
            message = "{steps} {times}, evenly spread, knitting the stitches between"
        return self.t(message, steps=one, times=self.times(often))

    # --- repeats of rows -------------------------------------------------------------

    def numbered_anew(self, name: str, in_round: bool) -> str:
        if in_round:
            return self.t("Now work the {name} repeat; its rounds are numbered from 1.", name=name)
        return self.t("Now work the {name} repeat; its rows are numbered from 1.", name=name)

    def _more(self, values: Sequence[int]) -> str:
        """`` once more``, `` seven more times``, ``, 96 (133, 168) more times``.

        Begins with what parts it from the row numbers before it: figures need the comma.
        """
        number = values[0] if len(set(values)) == 1 else 0
        if number == 1:
            return self.t(" once more")
        if number == 2:
            return self.t(" twice more")
        if 0 < number < 100:
            return self.t(" {n} more times", n=self.number(number))
        return self.t(", {n} more times", n=self.sized(values))

    def _often(self, values: Sequence[int]) -> str:
        """`` once``, `` eight times``, ``, 120 times``, ``, 96 (133, 168) times``."""
        number = values[0] if len(set(values)) == 1 else 0
        if number in (1, 2):
            return self.t(" {times}", times=self.times((number,)))
        if 0 < number < 100:
            return self.t(" {times}", times=self.t("{n} times", n=self.number(number)))
        return self.t(", {times}", times=self.t("{n} times", n=self.sized(values)))

    def repeat(self, in_round: bool, first: int, last: int, more: Sequence[int], tail: str) -> str:
        """``Rep Rows 3–6 seven more times.``"""
        self.used.term("rep")
        parts = {"first": str(first), "last": str(last), "more": self._more(more), "tail": tail}
        message = "Rep {rows} {first}–{last}{more}{tail}."
        return self.t(message, **self.rows(in_round, True), **parts)

    def again(self, in_round: bool, first: int, last: int, often: Sequence[int], tail: str) -> str:
        """A repeat that was written out before."""
        parts = {"first": str(first), "last": str(last), "often": self._often(often), "tail": tail}
        message = "Work {rows} {first}–{last}{often}{tail}."
        return self.t(message, **self.rows(in_round, True), **parts)

    def some_rows(self, in_round: bool, first: int, rows: Sequence[int], more: bool) -> str:
        """The first rows of a repeat, alone; `more` where it was worked whole just before."""
        how = self.t(" once more") if more else self.t(" {times}", times=self.t("once"))
        if len(set(rows)) == 1:
            last = first + rows[0] - 1
            if last == first:
                message = "Work {row} {first}{often}."
                return self.t(message, **self.rows(in_round, False), first=first, often=how)
            message = "Work {rows} {first}–{last}{often}{tail}."
            words = self.rows(in_round, True)
            return self.t(message, **words, first=first, last=last, often=how, tail="")
        return self.t(
            "Work the first {n} {rows} of the repeat{often}, beginning with {row} {first}.",
            n=self.sized(rows),
            rows=self.unit(in_round, True),
            often=how,
            row=self.word(in_round, False),
            unit=self.unit(in_round, False),
            first=first,
        )

    def measured(self, length: str) -> str:
        """What is added to a repeat that is worked to a length."""
        return self.t("; the piece now measures about {length}", length=length)

    # --- between rows -------------------------------------------------------------

    def cast_on(self, counts: Sequence[int], strand: str | None, method: str | None) -> str:
        by = self._by(method, "cast-on")
        return self._sentence(self.t("cast on {sts}{by}", by=by, **self.amount(counts)), strand)

    def cast_on_more(self, counts: Sequence[int], strand: str | None, method: str | None) -> str:
        by = self._by(method, "cast-on")
        text = self.t(
            "cast on {n} more {sts}{by}", n=self.sized(counts), sts=self.sts(counts), by=by
        )
        return self._sentence(text, strand)

    def bind_off(self, counts: Sequence[int], strand: str | None, method: str | None) -> str:
        if method is not None and method.casefold() == "gathering":
            plural = (
                "cut the yarn, thread it through the remaining {sts}, draw them together and "
                "fasten off"
            )
            return self._sentence(self.several(plural, counts), strand)
        by = self._by(method, "bind-off")
        return self._sentence(self.t("bind off all {sts}{by}", sts=self.sts((2,)), by=by), strand)

    def _by(self, name: str | None, kind: str) -> str:
        """`` by the long-tail method``; a name that already says what it is stays as it is."""
        if not name:
            return ""
        if name[:4].casefold() == "the " and name[4:].strip():
            name = name[4:].strip()  # the sentence says it
        if name.casefold().split()[-1] in ("method", kind):
            return self.t(" by the {name}", name=name)
        return self.t(" by the {name} method", name=self.catalogue.name(name))

    def join_round(self) -> str:
        return self.t("Join to work in the round, taking care not to twist the stitches.")

    def leave_round(self) -> str:
        return self.t("From here work back and forth in rows.")

    def begin_round(self, counts: Sequence[int]) -> str:
        self.used.term("rnd")
        return self.t("K{n}: the rnd begins here from now on.", n=self.sized(counts))

    def leave_live(self, counts: Sequence[int], why: str | None) -> str:
        if why:
            plural = "Leave the remaining {sts} live: {why}."
            return self.several(plural, counts, why=why.rstrip("."))
        plural = "Leave the remaining {sts} live on a holder."
        return self.several(plural, counts)

    def put_aside(self, counts: Sequence[int], name: str, everything: bool) -> str:
        if everything:
            plural = "Place all {sts} on a holder for {name}."
        else:
            plural = "Place the next {sts} on a holder for {name}."
        return self.several(plural, counts, name=name)

    def pick_up(self, counts: Sequence[int], strand: str | None, edge: str) -> str:
        return self._sentence(self.pick(counts, edge), strand)

    def bring(self, names: Sequence[str], counts: Sequence[Sequence[int]], joined: bool) -> str:
        """Held stitches, or live ones of other pieces, come onto the needle."""
        if len(names) == 1:
            if joined:
                plural = "Place the {n} live {name} {st} on the needle."
            else:
                plural = "Place the {n} held {name} {st} on the needle."
            return self.several(plural, counts[0], name=names[0])
        each = [
            self.t("{name}, {sts}", name=name, **self.amount(n))
            for name, n in zip(names, counts, strict=True)
        ]
        if joined:
            message = "Place the live {sts} on the needle, in this order: {names}."
        else:
            message = "Place the held {sts} on the needle, in this order: {names}."
        return self.t(message, sts=self.sts((2,)), names=self.t("; ").join(each))
