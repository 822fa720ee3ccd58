#!/bin/bash
# Makes .venv with the package and its tools in it. Run again, it does only what has changed.
# Written for bash 3.2 and for the tools of both Debian and macOS.
set -eu
cd "$(dirname "$0")/.."

say() { printf '%s\n' "$*" >&2; }
stop() { say "setup: $*"; exit 1; }

# as_root COMMAND…: runs it where that asks for no password; fails where it would.
as_root() {
    if [ "$(id -u)" = 0 ]; then
        "$@"
    elif command -v sudo >/dev/null 2>&1 && sudo -n true >/dev/null 2>&1; then
        sudo -n "$@"
    else
        return 1
    fi
}

# apt_install PACKAGE…: installs on Debian and its kin; fails elsewhere or without the right.
apt_install() {
    command -v apt-get >/dev/null 2>&1 || return 1
    as_root true || return 1
    say "setup: installing $* with apt"
    as_root env DEBIAN_FRONTEND=noninteractive apt-get install -y -q --no-install-recommends "$@" \
        >/dev/null 2>&1 </dev/null && return 0
    # The package lists may be old or empty.
    as_root apt-get update -q >/dev/null 2>&1 </dev/null || return 1
    as_root env DEBIAN_FRONTEND=noninteractive apt-get install -y -q --no-install-recommends "$@" \
        >/dev/null 2>&1 </dev/null
}

new_enough() {
    "$1" -c 'import sys; sys.exit(sys.version_info < (3, 11))' >/dev/null 2>&1
}

# --- Python ---------------------------------------------------------------------------------
find_python() {
    for name in "${PYTHON:-}" python3 python3.13 python3.12 python3.11 python3.14 python; do
        [ -n "$name" ] && command -v "$name" >/dev/null 2>&1 || continue
        if new_enough "$name"; then
            command -v "$name"
            return 0
        fi
    done
    return 1
}

make_venv() {
    "$1" -m venv .venv >/dev/null 2>&1 && .venv/bin/python -m pip --version >/dev/null 2>&1
}

# The stamp also knows where the tree lay: an editable install points there. Where it fits, pip has
# worked and is not asked again.
stamp=.venv/installed
want=$(pwd; cat pyproject.toml)
installed() { [ "$(cat "$stamp" 2>/dev/null || true)" = "$want" ]; }

if ! { [ -x .venv/bin/python ] && new_enough .venv/bin/python &&
    { installed || .venv/bin/python -m pip --version >/dev/null 2>&1; }; }; then
    python=$(find_python) || stop "Python 3.11 or newer is needed, and none was found.
Install it (Debian 12, Ubuntu 24.04: apt install python3 python3-venv; macOS: brew install python),
or name one: PYTHON=/path/to/python3 make setup"
    say "setup: making .venv with $("$python" --version 2>&1)"
    rm -rf .venv
    if ! make_venv "$python"; then
        # Debian parts venv from Python.
        version=$("$python" -c 'import sys; print("%d.%d" % sys.version_info[:2])')
        rm -rf .venv
        apt_install "python$version-venv" || apt_install python3-venv || true
        make_venv "$python" || {
            rm -rf .venv
            stop "$python cannot make a virtual environment. On Debian or Ubuntu:
    sudo apt install python$version-venv"
        }
    fi
fi

# --- the package and its tools --------------------------------------------------------------
if ! installed; then
    say "setup: installing the package and its tools"
    rm -f "$stamp"
    .venv/bin/python -m pip install --quiet --disable-pip-version-check --prefer-binary \
        --no-compile -e '.[test]' </dev/null ||
        stop "pip could not install the package; its message stands above"
    # Where Python may not write its compiled files later on, they are there all the same. On every
    # processor and without the packages' own tests, which pip would compile too, on one.
    packages=$(.venv/bin/python -c 'import sysconfig; print(sysconfig.get_path("purelib"))')
    .venv/bin/python -m compileall -q -j 0 -x '/tests/' "$packages" src grammars templates \
        >/dev/null 2>&1 || true
    printf '%s\n' "$want" >"$stamp"
fi

# --- native libraries -----------------------------------------------------------------------
# Homebrew on Apple Silicon puts libraries where the loader does not look.
if [ -d /opt/homebrew/lib ]; then
    export DYLD_FALLBACK_LIBRARY_PATH="/opt/homebrew/lib:${DYLD_FALLBACK_LIBRARY_PATH:-/usr/local/lib:/usr/lib}"
fi

# WeasyPrint prints a banner where they are missing.
can_draw() { .venv/bin/python -c 'import weasyprint' >/dev/null 2>&1; }

if ! can_draw; then
    apt_install libpango-1.0-0 libpangoft2-1.0-0 libharfbuzz-subset0 || true
fi
if ! can_draw; then
    say "setup: a PDF needs the Pango text libraries, which are not installed. Install them with"
    if [ "$(uname -s)" = Darwin ]; then
        say "    brew install pango"
    elif command -v apt-get >/dev/null 2>&1; then
        say "    sudo apt install libpango-1.0-0 libpangoft2-1.0-0 libharfbuzz-subset0"
    elif command -v dnf >/dev/null 2>&1; then
        say "    sudo dnf install pango"
    else
        say "    the package manager of your system: the libraries are pango, pangoft2 and harfbuzz-subset"
    fi
    say "setup: until then HTML and text editions are written, and no PDF."
fi

# Some tests look at the pages of a PDF; they are skipped without these tools.
if ! command -v pdftoppm >/dev/null 2>&1; then
    apt_install poppler-utils || say "setup: without poppler (pdftoppm) some tests are skipped"
fi

# The page is tested in a real browser.
if ! command -v chromium >/dev/null 2>&1 && ! command -v chromium-browser >/dev/null 2>&1; then
    apt_install chromium || say "setup: without chromium the tests of the page are skipped"
fi
