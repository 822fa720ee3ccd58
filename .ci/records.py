"""``make records``: writes the methods of the package's dataclasses out, a module for each room,
and the templates as Jinja compiles them.

Read from the classes' text alone; nothing of the package is run. A class is left out (and then made
by `dataclasses` at each start) where it has a base that is no class of its own module, a method
that `dataclasses` would make, an ``InitVar``, a ``ClassVar`` or words of `field` not known here.
"""

from __future__ import annotations

import ast
import sys
from collections.abc import Iterator
from dataclasses import dataclass
from pathlib import Path

ROOT = Path(__file__).parents[1]
PACKAGE = ROOT / "src" / "loopwright"
sys.path.insert(0, str(ROOT / "src"))

MADE = {
    "__init__", "__repr__", "__eq__", "__hash__", "__lt__", "__le__", "__gt__", "__ge__",
    "__setattr__", "__delattr__", "__getstate__", "__setstate__", "__match_args__", "__slots__",
}  # fmt: skip
_FLAGS = ("frozen", "eq", "order")
_FIELD_WORDS = {"default_factory", "repr", "compare"}
_HEAD = '''"""The methods of this room's dataclasses. Written by ``make records``."""

# ruff: noqa
# mypy: ignore-errors

UNSET = object()
put = object.__setattr__
'''


_PAGE_HEAD = '''"""A template, compiled by Jinja. Written by ``make records``; not to be edited."""

# ruff: noqa
# mypy: ignore-errors
'''


@dataclass(frozen=True)
class Field:
    """A field: what it is given (as `shape_of` has it), and whether it counts in comparisons."""

    name: str
    given: str
    compared: bool


@dataclass(frozen=True)
class Kind:
    """A dataclass of a module."""

    module: str
    name: str
    words: dict[str, bool]
    own: tuple[Field, ...]
    above: tuple[Kind, ...]
    post: bool

    @property
    def fields(self) -> tuple[Field, ...]:
        return tuple(one for kind in (*self.above, self) for one in kind.own)

    @property
    def maker(self) -> str:
        """The name of the function that makes its methods."""
        return f"{self.module.replace('.', '_')}_{self.name}"

    @property
    def shape(self) -> str:
        from loopwright.recording import shape_of

        return "; ".join(
            shape_of({one.name: one.given for one in kind.own}, kind.words)
            for kind in (*self.above, self)
        )


def kinds_of(path: Path) -> Iterator[Kind]:
    """The dataclasses of a file that can be recorded."""
    known: dict[str, Kind] = {}
    for node in ast.parse(path.read_text("utf-8")).body:
        if isinstance(node, ast.ClassDef):
            kind = _kind(_in_room(path), node, known)
            if kind is not None:
                known[kind.name] = kind
                yield kind


def _in_room(path: Path) -> str:
    """The name of a file's module within its room, with dots."""
    parts = path.relative_to(PACKAGE).with_suffix("").parts
    return ".".join(parts[1:] or parts)


def _kind(module: str, node: ast.ClassDef, known: dict[str, Kind]) -> Kind | None:
    words = {"frozen": False, "eq": True, "order": False}
    match node.decorator_list:
        case [ast.Call(func=ast.Name("dataclass"), args=[], keywords=given)]:
            said = {one.arg or "": ast.unparse(one.value) == "True" for one in given}
        case _:
            return None
    if not said.pop("slots", False) or said.keys() - words.keys():
        return None
    bases = [known.get(ast.unparse(base)) for base in node.bases]
    if None in bases or len(bases) > 1 or node.keywords:
        return None
    own: list[Field] = []
    post = False
    for part in node.body:
        match part:
            case ast.AnnAssign(target=ast.Name(name), annotation=of, value=value):
                one = _field(name, ast.unparse(of), value)
                if one is None:
                    return None
                own.append(one)
            case ast.FunctionDef(name=name) if name in MADE:
                return None
            case ast.FunctionDef(name="__post_init__"):
                post = True
            case ast.Assign():
                return None
    above = tuple(one for base in bases if base for one in (*base.above, base))
    return Kind(module, node.name, words | said, tuple(own), above, post)


def _field(name: str, of: str, value: ast.expr | None) -> Field | None:
    if "ClassVar" in of or "InitVar" in of or "KW_ONLY" in of:
        return None
    match value:
        case None:
            return Field(name, "", True)
        case ast.Call(func=ast.Name("field"), args=[], keywords=given):
            words = {one.arg or "": ast.unparse(one.value) for one in given}
            if words.keys() - _FIELD_WORDS:
                return None
            return Field(name, "~" + ",".join(sorted(words)), words.get("compare") != "False")
        case _:
            return Field(name, "=", True)


def text_of(kind: Kind) -> str:
    """The function that makes a class's methods."""
    head, body = ["self"], []
    for one in kind.fields:
        value = one.name
        if one.given == "=":
            head.append(f"{one.name}=given[{one.name!r}]")
        elif "default_factory" in one.given:
            head.append(f"{one.name}=UNSET")
            value = f"given[{one.name!r}]() if {one.name} is UNSET else {one.name}"
        else:
            head.append(one.name)
        frozen = kind.words["frozen"]
        body.append(f"put(self, {one.name!r}, {value})" if frozen else f"self.{one.name} = {value}")
    if kind.post:
        body.append("self.__post_init__()")
    out = [f"def {kind.maker}(given):", f"    def __init__({', '.join(head)}):"]
    out += [f"        {line}" for line in body or ["pass"]]
    made = ["__init__"]

    def compares(name: str, sign: str) -> None:
        made.append(name)
        out.extend((
            f"    def {name}(self, other):",
            "        if other.__class__ is self.__class__:",
            f"            return {_tuple(kind, 'self')} {sign} {_tuple(kind, 'other')}",
            "        return NotImplemented",
        ))  # fmt: skip

    if kind.words["eq"]:
        compares("__eq__", "==")
        if kind.words["frozen"]:
            made.append("__hash__")
            out += ["    def __hash__(self):", f"        return hash({_tuple(kind, 'self')})"]
    if kind.words["order"]:
        for name, sign in (("lt", "<"), ("le", "<="), ("gt", ">"), ("ge", ">=")):
            compares(f"__{name}__", sign)
    out.append("    return {" + ", ".join(f"{name!r}: {name}" for name in made) + "}")
    return "\n".join(out) + "\n"


def _tuple(kind: Kind, of: str) -> str:
    names = [f"{of}.{one.name}" for one in kind.fields if one.compared]
    return f"({', '.join(names)}{',' if len(names) == 1 else ''})"


def records() -> dict[Path, str]:
    """The text of each room's module."""
    rooms: dict[Path, list[Kind]] = {}
    for path in sorted(PACKAGE.rglob("*.py")):
        if path.stem not in ("recorded", "recording"):
            for kind in kinds_of(path):
                room = path.relative_to(PACKAGE).parts[:-1][:1]
                rooms.setdefault(PACKAGE.joinpath(*room, "recorded.py"), []).append(kind)
    return {
        path: "\n\n".join((
            _HEAD,
            *(text_of(kind) for kind in kinds),
            "RECORDS = {\n" + "".join(
                f'    "{kind.module}.{kind.name}": ("{kind.shape}", {kind.maker}),\n'
                for kind in kinds
            ) + "}\n",
        ))
        for path, kinds in rooms.items()
    }  # fmt: skip


def pages() -> dict[Path, str]:
    """The text of each compiled template's module."""
    import jinja2

    from loopwright.edition.ready import mark_of, module_of
    from loopwright.edition.render import environment, template_folder

    env = environment()
    made = {}
    for path in sorted(template_folder().glob("*.*")):
        if path.suffix in (".html", ".txt"):
            text, *_ = env.loader.get_source(env, path.name)
            code = env.compile(text, path.name, path.name, raw=True, defer_init=True)
            mark = mark_of(text, jinja2.__version__)
            module = PACKAGE / "edition" / "ready" / f"{module_of(path.name).rpartition('.')[2]}.py"
            made[module] = f"{_PAGE_HEAD}\n{code}\n\nMARK = {mark!r}\n"
    return made


def main() -> None:
    made = records() | pages()
    old = {*PACKAGE.rglob("recorded.py"), *(PACKAGE / "edition" / "ready").glob("*_*.py")}
    for path in old - made.keys() - {PACKAGE / "edition" / "ready" / "__init__.py"}:
        path.unlink()
    for path, text in made.items():
        path.write_text(text, "utf-8")


if __name__ == "__main__":
    main()
