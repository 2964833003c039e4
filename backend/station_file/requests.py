"""What the core is asked about a station, as the page asks it: a line and a kit leave to the station what they lack.

The page's own are `frontend/src/shared/station/*-request.js`; a test compares the two on generated stations.
"""

from collections.abc import Mapping
from typing import Any

from msgspec import Struct

from jointwise.calc.catalogue import Edition, catalogue, in_force
from jointwise.calc.fields import object_of
from jointwise.calc.operations import OPERATIONS

from .reading import StationFile

__all__ = [
    "fitout_request",
    "kit_request",
    "line_request",
    "matrix_request",
    "question_request",
    "snapshot_request",
    "sweep_request",
]

Request = dict[str, Any]

FIRST_BAND = "20m"
"""Where a line is looked at while nobody says."""
FIRST_VSWR = 1.5
FIRST_POWER_W = 100.0
LOOKED_AT = ("band", "frequency_hz")
OF_KITS_ALONE = ("ticked", "cable_dielectric")
"""What the page keeps with a kit and does not ask."""


def matrix_request(file: StationFile, edition: Edition | None) -> Request:
    """The matrix of the station at its power, on those of its bands that its Region has; all where it names none."""
    return _flat(file, "matrix", edition) | {"powers_w": [_power_w(file)]}


def snapshot_request(file: StationFile, edition: Edition | None) -> Request:
    """The same for a website, at the usual powers too."""
    with in_force(edition):
        levels = sorted({*catalogue().default_powers_w, _power_w(file)})
    return _flat(file, "snapshot", edition) | {"powers_w": levels}


def question_request(file: StationFile, text: str, edition: Edition | None) -> Request:
    """A typed question about the station: what is typed wins over what the station says."""
    return _flat(file, "question", edition) | {"text": text}


def line_request(file: StationFile, line: Mapping[str, Any]) -> Request:
    """A line with the station's settings, transmitter and antenna where it has none of its own."""
    settings, own = _settings(file), line["request"]
    is_looked_at = any(name in own for name in LOOKED_AT)
    said = {
        name: value
        for name, value in settings.items()
        if name in _fields("line") and not (is_looked_at and name in LOOKED_AT)
    }
    if not is_looked_at and settings.get("frequency_hz") is None:
        said["band"] = settings.get("band") or FIRST_BAND
    rig = _in_use(file, "rigs", "rig")
    if rig.get("behaviour"):
        said["transmitter"] = {"behaviour": rig["behaviour"]}
    return {**said, **_units(file), "load": _load(file), **own}


def fitout_request(file: StationFile, line: Mapping[str, Any]) -> Request:
    """The sheets to fit a line by."""
    asked = {name: value for name, value in line_request(file, line).items() if name in _fields("fitout")}
    station = _station(file).get("name", "")
    return asked | ({"station": station} if station else {})


def kit_request(file: StationFile) -> Request:
    """The kit at the station; a file without one is asked about no ports, which the core refuses."""
    kit = file.kept.get("kit", {"ports": []})
    said = {name: value for name, value in _settings(file).items() if name in _fields("kit")}
    return said | _units(file) | {name: value for name, value in kit.items() if name not in OF_KITS_ALONE}


def sweep_request(file: StationFile, sweep: Mapping[str, Any], end: str) -> Request:
    """A kept sweep, judged by the line of its name; without such a line its echoes are told."""
    line = next((line for line in file.lines if line["name"] == sweep["line"]), None)
    if line is None or not line["request"]["elements"]:
        return _units(file) | {"elements": [], "touchstone": sweep["text"]}
    asked = line_request(file, line)
    load = asked["load"] if end == "antenna" else {"kind": "end", "what": end}
    of_line = {name: value for name, value in asked.items() if name in _fields("sweep")}
    return of_line | {"load": load, "touchstone": sweep["text"]}


def _station(file: StationFile) -> Mapping[str, Any]:
    return file.kept.get("station", {})


def _settings(file: StationFile) -> dict[str, Any]:
    return {name: value for name, value in _station(file).get("settings", {}).items() if value is not None}


def _units(file: StationFile) -> Request:
    units = _station(file).get("units", "metric")
    return {} if units == "metric" else {"units": units}


def _fields(operation: str) -> frozenset[str]:
    request: type[Struct] = OPERATIONS[operation].request
    return frozenset(object_of(request).fields)


def _power_w(file: StationFile) -> float:
    return _settings(file).get("power_w", FIRST_POWER_W)


def _flat(file: StationFile, operation: str, edition: Edition | None) -> Request:
    """The settings that an operation asks, but for where a joint is looked at, which no station says."""
    asked = {name: value for name, value in _settings(file).items() if name in _fields(operation) - set(LOOKED_AT)}
    if "bands" in asked:
        region = str(asked.get("region", 1))
        with in_force(edition):
            known = catalogue().bands
            # a name that is not known goes to the core, which says so
            asked["bands"] = [band for band in asked["bands"] if band not in known or region in known[band].regions]
    return asked | _units(file)


def _in_use(file: StationFile, entries: str, place: str) -> Mapping[str, Any]:
    station = _station(file)
    at = station.get(place, -1)
    return station[entries][at] if at >= 0 else {}


def _load(file: StationFile) -> Request:
    """The antenna in use, with the SWR looked at where it is known by one."""
    load = _in_use(file, "antennas", "antenna").get("load", {"kind": "vswr"})
    if load["kind"] != "vswr":
        return dict(load)
    return {**load, "vswr": _settings(file).get("vswr", FIRST_VSWR)}
