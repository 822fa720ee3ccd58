"""The methods of this room's dataclasses. Written by ``make records``."""

# ruff: noqa
# mypy: ignore-errors

UNSET = object()
put = object.__setattr__


def cells__Use(given):
    def __init__(self, rs, round, count, again, worked=given['worked'], starts=given['starts']):
        put(self, 'rs', rs)
        put(self, 'round', round)
        put(self, 'count', count)
        put(self, 'again', again)
        put(self, 'worked', worked)
        put(self, 'starts', starts)
    def __eq__(self, other):
        if other.__class__ is self.__class__:
            return (self.rs, self.round, self.count, self.again, self.worked, self.starts) == (other.rs, other.round, other.count, other.again, other.worked, other.starts)
        return NotImplemented
    def __hash__(self):
        return hash((self.rs, self.round, self.count, self.again, self.worked, self.starts))
    return {'__init__': __init__, '__eq__': __eq__, '__hash__': __hash__}


def cells__LaidRow(given):
    def __init__(self, rs, worked, ops, cells, right, left):
        put(self, 'rs', rs)
        put(self, 'worked', worked)
        put(self, 'ops', ops)
        put(self, 'cells', cells)
        put(self, 'right', right)
        put(self, 'left', left)
    def __eq__(self, other):
        if other.__class__ is self.__class__:
            return (self.rs, self.worked, self.ops, self.cells, self.right, self.left) == (other.rs, other.worked, other.ops, other.cells, other.right, other.left)
        return NotImplemented
    def __hash__(self):
        return hash((self.rs, self.worked, self.ops, self.cells, self.right, self.left))
    return {'__init__': __init__, '__eq__': __eq__, '__hash__': __hash__}


def chart_Placed(given):
    def __init__(self, symbol, right, left):
        put(self, 'symbol', symbol)
        put(self, 'right', right)
        put(self, 'left', left)
    def __eq__(self, other):
        if other.__class__ is self.__class__:
            return (self.symbol, self.right, self.left) == (other.symbol, other.right, other.left)
        return NotImplemented
    def __hash__(self):
        return hash((self.symbol, self.right, self.left))
    return {'__init__': __init__, '__eq__': __eq__, '__hash__': __hash__}


def chart_Mark(given):
    def __init__(self, symbol, boundary):
        put(self, 'symbol', symbol)
        put(self, 'boundary', boundary)
    def __eq__(self, other):
        if other.__class__ is self.__class__:
            return (self.symbol, self.boundary) == (other.symbol, other.boundary)
        return NotImplemented
    def __hash__(self):
        return hash((self.symbol, self.boundary))
    return {'__init__': __init__, '__eq__': __eq__, '__hash__': __hash__}


def chart_Turn(given):
    def __init__(self, symbol, boundary, wrapped):
        put(self, 'symbol', symbol)
        put(self, 'boundary', boundary)
        put(self, 'wrapped', wrapped)
    def __eq__(self, other):
        if other.__class__ is self.__class__:
            return (self.symbol, self.boundary, self.wrapped) == (other.symbol, other.boundary, other.wrapped)
        return NotImplemented
    def __hash__(self):
        return hash((self.symbol, self.boundary, self.wrapped))
    return {'__init__': __init__, '__eq__': __eq__, '__hash__': __hash__}


def chart_ChartRow(given):
    def __init__(self, number, rs, strand, colours, placed, marks, blank, waiting=given['waiting'], turn=given['turn']):
        put(self, 'number', number)
        put(self, 'rs', rs)
        put(self, 'strand', strand)
        put(self, 'colours', colours)
        put(self, 'placed', placed)
        put(self, 'marks', marks)
        put(self, 'blank', blank)
        put(self, 'waiting', waiting)
        put(self, 'turn', turn)
    def __eq__(self, other):
        if other.__class__ is self.__class__:
            return (self.number, self.rs, self.strand, self.colours, self.placed, self.marks, self.blank, self.waiting, self.turn) == (other.number, other.rs, other.strand, other.colours, other.placed, other.marks, other.blank, other.waiting, other.turn)
        return NotImplemented
    def __hash__(self):
        return hash((self.number, self.rs, self.strand, self.colours, self.placed, self.marks, self.blank, self.waiting, self.turn))
    return {'__init__': __init__, '__eq__': __eq__, '__hash__': __hash__}


def chart_Chart(given):
    def __init__(self, name, size, round, columns, rows, frames, key, start, notes=given['notes']):
        put(self, 'name', name)
        put(self, 'size', size)
        put(self, 'round', round)
        put(self, 'columns', columns)
        put(self, 'rows', rows)
        put(self, 'frames', frames)
        put(self, 'key', key)
        put(self, 'start', start)
        put(self, 'notes', notes)
    def __eq__(self, other):
        if other.__class__ is self.__class__:
            return (self.name, self.size, self.round, self.columns, self.rows, self.frames, self.key, self.start, self.notes) == (other.name, other.size, other.round, other.columns, other.rows, other.frames, other.key, other.start, other.notes)
        return NotImplemented
    def __hash__(self):
        return hash((self.name, self.size, self.round, self.columns, self.rows, self.frames, self.key, self.start, self.notes))
    return {'__init__': __init__, '__eq__': __eq__, '__hash__': __hash__}


def chart_Left(given):
    def __init__(self, name, message, n=given['n'], size=given['size']):
        put(self, 'name', name)
        put(self, 'message', message)
        put(self, 'n', n)
        put(self, 'size', size)
    def __eq__(self, other):
        if other.__class__ is self.__class__:
            return (self.name, self.message, self.n, self.size) == (other.name, other.message, other.n, other.size)
        return NotImplemented
    def __hash__(self):
        return hash((self.name, self.message, self.n, self.size))
    return {'__init__': __init__, '__eq__': __eq__, '__hash__': __hash__}


def cloth_Cloth(given):
    def __init__(self, kind, main, other, colours, names, rows, stitches):
        put(self, 'kind', kind)
        put(self, 'main', main)
        put(self, 'other', other)
        put(self, 'colours', colours)
        put(self, 'names', names)
        put(self, 'rows', rows)
        put(self, 'stitches', stitches)
    def __eq__(self, other):
        if other.__class__ is self.__class__:
            return (self.kind, self.main, self.other, self.colours, self.names, self.rows, self.stitches) == (other.kind, other.main, other.other, other.colours, other.names, other.rows, other.stitches)
        return NotImplemented
    def __hash__(self):
        return hash((self.kind, self.main, self.other, self.colours, self.names, self.rows, self.stitches))
    return {'__init__': __init__, '__eq__': __eq__, '__hash__': __hash__}


def cloth__Sample(given):
    def __init__(self, kind, source, kept, eaten, total):
        put(self, 'kind', kind)
        put(self, 'source', source)
        put(self, 'kept', kept)
        put(self, 'eaten', eaten)
        put(self, 'total', total)
    return {'__init__': __init__}


def columns_Cell(given):
    def __init__(self, op, columns):
        put(self, 'op', op)
        put(self, 'columns', columns)
    def __eq__(self, other):
        if other.__class__ is self.__class__:
            return (self.op, self.columns) == (other.op, other.columns)
        return NotImplemented
    def __hash__(self):
        return hash((self.op, self.columns))
    return {'__init__': __init__, '__eq__': __eq__, '__hash__': __hash__}


def fabric_Fabric(given):
    def __init__(self, png, width, height, words):
        put(self, 'png', png)
        put(self, 'width', width)
        put(self, 'height', height)
        put(self, 'words', words)
    def __eq__(self, other):
        if other.__class__ is self.__class__:
            return (self.png, self.width, self.height, self.words) == (other.png, other.width, other.height, other.words)
        return NotImplemented
    def __hash__(self):
        return hash((self.png, self.width, self.height, self.words))
    return {'__init__': __init__, '__eq__': __eq__, '__hash__': __hash__}


def faces_KeyEntry(given):
    def __init__(self, symbol, cells, rs, ws, long, group=given['group']):
        put(self, 'symbol', symbol)
        put(self, 'cells', cells)
        put(self, 'rs', rs)
        put(self, 'ws', ws)
        put(self, 'long', long)
        put(self, 'group', group)
    def __eq__(self, other):
        if other.__class__ is self.__class__:
            return (self.symbol, self.cells, self.rs, self.ws, self.long, self.group) == (other.symbol, other.cells, other.rs, other.ws, other.long, other.group)
        return NotImplemented
    def __hash__(self):
        return hash((self.symbol, self.cells, self.rs, self.ws, self.long, self.group))
    return {'__init__': __init__, '__eq__': __eq__, '__hash__': __hash__}


def frames_Window(given):
    def __init__(self, start, stop, wide, columns, right=given['right'], left=given['left']):
        put(self, 'start', start)
        put(self, 'stop', stop)
        put(self, 'wide', wide)
        put(self, 'columns', columns)
        put(self, 'right', right)
        put(self, 'left', left)
    def __eq__(self, other):
        if other.__class__ is self.__class__:
            return (self.start, self.stop, self.wide, self.columns, self.right, self.left) == (other.start, other.stop, other.wide, other.columns, other.right, other.left)
        return NotImplemented
    def __hash__(self):
        return hash((self.start, self.stop, self.wide, self.columns, self.right, self.left))
    return {'__init__': __init__, '__eq__': __eq__, '__hash__': __hash__}


def frames_Frame(given):
    def __init__(self, sides):
        put(self, 'sides', sides)
    def __eq__(self, other):
        if other.__class__ is self.__class__:
            return (self.sides,) == (other.sides,)
        return NotImplemented
    def __hash__(self):
        return hash((self.sides,))
    return {'__init__': __init__, '__eq__': __eq__, '__hash__': __hash__}


def frames__Choice(given):
    def __init__(self, right, left):
        put(self, 'right', right)
        put(self, 'left', left)
    def __eq__(self, other):
        if other.__class__ is self.__class__:
            return (self.right, self.left) == (other.right, other.left)
        return NotImplemented
    def __hash__(self):
        return hash((self.right, self.left))
    return {'__init__': __init__, '__eq__': __eq__, '__hash__': __hash__}


def ground_Ground(given):
    def __init__(self, times, growth, live, notes=given['notes']):
        put(self, 'times', times)
        put(self, 'growth', growth)
        put(self, 'live', live)
        put(self, 'notes', notes)
    def __eq__(self, other):
        if other.__class__ is self.__class__:
            return (self.times, self.growth, self.live, self.notes) == (other.times, other.growth, other.live, other.notes)
        return NotImplemented
    def __hash__(self):
        return hash((self.times, self.growth, self.live, self.notes))
    return {'__init__': __init__, '__eq__': __eq__, '__hash__': __hash__}


def outline_Outline(given):
    def __init__(self, points, around, disc):
        put(self, 'points', points)
        put(self, 'around', around)
        put(self, 'disc', disc)
    def __eq__(self, other):
        if other.__class__ is self.__class__:
            return (self.points, self.around, self.disc) == (other.points, other.around, other.disc)
        return NotImplemented
    def __hash__(self):
        return hash((self.points, self.around, self.disc))
    return {'__init__': __init__, '__eq__': __eq__, '__hash__': __hash__}


def palettes_Choice(given):
    def __init__(self, name, colours):
        put(self, 'name', name)
        put(self, 'colours', colours)
    def __eq__(self, other):
        if other.__class__ is self.__class__:
            return (self.name, self.colours) == (other.name, other.colours)
        return NotImplemented
    def __hash__(self):
        return hash((self.name, self.colours))
    return {'__init__': __init__, '__eq__': __eq__, '__hash__': __hash__}


def raster_View(given):
    def __init__(self, across, up, swatch=given['swatch']):
        put(self, 'across', across)
        put(self, 'up', up)
        put(self, 'swatch', swatch)
    def __eq__(self, other):
        if other.__class__ is self.__class__:
            return (self.across, self.up, self.swatch) == (other.across, other.up, other.swatch)
        return NotImplemented
    def __hash__(self):
        return hash((self.across, self.up, self.swatch))
    return {'__init__': __init__, '__eq__': __eq__, '__hash__': __hash__}


def schematic_Measure(given):
    def __init__(self, letter, words, mm):
        put(self, 'letter', letter)
        put(self, 'words', words)
        put(self, 'mm', mm)
    def __eq__(self, other):
        if other.__class__ is self.__class__:
            return (self.letter, self.words, self.mm) == (other.letter, other.words, other.mm)
        return NotImplemented
    def __hash__(self):
        return hash((self.letter, self.words, self.mm))
    return {'__init__': __init__, '__eq__': __eq__, '__hash__': __hash__}


def schematic_Schematic(given):
    def __init__(self, piece, sizes, outline, measures, note):
        put(self, 'piece', piece)
        put(self, 'sizes', sizes)
        put(self, 'outline', outline)
        put(self, 'measures', measures)
        put(self, 'note', note)
    def __eq__(self, other):
        if other.__class__ is self.__class__:
            return (self.piece, self.sizes, self.outline, self.measures, self.note) == (other.piece, other.sizes, other.outline, other.measures, other.note)
        return NotImplemented
    def __hash__(self):
        return hash((self.piece, self.sizes, self.outline, self.measures, self.note))
    return {'__init__': __init__, '__eq__': __eq__, '__hash__': __hash__}


def sheet__Page(given):
    def __init__(self, parts, y=given['y'], width=given['width']):
        self.parts = parts
        self.y = y
        self.width = width
    def __eq__(self, other):
        if other.__class__ is self.__class__:
            return (self.parts, self.y, self.width) == (other.parts, other.y, other.width)
        return NotImplemented
    return {'__init__': __init__, '__eq__': __eq__}


def steps_Op(given):
    def __init__(self, stitch, modifiers, takes, makes, yarn, inner=given['inner']):
        put(self, 'stitch', stitch)
        put(self, 'modifiers', modifiers)
        put(self, 'takes', takes)
        put(self, 'makes', makes)
        put(self, 'yarn', yarn)
        put(self, 'inner', inner)
    def __eq__(self, other):
        if other.__class__ is self.__class__:
            return (self.stitch, self.modifiers, self.takes, self.makes, self.yarn, self.inner) == (other.stitch, other.modifiers, other.takes, other.makes, other.yarn, other.inner)
        return NotImplemented
    def __hash__(self):
        return hash((self.stitch, self.modifiers, self.takes, self.makes, self.yarn, self.inner))
    return {'__init__': __init__, '__eq__': __eq__, '__hash__': __hash__}


def steps_Stretch(given):
    def __init__(self, index, start, stop, unit):
        put(self, 'index', index)
        put(self, 'start', start)
        put(self, 'stop', stop)
        put(self, 'unit', unit)
    def __eq__(self, other):
        if other.__class__ is self.__class__:
            return (self.index, self.start, self.stop, self.unit) == (other.index, other.start, other.stop, other.unit)
        return NotImplemented
    def __hash__(self):
        return hash((self.index, self.start, self.stop, self.unit))
    return {'__init__': __init__, '__eq__': __eq__, '__hash__': __hash__}


def steps_Laid(given):
    def __init__(self, ops, stretches):
        put(self, 'ops', ops)
        put(self, 'stretches', stretches)
    def __eq__(self, other):
        if other.__class__ is self.__class__:
            return (self.ops, self.stretches) == (other.ops, other.stretches)
        return NotImplemented
    def __hash__(self):
        return hash((self.ops, self.stretches))
    return {'__init__': __init__, '__eq__': __eq__, '__hash__': __hash__}


def strips_Strip(given):
    def __init__(self, right, left, bottom, top):
        put(self, 'right', right)
        put(self, 'left', left)
        put(self, 'bottom', bottom)
        put(self, 'top', top)
    def __eq__(self, other):
        if other.__class__ is self.__class__:
            return (self.right, self.left, self.bottom, self.top) == (other.right, other.left, other.bottom, other.top)
        return NotImplemented
    def __hash__(self):
        return hash((self.right, self.left, self.bottom, self.top))
    return {'__init__': __init__, '__eq__': __eq__, '__hash__': __hash__}


def symbols_Symbol(given):
    def __init__(self, lines=given['lines'], dots=given['dots'], bold=given['bold'], dot=given['dot'], line=given['line']):
        put(self, 'lines', lines)
        put(self, 'dots', dots)
        put(self, 'bold', bold)
        put(self, 'dot', dot)
        put(self, 'line', line)
    def __eq__(self, other):
        if other.__class__ is self.__class__:
            return (self.lines, self.dots, self.bold, self.dot, self.line) == (other.lines, other.dots, other.bold, other.dot, other.line)
        return NotImplemented
    def __hash__(self):
        return hash((self.lines, self.dots, self.bold, self.dot, self.line))
    return {'__init__': __init__, '__eq__': __eq__, '__hash__': __hash__}


def symbols__Pen(given):
    def __init__(self, lines=UNSET, dots=UNSET, width=given['width']):
        self.lines = given['lines']() if lines is UNSET else lines
        self.dots = given['dots']() if dots is UNSET else dots
        self.width = width
    def __eq__(self, other):
        if other.__class__ is self.__class__:
            return (self.lines, self.dots, self.width) == (other.lines, other.dots, other.width)
        return NotImplemented
    return {'__init__': __init__, '__eq__': __eq__}


def thread_Thread(given):
    def __init__(self, ends, colours, loop):
        put(self, 'ends', ends)
        put(self, 'colours', colours)
        put(self, 'loop', loop)
    def __eq__(self, other):
        if other.__class__ is self.__class__:
            return (self.ends, self.colours, self.loop) == (other.ends, other.colours, other.loop)
        return NotImplemented
    def __hash__(self):
        return hash((self.ends, self.colours, self.loop))
    return {'__init__': __init__, '__eq__': __eq__, '__hash__': __hash__}


def turning_Start(given):
    def __init__(self, live, rs, round, rows):
        put(self, 'live', live)
        put(self, 'rs', rs)
        put(self, 'round', round)
        put(self, 'rows', rows)
    def __eq__(self, other):
        if other.__class__ is self.__class__:
            return (self.live, self.rs, self.round, self.rows) == (other.live, other.rs, other.round, other.rows)
        return NotImplemented
    def __hash__(self):
        return hash((self.live, self.rs, self.round, self.rows))
    return {'__init__': __init__, '__eq__': __eq__, '__hash__': __hash__}


def turning__Seen(given):
    def __init__(self, fills, behind, rest, all, shape):
        put(self, 'fills', fills)
        put(self, 'behind', behind)
        put(self, 'rest', rest)
        put(self, 'all', all)
        put(self, 'shape', shape)
    def __eq__(self, other):
        if other.__class__ is self.__class__:
            return (self.fills, self.behind, self.rest, self.all, self.shape) == (other.fills, other.behind, other.rest, other.all, other.shape)
        return NotImplemented
    def __hash__(self):
        return hash((self.fills, self.behind, self.rest, self.all, self.shape))
    return {'__init__': __init__, '__eq__': __eq__, '__hash__': __hash__}


RECORDS = {
    "cells._Use": ("fe: rs round count again worked= starts=", cells__Use),
    "cells._LaidRow": ("fe: rs worked ops cells right left", cells__LaidRow),
    "chart.Placed": ("fe: symbol right left", chart_Placed),
    "chart.Mark": ("fe: symbol boundary", chart_Mark),
    "chart.Turn": ("fe: symbol boundary wrapped", chart_Turn),
    "chart.ChartRow": ("fe: number rs strand colours placed marks blank waiting= turn=", chart_ChartRow),
    "chart.Chart": ("fe: name size round columns rows frames key start notes=", chart_Chart),
    "chart.Left": ("fe: name message n= size=", chart_Left),
    "cloth.Cloth": ("fe: kind main other colours names rows stitches", cloth_Cloth),
    "cloth._Sample": ("f: kind source kept eaten total", cloth__Sample),
    "columns.Cell": ("fe: op columns", columns_Cell),
    "fabric.Fabric": ("fe: png width height words", fabric_Fabric),
    "faces.KeyEntry": ("fe: symbol cells rs ws long group=", faces_KeyEntry),
    "frames.Window": ("fe: start stop wide columns right= left=", frames_Window),
    "frames.Frame": ("fe: sides", frames_Frame),
    "frames._Choice": ("fe: right left", frames__Choice),
    "ground.Ground": ("fe: times growth live notes=", ground_Ground),
    "outline.Outline": ("fe: points around disc", outline_Outline),
    "palettes.Choice": ("fe: name colours", palettes_Choice),
    "raster.View": ("fe: across up swatch=", raster_View),
    "schematic.Measure": ("fe: letter words mm", schematic_Measure),
    "schematic.Schematic": ("fe: piece sizes outline measures note", schematic_Schematic),
    "sheet._Page": ("e: parts y= width=", sheet__Page),
    "steps.Op": ("fe: stitch modifiers takes makes yarn inner=", steps_Op),
    "steps.Stretch": ("fe: index start stop unit", steps_Stretch),
    "steps.Laid": ("fe: ops stretches", steps_Laid),
    "strips.Strip": ("fe: right left bottom top", strips_Strip),
    "symbols.Symbol": ("fe: lines= dots= bold= dot= line=", symbols_Symbol),
    "symbols._Pen": ("e: lines~default_factory dots~default_factory width=", symbols__Pen),
    "thread.Thread": ("fe: ends colours loop", thread_Thread),
    "turning.Start": ("fe: live rs round rows", turning_Start),
    "turning._Seen": ("fe: fills behind rest all shape", turning__Seen),
}
