# Two commands do everything from a fresh clone: `make serve` and `make test`.

PYTHON ?= python3
BIN := .venv/bin
# as the backend sets it
export OPENBLAS_NUM_THREADS ?= 1
# one more than processors: half of the time a test with a browser waits
WORKERS := $(shell expr $$(nproc) + 1)
NODE_BIN := frontend/node_modules/.bin
WHEELS := frontend/build/wheels
MODULES := frontend/node_modules/.package-lock.json frontend/runtime/node_modules/.package-lock.json

# what `make lock` pinned: each package with the hashes of its files
PINNED := $(BIN)/python -m pip install -q --require-hashes
LOCK := $(BIN)/uv pip compile -q --universal --generate-hashes --no-annotate --no-header --python-version 3.11

.PHONY: serve quick test nightly lint lint-page page pictures looks bench fuzz lock audit

serve: .venv/run.stamp
	$(BIN)/jointwise serve

# the core and the backend, while one works on them
quick: .venv/test.stamp
	$(BIN)/python -m pytest -n auto --dist loadfile -m 'not nightly and not slow' tests/calc tests/published tests/backend

# all that protects a change
test: .venv/test.stamp $(MODULES) lint lint-page $(WHEELS)/tools.stamp
	e2e/need-browsers
	$(BIN)/python -m pytest -n $(WORKERS) --dist loadfile --no-loadscope-reorder

# other people's software, long fuzzing, long simulations: an hour or two
nightly: .venv/test.stamp $(MODULES) $(WHEELS)/tools.stamp $(WHEELS)/numpy.stamp
	$(BIN)/python -m pytest -m nightly
	$(MAKE) fuzz
	$(MAKE) bench ONLY="sweep kit limits soak"

lint: .venv/test.stamp
	$(BIN)/ruff check -q .
	$(BIN)/ruff format -q --check .
	$(BIN)/mypy
	$(BIN)/python tests/commit_messages.py

lint-page: $(MODULES)
	$(NODE_BIN)/eslint -c frontend/eslint.config.mjs frontend tests/payload
	$(NODE_BIN)/prettier --config frontend/.prettierrc.json --log-level warn --check 'frontend/**/*.{js,mjs}' 'tests/payload/*.mjs'
	$(NODE_BIN)/dockerfile-utils lint backend/container/Containerfile
	$(NODE_BIN)/tsc -p frontend
	$(NODE_BIN)/tsc -p frontend/tsconfig.scripts.json

page: .venv/run.stamp
	$(BIN)/jointwise build

# of the page as it stands in dist/, for the READMEs
pictures: .venv/test.stamp
	e2e/need-browsers
	$(BIN)/python e2e/pictures.py

# of every view as it stands in dist/, to be looked at before they are committed
looks: .venv/test.stamp
	e2e/need-browsers
	$(BIN)/python e2e/looks.py

bench: .venv/test.stamp $(MODULES)
	e2e/need-browsers
	command -v wrk >/dev/null || apt-get install -y -q --no-install-recommends wrk
	PYTHONPATH=tests $(BIN)/python tests/benchmarks/report.py $(ONLY)

# after every change of a dependency
lock: .venv/run.stamp
	$(BIN)/python -m pip install -q uv
	$(LOCK) --extra many --extra build pyproject.toml -o backend/requirements.txt
	$(LOCK) --extra many --extra test pyproject.toml -c backend/requirements.txt -o tests/requirements.txt
	$(LOCK) --extra many --extra test --extra fuzz pyproject.toml -c tests/requirements.txt -o tests/fuzz/requirements.txt

audit: .venv/run.stamp
	$(BIN)/python tests/audit.py

fuzz: .venv/fuzz.stamp
	PYTHONPATH=tests $(BIN)/python tests/fuzz/fuzz.py $(ONLY)

.venv/run.stamp: pyproject.toml backend/requirements.txt
	test -x $(BIN)/python || $(PYTHON) -m venv .venv
	$(PINNED) -r backend/requirements.txt
	$(BIN)/python -m pip install -q --no-deps --no-build-isolation -e .
	touch $@

.venv/test.stamp: tests/requirements.txt .venv/run.stamp
	$(PINNED) -r tests/requirements.txt
	touch $@

.venv/fuzz.stamp: tests/fuzz/requirements.txt .venv/test.stamp
	$(PINNED) -r tests/fuzz/requirements.txt
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
