"""What the judge of sweeps says of real lines. Run with `python tests/benchmarks/measured.py`."""

import sys
from pathlib import Path

sys.path.insert(0, str(Path(__file__).parents[1]))
sys.path.insert(0, str(Path(__file__).parents[1] / "calc"))

from everyday.score import read
from measured_lines import board_edition, measured_lines
from packs import ask


def main():
    """Print what each answer accuses, and how many sound ones are accused."""
    sound, accused = 0, 0
    for line in measured_lines():
        answer = ask("sweep", board_edition(), **line.request)
        reading = read(answer)
        named = [f"{'cable' if one.in_cable else 'joint'} at {one.place_m:.3g} m" for one in reading.blames]
        said = ", ".join(named) or ("one of several" if reading.maybe else "")
        said = said or ("can't tell" if reading.undecided else "sound")
        print(f"{line.name:58}{'damaged' if line.damage_m else 'sound':10}{said}")
        if line.damage_m is None:
            sound, accused = sound + 1, accused + bool(reading.blames or reading.maybe)
    print(f"\nsound lines accused {accused} of {sound}")


if __name__ == "__main__":
    main()
