# The two commands: make demo, make test.

BIN := .venv/bin
EXAMPLE := examples/skerry-throw.loop
OUT := out

# Homebrew on Apple Silicon puts WeasyPrint's libraries where the loader does not look. macOS
# drops the variable at /bin/sh, so it stands before each command that draws.
ifneq ($(wildcard /opt/homebrew/lib),)
DRAW := DYLD_FALLBACK_LIBRARY_PATH=/opt/homebrew/lib:/usr/local/lib:/usr/lib
endif

.PHONY: help setup demo test fuzz fuzz-long bench-shelf mutation lint format docs tables records bench clean

help:
	@echo "make demo    compile $(EXAMPLE) to a PDF, an HTML page and a text, into $(OUT)/"
	@echo "make test    lint and test everything"
	@echo "make fuzz    try many more random sources than make test does (TRIES=200 times)"
	@echo "make fuzz-long  fuzz led by coverage, for MINUTES=10; keeps the corpus small"
	@echo "make bench-shelf  a thousand patterns on one and on two workers"
	@echo "make mutation  change every clean source token by token: is it reported?"
	@echo "make lint    ruff and mypy only"
	@echo "make format  put the Python code into its one layout"
	@echo "make docs    make the page of rules and the picture in the README anew"
	@echo "make tables  make the parser's tables anew from the grammar"
	@echo "make records  write the methods of the dataclasses out anew"
	@echo "make bench   measure, and print a table of ratios"
	@echo "make setup   make or bring up to date .venv (the others do it by themselves)"
	@echo "make clean   remove what was made, .venv too"

setup:
	@bash .ci/setup.sh

demo: setup
	@$(DRAW) $(BIN)/loopwright build $(EXAMPLE) --out $(OUT)
	@echo "The editions of $(EXAMPLE):"
	@for kind in pdf html txt; do \
		test -s $(OUT)/skerry-throw.$$kind || exit 1; \
		echo "  $(CURDIR)/$(OUT)/skerry-throw.$$kind"; \
	done

test: lint
	@$(DRAW) $(BIN)/python -m pytest -n 2

# The long run before a release: the same properties, two hundred times as many tries.
fuzz: setup
	@LOOPWRIGHT_FUZZ=$(or $(TRIES),200) $(BIN)/python -m pytest -n 2 tests/fuzz

# Before a release. Atheris is asked for by nothing else, so it is not among the tests' packages.
fuzz-long: setup
	@$(BIN)/python -c "import atheris" 2>/dev/null || \
		$(BIN)/python -m pip install --quiet --disable-pip-version-check "atheris==3.*"
	@$(BIN)/python tests/fuzz/long.py --minutes $(or $(MINUTES),10)

bench-shelf: setup
	@$(DRAW) $(BIN)/python tests/bench/shelf.py

mutation: setup
	@$(BIN)/python tests/mutation/run.py

lint: setup
	@$(BIN)/ruff check .
	@$(BIN)/ruff format --check .
	@$(BIN)/mypy

format: setup
	@$(BIN)/ruff check --fix --exit-zero --quiet .
	@$(BIN)/ruff format .

docs: demo
	@$(BIN)/python -c "from loopwright.check.explain import rules_page; print(rules_page(), end='')" \
		> src/loopwright/check/RULES.md
	pdftoppm -png -r 80 -f 1 -l 1 -singlefile $(OUT)/skerry-throw.pdf examples/skerry-throw

tables: setup
	@$(BIN)/python -X utf8 -c "from loopwright.notation.grammar import grammar_text; \
		from loopwright.notation.tables import make_tables; \
		print(make_tables(grammar_text()), end='')" > grammars/loop.table.new
	@mv grammars/loop.table.new grammars/loop.table

records: setup
	@$(BIN)/python .ci/records.py

bench: setup
	@$(DRAW) $(BIN)/python tests/bench/run.py

clean:
	rm -rf .venv $(OUT) build dist .pytest_cache .mypy_cache .ruff_cache .hypothesis
	rm -rf loopwright.egg-info src/loopwright.egg-info
	find src tests grammars templates -name __pycache__ -type d -prune -exec rm -rf {} +
