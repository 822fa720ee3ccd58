"""``make bench``: what the project takes, as ratios to floors measured in the same run.

Every figure is a median (of seven, unless ``--times`` says another number); the two sides of a
ratio are measured by turns, so that a busy machine slows both. Whole commands run in fresh
processes, whose compiled files lie in a folder of their own: as for one who has installed the
package, nothing is compiled from source, on either side.
"""

from __future__ import annotations

import argparse
import gc
import os
import platform
import re
import resource
import shutil
import statistics
import subprocess
import sys
import tempfile
import time
from collections.abc import Callable, Iterator, Sequence
from pathlib import Path

sys.path.insert(0, str(Path(__file__).parent))
import texts

ROOT = Path(__file__).parents[2]
EXAMPLE = ROOT / "examples" / "skerry-throw.loop"
ROWS = 100_000
_TOKENS = re.compile(r"[^\W\d_][\w&-]*|\d+|\S")
_PRINT = (
    "--headless", "--no-sandbox", "--disable-gpu", "--no-first-run",
    "--disable-background-networking",
)  # fmt: skip
Work = Callable[[], object]
Taken = tuple[float, float]
"""Seconds: by the clock, and of the processor."""


class Bench:
    """The commands as they are run, and a folder for what they write."""

    def __init__(self, folder: Path, times: int) -> None:
        self.folder = folder
        self.times = times
        self.environment = {
            key: value for key, value in os.environ.items() if not key.startswith("PYTHON")
        } | {"PYTHONPYCACHEPREFIX": str(folder / "compiled")}

    def file(self, name: str, text: str) -> str:
        path = self.folder / name
        path.write_text(text, "utf-8")
        return str(path)

    def program(self, *words: str) -> Work:
        """A fresh process, as a whole."""
        return lambda: subprocess.run(
            words, cwd=ROOT, env=self.environment, capture_output=True, check=True, timeout=600
        )

    def python(self, *words: str) -> Work:
        return self.program(sys.executable, *words)

    def loopwright(self, *words: str) -> Work:
        return self.python("-m", "loopwright", *words)

    def rounds(self, works: Sequence[Work], times: int) -> list[Taken]:
        """The medians of each, run by turns."""
        found: list[list[Taken]] = [[] for _ in works]
        for work in works:
            work()  # the files are read and the modules compiled
        for _ in range(times):
            for work, mine in zip(works, found, strict=True):
                start, used = time.perf_counter(), _processor()
                work()
                mine.append((time.perf_counter() - start, _processor() - used))
        return [_median(mine) for mine in found]

    def line(self, what: str, floor: str, one: Work, other: Work) -> None:
        _print(what, floor, *self.rounds((one, other), self.times))

    def long_lines(self, what: str, works: tuple[Work, Work, Work], slow: int, quick: int) -> None:
        """The check of a long source against lark, measured in `slow` rounds, and against tokens,
        measured in those and `quick` more."""
        found: list[list[Taken]] = [[], [], []]
        for round_ in range(slow + quick):
            for work, mine in zip(works, found, strict=True):
                if work is works[1] and round_ >= slow:
                    continue
                start, used = time.perf_counter(), _processor()
                work()
                mine.append((time.perf_counter() - start, _processor() - used))
        check, lark, words = found
        _print(what, f"lark's LALR parse ({slow} rounds)", _median(check[:slow]), _median(lark))
        _print(what, "tokens by re", _median(check), _median(words))

    def memory(self, what: str, *words: str) -> None:
        script = str(Path(__file__).parent / "memory.py")
        command = [sys.executable, "-S", script, sys.executable, "-m", "loopwright", *words]
        said = subprocess.run(
            command, cwd=ROOT, env=self.environment, capture_output=True, check=True, timeout=600
        ).stdout
        print(f"{what:<38}{float(said):>6.0f} MB")
        sys.stdout.flush()


def _median(taken: Sequence[Taken]) -> Taken:
    return statistics.median(one for one, _ in taken), statistics.median(one for _, one in taken)


def _print(what: str, floor: str, mine: Taken, theirs: Taken) -> None:
    print(
        f"{what:<38}{mine[0]:>8.3f} s  {floor:<38}{theirs[0]:>8.3f} s"
        f"{mine[0] / theirs[0]:>7.2f} ×{mine[1] / theirs[1]:>7.2f} ×"
    )
    sys.stdout.flush()


def _processor() -> float:
    """The processor time of this process and of those it has waited for."""
    found = (resource.getrusage(who) for who in (resource.RUSAGE_SELF, resource.RUSAGE_CHILDREN))
    return sum(one.ru_utime + one.ru_stime for one in found)


def checked(text: str) -> Work:
    from loopwright.compile import check_source
    from loopwright.notation.source import Source

    return lambda: check_source(Source.of("bench.loop", text))


def lark_parse(text: str) -> Work:
    """lark's own LALR parse of a whole text with the project's grammar, without callbacks."""
    from lark import Lark

    from loopwright.notation.grammar import grammar_text

    parser = Lark(grammar_text(), parser="lalr", start="source", maybe_placeholders=False)
    lowered = "\n".join(line.split("--")[0] for line in text.lower().splitlines()) + "\n"
    return lambda: parser.parse(lowered)


def tokens(text: str) -> Work:
    return lambda: _TOKENS.findall(text)


def sources(bench: Bench, rows: int) -> None:
    """The check: of a normal source, of long ones, of large numbers and of many sizes."""
    start = bench.python("-c", "import lark")
    check = bench.loopwright("check", str(EXAMPLE))
    bench.line("check of a normal source", "python -c 'import lark'", check, start)
    for name, text in (
        (f"check, {rows:,} rows of six kinds", texts.few_lines(rows)),
        (f"check, {rows // 10:,} rows, no two alike", texts.distinct_lines(rows // 10)),
    ):
        # lark is by far the slowest: it is measured in three rounds only.
        slow, quick = min(bench.times, 3), max(bench.times - 3, 0)
        check, lark, words = checked(text), lark_parse(text), tokens(text)
        bench.long_lines(name, (check, lark, words), slow, quick)
    long, half = texts.few_lines(rows // 5), texts.few_lines(rows // 10)
    bench.line(
        f"check, {rows // 5:,} rows", f"check, {rows // 10:,} rows", checked(long), checked(half)
    )
    wide, narrow = texts.wide(4 * 249_999_999 + 2), texts.wide(4 * 25 + 2)
    bench.line("check, 10^9 stitches", "check, 102 stitches", checked(wide), checked(narrow))
    sixty, one = texts.sizes(60), texts.sizes(1)
    bench.line("check, 60 sizes", "check, one size", checked(sixty), checked(one))


def resizes(bench: Bench) -> None:
    sixty = bench.file("sixty.loop", texts.sizes(60))
    again = str(bench.folder / "resized.loop")
    bench.line(
        "resize, 60 sizes to another gauge", "check, 60 sizes, fresh process",
        bench.loopwright("resize", sixty, "--gauge", "18 stitches 26 rows = 10 cm", "-o", again),
        bench.loopwright("check", sixty),
    )  # fmt: skip


def pages(bench: Bench) -> None:
    """The editions against the check, and the PDF against those who set the same page."""
    build = ["build", str(EXAMPLE), "--size", "lap", "--out", str(bench.folder), "--to"]
    check = bench.loopwright("check", str(EXAMPLE))
    bench.line("build --to text,html", "check", bench.loopwright(*build, "text,html"), check)
    page, out = bench.folder / "skerry-throw.html", str(bench.folder / "bare.pdf")
    bench.line(
        "build --to pdf", "python -m weasyprint page.html",
        bench.loopwright(*build, "pdf"), bench.python("-m", "weasyprint", str(page), out),
    )  # fmt: skip
    browser = shutil.which("chromium") or shutil.which("chromium-browser")
    if browser is None:
        print("build --to pdf: there is no Chromium here to hold it against")
        return
    printed = bench.folder / "printed.pdf"
    bench.line(
        "build --to pdf", "Chromium prints page.html",
        bench.loopwright(*build, "pdf"),
        bench.program(browser, *_PRINT, f"--print-to-pdf={printed}", str(page)),
    )  # fmt: skip


def pictures(bench: Bench) -> None:
    """A chart of 60 × 60 and a cloth of 240 × 400 against the bare bytes of such an image."""
    from dataclasses import replace
    from io import BytesIO

    import numpy as np
    from PIL import Image

    from loopwright.build import BuildOptions, document_of
    from loopwright.edition.pdf import render_pdf
    from loopwright.edition.pictures import with_pictures
    from loopwright.picture.cells import charts_of
    from loopwright.picture.fabric import fabric_of
    from loopwright.picture.strips import strips_of
    from loopwright.picture.svg import chart_svg

    def image(picture: np.ndarray) -> Work:
        return lambda: Image.fromarray(picture).save(BytesIO(), "PNG", compress_level=6)

    chance = np.random.default_rng(7)
    squares = chance.integers(0, 255, (60, 60, 3), dtype=np.uint8)
    drawn = np.repeat(np.repeat(squares, 10, axis=0), 10, axis=1)
    source: object = checked(texts.chart(60))()
    found: object = checked(texts.cloth(240, 400))()

    def svg() -> None:
        charts, _ = charts_of(source.pattern, source.walks, (0,))  # type: ignore[attr-defined]
        for chart in charts:
            for strip in strips_of(chart):
                chart_svg(chart, strip, "chart")

    bench.line("chart 60 × 60 as SVG", "an array of 600 × 600 as PNG", svg, image(drawn))
    words = document_of(source, BuildOptions())  # type: ignore[arg-type]
    full = with_pictures(words, source.pattern, source.walks)  # type: ignore[attr-defined]
    bare = replace(full, charts=())
    bench.line(
        "PDF with the chart of 60 × 60", "the same PDF without it",
        lambda: render_pdf(full, "a4"), lambda: render_pdf(bare, "a4"),
    )  # fmt: skip
    walk = found.walks[0]  # type: ignore[attr-defined]
    made = fabric_of(found.pattern, walk)  # type: ignore[attr-defined]
    picture = np.asarray(Image.open(BytesIO(made.png)))
    bench.line(
        "cloth 240 × 400 as PNG", f"those {made.width} × {made.height} pixels as PNG",
        lambda: fabric_of(found.pattern, walk), image(picture),  # type: ignore[attr-defined]
    )  # fmt: skip


def memories(bench: Bench, rows: int) -> None:
    print("\nmost memory of a whole process:")
    long = bench.file("long.loop", texts.few_lines(rows))
    out = ("--size", "lap", "--out", str(bench.folder))
    sixty = str(bench.folder / "sixty.loop")
    bench.memory("check of a normal source", "check", str(EXAMPLE))
    bench.memory(f"check, {rows:,} rows of six kinds", "check", long)
    bench.memory("build --to text,html", "build", str(EXAMPLE), *out, "--to", "text,html")
    bench.memory("build --to pdf", "build", str(EXAMPLE), *out, "--to", "pdf")
    bench.memory(
        "resize, 60 sizes", "resize", sixty, "--gauge", "18 stitches 26 rows = 10 cm", "--dry-run"
    )
    cloth = bench.file("cloth.loop", texts.cloth(240, 400))
    bench.memory(
        "picture of a cloth of 240 × 400", "picture", cloth, "--what", "fabric",
        "-o", str(bench.folder / "cloth.png"),
    )  # fmt: skip


def processors() -> Iterator[str]:
    """What this machine calls its processor, and how many there are."""
    info = Path("/proc/cpuinfo")
    if info.exists():
        names = re.findall(r"model name\s*: (.*)", info.read_text("utf-8", "replace"))
        if names:
            yield names[0]
    yield f"{os.cpu_count()} cores"


def main(arguments: Sequence[str] | None = None) -> None:
    parser = argparse.ArgumentParser(description=__doc__)
    parser.add_argument("--times", type=int, default=7, help="runs of each side (default 7)")
    parser.add_argument("--rows", type=int, default=ROWS, help="rows of the long source")
    parser.add_argument("--only", default="", help="sources, resizes, pages, pictures, memories")
    args = parser.parse_args(arguments)
    # As the command sets it, for both sides.
    gc.set_threshold(70_000, 10, 10)
    print(f"{platform.system()} {platform.machine()}, {', '.join(processors())}, ", end="")
    print(f"Python {platform.python_version()}, medians of {args.times}")
    print(f"{'':<38}{'wall':>10}  {'against':<38}{'wall':>10}{'wall':>9}{'cpu':>9}")
    wanted = args.only.split(",") if args.only else None
    with tempfile.TemporaryDirectory() as folder:
        bench = Bench(Path(folder), args.times)
        parts: dict[str, Callable[[], None]] = {
            "pages": lambda: pages(bench),
            "resizes": lambda: resizes(bench),
            "pictures": lambda: pictures(bench),
            "sources": lambda: sources(bench, args.rows),
            "memories": lambda: memories(bench, args.rows),
        }
        bench.file("sixty.loop", texts.sizes(60))
        for name, part in parts.items():
            if wanted is None or name in wanted:
                part()


if __name__ == "__main__":
    main()
