"""The pattern in words: from the checked model to a `Document` that templates lay out."""

from __future__ import annotations

import re
from collections.abc import Mapping

from loopwright.count.measure import width_gauge, width_of
from loopwright.count.walk import Walk
from loopwright.count.widths import piece_width
from loopwright.edition.document import Abbreviation, Document, Section, Shade, Table
from loopwright.edition.rows import PieceWriter
from loopwright.edition.voice import Used, Voice
from loopwright.facts.needles import needle_label
from loopwright.facts.words import safety_caution
from loopwright.facts.yarns import yarn_weight
from loopwright.fit.units import cm, grams_and_ounces, inches, metres_and_yards
from loopwright.model.pattern import Gauge, Needle, Pattern, Piece, Yarn
from loopwright.yarn.notes import balls_to_buy, join_notes, yarn_lines
from loopwright.yarn.report import yarn_report

# Lengths as circular needles are labelled in shops: common practice.
_CABLES_IN = {400: 16, 500: 20, 600: 24, 800: 32, 900: 36, 1000: 40, 1200: 47, 1500: 60}
_INFANT = re.compile(
    r"\b(baby|babies|infant|newborn|preemie|crib|cot|cradle|pram|stroller|receiving|nursery)\b",
    re.IGNORECASE,
)
_COVER = re.compile(r"\b(blanket|throw|afghan|quilt|cover|pillow|shawl)\b", re.IGNORECASE)


def make_document(
    pattern: Pattern,
    walks: tuple[Walk, ...],
    size: str | None = None,
    units: str | None = None,
    counts: str = "changes",
    voice: Voice | None = None,
) -> Document:
    """The pattern in words.

    `walks` are those of a source without errors. `size` picks one size by name, `units` (``cm``
    or ``in``) which unit stands first, `counts` is ``changes`` or ``all``; `voice` says the rows
    (None: the trade's printed English).
    """
    names = pattern.sizes
    chosen = tuple(range(len(names))) if size is None else (names.index(size),)
    inches_first = stands_first(pattern, units) == "in"
    voice = Voice() if voice is None else voice
    used = voice.used
    sections: list[Section] = []
    report = yarn_report(pattern, walks)
    for piece in pattern.pieces:
        mine = tuple(w for w in walks if w.piece is piece and w.size in chosen)
        notes = join_notes(pattern, report, piece, chosen, inches_first)
        sections += PieceWriter(pattern, piece, mine, voice, counts, inches_first, notes).write()
    gauges = tuple(_gauge(gauge, used, inches_first) for gauge in pattern.gauges)
    return Document(
        language="en",
        title=pattern.title.text if pattern.title else "",
        designer=pattern.designer.text if pattern.designer else "",
        summary=pattern.summary.text if pattern.summary else "",
        level=pattern.level.text.capitalize() if pattern.level else "",
        sizes=tuple(names[i] for i in chosen) if len(names) > 1 else (),
        finished=_finished(pattern, walks, chosen, inches_first),
        gauge=gauges,
        needles=tuple(_needle(needle, inches_first) for needle in pattern.needles),
        yarns=(
            *(_yarn(yarn, inches_first) for yarn in pattern.yarns),
            *yarn_lines(pattern, report, chosen, inches_first),
        ),
        shades=_shades(pattern, chosen, balls_to_buy(report, chosen)),
        notions=tuple(text.text for text in pattern.notions),
        notes=tuple(text.text for text in pattern.notes),
        abbreviations=tuple(
            Abbreviation(short, meaning, note)
            for short, (meaning, note) in sorted(
                used.found.items(), key=lambda item: (item[0].lower(), item[0])
            )
        ),
        sections=tuple(sections),
        cautions=_cautions(pattern),
        notices=(
            "Sizes and amounts of yarn are estimates at the stated gauge: knit and wash a swatch "
            "first, and let it decide.",
        ),
    )


def stands_first(pattern: Pattern, units: str | None) -> str:
    """The unit that stands first: as asked (``cm`` or ``in``), else as the source has it."""
    measure = pattern.width or pattern.length
    written = "in" if measure is not None and measure.unit in ("in", "yd") else "cm"
    return units or written


def pair(mm: float, inches_first: bool) -> str:
    """A length in both units: ``110 cm / 43¼ in``."""
    return f"{inches(mm)} / {cm(mm)}" if inches_first else f"{cm(mm)} / {inches(mm)}"


def gauge_sentence(gauge: Gauge, inches_first: bool) -> str:
    """A gauge as the materials list prints it."""
    return _gauge(gauge, Used(), inches_first)


def _gauge(gauge: Gauge, used: Used, inches_first: bool) -> str:
    used.term("sts")
    over = gauge.over.mm()
    if abs(over - 100) < 0.01 or abs(over - 101.6) < 0.01:
        # The convention of the trade; the 1.6 % between the two is in no count.
        size = "4 in / 10 cm" if inches_first else "10 cm / 4 in"
    else:
        size = pair(over, inches_first)
    rows = "rows"
    if gauge.worked == "round":
        rows = "rnds"
        used.term("rnds")
    text = f"{gauge.stitches:g} sts and {gauge.rows:g} {rows} = {size}"
    if gauge.fabric is not None:
        text += f" in {gauge.fabric.text.replace('-', ' ')}"
    if gauge.worked is not None:
        text += ", worked in the round" if gauge.worked == "round" else ", worked flat"
    if gauge.needle is not None:
        text += f", on {needle_label(gauge.needle.mm())} needles"
    if gauge.blocking is not None:
        text += f", {gauge.blocking} blocking"
    return text


def _needle(needle: Needle, inches_first: bool) -> str:
    text = needle_label(needle.size.mm())
    if needle.kind is not None:
        text += f" {needle.kind.text.lower()}"
    if needle.length is not None:
        mm = needle.length.mm()
        inch = _CABLES_IN.get(round(mm))
        first, second = cm(mm), f"{inch} in" if inch else inches(mm)
        text += f", {second} / {first}" if inches_first else f", {first} / {second}"
        text += " long"
    return text


def _yarn(yarn: Yarn, yards_first: bool) -> str:
    def turned(text: str) -> str:
        return " / ".join(reversed(text.split(" / "))) if yards_first else text

    name = yarn.text.text if yarn.text else yarn.name.text
    parts = []
    if yarn.grams is not None and yarn.metres is not None:
        parts.append(
            f"{turned(metres_and_yards(yarn.metres))} per ball of "
            f"{turned(grams_and_ounces(yarn.grams))}"
        )
    elif yarn.grams is not None:
        parts.append(f"balls of {turned(grams_and_ounces(yarn.grams))}")
    elif yarn.metres is not None:
        parts.append(f"{turned(metres_and_yards(yarn.metres))} per ball")
    if yarn.weight is not None:
        try:
            parts.append(f"weight {yarn.weight} ({yarn_weight(yarn.weight).name})")
        except (KeyError, ValueError, IndexError):
            parts.append(f"weight {yarn.weight}")
    if yarn.fibre is not None:
        parts.append(yarn.fibre.text)
    return f"{name}: {', '.join(parts)}" if parts else name


def _shades(
    pattern: Pattern, chosen: tuple[int, ...], to_buy: Mapping[str, list[int]]
) -> tuple[Shade, ...]:
    """The shades; their amount is the balls to buy, or else what the strands are fed."""
    out = []
    for shade in pattern.shades:
        yarn = pattern.yarn(shade.yarn.key)
        strands: list[str] = []
        balls = [0.0] * len(chosen)
        weighed = 0.0
        for strand in pattern.strands:
            for feed in strand.feeds:
                if feed.shade.key != shade.name.key:
                    continue
                if strand.name.text not in strands:
                    strands.append(strand.name.text)
                for place, size in enumerate(chosen):
                    if feed.amount is None:
                        times = feed.balls.at(size) if feed.balls else 1
                        balls[place] += times * (0.5 if feed.half else 1.0)
                    elif feed.amount.is_weight and place == 0:
                        weighed += feed.amount.grams(size)
        out.append(
            Shade(
                shade.text.text if shade.text else shade.name.text,
                (yarn.text.text if yarn.text else yarn.name.text) if yarn else "",
                ", ".join(strands) if len(pattern.strands) > 1 else "",
                _amount([float(n) for n in to_buy[shade.name.key]], 0.0)
                if shade.name.key in to_buy
                else _amount(balls, weighed),
                shade.colours,
            )
        )
    return tuple(out)


def _amount(balls: list[float], weighed: float) -> str:
    """``2 balls``, ``½ ball``, ``1 (2, 3) balls``, ``1 ball and 30 g``."""
    texts = [_halves(number) for number in balls]
    parts = []
    if any(balls):
        shown = texts[0] if len(set(texts)) == 1 else f"{texts[0]} ({', '.join(texts[1:])})"
        parts.append(f"{shown} {'ball' if max(balls) <= 1 else 'balls'}")
    if weighed:
        parts.append(grams_and_ounces(weighed))
    return " and ".join(parts)


def _halves(number: float) -> str:
    whole = int(number)
    half = "½" if number - whole else ""
    return f"{whole if whole or not half else ''}{half}"


def _finished(
    pattern: Pattern, walks: tuple[Walk, ...], chosen: tuple[int, ...], inches_first: bool
) -> Table | None:
    """The finished measures: by the counts at the gauge, else as the source states them."""
    names = pattern.sizes
    pieces = pattern.pieces[:1] if len(pattern.pieces) == 1 else pattern.pieces
    # Of a shaped piece no one width can be said: its edge, and the widest it gets.
    shaped = any(w.cast_on is not None and w.widest > w.cast_on for w in walks)
    rows: list[tuple[str, ...]] = []
    for size in chosen:
        for piece in pieces:
            walk = next((w for w in walks if w.piece is piece and w.size == size), None)
            cells = _measures(pattern, piece, walk, size, piece is pattern.pieces[0])
            if cells is None:
                continue
            label = [names[size]] if len(names) > 1 else []
            if len(pieces) > 1:
                label.append(piece.name.text)
            edge = [_edge_width(pattern, walk)] if shaped else []
            shown = [pair(mm, inches_first) if mm is not None else "–" for mm in (*edge, *cells)]
            rows.append((", ".join(label) or "One size", *shown))
    if not rows:
        return None
    round_first = bool(pattern.pieces) and pattern.pieces[0].in_round
    width = "Around" if round_first and len(pieces) == 1 else "Width"
    head = ("Cast-on edge", "Widest row", "Length") if shaped else (width, "Length")
    return Table("", ("Size", *head), tuple(rows))


def _edge_width(pattern: Pattern, walk: Walk | None) -> float | None:
    """The width of the cast-on at the piece's gauge, in mm."""
    gauge = width_gauge(pattern, walk.piece) if walk is not None else None
    if walk is None or walk.cast_on is None or gauge is None or gauge.over.unit is None:
        return None
    return width_of(gauge, walk.cast_on)


def _measures(
    pattern: Pattern, piece: Piece, walk: Walk | None, size: int, first: bool
) -> tuple[float | None, float | None] | None:
    wide = piece.width or (pattern.width if first else None)
    long = piece.length or (pattern.length if first else None)
    width = wide.mm(size) if wide is not None and wide.unit else None
    length = long.mm(size) if long is not None and long.unit else None
    counted = piece_width(pattern, walk) if walk is not None else None
    if walk is not None and counted is not None:
        width = counted
        if walk.height:
            length = walk.height
    return None if width is None and length is None else (width, length)


def _cautions(pattern: Pattern) -> tuple[str, ...]:
    texts = [pattern.title, pattern.summary, *pattern.notes]
    text = " ".join(t.text for t in texts if t is not None) + " " + " ".join(pattern.sizes)
    if _INFANT.search(text) and _COVER.search(text):
        return (
            safety_caution("infant blanket")
            + " Follow the safe-sleep advice of your own country and of your health visitor or "
            "doctor.",
        )
    return ()
