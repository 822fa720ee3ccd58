"""A right pattern in which every text of the writer's can be any text at all.

`WRITTEN` has each place of the language where a text in quotes may stand; a test reads these places
out of the grammar, so that a new one without a case here fails.
"""

from __future__ import annotations

from collections.abc import Mapping

from lark import Lark

from loopwright.notation.grammar import grammar_text

EVIL = (
    "{{ 7*7 }} {% include 'x' %} {0} {name} %s %(x)s ${x} </script></style></title><script>x()"
    "</script><img src=x onerror=x()> ]]> --> ' & &amp; \\ <bdo dir=rtl> "
    "url(http://x.invalid/) javascript:x() [red]loud[/red] [link=file:///x]y[/link]"
)
"""What a page, a template, a picture or a terminal's markup might take for more than words."""

# Place (the rule or alias of the grammar, and the terminal its line begins with): the words before
# and behind the text.
WRITTEN = {
    ("pattern_line", "PATTERN"): "title",
    ("text_line", "DESIGNER"): "designer",
    ("text_line", "SUMMARY"): "summary",
    ("text_line", "NOTION"): "notion",
    ("text_line", "NOTE"): "note",
    ("text_line", "SECTION"): "section",
    ("size_name", "STRING"): "size",
    ("yarn_line", "YARN"): "yarn",
    ("fibre", "FIBRE"): "fibre",
    ("shade_line", "SHADE"): "shade",
    ("stitch_line", "STITCH"): "stitch",
    ("how", "STRING"): "how",
    ("leave_line", "LEAVE"): "live",
}
WORDS = ("NAME", "SIZE_NAME", "WORD")
"""The terminals of words without quotes; what characters they take is a test of its own."""


def places_of(terminal: str) -> set[tuple[str, str]]:
    """Where a terminal may stand, as the grammar has it now."""
    grammar = Lark(grammar_text(), start=["line", "source"], parser="lalr")
    return {
        (str(rule.alias or rule.origin.name), rule.expansion[0].name)
        for rule in grammar.rules
        if terminal in [symbol.name for symbol in rule.expansion]
    }


def terminals() -> dict[str, str]:
    """The grammar's terminals as expressions."""
    grammar = Lark(grammar_text(), start=["line", "source"], parser="lalr")
    return {terminal.name: terminal.pattern.to_regexp() for terminal in grammar.terminals}


def texts(text: str) -> dict[str, str]:
    """A text for each place, the same but for the place's own name in front."""
    return {place: f"{place} {text}" for place in WRITTEN.values()}


def source(told: Mapping[str, str], rows: int = 8) -> str:
    """A pattern with a text in every place. It checks without an error whatever they are."""
    return f"""pattern "{told["title"]}"
  designer "{told["designer"]}"
  summary "{told["summary"]}"
  level easy
  sizes "{told["size"]}", other
  width 30/40 cm
  length 20/30 cm
  gauge 20 stitches 30 rows = 10 cm on 4 mm
  notion "{told["notion"]}"
  note "before {told["note"]}"
yarn shore "{told["yarn"]}": 100 g 900 m, weight 4, fibre "{told["fibre"]}"
shade kelp "{told["shade"]}" of shore, colour #2f5d62
shade foam of shore, colour #dfe8e6
strand A feeds half kelp, kelp
strand B feeds foam, foam
stitch bob "{told["stitch"]}": takes 1, makes 1, yarn 5, "{told["how"]}"
motif waves over 2n + 4
  row 1 in B: k2 * bob k1 * k2
  row 2 in B: k2 * p2 * k2
  row 3 in A: k2 * k2 * k2
  row 4 in A: as row 2
piece cloth flat
  cast on 60/80 in A by long-tail
  work waves to length - {rows} rows
  section "{told["section"]}"
  note "{told["note"]}"
  rows {rows} in A: knit
  leave live "{told["live"]}"
"""


PLAIN = texts("plain words")
HOSTILE = texts(EVIL)
