"""What an SWR meter shows, against worked examples.

Sources: an amateur mailing list on amplifiers (2 April 2002) asks what directivity does to a reading; its printed
ranges hold too little, so the arithmetic is done anew here. The federal examination of Germany (2024, AI403): 150 Ω on
a 50 Ω meter must show 3.
"""

import json

import pytest

from jointwise.calc.operations import call

RANGES = [(20.0, 1.00, 1.50), (30.0, 1.15, 1.30)]
"""Of a true SWR of 1.22 by directivity [dB]: least and most shown."""


def line(**request):
    """The answer about a line."""
    return json.loads(call("line", json.dumps(request).encode()))


def shown(load, directivity_db):
    """Least and most that a meter right before the load shows."""
    meter = {"kind": "part", "what": "meter", "loss_db": 0.0, "directivity_db": directivity_db}
    answer = line(elements=[meter], load=load, band="20m", transmitter={"behaviour": "keeps_forward"})
    return answer["parts"][0]["reads_vswr"]


@pytest.mark.parametrize(("directivity", "least", "most"), RANGES)
def test_a_low_swr_drowns_in_poor_directivity(directivity, least, most):
    """The reading lies as far off as the leak is large against the reflection."""
    assert shown({"kind": "vswr", "vswr": 1.22}, directivity) == pytest.approx([least, most], abs=0.01)


def test_a_good_meter_shows_the_resistor():
    """150 Ω is SWR 3."""
    assert shown({"kind": "impedance", "resistance_ohm": 150.0}, 80.0) == pytest.approx([3.0, 3.0], abs=0.002)


def test_a_poor_meter_may_have_no_end():
    """With all the leak in phase nothing seems to be taken."""
    least, most = shown({"kind": "impedance", "resistance_ohm": 5000.0}, 10.0)

    assert least < 10
    assert most is None


def test_without_directivity_nothing_is_said():
    """What is not known of the meter is not made up."""
    assert shown({"kind": "vswr", "vswr": 1.22}, None) is None
