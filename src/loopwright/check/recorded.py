"""The methods of this room's dataclasses. Written by ``make records``."""

# ruff: noqa
# mypy: ignore-errors

UNSET = object()
put = object.__setattr__


def checked_Checked(given):
    def __init__(self, source, pattern, walks, proofs, problems, recovered, tapes):
        put(self, 'source', source)
        put(self, 'pattern', pattern)
        put(self, 'walks', walks)
        put(self, 'proofs', proofs)
        put(self, 'problems', problems)
        put(self, 'recovered', recovered)
        put(self, 'tapes', tapes)
    return {'__init__': __init__}


def context_Context(given):
    def __init__(self, pattern, walks, proofs, tapes, yarn=given['yarn'], _pickups=UNSET, _slipping=UNSET):
        put(self, 'pattern', pattern)
        put(self, 'walks', walks)
        put(self, 'proofs', proofs)
        put(self, 'tapes', tapes)
        put(self, 'yarn', yarn)
        put(self, '_pickups', given['_pickups']() if _pickups is UNSET else _pickups)
        put(self, '_slipping', given['_slipping']() if _slipping is UNSET else _slipping)
    return {'__init__': __init__}


def edges_Outer(given):
    def __init__(self, sign, fixed):
        put(self, 'sign', sign)
        put(self, 'fixed', fixed)
    def __eq__(self, other):
        if other.__class__ is self.__class__:
            return (self.sign, self.fixed) == (other.sign, other.fixed)
        return NotImplemented
    def __hash__(self):
        return hash((self.sign, self.fixed))
    return {'__init__': __init__, '__eq__': __eq__, '__hash__': __hash__}


def edges_EdgeRow(given):
    def __init__(self, row, rs, number, known=UNSET):
        put(self, 'row', row)
        put(self, 'rs', rs)
        put(self, 'number', number)
        put(self, 'known', given['known']() if known is UNSET else known)
    def __eq__(self, other):
        if other.__class__ is self.__class__:
            return (self.row, self.rs, self.number) == (other.row, other.rs, other.number)
        return NotImplemented
    def __hash__(self):
        return hash((self.row, self.rs, self.number))
    return {'__init__': __init__, '__eq__': __eq__, '__hash__': __hash__}


def fixing_Change(given):
    def __init__(self, rule, title, line):
        put(self, 'rule', rule)
        put(self, 'title', title)
        put(self, 'line', line)
    def __eq__(self, other):
        if other.__class__ is self.__class__:
            return (self.rule, self.title, self.line) == (other.rule, other.title, other.line)
        return NotImplemented
    def __hash__(self):
        return hash((self.rule, self.title, self.line))
    return {'__init__': __init__, '__eq__': __eq__, '__hash__': __hash__}


def fixing_Fixed(given):
    def __init__(self, text, changes, before, checked):
        put(self, 'text', text)
        put(self, 'changes', changes)
        put(self, 'before', before)
        put(self, 'checked', checked)
    def __eq__(self, other):
        if other.__class__ is self.__class__:
            return (self.text, self.changes, self.before, self.checked) == (other.text, other.changes, other.before, other.checked)
        return NotImplemented
    def __hash__(self):
        return hash((self.text, self.changes, self.before, self.checked))
    return {'__init__': __init__, '__eq__': __eq__, '__hash__': __hash__}


def fixing__Step(given):
    def __init__(self, text, checked, changes):
        put(self, 'text', text)
        put(self, 'checked', checked)
        put(self, 'changes', changes)
    def __eq__(self, other):
        if other.__class__ is self.__class__:
            return (self.text, self.checked, self.changes) == (other.text, other.checked, other.changes)
        return NotImplemented
    def __hash__(self):
        return hash((self.text, self.checked, self.changes))
    return {'__init__': __init__, '__eq__': __eq__, '__hash__': __hash__}


def floats_Float(given):
    def __init__(self, stitches, span):
        put(self, 'stitches', stitches)
        put(self, 'span', span)
    def __eq__(self, other):
        if other.__class__ is self.__class__:
            return (self.stitches, self.span) == (other.stitches, other.span)
        return NotImplemented
    def __hash__(self):
        return hash((self.stitches, self.span))
    return {'__init__': __init__, '__eq__': __eq__, '__hash__': __hash__}


def floats__Part(given):
    def __init__(self, head, tail, most, all):
        put(self, 'head', head)
        put(self, 'tail', tail)
        put(self, 'most', most)
        put(self, 'all', all)
    def __eq__(self, other):
        if other.__class__ is self.__class__:
            return (self.head, self.tail, self.most, self.all) == (other.head, other.tail, other.most, other.all)
        return NotImplemented
    def __hash__(self):
        return hash((self.head, self.tail, self.most, self.all))
    return {'__init__': __init__, '__eq__': __eq__, '__hash__': __hash__}


def holders_Place(given):
    def __init__(self, name, piece, span):
        put(self, 'name', name)
        put(self, 'piece', piece)
        put(self, 'span', span)
    def __eq__(self, other):
        if other.__class__ is self.__class__:
            return (self.name, self.piece, self.span) == (other.name, other.piece, other.span)
        return NotImplemented
    def __hash__(self):
        return hash((self.name, self.piece, self.span))
    return {'__init__': __init__, '__eq__': __eq__, '__hash__': __hash__}


def neighbours__Parts(given):
    def __init__(self, texts, takes, spans, fill):
        put(self, 'texts', texts)
        put(self, 'takes', takes)
        put(self, 'spans', spans)
        put(self, 'fill', fill)
    def __eq__(self, other):
        if other.__class__ is self.__class__:
            return (self.texts, self.takes, self.spans, self.fill) == (other.texts, other.takes, other.spans, other.fill)
        return NotImplemented
    def __hash__(self):
        return hash((self.texts, self.takes, self.spans, self.fill))
    return {'__init__': __init__, '__eq__': __eq__, '__hash__': __hash__}


def neighbours_Advice(given):
    def __init__(self, look=given['look'], help=given['help'], fix=given['fix']):
        put(self, 'look', look)
        put(self, 'help', help)
        put(self, 'fix', fix)
    def __eq__(self, other):
        if other.__class__ is self.__class__:
            return (self.look, self.help, self.fix) == (other.look, other.help, other.fix)
        return NotImplemented
    def __hash__(self):
        return hash((self.look, self.help, self.fix))
    return {'__init__': __init__, '__eq__': __eq__, '__hash__': __hash__}


def printing_Style(given):
    def __init__(self, colour=given['colour']):
        put(self, 'colour', colour)
    def __eq__(self, other):
        if other.__class__ is self.__class__:
            return (self.colour,) == (other.colour,)
        return NotImplemented
    def __hash__(self):
        return hash((self.colour,))
    return {'__init__': __init__, '__eq__': __eq__, '__hash__': __hash__}


def rule_Rule(given):
    def __init__(self, name, severity, title, what, wrong, right, check):
        put(self, 'name', name)
        put(self, 'severity', severity)
        put(self, 'title', title)
        put(self, 'what', what)
        put(self, 'wrong', wrong)
        put(self, 'right', right)
        put(self, 'check', check)
    def __eq__(self, other):
        if other.__class__ is self.__class__:
            return (self.name, self.severity, self.title, self.what, self.wrong, self.right, self.check) == (other.name, other.severity, other.title, other.what, other.wrong, other.right, other.check)
        return NotImplemented
    def __hash__(self):
        return hash((self.name, self.severity, self.title, self.what, self.wrong, self.right, self.check))
    return {'__init__': __init__, '__eq__': __eq__, '__hash__': __hash__}


def rules_needle_short__Held(given):
    def __init__(self, stitches, row, mm, size):
        put(self, 'stitches', stitches)
        put(self, 'row', row)
        put(self, 'mm', mm)
        put(self, 'size', size)
    def __eq__(self, other):
        if other.__class__ is self.__class__:
            return (self.stitches, self.row, self.mm, self.size) == (other.stitches, other.row, other.mm, other.size)
        return NotImplemented
    def __hash__(self):
        return hash((self.stitches, self.row, self.mm, self.size))
    return {'__init__': __init__, '__eq__': __eq__, '__hash__': __hash__}


def rules_slip_long__Run(given):
    def __init__(self, rows, motif, reps, count, rs, round):
        put(self, 'rows', rows)
        put(self, 'motif', motif)
        put(self, 'reps', reps)
        put(self, 'count', count)
        put(self, 'rs', rs)
        put(self, 'round', round)
    def __eq__(self, other):
        if other.__class__ is self.__class__:
            return (self.rows, self.motif, self.reps, self.count, self.rs, self.round) == (other.rows, other.motif, other.reps, other.count, other.rs, other.round)
        return NotImplemented
    def __hash__(self):
        return hash((self.rows, self.motif, self.reps, self.count, self.rs, self.round))
    return {'__init__': __init__, '__eq__': __eq__, '__hash__': __hash__}


def rules_slip_long__Long(given):
    def __init__(self, run, row, since, limit, thick, whole):
        put(self, 'run', run)
        put(self, 'row', row)
        put(self, 'since', since)
        put(self, 'limit', limit)
        put(self, 'thick', thick)
        put(self, 'whole', whole)
    def __eq__(self, other):
        if other.__class__ is self.__class__:
            return (self.run, self.row, self.since, self.limit, self.thick, self.whole) == (other.run, other.row, other.since, other.limit, other.thick, other.whole)
        return NotImplemented
    def __hash__(self):
        return hash((self.run, self.row, self.since, self.limit, self.thick, self.whole))
    return {'__init__': __init__, '__eq__': __eq__, '__hash__': __hash__}


def rules_width_odd_repeat__Between(given):
    def __init__(self, size, said, low, high, repeat, nearest):
        put(self, 'size', size)
        put(self, 'said', said)
        put(self, 'low', low)
        put(self, 'high', high)
        put(self, 'repeat', repeat)
        put(self, 'nearest', nearest)
    def __eq__(self, other):
        if other.__class__ is self.__class__:
            return (self.size, self.said, self.low, self.high, self.repeat, self.nearest) == (other.size, other.said, other.low, other.high, other.repeat, other.nearest)
        return NotImplemented
    def __hash__(self):
        return hash((self.size, self.said, self.low, self.high, self.repeat, self.nearest))
    return {'__init__': __init__, '__eq__': __eq__, '__hash__': __hash__}


def size_order_SizeList(given):
    def __init__(self, values, kind, what, span):
        put(self, 'values', values)
        put(self, 'kind', kind)
        put(self, 'what', what)
        put(self, 'span', span)
    def __eq__(self, other):
        if other.__class__ is self.__class__:
            return (self.values, self.kind, self.what, self.span) == (other.values, other.kind, other.what, other.span)
        return NotImplemented
    def __hash__(self):
        return hash((self.values, self.kind, self.what, self.span))
    return {'__init__': __init__, '__eq__': __eq__, '__hash__': __hash__}


def yarn_news_ShortNews(given):
    def __init__(self, size, strand, shade, span, certain, spread, ground, missing, piece, row, where, stitch, of, balls, rows, motif, stitches, cast_on):
        put(self, 'size', size)
        put(self, 'strand', strand)
        put(self, 'shade', shade)
        put(self, 'span', span)
        put(self, 'certain', certain)
        put(self, 'spread', spread)
        put(self, 'ground', ground)
        put(self, 'missing', missing)
        put(self, 'piece', piece)
        put(self, 'row', row)
        put(self, 'where', where)
        put(self, 'stitch', stitch)
        put(self, 'of', of)
        put(self, 'balls', balls)
        put(self, 'rows', rows)
        put(self, 'motif', motif)
        put(self, 'stitches', stitches)
        put(self, 'cast_on', cast_on)
    def __eq__(self, other):
        if other.__class__ is self.__class__:
            return (self.size, self.strand, self.shade, self.span, self.certain, self.spread, self.ground, self.missing, self.piece, self.row, self.where, self.stitch, self.of, self.balls, self.rows, self.motif, self.stitches, self.cast_on) == (other.size, other.strand, other.shade, other.span, other.certain, other.spread, other.ground, other.missing, other.piece, other.row, other.where, other.stitch, other.of, other.balls, other.rows, other.motif, other.stitches, other.cast_on)
        return NotImplemented
    def __hash__(self):
        return hash((self.size, self.strand, self.shade, self.span, self.certain, self.spread, self.ground, self.missing, self.piece, self.row, self.where, self.stitch, self.of, self.balls, self.rows, self.motif, self.stitches, self.cast_on))
    return {'__init__': __init__, '__eq__': __eq__, '__hash__': __hash__}


def yarn_news_TwiceNews(given):
    def __init__(self, size, one, other, shade, piece, first, last, span, label):
        put(self, 'size', size)
        put(self, 'one', one)
        put(self, 'other', other)
        put(self, 'shade', shade)
        put(self, 'piece', piece)
        put(self, 'first', first)
        put(self, 'last', last)
        put(self, 'span', span)
        put(self, 'label', label)
    def __eq__(self, other):
        if other.__class__ is self.__class__:
            return (self.size, self.one, self.other, self.shade, self.piece, self.first, self.last, self.span, self.label) == (other.size, other.one, other.other, other.shade, other.piece, other.first, other.last, other.span, other.label)
        return NotImplemented
    def __hash__(self):
        return hash((self.size, self.one, self.other, self.shade, self.piece, self.first, self.last, self.span, self.label))
    return {'__init__': __init__, '__eq__': __eq__, '__hash__': __hash__}


def yarn_news_PoolNews(given):
    def __init__(self, size, strand, shade, span, repeat, rows, stitches, times, span_rows):
        put(self, 'size', size)
        put(self, 'strand', strand)
        put(self, 'shade', shade)
        put(self, 'span', span)
        put(self, 'repeat', repeat)
        put(self, 'rows', rows)
        put(self, 'stitches', stitches)
        put(self, 'times', times)
        put(self, 'span_rows', span_rows)
    def __eq__(self, other):
        if other.__class__ is self.__class__:
            return (self.size, self.strand, self.shade, self.span, self.repeat, self.rows, self.stitches, self.times, self.span_rows) == (other.size, other.strand, other.shade, other.span, other.repeat, other.rows, other.stitches, other.times, other.span_rows)
        return NotImplemented
    def __hash__(self):
        return hash((self.size, self.strand, self.shade, self.span, self.repeat, self.rows, self.stitches, self.times, self.span_rows))
    return {'__init__': __init__, '__eq__': __eq__, '__hash__': __hash__}


def yarn_news_CloseNews(given):
    def __init__(self, one, other, visions, ratio, span, label):
        put(self, 'one', one)
        put(self, 'other', other)
        put(self, 'visions', visions)
        put(self, 'ratio', ratio)
        put(self, 'span', span)
        put(self, 'label', label)
    def __eq__(self, other):
        if other.__class__ is self.__class__:
            return (self.one, self.other, self.visions, self.ratio, self.span, self.label) == (other.one, other.other, other.visions, other.ratio, other.span, other.label)
        return NotImplemented
    def __hash__(self):
        return hash((self.one, self.other, self.visions, self.ratio, self.span, self.label))
    return {'__init__': __init__, '__eq__': __eq__, '__hash__': __hash__}


def yarn_news_YarnNews(given):
    def __init__(self, shorts=given['shorts'], twice=given['twice'], pools=given['pools'], close=given['close']):
        put(self, 'shorts', shorts)
        put(self, 'twice', twice)
        put(self, 'pools', pools)
        put(self, 'close', close)
    def __eq__(self, other):
        if other.__class__ is self.__class__:
            return (self.shorts, self.twice, self.pools, self.close) == (other.shorts, other.twice, other.pools, other.close)
        return NotImplemented
    def __hash__(self):
        return hash((self.shorts, self.twice, self.pools, self.close))
    return {'__init__': __init__, '__eq__': __eq__, '__hash__': __hash__}


RECORDS = {
    "checked.Checked": ("f: source pattern walks proofs problems recovered tapes", checked_Checked),
    "context.Context": ("f: pattern walks proofs tapes yarn= _pickups~default_factory _slipping~default_factory", context_Context),
    "edges.Outer": ("fe: sign fixed", edges_Outer),
    "edges.EdgeRow": ("fe: row rs number known~compare,default_factory,repr", edges_EdgeRow),
    "fixing.Change": ("fe: rule title line", fixing_Change),
    "fixing.Fixed": ("fe: text changes before checked", fixing_Fixed),
    "fixing._Step": ("fe: text checked changes", fixing__Step),
    "floats.Float": ("fe: stitches span", floats_Float),
    "floats._Part": ("fe: head tail most all", floats__Part),
    "holders.Place": ("fe: name piece span", holders_Place),
    "neighbours._Parts": ("fe: texts takes spans fill", neighbours__Parts),
    "neighbours.Advice": ("fe: look= help= fix=", neighbours_Advice),
    "printing.Style": ("fe: colour=", printing_Style),
    "rule.Rule": ("fe: name severity title what wrong right check", rule_Rule),
    "rules.needle_short._Held": ("fe: stitches row mm size", rules_needle_short__Held),
    "rules.slip_long._Run": ("fe: rows motif reps count rs round", rules_slip_long__Run),
    "rules.slip_long._Long": ("fe: run row since limit thick whole", rules_slip_long__Long),
    "rules.width_odd_repeat._Between": ("fe: size said low high repeat nearest", rules_width_odd_repeat__Between),
    "size_order.SizeList": ("fe: values kind what span", size_order_SizeList),
    "yarn_news.ShortNews": ("fe: size strand shade span certain spread ground missing piece row where stitch of balls rows motif stitches cast_on", yarn_news_ShortNews),
    "yarn_news.TwiceNews": ("fe: size one other shade piece first last span label", yarn_news_TwiceNews),
    "yarn_news.PoolNews": ("fe: size strand shade span repeat rows stitches times span_rows", yarn_news_PoolNews),
    "yarn_news.CloseNews": ("fe: one other visions ratio span label", yarn_news_CloseNews),
    "yarn_news.YarnNews": ("fe: shorts= twice= pools= close=", yarn_news_YarnNews),
}
