"""The tables and the JSON of `yarn`."""

from __future__ import annotations

import json
from collections.abc import Iterator
from typing import Any

from loopwright.count.walk import ListedRow, Walk
from loopwright.model.pattern import Pattern
from loopwright.yarn.ledger import Ledger
from loopwright.yarn.report import SizeYarn, StrandYarn, YarnReport
from loopwright.yarn.stripes import StripeFall, stripe_falls
from loopwright.yarn.words import between, grams, join_text, loop_text, metres, strand_label


def yarn_json(pattern: Pattern, report: YarnReport) -> dict[str, Any]:
    """The figures as JSON values. Numbers are rounded to a tenth; the margin is in `balls` only."""
    return {
        "pattern": pattern.title.text if pattern.title else "",
        "margin": report.margin,
        "join": report.ends.name,
        "tail_cm": _tenth(report.ends.tail * 100),
        "sizes": [_size_json(pattern, size) for size in report.sizes],
    }


def _size_json(pattern: Pattern, size: SizeYarn) -> dict[str, Any]:
    return {
        "size": size.name,
        "strands": [_strand_json(pattern, strand) for strand in size.strands],
        "shades": [
            {
                "shade": shade.name,
                "metres": _tenth(shade.metres),
                "grams": _tenth(shade.grams),
                "balls": shade.balls,
            }
            for shade in size.shades
        ],
        "stripes": [
            {
                "strand": fall.strand,
                "shade": fall.shade.name.text,
                "repeat_metres": _tenth(fall.repeat),
                "rows": round(fall.rows, 2),
                "stitches": fall.stitches,
                "pools": fall.pools is not None,
            }
            for fall in stripe_falls(pattern, size)
        ],
    }


def _strand_json(pattern: Pattern, strand: StrandYarn) -> dict[str, Any]:
    def shade(key: str) -> str:
        found = pattern.shade(key)
        return found.name.text if found is not None else key

    low, high = strand.metres * (1 - strand.spread), strand.metres * (1 + strand.spread)
    return {
        "strand": strand.name,
        "metres": _tenth(strand.metres),
        "grams": _tenth(strand.grams),
        "joins": [
            {
                "row": join.spot.row,
                "stitch": join.spot.stitch,
                "from": shade(join.old),
                "to": shade(join.new),
                "left_grams": _tenth(join.left_grams),
                "piece": pattern.pieces[join.spot.piece].name.text,
                "where": join.spot.where,
                "row_grams": _tenth(join.row_grams),
                "tail_cm": _tenth(join.tail * 100),
            }
            for join in strand.eaten.joins
        ],
        "joins_in_all": strand.eaten.joined,
        "metres_low": _tenth(low),
        "metres_high": _tenth(high),
        "ground": strand.loop.ground,
        "loop_mm": round(strand.loop.metres * 1000, 2),
        "short_metres": _tenth(strand.eaten.short.metres) if strand.eaten.short else 0.0,
    }


def _tenth(value: float | None) -> float | None:
    return None if value is None else round(value, 1)


def yarn_text(pattern: Pattern, report: YarnReport) -> Iterator[str]:
    """What a person reads: strands with their joins, then shades with balls to buy."""
    many = len(pattern.sizes) > 1
    title = pattern.title.text if pattern.title else ""
    yield title + "\n"
    for size in report.sizes:
        yield f"\n{'size ' + size.name if many else 'yarn'}\n"
        for strand in size.strands:
            yield from _strand_text(pattern, strand)
        for fall in stripe_falls(pattern, size):
            yield f"  {fall_text(fall)}\n"
        if size.shades:
            yield f"\n  {'shade':<16}{'metres':>9}{'grams':>8}{'balls to buy':>14}\n"
        for shade in size.shades:
            weight = f"{shade.grams:,.0f}" if shade.grams is not None else "–"
            balls = str(shade.balls) if shade.balls is not None else "–"
            yield f"  {shade.name:<16}{shade.metres:>9,.0f}{weight:>8}{balls:>14}\n"
    for line in notes(report):
        yield f"\n{line}"
    yield "\n"


def _strand_text(pattern: Pattern, strand: StrandYarn) -> Iterator[str]:
    weight = f", {between(strand.grams, strand.spread, 'g')}" if strand.grams is not None else ""
    yield f"  strand {strand_label(strand)}: {between(strand.metres, strand.spread, 'm')}{weight}\n"
    yield f"    {loop_text(strand.loop)}\n"
    several = len(pattern.pieces) > 1
    for join in strand.eaten.joins:
        piece = f"{pattern.pieces[join.spot.piece].name.text}, " if several else ""
        old, new = join.old, join.new
        what = f"{old} to {new}" if old != new else f"{old}, a new ball"
        yield f"    {what}: {piece}{join_text(join)}\n"
    more = strand.eaten.joined - len(strand.eaten.joins)
    if more > 0:
        yield f"    and {more:,} joins more\n"
    if strand.eaten.short is not None:
        yield f"    the balls do not last: {metres(strand.eaten.short.metres)} are missing\n"


def fall_text(fall: StripeFall) -> str:
    """``one repeat of 25 m is 5.2 rows of 240 stitches``, with the height of each stripe."""
    heights = ", ".join(f"{height:.1f}" for height in fall.heights)
    text = (
        f"{fall.shade.name.text}: one repeat of {fall.repeat:g} m is {fall.rows:.1f} rows of "
        f"{fall.stitches:,} stitches (stripes of {heights} rows)"
    )
    return text + ("; the colours will pool" if fall.pools is not None else "")


def notes(report: YarnReport) -> Iterator[str]:
    """What the figures rest on."""
    share = round((report.margin - 1) * 100)
    yield (
        f"Balls to buy: the upper end of the range and {share} % more, up to whole balls; where "
        "the work ends by yarn, the balls it is fed."
    )
    yield (
        f"Each join leaves a tail of {report.ends.tail * 100:.0f} cm at both ends "
        f"({report.ends.name}); its place moves with your gauge, so steer by the scale."
    )


def rows_text(
    pattern: Pattern, report: YarnReport, walks: tuple[Walk, ...], first: int, last: int | None
) -> Iterator[str]:
    """Each row with what it takes and the running total of its strand."""
    for size in report.sizes:
        for place, piece in enumerate(pattern.pieces):
            walk = next(w for w in walks if w.piece is piece and w.size == size.size)
            head = piece.name.text
            if len(pattern.sizes) > 1:
                head += f", size {size.name}"
            one = "round" if walk.is_round(1) else "row"
            yield f"{head}\n{one:>9} {'strand':<10}{'metres':>9}{'total m':>11}{'total g':>10}\n"
            for row in walk.listed(first):
                if last is not None and row.row > last:
                    break
                yield _row_text(size, place, row)
            yield "\n"


def _row_text(size: SizeYarn, place: int, row: ListedRow) -> str:
    key = strand_in(size.ledger, place, row.row)
    strand = size.strand(key)
    total = size.ledger.through(key, place, row.row)
    took = row_metres(size.ledger, place, row.row)
    weight = "–"
    if strand is not None and strand.grams is not None and strand.metres > 0:
        weight = grams(total * strand.grams / strand.metres)
    name = strand.name if strand is not None and strand.name is not None else "–"
    return f"{row.row:>9} {name:<10}{took:>9.2f}{total:>11.1f}{weight:>10}\n"


def strand_in(ledger: Ledger, piece: int, row: int) -> str | None:
    """The strand that works a row."""
    part = ledger.rows_at(piece, row)
    return part.rows[(row - part.first) % len(part.rows)].strand if part is not None else None


def row_metres(ledger: Ledger, piece: int, row: int) -> float:
    """What a row alone takes, in metres."""
    part = ledger.rows_at(piece, row)
    if part is None:
        return 0.0
    k, line = divmod(row - part.first, len(part.rows))
    return part.rows[line].metres(k)


def rows_json(
    pattern: Pattern, report: YarnReport, walks: tuple[Walk, ...], first: int, last: int | None
) -> Iterator[str]:
    """The rows as one JSON object."""
    data: list[dict[str, Any]] = []
    for size in report.sizes:
        for place, piece in enumerate(pattern.pieces):
            walk = next(w for w in walks if w.piece is piece and w.size == size.size)
            rows = []
            for row in walk.listed(first):
                if last is not None and row.row > last:
                    break
                key = strand_in(size.ledger, place, row.row)
                strand = size.strand(key)
                rows.append(
                    {
                        "row": row.row,
                        "strand": strand.name if strand is not None else None,
                        "metres": round(row_metres(size.ledger, place, row.row), 3),
                        "total_metres": round(size.ledger.through(key, place, row.row), 2),
                    }
                )
            data.append({"size": size.name, "piece": piece.name.text, "rows": rows})
    yield json.dumps({"rows": data}, ensure_ascii=False) + "\n"
