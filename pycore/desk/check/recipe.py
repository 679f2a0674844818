"""A recipe in the tools' own units: every number that the page shows, already rounded."""

from __future__ import annotations

import math
from typing import Any

from pycore.desk.check.assess import is_customary, section_of
from pycore.desk.contract.messages import MachineTyped, Units
from pycore.desk.contract.results import Jugs, PourShown, Section, WayShown
from pycore.quantity.measured import Measured
from pycore.quantity.rounding import Shown, decimals_apart, decimals_for, shown, tidy
from pycore.recipe.balance import mix_strength_pct
from pycore.recipe.outcome import Alternative, Plan
from pycore.recipe.outlook import Final, bucket_weight_kg
from pycore.recipe.pours import Pour
from pycore.recipe.request import PlanRequest, Target
from pycore.sump.sump import Sump

# Room for the last digit of a float when full jugs are counted.
_HAIR = 1e-9


def _jugs(concentrate_l: float, request: PlanRequest, units: Units) -> Jugs | None:
    """Full jugs and a rest, where the jug's size is known and one is not enough."""
    size_l = request.pail.jug_max_l if request.pail else None
    if not size_l or concentrate_l <= size_l + _HAIR:
        return None
    full = math.floor(concentrate_l / size_l + _HAIR)
    return Jugs(full, tidy(max(0.0, concentrate_l - full * size_l), units.jug))


def pour_shown(pour: Pour, request: PlanRequest, units: Units) -> PourShown:
    """One kind of bucket in the tools' units; strength and weight are of the filled bucket."""
    fluid_l = pour.fluid_l or 0.0
    carrier_l = pour.water_l + fluid_l
    weight_kg = bucket_weight_kg(carrier_l, pour.concentrate_l, request.density_kg_l)
    by_pail = request.pail is not None and request.pail.measure_by == "pail"
    total = tidy(carrier_l + pour.concentrate_l, units.pail, most_decimals=4)
    usable_l = request.bucket.usable_l
    own_l = fluid_l * request.sump.strength_pct.value / 100
    neat_l = own_l + pour.concentrate_l
    return PourShown(
        count=pour.count,
        water=tidy(pour.water_l, units.pail, most_decimals=4),
        concentrate=tidy(pour.concentrate_l, units.pail if by_pail else units.jug),
        total=total,
        strength=shown(mix_strength_pct(carrier_l - own_l, neat_l), "%", 1),
        weight=shown(weight_kg, "lb" if units.pail.startswith("US") else "kg", 0),
        water_share=carrier_l / usable_l,
        concentrate_share=pour.concentrate_l / usable_l,
        fluid=tidy(fluid_l, units.pail) if fluid_l else None,
        jugs=None if by_pail else _jugs(pour.concentrate_l, request, units),
        pail_mark=total if by_pail else None,
        kind=pour.kind,
    )


# Chances in words, each from its limit on: likelihood scale of the IPCC's guidance note for lead
# authors (2010), table 1.
_CHANCES = (
    (0.90, "very_likely"),
    (0.66, "likely"),
    (0.33, "even"),
    (0.10, "unlikely"),
    (0.0, "very_unlikely"),
)


def chance_code(final: Final, cautions: list[str]) -> str | None:
    """How likely it is to end inside the band; None where first order is too rough to say."""
    if "rough" in cautions:
        return None
    return next(code for least, code in _CHANCES if final.chance_in_band >= least)


def _plate_decimals(units: Units) -> int:
    # A gallon is too much to be the last digit.
    return 1 if is_customary(units.plate) else 0


def _result_shown(final: Final, target: Target, units: Units) -> dict[str, Shown]:
    # A range whose ends read the same as the middle would say nothing.
    # A result on the edge but for a float's last digit counts as on it.
    u_pct, value_pct = final.strength_pct.u, round(final.strength_pct.value, 9)
    decimals = max(1, decimals_for(u_pct, 1)) if u_pct > 0 else 2
    # "7.0 %" beside "too weak, the range begins at 7 %" would be believed by nobody.
    apart = decimals_apart(value_pct, decimals, (target.low_pct, target.high_pct))
    return {
        "strength": shown(value_pct, "%", apart),
        "low": shown(final.low_pct, "%", decimals),
        "high": shown(final.high_pct, "%", decimals),
        "volume": shown(final.volume_l, units.plate, _plate_decimals(units)),
    }


def section_after(
    sump: Sump, plan: Plan | Alternative, depth_now_mm: float, hidden_l: Measured | None = None
) -> Section:
    """The section drawing after the last bucket; a sump into which nothing goes stays as it is.

    hidden_l is what the plan counts beside the sump, in litres: the drawing shows the sump alone.
    """
    volume_l = plan.final.volume_l - (hidden_l.value if hidden_l else 0.0)
    strength_pct = plan.final.strength_pct.value
    # Where the rim is the full mark, the sum of the buckets may pass it by a float's last digit.
    rim_l = sump.rim_volume_l
    held_l = rim_l if rim_l < volume_l <= rim_l * (1 + 1e-9) else volume_l
    is_moved = plan.totals.water_l + plan.totals.concentrate_l > 0 or plan.draw_off_l > 0
    depth_mm = sump.depth_from_volume(held_l, "body.dip.depth") if is_moved else depth_now_mm
    return section_of(sump, depth_mm, volume_l, strength_pct)


def plan_shown(plan: Plan, request: PlanRequest, typed: MachineTyped) -> dict[str, Any]:
    """Every number of the recipe page, rounded and in the tools' units.

    now_volume and now_strength carry two decimals more than a person needs, so that the page's
    own balance can be compared with the promised strength.
    """
    units, target, totals = typed.units, request.target, plan.totals
    chance = chance_code(plan.final, plan.cautions)
    return {
        "pours": [pour_shown(pour, request, units) for pour in plan.pours],
        "take_out": tidy(plan.draw_off_l, units.pail),
        "now_volume": shown(request.sump.volume_l.value, units.plate, 3),
        "now_strength": shown(request.sump.strength_pct.value, "%", 3),
        "water": tidy(totals.water_l, units.pail),
        "concentrate": tidy(totals.concentrate_l, units.jug),
        "added": tidy(totals.water_l + totals.concentrate_l, units.pail, most_decimals=1),
        **_result_shown(plan.final, target, units),
        "aim": tidy(target.aim_pct, "%"),
        "band_low": tidy(target.low_pct, "%"),
        "band_high": tidy(target.high_pct, "%"),
        "reach_low": shown(plan.reachable.low_pct, "%", 1),
        "reach_high": shown(plan.reachable.high_pct, "%", 1),
        **({} if chance is None else {"chance": chance}),
    }


def way_shown(
    way: Alternative,
    request: PlanRequest,
    typed: MachineTyped,
    after: Section,
    hidden_l: Measured | None = None,
) -> WayShown:
    """Another way in the tools' units; a way that waits promises no result and no chance.

    A level to wait for is the sump's own, as the stick shows it, without what is hidden.
    """
    units, wait = typed.units, way.wait
    run = next((step for step in way.steps if step.kind in ("hose", "unit")), None)
    level_l = wait.level_l if wait else None
    if level_l is not None and hidden_l is not None:
        level_l -= hidden_l.value
    level_pct = wait.strength_pct if wait else None
    return WayShown(
        why=way.why,
        verdict=way.verdict,
        pours=[pour_shown(pour, request, units) for pour in way.pours],
        **_result_shown(way.final, request.target, units),
        after=after,
        cautions=way.cautions,
        chance=chance_code(way.final, way.cautions) if wait is None else None,
        take_out=tidy(way.draw_off_l, units.pail) if way.draw_off_l > 0 else None,
        level=None if level_l is None else shown(level_l, units.plate, _plate_decimals(units)),
        level_strength=None if level_pct is None else shown(level_pct, "%", 1),
        days=None if wait is None or wait.time_d is None else math.ceil(wait.time_d),
        run_in=None if run is None or run.volume_l is None else tidy(run.volume_l, units.pail),
        setting=None if run is None or run.setting_pct is None else tidy(run.setting_pct, "%"),
    )
