"""When to inspect a joint next, and how long its contacts last."""

from collections.abc import Mapping
from datetime import date

from ..catalogue import catalogue
from ..catalogue.schema import Interface
from ..errors import InputError
from ..physics.scenario import Surroundings
from .advice import advice
from .results import ContactLife, InspectionPlan

__all__ = ["contact_life", "day", "inspection", "months_later"]

MONTHS = 12
NEVER = 1e-3
"""Matings a year up to which a joint counts as never opened: once in a thousand years."""

YEARS = (1900, 2200)
SHORTEST_MONTH = 28
"""A day that a month may lack moves to one that every month has."""


def day(text: str) -> date | None:
    """The day of a YYYY-MM-DD text; None for an empty one. Raises InputError naming `date`."""
    if not text:
        return None
    try:
        read = date.fromisoformat(text)
    except ValueError:
        read = None
    if read is None or read.isoformat() != text or not YEARS[0] <= read.year <= YEARS[1]:
        raise InputError("date", text, f"a day as YYYY-MM-DD, of the years {YEARS[0]} to {YEARS[1]}")
    return read


def months_later(start: date, months: int) -> date:
    """The same day some months later."""
    years, month = divmod(start.month - 1 + months, MONTHS)
    shifted = (start.year + years, month + 1)
    try:
        return date(*shifted, start.day)
    except ValueError:
        return date(*shifted, SHORTEST_MONTH)


def inspection(circumstances: Mapping[str, str], fitted: date | None) -> InspectionPlan:
    """The interval by exposure and shaking, and what to check."""
    rule = catalogue().inspections[circumstances["exposure"]]
    months: int = getattr(rule, circumstances["vibration"])
    return InspectionPlan(
        interval_months=months,
        due=months_later(fitted, months).isoformat() if fitted else "",
        note=rule.note,
        source=rule.source,
        kind=rule.kind,
        checks=advice("inspect", circumstances, {}),
    )


def contact_life(interface: Interface, site: Surroundings) -> ContactLife:
    """How many years the contacts last at the site's matings, by the lowest credible durability."""
    low, high = interface.durability_matings.low, interface.durability_matings.high
    yearly = site.matings_per_year
    opened = yearly > NEVER
    lasts = low.value / yearly if opened else None
    used = f"{yearly * site.service_life_years:g} in {site.service_life_years:g} years" if opened else "never opened"
    return ContactLife(
        matings_per_year=yearly,
        durability_low=low.value,
        durability_high=high.value,
        lasts_years=lasts,
        sentence=f"Made for {low.value:g} matings; here: {used}.",
        source=low.source,
        kind=low.kind,
    )
