"""The 95 % interval of a factor found with jugs holds the true factor, neither less nor more."""

import pytest

from tests.properties.reading.factor_fit import TRIALS, found


@pytest.mark.parametrize("name", ["three jugs", "three jugs, digital", "five jugs"])
def test_interval_holds_in_93_to_97_of_100(name: str) -> None:
    assert 0.93 <= found(TRIALS[name]).covered <= 0.97


def test_a_true_offset_is_found_and_the_factor_still_held() -> None:
    got = found(TRIALS["five jugs, offset 1.5 Brix"])
    assert got.with_offset == 1.0
    assert 0.93 <= got.covered <= 0.97


def test_no_offset_is_made_up() -> None:
    # The offset is tested at 1 %; 500 runs may show up to 2.5 %.
    assert found(TRIALS["five jugs"]).with_offset <= 0.025
