"""cast-on-misfit: a count on which the motif cannot be worked."""

from __future__ import annotations

from collections.abc import Iterator

from loopwright.check.context import Context, count_of, in_size
from loopwright.check.rule import Rule
from loopwright.problem import ERROR, Label, Problem


def check(context: Context) -> Iterator[Problem]:
    for group in context.findings("cast-on-misfit"):
        first = group[0]
        if first.detail == "none":
            yield context.problem(
                group,
                "no count fits the width",
                f"About {count_of(first.numbers[0], 'stitch')} would be that wide"
                f"{in_size(context, first.size)}, but no count suits all the rows of the piece.",
                help="look at its rows and the forms of its motifs: they exclude one another.",
            )
            continue
        count, fewer, more, _line = first.numbers
        motif = first.motif
        proof = context.proof_of(motif, first.size) if motif is not None else None
        if proof is not None and proof.verdict == "form":
            continue  # the form is wrong: said by form-broken
        assert motif is not None and motif.form is not None
        form = Label(motif.form.span, "its form")
        near = [str(n) for n in (fewer, more) if n > 0]
        numbers = " or ".join(near)
        what = "The cast-on" if first.detail == "cast-on" else "Before this line the piece"
        message = (
            f"“{motif.name.text}” is worked over {motif.form}. {what} has "
            f"{count_of(count, 'stitch')}{in_size(context, first.size)}, which is none of its "
            "counts."
        )
        if near:
            message += f" The nearest {'is' if len(near) == 1 else 'are'} {numbers}."
        if first.detail == "cast-on":
            help = f"cast on {numbers}." if near else "change the motif's form."
            work = next(
                s.item.span
                for w in context.walks_of(first.piece)
                for s in w.sites
                if s.motif is motif
            )
            labels: tuple[Label, ...] = (
                Label(work, "worked here"),
                Label(motif.form.span, "its form"),
            )
        else:
            help = f"bring the count to {numbers} before it." if near else "change the form."
            labels = (form,)
        title = (
            "the cast-on is not a count the motif takes"
            if first.detail == "cast-on"
            else "the count is none that the motif takes"
        )
        yield context.problem(group, title, message, help=help, labels=labels)


RULE = Rule(
    name="cast-on-misfit",
    severity=ERROR,
    title="the cast-on is not a count the motif takes",
    what="A motif can be worked only over the counts of its form. The stitches on the needle are "
    "none of them, so its repeats would not come out.",
    wrong="""pattern "Misfit"
motif rib over 4n + 2
  row 1: k2 * p2 k2 *
  row 2: p2 * k2 p2 *
piece swatch flat
  cast on 20
  work rib x4
  bind off
""",
    right="""pattern "Fit"
motif rib over 4n + 2
  row 1: k2 * p2 k2 *
  row 2: p2 * k2 p2 *
piece swatch flat
  cast on 22
  work rib x4
  bind off
""",
    check=check,
)
