"""Work that ends by yarn: the most repeats that leave the rest its yarn."""

from __future__ import annotations

from collections.abc import Callable

import pytest

from loopwright.check.checked import Checked
from loopwright.yarn.report import SizeYarn, yarn_report

Check = Callable[[str], Checked]

TEXT = """pattern "Cloth"
  gauge 20 stitches 36 rows = 10 cm in woven
yarn wool: 50 g 100 m
shade kelp of wool
shade foam of wool
strand A feeds {a}
strand B feeds foam x90
motif woven over 2n + 4
  row 1 in B: k2 * sl1 wyif k1 * k2
  row 2 in B: k2 * p1 * k2
  row 3 in A: k2 * k1 sl1 wyif * k2
  row 4 in A: as row 2
piece cloth flat
  cast on 60 in A
  rows 2 in A: knit
  work woven {amount}
{rest}"""
REST = "  rows 2 in A: knit\n  bind off in A\n"


def size_of(check: Check, amount: str, a: str = "kelp x2", rest: str = REST) -> SizeYarn:
    checked = check(TEXT.format(a=a, amount=amount, rest=rest))
    return yarn_report(checked.pattern, checked.walks).sizes[0]


def reps_of(size: SizeYarn) -> int:
    return next(part.reps for part in size.ledger.parts if getattr(part, "motif", None))


@pytest.mark.parametrize("a", ["kelp", "kelp x2", "half kelp, foam x3", "40 g kelp, 30 m kelp"])
@pytest.mark.parametrize(
    "rest", [REST, "  bind off in A by i-cord\n", "  rows 9 in A: knit\n" + REST]
)
def test_one_repeat_more_would_be_too_many(check: Check, a: str, rest: str) -> None:
    reps = reps_of(size_of(check, "until A is spent", a, rest))
    just = size_of(check, f"x{reps}", a, rest).strand("a")
    more = size_of(check, f"x{reps + 1}", a, rest).strand("a")
    assert just is not None and just.eaten.short is None
    assert more is not None and more.eaten.short is not None


def test_rows_kept_count_only_beyond_those_that_are_there(check: Check) -> None:
    plain = reps_of(size_of(check, "until A is spent"))
    assert reps_of(size_of(check, "until A is spent, keep 2 rows")) == plain
    kept = reps_of(size_of(check, "until A is spent, keep 20 rows"))
    size = size_of(check, f"x{kept}")
    strand, part = size.strand("a"), next(p for p in size.ledger.parts if getattr(p, "motif", None))
    assert strand is not None and strand.fed is not None
    row = max(r.metres(0) for r in part.rows if r.strand == "a")  # type: ignore[union-attr]
    one = part.series("a")[0]  # type: ignore[union-attr]
    knit = 2 * 60 * 0.02  # about: the two rows that follow
    left = strand.fed - strand.metres
    assert 20 * row - knit - 1 <= left <= 20 * row - knit + one + 1


def test_a_piece_before_has_eaten_its_share(check: Check) -> None:
    text = TEXT.format(a="kelp x2", amount="until A is spent", rest=REST)
    before = (
        "piece border flat\n  cast on 60 in A\n  rows 20 in A: knit\n  bind off in A\npiece cloth"
    )
    alone, after = check(text), check(text.replace("piece cloth", before))
    assert after.walks[-1].rows < alone.walks[-1].rows - 40
    strand = yarn_report(after.pattern, after.walks).sizes[0].strand("a")
    assert strand is not None and strand.eaten.short is None


def test_a_growing_shawl_ends_by_yarn(check: Check) -> None:
    text = """pattern "Shawl"
  gauge 18 stitches 28 rows = 10 cm
yarn wool: 100 g 190 m
shade a of wool
strand A feeds a x{balls}
motif wing
  row 1: k3 yo * k1 * yo k3 => +2
  row 2: knit
piece shawl flat
  cast on 9
  work wing {amount}
  bind off
"""
    reps = check(text.format(balls=3, amount="until A is spent")).walks[0].rows // 2
    shorts = {
        more: [
            p.rule
            for p in check(text.format(balls=3, amount=f"x{reps + more}")).problems
            if p.severity != "advice"
        ]
        for more in (0, 1)
    }
    assert shorts == {0: [], 1: ["yarn-short"]}


def test_a_ball_too_small_and_a_strand_that_is_not_there(check: Check) -> None:
    def rules(text: str) -> list[tuple[str, str]]:
        return [(p.rule, p.severity) for p in check(text).problems]

    assert ("length-unreached", "error") in rules(
        TEXT.format(a="5 g kelp", amount="until A is spent", rest=REST)
    )
    alone = TEXT.format(a="kelp", amount="until B is spent", rest=REST)
    alone = alone.replace("row 1 in B", "row 1 in A").replace("row 2 in B", "row 2 in A")
    assert ("length-unreached", "error") in rules(alone)
