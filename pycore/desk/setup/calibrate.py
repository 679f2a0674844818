"""A pour test, or top-ups that were dipped before and after, to a depth table to be stored."""

from __future__ import annotations

import itertools
import math

from pycore.desk.contract.messages import CalibrateSumpBody, PointTyped, SumpTyped, Units
from pycore.desk.contract.reader import Reader
from pycore.desk.contract.records import Typed
from pycore.desk.contract.results import CalibratedRow, CalibratedStep, CalibrateSumpResult, Doubt
from pycore.desk.setup.pourtest import PourTest, read_test
from pycore.desk.setup.tank import worth_of_one
from pycore.quantity.fault import Fault
from pycore.quantity.known import KNOWN
from pycore.quantity.measured import Measured
from pycore.quantity.rounding import Shown, on_rule, shown, shown_with_u, tidy
from pycore.quantity.units import from_base
from pycore.sump.calibration import Calibration, Trial, calibrated
from pycore.sump.outline import drawing_of
from pycore.sump.shapes import VOLUME_U_SHARE, table
from pycore.sump.sump import Sump

# Relative standard uncertainty of one fill to a mark, each time anew: common practice, no source.
POUR_U_SHARE = 0.01
# The same of the vessel's mark itself, equal in every pour: common practice, no source.
VESSEL_U_SHARE = {"marks": 0.03, "checked": 0.005}
# Fewer steps make a rough table; a dip from this share of the full mark on is near it; a longer
# stretch than this share of it without a dip is a gap: common practice, no source.
LEAST_STEPS = 4
NEAR_FULL_SHARE = 0.9
GAP_SHARE = 0.25
# A dip so many of its own standard uncertainties off the curve is asked about (99.7 % of all lie
# nearer, normal distribution).
_ODD_U = 3.0
# A rise so many times larger or smaller than those around it is asked about: common practice, no
# source.
_ODD_TIMES = 1.6
# Relative standard uncertainty from which a row counts as poorly known: that of a plate.
_POOR_SHARE = VOLUME_U_SHARE["plate"]
# Decimals of a stored table, finer than any dip.
_STORED_DECIMALS = 4


def _odd_steps(test: PourTest, calibration: Calibration) -> list[Doubt]:
    """Steps to ask about once: a dip off the curve, or a rise unlike both beside it."""
    found, doubts = test.found, []
    blur_mm = _ODD_U * math.sqrt(2) * test.dip_u_mm
    for i, pour in enumerate(found.pours):
        read, off = found.dips[pour.after], calibration.off_share[pour.after]
        dip_mm = found.depths_mm[pour.after]
        low_mm, high_mm = _likely_mm(test, i, blur_mm)
        if abs(off) > _ODD_U:
            true_mm = dip_mm - off * test.dip_u_mm
            low_mm, high_mm = true_mm - blur_mm, true_mm + blur_mm
        elif low_mm <= dip_mm <= high_mm:
            continue
        if read is not None:
            low, high = sorted(
                from_base(test.stick.shown_mm(mm), read.unit) for mm in (low_mm, high_mm)
            )
            doubts.append(Doubt(read.path, "uneven_step", read.shown, low, high))
    return doubts


def _likely_mm(test: PourTest, i: int, blur_mm: float) -> tuple[float, float]:
    """Where the dip of a step lies if it rose about as much for its litres as those beside it."""
    found = test.found
    dip_mm = found.depths_mm[found.pours[i].after]
    if not 0 < i < found.chain - 1:
        return dip_mm, dip_mm
    rises = [
        (found.depths_mm[p.after] - found.depths_mm[p.before]) / p.volume_l
        for p in (found.pours[i - 1], found.pours[i + 1])
    ]
    before_mm, volume_l = found.depths_mm[found.pours[i].before], found.pours[i].volume_l
    low_mm = before_mm + min(rises) * volume_l / _ODD_TIMES - blur_mm
    return low_mm, before_mm + max(rises) * volume_l * _ODD_TIMES + blur_mm


def _gaps_mm(test: PourTest) -> list[tuple[float, float]]:
    """Stretches up to the full mark without a dip, longer than a quarter of it."""
    full_mm = test.full.value
    known = sorted({d for d in test.found.depths_mm if d < full_mm} | {0.0, full_mm})
    return [(a, b) for a, b in itertools.pairwise(known) if b - a > GAP_SHARE * full_mm]


def _as_typed(value: float, unit: str) -> Typed:
    """A number without idle zeros, except where three decimals could part thousands."""
    text = f"{value:.{_STORED_DECIMALS}f}".rstrip("0").rstrip(".")
    return Typed(f"{text}0" if text[-4:-3] == "." else text, unit)


def _stored(calibration: Calibration, body: CalibrateSumpBody) -> SumpTyped:
    """The table as a machine's own sump, in millimetres and litres."""
    points = [
        PointTyped(_as_typed(depth_mm, "mm"), _as_typed(volume_l, "L"), _as_typed(u_l, "L"))
        for depth_mm, volume_l, u_l in zip(
            calibration.depths_mm, calibration.volumes_l, calibration.us_l, strict=True
        )
    ]
    return SumpTyped(
        "table",
        body.full_depth,
        "poured",
        points=points,
        dip_from=body.dip_from,
        reference_height=body.reference_height,
        zero_offset=body.zero_offset,
    )


def _rows(calibration: Calibration, units: Units) -> list[CalibratedRow]:
    rows = []
    for depth_mm, volume_l, u_l in zip(
        calibration.depths_mm, calibration.volumes_l, calibration.us_l, strict=True
    ):
        about = shown_with_u(volume_l, u_l, units.plate)
        said = {
            "depth": on_rule(depth_mm, units.stick),
            "volume": about,
            "volume_u": shown(u_l, units.plate, about.decimals),
        }
        poor = u_l > _POOR_SHARE * volume_l
        rows.append(CalibratedRow(depth_mm, Measured(volume_l, u_l), poor, said))
    return rows


def _steps(test: PourTest, sump: Sump, units: Units) -> list[CalibratedStep]:
    steps, poured_l = [], 0.0
    for pour in test.found.pours[: test.found.chain]:
        poured_l += pour.volume_l
        depth_mm, read = test.found.depths_mm[pour.after], test.found.dips[pour.after]
        volume_l = sump.volume_from_depth(depth_mm, "body.steps")
        said = {
            "depth": read.shown if read else on_rule(depth_mm, units.stick),
            "poured": tidy(poured_l, units.pail),
            "volume": shown(volume_l, units.plate, 1),
        }
        steps.append(CalibratedStep(depth_mm, poured_l, volume_l, said))
    return steps


def _measured(sump: Sump, depth_mm: float) -> Measured:
    """Litres at a depth with the curve's own uncertainty, without that of a new dip."""
    return sump.volume_measured(Measured(depth_mm, 0.0), "body.full_depth")


def _said(name: str, volume: Measured, units: Units) -> dict[str, Shown]:
    about = shown_with_u(volume.value, volume.u, units.plate)
    return {name: about, f"{name}_u": shown(volume.u, units.plate, about.decimals)}


def calibrate_sump(body: CalibrateSumpBody) -> CalibrateSumpResult:
    """The depth table of a sump from pours of a known vessel.

    Errors: those of ``read_test``; ``pours_contradict`` where no curve fits; ``out_of_range`` at
    ``body.full_depth`` for a table that holds less or more than any sump.
    """
    reader, units = Reader(), body.units
    test = read_test(reader, body)
    found, full_mm = test.found, test.full.value
    calibration = _fitted(test, VESSEL_U_SHARE[body.vessel_known_by or "marks"])
    sump = _table(calibration, full_mm)
    full, rest, gaps = _measured(sump, full_mm), _rest(test, sump), _gaps_mm(test)
    maker_l = reader.optional(body.maker_volume, "full_volume_l", "body.maker_volume")
    notes = {
        "few_steps": len(found.pours) < LEAST_STEPS,
        "not_near_full": max(found.depths_mm) < NEAR_FULL_SHARE * full_mm,
        "rest_estimated": rest is not None,
        "poorly_known": bool(gaps),
        "maker_differs": _differs(maker_l, full),
    }
    said = {
        **_said("full_volume", full, units),
        **worth_of_one(sump.litres_per_mm(full_mm), units),
        **({} if rest is None else _said("rest", rest, units)),
        **({} if maker_l is None else _maker_said(maker_l, full, units)),
    }
    return CalibrateSumpResult(
        notes=[code for code, holds in notes.items() if holds],
        sump=_stored(calibration, body),
        rows=_rows(calibration, units),
        steps=_steps(test, sump, units),
        gaps=[
            {"from_depth": on_rule(a, units.stick), "to_depth": on_rule(b, units.stick)}
            for a, b in gaps
        ],
        full_volume_l=full,
        shown=said,
        drawing=drawing_of(sump),
        doubts=[*reader.doubts, *_odd_steps(test, calibration)],
        rest_l=rest,
        maker_difference_l=None if maker_l is None else maker_l - full.value,
    )


def _fitted(test: PourTest, vessel_u_share: float) -> Calibration:
    """The curve. Error: ``pours_contradict`` at the dip least like the others where there is none.

    There is none where two dips that are as good as equal have many litres between them, or where
    no depth is known better than to within all the litres there are.
    """
    found = test.found
    us_mm = tuple(0.0 if read is None else test.dip_u_mm for read in found.dips)
    trial = Trial(tuple(found.depths_mm), us_mm, tuple(found.pours))
    try:
        calibration = calibrated(trial, test.rim_mm, POUR_U_SHARE, vessel_u_share)
    except ValueError:
        raise _contradiction(test) from None
    if calibration.us_l[-1] > calibration.volumes_l[-1]:
        raise _contradiction(test)
    return calibration


def _contradiction(test: PourTest) -> Fault:
    found = test.found
    rises = [
        (found.depths_mm[p.after] - found.depths_mm[p.before]) / p.volume_l for p in found.pours
    ]
    usual = sorted(rises)[len(rises) // 2]
    worst = max(range(len(rises)), key=lambda i: abs(math.log(rises[i] / usual)))
    read = found.dips[found.pours[worst].after]
    path = "body.steps" if read is None else read.path
    return Fault("pours_contradict", path, None if read is None else float(read.number))


def _table(calibration: Calibration, full_mm: float) -> Sump:
    """The curve between the rows, refused where no sump holds so little or a row so much."""
    depths, volumes, us = calibration.depths_mm, calibration.volumes_l, calibration.us_l
    sump = table(depths, volumes, full_mm, 0.0, None, us)
    known = KNOWN["full_volume_l"]
    least_l, most_l = known.minimum or 0.0, known.maximum or 0.0
    held_l = volumes[-1] if volumes[-1] > most_l else sump.full_volume_l
    if not least_l <= held_l <= most_l:
        limit = {"minimum": least_l, "maximum": most_l, "unit": "L"}
        raise Fault("out_of_range", "body.full_depth", held_l, limit)
    return sump


def _maker_said(maker_l: float, full: Measured, units: Units) -> dict[str, Shown]:
    decimals = shown_with_u(full.value, full.u, units.plate).decimals
    difference = shown(maker_l - full.value, units.plate, decimals)
    return {"maker_volume": tidy(maker_l, units.plate), "maker_difference": difference}


def _rest(test: PourTest, sump: Sump) -> Measured | None:
    """What was there below the lowest dip, where the test never saw the floor."""
    lowest_mm = min(test.found.depths_mm)
    return _measured(sump, lowest_mm) if lowest_mm > 0 else None


def _differs(maker_l: float | None, full: Measured) -> bool:
    """Whether the maker's figure and what was found differ by more than both likely allow."""
    if maker_l is None:
        return False
    u_l = math.hypot(full.u, VOLUME_U_SHARE["plate"] * maker_l)
    return abs(maker_l - full.value) > 2 * u_l
