"""pycore.recipe.ways: from which question on, and up to which, each other way is offered."""

from dataclasses import replace

import pytest

from pycore.quantity.measured import Measured
from pycore.recipe.plan import plan_recipe
from pycore.recipe.request import (
    DrawOff,
    Mixing,
    OwnFluid,
    PlanRequest,
    SumpState,
)
from tests.unit.recipe.shop import question
from tests.unit.recipe.ways.test_ways import doubtful, full, ways


@pytest.mark.parametrize(
    ("ask", "strong"),
    [
        # 15 % of 1 to 20 % in 44 L; of 5 to 20 %; of 14.8 to 15.6 %, whose pail holds 7.1 L.
        (question(), 3), (question(weak_pct=5.0), 2),
        (question(strong_pct=15.6, weak_pct=14.8), 1),
        # Half of 44 L between 14.9 and 15.1 %, in pails of 9.4 L.
        (question(strong_pct=15.1, weak_pct=14.9, bucket=(10.0, 1.0, 0.01)), 2),
        # 19 % in 18 L: one of two pails.
        (question(180.0, 6.9), 1),
    ],
)  # fmt: skip
def test_as_many_strong_buckets_as_the_share_of_strong_in_the_fill(
    ask: PlanRequest, strong: int
) -> None:
    assert ways(ask)["strong_first"].pours[0].count == strong


def test_smaller_dose_leaves_room_for_the_doubt() -> None:
    # 15.4 L less than the 44 L of room; and a sump that is rich gets none.
    dose = ways(doubtful(15.4, 0.1))["smaller_dose"]
    assert dose.totals.water_l + dose.totals.concentrate_l <= 44 - 15.4 + 1e-9
    rich = SumpState(Measured(100.0, 15.0), Measured(9.5, 0.3))
    assert "smaller_dose" not in ways(replace(question(), sump=rich))


def test_never_above_mark_at_the_full_mark_is_no_room_above_it() -> None:
    drawing = replace(question(180.0, 4.0), draw_off=DrawOff(allowed=True, mark_l=1.0))
    found = ways(replace(drawing, never_above_l=198.0))
    assert "without_draw_off" in found
    assert "above_full_mark" not in found


def test_half_a_litre_taken_out_is_a_draw_off() -> None:
    small = question(20.0, 6.9, fill_to_l=20.0, bucket=(10.0, 0.25, 0.05))
    small = replace(small, mixing=replace(small.mixing, closeness_pct=0.02))
    drawing = replace(small, draw_off=DrawOff(allowed=True, mark_l=0.5))
    assert plan_recipe(drawing).draw_off_l == 0.5
    # A full sump into which nothing goes is no recipe of its own.
    assert "without_draw_off" not in ways(drawing)
    assert "least_draw_off" not in ways(drawing)


def test_strong_buckets_first_from_a_fifth_of_the_mark_on() -> None:
    assert "strong_first" in ways(question(40.0, 6.0, fill_to_l=200.0))


@pytest.mark.parametrize(
    ("ask", "verdict"),
    [
        # 7.8 % cannot bring 7.7 L at 4.7 % to 7 %.
        (question(7.7, 4.7, fill_to_l=20.0, strong_pct=7.8, bucket=(9.0, 2.0, 0.1)),
         "out_of_band"),
        # Weaker buckets for a rich sump are no strong ones.
        (question(126.0, 9.3, strong_pct=12.0, bucket=(10.0, 1.0, 0.25)), "on_target"),
        # Coolant has to come out first.
        (replace(question(161.0, 6.7, strong_pct=7.8, weak_pct=0.0),
                 mixing=Mixing(7.8, 0.0, 0.05), draw_off=DrawOff(True, 1.0)), "in_band"),
    ],
)  # fmt: skip
def test_no_strong_buckets_first_where_more_is_wrong(ask: PlanRequest, verdict: str) -> None:
    assert plan_recipe(ask).verdict == verdict
    assert "strong_first" not in ways(ask)


def test_what_is_left_to_decide_counts_with_its_concentrate() -> None:
    # 3 of 8 L of room after a strong pail of 5 L: 2 L of water and 1 L, more than a fifth.
    ask = question(154.0, 6.1, fill_to_l=162.0, strong_pct=40.0, weak_pct=0.0, bucket=(6, 0.5, 0.1))
    pours = ways(ask)["strong_first"].pours
    assert [(p.count, p.water_l, p.concentrate_l) for p in pours] == [
        (1, 3.0, pytest.approx(2.0)), (1, 2.0, pytest.approx(1.0)),
    ]  # fmt: skip


def test_no_strong_buckets_first_where_the_rest_ends_with_one_as_strong() -> None:
    # Two of 4 L with 1 L, and after four weaker ones half a litre beside 2 L of water once more.
    assert "strong_first" not in ways(
        question(154.0, 6.7, fill_to_l=185.0, strong_pct=30.0, bucket=(5.0, 2.0, 0.5))
    )


def test_beside_own_coolant_what_fresh_mix_would_take_out_and_no_more() -> None:
    # Own coolant brings the aim and wastes nothing; whoever rather carries fresh mix takes 25 L
    # out, and who takes more than that out comes no nearer than the main plan.
    ask = replace(question(150.0, 3.0, fill_to_l=170.0), draw_off=DrawOff(True, 1.0))
    ask = replace(ask, own_fluid=OwnFluid(True))
    plan = plan_recipe(ask)
    assert (plan.draw_off_l, plan.verdict) == (0.0, "on_target")
    found = ways(ask)
    assert list(found) == ["least_draw_off"]
    assert found["least_draw_off"].draw_off_l == 25.0


def test_smaller_dose_only_where_it_is_smaller() -> None:
    # Marks of 0.25 L: for less room it is 0.75 L of concentrate all the same.
    coarse = question(10.6, 6.6, fill_to_l=20.0, strong_pct=35.0, bucket=(10.0, 1.0, 0.25))
    doubtful = replace(coarse, sump=SumpState(Measured(10.6, 1.6), Measured(6.6, 0.3)))
    assert plan_recipe(doubtful).totals.concentrate_l == pytest.approx(0.75)
    assert "smaller_dose" not in ways(doubtful)


def test_draw_off_to_the_aim_only_where_the_premix_reaches_it() -> None:
    # 7.8 % bring the sump into the band and never to 8 %.
    found = ways(full(6.7, mixing=Mixing(7.8, 0.0, 0.05)))
    assert "least_draw_off" in found
    assert "draw_off_to_aim" not in found


def test_draw_off_to_the_aim_where_only_the_marks_are_too_coarse() -> None:
    # 16.9 L at 10.4 % and 3.1 L of water are 8.8 %, but there is no mark at 3.1 L.
    ask = question(16.9, 10.4, fill_to_l=20.0, strong_pct=35.0)
    found = ways(replace(ask, mixing=replace(ask.mixing, closeness_pct=0.05)))
    assert "draw_off_to_aim" in found
    assert "least_draw_off" not in found


def test_same_buckets_without_the_draw_off_are_another_way() -> None:
    # 3 L taken out and 3 L filled up, or 3 L filled up above the full mark.
    ask = question(60.0, 5.9, fill_to_l=60.0, strong_pct=35.0)
    drawing = replace(
        ask,
        mixing=replace(ask.mixing, closeness_pct=0.05),
        draw_off=DrawOff(allowed=True, mark_l=1.0),
        never_above_l=63.0,
    )
    assert ways(drawing)["above_full_mark"].pours == plan_recipe(drawing).pours


def test_a_single_bucket_is_not_poured_in_two() -> None:
    # 5 L and 2 L at once are the same as 3.5 L and 1.5 L, a reading, and 1.5 L and 0.5 L.
    ask = question(60.0, 4.7, fill_to_l=67.1, strong_pct=30.0, bucket=(9.0, 0.5, 0.5))
    plan = plan_recipe(replace(ask, mixing=replace(ask.mixing, closeness_pct=1.0)))
    assert plan.totals.buckets == 1
    assert "strong_first" not in [way.why for way in plan.alternatives]
