"""Units against pint, an independent library (US and imperial names by its own registry)."""

from fractions import Fraction

import pint
import pytest
from hypothesis import given
from hypothesis import strategies as st

from pycore.quantity.typed import read_typed
from pycore.quantity.units import UNITS, from_base, to_base
from tests.properties.asking import ask

REGISTRY = pint.UnitRegistry()
# pint's own gallon, quart, pint and fluid ounce are the US ones.
NAMES = {
    "mm": "millimeter", "cm": "centimeter", "m": "meter", "in": "inch", "ft": "foot",
    "L": "liter", "mL": "milliliter", "US gal": "gallon", "US qt": "quart", "US pt": "pint",
    "US fl oz": "fluid_ounce", "imp gal": "imperial_gallon", "imp qt": "imperial_quart",
    "imp pt": "imperial_pint", "imp fl oz": "imperial_fluid_ounce", "°C": "degC", "°F": "degF",
    "kg": "kilogram", "lb": "pound",
}  # fmt: skip
BASES = {"length": "mm", "volume": "L", "temperature": "°C", "mass": "kg"}


def test_every_unit_with_a_dimension_is_compared() -> None:
    assert set(NAMES) == {name for name, unit in UNITS.items() if unit.dimension in BASES}


@pytest.mark.parametrize("name", NAMES)
@given(st.floats(0.001, 1e6))
def test_same_as_pint(name: str, number: float) -> None:
    base = NAMES[BASES[UNITS[name].dimension]]
    theirs = REGISTRY.Quantity(number, NAMES[name]).to(base).magnitude
    ours = float(to_base(Fraction(number), UNITS[name]))
    # pint counts in floats: relative 1e-12, and 1e-9 °C where an offset cancels.
    assert ours == pytest.approx(theirs, rel=1e-12, abs=1e-9 if name == "°F" else 0)


@pytest.mark.parametrize("name", UNITS)
@given(st.floats(-1e9, 1e9))
def test_round_trip(name: str, number: float) -> None:
    exact = to_base(Fraction(number), UNITS[name])
    # Two roundings of a float, each 2⁻⁵³ of the base value; below 1e-300 floats lose digits.
    slack = abs(float(exact)) * 2.3e-16 / float(UNITS[name].factor) + 1e-300
    assert from_base(float(exact), UNITS[name]) == pytest.approx(number, rel=2.3e-16, abs=slack)


# Four decimals: with three the sign might part thousands.
@given(st.decimals(0, 5000, places=4, allow_nan=False, allow_infinity=False))
def test_comma_and_point_are_the_same(number: object) -> None:
    point = str(number)
    comma = point.replace(".", ",")
    values = [read_typed(text, "mm", "depth_mm", "x").value for text in (point, comma)]
    assert values[0] == values[1] == float(point)


@given(st.integers(0, 150), st.integers(1, 6), st.data())
def test_fractions_of_a_rule(whole: int, power: int, data: st.DataObject) -> None:
    bottom = 2**power
    top = data.draw(st.integers(1, bottom - 1))
    body = {"text": f"{whole} {top}/{bottom}", "unit": "in", "quantity": "depth_mm"}
    got = ask("read_quantity", body)
    assert got["value"] == pytest.approx((whole + top / bottom) * 25.4, rel=1e-15)
    shown = got["read_as"]["fraction"]
    assert Fraction(shown["numerator"], shown["denominator"]) == Fraction(top, bottom)
    assert shown["whole"] == whole
