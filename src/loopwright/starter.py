"""The source that `loopwright new` writes."""

from __future__ import annotations

STARTER = """\
-- A pattern source: one idea a line, and each line starts with the word that says what it is.
-- Two dashes start a comment. Try it:  loopwright check {name}   loopwright build {name}

pattern "{title}"
  designer "Your name"
  summary "A small cloth in seed stitch with a garter border."
  level basic
  width 20 cm
  length 20 cm
  gauge 20 stitches 36 rows = 10 cm in seed on 4.5 mm
  needle straight 4.5 mm
  notion "Tapestry needle"

yarn base "Worsted cotton": 100 g 180 m, weight 4
shade main "Main colour" of base, colour #3f6f7a
strand A feeds main

-- What stands between two stars is repeated as often as it fits. The form says on which counts
-- the motif can be worked (here 9, 11, 13 ...), and the checker proves it for all of them.
motif seed over 2n + 7
  edge 3 garter
  row 1: k3 * k1 p1 * k1 k3
  row 2: k3 * k1 p1 * k1 k3

piece cloth flat
  cast on for width in A by long-tail
  rows 6: knit
  work seed to length - 6 rows
  rows 6: knit
  bind off
"""


def starter(name: str, title: str) -> str:
    """A small, valid, commented source that checks clean."""
    return STARTER.replace("{name}", name).replace("{title}", title.replace('"', "'"))
