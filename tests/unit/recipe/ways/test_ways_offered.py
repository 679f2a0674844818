"""pycore.recipe.ways: what is kept and what is dropped where band or marks leave little."""

from dataclasses import replace

import pytest

from pycore.recipe.outcome import alternative, made
from pycore.recipe.plan import plan_recipe
from pycore.recipe.pours import Pour
from pycore.recipe.request import (
    DrawOff,
    Losses,
    Mixing,
    MixingUnit,
    OwnFluid,
    Pail,
    PlanRequest,
    ReadyMix,
    Stock,
    Target,
)
from pycore.recipe.ways import offered
from tests.unit.recipe.shop import question
from tests.unit.recipe.ways.test_ways import full, ways

FINE = (10.0, 0.25, 0.05)


def test_half_a_litre_above_the_mark_is_a_way() -> None:
    small = question(20.0, 5.0, fill_to_l=20.0, bucket=FINE)
    way = ways(replace(small, never_above_l=20.6))["above_full_mark"]
    assert 20.0 < way.final.volume_l <= 20.6


def test_a_sump_above_its_mark_is_not_filled_up_to_it() -> None:
    assert "above_full_mark" not in ways(replace(full(5.0, fill_to_l=190.0), never_above_l=190.0))


def test_half_a_litre_out_has_the_way_without_it() -> None:
    # (17·4.69 + 3·20)/20 = 6.99 %: 20·(7.02 − 6.99)/15.3 = 0.04 L are missing, one mark.
    ask = question(17.0, 4.69, fill_to_l=20.0, bucket=FINE)
    ask = replace(ask, mixing=Mixing(20.0, 1.0, 0.02), draw_off=DrawOff(True, 0.5))
    plan = plan_recipe(ask)
    assert (plan.draw_off_l, plan.verdict) == (0.5, "in_band")
    without = ways(ask)["without_draw_off"]
    assert (without.draw_off_l, without.verdict) == (0.0, "out_of_band")
    assert without.totals.buckets > 0


def test_filling_up_all_the_same_is_offered_out_of_the_band() -> None:
    # 5 % is one mark of 50 mL beside each litre, 4.76 %: (100·8.5 + 98·4.76)/198 = 6.65 %.
    ask = question(100.0, 8.5, strong_pct=5.0)
    assert plan_recipe(ask).verdict != "out_of_band"
    assert ways(ask)["fill_up"].verdict == "out_of_band"


def test_filling_up_all_the_same_only_where_the_main_plan_leaves_room_open() -> None:
    # Only water goes into 2.4 L; 2 L and 0.5 L go in after a draw-off.
    ask = question(195.6, 6.0, weak_pct=0.0, bucket=(10.0, 1.0, 0.5))
    drawing = replace(ask, draw_off=DrawOff(allowed=True, mark_l=1.0))
    assert plan_recipe(drawing).draw_off_l > 0
    assert "fill_up" not in ways(drawing)
    assert "fill_up" in ways(ask)
    # A new charge for which marks of 5 L and 3 L leave nothing but water.
    charge = question(10.0, 2.0, weak_pct=0.0, bucket=(10.0, 5.0, 3.0))
    assert (plan_recipe(charge).pours, plan_recipe(charge).cautions[0]) == ([], "not_filled_up")
    assert "fill_up" not in ways(charge)


def test_lighter_buckets_beside_heavy_ones() -> None:
    # 16 kg less the pail of 1 kg are 15 L of 20 L; who set no weight is not known to want less.
    large = question(100.0, 6.0, bucket=(20.0, 1.0, 0.05))
    assert "bucket_heavy" in plan_recipe(large).cautions
    way = ways(large)["lighter_buckets"]
    assert all(pour.water_l + pour.concentrate_l <= 15.02 for pour in way.pours)


def test_ready_mix_that_misses_the_band_is_no_way_even_where_all_do() -> None:
    # 18 L of 15 % bring 180 L at 2 % to (360 + 270)/198 = 3.2 %.
    ask = replace(question(180.0, 2.0), stock=Stock(ready_mixes=[ReadyMix(15.0, 60.0)]))
    assert plan_recipe(ask).verdict == "out_of_band"
    assert "ready_mix" not in ways(ask)


@pytest.mark.parametrize("highest_pct", [10.0, 20.0])
def test_a_way_may_miss_a_band_that_the_main_plan_misses_too(highest_pct: float) -> None:
    # (360 + 18·10)/198 = 2.7 % is nearer to 7 % than 2 %, even if the buckets bring 3.6 %.
    ask = replace(question(180.0, 2.0), unit=MixingUnit(1.0, highest_pct, 0.5))
    assert plan_recipe(ask).verdict == "out_of_band"
    found = ways(ask)["mixing_unit"].final.strength_pct.value
    assert found == pytest.approx((360 + 18 * highest_pct) / 198)


def charge(strong_pct: float, unit_pct: float) -> PlanRequest:
    """An emptied sump of 100 L and a unit for it; this fluid may not be mixed strong enough."""
    ask = question(0.0, 0.0, fill_to_l=100.0, strong_pct=strong_pct, bucket=(10.0, 0.5, 0.5))
    return replace(ask, unit=MixingUnit(1.0, unit_pct, 0.5))


def test_a_new_charge_is_measured_by_the_main_plan() -> None:
    # Ten pails of 9.5 L and 0.5 L are 5 %, and so is the unit; at 4.5 % it is further off.
    assert plan_recipe(charge(5.0, 5.0)).final.strength_pct.value == pytest.approx(5.0)
    assert "mixing_unit" in ways(charge(5.0, 5.0))
    assert "mixing_unit" not in ways(charge(5.0, 4.5))
    # Where 5.5 % is allowed 9 L and 0.5 L are 5.3 %, and the unit gives 5.5 %.
    assert "mixing_unit" in ways(charge(5.5, 5.5))


def test_water_by_hose_makes_up_for_coarse_marks_in_a_new_charge() -> None:
    # A pail of 10 L whose marks of 1 L measure both holds 9 L and 1 L, 10 %, where water alone may
    # not be poured: five of them. With 30 L by hose 2 of 10 L are left at 20 %, or 4 of 50 L.
    ask = replace(question(0.0, 0.0, fill_to_l=50.0), pail=Pail(measure_by="pail"))
    assert plan_recipe(ask).verdict == "out_of_band"
    assert plan_recipe(ask).final.strength_pct.value == pytest.approx(10.0)
    hose = ways(ask)["hose"]
    assert (hose.verdict, hose.final.volume_l, hose.totals.concentrate_l) == (
        "on_target",
        50.0,
        4.0,
    )
    # Where a few buckets do, it spares no walk.
    assert "hose" not in ways(question(0.0, 0.0, fill_to_l=50.0))


def test_ways_that_do_nothing_or_the_same_are_dropped() -> None:
    ask = question()
    plan, nothing = plan_recipe(ask), made(ask, [])
    other = made(ask, [Pour(4, 9.0, 1.0)])
    given = [("same", plan), ("nothing", nothing), ("other", other), ("again", other)]
    kept = offered(plan, [alternative(why, each) for why, each in given])
    assert [way.why for way in kept] == ["other"]


def test_waiting_is_a_way_for_lean_and_rich() -> None:
    lean = full(own_fluid=OwnFluid(True))
    assert ways(lean)["leave_room"].wait is not None
    assert ways(full(11.0, losses=Losses(2.0)))["use_it_up"].wait is not None


def test_strong_first_with_the_rest_alike_where_it_would_be_three_kinds() -> None:
    # 5 pails of 2 L and 1 L; (168.1·5.7 + 700)/198 L are 8.37 %, in nine pails of two kinds.
    ask = question(168.1, 5.7, strong_pct=35.0, weak_pct=0.0, bucket=(4.0, 1.0, 0.5))
    way = ways(replace(ask, mixing=Mixing(35.0, 0.0, 0.05)))["strong_first"]
    assert way.pours == [Pour(5, 2.0, 1.0), Pour(4, 3.0, 0.5)]


@pytest.mark.parametrize(
    ("ask", "target", "mixing", "least_pct"),
    [
        # 27 L are the least, and other buckets after them would be nearer to 5.5 %.
        (question(59.0, 10.0, fill_to_l=60.0, bucket=(9.0, 2.0, 0.1)),
         Target(5.0, 5.5, 6.0), Mixing(35.0, 0.0, 0.5), 32 * 10 / 60),
        # 60 L are the least for 8 % or more; 59 L for 7.97 % are not more.
        (question(198.0, 3.0, bucket=(10.0, 1.0, 0.5)),
         Target(7.0, 8.0, 9.0), Mixing(20.0, 0.0, 2.0), (138 * 3 + 1200) / 198),
        # 8 L bring 6.11 %; 5.97 % with 9.5 L are nearer by less than the glass shows.
        (replace(question(20.0, 3.8, fill_to_l=20.0), draw_off=DrawOff(False, 0.5)),
         Target(5.0, 6.0, 7.0), Mixing(10.0, 3.0, 1.0), (12 * 3.8 + 75) / 19.75),
    ],
)  # fmt: skip
def test_to_the_aim_only_where_more_is_taken_out_and_shows(
    ask: PlanRequest, target: Target, mixing: Mixing, least_pct: float
) -> None:
    found = ways(replace(ask, target=target, mixing=mixing))
    assert found["least_draw_off"].final.strength_pct.value == pytest.approx(least_pct)
    assert "draw_off_to_aim" not in found


def test_no_strong_first_where_the_rest_cannot_be_alike() -> None:
    # 6.4 to 6.6 %: the rest in one kind of bucket lands beside this band, three kinds inside it.
    ask = question(42.5, 4.4, fill_to_l=60.0, bucket=(4.0, 1.0, 0.5))
    ask = replace(ask, target=Target(6.4, 6.5, 6.6), mixing=Mixing(35.0, 0.0, 0.01))
    assert plan_recipe(ask).verdict != "out_of_band"
    assert "strong_first" not in ways(ask)


def test_where_marks_are_too_coarse_the_hose_is_a_way_if_it_lands_in_the_band() -> None:
    # A pail marked in litres has 10 % at its weakest: 60 L at 11 % cannot come down by it.
    coarse = replace(question(60.0, 11.0, fill_to_l=120.0), pail=Pail(measure_by="pail"))
    assert plan_recipe(coarse).verdict == "out_of_band"
    poured = ways(coarse)["hose"].totals
    # By hand: what was there and what came in, in all that is there then.
    held_l, now_l = 6.6 + poured.concentrate_l, 60.0 + poured.water_l + poured.concentrate_l
    assert 7.0 <= 100 * held_l / now_l <= 9.0
    # Fine marks miss it too: 154 L at 12 % stay above 9 % whatever thins them up to the mark.
    rich = question(154.0, 12.0)
    assert plan_recipe(rich).verdict == "out_of_band"
    assert "hose" not in ways(rich)
