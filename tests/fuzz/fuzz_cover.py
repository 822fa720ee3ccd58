"""What a source makes the project run, the fewest sources that run it all, and small finds.

Coverage is counted in arcs (from one line to the next within a function of the project).
"""

from __future__ import annotations

import heapq
import re
import sys
from collections.abc import Callable, Iterable
from types import CodeType, FrameType
from typing import Any

Arc = tuple[int, int, int]


class Arcs:
    """Collects the arcs of calls. Files of the project only; each has a number."""

    def __init__(self, within: str) -> None:
        self._within = within
        self._known: dict[CodeType, int] = {}
        self._files: dict[str, int] = {}

    def of(self, call: Callable[[], object]) -> frozenset[Arc]:
        """The arcs that a call runs through, whatever it raises."""
        found: set[Arc] = set()

        def enter(frame: FrameType, event: str, arg: object) -> Any:
            number = self._number(frame.f_code)
            if number < 0:
                return None
            before = frame.f_code.co_firstlineno

            def step(frame: FrameType, event: str, arg: object) -> Any:
                nonlocal before
                if event == "line":
                    line = frame.f_lineno
                    found.add((number, before, line))
                    before = line
                return step

            return step

        old = sys.gettrace()
        sys.settrace(enter)
        try:
            call()
        except Exception:
            pass
        finally:
            sys.settrace(old)
        return frozenset(found)

    def _number(self, code: CodeType) -> int:
        number = self._known.get(code)
        if number is None:
            name = code.co_filename
            number = self._files.setdefault(name, len(self._files)) if self._within in name else -1
            self._known[code] = number
        return number


def fewest(
    items: dict[str, frozenset[Any]],
    base: Iterable[Any] = (),
    size: Callable[[str], int] = len,
    most: int = 10**9,
    number: int = 10**9,
) -> list[str]:
    """A greedy set cover: items by the most that is new for their size, until nothing is new.

    `base` is covered already. Stops at `most` of size in all and at `number` items.
    """
    covered = set(base)
    heap = [(-len(arcs - covered) / (200 + size(item)), item) for item, arcs in items.items()]
    heapq.heapify(heap)
    chosen: list[str] = []
    left = most
    while heap and len(chosen) < number:
        old, item = heapq.heappop(heap)
        gain = len(items[item] - covered)
        now = -gain / (200 + size(item))
        if gain == 0 or size(item) > left:
            continue
        if now > old:  # others have taken some of it since; its turn comes later
            heapq.heappush(heap, (now, item))
            continue
        chosen.append(item)
        left -= size(item)
        covered |= items[item]
    return chosen


def shrunk(text: str, still: Callable[[str], bool], tries: int = 1500) -> str:
    """A small text for which `still` holds: without lines, then without words, while it goes."""
    parts = text.split("\n")
    parts, tries = _fewer(parts, "\n", still, tries)
    text = "\n".join(parts)
    words, _ = _fewer(re.findall(r"\n|(?:\w+|[^\w\s])[ \t]*|[ \t]+", text), "", still, tries)
    return "".join(words)


def _fewer(
    parts: list[str], glue: str, still: Callable[[str], bool], tries: int
) -> tuple[list[str], int]:
    length = max(len(parts) // 2, 1)
    while tries > 0:
        at, dropped = 0, False
        while at < len(parts) and tries > 0:
            fewer = parts[:at] + parts[at + length :]
            tries -= 1
            if still(glue.join(fewer)):
                parts, dropped = fewer, True
            else:
                at += length
        if length > 1:
            length = max(length // 2, 1)
        elif not dropped:
            break
    return parts, tries
