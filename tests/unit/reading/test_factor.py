"""pycore.reading.factor: direction, chart and what moved."""

import pytest

from pycore.quantity.fault import Fault
from pycore.quantity.known import KNOWN
from pycore.quantity.measured import Measured
from pycore.reading.factor import (
    BEYOND_U_SHARE,
    FACTOR_USUAL,
    UNUSUAL_U_SHARE,
    Factor,
    Segment,
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


def test_without_a_chart_one_factor_and_offset_hold_everywhere() -> None:
    factor = Factor(Measured(1.5, 0.05), 0.3)
    assert factor.at(0.5) == factor.at(30.0) == Segment(Measured(1.5, 0.05), 0.3, False)


def test_what_is_usual_for_each_type_of_fluid() -> None:
    # Common practice, no source; together they span what shared/quantities.json calls usual.
    assert FACTOR_USUAL["soluble_oil"] == (KNOWN["factor"].usual_low, 1.2)
    assert FACTOR_USUAL["semi_synthetic"] == (1.1, 1.9)
    assert FACTOR_USUAL["synthetic"] == (1.4, KNOWN["factor"].usual_high)


def test_a_factor_of_old_fluid_is_no_reason_to_ask() -> None:
    # Common practice, no source: known to 10 per cent it is used, to 20 it is asked about.
    assert BEYOND_U_SHARE == 0.10
    assert BEYOND_U_SHARE < UNUSUAL_U_SHARE < 0.20


def test_chart_runs_through_its_pairs_and_straight_between() -> None:
    factor = factor_from_chart(CHART, 0.03, "chart")
    for brix, pct in [*CHART, (2.8, 3.5)]:
        segment = factor.at(brix)
        assert segment.factor.value * (brix - segment.offset_brix) == pytest.approx(pct)
        assert factor.reads_brix(pct) == pytest.approx(brix)
        assert segment.factor.u == pytest.approx(0.03 * segment.factor.value)
        assert not segment.is_beyond
    assert factor.offset_brix == 0.0


def test_a_charts_factor_is_that_of_five_per_cent() -> None:
    # By hand: 5 per cent read 4 Brix; the relative u is the one given.
    assert factor_from_chart(CHART, 0.03, "chart").factor == Measured(1.25, 1.25 * 0.03)


def test_each_line_of_a_chart_holds_to_its_upper_pair() -> None:
    factor = factor_from_chart(CHART, 0.03, "chart")
    assert factor.at(4.0).factor.value == 1.25
    # 4.5 Brix lie on the third line although 4.5 per cent would lie on the second.
    assert factor.at(4.5).factor.value == pytest.approx(5 / 4.1)


def test_beyond_the_chart_it_goes_on_straight_and_is_less_sure() -> None:
    segment = factor_from_chart(CHART, 0.03, "chart").at(10.0)
    # By hand: 10 + 1.9 · 5/4.1 per cent.
    assert segment.factor.value * (10.0 - segment.offset_brix) == pytest.approx(12.317, abs=1e-3)
    # By hand: 8.1 + 2 · 4.1/5 Brix.
    assert factor_from_chart(CHART, 0.03, "chart").reads_brix(12.0) == pytest.approx(9.74)
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


@pytest.mark.parametrize("pairs", [[(1.0, 2.0), (1.3, 5.0)], [(10.0, 12.0), (20.0, 14.0)]])
def test_a_step_that_no_fluid_has_is_refused_with_its_slope(
    pairs: list[tuple[float, float]],
) -> None:
    with pytest.raises(Fault) as caught:
        factor_from_chart(pairs, 0.03, "chart")
    # By hand: 3/0.3 and 2/10 per cent for one Brix.
    assert caught.value.got == pytest.approx(10.0 if pairs[0][0] == 1.0 else 0.2)
    assert caught.value.limit == {"above": 0.3, "maximum": 8, "unit": "1"}


def test_edges_of_a_steps_slope() -> None:
    assert factor_from_chart([(1.0, 8.0)], 0.03, "chart").factor.value == 8.0
    with pytest.raises(Fault):
        factor_from_chart([(1.0, 0.3)], 0.03, "chart")


def test_a_pair_that_does_not_rise_names_the_one_before() -> None:
    with pytest.raises(Fault) as caught:
        factor_from_chart([(1.6, 2.0), (1.5, 5.0)], 0.03, "chart")
    assert (caught.value.got, caught.value.limit) == (1.5, {"above": 1.6})


@pytest.mark.parametrize(
    ("pairs", "bent"),
    [([(20.0, 20.0), (40.0, 43.0)], False), ([(20.0, 20.0), (40.0, 43.1)], True)],
)
def test_slopes_that_differ_by_more_than_15_per_cent_are_a_bend(
    pairs: list[tuple[float, float]], bent: bool
) -> None:
    assert is_bent(factor_from_chart(pairs, 0.03, "chart")) is bent


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
