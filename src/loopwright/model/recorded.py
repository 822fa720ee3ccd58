"""The methods of this room's dataclasses. Written by ``make records``."""

# ruff: noqa
# mypy: ignore-errors

UNSET = object()
put = object.__setattr__


def blocks_MotifBlock(given):
    def __init__(self, head, lines=UNSET):
        self.head = head
        self.lines = given['lines']() if lines is UNSET else lines
    def __eq__(self, other):
        if other.__class__ is self.__class__:
            return (self.head, self.lines) == (other.head, other.lines)
        return NotImplemented
    return {'__init__': __init__, '__eq__': __eq__}


def blocks_PieceBlock(given):
    def __init__(self, head, lines=UNSET):
        self.head = head
        self.lines = given['lines']() if lines is UNSET else lines
    def __eq__(self, other):
        if other.__class__ is self.__class__:
            return (self.head, self.lines) == (other.head, other.lines)
        return NotImplemented
    return {'__init__': __init__, '__eq__': __eq__}


def blocks_Blocks(given):
    def __init__(self, heads=UNSET, in_pattern=UNSET, singles=UNSET, motifs=UNSET, pieces=UNSET):
        self.heads = given['heads']() if heads is UNSET else heads
        self.in_pattern = given['in_pattern']() if in_pattern is UNSET else in_pattern
        self.singles = given['singles']() if singles is UNSET else singles
        self.motifs = given['motifs']() if motifs is UNSET else motifs
        self.pieces = given['pieces']() if pieces is UNSET else pieces
    def __eq__(self, other):
        if other.__class__ is self.__class__:
            return (self.heads, self.in_pattern, self.singles, self.motifs, self.pieces) == (other.heads, other.in_pattern, other.singles, other.motifs, other.pieces)
        return NotImplemented
    return {'__init__': __init__, '__eq__': __eq__}


def body_Stitches(given):
    def __init__(self, stitch, count, modifiers, span):
        put(self, 'stitch', stitch)
        put(self, 'count', count)
        put(self, 'modifiers', modifiers)
        put(self, 'span', span)
    return {'__init__': __init__}


def body_Group(given):
    def __init__(self, steps, times, into, span):
        put(self, 'steps', steps)
        put(self, 'times', times)
        put(self, 'into', into)
        put(self, 'span', span)
    return {'__init__': __init__}


def body_Fill(given):
    def __init__(self, steps, span):
        put(self, 'steps', steps)
        put(self, 'span', span)
    return {'__init__': __init__}


def body_Evenly(given):
    def __init__(self, steps, times, into, span, plain, change):
        put(self, 'steps', steps)
        put(self, 'times', times)
        put(self, 'into', into)
        put(self, 'span', span)
        put(self, 'plain', plain)
        put(self, 'change', change)
    return {'__init__': __init__}


def body_Body(given):
    def __init__(self, steps, whole, span, broken):
        put(self, 'steps', steps)
        put(self, 'whole', whole)
        put(self, 'span', span)
        put(self, 'broken', broken)
    return {'__init__': __init__}


def build_Built(given):
    def __init__(self, pattern, problems):
        put(self, 'pattern', pattern)
        put(self, 'problems', problems)
    def __eq__(self, other):
        if other.__class__ is self.__class__:
            return (self.pattern, self.problems) == (other.pattern, other.problems)
        return NotImplemented
    def __hash__(self):
        return hash((self.pattern, self.problems))
    return {'__init__': __init__, '__eq__': __eq__, '__hash__': __hash__}


def header_Header(given):
    def __init__(self, texts=UNSET, once=UNSET, gauges=UNSET, swatches=UNSET, needles=UNSET):
        self.texts = given['texts']() if texts is UNSET else texts
        self.once = given['once']() if once is UNSET else once
        self.gauges = given['gauges']() if gauges is UNSET else gauges
        self.swatches = given['swatches']() if swatches is UNSET else swatches
        self.needles = given['needles']() if needles is UNSET else needles
    def __eq__(self, other):
        if other.__class__ is self.__class__:
            return (self.texts, self.once, self.gauges, self.swatches, self.needles) == (other.texts, other.once, other.gauges, other.swatches, other.needles)
        return NotImplemented
    return {'__init__': __init__, '__eq__': __eq__}


def motifs__Line(given):
    def __init__(self, placed, node):
        put(self, 'placed', placed)
        put(self, 'node', node)
    def __eq__(self, other):
        if other.__class__ is self.__class__:
            return (self.placed, self.node) == (other.placed, other.node)
        return NotImplemented
    def __hash__(self):
        return hash((self.placed, self.node))
    return {'__init__': __init__, '__eq__': __eq__, '__hash__': __hash__}


def motifs__Given(given):
    def __init__(self, rows=UNSET, free=UNSET, every=UNSET, clashes=UNSET, nameless=given['nameless'], in_round=given['in_round']):
        self.rows = given['rows']() if rows is UNSET else rows
        self.free = given['free']() if free is UNSET else free
        self.every = given['every']() if every is UNSET else every
        self.clashes = given['clashes']() if clashes is UNSET else clashes
        self.nameless = nameless
        self.in_round = in_round
    def __eq__(self, other):
        if other.__class__ is self.__class__:
            return (self.rows, self.free, self.every, self.clashes, self.nameless, self.in_round) == (other.rows, other.free, other.every, other.clashes, other.nameless, other.in_round)
        return NotImplemented
    return {'__init__': __init__, '__eq__': __eq__}


def pattern_Yarn(given):
    def __init__(self, name, text, grams, metres, weight, fibre, span):
        put(self, 'name', name)
        put(self, 'text', text)
        put(self, 'grams', grams)
        put(self, 'metres', metres)
        put(self, 'weight', weight)
        put(self, 'fibre', fibre)
        put(self, 'span', span)
    def __eq__(self, other):
        if other.__class__ is self.__class__:
            return (self.name, self.text, self.grams, self.metres, self.weight, self.fibre, self.span) == (other.name, other.text, other.grams, other.metres, other.weight, other.fibre, other.span)
        return NotImplemented
    def __hash__(self):
        return hash((self.name, self.text, self.grams, self.metres, self.weight, self.fibre, self.span))
    return {'__init__': __init__, '__eq__': __eq__, '__hash__': __hash__}


def pattern_Shade(given):
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


def pattern_Strand(given):
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


def pattern_Edge(given):
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


def pattern_Row(given):
    def __init__(self, number, round, strand, body, claim, base, body_base, line, as_row, every, span):
        put(self, 'number', number)
        put(self, 'round', round)
        put(self, 'strand', strand)
        put(self, 'body', body)
        put(self, 'claim', claim)
        put(self, 'base', base)
        put(self, 'body_base', body_base)
        put(self, 'line', line)
        put(self, 'as_row', as_row)
        put(self, 'every', every)
        put(self, 'span', span)
    return {'__init__': __init__}


def pattern_Motif(given):
    def __init__(self, name, form, starts_ws, in_round, edge, rows, span):
        put(self, 'name', name)
        put(self, 'form', form)
        put(self, 'starts_ws', starts_ws)
        put(self, 'in_round', in_round)
        put(self, 'edge', edge)
        put(self, 'rows', rows)
        put(self, 'span', span)
    return {'__init__': __init__}


def pattern_PieceRow(given):
    def __init__(self, row, times, first, last, span):
        put(self, 'row', row)
        put(self, 'times', times)
        put(self, 'first', first)
        put(self, 'last', last)
        put(self, 'span', span)
    return {'__init__': __init__}


def pattern_CastOn(given):
    def __init__(self, count, strand, method, span, more=given['more']):
        put(self, 'count', count)
        put(self, 'strand', strand)
        put(self, 'method', method)
        put(self, 'span', span)
        put(self, 'more', more)
    return {'__init__': __init__}


def pattern_BindOff(given):
    def __init__(self, strand, method, span):
        put(self, 'strand', strand)
        put(self, 'method', method)
        put(self, 'span', span)
    return {'__init__': __init__}


def pattern_Work(given):
    def __init__(self, name, motif, amount, span, line):
        put(self, 'name', name)
        put(self, 'motif', motif)
        put(self, 'amount', amount)
        put(self, 'span', span)
        put(self, 'line', line)
    return {'__init__': __init__}


def pattern_Spread(given):
    def __init__(self, name, motif, times, plain_name, plain, over, span, line):
        put(self, 'name', name)
        put(self, 'motif', motif)
        put(self, 'times', times)
        put(self, 'plain_name', plain_name)
        put(self, 'plain', plain)
        put(self, 'over', over)
        put(self, 'span', span)
        put(self, 'line', line)
    return {'__init__': __init__}


def pattern_JoinRound(given):
    def __init__(self, span):
        put(self, 'span', span)
    return {'__init__': __init__}


def pattern_LeaveRound(given):
    def __init__(self, span):
        put(self, 'span', span)
    return {'__init__': __init__}


def pattern_Hold(given):
    def __init__(self, count, name, span):
        put(self, 'count', count)
        put(self, 'name', name)
        put(self, 'span', span)
    return {'__init__': __init__}


def pattern_Take(given):
    def __init__(self, names, joined, span):
        put(self, 'names', names)
        put(self, 'joined', joined)
        put(self, 'span', span)
    return {'__init__': __init__}


def pattern_PickUp(given):
    def __init__(self, count, strand, edge, span):
        put(self, 'count', count)
        put(self, 'strand', strand)
        put(self, 'edge', edge)
        put(self, 'span', span)
    return {'__init__': __init__}


def pattern_BeginRound(given):
    def __init__(self, count, span):
        put(self, 'count', count)
        put(self, 'span', span)
    return {'__init__': __init__}


def pattern_LeaveLive(given):
    def __init__(self, text, span):
        put(self, 'text', text)
        put(self, 'span', span)
    return {'__init__': __init__}


def pattern_Remark(given):
    def __init__(self, kind, text, span):
        put(self, 'kind', kind)
        put(self, 'text', text)
        put(self, 'span', span)
    return {'__init__': __init__}


def pattern_Piece(given):
    def __init__(self, name, in_round, starts_ws, edge, width, length, items, span):
        put(self, 'name', name)
        put(self, 'in_round', in_round)
        put(self, 'starts_ws', starts_ws)
        put(self, 'edge', edge)
        put(self, 'width', width)
        put(self, 'length', length)
        put(self, 'items', items)
        put(self, 'span', span)
    return {'__init__': __init__}


def pattern_Reference(given):
    def __init__(self, kind, name):
        put(self, 'kind', kind)
        put(self, 'name', name)
    def __eq__(self, other):
        if other.__class__ is self.__class__:
            return (self.kind, self.name) == (other.kind, other.name)
        return NotImplemented
    def __hash__(self):
        return hash((self.kind, self.name))
    return {'__init__': __init__, '__eq__': __eq__, '__hash__': __hash__}


def pattern_UnknownWord(given):
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


def pattern_RowClash(given):
    def __init__(self, motif, number, again, first):
        put(self, 'motif', motif)
        put(self, 'number', number)
        put(self, 'again', again)
        put(self, 'first', first)
    def __eq__(self, other):
        if other.__class__ is self.__class__:
            return (self.motif, self.number, self.again, self.first) == (other.motif, other.number, other.again, other.first)
        return NotImplemented
    def __hash__(self):
        return hash((self.motif, self.number, self.again, self.first))
    return {'__init__': __init__, '__eq__': __eq__, '__hash__': __hash__}


def pattern_RowGap(given):
    def __init__(self, motif, numbers, last, span):
        put(self, 'motif', motif)
        put(self, 'numbers', numbers)
        put(self, 'last', last)
        put(self, 'span', span)
    def __eq__(self, other):
        if other.__class__ is self.__class__:
            return (self.motif, self.numbers, self.last, self.span) == (other.motif, other.numbers, other.last, other.span)
        return NotImplemented
    def __hash__(self):
        return hash((self.motif, self.numbers, self.last, self.span))
    return {'__init__': __init__, '__eq__': __eq__, '__hash__': __hash__}


def pattern_Pattern(given):
    def __init__(self, source, title, designer, summary, level, size_names, width, length, gauges, swatches, needles, notions, notes, yarns, shades, strands, stitches, motifs, pieces, references, unknown_words, clashes, gaps, size_lists, span, bounds=given['bounds'], join=given['join'], care=given['care']):
        put(self, 'source', source)
        put(self, 'title', title)
        put(self, 'designer', designer)
        put(self, 'summary', summary)
        put(self, 'level', level)
        put(self, 'size_names', size_names)
        put(self, 'width', width)
        put(self, 'length', length)
        put(self, 'gauges', gauges)
        put(self, 'swatches', swatches)
        put(self, 'needles', needles)
        put(self, 'notions', notions)
        put(self, 'notes', notes)
        put(self, 'yarns', yarns)
        put(self, 'shades', shades)
        put(self, 'strands', strands)
        put(self, 'stitches', stitches)
        put(self, 'motifs', motifs)
        put(self, 'pieces', pieces)
        put(self, 'references', references)
        put(self, 'unknown_words', unknown_words)
        put(self, 'clashes', clashes)
        put(self, 'gaps', gaps)
        put(self, 'size_lists', size_lists)
        put(self, 'span', span)
        put(self, 'bounds', bounds)
        put(self, 'join', join)
        put(self, 'care', care)
    return {'__init__': __init__}


def stitch_Stitch(given):
    def __init__(self, word, takes, makes, kind, abbr, meaning, yarn, source, span=given['span']):
        put(self, 'word', word)
        put(self, 'takes', takes)
        put(self, 'makes', makes)
        put(self, 'kind', kind)
        put(self, 'abbr', abbr)
        put(self, 'meaning', meaning)
        put(self, 'yarn', yarn)
        put(self, 'source', source)
        put(self, 'span', span)
    def __eq__(self, other):
        if other.__class__ is self.__class__:
            return (self.word, self.takes, self.makes, self.kind, self.abbr, self.meaning, self.yarn, self.source, self.span) == (other.word, other.takes, other.makes, other.kind, other.abbr, other.meaning, other.yarn, other.source, other.span)
        return NotImplemented
    def __hash__(self):
        return hash((self.word, self.takes, self.makes, self.kind, self.abbr, self.meaning, self.yarn, self.source, self.span))
    return {'__init__': __init__, '__eq__': __eq__, '__hash__': __hash__}


def stitch_Found(given):
    def __init__(self, stitch, count):
        put(self, 'stitch', stitch)
        put(self, 'count', count)
    def __eq__(self, other):
        if other.__class__ is self.__class__:
            return (self.stitch, self.count) == (other.stitch, other.count)
        return NotImplemented
    def __hash__(self):
        return hash((self.stitch, self.count))
    return {'__init__': __init__, '__eq__': __eq__, '__hash__': __hash__}


RECORDS = {
    "blocks.MotifBlock": ("e: head lines~default_factory", blocks_MotifBlock),
    "blocks.PieceBlock": ("e: head lines~default_factory", blocks_PieceBlock),
    "blocks.Blocks": ("e: heads~default_factory in_pattern~default_factory singles~default_factory motifs~default_factory pieces~default_factory", blocks_Blocks),
    "body.Stitches": ("f: stitch count modifiers span", body_Stitches),
    "body.Group": ("f: steps times into span", body_Group),
    "body.Fill": ("f: steps span", body_Fill),
    "body.Evenly": ("f: steps times into span; f: plain change", body_Evenly),
    "body.Body": ("f: steps whole span broken", body_Body),
    "build.Built": ("fe: pattern problems", build_Built),
    "header.Header": ("e: texts~default_factory once~default_factory gauges~default_factory swatches~default_factory needles~default_factory", header_Header),
    "motifs._Line": ("fe: placed node", motifs__Line),
    "motifs._Given": ("e: rows~default_factory free~default_factory every~default_factory clashes~default_factory nameless= in_round=", motifs__Given),
    "pattern.Yarn": ("fe: name text grams metres weight fibre span", pattern_Yarn),
    "pattern.Shade": ("fe: name text yarn colour stripes span", pattern_Shade),
    "pattern.Strand": ("fe: name feeds span", pattern_Strand),
    "pattern.Edge": ("fe: count kind span", pattern_Edge),
    "pattern.Row": ("f: number round strand body claim base body_base line as_row every span", pattern_Row),
    "pattern.Motif": ("f: name form starts_ws in_round edge rows span", pattern_Motif),
    "pattern.PieceRow": ("f: row times first last span", pattern_PieceRow),
    "pattern.CastOn": ("f: count strand method span more=", pattern_CastOn),
    "pattern.BindOff": ("f: strand method span", pattern_BindOff),
    "pattern.Work": ("f: name motif amount span line", pattern_Work),
    "pattern.Spread": ("f: name motif times plain_name plain over span line", pattern_Spread),
    "pattern.JoinRound": ("f: span", pattern_JoinRound),
    "pattern.LeaveRound": ("f: span", pattern_LeaveRound),
    "pattern.Hold": ("f: count name span", pattern_Hold),
    "pattern.Take": ("f: names joined span", pattern_Take),
    "pattern.PickUp": ("f: count strand edge span", pattern_PickUp),
    "pattern.BeginRound": ("f: count span", pattern_BeginRound),
    "pattern.LeaveLive": ("f: text span", pattern_LeaveLive),
    "pattern.Remark": ("f: kind text span", pattern_Remark),
    "pattern.Piece": ("f: name in_round starts_ws edge width length items span", pattern_Piece),
    "pattern.Reference": ("fe: kind name", pattern_Reference),
    "pattern.UnknownWord": ("fe: text span", pattern_UnknownWord),
    "pattern.RowClash": ("fe: motif number again first", pattern_RowClash),
    "pattern.RowGap": ("fe: motif numbers last span", pattern_RowGap),
    "pattern.Pattern": ("f: source title designer summary level size_names width length gauges swatches needles notions notes yarns shades strands stitches motifs pieces references unknown_words clashes gaps size_lists span bounds= join= care=", pattern_Pattern),
    "stitch.Stitch": ("fe: word takes makes kind abbr meaning yarn source span=", stitch_Stitch),
    "stitch.Found": ("fe: stitch count", stitch_Found),
}
