"""Random short rows, holders, picks and joins: the compiler against a knitter with two needles.

Each program is made a line at a time beside the hands of `two_needles`, mostly with numbers
that fit, now and then with numbers that do not. What the hands can do must check without an error
and count the same; what they cannot do must be refused.
"""

from __future__ import annotations

import os
import sys
from pathlib import Path

from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st

from loopwright.check.checked import Checked
from loopwright.compile import check_source
from loopwright.notation.source import Source

HERE = Path(__file__).parent
sys.path.insert(0, str(HERE))
import bruteforce_pieces as by_hand  # noqa: E402
from bruteforce import CannotWork, Loop, Marker  # noqa: E402

MOTIFS = """motif heel
  row 1: sl1 * k1 * to 1 before gap ssk k1 turn
  row 2: sl1 * p1 * to 1 before gap p2tog p1 turn
motif inward
  row 1: * k1 * to 2 before gap w&t
  row 2: * p1 * to 2 before gap w&t
motif outward
  row 1: * k1 * to gap k2 turn
  row 2: * p1 * to gap p2 turn
motif edging
  row 1: k3 k2tog turn
  row 2: * p1 *
motif teeth
  row 1: k1 yo k2 k2tog turn
  row 2: k5
  row 3: k1 yo k3 k2tog turn
  row 4: bo2 k4
motif taper
  row 1: k1 ssk * k1 * k2tog k1
  row 2: purl
motif ramp
  row 1: k3 turn
  row 2: p3
  row 3: k6 turn
  row 4: p6
motif odd
  row 1: k2 k2tog turn
  row 2: p1 yo p1 turn
  row 3: k2 turn
"""
NAMES = [line.split()[1] for line in MOTIFS.splitlines() if line.startswith("motif")]
PLAIN = ("side-flip", "never-used", "gauge-missing")
"""Rules that say nothing about stitches."""


def counting_errors(checked: Checked) -> list[int]:
    """The lines of the errors that speak of stitches."""
    return [
        checked.source.line_column(problem.span.start)[0]
        for problem in checked.problems
        if problem.severity == "error" and problem.rule not in PLAIN
    ]


class Writer:
    """Writes lines that mostly fit what hangs on the needles."""

    def __init__(self, data: st.DataObject, hands: by_hand.Hands) -> None:
        self.data = data
        self.hands = hands

    def number(self, low: int, high: int) -> int:
        """A number that fits; one time in twelve it is one off."""
        value = self.data.draw(st.integers(low, max(low, high)))
        slip = self.data.draw(st.integers(0, 23))
        return max(0, value + (1 if slip == 22 else -1 if slip == 23 else 0))

    def pick(self, *choices: str) -> str:
        return self.data.draw(st.sampled_from(choices))

    def stretches(self) -> list[int]:
        """Loops ahead between the rings."""
        found = [0]
        for thing in reversed(self.hands.left):
            if isinstance(thing, Marker):
                found.append(0)
            else:
                found[-1] += isinstance(thing, Loop)
        return found

    def holders(self, full: bool) -> list[str]:
        """Names of holders that are full (or empty); all where there is none."""
        names = [n for n in ("red", "blue") if (n in self.hands.holders.held) == full]
        return names or ["red", "blue"]

    def kinds(self, marked: bool) -> list[str]:
        """Kinds of rows that can be worked over what hangs; now and then any."""
        hands = self.hands
        kinds = ["turn", "last"]
        if hands._loops_to_gap(len(hands.counts) - 1) is not None:
            kinds += ["gap", "gap"]
        if not (hands.in_round and not hands.rs):
            kinds += ["whole", "named"]
            if not marked:
                kinds += ["shape", "pm", "hold", "pick"]
                kinds += ["take", "take"] if hands.holders.held else []
        if self.data.draw(st.integers(0, 19)) == 0:
            kinds = ["turn", "last", "gap", "whole", "named", "shape", "pm", "hold", "pick", "take"]
        return kinds

    def row(self) -> str:
        stretches = self.stretches()
        ahead = sum(stretches)
        kind = self.pick(*self.kinds(len(stretches) > 1))
        at = self.number(0, ahead - 1)
        rest = max(ahead - at, 0)
        back = self.hands.in_round and not self.hands.rs
        if kind == "whole":
            return self.pick("knit", "* k1 *", f"k{max(ahead, 1)}")
        if kind == "turn":
            return f"k{at} {self.pick('turn', 'w&t')}" if at else "turn"
        if kind == "last":
            tail = self.pick("", "k1", "k2tog", "kfb")
            end = "turn" if back else self.pick("turn", f"k{max(at, 1)}")
            used = {"": 0, "k1": 1, "k2tog": 2, "kfb": 1}[tail] if end != "turn" else 0
            spare = f"k{at - used}" if at > used else ""
            return f"* k1 * to last {at} {tail} {'turn' if end == 'turn' else spare}"
        if kind == "gap":
            gap = self.hands._loops_to_gap(len(self.hands.counts) - 1)
            before = self.number(0, min(gap or 0, 2))
            tail = self.pick("", f"k{max(before, 1)}", "k2tog", "k2tog k1")
            whole = "" if back else self.pick("turn", "sm", "")
            return f"* k1 * to {before} before gap {tail} {'' if whole == 'sm' else 'turn'}"
        if kind == "shape":
            step = self.pick("k2tog", "kfb", "yo", "m1", "(k1 yo k1) in 1", "bo2", "co3")
            return f"k{at} {step} * k1 *" if at else f"{step} * k1 *"
        if kind == "pm":
            return f"k{max(at, 1)} pm * k1 *"
        if kind == "hold":
            some = max(self.number(0, rest), 1)
            return f"k{max(at, 1)} hold {some} as {self.pick(*self.holders(False))} * k1 *"
        if kind == "take":
            return f"k{max(at, 1)} take {self.pick(*self.holders(True))} * k1 *"
        if kind == "pick":
            end = self.pick("turn", "* k1 *")
            return f"k{max(at, 1)} pick up {max(self.number(1, 4), 1)} along left edge {end}"
        parts = []
        for place, stretch in enumerate(stretches):
            body = self.pick("* k1 *", f"k{stretch}", "* k1 * yo", "m1 * k1 *")
            parts.append("* k1 *" if body == "k0" else body)
            if place < len(stretches) - 1:
                parts.append(self.pick("sm", "sm", "rm"))
        return " ".join(parts)

    def line(self) -> str:
        hands = self.hands
        kinds = ["row"] * 6 + ["work", "work", "pick", "more", "hold"]
        whole = not any(isinstance(x, Loop) for x in hands.right)
        kinds += ["take"] if hands.holders.held else []
        kinds += ["join", "leave", "rows"] if whole else []
        kinds += ["begin"] if whole and hands.in_round and hands.rs else []
        kind = self.pick(*kinds)
        if kind == "row":
            claim = f" => {self.number(0, 60)}" if self.data.draw(st.integers(0, 39)) == 0 else ""
            return f"row: {self.row()}{claim}"
        if kind == "rows":
            return f"rows {self.data.draw(st.integers(2, 4))}: {self.row()}"
        if kind == "work":
            times = self.data.draw(st.integers(1, 6))
            less = max(hands.live - self.data.draw(st.integers(1, 6)), 1)
            amount = self.pick(f"x{times}", f"for {times} rows", f"until {less} sts")
            return f"work {self.pick(*NAMES)} {amount}"
        if kind == "hold":
            ahead = sum(self.stretches())
            name = self.pick(*self.holders(False))
            return f"hold {max(self.number(1, ahead // 2), 1)} as {name}"
        if kind == "take":
            return f"take {self.pick(*self.holders(True))}"
        if kind == "pick":
            return f"pick up {max(self.number(1, 6), 1)} along right edge"
        if kind == "more":
            return f"cast on {max(self.number(1, 6), 1)} more"
        if kind == "begin":
            return f"begin round after {max(self.number(1, hands.live - 1), 1)}"
        return "join round" if kind == "join" else "leave round"


def write_program(data: st.DataObject) -> tuple[str, int | None]:
    """A source of one or two pieces, whole, or up to the first line that the hands cannot do.

    Beside it the number of that line (None: every line can be done).
    """
    file, _ = by_hand.read_pieces(f'pattern "P"\n{MOTIFS}')
    holders = by_hand.Holders()
    lines = ['pattern "P"', *MOTIFS.splitlines()]
    for name in ("first", "second")[: data.draw(st.integers(1, 2))]:
        in_round = data.draw(st.booleans())
        piece = by_hand.PieceText(name, in_round, False)
        hands = by_hand.Hands(file.own, holders, in_round, True, 0)
        writer = Writer(data, hands)
        lines.append(f"piece {name} {'round' if in_round else 'flat'}")
        starts = [f"cast on {data.draw(st.integers(4, 24))}"]
        if name == "second":
            starts += ["join first", "take red"]
        todo = [data.draw(st.sampled_from(starts)), *[""] * data.draw(st.integers(2, 9)), "end"]
        for given_line in todo:
            line = given_line or writer.line()
            if line == "end":
                line = data.draw(st.sampled_from(["bind off", "leave live", "hold all as red"]))
            lines.append(line)
            try:
                by_hand._line(line, piece, file, hands)
            except CannotWork:
                return "\n".join([*lines, "leave live"]) + "\n", len(lines)
    if holders.held:
        lines += ["piece rest flat", *[f"take {name}" for name in holders.held], "leave live"]
    return "\n".join(lines) + "\n", None


@settings(
    max_examples=int(os.environ.get("LOOPWRIGHT_EXAMPLES", "150")),
    deadline=None,
    suppress_health_check=[HealthCheck.too_slow, HealthCheck.data_too_large],
)
@given(st.data())
def test_what_the_hands_can_do_is_counted_and_nothing_else(data: st.DataObject) -> None:
    text, refused = write_program(data)
    checked = check_source(Source.of("p.loop", text))
    errors = counting_errors(checked)
    if refused is not None:
        said = [line for line in errors if line <= len(MOTIFS.splitlines()) + 1 or line == refused]
        assert said, f"line {refused} cannot be done, and errors are in {errors}:\n{text}"
        return
    assert errors == [], text
    knitted = by_hand.knit_pieces(text)
    for walk in checked.walks:
        made = knitted[walk.piece.name.key]
        rows = list(walk.listed())
        assert [row.end for row in rows] == made.counts, text
        assert [row.side == "rs" for row in rows] == made.right_sides, text
