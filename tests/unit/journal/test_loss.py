"""pycore.journal.loss: by hand; figures of use are common practice, no source."""

import pytest

from pycore.journal.loss import (
    MostLost,
    level_change,
    most_lost,
    most_lost_l,
    quantile,
)
from pycore.journal.recheck import Dip, Went

FULL_L = 198.0
HOUR_S = 3600.0
NOTHING = Went(0.0, 0.0, 0.0)


# 10 % of 198 L in a day, where nobody says more.
USUAL = most_lost(FULL_L, [], None)


def verdict(before_l: float, now_l: float, hours: float = 8.0, went: Went = NOTHING) -> str:
    dips = Dip(before_l, 0.9, 0.03), Dip(now_l, 0.9, 0.03)
    most_l = most_lost_l(FULL_L, USUAL, hours * HOUR_S)
    return level_change(*dips, went, most_l, False).verdict


# 5 % of 198 L for one shift: 9.9 L; then 10 % a day, 19.8 L.
@pytest.mark.parametrize(
    ("hours", "litres"), [(0, 9.9), (8, 9.9), (24, 19.8), (72, 59.4), (1000, 198.0)]
)
def test_what_use_explains(hours: float, litres: float) -> None:
    assert most_lost_l(FULL_L, USUAL, hours * HOUR_S) == pytest.approx(litres)


def test_a_clock_that_was_set_back_counts_as_one_shift() -> None:
    assert most_lost_l(FULL_L, USUAL, -HOUR_S) == pytest.approx(9.9)


def test_the_shops_word_goes_before_ours_and_the_log_before_both() -> None:
    assert most_lost(FULL_L, [1.0] * 4, 15.0) == MostLost(pytest.approx(29.7), "shop")
    assert most_lost(FULL_L, [], None) == MostLost(pytest.approx(19.8), "practice")
    # Nine of ten of 1, 2, 3, 4, 5 L a day stay below 4.6 L; twice that.
    assert most_lost(FULL_L, [5.0, 1.0, 4.0, 2.0, 3.0], 15.0) == MostLost(pytest.approx(9.2), "own")


def test_a_machine_that_loses_nothing_has_one_shift() -> None:
    own = most_lost(FULL_L, [-0.2] * 6, None)
    assert own.l_d == 0.0
    assert most_lost_l(FULL_L, own, 72 * HOUR_S) == pytest.approx(9.9)


def test_quantile_is_that_of_numpy() -> None:
    numpy = pytest.importorskip("numpy")
    values = [3.1, 0.4, 9.9, 2.2, 5.0, 1.7]
    for share in (0.0, 0.25, 0.5, 0.9, 1.0):
        assert quantile(values, share) == pytest.approx(float(numpy.quantile(values, share)))


@pytest.mark.parametrize(
    ("before", "now", "hours", "found"),
    [
        (180.0, 180.0, 8, "as_expected"),
        (180.0, 179.0, 8, "as_expected"),
        (180.0, 172.0, 8, "explained"),
        # Missing 40 L, explained 9.9 L; over a weekend of 62 h 51.2 L.
        (180.0, 140.0, 8, "lost"),
        (180.0, 140.0, 62, "explained"),
        (150.0, 170.0, 8, "gained"),
    ],
)
def test_verdicts(before: float, now: float, hours: float, found: str) -> None:
    assert verdict(before, now, hours) == found


@pytest.mark.parametrize(("more_l", "found"), [(0.01, "explained"), (-0.01, "lost")])
def test_lost_is_what_two_standard_uncertainties_do_not_reach(more_l: float, found: str) -> None:
    dips = Dip(180.0, 0.9, 0.03), Dip(140.0, 0.9, 0.03)
    gone = level_change(*dips, NOTHING, 0.0, False).difference_l
    assert gone.value == pytest.approx(-40.0)
    # Coverage factor 2: JCGM 100:2008, 6.3.3.
    most_l = -gone.value - 2 * gone.u + more_l
    told = level_change(*dips, NOTHING, most_l, False)
    assert told.verdict == found
    assert (told.expected_l, told.found_l, told.most_lost_l) == (180.0, 140.0, most_l)


def test_what_was_poured_and_taken_out_counts() -> None:
    poured = Went(0.0, 27.9, 2.1)
    assert verdict(150.0, 180.0, went=poured) == "as_expected"
    assert verdict(150.0, 150.0, went=poured) == "lost"
    assert verdict(150.0, 170.0, went=Went(10.0, 27.9, 2.1)) == "as_expected"


def test_an_unknown_pour_explains_a_gain_and_no_loss() -> None:
    def with_unknown(now_l: float) -> str:
        dips = Dip(150.0, 0.9, 0.03), Dip(now_l, 0.9, 0.03)
        return level_change(*dips, NOTHING, 9.9, True).verdict

    assert with_unknown(170.0) == "unknown_poured"
    assert with_unknown(100.0) == "lost"


def test_a_rough_dip_asks_less() -> None:
    rough = Dip(180.0, 9.0, 0.03), Dip(160.0, 9.0, 0.03)
    assert level_change(*rough, NOTHING, 9.9, False).verdict == "as_expected"
