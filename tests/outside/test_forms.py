"""The arithmetic of ``over`` forms, against knitting it out and against sympy.

The compiler proves a motif for every n at once. Here the same is done the long way: `bruteforce`
works the rows stitch by stitch for n = 1 … 50, and sympy solves the congruences that a row's fill
makes of the count.
"""

from __future__ import annotations

import re
import sys
from collections.abc import Iterator
from dataclasses import dataclass
from fractions import Fraction
from pathlib import Path

import pytest
import sympy  # type: ignore[import-untyped]
from hypothesis import given, settings
from hypothesis import strategies as st
from sympy.ntheory.modular import solve_congruence  # type: ignore[import-untyped]

from loopwright.check.checked import Checked
from loopwright.compile import check_source
from loopwright.count.affine import CountSet
from loopwright.count.solve import counts_for
from loopwright.count.tape import Tapes
from loopwright.notation.source import Source

HERE = Path(__file__).parent
sys.path.insert(0, str(HERE))
import bruteforce  # noqa: E402
from bruteforce import Fill, MotifText, Own, RowText  # noqa: E402

UP_TO = 50
PATTERNS = sorted((HERE / "patterns").rglob("*.loop"))
each_pattern = pytest.mark.parametrize("path", PATTERNS, ids=lambda p: f"{p.parent.name}-{p.stem}")
thorough = settings(max_examples=300, deadline=None, derandomize=True)


def _check(text: str) -> Checked:
    return check_source(Source.of("form.loop", text))


def _text(path: Path) -> str:
    return path.read_text(encoding="utf-8")


def _first_failing(motif: MotifText, own: Own, up_to: int = UP_TO) -> int | None:
    """The smallest n at which a motif cannot be worked on its form."""
    assert motif.form is not None
    unit, fixed = motif.form
    for n in range(1, up_to + 1 if unit else 2):
        count = unit * n + fixed
        if count < 0 or not bruteforce.works_on(motif, count, own):
            return n
    return None


def _without_claims(text: str) -> str:
    """A claim holds for the counts of its piece only."""
    return re.sub(r"\s*=>.*", "", text)


def _blocks(text: str) -> tuple[str, dict[str, str]]:
    """The lines that hold for the whole file, and the text of each motif by name."""
    common: list[str] = []
    motifs: dict[str, list[str]] = {}
    here: list[str] | None = None
    for line in text.splitlines():
        first = line.split()[0] if line.split() else ""
        if first == "motif":
            here = motifs.setdefault(line.split()[1].lower(), [])
        elif first == "piece":
            here = []
        elif first in ("pattern", "yarn", "shade", "strand", "stitch"):
            here = None
        (common if here is None else here).append(line)
    return "\n".join(common), {name: "\n".join(lines) for name, lines in motifs.items()}


def _with_form(block: str, form: str | None) -> str:
    """A motif's text with another form, or with none."""
    return re.sub(
        r" over [\dn+ -]+?(?= starts|$)",
        f" over {form}" if form else "",
        block,
        count=1,
        flags=re.M,
    )


def _alone(common: str, block: str, name: str, count: int) -> str:
    """A source whose piece works one motif once over `count` stitches."""
    starts = " starts ws" if "starts ws" in block else ""
    side = "round" if re.search(r"(?m)^\s*round", block) else "flat"
    return (
        f"{common}\n{block}\n"
        f"piece swatch {side}{starts}\n  cast on {count}\n  work {name} x1\n  bind off\n"
    )


each_form = pytest.mark.parametrize(
    ("path", "name"),
    [
        pytest.param(path, name, id=f"{path.stem}-{name}")
        for path in PATTERNS
        for name, motif in bruteforce.read_file(_text(path)).motifs.items()
        if motif.form is not None
    ],
)


# --- the motifs of the corpus ---------------------------------------------------------------------


@each_form
def test_a_printed_multiple_holds_for_every_n(path: Path, name: str) -> None:
    file = bruteforce.read_file(_text(path))
    assert _first_failing(file.motifs[name], file.own) is None
    common, blocks = _blocks(_without_claims(_text(path)))
    form = file.motifs[name].form
    assert form is not None
    unit, fixed = form
    assert not _check(_alone(common, blocks[name], name, unit + fixed)).has_errors


@each_form
def test_another_form_is_refused_where_some_n_fails(path: Path, name: str) -> None:
    """Forms a little off: the compiler refuses one exactly where some n cannot be worked.

    Twelve n tell: a fill that comes out for two n on end comes out for all.
    """
    common, blocks = _blocks(_without_claims(_text(path)))
    file = bruteforce.read_file(_text(path))
    motif = file.motifs[name]
    assert motif.form is not None
    unit, fixed = motif.form
    wrong: list[str] = []
    for other in (
        (unit, fixed + 1), (unit, fixed - 1), (unit + 1, fixed), (unit * 2, fixed),
        (unit * 2, fixed + unit), (unit, fixed + unit), (unit, fixed - unit), (0, unit * 3 + fixed),
        (0, unit * 3 + fixed + 1),
    ):  # fmt: skip
        if other[0] + other[1] < 1:
            continue
        form = _form(*other)
        block = _with_form(blocks[name], form)
        fails = _first_failing(MotifText(name, other, motif.starts_ws, motif.rows), file.own, 12)
        refused = _check(_alone(common, block, name, sum(other))).has_errors
        if refused != (fails is not None):
            wrong.append(f"{form}: knitting fails at n = {fails}, refused {refused}")
    assert wrong == []


def test_a_motif_that_no_piece_works_is_proved_too() -> None:
    """The promise of ``over`` is broken whether or not a piece asks for it."""
    rib = 'pattern "Rib"\nmotif rib over 4n\n  row 1: * k2 p2 *\n  row 2: * k2 p2 * k1\n'
    assert _check(rib).has_errors
    endless = 'pattern "Endless"\nmotif m over n\n  row 1: * yo *\n'
    assert _check(endless).has_errors


def _form(unit: int, fixed: int) -> str:
    if unit == 0:
        return str(fixed)
    start = "n" if unit == 1 else f"{unit}n"
    return start if fixed == 0 else f"{start} {'+' if fixed > 0 else '-'} {abs(fixed)}"


@each_pattern
def test_a_slip_in_a_row_is_found_where_it_stops_the_knitting(path: Path) -> None:
    """One more or one less of one stitch, at places all over the source.

    A source so changed must be refused exactly where the piece cannot be knitted as written or a
    motif fails on its form. (An edge that is no longer as declared is another matter.)
    """
    text = _text(path)
    sizes = len(_check(text).pattern.sizes)
    slips = list(_slips(text))
    if not slips:
        pytest.skip("no row of it counts stitches")
    wrong: list[str] = []
    for changed, what in slips[:: -(-len(slips) // 16)]:
        can = _can_be_knitted(changed, sizes)
        rules = {p.rule for p in _check(changed).problems if p.is_error}
        if bool(rules - {"edge-broken"}) == can:
            wrong.append(f"{what}: knitted {can}, {sorted(rules)}")
    assert wrong == []


def _can_be_knitted(text: str, sizes: int) -> bool:
    file = bruteforce.read_file(text)
    try:
        for size in range(sizes):
            bruteforce.knit_file(text, size)
    except bruteforce.CannotWork:
        return False
    return all(
        motif.form is None or _first_failing(motif, file.own, 12) is None
        for motif in file.motifs.values()
    )


def _slips(text: str) -> Iterator[tuple[str, str]]:
    for match in re.finditer(r"(?m)^\s*(?:rows?|rounds?|every)\b[^:\n]*:(.*)$", text):
        body, at = match[1].split("=>")[0], match.start(1)
        for word in re.finditer(r"\b(k|p|yo|sl|bo|co|drop)(\d*)(?![\w/])", body):
            number = int(word[2] or 1)
            for other in (number + 1, number - 1):
                if other < 1:
                    continue
                new = word[1] + (str(other) if word[2] or other > 1 else "")
                start, end = at + word.start(), at + word.end()
                line = text[: match.start(1)].count("\n") + 1
                yield text[:start] + new + text[end:], f"line {line} {word[0]} → {new}"


# --- counts that the compiler proposes ------------------------------------------------------------


@each_pattern
def test_the_nearest_counts_are_the_nearest_that_can_be_knitted(path: Path) -> None:
    """What ``cast-on-misfit`` proposes, against trying one count after another."""
    text = _without_claims(_text(path))
    said = re.search(r"(?m)^  cast on (\d+)$|^  cast on (\d+) ", text)
    if said is None:
        pytest.skip("the cast-on is no single number")
    right = int(said[1] or said[2])
    seen = 0
    for count in (right + 1, right + 2, right - 1):
        problems = _check(_with_cast_on(text, count)).problems
        for problem in problems:
            nearest = re.search(r"The nearest (?:is|are) (\d+)(?: or (\d+))?\.", problem.message)
            if problem.rule != "cast-on-misfit" or not nearest or "cast-on" not in problem.message:
                continue
            seen += 1
            proposed = [int(x) for x in nearest.groups() if x]
            below = _next_that_works(text, range(count - 1, max(count - 90, 0), -1))
            above = _next_that_works(text, range(count + 1, count + 90))
            assert proposed == [x for x in (below, above) if x is not None]
    if not seen:
        pytest.skip("every count near by is on the forms")


def _with_cast_on(text: str, count: int) -> str:
    return re.sub(r"(?m)^(  cast on )\d+", rf"\g<1>{count}", text)


def _next_that_works(text: str, counts: range) -> int | None:
    for count in counts:
        try:
            bruteforce.knit_file(_with_cast_on(text, count))
        except bruteforce.CannotWork:
            continue
        return count
    return None


# --- sympy ----------------------------------------------------------------------------------------


@dataclass(frozen=True)
class Conditions:
    """What a motif asks of a count x: congruences (residue, modulus), x ≥ `low`, maybe x = only."""

    congruences: list[tuple[int, int]]
    low: int
    only: int | None


def _conditions(motif: MotifText, own: Own) -> Conditions | None:
    """Walk a motif with sympy's x for the count. None where no count can be worked."""
    x = sympy.Symbol("x", integer=True)
    count: sympy.Expr = x
    congruences: list[tuple[int, int]] = []
    low, only = 0, None
    for row in motif.rows:
        steps = bruteforce.read_body(row.body, own)
        fixed_takes = sum(s.takes for s in steps if not isinstance(s, Fill))
        fixed_makes = sum(s.makes for s in steps if not isinstance(s, Fill))
        rest = sympy.expand(count - fixed_takes)
        slope, offset = rest.coeff(x, 1), rest.coeff(x, 0)
        fills = [s for s in steps if isinstance(s, Fill)]
        if not fills:
            if slope == 0:
                if offset != 0:
                    return None
            else:
                root = sympy.solve(sympy.Eq(rest, 0), x)[0]
                if not root.is_integer or (only is not None and only != root):
                    return None
                only = int(root)
            count = sympy.Integer(fixed_makes)
            continue
        unit = sum(w.takes for w in fills[0].words)
        makes = sum(w.makes for w in fills[0].words)
        # rest must be a whole multiple of the unit, and not below 0.
        scale = sympy.ilcm(slope.q, offset.q)
        a, b, m = int(slope * scale), int(offset * scale), unit * int(scale)
        roots = [r for r in range(m) if (a * r + b) % m == 0]
        if not roots:
            return None
        common = m // len(roots)
        congruences.append((roots[0] % common, common))
        if slope > 0:
            low = max(low, int(sympy.ceiling(-offset / slope)))
        elif offset < 0:
            return None
        count = sympy.expand(fixed_makes + makes * rest / unit)
    return Conditions(congruences, low, only)


@each_form
def test_the_counts_of_a_motif_are_sympys(path: Path, name: str) -> None:
    file = bruteforce.read_file(_text(path))
    motif = file.motifs[name]
    conditions = _conditions(motif, file.own)
    assert conditions is not None
    # Without its form the motif's rows alone say which counts a piece of it can be cast on with.
    common, blocks = _blocks(_text(path))
    pattern = _check(_alone(common, _with_form(blocks[name], None), name, 12)).pattern
    holds = counts_for(pattern.pieces[0], 0, Tapes())
    solution = solve_congruence(*conditions.congruences) if conditions.congruences else (0, 1)
    assert solution is not None
    residue, modulus = (int(v) for v in solution)
    for count in range(1, 160):
        can = bruteforce.works_on(motif, count, file.own)
        by_sympy = (
            count % modulus == residue % modulus
            and count >= conditions.low
            and conditions.only in (None, count)
        )
        assert (count in holds, by_sympy) == (can, can), f"{count} stitches"
    # The printed multiple is a part of what can be worked.
    assert motif.form is not None
    unit, fixed = motif.form
    assert unit % (modulus if unit else 1) == 0
    assert (fixed - residue) % modulus == 0


_congruence = st.tuples(
    st.integers(-12, 12), st.integers(1, 6), st.integers(-40, 40), st.integers(1, 6),
    st.integers(1, 24),
)  # fmt: skip


@thorough
@given(
    modulus=st.integers(1, 30),
    residue=st.integers(0, 29),
    low=st.integers(0, 40),
    conditions=st.lists(_congruence, min_size=1, max_size=3),
)
def test_congruences_are_solved_as_sympy_solves_them(
    modulus: int, residue: int, low: int, conditions: list[tuple[int, int, int, int, int]]
) -> None:
    """``factor * x + offset`` a whole multiple of a modulus, several of them together."""
    found = CountSet(residue % modulus, modulus, low)
    system: list[tuple[int, int]] | None = [(residue % modulus, modulus)]
    for top, bottom, o_top, o_bottom, m in conditions:
        factor, offset = Fraction(top, bottom), Fraction(o_top, o_bottom)
        found = found.congruent(factor, offset, m)
        scale = sympy.ilcm(factor.denominator, offset.denominator)
        a, b, whole = int(factor * scale), int(offset * scale), int(m * scale)
        roots = [r for r in range(whole) if (a * r + b) % whole == 0]
        if not roots:
            system = None
        elif system is not None:
            step = whole // len(roots)
            system.append((roots[0] % step, step))
    solution = solve_congruence(*system) if system is not None else None
    for x in range(400):
        by_hand = (
            x >= low
            and x % modulus == residue % modulus
            and all(
                (Fraction(t, b) * x + Fraction(ot, ob)) % m == 0 for t, b, ot, ob, m in conditions
            )
        )
        by_sympy = (
            solution is not None and x >= low and (x - int(solution[0])) % int(solution[1]) == 0
        )
        assert (x in found, by_sympy) == (by_hand, by_hand)


@thorough
@given(
    modulus=st.integers(1, 30),
    residue=st.integers(0, 29),
    low=st.integers(0, 60),
    wanted=st.integers(0, 400),
)
def test_neighbours_in_a_set_of_counts(modulus: int, residue: int, low: int, wanted: int) -> None:
    counts = CountSet(residue % modulus, modulus, low)
    members = [x for x in range(low, 500) if x % modulus == residue % modulus]
    assert counts.above(wanted) == min(x for x in members if x >= wanted)
    assert counts.below(wanted) == max((x for x in members if x <= wanted), default=None)
    best = min(abs(x - wanted) for x in members)
    nearest = counts.nearest(wanted)
    # Of two equally near ones the larger.
    assert nearest == max(x for x in members if abs(x - wanted) == best)


# --- motifs nobody would knit ---------------------------------------------------------------------

_PLAIN = st.sampled_from(
    ["k1", "p2", "k3", "yo", "m1", "kfb", "k2tog", "ssk", "sk2p", "k4tog", "c4f", "yo2", "sl1",
     "drop1", "co2", "bo2", "(k1 yo k1) in 1", "(k1 p1) x2", "(k2tog yo) x3"]
)  # fmt: skip
_fixed = st.lists(_PLAIN, max_size=3)


@st.composite
def _bodies(draw: st.DrawFn) -> str:
    kind = draw(st.integers(0, 9))
    if kind == 0:
        return draw(st.sampled_from(["knit", "purl"]))
    before, unit, after = draw(_fixed), draw(st.lists(_PLAIN, min_size=1, max_size=3)), draw(_fixed)
    if kind == 1 and before:
        return " ".join(before)
    return " ".join([*before, "*", *unit, "*", *after])


@thorough
@given(
    bodies=st.lists(_bodies(), min_size=1, max_size=4),
    unit=st.integers(0, 8),
    fixed=st.integers(-4, 12),
    fitted=st.booleans(),
)
def test_any_motif_is_proved_exactly_where_it_can_be_knitted(
    bodies: list[str], unit: int, fixed: int, fitted: bool
) -> None:
    if fitted:
        unit, fixed = _fitting_form(bodies) or (unit, fixed)
    if unit + fixed < 1 or (unit == 0 and fixed < 1):
        fixed = 1
    motif = MotifText("m", (unit, fixed), False, [RowText(body, "") for body in bodies])
    rows = "\n".join(f"  row {i}: {body}" for i, body in enumerate(bodies, start=1))
    block = f"motif m over {_form(unit, fixed)}\n{rows}"
    text = _alone('pattern "Any"', block, "m", unit + fixed)
    fails = _first_failing(motif, {})
    problems = _check(text).problems
    refused = any(p.is_error for p in problems)
    assert refused == (fails is not None), f"{text}\n{fails}\n{problems}"


def _fitting_form(bodies: list[str]) -> tuple[int, int] | None:
    """A form on which the motif can be worked, found by trying counts."""
    motif = MotifText("m", None, False, [RowText(body, "") for body in bodies])
    fits = [count for count in range(1, 120) if bruteforce.works_on(motif, count, {})]
    if not fits:
        return None
    if len(fits) == 1:
        return 0, fits[0]
    return fits[1] - fits[0], 2 * fits[0] - fits[1]


# --- pieces with markers that nobody would knit ---------------------------------------------------


@st.composite
def _stretches(draw: st.DrawFn, needle: bruteforce.Needle) -> str:
    """A row that speaks of markers: a body for each stretch between them, mostly one that fits."""
    lengths = [0]
    for thing in needle:
        if isinstance(thing, bruteforce.Marker):
            lengths.append(0)
        else:
            lengths[-1] += 1
    parts: list[str] = []
    for at, length in enumerate(lengths):
        if at:
            parts.append(draw(st.sampled_from(_BETWEEN)))
        kind = draw(st.integers(0, 5))
        if kind == 0 and length:
            parts.append(f"k{length}")
        elif kind == 1 and length > 2:
            parts.append(f"k{length - 2} pm k2tog")
        else:
            unit = draw(st.sampled_from(["k1", "p1", "k1 p1", "kfb", "k2tog yo", "k2tog"]))
            before, after = draw(st.lists(_EASY, max_size=2)), draw(st.lists(_EASY, max_size=2))
            rest = length - _takes([*before, *after])
            fits = rest >= 0 and rest % _takes([unit]) == 0
            if fits or draw(st.integers(0, 9)) == 0:
                parts += [*before, "*", unit, "*", *after]
            else:
                parts += ["* p1 *", draw(st.sampled_from(["", "yo", "pm", "yo pm"]))]
    return " ".join(part for part in parts if part)


def _takes(words: list[str]) -> int:
    return sum(w.takes for w in bruteforce.read_body(" ".join(words)) if not isinstance(w, Fill))


_BETWEEN = ["sm"] * 12 + ["rm", "rm", ""]  # seldom forgotten
_EASY = st.sampled_from(["k1", "p2", "yo", "m1l", "k2tog", "ssk", "kfb", "pm"])
_UNMARKED = st.sampled_from(
    ["knit", "purl", "* k1 p1 *", "k2 * p1 * k2", "* c4f *", "* k2tog yo *", "* sl1 k1 *"]
)


@thorough
@given(data=st.data(), count=st.integers(6, 30), in_round=st.booleans())
def test_any_piece_with_markers_is_counted_as_it_is_knitted(
    data: st.DataObject, count: int, in_round: bool
) -> None:
    """Each row claims the count that it has when knitted; the last may be one that cannot be."""
    work = bruteforce.Knitting(bruteforce.cast_on(count), {}, in_round)
    first = f"k2 pm k{count - 4} pm k2"
    word = "round" if in_round else "row"
    lines = [f"piece any {'round' if in_round else 'flat'}", f"  cast on {count}"]
    can = True
    for number in range(data.draw(st.integers(1, 5)) + 1):
        plain = number and data.draw(st.integers(0, 3)) == 0
        body = first
        if number:
            body = data.draw(_UNMARKED if plain else _stretches(work.needle))
        try:
            work.work(RowText(body, ""))
        except bruteforce.CannotWork:
            can = False
            lines.append(f"  {word}: {body}")
            break
        lines.append(f"  {word}: {body} => {work.counts[-1]}")
    text = "\n".join(['pattern "Any"', *lines, "  bind off", ""])
    problems = _check(text).problems
    assert any(p.is_error for p in problems) == (not can), f"{text}\n{problems}"


@thorough
@given(data=st.data(), count=st.integers(6, 24), in_round=st.booleans())
def test_any_repeat_ends_as_when_it_is_knitted_row_by_row(
    data: st.DataObject, count: int, in_round: bool
) -> None:
    """A motif drawn so that it mostly fits once, then worked again and again.

    Its rows claim nothing; the row behind it claims the count that knitting comes to.
    """
    work = bruteforce.Knitting(bruteforce.cast_on(count), {}, in_round)
    work.work(RowText("k2 pm * k1 * pm k2", ""))
    work.work(RowText("knit", ""))
    # In the flat an odd motif would fall on the other side in its second repeat.
    length = data.draw(st.sampled_from([1, 2, 3] if in_round else [2, 4]))
    bodies: list[str] = []
    can = True
    once = bruteforce.Knitting(work.needle, {}, in_round)
    for _ in range(length):
        plain = data.draw(st.integers(0, 2)) == 0
        bodies.append(data.draw(_UNMARKED if plain else _stretches(once.needle)))
        try:
            once.work(RowText(bodies[-1], ""))
        except bruteforce.CannotWork:
            can = False
            break
    bodies += ["knit"] * (length - len(bodies))
    reps = 0
    wanted = data.draw(st.integers(1, 12))
    try:
        while reps < wanted and bruteforce.stitches(work.needle) < 1500:
            reps += 1
            for body in bodies:
                work.work(RowText(body, ""))
    except bruteforce.CannotWork:
        can = False
    word = "round" if in_round else "row"
    motif = [f"  {word} {number}: {body}" for number, body in enumerate(bodies, start=1)]
    text = "\n".join(
        [
            'pattern "Any"',
            "motif m",
            *motif,
            f"piece any {'round' if in_round else 'flat'}",
            f"  cast on {count}",
            f"  {word}: k2 pm * k1 * pm k2",
            f"  {word}: knit",
            f"  work m x{reps}",
            f"  {word}: knit => {bruteforce.stitches(work.needle)}",
            "  bind off",
            "",
        ]
    )
    problems = _check(text).problems
    assert any(p.is_error for p in problems) == (not can), f"{text}\n{problems}"
