"""The operation read_fluid: a fluid's record, its factor made plain, its drum's age."""

from __future__ import annotations

from pycore.desk.contract.answers import Drum, ReadFluidResult
from pycore.desk.contract.reader import Reader
from pycore.desk.contract.records import FluidTyped, ReadFluidBody
from pycore.desk.setup.factor import ask_about_factor, ask_about_inside, read_factor
from pycore.desk.setup.instrument import Glass, read_glass
from pycore.desk.setup.machine import read_target, refuse_neat_oil
from pycore.desk.setup.water import read_limits
from pycore.quantity.dates import Moment, moment_from
from pycore.quantity.fault import Fault
from pycore.quantity.rounding import Shown, tidy
from pycore.reading.drum import DrumAge, drum_age, metal_cautions
from pycore.reading.factor import EXAMPLE_PCT, Factor, slopes_of

# Field of the record, and the quantity it is read as.
_NUMBERS = {
    "strong": "strong_pct",
    "weak": "weak_pct",
    "first_fill_ph": "first_fill_ph",
    "density": "density_kg_l",
}


def _factor_said(
    reader: Reader, body: ReadFluidBody, glass: Glass
) -> tuple[Factor | None, dict[str, Shown]]:
    factor = read_factor(reader, body.fluid, "body.fluid")
    if factor is None:
        return None, {}
    path = "body.fluid.factor_chart" if factor.chart else "body.fluid.factor"
    value = factor.factor.value
    ask_about_factor(reader, value, body.fluid.type, body.last_factor, path)
    inside = glass.instrument.factor_inside
    ask_about_inside(reader, value, inside, f"{glass.path}.factor_inside")
    reads_brix = factor.reads_brix(EXAMPLE_PCT) + glass.zero_brix
    return factor, {
        "factor": tidy(value, "1"),
        "factor_u": tidy(factor.factor.u, "1"),
        "five_reads": glass.said(reads_brix, path),
    }


def _numbers(reader: Reader, fluid: FluidTyped) -> tuple[dict[str, float], dict[str, Shown]]:
    """The sheet's plain numbers. Errors: of ``read_typed``; ``order`` where they contradict."""
    values: dict[str, float] = {}
    said: dict[str, Shown] = {}
    for name, quantity in _NUMBERS.items():
        typed = getattr(fluid, name)
        if typed is not None:
            read = reader.read(typed, quantity, f"body.fluid.{name}")
            values[quantity], said[name] = read.value, read.shown
    strong_pct, weak_pct = values.get("strong_pct"), values.get("weak_pct")
    if strong_pct is not None and weak_pct is not None and weak_pct >= strong_pct:
        raise Fault("order", "body.fluid.weak", weak_pct, {"below": strong_pct, "unit": "%"})
    if fluid.target is not None:
        path = "body.fluid.target"
        target = read_target(reader, fluid.target, path)
        if target.low_pct >= target.high_pct:
            limit = {"below": target.high_pct, "unit": "%"}
            raise Fault("order", f"{path}.low", target.low_pct, limit)
        if not target.low_pct <= target.aim_pct <= target.high_pct:
            band = {"minimum": target.low_pct, "maximum": target.high_pct, "unit": "%"}
            raise Fault("order", f"{path}.aim", target.aim_pct, band)
        for side in ("low", "aim", "high"):
            values[f"{side}_pct"] = getattr(target, f"{side}_pct")
            said[side] = tidy(values[f"{side}_pct"], "%")
    if fluid.water_limits is not None:
        _, limits = read_limits(reader, fluid.water_limits, "body.fluid.water_limits")
        said.update({f"water_{side}": number for side, number in limits.items()})
    return values, said


def _moment(text: str | None, path: str) -> Moment | None:
    return None if text is None else moment_from(text, path)


def _drum(fluid: FluidTyped, today: Moment) -> DrumAge:
    path = "body.fluid"
    delivered = _moment(fluid.delivered_on, f"{path}.delivered_on")
    opened = _moment(fluid.opened_on, f"{path}.opened_on")
    return drum_age(delivered, opened, fluid.shelf_life_months, today, path)


def answer_read_fluid(body: ReadFluidBody) -> ReadFluidResult:
    """The record's numbers with what to take care of and what to doubt.

    Errors: ``neat_oil``; those of ``read_typed``, ``read_factor``, ``read_glass`` and
    ``moment_from``; ``order`` where two fields contradict each other.
    """
    reader, fluid = Reader(), body.fluid
    refuse_neat_oil(fluid, "body.fluid")
    today = moment_from(body.today, "body.today")
    glass = read_glass(reader, body.instrument, fluid, "body")
    factor, said = _factor_said(reader, body, glass)
    values, more = _numbers(reader, fluid)
    for name in ("titration_factor", "split_factor"):
        typed = getattr(fluid, name)
        if typed is not None:
            reader.value(typed, "second_factor", f"body.fluid.{name}")
    age = _drum(fluid, today)
    notes = glass.notes(body.today, "body.today")
    if factor is None:
        notes = ["no_factor", *notes]
    zero_age_d = glass.zero_age_d(body.today, "body.today")
    return ReadFluidResult(
        cautions=[*metal_cautions(fluid.metals, fluid.made_for_magnesium), *age.cautions],
        notes=notes,
        shown={**said, **more, **glass.shown},
        doubts=reader.doubts,
        factor=factor.factor if factor else None,
        offset_brix=factor.offset_brix if factor and factor.offset_brix else None,
        slopes=slopes_of(factor) or None if factor else None,
        drum=Drum(age.delivered_d, age.opened_d, age.best_before),
        zero_age_d=zero_age_d,
        **values,
    )
