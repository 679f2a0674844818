"""When a machine is checked next, from its log and the shop's interval."""

from __future__ import annotations

from collections.abc import Sequence

from pycore.advice.drift import Slope
from pycore.advice.due import next_check
from pycore.desk.log.due_checks import CheckDue
from pycore.desk.log.history import Point
from pycore.desk.trend.messages import NextCheck
from pycore.desk.trend.rows import added_by, taken_l
from pycore.journal.times import DAY_S
from pycore.recipe.balance import state_after


def _strength_now(points: Sequence[Point]) -> float | None:
    """The last reading, and what known pours since then have made of it.

    None without a reading, and after one where nobody knows how much of the coolant was taken out.
    """
    volume_l: float | None = None
    pct: float | None = None
    for point in points:
        if point.level is not None:
            volume_l = (point.level.circuit_l or point.level.volume_l).value
        if point.strength is not None and point.strength.strength_pct is not None:
            pct = point.strength.strength_pct.value
        out_l, added = taken_l(point.entry), added_by(point)
        if out_l is None or (volume_l is not None and out_l > volume_l):
            # More than there was: the number is not what was taken out.
            volume_l = pct = None
        elif volume_l is not None:
            volume_l -= out_l
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
