"""Lines to test with: drawn ones of every kind of element and load, and Touchstone texts of random passive parts."""

import json

import numpy as np
from hypothesis import strategies as st
from scenarios import AIR_TIME

from jointwise.calc.catalogue import catalogue
from jointwise.calc.operations import call

CABLES = list(catalogue().cables)
WIRE_LINES = list(catalogue().wire_lines)
TRANSMITTING = [family.id for family in catalogue().interfaces.values() if not family.receive_only]
CONDITIONS = list(catalogue().conditions)
MOST_ELEMENTS = 25
MEASURED_HZ = np.geomspace(1e5, 5e10, 7)
"""Where the measured parts drawn here have their points: the whole range of a spot frequency."""

HOLDS = {"behaviour": "keeps_forward"}
"""A transmitter that any load leaves as it is."""


def ask(operation, **request):
    """An answer of the core as plain data, JSON to JSON."""
    return json.loads(call(operation, json.dumps(request).encode()))


def touchstone(frequencies_hz, s, reference_ohm=50.0):
    """S-parameters of shape (frequencies, ports, ports) as the text of a version 1 file, with all their digits."""
    ports = s.shape[-1]
    rows = [f"# Hz S RI R {reference_ohm!r}"]
    for frequency, matrix in zip(frequencies_hz.tolist(), s, strict=True):
        values = matrix.T.ravel() if ports == 2 else matrix.ravel()  # a two-port file gives s21 before s12
        pairs = " ".join(f"{value.real!r} {value.imag!r}" for value in values.tolist())
        rows.append(f"{frequency!r} {pairs}")
    return "\n".join(rows)


def passive(seed, ports, points):
    """Random S-parameters, (points, ports, ports), whose largest singular value lies between 0.3 and 0.999."""
    random = np.random.default_rng(seed)
    s = random.normal(size=(points, ports, ports, 2)) @ np.array([1, 1j])
    largest = np.linalg.norm(s, 2, axis=(1, 2))
    return s / largest[:, None, None] * random.uniform(0.3, 0.999, (points, 1, 1))


def measured_text(seed, ports):
    """A file of one random passive matrix that holds over the whole range, so that between its points it stays so."""
    return touchstone(MEASURED_HZ, np.repeat(passive(seed, ports, 1), MEASURED_HZ.size, axis=0))


SEEDS = st.integers(0, 2**32 - 1)
LIMITS = st.one_of(st.none(), st.floats(1, 1e6))

CABLE_RUNS = st.fixed_dictionaries(
    {
        "kind": st.just("cable"),
        "cable": st.sampled_from(CABLES),
        "length_m": st.one_of(st.floats(0.01, 3), st.floats(0.01, 100)),
    }
)
JOINTS = st.fixed_dictionaries(
    {
        "kind": st.just("joint"),
        "family": st.sampled_from(TRANSMITTING),
        "adapter_to": st.one_of(st.none(), st.none(), st.sampled_from(TRANSMITTING)),
        "condition": st.sampled_from(CONDITIONS),
        "added_resistance_ohm": st.one_of(st.just(0.0), st.floats(0, 5)),
    }
)
PARTS = st.fixed_dictionaries(
    {
        "kind": st.just("part"),
        "loss_db": st.one_of(st.just(0.0), st.floats(0, 6)),
        "vswr": st.one_of(st.just(1.0), st.floats(1, 20)),
        "power_limit_w": LIMITS,
        "voltage_limit_v": LIMITS,
    }
)
MEASURED_PARTS = st.builds(
    lambda seed, power, voltage: {
        "kind": "measured",
        "touchstone": measured_text(seed, 2),
        "power_limit_w": power,
        "voltage_limit_v": voltage,
    },
    SEEDS,
    LIMITS,
    LIMITS,
)
WIRE_RUNS = st.fixed_dictionaries(
    {
        "kind": st.just("wires"),
        "line": st.sampled_from(WIRE_LINES),
        "length_m": st.one_of(st.floats(0.01, 3), st.floats(0.01, 100)),
    }
)
SECTIONS = st.fixed_dictionaries(
    {
        "kind": st.just("section"),
        "impedance_ohm": st.floats(10, 1000),
        "length_m": st.floats(0.01, 30),
        "velocity_factor": st.floats(0.2, 1),
        "loss_db": st.one_of(st.just(0.0), st.floats(0, 3)),
        "voltage_limit_v": LIMITS,
    }
)
TRANSFORMERS = st.fixed_dictionaries(
    {
        "kind": st.just("transformer"),
        "ratio": st.one_of(st.just(1.0), st.sampled_from([0.25, 4.0, 9.0, 49.0]), st.floats(0.01, 100)),
        "loss_db": st.one_of(st.just(0.0), st.floats(0, 3)),
        "choking_ohm": st.one_of(st.none(), st.floats(1, 1e4)),
        "power_limit_w": LIMITS,
        "voltage_limit_v": LIMITS,
    }
)
TUNERS = st.fixed_dictionaries(
    {
        "kind": st.just("tuner"),
        "network": st.sampled_from(["l", "t", "pi"]),
        "coil_q": st.floats(5, 1000),
        "capacitor_q": st.floats(50, 1e4),
        "largest_capacitor_f": st.floats(-11, -8).map(lambda exponent: 10**exponent),
        "largest_coil_h": st.floats(-8, -4).map(lambda exponent: 10**exponent),
        "voltage_limit_v": LIMITS,
        "current_limit_a": LIMITS.map(lambda limit: limit and limit / 100),
    }
)
ELEMENTS = st.one_of(CABLE_RUNS, JOINTS, JOINTS, PARTS, MEASURED_PARTS, WIRE_RUNS, SECTIONS, TRANSFORMERS, TUNERS)

LOADS = st.one_of(
    st.fixed_dictionaries({"kind": st.just("vswr"), "vswr": st.floats(1, 100), "angle_deg": st.floats(-360, 360)}),
    st.fixed_dictionaries({"kind": st.just("vswr"), "vswr": st.floats(1, 100)}),
    st.fixed_dictionaries({"kind": st.just("dummy"), "vswr": st.floats(1, 20), "power_limit_w": LIMITS}),
    st.fixed_dictionaries(
        {"kind": st.just("impedance"), "resistance_ohm": st.floats(0.1, 1e4), "reactance_ohm": st.floats(-1e4, 1e4)}
    ),
    st.builds(
        lambda ends: {
            "kind": "table",
            "points": [
                {"frequency_hz": hertz, "resistance_ohm": resistance, "reactance_ohm": reactance}
                for hertz, (resistance, reactance) in zip((1e5, 5e10), ends, strict=True)
            ],
        },
        st.tuples(*[st.tuples(st.floats(0.1, 1e3), st.floats(-1e3, 1e3))] * 2),
    ),
    st.builds(lambda seed: {"kind": "measured", "touchstone": measured_text(seed, 1)}, SEEDS),
)

SITES = st.fixed_dictionaries(
    {
        "region": st.integers(1, 3),
        "mode": st.sampled_from(list(catalogue().modes)),
        "power_is": st.sampled_from(["forward", "net"]),
        "transmitter": st.fixed_dictionaries({"behaviour": st.sampled_from(list(catalogue().transmitters))}),
        "system_impedance_ohm": st.one_of(st.just(50.0), st.floats(25, 150)),
        "ambient_temperature_c": st.floats(-40, 50),
        "altitude_m": st.floats(0, 9_000),
        "exposure": st.sampled_from(["indoor", "sheltered", "exposed"]),
        "power_w": st.floats(0.1, 1e5),
        "frequency_hz": st.floats(5, 10.5).map(lambda exponent: 10**exponent),
    }
)

LINES = st.builds(
    lambda site, air_time, elements, load: {**site, **air_time, "elements": elements, "load": load},
    SITES,
    AIR_TIME,
    st.lists(ELEMENTS, min_size=1, max_size=MOST_ELEMENTS),
    LOADS,
)
"""Fields of a line's request, all of them inside their ranges."""
