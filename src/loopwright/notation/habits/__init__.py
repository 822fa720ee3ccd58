"""What a knitter who has only ever read printed patterns writes, and what to write instead.

A room of its own, asked only about a line that could not be read, or one that holds a word no
dictionary knows. `letters` looks at single characters, `rows` (with `heads`, `body` and `steps`)
at whole rows, `lines`, `openings` and `measures` at the other lines; `general` has the answer in
general words where the line as a whole has no certain meaning.
"""

from __future__ import annotations

from loopwright.notation.habits.answer import Answer, Reader
from loopwright.notation.habits.general import general_answer
from loopwright.notation.habits.letters import commented, plain, what_is_odd
from loopwright.notation.habits.lines import printed_line
from loopwright.notation.habits.measures import measured
from loopwright.notation.habits.openings import opened
from loopwright.notation.habits.rows import printed_row

LOOKED_AT = 300  # characters of a line; some shapes look at each more than once

__all__ = ["LOOKED_AT", "Answer", "Reader", "answer_to", "measured", "plain", "printed_row"]


def answer_to(line: str, reader: Reader) -> Answer | None:
    """The answer to a line that could not be read, or None where no habit is known in it.

    Every line that the answer offers can be read.
    """
    line = line.strip()
    if len(line) > LOOKED_AT:
        return general_answer(line[:LOOKED_AT])
    clean = " ".join(plain(line).split()) if '"' not in plain(line) else plain(line)
    odd = what_is_odd(line)
    if odd is not None:
        for text in (clean, plain(commented(line))):
            if reader.reads(text):
                return Answer(odd[0], lines=(text,), certain=True)
    answer = (
        measured(clean, reader)
        or printed_line(clean, reader)
        or opened(clean, reader)
        or printed_row(clean, reader)
    )
    if answer is not None:
        return answer
    return general_answer(clean) or (Answer(*odd) if odd is not None else None)
