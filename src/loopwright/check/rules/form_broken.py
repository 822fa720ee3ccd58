"""form-broken: a motif that does not hold on its over form for every n."""

from __future__ import annotations

from collections.abc import Iterator

from loopwright.check.context import Context, count_of, in_size, listed, set_text
from loopwright.check.neighbours import advice_for
from loopwright.check.rule import Rule
from loopwright.count.proof import Proof, form_set
from loopwright.count.repeat import Snag
from loopwright.model.pattern import Motif
from loopwright.notation.source import Span
from loopwright.problem import ERROR, Fix, Label, Problem


def check(context: Context) -> Iterator[Problem]:
    for motif in context.pattern.motifs:
        proofs = [p for p in context.proofs if p.motif is motif and p.verdict in ("form", "row")]
        if proofs and (proofs[0].verdict == "form" or not _said_by_rows(context, motif)):
            yield _problem(context, proofs)


def _said_by_rows(context: Context, motif: Motif) -> bool:
    """Whether a row of the motif did not fit where a piece works it, and says so itself."""
    return any(f.motif is motif and f.snag is not None for w in context.walks for f in w.findings)


def _problem(context: Context, proofs: list[Proof]) -> Problem:
    proof = proofs[0]
    motif = proof.motif
    form = motif.form
    assert form is not None
    snag = proof.snags[0]
    misfit = snag.misfit
    where = in_size(context, proof.size) if len(proofs) < len(context.sizes) else ""
    at = f"On {form} with n = {misfit.n}" if form.unit else f"On {form} stitches"
    message = (
        f"{at} row {snag.row.number} of “{motif.name.text}” has "
        f"{count_of(misfit.have, 'stitch')}{where}"
    )
    if misfit.kind == "uneven":
        rest = misfit.have - misfit.used
        message += (
            f": {rest:,} for a fill whose unit takes {misfit.unit:,}, "
            f"and that leaves {rest % misfit.unit:,} over."
        )
    elif misfit.kind in ("short", "over"):
        message += f" and works {misfit.used:,}."
    else:
        message += ", and its fills or markers do not come out."
    right = set_text(proof.holds)
    label = Label(form.span, "the form")
    rows = [(_place(s), f"row {s.row.number} does not fit") for s in proof.snags]
    if proof.verdict == "row":
        others = [r.number for r in motif.rows if all(r is not s.row for s in proof.snags)]
        message += f" Row{'s' if len(others) > 1 else ''} {listed(map(str, others))} "
        message += "hold on the form." if len(others) > 1 else "holds on the form."
        labels = (*(Label(span, text) for span, text in rows[1:]), label)
        sideways = advice_for(context, motif, snag.row, misfit, proof.size)
        help = sideways.help or "fit the row to the form."
        message += sideways.look
        return _made(context, proofs, message, rows[0][0], labels, help, sideways.fix)
    if right is None:
        help = "no form suits all its rows together: count the rows against one another."
    elif right == str(form):
        help = "let every fill be worked at least once for n = 1."
    else:
        message += f" Its rows hold on {right}."
        help = f"write “over {right}”, or change the row."
    # The row is the likelier slip where the counts at hand suit the form and the form that the
    # rows would need is no narrower one of the same kind.
    sites = [s.count for w in context.walks for s in w.sites if s.motif is motif]
    on_form = bool(sites) and all(count in form_set(motif) for count in sites)
    related = form.unit == 0 or proof.holds.modulus % form.unit == 0
    if on_form and not related and len(proof.snags) < 2:
        return _made(context, proofs, message, rows[0][0], (label,), help)
    labels = tuple(Label(span, text) for span, text in rows[:3])
    return _made(context, proofs, message, form.span, labels, help)


def _place(snag: Snag) -> Span:
    row = snag.row
    return row.at(row.span) if row.as_row else row.in_body(snag.misfit.span or row.body.span)


def _made(
    context: Context,
    proofs: list[Proof],
    message: str,
    span: Span,
    labels: tuple[Label, ...],
    help: str,
    fix: Fix | None = None,
) -> Problem:
    return Problem(
        "form-broken",
        ERROR,
        "the motif does not hold on its form",
        message,
        span,
        labels,
        help,
        context.size_names(p.size for p in proofs),
        fix,
    )


RULE = Rule(
    name="form-broken",
    severity=ERROR,
    title="the motif does not hold on its form",
    what="“over 2n + 4” promises that the motif can be worked on 6, 8, 10 … stitches: for every n "
    "from 1 on. The checker proves it for all of them at once, and here it fails.",
    wrong="""pattern "Rib on a wrong form"
motif rib over 2n
  row 1: * k2 p2 *
  row 2: * k2 p2 *
piece swatch flat
  cast on 16
  work rib x4
  bind off
""",
    right="""pattern "Rib on its form"
motif rib over 4n
  row 1: * k2 p2 *
  row 2: * k2 p2 *
piece swatch flat
  cast on 16
  work rib x4
  bind off
""",
    check=check,
)
