"""One machine of the example: its set-up as typed, what its people measure, and what they pour."""

from __future__ import annotations

import json
from dataclasses import dataclass
from random import Random
from typing import Any

from pycore.desk import handle
from tests.demo.sump import Sump
from tests.phones import id_of, typed

Body = dict[str, Any]


def number(value: float, decimals: int = 0) -> str:
    """A number as somebody types it."""
    text = f"{value:.{decimals}f}"
    return text.rstrip("0").rstrip(".") if "." in text else text


def asked(op: str, body: Body) -> Body:
    """What pycore answers."""
    reply = json.loads(handle(json.dumps({"v": 1, "id": "demo", "op": op, "body": body})))
    if not reply["ok"]:
        raise ValueError(reply["error"])
    result: Body = reply["result"]
    return result


@dataclass
class Machine:
    """A machine with the truth in its sump."""

    facts: Body
    glass: Body
    chance: Random
    sump: Sump

    @property
    def name(self) -> str:
        """As in the set-up."""
        return str(self.facts["name"])

    @property
    def id(self) -> str:
        """Id of the machine."""
        return id_of(f"example {self.name}")

    @property
    def room_l(self) -> float:
        """What fits below the full mark."""
        return float(self.facts["full_l"]) - self.sump.volume_l

    def setup(self) -> Body:
        """The set-up as typed."""
        low, aim, high = (typed(number(part), "%") for part in self.facts["band_pct"])
        return {
            "name": self.name,
            "sump": {
                "kind": "proportional",
                "full_depth": typed(number(self.facts["full_mm"]), "mm"),
                "full_volume": typed(number(self.facts["full_l"]), "L"),
                "volume_known_by": "poured",
            },
            "fluid": {
                "type": "semi_synthetic",
                "name": "Depot mix (invented)",
                "factor": typed(number(self.facts["factor"], 1), "1"),
                "factor_known_by": "sheet",
            },
            "target": {"low": low, "aim": aim, "high": high},
            "mixing": {
                "strong": typed("20", "%"),
                "weak": typed(number(self.facts["weak_pct"]), "%"),
                "closeness": typed("0.5", "%"),
            },
            "bucket": {
                "usable": typed(number(self.facts["bucket_l"]), "L"),
                "water_mark": typed("1", "L"),
                "jug_mark": typed("50", "mL"),
            },
            "units": {"plate": "L", "stick": "mm", "pail": "L", "jug": "mL"},
        }

    def dip(self) -> Body:
        """A dip to the millimetre, 2 mm rough."""
        depth_mm = self.sump.volume_l / self.facts["full_l"] * self.facts["full_mm"]
        return {"depth": typed(number(max(1, self.chance.gauss(depth_mm, 2))), "mm")}

    def reading(self) -> Body:
        """A reading to half a line of the scale."""
        brix = self.chance.gauss(
            self.sump.strength_pct / self.facts["factor"], self.glass["noise_brix"]
        )
        step = self.glass["resolution_brix"] / 2
        return {"shows": typed(number(round(brix / step) * step, 1), "Brix")}

    def check(self) -> tuple[Body, Body]:
        """A check's body, and the recipe that pycore finds for it."""
        body = {"machine": self.setup(), "dip": self.dip(), "reading": self.reading()}
        return body, asked("plan_check", body)

    def pour(self, count: int, water_l: float, concentrate_l: float) -> None:
        """Buckets go in, each 2 % more or less than its marks."""
        for _ in range(count):
            self.sump.pour(
                water_l * self.chance.gauss(1, 0.02), concentrate_l * self.chance.gauss(1, 0.02)
            )

    def day(self, warm: float) -> None:
        """A working day's losses; ``warm`` is the season's factor on evaporation."""
        self.sump.evaporate(self.facts["evaporation_l_d"] * warm * self.chance.uniform(0.7, 1.3))
        self.sump.take_out(self.facts["carry_out_l_d"] * self.chance.uniform(0.6, 1.4))
        self.sump.skim(self.facts["skimmed_share_pct_d"] / 100 * self.chance.uniform(0.5, 1.5))
