"""A reader's edition: what was asked, what the pattern was made for, and what changed."""

from __future__ import annotations

from collections.abc import Sequence

from loopwright.check.checked import Checked
from loopwright.edition.abbreviations import Used
from loopwright.edition.catalogue import ENGLISH, Catalogue
from loopwright.edition.document import Personal, Table
from loopwright.edition.words import gauge_sentence, pair, stands_first
from loopwright.fit.asked import Wish
from loopwright.fit.note import Note
from loopwright.fit.table import COUNT, YARN, Figure, change_text, compare, value_text
from loopwright.fit.targets import Wanted

FIGURES = (
    "stitches",
    "widest row",
    "widest round",
    "rounds",
    "rows",
    "around",
    "width",
    "circular needle",
    "length",
    "cast-on tail",
    "new",
)
"""The messages of `fit.table` that are no name of a shade."""
_MADE_FOR = ("stitches", "widest row", "widest round", "width", "around", "length")
_BALLS = ", balls"


def make_personal(
    before: Checked,
    after: Checked,
    wish: Wish,
    notes: Sequence[str],
    size: str | None = None,
    units: str | None = None,
    words: Catalogue = ENGLISH,
) -> Personal:
    """The words of the first page. `size` is the one size printed, `units` which stands first."""
    inches_first = stands_first(before.pattern, units) == "in"
    writer = _Writer(before, after, size, inches_first, words)
    return Personal(
        writer.asked(wish), writer.made_for(), writer.changes(), tuple(map(writer.note, notes))
    )


class _Writer:
    def __init__(
        self,
        before: Checked,
        after: Checked,
        size: str | None,
        inches_first: bool,
        words: Catalogue,
    ) -> None:
        self.before = before
        self.after = after
        self.size = size
        self.inches_first = inches_first
        self.words = words

    def note(self, note: str) -> str:
        said = note.said(self.words) if isinstance(note, Note) else note
        return f"{said[:1].upper()}{said[1:]}."

    def asked(self, wish: Wish) -> tuple[str, ...]:
        words, names = self.words, self.before.pattern.sizes
        motifs = {motif.name.key for motif in self.before.pattern.motifs}
        out = []
        for gauge in wish.gauges:
            message = "A gauge of {stitches} stitches = {over}{fabric}."
            if gauge.rows is not None:
                message = "A gauge of {stitches} stitches and {rows} rows = {over}{fabric}."
            fabric = gauge.fabric or ""
            if fabric.casefold() not in motifs:
                fabric = words.name(fabric)  # a motif's name is the writer's own
            out.append(
                words.say(
                    message,
                    stitches=words.figures(f"{gauge.stitches:g}"),
                    rows=words.figures(f"{gauge.rows or 0:g}"),
                    over=words.figures(gauge.text),
                    fabric=words.say(" in {fabric}", fabric=fabric) if fabric else "",
                )
            )
        width, length = self._measures(wish.width, names), self._measures(wish.length, names)
        if width:
            out.append(words.say("A width of {measure}.", measure=width))
        if length:
            out.append(words.say("A length of {measure}.", measure=length))
        if wish.scale is not None:
            share = words.figures(f"{wish.scale * 100:g}")
            out.append(words.say("All at {share} % of its size.", share=share))
        return tuple(out)

    def _measures(self, wanted: Wanted, names: tuple[str, ...]) -> str:
        words = self.words
        found = [(name, mm) for name, mm in zip(names, wanted, strict=True) if mm is not None]
        if not found:
            return ""
        shown = [words.figures(pair(mm, self.inches_first)) for _, mm in found]
        if len(set(shown)) == 1:
            everywhere = len(found) == len(names)
            return shown[0] + ("" if everywhere else words.say(" in size {size}", size=found[0][0]))
        return ", ".join(f"{text} ({name})" for text, (name, _) in zip(shown, found, strict=True))

    def made_for(self) -> tuple[str, ...]:
        words, pattern = self.words, self.before.pattern
        motifs = frozenset(motif.name.key for motif in pattern.motifs)
        out = []
        for gauge in pattern.gauges:
            told = gauge_sentence(gauge, Used(words), self.inches_first, motifs)
            out.append(words.say("Gauge: {gauge}.", gauge=told))
        for group in compare(self.before, self.before):
            if not group.piece or (self.size is not None and group.size != self.size):
                continue
            facts = ", ".join(
                f"{self._name(figure)} {self._value(figure, figure.after)}"
                for figure in group.figures
                if figure.name in _MADE_FOR
            )
            name = group.piece if len(pattern.pieces) > 1 else ""
            size = group.size if len(pattern.sizes) > 1 else ""
            where = ", ".join(part for part in (name, size) if part)
            facts = words.say("{name}: {facts}", name=where, facts=facts) if where else facts
            out.append(f"{facts}.")
        return tuple(out)

    def changes(self) -> Table | None:
        words, pattern = self.words, self.after.pattern
        rows: list[tuple[str, ...]] = []
        several = len(pattern.sizes) > 1 and self.size is None
        many = len(pattern.pieces) > 1
        for group in compare(self.before, self.after):
            if self.size is not None and group.size != self.size:
                continue
            piece = (group.piece or words.text("yarn")) if many else ""
            label = ", ".join(part for part in (piece, group.size if several else "") if part)
            for figure in group.figures:
                change = change_text(figure)
                if change == "–":
                    continue
                name = self._name(figure)
                rows.append(
                    (
                        words.say("{name}: {facts}", name=label, facts=name) if label else name,
                        self._value(figure, figure.before),
                        self._value(figure, figure.after),
                        words.text("new")
                        if change == "new"
                        else words.figures(change).replace("-", "−"),
                    )
                )
        head = (
            words.text("What changed"),
            words.text("Made for"),
            words.text("This copy"),
            words.text("Change"),
        )
        return Table("", head, tuple(rows)) if rows else None

    def _name(self, figure: Figure) -> str:
        """What a figure is of: a measure, or a shade by its own name."""
        if figure.kind == YARN:
            return figure.name
        if figure.name.endswith(_BALLS):
            shade = figure.name.removesuffix(_BALLS)
            return self.words.say("{shade}, balls", shade=shade)
        return self.words.text(figure.name)

    def _value(self, figure: Figure, value: float | None) -> str:
        if figure.kind == COUNT and value is not None:
            return self.words.grouped(round(value))
        return self.words.figures(value_text(figure.kind, value, self.inches_first))
