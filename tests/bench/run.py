"""``make bench``: what the project takes, as ratios to floors measured in the same run.

Every figure is a median (of seven, unless ``--times`` says another number); the two sides of a
ratio are measured by turns, so that a busy machine slows both. Whole commands run in fresh
processes.
"""

from __future__ import annotations

import argparse
import platform
import re
import statistics
import subprocess
import sys
import tempfile
import time
import tracemalloc
from collections.abc import Callable, Sequence
from pathlib import Path

sys.path.insert(0, str(Path(__file__).parent))
import texts

ROOT = Path(__file__).parents[2]
EXAMPLE = ROOT / "examples" / "skerry-throw.loop"
ROWS = 100_000
_TOKENS = re.compile(r"[^\W\d_][\w&-]*|\d+|\S")


def command(*words: str) -> Callable[[], object]:
    """A fresh process of this Python."""
    return lambda: subprocess.run(
        [sys.executable, *words], cwd=ROOT, capture_output=True, check=True, timeout=600
    )


def checked(text: str) -> Callable[[], object]:
    from loopwright.compile import check_source
    from loopwright.notation.source import Source

    return lambda: check_source(Source.of("bench.loop", text))


def lark_parse(text: str) -> Callable[[], object]:
    """lark's own LALR parse of a whole text with the project's grammar, without callbacks."""
    from lark import Lark

    from loopwright.notation.grammar import grammar_text

    parser = Lark(grammar_text(), parser="lalr", start="source", maybe_placeholders=False)
    lowered = "\n".join(line.split("--")[0] for line in text.lower().splitlines()) + "\n"
    return lambda: parser.parse(lowered)


def tokens(text: str) -> Callable[[], object]:
    return lambda: _TOKENS.findall(text)


def median_pair(
    one: Callable[[], object], other: Callable[[], object], times: int
) -> tuple[float, float]:
    """The medians of both in seconds, run by turns."""
    mine: list[float] = []
    theirs: list[float] = []
    for _ in range(times):
        for work, found in ((one, mine), (other, theirs)):
            start = time.perf_counter()
            work()
            found.append(time.perf_counter() - start)
    return statistics.median(mine), statistics.median(theirs)


def line(
    what: str, floor: str, one: Callable[[], object], other: Callable[[], object], times: int
) -> None:
    mine, theirs = median_pair(one, other, times)
    print(f"{what:<46}{mine:>9.3f} s   {floor:<34}{theirs:>9.3f} s{mine / theirs:>8.2f} ×")
    sys.stdout.flush()


def peak(work: Callable[[], object]) -> float:
    """The most memory that Python's objects take meanwhile, in MB."""
    tracemalloc.start()
    work()
    _, most = tracemalloc.get_traced_memory()
    tracemalloc.stop()
    return most / 1e6


def pages(times: int) -> None:
    """The editions against the check, and the PDF against WeasyPrint alone on the same page."""
    with tempfile.TemporaryDirectory() as folder:
        out = ["--out", folder]
        build = ["-m", "loopwright", "build", str(EXAMPLE), "--size", "lap", *out, "--to"]
        check = command("-m", "loopwright", "check", str(EXAMPLE))
        line("build --to text,html", "check", command(*build, "text,html"), check, times)
        page = Path(folder) / "skerry-throw.html"
        alone = (
            "import weasyprint,sys; "
            "weasyprint.HTML(sys.argv[1]).write_pdf(sys.argv[2], pdf_variant='pdf/ua-1')"
        )
        bare = command("-c", alone, str(page), str(Path(folder) / "bare.pdf"))
        line("build --to pdf", "WeasyPrint alone on the page", command(*build, "pdf"), bare, times)


def main(arguments: Sequence[str] | None = None) -> None:
    parser = argparse.ArgumentParser(description=__doc__)
    parser.add_argument("--times", type=int, default=7, help="runs of each side (default 7)")
    parser.add_argument("--rows", type=int, default=ROWS, help="rows of the long sources")
    args = parser.parse_args(arguments)
    times, rows = args.times, args.rows
    print(f"{platform.system()} {platform.machine()}, Python {platform.python_version()}, ", end="")
    print(f"medians of {times}, {rows:,} rows in the long sources")
    start = command("-c", "import lark")
    line("check of a normal source", "python -c 'import lark'",
         command("-m", "loopwright", "check", str(EXAMPLE)), start, times)  # fmt: skip
    long = texts.few_lines(rows)
    line("check, few distinct rows", "lark's LALR parse", checked(long), lark_parse(long), times)
    line("check, few distinct rows", "tokens by re", checked(long), tokens(long), times)
    unlike = texts.distinct_lines(rows)
    few = max(1, times // 2)
    line("check, all rows distinct", "lark's LALR parse", checked(unlike), lark_parse(unlike), few)
    line("check, all rows distinct", "tokens by re", checked(unlike), tokens(unlike), few)
    wide, narrow = texts.wide(4 * 249_999_999 + 2), texts.wide(4 * 25 + 2)
    line("check, 10^9 stitches", "check, 102 stitches", checked(wide), checked(narrow), times)
    sixty, one = texts.sizes(60), texts.sizes(1)
    line("check, 60 sizes", "check, one size", checked(sixty), checked(one), times)
    half = texts.few_lines(rows // 2)
    line("check, all these rows", "check, half of them", checked(long), checked(half), times)
    pages(times)
    print(f"memory of the check, few distinct rows: {peak(checked(long)):.0f} MB")
    print(f"memory of the check, 10^9 stitches: {peak(checked(wide)):.1f} MB")


if __name__ == "__main__":
    main()
