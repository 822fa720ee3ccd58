"""`check --fix` at the command line: what it writes, what it says where, and with which status."""

from __future__ import annotations

import io
import json
import os
import stat
import sys
from pathlib import Path

import pytest

from loopwright import cli

RIGHT = (
    b'\xef\xbb\xbfpattern "Cloth"\r\npiece cloth flat\r\n  cast on 12   -- even\r\n'
    b"  row: k1 yo * k1 * yo k1 => 14\r\n  bind off\r\n"
)
WRONG = RIGHT.replace(b"=> 14", b"=> 15")


@pytest.fixture
def file(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> Path:
    monkeypatch.chdir(tmp_path)
    path = tmp_path / "cloth.loop"
    path.write_bytes(WRONG)
    return path


def test_it_mends_the_file_and_shows_it(file: Path, capsys: pytest.CaptureFixture[str]) -> None:
    assert cli.main(["check", "--fix", "cloth.loop"]) == 0
    assert file.read_bytes() == RIGHT
    out = capsys.readouterr().out
    assert out == (
        "--- cloth.loop\n+++ cloth.loop\n@@ -1,5 +1,5 @@\n"
        ' pattern "Cloth"\n piece cloth flat\n   cast on 12   -- even\n'
        "-  row: k1 yo * k1 * yo k1 => 15\n+  row: k1 yo * k1 * yo k1 => 14\n   bind off\n"
        "cloth.loop:4: write “=> 14” for “=> 15” (claim-wrong)\n\n"
        "cloth.loop: no problems\n"
    )


def test_it_leaves_what_it_cannot_mend(file: Path, capsys: pytest.CaptureFixture[str]) -> None:
    unsure = WRONG.replace(b"* k1 *", b"* k1 yo k1 yo k7 *")
    file.write_bytes(unsure)
    before = file.stat().st_mtime_ns
    assert cli.main(["check", "--fix", "cloth.loop"]) == 1
    assert file.read_bytes() == unsure and file.stat().st_mtime_ns == before
    assert "fill-uneven" in capsys.readouterr().out


def test_what_is_left_decides_the_status(file: Path, capsys: pytest.CaptureFixture[str]) -> None:
    file.write_bytes(
        WRONG.replace(b"bind off", b"bidn off\r\npiece other flat\r\n  cast on 4\r\n  row: k5")
    )
    assert cli.main(["check", "--fix", "cloth.loop"]) == 1
    assert b"bidn" in file.read_bytes()  # mended, the file would have more problems, not fewer


def test_dry_run_only_shows(file: Path, capsys: pytest.CaptureFixture[str]) -> None:
    assert cli.main(["check", "--fix", "--dry-run", "cloth.loop"]) == 1
    assert file.read_bytes() == WRONG
    out = capsys.readouterr().out
    assert "+  row: k1 yo * k1 * yo k1 => 14\n" in out
    assert "left as it is; then no problems" in out and "1 error" in out


def test_standard_input_comes_out_mended(
    file: Path, capfdbinary: pytest.CaptureFixture[bytes], monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr(sys, "stdin", io.TextIOWrapper(io.BytesIO(WRONG), "utf-8"))
    with monkeypatch.context() as patch:
        made = io.BytesIO()
        patch.setattr(sys, "stdout", io.TextIOWrapper(made, "utf-8"))
        assert cli.main(["check", "--fix", "-"]) == 0
        sys.stdout.flush()
        assert made.getvalue() == RIGHT
    err = capfdbinary.readouterr().err.decode()
    assert "standard input:4: write “=> 14”" in err and "no problems" in err


def test_json_tells_the_fix(file: Path, capsys: pytest.CaptureFixture[str]) -> None:
    assert cli.main(["check", "--json", "cloth.loop"]) == 1
    (problem,) = json.loads(capsys.readouterr().out)["files"][0]["problems"]
    assert problem["fix"] == {
        "title": "write “=> 14” for “=> 15”",
        "edits": [{"line": 4, "column": 30, "end_line": 4, "end_column": 32, "text": "14"}],
    }
    file.write_bytes(WRONG.replace(b"* k1 *", b"* k1 yo k1 yo k7 *"))
    assert cli.main(["check", "--json", "cloth.loop"]) == 1
    (problem,) = json.loads(capsys.readouterr().out)["files"][0]["problems"]
    assert "fix" not in problem


def test_json_of_the_result(file: Path, capsys: pytest.CaptureFixture[str]) -> None:
    assert cli.main(["check", "--fix", "--json", "cloth.loop"]) == 0
    got = capsys.readouterr()
    assert json.loads(got.out)["files"][0]["problems"] == []
    assert "(claim-wrong)" in got.err and file.read_bytes() == RIGHT


def test_mode_is_kept_and_one_bad_file_does_not_stop_the_next(
    file: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    file.chmod(0o640)
    assert cli.main(["check", "--fix", "nowhere.loop", "cloth.loop"]) == 2
    assert file.read_bytes() == RIGHT
    assert stat.S_IMODE(file.stat().st_mode) == 0o640
    assert "there is no file nowhere.loop" in capsys.readouterr().err
    assert os.listdir(".") == ["cloth.loop"]  # nothing half written lies about


@pytest.mark.parametrize(
    "args", [("--dry-run", "cloth.loop"), ("--fix", "--json", "-"), ("--fix", "-", "-")]
)
def test_wrong_calls(file: Path, args: tuple[str, ...], capsys: pytest.CaptureFixture[str]) -> None:
    assert cli.main(["check", *args]) == 2
    got = capsys.readouterr()
    assert got.out == "" and got.err.startswith("loopwright: ")
    assert file.read_bytes() == WRONG
