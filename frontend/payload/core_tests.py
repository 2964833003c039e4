"""Pytest inside Pyodide. Public function: `run`."""

import ast
import sys
import zipfile
from importlib.util import find_spec
from pathlib import Path
from site import getsitepackages

from pack import wheel

__all__ = ["run"]

TESTS = Path("/project/tests")
FOLDERS = ("calc", "published")


def run(options: list[str]) -> int:
    """Install the tools, run the tests of the core, and return pytest's exit code."""
    site = Path(getsitepackages()[0])
    for tool in Path("/tools").glob("*.whl"):
        zipfile.ZipFile(tool).extractall(site)
    # all of numpy too: hypothesis seeds its random generators, and tests may use what the core does not
    for library in Path("/wheels").glob("*.whl"):
        for name, data in wheel(library, None).items():
            _add(site / name, data)
    sys.path.append(str(TESTS))
    files = [path for folder in FOLDERS for path in sorted((TESTS / folder).glob("test_*.py"))]
    needs = {path: _missing(path) for path in files}
    for path, names in needs.items():
        if names:
            print(f"left out: {path.relative_to(TESTS)} needs {', '.join(sorted(names))}")
    chosen = [str(path) for path, names in needs.items() if not names]
    import pytest  # only now installed

    return int(pytest.main([*options, "--noconftest", "-p", "no:cacheprovider", "--rootdir=/project", *chosen]))


def _add(path: Path, data: bytes) -> None:
    """Write a file that is not there yet; what the payload brought is kept."""
    if not path.exists():
        path.parent.mkdir(parents=True, exist_ok=True)
        path.write_bytes(data)


def _missing(path: Path) -> set[str]:
    """The packages a test file, or a helper of the tests it imports, needs and the payload lacks."""
    names = _imported(path)
    helpers = {name: helper for name in names for helper in _helper_paths(path, name) if helper.is_file()}
    lacking = {name for name in names if name not in helpers and find_spec(name) is None}
    return lacking.union(*(_missing(helper) for helper in helpers.values()))


def _helper_paths(path: Path, name: str) -> list[Path]:
    return [folder / f"{name}.py" for folder in (path.parent, TESTS)]


def _imported(path: Path) -> set[str]:
    nodes = list(ast.walk(ast.parse(path.read_text())))
    plain = {alias.name.split(".")[0] for node in nodes if isinstance(node, ast.Import) for alias in node.names}
    froms = [node for node in nodes if isinstance(node, ast.ImportFrom) and not node.level]
    return plain | {node.module.split(".")[0] for node in froms if node.module}
