"""An invented sump of a tram depot's workshop, dealt by its number: the same number, the same sump.

Nothing here was measured. Machines, litres and factors are made up, inside the ranges that such
machines have (common practice, no source), with numbers that a person can work with by hand.
"""

from __future__ import annotations

import hashlib
from collections.abc import Sequence
from dataclasses import dataclass
from typing import TypeVar

from pycore.recipe.balance import fill_strength_pct
from pycore.recipe.outcome import Plan
from pycore.recipe.request import PlanRequest

LEVELS = ("alike", "rich", "full", "band")

# Every number from 1 to this one was dealt at every level, and the one that had to be drawn most
# often needed 161 draws.
MOST_NUMBER = 9999
MOST_DRAWS = 400

# Fewer is no exercise, more is only carrying: common practice, no source.
_LEAST_BUCKETS = 2
_MOST_BUCKETS = 8

# A top-up this near to the aim hides the commonest slip, in points: common practice, no source.
_APART_PCT = 2.0

Choice = TypeVar("Choice")


@dataclass(frozen=True)
class Bench:
    """A machine: depth and litres at its full mark, and what its bucket holds."""

    kind: str
    full_depth_mm: int
    full_volume_l: int
    usable_l: int


_BENCHES = (
    Bench("wheel_lathe", 440, 198, 10),
    Bench("axle_grinder", 500, 300, 10),
    Bench("boring_mill", 520, 260, 10),
    Bench("drill_line", 300, 120, 10),
    Bench("band_saw", 240, 60, 5),
    Bench("milling_machine", 360, 180, 10),
)
# Low edge, aim and high edge, per cent by volume.
_BANDS = ((6, 7, 8), (7, 8, 9), (8, 9, 10), (5, 6, 8))
_FACTORS = ("1.2", "1.4", "1.5", "1.6", "2.0")
# Shares of the full depth and of the aim that each level draws from, in per cent.
_DEPTHS = {"alike": (60, 90), "rich": (55, 80), "full": (100, 100), "band": (80, 94)}
_STRENGTHS = {"alike": (55, 98), "rich": (112, 150), "full": (50, 80), "band": (50, 85)}


@dataclass(frozen=True)
class Dealt:
    """What is typed into a check of the dealt sump; the reading in tenths of a Brix."""

    bench: Bench
    band_pct: tuple[int, int, int]
    factor: str
    depth_mm: int
    tenths: int
    draws_off: bool

    @property
    def reading(self) -> str:
        """As it stands on the glass, Brix."""
        return f"{self.tenths // 10}.{self.tenths % 10}"


class _Lot:
    """A heap of chance that is used up choice by choice."""

    def __init__(self, text: str) -> None:
        self.rest = int.from_bytes(hashlib.sha256(text.encode()).digest())

    def one_of(self, choices: Sequence[Choice]) -> Choice:
        self.rest, place = divmod(self.rest, len(choices))
        return choices[place]


def draw(level: str, number: int, turn: int) -> Dealt:
    """The sump that a deal draws at its so many-th turn; it may not be worth working out.

    >>> draw("alike", 7, 0) == draw("alike", 7, 0)
    True
    """
    lot = _Lot(f"{level} {number} {turn}")
    bench, band_pct, factor = lot.one_of(_BENCHES), lot.one_of(_BANDS), lot.one_of(_FACTORS)
    low, high = (round(share * bench.full_depth_mm / 1000) for share in _DEPTHS[level])
    depth_mm = 10 * lot.one_of(range(low, high + 1))
    least, most = (share * band_pct[1] / 100 / float(factor) for share in _STRENGTHS[level])
    tenths = lot.one_of(range(round(10 * least), round(10 * most) + 1))
    return Dealt(bench, band_pct, factor, depth_mm, tenths, draws_off=level == "full")


def suits(level: str, ask: PlanRequest, plan: Plan) -> bool:
    """Whether a drawn sump has a recipe worth working out at this level."""
    if not _LEAST_BUCKETS <= plan.totals.buckets <= _MOST_BUCKETS:
        return False
    if plan.verdict == "out_of_band":
        return False
    if level == "full":
        return plan.case == "lean_full" and plan.draw_off_l > 0
    room_l = ask.fill_to_l - ask.sump.volume_l.value
    if room_l <= 0:
        return False
    sump, aim = ask.sump, ask.target.aim_pct
    needed_pct = fill_strength_pct(sump.volume_l.value, sump.strength_pct.value, room_l, aim)
    if level == "band":
        return plan.verdict == "in_band" and needed_pct > ask.mixing.strong_pct
    is_apart = abs(needed_pct - aim) >= _APART_PCT
    may_mix = ask.mixing.weak_pct <= needed_pct <= ask.mixing.strong_pct
    is_met = plan.verdict == "on_target" and is_apart and may_mix
    if level == "rich":
        return is_met and plan.case == "rich_low"
    return is_met and plan.case in ("lean_low", "in_range_low") and len(plan.pours) == 1
