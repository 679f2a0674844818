"""Pour tests of simulated sumps: the table's 95 % interval holds what it says.

Sixty of the five hundred tests that ``python3 -m tests.properties.pours`` prints, from seeds of
their own. For 720 comparisons in groups of twelve, 90 to 99 % is what chance leaves.
"""

import pytest

from tests.properties.pours import CASES, ONE_SUMP, Noise, counted


@pytest.mark.parametrize("name", CASES)
@pytest.mark.parametrize("is_one", [True, False])
def test_interval_holds_the_true_litres(name: str, is_one: bool) -> None:
    count = counted(CASES[name], 60, ONE_SUMP if is_one else None)
    assert 0.90 <= count.share <= 0.99


def test_interval_holds_them_with_an_unknown_rest() -> None:
    count = counted(Noise(0.01, 0.0, 2.0), 60, has_rest=True)
    assert 0.88 <= count.share <= 0.995


@pytest.mark.parametrize("name", CASES)
def test_stated_uncertainty_is_as_large_as_the_errors(name: str) -> None:
    count = counted(CASES[name], 40, ONE_SUMP)
    honest = sum(sum(column) / len(column) for column in count.us_l.values())
    off = sum(sum(abs(e) for e in column) / len(column) for column in count.errors_l.values())
    # Mean of |error| of a normal distribution is 0.798 of its standard deviation.
    assert 0.5 < off / (0.798 * honest) < 1.4
