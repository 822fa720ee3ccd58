"""Every bound of `notation.bounds`: one below and at it a source is read, one above it is refused.

The message of a refusal names the bound.
"""

from __future__ import annotations

import re
from collections.abc import Callable
from pathlib import Path

import pytest

from loopwright import cli
from loopwright.compile import check_source
from loopwright.notation import bounds
from loopwright.notation.source import Source

BOUNDS = {name: value for name, value in vars(bounds).items() if name.startswith("MAX_")}
PIECE = 'pattern "P"\npiece p flat\n  cast on 4\n'


def _unclear(lines: int, long: int = 3) -> str:
    return 'pattern "P"\n' + "\n".join(["?" * long] * lines) + "\n"


def _line(characters: int) -> str:
    return f'pattern "P"\nnote "{"x" * (characters - 7)}"\n'


def _spread(rows: int) -> str:
    """A change once in so many rounds."""
    return (
        'pattern "P"\nmotif less\n  round 1: k2tog *k1*\nmotif plain\n  round 1: knit\n'
        "piece p round\n  cast on 40\n"
        f"  spread less until 39 stitches in plain over {rows} rounds\n  bind off\n"
    )


# A source that asks for so much; written so that nothing else of it is bounded first.
SOURCES: dict[str, Callable[[int], str]] = {
    "MAX_LINE": _line,
    "MAX_NUMBER": lambda n: PIECE.replace("4", str(n)) + "  bind off\n",
    "MAX_SIZES": lambda n: f'pattern "P"\n  sizes {", ".join(f"s{i}" for i in range(n))}\n',
    "MAX_NESTING": lambda n: PIECE + f"  row: {'(' * n}k4{') x1' * n}\n  bind off\n",
    "MAX_MARKERS": lambda n: (
        PIECE.replace("4", str(n)) + f"  row: (k1 pm) x{n}\n  row: knit\n  bind off\n"
    ),
    "MAX_MOTIF_ROWS": lambda n: f'pattern "P"\nmotif m\n  rows 1-{n}: knit\n',
    "MAX_NAME": lambda n: f'pattern "P"\nmotif {"m" * n}\n  row 1: knit\n  row 2: knit\n',
    "MAX_UNCLEAR_LINES": _unclear,
    "MAX_UNCLEAR_CHARACTERS": lambda n: _unclear(5, n // 5) + "?" * (n % 5) + "\n",
    "MAX_SPREAD_ROWS": _spread,
}
# What these bound is no source, or has no one line to name it; their tests stand below.
ELSEWHERE = {"MAX_BYTES", "MAX_LISTED_ROWS", "MAX_GEOMETRIC"}


def _figures(value: int) -> re.Pattern[str]:
    return re.compile(rf"(?<![\d,]){value:,}(?![\d,])|(?<!\d){value}(?!\d)")


def _said(text: str) -> str:
    """What the problems of a source say, without the lines of the source."""
    found = check_source(Source.of("p.loop", text)).problems
    return "\n".join(f"{p.title} {p.message} {p.help or ''}" for p in found)


def test_every_bound_has_a_case() -> None:
    assert set(SOURCES) | ELSEWHERE == set(BOUNDS)


REFUSED = {
    "MAX_LINE": "a line may have",
    "MAX_NUMBER": "counts up to",
    "MAX_SIZES": "a pattern may have",
    "MAX_NESTING": "are allowed",
    "MAX_MARKERS": "markers",
    "MAX_MOTIF_ROWS": "a motif may have",
    "MAX_NAME": "a name may have",
    "MAX_UNCLEAR_LINES": "left unread",
    "MAX_UNCLEAR_CHARACTERS": "left unread",
    "MAX_SPREAD_ROWS": "there would be more than",
}


@pytest.mark.parametrize("name", sorted(SOURCES))
@pytest.mark.parametrize("more", [-1, 0, 1])
def test_below_at_and_above(name: str, more: int) -> None:
    bound = BOUNDS[name]
    said = _said(SOURCES[name](bound + more))
    refused = REFUSED[name] in said and _figures(bound).search(said) is not None
    assert refused is (more == 1), said


@pytest.mark.parametrize("more", [-1, 0, 1])
def test_the_size_of_a_file(more: int, tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    path = tmp_path / "p.loop"
    text = b'pattern "P"\n'
    line = b"--" + b"." * 9997 + b"\n"
    long = bounds.MAX_BYTES + more - len(text)
    path.write_bytes(text + line * (long // len(line)) + b"-" * (long % len(line)))
    assert path.stat().st_size == bounds.MAX_BYTES + more
    status = cli.main(["check", str(path)])
    printed = capsys.readouterr()
    assert (status == 2) is (more == 1)
    assert ("larger than 8 MB" in printed.err) is (more == 1)


@pytest.mark.parametrize("more", [-1, 0, 1])
def test_listed_rows(
    more: int, tmp_path: Path, capsys: pytest.CaptureFixture[str], monkeypatch: pytest.MonkeyPatch
) -> None:
    from loopwright.commands import rows

    # A million printed lines are much to wait for: the same with a bound of a thousand.
    assert bounds.MAX_LISTED_ROWS == rows.MAX_LISTED_ROWS
    monkeypatch.setattr(rows, "MAX_LISTED_ROWS", 1000)
    path = tmp_path / "p.loop"
    path.write_text(PIECE + f"  rows {1000 + more}: knit\n  bind off\n", "utf-8")
    status = cli.main(["rows", str(path)])
    printed = capsys.readouterr()
    assert (status == 1) is (more == 1)
    assert ("rows lists up to 1,000" in printed.err) is (more == 1)


@pytest.mark.parametrize("more", [-1, 0, 1])
def test_repeats_that_multiply(more: int, monkeypatch: pytest.MonkeyPatch) -> None:
    from loopwright.count import repeat

    # Stitches that multiply pass the largest number long before two thousand repeats, so the
    # bound is lowered to where it can be met: 4 stitches doubled so many times.
    assert bounds.MAX_GEOMETRIC == repeat.MAX_GEOMETRIC
    monkeypatch.setattr(repeat, "MAX_GEOMETRIC", 8)
    text = (
        'pattern "P"\nmotif m\n  row 1: * kfb *\n  row 2: purl\n'
        f"piece p flat\n  cast on 4\n  work m x{9 + more}\n  bind off\n"
    )
    refused = any(p.rule == "number-too-big" for p in check_source(Source.of("p", text)).problems)
    assert refused is (more == 1)
