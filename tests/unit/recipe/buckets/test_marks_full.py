"""pycore.recipe.marks: the leanest and the richest of the buckets that are worth the walk."""

from dataclasses import replace

import pytest

from pycore.recipe.request import Pail, PlanRequest
from tests.unit.recipe.shop import question, space


def full_pct(ask: PlanRequest) -> tuple[float, float]:
    return space(ask).limits.full_strengths_pct


def all_pct(ask: PlanRequest) -> tuple[float, float]:
    return space(ask).limits.strengths_pct


def test_full_buckets_hold_four_fifths_of_the_pail_or_more() -> None:
    # 7 L and 50 mL are the leanest of all and below 8 L; 9 L take 91 mL at 1 %, two marks.
    assert full_pct(question()) == (pytest.approx(100 * 0.1 / 9.1), pytest.approx(20.0))
    # 4 L and 1 L are 20 %, but only half a pail; a full one of 9 L is 8 L and 1 L, or water alone.
    coarse = question(weak_pct=0.0, bucket=(9.0, 4.0, 1.0))
    assert all_pct(coarse) == (0.0, pytest.approx(20.0))
    assert full_pct(coarse) == (0.0, pytest.approx(100 / 9))


def test_four_fifths_to_the_litre_are_full() -> None:
    # 8 L of water in a pail of 10 L; with 7 L it takes 1 L of concentrate, 12.5 %, to be full.
    assert full_pct(question(weak_pct=0.0, bucket=(10.0, 8.0, 1.0))) == (0.0, pytest.approx(20.0))
    only = question(weak_pct=0.0, strong_pct=13.0, bucket=(10.0, 7.0, 1.0))
    assert all_pct(only) == (0.0, pytest.approx(12.5))
    assert full_pct(only) == (pytest.approx(12.5), pytest.approx(12.5))
    # A pail of 11 L is full from 8.8 L: with 7 L of water that is the second mark of the jug.
    assert full_pct(question(weak_pct=0.0, strong_pct=25.0, bucket=(11.0, 7.0, 1.0))) == (
        pytest.approx(100 * 2 / 9),
        pytest.approx(100 * 2 / 9),
    )


def test_no_full_bucket_where_the_mix_is_too_strong_for_one() -> None:
    # 5 L of water and 2.2 L, four fifths of 9 L, would be 31 %.
    half = question(weak_pct=0.0, bucket=(9.0, 5.0, 0.1))
    assert all_pct(half) == (0.0, pytest.approx(100 * 1.2 / 6.2, abs=0.3))
    assert full_pct(half) == (100.0, 0.0)


def test_a_full_bucket_needs_a_mark_that_the_jug_shows() -> None:
    # 7 L want 1 L more; the jug begins at 1.5 L.
    ask = question(weak_pct=0.0, bucket=(10.0, 7.0, 0.5))
    assert full_pct(ask)[0] == pytest.approx(12.5)
    begins = replace(ask, pail=Pail(jug_first_mark_l=1.5))
    assert full_pct(begins)[0] == pytest.approx(100 * 1.5 / 8.5)


def test_a_pail_of_a_single_litre_has_a_richest_bucket_too() -> None:
    # Half a litre of water and a quarter of concentrate are a third; water alone fills it.
    small = question(strong_pct=35.0, weak_pct=0.0, bucket=(1.0, 0.5, 0.25))
    assert all_pct(small) == (0.0, pytest.approx(100 / 3))
