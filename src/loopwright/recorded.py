"""The methods of this room's dataclasses. Written by ``make records``."""

# ruff: noqa
# mypy: ignore-errors

UNSET = object()
put = object.__setattr__


def build_BuildOptions(given):
    def __init__(self, kinds=given['kinds'], size=given['size'], units=given['units'], paper=given['paper'], counts=given['counts'], changes=given['changes'], personal=given['personal'], terms=given['terms'], language=given['language'], large=given['large']):
        put(self, 'kinds', kinds)
        put(self, 'size', size)
        put(self, 'units', units)
        put(self, 'paper', paper)
        put(self, 'counts', counts)
        put(self, 'changes', changes)
        put(self, 'personal', personal)
        put(self, 'terms', terms)
        put(self, 'language', language)
        put(self, 'large', large)
    def __eq__(self, other):
        if other.__class__ is self.__class__:
            return (self.kinds, self.size, self.units, self.paper, self.counts, self.changes, self.personal, self.terms, self.language, self.large) == (other.kinds, other.size, other.units, other.paper, other.counts, other.changes, other.personal, other.terms, other.language, other.large)
        return NotImplemented
    def __hash__(self):
        return hash((self.kinds, self.size, self.units, self.paper, self.counts, self.changes, self.personal, self.terms, self.language, self.large))
    return {'__init__': __init__, '__eq__': __eq__, '__hash__': __hash__}


def problem_Label(given):
    def __init__(self, span, text):
        put(self, 'span', span)
        put(self, 'text', text)
    def __eq__(self, other):
        if other.__class__ is self.__class__:
            return (self.span, self.text) == (other.span, other.text)
        return NotImplemented
    def __hash__(self):
        return hash((self.span, self.text))
    return {'__init__': __init__, '__eq__': __eq__, '__hash__': __hash__}


def problem_Edit(given):
    def __init__(self, span, text):
        put(self, 'span', span)
        put(self, 'text', text)
    def __eq__(self, other):
        if other.__class__ is self.__class__:
            return (self.span, self.text) == (other.span, other.text)
        return NotImplemented
    def __hash__(self):
        return hash((self.span, self.text))
    return {'__init__': __init__, '__eq__': __eq__, '__hash__': __hash__}


def problem_Fix(given):
    def __init__(self, title, edits):
        put(self, 'title', title)
        put(self, 'edits', edits)
    def __eq__(self, other):
        if other.__class__ is self.__class__:
            return (self.title, self.edits) == (other.title, other.edits)
        return NotImplemented
    def __hash__(self):
        return hash((self.title, self.edits))
    return {'__init__': __init__, '__eq__': __eq__, '__hash__': __hash__}


def problem_Problem(given):
    def __init__(self, rule, severity, title, message, span, labels=given['labels'], help=given['help'], sizes=given['sizes'], fix=given['fix']):
        put(self, 'rule', rule)
        put(self, 'severity', severity)
        put(self, 'title', title)
        put(self, 'message', message)
        put(self, 'span', span)
        put(self, 'labels', labels)
        put(self, 'help', help)
        put(self, 'sizes', sizes)
        put(self, 'fix', fix)
    def __eq__(self, other):
        if other.__class__ is self.__class__:
            return (self.rule, self.severity, self.title, self.message, self.span, self.labels, self.help, self.sizes, self.fix) == (other.rule, other.severity, other.title, other.message, other.span, other.labels, other.help, other.sizes, other.fix)
        return NotImplemented
    def __hash__(self):
        return hash((self.rule, self.severity, self.title, self.message, self.span, self.labels, self.help, self.sizes, self.fix))
    return {'__init__': __init__, '__eq__': __eq__, '__hash__': __hash__}


def shelf_Job(given):
    def __init__(self, path, data, stem):
        put(self, 'path', path)
        put(self, 'data', data)
        put(self, 'stem', stem)
    def __eq__(self, other):
        if other.__class__ is self.__class__:
            return (self.path, self.data, self.stem) == (other.path, other.data, other.stem)
        return NotImplemented
    def __hash__(self):
        return hash((self.path, self.data, self.stem))
    return {'__init__': __init__, '__eq__': __eq__, '__hash__': __hash__}


def shelf_Done(given):
    def __init__(self, path, made, trouble, lost=given['lost']):
        put(self, 'path', path)
        put(self, 'made', made)
        put(self, 'trouble', trouble)
        put(self, 'lost', lost)
    def __eq__(self, other):
        if other.__class__ is self.__class__:
            return (self.path, self.made, self.trouble, self.lost) == (other.path, other.made, other.trouble, other.lost)
        return NotImplemented
    def __hash__(self):
        return hash((self.path, self.made, self.trouble, self.lost))
    return {'__init__': __init__, '__eq__': __eq__, '__hash__': __hash__}


RECORDS = {
    "build.BuildOptions": ("fe: kinds= size= units= paper= counts= changes= personal= terms= language= large=", build_BuildOptions),
    "problem.Label": ("fe: span text", problem_Label),
    "problem.Edit": ("fe: span text", problem_Edit),
    "problem.Fix": ("fe: title edits", problem_Fix),
    "problem.Problem": ("fe: rule severity title message span labels= help= sizes= fix=", problem_Problem),
    "shelf.Job": ("fe: path data stem", shelf_Job),
    "shelf.Done": ("fe: path made trouble lost=", shelf_Done),
}
