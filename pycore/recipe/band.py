"""Where a strength lies beside the band, and on which side a plan may not end."""

from __future__ import annotations

from pycore.recipe.marks import Space
from pycore.recipe.outlook import NEW_CHARGE_SHARE, reach_pct
from pycore.recipe.request import PlanRequest

# Room for the last digit of a float when a result lies on an edge of the band.
_HAIR_PCT = 1e-9


def outside_pct(ask: PlanRequest, strength_pct: float) -> float:
    """How far a strength lies outside the band, points; 0 inside."""
    return max(ask.target.low_pct - strength_pct, strength_pct - ask.target.high_pct, 0.0)


def near_enough_pct(ask: PlanRequest) -> float:
    """How far from the aim a result may lie to be near enough to it, points.

    The closeness, but no more than half of the way from the aim to the farther edge of the band: a
    closeness as wide as the band would call a result on the edge as good as one in the middle.
    """
    target, close = ask.target, ask.mixing.closeness_pct
    half = max(target.aim_pct - target.low_pct, target.high_pct - target.aim_pct) / 2
    # A band of no width is a strength that is asked for as it is.
    return min(close, half) if half > 0 else close


def inside_pct(ask: PlanRequest) -> tuple[float, float]:
    """The band drawn in by the closeness on both sides, but never past the aim or the middle.

    A closeness as wide as the band would leave only an aim at its far edge, which marks miss.
    """
    target, close = ask.target, ask.mixing.closeness_pct
    middle = (target.low_pct + target.high_pct) / 2
    low = min(target.low_pct + close, target.aim_pct, middle)
    return low, max(target.high_pct - close, target.aim_pct, middle)


def is_new_charge(ask: PlanRequest) -> bool:
    """Whether so little is in the sump that it is filled anew."""
    return ask.sump.volume_l.value < NEW_CHARGE_SHARE * ask.fill_to_l


def is_wrong_side(ask: PlanRequest, strength_pct: float) -> bool:
    """Whether a result lies outside the band where it may not, at whatever distance.

    That is past the band, seen from what is in the sump now. A new charge may be too rich and not
    too thin, whatever was left before, as long as the mix may be strong enough: what is left of
    the old coolant says nothing about the new one.
    """
    target, now_pct = ask.target, ask.sump.strength_pct.value
    is_thin = strength_pct < target.low_pct - _HAIR_PCT
    if is_new_charge(ask):
        return is_thin and reach_pct(Space.of(ask))[1] >= target.low_pct
    if is_thin:
        return now_pct > target.high_pct
    return strength_pct > target.high_pct + _HAIR_PCT and now_pct < target.low_pct
