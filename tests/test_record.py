"""Recorded classes are what `dataclasses` would make of them, and the records are up to date."""

from __future__ import annotations

import copy
import dataclasses
import importlib
import inspect
import pickle
import sys
from pathlib import Path
from typing import Any

import pytest

from loopwright import record, recording

sys.path.insert(0, str(Path(__file__).parents[1] / ".ci"))
import records

NAMES = sorted(
    f"{'.'.join(path.relative_to(records.PACKAGE).with_suffix('').parts)}.{kind.name}"
    for path in records.PACKAGE.rglob("*.py")
    if path.stem not in ("recorded", "recording")
    for kind in records.kinds_of(path)
)


def the_class(name: str) -> Any:
    module, _, kind = name.rpartition(".")
    return getattr(importlib.import_module(f"loopwright.{module}"), kind)


def by_dataclasses(kind: Any) -> Any:
    """The same class, made by `dataclasses`, on bases made so too."""
    bases = tuple(by_dataclasses(base) for base in kind.__bases__ if base is not object)
    space = {
        name: value
        for name, value in kind.__dict__.items()
        if name not in records.MADE
        and name not in kind.__recorded__
        and not name.startswith(("__recorded", "__dataclass"))
    }
    for name in kind.__slots__:
        if name in kind.__recorded_given__:
            given = kind.__recorded_given__[name]
            later = isinstance(given, recording.Later)
            space[name] = dataclasses.field(**given.words) if later else given
    made = type(kind.__name__, bases, space)
    made.__qualname__ = kind.__qualname__
    words = kind.__dataclass_params__
    return dataclasses.dataclass(
        made, frozen=words.frozen, eq=words.eq, order=words.order, slots=True
    )  # type: ignore[call-overload]


def fields(kind: Any) -> list[tuple[object, ...]]:
    return [
        (f.name, f.type, f.default, f.default_factory, f.repr, f.compare, f.hash, f.init)
        for f in dataclasses.fields(kind)
    ]


def parameters(kind: Any) -> list[tuple[object, ...]]:
    """Of its __init__, without the stand-in for what is made anew each time."""
    anew = {
        f.name for f in dataclasses.fields(kind) if f.default_factory is not dataclasses.MISSING
    }
    found = list(inspect.signature(kind.__init__).parameters.values())
    return [(p.name, p.kind, "anew" if p.name in anew else p.default) for p in found]


def test_the_records_are_up_to_date() -> None:
    made = records.records() | records.pages()
    for path, text in made.items():
        assert path.read_text("utf-8") == text, f"{path} is old: make records"
    assert set(records.PACKAGE.rglob("recorded.py")) == set(records.records())


def test_every_dataclass_is_recorded() -> None:
    texts = [path.read_text("utf-8") for path in records.PACKAGE.rglob("*.py")]
    assert len(NAMES) == sum(text.count("\n@dataclass") for text in texts) > 200


@pytest.mark.parametrize("name", NAMES)
def test_a_recorded_class_is_what_dataclasses_makes(name: str) -> None:
    mine = the_class(name)
    assert "__recorded__" in mine.__dict__, "its record does not fit: make records"
    right = by_dataclasses(mine)
    assert fields(mine) == fields(right)
    assert parameters(mine) == parameters(right)
    assert repr(mine.__dataclass_params__) == repr(right.__dataclass_params__)
    assert mine.__slots__ == right.__slots__
    assert mine.__match_args__ == right.__match_args__
    assert (mine.__hash__ is None) == (right.__hash__ is None)
    differ = {it for it in records.MADE if (it in mine.__dict__) != (it in right.__dict__)}
    assert not differ


@pytest.mark.parametrize("name", NAMES)
def test_its_values_behave_alike(name: str) -> None:
    mine = the_class(name)
    right = by_dataclasses(mine)
    names = [f.name for f in dataclasses.fields(mine)]
    values = {name: f"<{name}>" for name in names}
    pairs = [(kind(**values), kind(*values.values())) for kind in (mine, right)]
    assert len({a == b for a, b in pairs}) == 1
    (one, _), (other, _) = pairs
    assert repr(one) == repr(other)
    assert [getattr(one, name) for name in names] == list(values.values())
    assert one != other, "a value of another class is never equal"
    if mine.__hash__ is not None and mine.__eq__ is not object.__eq__:
        assert hash(one) == hash(other)
    for changed in names:
        apart = [record.replace(it, **{changed: "other"}) == it for it in (one, other)]  # type: ignore[type-var]
        assert apart[0] == apart[1]
    copied = copy.deepcopy(one)
    assert [getattr(copied, name) for name in names] == list(values.values())
    again = pickle.loads(pickle.dumps(one))
    assert type(again) is mine and repr(again) == repr(one)
    if mine.__dataclass_params__.frozen:
        for at in names:
            with pytest.raises(dataclasses.FrozenInstanceError, match=f"assign to field '{at}'"):
                setattr(one, at, 1)
            with pytest.raises(dataclasses.FrozenInstanceError, match=f"delete field '{at}'"):
                delattr(one, at)
    else:
        setattr(one, names[0], 1)
        assert getattr(one, names[0]) == 1
    with pytest.raises(AttributeError):
        one.no_such_field = 1


def test_what_is_given_anew_is_not_shared() -> None:
    found = 0
    for name in NAMES:
        kind = the_class(name)
        makers = [f for f in dataclasses.fields(kind) if f.default_factory in (dict, list, set)]
        needed = [f.name for f in dataclasses.fields(kind) if f.default is dataclasses.MISSING]
        needed = [at for at in needed if at not in {f.name for f in makers}]
        plain = dict.fromkeys(needed)
        if makers:
            one, other = kind(**plain), kind(**plain)
            for maker in makers:
                found += 1
                assert getattr(one, maker.name) is not getattr(other, maker.name)
                assert type(getattr(one, maker.name)) is maker.default_factory
    assert found > 20


def test_a_class_without_a_record_is_made_by_dataclasses() -> None:
    @record.dataclass(frozen=True, slots=True)
    class Free:
        """Not in any room."""

        name: str
        parts: list[int] = record.field(default_factory=list)

    assert "__recorded__" not in Free.__dict__
    assert Free("a") == Free("a", []) and record.replace(Free("a"), name="b").name == "b"


def test_a_record_that_does_not_fit_is_not_used() -> None:
    """As after a change of the class: a field more, another order, a default, another base."""
    space = {"__module__": "loopwright.count.affine", "__qualname__": "Affine"}
    right = {"fixed": "int", "unit": "int"}
    make = record.dataclass(frozen=True, slots=True)

    def recorded(notes: dict[str, str], **more: object) -> bool:
        made = make(type("Affine", (), {**space, "__annotations__": notes, **more}))
        names = [f.name for f in dataclasses.fields(made)]
        assert names == list(notes)
        return "__recorded__" in made.__dict__

    assert recorded(right, unit=0)
    assert not recorded(right)
    assert not recorded({"unit": "int", "fixed": "int"}, unit=0, fixed=0)
    assert not recorded({**right, "more": "int"}, unit=0, more=0)
    assert not recorded(right, unit=record.field(default=0))
