"""Cautions where a pattern's own words call for them, and the care of its fibre.

What fires is told by words in the title, summary, notes, notions, and the names of sizes and
pieces; where holes matter, by the rows too. A caution is plain, and gives way to local rules.
"""

from __future__ import annotations

import re

from loopwright.edition.catalogue import Catalogue
from loopwright.facts.care import care_named, felts, is_acrylic
from loopwright.facts.tables import table
from loopwright.facts.words import safety_caution
from loopwright.model.body import Fill, words_of
from loopwright.model.pattern import Care, Pattern, Remark
from loopwright.notation.names import as_words
from loopwright.record import dataclass

SLEEP_ADVICE = (
    "Follow the safe-sleep advice of your own country and of your health visitor or doctor."
)
LOCAL_RULES = "The safety rules of your own country stand above this line."
OTHER_YARN = "Of another yarn, the care line of its ball band decides."
BALL_BAND = "The ball band’s own care line decides."

# Names of yarns and stitches that speak of no child.
_NOT_A_CHILD = re.compile(
    r"\b(baby[ -](alpaca|camel|llama|cashmere|merino|mohair|cables?|rib|ferns?|wale|yarn)"
    r"|kid[ -]?(mohair|silk)|cot(ton)?[ -]?(yarn|cloth|blend)"
    r"|not (suitable |meant |made )?for (a |an |any )?(bab(y|ies)|infants?|child(ren)?))\b",
    re.IGNORECASE,
)
_INFANT = re.compile(
    r"\b(bab(y|ies)|infants?|newborns?|preemies?|crib|cot|cradle|pram|stroller|receiving|nursery"
    r"|layette|bassinet|moses basket)\b",
    re.IGNORECASE,
)
_TODDLER = re.compile(r"\b(toddlers?|under three|under 3)\b", re.IGNORECASE)
_CHILD = re.compile(r"\b(child|children(’s|'s)?|child(’s|'s)|kids?|boys?|girls?)\b", re.IGNORECASE)
_MONTHS = re.compile(r"\b(\d+)(?:\s*[-–]\s*\d+)?\s*(?:months?|mos?)\b", re.IGNORECASE)
_YEARS = re.compile(r"\b(\d+)(?:\s*[-–]\s*\d+)?\s*(?:years?|yrs?)\b", re.IGNORECASE)
_YEARS_T = re.compile(r"\b(\d+)T\b")  # 2T, 3T: sizes for two and three years

_COVER = re.compile(r"\b(blanket|throw|afghan|quilt|cover|pillow|shawl|cushion)s?\b", re.IGNORECASE)
_CORD = re.compile(
    r"\b(i-?cords?|cords?|drawstrings?|ribbons?|ties|(a|the|each|neck|chin|hood) tie)\b",
    re.IGNORECASE,
)
_NECK = re.compile(
    r"\b(hood|neck|collar|bonnet|hat|cap|earflaps?|cowl|cape|poncho|cardigan|sweater|jumper"
    r"|pullover|jacket|coat|vest|waistcoat|dress|romper)s?\b",
    re.IGNORECASE,
)
_WAIST = re.compile(r"\b(waist|waistband|hem|trousers|leggings|shorts|skirt)s?\b", re.IGNORECASE)
_SMALL = re.compile(
    r"\b(buttons?|beads?|sequins?|press studs?|snaps?|safety eyes|toy eyes|eyes|jingle bells?)\b",
    re.IGNORECASE,
)
_POMPOM = re.compile(r"\b(pom-?\s?poms?|fringes?|tassels?)\b", re.IGNORECASE)
_SCARF = re.compile(r"\b(scarf|scarves|long cord)\b", re.IGNORECASE)
_OPEN = re.compile(r"\b(lace|lacy|openwork|eyelets?|mesh|dropped stitches)\b", re.IGNORECASE)
_FLUFFY = re.compile(r"\b(mohair|angora|faux fur|eyelash)\b", re.IGNORECASE)

_HOLES = 3  # yarn overs written in one motif or row: a pattern of holes, no single buttonhole
_CLOSE = 5  # stitches in which one hole makes an open cloth: a judgement, without a source
_NECK_AGE, _CORD_AGE = 7, 14  # years to which rules on cords reach: EN 14682
_SMALL_AGE = 3  # years: 16 CFR 1501


@dataclass(frozen=True, slots=True)
class Wearer:
    """The youngest a pattern speaks of: `age` in years, or None where it speaks of no child."""

    age: float | None

    def under(self, years: float) -> bool:
        return self.age is not None and self.age < years


def told(pattern: Pattern) -> str:
    """The words of a pattern that can call for a caution."""
    texts = [pattern.title, pattern.summary, *pattern.notes, *pattern.notions]
    for piece in pattern.pieces:
        texts += [item.text for item in piece.items if isinstance(item, Remark)]
    words = [text.text for text in texts if text is not None]
    names = [*pattern.sizes, *(piece.name.text for piece in pattern.pieces)]
    words += map(as_words, names)
    return _NOT_A_CHILD.sub(" ", ". ".join(words))


def wearer_of(text: str) -> Wearer:
    """The youngest age that a text speaks of. A child of no stated age is five."""
    ages = [int(match[1]) / 12 for match in _MONTHS.finditer(text)]
    ages += [float(match[1]) for match in _YEARS.finditer(text)]
    ages += [float(match[1]) for match in _YEARS_T.finditer(text)]
    ages = [age for age in ages if age <= _CORD_AGE]
    if _INFANT.search(text):
        ages.append(0.0)
    if _TODDLER.search(text):
        ages.append(1.0)
    if not ages and _CHILD.search(text):
        ages.append(5.0)
    return Wearer(min(ages) if ages else None)


def cautions_of(pattern: Pattern, words: Catalogue) -> tuple[str, ...]:
    """The cautions that a pattern calls for, each with whose advice stands above it."""
    text = told(pattern)
    wearer = wearer_of(text)
    found: list[str] = []

    def add(name: str, advice: str = LOCAL_RULES) -> None:
        found.append(f"{words.text(safety_caution(name))} {words.text(advice)}")

    if wearer.under(1) and _COVER.search(text):
        add("infant blanket", SLEEP_ADVICE)
    if wearer.under(_CORD_AGE) and _CORD.search(text):
        if _NECK.search(text):
            add("neck cord EU" if wearer.under(_NECK_AGE) else "neck cord")
        if _WAIST.search(text):
            add("waist cord")
    if wearer.under(_SMALL_AGE):
        if _SMALL.search(text):
            add("small parts")
        if _POMPOM.search(text):
            add("pompom")
        if _SCARF.search(text):
            add("scarf")
    if wearer.under(1):
        if _OPEN.search(text) or _has_holes(pattern):
            add("openwork")
        if any(_FLUFFY.search(yarn.made_of) for yarn in pattern.yarns):
            add("loose hairs")
    return tuple(found)


def care_of(pattern: Pattern, words: Catalogue) -> tuple[str, ...]:
    """The care that the source states; else that of the fibres that its yarn lines name.

    Empty where it states none and names no fibre that asks for any.
    """
    if pattern.care is not None:
        stated = (*_stated(pattern.care, words), words.text(OTHER_YARN))
        return (" ".join(stated),)
    fibres = [yarn.made_of for yarn in pattern.yarns]
    lines = {row["name"]: row["line"] for row in table("fibre_care")}
    found = []
    if any(map(felts, fibres)):
        found.append(words.text(lines["wool"]))
    if any(map(is_acrylic, fibres)):
        found.append(words.text(lines["acrylic"]))
    return (*found, words.text(BALL_BAND)) if found else ()


def _stated(care: Care, words: Catalogue) -> list[str]:
    """The sentences of a ``care`` line, in the order of the international marks."""
    named = (care_named(part.text) for part in care.parts)
    found = sorted((phrase for phrase in named if phrase), key=lambda phrase: phrase.place)
    return [words.say(phrase.line, n=phrase.degrees) for phrase in found]


def _is_open(fill: Fill) -> bool:
    """Whether a fill makes holes that lie close: one in so few stitches, all along the row."""
    words = words_of((fill,))
    holes = sum(word.number(0) for word in words if word.stitch.word == "yo")
    return holes * _CLOSE >= sum(word.number(0) * word.stitch.makes for word in words) > 0


def _has_holes(pattern: Pattern) -> bool:
    """Whether the rows make a pattern of holes: yarn overs again and again, or fallen stitches."""
    for motif in pattern.motifs:
        written = tuple(step for row in motif.rows for step in row.body.steps)
        steps = words_of(written)
        if any(isinstance(step, Fill) and _is_open(step) for step in written):
            return True
        holes = sum(step.stitch.word == "yo" for step in steps)
        if holes >= _HOLES or any(step.stitch.kind == "drop" for step in steps):
            return True
    return False
