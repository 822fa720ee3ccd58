"""What is said of rows: their labels and counts, and how often they are worked."""

from __future__ import annotations

from collections.abc import Sequence

from loopwright.edition.step_words import StepWords


class RowWords(StepWords):
    """The sentences of rows, of changes spread over them, and of their repeats."""

    def row(self, body: str, strand: str | None) -> str:
        """The sentence of a row; `strand` where the row names one of several."""
        return self._sentence(body, strand)

    def _sentence(self, text: str, strand: str | None = None) -> str:
        if strand:
            text = self.t("With {strand}, {text}", strand=strand, text=text)
        return f"{text[:1].upper()}{text[1:]}."

    def side(self, rs: bool) -> str:
        side = "RS" if rs else "WS"
        self.used.term(side)
        return self.catalogue.term(side)[0]

    def word(self, in_round: bool, plural: bool) -> str:
        """``Row``, ``Rows``, ``Rnd`` or ``Rnds``."""
        if not in_round:
            return self.t("Rows") if plural else self.t("Row")
        self.used.term("rnds" if plural else "rnd")
        return self.t("Rnds") if plural else self.t("Rnd")

    def label(self, first: int, last: int, in_round: bool, rs: bool) -> str:
        """``Row 3 (RS):``, ``Rnd 3:``, ``Rows 3–6:``."""
        if last > first:
            rows = self.word(in_round, True)
            return self.t("{rows} {first}–{last}:", rows=rows, first=first, last=last)
        if in_round:
            return self.t("{row} {n}:", row=self.word(True, False), n=first)
        parts = {"row": self.word(False, False), "side": self.side(rs)}
        return self.t("{row} {n} ({side}):", n=first, **parts)

    def next_label(self, rows: Sequence[int], in_round: bool, rs: bool) -> str:
        """The label where the sizes have come to different row numbers."""
        if set(rows) == {1}:
            if in_round:
                self.used.term("rnd")
                return self.t("Next rnd:")
            return self.t("Next row ({side}):", side=self.side(rs))
        if in_round:
            self.used.term("rnds")
            return self.t("Next {n} rnds:", n=self.sized(rows))
        return self.t("Next {n} rows:", n=self.sized(rows))

    def every_label(self, first: int, last: int, in_round: bool, rs: bool, rest: bool) -> str:
        """A row worked in every other row; `rest`: in every row that is not given."""
        self.used.term("foll")
        if not in_round:
            message = "Row {first} and every foll {side} row to Row {last}:"
            return self.t(message, first=first, side=self.side(rs), last=last)
        self.used.term("rnd")
        if rest:
            message = "Rnd {first} and every rnd not given, to Rnd {last}:"
        else:
            message = "Rnd {first} and every foll alternate rnd to Rnd {last}:"
        return self.t(message, first=first, last=last)

    def count(self, values: Sequence[int | None]) -> str:
        """``(240 sts)``, ``(180, 240, 300 sts)``; ``(–, 240 sts)`` for a size without the row."""
        texts = ["–" if value is None else str(value) for value in values]
        shown = texts[0] if len(set(texts)) == 1 else self.catalogue.between_sizes.join(texts)
        sts = self.sts([value or 0 for value in values])
        return self.t("({n} {sts})", n=shown, sts=sts)

    # --- changes that are spread -------------------------------------------------------------

    def unit(self, in_round: bool, plural: bool) -> str:
        """``row``, ``rows``, ``rnd`` or ``rnds``, inside a sentence."""
        if not in_round:
            return self.t("rows") if plural else self.t("row")
        self.used.term("rnds" if plural else "rnd")
        return self.t("rnds") if plural else self.t("rnd")

    def rows(self, in_round: bool, plural: bool) -> dict[str, str]:
        """The word for rows as ``row`` or ``rows``, and as it is inside a sentence, ``unit``."""
        name = "rows" if plural else "row"
        return {name: self.word(in_round, plural), "unit": self.unit(in_round, plural)}

    def shaping_label(self, in_round: bool) -> str:
        if in_round:
            self.used.term("rnd")
            return self.t("Shaping rnd:")
        return self.t("Shaping row ({side}):", side=self.side(True))

    def named_label(self, name: str, number: int, in_round: bool, rs: bool) -> str:
        """The label of a row that is known by its motif: ``Plain row 2 (WS):``."""
        parts = {"name": f"{name[:1].upper()}{name[1:]}", "row": self.unit(in_round, False)}
        if in_round:
            return self.t("{name} {row} {n}:", n=number, **parts)
        return self.t("{name} {row} {n} ({side}):", n=number, side=self.side(rs), **parts)

    def changed_by(self, change: int) -> str:
        """``(2 sts fewer)``."""
        sts = self.some((abs(change),))
        return self.t("({sts} more)", sts=sts) if change > 0 else self.t("({sts} fewer)", sts=sts)

    def evenly(self, one: str, often: Sequence[int], purl: bool) -> str:
        """A stitch spread over the row, where the gaps differ from repeat to repeat."""
        if purl:
            message = "{steps} {times}, evenly spread, purling the stitches between"
        else:
            message = "{steps} {times}, evenly spread, knitting the stitches between"
        return self.t(message, steps=one, times=self.times(often))

    # --- repeats of rows -------------------------------------------------------------

    def numbered_anew(self, name: str, in_round: bool) -> str:
        if in_round:
            return self.t("Now work the {name} repeat; its rounds are numbered from 1.", name=name)
        return self.t("Now work the {name} repeat; its rows are numbered from 1.", name=name)

    def _more(self, values: Sequence[int]) -> str:
        """`` once more``, `` seven more times``, ``, 96 (133, 168) more times``.

        Begins with what parts it from the row numbers before it: figures need the comma.
        """
        number = values[0] if len(set(values)) == 1 else 0
        if number == 1:
            return self.t(" once more")
        if number == 2:
            return self.t(" twice more")
        if 0 < number < 100:
            return self.t(" {n} more times", n=self.number(number))
        return self.t(", {n} more times", n=self.sized(values))

    def _often(self, values: Sequence[int]) -> str:
        """`` once``, `` eight times``, ``, 120 times``, ``, 96 (133, 168) times``."""
        number = values[0] if len(set(values)) == 1 else 0
        if number in (1, 2):
            return self.t(" {times}", times=self.times((number,)))
        if 0 < number < 100:
            return self.t(" {times}", times=self.t("{n} times", n=self.number(number)))
        return self.t(", {times}", times=self.t("{n} times", n=self.sized(values)))

    def repeat(self, in_round: bool, first: int, last: int, more: Sequence[int], tail: str) -> str:
        """``Rep Rows 3–6 seven more times.``"""
        self.used.term("rep")
        parts = {"first": str(first), "last": str(last), "more": self._more(more), "tail": tail}
        message = "Rep {rows} {first}–{last}{more}{tail}."
        return self.t(message, **self.rows(in_round, True), **parts)

    def again(self, in_round: bool, first: int, last: int, often: Sequence[int], tail: str) -> str:
        """A repeat that was written out before."""
        parts = {"first": str(first), "last": str(last), "often": self._often(often), "tail": tail}
        message = "Work {rows} {first}–{last}{often}{tail}."
        return self.t(message, **self.rows(in_round, True), **parts)

    def some_rows(self, in_round: bool, first: int, rows: Sequence[int], more: bool) -> str:
        """The first rows of a repeat, alone; `more` where it was worked whole just before."""
        how = self.t(" once more") if more else self.t(" {times}", times=self.t("once"))
        if len(set(rows)) == 1:
            last = first + rows[0] - 1
            if last == first:
                message = "Work {row} {first}{often}."
                return self.t(message, **self.rows(in_round, False), first=first, often=how)
            message = "Work {rows} {first}–{last}{often}{tail}."
            words = self.rows(in_round, True)
            return self.t(message, **words, first=first, last=last, often=how, tail="")
        return self.t(
            "Work the first {n} {rows} of the repeat{often}, beginning with {row} {first}.",
            n=self.sized(rows),
            rows=self.unit(in_round, True),
            often=how,
            row=self.word(in_round, False),
            unit=self.unit(in_round, False),
            first=first,
        )

    def measured(self, length: str) -> str:
        """What is added to a repeat that is worked to a length."""
        return self.t("; the piece now measures about {length}", length=length)
