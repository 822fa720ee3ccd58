"""What is said of stitches: one after the other, in groups, in fills, on holders."""

from __future__ import annotations

from collections.abc import Callable, Sequence

from loopwright.edition.abbreviations import Used, bare
from loopwright.edition.catalogue import ENGLISH, Catalogue
from loopwright.edition.numbers import in_words, sized
from loopwright.model.stitch import Stitch
from loopwright.record import dataclass

_SINGLE = {"k", "p", "sl"}  # printed with their count: k2
_COUNTED_KINDS = {"bind", "cast", "drop"}


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


class StepWords:
    """The words of the steps of a row, and how a voice says anything in its catalogue's language.

    Every message is a whole sentence or a part that keeps its place, so that a catalogue can turn
    its words round.
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
