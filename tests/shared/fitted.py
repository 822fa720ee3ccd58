"""One row on the stitches that it takes, for tests of how such a row is written out."""

from __future__ import annotations

from outside.bruteforce import Fill, read_body


def row_of(before: list[str], unit: list[str], after: list[str], often: int) -> str:
    """A source with one row whose `unit` goes in `often` times.

    The cast-on is added up from the single stitches, as the knitter of `outside.bruteforce` reads
    them, who knows nothing of the checker: that must find no error in the source.
    """
    body = f"{' '.join(before)} * {' '.join(unit)} * {' '.join(after)}"
    cast = 0
    for step in read_body(body):
        if isinstance(step, Fill):
            cast += often * sum(word.takes for word in step.words)
        else:
            cast += step.takes
    return f'pattern "Q"\npiece p flat\n  cast on {cast}\n  row: {body}\n  bind off\n'
