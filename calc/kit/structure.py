"""What makes the search for a kit faster: which adapters fit a port, and which families may be turned round."""

from jointwise.calc.kit.bits import mask
from jointwise.calc.kit.chains import AdapterType
from jointwise.calc.kit.cover import Structure
from jointwise.calc.kit.mating import End, mates_of
from jointwise.calc.kit.needs import Need

__all__ = ["structure"]


def structure(needs: list[Need], adapters: list[AdapterType], fixed: set[str]) -> Structure:
    """The structure of a kit whose elements are `adapters`; families of `fixed`, of ports and owned adapters, stay.

    The adapters that fit an end are a star. A family only adapters have, and
    which mates with none but itself, is a mirror: with plug and jack exchanged
    everywhere a kit joins the same.
    """
    ends = dict.fromkeys(end for need in needs for end in (need.first, need.second))
    families = dict.fromkeys(end.family for one in adapters for end in one if end.family not in fixed)
    plugs = {family: (End(family, "plug"), End(family, "jack")) for family in families}
    return Structure(
        [_having(adapters, mates_of(end)) for end in ends],
        [
            (_having(adapters, (plug,)), _having(adapters, (jack,)))
            for plug, jack in plugs.values()
            if mates_of(plug) == (jack,) and mates_of(jack) == (plug,)
        ],
    )


def _having(adapters: list[AdapterType], sides: tuple[End, ...]) -> int:
    """The elements that have one of these sides."""
    return mask(at for at, one in enumerate(adapters) if any(side in sides for side in one))
