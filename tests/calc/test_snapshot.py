"""Snapshots: the numbers of the matrix and the steps of every cell, packed."""

import json
import zlib

import pytest
from scenarios import BANDS, FAMILIES

from jointwise.calc.operations import InputError, call

ALL_BYTES = 450_000
ALL_PACKED_BYTES = 105_000
"""Of all families on all bands: what a club's page may cost its visitors."""

SCENARIO = {"mode": "ft8", "exposure": "exposed", "vswr": 2.5, "altitude_m": 1800.0}
CELLS = [("uhf", "20m"), ("n", "70cm"), ("sma", "3cm"), ("f", "20m")]


def asked(operation, **request):
    """The answer to a request."""
    return json.loads(call(operation, json.dumps(request).encode()))


def five(value):
    """A number to the digits a packed step has."""
    return float(f"{value:.5g}")


@pytest.fixture(scope="module")
def snapshot():
    """A snapshot of a station in the weather."""
    return asked("snapshot", **SCENARIO, bands=BANDS)


def unpacked(snapshot, family, band, limit):
    """The steps of a cell's limit as the cell operation tells them: formula, values put in, result."""
    packed = snapshot["derivations"]
    row = [head["id"] for head in snapshot["matrix"]["families"]].index(family)
    column = [head["id"] for head in snapshot["matrix"]["columns"]].index(band)
    chain = packed["cells"][row][column][snapshot["matrix"]["limits"].index(limit)]
    steps = []
    for formula, _, inputs, result in (packed["steps"][step] for step in packed["chains"][chain]):
        sheet = packed["formulas"][formula]
        values = [packed["values"][one] for one in inputs]
        kinds = [packed["kinds"][kind] if kind >= 0 else "" for _, _, kind in values]
        symbols = [symbol["symbol"] for symbol in sheet["inputs"]]
        put_in = list(zip(symbols, [value for value, _, _ in values], kinds, strict=True))
        steps.append((sheet["id"], put_in, result))
    return steps


def test_the_matrix_is_the_matrix(snapshot):
    """A snapshot holds the very margins of the matrix operation, to six digits."""
    matrix = asked("matrix", **SCENARIO, bands=BANDS)

    assert [head["id"] for head in snapshot["matrix"]["families"]] == FAMILIES
    for name in ("binding", "refused_by", "marks", "undecided"):
        assert snapshot["matrix"][name] == matrix[name]
    for name in ("margin_db", "margin_high_db"):
        given = [margin for row in snapshot["matrix"][name] for levels in row for margin in levels]
        whole = [margin for row in matrix[name] for levels in row for margin in levels]
        assert [margin is None for margin in given] == [margin is None for margin in whole]
        assert [one for one in given if one is not None] == pytest.approx(
            [one for one in whole if one is not None], rel=1e-5
        )


@pytest.mark.parametrize(("family", "band"), CELLS)
def test_the_steps_are_those_of_the_cell(snapshot, family, band):
    """Each limit's chain is what the cell operation recorded at the cautious end before any power was put in."""
    cell = asked("cell", **SCENARIO, family=family, band=band, power_w=0)

    for limit in cell["limits"]:
        chain = unpacked(snapshot, family, band, limit["id"])
        recorded = [
            (
                step["formula"],
                [(one["symbol"], five(one["value"]), one["kind"]) for one in step["inputs"]],
                five(step["result"]["value"]),
            )
            for step in limit["steps"]
            if step["end"] == "low"
        ]
        assert chain
        assert chain == recorded[: len(chain)]


def test_a_chain_ends_with_what_the_limit_allows(snapshot):
    """The last step of heat and voltage is the power allowed in the matrix; the formula of the margin is at hand."""
    matrix = snapshot["matrix"]
    row, column = FAMILIES.index("n"), BANDS.index("20m")

    for limit in ("heat", "voltage"):
        allowed = matrix[f"{limit}_allowed_w"][row][column][0]
        assert unpacked(snapshot, "n", "20m", limit)[-1][2] == pytest.approx(allowed, rel=1e-4)
    assert snapshot["derivations"]["formulas"][0]["id"] == "margin"


def test_all_families_on_all_bands_stay_small():
    """The largest ordinary snapshot, whole and packed for the wire, keeps within its bounds."""
    text = call("snapshot", b"{}")

    assert len(text) < ALL_BYTES
    assert len(zlib.compress(text, 9)) < ALL_PACKED_BYTES


def test_a_snapshot_says_what_was_asked(snapshot):
    """The request goes along with its defaults filled in, and what it chose by id has its name."""
    assert snapshot["request"].items() >= (SCENARIO | {"bands": BANDS, "power_w": 100.0, "region": 1}).items()
    assert snapshot["names"] == {"mode": "FT8", "cable_dielectric": "Solid polyethylene", "condition": "New and clean"}


def test_too_many_cells_are_refused():
    """A request for more cells than a page can hold is refused with their number."""
    spots = [1e6 * (n + 1) for n in range(100)]

    with pytest.raises(InputError, match=rf"^bands is {len(FAMILIES) * len(spots)}; allowed: up to 1000 cells"):
        call("snapshot", json.dumps({"bands": [], "frequencies_hz": spots}).encode())
