"""Where strands hang, against rows written out one by one."""

from __future__ import annotations

from hypothesis import given
from hypothesis import strategies as st

from loopwright.compile import check_source
from loopwright.count.strands import LEFT, RIGHT, Pickup, pickups
from loopwright.notation.source import Source

ROWS = st.lists(st.sampled_from(["A", "B", "C", ""]), min_size=1, max_size=5)


def source(rows: list[str], reps: int, last: str) -> str:
    motif = "".join(
        f"  row {n}{f' in {name}' if name else ''}: * k1 p{n} *\n" for n, name in enumerate(rows, 1)
    )
    return (
        'pattern "Stripes"\nstrand A\nstrand B\nstrand C\n'
        f"motif stripe\n{motif}"
        "piece cloth flat\n  cast on 60 in A\n  row in B: knit\n  row in C: knit\n"
        f"  work stripe x{reps}\n  row in {last}: knit\n  bind off in C\n"
    )


def written_out(rows: list[str], reps: int, last: str) -> dict[int, tuple[str, str, int]]:
    """By row: the strand taken up, the edge where it hangs, the row of its last use."""
    names = ["B", "C", *(rows * reps), last, "C"]
    hangs: dict[str, tuple[str, int]] = {"A": (RIGHT, 0)}
    current = "A"
    found: dict[int, tuple[str, str, int]] = {}
    for number, name in enumerate(names, 1):
        current = name or current
        if current in hangs:
            found[number] = (current, *hangs[current])
        hangs[current] = (LEFT if number % 2 else RIGHT, number)
    return found


def seen(rows: list[str], reps: int, last: str) -> list[Pickup]:
    checked = check_source(Source.of("test.loop", source(rows, reps, last)))
    (walk,) = checked.walks
    return list(pickups(checked.pattern, walk))


@given(rows=ROWS, reps=st.integers(1, 24), last=st.sampled_from("ABC"))
def test_every_pickup_is_as_written_out(rows: list[str], reps: int, last: str) -> None:
    wanted = written_out(rows, reps, last)
    ups = seen(rows, reps, last)
    for up in ups:
        if up.rested or up.hangs != up.edge:
            assert wanted[up.row] == (up.strand.upper(), up.hangs, up.last), (up, wanted)
    # Nothing is missed: what is found far off is found, and so is the longest rest.
    far = {
        (rows[(row - 3) % len(rows)] if 2 < row <= 2 + reps * len(rows) else row, strand)
        for row, (strand, edge, _) in wanted.items()
        if edge != (RIGHT if row % 2 else LEFT)
    }
    mine = {
        (rows[(up.row - 3) % len(rows)] if 2 < up.row <= 2 + reps * len(rows) else up.row,
         up.strand.upper())
        for up in ups
        if up.hangs != up.edge
    }  # fmt: skip
    assert mine == far
    assert max((row - last - 1 for row, (_, _, last) in wanted.items()), default=0) == max(
        (up.rested for up in ups), default=0
    )


def test_a_hundred_million_repeats_are_answered_at_once() -> None:
    ups = seen(["A", "B", "B"], 100_000_001, "A")
    assert len(ups) < 40
    assert ups[-1].row == 3 * 100_000_001 + 4
    assert ups[-1].strand == "c" and ups[-1].last == 2
