"""A typed dip without a reading: the holding top-up, ready to show."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Any

from pycore.desk.check.assess import assessed, is_customary, section_of
from pycore.desk.check.check import Mark, mark_to_fill, plan_check
from pycore.desk.check.dip import Dipped, level_from
from pycore.desk.check.recipe import pour_shown
from pycore.desk.check.strength import strength_from
from pycore.desk.contract.messages import HoldCheckBody, LastCheck, LaterReading, MachineTyped
from pycore.desk.contract.reader import Reader, placed
from pycore.desk.contract.results import HoldCheckResult, PlanCheckResult, Section
from pycore.desk.setup.bounds import STRENGTH_U_MOST_PCT
from pycore.desk.setup.factor import read_factor
from pycore.desk.setup.instrument import read_glass
from pycore.desk.setup.machine import Machine, read_machine
from pycore.desk.setup.shop import read_shop
from pycore.quantity.dates import days_between, moment_from
from pycore.quantity.fault import Fault
from pycore.quantity.measured import Measured
from pycore.quantity.rounding import Shown, shown, tidy
from pycore.recipe.holding import (
    Holding,
    HoldingRequest,
    LastReading,
    even_request,
    plan_holding,
    poured_pct,
)
from pycore.sump.sump import Sump

# Points in a day. A sump loses about 3 % of its volume to evaporation in a shift of eight hours
# (2 to 8 L of a 100 to 250 L sump), so that 8 % rises by 0.25 points where nobody tops up; what
# chips, skimmer and germs take is far less, at most 0.3 points a week. Common practice, no source.
DRIFT_PCT_D = 0.25

# The limit of plan_holding's own age_d: ten years.
_MOST_AGE_D = 3650.0


@dataclass(frozen=True)
class _Usual:
    """The usual top-up strength, as shown, and what was taken for granted about it."""

    strength_pct: float
    said: Shown
    assumed: list[str]


def _age_d(at: str, path: str, now: str) -> float:
    age_d = days_between(moment_from(at, path), moment_from(now, "body.now"), "body.now")
    if age_d > _MOST_AGE_D:
        raise Fault("out_of_range", path, age_d, {"maximum": _MOST_AGE_D})
    return age_d


def _checked(last: LastCheck | None) -> PlanCheckResult | None:
    if last is None:
        return None
    try:
        return plan_check(last.check)
    except Fault as fault:
        path = fault.path.replace("body", "body.last.check", 1)
        raise Fault(fault.code, path, fault.got, fault.limit) from None


def _read_pct(read: LaterReading) -> Measured:
    reader, typed, path = Reader(), read.machine, "body.read"
    factor = read_factor(reader, typed.fluid, f"{path}.machine.fluid")
    glass = read_glass(reader, typed.instrument, typed.fluid, f"{path}.machine")
    strength, _ = strength_from(reader, read.reading, glass, factor, None, f"{path}.reading")
    if strength.strength_pct is None:
        raise Fault("no_factor", f"{path}.machine.fluid.factor")
    return strength.strength_pct


def _last_reading(body: HoldCheckBody, checked: PlanCheckResult | None) -> LastReading | None:
    """The newest strength: of a later reading, else of the last check after its recipe.

    None where that recipe's outcome may be off by more than any strength there is.
    """
    moment_from(body.now, "body.now")
    if body.read is not None:
        age_d = _age_d(body.read.at, "body.read.at", body.now)
        return LastReading(_read_pct(body.read), age_d, DRIFT_PCT_D)
    if body.last is None or checked is None:
        return None
    age_d = _age_d(body.last.at, "body.last.at", body.now)
    reached_pct = checked.plan.final.strength_pct
    is_known = reached_pct.u <= STRENGTH_U_MOST_PCT
    return LastReading(reached_pct, age_d, DRIFT_PCT_D) if is_known else None


def _usual(
    reader: Reader, body: HoldCheckBody, machine: Machine, checked: PlanCheckResult | None
) -> _Usual:
    if body.usual is not None:
        read = reader.read(body.usual, "usual_pct", "body.usual")
        return _Usual(read.value, read.shown, [])
    totals = checked.plan.totals if checked else None
    poured_l = totals.water_l + totals.concentrate_l if totals else 0.0
    if checked is None or totals is None or poured_l <= 0:
        raise Fault("missing", "body.usual")
    usual_pct = 100 * totals.concentrate_l / poured_l
    # A recipe may round its weakest mix to a jug mark; as a usual strength nobody said so.
    if not machine.mixing.weak_pct <= usual_pct <= machine.mixing.strong_pct:
        raise Fault("missing", "body.usual")
    strength = checked.assessment.strength
    was_in_range = strength is not None and strength.state == "in_range"
    # A mix above the band lifts every sump that stands in it: it led up to the aim only.
    is_usual = was_in_range and usual_pct <= machine.target.high_pct
    code = "usual_of_last_recipe" if is_usual else "usual_of_correction"
    return _Usual(usual_pct, shown(usual_pct, "%", 1), [code])


def _assumed(
    body: HoldCheckBody, checked: PlanCheckResult | None, usual: _Usual, last: LastReading | None
) -> list[str]:
    """What was taken for granted, in the order in which it was used."""
    is_after_recipe = body.read is None and checked is not None and bool(checked.plan.pours)
    return [
        *(["last_recipe_poured"] if is_after_recipe else []),
        *usual.assumed,
        *(["drift"] if last else []),
    ]


def _shown(
    typed: MachineTyped, ask: HoldingRequest, holding: Holding, usual: _Usual, mark: Mark
) -> dict[str, Any]:
    units, totals, even = typed.units, holding.totals, even_request(ask)
    said = {
        "pours": [pour_shown(pour, even, units) for pour in holding.pours],
        "now_volume": shown(ask.volume_l.value, units.plate, 3),
        "water": tidy(totals.water_l, units.pail),
        "concentrate": tidy(totals.concentrate_l, units.jug),
        "added": tidy(totals.water_l + totals.concentrate_l, units.pail, most_decimals=1),
        "volume": shown(holding.volume_l, units.plate, 1 if is_customary(units.plate) else 0),
        "usual": usual.said,
        "band_low": tidy(ask.target.low_pct, "%"),
        "band_high": tidy(ask.target.high_pct, "%"),
    }
    if holding.pours:
        said["poured"] = shown(poured_pct(holding.pours), "%", 1)
    if mark.given is not None:
        said["fill_to"] = mark.given
    if ask.last is not None and holding.ends is not None:
        said["last"] = shown(ask.last.strength_pct.value, "%", 1)
        said["drift"] = tidy(ask.last.drift_pct_d, "%")
        said["low"] = shown(holding.ends.low_pct, "%", 1)
        said["high"] = shown(holding.ends.high_pct, "%", 1)
    return said


def _after(sump: Sump, holding: Holding, dipped: Dipped) -> Section:
    """The level after the last bucket; without a reading nobody knows how many dots there are."""
    if not holding.pours:
        level = dipped.level
        return section_of(sump, level.depth_mm.value, level.volume_l.value, None)
    volume_l = holding.volume_l - (dipped.hidden_l.value if dipped.hidden_l else 0.0)
    # Where the rim is the full mark, the sum of the buckets may pass it by a float's last digit.
    held_l = min(volume_l, sump.rim_volume_l)
    return section_of(sump, sump.depth_from_volume(held_l, "body.dip.depth"), held_l, None)


def _planned(ask: HoldingRequest, typed: MachineTyped) -> Holding:
    try:
        return plan_holding(ask)
    except Fault as fault:
        if fault.path == "usual_pct":
            raise Fault(fault.code, "body.usual", fault.got, fault.limit) from None
        place = fault.path.removesuffix("_l")
        raise placed(fault, f"body.machine.{place}", typed.units.pail) from None


def hold_check(body: HoldCheckBody) -> HoldCheckResult:
    """A top-up at the usual strength that only keeps a sump going until it is read again.

    The last check's strength is the one after its recipe: whoever stored it is taken to have
    poured it (``last_recipe_poured``). A later reading, taken without a dip, replaces it. Without
    a usual strength the one of that recipe's top-up is taken (``usual_of_last_recipe``, or
    ``usual_of_correction`` where the recipe put right a strength outside the band, or its mix
    lies above the band, and so may be far from the usual one). The strength is taken to move by
    DRIFT_PCT_D points in a day (``drift``). Litres, per cent by volume, days.

    Errors: every fault of reading machine, dip, usual strength and mark, at the path of the
    field; those of the last check and of a later reading below body.last.check and body.read;
    ``not_a_date`` for a time that is no ISO 8601 moment; ``order`` for a now before the last check
    and for a usual strength that this fluid may not be mixed at; ``missing`` at body.usual where
    nothing tells it; ``screen_blocked`` as of ``plan_check``.
    """
    reader, typed = Reader(), body.machine
    machine = read_machine(reader, typed, "body.machine")
    mark = mark_to_fill(reader, body.fill_to_depth, machine.sump)
    dipped = level_from(
        reader, machine.tank, body.dip, typed.units, "body.dip", "body.machine.sump"
    )
    if dipped.blocked is not None:
        raise dipped.blocked
    checked = _checked(body.last)
    last = _last_reading(body, checked)
    usual = _usual(reader, body, machine, checked)
    ask = HoldingRequest(
        # The whole circuit, as the recipe of a check: what is hidden mixes and does not show.
        volume_l=dipped.level.circuit_l or dipped.level.volume_l,
        fill_to_l=mark.volume_l + (dipped.hidden_l.value if dipped.hidden_l else 0.0),
        usual_pct=usual.strength_pct,
        target=machine.target,
        mixing=machine.mixing,
        bucket=machine.bucket,
        last=last,
        pail=read_shop(reader, typed, machine, "body.machine").pail,
        mix_min=typed.sump.mix_min,
        level_u_l=dipped.level_u_l,
    )
    holding = _planned(ask, typed)
    return HoldCheckResult(
        assessment=assessed(machine.sump, dipped, None, False, reader, []),
        request=ask,
        holding=holding,
        shown=_shown(typed, ask, holding, usual, mark),
        assumed=_assumed(body, checked, usual, last),
        after=_after(machine.sump, holding, dipped),
        doubts=reader.doubts,
    )
