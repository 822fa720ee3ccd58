"""How a pattern says its rows: the one place where the sentences of the instructions stand.

`PieceWriter` and `Phraser` know what is worked and how often; a voice makes the words of it. This
one is the trade's printed English; other voices say the same in other words.
"""

from __future__ import annotations

from collections.abc import Sequence

from loopwright.edition.row_words import RowWords


class Voice(RowWords):
    """The printed English of the trade, with its abbreviations; notes in `used` what it used.

    With another `catalogue` the same sentences come in another language. Every message is a
    whole sentence or a part that keeps its place, so that a catalogue can turn its words round.

    Here stands what is said between rows; `RowWords` has the rows, `StepWords` their steps.
    """

    def cast_on(self, counts: Sequence[int], strand: str | None, method: str | None) -> str:
        by = self._by(method, "cast-on")
        return self._sentence(self.t("cast on {sts}{by}", by=by, **self.amount(counts)), strand)

    def cast_on_more(self, counts: Sequence[int], strand: str | None, method: str | None) -> str:
        by = self._by(method, "cast-on")
        text = self.t(
            "cast on {n} more {sts}{by}", n=self.sized(counts), sts=self.sts(counts), by=by
        )
        return self._sentence(text, strand)

    def bind_off(self, counts: Sequence[int], strand: str | None, method: str | None) -> str:
        if method is not None and method.casefold() == "gathering":
            plural = (
                "cut the yarn, thread it through the remaining {sts}, draw them together and "
                "fasten off"
            )
            return self._sentence(self.several(plural, counts), strand)
        by = self._by(method, "bind-off")
        return self._sentence(self.t("bind off all {sts}{by}", sts=self.sts((2,)), by=by), strand)

    def _by(self, name: str | None, kind: str) -> str:
        """`` by the long-tail method``; a name that already says what it is stays as it is."""
        if not name:
            return ""
        if name[:4].casefold() == "the " and name[4:].strip():
            name = name[4:].strip()  # the sentence says it
        if name.casefold().split()[-1] in ("method", kind):
            return self.t(" by the {name}", name=name)
        return self.t(" by the {name} method", name=self.catalogue.name(name))

    def join_round(self) -> str:
        return self.t("Join to work in the round, taking care not to twist the stitches.")

    def leave_round(self) -> str:
        return self.t("From here work back and forth in rows.")

    def begin_round(self, counts: Sequence[int]) -> str:
        self.used.term("rnd")
        return self.t("K{n}: the rnd begins here from now on.", n=self.sized(counts))

    def leave_live(self, counts: Sequence[int], why: str | None) -> str:
        if why:
            plural = "Leave the remaining {sts} live: {why}."
            return self.several(plural, counts, why=why.rstrip("."))
        plural = "Leave the remaining {sts} live on a holder."
        return self.several(plural, counts)

    def put_aside(self, counts: Sequence[int], name: str, everything: bool) -> str:
        if everything:
            plural = "Place all {sts} on a holder for {name}."
        else:
            plural = "Place the next {sts} on a holder for {name}."
        return self.several(plural, counts, name=name)

    def pick_up(self, counts: Sequence[int], strand: str | None, edge: str) -> str:
        return self._sentence(self.pick(counts, edge), strand)

    def bring(self, names: Sequence[str], counts: Sequence[Sequence[int]], joined: bool) -> str:
        """Held stitches, or live ones of other pieces, come onto the needle."""
        if len(names) == 1:
            if joined:
                plural = "Place the {n} live {name} {st} on the needle."
            else:
                plural = "Place the {n} held {name} {st} on the needle."
            return self.several(plural, counts[0], name=names[0])
        each = [
            self.t("{name}, {sts}", name=name, **self.amount(n))
            for name, n in zip(names, counts, strict=True)
        ]
        if joined:
            message = "Place the live {sts} on the needle, in this order: {names}."
        else:
            message = "Place the held {sts} on the needle, in this order: {names}."
        return self.t(message, sts=self.sts((2,)), names=self.t("; ").join(each))
