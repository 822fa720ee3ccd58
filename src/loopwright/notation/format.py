"""The one layout of a source: tokens kept, spacing and case made even.

Works on the parser's tokens, so the meaning cannot change: numbers, units and fractions stay as
the writer wrote them, names keep their case, keywords and stitch words are lowered.
"""

from __future__ import annotations

from loopwright.notation.grammar import line_reader
from loopwright.notation.lalr import Token
from loopwright.notation.line import LOWER, split_comment
from loopwright.notation.parse import Parsed
from loopwright.notation.tree import (
    MotifLine,
    PatternLine,
    PieceLine,
    Placed,
    ShadeLine,
    StitchLine,
    StrandLine,
    SwatchLine,
    YarnLine,
)

_BLOCKS = (PatternLine, MotifLine, PieceLine)
_SINGLES = (YarnLine, ShadeLine, StrandLine, StitchLine)
_KEEP = {"NAME", "STRING", "SIZE_NAME"}
_NO_SPACE_BEFORE = {"_COMMA", "_COLON", "RPAR"}
_NO_SPACE_AFTER = {"LPAR"}


def format_source(parsed: Parsed) -> str:
    """The source in its one layout. The source must have been read without recovery."""
    source = parsed.source
    by_line = {placed.line: placed for placed in parsed.lines}
    out: list[str] = []
    depth = 0  # whether the line before opened or stood in a block
    blank = False
    pending: list[str] = []  # comments that wait to learn what they stand before
    for number in range(1, len(source.line_starts) + 1):
        code, comment = split_comment(source.line_text(number))
        placed = by_line.get(number)
        if placed is None:
            if comment.strip():
                pending.append(_comment(comment))
            else:
                if pending:
                    out += _lead(out, blank, pending, depth)
                    pending = []
                blank = True
            continue
        node = placed.statement
        opener = isinstance(node, _BLOCKS)
        single = isinstance(node, _SINGLES)
        indent = 0 if opener or single else 1
        if opener or (single and depth):
            blank = bool(out)
        text = "  " * indent + format_line(code, placed)
        if comment.strip():
            text += "  " + _comment(comment)
        if blank and out and not (out and out[-1] == ""):
            out.append("")
        out += ["  " * indent + line for line in pending]
        pending = []
        out.append(text)
        blank = False
        depth = 1 if opener or (indent and depth) else 0
    if pending:
        out += _lead(out, blank, pending, depth)
    while out and out[-1] == "":
        out.pop()
    return "\n".join(out) + "\n" if out else ""


def _lead(out: list[str], blank: bool, pending: list[str], depth: int) -> list[str]:
    lead = [""] if blank and out and out[-1] != "" else []
    return lead + ["  " * depth + line for line in pending]


def _comment(comment: str) -> str:
    text = comment.strip()
    body = text.lstrip("-")
    dashes = text[: len(text) - len(body)]
    return f"{dashes} {body.strip()}".rstrip() if body.strip() else text


def format_steps(text: str) -> str:
    """Steps of a row in the one layout. The steps must have been read already."""
    return format_line(f"row: {text}").removeprefix("row: ")


def format_line(code: str, placed: Placed | None = None) -> str:
    """One line of code (without its comment) in the one layout, not indented."""
    code = code.rstrip()
    reader, _ = line_reader()
    tokens = reader.tokens(code.translate(LOWER))
    out = ""
    before = ""
    for token in tokens:
        kind = token.type
        text = code[token.start_pos : token.end_pos] if kind in _KEEP else str(token)
        if kind == "TIMES":
            text = "x"
        if kind == "SIGN":
            text = text.replace("−", "-")
        if kind == "DASH":
            text = "-"
        glue = (
            not out
            or kind in _NO_SPACE_BEFORE
            or before in _NO_SPACE_AFTER
            or (before == "TIMES" and kind == "NUMBER" and not _is_swatch(placed))
            or kind == "DASH"
            or before == "DASH"
            or (before == "SIGN" and kind == "NUMBER" and _is_claim(tokens, token))
        )
        out += text if glue else f" {text}"
        before = kind
    return out


def _is_swatch(placed: Placed | None) -> bool:
    return placed is not None and isinstance(placed.statement, SwatchLine)


def _is_claim(tokens: list[Token], token: Token) -> bool:
    at = tokens.index(token)
    return at >= 2 and tokens[at - 2].type == "ARROW"
