"""pycore.journal.recheck: expected against found, by C1·V1 = C2·V2 worked by hand."""

import math

import pytest

from pycore.journal.recheck import Dip, Went, compared, dip_of, level_compared
from pycore.quantity.measured import Measured
from pycore.recipe.outlook import VESSEL_U_SHARE
from pycore.recipe.request import SumpState

# 154 L at 6 % with 37 L of water and 6.7 L of concentrate: (9.24 + 6.7) / 197.7 = 8.0627 %.
WENT = Went(0.0, 37.0, 6.7)
EXPECTED_PCT = 100 * (154 * 0.06 + 6.7) / (154 + 37 + 6.7)


def sump(volume_u_l: float = 4.6, strength_u_pct: float = 0.3) -> SumpState:
    return SumpState(Measured(154.0, volume_u_l), Measured(6.0, strength_u_pct))


def test_expected_is_the_balance_by_hand() -> None:
    got = compared(sump(), WENT, Measured(8.0, 0.3), 0.0)
    assert got.expected_pct.value == pytest.approx(EXPECTED_PCT)
    assert got.expected_l.value == pytest.approx(197.7)
    assert got.difference_pct.value == pytest.approx(8.0 - EXPECTED_PCT)
    assert got.verdict == "as_expected"
    assert (got.checks, got.implied_l) == ([], None)


def test_what_was_taken_out_leaves_at_the_sumps_own_strength() -> None:
    got = compared(sump(), Went(20.0, 37.0, 6.7), Measured(8.0, 0.3), 0.0)
    by_hand_pct = 100 * (134 * 0.06 + 6.7) / (134 + 43.7)
    assert got.expected_pct.value == pytest.approx(by_hand_pct)
    assert got.before_l.value == 134.0


def test_uncertainty_by_hand_without_a_shared_factor() -> None:
    got = compared(sump(), WENT, Measured(8.0, 0.2), 0.0)
    total_l = 197.7
    # Derivatives of (V·S + 100·c) / (V + w + c), S in per cent.
    parts_pct = (
        154 / total_l * 0.3,
        (6.0 - EXPECTED_PCT) / total_l * 4.6,
        EXPECTED_PCT / total_l * 37 * VESSEL_U_SHARE,
        (100 - EXPECTED_PCT) / total_l * 6.7 * VESSEL_U_SHARE,
        0.2,
    )
    assert got.difference_pct.u == pytest.approx(math.hypot(*parts_pct))
    assert got.normalised_error == pytest.approx(
        (8.0 - EXPECTED_PCT) / (2 * math.hypot(*parts_pct))
    )


def test_a_factor_that_both_readings_share_largely_cancels() -> None:
    # All of the uncertainty is the factor's 3 %; only its work on the change is left.
    first, found = Measured(6.0, 0.18), Measured(8.0, 0.24)
    got = compared(SumpState(Measured(154.0, 0.0), first), WENT, found, 0.03)
    slope_pct = 8.0 - 154 / 197.7 * 6.0
    vessels_pct = (
        EXPECTED_PCT / 197.7 * 37 * VESSEL_U_SHARE,
        (100 - EXPECTED_PCT) / 197.7 * 6.7 * VESSEL_U_SHARE,
    )
    assert got.difference_pct.u == pytest.approx(math.hypot(0.03 * slope_pct, *vessels_pct))
    alone = compared(SumpState(Measured(154.0, 0.0), first), WENT, found, 0.0)
    assert got.difference_pct.u < alone.difference_pct.u


def test_what_is_not_the_factors_stays_with_each_reading() -> None:
    # 5 % of 6 and of 8 points are the factor's 0.3 and 0.4; left are 0.4 and 0.3 of 0.5 points.
    first = SumpState(Measured(154.0, 0.0), Measured(6.0, 0.5))
    got = compared(first, WENT, Measured(8.0, 0.5), 0.05)
    parts_pct = (
        154 / 197.7 * 0.4,
        0.3,
        0.05 * (8.0 - 154 / 197.7 * 6.0),
        EXPECTED_PCT / 197.7 * 37 * VESSEL_U_SHARE,
        (100 - EXPECTED_PCT) / 197.7 * 6.7 * VESSEL_U_SHARE,
    )
    assert got.difference_pct.u == pytest.approx(math.hypot(*parts_pct))


@pytest.mark.parametrize(("found_pct", "verdict"), [(6.9, "weaker"), (9.2, "stronger")])
def test_a_difference_beyond_its_uncertainty_has_a_direction(
    found_pct: float, verdict: str
) -> None:
    got = compared(sump(), WENT, Measured(found_pct, 0.1), 0.0)
    assert got.verdict == verdict
    assert abs(got.normalised_error) > 1
    assert got.checks


def test_what_to_check_begins_with_what_decides_most() -> None:
    # By hand, each input's part of the difference in points: dip 0.35, factor 0.10, jug 0.09,
    # reading before 0.08, reading now 0.06, pail 0.05.
    exact = SumpState(Measured(154.0, 34.0), Measured(6.0, 0.16))
    got = compared(exact, WENT, Measured(10.0, 0.21), 0.02)
    assert got.verdict == "stronger"
    assert got.checks[0] == "check_dip"
    assert set(got.checks) == {"check_dip", "check_reading", "check_factor", "check_marks"}
    assert len(got.checks) == 4


def test_without_any_uncertainty_every_difference_counts() -> None:
    exact, nothing = SumpState(Measured(100.0, 0.0), Measured(8.0, 0.0)), Went(0.0, 0.0, 0.0)
    same = compared(exact, nothing, Measured(8.0, 0.0), 0.0)
    assert (same.normalised_error, same.verdict) == (0.0, "as_expected")
    for found_pct, error in ((8.1, math.inf), (7.9, -math.inf)):
        assert compared(exact, nothing, Measured(found_pct, 0.0), 0.0).normalised_error == error


# A quarter of the volume: common practice, no source. 100 L at 8 %, 20 L of water: found 7.5 %.
@pytest.mark.parametrize(("u_pct", "is_said"), [(0.08, True), (0.09, False)])
def test_a_volume_that_is_known_to_no_quarter_of_itself_says_nothing(
    u_pct: float, is_said: bool
) -> None:
    exact = SumpState(Measured(100.0, 0.0), Measured(8.0, u_pct))
    got = compared(exact, Went(0.0, 20.0, 0.0), Measured(7.5, u_pct), 0.0)
    assert got.verdict == "stronger"
    # V = C2 · w / (C1 - C2) = 300 L; by hand u = hypot(600 · u, 640 · u, 9) L.
    if is_said:
        assert got.implied_l is not None
        assert got.implied_l.value == pytest.approx(300.0)
        assert got.implied_l.u == pytest.approx(math.hypot(600 * u_pct, 640 * u_pct, 9), rel=1e-3)
    else:
        assert got.implied_l is None


# A jar of a thousandth is worked out like the sump.
@pytest.mark.parametrize("share", [1.0, 0.001])
def test_the_volume_that_explains_the_reading(share: float) -> None:
    # 300 L at 6 % with the same pour come to (18 + 6.7) / 343.7 = 7.187 %.
    found_pct = 100 * (300 * 0.06 + 6.7) / 343.7
    exact = SumpState(Measured(154.0 * share, 0.0), Measured(6.0, 0.05))
    went = Went(0.0, 37.0 * share, 6.7 * share)
    got = compared(exact, went, Measured(found_pct, 0.05), 0.0)
    assert got.implied_l is not None
    assert got.implied_l.value == pytest.approx(300.0 * share)


def test_no_volume_where_water_changed_nothing_or_nothing_was_poured() -> None:
    exact = SumpState(Measured(100.0, 0.0), Measured(8.0, 0.0))
    same = compared(exact, Went(0.0, 20.0, 0.0), Measured(8.0, 0.0), 0.0)
    assert (same.verdict, same.implied_l) == ("stronger", None)
    taken_out = compared(exact, Went(20.0, 0.0, 0.0), Measured(9.0, 0.0), 0.0)
    assert (taken_out.verdict, taken_out.implied_l) == ("stronger", None)


def test_a_reading_that_fits_asks_for_no_other_volume() -> None:
    # Worked back it would be (670 - 8.1 · 43.7) / 2.1 = 150 L, known to 18 L.
    got = compared(sump(0.0, 0.0), WENT, Measured(8.1, 0.2), 0.0)
    assert (got.verdict, got.implied_l) == ("as_expected", None)


def test_no_volume_where_two_readings_are_too_near() -> None:
    got = compared(sump(0.0, 0.1), WENT, Measured(6.1, 0.1), 0.0)
    assert got.verdict == "weaker"
    assert got.implied_l is None


def test_no_volume_from_a_pour_that_cannot_explain_the_reading() -> None:
    # Weaker than before although the mix was stronger: no volume makes that true.
    got = compared(sump(0.0, 0.05), WENT, Measured(5.0, 0.05), 0.0)
    assert got.verdict == "weaker"
    assert got.implied_l is None


def test_the_edge_of_the_uncertainty_still_fits() -> None:
    exact = SumpState(Measured(100.0, 0.0), Measured(8.0, 0.0))
    nothing = Went(0.0, 0.0, 0.0)
    assert compared(exact, nothing, Measured(8.5, 0.25), 0.0).verdict == "as_expected"
    assert compared(exact, nothing, Measured(8.51, 0.25), 0.0).verdict == "stronger"


def test_dips_share_their_scale() -> None:
    # 3 % of the scale and 2 mm at 0.45 L/mm; 43.7 L were poured, 43 L are found.
    first = dip_of(Measured(154.0, math.hypot(0.9, 154 * 0.03)), 2.0, 0.45)
    second = dip_of(Measured(197.0, math.hypot(0.9, 197 * 0.03)), 2.0, 0.45)
    assert (first.u_l, first.scale_u_share) == pytest.approx((0.9, 0.03))
    # A sump that is known better than its dip, and an empty one.
    assert dip_of(Measured(154.0, 0.5), 2.0, 0.45) == Dip(154.0, 0.5, 0.0)
    assert dip_of(Measured(0.0, 1.5), 2.0, 0.45) == Dip(0.0, 0.9, 0.0)
    # Half a litre of which 3 % are the scale's.
    little = dip_of(Measured(0.5, math.hypot(0.02, 0.5 * 0.03)), 2.0, 0.01)
    assert (little.u_l, little.scale_u_share) == pytest.approx((0.02, 0.03))
    got = level_compared(first, second, WENT)
    u_l = math.hypot(0.9, 0.9, 43 * 0.03, 43.7 * VESSEL_U_SHARE)
    assert got.difference_l.value == pytest.approx(197 - 197.7)
    assert got.difference_l.u == pytest.approx(u_l)
    assert got.verdict == "as_expected"


@pytest.mark.parametrize(("found_l", "verdict"), [(185.0, "lower"), (210.0, "higher")])
def test_a_level_that_does_not_fit(found_l: float, verdict: str) -> None:
    got = level_compared(Dip(154.0, 0.9, 0.03), Dip(found_l, 0.9, 0.03), WENT)
    assert got.expected_l == pytest.approx(197.7)
    assert got.verdict == verdict


# Of 3 and 4 L both dips are 5 L; the limit is twice that.
@pytest.mark.parametrize(
    ("found_l", "verdict"),
    [(110.0, "as_expected"), (110.1, "higher"), (90.0, "as_expected"), (89.9, "lower")],
)
def test_the_edge_of_the_level_still_fits(found_l: float, verdict: str) -> None:
    nothing = Went(0.0, 0.0, 0.0)
    got = level_compared(Dip(100.0, 3.0, 0.0), Dip(found_l, 4.0, 0.0), nothing)
    assert (got.expected_l, got.found_l, got.verdict) == (100.0, found_l, verdict)


def test_taking_out_lowers_the_expected_level() -> None:
    got = level_compared(Dip(154.0, 0.9, 0.03), Dip(177.7, 0.9, 0.03), Went(20.0, 37.0, 6.7))
    assert got.expected_l == pytest.approx(177.7)
    assert got.verdict == "as_expected"
