"""pycore.practice.own_recipe: judged by where it ends, not by whether its buckets are ours."""

from dataclasses import replace

import pytest

from pycore.practice.figures import Figures
from pycore.practice.own_recipe import OwnRecipe, judge_recipe
from pycore.recipe.plan import plan_recipe
from pycore.recipe.pours import Pour
from pycore.recipe.request import DrawOff, PlanRequest
from tests.unit.recipe.shop import question

# 154 L at 6 %, 44 L of room, 15 % needed.
LATHE = question()
FULL = replace(question(volume_l=198.0), draw_off=DrawOff(allowed=True, mark_l=1.0))


def figures(ask: PlanRequest) -> Figures:
    volume_l, strength_pct = ask.sump.volume_l.value, ask.sump.strength_pct.value
    return Figures(
        dipped_l=volume_l,
        read_pct=strength_pct,
        depth_mm=volume_l / 0.45,
        full_depth_mm=440.0,
        full_volume_l=198.0,
        reading_brix=strength_pct / 1.5,
        factor=1.5,
        aim_pct=8.0,
        strong_pct=20.0,
        volume_l=volume_l,
        strength_pct=strength_pct,
        room_l=198.0 - volume_l,
    )


def judged(
    *buckets: tuple[int, float, float], ask: PlanRequest = LATHE, out_l: float = 0.0
) -> OwnRecipe:
    pours = [Pour(count, water_l, concentrate_l) for count, water_l, concentrate_l in buckets]
    return judge_recipe(ask, plan_recipe(ask), figures(ask), pours, out_l, 0.9)


def test_our_own_recipe_is_good() -> None:
    plan = plan_recipe(LATHE)
    rows = [(pour.count, pour.water_l, pour.concentrate_l) for pour in plan.pours]
    found = judged(*rows)
    assert (found.standing, found.faults, found.slip) == ("good", [], None)
    assert found.plan.final == plan.final


@pytest.mark.parametrize(
    "buckets",
    [
        [(4, 8.0, 1.5)],
        [(2, 8.0, 1.5), (2, 8.0, 1.6), (1, 3.0, 0.5)],
        [(8, 4.0, 0.75)],
        [(2, 8.0, 2.0), (2, 9.0, 1.0)],
    ],
)
def test_another_recipe_that_is_just_as_good_is_accepted(
    buckets: list[tuple[int, float, float]],
) -> None:
    found = judged(*buckets)
    assert found.plan.verdict == "on_target"
    assert (found.standing, found.faults) == ("good", [])


def test_in_the_band_but_further_from_the_aim_works() -> None:
    # 4 L in 40 L at 10 %: 6.8 % would be out; 4.8 L in 40 L is (9.24 + 4.8) / 194 = 7.24 %.
    found = judged((4, 8.0, 1.2))
    assert found.plan.verdict == "in_band"
    assert found.standing == "works"


def test_a_bucket_that_still_fits_is_told() -> None:
    # 33.25 L leave 10.75 L, more than a bucket.
    found = judged((2, 8.0, 2.0), (1, 8.0, 1.75), (1, 3.0, 0.5))
    assert found.faults == ["room_left"]
    assert found.standing == "works"
    assert found.left_l == pytest.approx(10.75)


def test_above_the_mark_is_off_beyond_what_the_stick_can_tell() -> None:
    # 44.8 L into 44 L: the stick cannot tell. 50 L: 6 L on the floor.
    assert judged((4, 8.0, 1.5), (1, 6.0, 0.8)).faults == []
    found = judged((5, 8.5, 1.5))
    assert "above_mark" in found.faults
    assert found.standing == "off"
    assert found.over_l == pytest.approx(6.0)


@pytest.mark.parametrize(
    ("bucket", "fault"),
    [
        ((4, 8.5, 1.5), "not_whole_marks"),
        ((4, 8.0, 1.52), "not_whole_marks"),
        ((4, 9.0, 1.5), "bucket_overfull"),
        ((4, 7.0, 2.0), "too_strong"),
        ((4, 9.0, 0.05), "too_weak"),
    ],
)
def test_a_bucket_that_cannot_or_may_not_be_mixed_is_told(
    bucket: tuple[int, float, float], fault: str
) -> None:
    found = judged(bucket)
    assert fault in found.faults
    assert found.standing == "off"


@pytest.mark.parametrize(
    ("buckets", "slip"),
    [
        # 8 L with 15 % of it, 1.2 L, are 13 % of the mix.
        ([(4, 9.0, 1.35)], "of_water"),
        # Every bucket at the target.
        ([(4, 9.0, 0.8)], "aim_as_top_up"),
        # 2 % in every bucket: the two points that are missing.
        ([(4, 9.0, 0.2)], "shortfall_as_top_up"),
        # 3.1 L lift the 154 L and nothing else.
        ([(4, 9.0, 0.75)], "sump_only"),
        # 15.84 L: 8 % of the whole sump, as if it were empty.
        ([(4, 6.0, 3.95)], "sump_forgotten"),
        ([(4, 9.0, 0.15)], "a_tenth"),
    ],
)
def test_the_slip_behind_a_recipe_is_named(
    buckets: list[tuple[int, float, float]], slip: str
) -> None:
    assert judged(*buckets).slip == slip


def test_buckets_as_strong_as_ours_hold_no_slip() -> None:
    assert judged((2, 8.0, 1.5)).slip is None


def test_more_than_needed_taken_out_of_a_full_sump_is_told() -> None:
    # 198 x 2 / 14 is 28.3 L for the aim; one mark more is 29.3 L.
    good = judged((3, 8.0, 2.0), ask=FULL, out_l=28.0)
    assert "too_much_out" not in good.faults
    found = judged((4, 8.0, 2.0), ask=FULL, out_l=40.0)
    assert found.faults == ["too_much_out"]
    assert found.standing == "works"
