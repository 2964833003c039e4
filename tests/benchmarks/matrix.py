"""Time of the full matrix against a per-cell loop and against the bare arithmetic.

Run with `python tests/benchmarks/matrix.py`. Prints medians of repeated runs
and their ratios; all three compute the same margins, which is checked first.
"""

import statistics
import time
from collections.abc import Callable

import numpy as np

from jointwise.calc.catalogue import catalogue
from jointwise.calc.formulas.constants import C_0, MU_0, SIGMA_SB
from jointwise.calc.formulas.heat import margin
from jointwise.calc.matrix.matrix import matrix
from jointwise.calc.matrix.requests import MatrixRequest
from jointwise.calc.operations import call
from jointwise.calc.physics.columns import columns
from jointwise.calc.physics.limits import assumption, heat_limit, match_limit, voltage_limit
from jointwise.calc.physics.margins import evaluate
from jointwise.calc.physics.ratings import ENDS, family_ratings, table_ratings
from jointwise.calc.physics.station import station_of

REQUEST = MatrixRequest()
STATION = station_of(REQUEST)
FAMILIES = list(catalogue().interfaces)
COLUMNS = columns(REQUEST.region, REQUEST.bands, REQUEST.frequencies_hz)
FREQUENCIES = np.array([column.high_hz for column in COLUMNS])
POWERS = np.array(REQUEST.powers_w)


def vectorised() -> np.ndarray:
    """The core's own pass."""
    return evaluate(FAMILIES, FREQUENCIES, POWERS, STATION).by_limit_db


def loop() -> np.ndarray:
    """The same formulas, one cell at a time."""
    result = np.empty((2, 3, len(FAMILIES), FREQUENCIES.size, POWERS.size))
    with np.errstate(divide="ignore"):
        for index in np.ndindex(2, *result.shape[2:]):
            end, family, column, power = index
            ratings, frequency = family_ratings(FAMILIES[family], ENDS[end]), FREQUENCIES[column]
            result[end, 0, *index[1:]] = margin(heat_limit(ratings, frequency, STATION).allowed_w, POWERS[power])
            result[end, 1, *index[1:]] = margin(voltage_limit(ratings, STATION).allowed_w, POWERS[power])
            result[end, 2, *index[1:]] = match_limit(ratings, frequency, STATION).margin_db
    return np.sort(result, axis=0)


def floor() -> np.ndarray:
    """The bare arithmetic of both ends with nothing declared, recorded or looked up."""
    return np.sort(np.stack([_floor_end(table) for table in TABLES]), axis=0)


TABLES = [table_ratings(FAMILIES, end) for end in ENDS]
RISE, ABSORB, EMIT = (float(assumption(name)) for name in ("body_rise_k", "surface_absorptance", "surface_emissivity"))


def _floor_end(v) -> np.ndarray:
    z, s, f = STATION.impedance_ohm, STATION.vswr, FREQUENCIES
    h = (1 + (s - 1) / (s + 1)) ** 2

    def share(f, added):
        inner = np.sqrt(np.pi * f * MU_0 * v.inner_permeability / v.inner_conductivity)
        outer = np.sqrt(np.pi * f * MU_0 * v.outer_permeability / v.outer_conductivity)
        metal = inner / (np.pi * v.inner_diameter_m) + outer / (np.pi * v.outer_diameter_m)
        bead = 2 * np.pi * f * np.sqrt(v.bead_permittivity) * v.bead_loss_tangent * v.bead_length_m / C_0
        contact = (v.centre_contact_resistance_ohm + v.outer_contact_resistance_ohm + added) / z
        return np.minimum(metal * v.section_length_m / z + bead + contact, 0.99)

    span = v.section_length_m - v.bead_length_m
    conducting = v.bead_thermal_conductivity * v.bead_length_m + v.fill_thermal_conductivity * span
    inside = 2 * np.pi * conducting / np.log(v.outer_diameter_m / v.inner_diameter_m)
    film = 1.32 * (RISE / v.body_diameter_m) ** 0.25
    radiated = 4 * EMIT * SIGMA_SB * (STATION.ambient_temperature_c + 273.15 + RISE / 2) ** 3
    skin = np.pi * v.body_diameter_m * v.body_length_m
    copper = v.conductor_thermal_conductivity * v.cable_conductor_area_m2
    fins = 2 * np.sqrt((film + radiated) * np.pi * v.cable_diameter_m * copper)
    outside = (film + radiated) * skin + fins
    body = (1 / outside) / (1 / inside + 1 / outside)
    convective = 1 - radiated * skin / outside
    sun = STATION.irradiance_w_per_m2 * ABSORB * v.body_diameter_m * v.body_length_m / outside
    rated = share(v.rated_frequency_hz, 0.0)
    behind = (v.rated_contact_c - v.rated_ambient_c) / (v.rated_power_w * rated)
    pressure = 1.0  # sea level here and behind the ratings
    resistance = behind * (1 + body * (1 / (1 - convective + convective * np.sqrt(pressure)) - 1))
    hottest = np.minimum(v.highest_temperature_c, STATION.cable_temperature_c)
    room = np.maximum(hottest - STATION.ambient_temperature_c - sun, 0)
    heat = room / (resistance * share(f, STATION.added_resistance_ohm) * h * STATION.duty_factor)
    density = 298.15 / (STATION.ambient_temperature_c + 273.15)
    volts = (np.sqrt(2) * v.working_voltage_rms_v * np.minimum(1, density)) ** 2 / (2 * z * h)
    limit = v.match_vswr_at_dc + v.match_vswr_slope_per_hz * f
    section = np.where(
        v.design_impedance_ohm >= z,
        v.design_impedance_ohm * np.sqrt(limit),
        v.design_impedance_ohm / np.sqrt(limit),
    )
    angle = np.minimum(2 * np.pi * f * v.match_length_m * np.sqrt(v.match_permittivity) / C_0, np.pi / 2)
    r, sine, cosine = section / z, np.sin(angle), np.cos(angle)
    gamma = np.abs(r - 1 / r) * sine / np.sqrt(4 * cosine**2 + (r + 1 / r) ** 2 * sine**2)
    matched = -20 * np.log10(np.maximum(gamma, 1e-6)) - STATION.return_loss_asked_db
    with np.errstate(divide="ignore"):
        allowed = 10 * np.log10(np.stack([heat, np.broadcast_to(volts, heat.shape)]))
        powered = allowed[..., None] - 10 * np.log10(POWERS)
    shape = (1, *powered.shape[1:])
    return np.concatenate([powered, np.broadcast_to(matched[..., None], shape)])


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
    np.testing.assert_allclose(core, floor(), rtol=1e-9)
    np.testing.assert_allclose(core, loop(), rtol=1e-9)
    cells = len(FAMILIES) * len(COLUMNS) * POWERS.size
    print(f"{len(FAMILIES)} families x {len(COLUMNS)} bands x {POWERS.size} powers = {cells} cells,")
    print("three limits, both ends of the ratings")
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
