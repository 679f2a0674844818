"""Keeping to what is at hand: less concentrate or water than the recipe wants, or ready mixes."""

from __future__ import annotations

from dataclasses import replace

from pycore.recipe.balance import state_after
from pycore.recipe.draw_off import filled, filling
from pycore.recipe.harm import is_new_charge, outside_pct
from pycore.recipe.marks import Space, floor_marks
from pycore.recipe.outcome import Alternative, Plan, bucket_pours, made
from pycore.recipe.pours import Pour, Totals, totals_of
from pycore.recipe.request import PlanRequest, Target
from pycore.recipe.search import SAME_PCT, best_pours
from pycore.recipe.totals import may_end_between

# How many levels are tried, each lower by what the stock lacks or by one mark, and for how many
# jug marks less than there are: marks round by one or two.
_LEVELS = 12
_FEWER = 4

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

    Nothing is taken out then: what the stock cannot make good would be lost for nothing. With too
    little concentrate the room is filled weaker than the aim, as long as that does no harm, and a
    new charge less high; with too little water it is filled less high.
    """
    short = missing(ask, plan.totals)
    if not short:
        return plan
    found = filled(ask) if plan.draw_off_l > 0 else plan
    if missing(ask, found.totals):
        found = _lower(ask)
    return _short(found, short)


def _lower(ask: PlanRequest) -> Plan:
    """The plan with the highest level that keeps to the stock and does no harm; else nothing."""
    have_l = ask.stock.water_l if ask.stock else None
    level_l = _highest_l(ask)
    for _ in range(_LEVELS):
        if level_l <= ask.sump.volume_l.value:
            break
        pours = _at_level(ask, level_l)
        totals = totals_of(pours)
        is_too_weak = _after_pct(ask, totals) < _weakest_pct(ask) - _HAIR_PCT
        if not is_too_weak and not missing(ask, totals):
            return made(ask, pours)
        excess_l = 0.0 if have_l is None else totals.water_l - have_l
        level_l -= max(excess_l, ask.bucket.water_mark_l)
    return made(ask, [])


def _after_pct(ask: PlanRequest, totals: Totals) -> float:
    sump = ask.sump
    amounts = [(1, totals.water_l, totals.concentrate_l)]
    return state_after(sump.volume_l.value, sump.strength_pct.value, amounts)[1]


def _weakest_pct(ask: PlanRequest) -> float:
    """The weakest result that may be left for want of concentrate, per cent.

    As far below the band as the sump is from it now, so that no harm is done; but a new charge
    has to lie in the band: mixed too thin it would serve nobody, and it can be filled less high.
    """
    if is_new_charge(ask):
        return ask.target.low_pct
    return ask.target.low_pct - outside_pct(ask, ask.sump.strength_pct.value)


def _highest_l(ask: PlanRequest) -> float:
    """Level above which the concentrate at hand leaves it too weak or makes no allowed mix."""
    have_l = ask.stock.concentrate_l if ask.stock else None
    if have_l is None:
        return ask.fill_to_l
    highest_l, weak_pct = ask.fill_to_l, ask.mixing.weak_pct
    if weak_pct > 0:
        highest_l = min(highest_l, ask.sump.volume_l.value + 100 * have_l / weak_pct)
    strength_pct = ask.target.aim_pct if is_new_charge(ask) else _weakest_pct(ask)
    return min(highest_l, level_for_l(ask, strength_pct)) if strength_pct > 0 else highest_l


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
    pours = filling(lower)
    if have_l is None or totals_of(pours).concentrate_l <= have_l + _HAIR_L:
        return pours
    marks = floor_marks(have_l / ask.bucket.jug_mark_l)
    for fewer in range(min(_FEWER, marks + 1)):
        found = _with_marks(lower, marks - fewer, level_l)
        totals = totals_of(found)
        if totals.concentrate_l <= have_l + _HAIR_L:
            # Marks of water may end below this level, and more concentrate go in up to there.
            again = _with_marks(lower, marks, ask.sump.volume_l.value + totals.water_l + have_l)
            used_l = totals_of(again).concentrate_l
            return again if totals.concentrate_l < used_l <= have_l + _HAIR_L else found
    return pours


def _with_marks(ask: PlanRequest, marks: int, level_l: float) -> list[Pour]:
    """The best buckets for the strength that so many jug marks give at a level; none for water."""
    mark_l, sump = ask.bucket.jug_mark_l, ask.sump
    concentrate_l = sump.volume_l.value * sump.strength_pct.value / 100 + marks * mark_l
    if concentrate_l <= 0:
        return []
    # Nobody reads nearer than the least that two plans may differ, or measures half a jug mark.
    close = max(SAME_PCT, 50 * mark_l / level_l)
    # So much concentrate up to this level gives just this strength: no other aim is possible.
    aim = 100 * concentrate_l / level_l
    exact = replace(
        ask,
        target=Target(aim - close, aim, aim + close),
        mixing=replace(ask.mixing, closeness_pct=close),
    )
    space = Space.of(exact)
    return bucket_pours(space, best_pours(space).pours if space.can_pour() else ())


def fill_less(ask: PlanRequest) -> Plan | None:
    """Up to the highest level at which the aim, or else the band, is met with what is at hand."""
    for strength_pct in (ask.target.aim_pct, ask.target.low_pct):
        level_l = min(ask.fill_to_l, level_for_l(ask, strength_pct))
        for fewer in range(_FEWER):
            top_l = level_l - fewer * ask.bucket.water_mark_l
            if top_l <= ask.sump.volume_l.value:
                break
            # The aim at this level and no other one: the concentrate is for that.
            lower = _aimed_at(ask, top_l, strength_pct)
            if not may_end_between(Space.of(lower), ask.target.low_pct, ask.target.high_pct):
                continue
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


def _short(plan: Plan, short: list[str]) -> Plan:
    """The plan with the stock named as what limits it, instead of the mix or the marks."""
    others = (
        "marks_too_coarse", "needs_stronger_premix", "needs_weaker_mix", "no_room",
        "not_filled_up", "nothing_to_pour",
    )  # fmt: skip
    kept = [code for code in plan.cautions if code not in others]
    return replace(plan, cautions=[*short, *kept])


def from_ready_mixes(ask: PlanRequest) -> list[Plan]:
    """Filling up with one of the mixes on the cart, each as far as it reaches."""
    mixes = (ask.stock.ready_mixes or []) if ask.stock else []
    mark_l, plans = ask.bucket.water_mark_l, []
    for mix in mixes:
        room_l = max(0.0, min(ask.fill_to_l - ask.sump.volume_l.value, mix.volume_l))
        whole_l = floor_marks(ask.bucket.usable_l / mark_l) * mark_l
        count = floor_marks(room_l / whole_l)
        rest_l = floor_marks((room_l - count * whole_l) / mark_l) * mark_l
        share = mix.strength_pct / 100
        sizes = [(count, whole_l), (1, rest_l)]
        pours = [
            Pour(n, size_l * (1 - share), size_l * share, kind="ready_mix")
            for n, size_l in sizes
            if n and size_l > 0
        ]
        if pours:
            plans.append(made(ask, pours))
    return plans
