"""What can hurt someone at this work; shown wherever a number invites to do it."""

__all__ = ["CAUTIONS", "SWEEP_CAUTIONS"]

CAUTIONS = [
    "A margin is an estimate; the data of your own part, your local codes and your licence come first.",
    "RF burns: never touch or open a joint with power on it. Key down only when everybody is clear.",
    "RF exposure: keep within the exposure limits of your country; work them out before transmitting.",
    "High voltage and mains: switch off, unplug and discharge before you open an amplifier, a tuner or a feed point.",
    "Lightning: bond and earth by your local code, fit arresters, and never work on a line when storms are near.",
    "Heights and masts: trained people, proper gear, never alone and never near power lines.",
]

SWEEP_CAUTIONS = [
    "Before you connect an analyser: transmitter off and unplugged from the line, so that nobody can key it.",
    "Before you go to a joint: transmitter off and locked out. Never open or hold a joint that somebody could key.",
    "Never transmit into an analyser: its input stands a few milliwatts.",
    "A line to an antenna outdoors holds static charge: short and discharge it before the analyser touches it.",
    "Never measure when thunderstorms are near; the line may carry lightning into your hands.",
]
