"""pycore.journal.loss: by hand; figures of use are common practice, no source."""

import pytest

from pycore.journal.loss import level_change, most_lost_l
from pycore.journal.recheck import Dip, Went

FULL_L = 198.0
HOUR_S = 3600.0
NOTHING = Went(0.0, 0.0, 0.0)


def verdict(before_l: float, now_l: float, hours: float = 8.0, went: Went = NOTHING) -> str:
    dips = Dip(before_l, 0.9, 0.03), Dip(now_l, 0.9, 0.03)
    return level_change(*dips, went, FULL_L, hours * HOUR_S, False).verdict


# 5 % of 198 L in each eight hours: 9.9 L.
@pytest.mark.parametrize(("hours", "litres"), [(0, 9.9), (8, 9.9), (16, 19.8), (1000, 198.0)])
def test_what_use_explains(hours: float, litres: float) -> None:
    assert most_lost_l(FULL_L, hours * HOUR_S) == pytest.approx(litres)


def test_a_clock_that_was_set_back_counts_as_one_shift() -> None:
    assert most_lost_l(FULL_L, -HOUR_S) == pytest.approx(9.9)


@pytest.mark.parametrize(
    ("before", "now", "hours", "found"),
    [
        (180.0, 180.0, 8, "as_expected"),
        (180.0, 179.0, 8, "as_expected"),
        (180.0, 172.0, 8, "explained"),
        # Missing 40 L, explained 9.9 L; over a weekend of 62 h 76.7 L.
        (180.0, 140.0, 8, "lost"),
        (180.0, 140.0, 62, "explained"),
        (150.0, 170.0, 8, "gained"),
    ],
)
def test_verdicts(before: float, now: float, hours: float, found: str) -> None:
    assert verdict(before, now, hours) == found


def test_what_was_poured_and_taken_out_counts() -> None:
    poured = Went(0.0, 27.9, 2.1)
    assert verdict(150.0, 180.0, went=poured) == "as_expected"
    assert verdict(150.0, 150.0, went=poured) == "lost"
    assert verdict(150.0, 170.0, went=Went(10.0, 27.9, 2.1)) == "as_expected"


def test_an_unknown_pour_explains_a_gain_and_no_loss() -> None:
    def with_unknown(now_l: float) -> str:
        dips = Dip(150.0, 0.9, 0.03), Dip(now_l, 0.9, 0.03)
        return level_change(*dips, NOTHING, FULL_L, 8 * HOUR_S, True).verdict

    assert with_unknown(170.0) == "unknown_poured"
    assert with_unknown(100.0) == "lost"


def test_a_rough_dip_asks_less() -> None:
    rough = Dip(180.0, 9.0, 0.03), Dip(160.0, 9.0, 0.03)
    assert level_change(*rough, NOTHING, FULL_L, 0.0, False).verdict == "as_expected"
