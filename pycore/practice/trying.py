"""What a sump becomes when water evaporates, coolant is carried out and a bucket is poured."""

from __future__ import annotations

from dataclasses import dataclass

from pycore.quantity.fault import Fault
from pycore.recipe.balance import state_after


@dataclass(frozen=True)
class Change:
    """evaporate or carry_out with volume_l, or pour with water_l and concentrate_l, all in L."""

    kind: str
    volume_l: float = 0.0
    count: int = 1
    water_l: float = 0.0
    concentrate_l: float = 0.0


def changed(volume_l: float, strength_pct: float, change: Change, path: str) -> tuple[float, float]:
    """Litres and strength, per cent by volume, after one change.

    Evaporation takes water alone, so the concentrate that stays makes the rest stronger; what is
    carried out has the sump's own strength.

    Error: ``out_of_range`` when more leaves than there is.

    >>> changed(200, 10, Change("evaporate", 20), "changes[0]")
    (180, 11.11111111111111)
    """
    if change.kind == "pour":
        pour = (change.count, change.water_l, change.concentrate_l)
        return state_after(volume_l, strength_pct, [pour])
    water_l = volume_l * (1 - strength_pct / 100)
    most_l = water_l if change.kind == "evaporate" else volume_l
    if change.volume_l >= most_l:
        limit = {"below": most_l, "unit": "L"}
        raise Fault("out_of_range", f"{path}.volume", change.volume_l, limit)
    left_l = volume_l - change.volume_l
    if change.kind == "carry_out":
        return left_l, strength_pct
    return left_l, volume_l * strength_pct / left_l
