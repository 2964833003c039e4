"""How hot the contact of a mated pair gets between its cables, and what power that allows it."""

from collections.abc import Sequence
from functools import reduce
from typing import NamedTuple

import numpy as np

from ..formulas import cable_heat, heat, joint_heat
from ..formulas.formula import Broadcast, Number, purpose
from .air_film import Surface, air_film
from .cable_heat import CablePath, ConductorRises
from .cable_ratings import CableRatings
from .dissipation import dissipation
from .heat_limit import HeatLimit, is_documented, lower, time_share
from .ratings import Ratings
from .station import Station

__all__ = ["JointPath", "Paths", "Sides", "contact_limit", "direct_current_rises", "joint_path", "places"]

Sides = tuple[CableRatings[Number] | None, CableRatings[Number] | None]
"""The cables that end in a joint; none on the side of a port on a panel, which carries no heat away."""

Paths = tuple[CablePath | None, CablePath | None]
"""Of the cables of both sides."""

Fins = tuple[Broadcast, Broadcast]
"""Conductances into the cables of both sides [W/K]."""


class JointPath(NamedTuple):
    """From the contact to the air and into the cables, whatever wave passes."""

    allowed_temperature_c: Broadcast
    """Of the contact, or of one of its cables if that is lower [°C]."""
    to_body: Broadcast
    """Conductance from contact to body [W/K]."""
    to_air: Broadcast
    """Conductance from body to air [W/K]."""
    shared_by_body: Broadcast
    """Share of the centre's heat that the body takes [1]."""
    contact_time_share: Broadcast
    body_time_share: Broadcast
    sides: Paths
    solar_rise_k: Broadcast
    """Of the contact."""


def joint_path(ratings: Ratings[Number], cables: Sides, sides: Paths, station: Station) -> JointPath:
    """The two nodes of a joint with its cables as fins; `sides` are the paths of its cables."""
    allowed = ratings.highest_temperature_c
    for cable in cables:
        if cable is not None:
            allowed = lower(allowed, cable.highest_temperature_c)
    surface = Surface(
        ratings.body_diameter_m,
        ratings.body_emissivity,
        ratings.absorptance,
        ratings.film_share,
        ratings.surface_rise_share,
    )
    with purpose("the joint"):
        film = air_film(surface, allowed, station)
        to_body = joint_heat.radial_conductance(
            ratings.bead_thermal_conductivity,
            ratings.bead_length_m,
            ratings.fill_thermal_conductivity,
            ratings.section_length_m,
            ratings.outer_diameter_m,
            ratings.inner_diameter_m,
        )
        to_air = joint_heat.body_conductance(ratings.body_length_m, film.resistance_k_m_per_w)
        inner, outer = _fins(sides)
        shared = joint_heat.shared_by_body(to_body, *inner)
        contact_share, body_share = _time_shares(ratings, station, to_body, inner, to_air, outer)
    path = JointPath(allowed, to_body, to_air, shared, contact_share, body_share, sides, 0.0)
    if station.irradiance_w_per_m2 == 0:
        return path
    warmed = [side.solar_rise_k if side else 0.0 for side in sides]
    with purpose("the joint in the sun, without power"):
        rise = _contact_rise(path, 0.0, 0.0, [ConductorRises(sun, sun) for sun in warmed], film.solar_rise_k)
    return path._replace(solar_rise_k=rise)


def contact_limit(
    ratings: Ratings[Number],
    path: JointPath,
    rises: Sequence[ConductorRises | None],
    heat_factor: Number,
    frequency: Number,
    station: Station,
) -> HeatLimit:
    """Peak envelope power at which the centre contact reaches the allowed temperature.

    `rises` are those of each side's cable far away; `heat_factor` is the heat made in
    the joint over that of a matched wave [1]. A pin is never cooler than the conductor
    soldered to it, so the hotter of the two counts.
    """
    contact, *soldered = places(ratings, path, rises, heat_factor, frequency, station)
    return reduce(_hotter, soldered, contact)


def places(
    ratings: Ratings[Number],
    path: JointPath,
    rises: Sequence[ConductorRises | None],
    heat_factor: Number,
    frequency: Number,
    station: Station,
) -> list[HeatLimit]:
    """What the contact itself allows, and each conductor soldered to it, as for `contact_limit`.

    A documented power is of the pair as a whole, so that it holds for all of them.
    """
    impedance = station.impedance_ohm
    with purpose("the joint"):
        hot = dissipation(ratings, frequency, station.added_resistance_ohm, impedance, path.allowed_temperature_c)
        centre = joint_heat.centre_heat(
            heat_factor,
            hot.inner_surface_ohm,
            ratings.section_length_m,
            ratings.inner_diameter_m,
            ratings.centre_contact_resistance_ohm,
            station.added_resistance_ohm,
            impedance,
            hot.dielectric,
        )
        body = joint_heat.body_heat(heat_factor, hot.total, centre)
        rise = _contact_rise(path, centre, body, rises, 0.0)
        found = [_limit(ratings, path, path.solar_rise_k, rise, station)]
    sides = zip(path.sides, rises, strict=True)
    beside = [(side, conductor) for side, conductor in sides if side is not None and conductor is not None]
    if path.sides[0] is path.sides[1] and rises[0] is rises[1]:
        beside = beside[:1]
    with purpose("the conductor soldered to the pin"):
        found += [_limit(ratings, path, side.solar_rise_k, conductor.inner, station) for side, conductor in beside]
    return found


def direct_current_rises(
    ratings: Ratings[Number], path: JointPath, rises: Sequence[ConductorRises | None], added_ohm: float
) -> list[Broadcast]:
    """Rises by 1 A of direct current that never stops [K]: of the contact, and of each conductor soldered to it.

    `rises` are those of each side's cable far away, by the same current; `added_ohm` adds to the centre contact.
    A contact makes as many watts as it has ohms.
    """
    steady = path._replace(contact_time_share=1.0, body_time_share=1.0)
    centre, body = ratings.centre_contact_resistance_ohm + added_ohm, ratings.outer_contact_resistance_ohm
    with purpose("the joint, by direct current"):
        contact = _contact_rise(steady, centre, body, rises, 0.0)
    return [contact, *(conductor.inner for conductor in rises if conductor is not None)]


def _limit(
    ratings: Ratings[Number], path: JointPath, solar_rise_k: Number, rise_k_per_w: Number, station: Station
) -> HeatLimit:
    if is_documented(ratings.documented_power_w):
        rise_k_per_w = heat.documented_rise(rise_k_per_w, ratings.computed_for_it_w, ratings.documented_power_w)
    allowed_c = path.allowed_temperature_c
    allowed_w = heat.heat_allowed_power(
        allowed_c, station.ambient_temperature_c, solar_rise_k, rise_k_per_w, station.duty_factor
    )
    return HeatLimit(allowed_w, allowed_c, solar_rise_k, rise_k_per_w)


def _hotter(first: HeatLimit, second: HeatLimit) -> HeatLimit:
    """Of two places with the same limit the one that reaches it first."""
    sooner = np.asarray(second.allowed_w <= first.allowed_w)
    if sooner.ndim == 0:  # scalars keep their sources
        return second if sooner else first
    return HeatLimit(
        *(one if one is two else np.where(sooner, two, one) for one, two in zip(first, second, strict=True))
    )


def _contact_rise(
    path: JointPath,
    centre: Number,
    body: Number,
    rises: Sequence[ConductorRises | None],
    sun_k: Number,
) -> Broadcast:
    """Rise of the contact by heats made at centre and body [W] and the rises around it [K]."""
    (inner_1, inner_2), (outer_1, outer_2) = _fins(path.sides)
    near, far = (side or ConductorRises(0.0, 0.0) for side in rises)
    body_rise = joint_heat.body_rise(
        centre,
        body,
        path.body_time_share,
        path.shared_by_body,
        inner_1,
        near.inner,
        inner_2,
        far.inner,
        outer_1,
        near.outer,
        outer_2,
        far.outer,
        path.to_air,
        sun_k,
    )
    return joint_heat.contact_rise(
        centre, path.contact_time_share, path.to_body, body_rise, inner_1, near.inner, inner_2, far.inner
    )


def _fins(sides: Paths) -> tuple[Fins, Fins]:
    """Conductances into the inner and into the outer conductors [W/K]; 0 where no cable is."""
    inner = (sides[0].inner_fin if sides[0] else 0.0, sides[1].inner_fin if sides[1] else 0.0)
    outer = (sides[0].outer_fin if sides[0] else 0.0, sides[1].outer_fin if sides[1] else 0.0)
    return inner, outer


def _time_shares(
    ratings: Ratings[Number], station: Station, to_body: Number, inner: Fins, to_air: Number, outer: Fins
) -> tuple[Broadcast, Broadcast]:
    """Shares of the time that count for the contact and for the body, each with its own time constant."""
    if station.rhythm is None:
        return station.transmit_share, station.transmit_share
    contact = joint_heat.contact_capacity(
        ratings.metal_heat_capacity, ratings.inner_diameter_m, ratings.section_length_m
    )
    body = joint_heat.body_capacity(
        ratings.metal_heat_capacity, ratings.body_metal_share, ratings.body_diameter_m, ratings.body_length_m
    )
    contact_s = cable_heat.time_constant(contact, joint_heat.node_resistance(to_body, *inner))
    body_s = cable_heat.time_constant(body, joint_heat.node_resistance(to_air, *outer))
    return time_share(station, contact_s), time_share(station, body_s)
