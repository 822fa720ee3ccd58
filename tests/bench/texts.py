"""The sources that the benchmarks measure, made by arithmetic: the same text every time."""

from __future__ import annotations

import random

HEAD = """pattern "Long measure"
  gauge 20 stitches 28 rows = 10 cm

yarn wool "Wool": 50 g 110 m
shade grey "Grey" of wool, colour #808080
shade blue "Blue" of wool, colour #2f5d80
strand A feeds grey x9000
strand B feeds blue x9000

piece scarf flat
  cast on {count} in A
"""
TAIL = "  bind off in A\n"

FEW = (
    "  row in A: k3 * k2tog yo k1 * k3",
    "  row in A: k3 * p3 * k3",
    "  row in B: k3 * k1 yo ssk * k3",
    "  row in B: k3 * p1 sl1 wyif p1 * k3",
    "  row in A: knit",
    "  row in A: k3 (k1 p1) x3 * k1 p2 * k6",
)


def few_lines(rows: int) -> str:
    """Rows of a piece, of six different lines only."""
    lines = [FEW[number % len(FEW)] for number in range(rows)]
    return HEAD.format(count=60) + "\n".join(lines) + "\n" + TAIL


def numbered(rows: int) -> str:
    """A motif of rows that differ by their numbers only."""
    bodies = [line.partition(": ")[2] for line in FEW]
    lines = [f"  row {number}: {bodies[number % len(FEW)]}" for number in range(1, rows + 1)]
    return (
        'pattern "Numbered"\n\nmotif long over 3n + 12\n' + "\n".join(lines) + "\n\n"
        "piece scarf flat\n  cast on 60\n  work long x2\n  bind off\n"
    )


def distinct_lines(rows: int) -> str:
    """Rows of a piece, no two alike: 60 stitches cut up by chance, in 8 to 14 words."""
    chance = random.Random(7)
    seen: set[str] = set()
    lines: list[str] = []
    while len(lines) < rows:
        left = 60
        words: list[str] = []
        while left > 12:
            take = chance.randint(2, 8)
            kind = chance.randrange(6)
            if kind == 0:
                words.append("k2tog yo")
                take = 2
            elif kind == 1:
                words.append("yo ssk")
                take = 2
            elif kind == 2:
                words.append(f"(k1 p1) x{take // 2}")
                take = take // 2 * 2
            else:
                words.append(f"{chance.choice('kp')}{take}")
            left -= take
        words.append(f"* k1 * p{left - 4}")
        # Each strand for two rows: it hangs again where it is taken up.
        line = f"  row in {'AB'[len(lines) // 2 % 2]}: {' '.join(words)}"
        if line not in seen:
            seen.add(line)
            lines.append(line)
    return HEAD.format(count=60) + "\n".join(lines) + "\n" + TAIL


def follow(rows: int) -> str:
    """A motif in which each row is worked as the row two before it."""
    lines = ["  row 1: knit", "  row 2: purl"]
    lines += [f"  row {number}: as row {number - 2}" for number in range(3, rows + 1)]
    return (
        'pattern "Follow"\n\nmotif long over n\n' + "\n".join(lines) + "\n\n"
        "piece scarf flat\n  cast on 60\n  work long x2\n  bind off\n"
    )


def wide(stitches: int) -> str:
    """A cast-on of many stitches and a motif worked as often."""
    return (
        'pattern "Wide"\n\nmotif rib over 4n + 2\n  row 1: k2 * p2 k2 *\n  row 2: p2 * k2 p2 *\n\n'
        f"piece scarf flat\n  cast on {stitches}\n  work rib x{stitches // 4}\n  bind off\n"
    )


def sizes(count: int) -> str:
    """A garment in many sizes: each number a size list."""
    names = ", ".join(f"s{number}" for number in range(1, count + 1))
    widths = "/".join(str(80 + 4 * number) for number in range(count))
    rows = "/".join(str(40 + 2 * number) for number in range(count))
    fills = "/".join(str(10 + number) for number in range(count))
    return (
        f'pattern "Many sizes"\n  sizes {names}\n  gauge 20 stitches 28 rows = 10 cm\n\n'
        "motif rib over 4n\n  row 1: * k2 p2 *\n  row 2: as row 1\n\n"
        f"piece body flat\n  cast on {widths}\n  work rib for {rows} rows\n"
        f"  row: k{fills} * k1 *\n  row: purl\n  work rib x8\n  bind off\n"
    )


def chart(side: int) -> str:
    """A motif of so many rows over so many stitches, with every kind of symbol in it."""
    units = ("k1 p1", "yo k2tog", "ssk yo", "k2", "k2", "sl1 wyif k1", "p2")
    rows = "\n".join(
        f"  row {number}: "
        + " ".join(units[(number * 3 + at * 5 + at // 4) % 7] for at in range(side // 2))
        for number in range(1, side + 1)
    )
    return (
        'pattern "Chart"\n  gauge 20 stitches 28 rows = 10 cm\n\n'
        f"motif m over {side}\n{rows}\n\npiece p flat\n  cast on {side}\n  work m x2\n  bind off\n"
    )


_CLOTH = ("knit", "purl", "* k3 sl1 *", "* k1 p3 *")


def cloth(stitches: int, rows: int) -> str:
    """A piece of so many stitches and rows in two colours, with purls and slips."""
    lines = [
        f"  row in {'AB'[number // 2 % 2]}: {_CLOTH[number % len(_CLOTH)]}\n"
        for number in range(rows)
    ]
    return HEAD.format(count=stitches) + "".join(lines) + TAIL
