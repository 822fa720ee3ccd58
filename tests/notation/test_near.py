"""Names near to a mistyped one."""

from __future__ import annotations

from hypothesis import given
from hypothesis import strategies as st

from loopwright.notation.near import distance, nearest

words = st.text("kp2tog", max_size=6)


def alignment(one: str, other: str) -> int:
    """The optimal string alignment distance by its definition, without any short cut."""
    if not one or not other:
        return len(one) + len(other)
    best = min(
        alignment(one[:-1], other) + 1,
        alignment(one, other[:-1]) + 1,
        alignment(one[:-1], other[:-1]) + (one[-1] != other[-1]),
    )
    if len(one) > 1 and len(other) > 1 and one[-1] == other[-2] and one[-2] == other[-1]:
        best = min(best, alignment(one[:-2], other[:-2]) + 1)
    return best


@given(st.text("kp2", max_size=5), st.text("kp2", max_size=5))
def test_distance_by_definition(one: str, other: str) -> None:
    assert distance(one, other) == min(alignment(one, other), 3)


@given(words, words)
def test_distance_is_even_handed(one: str, other: str) -> None:
    assert distance(one, other) == distance(other, one)


def test_nearest() -> None:
    stitches = ["k2tog", "p2tog", "ssk", "skp", "yo"]
    assert nearest("k2tgo", stitches) == "k2tog"
    assert nearest("K2TGO", stitches) == "k2tog"
    assert nearest("2tog", stitches) is None  # k2tog and p2tog are as near
    assert nearest("sks", stitches) == "ssk" or nearest("sks", stitches) is None
    assert nearest("y", stitches) is None
    assert nearest("marker", stitches) is None
