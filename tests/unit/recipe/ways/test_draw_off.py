"""pycore.recipe.draw_off: x = V·(C2 − C1)/(m − C1) litres out and as much of the mix in."""

from dataclasses import replace

import pytest

from pycore.recipe.draw_off import (
    draw_off_to_aim,
    drawn_to,
    filled,
    filled_up,
    filling,
    least_draw_off,
    taken_out_l,
)
from pycore.recipe.outcome import drawn
from pycore.recipe.request import DrawOff, Mixing, Pail, PlanRequest, Target
from tests.unit.recipe.shop import question


def test_least_for_a_lean_sump() -> None:
    # 198·2.5/15 = 33 L by the formula; 33 L are not whole pails of 20 %, 34 L are near enough.
    plan = least_draw_off(question(198.0, 5.0))
    assert plan is not None
    assert plan.draw_off_l == 34.0
    assert plan.final.strength_pct.value >= 7.5
    # One mark less does not do it with the best pours there are.
    assert filled(drawn(question(198.0, 5.0), 33.0)).final.strength_pct.value < 7.5


def test_least_for_a_rich_sump() -> None:
    # The mix of 1 % may be measured as 7 L + 50 mL, 0.709 %: 198·(11 − 8.5)/(11 − 0.709) = 48.1 L.
    plan = least_draw_off(question(198.0, 11.0))
    assert plan is not None
    assert plan.draw_off_l == 49.0
    assert plan.final.strength_pct.value <= 8.5


def test_to_the_aim_takes_more() -> None:
    # 198·(8 − 5)/(20 − 5) = 39.6 L.
    plan = draw_off_to_aim(question(198.0, 5.0))
    assert plan is not None
    assert plan.draw_off_l == 40.0
    assert plan.final.strength_pct.value == pytest.approx(8.0, abs=0.5)


def test_nothing_is_taken_out_where_the_room_does_it() -> None:
    assert least_draw_off(question(154.0, 6.0)) is None
    assert least_draw_off(question(198.0, 8.0)) is None
    # The edges of the band belong to it.
    assert least_draw_off(question(198.0, 7.0)) is None
    assert least_draw_off(question(198.0, 9.0)) is None


def test_no_more_comes_out_than_can_be_taken() -> None:
    # 34 L are needed, 40 L for the aim.
    ask = question(198.0, 5.0)
    for most_l, is_found in ((34.0, True), (33.9, False), (30.0, False)):
        limited = replace(ask, draw_off=DrawOff(allowed=True, mark_l=1.0, most_l=most_l))
        assert (least_draw_off(limited) is not None) is is_found
        assert draw_off_to_aim(limited) is None


def test_taking_everything_out_does_not_do_it() -> None:
    # A premix of 7 % can never bring 7.5 %.
    assert least_draw_off(question(198.0, 5.0, strong_pct=7.2)) is None
    assert drawn_to(question(198.0, 5.0, strong_pct=5.0), 7.5, 7.5, 8.5) is None


def test_near_the_aim_and_not_only_near_enough() -> None:
    # 198·8 = 189·3 + 9·20 + x·(20 − 3): 49.2 L, and 50 L are 8 % as nearly as marks show.
    plan = draw_off_to_aim(question(189.0, 3.0))
    assert plan is not None
    assert plan.draw_off_l == 50.0
    assert plan.final.strength_pct.value == pytest.approx(8.0, abs=0.05)


def test_near_the_aim_where_marks_bar_the_weakest_mix() -> None:
    # With 150 mL as the first mark of the jug 1 % is 9 L and 150 mL, 1.6 %, so that the 1,080 L of
    # the formula, (1530·7.6 − 1530·2.96)/(7.6 − 1) and 61 L above the mark, are far too few.
    ask = question(1591.0, 7.6, fill_to_l=1530.0)
    ask = replace(
        ask,
        target=Target(2.75, 2.96, 3.75),
        mixing=Mixing(20.0, 1.0, 1.0),
        pail=Pail(first_mark_l=1.0, jug_first_mark_l=0.15),
    )
    plan = draw_off_to_aim(ask)
    assert plan is not None
    assert plan.final.strength_pct.value == pytest.approx(2.96, abs=0.1)
    # 1530·(7.6 − 3.25)/(7.6 − 1.64) are 1116.5 L to the middle of the band, 1177.5 L with the 61 L.
    least = least_draw_off(ask)
    assert least is not None
    assert least.draw_off_l == 1178.0


def test_taken_out_begins_at_the_first_mark_of_the_pail() -> None:
    # From 6.9 %: 198·(7.5 − 6.9)/(20 − 6.9) = 9.1 L, below a first mark of 11.5 L: 12 L.
    lean = question(198.0, 6.9, bucket=(15.0, 1.0, 0.05))
    plain = least_draw_off(lean)
    first = least_draw_off(replace(lean, pail=Pail(first_mark_l=11.5)))
    assert plain is not None
    assert first is not None
    assert 9.1 <= plain.draw_off_l < 11.5
    assert first.draw_off_l >= 11.5
    assert [taken_out_l(replace(lean, pail=Pail(first_mark_l=11.5)), n) for n in (0, 3, 12.5)] == [
        0.0, 12.0, 13.0,
    ]  # fmt: skip


def test_marks_of_the_vessel_that_takes_it() -> None:
    # 33 L in marks of 5 L are 35 L.
    ask = replace(question(198.0, 5.0), draw_off=DrawOff(allowed=True, mark_l=5.0))
    plan = least_draw_off(ask)
    assert plan is not None
    assert plan.draw_off_l == 35.0


def test_closeness_as_wide_as_the_band_leaves_the_aim_to_reach() -> None:
    # 198·(8 − 5)/(20 − 5) = 39.6 L to the aim; the band's own edge is the limit on the far side.
    wide = replace(question(198.0, 5.0), mixing=Mixing(20.0, 1.0, 2.0))
    plan = least_draw_off(wide)
    assert plan is not None
    assert plan.draw_off_l == 40.0
    assert 8.0 <= plan.final.strength_pct.value <= 9.0
    rich = least_draw_off(replace(wide, sump=question(198.0, 11.0).sump))
    assert rich is not None
    assert 7.0 <= rich.final.strength_pct.value <= 8.0


@pytest.mark.parametrize("mark_l", [0.05, 0.25])
def test_fine_marks_to_take_out_and_coarse_marks_to_pour(mark_l: float) -> None:
    # At least the 33 L of the formula; up to two bucket marks more, since pails are whole marks.
    ask = question(198.0, 5.0, bucket=(10.0, 2.0, 0.05))
    plan = least_draw_off(replace(ask, draw_off=DrawOff(allowed=True, mark_l=mark_l)))
    assert plan is not None
    assert 33.0 <= plan.draw_off_l <= 37.0
    assert plan.draw_off_l / mark_l == pytest.approx(round(plan.draw_off_l / mark_l))


def test_what_stands_above_the_mark_comes_out_first() -> None:
    # 30 L down to the mark, then 198·(7.5 − 5)/(20 − 5) = 33 L.
    plan = least_draw_off(question(228.0, 5.0))
    assert plan is not None
    assert plan.draw_off_l == 64.0
    assert plan.final.volume_l <= 198.0 + 1e-9


def test_filled_does_no_harm_and_filled_up_fills() -> None:
    # 5 % is one mark of 50 mL beside each litre, 4.76 %: (100·8.5 + 98·4.76)/198 = 6.65 %.
    ask = question(100.0, 8.5, strong_pct=5.0)
    lower, up = filled(ask), filled_up(ask)
    assert (lower.cautions[0], lower.pours) == ("not_filled_up", filling(ask))
    assert lower.final.strength_pct.value >= 7.0
    assert up.final.strength_pct.value == pytest.approx(6.65, abs=0.02)
    assert up.final.volume_l >= 196.9
    assert "not_filled_up" not in [*up.cautions, *filled(question()).cautions]


def test_filled_pours_nothing_into_a_full_sump() -> None:
    plan = filled(question(198.0, 5.0))
    assert (plan.pours, plan.draw_off_l, plan.verdict) == ([], 0.0, "out_of_band")


def test_half_a_litre_is_enough_in_a_small_sump() -> None:
    # Inside is from 7.02 %: 20·(7.02 − 6.9)/(20 − 6.9) L are 0.18 L, one mark of half a litre.
    small = question(20.0, 6.9, fill_to_l=20.0, bucket=(10.0, 0.25, 0.05))
    asked = replace(small, mixing=Mixing(20.0, 1.0, 0.02), draw_off=DrawOff(True, 0.5))
    plan = least_draw_off(asked)
    assert plan is not None
    assert plan.draw_off_l == 0.5


def test_everything_may_have_to_come_out() -> None:
    # The premix is just what is wanted: 20 L at 5 % give way to 20 L at 7.5 %.
    plan = least_draw_off(
        question(20.0, 5.0, fill_to_l=20.0, strong_pct=7.5, bucket=(10.0, 0.25, 0.05))
    )
    assert plan is not None
    assert (plan.draw_off_l, plan.final.volume_l) == (20.0, pytest.approx(20.0))
    assert plan.final.strength_pct.value == pytest.approx(7.5)


@pytest.mark.parametrize("strength_pct", [5.0, 11.0])
def test_to_the_aim_is_as_near_as_is_asked(strength_pct: float) -> None:
    ask = question(198.0, strength_pct)
    plan = draw_off_to_aim(replace(ask, mixing=Mixing(20.0, 1.0, 0.05)))
    assert plan is not None
    assert plan.final.strength_pct.value == pytest.approx(8.0, abs=0.05)


def drawing(
    volume_l: float,
    strength_pct: float,
    mixing: Mixing,
    bucket: tuple[float, float, float],
    mark_l: float,
) -> PlanRequest:
    """A question for a sump of 60 L with marks of its own to take out."""
    ask = question(volume_l, strength_pct, fill_to_l=60.0, bucket=bucket)
    return replace(ask, mixing=mixing, draw_off=DrawOff(allowed=True, mark_l=mark_l))


def test_of_the_sets_for_a_draw_off_one_inside_is_taken_and_no_easier_one_outside() -> None:
    # 42.7 L at 11 % with 17 L of water are 7.87 %; with marks of 0.5 L, 15 L are not enough.
    plan = least_draw_off(drawing(58.2, 11.0, Mixing(12.0, 0.0, 1.0), (10.0, 1.0, 0.5), 0.5))
    assert plan is not None
    assert plan.draw_off_l == 15.5
    assert plan.final.strength_pct.value == pytest.approx(42.7 * 11 / 59.7)


def test_to_the_aim_not_where_coarse_marks_land_beside_it() -> None:
    # 60 L at 7.6 %: 8 + 1 L leave 8.13 % or more, 4 + 0.5 L 7.86 %, 9 + 1 L for 10 L just 8 %.
    beside = drawing(60.0, 7.6, Mixing(12.0, 0.0, 0.05), (10.0, 1.0, 0.5), 0.25)
    found = draw_off_to_aim(beside)
    assert found is not None
    assert found.draw_off_l == 10.0
    assert found.final.strength_pct.value == pytest.approx(8.0)
    assert draw_off_to_aim(replace(beside, draw_off=DrawOff(True, 0.25, most_l=9.75))) is None
    # 54 L at 5.4 % and 6 L at 33 % are 8.19 %, 52 L and 8 L at 25 % are 8.01 %.
    nearer = draw_off_to_aim(drawing(60.0, 5.4, Mixing(35.0, 1.0, 0.05), (10.0, 2.0, 1.0), 2.0))
    assert nearer is not None
    assert nearer.draw_off_l == 8.0
    assert nearer.final.strength_pct.value == pytest.approx(480.8 / 60)


def test_marks_of_pail_and_jug_more_are_tried() -> None:
    # 4 + 2 L are 33.3 %, so 25.2 L are the least by the formula; 27 L at last are whole buckets.
    ask = question(198.0, 4.3, strong_pct=35.0, weak_pct=0.0, bucket=(10.0, 2.0, 1.0))
    ask = replace(ask, mixing=Mixing(35.0, 0.0, 1.0), draw_off=DrawOff(True, 0.25))
    plan = least_draw_off(ask)
    assert plan is not None
    assert plan.draw_off_l == 27.0
    # 8 + 0.5 L are the leanest, 5.88 %: 11.2 L by the formula, and 3 L more for 13 L and 1 L.
    ask = question(20.0, 12.4, fill_to_l=20.4, strong_pct=10.0, bucket=(9.0, 1.0, 0.5))
    ask = replace(ask, mixing=Mixing(10.0, 1.0, 0.3), draw_off=DrawOff(True, 0.25))
    plan = least_draw_off(ask)
    assert plan is not None
    assert plan.draw_off_l == 14.25


def test_coarse_buckets_are_leaner_than_the_premix_that_is_allowed() -> None:
    # Marks of 1 L and 0.5 L give 4 + 0.5 L at the most, 11.1 % of the 12 % that are allowed: with
    # (60·8 − 58.2·6.2 − 1.8·11.11)/(11.11 − 6.2) = 20.2 L out, 18 L of water and 4 times 0.5 L fit.
    ask = question(58.2, 6.2, fill_to_l=60.0, strong_pct=12.0, bucket=(10.0, 1.0, 0.5))
    ask = replace(ask, mixing=Mixing(12.0, 1.0, 1.0), draw_off=DrawOff(True, 0.25))
    plan = least_draw_off(ask)
    assert plan is not None
    assert plan.draw_off_l == 20.75
    # (58.2 − 20.75)·6.2 % + 2.5 L in 59.95 L.
    assert plan.final.strength_pct.value == pytest.approx(100 * (37.45 * 0.062 + 2.5) / 59.95)


def test_nothing_comes_out_where_no_bucket_leads_towards_the_band() -> None:
    # Marks of 2 L in a pail of 9 L: 2 L in 7 L of water are too rich for 20 %, so water is all.
    coarse = question(198.0, 5.0, weak_pct=0.0, bucket=(9.0, 1.0, 2.0))
    assert least_draw_off(coarse) is None
    # And no water either where 3 % is the weakest mix.
    assert least_draw_off(question(198.0, 11.0, weak_pct=3.0, bucket=(9.0, 1.0, 2.0))) is None


def test_a_bucket_just_as_strong_as_the_sump_changes_nothing() -> None:
    # A pail of 5 L with a mark at 4 L and a jug of 1 L mix 20 % only.
    assert least_draw_off(question(198.0, 20.0, bucket=(5.0, 4.0, 1.0))) is None


def test_taken_out_in_marks_of_half_a_litre() -> None:
    ask = replace(question(), draw_off=DrawOff(allowed=True, mark_l=0.5))
    assert [taken_out_l(ask, needed_l) for needed_l in (0.3, 3.0, 3.2)] == [0.5, 3.0, 3.5]
    assert taken_out_l(replace(ask, pail=Pail(first_mark_l=11.5)), 3.0) == 11.5


def test_a_result_on_the_edge_that_is_asked_for_is_inside() -> None:
    # 16 L at 10 % and 4 L of water are 8 % to the digit.
    ask = question(20.0, 10.0, fill_to_l=20.0, weak_pct=0.0)
    plan = drawn_to(ask, 8.0, 7.0, 8.0)
    assert plan is not None
    assert (plan.draw_off_l, plan.final.strength_pct.value) == (4.0, 8.0)
