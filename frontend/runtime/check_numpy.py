"""Build the wheels again, from nothing, and compare them with the committed ones.

    sudo python3 check_numpy.py [--work FOLDER]

The same needs and time as build_numpy.py. Writes nothing here; ends with an
error that names the files that differ.
"""

import argparse
from pathlib import Path

from build_numpy import HERE, MSGSPEC_WHEEL, NUMPY_WHEEL, WORK, build, record


def differences(work: Path) -> list[str]:
    """The committed files that a new build does not give byte for byte."""
    numpy, msgspec = build(work)
    made = {NUMPY_WHEEL: numpy, MSGSPEC_WHEEL: msgspec, "wheels.json": record(numpy, msgspec).encode()}
    return [name for name, data in made.items() if (HERE / name).read_bytes() != data]


if __name__ == "__main__":
    parser = argparse.ArgumentParser(description=__doc__.split("\n")[0])
    parser.add_argument("--work", type=Path, default=WORK, help="folder for the Debian tree and the archives")
    different = differences(parser.parse_args().work)
    if different:
        raise SystemExit(f"differ from the committed ones: {', '.join(different)}")
    print("the committed wheels are what the sources give")
