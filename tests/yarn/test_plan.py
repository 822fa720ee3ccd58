"""Plans against every order of the balls, tried one by one."""

from __future__ import annotations

from collections.abc import Callable, Iterator
from itertools import combinations, product

import pytest

from loopwright.check.checked import Checked
from loopwright.yarn.feed import ends_of
from loopwright.yarn.plan import Clock, Plan, Stock, Turn, Wish, alike_pairs, judged
from loopwright.yarn.report import yarn_report
from loopwright.yarn.search import Search, shuffled

TEXT = """pattern "Cloth"
  gauge 20 stitches 36 rows = 10 cm in stripe
yarn wool: 50 g 100 m
shade kelp of wool, colour #2f5d62
strand A feeds kelp x9
strand B feeds kelp x9
motif stripe over n
  rows 1, 2 in A: knit
  rows 3, 4 in B: knit
piece scarf flat
  cast on 40 in A
  work stripe x{reps}
  bind off in A
"""
COLOURS = ("#2f5d62", "#dfe8e6", "#c9a66b", "#8c3b2e")


def wish(
    check: Callable[[str], Checked], reps: int, balls: tuple[int, ...], **more: object
) -> Wish:
    checked = check(TEXT.format(reps=reps))
    size = yarn_report(checked.pattern, checked.walks).sizes[0]
    stocks = tuple(
        Stock(name, number, 100.0, colour)
        for name, number, colour in zip("kdfe", balls, COLOURS, strict=False)
    )
    return Wish(size.ledger, ("a", "b"), stocks, ends_of(checked.pattern), **more)  # type: ignore[arg-type]


def sequences(wish: Wish, strand: str, clock: Clock) -> Iterator[tuple[Turn, ...]]:
    """Every way to feed one strand to its end, the stock left aside."""
    total = wish.ledger.total(strand)
    tail = wish.ends.tail

    def grow(eaten: float, turns: tuple[Turn, ...]) -> Iterator[tuple[Turn, ...]]:
        for stock, half in product(wish.stocks, (False, True)[: 1 + wish.halves]):
            here = stock.ball_metres * (0.5 if half else 1.0) - (tail if turns else 0.0)
            start = clock.at(strand, eaten)
            if here >= total - eaten - 1e-9:
                yield (*turns, Turn(stock.shade, half, start, clock.last(strand), False))
            elif here - tail > 0:
                reached = eaten + here - tail
                turn = Turn(stock.shade, half, start, clock.at(strand, reached), True)
                yield from grow(reached, (*turns, turn))

    yield from grow(0.0, ())


def in_stock(wish: Wish, both: tuple[tuple[Turn, ...], ...]) -> bool:
    """Whether the balls are there; halves are opened at a strand's start, rests used later."""
    halves = {stock.shade: 2 * stock.balls for stock in wish.stocks}
    opened = dict.fromkeys(halves, 0)
    # In the order in which the strands need them, as a maker takes them from the shelf.
    order = [
        (t.start if i else -1, s, i, t) for s, turns in enumerate(both) for i, t in enumerate(turns)
    ]
    for _, _, index, turn in sorted(order, key=lambda entry: entry[:3]):
        if turn.half and opened[turn.shade]:
            opened[turn.shade] -= 1
            halves[turn.shade] -= 1
        elif turn.half:
            if index or halves[turn.shade] - opened[turn.shade] < 2:
                return False
            opened[turn.shade] += 1
            halves[turn.shade] -= 1
        else:
            if halves[turn.shade] - opened[turn.shade] < 2:
                return False
            halves[turn.shade] -= 2
    return True


def brute(wish: Wish) -> list[Plan]:
    clock = Clock(wish)
    alike = alike_pairs(wish.stocks)
    ways = [list(sequences(wish, strand, clock)) for strand in wish.strands]
    found = []
    for both in product(*ways):
        if in_stock(wish, both):
            plan = judged(wish, tuple(zip(wish.strands, both, strict=True)), alike)
            if plan is not None:
                found.append(plan)
    return found


CASES = [
    (30, (1, 1), {}),
    (45, (1, 1, 1), {}),
    (45, (2, 1, 1), {}),
    (45, (1, 1, 1), {"apart": 12}),
    (45, (1, 1, 1, 1), {"halves": False}),
    (45, (2, 2, 1), {"first": {"a": "d"}}),
    (45, (2, 2, 1), {"last": {"b": "k"}, "apart": 8}),
    (60, (2, 2, 1), {}),
    (60, (3, 3), {}),
]


@pytest.mark.parametrize(("reps", "balls", "more"), CASES)
def test_the_best_is_the_best_of_all(
    check: Callable[[str], Checked], reps: int, balls: tuple[int, ...], more: dict[str, object]
) -> None:
    asked = wish(check, reps, balls, **more)
    every = brute(asked)
    found = Search(asked, best=1).run()
    assert found.exact
    if not every:
        assert not found.plans
        return
    assert found.plans[0].score == pytest.approx(max(plan.score for plan in every))


def test_some_cases_have_an_answer_and_one_has_none(check: Callable[[str], Checked]) -> None:
    assert Search(wish(check, 60, (2, 2, 2))).run().plans
    assert not Search(wish(check, 60, (1, 1))).run().plans  # too little yarn
    assert not Search(wish(check, 60, (2, 2, 2), apart=1000)).run().plans


def test_what_a_plan_promises(check: Callable[[str], Checked]) -> None:
    asked = wish(check, 90, (2, 2, 2, 2), apart=6)
    plans = Search(asked).run().plans
    assert plans
    for plan in plans:
        (_, one), (_, other) = plan.turns
        for a, b in product(one, other):
            if max(a.start, b.start) < min(a.end, b.end):
                assert a.shade != b.shade
            if a.ends and b.ends:
                assert abs(a.end - b.end) >= 6
        assert plan.met <= {frozenset(p) for p in combinations("kdfe", 2)}


def test_a_seed_decides(check: Callable[[str], Checked]) -> None:
    asked = wish(check, 60, (2, 2, 2))
    plans = {seed: Search(asked, seed=seed).run().plans for seed in (0, 1, 2, 3)}
    assert plans == {seed: Search(asked, seed=seed).run().plans for seed in (0, 1, 2, 3)}
    assert len({tuple(plan.score for plan in found) for found in plans.values()}) == 1
    assert len({found[0].feeds("a") for found in plans.values()}) > 1
    assert sorted(shuffled(list("abcdef"), 9)) == list("abcdef")
