"""pycore.quantity.units: every factor beside the published one, exact by definition."""

from fractions import Fraction

import pytest

from pycore.quantity.units import UNITS, Unit, from_base, names_of, unit_named

DIMENSIONS = {
    "length": ["mm", "cm", "m", "in", "ft"],
    "volume": ["L", "mL", "US gal", "US qt", "US pt", "US fl oz",
               "imp gal", "imp qt", "imp pt", "imp fl oz"],
    "temperature": ["°C", "°F"],
    "mass": ["kg", "lb"],
    "strength": ["%"],
    "brix": ["Brix"],
    "refractive index": ["nD"],
    "concentration": ["mg/L"],
    "hardness": ["mg/L CaCO₃", "°dH", "°fH", "gpg", "mmol/L"],
    "germs": ["CFU/mL"],
    "density": ["kg/L", "lb/US gal"],
    "plain": ["1"],
}  # fmt: skip


@pytest.mark.parametrize("dimension", DIMENSIONS)
def test_units_of_every_dimension(dimension: str) -> None:
    assert names_of(dimension) == DIMENSIONS[dimension]
    assert {UNITS[name].dimension for name in DIMENSIONS[dimension]} == {dimension}


def test_no_unit_stands_outside_of_these_dimensions() -> None:
    assert list(UNITS) == [name for names in DIMENSIONS.values() for name in names]


@pytest.mark.parametrize(
    ("name", "factor"),
    [
        # NIST SP 811 (2008), appendix B.8, in bold there since exact.
        ("in", "25.4"),
        ("ft", "304.8"),
        ("lb", "0.45359237"),
        ("imp gal", "4.54609"),
        # NIST Handbook 44, appendix C: 231 cubic inches, 4 quarts, 8 pints, 128 fluid ounces.
        ("US gal", "3.785411784"),
        ("US qt", "0.946352946"),
        ("US pt", "0.473176473"),
        ("US fl oz", "0.0295735295625"),
        # The same appendix: 4 quarts, 8 pints, 160 fluid ounces of 4.546 09 L.
        ("imp qt", "1.1365225"),
        ("imp pt", "0.56826125"),
        ("imp fl oz", "0.0284130625"),
        # 10 mg of calcium carbonate in a litre; one millimole of it (IUPAC 2005: 100.0869 g/mol).
        ("°fH", "10"),
        ("mmol/L", "100.0869"),
        # One part in the base unit, by name.
        ("nD", "1"),
        ("mg/L", "1"),
        ("mg/L CaCO₃", "1"),
        ("CFU/mL", "1"),
        ("kg/L", "1"),
    ],
)
def test_factor_is_the_published_one(name: str, factor: str) -> None:
    assert UNITS[name].factor == Fraction(factor)
    assert UNITS[name].offset == 0


def test_factors_that_are_quotients_of_published_ones() -> None:
    # NIST SP 811, appendix B.8: a grain is 64.798 91 mg; per US gallon 1.711 806 E+01 mg/L.
    assert UNITS["gpg"].factor == Fraction("64.79891") / Fraction("3.785411784")
    assert float(UNITS["gpg"].factor) == pytest.approx(17.11806, abs=5e-6)
    # The same appendix: a pound per US gallon is 1.198 264 E+02 kg/m³.
    assert UNITS["lb/US gal"].factor == Fraction("0.45359237") / Fraction("3.785411784")
    assert float(UNITS["lb/US gal"].factor) == pytest.approx(0.1198264, abs=5e-8)
    # 10 mg CaO as CaCO₃ with the molar masses of IUPAC 2005.
    assert UNITS["°dH"].factor == 10 * Fraction("100.0869") / Fraction("56.0774")


@pytest.mark.parametrize("name", [name for name in UNITS if name != "1"])
def test_every_unit_is_known_by_its_own_name(name: str) -> None:
    assert unit_named(name, "any", "here").name == name


@pytest.mark.parametrize(
    ("word", "name"),
    [("millimetre", "mm"), ("millimeter", "mm"), ("centimetre", "cm"), ("centimeter", "cm"),
     ("metre", "m"), ("meter", "m"), ("litre", "L"), ("liter", "L"), ("millilitre", "mL"),
     ("milliliter", "mL")],
)  # fmt: skip
def test_metric_words_have_two_spellings_and_a_plural(word: str, name: str) -> None:
    assert (
        unit_named(word, "any", "here").name == unit_named(f"{word}s", "any", "here").name == name
    )


@pytest.mark.parametrize(
    ("spelling", "name"),
    [("inch", "in"), ("inches", "in"), ('"', "in"), ("″", "in"), ("foot", "ft"), ("feet", "ft"),
     ("'", "ft"), ("′", "ft"), ("° bx", "Brix"), ("°Bx", "Brix"), ("° Brix", "Brix"),
     ("°Brix", "Brix"), ("° C", "°C"), ("° F", "°F"), ("° dH", "°dH")],
)  # fmt: skip
def test_signs_and_degrees(spelling: str, name: str) -> None:
    assert unit_named(spelling, "any", "here").name == name


def test_straight_line_of_any_unit_is_followed_back() -> None:
    # Kelvin (SI Brochure, 2.3.1) has factor 1 and an offset; a pair is a factor without one.
    kelvin = Unit("K", "temperature", Fraction(1), Fraction("-273.15"))
    assert from_base(20.0, kelvin) == 293.15
    assert from_base(8.0, Unit("pair", "plain", Fraction(2))) == 4.0


@pytest.mark.parametrize("name", ["L", "mm", "°C", "kg", "%"])
def test_base_unit_shows_the_number_as_it_is(name: str) -> None:
    assert from_base(12.5, UNITS[name]) == 12.5
