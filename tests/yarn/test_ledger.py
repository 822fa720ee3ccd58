"""Sums of series against a maker who works every row and every stitch singly."""

from __future__ import annotations

from collections.abc import Callable, Iterator

import pytest

from loopwright.check.checked import Checked
from loopwright.model.body import Fill, Group, Step, Stitches
from loopwright.yarn.ledger import Lump, Rows
from loopwright.yarn.report import SizeYarn, yarn_report

Check = Callable[[str], Checked]

HEAD = """pattern "Cloth"
  gauge 20 stitches 28 rows = 10 cm in stockinette
yarn wool: 50 g 100 m
shade kelp of wool
shade foam of wool
shade dune of wool
strand A feeds {a}
strand B feeds {b}
"""
CLOTHS = {
    "even": "motif woven over 2n + 4\n  row 1 in B: k2 * sl1 wyif k1 * k2\n"
    "  row 2 in B: k2 * p1 * k2\n"
    "  row 3 in A: k2 * k1 sl1 wyif * k2\n  row 4 in A: as row 2\npiece cloth flat\n"
    "  cast on 60 in A\n  rows 2 in A: knit\n  work woven x25\n  work woven for 6 rows\n"
    "  rows 2 in A: knit\n  bind off in A\n",
    "growing": "motif wing\n  row 1 in A: k2 yo * k1 * yo k2 => +2\n  row 2 in A: knit\n"
    "  row 3 in B: k2 yo * k1 * yo k2\n  row 4 in B: purl\npiece cloth flat\n  cast on 7 in A\n"
    "  work wing x40\n  bind off in A\n",
    "shrinking, with groups": "motif wing\n  row 1 in A: ssk (k1 sl1) x2 * k1 * k2tog\n"
    "  row 2: purl\npiece cloth flat\n  cast on 90 in B\n  rows 3 in B: knit\n  row in A: purl\n"
    "  work wing x30\n  bind off in A\n",
    "doubling": "motif twice\n  row 1 in A: * kfb *\n  row 2: knit\n  row 3 in B: knit\n"
    "  row 4: knit\npiece cloth flat\n  cast on 5 in A\n  work twice x6\n  bind off in B\n",
    "first rows unnamed": "motif turn\n  row 1: knit\n  row 2: knit\n  row 3 in B: knit\n"
    "  row 4: knit\npiece cloth flat\n  cast on 30 in A\n  work turn x9\n  bind off in A\n",
}


def size_of(check: Check, cloth: str, a: str = "kelp x9", b: str = "foam x9") -> SizeYarn:
    checked = check(HEAD.format(a=a, b=b) + CLOTHS[cloth])
    assert not [p for p in checked.problems if p.is_error and p.rule != "yarn-short"]
    return yarn_report(checked.pattern, checked.walks).sizes[0]


def loops_in(steps: tuple[Step, ...], have: int) -> Iterator[tuple[int, float]]:
    """(stitches taken, loops) of each single step of a row over `have` stitches."""
    fixed = sum(t for s in steps if not isinstance(s, Fill) for t, _ in single(s))
    for step in steps:
        if isinstance(step, Fill):
            unit = [one for inner in step.steps for one in single(inner)]
            for _ in range((have - fixed) // sum(t for t, _ in unit)):
                yield from unit
        else:
            yield from single(step)


def single(step: Step) -> Iterator[tuple[int, float]]:
    if isinstance(step, Stitches):
        for _ in range(step.number(0)):
            yield step.stitch.takes, step.stitch.yarn
    elif isinstance(step, Group):
        for _ in range(step.number(0)):
            for inner in step.steps:
                yield from single(inner)


def worked(size: SizeYarn, strand: str) -> list[tuple[int, int, float]]:
    """Every single stitch of a strand: row, stitches of the row done with it, running metres."""
    out: list[tuple[int, int, float]] = []
    total = 0.0
    loop = next(r.loop for p in size.ledger.parts if isinstance(p, Rows) for r in p.rows)
    for part in size.ledger.parts:
        if isinstance(part, Lump):
            if part.strand == strand:
                total += part.metres
            continue
        for index in range(part.count):
            k, line = divmod(index, len(part.rows))
            row = part.rows[line]
            if row.strand != strand:
                continue
            done = 0
            for takes, loops in loops_in(row.row.body.steps, row.stitches(k)):
                done += takes
                total += loops * loop
                out.append((part.first + index, done, total))
    return out


@pytest.mark.parametrize("cloth", CLOTHS)
@pytest.mark.parametrize("strand", ["a", "b"])
def test_running_totals_are_those_of_single_stitches(check: Check, cloth: str, strand: str) -> None:
    size = size_of(check, cloth)
    stitches = worked(size, strand)
    after: dict[int, float] = {row: metres for row, _, metres in stitches}
    assert after
    for row, metres in after.items():
        assert size.ledger.through(strand, 0, row) == pytest.approx(metres, abs=1e-9)


@pytest.mark.parametrize("cloth", CLOTHS)
@pytest.mark.parametrize("strand", ["a", "b"])
def test_a_spot_is_the_last_stitch_that_a_length_works(
    check: Check, cloth: str, strand: str
) -> None:
    size = size_of(check, cloth)
    stitches = worked(size, strand)
    checked = 0
    for index in range(0, len(stitches) - 1, max(len(stitches) // 60, 1)):
        row, done, metres = stitches[index]
        following = stitches[index + 1]
        # A hair less than the next stitch needs: just as far as this one.
        spot = size.ledger.spot(strand, (metres + following[2]) / 2)
        assert spot is not None
        if following[0] == row and following[2] - metres < 0.05:
            assert (spot.where, spot.row, spot.stitch) == ("row", row, done)
            checked += 1
    assert checked > 10


def test_a_strand_passes_from_the_row_before_into_rows_without_a_name(check: Check) -> None:
    size = size_of(check, "first rows unnamed")
    rows = [p for p in size.ledger.parts if isinstance(p, Rows)]
    named = [r.strand for p in rows for k in range(p.reps) for r in p.rows]
    assert named == ["a", "a"] + ["b"] * 34


def test_the_millionth_row_needs_no_loop(check: Check) -> None:
    text = HEAD.format(a="kelp x900000", b="foam") + (
        "motif plain over n\n  row 1: knit\n  row 2: purl\npiece cloth flat\n  cast on 60 in A\n"
        "  work plain x5000000\n  bind off in A\n"
    )
    checked = check(text)
    size = yarn_report(checked.pattern, checked.walks).sizes[0]
    loop = next(r.loop for p in size.ledger.parts if isinstance(p, Rows) for r in p.rows)
    start = size.ledger.through("a", 0, 0)
    assert size.ledger.through("a", 0, 1_000_000) - start == pytest.approx(1_000_000 * 60 * loop)
    spot = size.ledger.spot("a", start + 999_999.5 * 60 * loop)
    assert spot is not None and (spot.row, spot.stitch) == (1_000_000, 30)
    strand = size.strand("a")
    assert strand is not None
    # Not every join of a nonsense piece is listed, but all are counted and paid for.
    assert strand.eaten.joined > 100_000
    assert strand.eaten.short is not None or strand.metres > size.ledger.total("a")


def test_joins_add_up_to_the_balls(check: Check) -> None:
    size = size_of(check, "even", "half kelp, dune, half kelp", "foam x2")
    strand = size.strand("a")
    assert strand is not None
    first, second = (
        strand.eaten.joins[:2] if len(strand.eaten.joins) > 1 else (strand.eaten.joins[0], None)
    )
    tail = 0.2  # 20 cm, the usual way
    assert first.metres == pytest.approx(50 - tail)
    assert first.left_grams == pytest.approx(25)
    assert (first.old, first.new) == ("kelp", "dune")
    if second is not None:
        assert second.metres - first.metres == pytest.approx(100 - 2 * tail)
        assert second.left_grams == pytest.approx(0)
    assert sum(strand.eaten.used) == pytest.approx(strand.metres)
    assert strand.metres == pytest.approx(size.ledger.total("a") + 2 * tail * strand.eaten.joined)


def test_a_knot_falls_between_two_rows(check: Check) -> None:
    text = HEAD.format(a="half kelp, dune x3", b="foam x3").replace(
        "  gauge", "  join by knot at edge, tail 10 in\n  gauge", 1
    )
    checked = check(text + CLOTHS["even"])
    strand = yarn_report(checked.pattern, checked.walks).sizes[0].strand("a")
    assert strand is not None and strand.eaten.joins
    for join in strand.eaten.joins:
        assert join.spot.stitch == 0
        assert join.tail == pytest.approx(0.254)
        assert join.left_grams is not None and join.left_grams >= 0
