"""Characters that are not seen, or that make a screen show another order than is written.

Where one stands, a reader and the compiler may read two different patterns, so a source says so:

- an error anywhere, in comments too: controls (but tab and line end), the characters that turn the
  direction of what follows (embeddings, overrides, isolates), separators that some editors show as
  a new line, and codes that are no character;
- a warning in texts and comments: what is only left behind by word processors and web pages, and
  the direction marks where no letter near them runs from right to left.

Joiners (emoji, Persian, the scripts of India) and variation selectors are part of proper text.
The classes follow the Unicode Standard: the bidirectional controls of UAX #9, table 3, and the
default ignorable code points of chapter 5.21.
"""

from __future__ import annotations

import re
from collections.abc import Callable, Container, Iterator
from functools import cache

from loopwright.notation.bounds import MAX_UNCLEAR_LINES
from loopwright.notation.source import Source, Span
from loopwright.problem import ERROR, WARNING, Edit, Fix, Problem

_TURNING = "\u202a-\u202e\u2066-\u2069"
_CONTROL = "\x00-\x08\x0b-\x1f\x7f-\x9f"
_SEPARATOR = "\u2028\u2029"
_NO_CHARACTER = "\ud800-\udfff\ufdd0-\ufdef\ufffe\uffff"
_MARK = "\u061c\u200e\u200f"
# Letters by their class, but with nothing to see: they could make two names of one look.
_BLANK_LETTERS = "\u115f\u1160\u3164\uffa0"
_LEFT_BEHIND = "\u00ad\u180e\u2060-\u2065\u206a-\u206f\ufeff\ufff9-\ufffb\U000e0000-\U000e007f"
# A space of no width parts the words of Thai, Lao, Burmese and Khmer.
_NO_WIDTH = "(?<![\u0e00-\u0eff\u1000-\u109f\u1780-\u17ff])\u200b"

_WRONG = f"[{_CONTROL}{_TURNING}{_SEPARATOR}{_NO_CHARACTER}]"
_UNSEEN = f"[{_LEFT_BEHIND}{_BLANK_LETTERS}]|{_NO_WIDTH}"
_DOUBTFUL = f"[{_MARK}]|{_UNSEEN}"
_ANY_BUT_MARKS = f"[{_CONTROL}{_TURNING}{_SEPARATOR}{_NO_CHARACTER}{_LEFT_BEHIND}\u200b]"
_ANY = f"{_ANY_BUT_MARKS}|[{_MARK}]"
_PLAIN_CONTROL = "[\x00-\x08\x0b-\x1f\x7f]"  # all of the above that a text of ASCII can hold
# Hebrew, Arabic, Syriac, Thaana, N'Ko and what else is written from right to left.
RIGHT_TO_LEFT = (
    "[\u0590-\u05ff\u0600-\u060b\u060d-\u061b\u061d-\u065f\u066d-\u06dc\u06de-\u06ef"
    "\u06fa-\u08ff\ufb1d-\ufdcf\ufdf0-\ufdff\ufe70-\ufefe\U00010800-\U00010fff"
    "\U0001e800-\U0001efff]"
)
_BLACK_FLAG = "\U0001f3f4"  # tags behind it say whose flag it is
_MOST_WARNED = 1000  # lines

_NAMES = {
    0: "null", 7: "bell", 8: "backspace", 0x0B: "line tabulation", 0x0C: "form feed",
    0x1B: "escape", 0x7F: "delete", 0x85: "next line", 0x9B: "control sequence introducer",
    0x61C: "Arabic letter mark",
}  # fmt: skip


@cache
def _compiled(kind: str) -> re.Pattern[str]:
    return re.compile(kind)


def _kind(kind: str, text: str) -> re.Pattern[str]:
    """The expression of a kind of characters; most texts are ASCII, and need a short one."""
    return _compiled(_PLAIN_CONTROL if text.isascii() else kind)


def has_right_to_left(text: str) -> bool:
    """Whether a text has letters that are written from right to left."""
    return not text.isascii() and _compiled(RIGHT_TO_LEFT).search(text) is not None


def isolated(text: str) -> str:
    """A text that stands alone, in the direction of its first letter; others are left as they are.

    By Unicode's isolates (FSI … PDI of UAX #9).
    """
    return f"\u2068{text}\u2069" if has_right_to_left(text) else text


def is_hidden(text: str) -> bool:
    """Whether a character stands in a text that is an error wherever it stands."""
    return _kind(_WRONG, text).search(text) is not None


def visible(text: str) -> str:
    r"""The text with each hidden character made visible, as ``\x1b`` or ``\u202e``.

    Line ends and tabs stay, and so do direction marks beside right-to-left letters. For a terminal,
    which would obey such characters.
    """
    hidden = _ANY_BUT_MARKS if has_right_to_left(text) else _ANY
    return _kind(hidden, text).sub(_as_escape, text)


def named(text: str) -> str:
    """The same for a name or a path inside a sentence: it stays on its line."""
    return re.sub("[\t\n]", _as_escape, visible(text))


def in_json(text: str) -> str:
    """JSON that holds no hidden character: each is written as its escape, which means the same."""
    return _kind(_ANY, text).sub(lambda match: _as_json(match[0]), text)


def _as_escape(match: re.Match[str]) -> str:
    code = ord(match[0])
    short = {9: r"\t", 10: r"\n", 13: r"\r"}.get(code)
    if short is not None:
        return short
    return rf"\x{code:02x}" if code < 256 else rf"\u{code:04x}"


def _as_json(letter: str) -> str:
    code = ord(letter)
    if code in (9, 10, 13):
        return letter  # between values; inside a string they are escaped already
    if code < 0x10000:
        return rf"\u{code:04x}"
    high, low = divmod(code - 0x10000, 0x400)
    return rf"\u{0xD800 + high:04x}\u{0xDC00 + low:04x}"


def name_of(letter: str) -> str:
    """A character's name for a sentence: ``right-to-left override (U+202E)``."""
    import unicodedata

    code = ord(letter)
    name = _NAMES.get(code) or unicodedata.name(letter, "").lower().replace("hangul", "Hangul")
    if not name:
        name = "control character" if code < 256 else "code that is no character"
    return f"{name} (U+{code:04X})"


def hidden_lines(source: Source) -> dict[int, Problem]:
    """By its number, each line that holds what is an error anywhere: such a line is not read.

    At most one more than the reader goes through before it gives up.
    """
    found: dict[int, Problem] = {}
    wrong = _kind(_WRONG, source.text)
    for number, start, line in _lines_with(wrong, source):
        letters = list(wrong.finditer(line))
        at = start + letters[0].start()
        found[number] = _problem(ERROR, letters[0][0], Span(at, at + 1), len(letters), None)
        if len(found) > MAX_UNCLEAR_LINES:
            break
    return found


def hidden_words(
    source: Source, left_out: Container[int], split_comment: Callable[[str], tuple[str, str]]
) -> Iterator[Problem]:
    """What is only a warning, one a line, and letters in names that cannot be seen (an error).

    Lines that `left_out` holds are told of already; `split_comment` parts a line into its code
    and its comment. Outside of texts and comments the grammar takes none of the others, and says
    so itself.
    """
    if source.text.isascii():
        return
    said = 0
    doubtful = _compiled(_DOUBTFUL)
    for number, start, line in _lines_with(doubtful, source):
        if number in left_out:
            continue
        code = len(split_comment(line)[0])
        letters = [match for match in doubtful.finditer(line) if _matters(match, line)]
        written = [m for m in letters if m.start() >= code or line.count('"', 0, m.start()) % 2]
        blank = [m for m in letters if m not in written and m[0].isalnum()]
        if not blank and not written:
            continue
        severity, told = (ERROR, blank) if blank else (WARNING, written)
        at = start + told[0].start()
        unseen = [m for m in written if not re.match(f"[{_MARK}]", m[0])]
        fix = None
        if severity == WARNING and len(unseen) == len(written):
            edits = [Span(start + m.start(), start + m.end()) for m in unseen]
            what = "it" if len(edits) == 1 else "them"
            fix = Fix(f"delete {what}", tuple(Edit(span, "") for span in edits))
        yield _problem(severity, told[0][0], Span(at, at + 1), len(told), fix)
        said += 1
        if said >= _MOST_WARNED:
            return


def _lines_with(letters: re.Pattern[str], source: Source) -> Iterator[tuple[int, int, str]]:
    """Number, start and text of each line in which one of some characters stands."""
    at = 0
    while (match := letters.search(source.text, at)) is not None:
        number, _ = source.line_column(match.start())
        start = source.line_starts[number - 1]
        line = source.line_text(number)
        yield number, start, line
        at = start + len(line) + 1


def _matters(match: re.Match[str], line: str) -> bool:
    letter = match[0]
    if re.match(f"[{_MARK}]", letter):
        return not has_right_to_left(line)
    return not ("\U000e0000" <= letter <= "\U000e007f" and _BLACK_FLAG in line)


def _problem(severity: str, letter: str, span: Span, count: int, fix: Fix | None) -> Problem:
    what, advice = _said(letter, severity)
    name = name_of(letter)
    article = "an" if name[0] in "Aaeiou" else "a"
    message = f"There is {article} {name} here: {what}."
    if count > 1:
        more = count - 1
        message += f" The line holds {more:,} more such character{'s' if more > 1 else ''}."
    return Problem(
        "hidden-character",
        severity,
        "a character that cannot be seen",
        message,
        span,
        help=advice,
        fix=fix,
    )


def _said(letter: str, severity: str) -> tuple[str, str]:
    """What a hidden character does, and what to do about it."""
    if re.match(f"[{_TURNING}]", letter):
        return (
            "it makes a screen show what follows in another order than it is written in, so that "
            "a reader sees another line than the one that is worked",
            "delete it; words that are written from right to left come out right without it.",
        )
    if letter in _SEPARATOR:
        return (
            "some editors show a new line behind it, and the line goes on nevertheless",
            "delete it, or begin a new line with the Enter key.",
        )
    if re.match(f"[{_MARK}]", letter):
        return (
            "in a line without right-to-left letters it can only make a screen show numbers and "
            "signs in another order than they are written in",
            "delete it.",
        )
    if letter in _BLANK_LETTERS and severity == ERROR:
        return (
            "it counts as a letter and shows nothing, so that two names that differ look alike",
            "delete it.",
        )
    if severity == WARNING:
        return ("web pages and word processors leave such characters behind", "delete it.")
    return (
        "no text needs it, and it can make a terminal or a page show something else than is "
        "written",
        "delete it.",
    )
