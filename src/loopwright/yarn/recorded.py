"""The methods of this room's dataclasses. Written by ``make records``."""

# ruff: noqa
# mypy: ignore-errors

UNSET = object()
put = object.__setattr__


def colour_Sight(given):
    def __init__(self, vision, ratio, difference):
        put(self, 'vision', vision)
        put(self, 'ratio', ratio)
        put(self, 'difference', difference)
    def __eq__(self, other):
        if other.__class__ is self.__class__:
            return (self.vision, self.ratio, self.difference) == (other.vision, other.ratio, other.difference)
        return NotImplemented
    def __hash__(self):
        return hash((self.vision, self.ratio, self.difference))
    return {'__init__': __init__, '__eq__': __eq__, '__hash__': __hash__}


def fabric_Fabric(given):
    def __init__(self, name, ks, worked=given['worked'], eaten=given['eaten']):
        put(self, 'name', name)
        put(self, 'ks', ks)
        put(self, 'worked', worked)
        put(self, 'eaten', eaten)
    def __eq__(self, other):
        if other.__class__ is self.__class__:
            return (self.name, self.ks, self.worked, self.eaten) == (other.name, other.ks, other.worked, other.eaten)
        return NotImplemented
    def __hash__(self):
        return hash((self.name, self.ks, self.worked, self.eaten))
    return {'__init__': __init__, '__eq__': __eq__, '__hash__': __hash__}


def feed_Run(given):
    def __init__(self, shade, count, metres, balls, ball_metres, ball_grams, feed=given['feed']):
        put(self, 'shade', shade)
        put(self, 'count', count)
        put(self, 'metres', metres)
        put(self, 'balls', balls)
        put(self, 'ball_metres', ball_metres)
        put(self, 'ball_grams', ball_grams)
        put(self, 'feed', feed)
    def __eq__(self, other):
        if other.__class__ is self.__class__:
            return (self.shade, self.count, self.metres, self.balls, self.ball_metres, self.ball_grams, self.feed) == (other.shade, other.count, other.metres, other.balls, other.ball_metres, other.ball_grams, other.feed)
        return NotImplemented
    def __hash__(self):
        return hash((self.shade, self.count, self.metres, self.balls, self.ball_metres, self.ball_grams, self.feed))
    return {'__init__': __init__, '__eq__': __eq__, '__hash__': __hash__}


def feed_Ends(given):
    def __init__(self, name, tail, worked_back, at_edge):
        put(self, 'name', name)
        put(self, 'tail', tail)
        put(self, 'worked_back', worked_back)
        put(self, 'at_edge', at_edge)
    def __eq__(self, other):
        if other.__class__ is self.__class__:
            return (self.name, self.tail, self.worked_back, self.at_edge) == (other.name, other.tail, other.worked_back, other.at_edge)
        return NotImplemented
    def __hash__(self):
        return hash((self.name, self.tail, self.worked_back, self.at_edge))
    return {'__init__': __init__, '__eq__': __eq__, '__hash__': __hash__}


def holds_Hold(given):
    def __init__(self, strand, shade, feed, piece, first, last):
        put(self, 'strand', strand)
        put(self, 'shade', shade)
        put(self, 'feed', feed)
        put(self, 'piece', piece)
        put(self, 'first', first)
        put(self, 'last', last)
    def __eq__(self, other):
        if other.__class__ is self.__class__:
            return (self.strand, self.shade, self.feed, self.piece, self.first, self.last) == (other.strand, other.shade, other.feed, other.piece, other.first, other.last)
        return NotImplemented
    def __hash__(self):
        return hash((self.strand, self.shade, self.feed, self.piece, self.first, self.last))
    return {'__init__': __init__, '__eq__': __eq__, '__hash__': __hash__}


def holds_Meeting(given):
    def __init__(self, one, other, first, last):
        put(self, 'one', one)
        put(self, 'other', other)
        put(self, 'first', first)
        put(self, 'last', last)
    def __eq__(self, other):
        if other.__class__ is self.__class__:
            return (self.one, self.other, self.first, self.last) == (other.one, other.other, other.first, other.last)
        return NotImplemented
    def __hash__(self):
        return hash((self.one, self.other, self.first, self.last))
    return {'__init__': __init__, '__eq__': __eq__, '__hash__': __hash__}


def joins_Join(given):
    def __init__(self, strand, run, spot, old, new, tail, left_grams, row_grams, metres, earliest=given['earliest'], latest=given['latest'], round_before=given['round_before']):
        put(self, 'strand', strand)
        put(self, 'run', run)
        put(self, 'spot', spot)
        put(self, 'old', old)
        put(self, 'new', new)
        put(self, 'tail', tail)
        put(self, 'left_grams', left_grams)
        put(self, 'row_grams', row_grams)
        put(self, 'metres', metres)
        put(self, 'earliest', earliest)
        put(self, 'latest', latest)
        put(self, 'round_before', round_before)
    def __eq__(self, other):
        if other.__class__ is self.__class__:
            return (self.strand, self.run, self.spot, self.old, self.new, self.tail, self.left_grams, self.row_grams, self.metres, self.earliest, self.latest, self.round_before) == (other.strand, other.run, other.spot, other.old, other.new, other.tail, other.left_grams, other.row_grams, other.metres, other.earliest, other.latest, other.round_before)
        return NotImplemented
    def __hash__(self):
        return hash((self.strand, self.run, self.spot, self.old, self.new, self.tail, self.left_grams, self.row_grams, self.metres, self.earliest, self.latest, self.round_before))
    return {'__init__': __init__, '__eq__': __eq__, '__hash__': __hash__}


def joins_Short(given):
    def __init__(self, shade, spot, metres):
        put(self, 'shade', shade)
        put(self, 'spot', spot)
        put(self, 'metres', metres)
    def __eq__(self, other):
        if other.__class__ is self.__class__:
            return (self.shade, self.spot, self.metres) == (other.shade, other.spot, other.metres)
        return NotImplemented
    def __hash__(self):
        return hash((self.shade, self.spot, self.metres))
    return {'__init__': __init__, '__eq__': __eq__, '__hash__': __hash__}


def joins_Eaten(given):
    def __init__(self, strand, joins, used, need, joined, short):
        put(self, 'strand', strand)
        put(self, 'joins', joins)
        put(self, 'used', used)
        put(self, 'need', need)
        put(self, 'joined', joined)
        put(self, 'short', short)
    def __eq__(self, other):
        if other.__class__ is self.__class__:
            return (self.strand, self.joins, self.used, self.need, self.joined, self.short) == (other.strand, other.joins, other.used, other.need, other.joined, other.short)
        return NotImplemented
    def __hash__(self):
        return hash((self.strand, self.joins, self.used, self.need, self.joined, self.short))
    return {'__init__': __init__, '__eq__': __eq__, '__hash__': __hash__}


def ledger_Lump(given):
    def __init__(self, kind, piece, row, strand, metres, stitches=given['stitches']):
        put(self, 'kind', kind)
        put(self, 'piece', piece)
        put(self, 'row', row)
        put(self, 'strand', strand)
        put(self, 'metres', metres)
        put(self, 'stitches', stitches)
    def __eq__(self, other):
        if other.__class__ is self.__class__:
            return (self.kind, self.piece, self.row, self.strand, self.metres, self.stitches) == (other.kind, other.piece, other.row, other.strand, other.metres, other.stitches)
        return NotImplemented
    def __hash__(self):
        return hash((self.kind, self.piece, self.row, self.strand, self.metres, self.stitches))
    return {'__init__': __init__, '__eq__': __eq__, '__hash__': __hash__}


def ledger_RowYarn(given):
    def __init__(self, strand, fixed, unit, entry, shift, loop):
        put(self, 'strand', strand)
        put(self, 'fixed', fixed)
        put(self, 'unit', unit)
        put(self, 'entry', entry)
        put(self, 'shift', shift)
        put(self, 'loop', loop)
    def __eq__(self, other):
        if other.__class__ is self.__class__:
            return (self.strand, self.fixed, self.unit, self.entry, self.shift, self.loop) == (other.strand, other.fixed, other.unit, other.entry, other.shift, other.loop)
        return NotImplemented
    def __hash__(self):
        return hash((self.strand, self.fixed, self.unit, self.entry, self.shift, self.loop))
    return {'__init__': __init__, '__eq__': __eq__, '__hash__': __hash__}


def ledger_Rows(given):
    def __init__(self, piece, item, motif, first, rows, reps, event):
        put(self, 'piece', piece)
        put(self, 'item', item)
        put(self, 'motif', motif)
        put(self, 'first', first)
        put(self, 'rows', rows)
        put(self, 'reps', reps)
        put(self, 'event', event)
    def __eq__(self, other):
        if other.__class__ is self.__class__:
            return (self.piece, self.item, self.motif, self.first, self.rows, self.reps, self.event) == (other.piece, other.item, other.motif, other.first, other.rows, other.reps, other.event)
        return NotImplemented
    def __hash__(self):
        return hash((self.piece, self.item, self.motif, self.first, self.rows, self.reps, self.event))
    return {'__init__': __init__, '__eq__': __eq__, '__hash__': __hash__}


def ledger_Spot(given):
    def __init__(self, where, piece, row, stitch, stitches, before, into, part, line=given['line'], k=given['k'], round=given['round']):
        put(self, 'where', where)
        put(self, 'piece', piece)
        put(self, 'row', row)
        put(self, 'stitch', stitch)
        put(self, 'stitches', stitches)
        put(self, 'before', before)
        put(self, 'into', into)
        put(self, 'part', part)
        put(self, 'line', line)
        put(self, 'k', k)
        put(self, 'round', round)
    def __eq__(self, other):
        if other.__class__ is self.__class__:
            return (self.where, self.piece, self.row, self.stitch, self.stitches, self.before, self.into, self.part, self.line, self.k, self.round) == (other.where, other.piece, other.row, other.stitch, other.stitches, other.before, other.into, other.part, other.line, other.k, other.round)
        return NotImplemented
    def __hash__(self):
        return hash((self.where, self.piece, self.row, self.stitch, self.stitches, self.before, self.into, self.part, self.line, self.k, self.round))
    return {'__init__': __init__, '__eq__': __eq__, '__hash__': __hash__}


def loop_Loop(given):
    def __init__(self, metres, ground, spread, fabric):
        put(self, 'metres', metres)
        put(self, 'ground', ground)
        put(self, 'spread', spread)
        put(self, 'fabric', fabric)
    def __eq__(self, other):
        if other.__class__ is self.__class__:
            return (self.metres, self.ground, self.spread, self.fabric) == (other.metres, other.ground, other.spread, other.fabric)
        return NotImplemented
    def __hash__(self):
        return hash((self.metres, self.ground, self.spread, self.fabric))
    return {'__init__': __init__, '__eq__': __eq__, '__hash__': __hash__}


def notes_JoinNote(given):
    def __init__(self, strand, item, joins):
        put(self, 'strand', strand)
        put(self, 'item', item)
        put(self, 'joins', joins)
    def __eq__(self, other):
        if other.__class__ is self.__class__:
            return (self.strand, self.item, self.joins) == (other.strand, other.item, other.joins)
        return NotImplemented
    def __hash__(self):
        return hash((self.strand, self.item, self.joins))
    return {'__init__': __init__, '__eq__': __eq__, '__hash__': __hash__}


def plan_Stock(given):
    def __init__(self, shade, balls, ball_metres, colour):
        put(self, 'shade', shade)
        put(self, 'balls', balls)
        put(self, 'ball_metres', ball_metres)
        put(self, 'colour', colour)
    def __eq__(self, other):
        if other.__class__ is self.__class__:
            return (self.shade, self.balls, self.ball_metres, self.colour) == (other.shade, other.balls, other.ball_metres, other.colour)
        return NotImplemented
    def __hash__(self):
        return hash((self.shade, self.balls, self.ball_metres, self.colour))
    return {'__init__': __init__, '__eq__': __eq__, '__hash__': __hash__}


def plan_Wish(given):
    def __init__(self, ledger, strands, stocks, ends, apart=given['apart'], halves=given['halves'], first=UNSET, last=UNSET, factor=given['factor'], names=UNSET):
        put(self, 'ledger', ledger)
        put(self, 'strands', strands)
        put(self, 'stocks', stocks)
        put(self, 'ends', ends)
        put(self, 'apart', apart)
        put(self, 'halves', halves)
        put(self, 'first', given['first']() if first is UNSET else first)
        put(self, 'last', given['last']() if last is UNSET else last)
        put(self, 'factor', factor)
        put(self, 'names', given['names']() if names is UNSET else names)
    def __eq__(self, other):
        if other.__class__ is self.__class__:
            return (self.ledger, self.strands, self.stocks, self.ends, self.apart, self.halves, self.first, self.last, self.factor, self.names) == (other.ledger, other.strands, other.stocks, other.ends, other.apart, other.halves, other.first, other.last, other.factor, other.names)
        return NotImplemented
    def __hash__(self):
        return hash((self.ledger, self.strands, self.stocks, self.ends, self.apart, self.halves, self.first, self.last, self.factor, self.names))
    return {'__init__': __init__, '__eq__': __eq__, '__hash__': __hash__}


def plan_Turn(given):
    def __init__(self, shade, half, start, end, ends):
        put(self, 'shade', shade)
        put(self, 'half', half)
        put(self, 'start', start)
        put(self, 'end', end)
        put(self, 'ends', ends)
    def __eq__(self, other):
        if other.__class__ is self.__class__:
            return (self.shade, self.half, self.start, self.end, self.ends) == (other.shade, other.half, other.start, other.end, other.ends)
        return NotImplemented
    def __hash__(self):
        return hash((self.shade, self.half, self.start, self.end, self.ends))
    return {'__init__': __init__, '__eq__': __eq__, '__hash__': __hash__}


def plan_Plan(given):
    def __init__(self, turns, met, gap, close, score):
        put(self, 'turns', turns)
        put(self, 'met', met)
        put(self, 'gap', gap)
        put(self, 'close', close)
        put(self, 'score', score)
    def __eq__(self, other):
        if other.__class__ is self.__class__:
            return (self.turns, self.met, self.gap, self.close, self.score) == (other.turns, other.met, other.gap, other.close, other.score)
        return NotImplemented
    def __hash__(self):
        return hash((self.turns, self.met, self.gap, self.close, self.score))
    return {'__init__': __init__, '__eq__': __eq__, '__hash__': __hash__}


def report_StrandYarn(given):
    def __init__(self, key, name, metres, grams, spread, loop, runs, eaten, fed, bought):
        put(self, 'key', key)
        put(self, 'name', name)
        put(self, 'metres', metres)
        put(self, 'grams', grams)
        put(self, 'spread', spread)
        put(self, 'loop', loop)
        put(self, 'runs', runs)
        put(self, 'eaten', eaten)
        put(self, 'fed', fed)
        put(self, 'bought', bought)
    def __eq__(self, other):
        if other.__class__ is self.__class__:
            return (self.key, self.name, self.metres, self.grams, self.spread, self.loop, self.runs, self.eaten, self.fed, self.bought) == (other.key, other.name, other.metres, other.grams, other.spread, other.loop, other.runs, other.eaten, other.fed, other.bought)
        return NotImplemented
    def __hash__(self):
        return hash((self.key, self.name, self.metres, self.grams, self.spread, self.loop, self.runs, self.eaten, self.fed, self.bought))
    return {'__init__': __init__, '__eq__': __eq__, '__hash__': __hash__}


def report_ShadeYarn(given):
    def __init__(self, key, name, metres, grams, balls):
        put(self, 'key', key)
        put(self, 'name', name)
        put(self, 'metres', metres)
        put(self, 'grams', grams)
        put(self, 'balls', balls)
    def __eq__(self, other):
        if other.__class__ is self.__class__:
            return (self.key, self.name, self.metres, self.grams, self.balls) == (other.key, other.name, other.metres, other.grams, other.balls)
        return NotImplemented
    def __hash__(self):
        return hash((self.key, self.name, self.metres, self.grams, self.balls))
    return {'__init__': __init__, '__eq__': __eq__, '__hash__': __hash__}


def report_SizeYarn(given):
    def __init__(self, size, name, ledger, strands, shades):
        put(self, 'size', size)
        put(self, 'name', name)
        put(self, 'ledger', ledger)
        put(self, 'strands', strands)
        put(self, 'shades', shades)
    def __eq__(self, other):
        if other.__class__ is self.__class__:
            return (self.size, self.name, self.ledger, self.strands, self.shades) == (other.size, other.name, other.ledger, other.strands, other.shades)
        return NotImplemented
    def __hash__(self):
        return hash((self.size, self.name, self.ledger, self.strands, self.shades))
    return {'__init__': __init__, '__eq__': __eq__, '__hash__': __hash__}


def report_YarnReport(given):
    def __init__(self, sizes, ends, margin):
        put(self, 'sizes', sizes)
        put(self, 'ends', ends)
        put(self, 'margin', margin)
    def __eq__(self, other):
        if other.__class__ is self.__class__:
            return (self.sizes, self.ends, self.margin) == (other.sizes, other.ends, other.margin)
        return NotImplemented
    def __hash__(self):
        return hash((self.sizes, self.ends, self.margin))
    return {'__init__': __init__, '__eq__': __eq__, '__hash__': __hash__}


def search_Found(given):
    def __init__(self, plans, exact, steps):
        put(self, 'plans', plans)
        put(self, 'exact', exact)
        put(self, 'steps', steps)
    def __eq__(self, other):
        if other.__class__ is self.__class__:
            return (self.plans, self.exact, self.steps) == (other.plans, other.exact, other.steps)
        return NotImplemented
    def __hash__(self):
        return hash((self.plans, self.exact, self.steps))
    return {'__init__': __init__, '__eq__': __eq__, '__hash__': __hash__}


def search__Line(given):
    def __init__(self, strand, total, eaten, turns, done):
        self.strand = strand
        self.total = total
        self.eaten = eaten
        self.turns = turns
        self.done = done
    def __eq__(self, other):
        if other.__class__ is self.__class__:
            return (self.strand, self.total, self.eaten, self.turns, self.done) == (other.strand, other.total, other.eaten, other.turns, other.done)
        return NotImplemented
    return {'__init__': __init__, '__eq__': __eq__}


def stripes_StripeFall(given):
    def __init__(self, strand, shade, repeat, rows, stitches, heights, pools):
        put(self, 'strand', strand)
        put(self, 'shade', shade)
        put(self, 'repeat', repeat)
        put(self, 'rows', rows)
        put(self, 'stitches', stitches)
        put(self, 'heights', heights)
        put(self, 'pools', pools)
    def __eq__(self, other):
        if other.__class__ is self.__class__:
            return (self.strand, self.shade, self.repeat, self.rows, self.stitches, self.heights, self.pools) == (other.strand, other.shade, other.repeat, other.rows, other.stitches, other.heights, other.pools)
        return NotImplemented
    def __hash__(self):
        return hash((self.strand, self.shade, self.repeat, self.rows, self.stitches, self.heights, self.pools))
    return {'__init__': __init__, '__eq__': __eq__, '__hash__': __hash__}


def swap_OtherYarn(given):
    def __init__(self, grams, metres, weight):
        put(self, 'grams', grams)
        put(self, 'metres', metres)
        put(self, 'weight', weight)
    def __eq__(self, other):
        if other.__class__ is self.__class__:
            return (self.grams, self.metres, self.weight) == (other.grams, other.metres, other.weight)
        return NotImplemented
    def __hash__(self):
        return hash((self.grams, self.metres, self.weight))
    return {'__init__': __init__, '__eq__': __eq__, '__hash__': __hash__}


def swap_Swap(given):
    def __init__(self, size, shades):
        put(self, 'size', size)
        put(self, 'shades', shades)
    def __eq__(self, other):
        if other.__class__ is self.__class__:
            return (self.size, self.shades) == (other.size, other.shades)
        return NotImplemented
    def __hash__(self):
        return hash((self.size, self.shades))
    return {'__init__': __init__, '__eq__': __eq__, '__hash__': __hash__}


RECORDS = {
    "colour.Sight": ("fe: vision ratio difference", colour_Sight),
    "fabric.Fabric": ("fe: name ks worked= eaten=", fabric_Fabric),
    "feed.Run": ("fe: shade count metres balls ball_metres ball_grams feed=", feed_Run),
    "feed.Ends": ("fe: name tail worked_back at_edge", feed_Ends),
    "holds.Hold": ("fe: strand shade feed piece first last", holds_Hold),
    "holds.Meeting": ("fe: one other first last", holds_Meeting),
    "joins.Join": ("fe: strand run spot old new tail left_grams row_grams metres earliest= latest= round_before=", joins_Join),
    "joins.Short": ("fe: shade spot metres", joins_Short),
    "joins.Eaten": ("fe: strand joins used need joined short", joins_Eaten),
    "ledger.Lump": ("fe: kind piece row strand metres stitches=", ledger_Lump),
    "ledger.RowYarn": ("fe: strand fixed unit entry shift loop", ledger_RowYarn),
    "ledger.Rows": ("fe: piece item motif first rows reps event", ledger_Rows),
    "ledger.Spot": ("fe: where piece row stitch stitches before into part line= k= round=", ledger_Spot),
    "loop.Loop": ("fe: metres ground spread fabric", loop_Loop),
    "notes.JoinNote": ("fe: strand item joins", notes_JoinNote),
    "plan.Stock": ("fe: shade balls ball_metres colour", plan_Stock),
    "plan.Wish": ("fe: ledger strands stocks ends apart= halves= first~default_factory last~default_factory factor= names~default_factory", plan_Wish),
    "plan.Turn": ("fe: shade half start end ends", plan_Turn),
    "plan.Plan": ("fe: turns met gap close score", plan_Plan),
    "report.StrandYarn": ("fe: key name metres grams spread loop runs eaten fed bought", report_StrandYarn),
    "report.ShadeYarn": ("fe: key name metres grams balls", report_ShadeYarn),
    "report.SizeYarn": ("fe: size name ledger strands shades", report_SizeYarn),
    "report.YarnReport": ("fe: sizes ends margin", report_YarnReport),
    "search.Found": ("fe: plans exact steps", search_Found),
    "search._Line": ("e: strand total eaten turns done", search__Line),
    "stripes.StripeFall": ("fe: strand shade repeat rows stitches heights pools", stripes_StripeFall),
    "swap.OtherYarn": ("fe: grams metres weight", swap_OtherYarn),
    "swap.Swap": ("fe: size shades", swap_Swap),
}
