"""Ways that pour nothing now: let the level fall first, or use a rich sump up."""

from __future__ import annotations

import math
from dataclasses import replace

from pycore.recipe.band import is_new_charge
from pycore.recipe.draw_off import drainable_l
from pycore.recipe.outcome import Plan, Wait, made
from pycore.recipe.request import PlanRequest

# What a sump that only waits is warned of; the others speak of a recipe that is poured.
_OF_A_WAIT = ("above_full_mark", "strong_harms_skin", "weak_must_not_stand")

# Share of the mark that is filled to below which nobody lets a sump fall on purpose: the pump comes
# near to drawing air and what is left runs hot and dirty. Common practice, no source.
LOWEST_WAIT_SHARE = 0.5

# Share of the band's lower end below which nobody leaves a sump to evaporate for days: so weak it
# no longer keeps machine and parts from rust. Common practice, no source.
LEANEST_WAIT_SHARE = 0.5

# A charge seldom serves longer than a year, so a longer wait promises nothing: common practice, no
# source.
LONGEST_WAIT_D = 365.0


def _left_alone(ask: PlanRequest) -> Plan:
    plan = made(ask, [])
    return replace(plan, cautions=[code for code in plan.cautions if code in _OF_A_WAIT])


def leave_room(ask: PlanRequest) -> tuple[Plan, Wait] | None:
    """How far the level of a full, lean sump must fall by evaporation, and its strength then.

    From there the strongest premix up to the mark lands on the aim, and nothing is wasted.
    Evaporation takes no concentrate, so this never helps a rich sump: None for one. Nor is there
    such a way for a sump so weak that it would rust meanwhile, below half of the mark, or below
    what cannot be taken out.
    """
    volume_l, strength = ask.sump.volume_l.value, ask.sump.strength_pct.value
    strong, aim = ask.mixing.strong_pct, ask.target.aim_pct
    if not LEANEST_WAIT_SHARE * ask.target.low_pct <= strength < ask.target.low_pct:
        return None
    if aim > strong:
        return None
    held_l = volume_l * strength / 100
    room_l = (ask.fill_to_l * aim / 100 - held_l) / (strong / 100)
    level_l = ask.fill_to_l - room_l
    lowest_l = max(LOWEST_WAIT_SHARE * ask.fill_to_l, volume_l - drainable_l(ask))
    if not lowest_l <= level_l < volume_l:
        return None
    return _left_alone(ask), Wait(level_l=level_l, strength_pct=100 * held_l / level_l)


def use_it_up(ask: PlanRequest) -> tuple[Plan, Wait] | None:
    """Days until a rich sump that is topped up with the weakest mix comes down to its aim.

    V·dC/dt = D·(weak − C) with D litres carried out a day and the level held, so
    t = V/D · ln((C − weak)/(aim − weak)). Without D nobody knows how many days. None when the
    weakest mix is not below the aim, or it takes more than a year; nor for a new charge, which
    waits for its coolant and not for the days.
    """
    strength, aim = ask.sump.strength_pct.value, ask.target.aim_pct
    weak = ask.mixing.weak_pct
    if strength <= ask.target.high_pct or weak >= aim or is_new_charge(ask):
        return None
    if ask.losses is None:
        return _left_alone(ask), Wait()
    volume_l, carried_l_d = ask.sump.volume_l.value, ask.losses.carry_out_l_d
    time_d = volume_l / carried_l_d * math.log((strength - weak) / (aim - weak))
    return (_left_alone(ask), Wait(time_d=time_d)) if time_d <= LONGEST_WAIT_D else None
