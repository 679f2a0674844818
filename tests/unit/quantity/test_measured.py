"""pycore.quantity.measured. Published examples of propagation stand in shared/checks."""

import math

import pytest

from pycore.quantity.measured import Measured, chance_between, moves_with, result, shares, variable


def test_input_that_stands_twice_is_counted_once() -> None:
    x = variable(Measured(3.0, 0.2), "x")
    assert result(x - x) == Measured(0.0, 0.0)
    assert result(x + x).u == pytest.approx(0.4)


def test_shares_follow_the_variance() -> None:
    # JCGM 100:2008, 5.1.2: variances add, 0.3² : 0.4² = 9 : 16.
    total = variable(Measured(1, 0.3), "a") + variable(Measured(1, 0.4), "b")
    assert shares(total) == pytest.approx({"b": 16 / 25, "a": 9 / 25})
    assert list(shares(total)) == ["b", "a"]


def test_shares_without_uncertainty_are_empty() -> None:
    assert shares(variable(Measured(1, 0.0), "a") * 2) == {}


@pytest.mark.parametrize(("k", "chance"), [(1, 0.682689), (2, 0.954500), (3, 0.997300)])
def test_chance_is_the_normal_distribution(k: int, chance: float) -> None:
    # Tabled values of the normal distribution, from memory, not seen; reproduced with scipy 1.17.1.
    # Tolerance 5e-7, half of the table's last digit.
    assert chance_between(Measured(8.0, 0.5), 8 - 0.5 * k, 8 + 0.5 * k) == pytest.approx(
        chance, abs=5e-7
    )


def test_chance_far_outside_is_nothing() -> None:
    assert chance_between(Measured(20.0, 0.5), 7, 9) == pytest.approx(0.0, abs=1e-12)


@pytest.mark.parametrize(
    ("value", "chance"), [(7.0, 1.0), (9.0, 1.0), (math.nextafter(9, 10), 0.0)]
)
def test_chance_without_uncertainty_is_yes_or_no(value: float, chance: float) -> None:
    assert chance_between(Measured(value, 0.0), 7.0, 9.0) == chance


def test_shares_come_largest_first_and_equal_ones_by_name() -> None:
    a, b = variable(Measured(1, 0.3), "a"), variable(Measured(1, 0.3), "b")
    large = variable(Measured(1, 1.0), "z")
    assert [list(shares(total)) for total in (a + b + large, large + b + a, b + large + a)] == [
        ["z", "a", "b"]
    ] * 3


def test_one_input_brings_all_and_an_exact_one_nothing() -> None:
    # A variance of 1 is a variance like any other.
    assert shares(variable(Measured(5, 1.0), "a") + variable(Measured(5, 0.0), "b")) == {"a": 1.0}


def test_what_is_exactly_known_moves_nothing_and_with_nothing() -> None:
    volume = variable(Measured(100.0, 2.0), "volume")
    assert (moves_with(5.0, volume), moves_with(volume, 5.0), moves_with(5.0, 2.0)) == (0, 0, 0)
