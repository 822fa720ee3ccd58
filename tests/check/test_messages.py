"""What a knitter reads: each case holds a source and the whole printed result.

A snapshot is a claim that the message is true, that its numbers are the source's and that its
help mends the source. Read a changed snapshot as a knitter before it is updated.
"""

from __future__ import annotations

import re
from collections.abc import Callable, Iterator

import pytest
from syrupy.assertion import SnapshotAssertion

from loopwright.check.printing import problem_text, problems_text, summary
from loopwright.compile import Checked
from loopwright.notation.rewrite import apply_edits
from loopwright.problem import Problem

RIB = """motif rib over 2n
  row 1: * k1 p1 *
  row 2: * k1 p1 *
"""


def flat(*lines: str, cast_on: str = "20", before: str = "", head: str = "") -> str:
    """A pattern with one flat piece that is cast on, has these lines and is bound off."""
    body = "".join(f"  {line}\n" for line in (f"cast on {cast_on}", *lines, "bind off"))
    return f'pattern "Cloth"\n{head}{before}piece cloth flat\n{body}'


def in_motif(
    form: str, *rows: str, cast_on: str = "20", work: str = "x4", opening: str = ""
) -> str:
    """A pattern whose one motif ``panel`` has these rows (each ``1: k1``) and is worked."""
    over = f" over {form}" if form else ""
    lines = "".join(
        f"  {row}\n" if row.startswith(("edge", "every", "row", "round")) else f"  row {row}\n"
        for row in rows
    )
    motif = f"motif panel{over}{opening}\n{lines}"
    return flat(f"work panel {work}", cast_on=cast_on, before=motif)


SIZES = "  sizes small, middle, large\n"
GAUGE = "  gauge 20 stitches 40 rows = 10 cm\n"

CASES: dict[str, str] = {
    # --- rows that do not count out ---
    "row too short": flat("row: k4 p6", cast_on="12"),
    "row too long": flat("row: k4 p10", cast_on="12"),
    "row one stitch too long": flat("row: k21"),
    "row one stitch too short": flat("row: k19"),
    "row too short in one size of three": flat("row: k20", cast_on="20/20/24", head=SIZES),
    "row too short in two sizes of three": flat("row: k20", cast_on="20/22/24", head=SIZES),
    "row too long with a fill": flat("row: k12 * k1 * k12"),
    "decreases use more than there are": flat("row: k2tog x11 k1", "row: (k2tog) x11"),
    "fill uneven": flat("row: k2 * p2 k2 *", cast_on="13"),
    "fill uneven by one": flat("row: * k2 p2 *", cast_on="21"),
    "fill uneven in all sizes": flat("row: * k2 p2 *", cast_on="21/25/30", head=SIZES),
    "fill uneven in a middle size": flat("row: * k2 p2 *", cast_on="20/22/24", head=SIZES),
    "fill uneven beside its neighbours": in_motif(
        "2n + 4",
        "1: k2 * sl1 wyif k1 * k2",
        "2: k2 * p1 * k2",
        "3: k2 * k1 sl1 wyif * k3",
        "4: as row 2",
    ),
    "fill goes once with one over": flat("row: * k2 p2 *", cast_on="5"),
    "fill that takes nothing": flat("row: k10 * yo * k10"),
    "two fills without a marker": flat("row: * k1 * p2 * k1 *"),
    "one bad row does not drown the rest": flat(
        "row: k20", "row: k19", "row: k20", "rows 4: * k2 p2 *", "row: k8 k4 k8"
    ),
    "a bad row that shapes does not drown the rest": flat(
        "row: k1 yo * k1 * yo k1 => 22", "row: k1 ssk k3 k2tog k1", "row: k20", "row: purl"
    ),
    "too few in a later repeat": in_motif(
        "", "1: k1 ssk * k1 * k2tog k1", "2: purl", cast_on="11", work="x5"
    ),
    "uneven in a later repeat": in_motif(
        "", "1: k1 yo * k2 * k1", "2: purl", cast_on="12", work="x5"
    ),
    # --- claims ---
    "claim wrong": flat("row: k1 yo * k1 * yo k1 => 21"),
    "claimed change wrong": flat("row: k1 yo * k1 * yo k1 => +1"),
    "claimed loss wrong": flat("row: k2tog * k1 * k2tog => -1"),
    "claim right once but repeated": in_motif(
        "", "1: k1 yo * k1 * yo k1 => 22", "2: purl", work="x3"
    ),
    "a claim inside a fill": flat("row: k2tog * k1 => 19"),
    "claim by size": flat("row: k2tog * k1 * => 19/21/22", cast_on="20/22/24", head=SIZES),
    # --- forms ---
    "form too wide": in_motif("2n", "1: * k2 p2 *", "2: * k2 p2 *"),
    "form of rib with a half": in_motif("4n", "1: k2 * p2 k2 *", "2: p2 * k2 p2 *", cast_on="22"),
    "form one row out": in_motif(
        "4n + 2",
        "1: k2 * p2 k2 *",
        "2: p2 * k2 p2 *",
        "3: k2 * p2 k2 * k1",
        "4: p2 * k2 p2 *",
        cast_on="22",
    ),
    "form that only n = 1 breaks": in_motif("2n", "1: k4 * k1 p1 *", "2: knit"),
    "form of one count": in_motif("12", "1: k6 p6", "2: k6 p5", cast_on="12"),
    "form where rows exclude one another": in_motif(
        "2n", "1: * k2 *", "2: k1 * p2 *", "3: * k2 *", "4: * p2 *"
    ),
    "form with an outer edge too many": in_motif(
        "6n + 1", "1: * k5 p1 * k2", "2: k2 * p1 k5 *", cast_on="19"
    ),
    "form without its n": in_motif("0n + 4", "1: k4", "2: p4", cast_on="4"),
    "form smallest failing is 2": in_motif("3n + 3", "1: * k6 *", "2: * p6 *", cast_on="12"),
    "form no n holds": in_motif("3n + 1", "1: k1 * k6 *", "2: k4 * p6 *", cast_on="10"),
    # --- casting on ---
    "cast-on misfit": flat("work rib x4", cast_on="21", before=RIB),
    "cast-on misfit in one size": flat("work rib x4", cast_on="20/21/24", before=RIB, head=SIZES),
    "cast-on misfit below the smallest": in_motif(
        "4n + 2", "1: k2 * p2 k2 *", "2: p2 * k2 p2 *", cast_on="3"
    ),
    "cast-on misfit of the second piece": flat("work rib x4", before=RIB).replace("cloth", "left")
    + "piece right flat\n  cast on 21\n  work rib x4\n  bind off\n",
    "cast-on misfit of two motifs": flat(
        "work rib x2",
        "work tri x2",
        cast_on="20",
        before=RIB + "motif tri over 3n\n  row 1: * k2 p1 *\n  row 2: * k1 p2 *\n",
    ),
    "count does not fit the second motif": flat("row: k1 yo * k1 * k1", "work rib x4", before=RIB),
    "cast on for width without a width": flat(
        "work rib x4", cast_on="for width", before=RIB, head=GAUGE
    ),
    "cast on for width without a gauge": flat(
        "work rib x4", cast_on="for width", before=RIB, head="  width 20 cm\n"
    ),
    "cast on for a width that nothing fits": flat(
        "row: k7", "row: * k2 *", cast_on="for width", head="  width 20 cm\n" + GAUGE
    ),
    "cast on twice": flat("rows 4: knit", "cast on 12", "rows 4: knit"),
    "nothing cast on": 'pattern "Cloth"\npiece cloth flat\n  rows 4: knit\n  bind off\n',
    "an empty piece": 'pattern "Cloth"\npiece cloth flat\n',
    "worked after binding off": flat("rows 4: knit", "bind off", "rows 4: knit"),
    "never bound off": 'pattern "Cloth"\npiece cloth flat\n  cast on 20\n  rows 4: knit\n',
    "never bound off by size": 'pattern "Cloth"\n'
    + SIZES
    + "piece cloth flat\n  cast on 20/24/28\n  rows 4: knit\n",
    # --- edges ---
    "garter edge broken at the end": in_motif(
        "n + 4", "edge 2 garter", "1: knit", "2: k2 * p1 * p2"
    ),
    "garter edge broken at the beginning": in_motif(
        "n + 4", "edge 2 garter", "1: p1 k1 * k1 * k2", "2: k2 * p1 * k2"
    ),
    "garter edge of a purl row": in_motif("n + 4", "edge 2 garter", "1: knit", "2: purl"),
    "stockinette edge broken on the wrong side": in_motif(
        "n + 2", "edge 1 stockinette", "1: k1 * p1 * k1", "2: k1 * k1 * p1"
    ),
    "stockinette edge broken on the right side": in_motif(
        "n + 2", "edge 1 stockinette", "1: k1 * p1 * p1", "2: p1 * k1 * p1"
    ),
    "slipped edge forgotten": in_motif(
        "n + 2", "edge 1 slipped", "1: sl1 * k1 * k1", "2: p1 * p1 * p1"
    ),
    "slipped edge at both ends": in_motif(
        "n + 2", "edge 1 slipped", "1: sl1 * k1 * sl1", "2: sl1 * p1 * p1"
    ),
    "slipped edge of three": in_motif(
        "n + 6", "edge 3 slipped", "1: sl1 k2 * k1 * k3", "2: sl1 k1 yo * p1 * k2tog k1"
    ),
    "seed edge broken": in_motif(
        "n + 4", "edge 2 seed", "1: k1 p1 * k1 * p1 k1", "2: k2 * p1 * p1 k1"
    ),
    "seed edge that becomes rib": in_motif(
        "n + 4", "edge 2 seed", "1: k1 p1 * k1 * p1 k1", "2: p1 k1 * p1 * k1 p1"
    ),
    "edge of a piece": flat("edge 2 garter", "rows 4: knit", "row: * p1 *").replace(
        "  cast on 20\n  edge 2 garter\n", "  edge 2 garter\n  cast on 20\n"
    ),
    "edge of a starts-ws motif": in_motif(
        "n + 2",
        "edge 1 stockinette",
        "1: k1 * k1 * k1",
        "2: k1 * p1 * k1",
        opening=" starts ws",
    ).replace("piece cloth flat", "piece cloth flat starts ws"),
    "unknown edge": in_motif("n + 4", "edge 2 picot", "1: knit", "2: k2 * p1 * k2"),
    "one row's border is the odd one out": in_motif(
        "2n + 4",
        "1: k2 * sl1 wyif k1 * k2",
        "2: k2 * p1 * k2",
        "3: k2 * k1 sl1 wyif * k2",
        "4: k2 * p1 * p2",
    ),
    # --- edge-odd-one-out must stay silent ---
    "silent: lace without a border": in_motif(
        "6n + 1",
        "1: * k1 yo k1 sk2p k1 yo * k1",
        "2: purl",
        "3: * k1 yo k1 sk2p k1 yo * k1",
        "4: purl",
        cast_on="19",
    ),
    "silent: lace whose outer stitch is worked now and then": in_motif(
        "8n + 1",
        "1: k1 * yo k2 sk2p k2 yo k1 *",
        "2: purl",
        "3: k1 * k7 k1 *",
        "4: purl",
        "5: k1 * k1 ssk yo k1 yo k2tog k2 *",
        "6: purl",
        cast_on="17",
    ),
    "silent: basketweave": in_motif(
        "6n + 3",
        "1: knit",
        "2: k3 * p3 k3 *",
        "3: p3 * k3 p3 *",
        "4: as row 2",
        "5: knit",
        "6: p3 * k3 p3 *",
        "7: k3 * p3 k3 *",
        "8: as row 6",
        cast_on="21",
    ),
    "silent: two by two rib": in_motif(
        "4n + 2", "1: k2 * p2 k2 *", "2: p2 * k2 p2 *", cast_on="22"
    ),
    "silent: a ridge between stockinette rows": in_motif(
        "n", "1: knit", "2: purl", "3: knit", "4: knit", "5: knit", "6: purl"
    ),
    # --- sides and numbers of rows ---
    "three rows repeated flat": in_motif("2n", "1: knit", "2: purl", "3: * k1 p1 *"),
    "motif begun on the wrong side": flat(
        "row: knit", "work st x4", before="motif st over n\n  row 1: knit\n  row 2: purl\n"
    ),
    "starts-ws motif begun on the right side": flat(
        "work st x4", before="motif st over n starts ws\n  row 1: purl\n  row 2: knit\n"
    ),
    "rounds worked flat": flat(
        "work st x4", before="motif st over n\n  round 1: knit\n  round 2: purl\n"
    ),
    "row of a motif missing": in_motif("n", "1: knit", "2: purl", "4: purl"),
    "many rows of a motif missing": in_motif("n", "1: knit", "12: purl"),
    "row of a motif twice": in_motif("n", "1: knit", "2: purl", "2: knit"),
    "row range twice": in_motif("n", "rows 1-4: knit", "rows 3-6: purl"),
    "row of a motif without a number": in_motif("n", "row: knit", "2: purl"),
    "row numbers backwards": in_motif("n", "rows 4-1: knit"),
    "row of a piece missing": flat("row 1: knit", "row 3: knit"),
    "row of a piece again": flat("row 1: knit", "row 2: purl", "row 2: knit"),
    "motif without rows": flat("work panel x2", before="motif panel over n\n"),
    "as a row that is not there": in_motif("n", "1: knit", "2: as row 5"),
    "as a row that is this one": in_motif("n", "1: knit", "2: as row 2"),
    # --- lengths and counts to work to ---
    "length already reached": flat("rows 80: knit", "work rib to 10 cm", before=RIB, head=GAUGE),
    "length in inches already reached": flat(
        "rows 80: knit", "work rib to 4 in", before=RIB, head=GAUGE
    ),
    "to length without a length": flat("work rib to length", before=RIB, head=GAUGE),
    "to a length without a gauge": flat("work rib to 10 cm", before=RIB),
    "a stated size without a gauge": flat("rows 4: knit", head="  width 20 cm\n"),
    "count never reached": 'pattern "Cap"\nmotif crown over 2n\n  round 1: * k2tog *\n'
    "  round 2: knit\npiece cap round\n  cast on 96\n  work crown until 8 stitches\n  bind off\n",
    "count that does not change": 'pattern "Cap"\nmotif crown over 2n\n  round 1: * k1 p1 *\n'
    "piece cap round\n  cast on 96\n  work crown until 8 stitches\n  bind off\n",
    "count stepped over": in_motif(
        "", "1: k1 ssk * k1 * k2tog k1", "2: purl", cast_on="21", work="until 8 stitches"
    ),
    "until a count above, by decreases": in_motif(
        "", "1: k1 ssk * k1 * k2tog k1", "2: purl", work="until 40 stitches"
    ),
    "until a strand is spent, of unknown length": flat(
        "work rib until A is spent",
        before=RIB + "yarn wool: 100 g\nshade kelp of wool\nstrand A feeds kelp\n",
        head=GAUGE,
    ),
    "until a strand that the motif never uses": flat(
        "work rib until B is spent",
        before=RIB.replace("1:", "1 in A:").replace("2:", "2 in A:")
        + "yarn wool: 100 g 200 m\nshade kelp of wool\nstrand A feeds kelp\nstrand B feeds kelp\n",
        head=GAUGE,
        cast_on="20 in A",
    ),
    # --- markers ---
    "marker missing": flat("row: k10 sm k10"),
    "only one marker": flat("row: k10 pm k10", "row: k10 sm k5 sm k5"),
    "markers met too early": flat("row: k10 pm k10", "row: k5 sm k5 sm k10"),
    "marker forgotten": flat("row: k10 pm k10", "row: k1 yo * k1 * yo k1"),
    "marker forgotten of two": flat("row: k5 pm k10 pm k5", "row: k5 sm * k1 *"),
    "stitches short before a marker": flat("row: k10 pm k10", "row: k9 sm k10"),
    "stitches too many before a marker": flat("row: k8 pm k12", "row: k8 sm k12"),
    "fill uneven between markers": flat("row: k5 pm k10 pm k5", "row: k5 sm * k3 * sm k5"),
    # --- names ---
    "motif misspelled": flat("work ribb x4", before=RIB),
    "motif unknown": flat("work cable x4", before=RIB),
    "strand unknown": flat("rows 4 in A: knit"),
    "bind off in pattern": flat("rows 4: knit").replace("bind off", "bind off in pattern"),
    "needle by its US number": flat("rows 4: knit", head="  needle US 7\n"),
    "needle by a bare number": flat("rows 4: knit", head="  needle 7\n"),
    "strand called by its shade": flat(
        "rows 4 in kelp: knit",
        "rows 4 in A: knit",
        before="yarn wool: 100 g 200 m\nshade kelp of wool\nstrand A feeds kelp\n",
    ),
    "shade of an unknown yarn": flat(
        "rows 4 in A: knit",
        before="yarn wool: 100 g 200 m\nshade kelp of wol\nstrand A feeds kelp\n",
    ),
    "two motifs of one name": flat("work rib x4", before=RIB + RIB),
    "two widths": flat("rows 40: knit", head="  width 10 cm\n  width 12 cm\n" + GAUGE),
    "never used": flat("rows 4: knit", before=RIB),
    "stitch never used": flat("rows 4: knit", before='stitch mb "make bobble": takes 1, makes 1\n'),
    "level unknown": flat("rows 4: knit", head="  level beginner\n"),
    "care mistyped": flat("rows 4: knit", head="  care wash 30 gentley, no bleach\n"),
    "care unknown": flat("rows 4: knit", head="  care beat it on a stone\n"),
    "care says two things": flat("rows 4: knit", head="  care hand wash, wash 30\n"),
    "care twice": flat("rows 4: knit", head="  care hand wash\n  care no iron\n"),
    "care without a word": flat("rows 4: knit", head="  care\n"),
    "care too hot for wool": flat(
        "rows 4 in A: knit",
        head="  care wash 60, no bleach, tumble dry low\n",
        before='yarn oak: 100 g, fibre "100% wool"\nshade bark of oak\nstrand A feeds bark\n',
    ),
    "care too hot for acrylic": flat(
        "rows 4 in A: knit",
        head="  care iron medium\n",
        before='yarn oak: 100 g, fibre "acrylic"\nshade bark of oak\nstrand A feeds bark\n',
    ),
    # --- sizes ---
    "size list too short": flat("rows 4: knit", cast_on="20/24", head=SIZES),
    "size list without sizes": flat("rows 4: knit", cast_on="20/24"),
    "size list too long": flat("rows 4: knit", cast_on="20/24/28/32", head=SIZES),
    "a fraction with a slash": flat("rows 40: knit", head="  width 1/2 in\n" + GAUGE),
    "a size twice": flat("rows 4: knit", cast_on="20/22/24", head="  sizes small, large, small\n"),
    "size off by width": flat("rows 40: knit", head="  width 30 cm\n" + GAUGE, cast_on="50"),
    "size off by length": flat("rows 40: knit", head="  length 20 cm\n" + GAUGE, cast_on="50"),
    "size off in inches in two sizes": flat(
        "rows 40: knit", head=SIZES + "  width 8/10/12 in\n" + GAUGE, cast_on="50/51/52"
    ),
    # --- units and big numbers ---
    "width without a unit": flat("rows 40: knit", head="  width 10\n" + GAUGE),
    "width in grams": flat("rows 40: knit", head="  width 10 g\n" + GAUGE),
    "gauge without a unit": flat("rows 40: knit", head="  gauge 20 stitches 40 rows = 10\n"),
    "to a length without a unit": flat("work rib to 10", before=RIB, head=GAUGE),
    "cast-on too big": flat("rows 4: knit", cast_on="5000000000"),
    "rows too many": flat("work rib x900000000", before=RIB),
    "doubling without end": in_motif("", "1: * kfb *", "2: purl", work="x40"),
    "half a stitch": flat("rows 4: knit", cast_on="20½"),
    "groups too deep": flat("row: " + "(" * 17 + "k1" + ")" * 17),
    # --- places ---
    "no pattern line": "piece cloth flat\n  cast on 20\n  rows 4: knit\n  bind off\n",
    "an empty source": "",
    "two patterns": flat("rows 4: knit")
    + flat("rows 4: knit").replace("piece cloth", "piece more"),
    "cast on inside the pattern": flat("rows 4: knit", head="  cast on 20\n"),
    "gauge after the yarn": 'pattern "Cloth"\nyarn wool: 50 g 100 m\n'
    "  gauge 20 sts 40 rows = 10 cm\n",
    "every row in a piece": flat("every ws row: purl"),
    "row before any block": "row 1: knit\n" + flat("rows 4: knit"),
    # --- words ---
    "k2tgo": flat("row: k9 k2tgo k9"),
    "k2yog": flat("row: k9 k2yog k9"),
    "unknown stitch": flat("row: k9 wrapturn k10"),
    "x without a group": flat("row: k1 p1 x10"),
    "psso": flat("row: sl1 k1 psso * k1 *"),
    "knit beside other stitches": flat("row: k1, knit"),
    "yfwd": flat("row: k9 yfwd k2tog k9"),
    "stitches said": flat("row: k20 sts"),
    "stitch without takes": flat("row: mb * k1 *", before='stitch mb "bobble": makes 1\n'),
    "line word misspelled": flat("rwo 1: knit"),
    "line word unknown": flat("knit across"),
    # --- lines that cannot be read ---
    "five slips of the pen, five messages": 'pattern "Cloth"\n  width = 20 cm\n'
    "motif rib ovr 2n\n  row 1: * k1 p1 * * \n  row 2 * k1 p1 *\npiece cloth flat\n"
    "  cast 20\n  work rib x4\n  bind off\n",
    "rep from star": flat("row: *k1, p1; rep from * to end"),
    "rep from star to the last two": flat("row: k2, *k1, p1; rep from * to last 2 sts, k2"),
    "knit to the end": flat("row: k2, knit to end"),
    "group times": flat("row: (k1, p1) 10 times"),
    "group twice": flat("row: (k5, p5) twice"),
    "square brackets": flat("row: [k1, p1] x10"),
    "square brackets times": flat("row: [k1, p1] 10 times"),
    "row with its side": in_motif("n", "row 1 (RS): knit", "2: purl"),
    "round abbreviated": flat("Rnd 1: knit"),
    "row with an ordinal": flat("1st row: knit"),
    "co 20": 'pattern "Cloth"\npiece cloth flat\n  co 20\n  rows 4: knit\n  bind off\n',
    "cast-on with a hyphen": 'pattern "Cloth"\npiece cloth flat\n  cast-on 20\n  rows 4: knit\n',
    "cast off": flat("rows 4: knit").replace("bind off", "cast off"),
    "rep rows": flat("row 1: knit", "row 2: purl", "rep rows 1-2 ten times"),
    "into the next stitch": flat("row: k5 (k1 yo k1) into next st * k1 *"),
    "count in parentheses": flat("row: knit (20 sts)"),
    "a space in k 2": flat("row: k 2 * p1 *"),
    "k 2 tog": flat("row: k 2 tog * k1 *"),
    "no colon": flat("row 1 k20"),
    "curly quotes": "pattern “Cloth”\npiece cloth flat\n  cast on 20\n  bind off\n",
    "a long dash": flat("rows 40: knit", "work rib to length — 2 rows", before=RIB),
    "inches by a quote": flat("rows 4: knit", head='  width 48"\n'),
    "inches and a fraction": flat("rows 4: knit", head="  width 7 1/2 in\n" + GAUGE),
    "a comma for a point": flat("rows 4: knit", head="  width 7,5 cm\n" + GAUGE),
    "a comma for thousands": flat("rows 4: knit", cast_on="1,000"),
    "a colour called CC": flat("colour cc red"),
    "a fill that nests": flat("row: * k1 * p1 * k1 *  *"),
    "a star that never closes": flat("row: * k1 p1"),
    "a parenthesis that never closes": flat("row: (k1 p1"),
    "a line that ends early": flat("work rib", before=RIB),
    "gauge without rows": flat("rows 4: knit", head="  gauge 20 stitches = 10 cm\n"),
    "text without quotes": "pattern Cloth\npiece cloth flat\n  cast on 20\n  bind off\n",
    "a control character": flat("row: k10\x07 k10"),
    "a word that changes direction": flat("row: k10 \u202ek10"),
    # --- upper case and tabs are fine ---
    "capitals and tabs are fine": 'PATTERN "Cloth"\nPiece Cloth FLAT\n\tCast On 20\n'
    "\tROW: K9 K2TOG K9 => 19\n\tBind Off\n",
}


@pytest.mark.parametrize("name", CASES)
def test_message(name: str, check: Callable[[str], Checked], snapshot: SnapshotAssertion) -> None:
    source = CASES[name]
    checked = check(source)
    text = problems_text(checked.problems, checked.source)
    assert f"{source}{'-' * 20}\n{text}({summary(checked.problems)})" == snapshot


def test_silent_cases_are_silent(check: Callable[[str], Checked]) -> None:
    for name, source in CASES.items():
        if name.startswith("silent:") or name.endswith("are fine"):
            assert not check(source).problems, name


def test_all_other_cases_speak(check: Callable[[str], Checked]) -> None:
    for name, source in CASES.items():
        if not (name.startswith("silent:") or name.endswith("are fine")):
            assert check(source).problems, name


# --- what must hold for every message --------------------------------------------------------


def said(checked: Checked) -> str:
    """What is printed, joined to one line a problem, without the lines of the source."""
    parts = []
    for problem in checked.problems:
        lines = problem_text(problem, checked.source).splitlines()
        parts.append(" ".join(w for line in lines if not re.search("[│━]", line)
                              for w in line.split()))  # fmt: skip
    return "\n".join(parts)


CLUMSY = {
    "an article before a vowel": r"\b[Aa] “?(?!one)[aeio]\w",
    "one of something in the plural": r"\bthe first 1 [a-z]+s\b",
    "the size said twice": r"in size (\w+)\b[^\n]*\(size \1\)",
    "the repeat said twice": r"in repeat (\d+), [^.;]*in repeat \1\b",
    "two numbers side by side": r"\binto [\d,]+ [\d,]+ times?\b",
    "fewer stitches than none": r"\bhas -\d",
    "a kind that is no noun": r"stitch(?:es)? of slipped",
    "the name of a letter of the code": r"\b[A-Z]+_[A-Z_]+\b|\bNone\b",
}


@pytest.mark.parametrize("name", CASES)
def test_no_message_is_clumsy(name: str, check: Callable[[str], Checked]) -> None:
    text = said(check(CASES[name]))
    for what, shape in CLUMSY.items():
        found = re.search(shape, text)
        assert not found, f"{what}: {found.group()}"


@pytest.mark.parametrize("name", CASES)
def test_a_fix_mends_its_problem(name: str, check: Callable[[str], Checked]) -> None:
    """The one right change, where a problem has one, takes the problem away."""
    checked = check(CASES[name])
    for problem in checked.problems:
        if problem.fix is not None:
            again = check(apply_edits(CASES[name], problem.fix.edits))
            rules = [p.rule for p in again.problems]
            assert rules.count(problem.rule) < [p.rule for p in checked.problems].count(
                problem.rule
            )


def numbers_after(help: str, words: str) -> list[int]:
    match = re.search(rf"{words} ([\d,]+)(?: or ([\d,]+))?", help)
    return [int(part.replace(",", "")) for part in match.groups() if part] if match else []


def problems_of(
    starts: str | tuple[str, ...], check: Callable[[str], Checked]
) -> Iterator[tuple[str, Problem]]:
    """Each problem of the cases whose names start so, with the case's source."""
    for name, source in CASES.items():
        if name.startswith(starts):
            yield from ((source, problem) for problem in check(source).problems)


def test_the_counts_that_are_offered_can_be_cast_on(check: Callable[[str], Checked]) -> None:
    seen = 0
    for source, problem in problems_of(("cast-on misfit", "form"), check):
        for number in numbers_after(problem.help, "cast on"):
            span = problem.span
            text = source[: span.start] + str(number) + source[span.end :]
            assert not [p for p in check(text).problems if p.is_error], (source, number)
            seen += 1
    assert seen >= 9


def test_the_form_that_is_offered_holds(check: Callable[[str], Checked]) -> None:
    seen = 0
    for source, problem in problems_of("form", check):
        match = re.search(r"write “(over [^”]+)”", problem.help)
        if match:
            text = re.sub(r"over [^\n]+", match[1].replace("−", "-"), source, count=1)
            assert "form-broken" not in [p.rule for p in check(text).problems], (source, match[1])
            seen += 1
    assert seen >= 5


@pytest.mark.parametrize("name", [n for n in CASES if n.startswith("seed edge")])
def test_the_seed_edge_that_is_offered_holds(name: str, check: Callable[[str], Checked]) -> None:
    text = CASES[name]
    for problem in check(text).problems:
        match = re.search(r"begin it with ((?:[kp]1 ?)+)", problem.help)
        assert match and problem.rule == "edge-broken"
        line = text.splitlines()[check(text).source.line_column(problem.span.start)[0] - 1]
        body = line.partition(": ")[2]
        mended = text.replace(body, match[1].strip() + " " + body[body.index("*") :])
        again = check(mended).problems
        # The other end of the row may still be wrong, but not this one.
        assert not any("begins with" in p.message for p in again if p.rule == "edge-broken")


def test_the_claim_that_is_offered_is_right(check: Callable[[str], Checked]) -> None:
    seen = 0
    for name in (name for name in CASES if "claim" in name):
        for source, problem in problems_of(name, check):
            match = re.search(r"(=> [-+\d,]+)", problem.help)
            if problem.rule == "claim-wrong" and match and not problem.sizes:
                text = re.sub(r"=> [-+\d]+", match[1], source)
                assert "claim-wrong" not in [p.rule for p in check(text).problems], source
                seen += 1
    assert seen >= 4


def test_what_is_said_of_a_count_that_never_comes_is_true(check: Callable[[str], Checked]) -> None:
    """“past 40” is said only where the count goes past it, and only reached counts are offered."""
    seen = 0
    for name in ("until a count above, by decreases", "count stepped over", "count never reached"):
        text = CASES[name]
        (problem,) = check(text).problems
        seen += len(numbers_after(problem.help, "work until"))
        for number in numbers_after(problem.help, "work until"):
            again = re.sub(r"until \d+", f"until {number}", text)
            assert "count-unreached" not in [p.rule for p in check(again).problems], (name, number)
    assert seen >= 4


def test_one_habit_gets_one_problem(check: Callable[[str], Checked]) -> None:
    for name in ("knit to the end", "into the next stitch", "group twice", "psso", "k 2 tog"):
        assert len(check(CASES[name]).problems) == 1, name


def test_a_problem_of_one_cause_is_said_once(check: Callable[[str], Checked]) -> None:
    for name in ("form of rib with a half", "doubling without end", "row numbers backwards",
                 "row of a motif without a number", "a fraction with a slash"):  # fmt: skip
        assert len(check(CASES[name]).problems) == 1, name


def test_labels_stand_in_the_piece_that_is_meant(check: Callable[[str], Checked]) -> None:
    checked = check(CASES["cast-on misfit of the second piece"])
    (problem,) = checked.problems
    worked = next(label for label in problem.labels if label.text == "worked here")
    assert checked.source.line_column(worked.span.start)[0] == 11


def test_a_word_is_not_broken_at_its_hyphen(check: Callable[[str], Checked]) -> None:
    for name, source in CASES.items():
        checked = check(source)
        for line in problems_text(checked.problems, checked.source).splitlines():
            assert not re.search(r"[a-z]-$", line), (name, line)


def test_a_recovered_source_never_says_more_than_it_read(check: Callable[[str], Checked]) -> None:
    text = CASES["five slips of the pen, five messages"]
    assert len(check(text).problems) == 5
