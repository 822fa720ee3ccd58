"""The blocks of one line: yarns, their shades, the strands they feed, the file's own stitches."""

from __future__ import annotations

from collections.abc import Iterable

from loopwright.model.blocks import Single
from loopwright.model.notebook import Notebook
from loopwright.model.pattern import Shade, Strand, Yarn
from loopwright.model.stitch import Stitch
from loopwright.notation import tree


def own_stitches(singles: Iterable[Single], notes: Notebook) -> tuple[Stitch, ...]:
    """The stitches that a file declares."""
    lines = [line for line in singles if isinstance(line, tree.StitchLine)]
    notes.twice("stitch", [line.name for line in lines])
    return tuple(_stitch(line, notes) for line in lines)


def _stitch(line: tree.StitchLine, notes: Notebook) -> Stitch:
    if line.takes is None or line.makes is None:
        notes.error(
            "line-unclear",
            "the stitch does not say what it takes and makes",
            f"“{line.name.text}” needs both: how many stitches it takes from the left "
            "needle and how many it makes on the right one.",
            line.span,
            'write stitch mb "make bobble": takes 1, makes 1, "how it is worked".',
        )
    takes = line.takes.values[0] if line.takes else 1
    makes = line.makes.values[0] if line.makes else 1
    text = line.text.text if line.text else line.name.text
    return Stitch(
        line.name.key,
        takes,
        makes,
        "own",
        line.name.text,
        f"{text}: {line.how.text}" if line.how else text,
        line.eats if line.eats is not None else float(max(takes, makes, 1)),
        "declared in the pattern",
        line.span,
    )


def yarns_of(singles: Iterable[Single]) -> tuple[Yarn, ...]:
    """The yarns of a file."""
    return tuple(_yarn(line) for line in singles if isinstance(line, tree.YarnLine))


def _yarn(line: tree.YarnLine) -> Yarn:
    return Yarn(
        line.name,
        line.text,
        next((q.grams() for q in line.quantities if q.is_weight), None),
        next((q.metres() for q in line.quantities if q.is_length), None),
        line.weight.values[0] if line.weight else None,
        line.fibre,
        line.span,
    )


def shades_of(singles: Iterable[Single], notes: Notebook) -> tuple[Shade, ...]:
    """The shades of a file; the yarns they are of are noted."""
    lines = [line for line in singles if isinstance(line, tree.ShadeLine)]
    for line in lines:
        notes.refer("yarn", line.yarn)
    return tuple(Shade(s.name, s.text, s.yarn, s.colour, s.stripes, s.span) for s in lines)


def strands_of(singles: Iterable[Single], notes: Notebook) -> tuple[Strand, ...]:
    """The strands of a file; the shades that feed them are noted."""
    lines = [line for line in singles if isinstance(line, tree.StrandLine)]
    for line in lines:
        for feed in line.feeds:
            notes.refer("shade", feed.shade)
    return tuple(Strand(line.name, line.feeds, line.span) for line in lines)
