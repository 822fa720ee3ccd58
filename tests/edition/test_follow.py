"""The order of work, row by row, against the walk of the same piece."""

from __future__ import annotations

import re
from pathlib import Path

import pytest

from loopwright.build import BuildOptions, document_of
from loopwright.check.checked import Checked
from loopwright.compile import check_source
from loopwright.count.walk import Worked
from loopwright.edition.document import Document, FollowRow, FollowStep
from loopwright.notation.source import Source

EXAMPLES = sorted((Path(__file__).parents[2] / "examples").glob("*.loop"))


def _checked(text: str) -> Checked:
    return check_source(Source.of("a.loop", text))


def _document(checked: Checked, size: str | None) -> Document:
    return document_of(checked, BuildOptions(size=size))


def _expanded(steps: tuple[FollowStep, ...]) -> list[FollowRow]:
    return [row for step in steps if step.counted for _ in range(step.times) for row in step.rows]


def _numbers(label: str) -> set[int]:
    """The row numbers that a printed label covers; empty for a label without numbers."""
    found = re.search(r"(?:Rows?|Rnds?) (\d+)(?:–(\d+))?", label)
    if found is None:
        return set()
    last = re.search(r"to (?:Row|Rnd) (\d+):", label)
    if last:
        step = 1 if "not given" in label else 2
        return set(range(int(found[1]), int(last[1]) + 1, step))
    return set(range(int(found[1]), int(found[2] or found[1]) + 1))


@pytest.mark.parametrize("path", EXAMPLES, ids=lambda path: path.stem)
def test_every_row_of_the_walk_is_followed_in_its_line(path: Path) -> None:
    checked = _checked(path.read_text(encoding="utf-8"))
    for size, name in enumerate(checked.pattern.sizes):
        document = _document(checked, name)
        for place, piece in enumerate(checked.pattern.pieces):
            walk = next(w for w in checked.walks if w.piece is piece and w.size == size)
            steps = tuple(step for step in document.follow if step.piece == place)
            rows = _expanded(steps)
            assert len(rows) == walk.rows
            worked = []
            for event in walk.events:
                if isinstance(event, Worked):
                    entries = event.chunk.entries * event.chunk.reps
                    worked += [e.row for e in entries]
            seen: dict[FollowRow, str] = {}
            for number, (at, row) in enumerate(zip(rows, worked, strict=True), 1):
                line = document.sections[at.section].lines[at.line]
                assert line.kind in ("row", "do")
                # The first time a row stands in a line, the line's number is the piece's.
                if at not in seen and line.label and "haping" not in line.label:
                    numbers = _numbers(line.label)
                    assert not numbers or number in numbers, (line.label, number)
                # Equal places mean equal bodies: one line cannot say two rows.
                said = seen.setdefault(at, repr(row.body.steps) + repr(row.body.whole))
                if line.kind == "row":
                    assert said == repr(row.body.steps) + repr(row.body.whole)


HEAD = 'pattern "A"\n  gauge 20 stitches 28 rows = 10 cm on 4 mm\n'


def _lines(body: str) -> list[tuple[str, int, str | None, bool]]:
    """Each step of a source in one size: its rows' texts, how often, what is ticked."""
    checked = _checked(HEAD + body)
    document = _document(checked, None)

    def line(section: int, at: int) -> str:
        found = document.sections[section].lines[at]
        return found.label or found.text

    return [
        (
            " ".join(line(row.section, row.line) for row in step.rows),
            step.times,
            None if step.tick is None else line(*step.tick),
            step.counted,
        )
        for step in document.follow
    ]


def test_a_repeat_is_ticked_at_its_own_line() -> None:
    body = (
        "motif m over 2n\n  row 1: * k1 p1 *\n  row 2: * p1 k1 *\n"
        "  row 3: * k1 p1 *\n  row 4: knit\n"
        "piece p flat\n  cast on 20\n  work m for 14 rows\n  rows 2: knit\n"
        "  work m x3\n  bind off\n"
    )
    motif = "Row 1 (RS): Row 2 (WS): Row 3 (RS): Row 4 (WS):"
    assert _lines(body) == [
        ("Cast on 20 sts.", 1, None, False),
        (motif, 1, None, True),
        (motif, 2, "Rep Rows 1–4 twice more.", True),
        ("Row 1 (RS): Row 2 (WS):", 1, "Work Rows 1–2 once more.", True),
        ("Rows 15–16:", 2, "Rows 15–16:", True),
        (motif, 3, "Work Rows 1–4 three times.", True),
        ("Bind off all sts.", 1, None, False),
    ]


def test_repeats_are_counted_not_unrolled() -> None:
    body = (
        "motif m over 2n\n  row 1: * k1 p1 *\n  row 2: * p1 k1 *\n"
        "piece p flat\n  cast on 20\n  work m x40000\n  bind off\n"
    )
    steps = _lines(body)
    assert len(steps) == 4
    assert steps[2][1] == 39_999


def test_several_sizes_have_no_one_order() -> None:
    checked = _checked(EXAMPLES[-2].read_text(encoding="utf-8"))
    assert len(checked.pattern.sizes) > 1
    assert _document(checked, None).follow == ()


def test_rows_that_were_never_written_out_are_not_sent_back_to() -> None:
    body = (
        "motif m over 2n\n  row 1: * k1 p1 *\n  row 2: * p1 k1 *\n  row 3: knit\n  row 4: purl\n"
        "piece p flat\n  cast on 20\n  work m for 2 rows\n  rows 2: knit\n  work m x3\n"
        "  work m for 2 rows\n  bind off\n"
    )
    again = "Row 5 (RS): Row 6 (WS): Row 7 (RS): Row 8 (WS):"
    assert _lines(body)[1:-1] == [
        ("Row 1 (RS): Row 2 (WS):", 1, None, True),
        ("Rows 3–4:", 2, "Rows 3–4:", True),
        (again, 1, None, True),
        (again, 2, "Rep Rows 5–8 twice more.", True),
        ("Row 5 (RS): Row 6 (WS):", 1, "Work Rows 5–6 once.", True),
    ]
