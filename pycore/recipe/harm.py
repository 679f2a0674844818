"""Pouring must not end further from the band than pouring nothing would."""

from __future__ import annotations

from pycore.recipe.marks import Space
from pycore.recipe.outlook import NEW_CHARGE_SHARE
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

    Never for a new charge: with so little in it a sump is of no use, and what is left of the old
    coolant says nothing about the new one.
    """
    if is_new_charge(ask):
        return False
    now = outside_pct(ask, ask.sump.strength_pct.value)
    return outside_pct(ask, strength_pct) > now + _HAIR_PCT


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
