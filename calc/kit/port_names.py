"""What ports are called in sentences."""

from collections import Counter

from ..catalogue.mating import ConnectorEnd, end_name
from .requests import Port

__all__ = ["listed", "port_names"]


def port_names(ports: list[Port]) -> list[str]:
    """The name of each; where it has none of its own, number and connector tell it from the others."""
    times = Counter(port.name for port in ports)
    return [_name(port, at, times[port.name] > 1) for at, port in enumerate(ports, start=1)]


def _name(port: Port, number: int, is_shared: bool) -> str:
    end = end_name(ConnectorEnd(port.family, port.gender))
    if not port.name:
        return f"port {number} ({end})"
    return f"{port.name} (port {number})" if is_shared else port.name


def listed(words: list[str]) -> str:
    """Words in a row: "A, B and C"."""
    return " and ".join([", ".join(words[:-1]), words[-1]] if len(words) > 1 else words)
