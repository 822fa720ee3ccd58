"""Slotted dataclasses whose methods were written out beforehand.

`dataclasses.dataclass` writes the methods of each class as text and compiles that text at every
start, about a millisecond a class: half of what the check of a pattern took. Here the same methods
stand in the module ``recorded`` of each room, which ``make records`` writes from the classes and
Python compiles once. A class whose record does not fit it as it now stands (a new field, another
default) is made by `dataclasses` itself: a stale record costs time and nothing else.
tests/test_record.py holds every recorded class against the one that `dataclasses` makes.
"""

from __future__ import annotations

from collections.abc import Callable, Mapping
from functools import cache
from importlib import import_module
from typing import Any

Functions = dict[str, Callable[..., Any]]
Record = tuple[str, Callable[[Mapping[str, Any]], Functions]]
"""The shape of a class (see `shape_of`), and what makes its methods from its defaults."""


class Later:
    """What `field` gives; it becomes a field of `dataclasses` only where one is asked for."""

    __slots__ = ("words",)

    def __init__(self, words: dict[str, Any]) -> None:
        self.words = words


def field(**words: Any) -> Any:
    """As `dataclasses.field`."""
    return Later(words)


def replace(value: Any, /, **changes: Any) -> Any:
    """As `dataclasses.replace`."""
    names = getattr(type(value), "__recorded__", None)
    if names is None:
        import dataclasses

        return dataclasses.replace(value, **changes)
    for name in names:
        if name not in changes:
            changes[name] = getattr(value, name)
    return type(value)(**changes)


def names_of(value: object) -> tuple[str, ...] | None:
    """The names of a value's fields; None for a value of no dataclass, and for a class."""
    kind: Any = type(value)
    names: tuple[str, ...] | None = getattr(kind, "__recorded__", None)
    if names is None and hasattr(kind, "__dataclass_fields__"):
        import dataclasses

        names = tuple(one.name for one in dataclasses.fields(kind))
    return names


def dataclass(
    cls: type | None = None, /, *, frozen: bool = False, slots: bool = False, eq: bool = True,
    order: bool = False, **others: Any,
) -> Any:  # fmt: skip
    """As `dataclasses.dataclass`."""

    def wrap(cls: type) -> type:
        words = {"frozen": frozen, "eq": eq, "order": order}
        made = _recorded(cls, words) if slots and not others else None
        return made or _plain(cls, {**words, "slots": slots, **others})

    return wrap if cls is None else wrap(cls)


def shape_of(fields: Mapping[str, str], words: Mapping[str, bool]) -> str:
    """The shape of a class in one line: its parameters, its fields, what each is given.

    `fields` have ``""`` for a field without a default, ``=`` for one with it, ``~`` and its sorted
    words for one made by `field`.
    """
    flags = "".join(word[0] for word, on in words.items() if on)
    return " ".join((f"{flags}:", *(name + given for name, given in fields.items())))


def _plain(cls: type, words: dict[str, Any]) -> type:
    """The class as `dataclasses` makes it."""
    import dataclasses

    for name, given in list(cls.__dict__.items()):
        if isinstance(given, Later):
            setattr(cls, name, dataclasses.field(**given.words))
    made: type = dataclasses.dataclass(cls, **words)
    return made


def _record_of(cls: type) -> Record | None:
    """The record of a class, in the room of its module."""
    package, _, rest = cls.__module__.partition(".")
    room, inner, module = rest.partition(".")
    if package != "loopwright" or not room:
        return None
    try:
        found = import_module(f"loopwright.{room}.recorded" if inner else "loopwright.recorded")
    except ModuleNotFoundError:
        return None
    records: dict[str, Record] = found.RECORDS
    return records.get(f"{module or room}.{cls.__qualname__}")


def _given(value: object) -> str:
    return f"~{','.join(sorted(value.words))}" if isinstance(value, Later) else "="


def _recorded(cls: type, words: dict[str, bool]) -> type | None:
    """The class with its recorded methods; None where it has no record that fits it."""
    space = cls.__dict__
    own: dict[str, Any] | None = space.get("__annotations__")
    record = _record_of(cls) if own is not None else None
    if own is None or record is None:
        return None
    given = {name: space[name] for name in own if name in space}
    fields = {name: _given(given[name]) if name in given else "" for name in own}
    shape = shape_of(fields, words)
    names = tuple(own)
    bases: tuple[Any, ...] = cls.__bases__
    for base in bases:
        if base is object:
            continue
        above = base.__dict__.get("__recorded_shape__")
        if above is None:
            return None
        shape = f"{above}; {shape}"
        names = base.__recorded__ + names
        given = base.__recorded_given__ | given
    if shape != record[0] or len(set(names)) < len(names):
        return None
    defaults = {
        name: value.words.get("default_factory") if isinstance(value, Later) else value
        for name, value in given.items()
    }
    # Slots ask for a class made anew, as in `dataclasses`.
    body = {key: value for key, value in space.items() if key not in own}
    body.pop("__dict__", None)
    body.pop("__weakref__", None)
    body |= {
        "__slots__": tuple(own), "__match_args__": names,
        "__recorded__": names, "__recorded_shape__": shape, "__recorded_given__": given,
        "__dataclass_fields__": _Told(words), "__dataclass_params__": _Told(words),
    }  # fmt: skip
    body |= record[1](defaults)
    body.setdefault("__repr__", _say)
    if words["frozen"]:
        body |= _FROZEN
    elif words["eq"]:
        body["__hash__"] = None
    made = type(cls)(cls.__name__, cls.__bases__, body)
    made.__qualname__ = cls.__qualname__
    return made


def _no_setting(self: object, name: str, value: object) -> None:
    from dataclasses import FrozenInstanceError

    raise FrozenInstanceError(f"cannot assign to field {name!r}")


def _no_deleting(self: object, name: str) -> None:
    from dataclasses import FrozenInstanceError

    raise FrozenInstanceError(f"cannot delete field {name!r}")


def _state(self: Any) -> list[Any]:
    return [getattr(self, name) for name in self.__recorded__]


def _set_state(self: Any, state: list[Any]) -> None:
    for name, value in zip(self.__recorded__, state, strict=True):
        object.__setattr__(self, name, value)


_FROZEN: dict[str, Any] = {
    "__setattr__": _no_setting, "__delattr__": _no_deleting,
    "__getstate__": _state, "__setstate__": _set_state,
}  # fmt: skip


def _say(self: object) -> str:
    return _sayer()(self)


@cache
def _sayer() -> Callable[[object], str]:
    """What writes a value as `dataclasses` does, three dots for a value within itself."""
    from dataclasses import fields
    from reprlib import recursive_repr

    def say(self: Any) -> str:
        parts = (f"{one.name}={getattr(self, one.name)!r}" for one in fields(self) if one.repr)
        return f"{type(self).__qualname__}({', '.join(parts)})"

    return recursive_repr("...")(say)


class _Told:
    """The fields or parameters of a class as `dataclasses` tells them, made where asked for."""

    __slots__ = ("home", "name", "words")

    def __init__(self, words: dict[str, bool]) -> None:
        self.words = words

    def __set_name__(self, owner: type, name: str) -> None:
        self.home, self.name = owner, name

    def __get__(self, value: object, owner: type) -> Any:
        import dataclasses

        home: Any = self.home
        kinds: dict[str, Any] = {}
        for kind in reversed(home.__mro__):
            kinds |= kind.__dict__.get("__annotations__", {})  # noqa: RUF063
        given = {
            name: dataclasses.field(**one.words) if isinstance(one, Later) else one
            for name, one in home.__recorded_given__.items()
        }
        space = {**given, "__annotations__": kinds, "__module__": home.__module__}
        plain: Any = dataclasses.dataclass(type(home.__name__, (), space), **self.words)
        home.__dataclass_fields__ = plain.__dataclass_fields__
        home.__dataclass_params__ = plain.__dataclass_params__
        return getattr(plain, self.name)
