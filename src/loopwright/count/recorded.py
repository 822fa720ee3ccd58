"""The methods of this room's dataclasses. Written by ``make records``."""

# ruff: noqa
# mypy: ignore-errors

UNSET = object()
put = object.__setattr__


def affine_Affine(given):
    def __init__(self, fixed, unit=given['unit']):
        put(self, 'fixed', fixed)
        put(self, 'unit', unit)
    def __eq__(self, other):
        if other.__class__ is self.__class__:
            return (self.fixed, self.unit) == (other.fixed, other.unit)
        return NotImplemented
    def __hash__(self):
        return hash((self.fixed, self.unit))
    return {'__init__': __init__, '__eq__': __eq__, '__hash__': __hash__}


def affine_Range(given):
    def __init__(self, low, high):
        put(self, 'low', low)
        put(self, 'high', high)
    def __eq__(self, other):
        if other.__class__ is self.__class__:
            return (self.low, self.high) == (other.low, other.high)
        return NotImplemented
    def __hash__(self):
        return hash((self.low, self.high))
    return {'__init__': __init__, '__eq__': __eq__, '__hash__': __hash__}


def affine_CountSet(given):
    def __init__(self, residue, modulus, low, high=given['high']):
        put(self, 'residue', residue)
        put(self, 'modulus', modulus)
        put(self, 'low', low)
        put(self, 'high', high)
    def __eq__(self, other):
        if other.__class__ is self.__class__:
            return (self.residue, self.modulus, self.low, self.high) == (other.residue, other.modulus, other.low, other.high)
        return NotImplemented
    def __hash__(self):
        return hash((self.residue, self.modulus, self.low, self.high))
    return {'__init__': __init__, '__eq__': __eq__, '__hash__': __hash__}


def columns_Cell(given):
    def __init__(self, step, takes, makes, filled):
        put(self, 'step', step)
        put(self, 'takes', takes)
        put(self, 'makes', makes)
        put(self, 'filled', filled)
    def __eq__(self, other):
        if other.__class__ is self.__class__:
            return (self.step, self.takes, self.makes, self.filled) == (other.step, other.takes, other.makes, other.filled)
        return NotImplemented
    def __hash__(self):
        return hash((self.step, self.takes, self.makes, self.filled))
    return {'__init__': __init__, '__eq__': __eq__, '__hash__': __hash__}


def columns_LaidRow(given):
    def __init__(self, row, rs, cells):
        put(self, 'row', row)
        put(self, 'rs', rs)
        put(self, 'cells', cells)
    return {'__init__': __init__}


def columns_SlipRun(given):
    def __init__(self, length, at, column, cell, strand):
        put(self, 'length', length)
        put(self, 'at', at)
        put(self, 'column', column)
        put(self, 'cell', cell)
        put(self, 'strand', strand)
    def __eq__(self, other):
        if other.__class__ is self.__class__:
            return (self.length, self.at, self.column, self.cell, self.strand) == (other.length, other.at, other.column, other.cell, other.strand)
        return NotImplemented
    def __hash__(self):
        return hash((self.length, self.at, self.column, self.cell, self.strand))
    return {'__init__': __init__, '__eq__': __eq__, '__hash__': __hash__}


def columns_SlipRow(given):
    def __init__(self, row, rs, columns, written):
        put(self, 'row', row)
        put(self, 'rs', rs)
        put(self, 'columns', columns)
        put(self, 'written', written)
    return {'__init__': __init__}


def live_Live(given):
    def __init__(self, ahead, behind=given['behind'], gap=given['gap']):
        put(self, 'ahead', ahead)
        put(self, 'behind', behind)
        put(self, 'gap', gap)
    def __eq__(self, other):
        if other.__class__ is self.__class__:
            return (self.ahead, self.behind, self.gap) == (other.ahead, other.behind, other.gap)
        return NotImplemented
    def __hash__(self):
        return hash((self.ahead, self.behind, self.gap))
    return {'__init__': __init__, '__eq__': __eq__, '__hash__': __hash__}


def progress_Progress(given):
    def __init__(self, pattern, piece, size, tapes, repeater, holders, estimate, instead, forced, anew, events=UNSET, findings=UNSET, sites=UNSET, state=given['state'], first_cast=given['first_cast'], cast_span=given['cast_span'], moved=given['moved'], unsure=given['unsure'], widest=given['widest'], brought=given['brought'], put_aside=given['put_aside'], row=given['row'], rs=given['rs'], round=given['round'], height=given['height'], strand=given['strand'], spent=UNSET, reached=UNSET):
        self.pattern = pattern
        self.piece = piece
        self.size = size
        self.tapes = tapes
        self.repeater = repeater
        self.holders = holders
        self.estimate = estimate
        self.instead = instead
        self.forced = forced
        self.anew = anew
        self.events = given['events']() if events is UNSET else events
        self.findings = given['findings']() if findings is UNSET else findings
        self.sites = given['sites']() if sites is UNSET else sites
        self.state = state
        self.first_cast = first_cast
        self.cast_span = cast_span
        self.moved = moved
        self.unsure = unsure
        self.widest = widest
        self.brought = brought
        self.put_aside = put_aside
        self.row = row
        self.rs = rs
        self.round = round
        self.height = height
        self.strand = strand
        self.spent = given['spent']() if spent is UNSET else spent
        self.reached = given['reached']() if reached is UNSET else reached
    def __eq__(self, other):
        if other.__class__ is self.__class__:
            return (self.pattern, self.piece, self.size, self.tapes, self.repeater, self.holders, self.estimate, self.instead, self.forced, self.anew, self.events, self.findings, self.sites, self.state, self.first_cast, self.cast_span, self.moved, self.unsure, self.widest, self.brought, self.put_aside, self.row, self.rs, self.round, self.height, self.strand, self.spent, self.reached) == (other.pattern, other.piece, other.size, other.tapes, other.repeater, other.holders, other.estimate, other.instead, other.forced, other.anew, other.events, other.findings, other.sites, other.state, other.first_cast, other.cast_span, other.moved, other.unsure, other.widest, other.brought, other.put_aside, other.row, other.rs, other.round, other.height, other.strand, other.spent, other.reached)
        return NotImplemented
    return {'__init__': __init__, '__eq__': __eq__}


def proof_Proof(given):
    def __init__(self, motif, size, verdict, snags, holds):
        put(self, 'motif', motif)
        put(self, 'size', size)
        put(self, 'verdict', verdict)
        put(self, 'snags', snags)
        put(self, 'holds', holds)
    def __eq__(self, other):
        if other.__class__ is self.__class__:
            return (self.motif, self.size, self.verdict, self.snags, self.holds) == (other.motif, other.size, other.verdict, other.snags, other.holds)
        return NotImplemented
    def __hash__(self):
        return hash((self.motif, self.size, self.verdict, self.snags, self.holds))
    return {'__init__': __init__, '__eq__': __eq__, '__hash__': __hash__}


def repeat_Entry(given):
    def __init__(self, row, start, end, fills, yarn, misfit, turns=given['turns']):
        put(self, 'row', row)
        put(self, 'start', start)
        put(self, 'end', end)
        put(self, 'fills', fills)
        put(self, 'yarn', yarn)
        put(self, 'misfit', misfit)
        put(self, 'turns', turns)
    def __eq__(self, other):
        if other.__class__ is self.__class__:
            return (self.row, self.start, self.end, self.fills, self.yarn, self.misfit, self.turns) == (other.row, other.start, other.end, other.fills, other.yarn, other.misfit, other.turns)
        return NotImplemented
    def __hash__(self):
        return hash((self.row, self.start, self.end, self.fills, self.yarn, self.misfit, self.turns))
    return {'__init__': __init__, '__eq__': __eq__, '__hash__': __hash__}


def repeat_Chunk(given):
    def __init__(self, entries, reps, after):
        put(self, 'entries', entries)
        put(self, 'reps', reps)
        put(self, 'after', after)
    def __eq__(self, other):
        if other.__class__ is self.__class__:
            return (self.entries, self.reps, self.after) == (other.entries, other.reps, other.after)
        return NotImplemented
    def __hash__(self):
        return hash((self.entries, self.reps, self.after))
    return {'__init__': __init__, '__eq__': __eq__, '__hash__': __hash__}


def repeat_Snag(given):
    def __init__(self, kind, row, tape, index, repeat, misfit):
        put(self, 'kind', kind)
        put(self, 'row', row)
        put(self, 'tape', tape)
        put(self, 'index', index)
        put(self, 'repeat', repeat)
        put(self, 'misfit', misfit)
    def __eq__(self, other):
        if other.__class__ is self.__class__:
            return (self.kind, self.row, self.tape, self.index, self.repeat, self.misfit) == (other.kind, other.row, other.tape, other.index, other.repeat, other.misfit)
        return NotImplemented
    def __hash__(self):
        return hash((self.kind, self.row, self.tape, self.index, self.repeat, self.misfit))
    return {'__init__': __init__, '__eq__': __eq__, '__hash__': __hash__}


def row_Misfit(given):
    def __init__(self, kind, n, have, before, after, unit, segment, segments, always, span, detail=given['detail'], end=given['end'], begin=given['begin'], behind=given['behind']):
        put(self, 'kind', kind)
        put(self, 'n', n)
        put(self, 'have', have)
        put(self, 'before', before)
        put(self, 'after', after)
        put(self, 'unit', unit)
        put(self, 'segment', segment)
        put(self, 'segments', segments)
        put(self, 'always', always)
        put(self, 'span', span)
        put(self, 'detail', detail)
        put(self, 'end', end)
        put(self, 'begin', begin)
        put(self, 'behind', behind)
    def __eq__(self, other):
        if other.__class__ is self.__class__:
            return (self.kind, self.n, self.have, self.before, self.after, self.unit, self.segment, self.segments, self.always, self.span, self.detail, self.end, self.begin, self.behind) == (other.kind, other.n, other.have, other.before, other.after, other.unit, other.segment, other.segments, other.always, other.span, other.detail, other.end, other.begin, other.behind)
        return NotImplemented
    def __hash__(self):
        return hash((self.kind, self.n, self.have, self.before, self.after, self.unit, self.segment, self.segments, self.always, self.span, self.detail, self.end, self.begin, self.behind))
    return {'__init__': __init__, '__eq__': __eq__, '__hash__': __hash__}


def row_Outcome(given):
    def __init__(self, made, misfit, fills, yarn, rest=given['rest'], turned=given['turned']):
        put(self, 'made', made)
        put(self, 'misfit', misfit)
        put(self, 'fills', fills)
        put(self, 'yarn', yarn)
        put(self, 'rest', rest)
        put(self, 'turned', turned)
    def __eq__(self, other):
        if other.__class__ is self.__class__:
            return (self.made, self.misfit, self.fills, self.yarn, self.rest, self.turned) == (other.made, other.misfit, other.fills, other.yarn, other.rest, other.turned)
        return NotImplemented
    def __hash__(self):
        return hash((self.made, self.misfit, self.fills, self.yarn, self.rest, self.turned))
    return {'__init__': __init__, '__eq__': __eq__, '__hash__': __hash__}


def solve_Line(given):
    def __init__(self, factor, offset):
        put(self, 'factor', factor)
        put(self, 'offset', offset)
    def __eq__(self, other):
        if other.__class__ is self.__class__:
            return (self.factor, self.offset) == (other.factor, other.offset)
        return NotImplemented
    def __hash__(self):
        return hash((self.factor, self.offset))
    return {'__init__': __init__, '__eq__': __eq__, '__hash__': __hash__}


def solve__Solver(given):
    def __init__(self, found, fill_once=given['fill_once']):
        self.found = found
        self.fill_once = fill_once
    def __eq__(self, other):
        if other.__class__ is self.__class__:
            return (self.found, self.fill_once) == (other.found, other.fill_once)
        return NotImplemented
    return {'__init__': __init__, '__eq__': __eq__}


def spread_RowSpread(given):
    def __init__(self, blocks, place, tail):
        put(self, 'blocks', blocks)
        put(self, 'place', place)
        put(self, 'tail', tail)
    def __eq__(self, other):
        if other.__class__ is self.__class__:
            return (self.blocks, self.place, self.tail) == (other.blocks, other.place, other.tail)
        return NotImplemented
    def __hash__(self):
        return hash((self.blocks, self.place, self.tail))
    return {'__init__': __init__, '__eq__': __eq__, '__hash__': __hash__}


def spread_StitchSpread(given):
    def __init__(self, changes, first, blocks, last):
        put(self, 'changes', changes)
        put(self, 'first', first)
        put(self, 'blocks', blocks)
        put(self, 'last', last)
    def __eq__(self, other):
        if other.__class__ is self.__class__:
            return (self.changes, self.first, self.blocks, self.last) == (other.changes, other.first, other.blocks, other.last)
        return NotImplemented
    def __hash__(self):
        return hash((self.changes, self.first, self.blocks, self.last))
    return {'__init__': __init__, '__eq__': __eq__, '__hash__': __hash__}


def strands_Pickup(given):
    def __init__(self, strand, row, edge, hangs, last, place, was, motif, number, repeat, index, told, round, bind_off=given['bind_off']):
        put(self, 'strand', strand)
        put(self, 'row', row)
        put(self, 'edge', edge)
        put(self, 'hangs', hangs)
        put(self, 'last', last)
        put(self, 'place', place)
        put(self, 'was', was)
        put(self, 'motif', motif)
        put(self, 'number', number)
        put(self, 'repeat', repeat)
        put(self, 'index', index)
        put(self, 'told', told)
        put(self, 'round', round)
        put(self, 'bind_off', bind_off)
    def __eq__(self, other):
        if other.__class__ is self.__class__:
            return (self.strand, self.row, self.edge, self.hangs, self.last, self.place, self.was, self.motif, self.number, self.repeat, self.index, self.told, self.round, self.bind_off) == (other.strand, other.row, other.edge, other.hangs, other.last, other.place, other.was, other.motif, other.number, other.repeat, other.index, other.told, other.round, other.bind_off)
        return NotImplemented
    def __hash__(self):
        return hash((self.strand, self.row, self.edge, self.hangs, self.last, self.place, self.was, self.motif, self.number, self.repeat, self.index, self.told, self.round, self.bind_off))
    return {'__init__': __init__, '__eq__': __eq__, '__hash__': __hash__}


def strands__Left(given):
    def __init__(self, row, edge, place, told=given['told']):
        self.row = row
        self.edge = edge
        self.place = place
        self.told = told
    def __eq__(self, other):
        if other.__class__ is self.__class__:
            return (self.row, self.edge, self.place, self.told) == (other.row, other.edge, other.place, other.told)
        return NotImplemented
    return {'__init__': __init__, '__eq__': __eq__}


def tape_Op(given):
    def __init__(self, kind, takes, makes, yarn, span, name=given['name']):
        put(self, 'kind', kind)
        put(self, 'takes', takes)
        put(self, 'makes', makes)
        put(self, 'yarn', yarn)
        put(self, 'span', span)
        put(self, 'name', name)
    def __eq__(self, other):
        if other.__class__ is self.__class__:
            return (self.kind, self.takes, self.makes, self.yarn, self.span, self.name) == (other.kind, other.takes, other.makes, other.yarn, other.span, other.name)
        return NotImplemented
    def __hash__(self):
        return hash((self.kind, self.takes, self.makes, self.yarn, self.span, self.name))
    return {'__init__': __init__, '__eq__': __eq__, '__hash__': __hash__}


def tape_Tape(given):
    def __init__(self, ops, even, marked, trouble, broken, turns=given['turns']):
        put(self, 'ops', ops)
        put(self, 'even', even)
        put(self, 'marked', marked)
        put(self, 'trouble', trouble)
        put(self, 'broken', broken)
        put(self, 'turns', turns)
    return {'__init__': __init__}


def tape__Sum(given):
    def __init__(self, takes=given['takes'], makes=given['makes'], yarn=given['yarn'], even=given['even']):
        self.takes = takes
        self.makes = makes
        self.yarn = yarn
        self.even = even
    def __eq__(self, other):
        if other.__class__ is self.__class__:
            return (self.takes, self.makes, self.yarn, self.even) == (other.takes, other.makes, other.yarn, other.even)
        return NotImplemented
    return {'__init__': __init__, '__eq__': __eq__}


def waiting_Waiting(given):
    def __init__(self, name, count, piece, row, span, live):
        put(self, 'name', name)
        put(self, 'count', count)
        put(self, 'piece', piece)
        put(self, 'row', row)
        put(self, 'span', span)
        put(self, 'live', live)
    def __eq__(self, other):
        if other.__class__ is self.__class__:
            return (self.name, self.count, self.piece, self.row, self.span, self.live) == (other.name, other.count, other.piece, other.row, other.span, other.live)
        return NotImplemented
    def __hash__(self):
        return hash((self.name, self.count, self.piece, self.row, self.span, self.live))
    return {'__init__': __init__, '__eq__': __eq__, '__hash__': __hash__}


def waiting_Holders(given):
    def __init__(self, waiting=UNSET, taken=UNSET):
        self.waiting = given['waiting']() if waiting is UNSET else waiting
        self.taken = given['taken']() if taken is UNSET else taken
    def __eq__(self, other):
        if other.__class__ is self.__class__:
            return (self.waiting, self.taken) == (other.waiting, other.taken)
        return NotImplemented
    return {'__init__': __init__, '__eq__': __eq__}


def walk_Finding(given):
    def __init__(self, rule, size, span, piece, detail=given['detail'], row=given['row'], motif=given['motif'], snag=given['snag'], row_number=given['row_number'], repeat=given['repeat'], numbers=given['numbers'], name=given['name'], other=given['other']):
        put(self, 'rule', rule)
        put(self, 'size', size)
        put(self, 'span', span)
        put(self, 'piece', piece)
        put(self, 'detail', detail)
        put(self, 'row', row)
        put(self, 'motif', motif)
        put(self, 'snag', snag)
        put(self, 'row_number', row_number)
        put(self, 'repeat', repeat)
        put(self, 'numbers', numbers)
        put(self, 'name', name)
        put(self, 'other', other)
    def __eq__(self, other):
        if other.__class__ is self.__class__:
            return (self.rule, self.size, self.span, self.piece, self.detail, self.row, self.motif, self.snag, self.row_number, self.repeat, self.numbers, self.name, self.other) == (other.rule, other.size, other.span, other.piece, other.detail, other.row, other.motif, other.snag, other.row_number, other.repeat, other.numbers, other.name, other.other)
        return NotImplemented
    def __hash__(self):
        return hash((self.rule, self.size, self.span, self.piece, self.detail, self.row, self.motif, self.snag, self.row_number, self.repeat, self.numbers, self.name, self.other))
    return {'__init__': __init__, '__eq__': __eq__, '__hash__': __hash__}


def walk_Worked(given):
    def __init__(self, item, index, motif, first_row, rs, round, chunk):
        put(self, 'item', item)
        put(self, 'index', index)
        put(self, 'motif', motif)
        put(self, 'first_row', first_row)
        put(self, 'rs', rs)
        put(self, 'round', round)
        put(self, 'chunk', chunk)
    def __eq__(self, other):
        if other.__class__ is self.__class__:
            return (self.item, self.index, self.motif, self.first_row, self.rs, self.round, self.chunk) == (other.item, other.index, other.motif, other.first_row, other.rs, other.round, other.chunk)
        return NotImplemented
    def __hash__(self):
        return hash((self.item, self.index, self.motif, self.first_row, self.rs, self.round, self.chunk))
    return {'__init__': __init__, '__eq__': __eq__, '__hash__': __hash__}


def walk_Cast(given):
    def __init__(self, item, index, count):
        put(self, 'item', item)
        put(self, 'index', index)
        put(self, 'count', count)
    def __eq__(self, other):
        if other.__class__ is self.__class__:
            return (self.item, self.index, self.count) == (other.item, other.index, other.count)
        return NotImplemented
    def __hash__(self):
        return hash((self.item, self.index, self.count))
    return {'__init__': __init__, '__eq__': __eq__, '__hash__': __hash__}


def walk_Bound(given):
    def __init__(self, item, index, count):
        put(self, 'item', item)
        put(self, 'index', index)
        put(self, 'count', count)
    def __eq__(self, other):
        if other.__class__ is self.__class__:
            return (self.item, self.index, self.count) == (other.item, other.index, other.count)
        return NotImplemented
    def __hash__(self):
        return hash((self.item, self.index, self.count))
    return {'__init__': __init__, '__eq__': __eq__, '__hash__': __hash__}


def walk_Moved(given):
    def __init__(self, item, index, count, counts, total):
        put(self, 'item', item)
        put(self, 'index', index)
        put(self, 'count', count)
        put(self, 'counts', counts)
        put(self, 'total', total)
    def __eq__(self, other):
        if other.__class__ is self.__class__:
            return (self.item, self.index, self.count, self.counts, self.total) == (other.item, other.index, other.count, other.counts, other.total)
        return NotImplemented
    def __hash__(self):
        return hash((self.item, self.index, self.count, self.counts, self.total))
    return {'__init__': __init__, '__eq__': __eq__, '__hash__': __hash__}


def walk_Said(given):
    def __init__(self, item, index):
        put(self, 'item', item)
        put(self, 'index', index)
    def __eq__(self, other):
        if other.__class__ is self.__class__:
            return (self.item, self.index) == (other.item, other.index)
        return NotImplemented
    def __hash__(self):
        return hash((self.item, self.index))
    return {'__init__': __init__, '__eq__': __eq__, '__hash__': __hash__}


def walk_ListedRow(given):
    def __init__(self, row, side, strand, start, end, line):
        put(self, 'row', row)
        put(self, 'side', side)
        put(self, 'strand', strand)
        put(self, 'start', start)
        put(self, 'end', end)
        put(self, 'line', line)
    def __eq__(self, other):
        if other.__class__ is self.__class__:
            return (self.row, self.side, self.strand, self.start, self.end, self.line) == (other.row, other.side, other.strand, other.start, other.end, other.line)
        return NotImplemented
    def __hash__(self):
        return hash((self.row, self.side, self.strand, self.start, self.end, self.line))
    return {'__init__': __init__, '__eq__': __eq__, '__hash__': __hash__}


def walk_Site(given):
    def __init__(self, motif, item, count, size, live, rs, round):
        put(self, 'motif', motif)
        put(self, 'item', item)
        put(self, 'count', count)
        put(self, 'size', size)
        put(self, 'live', live)
        put(self, 'rs', rs)
        put(self, 'round', round)
    def __eq__(self, other):
        if other.__class__ is self.__class__:
            return (self.motif, self.item, self.count, self.size, self.live, self.rs, self.round) == (other.motif, other.item, other.count, other.size, other.live, other.rs, other.round)
        return NotImplemented
    def __hash__(self):
        return hash((self.motif, self.item, self.count, self.size, self.live, self.rs, self.round))
    return {'__init__': __init__, '__eq__': __eq__, '__hash__': __hash__}


def walk_Walk(given):
    def __init__(self, piece, size, events, findings, sites, cast_on, widest, rows, height, sound, heights):
        put(self, 'piece', piece)
        put(self, 'size', size)
        put(self, 'events', events)
        put(self, 'findings', findings)
        put(self, 'sites', sites)
        put(self, 'cast_on', cast_on)
        put(self, 'widest', widest)
        put(self, 'rows', rows)
        put(self, 'height', height)
        put(self, 'sound', sound)
        put(self, 'heights', heights)
    return {'__init__': __init__}


def widths_Stretch(given):
    def __init__(self, motif, gauge, first, last, widest, rows, span):
        put(self, 'motif', motif)
        put(self, 'gauge', gauge)
        put(self, 'first', first)
        put(self, 'last', last)
        put(self, 'widest', widest)
        put(self, 'rows', rows)
        put(self, 'span', span)
    def __eq__(self, other):
        if other.__class__ is self.__class__:
            return (self.motif, self.gauge, self.first, self.last, self.widest, self.rows, self.span) == (other.motif, other.gauge, other.first, other.last, other.widest, other.rows, other.span)
        return NotImplemented
    def __hash__(self):
        return hash((self.motif, self.gauge, self.first, self.last, self.widest, self.rows, self.span))
    return {'__init__': __init__, '__eq__': __eq__, '__hash__': __hash__}


RECORDS = {
    "affine.Affine": ("fe: fixed unit=", affine_Affine),
    "affine.Range": ("fe: low high", affine_Range),
    "affine.CountSet": ("fe: residue modulus low high=", affine_CountSet),
    "columns.Cell": ("fe: step takes makes filled", columns_Cell),
    "columns.LaidRow": ("f: row rs cells", columns_LaidRow),
    "columns.SlipRun": ("fe: length at column cell strand", columns_SlipRun),
    "columns.SlipRow": ("f: row rs columns written", columns_SlipRow),
    "live.Live": ("fe: ahead behind= gap=", live_Live),
    "progress.Progress": ("e: pattern piece size tapes repeater holders estimate instead forced anew events~default_factory findings~default_factory sites~default_factory state= first_cast= cast_span= moved= unsure= widest= brought= put_aside= row= rs= round= height= strand= spent~default_factory reached~default_factory", progress_Progress),
    "proof.Proof": ("fe: motif size verdict snags holds", proof_Proof),
    "repeat.Entry": ("fe: row start end fills yarn misfit turns=", repeat_Entry),
    "repeat.Chunk": ("fe: entries reps after", repeat_Chunk),
    "repeat.Snag": ("fe: kind row tape index repeat misfit", repeat_Snag),
    "row.Misfit": ("fe: kind n have before after unit segment segments always span detail= end= begin= behind=", row_Misfit),
    "row.Outcome": ("fe: made misfit fills yarn rest= turned=", row_Outcome),
    "solve.Line": ("fe: factor offset", solve_Line),
    "solve._Solver": ("e: found fill_once=", solve__Solver),
    "spread.RowSpread": ("fe: blocks place tail", spread_RowSpread),
    "spread.StitchSpread": ("fe: changes first blocks last", spread_StitchSpread),
    "strands.Pickup": ("fe: strand row edge hangs last place was motif number repeat index told round bind_off=", strands_Pickup),
    "strands._Left": ("e: row edge place told=", strands__Left),
    "tape.Op": ("fe: kind takes makes yarn span name=", tape_Op),
    "tape.Tape": ("f: ops even marked trouble broken turns=", tape_Tape),
    "tape._Sum": ("e: takes= makes= yarn= even=", tape__Sum),
    "waiting.Waiting": ("fe: name count piece row span live", waiting_Waiting),
    "waiting.Holders": ("e: waiting~default_factory taken~default_factory", waiting_Holders),
    "walk.Finding": ("fe: rule size span piece detail= row= motif= snag= row_number= repeat= numbers= name= other=", walk_Finding),
    "walk.Worked": ("fe: item index motif first_row rs round chunk", walk_Worked),
    "walk.Cast": ("fe: item index count", walk_Cast),
    "walk.Bound": ("fe: item index count", walk_Bound),
    "walk.Moved": ("fe: item index count counts total", walk_Moved),
    "walk.Said": ("fe: item index", walk_Said),
    "walk.ListedRow": ("fe: row side strand start end line", walk_ListedRow),
    "walk.Site": ("fe: motif item count size live rs round", walk_Site),
    "walk.Walk": ("f: piece size events findings sites cast_on widest rows height sound heights", walk_Walk),
    "widths.Stretch": ("fe: motif gauge first last widest rows span", widths_Stretch),
}
