"""The other ways beside the main plan, each complete and with the reason to take it."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace

from pycore.recipe.band import is_new_charge, outside_pct
from pycore.recipe.bulk import by_hose, by_mixing_unit, half_today, is_too_much, lighter_buckets
from pycore.recipe.carrier import by_own_fluid
from pycore.recipe.choice import CLEARLY_PCT
from pycore.recipe.draw_off import draw_off_to_aim, filled, filled_up, filling, least_draw_off
from pycore.recipe.harm import does_harm
from pycore.recipe.marks import Group, Space
from pycore.recipe.outcome import Alternative, Plan, Wait, alternative, bucket_pours, made
from pycore.recipe.outlook import ABOUT_REACH
from pycore.recipe.pours import steps_for
from pycore.recipe.request import PlanRequest, with_sump
from pycore.recipe.search import alike_pours, best_pours, strongest_bucket
from pycore.recipe.stock import from_ready_mixes
from pycore.recipe.waiting import leave_room, use_it_up

# Volume now is in doubt from this relative standard uncertainty on: common practice, no source.
_DOUBTFUL_VOLUME_SHARE = 0.10

# A reading half way is worth it where so much of the room is still to be filled: common practice,
# no source.
_LEAST_LEFT_SHARE = 0.2

# Room for the last digit of a float when a level is compared with the mark.
_HAIR_L = 1e-9

# Filling up all the same is what this one is named for.
_MAY_LEAD_AWAY = "fill_up"


def _alike(ask: PlanRequest, plan: Plan) -> Plan | None:
    if len(plan.pours) < 2:
        return None
    pours = alike_pours(Space.of(ask))
    return made(ask, bucket_pours(Space.of(ask), pours)) if pours else None


def _strong_first(ask: PlanRequest, plan: Plan) -> Plan | None:
    """Strong buckets, a reading, then the rest planned from what should be found."""
    if plan.case != "lean_low" or plan.verdict == "out_of_band" or plan.totals.buckets < 2:
        return None
    space = Space.of(ask)
    strongest = strongest_bucket(space)
    if strongest is None:
        return None
    each_l = space.bucket_l(strongest.water, strongest.jug)
    spread = space.wanted_pct - ask.mixing.weak_pct
    share = spread / max(ask.mixing.strong_pct - ask.mixing.weak_pct, 1e-9)
    count = int(share * space.room_l / each_l)
    if count < 1:
        return None
    first = bucket_pours(space, (Group(count, strongest.water, strongest.jug),))
    half_way = made(ask, first)
    after = with_sump(ask, half_way.final.volume_l, half_way.final.strength_pct.value)
    rest = Space.of(after)
    groups = best_pours(rest).pours if rest.can_pour() else ()
    if len(groups) > 2:
        # With the strong ones these would be four different buckets.
        groups = alike_pours(rest) or ()
    second = bucket_pours(rest, groups)
    pours = first + second
    # Where hardly a bucket is left, or one as strong, there is nothing to decide half way.
    left_l = sum(pour.count * (pour.water_l + pour.concentrate_l) for pour in second)
    strongest_ratio = first[0].concentrate_l / first[0].water_l
    if left_l < _LEAST_LEFT_SHARE * space.room_l or any(
        pour.concentrate_l / pour.water_l >= strongest_ratio for pour in second
    ):
        return None
    return made(ask, pours, steps=steps_for(0.0, pours, ask.run_min, half_way_after=1))


def _smaller_dose(ask: PlanRequest, plan: Plan) -> Plan | None:
    """The dose for a sump that is smaller and richer than it seems, by one uncertainty each."""
    volume, strength = ask.sump.volume_l, ask.sump.strength_pct
    doubtful = volume.u >= _DOUBTFUL_VOLUME_SHARE * volume.value
    doubtful = doubtful or plan.final.strength_pct.u > ask.mixing.closeness_pct
    if not doubtful or plan.case.startswith("rich"):
        return None
    careful = with_sump(ask, volume.value + volume.u, strength.value + strength.u)
    space = Space.of(careful)
    if not space.can_pour():
        return None
    pours = bucket_pours(space, best_pours(space).pours)
    dose = made(ask, pours)
    return dose if dose.totals.concentrate_l < plan.totals.concentrate_l else None


def _above_full(ask: PlanRequest) -> Plan | None:
    """The room between the full mark and the never-above mark, where the pump is stopped."""
    if ask.never_above_l is None:
        return None
    plan = made(ask, filling(replace(ask, fill_to_l=ask.never_above_l)))
    return plan if plan.final.volume_l > ask.fill_to_l + _HAIR_L else None


def _out_of_band(ask: PlanRequest, plan: Plan) -> Iterator[tuple[str, Plan | None, Wait | None]]:
    """Ways on when the band cannot be reached in the room that is left."""
    yield "own_fluid", by_own_fluid(ask), None
    yield "above_full_mark", _above_full(ask), None
    for why, waits in (("leave_room", leave_room(ask)), ("use_it_up", use_it_up(ask))):
        if waits is not None:
            yield why, waits[0], waits[1]
    if plan.draw_off_l > 0:
        yield "without_draw_off", filled(ask), None
    # Where own coolant carries the concentrate this takes out more; else, where coolant is taken
    # out, it is the main plan and no other way.
    least = least_draw_off(ask)
    yield "least_draw_off", least, None
    less = plan if is_by_own_fluid(plan) else least or plan
    to_aim = draw_off_to_aim(ask)
    if to_aim is not None and _is_worth_more(ask, to_aim, less):
        yield "draw_off_to_aim", to_aim, None


def is_by_own_fluid(plan: Plan) -> bool:
    """Whether the sump's own coolant carries the concentrate."""
    return any(pour.kind == "own_fluid" for pour in plan.pours)


def _is_worth_more(ask: PlanRequest, to_aim: Plan, less: Plan) -> bool:
    """Whether more is taken out, and lands clearly nearer to the aim for it."""
    aim = ask.target.aim_pct
    near, far = (abs(plan.final.strength_pct.value - aim) for plan in (to_aim, less))
    return to_aim.draw_off_l > less.draw_off_l and far - near >= CLEARLY_PCT


def _in_reach(ask: PlanRequest, plan: Plan) -> Iterator[tuple[str, Plan | None, Wait | None]]:
    """Other ways of pouring what fits."""
    # A new charge that marks allow only too thin is none: it would rust, and gain the pump nothing.
    is_open = "not_filled_up" in plan.cautions and not is_new_charge(ask)
    yield "fill_up", filled_up(ask) if is_open else None, None
    yield "lighter_buckets", lighter_buckets(ask, plan), None
    yield "alike", _alike(ask, plan), None
    yield "strong_first", _strong_first(ask, plan), None
    yield "smaller_dose", _smaller_dose(ask, plan), None
    for mix in from_ready_mixes(ask):
        yield "ready_mix", mix if mix.verdict != "out_of_band" else None, None
    if is_too_much(ask, plan):
        yield "mixing_unit", by_mixing_unit(ask), None
        yield "hose", by_hose(ask), None
        yield "two_days", half_today(ask), None
        return
    if ask.unit is not None:
        yield "mixing_unit", by_mixing_unit(ask), None
    # Where marks are too coarse for buckets alone, water from the hose makes up for it.
    if plan.verdict == "out_of_band":
        hose = by_hose(ask)
        yield "hose", hose if hose and hose.verdict != "out_of_band" else None, None


def other_ways(ask: PlanRequest, plan: Plan) -> list[Alternative]:
    """Every other way that leads no further from the band, the nearest to hand first."""
    found = [way for way in _in_reach(ask, plan) if not _misses(ask, plan, way)]
    if plan.verdict == "out_of_band" or plan.draw_off_l > 0 or is_by_own_fluid(plan):
        found = [*_out_of_band(ask, plan), *found]
    return [
        alternative(why, way, wait)
        for why, way, wait in found
        if way is not None and not _leads_away(ask, why, way)
    ]


def _misses(ask: PlanRequest, plan: Plan, way: tuple[str, Plan | None, Wait | None]) -> bool:
    """Whether a way of pouring what fits misses a band that the main plan meets.

    A new charge is measured by the main plan in any case, since what is left says nothing.
    """
    why, other, _ = way
    if other is None or why == _MAY_LEAD_AWAY or other.verdict != "out_of_band":
        return False
    if plan.verdict != "out_of_band":
        return True
    end, main = (outside_pct(ask, each.final.strength_pct.value) for each in (other, plan))
    return is_new_charge(ask) and end > main


def _leads_away(ask: PlanRequest, why: str, way: Plan) -> bool:
    """Whether a way ends further outside the band than what is in the sump now."""
    return why != _MAY_LEAD_AWAY and does_harm(ask, way.final.strength_pct.value)


def is_same(way: Alternative, other: Plan | Alternative) -> bool:
    """Whether the same is done, whatever the name; never for a way that waits."""
    return way.wait is None and way.steps == other.steps and way.pours == other.pours


def offered(plan: Plan, ways: list[Alternative]) -> list[Alternative]:
    """The ways as they are offered beside a main plan.

    Only those that do something else than it, each under its first name. Why the aim is out of
    reach is said by the main plan alone: a way has limits of its own, such as those of the unit.
    """
    kept: list[Alternative] = []
    for way in ways:
        does_something = way.wait is not None or bool(way.steps)
        is_known = is_same(way, plan) or any(is_same(way, other) for other in kept)
        if does_something and not is_known:
            codes = [code for code in way.cautions if code not in ABOUT_REACH]
            kept.append(replace(way, cautions=codes))
    return kept
