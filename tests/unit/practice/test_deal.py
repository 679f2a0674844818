"""pycore.practice.deal: the same number deals the same sump, and it is worth working out."""

import pytest

from pycore.practice.deal import LEVELS, draw, suits
from pycore.recipe.plan import plan_recipe
from tests.unit.recipe.shop import question


def test_the_same_number_draws_the_same_sump_and_another_one_another() -> None:
    assert draw("alike", 12, 0) == draw("alike", 12, 0)
    drawn = {draw("alike", number, 0) for number in range(1, 60)}
    assert len(drawn) > 50


@pytest.mark.parametrize("level", LEVELS)
def test_dips_are_whole_centimetres_and_readings_whole_tenths(level: str) -> None:
    for number in range(1, 40):
        dealt = draw(level, number, 0)
        assert dealt.depth_mm % 10 == 0
        assert 0 < dealt.depth_mm <= dealt.bench.full_depth_mm
        assert dealt.reading == f"{dealt.tenths / 10:.1f}"
        assert dealt.draws_off == (level == "full")


def test_what_is_worth_working_out() -> None:
    # 154 L at 6 % to 198 L at 8 % needs 15 %: five buckets, the last one smaller.
    ask = question()
    plan = plan_recipe(ask)
    assert suits("alike", ask, plan) == (len(plan.pours) == 1)
    assert not suits("rich", ask, plan)
    assert not suits("full", ask, plan)
    assert not suits("band", ask, plan)


def test_rich_with_room_is_of_its_own_level_alone() -> None:
    # 8 + 150 (8 - 10) / 48 is 1.75 %, a weak mix but no plain water.
    ask = question(volume_l=150.0, strength_pct=10.0)
    plan = plan_recipe(ask)
    assert [level for level in LEVELS if suits(level, ask, plan)] == ["rich"]


def test_the_band_alone_is_left_where_the_strongest_mix_misses_the_aim() -> None:
    # 8 + 178 (8 - 5.8) / 20 is 27.6 %; the strongest 20 % ends at 7.2 %.
    ask = question(volume_l=178.0, strength_pct=5.8)
    plan = plan_recipe(ask)
    assert [level for level in LEVELS if suits(level, ask, plan)] == ["band"]


def test_one_bucket_is_no_exercise() -> None:
    ask = question(volume_l=187.0, strength_pct=7.5)
    plan = plan_recipe(ask)
    assert plan.totals.buckets == 1
    assert not any(suits(level, ask, plan) for level in LEVELS)
