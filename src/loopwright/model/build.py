"""From the tree to the pattern: blocks, names and stitch words put together."""

from __future__ import annotations

from loopwright.model.blocks import blocks_of
from loopwright.model.header import header_of
from loopwright.model.materials import own_stitches, shades_of, strands_of, yarns_of
from loopwright.model.motifs import motif_of
from loopwright.model.notebook import Notebook
from loopwright.model.pattern import Motif, Pattern
from loopwright.model.pieces import piece_of
from loopwright.model.rows import Bodies
from loopwright.model.stitch import Dictionary
from loopwright.notation.parse import Parsed
from loopwright.notation.source import Span
from loopwright.problem import Problem
from loopwright.record import dataclass


@dataclass(frozen=True, slots=True)
class Built:
    """The pattern and what was found wrong while it was put together."""

    pattern: Pattern
    problems: tuple[Problem, ...]


def build(parsed: Parsed) -> Built:
    """Put a parsed source together. Pure; every problem found is returned."""
    notes = Notebook()
    blocks = blocks_of(parsed, notes)
    singles = blocks.singles
    stitches = own_stitches(singles, notes)
    bodies = Bodies(Dictionary({stitch.word: stitch for stitch in stitches}), notes)
    motifs = tuple(motif_of(block, bodies, notes) for block in blocks.motifs)
    by_name: dict[str, Motif] = {}
    for motif in motifs:
        by_name.setdefault(motif.name.key, motif)
    pieces = tuple(piece_of(block, by_name, bodies, notes) for block in blocks.pieces)
    header = header_of(blocks.in_pattern, notes)
    yarns = yarns_of(singles)
    shades = shades_of(singles, notes)
    strands = strands_of(singles, notes)
    notes.twice("yarn", [yarn.name for yarn in yarns])
    notes.twice("shade", [shade.name for shade in shades])
    notes.twice("strand", [strand.name for strand in strands])
    notes.twice("motif", [motif.name for motif in motifs])
    notes.twice("piece", [piece.name for piece in pieces])
    heads = blocks.heads
    once = header.once
    pattern = Pattern(
        parsed.source,
        heads[0].title if heads else None,
        header.first("designer"),
        header.first("summary"),
        once.get("level"),
        once.get("sizes", ()),
        once.get("width"),
        once.get("length"),
        tuple(header.gauges),
        tuple(header.swatches),
        tuple(header.needles),
        header.all("notion"),
        header.all("note"),
        yarns,
        shades,
        strands,
        stitches,
        motifs,
        pieces,
        tuple(notes.references),
        tuple(notes.unknown),
        tuple(notes.clashes),
        tuple(notes.gaps),
        parsed.size_lists,
        heads[0].span if heads else Span(0, min(len(parsed.source.text), 1)),
        bounds=header.bounds,
        join=once.get("join by"),
        care=once.get("care"),
    )
    return Built(pattern, tuple(notes.problems))
