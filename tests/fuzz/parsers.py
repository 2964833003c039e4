"""Everything that reads a text from outside: one row each, with whole texts to begin from."""

from collections.abc import Callable
from pathlib import Path
from typing import Any, NamedTuple

from jointwise.calc.catalogue.merge import edition_of
from jointwise.calc.catalogue.pack import Document
from jointwise.calc.operations import call
from jointwise.calc.touchstone import read_touchstone

FOUND = Path(__file__).with_name("found")
"""A folder for each parser with the inputs that once broke it; `test_found.py` reads them all again."""

ONE_PORT = "! a load\n# MHz S RI R 50\n14 0.1 -0.2\n14.2 0.11 -0.21\n"
TWO_PORT = "# GHz S DB R 75\n1 -20 10 -0.1 -90 -0.1 -90 -20 10\n2 -21 11 -0.2 -91\n-0.2 -91 -21 11\n"
VERSION_2 = """[Version] 2.0
# Hz Z MA R 50
[Number of Ports] 2
[Two-Port Data Order] 21_12
[Number of Frequencies] 1
[Reference] 50 50
[Matrix Format] Upper
[Network Data]
1e6 10 0 5 0 10 0
[End]
"""


class Parser(NamedTuple):
    """How a text is read, and texts that can be read."""

    read: Callable[[bytes], Any]
    """Gives anything for what it can read, and raises InputError for the rest."""
    seeds: list[str]


def _asking(operation: str) -> Callable[[bytes], bytes]:
    return lambda data: call(operation, data)


LINE = (
    '{"elements":[{"kind":"joint","family":"n"},{"kind":"cable","cable":"rg_213","length_m":3},'
    '{"kind":"measured","touchstone":"# MHz S RI R 50\\n1 0 0 1 0 1 0 0 0\\n500 0 0 1 0 1 0 0 0"}],'
    '"load":{"kind":"vswr","vswr":2},"band":"2m"}'
)

SWEPT = "# MHz S RI R 50\\n" + "".join(f"{at} 0.1 0\\n" for at in range(5, 105, 5))
SWEEP = (
    '{"elements":[{"kind":"joint","family":"n"},{"kind":"cable","cable":"rg_213","length_m":3}],'
    f'"load":{{"kind":"end","what":"short"}},"touchstone":"{SWEPT}"}}'
)
PACK = (
    '{"id":"invented","name":"Invented club","version":"1","sources":[{"id":"a","title":"Invented","seen":"read"}],'
    '"overrides":{"modes":["cw"]},"default_powers_w":[10,50],'
    '"modes":[{"id":"cw","name":"CW","duty_factor":{"value":0.5,"source":"a","kind":"memory"}}],'
    '"house_limits":[{"id":"low","power_w":50,"interfaces":["bnc"],"reason":"Old.","source":"a","kind":"memory"}]}'
)

PARSERS = {
    "touchstone": Parser(
        lambda data: read_touchstone(data.decode("utf-8", "replace"), "file"), [ONE_PORT, TWO_PORT, VERSION_2]
    ),
    "matrix": Parser(_asking("matrix"), ['{"families":["n"],"bands":["2m"],"powers_w":[1,100],"vswr":2}']),
    "line": Parser(_asking("line"), [LINE]),
    "sweep": Parser(_asking("sweep"), [SWEEP]),
    "pack": Parser(lambda data: edition_of([Document("pack.json", data)]), [PACK]),
}
"""One row for each parser."""
