"""Recipes that a person at the machine would have laughed at, each as it was printed before."""

from dataclasses import replace

import pytest

from pycore.recipe.outcome import Alternative, Plan
from pycore.recipe.plan import plan_recipe
from pycore.recipe.request import (
    DrawOff,
    Effort,
    Mixing,
    OwnFluid,
    Pail,
    PlanRequest,
    Stock,
    Target,
)
from tests.unit.recipe.shop import question

MAY_DRAW = DrawOff(allowed=True, mark_l=1.0)


def ways(plan: Plan) -> dict[str, Alternative]:
    return {way.why: way for way in plan.alternatives}


def poured(plan: Plan | Alternative) -> list[tuple[int, float, float]]:
    return [(p.count, p.water_l, pytest.approx(p.concentrate_l)) for p in plan.pours]


def half_litres() -> PlanRequest:
    """A pail of 10 L in half litres that measures the concentrate, too."""
    ask = question(124.8, 7.9, fill_to_l=342.0, strong_pct=25.0, weak_pct=2.0, bucket=(10, 0.5, 1))
    ask = replace(ask, target=Target(6.0, 8.0, 10.0), pail=Pail(measure_by="pail"))
    return replace(ask, mixing=replace(ask.mixing, closeness_pct=0.3))


def test_no_pails_two_thirds_full_where_full_ones_do() -> None:
    # It was 33 of 6.5 L and one of 2 L: a kind of bucket more than one in five is worth.
    plan = plan_recipe(half_litres())
    assert plan.verdict == "on_target"
    assert plan.totals.buckets <= 27


def test_no_bucket_in_three_more_for_a_quarter_of_a_point() -> None:
    # 69 of 10 L and one of 7.75 L reached 7.26 % of an aim of 9 % that is out of reach.
    ask = question(842.4, 5.0, fill_to_l=1541.0, strong_pct=10.0, bucket=(15.0, 1.0, 0.25))
    ask = replace(ask, target=Target(6.0, 9.0, 9.0), mixing=Mixing(10.0, 1.0, 0.3))
    plan = plan_recipe(ask)
    assert plan.totals.buckets <= 53
    assert plan.final.strength_pct.value >= 6.9


def test_no_low_buckets_to_take_out_eight_litres_less() -> None:
    # Weakest of all are 7 L and 50 mL: 238 L out and 40 buckets; 9 L and 100 mL want 245.5 L out.
    ask = question(400.0, 13.65, fill_to_l=440.0, strong_pct=15.0)
    ask = replace(ask, target=Target(4.0, 5.0, 6.0), draw_off=MAY_DRAW)
    plan = plan_recipe(ask)
    assert plan.totals.buckets <= 34
    assert 238 < plan.draw_off_l <= 250
    assert plan.verdict == "on_target"


def test_a_hose_does_not_thin_past_the_weakest_mix() -> None:
    # 0.15 % of 1,652 L were poured, where the fluid's weakest mix is 1 %.
    ask = question(8065.9, 8.4, fill_to_l=9718.0, strong_pct=15.0, bucket=(10.0, 0.5, 0.05))
    ask = replace(ask, target=Target(4.0, 5.5, 7.0))
    plan = plan_recipe(ask)
    assert "needs_weaker_mix" in plan.cautions
    hose = ways(plan)["hose"].totals
    share = hose.concentrate_l / (hose.water_l + hose.concentrate_l)
    # Whole marks round the weakest mix by 0.3 points at the most.
    assert 0.007 <= share <= 0.011


def test_an_almost_empty_sump_is_not_used_up() -> None:
    # 30 of 198 L at 10 % wait for their coolant, not for weeks of weak top-ups.
    coarse = replace(question(30.0, 15.0, weak_pct=6.0), target=Target(4.0, 6.5, 7.0))
    plan = plan_recipe(coarse)
    assert (plan.case, plan.verdict) == ("new_charge", "out_of_band")
    assert "use_it_up" not in ways(plan)
    assert "use_it_up" in ways(plan_recipe(replace(coarse, sump=question(40.0, 15.0).sump)))


def test_no_reading_before_the_very_last_bucket() -> None:
    # 60 strong ones, a reading, and one that is a jug mark weaker.
    ask = question(1519.0, 2.2, fill_to_l=2038.9, weak_pct=2.0, bucket=(9.0, 2.25, 0.05))
    ask = replace(ask, target=Target(6.0, 8.0, 10.0))
    assert plan_recipe(ask).totals.buckets > 50
    assert "strong_first" not in ways(plan_recipe(ask))
    # A fifth of the room is left to decide about.
    assert "strong_first" in ways(plan_recipe(question(154.0, 6.0)))


def test_not_the_band_s_edge_where_the_middle_is_as_easy() -> None:
    # With a closeness as wide as half the band 7.84 % of 6 to 8 % counted as on target.
    ask = question(539.0, 4.94, fill_to_l=881.9, weak_pct=2.0, bucket=(9.0, 2.25, 0.05))
    ask = replace(ask, target=Target(6.0, 7.0, 8.0), mixing=Mixing(20.0, 2.0, 1.0))
    assert abs(plan_recipe(ask).final.strength_pct.value - 7.0) <= 0.5 + 1e-9


def test_who_says_twenty_buckets_is_not_told_that_thirteen_are_many() -> None:
    ask = question(60.0, 7.0)
    assert plan_recipe(ask).totals.buckets > 12
    assert "many_buckets" in plan_recipe(ask).cautions
    plan = plan_recipe(replace(ask, effort=Effort(most_buckets=20)))
    assert "many_buckets" not in plan.cautions
    assert "two_days" not in ways(plan)


def test_own_coolant_takes_the_place_of_what_would_be_thrown_away() -> None:
    full = replace(question(198.0, 5.0), draw_off=MAY_DRAW)
    assert plan_recipe(full).draw_off_l == 34.0
    plan = plan_recipe(replace(full, own_fluid=OwnFluid(True)))
    assert (plan.draw_off_l, plan.verdict) == (7.0, "on_target")
    # One bucket drawn off and one poured are less walking than three of its own for 6 L.
    little = replace(question(198.0, 6.8, fill_to_l=198.0), draw_off=MAY_DRAW)
    little = replace(little, mixing=replace(little.mixing, closeness_pct=0.25))
    assert plan_recipe(replace(little, own_fluid=OwnFluid(True))).pours[0].kind is None


def test_own_coolant_fills_the_sump_up_too() -> None:
    # It ended at 157 of 170 L, with the room of a bucket and more left open.
    ask = replace(question(150.0, 3.0, fill_to_l=170.0), draw_off=MAY_DRAW)
    plan = plan_recipe(replace(ask, own_fluid=OwnFluid(True)))
    assert plan.pours[0].kind == "own_fluid"
    assert plan.draw_off_l == 0.0
    assert 168.9 <= plan.final.volume_l <= 170.0
    assert plan.final.strength_pct.value == pytest.approx(8.0, abs=0.5)
    assert len(plan.pours) <= 3


def test_what_a_person_said_that_they_carry_counts_in_the_main_plan() -> None:
    plan = plan_recipe(replace(question(), effort=Effort(heaviest_kg=8.0)))
    assert max(p.water_l + p.concentrate_l for p in plan.pours) <= 7.0
    # A pail of one litre misses the band here: better with a second person than not at all.
    neat = question(150.0, 6.0, strong_pct=60.0, bucket=(10.0, 1.0, 0.5))
    neat = replace(neat, target=Target(7.8, 8.0, 8.2))
    heavy = plan_recipe(replace(neat, effort=Effort(heaviest_kg=2.6)))
    assert heavy.verdict != "out_of_band"
    assert "bucket_heavy" in heavy.cautions


def test_short_of_concentrate_a_lower_level_for_a_surer_landing() -> None:
    for have_l, least in ((3.0, 0.8), (4.0, 0.9), (5.0, 0.9)):
        plan = plan_recipe(replace(question(), stock=Stock(have_l)))
        assert plan.final.chance_in_band >= least
        assert plan.final.volume_l < 198.0
        edge = ways(plan)["fill_to_edge"]
        assert edge.final.volume_l > plan.final.volume_l
        assert edge.final.chance_in_band < plan.final.chance_in_band


def test_whole_litres_where_half_ones_land_no_better() -> None:
    # It was 18 buckets of 7.5 L and 1.2 L, 0.24 points off the aim; 8 L and 700 mL are 0.26 off.
    ask = question(1655.0, 9.9, fill_to_l=1812.0, strong_pct=15.0, bucket=(9.0, 0.5, 0.025))
    ask = replace(ask, target=Target(8.0, 10.0, 12.0))
    plan = plan_recipe(ask)
    assert plan.verdict == "on_target"
    assert poured(plan) == [(18, 8.0, 0.7)]
