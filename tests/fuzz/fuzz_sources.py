"""Sources to try: right ones made by the grammar, nearly right ones, and bytes.

The right ones are right by construction: each row of a motif is built so that it takes the motif's
form, and each piece is cast on with a count of it.
"""

from __future__ import annotations

import random
import sys
from pathlib import Path

from hypothesis import strategies as st

sys.path.insert(0, str(Path(__file__).parent))
from fuzz_slips import slip

EXAMPLES = sorted((Path(__file__).parents[2] / "examples").rglob("*.loop"))
TEXTS = [path.read_text("utf-8") for path in EXAMPLES]

# Steps by the stitches they take, each making as many as it takes.
EVEN = {
    1: ["k1", "p1", "sl1 wyif", "k1 tbl", "p", "(k1) in 1"],
    2: ["k2", "yo k2tog", "ssk yo", "p2tog yo", "rt", "(k1 p1) x1", "sl2 wyib"],
    3: ["k3", "yo sk2p yo", "k1 yo k2tog", "(p1 k1 p1)", "kfb k2tog"],
    4: ["c4f", "(k1 p1) x2", "k2tog yo2 ssk", "p4"],
}
NAMES = st.from_regex(r"[a-z][a-z0-9-]{0,6}", fullmatch=True).filter(
    lambda name: name not in RESERVED
)
RESERVED = {"round", "rounds", "flat", "for", "in", "by", "x", "to", "until", "starts", "over",
            "all", "edge", "is", "more", "rs", "ws", "n"}  # fmt: skip


def steps(takes: int) -> st.SearchStrategy[str]:
    """Steps that take `takes` stitches and make as many."""
    if takes == 0:
        return st.just("")
    return st.integers(1, min(takes, 4)).flatmap(
        lambda first: st.tuples(st.sampled_from(EVEN[first]), steps(takes - first)).map(
            lambda parts: " ".join(part for part in parts if part)
        )
    )


@st.composite
def rows(draw: st.DrawFn, unit: int, fixed: int) -> str:
    """A body that takes every count unit·n + fixed, n >= 1, and keeps it."""
    kind = draw(st.integers(0, 5))
    if kind == 0:
        return draw(st.sampled_from(["knit", "purl"]))
    divisors = [d for d in range(1, unit + 1) if unit % d == 0]
    step = draw(st.sampled_from(divisors))
    # What stands outside the fill is fixed, give or take whole units of it.
    outside = fixed % step
    outside += step * draw(st.integers(0, (unit + fixed - outside) // step))
    before = draw(st.integers(0, outside))
    parts = [draw(steps(before)), f"* {draw(steps(step))} *", draw(steps(outside - before))]
    return " ".join(part for part in parts if part)


@st.composite
def motifs(draw: st.DrawFn, name: str) -> tuple[str, int, int, int]:
    """A motif's lines, its unit and fixed stitches, and its number of rows (even)."""
    unit, fixed = draw(st.integers(1, 6)), draw(st.integers(0, 5))
    number = 2 * draw(st.integers(1, 3))
    lines = [f"motif {name} over {unit}n" + (f" + {fixed}" if fixed else "")]
    for row in range(1, number + 1):
        claim = draw(st.sampled_from(["", "", " => +0"]))
        lines.append(f"  row {row}: {draw(rows(unit, fixed))}{claim}")
    return "\n".join(lines), unit, fixed, number


@st.composite
def valid_sources(draw: st.DrawFn) -> str:
    """A right source: no error of any rule."""
    sizes = draw(st.integers(1, 3))
    lines = [f'pattern "{draw(st.sampled_from(["Reed", "Moss & Fern", "Tide ½"]))}"']
    if sizes > 1:
        lines.append("  sizes " + ", ".join(["small", "middle", "large"][:sizes]))
    lines.append("  gauge 20 stitches 28 rows = 10 cm")
    names = draw(st.lists(NAMES, min_size=1, max_size=2, unique=True))
    made = [draw(motifs(name)) for name in names]
    lines += [motif[0] for motif in made]
    for number, (name, (_, unit, fixed, _)) in enumerate(zip(names, made, strict=True)):
        counts = sorted(
            draw(st.lists(st.integers(2, 40), min_size=sizes, max_size=sizes, unique=True))
        )
        cast = [str(unit * n + fixed) for n in counts]
        lines.append(f"piece p{number} flat")
        lines.append(f"  cast on {'/'.join(cast)}")
        if draw(st.booleans()):
            lines.append("  rows 2: knit")
        how = draw(
            st.sampled_from([f"x{draw(st.integers(1, 9))}", "to 40 cm", "for 8 rows", "x1000000"])
        )
        lines.append(f"  work {name} {how}")
        if draw(st.booleans()):
            lines.append('  note "Nearly there."  -- a comment')
        lines.append(
            draw(st.sampled_from(["  bind off", "  bind off by suspended", "  leave live"]))
        )
    return "\n".join(lines) + "\n"


@st.composite
def shaped_sources(draw: st.DrawFn) -> str:
    """A right source whose pieces are shaped row by row: every count is kept here, by size.

    Strands, size lists, markers, short rows, holders, stitches cast on, bound off and picked up.
    Every item is two rows of one strand, so that each strand hangs at the right edge behind it.
    """
    sizes = draw(st.integers(1, 3))
    strands = draw(st.sampled_from(["", "A", "AB"]))
    lines = ['pattern "Shaped"']
    if sizes > 1:
        lines.append("  sizes " + ", ".join(["small", "middle", "large"][:sizes]))
    lines.append("  gauge 22 stitches 30 rows = 4 in on 4 mm")
    if strands:
        lines.append('yarn wool "Wool": 50 g 120 m, weight 3')
    for at, strand in enumerate(strands):
        colour = draw(st.sampled_from(["#204060", "#c0c0b0", "#fff"]))
        lines.append(f"shade s{at} of wool, colour {colour}")
        lines.append(f"strand {strand} feeds s{at} x{'/'.join(['900'] * sizes)}")
    bobble = draw(st.booleans())
    if bobble:
        lines.append(
            'stitch mb "make bobble": takes 1, makes 1, yarn 5, "(k1 p1) in one, turn, k2tog"'
        )
    for number in range(draw(st.integers(1, 2))):
        lines += draw(_shaped_piece(f"p{number}", sizes, strands, bobble))
    return "\n".join(lines) + "\n"


@st.composite
def _shaped_piece(draw: st.DrawFn, name: str, sizes: int, strands: str, bobble: bool) -> list[str]:
    counts = sorted(draw(st.lists(st.integers(14, 60), min_size=sizes, max_size=sizes)))
    first = f" in {strands[0]}" if strands else ""
    out = [f"piece {name} flat", f"  cast on {_each(counts)}{first}"]
    held = 0
    for number in range(draw(st.integers(1, 8))):
        strand = f" in {draw(st.sampled_from(strands))}" if strands else ""
        more = 0
        back = draw(st.sampled_from(["purl", "* p1 *", "knit"]))
        kind = draw(st.integers(0, 11))
        if min(counts) < 12:
            kind = 0
        if kind == 1:
            row, more = "k2 yo * k1 * yo k2", 2
        elif kind == 2:
            row, more = "k1 ssk * k1 * k2tog k1", -2
        elif kind == 3:
            row, more = f"k{_each([c - 6 for c in counts])} k2tog mb k3", -1
            row = row if bobble else row.replace("mb", "p")
        elif kind == 4:
            row, back = "k4 pm * k1 *", "* p1 * sm p4"
        elif kind == 5 and not held:
            held, row, more = number + 1, f"k3 hold 2 as h{name}{number + 1} * k1 *", -2
        elif kind == 6 and held:
            row, more, held = f"k3 take h{name}{held} * k1 *", 2, 0
        elif kind == 7:
            row, back = draw(st.sampled_from([("k5 turn", "p5"), ("k7 w&t", "p7")]))
        elif kind == 8:
            row, more = "bo3 * k1 *", -3
        elif kind == 9:
            row, more = "co2 * k1 *", 2
        elif kind == 10:
            row, back = "* k1 * to last 4 turn", "* p1 *"
        elif kind == 11:
            row = "(k1 p1) x3 * sl1 wyif k1 * (k1, p1) x3"
            if any(c % 2 for c in counts):
                row = "(k1 yo k1) in 1 k2tog sl1 drop1 * k1 tbl *"
                more = 0
        else:
            row = draw(
                st.sampled_from(
                    ["knit", "(k1 p1) x2 * k1 *", "kfb k2tog * k1 *", "yo2 k3tog k * k1 *"]
                )
            )
        counts = [count + more for count in counts]
        claim = draw(st.sampled_from(["", f" => {_each(counts)}", f" => {more:+d}"]))
        if kind in (4, 7, 10):
            claim = ""
        out += [f"  row{strand}: {row}{claim}", f"  row{strand}: {back}"]
        if kind == 4:
            out += [f"  row{strand}: k4 rm * k1 *", f"  row{strand}: purl"]
        if draw(st.integers(0, 5)) == 0:
            added = draw(st.integers(1, 4))
            what = draw(st.sampled_from(["pick up {} along left edge", "cast on {} more"]))
            out.append("  " + what.format(added))
            counts = [count + added for count in counts]
            out += [f"  row{strand}: knit", f"  row{strand}: purl"]
    if held:
        out.append(f"  row{first}: k3 take h{name}{held} * k1 *")
    out.append(
        draw(st.sampled_from([f"  bind off{first}", "  leave live", '  leave live "graft"']))
    )
    return out


def _each(counts: list[int]) -> str:
    """A count for each size, as one number where they are alike."""
    return str(counts[0]) if len(set(counts)) == 1 else "/".join(map(str, counts))


@st.composite
def near_sources(draw: st.DrawFn) -> str:
    """A right source with a few words changed, as `fuzz_slips` does it."""
    text = draw(st.one_of(st.sampled_from(TEXTS), valid_sources(), shaped_sources()))
    return slip(text, random.Random(draw(st.integers(0, 2**32))), TEXTS, most=2)


def broken_bytes() -> st.SearchStrategy[bytes]:
    """Bytes: any, or a source with some of its bytes changed."""

    def spoil(text: str, places: list[tuple[int, int]]) -> bytes:
        data = bytearray(text.encode())
        for at, value in places:
            data[at % len(data)] = value
        return bytes(data)

    spoilt = st.builds(
        spoil,
        st.sampled_from(TEXTS),
        st.lists(st.tuples(st.integers(0, 10**6), st.integers(0, 255)), max_size=6),
    )
    return st.one_of(st.binary(max_size=300), spoilt)
