"""Lets atheris change texts for one parser, led by the lines they reach: `atheris_one.py PARSER [libFuzzer flags]`."""

import sys

import atheris

with atheris.instrument_imports(include=["jointwise.calc", "parsers"]):
    from parsers import PARSERS
    from patience import within_patience

    from jointwise.calc.errors import InputError


def main() -> None:
    """Never returns: the process ends with the first fault, or after the runs that a flag states."""
    name = sys.argv.pop(1)

    def read(data: bytes) -> None:
        try:
            with within_patience():
                PARSERS[name].read(data)
        except InputError as refused:
            str(refused).encode()  # it must be possible to send the sentence

    atheris.Setup(sys.argv, read)
    atheris.Fuzz()


if __name__ == "__main__":
    main()
