"""The methods of this room's dataclasses. Written by ``make records``."""

# ruff: noqa
# mypy: ignore-errors

UNSET = object()
put = object.__setattr__


def asked_AddSize(given):
    def __init__(self, name, width, length):
        put(self, 'name', name)
        put(self, 'width', width)
        put(self, 'length', length)
    def __eq__(self, other):
        if other.__class__ is self.__class__:
            return (self.name, self.width, self.length) == (other.name, other.width, other.length)
        return NotImplemented
    def __hash__(self):
        return hash((self.name, self.width, self.length))
    return {'__init__': __init__, '__eq__': __eq__, '__hash__': __hash__}


def asked_Wish(given):
    def __init__(self, width, length, everywhere, gauges=given['gauges'], scale=given['scale'], add=given['add'], only=given['only'], size=given['size']):
        put(self, 'width', width)
        put(self, 'length', length)
        put(self, 'everywhere', everywhere)
        put(self, 'gauges', gauges)
        put(self, 'scale', scale)
        put(self, 'add', add)
        put(self, 'only', only)
        put(self, 'size', size)
    def __eq__(self, other):
        if other.__class__ is self.__class__:
            return (self.width, self.length, self.everywhere, self.gauges, self.scale, self.add, self.only, self.size) == (other.width, other.length, other.everywhere, other.gauges, other.scale, other.add, other.only, other.size)
        return NotImplemented
    def __hash__(self):
        return hash((self.width, self.length, self.everywhere, self.gauges, self.scale, self.add, self.only, self.size))
    return {'__init__': __init__, '__eq__': __eq__, '__hash__': __hash__}


def claims_Claimed(given):
    def __init__(self, line, before, after):
        put(self, 'line', line)
        put(self, 'before', before)
        put(self, 'after', after)
    def __eq__(self, other):
        if other.__class__ is self.__class__:
            return (self.line, self.before, self.after) == (other.line, other.before, other.after)
        return NotImplemented
    def __hash__(self):
        return hash((self.line, self.before, self.after))
    return {'__init__': __init__, '__eq__': __eq__, '__hash__': __hash__}


def costs_ShadeCost(given):
    def __init__(self, shade, metres, balls):
        put(self, 'shade', shade)
        put(self, 'metres', metres)
        put(self, 'balls', balls)
    def __eq__(self, other):
        if other.__class__ is self.__class__:
            return (self.shade, self.metres, self.balls) == (other.shade, other.metres, other.balls)
        return NotImplemented
    def __hash__(self):
        return hash((self.shade, self.metres, self.balls))
    return {'__init__': __init__, '__eq__': __eq__, '__hash__': __hash__}


def gauges_GaugeWish(given):
    def __init__(self, stitches, rows, over, text, fabric):
        put(self, 'stitches', stitches)
        put(self, 'rows', rows)
        put(self, 'over', over)
        put(self, 'text', text)
        put(self, 'fabric', fabric)
    def __eq__(self, other):
        if other.__class__ is self.__class__:
            return (self.stitches, self.rows, self.over, self.text, self.fabric) == (other.stitches, other.rows, other.over, other.text, other.fabric)
        return NotImplemented
    def __hash__(self):
        return hash((self.stitches, self.rows, self.over, self.text, self.fabric))
    return {'__init__': __init__, '__eq__': __eq__, '__hash__': __hash__}


def least__Narrow(given):
    def __init__(self, size, asked, least, stitches, whole):
        put(self, 'size', size)
        put(self, 'asked', asked)
        put(self, 'least', least)
        put(self, 'stitches', stitches)
        put(self, 'whole', whole)
    def __eq__(self, other):
        if other.__class__ is self.__class__:
            return (self.size, self.asked, self.least, self.stitches, self.whole) == (other.size, other.asked, other.least, other.stitches, other.whole)
        return NotImplemented
    def __hash__(self):
        return hash((self.size, self.asked, self.least, self.stitches, self.whole))
    return {'__init__': __init__, '__eq__': __eq__, '__hash__': __hash__}


def least_TooNarrow(given):
    def __init__(self, piece, wish, _found=UNSET, _motif=given['_motif']):
        self.piece = piece
        self.wish = wish
        self._found = given['_found']() if _found is UNSET else _found
        self._motif = _motif
    def __eq__(self, other):
        if other.__class__ is self.__class__:
            return (self.piece, self.wish, self._found, self._motif) == (other.piece, other.wish, other._found, other._motif)
        return NotImplemented
    return {'__init__': __init__, '__eq__': __eq__}


def lengths_Part(given):
    def __init__(self, item, span, rows, unit, least, height, count, per_count, measure=given['measure']):
        put(self, 'item', item)
        put(self, 'span', span)
        put(self, 'rows', rows)
        put(self, 'unit', unit)
        put(self, 'least', least)
        put(self, 'height', height)
        put(self, 'count', count)
        put(self, 'per_count', per_count)
        put(self, 'measure', measure)
    def __eq__(self, other):
        if other.__class__ is self.__class__:
            return (self.item, self.span, self.rows, self.unit, self.least, self.height, self.count, self.per_count, self.measure) == (other.item, other.span, other.rows, other.unit, other.least, other.height, other.count, other.per_count, other.measure)
        return NotImplemented
    def __hash__(self):
        return hash((self.item, self.span, self.rows, self.unit, self.least, self.height, self.count, self.per_count, self.measure))
    return {'__init__': __init__, '__eq__': __eq__, '__hash__': __hash__}


def lengths_Plan(given):
    def __init__(self, rows, missing):
        put(self, 'rows', rows)
        put(self, 'missing', missing)
    def __eq__(self, other):
        if other.__class__ is self.__class__:
            return (self.rows, self.missing) == (other.rows, other.missing)
        return NotImplemented
    def __hash__(self):
        return hash((self.rows, self.missing))
    return {'__init__': __init__, '__eq__': __eq__, '__hash__': __hash__}


def levers_Choice(given):
    def __init__(self, value, cast_on, widest, width, sheet, repeats=given['repeats']):
        put(self, 'value', value)
        put(self, 'cast_on', cast_on)
        put(self, 'widest', widest)
        put(self, 'width', width)
        put(self, 'sheet', sheet)
        put(self, 'repeats', repeats)
    def __eq__(self, other):
        if other.__class__ is self.__class__:
            return (self.value, self.cast_on, self.widest, self.width, self.sheet, self.repeats) == (other.value, other.cast_on, other.widest, other.width, other.sheet, other.repeats)
        return NotImplemented
    def __hash__(self):
        return hash((self.value, self.cast_on, self.widest, self.width, self.sheet, self.repeats))
    return {'__init__': __init__, '__eq__': __eq__, '__hash__': __hash__}


def loose_Part(given):
    def __init__(self, values, spans, often, now):
        put(self, 'values', values)
        put(self, 'spans', spans)
        put(self, 'often', often)
        put(self, 'now', now)
    def __eq__(self, other):
        if other.__class__ is self.__class__:
            return (self.values, self.spans, self.often, self.now) == (other.values, other.spans, other.often, other.now)
        return NotImplemented
    def __hash__(self):
        return hash((self.values, self.spans, self.often, self.now))
    return {'__init__': __init__, '__eq__': __eq__, '__hash__': __hash__}


def loose_Loose(given):
    def __init__(self, row, parts, fixed):
        put(self, 'row', row)
        put(self, 'parts', parts)
        put(self, 'fixed', fixed)
    def __eq__(self, other):
        if other.__class__ is self.__class__:
            return (self.row, self.parts, self.fixed) == (other.row, other.parts, other.fixed)
        return NotImplemented
    def __hash__(self):
        return hash((self.row, self.parts, self.fixed))
    return {'__init__': __init__, '__eq__': __eq__, '__hash__': __hash__}


def loose_Even(given):
    def __init__(self, row, values, span, now, by):
        put(self, 'row', row)
        put(self, 'values', values)
        put(self, 'span', span)
        put(self, 'now', now)
        put(self, 'by', by)
    def __eq__(self, other):
        if other.__class__ is self.__class__:
            return (self.row, self.values, self.span, self.now, self.by) == (other.row, other.values, other.span, other.now, other.by)
        return NotImplemented
    def __hash__(self):
        return hash((self.row, self.values, self.span, self.now, self.by))
    return {'__init__': __init__, '__eq__': __eq__, '__hash__': __hash__}


def nearest_Fit(given):
    def __init__(self, piece, sizes, gauge, asked, wanted, form, counts, motif, nearest, smaller, larger, far):
        put(self, 'piece', piece)
        put(self, 'sizes', sizes)
        put(self, 'gauge', gauge)
        put(self, 'asked', asked)
        put(self, 'wanted', wanted)
        put(self, 'form', form)
        put(self, 'counts', counts)
        put(self, 'motif', motif)
        put(self, 'nearest', nearest)
        put(self, 'smaller', smaller)
        put(self, 'larger', larger)
        put(self, 'far', far)
    def __eq__(self, other):
        if other.__class__ is self.__class__:
            return (self.piece, self.sizes, self.gauge, self.asked, self.wanted, self.form, self.counts, self.motif, self.nearest, self.smaller, self.larger, self.far) == (other.piece, other.sizes, other.gauge, other.asked, other.wanted, other.form, other.counts, other.motif, other.nearest, other.smaller, other.larger, other.far)
        return NotImplemented
    def __hash__(self):
        return hash((self.piece, self.sizes, self.gauge, self.asked, self.wanted, self.form, self.counts, self.motif, self.nearest, self.smaller, self.larger, self.far))
    return {'__init__': __init__, '__eq__': __eq__, '__hash__': __hash__}


def nearest_Together(given):
    def __init__(self, pieces, size, form, nearest, smaller, larger):
        put(self, 'pieces', pieces)
        put(self, 'size', size)
        put(self, 'form', form)
        put(self, 'nearest', nearest)
        put(self, 'smaller', smaller)
        put(self, 'larger', larger)
    def __eq__(self, other):
        if other.__class__ is self.__class__:
            return (self.pieces, self.size, self.form, self.nearest, self.smaller, self.larger) == (other.pieces, other.size, other.form, other.nearest, other.smaller, other.larger)
        return NotImplemented
    def __hash__(self):
        return hash((self.pieces, self.size, self.form, self.nearest, self.smaller, self.larger))
    return {'__init__': __init__, '__eq__': __eq__, '__hash__': __hash__}


def resize_Resized(given):
    def __init__(self, source, notes, claims=given['claims']):
        put(self, 'source', source)
        put(self, 'notes', notes)
        put(self, 'claims', claims)
    def __eq__(self, other):
        if other.__class__ is self.__class__:
            return (self.source, self.notes, self.claims) == (other.source, other.notes, other.claims)
        return NotImplemented
    def __hash__(self):
        return hash((self.source, self.notes, self.claims))
    return {'__init__': __init__, '__eq__': __eq__, '__hash__': __hash__}


def resize__Aims(given):
    def __init__(self, widths, lengths, pattern_width, pattern_length, asked_length):
        put(self, 'widths', widths)
        put(self, 'lengths', lengths)
        put(self, 'pattern_width', pattern_width)
        put(self, 'pattern_length', pattern_length)
        put(self, 'asked_length', asked_length)
    def __eq__(self, other):
        if other.__class__ is self.__class__:
            return (self.widths, self.lengths, self.pattern_width, self.pattern_length, self.asked_length) == (other.widths, other.lengths, other.pattern_width, other.pattern_length, other.asked_length)
        return NotImplemented
    def __hash__(self):
        return hash((self.widths, self.lengths, self.pattern_width, self.pattern_length, self.asked_length))
    return {'__init__': __init__, '__eq__': __eq__, '__hash__': __hash__}


def slots_Sheet(given):
    def __init__(self, sizes, _old=UNSET, _new=UNSET):
        self.sizes = sizes
        self._old = given['_old']() if _old is UNSET else _old
        self._new = given['_new']() if _new is UNSET else _new
    def __eq__(self, other):
        if other.__class__ is self.__class__:
            return (self.sizes, self._old, self._new) == (other.sizes, other._old, other._new)
        return NotImplemented
    return {'__init__': __init__, '__eq__': __eq__}


def table_Figure(given):
    def __init__(self, name, kind, before, after):
        put(self, 'name', name)
        put(self, 'kind', kind)
        put(self, 'before', before)
        put(self, 'after', after)
    def __eq__(self, other):
        if other.__class__ is self.__class__:
            return (self.name, self.kind, self.before, self.after) == (other.name, other.kind, other.before, other.after)
        return NotImplemented
    def __hash__(self):
        return hash((self.name, self.kind, self.before, self.after))
    return {'__init__': __init__, '__eq__': __eq__, '__hash__': __hash__}


def table_Group(given):
    def __init__(self, size, piece, figures):
        put(self, 'size', size)
        put(self, 'piece', piece)
        put(self, 'figures', figures)
    def __eq__(self, other):
        if other.__class__ is self.__class__:
            return (self.size, self.piece, self.figures) == (other.size, other.piece, other.figures)
        return NotImplemented
    def __hash__(self):
        return hash((self.size, self.piece, self.figures))
    return {'__init__': __init__, '__eq__': __eq__, '__hash__': __hash__}


RECORDS = {
    "asked.AddSize": ("fe: name width length", asked_AddSize),
    "asked.Wish": ("fe: width length everywhere gauges= scale= add= only= size=", asked_Wish),
    "claims.Claimed": ("fe: line before after", claims_Claimed),
    "costs.ShadeCost": ("fe: shade metres balls", costs_ShadeCost),
    "gauges.GaugeWish": ("fe: stitches rows over text fabric", gauges_GaugeWish),
    "least._Narrow": ("fe: size asked least stitches whole", least__Narrow),
    "least.TooNarrow": ("e: piece wish _found~default_factory _motif=", least_TooNarrow),
    "lengths.Part": ("fe: item span rows unit least height count per_count measure=", lengths_Part),
    "lengths.Plan": ("fe: rows missing", lengths_Plan),
    "levers.Choice": ("fe: value cast_on widest width sheet repeats=", levers_Choice),
    "loose.Part": ("fe: values spans often now", loose_Part),
    "loose.Loose": ("fe: row parts fixed", loose_Loose),
    "loose.Even": ("fe: row values span now by", loose_Even),
    "nearest.Fit": ("fe: piece sizes gauge asked wanted form counts motif nearest smaller larger far", nearest_Fit),
    "nearest.Together": ("fe: pieces size form nearest smaller larger", nearest_Together),
    "resize.Resized": ("fe: source notes claims=", resize_Resized),
    "resize._Aims": ("fe: widths lengths pattern_width pattern_length asked_length", resize__Aims),
    "slots.Sheet": ("e: sizes _old~default_factory _new~default_factory", slots_Sheet),
    "table.Figure": ("fe: name kind before after", table_Figure),
    "table.Group": ("fe: size piece figures", table_Group),
}
