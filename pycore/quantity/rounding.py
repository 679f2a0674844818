"""Rounding for people, and numbers ready to be shown in the unit of a tool."""

from __future__ import annotations

import math
from dataclasses import dataclass
from decimal import ROUND_HALF_UP, Context, Decimal
from fractions import Fraction

from pycore.quantity.units import UNITS, from_base


@dataclass(frozen=True)
class MixedFraction:
    """Whole part and reduced fraction, as on an inch rule."""

    whole: int
    numerator: int
    denominator: int


@dataclass(frozen=True)
class Shown:
    """A rounded number in the unit of a tool; the page adds the decimal sign and the space."""

    value: float
    decimals: int
    unit: str
    fraction: MixedFraction | None = None


# More decimals than any tool shows; the contract allows no more.
MOST_DECIMALS = 9
_PLACES = tuple(Decimal(1).scaleb(-decimals) for decimals in range(MOST_DECIMALS + 1))
# As many digits as the largest float has before its sign, and those behind it.
_EXACT = Context(prec=309 + MOST_DECIMALS)


def decimals_for(u: float, digits: int) -> int:
    """How many decimals keep ``digits`` significant digits of an uncertainty, never below 0.

    Rule: JCGM 100:2008, section 7.2.6 (u to at most two digits, the value to the same place).
    Valid: u > 0, digits 1 or 2. Error: ``ValueError`` else.

    >>> decimals_for(0.52, 2), decimals_for(0.52, 1), decimals_for(9.3, 1)
    (2, 1, 0)
    """
    if not (u > 0 and math.isfinite(u)) or digits not in (1, 2):
        raise ValueError(f"u must be above 0 and digits 1 or 2, got u {u} and digits {digits}")
    # The uncertainty's own rounding can carry it to the next power of ten: 0.096 becomes 0.10.
    exponent = int(f"{u:.{digits - 1}e}".split("e")[1])
    return min(max(0, digits - 1 - exponent), MOST_DECIMALS)


def half_up(value: float, decimals: int) -> float:
    """The value at so many decimals, halves away from zero, as people round.

    Valid: decimals 0 to MOST_DECIMALS. Error: ``ValueError`` for a value that is not finite.

    >>> half_up(2.5, 0), half_up(0.125, 2), half_up(-0.04, 1)
    (3.0, 0.13, 0.0)
    """
    if not math.isfinite(value):
        raise ValueError(f"value must be finite, got {value}")
    # repr gives the digits a person would see, so 1.005 rounds as written, not as stored.
    rounded = Decimal(repr(value)).quantize(_PLACES[decimals], ROUND_HALF_UP, _EXACT)
    # Adding zero takes the sign from a minus zero.
    return float(rounded) + 0.0


def settled(value: float) -> float:
    """A calculated value without the noise of its last bits: twelve significant digits.

    3.3 times 1.5 comes out as 4.949999999999999, and 5.0 beside 4.9 for one and the same sump is
    not believed. Twelve digits are what two computers agree on, so both show the same ones.
    Valid: any finite value.

    >>> settled(3.3 * 1.5), settled(-0.1 - 0.2)
    (4.95, -0.3)
    """
    return float(f"{value:.11e}")


def decimals_apart(value: float, decimals: int, edges: tuple[float, ...]) -> int:
    """At least so many decimals, and enough to show on which side of each edge the value lies.

    Valid: decimals 0 to MOST_DECIMALS; a value that cannot be told apart with these gets them all.

    >>> decimals_apart(6.975, 1, (7.0, 9.0)), decimals_apart(6.8, 1, (7.0, 9.0))
    (2, 1)
    """
    for enough in range(decimals, MOST_DECIMALS):
        rounded = half_up(value, enough)
        if all(
            (rounded > edge) - (rounded < edge) == (value > edge) - (value < edge) for edge in edges
        ):
            return enough
    return MOST_DECIMALS


def shown(base: float, unit: str, decimals: int) -> Shown:
    """A value in mm, L, °C, kg, %, Brix as a number of ``unit`` at so many decimals."""
    return Shown(half_up(settled(from_base(base, UNITS[unit])), decimals), decimals, unit)


def shown_with_u(base: float, u: float, unit: str, digits: int = 1) -> Shown:
    """A measured value rounded to where its uncertainty begins; three decimals when u is 0."""
    factor = float(UNITS[unit].factor)
    return shown(base, unit, decimals_for(u / factor, digits) if u > 0 else 3)


def tidy(base: float, unit: str, most_decimals: int = 3) -> Shown:
    """A set or counted amount with no more decimals than it needs: 8.5 L, 8 L, never 8.0 L.

    Millilitres from 1000 on are shown in litres.

    >>> tidy(8.5, "L").decimals, tidy(8.0, "L").decimals, tidy(1.5, "mL").unit
    (1, 0, 'L')
    """
    if unit == "mL" and base >= 1:
        unit = "L"
    value = from_base(base, UNITS[unit])
    for decimals in range(most_decimals):
        if math.isclose(half_up(value, decimals), value, abs_tol=1e-12):
            return Shown(half_up(value, decimals), decimals, unit)
    return Shown(half_up(value, most_decimals), most_decimals, unit)


def as_read(number: Fraction, unit: str, decimals: int | None) -> Shown:
    """A typed number shown back as it was read: 3.0 stays 3.0, a fraction stays one, reduced.

    ``decimals`` is how many were typed, None for a fraction of a rule.
    """
    if decimals is not None:
        return Shown(float(number), decimals, unit)
    whole, rest = divmod(number, 1)
    fraction = None
    if rest and whole >= 0:
        fraction = MixedFraction(whole, rest.numerator, rest.denominator)
    # A sixty-fourth has six decimals.
    return Shown(float(number), 6 if rest else 0, unit, fraction)


def on_rule(depth_mm: float, unit: str) -> Shown:
    """A depth as a stick shows it: whole millimetres, tenths of cm, sixteenths of an inch.

    >>> on_rule(69.85, "in").fraction
    MixedFraction(whole=2, numerator=3, denominator=4)
    """
    if unit == "in":
        sixteenths = int(half_up(settled(from_base(depth_mm, UNITS[unit]) * 16), 0))
        return as_read(Fraction(sixteenths, 16), unit, None)
    return shown(depth_mm, unit, {"mm": 0, "cm": 1, "m": 3, "ft": 2}[unit])
