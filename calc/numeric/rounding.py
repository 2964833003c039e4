"""Numbers cut to the digits a reader can use, which are the same on every machine."""

from typing import Any

__all__ = ["rounded", "significant"]


def significant(value: float, digits: int) -> float:
    """A number with so many significant digits."""
    return float(f"{value:.{digits}g}")


def rounded(value: Any, digits: int) -> Any:
    """Plain data with every float in it cut to so many significant digits."""
    if isinstance(value, float):
        return significant(value, digits)
    if isinstance(value, list):
        return [rounded(item, digits) for item in value]
    if isinstance(value, dict):
        return {key: rounded(item, digits) for key, item in value.items()}
    return value
