"""Pouring must not end further from the band than pouring nothing would, nor on its far side."""

from __future__ import annotations

from pycore.recipe.band import is_new_charge, is_wrong_side, outside_pct
from pycore.recipe.choice import Candidate, weigh
from pycore.recipe.marks import Space
from pycore.recipe.request import PlanRequest
from pycore.recipe.search import best_pours

# Room for the last digit of a float when two distances from the band are compared.
_HAIR_PCT = 1e-9


def does_harm(ask: PlanRequest, strength_pct: float) -> bool:
    """Whether a result lies further outside the band than what is in the sump now, or past it.

    With so little in it a sump is of no use, so a new charge does harm only on the wrong side.
    """
    if is_new_charge(ask):
        return is_wrong_side(ask, strength_pct)
    now_pct = outside_pct(ask, ask.sump.strength_pct.value)
    is_further = outside_pct(ask, strength_pct) > now_pct + _HAIR_PCT
    return is_further or is_wrong_side(ask, strength_pct)


def harmless_pours(space: Space) -> Candidate:
    """The best pours that do no harm, where filling the room does.

    More room stays open, twice as much each time; at the end nothing is poured, which does none.
    """
    if not _may_lead_nearer(space):
        return weigh(space, ())
    open_l = space.room_l - space.least_l
    while open_l < space.room_l:
        open_l *= 2
        found = best_pours(Space(space.ask, space.room_l, space.room_l - open_l))
        if not does_harm(space.ask, space.strength_pct(found.pours)):
            return found
    return weigh(space, ())


def _may_lead_nearer(space: Space) -> bool:
    """Whether any bucket brings a sump nearer to the band; where none does, no level is tried."""
    ask, bucket = space.ask, space.ask.bucket
    now_pct = ask.sump.strength_pct.value
    if outside_pct(ask, now_pct) == 0:
        return True
    leanest, richest = space.limits.ratios
    # Concentrate per litre of water in the sump now, as jug marks to a water mark.
    per_water = now_pct / max(100 - now_pct, _HAIR_PCT) * bucket.water_mark_l / bucket.jug_mark_l
    return richest > per_water if now_pct < ask.target.low_pct else leanest < per_water


def lower_cautions(ask: PlanRequest, codes: list[str]) -> list[str]:
    """What is said where the level stays lower.

    That nothing needs to be poured is not true of a new charge: the marks allow nothing.
    """
    if is_new_charge(ask):
        codes = ["marks_too_coarse" if code == "nothing_to_pour" else code for code in codes]
    return ["not_filled_up", *codes]
