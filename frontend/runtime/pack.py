"""Trim a wheel to what runs in the browser, and write it so that the same files give the same bytes.

Public functions: `trimmed`, `packed`, `licences`.
"""

import base64
import hashlib
import io
import time
import zipfile
from pathlib import PurePosixPath

MODULE_SUFFIXES = {".py", ".so"}
"""What Python imports; stubs, headers, type markers and data for compilers go."""

METADATA_FILES = {"METADATA", "WHEEL"}
"""Beside the licences, all that remains of the metadata; RECORD is written anew."""

UNUSED_FOLDERS = {"tests", "doc", "f2py", "include", "_pyinstaller", "_examples"}
UNUSED_FILES = {"conftest.py", "_configtool.py", "mypy_plugin.py"}
TEST_MODULE = "_tests."
"""In the file name of every side module that only numpy's tests import."""

COMPRESSION = 9
REGULAR_FILE = 0o100644 << 16
UNIX = 3


def _runs(name: str) -> bool:
    path = PurePosixPath(name)
    folder = path.parts[0]
    if folder.endswith(".dist-info"):
        return path.name in METADATA_FILES or path.parts[1] == "licenses"
    return (
        path.suffix in MODULE_SUFFIXES
        and not UNUSED_FOLDERS.intersection(path.parts)
        and path.name not in UNUSED_FILES
        and TEST_MODULE not in path.name
    )


def trimmed(wheel: bytes) -> dict[str, bytes]:
    """The files of a wheel that running needs, by name, without RECORD."""
    with zipfile.ZipFile(io.BytesIO(wheel)) as archive:
        return {name: archive.read(name) for name in archive.namelist() if not name.endswith("/") and _runs(name)}


def licences(files: dict[str, bytes]) -> list[str]:
    """The names of the licence texts, sorted."""
    return sorted(name for name in files if ".dist-info/licenses/" in name)


def packed(files: dict[str, bytes], epoch: int) -> bytes:
    """A wheel of these files: names sorted, every date the same, RECORD last.

    `epoch` is in seconds since 1970, UTC. Form: the binary distribution format
    specification, https://packaging.python.org/specifications/binary-distribution-format/
    """
    info = next(name.split("/")[0] for name in files if name.endswith(".dist-info/WHEEL"))
    record = f"{info}/RECORD"
    rows = [f"{name},sha256={_digest(files[name])},{len(files[name])}" for name in sorted(files)]
    listing = "\n".join([*rows, f"{record},,", ""]).encode()

    target = io.BytesIO()
    with zipfile.ZipFile(target, "w") as archive:
        for name, data in [*sorted(files.items()), (record, listing)]:
            entry = zipfile.ZipInfo(name, time.gmtime(epoch)[:6])
            entry.create_system = UNIX
            entry.external_attr = REGULAR_FILE
            archive.writestr(entry, data, zipfile.ZIP_DEFLATED, COMPRESSION)
    return target.getvalue()


def _digest(data: bytes) -> str:
    return base64.urlsafe_b64encode(hashlib.sha256(data).digest()).rstrip(b"=").decode()
