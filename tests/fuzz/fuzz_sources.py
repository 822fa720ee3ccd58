"""Sources to try: right ones made by the grammar, nearly right ones, and bytes.

The right ones are right by construction: each row of a motif is built so that it takes the motif's
form, and each piece is cast on with a count of it.
"""

from __future__ import annotations

import random
import re
from pathlib import Path

from hypothesis import strategies as st

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


_TOKEN = re.compile(r'"[^"\n]*"|\w+|[^\w\s]|\s+')
ODD = ["*", "(", ")", ":", "=>", "x0", "x999999999", "0", "-", "--", '"', "in", "/", "k", "k2tgo",
       "½", "turn", "hold 3 as q", "take q", "to last 2", "to gap", "pm", "sm", "é", "\u202e", "\t",
       "as row 1", "every ws row: purl", "sl1", "1/2/3/4/5", "n", "cast on 9 more"]  # fmt: skip


@st.composite
def near_sources(draw: st.DrawFn) -> str:
    """A right source with a few tokens dropped, doubled, swapped or replaced."""
    text = draw(st.one_of(st.sampled_from(TEXTS), valid_sources()))
    dice = random.Random(draw(st.integers(0, 2**32)))
    tokens = _TOKEN.findall(text)
    for _ in range(draw(st.integers(1, 4))):
        at = dice.randrange(len(tokens))
        change = dice.randrange(5)
        if change == 0:
            del tokens[at]
        elif change == 1:
            tokens.insert(at, tokens[at])
        elif change == 2:
            other = dice.randrange(len(tokens))
            tokens[at], tokens[other] = tokens[other], tokens[at]
        elif change == 3:
            tokens[at] = dice.choice(ODD)
        else:
            tokens.insert(at, f" {dice.choice(ODD)} ")
        if not tokens:
            break
    return "".join(tokens)


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
