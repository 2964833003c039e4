"""Lists every text that users may read, of page, core, command line and catalogue, in `strings.txt`.

`python tests/words/reviewed.py` writes the list anew.
"""

import ast
import json
import subprocess
import tomllib
from collections.abc import Iterable, Iterator
from pathlib import Path

ROOT = Path(__file__).parents[2]
LIST = Path(__file__).with_name("strings.txt")
PYTHON = ("calc", "backend", "frontend/assemble")
TABLES = "calc/catalogue"
PAGE = "frontend/strings.mjs"


def python_texts(source: str) -> Iterator[str]:
    """The strings of a module with {} for what is put in; what only documents is left out, but that of commands."""
    tree = ast.parse(source)
    for node in ast.walk(tree):
        if isinstance(node, ast.FunctionDef) and any(map(_is_command, node.decorator_list)):
            yield ast.get_docstring(node) or ""
    skipped: set[ast.AST] = {node.value for node in ast.walk(tree) if isinstance(node, ast.Expr)}
    for node in ast.walk(tree):  # what holds others comes before them
        if node in skipped:
            continue
        if isinstance(node, ast.JoinedStr):
            skipped.update(node.values)
            yield "".join(str(part.value) if isinstance(part, ast.Constant) else "{}" for part in node.values)
        elif isinstance(node, ast.Constant) and isinstance(node.value, str):
            yield node.value


def _is_command(decorator: ast.expr) -> bool:
    """Whether it makes a function a command, whose docstring its help prints."""
    made = decorator.func if isinstance(decorator, ast.Call) else decorator
    return isinstance(made, ast.Attribute) and made.attr in ("command", "group")


def table_texts(table: object) -> Iterator[str]:
    """The strings in a table of the catalogue."""
    if isinstance(table, str):
        yield table
    elif isinstance(table, dict):
        yield from table_texts(list(table.values()))
    elif isinstance(table, list):
        for entry in table:
            yield from table_texts(entry)


def is_sentence(text: str) -> bool:
    """Whether more than one word stands there: a single one may be a name of the code."""
    return sum(word[0].isalpha() for word in text.replace("{}", " ").split()) > 1


def texts_by_file() -> dict[str, Iterable[str]]:
    """The texts of each file by its path in the repository."""
    page = subprocess.run(["node", ROOT / PAGE], capture_output=True, text=True, check=True)
    found: dict[str, Iterable[str]] = json.loads(page.stdout)
    for room in PYTHON:
        for path in (ROOT / room).rglob("*.py"):
            found[path.relative_to(ROOT).as_posix()] = filter(is_sentence, python_texts(path.read_text("utf-8")))
    for path in (ROOT / TABLES).rglob("*.toml"):
        found[path.relative_to(ROOT).as_posix()] = filter(
            is_sentence, table_texts(tomllib.loads(path.read_text("utf-8")))
        )
    return found


def listed() -> str:
    """The whole list: under each file its texts, one a line, in the order of the alphabet."""
    lines: list[str] = []
    for file, texts in sorted(texts_by_file().items()):
        kept = sorted({" ".join(text.split()) for text in texts})
        lines += [file, *(f"  {text}" for text in kept), ""] if kept else []
    return "\n".join(lines)


if __name__ == "__main__":
    LIST.write_text(listed(), "utf-8")
