"""How a pattern says its rows: the one place where the sentences of the instructions stand.

`PieceWriter` and `Phraser` know what is worked and how often; a voice makes the words of it. This
one is the trade's printed English; other voices say the same in other words.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, field

from loopwright.edition.numbers import count_text, many_times, more_times, sized, times
from loopwright.facts.words import terms
from loopwright.model.stitch import Stitch

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
    """The abbreviations that were printed: what they mean, and what the stitch takes and makes."""

    found: dict[str, tuple[str, str]] = field(default_factory=dict)

    def term(self, *names: str) -> None:
        """General words of the trade: st, sts, rep, RS …"""
        for name in names:
            self.found.setdefault(name, (terms()[name], ""))

    def stitch(self, stitch: Stitch) -> None:
        plain = stitch.word in ("k", "p") or stitch.kind in _PLAIN_KINDS
        note = "" if plain else f"takes {stitch.takes}, makes {stitch.makes}"
        self.found.setdefault(stitch.abbr, (stitch.meaning, note))

    def modifier(self, word: str) -> None:
        self.found.setdefault(word, (MODIFIERS[word], ""))


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
    """The printed English of the trade, with its abbreviations; notes in `used` what it used."""

    all_counts = False
    """Whether the count is said after every row, even where it stays."""
    then = " "
    """What stands between two sentences of one instruction."""

    def __init__(self) -> None:
        self.used = Used()

    # --- stitches -------------------------------------------------------------

    def sts(self, values: Sequence[int]) -> str:
        """``st`` or ``sts``."""
        word = "st" if set(values) == {1} else "sts"
        self.used.term(word)
        return word

    def some(self, values: Sequence[int], kind: str = "") -> str:
        """``180 (240, 300) sts``; `kind` stands before the word."""
        return f"{sized(values)}{kind} {self.sts(values)}"

    def whole(self, word: str) -> str:
        return "knit" if word == "k" else "purl"

    def stitches(self, stitch: Stitch, values: Sequence[int], modifiers: Sequence[str]) -> str:
        """``k2``, ``ssk``, ``yo twice``, ``BO 3 sts``."""
        self.used.stitch(stitch)
        for modifier in modifiers:
            self.used.modifier(modifier)
        tail = "".join(f" {modifier}" for modifier in modifiers)
        if stitch.word in _SINGLE:
            return f"{stitch.abbr}{sized(values)}{tail}"
        if stitch.kind in _COUNTED_KINDS:
            return f"{stitch.abbr} {sized(values)} {self.sts(values)}{tail}"
        if set(values) == {1}:
            return f"{stitch.abbr}{tail}"
        return f"{stitch.abbr}{tail} {times(values)}"

    def steps(self, parts: Sequence[str]) -> str:
        """The steps of a row, one after the other."""
        return ", ".join(parts)

    def group(self, inner: Sequence[str], values: Sequence[int], nested: bool) -> str:
        """Steps worked several times; `nested` where another group stands among them."""
        if set(values) == {1}:
            return ", ".join(inner)
        left, right = ("[", "]") if nested else ("(", ")")
        return f"{left}{', '.join(inner)}{right} {times(values)}"

    def into(self, inner: Sequence[str], values: Sequence[int], nested: bool) -> str:
        """Steps all worked into the next stitch or stitches."""
        left, right = ("[", "]") if nested else ("(", ")")
        word = self.sts(values)
        where = f"next {word}" if set(values) == {1} else f"next {sized(values)} {word}"
        return f"{left}{', '.join(inner)}{right} in {where}"

    def fill(self, unit: Unit) -> str:
        """``*k1, p1; rep from * to last 2 sts``, ``k to end``."""
        end = self._end(unit)
        if unit.only is not None:
            return f"{unit.only.abbr} to {end}"
        self.used.term("rep")
        return f"*{', '.join(unit.units)}; rep from * to {end}"

    def _end(self, unit: Unit) -> str:
        """Where a fill stops: ``end``, ``last 2 sts``, ``marker``, ``2 sts before marker``."""
        if set(unit.left) == {0}:
            return unit.place or "end"
        word = self.sts(unit.left)
        if unit.place:
            return f"{sized(unit.left)} {word} before {unit.place}"
        return f"last {'st' if word == 'st' else f'{sized(unit.left)} sts'}"

    def hold(self, values: Sequence[int], name: str) -> str:
        return f"place next {sized(values)} {self.sts(values)} on a holder for {name}"

    def take(self, name: str) -> str:
        self.used.term("sts")
        return f"slip the held {name} sts back to the left needle"

    def pick(self, values: Sequence[int], edge: str) -> str:
        return f"pick up and knit {sized(values)} {self.sts(values)}{_along(edge)}"

    # --- rows -------------------------------------------------------------

    def row(self, body: str, strand: str | None) -> str:
        """The sentence of a row; `strand` where the row names one of several."""
        return self._sentence(f"{self._with(strand)}{body}")

    def _with(self, strand: str | None) -> str:
        return f"With {strand}, " if strand else ""

    def _sentence(self, text: str) -> str:
        return f"{text[:1].upper()}{text[1:]}."

    def _side(self, rs: bool) -> str:
        side = "RS" if rs else "WS"
        self.used.term(side)
        return side

    def word(self, in_round: bool, plural: bool) -> str:
        """``Row``, ``Rows``, ``Rnd`` or ``Rnds``."""
        if not in_round:
            return "Rows" if plural else "Row"
        self.used.term("rnds" if plural else "rnd")
        return "Rnds" if plural else "Rnd"

    def label(self, first: int, last: int, in_round: bool, rs: bool) -> str:
        """``Row 3 (RS):``, ``Rnd 3:``, ``Rows 3–6:``."""
        if last > first:
            return f"{self.word(in_round, True)} {first}–{last}:"
        if in_round:
            return f"{self.word(True, False)} {first}:"
        return f"Row {first} ({self._side(rs)}):"

    def next_label(self, rows: Sequence[int], in_round: bool, rs: bool) -> str:
        """The label where the sizes have come to different row numbers."""
        if set(rows) == {1}:
            if in_round:
                self.used.term("rnd")
                return "Next rnd:"
            return f"Next row ({self._side(rs)}):"
        if in_round:
            self.used.term("rnds")
        return f"Next {sized(rows)} {'rnds' if in_round else 'rows'}:"

    def every_label(self, first: int, last: int, in_round: bool, rs: bool, rest: bool) -> str:
        """A row worked in every other row; `rest`: in every row that is not given."""
        self.used.term("foll")
        if not in_round:
            side = self._side(rs)
            return f"Row {first} and every foll {side} row to Row {last}:"
        self.used.term("rnd")
        if rest:
            return f"Rnd {first} and every rnd not given, to Rnd {last}:"
        return f"Rnd {first} and every foll alternate rnd to Rnd {last}:"

    def count(self, values: Sequence[int]) -> str:
        """``(240 sts)``."""
        self.sts(values)
        return count_text(values)

    # --- repeats of rows -------------------------------------------------------------

    def numbered_anew(self, name: str, in_round: bool) -> str:
        rows = "rounds" if in_round else "rows"
        return f"Now work the {name} repeat; its {rows} are numbered from 1."

    def repeat(self, in_round: bool, first: int, last: int, more: Sequence[int], tail: str) -> str:
        """``Rep Rows 3–6 seven more times.``"""
        self.used.term("rep")
        return f"Rep {self.word(in_round, True)} {first}–{last}{more_times(more)}{tail}."

    def again(self, in_round: bool, first: int, last: int, often: Sequence[int], tail: str) -> str:
        """A repeat that was written out before."""
        return f"Work {self.word(in_round, True)} {first}–{last}{many_times(often)}{tail}."

    def some_rows(self, in_round: bool, first: int, rows: Sequence[int], more: bool) -> str:
        """The first rows of a repeat, alone; `more` where it was worked whole just before."""
        how = "once more" if more else "once"
        if len(set(rows)) == 1:
            plural = rows[0] > 1
            span = f"{first}–{first + rows[0] - 1}" if plural else str(first)
            return f"Work {self.word(in_round, plural)} {span} {how}."
        return (
            f"Work the first {sized(rows)} {self.word(in_round, True).lower()} of the repeat "
            f"{how}, beginning with {self.word(in_round, False)} {first}."
        )

    def measured(self, length: str) -> str:
        """What is added to a repeat that is worked to a length."""
        return f"; the piece now measures about {length}"

    # --- between rows -------------------------------------------------------------

    def cast_on(self, counts: Sequence[int], strand: str | None, method: str | None) -> str:
        return self._sentence(
            f"{self._with(strand)}cast on {self.some(counts)}{_by(method, 'cast-on')}"
        )

    def cast_on_more(self, counts: Sequence[int], strand: str | None, method: str | None) -> str:
        return self._sentence(
            f"{self._with(strand)}cast on {self.some(counts, ' more')}{_by(method, 'cast-on')}"
        )

    def bind_off(self, counts: Sequence[int], strand: str | None, method: str | None) -> str:
        if method is not None and method.casefold() == "gathering":
            return self._sentence(
                f"{self._with(strand)}cut the yarn, thread it through the remaining "
                f"{self.some(counts)}, draw them together and fasten off"
            )
        return self._sentence(
            f"{self._with(strand)}bind off all {self.sts((2,))}{_by(method, 'bind-off')}"
        )

    def join_round(self) -> str:
        return "Join to work in the round, taking care not to twist the stitches."

    def leave_round(self) -> str:
        return "From here work back and forth in rows."

    def begin_round(self, counts: Sequence[int]) -> str:
        self.used.term("rnd")
        return f"K{sized(counts)}: the rnd begins here from now on."

    def leave_live(self, counts: Sequence[int], why: str | None) -> str:
        text = f"Leave the remaining {self.some(counts)} live"
        return f"{text}: {why.rstrip('.')}." if why else f"{text} on a holder."

    def put_aside(self, counts: Sequence[int], name: str, everything: bool) -> str:
        some = "all" if everything else "the next"
        return f"Place {some} {self.some(counts)} on a holder for {name}."

    def pick_up(self, counts: Sequence[int], strand: str | None, edge: str) -> str:
        return self._sentence(
            f"{self._with(strand)}pick up and knit {self.some(counts)}{_along(edge)}"
        )

    def bring(self, names: Sequence[str], counts: Sequence[Sequence[int]], joined: bool) -> str:
        """Held stitches, or live ones of other pieces, come onto the needle."""
        kind = "live" if joined else "held"
        if len(names) == 1:
            what = f"{sized(counts[0])} {kind} {names[0]} {self.sts(counts[0])}"
            return f"Place the {what} on the needle."
        each = [f"{name} ({sized(n)})" for name, n in zip(names, counts, strict=True)]
        listed = f"{', '.join(each[:-1])} and {each[-1]}"
        return f"Place the {kind} {self.sts((2,))} of {listed} on the needle, in this order."


def _along(edge: str) -> str:
    """`` along the left edge``; nothing where no edge is named."""
    return f" along the {edge} edge" if edge else ""


def _by(name: str | None, kind: str) -> str:
    """`` by the long-tail method``; a name that already says what it is stays as it is."""
    if not name:
        return ""
    if name.casefold().split()[-1] in ("method", kind):
        return f" by the {name}"
    return f" by the {name} method"
