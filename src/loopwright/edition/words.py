"""The pattern in words: from the checked model to a `Document` that templates lay out."""

from __future__ import annotations

from collections.abc import Mapping

from loopwright.count.measure import width_gauge, width_of
from loopwright.count.walk import Walk
from loopwright.count.widths import piece_width
from loopwright.edition.abbreviations import Used
from loopwright.edition.catalogue import Catalogue
from loopwright.edition.cautions import care_of, cautions_of
from loopwright.edition.document import (
    Abbreviation,
    Document,
    FollowStep,
    Section,
    Shade,
    Table,
)
from loopwright.edition.follow import moved
from loopwright.edition.rows import PieceWriter
from loopwright.edition.substitution import substitution_of
from loopwright.edition.techniques import met_in, skills_of
from loopwright.edition.voice import Voice
from loopwright.facts.needles import needle_label
from loopwright.facts.yarns import yarn_weight
from loopwright.fit.units import cm, grams_and_ounces, inches, metres_and_yards
from loopwright.model.pattern import Gauge, Needle, Pattern, Piece, Yarn
from loopwright.notation.names import as_words
from loopwright.record import replace
from loopwright.yarn.notes import balls_to_buy, join_notes, needed, yarn_lines
from loopwright.yarn.report import yarn_report

# Lengths as circular needles are labelled in shops: common practice.
_CABLES_IN = {400: 16, 500: 20, 600: 24, 800: 32, 900: 36, 1000: 40, 1200: 47, 1500: 60}

SWATCH = (
    "Sizes and amounts of yarn are estimates at the stated gauge: knit and wash a swatch first, "
    "and let it decide."
)


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
    used, words = voice.used, voice.catalogue
    sections: list[Section] = []
    follow: list[FollowStep] = []
    report = yarn_report(pattern, walks)
    for place, piece in enumerate(pattern.pieces):
        mine = tuple(w for w in walks if w.piece is piece and w.size in chosen)
        notes = join_notes(pattern, report, piece, chosen, inches_first, words)
        writer = PieceWriter(pattern, piece, mine, voice, counts, inches_first, notes)
        written = writer.write()
        if writer.follower is not None:
            follow += moved(writer.follower.steps, len(sections), place)
        sections += _with_motifs(written, writer, {key for s in sections for key in s.motifs})
    motifs = frozenset(motif.name.key for motif in pattern.motifs)
    gauges = tuple(gauge_sentence(gauge, used, inches_first, motifs) for gauge in pattern.gauges)
    return Document(
        language=words.language,
        title=pattern.title.text if pattern.title else "",
        designer=pattern.designer.text if pattern.designer else "",
        summary=pattern.summary.text if pattern.summary else "",
        level=words.name(pattern.level.text.capitalize()) if pattern.level else "",
        sizes=tuple(names[i] for i in chosen) if len(names) > 1 else (),
        finished=_finished(pattern, walks, chosen, inches_first, words),
        gauge=gauges,
        needles=tuple(_needle(needle, inches_first, words) for needle in pattern.needles),
        yarns=(
            *(_yarn(yarn, inches_first, words) for yarn in pattern.yarns),
            *yarn_lines(pattern, report, chosen, words),
        ),
        shades=_shades(
            pattern,
            chosen,
            words,
            balls_to_buy(report, chosen),
            needed(report, chosen, inches_first, words.between_sizes),
        ),
        notions=tuple(text.text for text in pattern.notions),
        notes=tuple(text.text for text in pattern.notes),
        abbreviations=tuple(
            Abbreviation(short, meaning, note)
            for short, (meaning, note) in sorted(
                used.found.items(), key=lambda item: (item[0].lower(), item[0])
            )
        ),
        sections=tuple(sections),
        cautions=cautions_of(pattern, words),
        notices=(*words.notices, words.text(SWATCH)),
        care=care_of(pattern, words),
        substitution=substitution_of(pattern, words, inches_first),
        skills=_skills(pattern, walks, chosen[0], words),
        follow=tuple(follow),
        catalogue=words,
    )


def _with_motifs(
    written: tuple[Section, ...], writer: PieceWriter, known: set[str]
) -> list[Section]:
    """The sections of a piece, each with the motifs that no section before it wrote out."""
    out = []
    for number, section in enumerate(written):
        mine = tuple(key for key, at in writer.charted.items() if at == number and key not in known)
        known.update(mine)
        out.append(replace(section, motifs=mine))
    return out


def _skills(
    pattern: Pattern, walks: tuple[Walk, ...], size: int, words: Catalogue
) -> tuple[str, ...]:
    """What a maker must know; a voice of its own, so that nothing counts as an abbreviation."""
    mine = [walk for walk in walks if walk.size == size]
    return skills_of(met_in(mine, Voice(words), len(pattern.pieces) > 1), words)


def stands_first(pattern: Pattern, units: str | None) -> str:
    """The unit that stands first: as asked (``cm`` or ``in``), else as the source has it."""
    measure = pattern.width or pattern.length
    written = "in" if measure is not None and measure.unit in ("in", "yd") else "cm"
    return units or written


def pair(mm: float, inches_first: bool) -> str:
    """A length in both units: ``110 cm / 43¼ in``."""
    return f"{inches(mm)} / {cm(mm)}" if inches_first else f"{cm(mm)} / {inches(mm)}"


def gauge_sentence(gauge: Gauge, used: Used, inches_first: bool, motifs: frozenset[str]) -> str:
    """A gauge as the materials list prints it; `motifs` are the keys of the writer's own."""
    words = used.catalogue
    used.term("sts")
    over = gauge.over.mm()
    if abs(over - 100) < 0.01 or abs(over - 101.6) < 0.01:
        # The convention of the trade; the 1.6 % between the two is in no count.
        size = "4 in / 10 cm" if inches_first else "10 cm / 4 in"
    else:
        size = pair(over, inches_first)
    rows = words.text("rows")
    if gauge.worked == "round":
        rows = words.text("rnds")
        used.term("rnds")
    text = words.say(
        "{stitches} {sts} and {rows} {row} = {size}",
        stitches=words.figures(f"{gauge.stitches:g}"),
        sts=words.term("sts")[0],
        rows=words.figures(f"{gauge.rows:g}"),
        row=rows,
        size=words.figures(size),
    )
    if gauge.fabric is not None:
        fabric = gauge.fabric.text.replace("-", " ")
        if gauge.fabric.key not in motifs:
            fabric = words.name(fabric)  # a motif's name is the writer's own
        text += words.say(" in {fabric}", fabric=fabric)
    if gauge.worked is not None:
        in_round = gauge.worked == "round"
        text += words.text(", worked in the round") if in_round else words.text(", worked flat")
    if gauge.needle is not None:
        text += words.say(", on {needle} needles", needle=_sold(gauge.needle.mm(), words))
    if gauge.blocking is not None:
        before = gauge.blocking.lower() == "before"
        text += words.text(", before blocking") if before else words.text(", after blocking")
    return text


def _sold(mm: float, words: Catalogue) -> str:
    """The size of a needle; its US and UK numbers are names and stay as they are."""
    size, unit, numbers = needle_label(mm).partition(" mm")
    return f"{words.figures(f'{size}{unit}')}{numbers}"


def _needle(needle: Needle, inches_first: bool, words: Catalogue) -> str:
    text = _sold(needle.size.mm(), words)
    if needle.kind is not None:
        text += f" {words.name(needle.kind.text.lower())}"
    if needle.length is not None:
        mm = needle.length.mm()
        inch = _CABLES_IN.get(round(mm))
        first, second = cm(mm), f"{inch} in" if inch else inches(mm)
        both = f"{second} / {first}" if inches_first else f"{first} / {second}"
        text += words.say(", {length} long", length=words.figures(both))
    return text


def _yarn(yarn: Yarn, yards_first: bool, words: Catalogue) -> str:
    def turned(text: str) -> str:
        both = " / ".join(reversed(text.split(" / "))) if yards_first else text
        return words.figures(both)

    name = yarn.text.text if yarn.text else yarn.name.text
    long = turned(metres_and_yards(yarn.metres)) if yarn.metres is not None else ""
    heavy = turned(grams_and_ounces(yarn.grams)) if yarn.grams is not None else ""
    parts = []
    if long and heavy:
        parts.append(words.say("{length} per ball of {weight}", length=long, weight=heavy))
    elif heavy:
        parts.append(words.say("balls of {weight}", weight=heavy))
    elif long:
        parts.append(words.say("{length} per ball", length=long))
    if yarn.weight is not None:
        try:
            usual = words.name(yarn_weight(yarn.weight).name, f"weight {yarn.weight}")
            parts.append(words.say("weight {n} ({name})", n=yarn.weight, name=usual))
        except (KeyError, ValueError, IndexError):
            parts.append(words.say("weight {n}", n=yarn.weight))
    if yarn.fibre is not None:
        parts.append(yarn.fibre.text)
    return words.say("{name}: {facts}", name=name, facts=", ".join(parts)) if parts else name


def _shades(
    pattern: Pattern,
    chosen: tuple[int, ...],
    words: Catalogue,
    to_buy: Mapping[str, list[int]],
    taken: Mapping[str, tuple[str, str]],
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
                _amount([float(n) for n in to_buy[shade.name.key]], 0.0, words)
                if shade.name.key in to_buy
                else _amount(balls, weighed, words),
                shade.colours,
                *map(words.figures, taken.get(shade.name.key, ("", ""))),
            )
        )
    return tuple(out)


def _amount(balls: list[float], weighed: float, words: Catalogue) -> str:
    """``2 balls``, ``½ ball``, ``1 (2, 3) balls``, ``1 ball and 30 g``."""
    texts = [_halves(number) for number in balls]
    parts = []
    if any(balls):
        shown = texts[0]
        if len(set(texts)) > 1:
            shown += f" ({words.between_sizes.join(texts[1:])})"
        one = max(balls) <= 1
        parts.append(words.say("{n} ball", n=shown) if one else words.say("{n} balls", n=shown))
    if weighed:
        parts.append(words.figures(grams_and_ounces(weighed)))
    return (
        words.say("{some} and {last}", some=parts[0], last=parts[1])
        if parts[1:]
        else "".join(parts)
    )


def _halves(number: float) -> str:
    whole = int(number)
    half = "½" if number - whole else ""
    return f"{whole if whole or not half else ''}{half}"


def _finished(
    pattern: Pattern,
    walks: tuple[Walk, ...],
    chosen: tuple[int, ...],
    inches_first: bool,
    words: Catalogue,
) -> Table | None:
    """The finished measures: by the counts at the gauge, else as the source states them."""
    names = pattern.sizes
    pieces = pattern.pieces[:1] if len(pattern.pieces) == 1 else pattern.pieces
    # Of a shaped piece no one width can be said: its edge, and the widest it gets.
    shaped = any(w.cast_on is not None and w.widest > w.cast_on for w in walks)
    rows: dict[tuple[str, tuple[str, ...]], list[str]] = {}
    for piece in pieces:
        for size in chosen:
            walk = next((w for w in walks if w.piece is piece and w.size == size), None)
            cells = _measures(pattern, piece, walk, size, piece is pattern.pieces[0])
            if cells is None:
                continue
            if len(pieces) > 1 and None in cells:
                continue  # a seam or a graft: it has no length of its own
            edge = [_edge_width(pattern, walk)] if shaped else []
            shown = [
                words.figures(pair(mm, inches_first)) if mm is not None else "–"
                for mm in (*edge, *cells)
            ]
            label = names[size] if len(names) > 1 else ""
            # Two sleeves of the same measures are one line.
            rows.setdefault((label, tuple(shown)), []).append(piece.name.text)
    if not rows:
        return None
    told = []
    for (size_name, shown_cells), named in rows.items():
        parts = [size_name] if size_name else []
        if len(pieces) > 1:
            parts += map(as_words, named)
        told.append((", ".join(parts) or words.text("One size"), *shown_cells))
    round_first = bool(pattern.pieces) and pattern.pieces[0].in_round
    around = round_first and len(pieces) == 1
    width = words.text("Around") if around else words.text("Width")
    head = [width, words.text("Length")]
    if shaped:
        rounds = all(piece.in_round for piece in pieces)
        widest = words.text("Widest round") if rounds else words.text("Widest row")
        head = [words.text("Cast-on edge"), widest, words.text("Length")]
    return Table("", (words.text("Size"), *head), tuple(told))


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
