"""What edges, joins and estimates of yarn rest on: tables of practice with their sources."""

from __future__ import annotations

from functools import cache

from loopwright.facts.tables import table
from loopwright.record import dataclass


@dataclass(frozen=True, slots=True)
class EdgeYarn:
    """What an edge takes for each stitch.

    `loops` plain loops from the ball, `tail_widths` widths of the edge as an end measured off
    first, `tail_loops` the same in plain loops a stitch.
    """

    kind: str
    method: str
    loops: float
    tail_widths: float
    tail_loops: float
    source: str


@dataclass(frozen=True, slots=True)
class JoinWay:
    """How two ends are joined: the tail of each and what of it is worked back, in mm.

    `at_edge` where it is done between two rows only.
    """

    name: str
    tail_mm: float
    worked_back_mm: float
    at_edge: bool
    source: str


@cache
def _edges(kind: str) -> dict[str, EdgeYarn]:
    found: dict[str, EdgeYarn] = {}
    for row in table("edges"):
        if row["kind"] == kind:
            edge = EdgeYarn(
                kind,
                row["method"],
                float(row["loops"]),
                float(row["tail_widths"]),
                float(row["tail_loops"]),
                row["source"],
            )
            for word in row["words"].split(";"):
                found[word] = edge
    return found


def edge_yarn(kind: str, method: str | None) -> EdgeYarn:
    """The row for a ``cast-on`` or ``bind-off`` by its name, else the usual one of its kind.

    A longer name is looked up whole, then by its words: ``the cable method`` is ``cable``.
    """
    known = _edges(kind)
    usual = known["long-tail" if kind == "cast-on" else "usual"]
    if method is None:
        return usual
    name = " ".join(method.casefold().split())
    for word in (name, name.replace(" ", "-"), *name.split()):
        if word in known:
            return known[word]
    return usual


@cache
def join_ways() -> tuple[JoinWay, ...]:
    """Every join of the table."""
    return tuple(
        JoinWay(
            row["join"],
            float(row["tail_mm"]),
            float(row["worked_back_mm"]),
            row["at"] == "edge",
            row["source"],
        )
        for row in table("joins")
    )


def join_way(name: str | None) -> JoinWay | None:
    """The join of that name; the first of the table for None; None where there is no such."""
    if name is None:
        return join_ways()[0]
    wanted = " ".join(name.casefold().split())
    for way, row in zip(join_ways(), table("joins"), strict=True):
        words = row["words"].split(";")
        if wanted in words or wanted.replace(" ", "-") in words:
            return way
    return None


@cache
def estimate(name: str) -> float:
    """A figure of the table of estimates. Raises KeyError where it has none."""
    for row in table("estimates"):
        if row["name"] == name:
            return float(row["value"])
    raise KeyError(name)


@cache
def fabric_ks(fabric: str) -> float:
    """The stitch-density constant of a fabric. Raises KeyError where the table has none."""
    for row in table("fabrics"):
        if row["fabric"] == fabric:
            return float(row["ks"])
    raise KeyError(fabric)


@cache
def fabric_words() -> dict[str, str]:
    """Which fabric a word in a gauge line names: ``stockinette`` is ``plain``."""
    return {word: row["fabric"] for row in table("fabrics") for word in row["words"].split(";")}
