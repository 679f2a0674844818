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
    # NIST SP 811, appendix B.8: a pound is 0.453 592 37 kg exactly.
    assert UNITS["lb"].factor == Fraction(45359237, 10**8)


@pytest.mark.parametrize("system", ["US", "imp"])
def test_gallon_has_four_quarts_and_eight_pints(system: str) -> None:
    # NIST Handbook 44, appendix C.
    gallon_l = UNITS[f"{system} gal"].factor
    assert gallon_l == 4 * UNITS[f"{system} qt"].factor == 8 * UNITS[f"{system} pt"].factor


@pytest.mark.parametrize(
    ("name", "factor"),
    [
        ("mm", Fraction(1)),
        ("cm", Fraction(10)),
        ("m", Fraction(1000)),
        ("L", Fraction(1)),
        ("mL", Fraction(1, 1000)),
        ("°C", Fraction(1)),
        ("kg", Fraction(1)),
        ("%", Fraction(1)),
        ("Brix", Fraction(1)),
        ("1", Fraction(1)),
    ],
)
def test_metric_units_are_powers_of_ten_of_the_base_unit(name: str, factor: Fraction) -> None:
    # Prefixes of the SI: NIST SP 811 (2008), table 5.
    assert (UNITS[name].factor, UNITS[name].offset) == (factor, 0)
    assert not UNITS[name].customary


def test_inches_gallons_pounds_grains_and_fahrenheit_are_customary() -> None:
    # NIST SP 811, appendix B.8, converts each of these to the SI; NIST Handbook 44, appendix C.
    assert [unit.name for unit in UNITS.values() if unit.customary] == [
        "in", "ft", "US gal", "US qt", "US pt", "US fl oz", "imp gal", "imp qt", "imp pt",
        "imp fl oz", "°F", "lb", "gpg", "lb/US gal",
    ]  # fmt: skip


def test_imperial_ounce_is_smaller_though_the_gallon_is_larger() -> None:
    # NIST Handbook 44, appendix C: the imperial gallon has 160 fluid ounces, the US one 128.
    assert UNITS["imp gal"].factor > UNITS["US gal"].factor
    assert UNITS["imp fl oz"].factor < UNITS["US fl oz"].factor


@pytest.mark.parametrize(
    ("spelling", "name"),
    [("us gal", "US gal"), ("US  GAL", "US gal"), ("IMP GAL", "imp gal"), ("ml", "mL"), ('"', "in"),
     ("Inches", "in"), ("litres", "L"), ("°bx", "Brix"), ("Brix", "Brix"), ("°C", "°C"),
     ("″", "in"), ("inch", "in"), ("'", "ft"), ("′", "ft"), ("litre", "L"), ("Liter", "L"),
     ("liters", "L"), ("US gallon", "US gal"), ("US gallons", "US gal"), ("imp gallon", "imp gal"),
     ("imp gallons", "imp gal"), ("°Brix", "Brix")],
)  # fmt: skip
def test_spelling(spelling: str, name: str) -> None:
    assert unit_named(spelling, "volume", "here").name == name


@pytest.mark.parametrize(
    "spelling", ["m m", "c m", "i n", "g al", "m L", "in..", ".in", "in . ", "l b"]
)
def test_space_inside_a_word_makes_another_word(spelling: str) -> None:
    with pytest.raises(Fault) as caught:
        unit_named(spelling, "length", "here")
    assert caught.value.code == "unknown_unit"


@pytest.mark.parametrize(
    "spelling", ["US gal.", "us  gal", "USgal", "US gallons", "us\u00a0gallon"]
)
def test_us_gallon_is_spelled_in_many_ways(spelling: str) -> None:
    assert unit_named(spelling, "volume", "here").name == "US gal"


@pytest.mark.parametrize("spelling", ["imp fl. oz.", "impfloz", "imp floz", "Imp fluid ounces"])
def test_fluid_ounce_of_two_words(spelling: str) -> None:
    assert unit_named(spelling, "volume", "here").name == "imp fl oz"


def test_unknown_unit_names_the_known_ones() -> None:
    with pytest.raises(Fault) as caught:
        unit_named("cubit", "length", "here")
    assert caught.value.code == "unknown_unit"
    assert caught.value.limit["allowed"] == ["mm", "cm", "m", "in", "ft"]


def test_one_is_no_unit_that_a_person_types() -> None:
    with pytest.raises(Fault) as caught:
        unit_named("1", "plain", "here")
    assert caught.value.code == "unknown_unit"


def test_names_of_a_dimension() -> None:
    assert names_of("temperature") == ["°C", "°F"]
    assert names_of("volume") == [
        "L", "mL", "US gal", "US qt", "US pt", "US fl oz", "imp gal", "imp qt", "imp pt",
        "imp fl oz",
    ]  # fmt: skip
    assert names_of("mass") == ["kg", "lb"]
    assert (names_of("strength"), names_of("brix"), names_of("plain")) == (["%"], ["Brix"], ["1"])
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
