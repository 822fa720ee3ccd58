"""The methods of this room's dataclasses. Written by ``make records``."""

# ruff: noqa
# mypy: ignore-errors

UNSET = object()
put = object.__setattr__


def abbreviations_Used(given):
    def __init__(self, catalogue=given['catalogue'], found=UNSET):
        self.catalogue = catalogue
        self.found = given['found']() if found is UNSET else found
    def __eq__(self, other):
        if other.__class__ is self.__class__:
            return (self.catalogue, self.found) == (other.catalogue, other.found)
        return NotImplemented
    return {'__init__': __init__, '__eq__': __eq__}


def catalogue_Catalogue(given):
    def __init__(self, language, messages=UNSET, short=UNSET, long=UNSET, names=UNSET, in_words=given['in_words'], notices=given['notices'], decimal=given['decimal'], units=UNSET, group=given['group'], group_from=given['group_from'], plurals=UNSET, zero_is_one=given['zero_is_one'], spoken=UNSET, aloud=given['aloud']):
        put(self, 'language', language)
        put(self, 'messages', given['messages']() if messages is UNSET else messages)
        put(self, 'short', given['short']() if short is UNSET else short)
        put(self, 'long', given['long']() if long is UNSET else long)
        put(self, 'names', given['names']() if names is UNSET else names)
        put(self, 'in_words', in_words)
        put(self, 'notices', notices)
        put(self, 'decimal', decimal)
        put(self, 'units', given['units']() if units is UNSET else units)
        put(self, 'group', group)
        put(self, 'group_from', group_from)
        put(self, 'plurals', given['plurals']() if plurals is UNSET else plurals)
        put(self, 'zero_is_one', zero_is_one)
        put(self, 'spoken', given['spoken']() if spoken is UNSET else spoken)
        put(self, 'aloud', aloud)
    def __eq__(self, other):
        if other.__class__ is self.__class__:
            return (self.language, self.messages, self.short, self.long, self.names, self.in_words, self.notices, self.decimal, self.units, self.group, self.group_from, self.plurals, self.zero_is_one, self.spoken, self.aloud) == (other.language, other.messages, other.short, other.long, other.names, other.in_words, other.notices, other.decimal, other.units, other.group, other.group_from, other.plurals, other.zero_is_one, other.spoken, other.aloud)
        return NotImplemented
    def __hash__(self):
        return hash((self.language, self.messages, self.short, self.long, self.names, self.in_words, self.notices, self.decimal, self.units, self.group, self.group_from, self.plurals, self.zero_is_one, self.spoken, self.aloud))
    return {'__init__': __init__, '__eq__': __eq__, '__hash__': __hash__}


def cautions_Wearer(given):
    def __init__(self, age):
        put(self, 'age', age)
    def __eq__(self, other):
        if other.__class__ is self.__class__:
            return (self.age,) == (other.age,)
        return NotImplemented
    def __hash__(self):
        return hash((self.age,))
    return {'__init__': __init__, '__eq__': __eq__, '__hash__': __hash__}


def chart_words_PageWords(given):
    def __init__(self, catalogue):
        put(self, 'catalogue', catalogue)
    def __eq__(self, other):
        if other.__class__ is self.__class__:
            return (self.catalogue,) == (other.catalogue,)
        return NotImplemented
    def __hash__(self):
        return hash((self.catalogue,))
    return {'__init__': __init__, '__eq__': __eq__, '__hash__': __hash__}


def document_Table(given):
    def __init__(self, caption, head, rows):
        put(self, 'caption', caption)
        put(self, 'head', head)
        put(self, 'rows', rows)
    def __eq__(self, other):
        if other.__class__ is self.__class__:
            return (self.caption, self.head, self.rows) == (other.caption, other.head, other.rows)
        return NotImplemented
    def __hash__(self):
        return hash((self.caption, self.head, self.rows))
    return {'__init__': __init__, '__eq__': __eq__, '__hash__': __hash__}


def document_Shade(given):
    def __init__(self, name, yarn, strand, amount, colours, needed=given['needed'], weighs=given['weighs']):
        put(self, 'name', name)
        put(self, 'yarn', yarn)
        put(self, 'strand', strand)
        put(self, 'amount', amount)
        put(self, 'colours', colours)
        put(self, 'needed', needed)
        put(self, 'weighs', weighs)
    def __eq__(self, other):
        if other.__class__ is self.__class__:
            return (self.name, self.yarn, self.strand, self.amount, self.colours, self.needed, self.weighs) == (other.name, other.yarn, other.strand, other.amount, other.colours, other.needed, other.weighs)
        return NotImplemented
    def __hash__(self):
        return hash((self.name, self.yarn, self.strand, self.amount, self.colours, self.needed, self.weighs))
    return {'__init__': __init__, '__eq__': __eq__, '__hash__': __hash__}


def document_Abbreviation(given):
    def __init__(self, short, meaning, stitches):
        put(self, 'short', short)
        put(self, 'meaning', meaning)
        put(self, 'stitches', stitches)
    def __eq__(self, other):
        if other.__class__ is self.__class__:
            return (self.short, self.meaning, self.stitches) == (other.short, other.meaning, other.stitches)
        return NotImplemented
    def __hash__(self):
        return hash((self.short, self.meaning, self.stitches))
    return {'__init__': __init__, '__eq__': __eq__, '__hash__': __hash__}


def document_Line(given):
    def __init__(self, kind, label, text, count, strand=given['strand'], new_strand=given['new_strand'], colours=given['colours'], tally=given['tally'], repeats=given['repeats']):
        put(self, 'kind', kind)
        put(self, 'label', label)
        put(self, 'text', text)
        put(self, 'count', count)
        put(self, 'strand', strand)
        put(self, 'new_strand', new_strand)
        put(self, 'colours', colours)
        put(self, 'tally', tally)
        put(self, 'repeats', repeats)
    def __eq__(self, other):
        if other.__class__ is self.__class__:
            return (self.kind, self.label, self.text, self.count, self.strand, self.new_strand, self.colours, self.tally, self.repeats) == (other.kind, other.label, other.text, other.count, other.strand, other.new_strand, other.colours, other.tally, other.repeats)
        return NotImplemented
    def __hash__(self):
        return hash((self.kind, self.label, self.text, self.count, self.strand, self.new_strand, self.colours, self.tally, self.repeats))
    return {'__init__': __init__, '__eq__': __eq__, '__hash__': __hash__}


def document_Section(given):
    def __init__(self, heading, level, lines, motifs=given['motifs']):
        put(self, 'heading', heading)
        put(self, 'level', level)
        put(self, 'lines', lines)
        put(self, 'motifs', motifs)
    def __eq__(self, other):
        if other.__class__ is self.__class__:
            return (self.heading, self.level, self.lines, self.motifs) == (other.heading, other.level, other.lines, other.motifs)
        return NotImplemented
    def __hash__(self):
        return hash((self.heading, self.level, self.lines, self.motifs))
    return {'__init__': __init__, '__eq__': __eq__, '__hash__': __hash__}


def document_FollowRow(given):
    def __init__(self, section, line, motif=given['motif'], row=given['row']):
        put(self, 'section', section)
        put(self, 'line', line)
        put(self, 'motif', motif)
        put(self, 'row', row)
    def __eq__(self, other):
        if other.__class__ is self.__class__:
            return (self.section, self.line, self.motif, self.row) == (other.section, other.line, other.motif, other.row)
        return NotImplemented
    def __hash__(self):
        return hash((self.section, self.line, self.motif, self.row))
    return {'__init__': __init__, '__eq__': __eq__, '__hash__': __hash__}


def document_FollowStep(given):
    def __init__(self, rows, times=given['times'], tick=given['tick'], counted=given['counted'], piece=given['piece'], before=given['before'], round=given['round']):
        put(self, 'rows', rows)
        put(self, 'times', times)
        put(self, 'tick', tick)
        put(self, 'counted', counted)
        put(self, 'piece', piece)
        put(self, 'before', before)
        put(self, 'round', round)
    def __eq__(self, other):
        if other.__class__ is self.__class__:
            return (self.rows, self.times, self.tick, self.counted, self.piece, self.before, self.round) == (other.rows, other.times, other.tick, other.counted, other.piece, other.before, other.round)
        return NotImplemented
    def __hash__(self):
        return hash((self.rows, self.times, self.tick, self.counted, self.piece, self.before, self.round))
    return {'__init__': __init__, '__eq__': __eq__, '__hash__': __hash__}


def document_KeyLine(given):
    def __init__(self, svg, rs, ws):
        put(self, 'svg', svg)
        put(self, 'rs', rs)
        put(self, 'ws', ws)
    def __eq__(self, other):
        if other.__class__ is self.__class__:
            return (self.svg, self.rs, self.ws) == (other.svg, other.rs, other.ws)
        return NotImplemented
    def __hash__(self):
        return hash((self.svg, self.rs, self.ws))
    return {'__init__': __init__, '__eq__': __eq__, '__hash__': __hash__}


def document_ChartPicture(given):
    def __init__(self, title, strips, key, framed, sided, wide, words, motif=given['motif']):
        put(self, 'title', title)
        put(self, 'strips', strips)
        put(self, 'key', key)
        put(self, 'framed', framed)
        put(self, 'sided', sided)
        put(self, 'wide', wide)
        put(self, 'words', words)
        put(self, 'motif', motif)
    def __eq__(self, other):
        if other.__class__ is self.__class__:
            return (self.title, self.strips, self.key, self.framed, self.sided, self.wide, self.words, self.motif) == (other.title, other.strips, other.key, other.framed, other.sided, other.wide, other.words, other.motif)
        return NotImplemented
    def __hash__(self):
        return hash((self.title, self.strips, self.key, self.framed, self.sided, self.wide, self.words, self.motif))
    return {'__init__': __init__, '__eq__': __eq__, '__hash__': __hash__}


def document_Uncharted(given):
    def __init__(self, motif, words):
        put(self, 'motif', motif)
        put(self, 'words', words)
    def __eq__(self, other):
        if other.__class__ is self.__class__:
            return (self.motif, self.words) == (other.motif, other.words)
        return NotImplemented
    def __hash__(self):
        return hash((self.motif, self.words))
    return {'__init__': __init__, '__eq__': __eq__, '__hash__': __hash__}


def document_SchematicPicture(given):
    def __init__(self, title, svg, measures, note):
        put(self, 'title', title)
        put(self, 'svg', svg)
        put(self, 'measures', measures)
        put(self, 'note', note)
    def __eq__(self, other):
        if other.__class__ is self.__class__:
            return (self.title, self.svg, self.measures, self.note) == (other.title, other.svg, other.measures, other.note)
        return NotImplemented
    def __hash__(self):
        return hash((self.title, self.svg, self.measures, self.note))
    return {'__init__': __init__, '__eq__': __eq__, '__hash__': __hash__}


def document_ClothPicture(given):
    def __init__(self, src, width, height, words):
        put(self, 'src', src)
        put(self, 'width', width)
        put(self, 'height', height)
        put(self, 'words', words)
    def __eq__(self, other):
        if other.__class__ is self.__class__:
            return (self.src, self.width, self.height, self.words) == (other.src, other.width, other.height, other.words)
        return NotImplemented
    def __hash__(self):
        return hash((self.src, self.width, self.height, self.words))
    return {'__init__': __init__, '__eq__': __eq__, '__hash__': __hash__}


def document_Personal(given):
    def __init__(self, asked, made_for, changes, notes):
        put(self, 'asked', asked)
        put(self, 'made_for', made_for)
        put(self, 'changes', changes)
        put(self, 'notes', notes)
    def __eq__(self, other):
        if other.__class__ is self.__class__:
            return (self.asked, self.made_for, self.changes, self.notes) == (other.asked, other.made_for, other.changes, other.notes)
        return NotImplemented
    def __hash__(self):
        return hash((self.asked, self.made_for, self.changes, self.notes))
    return {'__init__': __init__, '__eq__': __eq__, '__hash__': __hash__}


def document_Document(given):
    def __init__(self, language, title, designer, summary, level, sizes, finished, gauge, needles, yarns, shades, notions, notes, abbreviations, sections, cautions, notices, charts=given['charts'], uncharted=given['uncharted'], schematics=given['schematics'], cloth=given['cloth'], personal=given['personal'], care=given['care'], substitution=given['substitution'], skills=given['skills'], follow=given['follow'], catalogue=given['catalogue']):
        put(self, 'language', language)
        put(self, 'title', title)
        put(self, 'designer', designer)
        put(self, 'summary', summary)
        put(self, 'level', level)
        put(self, 'sizes', sizes)
        put(self, 'finished', finished)
        put(self, 'gauge', gauge)
        put(self, 'needles', needles)
        put(self, 'yarns', yarns)
        put(self, 'shades', shades)
        put(self, 'notions', notions)
        put(self, 'notes', notes)
        put(self, 'abbreviations', abbreviations)
        put(self, 'sections', sections)
        put(self, 'cautions', cautions)
        put(self, 'notices', notices)
        put(self, 'charts', charts)
        put(self, 'uncharted', uncharted)
        put(self, 'schematics', schematics)
        put(self, 'cloth', cloth)
        put(self, 'personal', personal)
        put(self, 'care', care)
        put(self, 'substitution', substitution)
        put(self, 'skills', skills)
        put(self, 'follow', follow)
        put(self, 'catalogue', catalogue)
    def __eq__(self, other):
        if other.__class__ is self.__class__:
            return (self.language, self.title, self.designer, self.summary, self.level, self.sizes, self.finished, self.gauge, self.needles, self.yarns, self.shades, self.notions, self.notes, self.abbreviations, self.sections, self.cautions, self.notices, self.charts, self.uncharted, self.schematics, self.cloth, self.personal, self.care, self.substitution, self.skills, self.follow, self.catalogue) == (other.language, other.title, other.designer, other.summary, other.level, other.sizes, other.finished, other.gauge, other.needles, other.yarns, other.shades, other.notions, other.notes, other.abbreviations, other.sections, other.cautions, other.notices, other.charts, other.uncharted, other.schematics, other.cloth, other.personal, other.care, other.substitution, other.skills, other.follow, other.catalogue)
        return NotImplemented
    def __hash__(self):
        return hash((self.language, self.title, self.designer, self.summary, self.level, self.sizes, self.finished, self.gauge, self.needles, self.yarns, self.shades, self.notions, self.notes, self.abbreviations, self.sections, self.cautions, self.notices, self.charts, self.uncharted, self.schematics, self.cloth, self.personal, self.care, self.substitution, self.skills, self.follow, self.catalogue))
    return {'__init__': __init__, '__eq__': __eq__, '__hash__': __hash__}


def errata_Version(given):
    def __init__(self, pattern, walks):
        put(self, 'pattern', pattern)
        put(self, 'walks', walks)
    def __eq__(self, other):
        if other.__class__ is self.__class__:
            return (self.pattern, self.walks) == (other.pattern, other.walks)
        return NotImplemented
    def __hash__(self):
        return hash((self.pattern, self.walks))
    return {'__init__': __init__, '__eq__': __eq__, '__hash__': __hash__}


def errata_Change(given):
    def __init__(self, where, was, now, sizes=given['sizes']):
        put(self, 'where', where)
        put(self, 'was', was)
        put(self, 'now', now)
        put(self, 'sizes', sizes)
    def __eq__(self, other):
        if other.__class__ is self.__class__:
            return (self.where, self.was, self.now, self.sizes) == (other.where, other.was, other.now, other.sizes)
        return NotImplemented
    def __hash__(self):
        return hash((self.where, self.was, self.now, self.sizes))
    return {'__init__': __init__, '__eq__': __eq__, '__hash__': __hash__}


def errata__Entry(given):
    def __init__(self, place, label, text):
        put(self, 'place', place)
        put(self, 'label', label)
        put(self, 'text', text)
    def __eq__(self, other):
        if other.__class__ is self.__class__:
            return (self.place, self.label, self.text) == (other.place, other.label, other.text)
        return NotImplemented
    def __hash__(self):
        return hash((self.place, self.label, self.text))
    return {'__init__': __init__, '__eq__': __eq__, '__hash__': __hash__}


def follow_Follower(given):
    def __init__(self, steps=UNSET, round=given['round'], _printed=UNSET, _kept=UNSET):
        self.steps = given['steps']() if steps is UNSET else steps
        self.round = round
        self._printed = given['_printed']() if _printed is UNSET else _printed
        self._kept = given['_kept']() if _kept is UNSET else _kept
    def __eq__(self, other):
        if other.__class__ is self.__class__:
            return (self.steps, self.round, self._printed, self._kept) == (other.steps, other.round, other._printed, other._kept)
        return NotImplemented
    return {'__init__': __init__, '__eq__': __eq__}


def indexed_Indexed(given):
    def __init__(self, width, height, bits, table, data):
        put(self, 'width', width)
        put(self, 'height', height)
        put(self, 'bits', bits)
        put(self, 'table', table)
        put(self, 'data', data)
    def __eq__(self, other):
        if other.__class__ is self.__class__:
            return (self.width, self.height, self.bits, self.table, self.data) == (other.width, other.height, other.bits, other.table, other.data)
        return NotImplemented
    def __hash__(self):
        return hash((self.width, self.height, self.bits, self.table, self.data))
    return {'__init__': __init__, '__eq__': __eq__, '__hash__': __hash__}


def large_Block(given):
    def __init__(self, kind, text, label=given['label'], level=given['level'], anchor=given['anchor']):
        put(self, 'kind', kind)
        put(self, 'text', text)
        put(self, 'label', label)
        put(self, 'level', level)
        put(self, 'anchor', anchor)
    def __eq__(self, other):
        if other.__class__ is self.__class__:
            return (self.kind, self.text, self.label, self.level, self.anchor) == (other.kind, other.text, other.label, other.level, other.anchor)
        return NotImplemented
    def __hash__(self):
        return hash((self.kind, self.text, self.label, self.level, self.anchor))
    return {'__init__': __init__, '__eq__': __eq__, '__hash__': __hash__}


def lean_Names(given):
    def __init__(self, tags, classes, ids, attributes):
        put(self, 'tags', tags)
        put(self, 'classes', classes)
        put(self, 'ids', ids)
        put(self, 'attributes', attributes)
    def __eq__(self, other):
        if other.__class__ is self.__class__:
            return (self.tags, self.classes, self.ids, self.attributes) == (other.tags, other.classes, other.ids, other.attributes)
        return NotImplemented
    def __hash__(self):
        return hash((self.tags, self.classes, self.ids, self.attributes))
    return {'__init__': __init__, '__eq__': __eq__, '__hash__': __hash__}


def lesson_Lesson(given):
    def __init__(self, title, size, ready, techniques, points, abbreviations, notices, catalogue):
        put(self, 'title', title)
        put(self, 'size', size)
        put(self, 'ready', ready)
        put(self, 'techniques', techniques)
        put(self, 'points', points)
        put(self, 'abbreviations', abbreviations)
        put(self, 'notices', notices)
        put(self, 'catalogue', catalogue)
    def __eq__(self, other):
        if other.__class__ is self.__class__:
            return (self.title, self.size, self.ready, self.techniques, self.points, self.abbreviations, self.notices, self.catalogue) == (other.title, other.size, other.ready, other.techniques, other.points, other.abbreviations, other.notices, other.catalogue)
        return NotImplemented
    def __hash__(self):
        return hash((self.title, self.size, self.ready, self.techniques, self.points, self.abbreviations, self.notices, self.catalogue))
    return {'__init__': __init__, '__eq__': __eq__, '__hash__': __hash__}


def line_writer_Printed(given):
    def __init__(self, first, in_round, rows):
        put(self, 'first', first)
        put(self, 'in_round', in_round)
        put(self, 'rows', rows)
    def __eq__(self, other):
        if other.__class__ is self.__class__:
            return (self.first, self.in_round, self.rows) == (other.first, other.in_round, other.rows)
        return NotImplemented
    def __hash__(self):
        return hash((self.first, self.in_round, self.rows))
    return {'__init__': __init__, '__eq__': __eq__, '__hash__': __hash__}


def phrases_FillTimes(given):
    def __init__(self, sizes, repeats):
        put(self, 'sizes', sizes)
        put(self, 'repeats', repeats)
    def __eq__(self, other):
        if other.__class__ is self.__class__:
            return (self.sizes, self.repeats) == (other.sizes, other.repeats)
        return NotImplemented
    def __hash__(self):
        return hash((self.sizes, self.repeats))
    return {'__init__': __init__, '__eq__': __eq__, '__hash__': __hash__}


def pitfalls_Point(given):
    def __init__(self, where, text):
        put(self, 'where', where)
        put(self, 'text', text)
    def __eq__(self, other):
        if other.__class__ is self.__class__:
            return (self.where, self.text) == (other.where, other.text)
        return NotImplemented
    def __hash__(self):
        return hash((self.where, self.text))
    return {'__init__': __init__, '__eq__': __eq__, '__hash__': __hash__}


def pitfalls__Spot(given):
    def __init__(self, event, index, times):
        put(self, 'event', event)
        put(self, 'index', index)
        put(self, 'times', times)
    def __eq__(self, other):
        if other.__class__ is self.__class__:
            return (self.event, self.index, self.times) == (other.event, other.index, other.times)
        return NotImplemented
    def __hash__(self):
        return hash((self.event, self.index, self.times))
    return {'__init__': __init__, '__eq__': __eq__, '__hash__': __hash__}


def pitfalls_Change(given):
    def __init__(self, event, index, first, times):
        put(self, 'event', event)
        put(self, 'index', index)
        put(self, 'first', first)
        put(self, 'times', times)
    def __eq__(self, other):
        if other.__class__ is self.__class__:
            return (self.event, self.index, self.first, self.times) == (other.event, other.index, other.first, other.times)
        return NotImplemented
    def __hash__(self):
        return hash((self.event, self.index, self.first, self.times))
    return {'__init__': __init__, '__eq__': __eq__, '__hash__': __hash__}


def step_words_Unit(given):
    def __init__(self, units, takes, only, often, left, place):
        put(self, 'units', units)
        put(self, 'takes', takes)
        put(self, 'only', only)
        put(self, 'often', often)
        put(self, 'left', left)
        put(self, 'place', place)
    def __eq__(self, other):
        if other.__class__ is self.__class__:
            return (self.units, self.takes, self.only, self.often, self.left, self.place) == (other.units, other.takes, other.only, other.often, other.left, other.place)
        return NotImplemented
    def __hash__(self):
        return hash((self.units, self.takes, self.only, self.often, self.left, self.place))
    return {'__init__': __init__, '__eq__': __eq__, '__hash__': __hash__}


def techniques_Technique(given):
    def __init__(self, name, where, times, place, skill, method=given['method']):
        self.name = name
        self.where = where
        self.times = times
        self.place = place
        self.skill = skill
        self.method = method
    def __eq__(self, other):
        if other.__class__ is self.__class__:
            return (self.name, self.where, self.times, self.place, self.skill, self.method) == (other.name, other.where, other.times, other.place, other.skill, other.method)
        return NotImplemented
    return {'__init__': __init__, '__eq__': __eq__}


def techniques_Met(given):
    def __init__(self, voice, several, found=UNSET, kinds=UNSET, at=given['at']):
        self.voice = voice
        self.several = several
        self.found = given['found']() if found is UNSET else found
        self.kinds = given['kinds']() if kinds is UNSET else kinds
        self.at = at
    def __eq__(self, other):
        if other.__class__ is self.__class__:
            return (self.voice, self.several, self.found, self.kinds, self.at) == (other.voice, other.several, other.found, other.kinds, other.at)
        return NotImplemented
    return {'__init__': __init__, '__eq__': __eq__}


RECORDS = {
    "abbreviations.Used": ("e: catalogue= found~default_factory", abbreviations_Used),
    "catalogue.Catalogue": ("fe: language messages~default_factory short~default_factory long~default_factory names~default_factory in_words= notices= decimal= units~default_factory group= group_from= plurals~default_factory zero_is_one= spoken~default_factory aloud=", catalogue_Catalogue),
    "cautions.Wearer": ("fe: age", cautions_Wearer),
    "chart_words.PageWords": ("fe: catalogue", chart_words_PageWords),
    "document.Table": ("fe: caption head rows", document_Table),
    "document.Shade": ("fe: name yarn strand amount colours needed= weighs=", document_Shade),
    "document.Abbreviation": ("fe: short meaning stitches", document_Abbreviation),
    "document.Line": ("fe: kind label text count strand= new_strand= colours= tally= repeats=", document_Line),
    "document.Section": ("fe: heading level lines motifs=", document_Section),
    "document.FollowRow": ("fe: section line motif= row=", document_FollowRow),
    "document.FollowStep": ("fe: rows times= tick= counted= piece= before= round=", document_FollowStep),
    "document.KeyLine": ("fe: svg rs ws", document_KeyLine),
    "document.ChartPicture": ("fe: title strips key framed sided wide words motif=", document_ChartPicture),
    "document.Uncharted": ("fe: motif words", document_Uncharted),
    "document.SchematicPicture": ("fe: title svg measures note", document_SchematicPicture),
    "document.ClothPicture": ("fe: src width height words", document_ClothPicture),
    "document.Personal": ("fe: asked made_for changes notes", document_Personal),
    "document.Document": ("fe: language title designer summary level sizes finished gauge needles yarns shades notions notes abbreviations sections cautions notices charts= uncharted= schematics= cloth= personal= care= substitution= skills= follow= catalogue=", document_Document),
    "errata.Version": ("fe: pattern walks", errata_Version),
    "errata.Change": ("fe: where was now sizes=", errata_Change),
    "errata._Entry": ("fe: place label text", errata__Entry),
    "follow.Follower": ("e: steps~default_factory round= _printed~default_factory _kept~default_factory", follow_Follower),
    "indexed.Indexed": ("fe: width height bits table data", indexed_Indexed),
    "large.Block": ("fe: kind text label= level= anchor=", large_Block),
    "lean.Names": ("fe: tags classes ids attributes", lean_Names),
    "lesson.Lesson": ("fe: title size ready techniques points abbreviations notices catalogue", lesson_Lesson),
    "line_writer.Printed": ("fe: first in_round rows", line_writer_Printed),
    "phrases.FillTimes": ("fe: sizes repeats", phrases_FillTimes),
    "pitfalls.Point": ("fe: where text", pitfalls_Point),
    "pitfalls._Spot": ("fe: event index times", pitfalls__Spot),
    "pitfalls.Change": ("fe: event index first times", pitfalls_Change),
    "step_words.Unit": ("fe: units takes only often left place", step_words_Unit),
    "techniques.Technique": ("e: name where times place skill method=", techniques_Technique),
    "techniques.Met": ("e: voice several found~default_factory kinds~default_factory at=", techniques_Met),
}
