"""Python's configuration header for Pyodide, which ships none.

Public function: `configuration`.
"""

import re
from typing import Any

DEFINITION = re.compile(r"#define (\w+) .+|/\* #undef (\w+) \*/")


def configuration(native: str, values: dict[str, Any]) -> str:
    """The text of pyconfig.h: the keys of a native one, the values of Pyodide's sysconfig data.

    A key without a value, or with 0, is undefined: sysconfig stores #undef as 0.
    Keys that begin with an underscore keep their native line: they ask the C
    library for its features, and sysconfig never records them.
    """
    return "\n".join(_line(line, values) for line in native.splitlines()) + "\n"


def _line(line: str, values: dict[str, Any]) -> str:
    found = DEFINITION.fullmatch(line)
    if not found:
        return line
    key = found[1] or found[2]
    if key.startswith("_"):
        return line
    value = values.get(key, 0)
    return f"/* #undef {key} */" if value in (0, "") else f"#define {key} {value}"
