"""The operation read_water: mixing water as typed, its hardness in every unit."""

from __future__ import annotations

from pycore.desk.contract.answers import Hardness, ReadWaterResult
from pycore.desk.contract.reader import Reader, placed
from pycore.desk.contract.records import ReadWaterBody, WaterLimitsTyped, WaterTyped
from pycore.quantity.fault import Fault
from pycore.quantity.rounding import Shown, shown
from pycore.quantity.typed import Reading
from pycore.reading.water import HARDNESS_UNITS, hardness_in_units, water_cautions

# Decimals that a test strip or a laboratory sheet has in each unit.
_DECIMALS = {"mg/L CaCO₃": 0, "°dH": 1, "°fH": 1, "gpg": 1, "mmol/L": 2}


def read_limits(
    reader: Reader, typed: WaterLimitsTyped, path: str
) -> tuple[tuple[float, float], dict[str, Shown]]:
    """Both limits in mg/L of calcium carbonate, and as typed. Error: ``order``."""
    low = reader.read(typed.low, "hardness_mg_l", f"{path}.low")
    high = reader.read(typed.high, "hardness_mg_l", f"{path}.high")
    if low.value >= high.value:
        fault = Fault(
            "order", f"{path}.low", low.value, {"below": high.value, "unit": "mg/L CaCO₃"}
        )
        raise placed(fault, f"{path}.low", low.unit.name)
    return (low.value, high.value), {"low": low.shown, "high": high.shown}


# Field of the water, and the quantity it is read as.
_NUMBERS = {
    "hardness": "hardness_mg_l",
    "chloride": "chloride_mg_l",
    "nitrate": "nitrate_mg_l",
}


def read_water_numbers(reader: Reader, water: WaterTyped, path: str) -> dict[str, Reading]:
    """What was given of the water, in mg/L, by the field's name. Errors: of ``read_typed``."""
    given = {name: getattr(water, name) for name in _NUMBERS}
    return {
        name: reader.read(typed, _NUMBERS[name], f"{path}.{name}")
        for name, typed in given.items()
        if typed is not None
    }


def answer_read_water(body: ReadWaterBody) -> ReadWaterResult:
    """The water's numbers, and what to take care of. Errors: those of ``read_typed``, ``order``."""
    reader, water = Reader(), body.water
    limits: tuple[float, float] | None = None
    said: dict[str, Shown] = {}
    if body.limits is not None:
        limits, said = read_limits(reader, body.limits, "body.limits")
    read = read_water_numbers(reader, water, "body.water")
    values = {name: number.value for name, number in read.items()}
    said.update({name: read[name].shown for name in ("chloride", "nitrate") if name in read})
    hardness, hardness_mg_l = None, values.get("hardness")
    if hardness_mg_l is not None:
        units = [shown(hardness_mg_l, unit, _DECIMALS[unit]) for unit in HARDNESS_UNITS.values()]
        hardness = Hardness(**hardness_in_units(hardness_mg_l), shown=units)
    return ReadWaterResult(
        kind=water.kind,
        cautions=water_cautions(
            water.kind, hardness_mg_l, values.get("chloride"), values.get("nitrate"), limits
        ),
        shown=said,
        doubts=reader.doubts,
        hardness=hardness,
        chloride_mg_l=values.get("chloride"),
        nitrate_mg_l=values.get("nitrate"),
        scheme=body.limits.scheme if body.limits else None,
    )
