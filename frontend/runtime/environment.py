"""The cross-build environment that pyodide-build asks for, of Pyodide's npm package and Debian's headers.

The project publishes such environments as downloads of its own; what a build
without other packages needs of one is in npm's package already. Public name:
`environment`.
"""

import ast
import io
import json
import tarfile
import zipfile
from pathlib import Path

from headers import configuration

__all__ = ["environment"]

SYSCONFIG = "_sysconfigdata__emscripten_wasm32-emscripten"
ROOT = "xbuildenv/pyodide-root"


def environment(pyodide: Path, headers: Path, native: str) -> bytes:
    """A tar archive in the layout that pyodide-build 0.39 reads.

    `pyodide` is the folder of npm's package, `headers` that of Python's header
    files of the same minor version, `native` the text of a native pyconfig.h.
    """
    lock = (pyodide / "pyodide-lock.json").read_bytes()
    info = json.loads(lock)["info"]
    with zipfile.ZipFile(pyodide / "python_stdlib.zip") as library:
        sysconfig = library.read(f"{SYSCONFIG}.py")
    values = _build_time_values(sysconfig.decode())
    install = f"{ROOT}/cpython/installs/python-{info['python']}"
    include = f"{install}/include/python{'.'.join(info['python'].split('.')[:2])}"
    files = {
        "xbuildenv/requirements.txt": b"",  # the packages that bring files for cross builds: none
        f"{ROOT}/Makefile.envs": _makefile(info, values["MULTIARCH"]).encode(),
        f"{ROOT}/dist/pyodide-lock.json": lock,
        f"{install}/sysconfigdata/{SYSCONFIG}.py": sysconfig,
        **{f"{include}/{path.relative_to(headers)}": path.read_bytes() for path in sorted(headers.rglob("*.h"))},
        f"{include}/pyconfig.h": configuration(native, values).encode(),
    }
    target = io.BytesIO()
    with tarfile.open(fileobj=target, mode="w") as archive:
        for name, data in sorted(files.items()):
            entry = tarfile.TarInfo(name)
            entry.size = len(data)
            archive.addfile(entry, io.BytesIO(data))
    return target.getvalue()


def _build_time_values(sysconfig: str) -> dict[str, str | int]:
    """What stands as a plain text or number in the module's `build_time_vars`; the module is read, not run."""
    assignments = [one for one in ast.parse(sysconfig).body if isinstance(one, ast.Assign)]
    assigned = {ast.unparse(one.targets[0]): one.value for one in assignments}
    variables = assigned["build_time_vars"]
    if not isinstance(variables, ast.Dict):
        raise SystemExit(f"{SYSCONFIG}: build_time_vars is no plain dict any more")
    pairs = zip(variables.keys, variables.values, strict=True)
    return {key.value: value.value for key, value in pairs if isinstance(value, ast.Constant)}


def _makefile(info: dict[str, str], triplet: str | int) -> str:
    """Versions and paths; pyodide-build reads them with make."""
    major, minor, _ = info["python"].split(".")
    settings = {
        "PYVERSION": info["python"],
        "PYMAJOR": major,
        "PYMINOR": minor,
        "PYODIDE_ABI_VERSION": info["abi_version"],
        "PYODIDE_EMSCRIPTEN_VERSION": info["platform"].removeprefix("emscripten_").replace("_", "."),
        "PLATFORM_TRIPLET": triplet,
        "SYSCONFIG_NAME": SYSCONFIG,
        "TARGETINSTALLDIR": "$(PYODIDE_ROOT)/cpython/installs/python-$(PYVERSION)",
        "PYTHONINCLUDE": "$(TARGETINSTALLDIR)/include/python$(PYMAJOR).$(PYMINOR)",
    }
    return "".join(f"export {name} ?= {value}\n" for name, value in settings.items()) + "\n.output_vars:\n\tset\n"
