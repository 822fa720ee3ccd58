"""shades-close: two shades that touch are hard to tell apart."""

from __future__ import annotations

from collections.abc import Iterator

from loopwright.check.context import Context, listed
from loopwright.check.rule import Rule
from loopwright.problem import ADVICE, Label, Problem


def check(context: Context) -> Iterator[Problem]:
    for news in context.yarn.close:
        yield Problem(
            "shades-close",
            ADVICE,
            f"{news.one} and {news.other} look alike",
            f"The shades {news.one} and {news.other} touch in the cloth, and with "
            f"{listed(news.visions)} they differ little in lightness (contrast {news.ratio:.2f} to "
            "1) and in hue.",
            news.span,
            (Label(news.label, "the other shade"),),
            "take a lighter or a darker shade for one of them, if the turns are to show.",
        )


RULE = Rule(
    name="shades-close",
    severity=ADVICE,
    title="two shades that touch are hard to tell apart",
    what="Shades that are held at once, or follow each other on one strand, are compared in normal "
    "vision and as seen with protanopia, deuteranopia and tritanopia (the matrices of Machado, "
    "Oliveira and Fernandes 2009). This is said where the contrast ratio is below 1.5 and the "
    "difference in colour below 20 (Delta E*ab): neither lightness nor hue tells them apart. "
    "There is no standard for yarn; for graphics on a page WCAG asks for 3 to 1.",
    wrong="""pattern "Hardly stripes"
  gauge 20 stitches 36 rows = 10 cm in stripe
yarn wool "Worsted": 50 g 100 m
shade moss "Moss" of wool, colour #7a7a35
shade rust "Rust" of wool, colour #a9683a
strand A feeds moss x2
strand B feeds rust x2
motif stripe over n
  rows 1, 2 in A: knit
  rows 3, 4 in B: knit
piece scarf flat
  cast on 30 in A
  work stripe x40
  bind off in A
""",
    right="""pattern "Stripes"
  gauge 20 stitches 36 rows = 10 cm in stripe
yarn wool "Worsted": 50 g 100 m
shade moss "Moss" of wool, colour #7a7a35
shade chalk "Chalk" of wool, colour #d8dad6
strand A feeds moss x2
strand B feeds chalk x2
motif stripe over n
  rows 1, 2 in A: knit
  rows 3, 4 in B: knit
piece scarf flat
  cast on 30 in A
  work stripe x40
  bind off in A
""",
    check=check,
)
