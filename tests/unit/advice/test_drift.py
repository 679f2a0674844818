"""pycore.advice.drift: beside scipy and the example of the USGS."""

from random import Random

import pytest
from scipy.stats import theilslopes

from pycore.advice.drift import Slope, direction, theil_sen


def test_example_of_the_usgs() -> None:
    # Statistical Methods in Water Resources, Theil-Sen (data from memory): one outlier, slope 1.
    slope = theil_sen([1, 2, 3, 4, 5, 6, 7], [1, 2, 3, 4, 5, 16, 7])
    assert (slope.slope, slope.low, slope.high) == (1.0, 1.0, 3.5)


def test_small_set_of_a_sump() -> None:
    days, pct = [0, 3, 7, 10, 14, 17, 21], [8.0, 8.2, 8.5, 8.6, 9.1, 9.0, 9.5]
    slope = theil_sen(days, pct)
    assert slope.slope == pytest.approx(0.0714286, abs=1e-7)
    assert slope.low == pytest.approx(0.0571429, abs=1e-7)
    assert slope.high == pytest.approx(0.0818182, abs=1e-7)


@pytest.mark.parametrize("seed", range(40))
def test_same_as_scipy(seed: int) -> None:
    chance = Random(seed)
    n = chance.randint(4, 40)
    days = sorted(chance.sample(range(1000), n))
    pct = [chance.gauss(8 + 0.01 * day, 0.5) for day in days]
    slope = theil_sen([float(day) for day in days], pct)
    other = theilslopes(pct, days, 0.95)
    assert slope.slope == pytest.approx(other.slope)
    assert slope.low == pytest.approx(other.low_slope)
    assert slope.high == pytest.approx(other.high_slope)


def test_readings_of_one_moment_make_no_slope() -> None:
    assert theil_sen([0, 0, 2], [8, 8.2, 9]).slope == pytest.approx(0.45)
    with pytest.raises(ValueError, match="two moments"):
        theil_sen([1, 1, 1], [8, 8, 8])
    with pytest.raises(ValueError, match="got 2"):
        theil_sen([1, 2], [8, 9])


UP, DOWN, OPEN = Slope(0.1, 0.05, 0.2), Slope(-0.1, -0.2, -0.05), Slope(0.1, -0.01, 0.2)


@pytest.mark.parametrize(
    ("slope", "change", "spread", "way"),
    [
        (UP, 1.0, 1.0, "rising"),
        (DOWN, -1.0, 1.0, "falling"),
        # The eye sees a line that falls; two readings alone could do that.
        (DOWN, -0.6, 0.6, "falling_little"),
        (UP, 0.6, 0.6, "rising_little"),
        # Down by more than that and up again is no small rise.
        (UP, 0.6, 0.7, "unsure"),
        (OPEN, 1.0, 1.0, "unsure"),
        (Slope(-0.1, -0.2, 0.01), -1.0, 1.0, "unsure"),
        # From first to last against the slope of all: no direction to tell.
        (UP, -1.0, 1.2, "unsure"),
        (DOWN, 1.0, 1.2, "unsure"),
        (OPEN, 0.1, 0.6, "level"),
        (Slope(0.0, 0.0, 0.0), 0.0, 0.0, "level"),
    ],
)
def test_direction(slope: Slope, change: float, spread: float, way: str) -> None:
    assert direction(slope, change, 0.6, spread) == way
