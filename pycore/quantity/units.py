"""Exact units of length, volume, temperature, mass and what else stands on a sheet.

Factors are exact fractions, so a number that was typed in any unit becomes the nearest
float of the true value and no second rounding creeps in.

Sources: inch, foot and pound: NIST SP 811 (2008), appendix B.8; US gallon = 231 cubic inches,
with its quart, pint and fluid ounce as 1/4, 1/8 and 1/128: NIST Handbook 44, appendix C;
imperial gallon = 4.546 09 L, fluid ounce 1/160: NIST SP 811, appendix B.8, and Handbook 44,
appendix C; Fahrenheit: NIST SP 811, appendix B.8. Hardness as calcium carbonate: the German degree
is 10 mg of calcium oxide in a litre, the French one 10 mg of calcium carbonate (definitions), the
grain per US gallon 64.798 91 mg in 231 cubic inches (NIST SP 811, appendix B.8); molar masses
CaCO₃ 100.0869 and CaO 56.0774 g/mol from the standard atomic weights (IUPAC 2005).
"""

from __future__ import annotations

import math
import re
from dataclasses import dataclass
from fractions import Fraction

from pycore.quantity.fault import Fault

_INCH_MM = Fraction(254, 10)
_US_GALLON_L = 231 * _INCH_MM**3 / 10**6
_IMPERIAL_GALLON_L = Fraction(454609, 100000)
_POUND_KG = Fraction(45359237, 100000000)
_GRAIN_MG = Fraction(6479891, 100000)
_CACO3_G_MOL = Fraction(1000869, 10000)
_CAO_G_MOL = Fraction(560774, 10000)


@dataclass(frozen=True)
class Unit:
    """A unit as a straight line to its dimension's base unit: base = factor × number + offset."""

    name: str
    dimension: str
    factor: Fraction
    offset: Fraction = Fraction(0)
    customary: bool = False


_ALL = (
    Unit("mm", "length", Fraction(1)),
    Unit("cm", "length", Fraction(10)),
    Unit("m", "length", Fraction(1000)),
    Unit("in", "length", _INCH_MM, customary=True),
    Unit("ft", "length", 12 * _INCH_MM, customary=True),
    Unit("L", "volume", Fraction(1)),
    Unit("mL", "volume", Fraction(1, 1000)),
    Unit("US gal", "volume", _US_GALLON_L, customary=True),
    Unit("US qt", "volume", _US_GALLON_L / 4, customary=True),
    Unit("US pt", "volume", _US_GALLON_L / 8, customary=True),
    Unit("US fl oz", "volume", _US_GALLON_L / 128, customary=True),
    Unit("imp gal", "volume", _IMPERIAL_GALLON_L, customary=True),
    Unit("imp qt", "volume", _IMPERIAL_GALLON_L / 4, customary=True),
    Unit("imp pt", "volume", _IMPERIAL_GALLON_L / 8, customary=True),
    Unit("imp fl oz", "volume", _IMPERIAL_GALLON_L / 160, customary=True),
    Unit("°C", "temperature", Fraction(1)),
    Unit("°F", "temperature", Fraction(5, 9), Fraction(-160, 9), customary=True),
    Unit("kg", "mass", Fraction(1)),
    Unit("lb", "mass", _POUND_KG, customary=True),
    Unit("%", "strength", Fraction(1)),
    Unit("Brix", "brix", Fraction(1)),
    Unit("nD", "refractive index", Fraction(1)),
    Unit("mg/L", "concentration", Fraction(1)),
    Unit("mg/L CaCO₃", "hardness", Fraction(1)),
    Unit("°dH", "hardness", 10 * _CACO3_G_MOL / _CAO_G_MOL),
    Unit("°fH", "hardness", Fraction(10)),
    Unit("gpg", "hardness", _GRAIN_MG / _US_GALLON_L, customary=True),
    Unit("mmol/L", "hardness", _CACO3_G_MOL),
    Unit("CFU/mL", "germs", Fraction(1)),
    Unit("kg/L", "density", Fraction(1)),
    Unit("lb/US gal", "density", _POUND_KG / _US_GALLON_L, customary=True),
    Unit("1", "plain", Fraction(1)),
)

UNITS: dict[str, Unit] = {unit.name: unit for unit in _ALL}

_WORDS = {
    "mm": ("millimetre", "millimeter"),
    "cm": ("centimetre", "centimeter"),
    "m": ("metre", "meter"),
    "in": ("inch",),
    "ft": ("foot",),
    "L": ("litre", "liter"),
    "mL": ("millilitre", "milliliter"),
}
# In the US and in Britain two sizes under one name.
_OF_TWO_SIZES = {
    "gal": ("gal", "gals", "gallon", "gallons"),
    "qt": ("qt", "qts", "quart", "quarts"),
    "pt": ("pt", "pts", "pint", "pints"),
    "fl oz": ("fl oz", "fluid ounce", "fluid ounces"),
}


def _spaced(spelling: str) -> list[str]:
    """A space between two words of a unit may be left out; one inside a word is another word."""
    first, *more = spelling.split()
    found = [first]
    for word in more:
        found = [start + gap + word for start in found for gap in (" ", "")]
    return found


def _spellings() -> dict[str, str]:
    """Every spelling in lower case, and the unit that it means."""
    found = {unit.name.lower(): unit.name for unit in _ALL if unit.name != "1"}
    for name, words in _WORDS.items():
        found |= dict.fromkeys(words, name) | {f"{word}s": name for word in words}
    found |= {"inches": "in", "feet": "ft", '"': "in", "″": "in", "'": "ft", "′": "ft"}
    for system in ("US", "imp"):
        for name, words in _OF_TWO_SIZES.items():
            found |= {f"{system} {word}".lower(): f"{system} {name}" for word in words}
    found |= {"° bx": "Brix", "° brix": "Brix", "° c": "°C", "° f": "°F", "° dh": "°dH"}
    return {spaced: name for spelling, name in found.items() for spaced in _spaced(spelling)}


_SPELLINGS = _spellings()
# Spellings that mean two units: refused by name instead of being guessed.
_AMBIGUOUS = {
    spaced: (f"US {name}", f"imp {name}")
    for name, words in _OF_TWO_SIZES.items()
    for word in (*words, *(("oz", "ounce", "ounces") if name == "fl oz" else ()))
    for spaced in _spaced(word)
}
# The full stop of an abbreviation ends a word.
_STOP = re.compile(r"(?<=\w)\.(?= |$)")


def names_of(dimension: str) -> list[str]:
    """Names of all units of a dimension, such as length, volume, hardness or density."""
    return [unit.name for unit in _ALL if unit.dimension == dimension]


def unit_named(spelling: str, dimension: str, path: str) -> Unit:
    """The unit that a person means by a spelling, never guessed.

    ``dimension`` names the units that the refusal offers; another dimension's unit is returned
    all the same, so that the caller can say what is wrong with it.
    Errors: ``ambiguous_unit`` for a bare gallon, quart, pint or ounce, ``unknown_unit`` else.

    >>> unit_named("us gal", "volume", "unit").name
    'US gal'
    >>> unit_named("gal", "volume", "unit")  # doctest: +ELLIPSIS
    Traceback (most recent call last):
    pycore.quantity.fault.Fault: unit: this unit means more than one thing; got 'gal'; ...
    """
    key = _STOP.sub("", " ".join(spelling.split()).lower())
    meanings = _AMBIGUOUS.get(key)
    if meanings is not None:
        raise Fault("ambiguous_unit", path, spelling, {"allowed": list(meanings)})
    if key in _SPELLINGS:
        return UNITS[_SPELLINGS[key]]
    raise Fault("unknown_unit", path, spelling, {"allowed": names_of(dimension)})


def to_base(number: Fraction, unit: Unit) -> Fraction:
    """A number in ``unit`` as an exact number of its dimension's base unit, such as mm or L.

    >>> float(to_base(Fraction(11, 4), UNITS["in"]))
    69.85
    """
    return number * unit.factor + unit.offset


def from_base(base: float, unit: Unit) -> float:
    """A number in a dimension's base unit (mm, L, °C, kg, mg/L …) in ``unit``, correctly rounded.

    Errors: ``OverflowError`` or ``ValueError`` for a number that is not finite.

    >>> from_base(3.785411784, UNITS["US fl oz"])
    128.0
    """
    if unit.factor == 1 and not unit.offset and math.isfinite(base):
        return float(base)
    return float((Fraction(base) - unit.offset) / unit.factor)
