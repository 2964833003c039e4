"""What a line ends in while it is swept: a poor short, a radiating open, a load off 50 Ω, an antenna."""

import numpy as np

from .waves import reflection_of


def short(rng, frequency, _middle_hz):
    """A screw cap, or a piece of wire: some nH and some mΩ."""
    inductance = np.exp(rng.uniform(np.log(0.1e-9), np.log(8e-9)))
    resistance = np.exp(rng.uniform(np.log(0.003), np.log(0.5)))
    return {"kind": "end", "what": "short"}, reflection_of(resistance + 2j * np.pi * frequency * inductance)


def open_end(rng, frequency, _middle_hz):
    """A fringe of 0.02 to 0.6 pF that radiates a little."""
    capacitance = np.exp(rng.uniform(np.log(0.02e-12), np.log(0.6e-12)))
    radiating = rng.uniform(0, 1e-4) * (frequency / 1e9) ** 2
    admittance = radiating + 2j * np.pi * frequency * capacitance
    return {"kind": "end", "what": "open"}, -reflection_of(admittance * 2500)


def matched(rng, frequency, _middle_hz):
    """A load of 47 to 53 Ω with a lump."""
    resistance, omega = rng.uniform(47, 53), 2 * np.pi * frequency
    if rng.random() < 0.5:
        impedance = resistance + 1j * omega * rng.uniform(0, 2e-9)
    else:
        impedance = 1 / (1 / resistance + 1j * omega * rng.uniform(0, 0.8e-12))
    return {"kind": "end", "what": "matched"}, reflection_of(impedance)


def antenna(rng, frequency, middle_hz):
    """A wire that is resonant within or near the sweep, known by its VSWR at resonance.

    An open line of some hundred ohms stands for it: resistance and reactance repeat at odd multiples.
    """
    resonance = middle_hz * np.exp(rng.uniform(np.log(0.4), np.log(1.5)))
    vswr = rng.uniform(1.0, 2.2)
    resistance = 50 * vswr if rng.random() < 0.5 else 50 / vswr
    wire_ohm = rng.uniform(200, 700)
    losing = resistance / wire_ohm * (frequency / resonance) ** rng.uniform(0, 0.5)
    impedance = wire_ohm / np.tanh(losing + 0.5j * np.pi * frequency / resonance)
    impedance = impedance + 2j * np.pi * frequency * rng.uniform(0, 20e-9)
    return {"kind": "vswr", "vswr": max(1.0, round(vswr, 1))}, reflection_of(impedance)


ENDS = {"short": short, "open": open_end, "matched": matched, "antenna": antenna}
