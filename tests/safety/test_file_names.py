"""Whatever a source is called, its outputs lie in their folder and have names that are harmless."""

from __future__ import annotations

import json
import os
import re
import shutil
import stat
import sys
import tempfile
import unicodedata
from collections.abc import Callable, Iterator
from pathlib import Path

import pytest
from hypothesis import given
from hypothesis import strategies as st

from loopwright import cli
from loopwright.files import OutOfPlace, is_inside, safe_name, write_inside
from loopwright.shelf import RECORD, jobs_in

Capture = pytest.CaptureFixture[str]

GOOD = 'pattern "Cloth"\npiece cloth flat\n  cast on 20\n  rows 4: knit\n  bind off\n'
DEVICES = ["con", "prn", "aux", "nul", "com1", "lpt9", "com²"]
LONGEST = 255  # bytes of a name on the file systems in use


@pytest.mark.parametrize(
    ("stem", "name"),
    [("skerry-throw", "skerry-throw"), ("Bárbara’s שלום 帽子 👩‍🌾", "Bárbara’s שלום 帽子 👩‍🌾"),
     ("-rf", "_rf"), ("--help", "_-help"), (".hidden", "_hidden"), ("..", "__"), (".", "_"),
     ("", "_"), ("a\nb", "a_b"), ("a\tb\x00c\x1b[31m", "a_b_c_[31m"), ("a/b", "a/b"),
     ("a\\..\\b", "a_.._b"), ("C:evil", "C_evil"), ('<>"|?*', "______"), ("dot.", "dot_"),
     ("blank ", "blank_"), ("a\u202egpj", "a_u202egpj"), ("a\udcffb", "a_b"),
     ("con", "con_"), ("console", "console"), ("lpt1.x", "lpt1_.x"), ("Nul .x.y", "Nul_ .x.y")],
)  # fmt: skip
def test_a_name_by_example(stem: str, name: str) -> None:
    assert safe_name(stem) == name


@given(
    st.text(max_size=300)
    | st.sampled_from(
        [*DEVICES, "CON", "nul.", "Aux .x", "con.0", "-" * 400, "é" * 200, "\ud800" * 90]
    )
)
def test_any_name_is_harmless(stem: str) -> None:
    name = safe_name(stem.replace("/", ""))
    assert name and len(f"{name}-personal-large.html".encode()) <= LONGEST
    assert not re.match(r"[-.]|\s*$", name) and not name.endswith((" ", "."))
    assert not any(unicodedata.category(c) in ("Cc", "Cs", "Zl", "Zp") for c in name)
    assert not set('<>:"|?*\\') & set(name)
    assert name.partition(".")[0].rstrip().casefold() not in DEVICES
    assert safe_name(name) == name
    assert is_inside(f"{name}.html")


def test_long_names_stay_apart() -> None:
    one, other = safe_name("a" * 240 + "1"), safe_name("a" * 240 + "2")
    assert one != other and len(one) <= 180


@pytest.mark.parametrize(
    "name", ["-rf", "--out", "a\nb", "...", "..", "con", "a" * 240, "ø" * 120, "a\\b", "C:x",
             "\udcff\udcfe", "a\u202eb", " ", "$(id)", "`id`", "%s{0}", "~root"],
    ids=lambda name: ascii(name)[:24],
)  # fmt: skip
def test_outputs_of_a_source_of_any_name(
    name: str, tmp_path: Path, capsys: Capture, monkeypatch: pytest.MonkeyPatch
) -> None:
    here = tmp_path / "here"
    here.mkdir()
    monkeypatch.chdir(here)
    path = here / f"{name}.loop"
    path.write_text(GOOD, "utf-8")
    for more in ((), ("--large",)):
        call = ["build", f"./{name}.loop", "--to", "html,text,spoken,lesson", "--out", "out", *more]
        assert cli.main(call) == 0, capsys.readouterr().err
    (here / "shelf").mkdir()
    path.rename(here / "shelf" / path.name)
    assert cli.main(["build", "shelf", "--to", "html", "--out", "all"]) == (
        # What begins with a dot is no source of a shelf.
        2 if name.startswith(".") else 0
    )
    capsys.readouterr()
    assert [p.name for p in tmp_path.iterdir()] == ["here"]
    made = [p for p in here.rglob("*") if p.is_file() and p.suffix != ".loop"]
    assert len([p for p in made if p.parent.name == "out"]) == 6
    for out in made:
        if out.name != RECORD:
            assert len(os.fsencode(out.name)) <= LONGEST
            assert not re.match("[-.]", out.name) and not set('\n<>:"|?*\\') & set(out.name)
            assert out.name.partition(".")[0] not in DEVICES and out.name.isprintable()


def test_two_sources_whose_outputs_would_share_a_name(tmp_path: Path, capsys: Capture) -> None:
    for name in ("a?b.loop", "a_b.loop"):
        (tmp_path / name).write_text(GOOD, "utf-8")
    assert cli.main(["build", str(tmp_path), "--to", "text", "--out", str(tmp_path / "o")]) == 2
    assert "would both be written as a_b" in capsys.readouterr().err
    assert not (tmp_path / "o").exists()


def test_folders_of_a_shelf_have_harmless_names_too(tmp_path: Path) -> None:
    folder = tmp_path / "shelf" / "-x" / "a\nb"
    folder.mkdir(parents=True)
    (folder / "nul.loop").write_text(GOOD, "utf-8")
    (job,) = jobs_in([str(tmp_path / "shelf")])
    assert job.stem == "_x/a_b/nul_"


@pytest.mark.parametrize(
    "name", ["../out.txt", "/tmp/out.txt", "a/../../out.txt", "", ".", "a\0b", "a/..", ".."]
)
def test_nothing_is_written_outside(name: str, tmp_path: Path) -> None:
    inside = tmp_path / "inside"
    inside.mkdir()
    with pytest.raises(OutOfPlace):
        write_inside(inside, name, b"x")
    assert list(inside.iterdir()) == [] and list(tmp_path.iterdir()) == [inside]


# --- links and folders ----------------------------------------------------------------------------


def test_links_are_not_followed_on_the_way_out(tmp_path: Path, capsys: Capture) -> None:
    source, target, out = tmp_path / "p.loop", tmp_path / "target", tmp_path / "out"
    source.write_text(GOOD, "utf-8")
    target.write_text("mine")
    out.mkdir()
    for link in ("p.txt", "p-spoken.txt"):
        (out / link).symlink_to(target)
        kind = "text" if link == "p.txt" else "spoken"
        assert cli.main(["build", str(source), "--to", kind, "--out", str(out)]) == 2
        assert "link" in capsys.readouterr().err
    assert target.read_text() == "mine"
    dangling = tmp_path / "out2"
    dangling.mkdir()
    (dangling / "p.txt").symlink_to(tmp_path / "not-there")
    assert cli.main(["build", str(source), "--to", "text", "--out", str(dangling)]) == 2
    assert not (tmp_path / "not-there").exists()


def test_a_link_to_itself(tmp_path: Path, capsys: Capture) -> None:
    loop = tmp_path / "p.loop"
    loop.symlink_to(loop)
    for command in ("check", "rows", "build", "format"):
        assert cli.main([command, str(loop)]) == 2
        assert "Traceback" not in capsys.readouterr().err
    folder = tmp_path / "shelf"
    folder.mkdir()
    (folder / "again").symlink_to(folder)
    (folder / "p.loop").write_text(GOOD, "utf-8")
    assert len(jobs_in([str(folder)])) == 1


def test_new_writes_through_no_link_and_its_starter_checks(
    tmp_path: Path, capsys: Capture, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.chdir(tmp_path)
    (tmp_path / "link.loop").symlink_to(tmp_path / "not-there")
    assert cli.main(["new", "link.loop"]) == 2
    assert not (tmp_path / "not-there").exists()
    stems = ('a"b', "a\nb", "a\u202eb", "\udcff", "--x", "{title}")
    for name in (f"{stem}.loop" for stem in stems):
        assert cli.main(["new", f"./{name}"]) == 0, capsys.readouterr().err
        assert cli.main(["check", f"./{name}"]) == 0, capsys.readouterr().out


# --- the record of a shelf ------------------------------------------------------------------------

RECORDS: dict[str, str] = {
    "nothing": "", "a list": "[]", "a number": "1", "null": "null",
    "nothing inside": '{"built": 3}',
    "very deep": "[" * 100_000, "deep objects": '{"built":' * 50_000,
    "a half": '{"built": {"p": {"key"',
    "a lone surrogate": '{"built": {"\\ud800": {"key": "x", "files": {"\\ud800": "y"}}}}',
    "files that are none": '{"built": {"p": {"key": "KEY", "files": [["p.txt", 3]]}}}',
    "no text": "\x00\x01",
    "a path that leads out": '{"built": {"p": {"key": "KEY", "files": {"../mine": "DIGEST"}}}}',
    "a device": '{"built": {"p": {"key": "KEY", "files": {"/dev/zero": "DIGEST"}}}}',
}  # fmt: skip


@pytest.mark.parametrize("name", RECORDS)
def test_a_record_that_is_none(name: str, tmp_path: Path, capsys: Capture) -> None:
    import hashlib

    from loopwright.build import BuildOptions

    shelf, out = tmp_path / "shelf", tmp_path / "out"
    shelf.mkdir()
    out.mkdir()
    (shelf / "p.loop").write_text(GOOD, "utf-8")
    (tmp_path / "mine").write_text("mine")
    (job,) = jobs_in([str(shelf)])
    text = RECORDS[name].replace("KEY", job.key(BuildOptions(("text",))))
    text = text.replace("DIGEST", hashlib.sha256(b"mine").hexdigest())
    (out / RECORD).write_text(text)
    assert cli.main(["build", str(shelf), "--to", "text", "--out", str(out)]) == 0
    told = capsys.readouterr()
    assert told.out.endswith("1 built, 0 unchanged, 0 failed\n") and "Traceback" not in told.err
    assert (out / "p.txt").is_file()
    assert "p" in json.loads((out / RECORD).read_text())["built"]
    assert (tmp_path / "mine").read_text() == "mine"


def test_a_record_that_is_a_pipe_is_not_waited_for(tmp_path: Path, capsys: Capture) -> None:
    shelf, out = tmp_path / "shelf", tmp_path / "out"
    shelf.mkdir()
    out.mkdir()
    (shelf / "p.loop").write_text(GOOD, "utf-8")
    os.mkfifo(out / RECORD)
    assert cli.main(["build", str(shelf), "--to", "text", "--out", str(out)]) == 0
    assert (out / RECORD).is_file()


# --- folders that may not be written --------------------------------------------------------------


@pytest.fixture
def as_nobody() -> Iterator[Callable[[Callable[[], int]], int]]:
    """Runs work in a child that is not root (root may write anywhere); gives its status."""
    if os.geteuid() != 0 or not hasattr(os, "fork"):
        yield lambda work: work()
        return

    def run(work: Callable[[], int]) -> int:
        child = os.fork()
        if child:
            return os.waitstatus_to_exitcode(os.waitpid(child, 0)[1])
        status = 70
        try:
            os.setgroups([])
            os.setgid(65534)
            os.setuid(65534)
            status = work()
        finally:
            sys.stderr.flush()
            os._exit(status)

    yield run


@pytest.fixture
def open_folder() -> Iterator[Path]:
    """A folder that any user may look into (the tests' own are their user's alone)."""
    folder = Path(tempfile.mkdtemp(prefix="loopwright-test-"))
    folder.chmod(0o755)
    yield folder
    shutil.rmtree(folder)


CALLS = {
    "build": ["build", "p.loop", "--to", "text", "--out", "shut/out"],
    "build into it": ["build", "p.loop", "--to", "text", "--out", "shut"],
    "shelf": ["build", "p.loop", "q.loop", "--to", "text", "--out", "shut", "--jobs", "1"],
    "format": ["format", "shut/p.loop"],
    "fix": ["check", "--fix", "shut/w.loop"],
    "resize": ["resize", "hat.loop", "--width", "30cm", "-o", "shut/n.loop"],
    "picture": ["picture", "p.loop", "--what", "fabric", "-o", "shut/p.png"],
    "new": ["new", "shut/n.loop"],
}


@pytest.mark.parametrize("name", CALLS)
def test_a_folder_that_may_not_be_written(
    name: str, open_folder: Path, as_nobody: Callable[[Callable[[], int]], int], capfd: Capture,
    monkeypatch: pytest.MonkeyPatch,
) -> None:  # fmt: skip
    shut = open_folder / "shut"
    shut.mkdir()
    for path in ("p.loop", "q.loop", "shut/p.loop"):
        (open_folder / path).write_text(GOOD.replace("  cast", "cast"), "utf-8")
    (shut / "w.loop").write_text(GOOD.replace("cast on", "casst on"), "utf-8")
    (open_folder / "hat.loop").write_text(
        GOOD.replace("piece", "  gauge 20 stitches 28 rows = 10 cm\n  width 10 cm\npiece"), "utf-8"
    )
    shut.chmod(0o555)
    before = {path.name: path.read_bytes() for path in shut.iterdir()}
    monkeypatch.chdir(open_folder)
    assert as_nobody(lambda: cli.main(CALLS[name])) == 2
    said = capfd.readouterr().err
    assert "Permission denied" in said and "Traceback" not in said
    assert {path.name: path.read_bytes() for path in shut.iterdir()} == before
    assert stat.S_IMODE(shut.stat().st_mode) == 0o555
