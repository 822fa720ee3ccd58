"""The lean reader against lark itself: the same trees, the same errors."""

from __future__ import annotations

import random
from pathlib import Path
from typing import Any

import pytest
from lark import Token as LarkToken
from lark.exceptions import UnexpectedCharacters, UnexpectedInput, UnexpectedToken

from loopwright.notation import grammar
from loopwright.notation.grammar import grammar_text, line_reader, tables_text
from loopwright.notation.lalr import Reader, Tables, Unread, token_of
from loopwright.notation.line import split_comment
from loopwright.notation.shape import Shaper
from loopwright.notation.tables import lark_parser, make_tables, mark_of

ROOT = Path(__file__).parent.parent.parent
SOURCES = [*sorted((ROOT / "examples").rglob("*.loop")), *sorted((ROOT / "tests").rglob("*.loop"))]


class Spread:
    """Lark's callbacks take a list of children; the shaper's take the children."""

    def __init__(self, shaper: Shaper) -> None:
        self._shaper = shaper

    def __getattr__(self, name: str) -> Any:
        if name.startswith("__") or name.isupper():
            raise AttributeError(name)
        method = getattr(self._shaper, name)
        return lambda children: method(*map(own, children))


def own(child: Any) -> Any:
    """A token of lark as one of the reader."""
    if not isinstance(child, LarkToken):
        return child
    assert child.start_pos is not None and child.end_pos is not None
    return token_of(child.type, str(child), child.start_pos, child.end_pos)


def lines() -> list[str]:
    """Every line of code of the examples and of the patterns under tests, lowered, each once."""
    found: dict[str, None] = {}
    for path in SOURCES:
        for line in path.read_text("utf-8").splitlines():
            code = split_comment(line)[0].rstrip().lower()
            if code.strip():
                found[code] = None
    return list(found)


def by_lark(parser: Any, line: str) -> Any:
    """The statement, or what lark says stands in the way, in the reader's own form."""
    try:
        return parser.parse(line)
    except UnexpectedToken as error:
        names = set(error.accepts or error.expected)
        if error.token.type == "$END":
            return names, None, None
        return names, error.token.start_pos, error.token.end_pos
    except UnexpectedCharacters as error:
        return set(error.allowed or ()), error.pos_in_stream, None
    except UnexpectedInput as error:  # pragma: no cover
        raise AssertionError from error


def by_reader(reader: Reader, line: str) -> Any:
    try:
        return reader.parse(line)
    except Unread as error:
        return error.names, error.start, error.end


def mutated(line: str, chance: random.Random) -> str:
    """A line with one to three slips of the keys."""
    letters = [
        *'*(),:=>-+/"#x1290 abkprstwyn½×–&_.é\t\u00a0',
        " in ",
        " x4",
        "row ",
        " sts",
        "wyif",
    ]
    for _ in range(chance.randint(1, 3)):
        at = chance.randrange(len(line) + 1)
        how = chance.randrange(4)
        if how == 0:
            line = line[:at] + line[at + chance.randint(1, 3) :]
        elif how == 1:
            line = line[:at] + chance.choice(letters) + line[at:]
        elif how == 2:
            line = line[:at] + chance.choice(letters) + line[at + 1 :]
        else:
            other = chance.randrange(len(line) + 1)
            line = line[:at] + line[min(at, other) : max(at, other)] + line[at:]
    return line.rstrip() or "x"


@pytest.fixture(scope="module")
def both() -> tuple[Any, Shaper, Reader, Shaper]:
    one, other = Shaper(), Shaper()
    return (
        lark_parser(grammar_text(), Spread(one)),
        one,
        Reader(Tables(make_tables(grammar_text())), other),
        other,
    )


def compare(both: tuple[Any, Shaper, Reader, Shaper], line: str) -> bool:
    """Read a line both ways; gives whether it could be read."""
    parser, one, reader, other = both
    results = []
    for shaper in (one, other):
        shaper.original, shaper.base, shaper.problems, shaper.size_lists = line, 3, [], []
        results.append(by_lark(parser, line) if shaper is one else by_reader(reader, line))
    assert results[1] == results[0], line
    if isinstance(results[0], tuple):
        return False
    assert (other.problems, other.size_lists) == (one.problems, one.size_lists), line
    assert repr(results[1]) == repr(results[0]), line
    return True


def test_the_tables_beside_the_grammar_belong_to_it() -> None:
    held = (Path(str(grammar.__file__)).parents[3] / "grammars" / "loop.table").read_text("utf-8")
    assert held == make_tables(grammar_text()), "run “make tables”"


def test_every_line_at_hand_reads_as_lark_reads_it(both: Any) -> None:
    assert sum(compare(both, line) for line in lines()) > 300


@pytest.mark.parametrize("seed", range(4))
def test_every_slip_is_met_as_lark_meets_it(both: Any, seed: int) -> None:
    chance = random.Random(seed)
    known = lines()
    read = [compare(both, mutated(chance.choice(known), chance)) for _ in range(400)]
    assert 20 < sum(read) < 380  # both kinds were among them


def test_a_state_met_often_reads_the_same(both: Any) -> None:
    reader = both[2]
    for state in range(len(reader.tables.states)):
        row = reader._state(state)
        if row.terminals:
            reader._hasten(row)
    chance = random.Random(99)
    for line in lines():
        compare(both, line)
        compare(both, mutated(line, chance))


def test_the_reader_used_is_the_one_of_the_tables() -> None:
    reader, _ = line_reader()
    assert reader.tables.mark == mark_of(grammar_text())


@pytest.mark.parametrize("held", ["", "mark 1 5 00000000\nstate", "\x00", None])
def test_tables_that_do_not_belong_are_made_anew(
    held: str | None, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    (tmp_path / "loop.lark").write_text(grammar_text(), "utf-8")
    if held is not None:
        (tmp_path / "loop.table").write_text(held, "utf-8")
    wanted = tables_text()
    monkeypatch.setattr(grammar, "_folder", lambda: tmp_path)
    assert tables_text() == wanted


def test_a_changed_grammar_is_read_by_its_own_tables(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    (tmp_path / "loop.table").write_text(tables_text(), "utf-8")
    changed = grammar_text().replace('JOIN: "join"', 'JOIN: "unite"')
    (tmp_path / "loop.lark").write_text(changed, "utf-8")
    monkeypatch.setattr(grammar, "_folder", lambda: tmp_path)
    shaper = Shaper()
    reader = Reader(Tables(tables_text()), shaper)
    assert reader.parse("unite round") == shaper.join_line(*reader.tokens("unite round"))
    with pytest.raises(Unread):
        reader.parse("join round")
