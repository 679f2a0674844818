"""What a plan is asked with, and the refusal of settings that contradict each other."""

from __future__ import annotations

from dataclasses import dataclass

from pycore.quantity.fault import Fault
from pycore.quantity.measured import Measured


@dataclass(frozen=True)
class SumpState:
    """What is in the sump now: litres and per cent by volume, with standard uncertainties."""

    volume_l: Measured
    strength_pct: Measured


@dataclass(frozen=True)
class Target:
    """Target band in per cent by volume, edges included, and the strength to aim for."""

    low_pct: float
    aim_pct: float
    high_pct: float


@dataclass(frozen=True)
class Mixing:
    """Strongest premix and weakest mix of this fluid, and how near to the aim is near enough."""

    strong_pct: float
    weak_pct: float
    closeness_pct: float


@dataclass(frozen=True)
class Bucket:
    """What one bucket holds at the most and the distance between marks of bucket and jug, L."""

    usable_l: float
    water_mark_l: float
    jug_mark_l: float


@dataclass(frozen=True)
class DrawOff:
    """Whether coolant may be taken out, and the marks of the vessel that takes it."""

    allowed: bool
    mark_l: float


@dataclass(frozen=True)
class PlanRequest:
    """One question to the planner; fill_to_l is the mark that is filled to."""

    sump: SumpState
    fill_to_l: float
    target: Target
    mixing: Mixing
    bucket: Bucket
    draw_off: DrawOff


def refuse_contradictions(target: Target, mixing: Mixing, bucket: Bucket) -> None:
    """Raises for settings that cannot all hold, naming the field to change, such as target.low_pct.

    Errors: ``order`` for a band upside down, an aim outside it and a weakest mix that is not
    weaker than the strongest; ``mark_above_bucket`` for marks wider than the bucket.
    """
    if target.low_pct >= target.high_pct:
        limit = {"below": target.high_pct, "unit": "%"}
        raise Fault("order", "target.low_pct", target.low_pct, limit)
    if not target.low_pct <= target.aim_pct <= target.high_pct:
        limit = {"minimum": target.low_pct, "maximum": target.high_pct, "unit": "%"}
        raise Fault("order", "target.aim_pct", target.aim_pct, limit)
    if mixing.weak_pct >= mixing.strong_pct:
        limit = {"below": mixing.strong_pct, "unit": "%"}
        raise Fault("order", "mixing.weak_pct", mixing.weak_pct, limit)
    marks_l = {"water_mark_l": bucket.water_mark_l, "jug_mark_l": bucket.jug_mark_l}
    for name, mark_l in marks_l.items():
        if mark_l > bucket.usable_l:
            limit = {"maximum": bucket.usable_l, "unit": "L"}
            raise Fault("mark_above_bucket", f"bucket.{name}", mark_l, limit)
