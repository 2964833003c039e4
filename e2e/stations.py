"""Stations as nobody has them: drawn from a seed, valid, with names that would break out of any page."""

import json
from random import Random
from typing import Any

import msgspec

from jointwise.calc.catalogue import catalogue

__all__ = ["HOSTILE", "stations"]

Record = dict[str, Any]

HOSTILE = [
    "</script><script>window.ran=1</script>",
    '"><img src=x onerror="window.ran=1">',
    "<!--<script>",
    "-->]]></style><svg onload=window.ran=1>",
    "{{tables}}{{carried}}",
    "&lt;b&gt;&amp;amp;",
    "\u202eright to left\u2066",
    "line\u2028 and \u2029 paragraph",
    "\ufeffmark \u200b nothing",
    "quotes \"'`\\",
    "Ωµ°™ 日本 شمس 🛰🗼",
    "tab\tand\nline\rends",
    "__proto__",
    "constructor",
    "  blanks  ",
    "null",
]
"""Pieces of names; where one of them were taken for markup, `window.ran` would be set."""

LONGEST_NAME = 60
SWEEP = "\n".join(["# MHz S RI R 50", *(f"{2 * at} {0.01 * (at % 7)} 0.0{at % 9}" for at in range(1, 40))])
LOOKED_AT = ["160m", "80m", "40m", "20m", "10m", "6m", "2m", "70cm", "23cm"]

TABLES = catalogue()
FAMILIES = [family.id for family in TABLES.interfaces.values() if not family.receive_only]
CABLES = list(TABLES.cables)
WIRES = list(TABLES.wire_lines)
CONDITIONS = list(TABLES.conditions)
MODES = list(TABLES.modes)
TRANSMITTERS = list(TABLES.transmitters)


def stations(count: int, seed: int = 20) -> list[Record]:
    """So many station files, as plain data; the same of the same seed, and each of its own kind."""
    return [_Draw(Random(f"{seed} {at}")).file(at) for at in range(count)]


def _cut(name: str) -> str:
    """No longer than the page's own fields allow, which count in units of UTF-16, without half a character."""
    return name.encode("utf-16-le")[: 2 * LONGEST_NAME].decode("utf-16-le", "ignore")


class _Draw:
    """One station's worth of chance."""

    def __init__(self, random: Random) -> None:
        self.random = random
        self.pack: Record | None = None

    def file(self, at: int) -> Record:
        """A whole file. Every fifth has no kit, every fourth a pack, some are large."""
        kept: Record = {}
        if at % 4 == 0:
            self.pack = self._pack()
            kept["packs"] = self._packs(at)
        kept = {"station": self._station(), "lines": self._lines(12 if at % 25 == 24 else 4)} | kept
        if at % 5:
            kept["kit"] = self._kit()
        if at % 3 == 0:
            kept["sweeps"] = sorted(self._sweeps(kept["lines"]["lines"]), key=lambda one: one["date"])
        if at % 2:
            kept["joints"] = {"joints": [self._joint(f"{code}{at:06}") for code in ("0A", "ZZ")]}
            kept["checklist"] = {"ticked": [f"tool/{self._name()}", "spare/N"]}
        order = ["station", "lines", "kit", "packs", "sweeps", "joints", "checklist"]
        return {
            "format": "jointwise station",
            "version": 1,
            "name": self._name(),
            "date": self._day(),
            "kept": {key: kept[key] for key in order if key in kept},
        }

    def _chance(self, share: float) -> bool:
        return self.random.random() < share

    def _some(self, **fields: Any) -> Record:
        """Each of the fields, or not; a value that is called is drawn."""
        return {name: value() if callable(value) else value for name, value in fields.items() if self._chance(0.5)}

    def _one(self, *choices: Any) -> Any:
        return self.random.choice(choices)

    def _number(self, low: float, high: float) -> float:
        return float(f"{self.random.uniform(low, high):.6g}")

    def _name(self) -> str:
        pieces = self.random.sample(HOSTILE, self.random.randint(1, 3))
        return _cut(f"{self.random.choice(['Hill', 'Garden', 'Field day', ''])} {''.join(pieces)}".strip(" "))

    def _day(self) -> str:
        return f"20{self.random.randint(10, 26)}-{self.random.randint(1, 12):02}-{self.random.randint(1, 28):02}"

    def _family(self) -> str:
        own = [one["id"] for one in self.pack["interfaces"]] if self.pack else []
        return self.random.choice([*FAMILIES, *own * 5])

    def _cable(self) -> str:
        own = [one["id"] for one in self.pack["cables"]] if self.pack else []
        return self.random.choice([*CABLES, *own * 5])

    def _pack(self) -> Record:
        cable = msgspec.to_builtins(TABLES.cables["rg_213"])
        family = msgspec.to_builtins(TABLES.interfaces["bnc"])
        mode = {"duty_factor": {"value": self._number(0.1, 1), "source": "sheet", "kind": "memory"}}
        return {
            "id": "club",
            "name": "Invented club",
            "version": self._day(),
            "note": "Held back: </script><!--",
            "sources": [{"id": "sheet", "title": "Invented </script> sheet", "seen": "read"}],
            "interfaces": [family | {"id": "club_bnc", "name": "Club bayonet"}],
            "cables": [cable | {"id": "club_cable", "name": "Club cable"}],
            "modes": [{"id": "club_mode", "name": "Club mode", **mode}],
        }

    def _packs(self, at: int) -> Record:
        text = json.dumps(self.pack, ensure_ascii=bool(at % 8))
        return {"own": [{"text": text, "id": "club", "name": "Invented club", "on": True, "refused": ""}], "server": []}

    def _station(self) -> Record:
        rigs = [self._rig() for _ in range(self.random.randint(0, 3))]
        antennas = [{"name": self._name(), "load": self._load()} for _ in range(self.random.randint(0, 3))]
        return {
            "version": 1,
            "name": self._name(),
            "address": self._one("", "https://club.example/"),
            "units": self._one("metric", "metric", "us"),
            "settings": self._settings(),
            "rigs": rigs,
            "rig": self.random.randint(-1, len(rigs) - 1),
            "antennas": antennas,
            "antenna": self.random.randint(-1, len(antennas) - 1),
            "gear": [self._port() for _ in range(self.random.randint(0, 3))],
            "cables": self.random.sample(CABLES, self.random.randint(0, 3)),
        }

    def _rig(self) -> Record:
        own = self._some(behaviour=self._one(*TRANSMITTERS), family=self._family, gender=self._one("plug", "jack"))
        return {"name": self._name(), "power_w": self._number(1, 1500)} | own

    def _settings(self) -> Record:
        modes = [*MODES, *(["club_mode"] * 10 if self.pack else [])]
        looked_at = self._one({}, {"band": self._one(*LOOKED_AT)}, {"frequency_hz": self._number(2e6, 4e8)})
        return (
            {"bands": self.random.sample(LOOKED_AT, self.random.randint(1, 4)), "power_w": self._number(1, 1500)}
            | looked_at
            | self._some(
                region=self._one(1, 2, 3),
                mode=self._one(*modes),
                vswr=lambda: self._number(1, 5),
                ambient_temperature_c=lambda: self._number(-20, 55),
                solar_irradiance_w_per_m2=lambda: self._number(0, 1000),
                altitude_m=lambda: self._number(0, 3000),
                exposure=self._one("indoor", "sheltered", "exposed"),
                added_sealing=self._one(True, False),
                vibration=self._one("none", "vehicle"),
                power_is=self._one("forward", "net"),
                transmit_share=self._one(None, 0.5),
                condition=self._one(*CONDITIONS),
                matings_per_year=lambda: self._number(0, 200),
                return_loss_asked_db=lambda: self._number(8, 25),
            )
        )

    def _lines(self, most: int) -> Record:
        lines: dict[str, Record] = {}
        for _ in range(self.random.randint(1, most)):
            name = self._name()
            lines[name] = {"name": name, "request": self._line()}
        return {"lines": list(lines.values()), "current": self.random.randrange(len(lines))}

    def _line(self) -> Record:
        elements = [self._element() for _ in range(self.random.randint(1, 7))]
        own = self._some(load=self._load, power_w=lambda: self._number(1, 1000)) if self._chance(0.3) else {}
        at = {"band": self._one(*LOOKED_AT)} if self._chance(0.2) else {}
        return {"elements": elements} | own | at

    def _element(self) -> Record:
        named = {"name": self._name()} if self._chance(0.4) else {}
        kind = self._one(
            "joint", "joint", "joint", "cable", "cable", "part", "transformer", "section", "tuner", "wires"
        )
        own: Record = {
            "joint": lambda: {"family": self._family()} | self._some(adapter_to=self._family, condition=CONDITIONS[0]),
            "cable": lambda: {"cable": self._cable(), "length_m": self._number(0.5, 60)},
            "part": lambda: {
                "what": self._one("arrester", "switch", "meter", "other"),
                "loss_db": self._number(0, 1),
                "vswr": self._number(1, 2),
            },
            "transformer": lambda: {"ratio": self._one(1, 4, 9)},
            "section": lambda: {"impedance_ohm": self._number(30, 120), "length_m": self._number(0.1, 5)},
            "tuner": lambda: {"network": self._one("l", "t", "pi")},
            "wires": lambda: {"line": self._one(*WIRES), "length_m": self._number(1, 30)},
        }[kind]()
        return {"kind": kind} | own | named

    def _load(self) -> Record:
        return self._one(
            {"kind": "vswr", "vswr": self._number(1, 5)},
            {"kind": "impedance", "resistance_ohm": self._number(10, 300), "reactance_ohm": self._number(-100, 100)},
            {"kind": "resonant", "resonance_hz": 14.1e6, "bandwidth_hz": self._number(1e5, 1e6)},
            {"kind": "dummy"},
            {
                "kind": "table",
                "points": [{"frequency_hz": hertz, "resistance_ohm": self._number(20, 200)} for hertz in (1e6, 1e9)],
            },
        )

    def _port(self) -> Record:
        return {
            "name": self._name(),
            "family": self._one("uhf", "n", "bnc", "sma"),
            "gender": self._one("plug", "jack"),
            "highest_frequency_hz": self._number(30e6, 450e6),
            "power_w": self._number(0, 100),
        }

    def _kit(self) -> Record:
        ports = [self._port() for _ in range(self.random.randint(2, 4))]
        owned = {"one_family": "n", "one_gender": "plug", "other_family": "uhf", "other_gender": "jack", "count": 2}
        return {"ports": ports} | self._some(
            pairs=[[0, 1]], owned=[owned], goal="best_joints", ticked=[self._name(), "buy n jack / uhf plug"]
        )

    def _joint(self, code: str) -> Record:
        said = self._some(fitted_by=self._name, torque="1.1 N·m", sealed=self._name, state="watch", note=self._name)
        entries = [
            {"at": f"2026-0{at}-01T12:00:00.000Z", "field": field, "value": value}
            for at, (field, value) in enumerate(said.items(), 1)
        ]
        return {
            "code": code,
            "line": self._name(),
            "name": self._name(),
            "joins": self._name(),
            "months": self.random.randint(1, 60),
            "entries": entries,
        }

    def _sweeps(self, lines: list[Record]) -> list[Record]:
        return [
            {
                "date": self._day(),
                "line": self.random.choice(lines)["name"],
                "ports": 1,
                "name": f"{at} {self._name()}.s1p",
                "text": f"! {self.random.choice(HOSTILE[:5])}\n{SWEEP}",
                "verdict": self._name(),
                "joints": [{"element": 0, "name": self._name(), "excess": self._one(None, 0.125)}],
                "resistance_ohm": None,
            }
            for at in range(self.random.randint(1, 3))
        ]
