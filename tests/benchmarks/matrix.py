"""Time of the full matrix against a per-cell loop and against the bare arithmetic.

Run with `python tests/benchmarks/matrix.py`. Prints medians of repeated runs
and their ratios; all three compute the same margins, which is checked first.
"""

import statistics
import time
from collections.abc import Callable
from typing import NamedTuple

import numpy as np

from jointwise.calc.catalogue import catalogue
from jointwise.calc.formulas.constants import C_0, MU_0, SIGMA_SB, ZERO_CELSIUS_K
from jointwise.calc.matrix.matrix import matrix
from jointwise.calc.matrix.requests import MatrixRequest
from jointwise.calc.operations import call
from jointwise.calc.physics.cable_heat import cable_limit
from jointwise.calc.physics.cable_table import cable_ratings, table_of_cable_ratings
from jointwise.calc.physics.columns import columns
from jointwise.calc.physics.customary import customary_cable
from jointwise.calc.physics.family_ratings import family_ratings, table_ratings
from jointwise.calc.physics.limits import cable_heat, contact_heat, match_of, voltage_limit
from jointwise.calc.physics.margins import evaluate
from jointwise.calc.physics.ratings import ENDS
from jointwise.calc.physics.station import station_of

REQUEST = MatrixRequest()
STATION = station_of(REQUEST)
FAMILIES = list(catalogue().interfaces)
CABLES = [customary_cable(family) for family in FAMILIES]
COLUMNS = columns(REQUEST.region, REQUEST.bands, REQUEST.frequencies_hz)
FREQUENCIES = np.array([column.high_hz for column in COLUMNS])
POWERS = np.array(REQUEST.powers_w)


class Computed(NamedTuple):
    """Margins, ends x limits x families x columns x powers [dB], and return losses, ends x families x columns [dB]."""

    margins_db: np.ndarray
    return_loss_db: np.ndarray


def vectorised() -> Computed:
    """The core's own pass."""
    margins = evaluate(FAMILIES, FREQUENCIES, POWERS, STATION)
    return Computed(margins.by_limit_db, margins.return_loss_db)


def loop() -> Computed:
    """The same formulas, one joint at a time."""
    allowed = np.empty((2, 3, len(FAMILIES), FREQUENCIES.size))
    return_loss = np.empty((2, len(FAMILIES), FREQUENCIES.size))
    for end, family, column in np.ndindex(*return_loss.shape):
        ratings, cable = family_ratings(FAMILIES[family], ENDS[end]), cable_ratings(CABLES[family], ENDS[end])
        frequency = FREQUENCIES[column]
        beside = cable_heat(cable, frequency, STATION)
        allowed[end, :, family, column] = (
            cable_limit(cable, beside.path, beside.rises, STATION).allowed_w,
            contact_heat(ratings, cable, beside, frequency, STATION).allowed_w,
            voltage_limit(ratings, STATION).allowed_w,
        )
        return_loss[end, family, column] = match_of(ratings, frequency, STATION).return_loss_db
    return _computed(allowed, return_loss)


def floor() -> Computed:
    """The bare arithmetic of both ends with nothing declared, recorded or looked up."""
    ends = [_floor_end(*tables) for tables in TABLES]
    return _computed(np.array([allowed for allowed, _ in ends]), np.array([loss for _, loss in ends]))


def _computed(allowed: np.ndarray, return_loss: np.ndarray) -> Computed:
    allowed, return_loss = (np.array([both.min(axis=0), both.max(axis=0)]) for both in (allowed, return_loss))
    with np.errstate(divide="ignore"):
        margins = np.where(POWERS > 0, 10 * np.log10(allowed)[..., None] - 10 * np.log10(POWERS), np.inf)
    return Computed(margins, return_loss)


TABLES = [(table_ratings(FAMILIES, end), table_of_cable_ratings(CABLES, end)) for end in ENDS]
CLAD = TABLES[0][1].clad
CLAD_POINTS = {clad: (np.array(clad.frequency_hz), np.array(clad.k_1)) for clad in CLAD if clad}
CLAD_ROWS = {clad: [row for row, other in enumerate(CLAD) if other == clad] for clad in CLAD_POINTS}


def _floor_k_1(k_1: np.ndarray, f: np.ndarray) -> np.ndarray:
    """Conductor coefficients, those of clad cores by the power of frequency between their figures."""
    k_1 = k_1.repeat(f.size, axis=1)
    for clad, (points, figures) in CLAD_POINTS.items():
        at = points[1:-1].searchsorted(f, side="right")
        f_a, f_b, k_a, k_b = points[at], points[at + 1], figures[at], figures[at + 1]
        between = k_a * (k_b / k_a) ** (np.log(f / f_a) / np.log(f_b / f_a))
        k_1[CLAD_ROWS[clad]] = np.where(f < points[-1], between, figures[-1])
    return k_1


def _floor_end(v, c) -> tuple[np.ndarray, np.ndarray]:
    z, f, air = STATION.impedance_ohm, FREQUENCIES, STATION.ambient_temperature_c
    h, duty, time_on = (1 + (STATION.vswr - 1) / (STATION.vswr + 1)) ** 2, STATION.duty_factor, STATION.transmit_share

    def to_air(diameter, emissivity, hottest, film_share, rise_share):
        rise = rise_share * np.maximum(hottest - air, 1)
        kelvin = air + rise / 2 + ZERO_CELSIUS_K
        conducting = 2.64638e-3 * kelvin**1.5 / (kelvin + 245.4 * 10 ** (-12 / kelvin))
        viscosity = 1.458e-6 * kelvin**1.5 / (kelvin + 110.4) * 287.05287 * kelvin / 101325
        rayleigh = 0.70 * 9.80665 * rise * diameter**3 / (kelvin * viscosity**2)
        root = 0.60 + 0.387 * rayleigh ** (1 / 6) / (1 + (0.559 / 0.70) ** (9 / 16)) ** (8 / 27)
        radiated = 4 * emissivity * SIGMA_SB * kelvin**3
        return 1 / ((film_share * conducting / diameter * root**2 + radiated) * np.pi * diameter)

    film = to_air(c.outer_diameter_m, c.emissivity, c.highest_temperature_c, c.film_share, c.surface_rise_share)
    jacket = np.log(c.outer_diameter_m / c.screen_diameter_m) / (2 * np.pi * c.jacket_thermal_conductivity)
    foamed, solid, k = 1 / c.velocity_factor**2, c.plastic_permittivity, c.plastic_thermal_conductivity
    gas = np.maximum((2 * solid + 1) * (solid - foamed) / ((solid - 1) * (foamed + 2 * solid)), 0)
    k = k * (2 * k + 0.026 - 2 * gas * (k - 0.026)) / (2 * k + 0.026 + gas * (k - 0.026))
    insulation = np.log(c.dielectric_diameter_m / c.inner_diameter_m) / (2 * np.pi * k)
    inner_share = c.dielectric_diameter_m / (c.dielectric_diameter_m + c.inner_diameter_m)
    inner_fin = np.sqrt(c.inner_thermal_conductivity * c.inner_area_m2 / insulation)
    outer_fin = np.sqrt(c.screen_thermal_conductivity * c.screen_area_m2 / (film + jacket))

    neper = np.log(10) / 20
    root_f = _floor_k_1(c.k_1, f) * np.sqrt(1 + 0.00393 * (c.highest_temperature_c - 20)) * np.sqrt(f)
    step = c.impedance_ohm / z
    conductors, filling = 2 * neper * root_f * h * step, 2 * neper * c.k_2 * f * h / step
    screen = (conductors + filling) * (film + jacket) * time_on
    core = screen + (inner_share * conductors + filling / 2) * insulation * time_on
    held = np.maximum(c.computed_for_it_w / c.documented_power_w, 1)
    screen, core = screen * held, core * held
    cable_w = np.maximum(c.highest_temperature_c - air, 0) / (core * duty)

    hottest = np.minimum(v.highest_temperature_c, c.highest_temperature_c)
    body_film = to_air(v.body_diameter_m, v.body_emissivity, hottest, v.film_share, v.surface_rise_share)
    span = v.section_length_m - v.bead_length_m
    conducting = v.bead_thermal_conductivity * v.bead_length_m + v.fill_thermal_conductivity * span
    to_body = 2 * np.pi * conducting / np.log(v.outer_diameter_m / v.inner_diameter_m)
    hot = 1 + 0.00393 * (hottest - 20)
    inner = np.sqrt(np.pi * f * MU_0 * v.inner_permeability / v.inner_conductivity * hot) / np.pi / v.inner_diameter_m
    outer = np.sqrt(np.pi * f * MU_0 * v.outer_permeability / v.outer_conductivity * hot) / np.pi / v.outer_diameter_m
    bead = 2 * np.pi * f * np.sqrt(v.bead_permittivity) * v.bead_loss_tangent * v.bead_length_m / C_0
    centre = (inner * v.section_length_m + v.centre_contact_resistance_ohm + STATION.added_resistance_ohm) / z
    sheath = (outer * v.section_length_m + v.outer_contact_resistance_ohm) / z
    at_centre = h * (centre + bead / 2)
    at_body = np.maximum(h * np.minimum(centre + sheath + bead, 0.99) - at_centre, 0)
    to_both = to_body + 2 * inner_fin
    share = to_body / to_both
    brought = share * 2 * inner_fin * core + 2 * outer_fin * screen
    paths = v.body_length_m / body_film + 2 * outer_fin + share * 2 * inner_fin
    body = ((at_body + share * at_centre) * time_on + brought) / paths
    contact = (at_centre * time_on + to_body * body + 2 * inner_fin * core) / to_both
    contact = contact * np.maximum(v.computed_for_it_w / v.documented_power_w, 1)
    contact_w = np.maximum(hottest - air, 0) / (np.maximum(contact, core) * duty)

    density = 298.15 / (air + ZERO_CELSIUS_K)
    volts = (np.sqrt(2) * v.working_voltage_rms_v * np.minimum(1, density)) ** 2 / (2 * z * h)
    limit = v.match_vswr_at_dc + v.match_vswr_slope_per_hz * f
    nominal = v.design_impedance_ohm
    section = np.where(nominal >= z, nominal * np.sqrt(limit), nominal / np.sqrt(limit))
    angle = np.minimum(2 * np.pi * f * v.match_length_m * np.sqrt(v.match_permittivity) / C_0, np.pi / 2)
    r, sine, cosine = section / z, np.sin(angle), np.cos(angle)
    gamma = np.abs(r - 1 / r) * sine / np.sqrt(4 * cosine**2 + (r + 1 / r) ** 2 * sine**2)
    allowed = np.stack([cable_w, contact_w, np.broadcast_to(volts, cable_w.shape)])
    return allowed, -20 * np.log10(np.maximum(gamma, 1e-6))


def median_seconds(work: Callable[[], object], times: int) -> float:
    """Median wall time of `work` over `times` runs after one warm-up."""
    work()
    durations = []
    for _ in range(times):
        start = time.perf_counter()
        work()
        durations.append(time.perf_counter() - start)
    return statistics.median(durations)


def main() -> None:
    """Check that the three agree, then print times and ratios."""
    core = vectorised()
    for other in (floor(), loop()):
        for own, same in zip(core, other, strict=True):
            np.testing.assert_allclose(own, same, rtol=1e-9)
    cells = len(FAMILIES) * len(COLUMNS) * POWERS.size
    print(f"{len(FAMILIES)} families x {len(COLUMNS)} bands x {POWERS.size} powers = {cells} cells,")
    print("three limits and the match, both ends of the ratings")
    rows = {
        "per-cell Python loop": (loop, 1),
        "bare numpy arithmetic": (floor, 200),
        "core, all limits": (vectorised, 200),
        "core with gates and lists": (lambda: matrix(REQUEST), 200),
        "call, JSON to JSON": (lambda: call("matrix", b"{}"), 200),
    }
    seconds = {name: median_seconds(work, times) for name, (work, times) in rows.items()}
    slowest, barest = seconds["per-cell Python loop"], seconds["bare numpy arithmetic"]
    print(f"{'':28}{'ms':>10}{'loop / it':>12}{'it / bare':>12}")
    for name, taken in seconds.items():
        print(f"{name:28}{taken * 1e3:10.3f}{slowest / taken:12.0f}{taken / barest:12.2f}")


if __name__ == "__main__":
    main()
