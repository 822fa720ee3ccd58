"""One token of a source changed at a time, as a writer's hand slips."""

from __future__ import annotations

import re
from collections.abc import Iterator
from dataclasses import dataclass

# The lines that are worked; the lines above them (yarn, gauge, sizes) alter no row's count.
_WORKED = re.compile(r"\s*(row|rows|round|rounds|every|cast|work|motif|piece|bind|join)\b", re.I)
_TOKEN = re.compile(r"=>|[A-Za-z][\w-]*(?:/\d+)*|\d+[a-z]*(?:/\d+)*|[*():,+-]")
_COUNTED = re.compile(r"([A-Za-z]*?)(\d+)((?:/\d+)*)$")
_TOGETHER = re.compile(r"([kp])(\d+)(tog)$")
_HEAD = re.compile(r"\s*(?:rows?|rounds?)\b[^:]*:", re.I)
_MODIFIERS = {"wyif": "wyib", "wyib": "wyif", "kwise": "pwise", "pwise": "kwise", "tbl": "wyif"}

KINDS = ("drop", "double", "count", "swap k and p", "modifier", "strand", "row number")


@dataclass(frozen=True, slots=True)
class Mutation:
    """A source with one token changed; `line` counts from 1."""

    kind: str
    line: int
    before: str
    after: str
    text: str

    def __str__(self) -> str:
        return f"line {self.line}, {self.kind}: “{self.before}” → “{self.after}”"


def mutations(text: str) -> Iterator[Mutation]:
    """Every change of one token in the worked lines of a source."""
    lines = text.split("\n")
    strands = re.findall(r"(?m)^\s*strand (\w+)", text)
    for number, line in enumerate(lines, 1):
        if not _WORKED.match(line):
            continue
        code = line.split("--")[0] if '"' not in line else line.partition('"')[0]
        head = _HEAD.match(code)
        in_motif = _in_motif(lines, number)
        for token in _TOKEN.finditer(code):
            is_head = head is not None and token.end() < head.end()
            before = code[: token.start()]
            for kind, after in _changes(token[0], before, is_head and in_motif, strands):
                made = line[: token.start()] + after + line[token.end() :]
                if made == line:
                    continue
                text = "\n".join([*lines[: number - 1], made, *lines[number:]])
                yield Mutation(kind, number, token[0], after, text)


def _in_motif(lines: list[str], number: int) -> bool:
    for line in reversed(lines[: number - 1]):
        if line.startswith(("motif", "piece")):
            return line.startswith("motif")
    return False


def _changes(
    token: str, before: str, numbers_rows: bool, strands: list[str]
) -> Iterator[tuple[str, str]]:
    yield "drop", ""
    yield "double", f"{token} {token}"
    if re.search(r"\bin\s*$", before) and token[0].isalpha():
        for other in strands:
            if other != token:
                yield "strand", other
        yield "strand", "Z"
        return
    together = _TOGETHER.match(token)
    counted = _COUNTED.match(token)
    if together:
        for change in (1, -1):
            if int(together[2]) + change >= 2:
                yield "count", f"{together[1]}{int(together[2]) + change}tog"
    elif counted:
        for change in (1, -1):
            if int(counted[2]) + change >= (0 if counted[3] else 1):
                kind = "row number" if numbers_rows and not counted[1] else "count"
                yield kind, f"{counted[1]}{int(counted[2]) + change}{counted[3]}"
    elif token in ("k", "p", "yo", "sl", "kfb", "ssk"):
        yield "count", f"{token}2"
    form = re.match(r"(\d*)n$", token)
    if form:
        for change in (1, -1):
            unit = int(form[1] or 1) + change
            if unit >= 1:
                yield "count", f"{unit}n"
    if re.match(r"[kp](\d|tog|fb|$)", token) or token in ("knit", "purl"):
        swapped = {"knit": "purl", "purl": "knit"}.get(token)
        yield "swap k and p", swapped or ("p" if token[0] == "k" else "k") + token[1:]
    if token in _MODIFIERS:
        yield "modifier", _MODIFIERS[token]
