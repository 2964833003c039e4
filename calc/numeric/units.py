"""Numbers as a person reads them: frequency and power with an SI prefix."""

import math

__all__ = ["engineering", "safe_power"]

SAFE_DIGITS = 3
"""A power that something stands is rounded down to so many figures."""

_PREFIXES = {-4: "p", -3: "n", -2: "µ", -1: "m", 0: "", 1: "k", 2: "M", 3: "G"}


def engineering(value: float, unit: str) -> str:
    """`value` [unit] to four figures with the SI prefix that keeps it between 1 and 1000."""
    if value == 0:
        return f"0 {unit}"
    printed = float(f"{value:.4g}")  # 999.96 W is printed as 1 kW
    power = min(max(math.floor(math.log10(abs(printed)) / 3 + 1e-9), min(_PREFIXES)), max(_PREFIXES))
    return f"{printed / 1000**power:.4g} {_PREFIXES[power]}{unit}"


def safe_power(power_w: float) -> str:
    """A power [W] that is stood, rounded down, in words."""
    if power_w <= 0:
        return "0 W"
    scale = 10.0 ** (math.floor(math.log10(power_w)) - SAFE_DIGITS + 1)
    # a hair is added, so that a power that is round already stays as it is
    return engineering(math.floor(power_w / scale * (1 + 1e-9)) * scale, "W")
