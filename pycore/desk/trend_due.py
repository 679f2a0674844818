"""When a machine is checked and cleaned out next, from its log and the shop's intervals."""

from __future__ import annotations

from collections.abc import Sequence

from pycore.advice.drift import Slope
from pycore.advice.due import (
    CHECK_EVERY_D,
    CLEAN_OUT_EVERY_D,
    Findings,
    clean_out_reasons,
    next_check,
)
from pycore.desk.first_ph import first_ph
from pycore.desk.history import Point
from pycore.desk.look import LookLimitsTyped, read_limits
from pycore.desk.reader import Reader
from pycore.desk.records import Typed
from pycore.desk.trend_messages import CleanOutNow, NextCheck, TrendBody
from pycore.desk.trend_rows import added_by, number_of
from pycore.journal.amend import Standing
from pycore.journal.state import AT_REST, MachineNow
from pycore.journal.times import DAY_S
from pycore.recipe.balance import state_after


def every_d_of(body: TrendBody) -> tuple[float, float]:
    """The shop's intervals in days, checks and clean-outs; published ones where it has none.

    Errors: those of ``read_typed`` at the field.
    """
    reader = Reader()
    check = reader.optional(body.check_every, "check_every_d", "body.check_every")
    clean_d = clean_every_d(reader, body.clean_out_every)
    return CHECK_EVERY_D if check is None else check, clean_d


def clean_every_d(reader: Reader, typed: Typed | None) -> float:
    """Days from one clean-out to the next. Errors: those of ``read_typed`` at the field."""
    read_d = reader.optional(typed, "clean_out_every_d", "body.clean_out_every")
    return CLEAN_OUT_EVERY_D if read_d is None else read_d


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
    machine: MachineNow, charge: Sequence[Point], slope: Slope | None, every_d: float, now_s: int
) -> NextCheck | None:
    """None without a reading of this charge. slope: None unless the strength drifts."""
    read = [point for point in charge if point.strength is not None and point.band is not None]
    if not read or read[-1].band is None:
        return None
    last, band = read[-1], read[-1].band
    edges = band.low_pct, band.high_pct
    due = next_check(every_d, _strength_now(charge), edges, slope)
    state = machine.state.entry.content["state"] if machine.state else ""
    due_s = last.entry.measured_s + int(due.after_d * DAY_S)
    return NextCheck(due_s, due_s <= now_s, every_d, due.why, state in AT_REST)


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
