"""Taking coolant out first, where the target cannot be reached in the room that is left."""

from __future__ import annotations

from pycore.recipe.marks import Pours, Space, ceil_marks
from pycore.recipe.outcome import Plan, bucket_pours, drawn, made
from pycore.recipe.outlook import reach_pct
from pycore.recipe.request import PlanRequest
from pycore.recipe.search import best_pours

# How many marks beyond the closed form are tried, since buckets come in whole marks too.
_MORE_MARKS = 12


def filled(ask: PlanRequest, draw_off_l: float = 0.0) -> Plan:
    """The best buckets for the question after so much has been taken out."""
    space = Space.of(drawn(ask, draw_off_l))
    return made(ask, bucket_pours(space, _best(space)), draw_off_l)


def _best(space: Space) -> Pours:
    return best_pours(space).pours if space.can_pour() else ()


def _needed_l(ask: PlanRequest, wanted_pct: float) -> float | None:
    """Litres to take out so that filling up with the strongest or weakest mix gives wanted_pct.

    None when no draw-off can do it. Solves (V − x)·C + (room + x)·m = (V + room)·wanted for x,
    m the strength of the mix.
    """
    sump, mix = ask.sump, ask.mixing
    volume_l, strength = sump.volume_l.value, sump.strength_pct.value
    room_l = max(ask.fill_to_l - volume_l, 0.0)
    fill_pct = mix.strong_pct if strength < wanted_pct else mix.weak_pct
    missing = (volume_l + room_l) * wanted_pct - volume_l * strength - room_l * fill_pct
    if fill_pct == strength or missing / (fill_pct - strength) > volume_l:
        return None
    return max(0.0, missing / (fill_pct - strength))


def inside_pct(ask: PlanRequest) -> tuple[float, float]:
    """The band drawn in by the closeness on both sides, but never past the aim."""
    target, close = ask.target, ask.mixing.closeness_pct
    low = min(target.low_pct + close, target.aim_pct)
    return low, max(target.high_pct - close, target.aim_pct)


def drawn_to(ask: PlanRequest, wanted_pct: float, low_pct: float, high_pct: float) -> Plan | None:
    """The plan with the fewest marks taken out whose result lies from low to high.

    None when taking everything out does not do it.
    """
    needed_l = _needed_l(ask, wanted_pct)
    if needed_l is None:
        return None
    mark_l = ask.draw_off.mark_l
    fewest = ceil_marks(needed_l / mark_l)
    for marks in range(max(fewest, 1), fewest + _MORE_MARKS):
        if marks * mark_l > ask.sump.volume_l.value:
            return None
        space = Space.of(drawn(ask, marks * mark_l))
        groups = _best(space)
        if low_pct - 1e-9 <= space.strength_pct(groups) <= high_pct + 1e-9:
            return made(ask, bucket_pours(space, groups), marks * mark_l)
    return None


def least_draw_off(ask: PlanRequest) -> Plan | None:
    """The least that has to come out so that the result lies well inside the band.

    None when the band can be reached without, or not at all.
    """
    reach_low, reach_high = reach_pct(Space.of(ask))
    low, high = inside_pct(ask)
    if reach_high >= ask.target.low_pct and reach_low <= ask.target.high_pct:
        return None
    too_lean = reach_high < ask.target.low_pct
    return drawn_to(ask, low if too_lean else high, low, high)


def draw_off_to_aim(ask: PlanRequest) -> Plan | None:
    """What has to come out so that the result lands on the aim; None when nothing does."""
    aim, close = ask.target.aim_pct, ask.mixing.closeness_pct
    low = max(ask.target.low_pct, aim - close)
    return drawn_to(ask, aim, low, min(ask.target.high_pct, aim + close))
