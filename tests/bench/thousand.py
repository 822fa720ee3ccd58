"""A shelf of distinct right patterns, made from the examples: the same for one seed every time.

    python tests/bench/thousand.py FOLDER --patterns 1000

Each takes an example and gives it another width, length or gauge by the project's own resize,
other colours and another title. One that does not check clean (no error; warnings are counted) is
thrown away and made anew with other measures, so that what is measured is the building.
"""

from __future__ import annotations

import argparse
import random
import re
import sys
from collections.abc import Iterator
from dataclasses import dataclass
from pathlib import Path

from loopwright.check.checked import Checked
from loopwright.compile import check_source
from loopwright.fit.asked import Wish
from loopwright.fit.resize import CannotResize, resize
from loopwright.notation.rewrite import apply_edits
from loopwright.notation.source import Source
from loopwright.problem import Edit

EXAMPLES = Path(__file__).parents[2] / "examples"
FIRST = [
    "Alder",
    "Birch",
    "Cedar",
    "Dune",
    "Ember",
    "Fern",
    "Gale",
    "Heath",
    "Islet",
    "Juniper",
    "Kelp",
    "Loch",
    "Moss",
    "Oat",
    "Quay",
]
SECOND = [
    "Morning",
    "Evening",
    "Harbour",
    "Meadow",
    "Winter",
    "Summer",
    "Island",
    "River",
    "Market",
    "Garden",
]
TRIES = 12
_COLOUR = re.compile(r"#[0-9a-f]{6}\b", re.I)


@dataclass(frozen=True, slots=True)
class Made:
    """A source of the shelf: its file's name, its text, and what was thrown away before it."""

    name: str
    text: str
    resized: bool
    warnings: int
    thrown_away: int


def patterns(number: int, seed: int = 1) -> Iterator[Made]:
    """`number` sources, no two alike even without their titles."""
    bases = [_checked(path.read_text("utf-8")) for path in sorted(EXAMPLES.glob("*.loop"))]
    seen: set[str] = set()
    for at in range(number):
        dice = random.Random(seed * 1_000_003 + at)
        base = bases[at % len(bases)]
        thrown_away = 0
        while True:
            found, resized = _another(base, dice)
            body = found.source.text.partition("\n")[2]
            if not found.has_errors and body not in seen:
                break
            thrown_away += 1
            if thrown_away == TRIES:
                raise SystemExit(f"{TRIES} variants of {base.pattern.title} do not check clean")
        seen.add(body)
        titled = _titled(found, f"{dice.choice(FIRST)} {dice.choice(SECOND)} {at + 1}")
        yield Made(f"{at + 1:04}.loop", titled, resized, len(found.problems), thrown_away)


def _checked(text: str) -> Checked:
    return check_source(Source.of("shelf.loop", text))


def _another(base: Checked, dice: random.Random) -> tuple[Checked, bool]:
    """The base with other measures and colours; whether the measures could be changed."""
    wishes: list[dict[str, object]] = [
        {"scale": f"{dice.randint(70, 140)}%"},
        {"gauge": [_gauge(base, dice)]},
        {"width": _times(base, "width", dice)},
        {"length": _times(base, "length", dice)},
    ]
    dice.shuffle(wishes)
    found, resized = base, False
    for wish in wishes:
        if resized or None in wish.values() or [None] in wish.values():
            continue
        try:
            again = resize(base, Wish.of(base.pattern, **wish), check_source)  # type: ignore[arg-type]
        except (CannotResize, ValueError):
            continue  # a shape that is written out; another measure may still be changed
        found = _checked(again.source.text)
        resized = not found.has_errors
    if not resized:
        found = base
    text = _COLOUR.sub(lambda match: _near(match[0], dice), found.source.text)
    return _checked(text), resized


def _gauge(base: Checked, dice: random.Random) -> str | None:
    gauge = base.pattern.gauge_for(None)
    if gauge is None:
        return None
    stitches = gauge.stitches + dice.choice([-1, -0.5, 0.5, 1])
    rows = gauge.rows + dice.choice([-2, -1, 1, 2])
    unit = f"{gauge.over.values[0]:g} {gauge.over.unit}"
    return f"{stitches:g} stitches {rows:g} rows = {unit}"


def _times(base: Checked, kind: str, dice: random.Random) -> str | None:
    """The measure of every size, all longer or shorter by one factor."""
    measure = getattr(base.pattern, kind)
    if measure is None or measure.unit is None:
        return None
    factor = dice.randint(80, 135) / 100
    return "/".join(f"{round(v * factor, 1):g}" for v in measure.values) + f" {measure.unit}"


def _near(colour: str, dice: random.Random) -> str:
    """A colour near another, so that shades that were apart stay so."""
    parts = (int(colour[at : at + 2], 16) + dice.randint(-9, 9) for at in (1, 3, 5))
    return "#" + "".join(f"{min(max(part, 0), 255):02x}" for part in parts)


def _titled(found: Checked, title: str) -> str:
    old = found.pattern.title
    assert old is not None
    quoted = found.source.slice(old.span)
    text = f'"{title}"' if quoted.startswith('"') else title
    return apply_edits(found.source.text, [Edit(old.span, text)])


def main() -> int:
    parser = argparse.ArgumentParser(description=__doc__.partition("\n")[0])
    parser.add_argument("folder", type=Path)
    parser.add_argument("--patterns", type=int, default=1000)
    parser.add_argument("--seed", type=int, default=1)
    args = parser.parse_args()
    args.folder.mkdir(parents=True, exist_ok=True)
    made = []
    for one in patterns(args.patterns, args.seed):
        (args.folder / one.name).write_text(one.text, "utf-8")
        made.append(one)
    clean = sum(not _checked(one.text).has_errors for one in made)
    print(
        f"{len(made):,} sources, {len({one.text for one in made}):,} distinct, {clean:,} check "
        f"clean ({sum(one.warnings > 0 for one in made):,} with warnings); "
        f"{sum(one.resized for one in made):,} with other measures; "
        f"{sum(one.thrown_away for one in made):,} thrown away"
    )
    return 0


if __name__ == "__main__":
    sys.exit(main())
