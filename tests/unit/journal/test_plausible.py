"""pycore.journal.plausible: by hand; the shares are common practice, no source."""

import math

import pytest

from pycore.journal.plausible import WATER_ONLY, Before, Range, near_aim, plausible
from pycore.journal.recheck import Went
from pycore.journal.times import DAY_S
from pycore.quantity.measured import Measured

NOTHING = Went(0.0, 0.0, 0.0)
NONE: frozenset[str] = frozenset()


def after(
    went: Went = NOTHING, days: float = 0.0, lost_l: float = 0.0, unknown: frozenset[str] = NONE
) -> Range:
    """Of 4.0 Brix without an error in 100 of 200 L, neat concentrate at 60 Brix."""
    before = Before(Measured(4.0, 0.0), 100.0, days * DAY_S)
    return plausible(before, went, 60.0, 200.0, lost_l, 0.2, unknown)


def test_a_fifth_either_way_is_never_asked_about() -> None:
    found = after()
    assert (found.low_brix, found.high_brix) == (pytest.approx(3.2), pytest.approx(4.8))
    assert found.holds(3.2)
    assert found.holds(4.8)
    assert not found.holds(3.1)


def test_evaporation_makes_stronger_and_age_widens() -> None:
    # 20 of 100 L gone: 5.0 Brix and a fifth. Three days of 0.2 Brix down.
    found = after(days=3, lost_l=20.0)
    assert found.high_brix == pytest.approx(6.0)
    assert found.low_brix == pytest.approx(3.2 - 0.6)
    # A week, and no more: a month would let everything pass.
    assert after(days=30).low_brix == after(days=7).low_brix == pytest.approx(1.8)


def test_what_was_poured_moves_the_range() -> None:
    # 98 L water and 2 L concentrate: (400 + 120) / 200 = 2.6 Brix.
    found = after(Went(0.0, 98.0, 2.0))
    assert found.expected_brix == pytest.approx(2.6)
    # 50 L out at 4.0, 50 L water in: 2.0 Brix.
    assert after(Went(50.0, 50.0, 0.0)).expected_brix == pytest.approx(2.0)


def test_what_nobody_wrote_down_widens() -> None:
    water = after(unknown=frozenset({"water"}))
    # Filled up to 200 L with water: half of it. Water makes nothing stronger.
    assert (water.low_brix, water.high_brix) == (pytest.approx(1.6), pytest.approx(4.8))
    assert math.isinf(after(unknown=frozenset({"mix"})).high_brix)
    # A sump that is over its full mark already leaves no room for more water.
    fuller = Went(0.0, 150.0, 0.0)
    assert after(fuller, unknown=WATER_ONLY).low_brix == after(fuller).low_brix
    assert after(fuller).low_brix == pytest.approx(1.28)


def test_no_reading_is_asked_about_for_being_above_nothing() -> None:
    week = Before(Measured(1.0, 0.0), 100.0, 7 * DAY_S)
    assert plausible(week, NOTHING, 60.0, 200.0, 0.0, 0.2, NONE).low_brix == 0.0


def test_its_own_uncertainty_widens_to_both_sides() -> None:
    # Coverage factor 2: JCGM 100:2008, 6.3.3.
    found = plausible(Before(Measured(4.0, 0.1), 100.0, 0.0), NOTHING, 60.0, 200.0, 0.0, 0.2, NONE)
    assert (found.low_brix, found.high_brix) == (pytest.approx(3.0), pytest.approx(5.0))


def test_a_decimal_sign_in_the_wrong_place_is_named() -> None:
    found = after()
    assert (found.slip(0.4), found.slip(40.0)) == (4.0, 4.0)
    assert found.slip(4.0) is None
    assert found.slip(9.0) is None
    # No digit of the float's own: 3.9 and 3.23, not 3.9000000000000004 nor 3.2299999999999995.
    assert (found.slip(0.39), found.slip(32.3)) == (3.9, 3.23)
    # What is plausible itself is no slip, even where another place of the sign would be too.
    assert Range(0.3, 4.5, 4.0).slip(4.0) is None


def test_more_than_half_of_a_sump_never_evaporates() -> None:
    assert after(lost_l=100.0).high_brix == pytest.approx(9.6)


def test_a_first_reading_lies_between_half_and_twice_the_aim() -> None:
    found = near_aim(5.0)
    assert found.holds(2.5)
    assert found.holds(10.0)
    assert not found.holds(2.4)
    assert not found.holds(10.1)
