"""Keeping to what is at hand: less concentrate or water than the recipe wants, or ready mixes."""

from __future__ import annotations

import math
from collections.abc import Iterator
from dataclasses import replace
from itertools import chain

from pycore.recipe.balance import state_after
from pycore.recipe.band import is_new_charge, outside_pct
from pycore.recipe.choice import SAME_PCT
from pycore.recipe.draw_off import filled, filling
from pycore.recipe.harm import does_harm
from pycore.recipe.marks import Space, ceil_marks, floor_marks
from pycore.recipe.outcome import Alternative, Plan, bucket_pours, made
from pycore.recipe.pours import Pour, Totals, totals_of
from pycore.recipe.request import PlanRequest, Stock, Target
from pycore.recipe.search import best_pours
from pycore.recipe.totals import may_end_between

# How many levels are tried, one mark apart, up or down and to fill less: marks round by one or two.
_LEVELS = 12
_FEWER = 4

# Very likely to land in the band, as the chance is said in words (likelihood scale of the IPCC's
# guidance note for lead authors, 2010, table 1), and a gain of chance that nobody would notice.
SURE_CHANCE = 0.9
_SAME_CHANCE = 0.02

# Levels between the edge of the band and the aim.
_SURER_LEVELS = 8

# Room for the last digit of a float when amounts are added up.
_HAIR_L = 1e-9
_HAIR_PCT = 1e-9


def missing(ask: PlanRequest, totals: Totals) -> list[str]:
    """Codes of what there is too little of for so much: stock_short, water_short."""
    stock = ask.stock
    if stock is None:
        return []
    at_hand = {
        "stock_short": (totals.concentrate_l, stock.concentrate_l),
        "water_short": (totals.water_l, stock.water_l),
    }
    return [
        code
        for code, (needed_l, have_l) in at_hand.items()
        if have_l is not None and needed_l > have_l + _HAIR_L
    ]


def within_stock(ask: PlanRequest, plan: Plan) -> Plan:
    """The plan, or the best one that needs no more concentrate and water than there is.

    Nothing is taken out then: what the stock cannot make good would be lost for nothing. A level
    inside the band comes first, even where the room stays open: the highest that very likely lands
    there, or the likeliest. Without one, what comes nearest to the band. A new charge outside the
    band is not poured at all.
    """
    short = missing(ask, plan.totals)
    if not short:
        return plan
    found = filled(ask)
    if missing(ask, found.totals):
        found = _surer(ask, _nearest(ask))
    return _short(ask, found, short)


def filled_to_edge(ask: PlanRequest, at_hand: Plan) -> Plan | None:
    """The highest level inside the band, though it lands at the edge, where a plan stays below it.

    Valid: a stock too small for the recipe.
    """
    edge = _nearest(ask)
    is_higher = edge.final.volume_l > at_hand.final.volume_l + ask.bucket.water_mark_l
    return edge if is_higher and edge.verdict != "out_of_band" else None


def _surer(ask: PlanRequest, edge: Plan) -> Plan:
    """A lower level that lands in the band for sure, where the highest one hardly does.

    With all of the concentrate the highest level inside the band lies at its low edge, which one
    time in two is missed. Less water brings it nearer to the aim.
    """
    best = edge
    for level_l in _surer_levels_l(ask, edge):
        if best.final.chance_in_band >= SURE_CHANCE:
            break
        plan = made(ask, _at_level(ask, level_l))
        gain = plan.final.chance_in_band - best.final.chance_in_band
        if gain > _SAME_CHANCE and not missing(ask, plan.totals):
            best = plan
    return best


def _surer_levels_l(ask: PlanRequest, edge: Plan) -> list[float]:
    """Levels from below an edge down to the aim's, or to the strongest fill, L; the highest first.

    None where the highest level does not lie at the low edge of the band for want of concentrate.
    """
    low_pct, aim_pct = edge.final.strength_pct.value, ask.target.aim_pct
    have_l = ask.stock.concentrate_l if ask.stock else None
    if edge.verdict == "out_of_band" or have_l is None or low_pct >= aim_pct:
        return []
    part_pct = (aim_pct - low_pct) / _SURER_LEVELS
    levels_l = [level_for_l(ask, low_pct + part * part_pct) for part in range(1, _SURER_LEVELS + 1)]
    least_l = ask.sump.volume_l.value
    if ask.sump.strength_pct.value < ask.target.low_pct:
        # A lean sump comes into the band by concentrate alone, so that some bucket holds it.
        richest = _share_of_concentrate(ask)[1]
        strongest_l = least_l + _strongest_fill_l(ask, have_l, richest)
        levels_l = [*(level_l for level_l in levels_l if level_l > strongest_l), strongest_l]
    return [level_l for level_l in levels_l if least_l < level_l < edge.final.volume_l]


def _nearest(ask: PlanRequest) -> Plan:
    """The highest level inside the band, else the level that comes nearest to it, else nothing."""
    best, best_pct = made(ask, []), outside_pct(ask, ask.sump.strength_pct.value)
    for level_l in _levels_l(ask):
        pours = _at_level(ask, level_l)
        after_pct = _after_pct(ask, totals_of(pours))
        if not pours or missing(ask, totals_of(pours)) or does_harm(ask, after_pct):
            continue
        away_pct = outside_pct(ask, after_pct)
        if away_pct <= _HAIR_PCT:
            return made(ask, pours)
        # Mixed too thin or too rich a new charge would serve nobody, and it can be filled later.
        if not is_new_charge(ask) and away_pct < best_pct - SAME_PCT:
            best, best_pct = made(ask, pours), away_pct
    # A few levels that were passed over may hold what this search, which knows one aim, does find.
    return fill_less(ask) or best


def _after_pct(ask: PlanRequest, totals: Totals) -> float:
    sump = ask.sump
    amounts = [(1, totals.water_l, totals.concentrate_l)]
    return state_after(sump.volume_l.value, sump.strength_pct.value, amounts)[1]


def _levels_l(ask: PlanRequest) -> Iterator[float]:
    """Levels to try, L: down from the highest, and for a lean sump up from the strongest fill."""
    mark_l, volume_l = ask.bucket.water_mark_l, ask.sump.volume_l.value
    leanest, richest = _share_of_concentrate(ask)
    stock = ask.stock or Stock()
    highest_l, strongest_l = ask.fill_to_l, ask.fill_to_l
    if stock.water_l is not None and richest < 1:
        highest_l = min(highest_l, volume_l + stock.water_l / (1 - richest))
    if stock.concentrate_l is not None:
        if leanest > 0:
            highest_l = min(highest_l, volume_l + stock.concentrate_l / leanest)
        if richest > 0:
            strongest_l = volume_l + _strongest_fill_l(ask, stock.concentrate_l, richest)
        target = ask.target
        reach_pct = target.aim_pct if is_new_charge(ask) else target.low_pct
        highest_l = min(highest_l, level_for_l(ask, reach_pct))
    down = (highest_l - step * mark_l for step in range(_LEVELS))
    is_lean = ask.sump.strength_pct.value < ask.target.low_pct
    up = (strongest_l + step * mark_l for step in range(_LEVELS if is_lean else 0))
    return (level_l for level_l in chain(down, up) if volume_l < level_l <= ask.fill_to_l)


def _strongest_fill_l(ask: PlanRequest, have_l: float, richest_share: float) -> float:
    """All whole jug marks at hand in as few whole marks of water as may take them, L."""
    bucket = ask.bucket
    concentrate_l = floor_marks(have_l / bucket.jug_mark_l) * bucket.jug_mark_l
    water_l = concentrate_l * (1 - richest_share) / richest_share
    return concentrate_l + ceil_marks(water_l / bucket.water_mark_l) * bucket.water_mark_l


def _share_of_concentrate(ask: PlanRequest) -> tuple[float, float]:
    """Concentrate in a litre of the leanest and of the richest bucket that may be poured."""
    per_mark = ask.bucket.jug_mark_l / ask.bucket.water_mark_l
    leanest, richest = (ratio * per_mark for ratio in Space.of(ask).limits.ratios)
    return leanest / (1 + leanest), richest / (1 + richest) if richest < math.inf else 1.0


def level_for_l(ask: PlanRequest, strength_pct: float) -> float:
    """Level to which all of the concentrate at hand brings just so many per cent.

    Valid: above 0 per cent. Needs a stock of concentrate.
    """
    have_l = (ask.stock and ask.stock.concentrate_l) or 0.0
    held_l = ask.sump.volume_l.value * ask.sump.strength_pct.value / 100
    return 100 * (held_l + have_l) / strength_pct


def _at_level(ask: PlanRequest, level_l: float) -> list[Pour]:
    """The best buckets up to a level, with all the concentrate where that is too little for it."""
    lower = replace(ask, fill_to_l=level_l)
    have_l = ask.stock.concentrate_l if ask.stock else None
    pours = _best(lower)
    if have_l is None or totals_of(pours).concentrate_l <= have_l + _HAIR_L:
        return pours
    mark_l = ask.bucket.jug_mark_l
    held_l = ask.sump.volume_l.value * ask.sump.strength_pct.value / 100
    # All of the concentrate up to this level gives just this strength: no other aim is possible.
    aim = 100 * (held_l + floor_marks(have_l / mark_l) * mark_l) / level_l
    # Nobody reads nearer than the least that two plans may differ, or measures half a jug mark.
    close = max(SAME_PCT, 50 * mark_l / level_l)
    exact = replace(
        lower,
        target=Target(aim - 2 * close, aim, aim + 2 * close),
        mixing=replace(ask.mixing, closeness_pct=close),
    )
    return _best(exact)


def _best(ask: PlanRequest) -> list[Pour]:
    space = Space.of(ask)
    return bucket_pours(space, best_pours(space).pours if space.can_pour() else ())


def fill_less(ask: PlanRequest) -> Plan | None:
    """Up to the highest level at which the aim, or else the band, is met with what is at hand."""
    for strength_pct in (ask.target.aim_pct, ask.target.low_pct):
        level_l = min(ask.fill_to_l, level_for_l(ask, strength_pct))
        for fewer in range(_FEWER):
            # The aim at this level and no other one: the concentrate is for that.
            lower = _aimed_at(ask, level_l - fewer * ask.bucket.water_mark_l, strength_pct)
            # What does not fit into the room does not fit into less of it.
            if not may_end_between(Space.of(lower), ask.target.low_pct, ask.target.high_pct):
                break
            pours = filling(lower)
            totals = totals_of(pours)
            is_outside = outside_pct(ask, _after_pct(ask, totals)) > _HAIR_PCT
            if pours and not is_outside and not missing(ask, totals):
                return made(ask, pours)
    return None


def _aimed_at(ask: PlanRequest, level_l: float, strength_pct: float) -> PlanRequest:
    target = replace(ask.target, aim_pct=strength_pct)
    return replace(ask, fill_to_l=level_l, target=target)


def affordable(ask: PlanRequest, ways: list[Alternative]) -> list[Alternative]:
    """The ways that need no more than there is; a ready mix holds its own already."""
    return [way for way in ways if way.why == "ready_mix" or not missing(ask, way.totals)]


def _short(ask: PlanRequest, plan: Plan, short: list[str]) -> Plan:
    """The plan with the stock named as what limits it, instead of the mix or the marks."""
    others = (
        "marks_too_coarse", "needs_stronger_premix", "needs_weaker_mix", "no_room",
        "not_filled_up", "nothing_to_pour",
    )  # fmt: skip
    kept = [code for code in plan.cautions if code not in others]
    # What is in a new charge now is nothing that could be reached: pouring was left for later.
    if is_new_charge(ask) and not plan.pours:
        kept = [code for code in kept if code != "best_reachable"]
    bucket = ask.bucket
    open_l = ask.fill_to_l - plan.final.volume_l - bucket.water_mark_l - bucket.jug_mark_l
    lower = ["not_filled_up"] if open_l > _HAIR_L else []
    return replace(plan, cautions=[*short, *lower, *kept])


def from_ready_mixes(ask: PlanRequest) -> list[Plan]:
    """Filling up with one of the mixes on the cart, each as far as it and the pail's marks reach.

    None with a mix that this fluid may not be poured at, such as neat concentrate.
    """
    mixes = (ask.stock.ready_mixes or []) if ask.stock else []
    mark_l, plans = ask.bucket.water_mark_l, []
    first_l = (ask.pail and ask.pail.first_mark_l) or 0.0
    weak_pct, strong_pct = ask.mixing.weak_pct, ask.mixing.strong_pct
    for mix in mixes:
        if not weak_pct <= mix.strength_pct <= strong_pct:
            continue
        room_l = max(0.0, min(ask.fill_to_l - ask.sump.volume_l.value, mix.volume_l))
        whole_l = floor_marks(ask.bucket.usable_l / mark_l) * mark_l
        count = floor_marks(room_l / whole_l)
        rest_l = floor_marks((room_l - count * whole_l) / mark_l) * mark_l
        share = mix.strength_pct / 100
        sizes = [(count, whole_l), (1, rest_l)]
        pours = [
            Pour(n, size_l * (1 - share), size_l * share, kind="ready_mix")
            for n, size_l in sizes
            if n and size_l > 0 and size_l >= first_l - _HAIR_L
        ]
        if pours:
            plans.append(made(ask, pours))
    return plans
