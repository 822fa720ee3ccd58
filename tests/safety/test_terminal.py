"""What a terminal is shown: no character that it would obey comes through as it is.

Such characters can stand in the names of files, in the words of a call and in a source that is
refused. The program's own colours are the only escapes that ever reach a terminal.
"""

from __future__ import annotations

import json
import os
import re
import subprocess
import sys
from contextlib import suppress
from pathlib import Path

import pytest

from loopwright import cli
from loopwright.commands import COMMANDS

sys.path.insert(0, str(Path(__file__).parent))
import hostile

Capture = pytest.CaptureFixture[str]

OBEYED = "\x1b[31m\x1b]0;owned\x07\x9b2J\x08\x7f\u202egpj\u2066\u200f"
"""Colour, a window's title, a bell, clear the screen, go back, delete, turn round."""
GOOD = 'pattern "Cloth"\npiece cloth flat\n  cast on 20\n  rows 4: knit\n  bind off\n'
SOURCES = {
    "in a title": GOOD.replace("Cloth", f"Cloth{OBEYED}"),
    "in a name": GOOD.replace("piece cloth", f"piece cl{OBEYED}oth"),
    "in a comment": GOOD.replace("rows 4", f"-- {OBEYED}\n  rows 4"),
    "in a row": GOOD.replace("rows 4: knit", f"rows 4: k{OBEYED}20"),
    "in an unknown word": GOOD.replace("  cast", f"kast{OBEYED}"),
    "in a size": GOOD.replace("piece", f'  sizes "{OBEYED}", b\npiece', 1),
    "everywhere": OBEYED.join(GOOD),
}
_BAD = re.compile("[\x00-\x08\x0b-\x1f\x7f-\x9f\u200e\u200f\u061c\u202a-\u202e\u2066-\u2069]")


def calm(text: str) -> None:
    found = _BAD.search(text)
    assert found is None, text[max(found.start() - 60, 0) : found.end() + 20]


@pytest.mark.parametrize("command", ["check", "rows", "yarn", "plan", "fit", "format", "build"])
@pytest.mark.parametrize("name", SOURCES)
def test_what_is_said_of_a_source(
    name: str, command: str, tmp_path: Path, capsys: Capture, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.chdir(tmp_path)
    path = tmp_path / "p.loop"
    path.write_text(SOURCES[name], "utf-8")
    assert cli.main([command, "p.loop"]) == 1
    told = capsys.readouterr()
    calm(told.out + told.err)
    assert "hidden-character" in told.out + told.err
    assert [p.name for p in tmp_path.iterdir()] == ["p.loop"]
    assert path.read_text("utf-8") == SOURCES[name]


@pytest.mark.parametrize("name", SOURCES)
def test_json_of_a_source(name: str, tmp_path: Path, capsys: Capture) -> None:
    path = tmp_path / "p.loop"
    path.write_text(SOURCES[name], "utf-8")
    assert cli.main(["check", "--json", str(path)]) == 1
    told = capsys.readouterr().out
    calm(told)
    assert json.loads(told)["files"][0]["problems"]


def test_json_names_a_file_as_it_is_called(tmp_path: Path, capsys: Capture) -> None:
    path = tmp_path / f"a{OBEYED}\n\udcffb.loop"
    path.write_text(GOOD, "utf-8")
    assert cli.main(["check", "--json", str(path)]) == 0
    told = capsys.readouterr().out
    calm(told)
    assert json.loads(told)["files"][0]["file"] == str(path)


def test_json_of_marks_that_are_only_a_warning(tmp_path: Path, capsys: Capture) -> None:
    path = tmp_path / "p.loop"
    title = "a\u200f\u061c\u200b\U000e0041b"
    text = hostile.source(hostile.texts(title))
    path.write_text(text, "utf-8")
    for command in ("rows", "yarn"):
        assert cli.main([command, "--json", str(path)]) == 0
        told = capsys.readouterr()
        calm(told.out + told.err)
        assert f"size {title}" in [size["size"] for size in json.loads(told.out)["sizes"]]
        assert cli.main([command, str(path)]) == 0
        calm(capsys.readouterr().out)


NAMES = [
    f"a{OBEYED}b.loop", "a\nloopwright: all is well\n.loop", "-rf.loop", "a\tb.loop",
    "[red]x.loop", "\udcff.loop", '"; k.loop',
]  # fmt: skip


def calls(command: str, file: str) -> list[str]:
    """A call of a command about a file."""
    return {
        "explain": ["explain", file],
        "doctor": ["doctor"],
        "new": ["new", f"./{file}.new.loop"],
        "compare": ["compare", f"./{file}", f"./{file}"],
        "resize": ["resize", f"./{file}", "--width", "30cm", "-o", f"./{file}.wide.loop"],
        "picture": ["picture", f"./{file}", "--what", "fabric", "-o", f"./{file}.png"],
        "build": ["build", f"./{file}", "--to", "text", "--out", f"./{file}.out"],
        "check": ["check", "--fix", f"./{file}"],
    }.get(command, [command, f"./{file}"])


@pytest.mark.parametrize("text", [GOOD, GOOD.replace("rows 4: knit", "row: k21"), ""],
                         ids=["right", "wrong", "empty"])  # fmt: skip
@pytest.mark.parametrize("file", NAMES, ids=ascii)
@pytest.mark.parametrize("command", COMMANDS)
def test_names_of_files(
    command: str, file: str, text: str, tmp_path: Path, capsys: Capture,
    monkeypatch: pytest.MonkeyPatch,
) -> None:  # fmt: skip
    monkeypatch.chdir(tmp_path)
    Path(file).write_text(text, "utf-8")
    assert cli.main(calls(command, file)) in (0, 1, 2)
    told = capsys.readouterr()
    calm(told.out + told.err)
    assert not any(line.startswith("loopwright: all is well") for line in told.err.splitlines())
    assert not any(line.startswith("loopwright: all is well") for line in told.out.splitlines())
    assert "Traceback" not in told.err


@pytest.mark.parametrize(
    "words",
    [("check", "FILE.loop"), ("FILE",), ("check", "--FILE", "p.loop"), ("explain", "FILE"),
     ("rows", "p.loop", "FILE"), ("build", "p.loop", "--to", "FILE"),
     ("build", "p.loop", "--size", "FILE"), ("build", "p.loop", "--since", "FILE"),
     ("build", "p.loop", "--paper", "FILE"), ("build", "p.loop", "--jobs", "FILE"),
     ("build", "p.loop", "--gauge", "FILE"), ("build", "p.loop", "--width", "FILE"),
     ("build", "p.loop", "--scale", "FILE"), ("build", "p.loop", "q.loop", "FILE"),
     ("resize", "p.loop", "--width", "FILE"), ("resize", "p.loop", "--add-size", "FILE"),
     ("resize", "p.loop", "--only", "FILE"),
     ("resize", "p.loop", "--size", "FILE", "--width", "9cm"),
     ("picture", "p.loop", "-o", "FILE"), ("picture", "p.loop", "--piece", "FILE"),
     ("picture", "p.loop", "--motif", "FILE"), ("picture", "p.loop", "--what", "FILE"),
     ("picture", "p.loop", "--what", "fabric", "--shades", "FILE"),
     ("picture", "p.loop", "--what", "fabric", "--palette", "FILE"),
     ("yarn", "p.loop", "--with", "FILE"), ("yarn", "p.loop", "--row", "FILE"),
     ("yarn", "p.loop", "--size", "FILE"), ("plan", "p.loop", "--shades", "FILE"),
     ("plan", "p.loop", "--balls", "FILE"), ("plan", "p.loop", "--balls", "kelp=FILE"),
     ("plan", "p.loop", "--first", "FILE"),
     ("fit", "p.loop", "--width", "FILE"), ("fit", "p.loop", "--size", "FILE"),
     ("new", "no/FILE/\x00"), ("compare", "FILE", "p.loop")],
    ids=" ".join,
)  # fmt: skip
@pytest.mark.parametrize(
    "said",
    [OBEYED, "a\nloopwright: all is well", "\udcff\ud800", "\x00", "²", "9" * 5000],
    ids=lambda said: ascii(said)[:20],
)
def test_the_words_of_a_call(
    words: tuple[str, ...], said: str, tmp_path: Path, capsys: Capture,
    monkeypatch: pytest.MonkeyPatch,
) -> None:  # fmt: skip
    monkeypatch.chdir(tmp_path)
    Path("p.loop").write_text(hostile.source(hostile.PLAIN), "utf-8")
    Path("q.loop").write_text(GOOD, "utf-8")
    status = cli.main([word.replace("FILE", said) for word in words])
    assert status in (1, 2)
    told = capsys.readouterr()
    calm(told.out + told.err)
    assert told.err and "Traceback" not in told.err
    assert not any(line.startswith("loopwright: all is well") for line in told.err.splitlines())
    assert sorted(p.name for p in tmp_path.iterdir()) == ["p.loop", "q.loop"]


@pytest.mark.parametrize(
    "words", [("plan", "p.loop", "--balls", ""), ("plan", "p.loop", "--shades", ","),
              ("build", "p.loop", "--to", ""), ("yarn", "p.loop", "--with", ""),
              ("explain", ""), ("check", ""), ("build", ""), ("new", ""), ("build", "p.loop", "")],
    ids=" ".join,
)  # fmt: skip
def test_words_that_are_empty(
    words: tuple[str, ...], tmp_path: Path, capsys: Capture, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.chdir(tmp_path)
    Path("p.loop").write_text(hostile.source(hostile.PLAIN), "utf-8")
    assert cli.main(list(words)) == 2
    assert capsys.readouterr().err
    assert [p.name for p in tmp_path.iterdir()] == ["p.loop"]


def test_a_shelf_on_a_terminal(tmp_path: Path) -> None:
    """A bar, and then what failed: by a terminal of our own."""
    import pty

    shelf = tmp_path / "[bold red]shelf[link=file:x]"
    shelf.mkdir()
    for n, text in enumerate([GOOD, GOOD.replace("rows 4: knit", "row: k21"), SOURCES["in a row"]]):
        (shelf / f"[red]{n}{OBEYED}[blink].loop").write_text(text, "utf-8")
    mine, theirs = pty.openpty()
    call = [sys.executable, "-m", "loopwright", "build", str(shelf), "--to", "text", "--out",
            str(tmp_path / "out"), "--jobs", "1"]  # fmt: skip
    env = {**os.environ, "TERM": "xterm", "COLUMNS": "200"}
    process = subprocess.Popen(call, stdout=theirs, stderr=theirs, env=env)
    os.close(theirs)
    shown = b""
    with suppress(OSError):  # the other end is closed
        while part := os.read(mine, 4096):
            shown += part
    os.close(mine)
    assert process.wait(timeout=60) == 1
    text = shown.decode()
    assert "1 built, 0 unchanged, 2 failed" in text
    assert "[bold red]shelf[link=file:x]" in text, "markup in a path is not obeyed"
    assert r"\x1b[31m" in text
    own = re.sub(r"\x1b\[[0-9;?]*[A-Za-z]", "", text)  # of the bar: colours, the cursor
    assert "\x1b]" not in text, "no link, no title"
    calm(own.replace("\r", ""))


def test_problems_on_a_terminal_have_our_colours_alone(
    tmp_path: Path, capsys: Capture, monkeypatch: pytest.MonkeyPatch
) -> None:
    path = tmp_path / f"a{OBEYED}.loop"
    path.write_text(SOURCES["everywhere"], "utf-8")
    monkeypatch.delenv("NO_COLOR", raising=False)
    monkeypatch.setenv("TERM", "xterm")
    monkeypatch.setattr(sys.stdout, "isatty", lambda: True, raising=False)
    assert cli.main(["check", str(path)]) == 1
    told = capsys.readouterr().out
    assert "\x1b[1;31m" in told
    calm(re.sub(r"\x1b\[[0-9;]+m", "", told))
