"""pycore.quantity.rounding."""

import math
from fractions import Fraction

import pytest
from hypothesis import example, given
from hypothesis import strategies as st

from pycore.quantity.rounding import (
    MixedFraction,
    as_read,
    decimals_apart,
    decimals_for,
    half_up,
    on_rule,
    shown,
    shown_with_u,
    tidy,
)


@pytest.mark.parametrize(
    ("u", "digits", "decimals"),
    [
        (0.52, 2, 2),
        (0.52, 1, 1),
        (9.3, 1, 0),
        (0.096, 1, 1),
        (0.0095, 1, 3),
        (0.996, 2, 1),
        (320, 2, 0),
        # The contract allows nine decimals and no more.
        (1e-12, 2, 9),
    ],
)
def test_decimals_from_uncertainty(u: float, digits: int, decimals: int) -> None:
    # JCGM 100:2008, 7.2.6: at most two digits of u, the value to the same place; by hand.
    assert decimals_for(u, digits) == decimals


@pytest.mark.parametrize(
    ("u", "digits"), [(0.0, 1), (-1.0, 1), (float("nan"), 1), (float("inf"), 1), (0.1, 3), (0.1, 0)]
)
def test_decimals_refuses(u: float, digits: int) -> None:
    with pytest.raises(ValueError, match="u must be above 0"):
        decimals_for(u, digits)


@pytest.mark.parametrize(
    ("value", "decimals", "rounded"),
    [
        (2.5, 0, 3.0),
        (-2.5, 0, -3.0),
        (0.5, 0, 1.0),
        (0.125, 2, 0.13),
        (1.005, 2, 1.01),
        (-0.04, 1, 0.0),
        (8.44, 1, 8.4),
        (1e-7, 3, 0.0),
        (123456.5, 0, 123457.0),
    ],
)
def test_halves_go_away_from_zero(value: float, decimals: int, rounded: float) -> None:
    assert half_up(value, decimals) == rounded
    assert str(half_up(value, decimals)) != "-0.0"


def test_value_ends_where_its_uncertainty_begins() -> None:
    assert (shown_with_u(153.94, 9.3, "L").value, shown_with_u(153.94, 9.3, "L").decimals) == (
        154.0,
        0,
    )
    # 3.785411784 L with u 0.3785 L is 1.0 US gal with u 0.1.
    got = shown_with_u(3.785411784, 0.3785411784, "US gal")
    assert (got.value, got.decimals, got.unit) == (1.0, 1, "US gal")
    assert shown_with_u(1.23456, 0.0, "L").value == 1.235


@pytest.mark.parametrize(
    ("litres", "unit", "value", "decimals", "shown_unit"),
    [
        (8.5, "L", 8.5, 1, "L"),
        (8.0, "L", 8.0, 0, "L"),
        (0.6, "mL", 600.0, 0, "mL"),
        (1.5, "mL", 1.5, 1, "L"),
        (1.0, "mL", 1.0, 0, "L"),
        (0.12345, "L", 0.123, 3, "L"),
        # What subtraction leaves of nothing is nothing.
        (0.1 + 0.2 - 0.3, "L", 0.0, 0, "L"),
        (0.3 * 5, "L", 1.5, 1, "L"),
        (3.785411784 * 2.25, "US gal", 2.25, 2, "US gal"),
    ],
)
def test_amount_has_no_more_decimals_than_it_needs(
    litres: float, unit: str, value: float, decimals: int, shown_unit: str
) -> None:
    got = tidy(litres, unit)
    assert (got.value, got.decimals, got.unit) == (value, decimals, shown_unit)


def test_rule_shows_reduced_sixteenths() -> None:
    assert on_rule(69.85, "in").fraction == MixedFraction(2, 3, 4)
    assert on_rule(341.3125, "in").fraction == MixedFraction(13, 7, 16)
    assert on_rule(50.8, "in").fraction is None
    # 70.85 mm are 44.6 sixteenths: the nearest line is the 45th.
    assert on_rule(70.85, "in").fraction == MixedFraction(2, 13, 16)


@pytest.mark.parametrize(
    ("unit", "value", "decimals"),
    [("mm", 1235.0, 0), ("cm", 123.5, 1), ("m", 1.235, 3), ("ft", 4.05, 2)],
)
def test_stick_shows_whole_millimetres_or_about_as_much(
    unit: str, value: float, decimals: int
) -> None:
    # 1234.56 mm / 304.8 mm are 4.0504 ft.
    got = on_rule(1234.56, unit)
    assert (got.value, got.decimals) == (value, decimals)


def test_typed_fraction_stays_a_fraction() -> None:
    got = as_read(Fraction(215, 16), "in", None)
    assert got.fraction == MixedFraction(13, 7, 16)
    assert got.value == 13.4375
    assert as_read(Fraction(3, 4), "in", None).fraction == MixedFraction(0, 3, 4)


def test_fraction_has_the_decimals_of_a_sixty_fourth_beside_it() -> None:
    # 1/64 is 0.015625; whole inches need none, and a minus stands before a decimal number only.
    assert as_read(Fraction(1, 64), "in", None).decimals == 6
    assert as_read(Fraction(2), "in", None).decimals == 0
    below = as_read(Fraction(-7, 4), "Brix", None)
    assert (below.value, below.decimals, below.fraction) == (-1.75, 6, None)


def test_typed_decimals_stay() -> None:
    # 3.0 on a glass says more than 3: it was read to a tenth.
    assert as_read(Fraction(3), "Brix", 1).decimals == 1
    assert as_read(Fraction(3), "Brix", 1).fraction is None


def test_shown_in_a_unit() -> None:
    assert shown(20.0, "°F", 0).value == 68.0


def test_noise_of_the_last_bits_turns_no_half_down() -> None:
    """One sump was 5.0 % where it was read and 4.9 % where nothing was poured into it."""
    assert 3.3 * 1.5 < 4.95
    assert shown(3.3 * 1.5, "%", 1).value == 5.0
    assert shown(3.3 * 1.5 * 198 / 198, "%", 1).value == 5.0
    assert shown(-(3.3 * 1.5), "%", 1).value == -5.0
    # Twelve digits are kept: this is below the half.
    assert shown(4.94999999999, "%", 1).value == 4.9
    # 23.5 sixteenths of an inch, reached by a sum: the 24th line, as for the sum written out.
    depth_mm = 23.5 / 16 * 25.4
    assert on_rule(math.nextafter(depth_mm, 0), "in") == on_rule(depth_mm, "in")
    assert on_rule(depth_mm, "in").fraction == MixedFraction(1, 1, 2)


@pytest.mark.parametrize(
    ("value", "decimals", "band", "enough"),
    [
        (6.975, 1, (7.0, 9.0), 2),
        (6.97, 1, (7.0, 9.0), 2),
        (6.94, 1, (7.0, 9.0), 1),
        (7.0, 1, (7.0, 9.0), 1),
        (9.0, 0, (7.0, 9.0), 0),
        (9.004, 0, (7.0, 9.0), 3),
        # Inside, on the edge itself: as much as an instrument can tell, and no more.
        (7.005, 1, (7.0, 9.0), 1),
        (8.996, 1, (7.0, 9.0), 1),
        (9.6, 0, (7.0, 9.0), 0),
        (5.0, 2, None, 2),
        (7.0 - 1e-12, 0, (7.0, 9.0), 9),
    ],
)
def test_decimals_that_show_the_side_of_an_edge(
    value: float, decimals: int, band: tuple[float, float] | None, enough: int
) -> None:
    assert decimals_apart(value, decimals, band) == enough


@given(st.floats(allow_nan=False, allow_infinity=False), st.integers(0, 9))
@example(1.7976931348623157e308, 9)
@example(5e-324, 9)
@example(-1.005, 2)
def test_half_up_is_exact_for_every_float(value: float, decimals: int) -> None:
    """By fractions of whole numbers: the digits as written, halves away from zero."""
    scaled = Fraction(repr(value)) * 10**decimals
    whole = math.floor(abs(scaled) + Fraction(1, 2))
    wanted = float(Fraction(whole if scaled >= 0 else -whole, 10**decimals))
    rounded = half_up(value, decimals)
    assert rounded == wanted
    assert math.copysign(1, rounded) == math.copysign(1, wanted)


@pytest.mark.parametrize("value", [math.nan, math.inf, -math.inf])
def test_half_up_refuses_what_is_not_finite(value: float) -> None:
    with pytest.raises(ValueError, match="must be finite"):
        half_up(value, 1)
