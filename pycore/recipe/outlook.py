"""How sure the result is, and what a person should be told with it."""

from __future__ import annotations

import math
from dataclasses import dataclass
from typing import Any

from pycore.quantity.measured import Measured, chance_between, result, shares, variable
from pycore.recipe.marks import Space
from pycore.recipe.pours import Pour, Totals
from pycore.recipe.request import MixedState, PlanRequest

# Relative standard uncertainty of what a marked pail or jug holds; the same vessel's error is
# shared by all its buckets, so it is not averaged away: common practice, no source.
VESSEL_U_SHARE = 0.03

# Coverage factor of the likely range, about 95 of 100 (JCGM 100:2008, 6.2.1 and G.6.6).
LIKELY_K = 2.0

# Below this share of the full mark a sump is filled anew: common practice, no source.
NEW_CHARGE_SHARE = 0.20

# Weight of a bucket from which a person is warned: the lower of the two figures (25 and 16 kg)
# between knuckle and elbow, close to the body, in the lifting filter of HSE INDG143(rev4),
# figure 1, from memory. Who carries is not known here; what a person says goes before it.
# Weight of the empty pail: common practice, no source. Water: 0.9982 kg/L at 20 °C (IAPWS-95).
# Concentrate: 0.9 to 1.1 kg/L, taken as 1.0.
HEAVY_KG = 16.0
PAIL_KG = 1.0
WATER_KG_L = 0.9982
CONCENTRATE_KG_L = 1.0

# What one person carries in a check, and the change of strength after which a reading comes
# first: common practice, no source.
MOST_BUCKETS = 12
MOST_CARRIED_L = 120.0
LARGE_CHANGE_PCT = 3.0

# First order is no longer good enough when the volume in the denominator is this uncertain, or
# when the volume now, which cannot be below 0, is less than so many of its own standard
# uncertainties and brings more than this share of the result's variance (limits
# found by Monte Carlo so that u is within 5 %, tests/properties/recipe/chance.py).
ROUGH_U_SHARE = 0.10
CUT_OFF_K = 2.0
CUT_OFF_SHARE = 0.05

# Room for the last digit of a float when a result lies on an edge of the band or at a mark.
_HAIR_PCT = 1e-9
_HAIR_L = 1e-9

# Why a plan does not reach the band.
ABOUT_REACH = (
    "best_reachable", "no_room", "marks_too_coarse", "needs_stronger_premix", "needs_weaker_mix",
)  # fmt: skip


@dataclass(frozen=True)
class Final:
    """The sump after the pours; low and high are two standard uncertainties apart from it."""

    volume_l: float
    strength_pct: Measured
    low_pct: float
    high_pct: float
    chance_in_band: float


@dataclass(frozen=True)
class Share:
    """Share of the variance of the result that one input brings."""

    input: str
    share: float


def bucket_weight_kg(
    water_l: float, concentrate_l: float, density_kg_l: float | None = None
) -> float:
    """Weight of a filled bucket with its pail, kg, to about half a kilogram.

    density_kg_l is the concentrate's; without it 1.0 is taken.

    >>> round(bucket_weight_kg(8.5, 1.5), 1)
    11.0
    """
    return PAIL_KG + WATER_KG_L * water_l + (density_kg_l or CONCENTRATE_KG_L) * concentrate_l


def heaviest_kg(ask: PlanRequest) -> float:
    """Weight of a bucket above which this person is warned, kg."""
    return (ask.effort and ask.effort.heaviest_kg) or HEAVY_KG


def light_usable_l(ask: PlanRequest) -> float:
    """What a bucket may hold to stay below that weight, whatever is in it, L; 0 or less if none."""
    each_kg_l = max(WATER_KG_L, ask.density_kg_l or CONCENTRATE_KG_L)
    return (heaviest_kg(ask) - PAIL_KG) / each_kg_l


def is_too_many(ask: PlanRequest, buckets: int, carried_l: float) -> bool:
    """Whether so many buckets with so many litres are more than one person carries in a check.

    What a person set goes before both of our figures.
    """
    most = ask.effort and ask.effort.most_buckets
    return buckets > most if most else buckets > MOST_BUCKETS or carried_l > MOST_CARRIED_L


def _strength(ask: PlanRequest, water_l: float, concentrate_l: float) -> Any:
    sump = ask.sump
    volume = variable(sump.volume_l, "volume")
    # What moves with the volume is no error of the strength's own.
    per_l_pct = sump.per_l_pct if isinstance(sump, MixedState) else 0.0
    with_volume_pct = per_l_pct * sump.volume_l.u
    own_pct = math.sqrt(max(0.0, sump.strength_pct.u**2 - with_volume_pct**2))
    strength = variable(Measured(sump.strength_pct.value, own_pct), "strength")
    strength += per_l_pct * (volume - sump.volume_l.value)
    water = water_l * variable(Measured(1.0, VESSEL_U_SHARE), "pail_marks")
    concentrate = concentrate_l * variable(Measured(1.0, VESSEL_U_SHARE), "jug_marks")
    return (volume * strength + 100 * concentrate) / (volume + water + concentrate)


def final_state(
    ask: PlanRequest, water_l: float, concentrate_l: float
) -> tuple[Final, list[Share]]:
    """Result after pouring so much water and concentrate, with what its uncertainty comes from."""
    target = ask.target
    volume_l = ask.sump.volume_l.value + water_l + concentrate_l
    if water_l + concentrate_l == 0:
        strength = ask.sump.strength_pct
        parts = {"strength": 1.0} if strength.u > 0 else {}
    else:
        number = _strength(ask, water_l, concentrate_l)
        strength, parts = result(number), shares(number)
    spread = LIKELY_K * strength.u
    final = Final(
        volume_l,
        strength,
        max(0.0, strength.value - spread),
        min(100.0, strength.value + spread),
        chance_between(strength, target.low_pct, target.high_pct),
    )
    return final, [Share(name, share) for name, share in parts.items() if share > 0]


def _about_reach(space: Space, verdict: str, poured: bool, final_pct: float) -> list[str]:
    target = space.ask.target
    if verdict != "out_of_band":
        return []
    if not poured and space.least_l <= 0:
        return ["best_reachable", "no_room"]
    low, high = reach_pct(space)
    if not poured or (low <= target.high_pct and high >= target.low_pct):
        return ["best_reachable", "marks_too_coarse"]
    stronger = final_pct < target.low_pct
    return ["best_reachable", "needs_stronger_premix" if stronger else "needs_weaker_mix"]


def reach_pct(space: Space) -> tuple[float, float]:
    """Strength with the room left filled with the weakest and with the strongest mix, per cent.

    Not rounded to marks; with no room both are the strength that is there.
    """
    sump, mix = space.ask.sump, space.ask.mixing
    room_l = max(space.room_l, 0.0)
    total_l = sump.volume_l.value + room_l
    if room_l == 0:
        return sump.strength_pct.value, sump.strength_pct.value
    held = sump.volume_l.value * sump.strength_pct.value
    weakest = (held + room_l * mix.weak_pct) / total_l
    return weakest, (held + room_l * mix.strong_pct) / total_l


def _about_sureness(ask: PlanRequest, poured: bool, final: Final, parts: list[Share]) -> list[str]:
    volume_share = sum(part.share for part in parts if part.input == "volume")
    volume = ask.sump.volume_l
    unsure = volume.u > ROUGH_U_SHARE * final.volume_l
    cut_off = volume.value < CUT_OFF_K * volume.u and volume_share > CUT_OFF_SHARE
    said = {
        "rough": poured and (unsure or cut_off),
        "sensitive_to_dip": volume_share > 0.5 and final.strength_pct.u > ask.mixing.closeness_pct,
    }
    return [code for code, holds in said.items() if holds]


def may_overfill(level_u_l: float | None, usable_l: float, room_l: float) -> bool:
    """Whether a rough level may be out by more than a bucket and more than the room that is left.

    room_l: from the last bucket to the mark that may not be passed, L.
    """
    over_l = LIKELY_K * (level_u_l or 0.0)
    return over_l > usable_l and over_l > room_l


def _highest_l(ask: PlanRequest, final: Final) -> float:
    """The mark that may not be passed: the upper one for a way that fills above the full mark."""
    is_above = final.volume_l > ask.fill_to_l + _HAIR_L
    return ask.never_above_l if is_above and ask.never_above_l is not None else ask.fill_to_l


def has_water_first(pours: list[Pour]) -> bool:
    """Whether concentrate is stirred into water, which comes first lest the mix turns over."""
    return any(pour.kind is None and pour.concentrate_l > 0 for pour in pours)


def _is_all_by_bucket(pours: list[Pour], totals: Totals) -> bool:
    """Whether buckets bring all of it, so that half can be poured before the next reading.

    Not where a unit or a hose runs, nor where the sump's own fluid is out in its buckets.
    """
    brought_l = sum(pour.count * (pour.water_l + pour.concentrate_l) for pour in pours)
    is_brought = math.isclose(brought_l, totals.water_l + totals.concentrate_l)
    return is_brought and all(pour.kind != "own_fluid" for pour in pours)


def cautions(
    space: Space,
    verdict: str,
    pours: list[Pour],
    totals: Totals,
    draw_off_l: float,
    final: Final,
    parts: list[Share],
) -> list[str]:
    """Codes of what to say beside the recipe, the most important first."""
    ask = space.ask
    weights_kg = [
        bucket_weight_kg(pour.water_l + (pour.fluid_l or 0.0), pour.concentrate_l, ask.density_kg_l)
        for pour in pours
    ]
    carried_l = sum(
        pour.count * (pour.water_l + pour.concentrate_l + (pour.fluid_l or 0.0)) for pour in pours
    )
    poured = totals.water_l + totals.concentrate_l > 0
    after = final.strength_pct
    change = abs(after.value - ask.sump.strength_pct.value)
    stays = ask.sump.volume_l.value >= NEW_CHARGE_SHARE * ask.fill_to_l
    is_large = stays and change > LARGE_CHANGE_PCT
    is_by_bucket = draw_off_l == 0 and _is_all_by_bucket(pours, totals)
    said = {
        "above_full_mark": ask.sump.volume_l.value > ask.fill_to_l,
        "nothing_to_pour": not poured and draw_off_l == 0 and verdict != "out_of_band",
        "taken_out_is_waste": draw_off_l > 0,
        "own_fluid_clean": any(pour.kind == "own_fluid" for pour in pours),
        "gloves_and_eyes": totals.concentrate_l > 0,
        "water_first": has_water_first(pours),
        "strong_harms_skin": after.value > ask.target.high_pct + _HAIR_PCT,
        "weak_must_not_stand": stays and after.value < ask.target.low_pct - _HAIR_PCT,
        "large_change": is_large and is_by_bucket,
        "large_change_read": is_large and not is_by_bucket,
        "bucket_heavy": max(weights_kg, default=0.0) > heaviest_kg(ask),
        "many_buckets": is_too_many(ask, totals.buckets, carried_l),
        "watch_the_mark": poured
        and may_overfill(
            ask.level_u_l, ask.bucket.usable_l, _highest_l(ask, final) - final.volume_l
        ),
    }
    return [
        *_about_reach(space, verdict, poured, after.value),
        *(code for code, holds in said.items() if holds),
        *_about_sureness(ask, poured, final, parts),
    ]
