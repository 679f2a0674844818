"""When a machine is checked and cleaned out next, from its log and the shop's intervals."""

from __future__ import annotations

from collections.abc import Sequence

from pycore.advice.drift import Slope
from pycore.advice.due import Findings, clean_out_reasons, next_check
from pycore.desk.check.look import LookLimitsTyped, read_limits
from pycore.desk.contract.reader import Reader
from pycore.desk.log.due_checks import CheckDue
from pycore.desk.log.first_ph import first_ph
from pycore.desk.log.history import Point
from pycore.desk.trend.messages import CleanOutNow, NextCheck
from pycore.desk.trend.rows import added_by, number_of
from pycore.journal.amend import Standing
from pycore.journal.state import MachineNow
from pycore.journal.times import DAY_S
from pycore.recipe.balance import state_after


def _strength_now(points: Sequence[Point]) -> float | None:
    """The last reading, and what known pours since then have made of it."""
    volume_l: float | None = None
    pct: float | None = None
    for point in points:
        if point.level is not None:
            volume_l = (point.level.circuit_l or point.level.volume_l).value
        if point.strength is not None and point.strength.strength_pct is not None:
            pct = point.strength.strength_pct.value
        added = added_by(point)
        if added is not None and volume_l is not None and pct is not None:
            pour = (1, added.water_l, added.concentrate_l)
            volume_l, pct = state_after(volume_l, pct, [pour])
    return pct


def next_check_of(
    due: CheckDue, charge: Sequence[Point], slope: Slope | None, now_s: int
) -> NextCheck | None:
    """By the shop's interval, or earlier where the strength left the band or drifts out of it.

    None without a reading of this charge. slope: None unless the strength drifts.
    """
    if due.due_s is None:
        return None
    bands = [point.band for point in charge if point.strength and point.band]
    edges = (bands[-1].low_pct, bands[-1].high_pct) if bands else None
    found = next_check(due.every_d, _strength_now(charge), edges, slope)
    due_s = due.due_s - int(due.every_d * DAY_S) + int(found.after_d * DAY_S)
    return NextCheck(due_s, due_s <= now_s, due.every_d, found.why, due.resting)


def _first_ph(machine: MachineNow) -> float | None:
    found = first_ph(machine)
    return None if found is None else number_of(found, "ph", "ph")


def clean_out_of(
    machine: MachineNow,
    charge: Sequence[Standing],
    shop: LookLimitsTyped | None,
    every_d: float,
    now_s: int,
) -> CleanOutNow:
    """The age of the charge, and what of its log speaks for a clean-out."""
    limits = read_limits(Reader(), shop)
    ends = [one for one in machine.ordered if one.kind == "clean_out" and one.content["finished"]]
    age_d = (now_s - ends[-1].measured_s) / DAY_S if ends else None
    contents = [entry.content for entry in charge]
    phs = [ph for one in contents if (ph := number_of(one, "ph", "ph")) is not None]
    slides = [
        germs
        for one in contents
        if (germs := number_of(one.get("dip_slide", {}), "germs", "dip_slide_cfu_ml")) is not None
    ]
    smells = [
        (now_s - entry.measured_s) / DAY_S
        for entry in charge
        if "smell" in entry.content.get("look", ())
    ]
    first = _first_ph(machine)
    fall = first - phs[-1] if first is not None and phs else None
    found = Findings(age_d, slides[-1] if slides else None, smells, fall)
    reasons = clean_out_reasons(
        found, every_d, limits.slide_review_cfu_ml, limits.slide_act_cfu_ml, limits.ph_drop_far
    )
    return CleanOutNow(reasons, every_d, ends[-1].measured_at if ends else None, age_d)
