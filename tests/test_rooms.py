"""The rooms of the house: what each may import, and which may touch anything outside themselves.

The linter bans the same modules from the core; this also holds the built-ins, and the one way in
which rooms may use each other.
"""

from __future__ import annotations

import ast
from collections.abc import Callable, Iterable, Iterator
from functools import cache
from pathlib import Path

import pytest

PACKAGE = "loopwright"
SOURCE = Path(__file__).parent.parent / "src" / PACKAGE
FILES = sorted(path.relative_to(SOURCE).as_posix() for path in SOURCE.rglob("*.py"))

# A room may import those of its own line and of the lines above it.
ORDER = (
    ("record", "recording", "recorded"),
    ("facts", "grammars", "templates"),
    ("notation", "problem"),
    ("model",),
    ("count",),
    ("check",),
    ("fit", "yarn", "picture"),
    ("edition",),
    ("compile", "files", "starter"),
    ("build", "api"),
    ("commands", "shelf", "crew", "cli", "__main__", "__init__"),
)
LEVEL = {room: level for level, rooms in enumerate(ORDER) for room in rooms}

CORE_ROOMS = ("notation", "model", "count", "check", "fit", "yarn", "picture", "facts")
CORE_FILES = ("problem.py", "edition/words.py", "edition/document.py")
# Of the pictures everything but the one file that makes the bytes of a PNG.
NOT_CORE = {"picture/raster.py"}
# Each reads files of the package itself, and nothing else.
OWN_FILES_ONLY = {"check/registry.py", "facts/tables.py", "notation/grammar.py"}

BANNED_MODULES = {
    "PIL", "asyncio", "ctypes", "datetime", "glob", "http", "io", "logging", "multiprocessing",
    "os", "pathlib", "random", "shutil", "socket", "subprocess", "sys", "tempfile", "threading",
    "time", "urllib", "warnings", "weasyprint",
}  # fmt: skip
BANNED_CALLS = {"open", "print", "input", "eval", "exec", "compile", "__import__", "breakpoint"}
HEAVY = {"babel", "jinja2", "markupsafe", "numpy", "pint", "PIL", "weasyprint"}


def imported(tree: ast.AST) -> Iterator[tuple[str, int]]:
    """Every module that is imported anywhere in the tree, with its line."""
    for node in ast.walk(tree):
        if isinstance(node, ast.Import):
            yield from ((alias.name, node.lineno) for alias in node.names)
        elif isinstance(node, ast.ImportFrom):
            assert node.level == 0, f"line {node.lineno}: a relative import"
            if node.module == PACKAGE:
                # A room, or a name of the package's own front page.
                rooms = (f"{PACKAGE}.{a.name}" if a.name in LEVEL else PACKAGE for a in node.names)
                yield from ((room, node.lineno) for room in rooms)
            else:
                yield node.module or "", node.lineno


def touches_outside(tree: ast.AST) -> list[str]:
    """What a core file does that only the border may."""
    found = [
        f"line {line}: imports {name}"
        for name, line in imported(tree)
        if name.partition(".")[0] in BANNED_MODULES
    ]
    found += [
        f"line {node.lineno}: calls {node.func.id}"
        for node in ast.walk(tree)
        if isinstance(node, ast.Call)
        and isinstance(node.func, ast.Name)
        and node.func.id in BANNED_CALLS
    ]
    return found


def goes_back(room: str, tree: ast.AST) -> list[str]:
    """The imports of a room that stands after this one."""
    found = []
    for name, line in imported(tree):
        top, _, rest = name.partition(".")
        other = rest.partition(".")[0]
        if top == PACKAGE and LEVEL.get(other or "__init__", 99) > LEVEL[room]:
            found.append(f"line {line}: {room} imports {name}")
    return found


def heavy_at_start(tree: ast.Module) -> list[str]:
    """The heavy libraries that importing the file loads."""
    inside = [node for node in tree.body if isinstance(node, ast.Import | ast.ImportFrom)]
    block = ast.Module(body=list(inside), type_ignores=[])
    return [name for name, _ in imported(block) if name.partition(".")[0] in HEAVY]


@cache
def read(file: str) -> ast.Module:
    return ast.parse((SOURCE / file).read_text("utf-8"), file)


def room_of(file: str) -> str:
    return file.partition("/")[0].removesuffix(".py")


def core_files() -> list[str]:
    return [
        file
        for file in FILES
        if (room_of(file) in CORE_ROOMS and file not in NOT_CORE) or file in CORE_FILES
    ]


def test_every_room_has_its_place_in_the_order() -> None:
    assert {room_of(file) for file in FILES} <= set(LEVEL)
    assert set(CORE_ROOMS) <= set(LEVEL)
    assert {file for file in OWN_FILES_ONLY if file in FILES} == OWN_FILES_ONLY


def findings(files: Iterable[str], looked: Callable[[str], list[str]]) -> dict[str, list[str]]:
    """What is found, by the files in which there is anything: hundreds of files, looked through
    in one test."""
    assert len(list(files)) > 200
    return {file: found for file in files if (found := looked(file))}


def test_the_core_does_no_input_or_output() -> None:
    files = [file for file in core_files() if file not in OWN_FILES_ONLY]
    assert findings(files, lambda file: touches_outside(read(file))) == {}


@pytest.mark.parametrize("file", sorted(OWN_FILES_ONLY))
def test_a_reader_of_the_packages_own_files_does_nothing_else(file: str) -> None:
    modules = {name.partition(".")[0] for name, _ in imported(read(file))}
    assert modules & BANNED_MODULES == {"pathlib"}


def test_imports_go_one_way() -> None:
    assert findings(FILES, lambda file: goes_back(room_of(file), read(file))) == {}


def test_heavy_libraries_are_loaded_where_they_are_used() -> None:
    # Not the compiled templates, which Jinja's loader imports.
    files = [file for file in FILES if not file.startswith("edition/ready/")]
    assert findings(files, lambda file: heavy_at_start(read(file))) == {}


@pytest.mark.parametrize(
    ("code", "finding"),
    [
        ("import os.path", "line 1: imports os.path"),
        ("def f():\n    from pathlib import Path", "line 2: imports pathlib"),
        ("from time import monotonic", "line 1: imports time"),
        ("x = open('a')", "line 1: calls open"),
        ("print(1)", "line 1: calls print"),
    ],
)
def test_what_touches_outside_is_found(code: str, finding: str) -> None:
    assert touches_outside(ast.parse(code)) == [finding]


def test_what_touches_nothing_is_not() -> None:
    assert touches_outside(ast.parse("import re\nre.compile('a')\nopened = 1\n")) == []


@pytest.mark.parametrize(
    ("room", "code"),
    [
        ("notation", "from loopwright.model.pattern import Row"),
        ("model", "import loopwright.count.walk"),
        ("count", "def f():\n    from loopwright.check import rule"),
        ("check", "from loopwright.yarn.loop import Loop"),
        ("yarn", "from loopwright.edition import words"),
        ("edition", "from loopwright import compile"),
        ("compile", "from loopwright.cli import main"),
        ("facts", "from loopwright.notation.source import Span"),
        ("fit", "from loopwright.cellar import door"),
        ("yarn", "from loopwright import __version__"),
    ],
)
def test_an_import_that_goes_back_is_found(room: str, code: str) -> None:
    assert len(goes_back(room, ast.parse(code))) == 1


@pytest.mark.parametrize(
    ("room", "code"),
    [
        ("count", "from loopwright.model.pattern import Row"),
        ("notation", "from loopwright.problem import Problem"),
        ("yarn", "from loopwright.fit.units import cm"),
        ("cli", "from loopwright import __version__, compile"),
        ("check", "import re"),
    ],
)
def test_an_import_that_goes_on_is_not(room: str, code: str) -> None:
    assert goes_back(room, ast.parse(code)) == []


def test_a_heavy_library_at_the_top_is_found() -> None:
    tree = ast.parse("import pint\ndef f():\n    import weasyprint\n")
    assert heavy_at_start(tree) == ["pint"]
