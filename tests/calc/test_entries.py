"""The catalogue holds together: sources, kinds, no holes, intervals the right way round, bands in order."""

import re
from itertools import pairwise

import msgspec
import pytest

from jointwise.calc.catalogue import catalogue
from jointwise.calc.catalogue.checks import check
from jointwise.calc.catalogue.pack import TABLES
from jointwise.calc.catalogue.schema import Interval, Kind
from jointwise.calc.cell.cell import cell
from jointwise.calc.cell.requests import CellRequest
from jointwise.calc.datasheets.datasheets import datasheets
from jointwise.calc.datasheets.requests import CatalogueRequest
from jointwise.calc.physics.cable_table import cable_ratings
from jointwise.calc.physics.customary import customary_cable
from jointwise.calc.physics.gates import cable_fits

KINDS = set(Kind.__args__)
INTERFACES = catalogue().interfaces
POSITIVE = [
    "nominal_impedance_ohm",
    "inner_diameter_m",
    "outer_diameter_m",
    "section_length_m",
    "bead_length_m",
    "body_diameter_m",
    "body_length_m",
]
POSITIVE_INTERVALS = [
    "rated_frequency_hz",
    "working_voltage_rms_v",
    "proof_voltage_rms_v",
    "centre_contact_resistance_ohm",
    "outer_contact_resistance_ohm",
    "durability_matings",
    "cable_diameter_m",
]
PLATING = ["conductivity_s_per_m", "relative_permeability"]
DIELECTRIC = ["relative_permittivity", "loss_tangent", "thermal_conductivity_w_per_m_k"]


def sourced(value, path="catalogue"):
    """Every part of the catalogue that names a source, with its path."""
    if isinstance(value, dict):
        return [found for key, one in value.items() for found in sourced(one, f"{path}.{key}")]
    if isinstance(value, (list, tuple)):
        return [found for index, one in enumerate(value) for found in sourced(one, f"{path}[{index}]")]
    if not isinstance(value, msgspec.Struct):
        return []
    own = [(path, value)] if hasattr(value, "source") else []
    fields = value.__struct_fields__
    return own + [found for name in fields for found in sourced(getattr(value, name), f"{path}.{name}")]


@pytest.mark.parametrize("table", TABLES)
def test_built_in_entries_hold_together_as_a_pack_s_must(table):
    """What is asked of the entries of a pack is asked of the built-in ones: an error names field, value and allowed."""
    for name, entry in getattr(catalogue(), table).items():
        check(table, entry, f"{table}.{name}", catalogue())


def test_every_value_has_a_listed_source_and_a_kind():
    """Each sourced value of the catalogue names a source of the list and one of the kinds."""
    for path, value in sourced(catalogue()):
        assert value.source in catalogue().sources, path
        assert value.kind in KINDS, path


def test_only_a_standard_that_was_read_is_called_one():
    """A value is of kind standard only where the text was read: a restatement is as good as whoever restates it."""
    sources = catalogue().sources

    assert all(sources[value.source].seen == "read" for _, value in sourced(catalogue()) if value.kind == "standard")


def test_a_machine_written_text_is_no_handbook():
    """What rests on a text that looks machine-written is no better than memory."""
    written = {name for name, source in catalogue().sources.items() if source.title.startswith("Machine-written")}
    kinds = {value.kind for _, value in sourced(catalogue()) if value.source in written}

    assert written
    assert kinds == {"memory"}


def test_a_source_is_cited_with_body_year_and_place():
    """What is known of a source stands in its reference, and no year stands in a title alone."""
    sources = catalogue().sources
    dated = [name for name, source in sources.items() if re.search(r"\b(19|20)\d\d\b", source.title)]

    assert sources["cutoff_paper_2024"].reference == (
        "Paper on higher-order modes in coaxial connectors, citing IEEE 287.1-2021 (a conference, 2024, Table I)"
    )
    assert sources["memory"].reference == sources["memory"].title
    assert all(sources[name].year for name in dated)


def test_every_source_is_named_by_something():
    """No source stands in the list that no value, no formula and no derivation names."""
    named = {value.source for _, value in sourced(catalogue())}
    named |= {formula.source for formula in datasheets(CatalogueRequest()).formulas}
    for family in INTERFACES:
        answer = cell(CellRequest(family=family, band="2m"))
        named |= {
            value.source for part in (*answer.limits, answer.match) for step in part.steps for value in step.inputs
        }
    named.add(cable_ratings("rg_213", "low").k_1.source)

    assert set(catalogue().sources) - named == set()


def test_a_value_from_memory_says_so():
    """A value whose source is memory has that kind, and a common-practice source has its kind."""
    for path, value in sourced(catalogue()):
        if value.source in {"memory", "common_practice"}:
            assert value.kind == value.source.replace("_", " "), path


def test_nothing_from_memory_is_called_a_standard():
    """A source seen only from memory never makes a value of the kinds that were read."""
    for path, value in sourced(catalogue()):
        if catalogue().sources[value.source].seen == "from memory":
            assert value.kind in {"memory", "common practice"}, path


def test_every_family_has_a_place_of_its_own():
    """No two families have the same `order`, and they stand by it."""
    orders = [interface.order for interface in INTERFACES.values()]
    shared = [family for family, interface in INTERFACES.items() if orders.count(interface.order) > 1]

    assert not shared, f"{shared} have the same `order`; give each family its own"
    assert orders == sorted(orders)


@pytest.mark.parametrize("family", INTERFACES)
def test_every_number_is_positive(family):
    """Dimensions, voltages and ratings of a family are positive."""
    interface = INTERFACES[family]

    assert all(getattr(interface, field).value > 0 for field in POSITIVE)
    assert all(getattr(interface, field).low.value > 0 for field in POSITIVE_INTERVALS)


@pytest.mark.parametrize("family", INTERFACES)
def test_the_customary_cable_fits_the_family(family):
    """Every family names a customary cable, one of the catalogue that it takes and whose impedance is its own."""
    interface = INTERFACES[family]
    cable = catalogue().cables[interface.customary_cable.value]

    assert customary_cable(family) == cable.id
    assert cable_fits(interface, cable.outer_diameter_m.value)
    assert cable.impedance_ohm.value == pytest.approx(interface.nominal_impedance_ohm.value, rel=0.05)


@pytest.mark.parametrize("family", INTERFACES)
def test_better_insulators_lose_less(family):
    """Where a family is also made with better insulators, they lose less."""
    interface, materials = INTERFACES[family], catalogue().materials
    kinds = [
        (interface.dielectric, interface.generous_dielectric),
        (interface.bead_material, interface.generous_bead_material),
    ]

    for worse, better in kinds:
        if better is not None:
            assert materials[better.value].loss_tangent.value < materials[worse.value].loss_tangent.value


@pytest.mark.parametrize("family", INTERFACES)
def test_intervals_are_the_right_way_round(family):
    """The low end of every interval of a family is not above its high end."""
    interface = INTERFACES[family]
    intervals = {f: getattr(interface, f) for f in interface.__struct_fields__}

    for field, interval in intervals.items():
        if isinstance(interval, Interval):
            assert interval.low.value <= interval.high.value, field


@pytest.mark.parametrize("family", INTERFACES)
def test_the_centre_fits_in_the_bore_and_the_bore_in_the_body(family):
    """Diameters of a family nest, and its solid supports are no longer than its section."""
    interface = INTERFACES[family]

    assert interface.inner_diameter_m.value < interface.outer_diameter_m.value
    assert interface.outer_diameter_m.value < interface.body_diameter_m.value
    assert interface.bead_length_m.value <= interface.section_length_m.value


@pytest.mark.parametrize("family", INTERFACES)
def test_ratings_leave_room_for_heat(family):
    """Each power listed for a family has its contact hotter than its air and no hotter than the part may be."""
    interface = INTERFACES[family]

    for rating in interface.average_power:
        assert rating.ambient_temperature_c < rating.contact_temperature_c
        assert rating.contact_temperature_c <= interface.highest_temperature_c.value


@pytest.mark.parametrize("family", INTERFACES)
def test_proof_is_above_working_voltage(family):
    """A family's withstanding voltage is above its working voltage."""
    interface = INTERFACES[family]

    assert interface.proof_voltage_rms_v.low.value > interface.working_voltage_rms_v.low.value
    assert interface.proof_voltage_rms_v.high.value > interface.working_voltage_rms_v.high.value


@pytest.mark.parametrize("family", INTERFACES)
def test_materials_have_what_their_place_needs(family):
    """Platings have a conductivity and permeability, dielectrics a permittivity, loss and heat conduction."""
    interface, materials = INTERFACES[family], catalogue().materials
    platings = [materials[interface.inner_plating.value], materials[interface.outer_plating.value]]
    better = [label for label in (interface.generous_dielectric, interface.generous_bead_material) if label]
    fillings = [materials[label.value] for label in (interface.dielectric, interface.bead_material, *better)]

    assert all(getattr(plating, field) is not None for plating in platings for field in PLATING)
    assert materials[interface.outer_plating.value].emissivity is not None
    assert all(getattr(filling, field) is not None for filling in fillings for field in DIELECTRIC)


@pytest.mark.parametrize("family", INTERFACES)
def test_hazards_name_other_families(family):
    """A data sheet warns of other families only, and of each mating once."""
    sheet = next(one for one in datasheets(CatalogueRequest()).families if one.id == family)
    named = [(hazard.family, hazard.text) for hazard in sheet.hazards]

    assert family not in {other for other, _ in named}
    assert len(named) == len(set(named))
    assert {other for other, _ in named} <= set(INTERFACES)


@pytest.mark.parametrize("family", INTERFACES)
def test_a_data_sheet_shows_every_field(family):
    """A family's data sheet shows every sourced field, each with its sources and kinds."""
    sheet = next(one for one in datasheets(CatalogueRequest()).families if one.id == family)
    fields = {value.field for value in sheet.values}

    assert {*POSITIVE, *POSITIVE_INTERVALS, "customary_cable", "vswr_limit_at_dc"} <= fields
    assert all(value.sources and value.kinds for value in sheet.values)
    assert sheet.power == INTERFACES[family].average_power


@pytest.mark.parametrize("material", list(catalogue().materials.values()), ids=lambda one: one.id)
def test_what_a_material_does_with_heat_is_in_range(material):
    """Heat conduction, heat capacity and emissivity are what solids can have, the low end first."""
    conduction, capacity, emissivity = (
        material.thermal_conductivity_w_per_m_k,
        material.heat_capacity_j_per_m3_k,
        material.emissivity,
    )

    assert conduction is None or 0.02 <= conduction.low.value <= conduction.high.value <= 430
    assert capacity is None or 5e5 <= capacity.value <= 5e6
    assert emissivity is None or 0.01 <= emissivity.low.value <= emissivity.high.value <= 1


@pytest.mark.parametrize("region", ["1", "2", "3"])
def test_bands_are_ordered(region):
    """A Region's bands come from the lowest to the highest and never overlap."""
    edges = [band.regions[region] for band in catalogue().bands.values() if region in band.regions]

    assert all(one.low_hz < one.high_hz for one in edges)
    assert all(lower.high_hz < upper.low_hz for lower, upper in pairwise(edges))


def test_bands_have_no_other_regions():
    """Bands are allocated in Regions 1 to 3 and nowhere else."""
    assert {region for band in catalogue().bands.values() for region in band.regions} == {"1", "2", "3"}


def test_modes_have_whole_rhythms():
    """A mode's duty factor is a share, and its overs and pauses come together."""
    for mode in catalogue().modes.values():
        assert 0 < mode.duty_factor.value <= 1, mode.id
        assert (mode.on_time_s is None) == (mode.off_time_s is None), mode.id
