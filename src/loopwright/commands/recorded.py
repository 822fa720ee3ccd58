"""The methods of this room's dataclasses. Written by ``make records``."""

# ruff: noqa
# mypy: ignore-errors

UNSET = object()
put = object.__setattr__


def doctor_Finding(given):
    def __init__(self, name, fine, found, install=given['install']):
        put(self, 'name', name)
        put(self, 'fine', fine)
        put(self, 'found', found)
        put(self, 'install', install)
    def __eq__(self, other):
        if other.__class__ is self.__class__:
            return (self.name, self.fine, self.found, self.install) == (other.name, other.fine, other.found, other.install)
        return NotImplemented
    def __hash__(self):
        return hash((self.name, self.fine, self.found, self.install))
    return {'__init__': __init__, '__eq__': __eq__, '__hash__': __hash__}


def measures_AtMeasures(given):
    def __init__(self, wish, resized, checked):
        put(self, 'wish', wish)
        put(self, 'resized', resized)
        put(self, 'checked', checked)
    def __eq__(self, other):
        if other.__class__ is self.__class__:
            return (self.wish, self.resized, self.checked) == (other.wish, other.resized, other.checked)
        return NotImplemented
    def __hash__(self):
        return hash((self.wish, self.resized, self.checked))
    return {'__init__': __init__, '__eq__': __eq__, '__hash__': __hash__}


RECORDS = {
    "doctor.Finding": ("fe: name fine found install=", doctor_Finding),
    "measures.AtMeasures": ("fe: wish resized checked", measures_AtMeasures),
}
