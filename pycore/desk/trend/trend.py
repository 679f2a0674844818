"""Trend of one machine: its checks as rows, and what the shop learns from them."""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import replace
from typing import TypeVar

from pycore.advice.drift import MOST_READINGS, Slope, direction, theil_sen
from pycore.advice.losses import LEAST_CHECKS, Losses, losses, usual_steps
from pycore.desk.contract.checked import checked
from pycore.desk.log.clean_due import clean_out_of
from pycore.desk.log.due_checks import check_due, every_d_of
from pycore.desk.log.history import Point, history_of
from pycore.desk.log.spells import Spell, bands_of, rests_of
from pycore.desk.log.state import name_of
from pycore.desk.trend.due import next_check_of
from pycore.desk.trend.messages import (
    LossesShown,
    StrengthTrend,
    TrendBody,
    TrendResult,
)
from pycore.desk.trend.rows import added_by, rows_of, shared_of, steps_of
from pycore.journal.line import from_store
from pycore.journal.state import Folded, MachineNow, folded, of_this_charge
from pycore.journal.times import DAY_S, moment_of
from pycore.journal.union import gathered, read_lines
from pycore.quantity.fault import Fault
from pycore.quantity.measured import Measured
from pycore.quantity.rounding import Shown, shown, shown_with_u, tidy
from pycore.recipe.outlook import LIKELY_K

# Directions by which something may be foretold.
_SURE = ("rising", "falling")

Read = tuple[Point, Measured]
S = TypeVar("S", bound=Spell)


def _machine(body: TrendBody, now: Folded) -> MachineNow:
    found = next((one for one in now.machines if one.machine == body.machine), None)
    if found is None:
        raise Fault("not_allowed", "body.machine", body.machine, {"allowed": []})
    return found


def _readings(points: Sequence[Point]) -> list[Read]:
    """Readings that came to a strength."""
    return [
        (point, point.strength.strength_pct)
        for point in points
        if point.strength is not None and point.strength.strength_pct is not None
    ]


def _slope(read: Sequence[Read]) -> Slope | None:
    """None for fewer than three readings, or where all are of one moment."""
    last = read[-MOST_READINGS:]
    days = [point.entry.measured_s / DAY_S for point, _ in last]
    if len(last) < LEAST_CHECKS or len(set(days)) < 2:
        return None
    return theil_sen(days, [pct.value for _, pct in last])


def _error_pct(read: Sequence[Read]) -> float:
    """Points by which first and last reading can lie apart by themselves."""
    first, last = read[0][1], read[-1][1]
    return LIKELY_K * math.hypot(first.u, last.u)


def _way(read: Sequence[Read], slope: Slope | None) -> str:
    if slope is None:
        return "too_few"
    values = [pct.value for _, pct in read]
    spread_pct = max(values) - min(values)
    return direction(slope, values[-1] - values[0], _error_pct(read), spread_pct)


def _added_a_day(points: Sequence[Point], read: Sequence[Read]) -> float | None:
    """Litres a day that were poured in from the first to the last reading, where it is known."""
    first_s, last_s = (read[i][0].entry.measured_s for i in (0, -1))
    added = [one for point in points if (one := added_by(point)) is not None]
    inside = [one for one in added if first_s <= one.at_s < last_s]
    if last_s - first_s < DAY_S or any(one.unknown for one in inside):
        return None
    return sum(one.water_l + one.concentrate_l for one in inside) * DAY_S / (last_s - first_s)


def _strength(
    points: Sequence[Point], read: Sequence[Read], slope: Slope | None, unit: str
) -> StrengthTrend | None:
    if not read:
        return None
    states = [point.strength.state for point, _ in read if point.strength is not None]
    (first, _), (last, _) = read[0], read[-1]
    said = {
        name: point.strength.shown["strength"]
        for name, point in (("first", first), ("last", last))
        if point.strength is not None
    }
    way = _way(read, slope)
    # "Rose from 7.5 % to 7.5 %" would be said of nothing that can be seen.
    if way.endswith("_little") and said.get("first") == said.get("last"):
        way = "level"
    # A clock that was put back lets the last reading lie before the first.
    moments_s = [point.entry.measured_s for point, _ in read]
    if slope is not None and way in _SURE:
        said["per_week"] = shown(abs(slope.slope) * 7, "%", 1)
    elif slope is not None:
        said["error"] = tidy(_error_pct(read), "1", 2)
    added_l_d = _added_a_day(points, read)
    if added_l_d is not None and added_l_d > 0:
        said["added"] = shown(added_l_d, unit, 1)
    return StrengthTrend(
        readings=len(read),
        below=states.count("weak"),
        above=states.count("strong"),
        over_d=(max(moments_s) - min(moments_s)) / DAY_S,
        direction=way,
        shown=said,
        slope_pct_d=None if slope is None else slope.slope,
    )


def _a_day(number: Measured, unit: str) -> Shown:
    """Litres a day, never finer than a tenth of a litre."""
    fine = shown_with_u(number.value, number.u, unit)
    return fine if fine.decimals <= 1 else shown(number.value, unit, 1)


def _said(found: Losses, aim_pct: float, unit: str) -> dict[str, Shown]:
    """Litres a day with the ends of what is likely; only what is more than its own error."""
    said: dict[str, Shown] = {"aim": tidy(aim_pct, "%")}
    amounts = {
        "lost": found.lost_l_d,
        "carry_out": found.carry_out_l_d,
        "evaporation": found.evaporation_l_d,
    }
    for name, number in amounts.items():
        if number.value <= 2 * number.u:
            continue
        said[name] = _a_day(number, unit)
        for end, sign in (("low", -2), ("high", 2)):
            said[f"{name}_{end}"] = shown(number.value + sign * number.u, unit, said[name].decimals)
    top_up = found.top_up_pct
    if top_up is not None and top_up.value > 0:
        said["top_up"] = shown(top_up.value, "%", 1)
        said["top_up_low"] = shown(max(0.0, top_up.value - 2 * top_up.u), "%", 1)
        said["top_up_high"] = shown(top_up.value + 2 * top_up.u, "%", 1)
    return said


def _losses(points: Sequence[Point], unit: str) -> LossesShown:
    steps = steps_of(points)
    bands = [point.band for point in points if point.band is not None]
    found = losses(steps.steps, bands[-1].aim_pct, shared_of(points)) if bands else None
    needed = LEAST_CHECKS - 1
    if found is None:
        usual = len(usual_steps(steps.steps))
        return LossesShown(usual, needed, steps.counted(len(steps.steps) - usual), {})
    return LossesShown(
        steps=found.steps,
        needed=needed,
        left_out=steps.counted(found.unusual),
        shown=_said(found, bands[-1].aim_pct, unit),
        over_d=found.over_d,
        lost_l_d=found.lost_l_d,
        concentrate_l_d=found.concentrate_l_d,
        carry_out_l_d=found.carry_out_l_d,
        evaporation_l_d=found.evaporation_l_d,
        top_up_pct=found.top_up_pct,
    )


def _unit(machine: MachineNow) -> str:
    """The unit of the machine's litres; L where nobody has set it up."""
    if machine.definition is None:
        return "L"
    return str(machine.definition.entry.content["machine"]["units"]["plate"])


def _from(spell: S, from_s: int) -> S:
    return replace(spell, from_s=max(spell.from_s, from_s))


def trend(body: TrendBody) -> TrendResult:
    """What a machine's log tells.

    Losses, drift and what is due count this charge alone: what was measured before a clean-out is
    of another fluid. Errors: ``not_a_date`` for a ``now`` that is no moment; ``not_allowed`` for a
    machine that the log does not know; those of reading the shop's limits.
    """
    now_s = moment_of(body.now, "body.now")[0]
    union = gathered(*read_lines(map(from_store, body.lines), checked), body.heads)
    now = folded(union, now_s)
    machine = _machine(body, now)
    due = check_due(machine, now, now_s)
    clean_every_d = every_d_of(now, "clean_out_every_d")
    points = history_of(machine)
    from_s = points[0].entry.measured_s if points else now_s
    if body.days is not None:
        from_s = max(from_s, now_s - body.days * DAY_S)
    inside = [point for point in points if point.entry.measured_s >= from_s]
    places = {entry.place for entry in of_this_charge(machine.with_doubtful_pours)}
    charge = [point for point in points if point.entry.place in places]
    seen = [point for point in charge if point.entry.measured_s >= from_s]
    read, unit = _readings(seen), _unit(machine)
    slope = _slope(read)
    drifts = slope if _way(read, slope) in _SURE else None
    fulls = [point.level.full_volume_l for point in points if point.level is not None]
    return TrendResult(
        name=name_of(machine),
        unit=unit,
        from_s=from_s,
        now_s=now_s,
        rows=rows_of(inside, unit),
        added=[added for point in inside if (added := added_by(point)) is not None],
        bands=[_from(band, from_s) for band in bands_of(points, now_s) if band.to_s >= from_s],
        rests=[_from(rest, from_s) for rest in rests_of(points, now_s) if rest.to_s >= from_s],
        losses=_losses(seen, unit),
        clean_out=clean_out_of(
            machine, [one.entry for one in charge], body.limits, clean_every_d, now_s
        ),
        full_volume_l=fulls[-1] if fulls else None,
        strength=_strength(seen, read, slope, unit),
        next_check=next_check_of(due, charge, drifts, now_s),
    )
