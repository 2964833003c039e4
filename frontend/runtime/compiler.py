#!/usr/bin/python3
"""Stand in for the C and C++ compiler in numpy's build.

Meson takes the target for a Unix with shared libraries; this turns its command
lines into what Pyodide loads: position-independent objects, and side modules
around one PyInit function each. Installed as `cc` and as `c++`.
"""

import os
import sys
from pathlib import Path

TARGET = ["-fPIC", "-fwasm-exceptions", "-sSUPPORT_LONGJMP=wasm", "-O2", "-g0", "-I/build/include"]
"""The flags Pyodide's own Python was compiled with (CONFIGURE_CFLAGS of its sysconfig data)."""

UNWANTED = (
    "-pthread", "-lpthread", "-lm", "-shared", "-mpopcnt", "-I/usr/include",
    "-Wl,--as-needed", "-Wl,--no-undefined", "-Wl,--start-group", "-Wl,--end-group", "-Wl,-soname", "-Wl,-z",
)  # fmt: skip
"""Beginnings of flags that wasm-ld refuses, or that bring in this machine's own headers."""


def arguments(given: list[str]) -> list[str]:
    """The command line for Emscripten."""
    kept = [argument for argument in given if not argument.startswith(UNWANTED)]
    # Only on links of .so files: a side module may leave symbols open, so with
    # these flags every one of meson's "does this function exist" checks passes.
    output = Path(given[given.index("-o") + 1]) if "-o" in given else Path()
    if output.suffix == ".so" and "-c" not in given:
        module = output.name.split(".")[0]
        kept += ["-sSIDE_MODULE=2", "-sWASM_BIGINT", f"-sEXPORTED_FUNCTIONS=_PyInit_{module}"]
    return [*kept, *TARGET]


if __name__ == "__main__":
    emscripten = "/usr/bin/em++" if Path(sys.argv[0]).name == "c++" else "/usr/bin/emcc"
    os.execv(emscripten, [emscripten, *arguments(sys.argv[1:])])  # noqa: S606  # what a stand-in is for
