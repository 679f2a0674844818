"""pycore.reading.factor: direction, chart and what moved."""

import pytest

from pycore.quantity.fault import Fault
from pycore.quantity.measured import Measured
from pycore.reading.factor import (
    Factor,
    factor_from_chart,
    factor_from_divisor,
    has_moved,
    is_bent,
    slopes_of,
)

CHART = [(1.6, 2.0), (4.0, 5.0), (8.1, 10.0)]


def test_dividing_is_the_factor_turned_over() -> None:
    assert factor_from_divisor(0.67) == pytest.approx(1.4925, abs=1e-4)


def test_five_per_cent_reads_with_its_offset() -> None:
    # By hand: 5/1.5 + 0.3.
    assert Factor(Measured(1.5, 0.0), 0.3).reads_brix(5.0) == pytest.approx(3.6333, abs=1e-4)


def test_chart_runs_through_its_pairs_and_straight_between() -> None:
    factor = factor_from_chart(CHART, 0.03, "chart")
    for brix, pct in [*CHART, (2.8, 3.5)]:
        segment = factor.at(brix)
        assert segment.factor.value * (brix - segment.offset_brix) == pytest.approx(pct)
        assert factor.reads_brix(pct) == pytest.approx(brix)
        assert segment.factor.u == pytest.approx(0.03 * segment.factor.value)
        assert not segment.is_beyond


def test_beyond_the_chart_it_goes_on_straight_and_is_less_sure() -> None:
    segment = factor_from_chart(CHART, 0.03, "chart").at(10.0)
    # By hand: 10 + 1.9 · 5/4.1 per cent.
    assert segment.factor.value * (10.0 - segment.offset_brix) == pytest.approx(12.317, abs=1e-3)
    assert segment.is_beyond
    assert segment.factor.u == pytest.approx(0.10 * segment.factor.value)


@pytest.mark.parametrize(
    ("pairs", "code", "path"),
    [
        ([(1.6, 2.0), (1.6, 5.0)], "not_rising", "chart[1].reading"),
        ([(1.6, 2.0), (4.0, 2.0)], "not_rising", "chart[1].strength"),
        ([(0.0, 1.0)], "not_rising", "chart[0].reading"),
        ([(0.1, 2.0)], "out_of_range", "chart[0].reading"),
        ([(0.0, 0.0), (10.0, 2.0)], "out_of_range", "chart[1].reading"),
    ],
)
def test_chart_that_cannot_be(pairs: list[tuple[float, float]], code: str, path: str) -> None:
    with pytest.raises(Fault) as caught:
        factor_from_chart(pairs, 0.03, "chart")
    assert (caught.value.code, caught.value.path) == (code, path)


def test_slopes_and_a_bend() -> None:
    straight = factor_from_chart(CHART, 0.03, "chart")
    assert slopes_of(straight) == pytest.approx([1.25, 1.25, 5 / 4.1])
    assert not is_bent(straight)
    assert is_bent(factor_from_chart([(1.6, 2.0), (3.0, 5.0)], 0.03, "chart"))
    assert not is_bent(Factor(Measured(1.5, 0.0)))


@pytest.mark.parametrize(
    ("now", "last", "moved"), [(1.65, 1.5, False), (1.66, 1.5, True), (1.3, 1.5, True)]
)
def test_a_tenth_is_where_it_has_moved(now: float, last: float, moved: bool) -> None:
    assert has_moved(now, last) is moved
