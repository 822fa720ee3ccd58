"""What must hold for every source, whatever it holds. A property that is broken raises `Broken`.

Bounds: a check takes at most `SECONDS + SECONDS_A_KILOBYTE` of processor time for each kilobyte,
and at most `MEGABYTES + MEGABYTES_A_KILOBYTE` of memory that Python counts. Some ten times what the
dearest of 4,482 sources changed word by word took here (0.05 s, 0.4 MB).
"""

from __future__ import annotations

import json
import re
import time
import tracemalloc
from collections.abc import Callable, Sequence
from typing import Any

from loopwright.build import BuildOptions, build_editions
from loopwright.check.checked import Checked
from loopwright.check.fixing import diff_of, fix_text
from loopwright.check.printing import problem_json, problems_text
from loopwright.compile import check_source
from loopwright.edition.direction import FSI, PDI, joined
from loopwright.edition.errata import Version, errata
from loopwright.edition.listing import rows_json, rows_table
from loopwright.fit.asked import Wish
from loopwright.fit.fitting import fit_json, fit_table
from loopwright.fit.nearest import fits
from loopwright.fit.resize import CannotResize, resize
from loopwright.fit.table import before_after
from loopwright.notation.format import format_source
from loopwright.notation.hidden import is_hidden
from loopwright.notation.parse import Parsed, parse
from loopwright.notation.source import Source

SECONDS, SECONDS_A_KILOBYTE = 0.5, 0.25
PATIENCE = 1.0  # a run that counts its code is slower
MEGABYTES, MEGABYTES_A_KILOBYTE = 4.0, 1.0
MOST_ROWS = 3000  # rows that are listed, drawn and printed one by one here
MOST_WISHED = 2000  # and more of them are not resized: the editions print them all
EDITIONS = ("text", "html", "spoken", "lesson")
ALSO = (
    BuildOptions(("text", "html"), large=True),
    BuildOptions(("text", "html"), language="de", counts="all"),
    BuildOptions(("text", "html"), terms="uk", units="in"),
    BuildOptions(("text",), language="fr"),
    BuildOptions(("text",), language="es", large=True),
)
"""Of these one more is built; which, follows from the length of the source."""
WISHES: tuple[dict[str, Any], ...] = (
    {"width": "60cm"},
    {"length": "90cm"},
    {"width": "31 in", "length": "40 in"},
    {"scale": "130%"},
    {"scale": "70%"},
    {"gauge": ["17½ stitches 25 rows = 10 cm"]},
    {"add_size": "grand 80 cm x 100 cm"},
)


class Broken(AssertionError):
    """A property that does not hold; the text says which and how."""


def checked(text: str) -> Checked:
    return check_source(Source.of("fuzz.loop", text))


def holds(right: object, name: str, *told: object) -> None:
    if not right:
        raise Broken(f"{name}: {' / '.join(map(repr, told))}"[:2000])


def everything(text: str, thorough: bool = True) -> Checked:
    """Every property of a source; the dear ones only where `thorough`."""
    found = answers(text)
    layout_holds(text, found)
    lines_alone(text)
    if thorough:
        fixes_hold(text)
        yarn_is_told(found)
        renders(found)
        resizes(found)
    return found


def answers(text: str) -> Checked:
    """Checks in time, and says what it found in sentences with places that are in the text."""
    started = time.process_time()
    found = checked(text)
    took = time.process_time() - started
    allowed = PATIENCE * (SECONDS + SECONDS_A_KILOBYTE * len(text) / 1000)
    holds(took < allowed, "too slow", round(took, 2), allowed)
    length = len(found.source.text)
    for problem in found.problems:
        told = problem_json(problem, found.source)
        spans = [problem.span, *(label.span for label in problem.labels)]
        spans += [edit.span for edit in problem.fix.edits] if problem.fix else []
        holds(
            all(0 <= span.start <= span.end <= length for span in spans),
            "a place outside the text", problem.rule, spans, length,
        )  # fmt: skip
        holds(problem.title and problem.message, "nothing is said", problem.rule)
        holds(problem.severity in ("error", "warning", "advice"), "severity", problem.rule)
        holds(set(problem.sizes) <= set(found.pattern.sizes), "no such size", problem.sizes)
        said = f"{problem.title} {problem.message} {problem.help}"
        inner = re.search(r"\b(?:None|Affine|Traceback)\b|<[a-z_.]+ object|\b\w+\(\w+=", said)
        holds(inner is None or inner[0] in text, "the program's own words", problem.rule, said)
        json.dumps(told)
    said = problems_text(found.problems, found.source)
    holds(not is_hidden(said), "a terminal would obey a message", said)
    if few_rows(found):
        json.loads("".join(rows_json(found)))
        "".join(rows_table(found))
        for walk in found.walks:
            after = None
            for row in walk.listed():
                holds(row.start >= 0 and row.end >= 0, "a count below nothing", row)
                after = row.row if after is None else after
    return found


def few_rows(found: Checked) -> bool:
    """Whether the rows may be gone through one by one: few, and of a width that a page bears."""
    rows = sum(walk.rows for walk in found.walks)
    return rows < MOST_ROWS


def memory_holds(text: str) -> None:
    """The check keeps to its memory. Slow: every piece of memory is counted."""
    checked('pattern "warm"\n')
    tracemalloc.start()
    try:
        checked(text)
        _, peak = tracemalloc.get_traced_memory()
    finally:
        tracemalloc.stop()
    allowed = MEGABYTES + MEGABYTES_A_KILOBYTE * len(text) / 1000
    holds(peak / 1e6 < allowed, "too much memory", round(peak / 1e6, 1), allowed)


def layout_holds(text: str, found: Checked | None = None) -> None:
    """format(format(x)) = format(x), and check(format(x)) says what check(x) says."""
    parsed = parse(Source.of("fuzz.loop", text))
    if parsed.recovered:
        return
    once = format_source(parsed)
    again = parse(Source.of("fuzz.loop", once))
    holds(not again.recovered, "the layout cannot be read", once)
    holds(format_source(again) == once, "the layout is not its own layout", once)
    holds(len(parsed.lines) == len(again.lines), "the layout has other lines", once)
    one, other = found or checked(text), checked(once)
    lines = {a.line: b.line for a, b in zip(parsed.lines, again.lines, strict=True)}
    before = sorted(_told(p.rule, p.severity, p.message, p.sizes, lines) for p in one.problems)
    after = sorted(_told(p.rule, p.severity, p.message, p.sizes, {}) for p in other.problems)
    holds(
        before == after, "the layout checks otherwise",
        [p for p in before if p not in after], [p for p in after if p not in before],
    )  # fmt: skip


def _told(
    rule: str, severity: str, message: str, sizes: tuple[str, ...], lines: dict[int, int]
) -> tuple[str, str, str, tuple[str, ...]]:
    """A problem's words, in which spacing, case and lines that the layout moves are alike."""

    def moved(match: re.Match[str]) -> str:
        number = int(match[2].replace(",", ""))
        return f"{match[1]} {lines.get(number, number)}"

    message = re.sub(r"\b(lines?) ([\d,]+)", moved, message)
    return rule, severity, re.sub(r"\s+", "", message).casefold(), sizes


def lines_alone(text: str) -> None:
    """A line says the same alone as behind lines that are like it: what is kept is right."""
    source = Source.of("fuzz.loop", text)
    parsed = parse(source)
    if parsed.recovered or len(parsed.lines) > 300:
        return
    together = _slips(parsed)
    alone: dict[int, list[str]] = {}
    # A comment is no line of the pattern, but what is hidden in it is told too.
    for line in {placed.line for placed in parsed.lines} | set(together):
        one = parse(Source.of("fuzz.loop", source.line_text(line)))
        for slips in _slips(one).values():
            alone[line] = slips
    holds(together == alone, "a line reads otherwise alone", together, alone)


def _slips(parsed: Parsed) -> dict[int, list[str]]:
    found: dict[int, list[str]] = {}
    for problem in parsed.problems:
        line, _ = parsed.source.line_column(problem.span.start)
        found.setdefault(line, []).append(f"{problem.rule}: {problem.message}")
    return {line: sorted(told) for line, told in found.items()}


def fixes_hold(text: str) -> None:
    """What `check --fix` does leaves fewer problems, or nothing is changed."""
    fixed = fix_text("fuzz.loop", text, check_source)
    before, after = len(fixed.before.problems), len(fixed.checked.problems)
    holds(bool(fixed.changes) == (fixed.text != text), "a fix that changes nothing", fixed.changes)
    holds(after < before if fixed.changes else after == before, "fixes leave more", before, after)
    diff_of("fuzz.loop", text, fixed.text)


def yarn_is_told(found: Checked) -> None:
    """The yarn of every size is a number that is there, and the balls are enough."""
    from loopwright.yarn.report import yarn_report
    from loopwright.yarn.table import yarn_json, yarn_text

    report = yarn_report(found.pattern, found.walks)
    json.dumps(yarn_json(found.pattern, report), allow_nan=False)
    "".join(yarn_text(found.pattern, report))


def renders(found: Checked) -> None:
    """What checks is built, every edition, and is the same as itself."""
    if found.has_errors or not few_rows(found):
        return
    made, failed = build_editions(found, BuildOptions(EDITIONS), "fuzz")
    holds(len(made) == len(EDITIONS) and not failed, "an edition is not made", failed)
    nothing_hidden(made)
    also = ALSO[len(found.source.text) % len(ALSO)]
    made, failed = build_editions(found, also, "fuzz")
    holds(len(made) == len(also.kinds) and not failed, "another edition is not made", failed)
    nothing_hidden(made)
    version = Version(found.pattern, found.walks)
    holds(not errata(version, version, None), "a pattern differs from itself")


def nothing_hidden(made: Sequence[tuple[str, bytes]]) -> None:
    """No page holds a character that a reader does not see, but what sets words apart."""
    for name, data in made:
        page = data.decode("utf-8")
        holds(not is_hidden(joined(page)), "a hidden character in an edition", name)
        holds(page.count(FSI) == page.count(PDI), "words are set apart by half", name)


def resizes(found: Checked) -> None:
    """rows(resize(x)) checks: new counts bring no error, or a sentence says why there are none."""
    if found.has_errors or sum(walk.rows for walk in found.walks) > MOST_WISHED:
        return
    places, _ = fits(found, (None,) * len(found.pattern.sizes))
    fit_table(found, places)
    json.dumps(fit_json(found, places), allow_nan=False)
    chosen = WISHES[len(found.source.text) % len(WISHES)]
    try:
        wish = Wish.of(found.pattern, **chosen)
        result = resize(found, wish, check_source)
    except CannotResize as error:
        holds(error.problems, "it cannot be resized, and nothing says why", chosen)
        problems_text(error.problems, found.source)
        return
    except ValueError as error:
        holds(str(error)[:1].isalpha() and " " in str(error), "no sentence", str(error))
        return
    again = check_source(result.source)
    wrong = [p for p in again.problems if p.is_error and p.rule not in OF_YARN]
    holds(
        not wrong, "a resized source has errors", chosen,
        [(p.rule, p.message) for p in wrong], result.source.text,
    )  # fmt: skip
    before_after(found, again)


OF_YARN = ("yarn-short",)
"""Errors of a resized source that are the maker's to mend: the counts hold, the balls do not."""


def broken(text: str, prove: Callable[[str], object]) -> str:
    """The name of what breaks (the property, or the exception and where), or nothing."""
    try:
        prove(text)
    except Broken as error:
        return str(error).partition(":")[0]
    except RecursionError:
        return "RecursionError"
    except Exception as error:
        return f"{type(error).__name__} in {_where(error)}"
    return ""


def _where(error: BaseException) -> str:
    """The innermost function of the project in a traceback."""
    at, where = error.__traceback__, "?"
    while at is not None:
        code = at.tb_frame.f_code
        if "loopwright" in code.co_filename and "/tests/" not in code.co_filename:
            name = code.co_filename.rpartition("/")[2].removesuffix(".py")
            where = f"{name}.{code.co_name}"
        at = at.tb_next
    return where
