"""The tree of a source: one statement a line, each node with its span.

The nodes stand by kind of line in `tree_header`, `tree_materials`, `tree_rows` and `tree_pieces`;
here they are one language. Spans are places in the file, except inside `RowLine`: there they count
from the start of the line, since equal lines share one `RowLine` (see `Placed.base`).
"""

from __future__ import annotations

from loopwright.notation.tree_header import (
    BOUND_UNITS,
    BoundLine,
    CareLine,
    GaugeLine,
    JoinByLine,
    LevelLine,
    MeasureLine,
    NeedleLine,
    PatternLine,
    SizesLine,
    SwatchLine,
    TextLine,
)
from loopwright.notation.tree_materials import (
    Feed,
    ShadeLine,
    StitchLine,
    StrandLine,
    Stripe,
    YarnLine,
)
from loopwright.notation.tree_pieces import (
    Amount,
    BeginLine,
    BindOffLine,
    CastOnLine,
    ForRows,
    HoldLine,
    JoinLine,
    LeaveLine,
    PickLine,
    PieceLine,
    SpreadLine,
    TakeLine,
    Times,
    ToLength,
    UntilSpent,
    UntilStitches,
    WorkLine,
)
from loopwright.notation.tree_rows import (
    AsRow,
    Body,
    Claim,
    EdgeLine,
    EvenlyOf,
    FillOf,
    Form,
    GroupOf,
    MotifLine,
    Node,
    RowLine,
    RowSpan,
    Special,
    Steps,
    Whole,
    Word,
    form_text,
)
from loopwright.notation.tree_values import (
    Count,
    Name,
    Text,
)
from loopwright.record import dataclass

__all__ = [
    "Amount",
    "AsRow",
    "BOUND_UNITS",
    "BeginLine",
    "BindOffLine",
    "Body",
    "BoundLine",
    "CareLine",
    "CastOnLine",
    "Claim",
    "Count",
    "EdgeLine",
    "EvenlyOf",
    "Feed",
    "FillOf",
    "ForRows",
    "Form",
    "GaugeLine",
    "GroupOf",
    "HoldLine",
    "JoinByLine",
    "JoinLine",
    "LeaveLine",
    "LevelLine",
    "MeasureLine",
    "MotifLine",
    "Name",
    "NeedleLine",
    "Node",
    "PatternLine",
    "PickLine",
    "PieceLine",
    "Placed",
    "RowLine",
    "RowSpan",
    "ShadeLine",
    "SizesLine",
    "Special",
    "SpreadLine",
    "Statement",
    "Steps",
    "StitchLine",
    "StrandLine",
    "Stripe",
    "SwatchLine",
    "TakeLine",
    "Text",
    "TextLine",
    "Times",
    "ToLength",
    "UntilSpent",
    "UntilStitches",
    "Whole",
    "Word",
    "WorkLine",
    "YarnLine",
    "form_text",
]

Statement = (
    PatternLine
    | TextLine
    | LevelLine
    | CareLine
    | SizesLine
    | MeasureLine
    | GaugeLine
    | SwatchLine
    | NeedleLine
    | BoundLine
    | YarnLine
    | ShadeLine
    | StrandLine
    | StitchLine
    | MotifLine
    | EdgeLine
    | RowLine
    | PieceLine
    | CastOnLine
    | BindOffLine
    | WorkLine
    | JoinLine
    | JoinByLine
    | HoldLine
    | TakeLine
    | PickLine
    | LeaveLine
    | BeginLine
    | SpreadLine
)


@dataclass(frozen=True, slots=True)
class Placed:
    """A statement where it stands: line number from 1, offset of the line's first character."""

    line: int
    base: int
    statement: Statement
