"""Build the numpy wheel for Pyodide from numpy's own source archive.

    sudo python3 build_numpy.py [--work FOLDER]

Needs Debian on x86-64, root, debootstrap, pip, `npm ci` run in this folder,
and a way to PyPI and a Debian mirror; 6 to 15 minutes. The compiler runs in
a Debian tree of its own, always under the same path there, so the bytes do not
depend on this machine. Leaves the wheels and wheels.json beside this script;
the untrimmed wheel and what numpy's tests need stay in the work folder.
"""

import argparse
import ast
import hashlib
import json
import os
import shutil
import subprocess
import sys
import tarfile
import zipfile
from pathlib import Path

from headers import configuration
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

SUITE, MIRROR = "forky", "http://deb.debian.org/debian"
KEYRING = "/usr/share/keyrings/debian-archive-keyring.gpg"
RECIPE = "sid"
"""Older debootstraps know no forky; every suite since uses the same script."""

SYSCONFIG = "_sysconfigdata__emscripten_wasm32-emscripten"
JOBS = 2

SETUP = [
    "--cross-file=/build/cross.ini",
    "-Dallow-noblas=true",
    "-Dblas=none",
    "-Dlapack=none",
    "-Dcpu-baseline=none",
    "-Dcpu-dispatch=none",
]
SETTINGS = {
    "setup-args": SETUP,
    "compile-args": [f"-j{JOBS}"],
    "install-args": ["--tags=runtime,python-runtime,tests"],
    "build-dir": "/build/objects",
}
BACKEND = f"import mesonpy; print(mesonpy.build_wheel('/build/wheel', {SETTINGS!r}))"

METADATA_STUB = f"""
from pathlib import Path

def prepare_metadata_for_build_wheel(folder, config_settings=None):
    info = Path(folder, "numpy-{NUMPY}.dist-info")
    info.mkdir()
    (info / "METADATA").write_text("Metadata-Version: 2.1\\nName: numpy\\nVersion: {NUMPY}\\n")
    return info.name
"""
"""Asked for a source archive, pip configures the whole build to read its metadata; this answers instead."""


class Debian:
    """A Debian tree to run commands in."""

    def __init__(self, root: Path) -> None:
        self.root = root

    def run(self, *command: str, cwd: str = "/", **environment: str) -> str:
        """Run a command in the tree and return what it prints; a failure ends the build."""
        settings = {"PATH": "/usr/sbin:/usr/bin:/sbin:/bin", "HOME": "/root", "LC_ALL": "C.UTF-8", **environment}
        line = ["/usr/sbin/chroot", str(self.root), "/usr/bin/env", "-C", cwd, *command]
        done = subprocess.run(line, env=settings, stdout=subprocess.PIPE, text=True, check=False)  # noqa: S603
        if done.returncode != 0:
            raise SystemExit(f"failed in the Debian tree: {' '.join(command)}")
        return done.stdout

    def install(self, packages: list[str]) -> None:
        """Install `name=version` packages; fails when the mirror has moved on from a version."""
        # The testing suite is not always republished before its date runs out; signatures are still checked.
        (self.root / "etc/apt/apt.conf.d/99valid").write_text('Acquire::Check-Valid-Until "false";\n')
        self.run("apt-get", "update", "-qq")
        options = ["-y", "-qq", "--no-install-recommends"]
        self.run("apt-get", "install", *options, *packages, DEBIAN_FRONTEND="noninteractive")
        names = [package.split("=")[0] for package in packages]
        found = self.run("dpkg-query", "-W", "-f", "${binary:Package}=${Version}\\n", *names)
        installed = {line.replace(":amd64", "") for line in found.split()}
        if installed != set(packages):
            raise SystemExit(f"debian-packages.txt: expected {sorted(packages)}, installed {sorted(installed)}")


def download(requirements: str, into: Path, *options: str, **environment: str) -> None:
    """Fetch what a requirements file names from PyPI, every hash checked."""
    shutil.rmtree(into, ignore_errors=True)
    into.mkdir(parents=True)
    pip = [sys.executable, "-m", "pip", "download", "-q", "--no-deps", "--require-hashes", "-d", str(into)]
    command = [*pip, *options, "-r", str(HERE / requirements)]
    subprocess.run(command, env={**os.environ, **environment}, check=True)  # noqa: S603


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


def debian(work: Path) -> Debian:
    """A fresh Debian tree with Emscripten in the recorded versions."""
    root = work / "debian"
    if root.exists():
        shutil.rmtree(root)
    options = ["--arch=amd64", "--variant=minbase", f"--keyring={KEYRING}"]
    command = ["/usr/sbin/debootstrap", *options, SUITE, str(root), MIRROR, RECIPE]
    subprocess.run(command, check=True, stdout=subprocess.DEVNULL)  # noqa: S603
    tree = Debian(root)
    tree.install((HERE / "debian-packages.txt").read_text().split())
    return tree


def stage(tree: Debian, work: Path) -> None:
    """Put the source, the tools, Python's headers and the compiler's stand-in into the tree."""
    build = tree.root / "build"
    build.mkdir()
    with tarfile.open(work / f"archives/numpy-{NUMPY}.tar.gz") as archive:
        archive.extractall(build, filter="data")
    shutil.copytree(work / "tools", build / "tools")
    tree.run("python3.14", "-m", "venv", "/opt/tools")
    wheels = [f"/build/tools/{path.name}" for path in sorted((build / "tools").iterdir())]
    tree.run("/opt/tools/bin/pip", "install", "-q", "--no-index", "--no-deps", *wheels)

    shutil.copy(HERE / "cross.ini", build)
    for name in ("cc", "c++"):
        shutil.copy(HERE / "compiler.py", build / name)
        (build / name).chmod(0o755)

    with zipfile.ZipFile(HERE / "node_modules/pyodide/python_stdlib.zip") as library:
        library.extract(f"{SYSCONFIG}.py", build / "sysconfig")
    show = f"print(__import__('{SYSCONFIG}').build_time_vars)"
    values = tree.run("python3.14", "-c", show, PYTHONPATH="/build/sysconfig")
    shutil.copytree(tree.root / f"usr/include/python{PYTHON}", build / "include")
    native = tree.root / f"usr/include/x86_64-linux-gnu/python{PYTHON}/pyconfig.h"
    (build / "include/pyconfig.h").write_text(configuration(native.read_text(), ast.literal_eval(values)))


def compiled(tree: Debian) -> bytes:
    """The untrimmed wheel, numpy's tests included."""
    (tree.root / "build/wheel").mkdir()
    environment = {
        "PATH": "/opt/tools/bin:/usr/bin:/bin",
        "PYTHONPATH": "/build/sysconfig",
        "PYTHONHASHSEED": "0",
        "SOURCE_DATE_EPOCH": str(EPOCH),
        "_PYTHON_SYSCONFIGDATA_NAME": SYSCONFIG,
        "_PYTHON_HOST_PLATFORM": PLATFORM.replace("_", "-"),
    }
    printed = tree.run("/opt/tools/bin/python", "-c", BACKEND, cwd=f"/build/numpy-{NUMPY}", **environment)
    name = printed.split()[-1]
    if name != NUMPY_WHEEL:
        raise SystemExit(f"the build made {name}, expected {NUMPY_WHEEL}")
    return (tree.root / "build/wheel" / name).read_bytes()


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
    tree = debian(work)
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
    facts = {
        "pyodide": pyodide(),
        "source_date_epoch": EPOCH,
        "debian": (HERE / "debian-packages.txt").read_text().split(),
        "wheels": {
            "numpy": described(NUMPY_WHEEL, numpy, f"built from the source archive numpy-{NUMPY}.tar.gz, trimmed"),
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
