"""pycore.reading.averaging. Sources of the tables: GUM G.2 and the e-Handbook, by scipy."""

import numpy as np
import pytest
from scipy.stats import chi2, t

from pycore.reading import averaging
from pycore.reading.averaging import mean_reading


def test_tables_are_those_of_the_distributions() -> None:
    for i, factor in enumerate(averaging._T_95):
        assert factor == pytest.approx(t.ppf(1 - (1 - 0.9545) / 2, 8 + i), abs=0.006)
    for i, point in enumerate(averaging._CHI2_95):
        assert point == pytest.approx(chi2.ppf(0.95, i + 1), abs=0.001)


def test_one_reading_keeps_the_table_value_unless_the_marks_are_coarser() -> None:
    assert mean_reading([4.0], 0.2, 0.2).brix.u == 0.2
    # By hand: a mark of 1 Brix is a rectangle of 1/√12.
    assert mean_reading([4.0], 0.2, 1.0).brix.u == pytest.approx(0.288675, abs=1e-6)


def test_more_readings_tell_more_and_never_less_than_their_spread() -> None:
    u = [mean_reading([4.0] * n, 0.2, 0.1).brix.u for n in (1, 2, 4, 9)]
    assert u == sorted(u, reverse=True)
    apart = mean_reading([4.0, 5.0], 0.2, 0.1)
    # By hand: s/√n = 0.5.
    assert apart.brix.u >= 0.5
    assert apart.brix.value == 4.5


@pytest.mark.parametrize(("second", "scatters"), [(4.5, False), (4.6, True)])
def test_spread_beyond_chi_squared_is_said(second: float, scatters: bool) -> None:
    # By hand: (Δ²/2)/0.2² passes 3.841 at Δ = 0.554.
    assert mean_reading([4.0, second], 0.2, 0.0).scatters is scatters


@pytest.mark.parametrize("count", [0, 11])
def test_counts_outside_the_tables_are_refused(count: int) -> None:
    with pytest.raises(ValueError, match="one to 10"):
        mean_reading([4.0] * count, 0.2, 0.1)


@pytest.mark.parametrize("count", [2, 3, 5])
@pytest.mark.parametrize(("true_u", "most"), [(0.15, 1.0), (0.2, 0.985), (0.25, 0.97)])
def test_two_u_hold_at_least_92_of_100(count: int, true_u: float, most: float) -> None:
    # An instrument that repeats to within a quarter of what its table says; one that is better
    # than its table is held the surer.
    chance = np.random.default_rng(20261125)
    runs = 2000
    held = 0
    for _ in range(runs):
        mean = mean_reading(list(chance.normal(5.0, true_u, count)), 0.2, 0.0).brix
        held += abs(mean.value - 5.0) <= 2 * mean.u
    assert 0.92 <= held / runs <= most


def test_one_reading_has_no_scatter_and_ten_are_allowed() -> None:
    one = mean_reading([4.0], 0.2, 0.1)
    assert (one.spread_brix, one.scatters) == (0.0, False)
    assert mean_reading([4.0] * 10, 0.2, 0.1).brix.value == 4.0
