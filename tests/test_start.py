"""What a command loads before it starts: exact lists, which no busy machine can blur."""

from __future__ import annotations

import os
import subprocess
import sys
from pathlib import Path

import pytest

EXAMPLES = Path(__file__).parents[1] / "examples"

# Each of these takes as long as the check itself, or brings others that do.
SLOW = {
    "dataclasses", "decimal", "difflib", "fractions", "inspect", "json", "lark", "pkgutil",
    "random", "shutil", "tempfile", "textwrap", "unittest",
}  # fmt: skip


def loaded_by(*words: str) -> set[str]:
    """The modules in a process that has run a command, beyond those of a bare Python."""
    probe = (
        "import sys\nbefore = set(sys.modules)\nfrom loopwright import cli\n"
        f"try:\n    status = cli.main({list(words)!r})\n"
        "except SystemExit as end:\n    status = end.code\n"
        "print('loaded', *sorted(set(sys.modules) - before), file=sys.stderr)\nsys.exit(status)\n"
    )
    done = subprocess.run(
        [sys.executable, "-c", probe], capture_output=True, encoding="utf-8", timeout=60,
        check=False, env={**os.environ, "LANGUAGE": "", "LANG": "C.UTF-8"},
    )  # fmt: skip
    assert done.returncode == 0, done.stderr
    return set(done.stderr.splitlines()[-1].split()[1:])


@pytest.mark.parametrize("name", ["skerry-throw", "gull-hat"])
def test_the_check_of_a_clean_source_loads_nothing_slow(name: str) -> None:
    loaded = loaded_by("check", str(EXAMPLES / f"{name}.loop"))
    assert not SLOW & loaded
    # A class without its record is made by dataclasses, which stands in the list above.
    rooms = {module.split(".")[1] for module in loaded if module.startswith("loopwright.")}
    assert not rooms & {"api", "build", "edition", "fit", "picture", "shelf"}
    assert not any(module.startswith("loopwright.notation.habits") for module in loaded)


def test_a_command_loads_no_other_command() -> None:
    commands = {m for m in loaded_by("explain") if m.startswith("loopwright.commands.")}
    assert commands == {"loopwright.commands.border", "loopwright.commands.explain"}


def test_every_command_is_listed_and_a_wrong_one_is_told() -> None:
    from loopwright.cli import main
    from loopwright.commands import COMMANDS

    done = subprocess.run(
        [sys.executable, "-m", "loopwright", "--help"],
        capture_output=True, encoding="utf-8", timeout=60, check=True,
    )  # fmt: skip
    for name in COMMANDS:
        assert f"\n    {name} " in done.stdout
    assert main(["chek"]) == 2
