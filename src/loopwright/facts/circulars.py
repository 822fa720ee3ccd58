"""What a circular needle holds, by the rules of practice in the table of rules of thumb."""

from __future__ import annotations

from loopwright.facts.loops import rule_of_thumb


def flat_capacity(length: float) -> float:
    """The widest flat fabric in mm that sits on a circular needle of a length in mm.

    So many times its cable (3), which is the needle less its stiff tips (8 inches at least).
    """
    cable = length - rule_of_thumb("cable of a circular needle").low
    return max(cable, 0.0) * rule_of_thumb("flat on circular needle").high


def round_capacity(length: float) -> float:
    """The widest round in mm that sits on a circular needle of a length in mm (twice its length).

    The narrowest is the needle's own length: stitches do not stretch round a longer one.
    """
    return length * rule_of_thumb("round on circular needle").high


def smallest_round() -> float:
    """The round in mm below which no common circular needle is short enough."""
    return rule_of_thumb("smallest round on a circular needle").low


def long_loop() -> float:
    """The length in mm from which a circular needle works any small round by a long loop."""
    return rule_of_thumb("long loop").low
