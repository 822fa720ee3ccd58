"""`loopwright plan`: feeds for the strands, from the shades and balls at hand."""

from __future__ import annotations

import argparse
from typing import TYPE_CHECKING

from loopwright.commands.border import (
    BAD_PATTERN,
    OK,
    Usage,
    miscounted,
    report,
    say,
    tell,
    tell_json,
)
from loopwright.compile import check_source
from loopwright.files import read_source
from loopwright.notation.hidden import named
from loopwright.record import replace

if TYPE_CHECKING:
    from loopwright.model.pattern import Pattern
    from loopwright.yarn.plan import Stock, Wish
    from loopwright.yarn.report import SizeYarn
    from loopwright.yarn.search import Found

HELP = "propose which ball feeds which strand, and when"
EXAMPLE = "loopwright plan examples/tideline-wrap.loop --shades kelp,dune,foam,ember --balls 2 each"


def options(parser: argparse.ArgumentParser) -> None:
    """The options of the command."""
    parser.add_argument("file", metavar="FILE")
    parser.add_argument(
        "--shades", metavar="NAMES", help="shades to plan with, with commas (default: all)"
    )
    parser.add_argument(
        "--balls",
        nargs="+",
        metavar="N",
        help="“2 each”, or “kelp=3,dune=2” (default: as the strands are fed)",
    )
    parser.add_argument("--size", metavar="NAME", help="which size (default: the last)")
    parser.add_argument(
        "--apart",
        type=int,
        default=4,
        metavar="ROWS",
        help="rows that joins of different strands lie apart at least (default: 4)",
    )
    parser.add_argument("--first", metavar="SHADES", help="kelp, or A=kelp,B=foam")
    parser.add_argument("--last", metavar="SHADES", help="kelp, or A=kelp,B=foam")
    parser.add_argument("--whole", action="store_true", help="no strand begins with half a ball")
    parser.add_argument("--best", type=int, default=3, metavar="N", help="how many (default: 3)")
    parser.add_argument("--seed", type=int, default=0, help="another order among equals")
    parser.add_argument("--json", action="store_true", help="print the plans as JSON")


def run(args: argparse.Namespace) -> int:
    """Run it; gives the exit status."""
    from loopwright.yarn.report import yarn_report
    from loopwright.yarn.search import Search

    if args.apart < 0 or args.best < 1:
        raise Usage("--apart counts from 0 and --best from 1")
    checked = check_source(read_source(args.file))
    pattern = checked.pattern
    # Feeds that do not last are what a plan is to mend.
    if miscounted(checked):
        report(checked)
        say("loopwright: nothing was planned, because the pattern has errors")
        return BAD_PATTERN
    if args.size is not None and args.size not in pattern.sizes:
        known = ", ".join(pattern.sizes)
        raise Usage(f"there is no size “{named(args.size)}”; the pattern has {known}")
    sizes = yarn_report(pattern, checked.walks).sizes
    wanted = args.size or pattern.sizes[-1]
    size = next((s for s in sizes if s.name == wanted), None)
    if size is None:
        say("loopwright: nothing tells how long a loop is: give the pattern a gauge or a swatch")
        return BAD_PATTERN
    wish = _wish(args, pattern, size)
    found = Search(wish, args.best, args.seed).run()
    upper = True
    if not found.plans and found.exact and wish.factor > 1:
        # Not for the upper end of the range: then at least for the middle figure.
        wish, upper = replace(wish, factor=1.0), False
        found = Search(wish, args.best, args.seed).run()
    if not found.plans:
        _none(wish, size, found)
        return BAD_PATTERN
    if args.json:
        tell_json(_json(wish, size, found, upper))
    else:
        _print(wish, size, found, upper)
    return OK


def _wish(args: argparse.Namespace, pattern: Pattern, size: SizeYarn) -> Wish:
    from loopwright.yarn.feed import ends_of
    from loopwright.yarn.plan import Wish

    strands = tuple(s.key for s in size.strands if s.key is not None)
    if not strands:
        raise Usage("the pattern works with no named strand, so there is nothing to plan")
    stocks = _stocks(args, pattern)
    spread = max(s.spread for s in size.strands)
    return Wish(
        size.ledger,
        strands,
        stocks,
        ends_of(pattern, size.size),
        args.apart,
        not args.whole,
        _fixed("--first", args.first, strands, stocks),
        _fixed("--last", args.last, strands, stocks),
        1.0 + spread,
        {s.key: s.name for s in size.strands if s.key is not None and s.name is not None},
    )


def _stocks(args: argparse.Namespace, pattern: Pattern) -> tuple[Stock, ...]:
    from loopwright.yarn.feed import runs_of, yarn_of_shade
    from loopwright.yarn.plan import Stock

    known = {shade.name.key: shade for shade in pattern.shades}
    if args.shades is None:
        names = list(known)
    else:
        names = [name.strip().casefold() for name in args.shades.split(",") if name.strip()]
    if not names:
        raise Usage("no shade is named: --shades kelp,dune")
    if len(set(names)) < len(names):
        raise Usage("a shade is named twice in --shades")
    for name in names:
        if name not in known:
            there = ", ".join(s.name.text for s in pattern.shades) or "none"
            raise Usage(
                f"there is no shade “{named(name)}”; the pattern has {there}\n"
                f"  add a line to it, as in: shade {named(name)} of YARN, colour #7a4b3c"
            )
    fed: dict[str, float] = {}
    for strand in pattern.strands:
        for run in runs_of(pattern, strand, len(pattern.sizes) - 1):
            fed[run.shade] = fed.get(run.shade, 0.0) + (run.balls or 0.0) * run.count
    balls = _balls(args.balls, names, fed)
    out: list[Stock] = []
    for name in names:
        yarn = yarn_of_shade(pattern, name)
        if yarn is None or not yarn.metres:
            raise Usage(f"the yarn of {name} does not say how many metres a ball has")
        colours = known[name].colours
        one = colours[0] if len(colours) == 1 else None
        out.append(Stock(known[name].name.text, balls[name], yarn.metres, one))
    return tuple(out)


def _balls(words: list[str] | None, names: list[str], fed: dict[str, float]) -> dict[str, int]:
    if words is None:
        return {name: max(int(fed.get(name, 0.0) + 0.999), 1) for name in names}
    text = " ".join(words).strip()
    first, *more = text.split() or [""]
    if first.isdecimal() and more in ([], ["each"]):
        return dict.fromkeys(names, _few(first))
    out: dict[str, int] = {}
    for part in text.replace(" ", "").split(","):
        name, _, number = part.partition("=")
        if name.casefold() not in names or not number.isdecimal():
            raise Usage(f"--balls {named(text)}: write “2 each”, or “kelp=3,dune=2”")
        out[name.casefold()] = _few(number)
    missing = [name for name in names if name not in out]
    if missing:
        raise Usage(f"--balls says nothing of {', '.join(missing)}")
    return out


def _few(text: str) -> int:
    number = int(text) if len(text) < 10 else 0
    if not 1 <= number <= 100:
        raise Usage("a plan is made with 1 to 100 balls of a shade")
    return number


def _fixed(
    option: str,
    text: str | None,
    strands: tuple[str, ...],
    stocks: tuple[Stock, ...],
) -> dict[str, str]:
    out: dict[str, str] = {}
    for part in (text or "").split(","):
        if not part.strip():
            continue
        left, equals, right = (word.strip().casefold() for word in part.partition("="))
        strand, shade = (left, right) if equals else (strands[0], left)
        if strand not in strands:
            raise Usage(
                f"{option}: there is no strand “{named(strand)}”; there are {', '.join(strands)}"
            )
        found = next((s.shade for s in stocks if s.shade.casefold() == shade), None)
        if found is None:
            raise Usage(f"{option}: “{named(shade)}” is not among the shades")
        out[strand] = found
    return out


def _none(wish: Wish, size: SizeYarn, found: Found) -> None:
    have = sum(stock.balls * stock.ball_metres for stock in wish.stocks)
    need = sum(size.ledger.total(strand) for strand in wish.strands)
    if have < need:
        say(
            f"loopwright: the balls hold {have:,.0f} m and the strands take {need:,.0f} m, "
            f"so {need - have:,.0f} m are missing before any join"
        )
    elif not found.exact:
        say(f"loopwright: no plan was found in {found.steps:,} steps; ask for less (--apart)")
    else:
        say(
            "loopwright: no order of these balls keeps the shades of the strands apart, their "
            f"joins {wish.apart} rows apart and what --first and --last ask; try a smaller "
            "--apart, or more shades"
        )


def _json(wish: Wish, size: SizeYarn, found: Found, upper: bool) -> dict[str, object]:
    from loopwright.yarn.plan import SCORE, contrasts

    return {
        "size": size.name,
        "exact": found.exact,
        "lasts_at_upper_end": upper,
        "score": SCORE,
        "plans": [
            {
                "score": round(plan.score, 2),
                "strands": [
                    {
                        "strand": wish.name(strand),
                        "feeds": plan.feeds(strand),
                        "joins": [turn.end for turn in turns if turn.ends],
                    }
                    for strand, turns in plan.turns
                ],
                "pairs": sorted(sorted(pair) for pair in plan.met),
                "rows_apart": plan.gap,
            }
            for plan in found.plans
        ],
        "contrasts": [
            {
                "one": one.shade,
                "other": other.shade,
                "ratios": {sight.vision: round(sight.ratio, 2) for sight in seen},
                "close": [sight.vision for sight in seen if sight.close],
            }
            for one, other, seen in contrasts(wish.stocks)
        ],
    }


def _print(wish: Wish, size: SizeYarn, found: Found, upper: bool) -> None:
    from itertools import combinations

    from loopwright.yarn.plan import SCORE, contrasts

    pairs = [frozenset(p) for p in combinations([stock.shade for stock in wish.stocks], 2)]
    tell(f"size {size.name}; score: {SCORE}")
    if not upper:
        tell("These balls last at the middle figure only, not at the upper end of its range.")
    for number, plan in enumerate(found.plans, 1):
        tell(f"\nplan {number}, score {plan.score:.1f}")
        for strand, turns in plan.turns:
            tell(f"  strand {wish.name(strand)} feeds {plan.feeds(strand)}")
            joins = [str(turn.end) for turn in turns if turn.ends]
            if joins:
                word = "join in row" if len(joins) == 1 else "joins in rows"
                tell(f"    {word} {', '.join(joins)}")
        missed = [" and ".join(sorted(pair)) for pair in pairs if pair not in plan.met]
        text = f"  {len(plan.met)} of {len(pairs)} pairs of shades meet"
        tell(text + (f"; not {', '.join(missed)}" if missed and len(wish.strands) > 1 else ""))
        if plan.gap is not None:
            tell(f"  joins of different strands lie {plan.gap} rows apart or more")
    if not found.exact:
        tell(f"\nThe search stopped after {found.steps:,} steps; there may be a better plan.")
    rows = contrasts(wish.stocks)
    if rows:
        kinds = [sight.vision for sight in rows[0][2]]
        tell(f"\n{'contrast':<24}" + "".join(f"{kind:>15}" for kind in kinds))
        for one, other, seen in rows:
            name = f"{one.shade}, {other.shade}"
            cells = "".join(
                f"{f'{sight.ratio:.1f}' + (' close' if sight.close else ''):>15}" for sight in seen
            )
            tell(f"{name:<24}{cells}")
