"""How often a line works its motif: so many times or rows, to a length, while the yarn lasts."""

from __future__ import annotations

from loopwright.count.measure import height_of_row
from loopwright.count.progress import Progress
from loopwright.count.walk import Walk
from loopwright.model.pattern import Motif, Work
from loopwright.notation.bounds import MAX_NUMBER
from loopwright.notation.tree import ForRows, Times, ToLength, UntilSpent


def amount_of(so_far: Progress, item: Work, motif: Motif) -> tuple[int, int] | None:
    """Whole repeats and rows of one more; None where the piece cannot go on.

    Not for work that ends by its count of stitches: only the repeats themselves tell that.
    """
    rows = len(motif.rows)
    amount = item.amount
    part = 0
    reps: int | None
    if isinstance(amount, Times):
        reps = amount.count.at(so_far.size)
    elif isinstance(amount, ForRows):
        reps, part = divmod(amount.rows.at(so_far.size), rows)
    elif isinstance(amount, ToLength):
        reps = reps_to_length(so_far, motif, amount)
    elif isinstance(amount, UntilSpent):
        reps = _reps_until_spent(so_far, item, motif, amount)
    else:
        return None
    if reps is None:
        return None
    if so_far.row + reps * rows + part > MAX_NUMBER:
        so_far.find("number-too-big", amount.span, "rows", numbers=(reps * rows + part,))
        return None
    return reps, part


def reps_to_length(so_far: Progress, motif: Motif, amount: ToLength) -> int | None:
    """The repeats that end nearest to a length from the cast-on; None, and why, if none does."""
    measure = amount.measure or so_far.piece.length or so_far.pattern.length
    if measure is None:
        so_far.find("gauge-missing", amount.span, "length")
        return None
    if measure.unit is None:
        return None  # said by unit-missing
    height = height_of_row(so_far.pattern, motif)
    if height is None or so_far.height is None:
        so_far.find("gauge-missing", amount.span, "gauge")
        return None
    target = measure.mm(so_far.size)
    if amount.rows_off is not None:
        plain = height_of_row(so_far.pattern, None) or height
        target += amount.sign * amount.rows_off.at(so_far.size) * plain
    elif amount.measure_off is not None and amount.measure_off.unit is not None:
        target += amount.sign * amount.measure_off.mm(so_far.size)
    wanted = (target - so_far.height) / (height * len(motif.rows))
    reps = int(wanted + 0.5 + 1e-9)
    if wanted <= 0 or reps < 1:
        so_far.find(
            "length-unreached",
            amount.span,
            motif=motif,
            numbers=(round(target), round(so_far.height), round(height * len(motif.rows))),
        )
        return None
    return reps


def _reps_until_spent(so_far: Progress, item: Work, motif: Motif, amount: UntilSpent) -> int | None:
    """The repeats a strand's balls last for, as the yarn room reckons them."""
    key = amount.strand.key
    if so_far.pattern.strand(key) is None:
        return None  # said by unknown-name
    if so_far.forced is not None:
        return so_far.forced.get(item, 1)
    if not _works_with(so_far, motif, key):
        so_far.find("length-unreached", amount.span, "strand", motif=motif)
        return None

    def trial(reps: int) -> Walk:
        # The cast-on is as found: it need not be looked for again.
        return so_far.anew(so_far.first_cast, {**so_far.spent, item: reps})

    reps = None
    if so_far.estimate is not None:
        reps = so_far.estimate.repeats(so_far.piece, so_far.size, item, trial)
    if reps is None:
        so_far.find("gauge-missing", amount.span, "yarn", numbers=())
        return None
    if reps < 1:
        so_far.find("length-unreached", amount.span, "spent", motif=motif)
        return None
    so_far.spent[item] = reps
    return reps


def _works_with(so_far: Progress, motif: Motif, strand: str) -> bool:
    """Whether any row of a motif is worked with a strand; one that names none goes on with the
    strand before the motif."""
    before = so_far.strand
    return any((row.strand.key if row.strand else before) == strand for row in motif.rows)
