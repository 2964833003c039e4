# Two commands do everything from a fresh clone: `make serve` and `make test`.

PYTHON ?= python3
BIN := .venv/bin
WHEELS := frontend/build/wheels

.PHONY: serve test lint page bench

serve: .venv/run.stamp
	$(BIN)/jointwise serve

test: .venv/test.stamp frontend/node_modules/.package-lock.json frontend/runtime/node_modules/.package-lock.json lint
test: $(WHEELS)/tools.stamp $(WHEELS)/numpy.stamp
	e2e/need-browsers
	$(BIN)/python -m pytest

lint: .venv/test.stamp
	$(BIN)/ruff check -q .
	$(BIN)/ruff format -q --check .

page: .venv/run.stamp
	$(BIN)/jointwise build

bench: .venv/test.stamp frontend/node_modules/.package-lock.json
	e2e/need-browsers
	$(BIN)/python tests/benchmarks/matrix.py
	$(BIN)/python tests/benchmarks/line.py
	$(BIN)/python tests/benchmarks/kit.py
	PYTHONPATH=e2e $(BIN)/python tests/benchmarks/page.py

.venv/run.stamp: pyproject.toml
	test -x $(BIN)/python || $(PYTHON) -m venv .venv
	$(BIN)/python -m pip install -q -e .
	touch $@

.venv/test.stamp: pyproject.toml .venv/run.stamp
	$(BIN)/python -m pip install -q -e '.[test]'
	touch $@

$(WHEELS)/tools.stamp: frontend/runtime/requirements-test.txt
$(WHEELS)/numpy.stamp: tests/payload/numpy.txt
$(WHEELS)/tools.stamp $(WHEELS)/numpy.stamp: | .venv/run.stamp
	rm -rf $(basename $@)
	$(BIN)/python -m pip download -q --no-deps --require-hashes --only-binary :all: \
	  --python-version 3.14 --platform manylinux_2_28_x86_64 -r $< -d $(basename $@)
	touch $@

%/node_modules/.package-lock.json: %/package-lock.json
	npm ci --prefix $* --no-audit --no-fund
	touch $@
