"""What surrounds each joint of a line: the site, the joint's own contacts, and the cables that end in it."""

from ..catalogue import catalogue
from ..catalogue.schema import Cable
from ..errors import known
from ..physics.cable_table import cable_ratings
from ..physics.gates import Demand, site_demands
from ..physics.joint_heat import Sides
from ..physics.ratings import RatingEnd
from ..physics.scenario import Scenario, Surroundings
from .elements import CableRun, Element, Joint

__all__ = ["cable_of", "cables_of", "joint_demands", "joint_scenario", "touching"]


def joint_scenario(site: Surroundings, joint: Joint | None = None, cable: Cable | None = None) -> Scenario:
    """The scenario of one joint: the site's, with the joint's own contacts, weather and cable."""
    shared = {name: getattr(site, name) for name in Surroundings.__struct_fields__}
    if joint is not None:
        shared |= {"condition": joint.condition, "added_resistance_ohm": joint.added_resistance_ohm}
        shared["exposure"] = joint.exposure or site.exposure
    if cable is not None:
        shared["cable"] = cable.id
    return Scenario(**shared)


def joint_demands(site: Surroundings, joint: Joint, family: str, cables: list[Cable]) -> list[Demand]:
    """What the site asks of the joint's family; it must fit every cable that ends in it."""
    beside: list[Cable | None] = [*cables] or [None]
    by_cable = [site_demands(family, joint_scenario(site, joint, cable)) for cable in beside]
    return [next((demand for demand in gate if not demand.passed), gate[0]) for gate in zip(*by_cable, strict=True)]


def cables_of(sides: tuple[Cable | None, Cable | None], end: RatingEnd) -> Sides:
    """One end of the ratings of the cables on both sides of a joint."""
    near, far = (None if cable is None else cable_ratings(cable.id, end) for cable in sides)
    return near, far


def cable_of(run: CableRun, index: int) -> Cable:
    """The catalogue's cable of a run. Raises InputError naming the element for an unknown one."""
    return known(f"elements[{index}].cable", run.cable, catalogue().cables)


def touching(elements: list[Element], index: int) -> tuple[Cable | None, Cable | None]:
    """The cables that end in the joint at this index: on the transmitter's side and on the antenna's."""
    return _cable_at(elements, index - 1), _cable_at(elements, index + 1)


def _cable_at(elements: list[Element], index: int) -> Cable | None:
    element = elements[index] if 0 <= index < len(elements) else None
    return cable_of(element, index) if isinstance(element, CableRun) else None
