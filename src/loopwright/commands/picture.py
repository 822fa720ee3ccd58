"""`loopwright picture`: a chart, a schematic or the cloth itself."""

from __future__ import annotations

import argparse
import sys
from pathlib import Path

from loopwright.check.checked import Checked
from loopwright.commands.border import BAD_PATTERN, OK, Usage, report, say, tell
from loopwright.compile import check_source
from loopwright.count.walk import Walk
from loopwright.files import read_source, write_whole
from loopwright.notation.hidden import named

HELP = "draw the charts, a schematic or the cloth as it will look"
EXAMPLE = "loopwright picture examples/skerry-throw.loop --what fabric -o throw.png"

_SUFFIX = {"chart": ".svg", "schematic": ".svg", "fabric": ".png"}
_MOST_ZOOM = 200
_MOST_SEED = 1_000_000


def options(parser: argparse.ArgumentParser) -> None:
    """The options of the command."""
    parser.add_argument("file", metavar="FILE")
    parser.add_argument("--what", choices=tuple(_SUFFIX), default="chart", help="default: chart")
    parser.add_argument("-o", dest="output", metavar="FILE", help="write the picture here")
    parser.add_argument("--size", metavar="NAME", help="the size to draw")
    parser.add_argument("--motif", metavar="NAME", help="chart: this motif alone")
    parser.add_argument("--piece", metavar="NAME", help="schematic, fabric: this piece alone")
    parser.add_argument("--units", choices=("cm", "in"), help="schematic: which unit stands first")
    parser.add_argument(
        "--shades",
        action="append",
        default=[],
        metavar="LIST",
        help="fabric: other colours, as kelp=#2f5d62,dune=#c9a66b; again for a second picture",
    )
    parser.add_argument(
        "--palette", metavar="FILE", help="fabric: a line for each picture, Name: kelp=#2f5d62, …"
    )
    parser.add_argument(
        "--seed", type=int, default=0, metavar="N", help="fabric: where striped balls begin"
    )
    parser.add_argument(
        "--zoom", type=int, metavar="N", help="fabric: a corner, N pixels to a stitch"
    )


def run(args: argparse.Namespace) -> int:
    """Run it; gives the exit status."""
    _sensible(args)
    checked = check_source(read_source(args.file))
    report(checked)
    if checked.has_errors:
        say("loopwright: nothing was drawn, because the pattern has errors")
        return BAD_PATTERN
    size = _place_of("size", args.size, checked.pattern.sizes)
    if args.what == "chart":
        data = _charts(args, checked, size).encode("utf-8")
    elif args.what == "schematic":
        data = _schematics(args, checked, size).encode("utf-8")
    else:
        data = _fabric(args, checked, size or 0)
    if args.output:
        write_whole(Path(args.output), data)
        tell(named(args.output))
        return OK
    if args.what == "fabric" and sys.stdout.isatty():
        raise Usage("a PNG is no text for a terminal; write it to a file with -o cloth.png")
    sys.stdout.flush()
    sys.stdout.buffer.write(data)
    return OK


def _sensible(args: argparse.Namespace) -> None:
    """Options that do not belong to what is drawn are a wrong call, not a wish passed over."""
    belongs = {
        "motif": ("chart",),
        "piece": ("schematic", "fabric"),
        "units": ("schematic",),
        "shades": ("fabric",),
        "palette": ("fabric",),
        "seed": ("fabric",),
        "zoom": ("fabric",),
    }
    for name, kinds in belongs.items():
        if getattr(args, name) and args.what not in kinds:
            raise Usage(f"--{name} belongs to --what {' or '.join(kinds)}, not to {args.what}")
    if args.zoom is not None and not 2 <= args.zoom <= _MOST_ZOOM:
        raise Usage(f"--zoom takes a number from 2 to {_MOST_ZOOM}: pixels to a stitch")
    if not 0 <= args.seed <= _MOST_SEED:
        raise Usage(f"--seed takes a number from 0 to {_MOST_SEED:,}")
    suffix = _SUFFIX[args.what]
    if args.output and Path(args.output).suffix.lower() != suffix:
        raise Usage(
            f"a {args.what} is written as {suffix}; {named(args.output)} has another ending"
        )


def _place_of(kind: str, name: str | None, names: tuple[str, ...]) -> int | None:
    """The place of a name among the pattern's, whatever its case; None where none is given."""
    if name is None:
        return None
    for place, known in enumerate(names):
        if known.casefold() == name.casefold():
            return place
    raise Usage(f"there is no {kind} “{named(name)}”; the pattern has {', '.join(names) or 'none'}")


def _charts(args: argparse.Namespace, checked: Checked, size: int | None) -> str:
    from loopwright.picture.cells import charts_of
    from loopwright.picture.chart import Chart
    from loopwright.picture.sheet import sheet_svg

    pattern = checked.pattern
    if not pattern.motifs:
        raise Usage("the pattern has no motif, so there is nothing to chart")
    sizes = tuple(range(len(pattern.sizes))) if size is None else (size,)
    charts, left = charts_of(pattern, checked.walks, sizes)
    if args.motif is not None:
        names = tuple(motif.name.text for motif in pattern.motifs)
        wanted = names[_place_of("motif", args.motif, names) or 0]
        charts = tuple(chart for chart in charts if chart.name == wanted)
        left = tuple(motif for motif in left if motif.name == wanted)
    for motif in left:
        size_name = f" in size {motif.size}" if motif.size else ""
        say(f"loopwright: {motif.name} has no chart{size_name}: {motif.reason}")
    if not charts:
        raise Usage("there is nothing to draw")
    shown: list[Chart] = list(charts)
    return sheet_svg(pattern.title.text if pattern.title else "", shown)


def _pieces(args: argparse.Namespace, checked: Checked, size: int) -> list[Walk]:
    walks = [walk for walk in checked.walks if walk.size == size]
    names = tuple(walk.piece.name.text for walk in walks)
    place = _place_of("piece", args.piece, names)
    return walks if place is None else [walks[place]]


def _schematics(args: argparse.Namespace, checked: Checked, size: int | None) -> str:
    from loopwright.picture.schematic import schematic_sheet, schematics_of

    pattern = checked.pattern
    pieces = {walk.piece.name.text for walk in _pieces(args, checked, size or 0)}
    sizes = tuple(range(len(pattern.sizes))) if size is None else (size,)
    drawn = [s for s in schematics_of(pattern, checked.walks, sizes) if s.piece in pieces]
    if not drawn and pattern.gauges:
        raise Usage(
            "no piece here has an outline that widths would tell: it has short rows, or stitches "
            "that are held, taken or picked up"
        )
    if not drawn:
        raise Usage(
            "a schematic needs a gauge: write a line such as "
            "gauge 20 stitches 28 rows = 10 cm under the pattern"
        )
    measure = pattern.width or pattern.length
    inches = args.units == "in" or (
        args.units is None and measure is not None and measure.unit in ("in", "yd")
    )
    return schematic_sheet(pattern.title.text if pattern.title else "", drawn, inches)


def _fabric(args: argparse.Namespace, checked: Checked, size: int) -> bytes:
    from loopwright.picture.cloth import NotOneCloth, TooLarge
    from loopwright.picture.fabric import fabric_of
    from loopwright.picture.palettes import read_choice, read_choices

    pattern = checked.pattern
    try:
        choices = [read_choice(text, pattern) for text in args.shades]
        if args.palette is not None:
            choices += read_choices(read_source(args.palette).text, pattern)
    except ValueError as error:
        where = f"{named(args.palette)}, " if args.palette and str(error).startswith("line") else ""
        raise Usage(f"{where}{named(str(error))}") from None
    walks = _pieces(args, checked, size)
    if not walks:
        raise Usage("the pattern has no piece, so there is no cloth to draw")
    # Without a wish it is the largest piece: the one a maker thinks of as the thing itself.
    walk = max(walks, key=lambda w: w.widest * w.rows)
    try:
        fabric = fabric_of(pattern, walk, choices, args.seed, args.zoom)
    except (TooLarge, NotOneCloth) as error:
        raise Usage(named(str(error))) from None
    say(fabric.words)
    return fabric.png
