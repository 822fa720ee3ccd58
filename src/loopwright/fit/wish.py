"""What a call asks for, read from its words."""

from __future__ import annotations

from loopwright.fit.units import parse_quantity


def size_place(names: tuple[str, ...], size: str | None) -> int | None:
    """The place of a size by name; None for None. Raises ValueError where there is none."""
    if size is None:
        return None
    if size not in names:
        raise ValueError(f"there is no size “{size}”; the pattern has {', '.join(names)}")
    return names.index(size)


def one_a_size(
    text: str | None, option: str, names: tuple[str, ...], size: str | None
) -> tuple[float | None, ...]:
    """A length of the call in mm for each size; None leaves a size as it is. Raises ValueError."""
    if text is None:
        return (None,) * len(names)
    quantity = parse_quantity(text)
    if not quantity.is_length:
        raise ValueError(f"{option} wants a length, and {text} is none")
    values = [quantity.mm(i) for i in range(len(quantity.values))]
    if size is not None:
        if len(values) > 1:
            raise ValueError(f"{option} {text} is a list, but --size names one size")
        return tuple(values[0] if name == size else None for name in names)
    if len(values) == 1:
        return tuple(values * len(names))
    if len(values) != len(names):
        raise ValueError(
            f"{option} {text} has {len(values)} numbers, and the pattern has {len(names)} sizes"
        )
    return tuple(values)
