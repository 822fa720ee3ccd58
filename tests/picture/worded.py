"""The words that a knitter says for the squares of a chart, and for the steps of a row."""

from __future__ import annotations

from reader import ReadRow

from loopwright.model.body import Group, Stitches

# What a knitter does on the wrong side to make what a symbol shows on the right side.
WRONG_SIDE = {
    "k": "p", "p": "k", "k tbl": "p tbl", "p tbl": "k tbl", "k2tog": "p2tog", "p2tog": "k2tog",
    "k3tog": "p3tog", "p3tog": "k3tog", "k4tog": "p4tog", "p4tog": "k4tog", "k5tog": "p5tog",
    "p5tog": "k5tog", "k6tog": "p6tog", "p6tog": "k6tog", "ssk": "ssp", "ssp": "ssk",
    "kfb": "pfb", "pfb": "kfb", "m1": "m1p", "m1p": "m1", "brk": "brp", "brp": "brk",
    "sl": "sl front", "sl front": "sl", "sl kwise": "sl kwise front",
    "sl kwise front": "sl kwise",
}  # fmt: skip
SAME_BOTH = {"yo", "bo", "co", "drop", "sl1yo"}


def said(symbol: str, rs: bool) -> str:
    """The word that a row of this side works for a symbol."""
    if symbol.startswith("own:"):
        return symbol.removeprefix("own:").lower()
    if symbol.startswith("into:"):
        return "(" + symbol.split(":", 3)[3] + ")"
    if rs or symbol in SAME_BOTH:
        assert not symbol.endswith("~")
        return symbol
    if symbol.endswith("~"):
        return symbol[:-1]
    return WRONG_SIDE[symbol]


def as_worked(row: ReadRow) -> list[str]:
    """The words of a row as read, markers among them, in the order in which it is worked."""
    words: list[tuple[float, str]] = []
    for square in row.squares:
        if square.symbol in ("no stitch", "waiting"):
            continue
        word = said(square.symbol, row.rs)
        words += [(square.right + 0.5, word)]
    words += [(float(line), name) for name, line in row.marks]
    words.sort(key=lambda w: w[0], reverse=not row.rs)
    return [word for _, word in words]


def inner(step: object) -> str:
    if isinstance(step, Group):
        assert step.into is None
        text = ", ".join(inner(s) for s in step.steps)
        return ", ".join([text] * (1 if step.times is None else step.times.at(0)))
    assert isinstance(step, Stitches)
    one = step.stitch.abbr + ("1" if step.stitch.word in ("k", "p", "sl") else "")
    return ", ".join([" ".join((one, *step.modifiers))] * step.count[0])


def word_of(step: Stitches) -> str:
    word, modifiers = step.stitch.word, [m for m in step.modifiers if m != "pwise"]
    if step.stitch.kind == "own":
        return step.stitch.abbr.lower()
    if word == "sl":
        return " ".join(
            [
                "sl",
                *(["kwise"] if {"kwise", "tbl"} & set(modifiers) else []),
                *(["front"] if "wyif" in modifiers else []),
            ]
        )
    return " ".join((word, *modifiers))
