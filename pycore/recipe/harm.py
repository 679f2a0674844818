"""Pouring must not end further from the band than pouring nothing would, nor on its far side."""

from __future__ import annotations

from pycore.recipe.marks import Space
from pycore.recipe.outlook import NEW_CHARGE_SHARE, reach_pct
from pycore.recipe.request import PlanRequest
from pycore.recipe.search import Candidate, best_pours, weigh

# Room for the last digit of a float when two distances from the band are compared.
_HAIR_PCT = 1e-9


def outside_pct(ask: PlanRequest, strength_pct: float) -> float:
    """How far a strength lies outside the band, points; 0 inside."""
    return max(ask.target.low_pct - strength_pct, strength_pct - ask.target.high_pct, 0.0)


def is_new_charge(ask: PlanRequest) -> bool:
    """Whether so little is in the sump that it is filled anew."""
    return ask.sump.volume_l.value < NEW_CHARGE_SHARE * ask.fill_to_l


def does_harm(ask: PlanRequest, strength_pct: float) -> bool:
    """Whether a result lies further outside the band than what is in the sump now.

    Past the band to its other side is harm at any distance: a sump that is too thin rusts and goes
    off, one that is too rich does neither. A new charge does harm where it is too thin although
    the mix may be strong enough, whatever was left before: with so little in it a sump is of no
    use, and what is left of the old coolant says nothing about the new one.
    """
    target, now_pct = ask.target, ask.sump.strength_pct.value
    thin = strength_pct < target.low_pct - _HAIR_PCT
    if is_new_charge(ask):
        return thin and reach_pct(Space.of(ask))[1] >= target.low_pct
    if thin and now_pct > target.high_pct:
        return True
    if strength_pct > target.high_pct + _HAIR_PCT and now_pct < target.low_pct:
        return True
    return outside_pct(ask, strength_pct) > outside_pct(ask, now_pct) + _HAIR_PCT


def harmless_pours(space: Space) -> Candidate:
    """The best pours that do no harm, where filling the room does.

    More room stays open, twice as much each time; at the end nothing is poured, which does none.
    """
    open_l = space.room_l - space.least_l
    while open_l < space.room_l:
        open_l *= 2
        found = best_pours(Space(space.ask, space.room_l, space.room_l - open_l))
        if not does_harm(space.ask, space.strength_pct(found.pours)):
            return found
    return weigh(space, ())
