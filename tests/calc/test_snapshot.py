"""Snapshots: the numbers of the matrix and the steps of every cell, packed."""

import json
import zlib

import pytest
from scenarios import BANDS, FAMILIES, LIMIT_FIELDS

from jointwise.calc.catalogue import catalogue
from jointwise.calc.operations import InputError, call

ALL_BYTES = 850_000
ALL_PACKED_BYTES = 180_000
"""Of all families on all bands: what a club's page may cost its visitors."""

SCENARIO = {"mode": "ft8", "exposure": "exposed", "vswr": 2.5, "altitude_m": 1800.0}
ALLOWED = [("contact", "heat_allowed_power"), ("cable", "heat_allowed_power"), ("voltage", "voltage_allowed_power")]
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
    """The steps of a cell's limit or match as the cell operation tells them: formula, values put in, result."""
    packed = snapshot["derivations"]
    row = [head["id"] for head in snapshot["matrix"]["families"]].index(family)
    column = [head["id"] for head in snapshot["matrix"]["columns"]].index(band)
    chain = packed["cells"][row][column][[*snapshot["matrix"]["limits"], "match"].index(limit)]
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
    for name in ("margin_db", "margin_high_db", "return_loss_db", *LIMIT_FIELDS):
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

    parts = {limit["id"]: limit for limit in cell["limits"]} | {"match": cell["match"]}
    assert len(parts) == 4
    for name, part in parts.items():
        chain = unpacked(snapshot, family, band, name)
        recorded = [
            (
                step["formula"],
                [(one["symbol"], five(one["value"]), one["kind"]) for one in step["inputs"]],
                five(step["result"]["value"]),
            )
            for step in part["steps"]
            if step["end"] == "low"
        ]
        assert chain
        assert chain == recorded[: len(chain)]


@pytest.mark.parametrize(("limit", "formula"), ALLOWED)
@pytest.mark.parametrize(("family", "band"), [("n", "20m"), ("uhf", "70cm")])
def test_a_chain_ends_with_what_the_limit_allows(snapshot, family, band, limit, formula):
    """The least power allowed in a chain is that of the matrix; the formula of the margin is at hand."""
    matrix = snapshot["matrix"]
    row, column = FAMILIES.index(family), BANDS.index(band)
    steps = unpacked(snapshot, family, band, limit)

    allowed = matrix[f"{limit}_allowed_w"][row][column][0]
    assert steps[-1][0] == formula
    assert min(result for name, _, result in steps if name == formula) == pytest.approx(allowed, rel=1e-4)
    assert snapshot["derivations"]["formulas"][0]["id"] == "margin"


def test_the_chain_of_the_match_ends_with_what_it_has_over_the_demand(snapshot):
    """The last steps of the match are the return loss of the matrix and what it has over the one asked for."""
    *_, loss, over = unpacked(snapshot, "n", "20m", "match")
    shown = snapshot["matrix"]["return_loss_db"][FAMILIES.index("n")][BANDS.index("20m")][0]

    assert (loss[0], over[0]) == ("return_loss", "match_margin")
    assert loss[2] == pytest.approx(shown, rel=1e-4)
    assert over[2] == pytest.approx(shown - snapshot["request"]["return_loss_asked_db"], rel=1e-3)


def test_all_families_on_all_bands_stay_small():
    """The largest ordinary snapshot, whole and packed for the wire, keeps within its bounds."""
    text = call("snapshot", b"{}")

    assert len(text) < ALL_BYTES
    assert len(zlib.compress(text, 9)) < ALL_PACKED_BYTES


def test_a_snapshot_says_what_was_asked(snapshot):
    """The request goes along with its defaults filled in, and what it chose by id has its name."""
    assert snapshot["request"].items() >= (SCENARIO | {"bands": BANDS, "power_w": 100.0, "region": 1}).items()
    assert snapshot["names"] == {"mode": "FT8", "condition": "New and clean"}


def test_a_cable_that_was_named_is_told_by_its_name():
    """The name of a cable that was asked for goes along, so that a page needs no table of cables."""
    told = asked("snapshot", families=["n"], bands=["20m"], cable="rg_58")

    assert told["names"]["cable"] == catalogue().cables["rg_58"].name
    assert told["request"]["cable"] == "rg_58"


def test_too_many_cells_are_refused():
    """A request for more cells than a page can hold is refused with their number."""
    spots = [1e6 * (n + 1) for n in range(100)]

    with pytest.raises(InputError, match=rf"^bands is {len(FAMILIES) * len(spots)}; allowed: up to 1000 cells"):
        call("snapshot", json.dumps({"bands": [], "frequencies_hz": spots}).encode())
