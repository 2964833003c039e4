"""Which plug mates with which jack, against what standards, journals and handbooks say in words."""

import pytest

from jointwise.calc.catalogue import catalogue
from jointwise.calc.catalogue.mating import ConnectorEnd, meeting

SMA_SCOPE = "IEC 61169-15:2021, scope: SMA intermates with 3.5 mm and 2.92 mm"
JOURNAL = "trade journal article on the intermateability of SMA, 3.5 mm and 2.92 mm"
BROADCAST = "broadcast engineering journal, readers' column on type N"
BNC_ARTICLE = "encyclopedia article on BNC: 50 and 75 ohm types can be plugged together"
SMA_ARTICLE = "encyclopedia article on SMA: RP-SMA plug has the socket, RP-SMA jack the pin"
MAILING_LIST = "amateur mailing list, April 2012: a BNC jack pushes into an N plug, unheld"

MATINGS = [  # plug, jack, whether it mates, source
    ("sma", "3_5mm", True, SMA_SCOPE),
    ("3_5mm", "sma", True, SMA_SCOPE),
    ("sma", "2_92mm", True, SMA_SCOPE),
    ("2_92mm", "sma", True, SMA_SCOPE),
    ("3_5mm", "2_92mm", True, JOURNAL),
    ("2_92mm", "3_5mm", True, JOURNAL),
    ("bnc", "bnc_75", True, BNC_ARTICLE),
    ("bnc_75", "bnc", True, BNC_ARTICLE),
    ("n", "n_75", False, BROADCAST),
    ("n_75", "n", False, BROADCAST),
    ("sma", "rp_sma", False, SMA_ARTICLE),
    ("rp_sma", "sma", False, SMA_ARTICLE),
    ("n", "bnc", False, MAILING_LIST),
]

VERDICTS = [  # plug, jack, what comes of it, source
    ("n", "n_75", "damages", BROADCAST),
    ("n_75", "n", "no contact", BROADCAST),
    ("sma", "rp_sma", "damages", SMA_ARTICLE),
    ("rp_sma", "sma", "no contact", SMA_ARTICLE),
    ("n", "bnc", "not held", MAILING_LIST),
]


@pytest.mark.parametrize(("plug", "jack", "mates", "source"), MATINGS)
def test_a_mating_is_as_published(plug, jack, mates, source):
    """A plug and a jack of two families mate where the source says so, and only there."""
    assert meeting(ConnectorEnd(plug, "plug"), ConnectorEnd(jack, "jack")).mates == mates, source


@pytest.mark.parametrize(("plug", "jack", "verdict", "source"), VERDICTS)
def test_a_trap_harms_as_published(plug, jack, verdict, source):
    """A wrong mating harms in the direction that the source names."""
    assert meeting(ConnectorEnd(plug, "plug"), ConnectorEnd(jack, "jack")).verdict == verdict, source


@pytest.mark.parametrize("family", catalogue().interfaces)
def test_a_family_mates_with_itself(family):
    """A family's plug mates with its jack, and neither with its own like."""
    plug, jack = ConnectorEnd(family, "plug"), ConnectorEnd(family, "jack")

    assert meeting(plug, jack).mates
    assert meeting(jack, plug).mates
    assert not meeting(plug, plug).mates
    assert not meeting(jack, jack).mates


@pytest.mark.parametrize("mating", catalogue().matings.values(), ids=lambda mating: mating.id)
def test_a_mating_is_told_of_once(mating):
    """Two families told of together are told of once for each direction."""
    told = [
        {(one.plug, one.jack), (one.jack, one.plug)} if one.either_way else {(one.plug, one.jack)}
        for one in catalogue().matings.values()
        if one is not mating
    ]

    assert (mating.plug, mating.jack) not in set().union(*told)
