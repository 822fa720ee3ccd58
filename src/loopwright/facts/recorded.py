"""The methods of this room's dataclasses. Written by ``make records``."""

# ruff: noqa
# mypy: ignore-errors

UNSET = object()
put = object.__setattr__


def amounts_EdgeYarn(given):
    def __init__(self, kind, method, loops, tail_widths, tail_loops, source):
        put(self, 'kind', kind)
        put(self, 'method', method)
        put(self, 'loops', loops)
        put(self, 'tail_widths', tail_widths)
        put(self, 'tail_loops', tail_loops)
        put(self, 'source', source)
    def __eq__(self, other):
        if other.__class__ is self.__class__:
            return (self.kind, self.method, self.loops, self.tail_widths, self.tail_loops, self.source) == (other.kind, other.method, other.loops, other.tail_widths, other.tail_loops, other.source)
        return NotImplemented
    def __hash__(self):
        return hash((self.kind, self.method, self.loops, self.tail_widths, self.tail_loops, self.source))
    return {'__init__': __init__, '__eq__': __eq__, '__hash__': __hash__}


def amounts_JoinWay(given):
    def __init__(self, name, tail_mm, worked_back_mm, at_edge, source):
        put(self, 'name', name)
        put(self, 'tail_mm', tail_mm)
        put(self, 'worked_back_mm', worked_back_mm)
        put(self, 'at_edge', at_edge)
        put(self, 'source', source)
    def __eq__(self, other):
        if other.__class__ is self.__class__:
            return (self.name, self.tail_mm, self.worked_back_mm, self.at_edge, self.source) == (other.name, other.tail_mm, other.worked_back_mm, other.at_edge, other.source)
        return NotImplemented
    def __hash__(self):
        return hash((self.name, self.tail_mm, self.worked_back_mm, self.at_edge, self.source))
    return {'__init__': __init__, '__eq__': __eq__, '__hash__': __hash__}


def care_Care(given):
    def __init__(self, words, of, line, degrees, gentle, place):
        put(self, 'words', words)
        put(self, 'of', of)
        put(self, 'line', line)
        put(self, 'degrees', degrees)
        put(self, 'gentle', gentle)
        put(self, 'place', place)
    def __eq__(self, other):
        if other.__class__ is self.__class__:
            return (self.words, self.of, self.line, self.degrees, self.gentle, self.place) == (other.words, other.of, other.line, other.degrees, other.gentle, other.place)
        return NotImplemented
    def __hash__(self):
        return hash((self.words, self.of, self.line, self.degrees, self.gentle, self.place))
    return {'__init__': __init__, '__eq__': __eq__, '__hash__': __hash__}


def loops_LoopConstants(given):
    def __init__(self, structure, state, kc, kw, ks, source):
        put(self, 'structure', structure)
        put(self, 'state', state)
        put(self, 'kc', kc)
        put(self, 'kw', kw)
        put(self, 'ks', ks)
        put(self, 'source', source)
    def __eq__(self, other):
        if other.__class__ is self.__class__:
            return (self.structure, self.state, self.kc, self.kw, self.ks, self.source) == (other.structure, other.state, other.kc, other.kw, other.ks, other.source)
        return NotImplemented
    def __hash__(self):
        return hash((self.structure, self.state, self.kc, self.kw, self.ks, self.source))
    return {'__init__': __init__, '__eq__': __eq__, '__hash__': __hash__}


def loops_Rule(given):
    def __init__(self, name, low, high, unit, source, note):
        put(self, 'name', name)
        put(self, 'low', low)
        put(self, 'high', high)
        put(self, 'unit', unit)
        put(self, 'source', source)
        put(self, 'note', note)
    def __eq__(self, other):
        if other.__class__ is self.__class__:
            return (self.name, self.low, self.high, self.unit, self.source, self.note) == (other.name, other.low, other.high, other.unit, other.source, other.note)
        return NotImplemented
    def __hash__(self):
        return hash((self.name, self.low, self.high, self.unit, self.source, self.note))
    return {'__init__': __init__, '__eq__': __eq__, '__hash__': __hash__}


def needles_Needle(given):
    def __init__(self, mm, us, uk, source, note):
        put(self, 'mm', mm)
        put(self, 'us', us)
        put(self, 'uk', uk)
        put(self, 'source', source)
        put(self, 'note', note)
    def __eq__(self, other):
        if other.__class__ is self.__class__:
            return (self.mm, self.us, self.uk, self.source, self.note) == (other.mm, other.us, other.uk, other.source, other.note)
        return NotImplemented
    def __hash__(self):
        return hash((self.mm, self.us, self.uk, self.source, self.note))
    return {'__init__': __init__, '__eq__': __eq__, '__hash__': __hash__}


def sizes_BlanketSize(given):
    def __init__(self, name, width_min, width_max, length_min, length_max, source):
        put(self, 'name', name)
        put(self, 'width_min', width_min)
        put(self, 'width_max', width_max)
        put(self, 'length_min', length_min)
        put(self, 'length_max', length_max)
        put(self, 'source', source)
    def __eq__(self, other):
        if other.__class__ is self.__class__:
            return (self.name, self.width_min, self.width_max, self.length_min, self.length_max, self.source) == (other.name, other.width_min, other.width_max, other.length_min, other.length_max, other.source)
        return NotImplemented
    def __hash__(self):
        return hash((self.name, self.width_min, self.width_max, self.length_min, self.length_max, self.source))
    return {'__init__': __init__, '__eq__': __eq__, '__hash__': __hash__}


def yarns_YarnWeight(given):
    def __init__(self, category, name, yarns, stitches_min, stitches_max, needle_min_mm, needle_max_mm, metres_min, metres_max, source, note):
        put(self, 'category', category)
        put(self, 'name', name)
        put(self, 'yarns', yarns)
        put(self, 'stitches_min', stitches_min)
        put(self, 'stitches_max', stitches_max)
        put(self, 'needle_min_mm', needle_min_mm)
        put(self, 'needle_max_mm', needle_max_mm)
        put(self, 'metres_min', metres_min)
        put(self, 'metres_max', metres_max)
        put(self, 'source', source)
        put(self, 'note', note)
    def __eq__(self, other):
        if other.__class__ is self.__class__:
            return (self.category, self.name, self.yarns, self.stitches_min, self.stitches_max, self.needle_min_mm, self.needle_max_mm, self.metres_min, self.metres_max, self.source, self.note) == (other.category, other.name, other.yarns, other.stitches_min, other.stitches_max, other.needle_min_mm, other.needle_max_mm, other.metres_min, other.metres_max, other.source, other.note)
        return NotImplemented
    def __hash__(self):
        return hash((self.category, self.name, self.yarns, self.stitches_min, self.stitches_max, self.needle_min_mm, self.needle_max_mm, self.metres_min, self.metres_max, self.source, self.note))
    return {'__init__': __init__, '__eq__': __eq__, '__hash__': __hash__}


RECORDS = {
    "amounts.EdgeYarn": ("fe: kind method loops tail_widths tail_loops source", amounts_EdgeYarn),
    "amounts.JoinWay": ("fe: name tail_mm worked_back_mm at_edge source", amounts_JoinWay),
    "care.Care": ("fe: words of line degrees gentle place", care_Care),
    "loops.LoopConstants": ("fe: structure state kc kw ks source", loops_LoopConstants),
    "loops.Rule": ("fe: name low high unit source note", loops_Rule),
    "needles.Needle": ("fe: mm us uk source note", needles_Needle),
    "sizes.BlanketSize": ("fe: name width_min width_max length_min length_max source", sizes_BlanketSize),
    "yarns.YarnWeight": ("fe: category name yarns stitches_min stitches_max needle_min_mm needle_max_mm metres_min metres_max source note", yarns_YarnWeight),
}
