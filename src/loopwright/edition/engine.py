"""WeasyPrint and its native libraries, loaded leaner than they load themselves, and only when a
PDF is asked for.

What is spared here is spared only where WeasyPrint is built as it was when this was written;
otherwise it is imported as it comes.
"""

from __future__ import annotations

import contextlib
import ctypes.util
import gc
import importlib
import importlib.util
import io
import logging
import re
import shutil
import sys
import threading
import warnings
from functools import cache
from types import ModuleType
from typing import TYPE_CHECKING, Any

if TYPE_CHECKING:
    from collections.abc import Iterator

_IMPORT_LOCK = threading.Lock()


class NativeLibrariesMissing(RuntimeError):
    """WeasyPrint is there but Pango and its companions are not. Its one line says the way out."""

    def __init__(self) -> None:
        super().__init__(
            f"a PDF needs the Pango text libraries, which are not installed: {install_command()}"
        )


@contextlib.contextmanager
def no_collecting() -> Iterator[None]:
    """Keep the garbage collector out of a layout: a sixth of its time went into walks over boxes
    that are all still in use. What one page leaves is collected soon after."""
    if not gc.isenabled():
        yield
        return
    gc.disable()
    try:
        yield
    finally:
        gc.enable()


@cache
def load_weasyprint() -> ModuleType:
    """Import WeasyPrint; raise NativeLibrariesMissing where a native library does not load."""
    with _IMPORT_LOCK:
        loaded = set(sys.modules)
        # On Linux WeasyPrint first asks ctypes for each library (which runs ldconfig or a
        # compiler, about 140 ms in all) and then loads it by its file name, which is enough.
        for look_up in (False, True) if sys.platform == "linux" else (True,):
            try:
                made = _import_weasyprint(look_up)
                if not _put_off_styles(made):
                    _forget_since(loaded)
                    made = _import_weasyprint(look_up, lean=False)
                _name_types()
                return made
            except OSError:
                _forget_since(loaded)
        raise NativeLibrariesMissing from None


def _forget_since(loaded: set[str]) -> None:
    for name in set(sys.modules) - loaded:
        if name.partition(".")[0] == "weasyprint":
            del sys.modules[name]


def _import_weasyprint(look_up: bool, lean: bool = True) -> ModuleType:
    find_library = ctypes.util.find_library
    this_thread = threading.get_ident()

    def answer_others(name: str) -> str | None:
        return None if threading.get_ident() == this_thread else find_library(name)

    if not look_up:
        ctypes.util.find_library = answer_others
    try:
        # Where a library is missing, WeasyPrint prints a banner on standard output.
        with (
            contextlib.redirect_stdout(io.StringIO()),
            warnings.catch_warnings(action="ignore"),
            no_collecting(),
            _put_off("fontTools.subset", "fontTools.varLib.instancer"),
            _reading_no_style() if lean else contextlib.nullcontext(),
        ):
            import weasyprint
    finally:
        ctypes.util.find_library = find_library
    module: ModuleType = weasyprint
    return module


@contextlib.contextmanager
def _reading_no_style() -> Iterator[None]:
    """Have style sheets that are read meanwhile read as empty: see `_put_off_styles`."""
    import tinycss2  # type: ignore[import-untyped]

    parse, this_thread = tinycss2.parse_stylesheet, threading.get_ident()

    def nothing(*args: Any, **words: Any) -> Any:
        return [] if threading.get_ident() == this_thread else parse(*args, **words)

    tinycss2.parse_stylesheet = nothing
    try:
        yield
    finally:
        tinycss2.parse_stylesheet = parse


_SHEETS = {"UA_STYLESHEET": "UA", "UA_FORM_STYLESHEET": "UA_FORM", "PH_STYLESHEET": "PH"}
"""WeasyPrint's own style sheets, and its names for their texts."""


def _put_off_styles(weasyprint: ModuleType) -> bool:
    """Have each of WeasyPrint's own style sheets read when it is first asked for.

    It reads three when it is imported, a sixth of its start; a page of ours asks for none of them
    whole. Tells whether it was built as expected, so that all is put off and nothing is lost.
    """
    try:
        from weasyprint import html
        from weasyprint.css.counters import CounterStyle

        counters = html.UA_COUNTER_STYLE
        texts = {name: getattr(html, text) for name, text in _SHEETS.items()}
        sheets = {name: getattr(html, name) for name in _SHEETS}
        parts = ("matcher", "page_rules", "layers")
        read = {name for name, made in vars(html).items() if isinstance(made, weasyprint.CSS)}
        if read != set(_SHEETS) or type(counters) is not CounterStyle or counters:
            return False
        if any(part not in vars(sheet) for sheet in sheets.values() for part in parts):
            return False

        class LaterSheet(weasyprint.CSS):  # type: ignore[name-defined, misc]
            def __getattr__(self, name: str) -> Any:
                if name not in parts:
                    raise AttributeError(name)
                own = next(known for known, sheet in sheets.items() if sheet is self)
                # Its marks of lists go where WeasyPrint keeps them; a second time is no harm.
                marks = None if own == "PH_STYLESHEET" else counters
                made = weasyprint.CSS(string=texts[own], counter_style=marks)
                for part in parts:
                    setattr(self, part, getattr(made, part))
                return getattr(made, name)

        class LaterCounters(CounterStyle):  # type: ignore[misc]
            def copy(self) -> Any:
                if not self:
                    _ = html.UA_STYLESHEET.matcher
                return super().copy()

        for sheet in sheets.values():
            sheet.__class__ = LaterSheet
            for part in parts:
                del vars(sheet)[part]
        counters.__class__ = LaterCounters
    except (ImportError, AttributeError, TypeError) as error:
        logging.getLogger(__name__).debug("styles are read at once: %s", error)
        return False
    return True


def own_style() -> str:
    """WeasyPrint's own style sheet of HTML; empty where it keeps it otherwise than it did."""
    from weasyprint import html

    text = getattr(html, "UA", "")
    return text if isinstance(text, str) else ""


_TYPES = (
    "char", "unsigned int", "FcChar8 *", "PangoFcFontMap", "PangoRectangle", "PangoLogAttr",
    "hb_tag_t", "hb_codepoint_t",
)  # fmt: skip
"""What WeasyPrint makes pointers to and arrays of."""
_ARRAY = re.compile(r"(.*\w) ?\[(\d*)\]")


def _name_types() -> None:
    """Find the types of C that WeasyPrint will name, all at once.

    cffi parses the name of a type with every known name of a type before it, some ten milliseconds
    each, and an array of each length has a name of its own. Where cffi keeps its types otherwise
    than it did, nothing is changed.
    """
    try:
        from _cffi_backend import new_array_type
        from weasyprint.text.ffi import ffi

        parts = "".join(f"{name} *f{at};" for at, name in enumerate(_TYPES))
        ffi.cdef(f"struct loopwright_types {{ {parts} }};")
        pointers = {
            name: field.type
            for name, (_, field) in zip(
                _TYPES, ffi.typeof("struct loopwright_types").fields, strict=True
            )
        }

        class Known(dict[str, Any]):
            def __missing__(self, text: str) -> Any:
                array = _ARRAY.fullmatch(text)
                if array is None or array[1] not in pointers:
                    raise KeyError(text)
                length = int(array[2]) if array[2] else None
                found = self[text] = (new_array_type(pointers[array[1]], length), False)
                return found

        known = Known(ffi._parsed_types)
        for name, pointer in pointers.items():
            known[f"{name}*" if name.endswith("*") else f"{name} *"] = (pointer, False)
        ffi._parsed_types = known
    except Exception as error:
        logging.getLogger(__name__).debug("types of C are found one by one: %s", error)


@contextlib.contextmanager
def _put_off(*names: str) -> Iterator[None]:
    """Have modules that are imported meanwhile loaded only when something in them is called.

    WeasyPrint subsets fonts with HarfBuzz; for machines without it, it imports the tools that can
    do the same in Python, a quarter of its own start. Each name stands for its module until then;
    a function of it loads the module when it is called.
    """
    waiting = [name for name in names if name not in sys.modules]
    for name in waiting:
        sys.modules[name] = _Later(name)
    try:
        yield
    finally:
        for name in waiting:
            if isinstance(sys.modules.get(name), _Later):
                del sys.modules[name]


class _Later(ModuleType):
    """A module that is loaded when a function of it is called."""

    def __getattr__(self, name: str) -> Any:
        if name.startswith("__"):
            raise AttributeError(name)

        def call(*args: Any, **words: Any) -> Any:
            return getattr(importlib.import_module(self.__name__), name)(*args, **words)

        return call


def install_command() -> str:
    """The command that installs the libraries, by platform.

    Source: WeasyPrint's documentation, "First steps"; the Debian names as measured on Debian 12.
    """
    if sys.platform == "darwin":
        return "brew install pango"
    if sys.platform == "win32":
        return "in an MSYS2 shell, pacman -S mingw-w64-x86_64-pango"
    if shutil.which("dnf"):
        return "dnf install pango"
    if shutil.which("apt-get") or shutil.which("apt"):
        return "apt install libpango-1.0-0 libpangoft2-1.0-0 libharfbuzz-subset0"
    return "install Pango with your package manager (apt, dnf and brew call it pango)"
