"""Every node carries the place of its own text."""

from __future__ import annotations

import dataclasses
import inspect
from collections.abc import Callable, Iterator
from typing import Any

import pytest

from loopwright.compile import Checked
from loopwright.model import body as body_module
from loopwright.model import pattern as pattern_module
from loopwright.model.body import Body, Fill, Group, Stitches
from loopwright.model.pattern import Row
from loopwright.notation import tree
from loopwright.notation.parse import parse
from loopwright.notation.quantity import Quantity, read_number
from loopwright.notation.source import Source, Span

EVERYTHING = """\
-- every statement of the notation, some rows twice at other indents
pattern "Spans & Edges"
  designer "A. N. Other"
  summary "Two strands."
  level easy
  care wash 30 gently, no bleach,  Dry-Flat
  sizes lap, "extra large"
  width 9½/12 cm
  length 110/150 cm
  gauge 20 stitches 36 rows = 10 cm in woven on 4.5 mm flat after blocking
  swatch 44 stitches 40 rows weighs 11.6 g in woven
  swatch 44 stitches 40 rows measures 22 x 11 cm
  needle circular 4.5 mm 90 cm
  bound slip 4 rows
  notion "Blunt tapestry needle"
  join by knot at edge, tail 10 in
  note "Read on."
yarn shore "Worsted": 100 g 200 m, weight 4, fibre "wool"
shade kelp "Kelp" of shore, colour #2f5d62
shade tide of shore, stripes #2f5d62 4 m, #6a9c89 5 m
strand A feeds half kelp, tide x2/3, 30 g kelp
strand B feeds tide
stitch mb "make bobble": takes 1, makes 1, yarn 5, "(k1, yo, k1) in the next stitch"
motif woven over 2n + 4
  edge 2 garter
  row 1 in B: k2 * sl1 wyif k1 * k2
    row 2: k2 * p1 * k2
  row 3 in A: k2 * k1 sl1 wyif * k2
      row 4 in B: as row 2
motif dots over 2n starts ws
  row 1: * k1 mb *
  every ws row in A: * k1 mb *   -- also says row 1
  row 2: (k1 p1) x2/3 * (k1 yo k1) in 1 k3tog * => +0
motif tube over n round
  rounds 1, 2, 3-4: knit
piece Blanket flat starts ws
  edge 2 garter
  width 30/40 cm
  section "Border"
  cast on 180/240 in A by long tail
  rows 2 in A: knit
  work woven to length - 2 rows
  work woven to 110 cm
  work woven until A is spent, keep 3 rows
  note "Rest."
  row: k2, * k1 * , k2 => 180/240
  row: k2, * k1 * , k2 => 180/240
  bind off in A by suspended
piece cap round
  cast on for width
  work tube x8
  work tube for 20 rows
  work tube until 8 stitches
  work tube to length + 3 cm
  join round
  hold 4/6 as thumb
  row: k2 hold 3 as tip pick up 3 along left edge take thumb * k1 * to last 2 turn
  row: * k1 * to 1 before gap w&t
  row: * k1 * to gap turn
  hold all as rest
  take tip, rest
  pick up 12 stitches in A along cast-on edge
  cast on 3 more
  join round
  begin round after 9
  round: k1 spread m1 x4/5 k2
  spread tube x3/4 in dots over 60 rows
  leave round
  leave live "graft"
piece end flat
  join cap
  bind off
"""

# These gather findings about nodes; their spans have other names, or are those of a node within.
NO_SPAN = {"Placed", "Pattern", "Reference", "RowClash", "Motif", "RowGap"}


def classes(module: Any) -> list[type]:
    """The dataclasses of a module and of its parts, such as ``tree_rows`` of ``tree``."""
    return [
        item
        for _, item in inspect.getmembers(module, inspect.isclass)
        if dataclasses.is_dataclass(item) and item.__module__.startswith(module.__name__)
    ]


@pytest.mark.parametrize("module", [tree, body_module, pattern_module], ids=lambda m: m.__name__)
def test_every_kind_of_node_has_a_span(module: Any) -> None:
    kinds = classes(module)
    assert kinds
    for kind in kinds:
        if kind.__name__ in ("Placed", "Reference", "RowClash"):
            continue
        assert "span" in {field.name for field in dataclasses.fields(kind)}, kind.__name__


def nodes(item: Any, base: int, body_base: int = 0) -> Iterator[tuple[Any, int]]:
    """Every dataclass below `item`, with what its span must be shifted by."""
    if isinstance(item, tuple | list):
        for part in item:
            yield from nodes(part, base, body_base)
        return
    if not dataclasses.is_dataclass(item) or isinstance(item, type | Span | Source):
        return
    if isinstance(item, Row):
        base, body_base = item.base, item.body_base
    yield item, body_base if isinstance(item, Body) else base
    if isinstance(item, body_module.Evenly):
        return  # what it comes to has no text of its own
    for field in dataclasses.fields(item):
        value = getattr(item, field.name)
        inside = body_base if isinstance(value, Body) else base
        if isinstance(item, pattern_module.PieceRow | pattern_module.Work) and field.name in (
            "times",
            "first",
            "last",
            "motif",
        ):
            inside = 0
        if isinstance(value, pattern_module.Stitch):
            inside = 0  # the line of the file that declares it
        yield from nodes(value, inside, body_base)


def numbers(text: str) -> tuple[float, ...]:
    return tuple(read_number(part) for part in text.split("/"))


def says_itself(node: Any, text: str) -> bool:
    """Whether the text at a node's span is what the node was made of."""
    if isinstance(node, tree.Name):
        return text.strip('"') == node.text
    if isinstance(node, tree.Text):
        return text.strip('"') == node.text
    if isinstance(node, tree.Count):
        if text.startswith(("row", "round")):  # a row without a number counts as one row
            return node.values == (1,)
        return numbers(text) == node.values
    if isinstance(node, Quantity):
        return numbers(text.split(maxsplit=1)[0]) == node.values
    if isinstance(node, body_module.Evenly):
        return text.startswith("spread ")
    if isinstance(node, tree.Word):
        return text.lower().split() == [node.text, *node.modifiers]
    if isinstance(node, Stitches):
        return bool(node.stitch.kind == "unknown") or (
            text.lower().startswith(node.stitch.word) or text in ("knit", "purl")
        )
    if isinstance(node, tree.GroupOf | Group):
        return text[0] == "(" and (text[-1] == ")" or text[-1].isdigit())
    if isinstance(node, tree.FillOf | Fill):
        return (text[0] == "*" and text[-1] == "*") or text in ("knit", "purl")
    if isinstance(node, tree.AsRow):
        return text == f"as row {node.number}"
    if isinstance(node, tree.Whole):
        return text == node.word
    if isinstance(node, tree.Claim):
        return text.startswith("=>")
    if isinstance(node, tree.Form):
        return text.replace(" ", "") == str(node).replace(" ", "").replace("−", "-")
    if isinstance(node, tree.Stripe):
        return text.startswith(node.colour)
    if isinstance(node, tree.RowSpan):
        return text[0].isdigit() and text[-1].isdigit()
    if isinstance(node, tree.Feed):
        return node.shade.text in text
    words = {
        tree.Times: "x", tree.ForRows: ("for ", "over "), tree.ToLength: "to ",
        tree.UntilStitches: "until ", tree.UntilSpent: "until ",
        tree.PatternLine: "pattern ", tree.LevelLine: "level ", tree.SizesLine: "sizes ",
        tree.GaugeLine: "gauge ", tree.SwatchLine: "swatch ", tree.NeedleLine: "needle ",
        tree.BoundLine: "bound ", tree.CareLine: "care ",
        tree.YarnLine: "yarn ", tree.ShadeLine: "shade ", tree.StrandLine: "strand ",
        tree.StitchLine: "stitch ", tree.MotifLine: "motif ", tree.EdgeLine: "edge ",
        tree.PieceLine: "piece ", tree.CastOnLine: "cast on ", tree.BindOffLine: "bind off",
        tree.WorkLine: "work ", tree.JoinLine: "join ", tree.JoinByLine: "join by ",
        tree.HoldLine: "hold ", tree.TakeLine: "take ", tree.PickLine: "pick up ",
        tree.LeaveLine: "leave ", tree.BeginLine: "begin ", pattern_module.BeginRound: "begin ",
        tree.SpreadLine: "spread ", tree.EvenlyOf: "spread ",
        pattern_module.Spread: "spread ",
        tree.Special: ("hold ", "take ", "pick up ", "to "),
        pattern_module.Hold: "hold ", pattern_module.Take: ("take ", "join "),
        pattern_module.PickUp: "pick up ", pattern_module.LeaveRound: "leave round",
        pattern_module.LeaveLive: "leave live",
        tree.MeasureLine: ("width ", "length "),
        tree.TextLine: ("designer ", "summary ", "notion ", "note ", "section "),
        tree.RowLine: ("row", "round", "every "), Row: ("row", "round", "every "),
        pattern_module.PieceRow: ("row", "round"), pattern_module.Work: "work ",
        pattern_module.CastOn: "cast on ", pattern_module.BindOff: "bind off",
        pattern_module.JoinRound: "join round", pattern_module.Remark: ("note ", "section "),
        pattern_module.Edge: "edge ", pattern_module.Motif: "motif ",
        pattern_module.Piece: "piece ", pattern_module.Pattern: "pattern ",
        pattern_module.Yarn: "yarn ", pattern_module.Shade: "shade ",
        pattern_module.Strand: "strand ", pattern_module.Stitch: "stitch ",
        tree.Steps: ("k", "*", "("), Body: ("k", "*", "("),
    }  # fmt: skip
    return text.startswith(words[type(node)])


def check_nodes(source: Source, found: Iterator[tuple[Any, int]]) -> set[str]:
    kinds: set[str] = set()
    for node, base in found:
        span = getattr(node, "span", None)
        if span is None:
            continue
        kinds.add(type(node).__name__)
        text = source.slice(span.shifted(base))
        assert 0 <= span.start < span.end, node
        assert text == text.strip() and "\n" not in text and "--" not in text, (node, text)
        assert says_itself(node, text), (node, text)
    return kinds


def test_tree_points_at_its_own_text() -> None:
    source = Source.of("cloth.loop", EVERYTHING)
    parsed = parse(source)
    assert not parsed.problems
    kinds: set[str] = set()
    for placed in parsed.lines:
        base = placed.base if isinstance(placed.statement, tree.RowLine) else 0
        assert source.line_column(placed.base) == (placed.line, 1)
        kinds |= check_nodes(source, nodes(placed.statement, base))
    expected = {kind.__name__ for kind in classes(tree)} - {"Placed"}
    assert kinds - {"Quantity"} == expected


def test_model_points_at_its_own_text(check: Callable[[str], Checked]) -> None:
    checked = check(EVERYTHING)
    kinds = check_nodes(checked.source, nodes(checked.pattern, 0))
    expected = {kind.__name__ for kind in classes(pattern_module)} | {"Body", "Group", "Fill"}
    assert expected - kinds <= {"Reference", "RowClash", "UnknownWord", "RowGap"}


def test_size_lists_point_at_themselves() -> None:
    source = Source.of("cloth.loop", EVERYTHING)
    lists = parse(source).size_lists
    assert len(lists) > 10
    for length, span in lists:
        assert source.slice(span).count("/") + 1 == length


def test_equal_rows_share_a_body_and_keep_their_places(check: Callable[[str], Checked]) -> None:
    checked = check(
        'pattern "Cloth"\npiece cloth flat\n  cast on 4\n  row: k4 => 5\n  row: k4 => 5\n'
        "    row: k4 => 5\n  bind off\n"
    )
    places = [checked.source.line_column(p.span.start) for p in checked.problems]
    assert places == [(4, 11), (5, 11), (6, 13)]


def test_unknown_words_in_equal_rows_are_each_marked(check: Callable[[str], Checked]) -> None:
    checked = check(
        'pattern "Cloth"\npiece cloth flat\n  cast on 4\n  row: k2 foo2 k1\n  row: k2 foo2 k1\n'
        "  bind off\n"
    )
    texts = [checked.source.slice(p.span) for p in checked.problems]
    places = [checked.source.line_column(p.span.start) for p in checked.problems]
    assert texts == ["foo2", "foo2"] and places == [(4, 11), (5, 11)]


def test_every_problem_lies_in_its_file(check: Callable[[str], Checked]) -> None:
    # A file cut off anywhere must still give places that can be shown.
    for cut in range(0, len(EVERYTHING), 7):
        text = EVERYTHING[:cut]
        for problem in check(text).problems:
            for span in (problem.span, *(label.span for label in problem.labels)):
                assert 0 <= span.start <= len(text), (problem.rule, span)
                assert span.start <= span.end <= len(text) + 1, (problem.rule, span)
