"""What the tests of the core share: drawn stations, and tables as arrays."""

import numpy as np
from hypothesis import Phase, settings
from hypothesis import strategies as st

from jointwise.calc.catalogue import catalogue
from jointwise.calc.matrix.matrix import matrix
from jointwise.calc.matrix.requests import MatrixRequest

FAMILIES = list(catalogue().interfaces)
BANDS = ["160m", "20m", "6m", "70cm", "23cm", "3cm"]
"""From the lowest to the highest, present in every Region."""
LIMIT_FIELDS = ["contact_allowed_w", "cable_allowed_w", "voltage_allowed_w"]
"""Of a matrix: what each limit alone allows, both ends."""
POWERS_W = [0.0, 0.1, 5.0, 50.0, 400.0, 1500.0, 100_000.0]
"""In rising order, from receive to the largest that may be asked."""


def examples(count):
    """Settings of a property test: repeatable, no clock in it, and quick to fail.

    Shrinking a whole station can take minutes, so a failure shows the station as it was drawn.
    """
    return settings(
        deadline=None,
        derandomize=True,
        max_examples=count,
        phases=[Phase.explicit, Phase.generate],
    )


AIR_TIME = st.one_of(
    st.just({}),
    st.fixed_dictionaries({"transmit_share": st.floats(0.001, 1)}),
    st.fixed_dictionaries({"on_time_s": st.floats(0.01, 3600), "off_time_s": st.floats(0.01, 3600)}),
)

SITE = st.fixed_dictionaries(
    {
        "region": st.integers(1, 3),
        "mode": st.sampled_from(list(catalogue().modes)),
        "power_is": st.sampled_from(["forward", "net"]),
        "vswr": st.floats(1, 20),
        "system_impedance_ohm": st.floats(25, 150),
        "return_loss_asked_db": st.floats(6, 40),
        "cable": st.sampled_from([None, *catalogue().cables]),
        "ambient_temperature_c": st.floats(-60, 80),
        "solar_irradiance_w_per_m2": st.floats(0, 1400),
        "altitude_m": st.floats(0, 30_000),
        "exposure": st.sampled_from(["indoor", "sheltered", "exposed", "immersed"]),
        "added_sealing": st.booleans(),
        "vibration": st.sampled_from(["none", "vehicle", "severe"]),
        "condition": st.sampled_from(list(catalogue().conditions)),
        "added_resistance_ohm": st.one_of(st.just(0.0), st.floats(0, 0.1), st.floats(0, 5)),
    }
)

STATIONS = st.builds(lambda site, air_time: site | air_time, SITE, AIR_TIME)
"""Fields of a scenario, all of them inside their ranges."""


def table(**fields):
    """The matrix of every family at the usual bands and powers."""
    return matrix(MatrixRequest(**({"bands": BANDS, "powers_w": POWERS_W} | fields)))


def numbers(nested):
    """A nested list of a result as an array, NaN where it holds nothing."""
    return np.array(nested, dtype=float)


def refused(result):
    """Where a matrix refuses: booleans by family, column and power."""
    return np.array(result.refused_by) >= 0


def worst(excess, where):
    """The largest entry among those that count, minus infinity where there is none."""
    return np.max(excess, where=where, initial=-np.inf)
