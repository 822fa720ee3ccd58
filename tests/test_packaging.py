"""What the package carries: every folder of code, and every file that the code reads."""

from __future__ import annotations

import subprocess
import sys
import tomllib
import zipfile
from pathlib import Path

import pytest

ROOT = Path(__file__).parent.parent
PROJECT = tomllib.loads((ROOT / "pyproject.toml").read_text("utf-8"))
SETUPTOOLS = PROJECT["tool"]["setuptools"]
DATA = {".csv", ".lark", ".table", ".html", ".txt", ".css", ".ttf", ".otf", ".typed", ".po"}


def folder_of(package: str) -> Path:
    """Where a package's code lies: its own entry of package-dir, or under that of its parent."""
    folders = SETUPTOOLS["package-dir"]
    if package in folders:
        return ROOT / folders[package]
    parent, _, name = package.rpartition(".")
    return folder_of(parent) / name


def packages_in_the_tree() -> set[str]:
    source = ROOT / "src"
    inside = {
        ".".join(init.parent.relative_to(source).parts) for init in source.rglob("__init__.py")
    }
    return inside | {"loopwright.grammars", "loopwright.templates"}


def test_the_list_of_packages_is_the_tree() -> None:
    assert sorted(SETUPTOOLS["packages"]) == sorted(packages_in_the_tree())
    for package in SETUPTOOLS["packages"]:
        assert (folder_of(package) / "__init__.py").is_file(), package


def test_no_code_lies_in_a_folder_that_is_no_package() -> None:
    folders = {folder_of(package) for package in SETUPTOOLS["packages"]}
    code = {path for path in (ROOT / "src").rglob("*.py") if "__pycache__" not in path.parts}
    assert {path.parent for path in code} <= folders


@pytest.fixture(scope="module")
def wheel(tmp_path_factory: pytest.TempPathFactory) -> set[str]:
    """The names in a wheel built from the files of the tree, without asking the network."""
    folder = tmp_path_factory.mktemp("wheel")
    # A copy: setuptools leaves a build folder beside the sources, and reuses stale ones.
    copy = folder / "tree"
    for part in ("src", "grammars", "templates"):
        for path in (ROOT / part).rglob("*"):
            if path.is_file() and not {"__pycache__"} & set(path.parts):
                target = copy / path.relative_to(ROOT)
                target.parent.mkdir(parents=True, exist_ok=True)
                target.write_bytes(path.read_bytes())
    for name in ("pyproject.toml", "README.md", "LICENSE"):
        (copy / name).write_bytes((ROOT / name).read_bytes())
    done = subprocess.run(
        [
            sys.executable,
            "-c",
            "from setuptools.build_meta import build_wheel; build_wheel('..')",
        ],
        cwd=copy,
        capture_output=True,
        text=True,
        check=False,
    )
    assert done.returncode == 0, done.stderr
    (built,) = folder.glob("*.whl")
    return set(zipfile.ZipFile(built).namelist())


def test_a_wheel_holds_every_module_and_every_file_that_is_read(wheel: set[str]) -> None:
    for package in SETUPTOOLS["packages"]:
        folder = folder_of(package)
        # grammars and templates may hold folders that are no packages, such as fonts.
        deep = package in {"loopwright.grammars", "loopwright.templates", "loopwright.edition"}
        for path in folder.rglob("*") if deep else folder.glob("*"):
            if path.suffix == ".py" or path.suffix in DATA:
                name = "/".join([*package.split("."), *path.relative_to(folder).parts])
                assert name in wheel, name


def test_a_wheel_holds_no_leavings(wheel: set[str]) -> None:
    assert not [name for name in wheel if "__pycache__" in name or name.endswith(".pyc")]
    assert not [name for name in wheel if name.startswith(("tests/", "examples/"))]


def test_a_wheel_holds_the_licences_of_the_code_and_the_fonts(wheel: set[str]) -> None:
    licences = {name.rpartition("/")[2] for name in wheel if ".dist-info/licenses/" in name}
    assert {"LICENSE", "OFL-Inter.txt", "OFL-Vollkorn.txt"} <= licences


def test_the_command_is_there() -> None:
    module, _, function = PROJECT["project"]["scripts"]["loopwright"].partition(":")
    done = subprocess.run(
        [sys.executable, "-c", f"from {module} import {function}; assert callable({function})"],
        capture_output=True,
        text=True,
        check=False,
    )
    assert done.returncode == 0, done.stderr
