"""The command line as it is promised: what goes where, and with which status.

`build` and `resize` have tests of their own.
"""

from __future__ import annotations

import io
import json
import os
import re
import subprocess
import sys
from collections.abc import Callable
from pathlib import Path
from typing import NamedTuple

import pytest

from loopwright import __version__, cli
from loopwright.check.registry import all_rules

GOOD = """pattern "Cloth"
  sizes small, large
yarn wool: 50 g 100 m
shade kelp of wool
strand A feeds kelp
motif rib over 2n
  row 1 in A: * k1 p1 *
  row 2: k1 yo * k1 * k1 => +1
piece cloth flat
  cast on 20/24
  work rib x1
  row: knit
  bind off
"""
BAD = GOOD.replace("row: knit", "row: k20\n  row: * k1 * => 25")
WARNED = GOOD.replace("sizes small, large", "sizes small, large\n  width 10 cm")
COMMANDS = ("new", "check", "rows", "build", "resize", "picture", "format", "explain")


class Result(NamedTuple):
    status: int
    out: str
    err: str


Run = Callable[..., Result]


@pytest.fixture
def run(capsys: pytest.CaptureFixture[str], tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> Run:
    """Call the command line in an empty folder that holds good, bad and warned sources."""
    monkeypatch.chdir(tmp_path)
    for name, text in (("good", GOOD), ("bad", BAD), ("warned", WARNED)):
        (tmp_path / f"{name}.loop").write_text(text, "utf-8")

    def call(*args: str, stdin: str | None = None) -> Result:
        if stdin is not None:
            stream = io.TextIOWrapper(io.BytesIO(stdin.encode()), "utf-8")
            monkeypatch.setattr(sys, "stdin", stream)
        try:
            status = cli.main(list(args))
        except SystemExit as leave:  # argparse leaves by itself after --help and --version
            status = int(leave.code or 0)
        got = capsys.readouterr()
        assert "Traceback" not in got.out + got.err
        return Result(status, got.out, got.err)

    return call


# --- help ------------------------------------------------------------------------------------


@pytest.mark.parametrize("command", COMMANDS)
def test_help_shows_an_example(command: str, run: Run) -> None:
    result = run(command, "--help")
    assert result.status == 0 and not result.err
    assert f"example:\n  loopwright {command} " in result.out


def test_the_example_of_check_can_be_run_where_the_project_stands(run: Run) -> None:
    root = Path(__file__).parents[1]
    for command in ("check", "rows", "build", "resize", "format"):
        line = run(command, "--help").out.split("example:\n")[1].split("\n")[0]
        source = next(word for word in line.split() if word.startswith("examples/"))
        assert (root / source).is_file(), source


def test_help_of_all(run: Run) -> None:
    result = run("--help")
    assert result.status == 0 and "example: loopwright " in result.out
    for command in COMMANDS:
        assert f"\n    {command} " in result.out


def test_version(run: Run) -> None:
    result = run("--version")
    assert (result.status, result.out.strip()) == (0, f"loopwright {__version__}")


def test_no_command(run: Run) -> None:
    result = run()
    assert result.status == 2 and result.out == "" and "check" in result.err


@pytest.mark.parametrize(
    "args",
    [("chekc", "good.loop"), ("check",), ("check", "--jsno", "good.loop"), ("rows",),
     ("rows", "good.loop", "bad.loop"), ("format",), ("new",), ("explain", "a", "b"),
     ("check", "good.loop", "--json=yes")],
)  # fmt: skip
def test_a_wrong_call(args: tuple[str, ...], run: Run) -> None:
    result = run(*args)
    assert result.status == 2 and result.out == ""
    assert result.err.startswith("loopwright: ") and "--help" in result.err


# --- check -----------------------------------------------------------------------------------


def test_check_all_well(run: Run) -> None:
    assert run("check", "good.loop") == (0, "good.loop: no problems\n", "")


def test_check_errors(run: Run) -> None:
    result = run("check", "bad.loop")
    assert result.status == 1
    assert result.out.endswith("bad.loop: 2 errors\n")
    for part in ("count-short", "claim-wrong", "bad.loop:12:8", "help: "):
        assert part in result.out + result.err


def test_check_warnings_are_no_errors(run: Run) -> None:
    result = run("check", "warned.loop")
    assert result.status == 0 and result.out.endswith("warned.loop: 1 warning\n")


def test_check_several_files(run: Run) -> None:
    result = run("check", "good.loop", "bad.loop", "warned.loop")
    assert result.status == 1
    lines = [line for line in result.out.splitlines() if re.match(r"\w+\.loop: ", line)]
    assert lines == ["good.loop: no problems", "bad.loop: 2 errors", "warned.loop: 1 warning"]


def test_check_goes_on_after_a_missing_file(run: Run) -> None:
    result = run("check", "no.loop", "bad.loop")
    assert result.status == 2
    assert "there is no file no.loop" in result.err and "bad.loop: 2 errors" in result.out


def test_check_standard_input(run: Run) -> None:
    assert run("check", "-", stdin=GOOD) == (0, "standard input: no problems\n", "")
    assert run("check", "-", stdin=BAD).status == 1


def test_check_json(run: Run) -> None:
    result = run("check", "--json", "good.loop", "bad.loop")
    assert result.status == 1 and result.err == ""
    data = json.loads(result.out)
    assert list(data) == ["files"]
    good, bad = data["files"]
    assert good == {"file": "good.loop", "problems": []}
    assert bad["file"] == "bad.loop"
    short, claim = bad["problems"]
    keys = ["rule", "severity", "line", "column", "end_line", "end_column", "message", "help",
            "sizes"]  # fmt: skip
    assert list(short) == keys and list(claim) == keys
    assert (short["rule"], short["severity"]) == ("count-short", "error")
    assert [short[key] for key in keys[2:6]] == [12, 8, 12, 11]
    assert "21 stitches" in short["message"] and short["help"]
    assert short["sizes"] == []  # both sizes have it
    assert claim["sizes"] == ["small"]


def test_check_json_names_the_sizes_that_have_it(run: Run, tmp_path: Path) -> None:
    text = GOOD.replace("row: knit", "row: k21")
    (tmp_path / "one.loop").write_text(text, "utf-8")
    (problem,) = json.loads(run("check", "--json", "one.loop").out)["files"][0]["problems"]
    assert problem["sizes"] == ["large"]
    (warning,) = json.loads(run("check", "--json", "warned.loop").out)["files"][0]["problems"]
    assert (warning["rule"], warning["severity"]) == ("gauge-missing", "warning")


# --- rows ------------------------------------------------------------------------------------


def test_rows_json(run: Run) -> None:
    result = run("rows", "--json", "good.loop")
    assert result.status == 0 and result.err == ""

    def row(number: int, strand: str | None, start: int, end: int, line: int) -> dict[str, object]:
        side = "rs" if number % 2 else "ws"
        return {"row": number, "side": side, "strand": strand, "start": start, "end": end,
                "line": line}  # fmt: skip

    assert json.loads(result.out) == {
        "pattern": "Cloth",
        "sizes": [
            {"size": size, "pieces": [{"piece": "cloth", "rows": [
                row(1, "A", count, count, 7), row(2, None, count, count + 1, 8),
                row(3, None, count + 1, count + 1, 12),
            ]}]}
            for size, count in (("small", 20), ("large", 24))
        ],
    }  # fmt: skip


def test_rows_json_of_a_file_without_sizes(run: Run) -> None:
    text = 'pattern "Tube"\npiece a round\n  cast on 8\n  rounds 2: knit\n  bind off\n'
    data = json.loads(run("rows", "--json", "-", stdin=text).out)
    assert [size["size"] for size in data["sizes"]] == ["one"]
    rows = data["sizes"][0]["pieces"][0]["rows"]
    assert [(r["row"], r["side"], r["strand"]) for r in rows] == [(1, "rs", None), (2, "rs", None)]


def test_rows_table(run: Run) -> None:
    result = run("rows", "good.loop")
    assert result.status == 0 and result.err == ""
    assert result.out.startswith("cloth, size small (cast on 20)\n")
    cells = [line.split() for line in result.out.splitlines() if line.strip()[:1].isdigit()]
    assert cells[0] == ["1", "rs", "A", "20", "20", "7"]
    assert cells[1] == ["2", "ws", "–", "20", "21", "8"]
    assert len(cells) == 6


def test_rows_with_errors_lists_and_says_so(run: Run) -> None:
    result = run("rows", "bad.loop")
    assert result.status == 1 and "count-short" in result.err and "cast on 20" in result.out


def test_rows_of_a_source_that_cannot_be_read_is_still_json(run: Run) -> None:
    result = run("rows", "--json", "-", stdin=GOOD + "row: (\n")
    assert result.status == 1
    assert isinstance(json.loads(result.out), dict)


# --- format ----------------------------------------------------------------------------------

UNTIDY = 'PATTERN   "Cloth"\npiece cloth flat\ncast on 20\nROW: k20\nbind off'
TIDY = 'pattern "Cloth"\n\npiece cloth flat\n  cast on 20\n  row: k20\n  bind off\n'


def test_format_in_place(run: Run, tmp_path: Path) -> None:
    path = tmp_path / "u.loop"
    path.write_text(UNTIDY, "utf-8")
    path.chmod(0o640)
    assert run("format", "u.loop") == (0, "u.loop: laid out anew\n", "")
    assert path.read_text("utf-8") == TIDY
    assert path.stat().st_mode & 0o777 == 0o640
    assert run("format", "u.loop") == (0, "", "")
    assert not [item for item in tmp_path.iterdir() if item.name.startswith(".")]


def test_format_check_only_tells(run: Run, tmp_path: Path) -> None:
    path = tmp_path / "u.loop"
    path.write_text(UNTIDY, "utf-8")
    result = run("format", "--check", "u.loop")
    assert result.status == 1 and result.out.startswith("u.loop: ")
    assert path.read_text("utf-8") == UNTIDY
    path.write_text(TIDY, "utf-8")
    assert run("format", "--check", "u.loop") == (0, "", "")


@pytest.mark.parametrize("change", [lambda t: t.replace("\n", "\r\n"), lambda t: "\ufeff" + t])
def test_format_mends_line_ends_and_marks(
    change: Callable[[str], str], run: Run, tmp_path: Path
) -> None:
    path = tmp_path / "u.loop"
    path.write_bytes(change(TIDY).encode())
    assert run("format", "--check", "u.loop").status == 1
    assert run("format", "u.loop").status == 0
    assert path.read_bytes() == TIDY.encode()


def test_format_standard_input(run: Run) -> None:
    assert run("format", "-", stdin=UNTIDY) == (0, TIDY, "")
    assert run("format", "--check", "-", stdin=UNTIDY).status == 1
    assert run("format", "--check", "-", stdin=TIDY) == (0, "", "")


def test_format_leaves_what_it_cannot_read(run: Run, tmp_path: Path) -> None:
    path = tmp_path / "u.loop"
    path.write_text(UNTIDY + "\nrow: (", "utf-8")
    result = run("format", "u.loop", "good.loop")
    assert result.status == 1 and "left as it is" in result.err
    assert path.read_text("utf-8") == UNTIDY + "\nrow: ("


def test_format_goes_on_after_a_missing_file(run: Run, tmp_path: Path) -> None:
    (tmp_path / "u.loop").write_text(UNTIDY, "utf-8")
    result = run("format", "no.loop", "u.loop")
    assert result.status == 2 and "there is no file no.loop" in result.err
    assert (tmp_path / "u.loop").read_text("utf-8") == TIDY


def test_format_keeps_a_link(run: Run, tmp_path: Path) -> None:
    (tmp_path / "real.loop").write_text(UNTIDY, "utf-8")
    (tmp_path / "link.loop").symlink_to("real.loop")
    assert run("format", "link.loop").status == 0
    assert (tmp_path / "link.loop").is_symlink()
    assert (tmp_path / "real.loop").read_text("utf-8") == TIDY


# --- new and explain -------------------------------------------------------------------------


def test_new_writes_a_source_that_checks_clean(run: Run, tmp_path: Path) -> None:
    result = run("new", "my-cloth.loop")
    assert result.status == 0 and "my-cloth.loop" in result.out
    assert run("check", "my-cloth.loop") == (0, "my-cloth.loop: no problems\n", "")
    text = (tmp_path / "my-cloth.loop").read_text("utf-8")
    assert 'pattern "My Cloth"' in text
    assert run("format", "--check", "my-cloth.loop").status == 0


def test_new_never_overwrites(run: Run, tmp_path: Path) -> None:
    (tmp_path / "mine.loop").write_text("mine", "utf-8")
    (tmp_path / "nowhere.loop").symlink_to("gone.loop")
    for name in ("mine.loop", "mine", "nowhere.loop"):
        result = run("new", name)
        assert result.status == 2 and result.out == "" and "never overwrites" in result.err
    assert (tmp_path / "mine.loop").read_text("utf-8") == "mine"
    assert not (tmp_path / "gone.loop").exists()


def test_new_with_a_quote_in_its_name(run: Run) -> None:
    assert run("new", 'a "b".loop').status == 0
    assert run("check", 'a "b".loop').status == 0


def test_new_where_nothing_can_be_written(run: Run, tmp_path: Path) -> None:
    (tmp_path / "file").write_text("", "utf-8")
    result = run("new", "file/cloth.loop")
    assert result.status == 2 and result.err.startswith("loopwright: ")


def test_explain_lists_every_rule(run: Run) -> None:
    result = run("explain")
    assert result.status == 0 and result.err == ""
    for rule in all_rules():
        assert any(line.split()[:2] == [rule.name, rule.severity]
                   for line in result.out.splitlines())  # fmt: skip


@pytest.mark.parametrize("rule", [rule.name for rule in all_rules()])
def test_explain_a_rule(rule: str, run: Run) -> None:
    result = run("explain", rule.upper())
    assert result.status == 0 and result.err == ""
    assert result.out.startswith(f"{rule} (")
    assert "\nwrong:\n" in result.out and "\nright:\n" in result.out


def test_explain_an_unknown_rule(run: Run) -> None:
    result = run("explain", "fill-unevn")
    assert result.status == 2 and result.out == "" and "did you mean fill-uneven" in result.err
    assert "lists them" in run("explain", "weather").err


# --- as a process ----------------------------------------------------------------------------


def process(*args: str, cwd: Path, **env: str) -> subprocess.CompletedProcess[str]:
    return subprocess.run(
        [sys.executable, "-m", "loopwright", *args],
        cwd=cwd,
        capture_output=True,
        encoding="utf-8",
        timeout=60,
        env={**os.environ, **env},
        check=False,
    )


def test_no_colour_in_a_pipe(tmp_path: Path) -> None:
    (tmp_path / "bad.loop").write_text(BAD, "utf-8")
    done = process("check", "bad.loop", cwd=tmp_path)
    assert done.returncode == 1 and "\x1b" not in done.stdout + done.stderr


@pytest.mark.parametrize(
    ("env", "coloured"),
    [({}, True), ({"NO_COLOR": "1"}, False), ({"TERM": "dumb"}, False)],
)
def test_colour_on_a_terminal(
    env: dict[str, str], coloured: bool, run: Run, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.delenv("NO_COLOR", raising=False)
    monkeypatch.setenv("TERM", "xterm")
    for name, value in env.items():
        monkeypatch.setenv(name, value)
    for stream in (sys.stdout, sys.stderr):
        monkeypatch.setattr(stream, "isatty", lambda: True, raising=False)
    result = run("check", "bad.loop")
    assert ("\x1b[" in result.out + result.err) == coloured


def test_a_terminal_that_cannot_write_our_letters(tmp_path: Path) -> None:
    (tmp_path / "bad.loop").write_text(BAD, "utf-8")
    done = process("check", "bad.loop", cwd=tmp_path, PYTHONIOENCODING="ascii", LC_ALL="C")
    assert done.returncode == 1 and "Traceback" not in done.stderr


def test_a_reader_that_goes_away_is_no_error(tmp_path: Path) -> None:
    text = 'pattern "Long"\npiece a flat\n  cast on 20\n  rows 200000: knit\n  bind off\n'
    (tmp_path / "long.loop").write_text(text, "utf-8")
    with subprocess.Popen(
        [sys.executable, "-m", "loopwright", "rows", "long.loop"],
        cwd=tmp_path,
        stdout=subprocess.PIPE,
        stderr=subprocess.PIPE,
    ) as child:
        assert child.stdout is not None and child.stderr is not None
        child.stdout.read(100)
        child.stdout.close()
        said = child.stderr.read()
        assert child.wait(60) == 0
    assert said == b""


@pytest.mark.parametrize(
    "args", [("check", "good.loop"), ("rows", "--json", "good.loop"), ("explain",),
             ("format", "--check", "good.loop"), ("--help",)]
)  # fmt: skip
def test_light_commands_import_no_heavy_library(args: tuple[str, ...], tmp_path: Path) -> None:
    (tmp_path / "good.loop").write_text(GOOD, "utf-8")
    probe = (
        "import sys\nfrom loopwright import cli\n"
        f"try:\n    cli.main({list(args)!r})\nexcept SystemExit:\n    pass\n"
        "heavy = {'weasyprint', 'PIL', 'pint', 'jinja2', 'numpy'} & set(sys.modules)\n"
        "print('heavy:', sorted(heavy), file=sys.stderr)\n"
    )
    done = subprocess.run(
        [sys.executable, "-c", probe], cwd=tmp_path, capture_output=True, encoding="utf-8",
        timeout=60, check=False,
    )  # fmt: skip
    assert done.returncode == 0 and done.stderr.endswith("heavy: []\n"), done.stderr


def test_the_starter_and_python_m_are_the_same_program(tmp_path: Path) -> None:
    assert process("--version", cwd=tmp_path).stdout.strip() == f"loopwright {__version__}"


def test_doctor_finds_what_is_there(capsys: pytest.CaptureFixture[str]) -> None:
    assert cli.main(["doctor"]) == 0
    out = capsys.readouterr().out
    for name in ("lark", "weasyprint", "rich", "babel", "pango", "fonts", "cache"):
        assert f"ok       {name}" in out
    assert "MISSING" not in out


def test_doctor_does_not_miss_what_is_an_option(
    monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str]
) -> None:
    import importlib.metadata

    known = importlib.metadata.version

    def version(name: str) -> str:
        if name == "distributed":
            raise importlib.metadata.PackageNotFoundError(name)
        return known(name)

    monkeypatch.setattr(importlib.metadata, "version", version)
    assert cli.main(["doctor"]) == 0
    assert "install it with: pip install 'loopwright[shelf]'" in capsys.readouterr().out


def test_doctor_names_what_is_missing(
    monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str]
) -> None:
    from loopwright.edition import engine

    def missing() -> None:
        raise engine.NativeLibrariesMissing

    monkeypatch.setattr(engine, "load_weasyprint", missing)
    assert cli.main(["doctor"]) == 2
    out = capsys.readouterr().out
    assert "MISSING  pango" in out and "install it with: " in out


@pytest.mark.parametrize(
    ("words", "called"),
    [
        (["check", "--nope", "a.loop"], "loopwright check"),
        (["picture", "a.loop", "--out", "."], "loopwright picture"),
        (["--nope"], "loopwright"),
    ],
)
def test_an_option_that_is_not_there_leads_to_the_help_of_its_command(
    words: list[str], called: str, capsys: pytest.CaptureFixture[str]
) -> None:
    assert cli.main(words) == 2
    said = capsys.readouterr().err
    assert f"is no part of a call of {called}\n" in said and f"try “{called} --help”" in said
