"""form-broken: a motif that does not hold on its over form for every n."""

from __future__ import annotations

from collections.abc import Iterator

from loopwright.check.context import Context, count_of, in_size, set_text
from loopwright.check.rule import Rule
from loopwright.count.proof import Proof
from loopwright.count.walk import form_set
from loopwright.problem import ERROR, Label, Problem


def check(context: Context) -> Iterator[Problem]:
    for motif in context.pattern.motifs:
        proofs = [p for p in context.proofs if p.motif is motif and p.verdict == "form"]
        if proofs:
            yield _problem(context, proofs)


def _problem(context: Context, proofs: list[Proof]) -> Problem:
    proof = proofs[0]
    motif = proof.motif
    form = motif.form
    assert form is not None
    snag = proof.snags[0]
    misfit = snag.misfit
    row = snag.row
    row_span = row.at(row.span) if row.as_row else row.in_body(misfit.span or row.body.span)
    where = in_size(context, proof.size) if len(proofs) < len(context.sizes) else ""
    at = f"On {form} with n = {misfit.n}" if form.unit else f"On {form} stitches"
    message = (
        f"{at} row {row.number} of {motif.name.text} has {count_of(misfit.have, 'stitch')}{where}"
    )
    if misfit.kind == "uneven":
        rest = misfit.have - misfit.used
        message += (
            f": {rest:,} for a fill whose unit takes {misfit.unit:,}, "
            f"and that leaves {rest % misfit.unit:,} over."
        )
    else:
        message += f" and works {misfit.used:,}."
    right = set_text(proof.holds)
    label = Label(form.span, "the form")
    if right is None:
        help = "no form suits all its rows together: count the rows against one another."
    elif right == str(form):
        help = "work the fills out on paper for n = 1."
    else:
        message += f" Its rows hold on {right}."
        help = f"write “over {right}”, or change the row."
    # The row is the likelier slip where the counts at hand suit the form and the form that the
    # rows would need is no narrower one of the same kind.
    sites = [s.count for w in context.walks for s in w.sites if s.motif is motif]
    on_form = bool(sites) and all(count in form_set(motif) for count in sites)
    related = form.unit == 0 or proof.holds.modulus % form.unit == 0
    if on_form and not related and len(proof.snags) < 2:
        span, labels = row_span, (label,)
    else:
        span, labels = form.span, (Label(row_span, "does not fit"),)
    return Problem(
        "form-broken",
        ERROR,
        "the motif does not hold on its form",
        message,
        span,
        labels,
        help,
        context.size_names(p.size for p in proofs),
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
