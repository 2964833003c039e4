"""Pytest inside Pyodide. Public function: `run`."""

import sys
import zipfile
from pathlib import Path
from site import getsitepackages

from pack import wheel

__all__ = ["run"]

TESTS = Path("/project/tests")

CHOSEN = {
    "calc/test_draws.py": "integers of 32 bits, which random streams are made of",
    "calc/test_scalar_is_array.py": "scalars and arrays, whose types the platform chooses",
    "calc/test_cables.py": "least squares without LAPACK",
    "calc/test_cover.py": "sets as long integers, and the indexes of arrays",
    "calc/test_line.py": "complex arithmetic, and numbers that are not finite, which give no warning there",
    "published/test_match.py": "hyperbolic functions and complex square roots",
    "published/test_voltage.py": "logarithms and powers",
}
"""What can differ there, and why: numeric types, floating point, what numpy is built without. Everything else a browser
must answer as other Pythons do, number by number (e2e/test_same_answers.py)."""


FEW = 8
"""Examples of each property, where the hypothesis profile "few" is asked for."""


def run(options: list[str]) -> int:
    """Install the tools, run the chosen tests of the core, and return pytest's exit code."""
    site = Path(getsitepackages()[0])
    for tool in Path("/tools").glob("*.whl"):
        zipfile.ZipFile(tool).extractall(site)
    # all of numpy too: hypothesis seeds its random generators, and tests may use what the core does not
    for library in Path("/wheels").glob("*.whl"):
        for name, data in wheel(library, None).items():
            _add(site / name, data)
    sys.path.append(str(TESTS))
    import pytest  # only now installed

    class Profiles:
        @pytest.hookimpl(tryfirst=True)
        def pytest_configure(self) -> None:
            from hypothesis import settings

            settings.register_profile("few", max_examples=FEW)

    chosen = [str(TESTS / name) for name in CHOSEN]
    return int(
        pytest.main([*options, "--noconftest", "-p", "no:cacheprovider", "--rootdir=/project", *chosen], [Profiles()])
    )


def _add(path: Path, data: bytes) -> None:
    """Write a file that is not there yet; what the payload brought is kept."""
    if not path.exists():
        path.parent.mkdir(parents=True, exist_ok=True)
        path.write_bytes(data)
