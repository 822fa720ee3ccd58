"""The words of one language: messages, stitches and terms, each with its English as the key."""

from __future__ import annotations

import re
from collections.abc import Mapping

from loopwright.edition.aloud import measures_aloud
from loopwright.edition.numbers import ordinal
from loopwright.facts.words import terms
from loopwright.model.stitch import Stitch
from loopwright.record import dataclass, field

FAMILIES = (
    "knit {a} together",
    "purl {a} together",
    "slip {a} to a cable needle and hold in front, knit {b}, knit {c} from the cable needle",
    "slip {a} to a cable needle and hold in back, knit {b}, knit {c} from the cable needle",
    "slip {a} to a cable needle and hold in front, purl {b}, knit {c} from the cable needle",
    "slip {a} to a cable needle and hold in back, knit {b}, purl {c} from the cable needle",
)
"""The meanings of stitches that carry their width in their word, with places for the numbers."""

FABRICS = ("stockinette", "garter", "rib", "seed", "moss", "reverse stockinette", "lace", "cables")
METHODS = (
    "long-tail", "knitted", "cable", "provisional", "garter-tab", "suspended", "stretchy", "loose",
    "three-needle", "backward-loop", "sewn",
)  # fmt: skip
LEVELS = ("Basic", "Easy", "Intermediate", "Complex")
NEEDLE_KINDS = ("circular", "straight", "double-pointed")
EDGES = ("left", "right", "top", "bottom", "cast-on", "bind-off", "side")

_FAMILY = re.compile(r"(k|p)(\d+)tog")
_POINT = re.compile(r"(?<=\d)\.(?=\d)")
_UNIT = re.compile(r"(?<=[\d)¼½¾] )(cm|mm|in|m|yd|g|oz)(?![\w.])")
_DE = re.compile(r"\b([Dd])e \{(\w+)\}")
_VOWEL = re.compile(r"[aeiouàâäæéèêëîïôöœùûü]", re.IGNORECASE)


@dataclass(frozen=True, slots=True)
class Catalogue:
    """`messages` by their English; `short` and `long` are abbreviations and their meanings by
    the word of the language of sources (a stitch, a modifier) or the English term; `names` are
    the trade's names of fabrics, methods, levels and tools that a source uses as they are. What
    a catalogue lacks stays English. `in_words` where small numbers are written out; `decimal` is
    the mark of broken numbers, `group` parts thousands from `group_from` on, `units` are the unit
    words that differ. `plurals` are messages with a number, by the English for one of it: for one
    and for more; `zero_is_one` where the language says none as it says one. `spoken` are the
    messages that reading aloud says otherwise; `aloud` tells that these words are for that.

    A stitch's abbreviation may hold ``{n}``, where its number stands in it; a term without a
    meaning is no abbreviation and is not listed. A key such as ``yo kp`` is the stitch between
    a knit and a purl stitch.
    """

    language: str
    messages: Mapping[str, str] = field(default_factory=dict)
    short: Mapping[str, str] = field(default_factory=dict)
    long: Mapping[str, str] = field(default_factory=dict)
    names: Mapping[str, str] = field(default_factory=dict)
    in_words: bool = False
    notices: tuple[str, ...] = ()
    decimal: str = "."
    units: Mapping[str, str] = field(default_factory=dict)
    group: str = ","
    group_from: int = 1000
    plurals: Mapping[str, tuple[str, str]] = field(default_factory=dict)
    zero_is_one: bool = False
    spoken: Mapping[str, str] = field(default_factory=dict)
    aloud: bool = False

    @property
    def is_english(self) -> bool:
        return self.language.startswith("en")

    def text(self, message: str) -> str:
        return self.messages.get(message, message)

    def say(self, message: str, **parts: object) -> str:
        """A message with its parts put in. A translation may use any of the parts, or leave one."""
        return self._filled(self.text(message), parts)

    def many(self, one: str, many: str, number: float, **parts: object) -> str:
        """One of two messages, by `number`, which is their part ``n`` where no other is given."""
        pair = self.plurals.get(one, (one, many))
        return self._filled(pair[not self.is_one(number)], {"n": number, **parts})

    def is_one(self, number: float) -> bool:
        """Whether words beside the number are in the singular: French says 0 and 1,5 so too."""
        return abs(number) < 2 if self.zero_is_one else number == 1

    def _filled(self, text: str, parts: Mapping[str, object]) -> str:
        """The message with its parts put in; French shortens its “de” before a vowel."""
        if self.language == "fr":
            text = _DE.sub(
                lambda de: f"{de[1]}’{{{de[2]}}}" if _VOWEL.match(str(parts[de[2]])) else de[0],
                text,
            )
        return text.format(**parts)

    def name(self, text: str, key: str = "") -> str:
        """A name of the trade (by `key`, if given); any other stays as the source writes it."""
        return self.names.get((key or text).casefold(), text)

    def figures(self, text: str) -> str:
        """Figures with their units (never a writer's text) as the language writes or says them."""
        if self.aloud:
            text = measures_aloud(text, self)
        if self.decimal != ".":
            text = _POINT.sub(self.decimal, text)
        if self.units:
            text = _UNIT.sub(lambda match: self.units.get(match[1], match[1]), text)
        return text

    def grouped(self, number: int) -> str:
        """``1,200``: a whole number with its thousands parted."""
        if abs(number) < self.group_from:
            return str(number)
        return f"{number:,}".replace(",", self.group)

    def ordinal(self, number: int) -> str:
        """``6th``, ``2nd``."""
        if self.is_english:
            return ordinal(number)
        return self.say("{n}st", n=number) if number == 1 else self.say("{n}th", n=number)

    def inside(self, text: str) -> str:
        """A heading inside a sentence: small letters, but for the nouns of German."""
        return text if self.language == "de" else text.lower()

    @property
    def between_sizes(self) -> str:
        """What parts the numbers of several sizes: where a comma may be in them, no comma."""
        if self.decimal != ",":
            return ", "
        return "\u00a0; " if self.language == "fr" else "; "

    def term(self, name: str) -> tuple[str, str]:
        """A general abbreviation (st, rep, RS) and what it means."""
        return self.short.get(name, name), self.long.get(name, terms()[name])

    def stitch(self, stitch: Stitch, between: str = "") -> tuple[str, str]:
        """A stitch's abbreviation and what it means; a file's own stitches stay as written."""
        if stitch.kind == "own":
            return stitch.abbr, stitch.meaning
        word = f"{stitch.word} {between}"
        if word not in self.short:
            word = stitch.word
        if word in self.short or word in self.long:
            return self.short.get(word, stitch.abbr), self.long.get(word, stitch.meaning)
        return self._of_a_family(stitch)

    def _of_a_family(self, stitch: Stitch) -> tuple[str, str]:
        short, meaning = stitch.abbr, stitch.meaning
        together = _FAMILY.fullmatch(stitch.word)
        if together:
            # As many of them as are worked together: {n} is already the number of times.
            short = self.short.get(f"{together[1]}tog", short).replace("{a}", together[2])
        for message in FAMILIES:
            pattern = re.escape(message)
            for part in "abc":
                pattern = pattern.replace(rf"\{{{part}\}}", rf"(?P<{part}>\d+)")
            match = re.fullmatch(pattern, meaning)
            if match:
                return short, self.say(message, **match.groupdict())
        return short, meaning

    def modifier(self, word: str, meaning: str) -> tuple[str, str]:
        return self.short.get(word, word), self.long.get(word, meaning)


ENGLISH = Catalogue("en", in_words=True)
