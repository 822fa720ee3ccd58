"""The methods of this room's dataclasses. Written by ``make records``."""

# ruff: noqa
# mypy: ignore-errors

UNSET = object()
put = object.__setattr__


def habits_answer_Answer(given):
    def __init__(self, message, help=given['help'], lines=given['lines'], certain=given['certain']):
        put(self, 'message', message)
        put(self, 'help', help)
        put(self, 'lines', lines)
        put(self, 'certain', certain)
    def __eq__(self, other):
        if other.__class__ is self.__class__:
            return (self.message, self.help, self.lines, self.certain) == (other.message, other.help, other.lines, other.certain)
        return NotImplemented
    def __hash__(self):
        return hash((self.message, self.help, self.lines, self.certain))
    return {'__init__': __init__, '__eq__': __eq__, '__hash__': __hash__}


def habits_answer_Reader(given):
    def __init__(self, reads, own=UNSET, motifs=given['motifs']):
        put(self, 'reads', reads)
        put(self, 'own', given['own']() if own is UNSET else own)
        put(self, 'motifs', motifs)
    def __eq__(self, other):
        if other.__class__ is self.__class__:
            return (self.reads, self.own, self.motifs) == (other.reads, other.own, other.motifs)
        return NotImplemented
    def __hash__(self):
        return hash((self.reads, self.own, self.motifs))
    return {'__init__': __init__, '__eq__': __eq__, '__hash__': __hash__}


def habits_body__Reading(given):
    def __init__(self, text, own, at=given['at'], habits=UNSET, certain=given['certain'], claim=given['claim']):
        self.text = text
        self.own = own
        self.at = at
        self.habits = given['habits']() if habits is UNSET else habits
        self.certain = certain
        self.claim = claim
    def __eq__(self, other):
        if other.__class__ is self.__class__:
            return (self.text, self.own, self.at, self.habits, self.certain, self.claim) == (other.text, other.own, other.at, other.habits, other.certain, other.claim)
        return NotImplemented
    return {'__init__': __init__, '__eq__': __eq__}


def habits_heads_Head(given):
    def __init__(self, text, rest, habits, certain, given=given['given']):
        put(self, 'text', text)
        put(self, 'rest', rest)
        put(self, 'habits', habits)
        put(self, 'certain', certain)
        put(self, 'given', given)
    def __eq__(self, other):
        if other.__class__ is self.__class__:
            return (self.text, self.rest, self.habits, self.certain, self.given) == (other.text, other.rest, other.habits, other.certain, other.given)
        return NotImplemented
    def __hash__(self):
        return hash((self.text, self.rest, self.habits, self.certain, self.given))
    return {'__init__': __init__, '__eq__': __eq__, '__hash__': __hash__}


def habits_lines_LineHabit(given):
    def __init__(self, shape, answer):
        put(self, 'shape', shape)
        put(self, 'answer', answer)
    def __eq__(self, other):
        if other.__class__ is self.__class__:
            return (self.shape, self.answer) == (other.shape, other.answer)
        return NotImplemented
    def __hash__(self):
        return hash((self.shape, self.answer))
    return {'__init__': __init__, '__eq__': __eq__, '__hash__': __hash__}


def habits_printed_Step(given):
    def __init__(self, text, takes, kind=given['kind'], last=given['last'], to_marker=given['to_marker'], other=given['other'], readings=given['readings']):
        put(self, 'text', text)
        put(self, 'takes', takes)
        put(self, 'kind', kind)
        put(self, 'last', last)
        put(self, 'to_marker', to_marker)
        put(self, 'other', other)
        put(self, 'readings', readings)
    def __eq__(self, other):
        if other.__class__ is self.__class__:
            return (self.text, self.takes, self.kind, self.last, self.to_marker, self.other, self.readings) == (other.text, other.takes, other.kind, other.last, other.to_marker, other.other, other.readings)
        return NotImplemented
    def __hash__(self):
        return hash((self.text, self.takes, self.kind, self.last, self.to_marker, self.other, self.readings))
    return {'__init__': __init__, '__eq__': __eq__, '__hash__': __hash__}


def habits_printed_Body(given):
    def __init__(self, texts, readings, habits, certain):
        put(self, 'texts', texts)
        put(self, 'readings', readings)
        put(self, 'habits', habits)
        put(self, 'certain', certain)
    def __eq__(self, other):
        if other.__class__ is self.__class__:
            return (self.texts, self.readings, self.habits, self.certain) == (other.texts, other.readings, other.habits, other.certain)
        return NotImplemented
    def __hash__(self):
        return hash((self.texts, self.readings, self.habits, self.certain))
    return {'__init__': __init__, '__eq__': __eq__, '__hash__': __hash__}


def habits_steps_Phrase(given):
    def __init__(self, shape, read):
        put(self, 'shape', shape)
        put(self, 'read', read)
    def __eq__(self, other):
        if other.__class__ is self.__class__:
            return (self.shape, self.read) == (other.shape, other.read)
        return NotImplemented
    def __hash__(self):
        return hash((self.shape, self.read))
    return {'__init__': __init__, '__eq__': __eq__, '__hash__': __hash__}


def parse_Parsed(given):
    def __init__(self, source, lines, problems, recovered, size_lists):
        put(self, 'source', source)
        put(self, 'lines', lines)
        put(self, 'problems', problems)
        put(self, 'recovered', recovered)
        put(self, 'size_lists', size_lists)
    def __eq__(self, other):
        if other.__class__ is self.__class__:
            return (self.source, self.lines, self.problems, self.recovered, self.size_lists) == (other.source, other.lines, other.problems, other.recovered, other.size_lists)
        return NotImplemented
    def __hash__(self):
        return hash((self.source, self.lines, self.problems, self.recovered, self.size_lists))
    return {'__init__': __init__, '__eq__': __eq__, '__hash__': __hash__}


def parse__Read(given):
    def __init__(self, statement, slips, size_lists):
        put(self, 'statement', statement)
        put(self, 'slips', slips)
        put(self, 'size_lists', size_lists)
    def __eq__(self, other):
        if other.__class__ is self.__class__:
            return (self.statement, self.slips, self.size_lists) == (other.statement, other.slips, other.size_lists)
        return NotImplemented
    def __hash__(self):
        return hash((self.statement, self.slips, self.size_lists))
    return {'__init__': __init__, '__eq__': __eq__, '__hash__': __hash__}


def quantity_Quantity(given):
    def __init__(self, values, unit, span):
        put(self, 'values', values)
        put(self, 'unit', unit)
        put(self, 'span', span)
    def __eq__(self, other):
        if other.__class__ is self.__class__:
            return (self.values, self.unit, self.span) == (other.values, other.unit, other.span)
        return NotImplemented
    def __hash__(self):
        return hash((self.values, self.unit, self.span))
    return {'__init__': __init__, '__eq__': __eq__, '__hash__': __hash__}


def source_Span(given):
    def __init__(self, start, end):
        put(self, 'start', start)
        put(self, 'end', end)
    def __eq__(self, other):
        if other.__class__ is self.__class__:
            return (self.start, self.end) == (other.start, other.end)
        return NotImplemented
    def __hash__(self):
        return hash((self.start, self.end))
    def __lt__(self, other):
        if other.__class__ is self.__class__:
            return (self.start, self.end) < (other.start, other.end)
        return NotImplemented
    def __le__(self, other):
        if other.__class__ is self.__class__:
            return (self.start, self.end) <= (other.start, other.end)
        return NotImplemented
    def __gt__(self, other):
        if other.__class__ is self.__class__:
            return (self.start, self.end) > (other.start, other.end)
        return NotImplemented
    def __ge__(self, other):
        if other.__class__ is self.__class__:
            return (self.start, self.end) >= (other.start, other.end)
        return NotImplemented
    return {'__init__': __init__, '__eq__': __eq__, '__hash__': __hash__, '__lt__': __lt__, '__le__': __le__, '__gt__': __gt__, '__ge__': __ge__}


def source_Source(given):
    def __init__(self, name, text, line_starts):
        put(self, 'name', name)
        put(self, 'text', text)
        put(self, 'line_starts', line_starts)
    def __eq__(self, other):
        if other.__class__ is self.__class__:
            return (self.name, self.text, self.line_starts) == (other.name, other.text, other.line_starts)
        return NotImplemented
    def __hash__(self):
        return hash((self.name, self.text, self.line_starts))
    return {'__init__': __init__, '__eq__': __eq__, '__hash__': __hash__}


def tree_Placed(given):
    def __init__(self, line, base, statement):
        put(self, 'line', line)
        put(self, 'base', base)
        put(self, 'statement', statement)
    def __eq__(self, other):
        if other.__class__ is self.__class__:
            return (self.line, self.base, self.statement) == (other.line, other.base, other.statement)
        return NotImplemented
    def __hash__(self):
        return hash((self.line, self.base, self.statement))
    return {'__init__': __init__, '__eq__': __eq__, '__hash__': __hash__}


def tree_header_PatternLine(given):
    def __init__(self, title, span):
        put(self, 'title', title)
        put(self, 'span', span)
    def __eq__(self, other):
        if other.__class__ is self.__class__:
            return (self.title, self.span) == (other.title, other.span)
        return NotImplemented
    def __hash__(self):
        return hash((self.title, self.span))
    return {'__init__': __init__, '__eq__': __eq__, '__hash__': __hash__}


def tree_header_TextLine(given):
    def __init__(self, kind, text, span):
        put(self, 'kind', kind)
        put(self, 'text', text)
        put(self, 'span', span)
    def __eq__(self, other):
        if other.__class__ is self.__class__:
            return (self.kind, self.text, self.span) == (other.kind, other.text, other.span)
        return NotImplemented
    def __hash__(self):
        return hash((self.kind, self.text, self.span))
    return {'__init__': __init__, '__eq__': __eq__, '__hash__': __hash__}


def tree_header_LevelLine(given):
    def __init__(self, level, span):
        put(self, 'level', level)
        put(self, 'span', span)
    def __eq__(self, other):
        if other.__class__ is self.__class__:
            return (self.level, self.span) == (other.level, other.span)
        return NotImplemented
    def __hash__(self):
        return hash((self.level, self.span))
    return {'__init__': __init__, '__eq__': __eq__, '__hash__': __hash__}


def tree_header_CareLine(given):
    def __init__(self, parts, span):
        put(self, 'parts', parts)
        put(self, 'span', span)
    def __eq__(self, other):
        if other.__class__ is self.__class__:
            return (self.parts, self.span) == (other.parts, other.span)
        return NotImplemented
    def __hash__(self):
        return hash((self.parts, self.span))
    return {'__init__': __init__, '__eq__': __eq__, '__hash__': __hash__}


def tree_header_SizesLine(given):
    def __init__(self, names, span):
        put(self, 'names', names)
        put(self, 'span', span)
    def __eq__(self, other):
        if other.__class__ is self.__class__:
            return (self.names, self.span) == (other.names, other.span)
        return NotImplemented
    def __hash__(self):
        return hash((self.names, self.span))
    return {'__init__': __init__, '__eq__': __eq__, '__hash__': __hash__}


def tree_header_MeasureLine(given):
    def __init__(self, kind, quantity, span):
        put(self, 'kind', kind)
        put(self, 'quantity', quantity)
        put(self, 'span', span)
    def __eq__(self, other):
        if other.__class__ is self.__class__:
            return (self.kind, self.quantity, self.span) == (other.kind, other.quantity, other.span)
        return NotImplemented
    def __hash__(self):
        return hash((self.kind, self.quantity, self.span))
    return {'__init__': __init__, '__eq__': __eq__, '__hash__': __hash__}


def tree_header_GaugeLine(given):
    def __init__(self, stitches, rows, over, fabric, needle, worked, blocking, span):
        put(self, 'stitches', stitches)
        put(self, 'rows', rows)
        put(self, 'over', over)
        put(self, 'fabric', fabric)
        put(self, 'needle', needle)
        put(self, 'worked', worked)
        put(self, 'blocking', blocking)
        put(self, 'span', span)
    def __eq__(self, other):
        if other.__class__ is self.__class__:
            return (self.stitches, self.rows, self.over, self.fabric, self.needle, self.worked, self.blocking, self.span) == (other.stitches, other.rows, other.over, other.fabric, other.needle, other.worked, other.blocking, other.span)
        return NotImplemented
    def __hash__(self):
        return hash((self.stitches, self.rows, self.over, self.fabric, self.needle, self.worked, self.blocking, self.span))
    return {'__init__': __init__, '__eq__': __eq__, '__hash__': __hash__}


def tree_header_SwatchLine(given):
    def __init__(self, stitches, rows, weight, width, height, fabric, span):
        put(self, 'stitches', stitches)
        put(self, 'rows', rows)
        put(self, 'weight', weight)
        put(self, 'width', width)
        put(self, 'height', height)
        put(self, 'fabric', fabric)
        put(self, 'span', span)
    def __eq__(self, other):
        if other.__class__ is self.__class__:
            return (self.stitches, self.rows, self.weight, self.width, self.height, self.fabric, self.span) == (other.stitches, other.rows, other.weight, other.width, other.height, other.fabric, other.span)
        return NotImplemented
    def __hash__(self):
        return hash((self.stitches, self.rows, self.weight, self.width, self.height, self.fabric, self.span))
    return {'__init__': __init__, '__eq__': __eq__, '__hash__': __hash__}


def tree_header_NeedleLine(given):
    def __init__(self, kind, size, length, span):
        put(self, 'kind', kind)
        put(self, 'size', size)
        put(self, 'length', length)
        put(self, 'span', span)
    def __eq__(self, other):
        if other.__class__ is self.__class__:
            return (self.kind, self.size, self.length, self.span) == (other.kind, other.size, other.length, other.span)
        return NotImplemented
    def __hash__(self):
        return hash((self.kind, self.size, self.length, self.span))
    return {'__init__': __init__, '__eq__': __eq__, '__hash__': __hash__}


def tree_header_BoundLine(given):
    def __init__(self, kind, number, span):
        put(self, 'kind', kind)
        put(self, 'number', number)
        put(self, 'span', span)
    def __eq__(self, other):
        if other.__class__ is self.__class__:
            return (self.kind, self.number, self.span) == (other.kind, other.number, other.span)
        return NotImplemented
    def __hash__(self):
        return hash((self.kind, self.number, self.span))
    return {'__init__': __init__, '__eq__': __eq__, '__hash__': __hash__}


def tree_header_JoinByLine(given):
    def __init__(self, method, tail, span):
        put(self, 'method', method)
        put(self, 'tail', tail)
        put(self, 'span', span)
    def __eq__(self, other):
        if other.__class__ is self.__class__:
            return (self.method, self.tail, self.span) == (other.method, other.tail, other.span)
        return NotImplemented
    def __hash__(self):
        return hash((self.method, self.tail, self.span))
    return {'__init__': __init__, '__eq__': __eq__, '__hash__': __hash__}


def tree_materials_YarnLine(given):
    def __init__(self, name, text, quantities, weight, fibre, span):
        put(self, 'name', name)
        put(self, 'text', text)
        put(self, 'quantities', quantities)
        put(self, 'weight', weight)
        put(self, 'fibre', fibre)
        put(self, 'span', span)
    def __eq__(self, other):
        if other.__class__ is self.__class__:
            return (self.name, self.text, self.quantities, self.weight, self.fibre, self.span) == (other.name, other.text, other.quantities, other.weight, other.fibre, other.span)
        return NotImplemented
    def __hash__(self):
        return hash((self.name, self.text, self.quantities, self.weight, self.fibre, self.span))
    return {'__init__': __init__, '__eq__': __eq__, '__hash__': __hash__}


def tree_materials_Stripe(given):
    def __init__(self, colour, length, span):
        put(self, 'colour', colour)
        put(self, 'length', length)
        put(self, 'span', span)
    def __eq__(self, other):
        if other.__class__ is self.__class__:
            return (self.colour, self.length, self.span) == (other.colour, other.length, other.span)
        return NotImplemented
    def __hash__(self):
        return hash((self.colour, self.length, self.span))
    return {'__init__': __init__, '__eq__': __eq__, '__hash__': __hash__}


def tree_materials_ShadeLine(given):
    def __init__(self, name, text, yarn, colour, stripes, span):
        put(self, 'name', name)
        put(self, 'text', text)
        put(self, 'yarn', yarn)
        put(self, 'colour', colour)
        put(self, 'stripes', stripes)
        put(self, 'span', span)
    def __eq__(self, other):
        if other.__class__ is self.__class__:
            return (self.name, self.text, self.yarn, self.colour, self.stripes, self.span) == (other.name, other.text, other.yarn, other.colour, other.stripes, other.span)
        return NotImplemented
    def __hash__(self):
        return hash((self.name, self.text, self.yarn, self.colour, self.stripes, self.span))
    return {'__init__': __init__, '__eq__': __eq__, '__hash__': __hash__}


def tree_materials_Feed(given):
    def __init__(self, shade, half, amount, balls, span):
        put(self, 'shade', shade)
        put(self, 'half', half)
        put(self, 'amount', amount)
        put(self, 'balls', balls)
        put(self, 'span', span)
    def __eq__(self, other):
        if other.__class__ is self.__class__:
            return (self.shade, self.half, self.amount, self.balls, self.span) == (other.shade, other.half, other.amount, other.balls, other.span)
        return NotImplemented
    def __hash__(self):
        return hash((self.shade, self.half, self.amount, self.balls, self.span))
    return {'__init__': __init__, '__eq__': __eq__, '__hash__': __hash__}


def tree_materials_StrandLine(given):
    def __init__(self, name, feeds, span):
        put(self, 'name', name)
        put(self, 'feeds', feeds)
        put(self, 'span', span)
    def __eq__(self, other):
        if other.__class__ is self.__class__:
            return (self.name, self.feeds, self.span) == (other.name, other.feeds, other.span)
        return NotImplemented
    def __hash__(self):
        return hash((self.name, self.feeds, self.span))
    return {'__init__': __init__, '__eq__': __eq__, '__hash__': __hash__}


def tree_materials_StitchLine(given):
    def __init__(self, name, text, takes, makes, eats, how, span):
        put(self, 'name', name)
        put(self, 'text', text)
        put(self, 'takes', takes)
        put(self, 'makes', makes)
        put(self, 'eats', eats)
        put(self, 'how', how)
        put(self, 'span', span)
    def __eq__(self, other):
        if other.__class__ is self.__class__:
            return (self.name, self.text, self.takes, self.makes, self.eats, self.how, self.span) == (other.name, other.text, other.takes, other.makes, other.eats, other.how, other.span)
        return NotImplemented
    def __hash__(self):
        return hash((self.name, self.text, self.takes, self.makes, self.eats, self.how, self.span))
    return {'__init__': __init__, '__eq__': __eq__, '__hash__': __hash__}


def tree_pieces_PieceLine(given):
    def __init__(self, name, in_round, starts_ws, span):
        put(self, 'name', name)
        put(self, 'in_round', in_round)
        put(self, 'starts_ws', starts_ws)
        put(self, 'span', span)
    def __eq__(self, other):
        if other.__class__ is self.__class__:
            return (self.name, self.in_round, self.starts_ws, self.span) == (other.name, other.in_round, other.starts_ws, other.span)
        return NotImplemented
    def __hash__(self):
        return hash((self.name, self.in_round, self.starts_ws, self.span))
    return {'__init__': __init__, '__eq__': __eq__, '__hash__': __hash__}


def tree_pieces_CastOnLine(given):
    def __init__(self, count, strand, method, span, more=given['more']):
        put(self, 'count', count)
        put(self, 'strand', strand)
        put(self, 'method', method)
        put(self, 'span', span)
        put(self, 'more', more)
    def __eq__(self, other):
        if other.__class__ is self.__class__:
            return (self.count, self.strand, self.method, self.span, self.more) == (other.count, other.strand, other.method, other.span, other.more)
        return NotImplemented
    def __hash__(self):
        return hash((self.count, self.strand, self.method, self.span, self.more))
    return {'__init__': __init__, '__eq__': __eq__, '__hash__': __hash__}


def tree_pieces_BindOffLine(given):
    def __init__(self, strand, method, span):
        put(self, 'strand', strand)
        put(self, 'method', method)
        put(self, 'span', span)
    def __eq__(self, other):
        if other.__class__ is self.__class__:
            return (self.strand, self.method, self.span) == (other.strand, other.method, other.span)
        return NotImplemented
    def __hash__(self):
        return hash((self.strand, self.method, self.span))
    return {'__init__': __init__, '__eq__': __eq__, '__hash__': __hash__}


def tree_pieces_Times(given):
    def __init__(self, count, span):
        put(self, 'count', count)
        put(self, 'span', span)
    def __eq__(self, other):
        if other.__class__ is self.__class__:
            return (self.count, self.span) == (other.count, other.span)
        return NotImplemented
    def __hash__(self):
        return hash((self.count, self.span))
    return {'__init__': __init__, '__eq__': __eq__, '__hash__': __hash__}


def tree_pieces_ForRows(given):
    def __init__(self, rows, span):
        put(self, 'rows', rows)
        put(self, 'span', span)
    def __eq__(self, other):
        if other.__class__ is self.__class__:
            return (self.rows, self.span) == (other.rows, other.span)
        return NotImplemented
    def __hash__(self):
        return hash((self.rows, self.span))
    return {'__init__': __init__, '__eq__': __eq__, '__hash__': __hash__}


def tree_pieces_ToLength(given):
    def __init__(self, measure, sign, rows_off, measure_off, span):
        put(self, 'measure', measure)
        put(self, 'sign', sign)
        put(self, 'rows_off', rows_off)
        put(self, 'measure_off', measure_off)
        put(self, 'span', span)
    def __eq__(self, other):
        if other.__class__ is self.__class__:
            return (self.measure, self.sign, self.rows_off, self.measure_off, self.span) == (other.measure, other.sign, other.rows_off, other.measure_off, other.span)
        return NotImplemented
    def __hash__(self):
        return hash((self.measure, self.sign, self.rows_off, self.measure_off, self.span))
    return {'__init__': __init__, '__eq__': __eq__, '__hash__': __hash__}


def tree_pieces_UntilStitches(given):
    def __init__(self, count, span):
        put(self, 'count', count)
        put(self, 'span', span)
    def __eq__(self, other):
        if other.__class__ is self.__class__:
            return (self.count, self.span) == (other.count, other.span)
        return NotImplemented
    def __hash__(self):
        return hash((self.count, self.span))
    return {'__init__': __init__, '__eq__': __eq__, '__hash__': __hash__}


def tree_pieces_UntilSpent(given):
    def __init__(self, strand, keep, span):
        put(self, 'strand', strand)
        put(self, 'keep', keep)
        put(self, 'span', span)
    def __eq__(self, other):
        if other.__class__ is self.__class__:
            return (self.strand, self.keep, self.span) == (other.strand, other.keep, other.span)
        return NotImplemented
    def __hash__(self):
        return hash((self.strand, self.keep, self.span))
    return {'__init__': __init__, '__eq__': __eq__, '__hash__': __hash__}


def tree_pieces_WorkLine(given):
    def __init__(self, motif, amount, span):
        put(self, 'motif', motif)
        put(self, 'amount', amount)
        put(self, 'span', span)
    def __eq__(self, other):
        if other.__class__ is self.__class__:
            return (self.motif, self.amount, self.span) == (other.motif, other.amount, other.span)
        return NotImplemented
    def __hash__(self):
        return hash((self.motif, self.amount, self.span))
    return {'__init__': __init__, '__eq__': __eq__, '__hash__': __hash__}


def tree_pieces_JoinLine(given):
    def __init__(self, names, span):
        put(self, 'names', names)
        put(self, 'span', span)
    def __eq__(self, other):
        if other.__class__ is self.__class__:
            return (self.names, self.span) == (other.names, other.span)
        return NotImplemented
    def __hash__(self):
        return hash((self.names, self.span))
    return {'__init__': __init__, '__eq__': __eq__, '__hash__': __hash__}


def tree_pieces_HoldLine(given):
    def __init__(self, count, name, span):
        put(self, 'count', count)
        put(self, 'name', name)
        put(self, 'span', span)
    def __eq__(self, other):
        if other.__class__ is self.__class__:
            return (self.count, self.name, self.span) == (other.count, other.name, other.span)
        return NotImplemented
    def __hash__(self):
        return hash((self.count, self.name, self.span))
    return {'__init__': __init__, '__eq__': __eq__, '__hash__': __hash__}


def tree_pieces_TakeLine(given):
    def __init__(self, names, span):
        put(self, 'names', names)
        put(self, 'span', span)
    def __eq__(self, other):
        if other.__class__ is self.__class__:
            return (self.names, self.span) == (other.names, other.span)
        return NotImplemented
    def __hash__(self):
        return hash((self.names, self.span))
    return {'__init__': __init__, '__eq__': __eq__, '__hash__': __hash__}


def tree_pieces_PickLine(given):
    def __init__(self, count, strand, edge, span):
        put(self, 'count', count)
        put(self, 'strand', strand)
        put(self, 'edge', edge)
        put(self, 'span', span)
    def __eq__(self, other):
        if other.__class__ is self.__class__:
            return (self.count, self.strand, self.edge, self.span) == (other.count, other.strand, other.edge, other.span)
        return NotImplemented
    def __hash__(self):
        return hash((self.count, self.strand, self.edge, self.span))
    return {'__init__': __init__, '__eq__': __eq__, '__hash__': __hash__}


def tree_pieces_LeaveLine(given):
    def __init__(self, live, text, span):
        put(self, 'live', live)
        put(self, 'text', text)
        put(self, 'span', span)
    def __eq__(self, other):
        if other.__class__ is self.__class__:
            return (self.live, self.text, self.span) == (other.live, other.text, other.span)
        return NotImplemented
    def __hash__(self):
        return hash((self.live, self.text, self.span))
    return {'__init__': __init__, '__eq__': __eq__, '__hash__': __hash__}


def tree_pieces_BeginLine(given):
    def __init__(self, count, span):
        put(self, 'count', count)
        put(self, 'span', span)
    def __eq__(self, other):
        if other.__class__ is self.__class__:
            return (self.count, self.span) == (other.count, other.span)
        return NotImplemented
    def __hash__(self):
        return hash((self.count, self.span))
    return {'__init__': __init__, '__eq__': __eq__, '__hash__': __hash__}


def tree_pieces_SpreadLine(given):
    def __init__(self, change, times, plain, over, span):
        put(self, 'change', change)
        put(self, 'times', times)
        put(self, 'plain', plain)
        put(self, 'over', over)
        put(self, 'span', span)
    def __eq__(self, other):
        if other.__class__ is self.__class__:
            return (self.change, self.times, self.plain, self.over, self.span) == (other.change, other.times, other.plain, other.over, other.span)
        return NotImplemented
    def __hash__(self):
        return hash((self.change, self.times, self.plain, self.over, self.span))
    return {'__init__': __init__, '__eq__': __eq__, '__hash__': __hash__}


def tree_rows_Word(given):
    def __init__(self, text, modifiers, span):
        put(self, 'text', text)
        put(self, 'modifiers', modifiers)
        put(self, 'span', span)
    def __eq__(self, other):
        if other.__class__ is self.__class__:
            return (self.text, self.modifiers, self.span) == (other.text, other.modifiers, other.span)
        return NotImplemented
    def __hash__(self):
        return hash((self.text, self.modifiers, self.span))
    return {'__init__': __init__, '__eq__': __eq__, '__hash__': __hash__}


def tree_rows_GroupOf(given):
    def __init__(self, steps, times, into, span):
        put(self, 'steps', steps)
        put(self, 'times', times)
        put(self, 'into', into)
        put(self, 'span', span)
    def __eq__(self, other):
        if other.__class__ is self.__class__:
            return (self.steps, self.times, self.into, self.span) == (other.steps, other.times, other.into, other.span)
        return NotImplemented
    def __hash__(self):
        return hash((self.steps, self.times, self.into, self.span))
    return {'__init__': __init__, '__eq__': __eq__, '__hash__': __hash__}


def tree_rows_FillOf(given):
    def __init__(self, steps, span):
        put(self, 'steps', steps)
        put(self, 'span', span)
    def __eq__(self, other):
        if other.__class__ is self.__class__:
            return (self.steps, self.span) == (other.steps, other.span)
        return NotImplemented
    def __hash__(self):
        return hash((self.steps, self.span))
    return {'__init__': __init__, '__eq__': __eq__, '__hash__': __hash__}


def tree_rows_Special(given):
    def __init__(self, kind, count, name, span):
        put(self, 'kind', kind)
        put(self, 'count', count)
        put(self, 'name', name)
        put(self, 'span', span)
    def __eq__(self, other):
        if other.__class__ is self.__class__:
            return (self.kind, self.count, self.name, self.span) == (other.kind, other.count, other.name, other.span)
        return NotImplemented
    def __hash__(self):
        return hash((self.kind, self.count, self.name, self.span))
    return {'__init__': __init__, '__eq__': __eq__, '__hash__': __hash__}


def tree_rows_EvenlyOf(given):
    def __init__(self, word, count, span):
        put(self, 'word', word)
        put(self, 'count', count)
        put(self, 'span', span)
    def __eq__(self, other):
        if other.__class__ is self.__class__:
            return (self.word, self.count, self.span) == (other.word, other.count, other.span)
        return NotImplemented
    def __hash__(self):
        return hash((self.word, self.count, self.span))
    return {'__init__': __init__, '__eq__': __eq__, '__hash__': __hash__}


def tree_rows_Steps(given):
    def __init__(self, steps, span):
        put(self, 'steps', steps)
        put(self, 'span', span)
    def __eq__(self, other):
        if other.__class__ is self.__class__:
            return (self.steps, self.span) == (other.steps, other.span)
        return NotImplemented
    def __hash__(self):
        return hash((self.steps, self.span))
    return {'__init__': __init__, '__eq__': __eq__, '__hash__': __hash__}


def tree_rows_Whole(given):
    def __init__(self, word, span):
        put(self, 'word', word)
        put(self, 'span', span)
    def __eq__(self, other):
        if other.__class__ is self.__class__:
            return (self.word, self.span) == (other.word, other.span)
        return NotImplemented
    def __hash__(self):
        return hash((self.word, self.span))
    return {'__init__': __init__, '__eq__': __eq__, '__hash__': __hash__}


def tree_rows_AsRow(given):
    def __init__(self, number, span):
        put(self, 'number', number)
        put(self, 'span', span)
    def __eq__(self, other):
        if other.__class__ is self.__class__:
            return (self.number, self.span) == (other.number, other.span)
        return NotImplemented
    def __hash__(self):
        return hash((self.number, self.span))
    return {'__init__': __init__, '__eq__': __eq__, '__hash__': __hash__}


def tree_rows_Claim(given):
    def __init__(self, sign, count, span):
        put(self, 'sign', sign)
        put(self, 'count', count)
        put(self, 'span', span)
    def __eq__(self, other):
        if other.__class__ is self.__class__:
            return (self.sign, self.count, self.span) == (other.sign, other.count, other.span)
        return NotImplemented
    def __hash__(self):
        return hash((self.sign, self.count, self.span))
    return {'__init__': __init__, '__eq__': __eq__, '__hash__': __hash__}


def tree_rows_Form(given):
    def __init__(self, unit, fixed, span):
        put(self, 'unit', unit)
        put(self, 'fixed', fixed)
        put(self, 'span', span)
    def __eq__(self, other):
        if other.__class__ is self.__class__:
            return (self.unit, self.fixed, self.span) == (other.unit, other.fixed, other.span)
        return NotImplemented
    def __hash__(self):
        return hash((self.unit, self.fixed, self.span))
    return {'__init__': __init__, '__eq__': __eq__, '__hash__': __hash__}


def tree_rows_MotifLine(given):
    def __init__(self, name, form, starts_ws, in_round, span):
        put(self, 'name', name)
        put(self, 'form', form)
        put(self, 'starts_ws', starts_ws)
        put(self, 'in_round', in_round)
        put(self, 'span', span)
    def __eq__(self, other):
        if other.__class__ is self.__class__:
            return (self.name, self.form, self.starts_ws, self.in_round, self.span) == (other.name, other.form, other.starts_ws, other.in_round, other.span)
        return NotImplemented
    def __hash__(self):
        return hash((self.name, self.form, self.starts_ws, self.in_round, self.span))
    return {'__init__': __init__, '__eq__': __eq__, '__hash__': __hash__}


def tree_rows_EdgeLine(given):
    def __init__(self, count, kind, span):
        put(self, 'count', count)
        put(self, 'kind', kind)
        put(self, 'span', span)
    def __eq__(self, other):
        if other.__class__ is self.__class__:
            return (self.count, self.kind, self.span) == (other.count, other.kind, other.span)
        return NotImplemented
    def __hash__(self):
        return hash((self.count, self.kind, self.span))
    return {'__init__': __init__, '__eq__': __eq__, '__hash__': __hash__}


def tree_rows_RowSpan(given):
    def __init__(self, first, last, span):
        put(self, 'first', first)
        put(self, 'last', last)
        put(self, 'span', span)
    def __eq__(self, other):
        if other.__class__ is self.__class__:
            return (self.first, self.last, self.span) == (other.first, other.last, other.span)
        return NotImplemented
    def __hash__(self):
        return hash((self.first, self.last, self.span))
    return {'__init__': __init__, '__eq__': __eq__, '__hash__': __hash__}


def tree_rows_RowLine(given):
    def __init__(self, plural, round, every, numbers, strand, body, claim, span):
        put(self, 'plural', plural)
        put(self, 'round', round)
        put(self, 'every', every)
        put(self, 'numbers', numbers)
        put(self, 'strand', strand)
        put(self, 'body', body)
        put(self, 'claim', claim)
        put(self, 'span', span)
    def __eq__(self, other):
        if other.__class__ is self.__class__:
            return (self.plural, self.round, self.every, self.numbers, self.strand, self.body, self.claim, self.span) == (other.plural, other.round, other.every, other.numbers, other.strand, other.body, other.claim, other.span)
        return NotImplemented
    def __hash__(self):
        return hash((self.plural, self.round, self.every, self.numbers, self.strand, self.body, self.claim, self.span))
    return {'__init__': __init__, '__eq__': __eq__, '__hash__': __hash__}


def tree_values_Name(given):
    def __init__(self, text, span):
        put(self, 'text', text)
        put(self, 'span', span)
    def __eq__(self, other):
        if other.__class__ is self.__class__:
            return (self.text, self.span) == (other.text, other.span)
        return NotImplemented
    def __hash__(self):
        return hash((self.text, self.span))
    return {'__init__': __init__, '__eq__': __eq__, '__hash__': __hash__}


def tree_values_Text(given):
    def __init__(self, text, span):
        put(self, 'text', text)
        put(self, 'span', span)
    def __eq__(self, other):
        if other.__class__ is self.__class__:
            return (self.text, self.span) == (other.text, other.span)
        return NotImplemented
    def __hash__(self):
        return hash((self.text, self.span))
    return {'__init__': __init__, '__eq__': __eq__, '__hash__': __hash__}


def tree_values_Count(given):
    def __init__(self, values, span):
        put(self, 'values', values)
        put(self, 'span', span)
    def __eq__(self, other):
        if other.__class__ is self.__class__:
            return (self.values, self.span) == (other.values, other.span)
        return NotImplemented
    def __hash__(self):
        return hash((self.values, self.span))
    return {'__init__': __init__, '__eq__': __eq__, '__hash__': __hash__}


RECORDS = {
    "habits.answer.Answer": ("fe: message help= lines= certain=", habits_answer_Answer),
    "habits.answer.Reader": ("fe: reads own~default_factory motifs=", habits_answer_Reader),
    "habits.body._Reading": ("e: text own at= habits~default_factory certain= claim=", habits_body__Reading),
    "habits.heads.Head": ("fe: text rest habits certain given=", habits_heads_Head),
    "habits.lines.LineHabit": ("fe: shape answer", habits_lines_LineHabit),
    "habits.printed.Step": ("fe: text takes kind= last= to_marker= other= readings=", habits_printed_Step),
    "habits.printed.Body": ("fe: texts readings habits certain", habits_printed_Body),
    "habits.steps.Phrase": ("fe: shape read", habits_steps_Phrase),
    "parse.Parsed": ("fe: source lines problems recovered size_lists", parse_Parsed),
    "parse._Read": ("fe: statement slips size_lists", parse__Read),
    "quantity.Quantity": ("fe: values unit span", quantity_Quantity),
    "source.Span": ("feo: start end", source_Span),
    "source.Source": ("fe: name text line_starts~repr", source_Source),
    "tree.Placed": ("fe: line base statement", tree_Placed),
    "tree_header.PatternLine": ("fe: title span", tree_header_PatternLine),
    "tree_header.TextLine": ("fe: kind text span", tree_header_TextLine),
    "tree_header.LevelLine": ("fe: level span", tree_header_LevelLine),
    "tree_header.CareLine": ("fe: parts span", tree_header_CareLine),
    "tree_header.SizesLine": ("fe: names span", tree_header_SizesLine),
    "tree_header.MeasureLine": ("fe: kind quantity span", tree_header_MeasureLine),
    "tree_header.GaugeLine": ("fe: stitches rows over fabric needle worked blocking span", tree_header_GaugeLine),
    "tree_header.SwatchLine": ("fe: stitches rows weight width height fabric span", tree_header_SwatchLine),
    "tree_header.NeedleLine": ("fe: kind size length span", tree_header_NeedleLine),
    "tree_header.BoundLine": ("fe: kind number span", tree_header_BoundLine),
    "tree_header.JoinByLine": ("fe: method tail span", tree_header_JoinByLine),
    "tree_materials.YarnLine": ("fe: name text quantities weight fibre span", tree_materials_YarnLine),
    "tree_materials.Stripe": ("fe: colour length span", tree_materials_Stripe),
    "tree_materials.ShadeLine": ("fe: name text yarn colour stripes span", tree_materials_ShadeLine),
    "tree_materials.Feed": ("fe: shade half amount balls span", tree_materials_Feed),
    "tree_materials.StrandLine": ("fe: name feeds span", tree_materials_StrandLine),
    "tree_materials.StitchLine": ("fe: name text takes makes eats how span", tree_materials_StitchLine),
    "tree_pieces.PieceLine": ("fe: name in_round starts_ws span", tree_pieces_PieceLine),
    "tree_pieces.CastOnLine": ("fe: count strand method span more=", tree_pieces_CastOnLine),
    "tree_pieces.BindOffLine": ("fe: strand method span", tree_pieces_BindOffLine),
    "tree_pieces.Times": ("fe: count span", tree_pieces_Times),
    "tree_pieces.ForRows": ("fe: rows span", tree_pieces_ForRows),
    "tree_pieces.ToLength": ("fe: measure sign rows_off measure_off span", tree_pieces_ToLength),
    "tree_pieces.UntilStitches": ("fe: count span", tree_pieces_UntilStitches),
    "tree_pieces.UntilSpent": ("fe: strand keep span", tree_pieces_UntilSpent),
    "tree_pieces.WorkLine": ("fe: motif amount span", tree_pieces_WorkLine),
    "tree_pieces.JoinLine": ("fe: names span", tree_pieces_JoinLine),
    "tree_pieces.HoldLine": ("fe: count name span", tree_pieces_HoldLine),
    "tree_pieces.TakeLine": ("fe: names span", tree_pieces_TakeLine),
    "tree_pieces.PickLine": ("fe: count strand edge span", tree_pieces_PickLine),
    "tree_pieces.LeaveLine": ("fe: live text span", tree_pieces_LeaveLine),
    "tree_pieces.BeginLine": ("fe: count span", tree_pieces_BeginLine),
    "tree_pieces.SpreadLine": ("fe: change times plain over span", tree_pieces_SpreadLine),
    "tree_rows.Word": ("fe: text modifiers span", tree_rows_Word),
    "tree_rows.GroupOf": ("fe: steps times into span", tree_rows_GroupOf),
    "tree_rows.FillOf": ("fe: steps span", tree_rows_FillOf),
    "tree_rows.Special": ("fe: kind count name span", tree_rows_Special),
    "tree_rows.EvenlyOf": ("fe: word count span", tree_rows_EvenlyOf),
    "tree_rows.Steps": ("fe: steps span", tree_rows_Steps),
    "tree_rows.Whole": ("fe: word span", tree_rows_Whole),
    "tree_rows.AsRow": ("fe: number span", tree_rows_AsRow),
    "tree_rows.Claim": ("fe: sign count span", tree_rows_Claim),
    "tree_rows.Form": ("fe: unit fixed span", tree_rows_Form),
    "tree_rows.MotifLine": ("fe: name form starts_ws in_round span", tree_rows_MotifLine),
    "tree_rows.EdgeLine": ("fe: count kind span", tree_rows_EdgeLine),
    "tree_rows.RowSpan": ("fe: first last span", tree_rows_RowSpan),
    "tree_rows.RowLine": ("fe: plural round every numbers strand body claim span", tree_rows_RowLine),
    "tree_values.Name": ("fe: text span", tree_values_Name),
    "tree_values.Text": ("fe: text span", tree_values_Text),
    "tree_values.Count": ("fe: values span", tree_values_Count),
}
