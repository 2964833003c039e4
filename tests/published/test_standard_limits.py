"""Limits of the families as the catalogue and the formulas give them, against standards and data sheets."""

import pytest

from jointwise.calc.catalogue import catalogue
from jointwise.calc.cell.cell import cell
from jointwise.calc.cell.requests import CellRequest
from jointwise.calc.formulas.match import vswr_limit

POUND_INCH = 0.11298  # N·m
POUND_FOOT = 1.35582  # N·m

VSWR_FAQ = "connector maker's text on VSWR, read"
BNC_PAGE = "maker's BNC page, read"
MCX_ARTICLE = "machine-written article quoting makers (weak)"
SMA_SHEET = "maker's data sheet of an SMA board jack, as quoted"
MAILING_LIST = "amateur mailing list, August 2008"
SMB_ENTRY = "electronic dictionary entry on SMB, 2008, as quoted"
IEEE_287 = "IEEE 287-2007 torque table, as restated"
FIELD_BULLETIN = "cable maker's field bulletin 7634613 rev A"
SMA_ARTICLE = "encyclopedia article on SMA, as quoted"
IEC_SCOPE = "scope of the standard"
GLOSSARY = "maker's glossary, read"
ONE_TABLE = "read table of upper frequencies, one author"
PAPER = "conference paper of 2024 citing IEEE 287.1-2021"

VSWR_LIMITS = [  # family, GHz, printed VSWR, half a unit of the last digit
    ("sma", 2.0, 1.17, 0.005, VSWR_FAQ),
    ("sma", 12.4, 1.274, 0.0005, VSWR_FAQ),
    ("bnc", 4.0, 1.3, 0.05, VSWR_FAQ),
    ("bnc", 1.0, 1.3, 0.05, BNC_PAGE),
    ("mcx", 6.0, 1.3, 0.05, MCX_ARTICLE),
]

LOSS_LIMITS = [  # family, GHz, printed dB, half a unit of the last digit
    ("sma", 6.0, 0.15, 0.005, SMA_SHEET),
    ("n", 1.0, 0.05, 0.005, MAILING_LIST),
    ("smb", 1.5, 0.30, 0.005, SMB_ENTRY),
]

BORES = [  # family, bore of the outer conductor mm
    ("sma", 4.13, 0.005, IEC_SCOPE),
    ("n", 7.0, 0.05, IEC_SCOPE),
    ("7_16", 16.0, 0.05, IEC_SCOPE),
    ("4_3_10", 10.0, 0.05, IEC_SCOPE),
    ("bnc", 6.5, 0.05, "IEC 169-8, as quoted"),
    ("tnc", 6.5, 0.05, "IEC 169-17, as quoted"),
    ("smb", 3.0, 0.05, "IEC 169-10, as quoted"),
    ("uhf", 0.48 * 25.4, 0.13, "published amateur measurement, 2013"),
]

FREQUENCIES = [  # family, printed GHz; one of the two ends of the catalogue's range
    ("sma", 18.0, IEC_SCOPE),
    ("7_16", 7.5, IEC_SCOPE),
    ("4_3_10", 6.0, IEC_SCOPE),
    ("bnc", 4.0, GLOSSARY),
    ("bnc_75", 1.0, GLOSSARY),
    ("f", 3.0, "ANSI/SCTE 04 2021: 5 to 3000 MHz"),
    ("uhf", 0.3, "encyclopedia article: original design claim"),
    ("uhf", 0.4, ONE_TABLE),
    ("n", 18.0, ONE_TABLE),
    ("n", 11.0, "encyclopedia article on N: common versions"),
    ("smb", 4.0, SMB_ENTRY),
    ("smb", 10.0, SMB_ENTRY),
    ("3_5mm", 33.0, PAPER),
    ("2_92mm", 40.0, PAPER),
]

SMA_BRASS = "maker's catalogue of brass SMA, 2006, as quoted"
TORQUES = [  # family, printed nominal or end of a range, N·m; must lie inside the catalogue's range
    ("n", 1.5, 0.05, IEEE_287),
    ("2_92mm", 0.8, 0.05, IEEE_287),
    ("n", 15 * POUND_INCH, 0.05, FIELD_BULLETIN),
    ("n", 25 * POUND_INCH, 0.05, FIELD_BULLETIN),
    ("7_16", 18 * POUND_FOOT, 1, FIELD_BULLETIN),
    ("7_16", 22 * POUND_FOOT, 1, FIELD_BULLETIN),
    ("sma", 3 * POUND_INCH, 0.05, SMA_ARTICLE),  # brass
    ("sma", 5 * POUND_INCH, 0.05, SMA_ARTICLE),
    ("sma", 0.45, 0.005, SMA_BRASS),
    ("sma", 0.60, 0.005, SMA_BRASS),  # the most
    ("2_92mm", 0.9, 0.005, "data sheet of 2.92 mm adapters, as quoted: 90 N·cm"),
]
STAINLESS_TORQUES = [
    ("sma", 7 * POUND_INCH, 0.05, SMA_ARTICLE),
    ("sma", 10 * POUND_INCH, 0.05, SMA_ARTICLE),
    ("sma", 0.90, 0.005, "maker's catalogue of stainless SMA, as quoted"),
]

CONTACTS = [  # family, centre mΩ, outer mΩ at most
    ("sma", 3.0, 2.0, SMA_SHEET),
    ("bnc", 2.0, 0.2, BNC_PAGE),
    ("n", 1.0, None, "maker's N sheet, quoted on a mailing list in 2003"),
]

VOLTAGES = [  # family, working V rms, withstanding V rms
    ("sma", 335, 1000, SMA_SHEET),
    ("bnc", None, 1500, BNC_PAGE),
    ("mcx", None, 1000, MCX_ARTICLE),
    ("n", 1000, None, "encyclopedia article on N"),
    ("4_3_10", 500, None, "encyclopedia article on 4.3-10"),
    ("uhf", 500 / 2**0.5, None, "encyclopedia article on UHF: 500 V peak"),
]

MATINGS = [("sma", 100), ("sma", 500), ("bnc", 500), ("smb", 500), ("mcx", 500), ("4_3_10", 100)]


def limits(family):
    """The family's entry in the catalogue."""
    return catalogue().interfaces[family]


def within(interval, value, tolerance):
    """Whether a value lies in an interval of the catalogue, give or take its printed digits."""
    return interval.low.value - tolerance <= value <= interval.high.value + tolerance


@pytest.mark.parametrize(("family", "gigahertz", "printed", "tolerance", "source"), VSWR_LIMITS)
def test_vswr_limit_is_the_printed_one(family, gigahertz, printed, tolerance, source):
    """The VSWR limit of a family at a frequency is the printed one."""
    limit = limits(family).vswr_limit

    computed = vswr_limit(limit.at_dc.value, limit.slope_per_hz.value, gigahertz * 1e9)

    assert computed == pytest.approx(printed, abs=tolerance), source


@pytest.mark.parametrize(("family", "gigahertz", "printed", "tolerance", "source"), LOSS_LIMITS)
def test_published_loss_is_the_printed_one(family, gigahertz, printed, tolerance, source):
    """The loss of a mated pair is the printed one, at the frequency it is printed for."""
    published = cell(CellRequest(family=family, frequency_hz=gigahertz * 1e9)).losses

    assert published.published_at_hz == gigahertz * 1e9, source
    assert published.published_db == pytest.approx(printed, abs=tolerance), source


@pytest.mark.parametrize("frequency_hz", [1.8e6, 145e6, 1.3e9, 10e9])
@pytest.mark.parametrize("family", catalogue().interfaces)
def test_what_is_no_standard_guarantees_nothing(family, frequency_hz):
    """Where a family's published loss is not known from a standard itself, its cell has no guaranteed loss."""
    losses = cell(CellRequest(family=family, frequency_hz=frequency_hz)).losses

    assert losses.published_kind != "standard"
    assert losses.guaranteed_db is None


@pytest.mark.parametrize(("family", "millimetres", "tolerance", "source"), BORES)
def test_bore_is_the_printed_one(family, millimetres, tolerance, source):
    """The bore of a family's outer conductor is the printed one."""
    bore = limits(family).outer_diameter_m

    assert bore.value * 1e3 == pytest.approx(millimetres, abs=tolerance), source


@pytest.mark.parametrize(("family", "gigahertz", "source"), FREQUENCIES)
def test_upper_frequency_is_one_of_the_printed_ones(family, gigahertz, source):
    """The printed upper frequency is one end of the catalogue's customary-to-highest range."""
    rated = limits(family).rated_frequency_hz

    assert gigahertz * 1e9 in (pytest.approx(rated.low.value), pytest.approx(rated.high.value)), source


@pytest.mark.parametrize(("family", "torque", "tolerance", "source"), TORQUES)
def test_printed_torque_lies_in_the_range(family, torque, tolerance, source):
    """A printed coupling torque lies in the range that the catalogue shows."""
    assert within(limits(family).coupling_torque_nm, torque, tolerance), source


@pytest.mark.parametrize(("family", "torque", "tolerance", "source"), STAINLESS_TORQUES)
def test_printed_torque_of_stainless_steel_lies_in_its_range(family, torque, tolerance, source):
    """What is printed for stainless steel is never told of brass: the ranges do not meet."""
    interface = limits(family)

    assert within(interface.stainless_torque_nm, torque, tolerance), source
    assert interface.coupling_torque_nm.high.value < interface.stainless_torque_nm.low.value


@pytest.mark.parametrize(("family", "most"), [("2_92mm", 1.8)])
def test_torque_stays_under_the_standards_maximum(family, most):
    """The greatest torque shown stays under the maximum of IEEE 287-2007 (as restated)."""
    assert limits(family).coupling_torque_nm.high.value < most, IEEE_287


@pytest.mark.parametrize(("family", "centre", "outer", "source"), CONTACTS)
def test_contact_resistance_is_the_printed_one(family, centre, outer, source):
    """Printed contact resistances lie in the catalogue's new-to-worn range."""
    interface = limits(family)

    assert within(interface.centre_contact_resistance_ohm, centre * 1e-3, 5e-5), source
    assert outer is None or within(interface.outer_contact_resistance_ohm, outer * 1e-3, 5e-5), source


@pytest.mark.parametrize(("family", "working", "withstanding", "source"), VOLTAGES)
def test_voltages_are_the_printed_ones(family, working, withstanding, source):
    """Printed working and withstanding voltages lie in the catalogue's ranges."""
    interface = limits(family)

    assert working is None or within(interface.working_voltage_rms_v, working, 0.5), source
    assert withstanding is None or within(interface.proof_voltage_rms_v, withstanding, 0.5), source


@pytest.mark.parametrize(("family", "matings"), MATINGS)
def test_printed_mating_life_lies_in_the_range(family, matings):
    """A printed mating life lies in the catalogue's range (makers' pages and catalogues, as quoted)."""
    assert within(limits(family).durability_matings, matings, 0)
