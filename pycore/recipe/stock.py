"""Keeping to what is at hand: less concentrate than the recipe wants, or mixes that stand ready."""

from __future__ import annotations

from dataclasses import replace

from pycore.recipe.draw_off import filled
from pycore.recipe.marks import Space, floor_marks
from pycore.recipe.outcome import Alternative, Plan, bucket_pours, made
from pycore.recipe.pours import Pour
from pycore.recipe.request import PlanRequest, Target
from pycore.recipe.search import best_pours

# How many times the aim is lowered by a mark until the buckets keep to the stock.
_TRIES = 40


def within_stock(ask: PlanRequest, plan: Plan, *, is_short: bool = False) -> Plan:
    """The plan, or the best one that needs no more concentrate than there is.

    Nothing is taken out then: what the stock cannot make good would be lost for nothing.
    """
    have_l = ask.stock.concentrate_l if ask.stock else None
    if have_l is None or plan.totals.concentrate_l <= have_l + 1e-9:
        return _short(plan) if is_short else plan
    if plan.draw_off_l > 0:
        return within_stock(ask, filled(ask), is_short=True)
    mark_l = ask.bucket.jug_mark_l
    marks = floor_marks(have_l / mark_l)
    held_l = ask.sump.volume_l.value * ask.sump.strength_pct.value / 100
    full_l = max(ask.fill_to_l, ask.sump.volume_l.value)
    for fewer in range(_TRIES):
        concentrate_l = (marks - fewer) * mark_l
        if concentrate_l < 0:
            break
        # So much concentrate in a full sump gives just this strength: no other aim is possible.
        aim = 100 * (held_l + concentrate_l) / full_l
        if aim <= 0:
            break
        exact = replace(
            ask, target=Target(aim, aim, aim), mixing=replace(ask.mixing, closeness_pct=1e-6)
        )
        space = Space.of(exact)
        groups = best_pours(space).pours if space.can_pour() else ()
        short = made(ask, bucket_pours(space, groups))
        if short.totals.concentrate_l <= have_l + 1e-9:
            return _short(short)
    return _short(made(ask, []))


def affordable(ask: PlanRequest, ways: list[Alternative]) -> list[Alternative]:
    """The ways that need no more concentrate than there is; a ready mix holds its own already."""
    have_l = ask.stock.concentrate_l if ask.stock else None
    if have_l is None:
        return ways
    return [w for w in ways if w.why == "ready_mix" or w.totals.concentrate_l <= have_l + 1e-9]


def _short(plan: Plan) -> Plan:
    """The plan with the stock named as what limits it, instead of the mix or the marks."""
    others = ("marks_too_coarse", "needs_stronger_premix", "needs_weaker_mix", "no_room")
    kept = [code for code in plan.cautions if code not in others]
    return replace(plan, cautions=["stock_short", *kept])


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
