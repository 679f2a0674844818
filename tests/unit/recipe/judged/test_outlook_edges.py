"""pycore.recipe.outlook at its limits: just as much as may be is not too much."""

from dataclasses import replace

import pytest

from pycore.quantity.measured import Measured
from pycore.recipe.outcome import made
from pycore.recipe.outlook import ABOUT_REACH, bucket_weight_kg
from pycore.recipe.plan import plan_recipe
from pycore.recipe.pours import Pour
from pycore.recipe.request import Effort, MixingUnit, PlanRequest, SumpState, Target
from tests.unit.recipe.shop import question

HALVES = (4.0, 1.0, 0.5)


@pytest.mark.parametrize(
    ("ask", "why"),
    [
        (question(198.0, 5.0), "no_room"),
        (question(180.0, 2.0), "needs_stronger_premix"),
        (question(180.0, 15.0), "needs_weaker_mix"),
        (question(196.0, 5.0, strong_pct=1.5), "marks_too_coarse"),
    ],
)
def test_why_the_band_is_out_of_reach_is_named(ask: PlanRequest, why: str) -> None:
    said = [code for code in plan_recipe(ask).cautions if code in ABOUT_REACH]
    assert said == ["best_reachable", why]


def test_room_of_one_mark_of_each_is_no_room() -> None:
    # 1 L and 0.5 L are 33 %, which is too strong, and water alone too weak.
    plan = plan_recipe(question(196.5, 5.0, bucket=HALVES))
    assert (plan.pours, plan.cautions[:2]) == ([], ["best_reachable", "no_room"])


@pytest.mark.parametrize(
    ("ask", "pour"),
    [
        # 4.8 % with 40 L of water, where up to 20 % could be mixed.
        (question(), Pour(4, 10.0, 0.0)),
        # Water brings 90 L at 10 % to the band's upper edge, 25 % brings 5 % to its lower one.
        (question(90.0, 10.0, fill_to_l=100.0, weak_pct=0.0), Pour(1, 9.0, 0.5)),
        (question(90.0, 5.0, fill_to_l=100.0, strong_pct=25.0), Pour(1, 10.0, 0.0)),
    ],
)
def test_marks_are_too_coarse_where_some_mix_would_do(ask: PlanRequest, pour: Pour) -> None:
    plan = made(ask, [pour])
    assert plan.verdict == "out_of_band"
    assert plan.cautions[:2] == ["best_reachable", "marks_too_coarse"]


@pytest.mark.parametrize(
    ("volume_l", "u_l", "rough"),
    # A tenth of the 200 L there are afterwards; half of the 20 L there are now.
    [(160.0, 20.0, False), (160.0, 20.1, True), (20.0, 10.0, False), (20.0, 10.1, True)],
)
def test_just_as_much_doubt_as_may_be_is_not_rough(
    volume_l: float, u_l: float, rough: bool
) -> None:
    state = SumpState(Measured(volume_l, u_l), Measured(16.0, 0.3))
    ask = replace(question(fill_to_l=200.0), sump=state)
    poured_l = 200.0 - volume_l
    plan = made(ask, [Pour(1, poured_l - 1.0, 1.0)])
    assert plan.final.volume_l == 200.0
    assert ("rough" in plan.cautions) is rough


def test_own_fluid_beside_other_buckets_comes_before_a_reading() -> None:
    pours = [Pour(1, 0.0, 5.0, fluid_l=5.0, kind="own_fluid"), Pour(1, 5.0, 5.0)]
    said = made(question(100.0, 3.0), pours).cautions
    assert "large_change_read" in said
    assert "large_change" not in said


def test_a_bucket_just_as_heavy_as_may_be_carried() -> None:
    just_kg = bucket_weight_kg(8.0, 1.0)
    for heaviest_kg, heavy in ((just_kg, False), (just_kg - 0.01, True)):
        ask = replace(question(), effort=Effort(heaviest_kg=heaviest_kg))
        assert ("bucket_heavy" in made(ask, [Pour(4, 8.0, 1.0)]).cautions) is heavy
    # Where nothing is poured nothing is heavy.
    light = replace(question(198.0, 8.0), effort=Effort(heaviest_kg=0.5))
    assert "bucket_heavy" not in made(light, []).cautions


def test_only_what_ends_too_weak_must_not_stand() -> None:
    # 7 to 9 %: on the edge it may stand, however full the sump is (common practice, no source).
    for strength_pct, weak in ((7.0, False), (6.9, True), (9.0, False)):
        said = plan_recipe(question(volume_l=198.0, strength_pct=strength_pct)).cautions
        assert ("weak_must_not_stand" in said) is weak


def test_the_edge_of_the_band_is_in_it_whatever_the_last_digit_of_a_float() -> None:
    # A unit at 6 % into an empty sump of 198 L comes to 6.000000000000001 %, which is in the band.
    empty = replace(
        question(0.0, 6.0), unit=MixingUnit(0.5, 10.0, 0.1), target=Target(5.0, 6.0, 6.0)
    )
    way = next(way for way in plan_recipe(empty).alternatives if way.why == "mixing_unit")
    assert way.verdict == "on_target"
    assert way.final.strength_pct.value > 6.0
    assert "strong_harms_skin" not in way.cautions
