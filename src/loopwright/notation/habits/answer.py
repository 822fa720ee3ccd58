"""What is said to a line that was written as printed patterns are."""

from __future__ import annotations

from collections.abc import Callable, Mapping

from loopwright.record import dataclass, field


@dataclass(frozen=True, slots=True)
class Answer:
    """`message` says how the thing is written here, `help` what to do in general words.

    `lines` are whole corrected lines without indentation, ready to paste: one where the phrase
    has one meaning, several where print itself leaves it open (each then ends with a comment
    that says which reading it is), none where the line lacks a fact. `certain` is true only
    where the one line is without doubt what the printed phrase says.
    """

    message: str
    help: str = ""
    lines: tuple[str, ...] = ()
    certain: bool = False

    @property
    def advice(self) -> str:
        """The help as a problem carries it; a corrected line stands in a line of its own."""
        head = [" ".join(self.help.split())] if self.help else []
        return "\n".join([*head, *(f"write: {line}" for line in self.lines)])


@dataclass(frozen=True, slots=True)
class Reader:
    """What a habit may ask: whether a line can be read, what the file's own stitches take, and
    the names of its motifs."""

    reads: Callable[[str], bool]
    own: Mapping[str, int] = field(default_factory=dict)
    motifs: frozenset[str] = frozenset()
