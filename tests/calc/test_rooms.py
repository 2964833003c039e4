"""The arrows between the rooms of the core, and from the backend to it, as the imports draw them."""

import ast
from collections.abc import Iterator
from graphlib import TopologicalSorter
from pathlib import Path

import pytest

PROJECT = Path(__file__).resolve().parents[2]
CALC, BACKEND = PROJECT / "calc", PROJECT / "backend"

SHARED = [
    *("errors", "fields", "refusal"),
    *("numeric", "catalogue", "formulas", "physics", "waves", "cover", "feedline"),
]
"""The modules of the root and the rooms that operations share; each may import those before it."""

DOOR = "operations"
OPERATIONS = sorted({path.name for path in CALC.iterdir() if path.joinpath("__init__.py").exists()} - set(SHARED))
"""The other folders: a room for each operation."""

FOR_THE_BACKEND = {
    *("operations", "errors", "fields", "refusal"),
    *("catalogue", "catalogue.merge", "catalogue.pack"),  # editions: what a caller makes and hands to every call
    # the answers that are printed as tables,
    *("cell.results", "datasheets.results", "matrix.results", "question.results"),
    *(
        "formulas.formula",
        "physics.columns",
        "physics.families",
        "numeric.measures",
        "numeric.units",
    ),  # what they consist of, and how numbers are written
}


def names(path: Path) -> Iterator[tuple[int, str]]:
    """Each import of a file: the number of dots before it, and the dotted name after them."""
    for node in ast.walk(ast.parse(path.read_text("utf-8"))):
        if isinstance(node, ast.Import):
            yield from ((0, alias.name) for alias in node.names)
        elif isinstance(node, ast.ImportFrom):
            base = f"{node.module}." if node.module else ""
            yield from ((node.level, base + alias.name) for alias in node.names)


def module(path: Path) -> str:
    """The dotted name of a file of the core, from its root on; empty for the root itself."""
    return ".".join(path.relative_to(CALC).with_suffix("").parts).removesuffix("__init__").rstrip(".")


MODULES = {module(path): path for path in sorted(CALC.rglob("*.py"))}


def known(name: str) -> str:
    """The module a dotted name is, or lies in."""
    while name not in MODULES:
        name = name.rpartition(".")[0]
    return name


def imported(name: str) -> set[str]:
    """The modules of the core that one of them imports."""
    path = MODULES[name]
    found = set()
    for dots, target in names(path):
        if dots:
            folder = path.parents[dots - 1].relative_to(CALC)
            found.add(known(".".join([*folder.parts, target])))
    return found


def rooms_of(room: str) -> set[str]:
    """The other rooms that a room, or a module of the root, imports."""
    inside = [name for name in MODULES if name.split(".")[0] == room]
    return {target.split(".")[0] for name in inside for target in imported(name)} - {room}


def test_every_room_is_placed():
    """The shared rooms are there, and every module of the root is either shared or the door."""
    root = {path.stem for path in CALC.glob("*.py")} - {"__init__"}

    assert root <= {*SHARED, DOOR}
    assert {room for room in SHARED if room not in root} <= {path.name for path in CALC.iterdir()}


def test_the_core_imports_itself_by_relative_names():
    """No module names the package it is in, so that every tool finds what it imports, installed or not."""
    assert [
        name for name, path in MODULES.items() if any(target.startswith("jointwise") for _, target in names(path))
    ] == []


@pytest.mark.parametrize("room", SHARED)
def test_a_shared_room_imports_those_before_it(room):
    """A shared room knows no operation, and no shared room that may need it."""
    assert rooms_of(room) <= set(SHARED[: SHARED.index(room)])


@pytest.mark.parametrize("room", OPERATIONS)
def test_an_operation_imports_shared_rooms(room):
    """An operation knows no other operation, nor the door."""
    assert rooms_of(room) <= set(SHARED)


def test_the_door_knows_every_operation():
    """Every room that is not shared is one that the door opens."""
    assert set(OPERATIONS) <= rooms_of(DOOR)


def test_no_module_imports_itself_by_a_detour():
    """Within a room, too, imports make no circle."""
    graph = {name: imported(name) - {name} for name in MODULES}

    assert len(list(TopologicalSorter(graph).static_order())) == len(MODULES)


@pytest.mark.parametrize("path", sorted(BACKEND.glob("*.py")), ids=lambda path: path.name)
def test_the_backend_comes_in_by_the_door(path):
    """The backend imports the door, editions, and the types of the answers it prints; no room's inner parts."""
    core = {target.removeprefix("jointwise.calc.") for _, target in names(path) if target.startswith("jointwise.calc.")}

    assert {known(target) for target in core} <= FOR_THE_BACKEND
