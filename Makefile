# Two commands do everything from a fresh clone: `make serve` and `make test`.

PYTHON ?= python3
BIN := .venv/bin

.PHONY: serve test lint page bench

serve: .venv/run.stamp
	$(BIN)/jointwise serve

test: .venv/test.stamp frontend/node_modules/.package-lock.json frontend/runtime/node_modules/.package-lock.json lint
	e2e/need-chromium
	$(BIN)/python -m pytest

lint: .venv/test.stamp
	$(BIN)/ruff check -q .
	$(BIN)/ruff format -q --check .

page: .venv/run.stamp
	$(BIN)/jointwise build

bench: .venv/run.stamp
	$(BIN)/python tests/benchmarks/matrix.py
	$(BIN)/python tests/benchmarks/line.py

.venv/run.stamp: pyproject.toml
	test -x $(BIN)/python || $(PYTHON) -m venv .venv
	$(BIN)/python -m pip install -q -e .
	touch $@

.venv/test.stamp: pyproject.toml .venv/run.stamp
	$(BIN)/python -m pip install -q -e '.[test]'
	touch $@

%/node_modules/.package-lock.json: %/package-lock.json
	npm ci --prefix $* --no-audit --no-fund
	touch $@
