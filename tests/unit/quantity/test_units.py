"""pycore.quantity.units. Factors are checked against published ones in tests/published."""

from fractions import Fraction

import pytest

from pycore.quantity.fault import Fault
from pycore.quantity.units import UNITS, from_base, names_of, to_base, unit_named


def test_factors_are_exact() -> None:
    # NIST Handbook 44, appendix C: 231 cubic inches, exactly; SP 811, appendix B.8: 25.4 mm.
    assert UNITS["US gal"].factor == Fraction(3785411784, 10**9)
    assert UNITS["imp fl oz"].factor == Fraction(454609, 100000) / 160
    assert UNITS["ft"].factor == Fraction(3048, 10)


def test_imperial_ounce_is_smaller_though_the_gallon_is_larger() -> None:
    # NIST Handbook 44, appendix C: the imperial gallon has 160 fluid ounces, the US one 128.
    assert UNITS["imp gal"].factor > UNITS["US gal"].factor
    assert UNITS["imp fl oz"].factor < UNITS["US fl oz"].factor


@pytest.mark.parametrize(
    ("spelling", "name"),
    [("us gal", "US gal"), ("US  GAL", "US gal"), ("IMP GAL", "imp gal"), ("ml", "mL"), ('"', "in"),
     ("Inches", "in"), ("litres", "L"), ("°bx", "Brix"), ("Brix", "Brix"), ("°C", "°C")],
)  # fmt: skip
def test_spelling(spelling: str, name: str) -> None:
    assert unit_named(spelling, "volume", "here").name == name


@pytest.mark.parametrize("spelling", ["gal", "Gallons", "qt", "pints", "oz", "fl oz", "oz."])
def test_bare_gallon_and_ounce_are_refused_with_both_meanings(spelling: str) -> None:
    with pytest.raises(Fault) as caught:
        unit_named(spelling, "volume", "here")
    assert caught.value.code == "ambiguous_unit"
    assert [name.split()[0] for name in caught.value.limit["allowed"]] == ["US", "imp"]


def test_unknown_unit_names_the_known_ones() -> None:
    with pytest.raises(Fault) as caught:
        unit_named("cubit", "length", "here")
    assert caught.value.code == "unknown_unit"
    assert caught.value.limit["allowed"] == ["mm", "cm", "m", "in", "ft"]


def test_names_of_a_dimension() -> None:
    assert names_of("temperature") == ["°C", "°F"]
    assert names_of("nothing") == []


def test_fahrenheit_has_an_offset() -> None:
    # (°F - 32)/1.8: 68 °F is 20 °C exactly.
    assert to_base(Fraction(68), UNITS["°F"]) == 20
    assert from_base(-40.0, UNITS["°F"]) == -40.0


def test_not_finite_is_an_error() -> None:
    with pytest.raises((OverflowError, ValueError)):
        from_base(float("inf"), UNITS["L"])
    with pytest.raises(ValueError, match="NaN"):
        from_base(float("nan"), UNITS["L"])
