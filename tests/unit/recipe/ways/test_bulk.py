"""pycore.recipe.bulk: more than one person carries, by balances worked out by hand."""

from dataclasses import replace

import pytest

from pycore.recipe.bulk import (
    by_hose,
    by_mixing_unit,
    half_today,
    is_too_much,
    lighter_buckets,
)
from pycore.recipe.draw_off import filled, least_draw_off
from pycore.recipe.outcome import Plan, made
from pycore.recipe.plan import plan_recipe
from pycore.recipe.pours import Pour
from pycore.recipe.request import DrawOff, Effort, MixingUnit, PlanRequest
from tests.unit.recipe.shop import question


def with_unit(
    ask: PlanRequest, lowest: float = 1.0, highest: float = 18.0, step: float = 0.5
) -> PlanRequest:
    return replace(ask, unit=MixingUnit(lowest, highest, step))


def planned(plan: Plan | None) -> Plan:
    assert plan is not None
    return plan


@pytest.mark.parametrize(
    ("count", "size_l", "too_much"),
    [(12, 10.0, False), (13, 1.0, True), (12, 10.05, True), (12, 9.9, False)],
)
def test_a_dozen_buckets_and_120_litres(count: int, size_l: float, too_much: bool) -> None:
    # 12 buckets and 120 L: common practice, no source.
    plan = made(question(0.0, 0.0), [Pour(count, size_l * 0.9, size_l * 0.1)])
    assert is_too_much(question(), plan) is too_much


def test_a_person_may_set_the_most() -> None:
    plan = made(question(), [Pour(5, 8.0, 0.5)])
    assert is_too_much(replace(question(), effort=Effort(most_buckets=4)), plan)
    assert not is_too_much(replace(question(), effort=Effort(most_buckets=5)), plan)


def test_buckets_that_a_person_may_carry() -> None:
    # 8 kg less the pail of 1 kg: 7 L of anything that is not heavier than 1 kg/L.
    ask = replace(question(), effort=Effort(heaviest_kg=8.0))
    main = plan_recipe(ask)
    lighter = planned(lighter_buckets(ask, filled(ask)))
    for plan in (main, lighter):
        assert max(pour.water_l + pour.concentrate_l for pour in plan.pours) <= 7.0
        assert "bucket_heavy" not in plan.cautions
        assert plan.verdict == "on_target"
    assert "lighter_buckets" not in [way.why for way in main.alternatives]
    # A heavy concentrate, 1.4 kg/L: 5 L.
    dense = replace(ask, density_kg_l=1.4)
    for plan in (plan_recipe(dense), planned(lighter_buckets(dense, filled(dense)))):
        assert max(pour.water_l + pour.concentrate_l for pour in plan.pours) <= 5.0


def test_no_lighter_buckets() -> None:
    # Light enough; so weak that one mark of water is too heavy; nothing but water by the hose.
    assert lighter_buckets(question(), plan_recipe(question())) is None
    weak = replace(question(), effort=Effort(heaviest_kg=2.0))
    assert "bucket_heavy" in plan_recipe(weak).cautions
    assert lighter_buckets(weak, plan_recipe(weak)) is None
    unit = planned(by_mixing_unit(with_unit(weak)))
    assert "bucket_heavy" not in unit.cautions


def test_lighter_buckets_after_a_draw_off() -> None:
    ask = replace(question(198.0, 5.0), effort=Effort(heaviest_kg=8.0), draw_off=DrawOff(True, 1.0))
    main = planned(least_draw_off(ask))
    assert "bucket_heavy" in main.cautions
    plan = planned(lighter_buckets(ask, main))
    assert (plan.draw_off_l, plan.final.volume_l) == (main.draw_off_l, pytest.approx(197.5, abs=1))
    assert plan.verdict == "on_target"


def test_mixing_unit_is_set_to_the_nearest_step() -> None:
    # 154 L at 6 % to 198 L at 8 % wants 15 %; in steps of 0.8 from 1 %: 17 steps are 14.6 %,
    # 18 steps 15.4 %.
    plan = planned(by_mixing_unit(with_unit(question(), step=0.8)))
    unit = plan.steps[0]
    assert (unit.kind, unit.volume_l) == ("unit", 44.0)
    assert unit.setting_pct in (pytest.approx(14.6), pytest.approx(15.4))
    assert plan.totals.concentrate_l == pytest.approx(44 * unit.setting_pct / 100)
    assert plan.totals.water_l == pytest.approx(44 * (1 - unit.setting_pct / 100))
    assert plan.final.strength_pct.value == pytest.approx((924 + 44 * unit.setting_pct) / 198)
    assert (plan.pours, plan.totals.buckets) == ([], 0)


def test_mixing_unit_keeps_to_its_range_and_to_the_fluid() -> None:
    assert planned(by_mixing_unit(with_unit(question(), highest=10.0))).steps[0].setting_pct == 10.0
    # The fluid's strongest premix is 12 %, the unit could do 18 %.
    limited = with_unit(question(strong_pct=12.2))
    assert planned(by_mixing_unit(limited)).steps[0].setting_pct == 12.0
    # A rich sump wants the weakest mix, 1 %; the unit starts at 0.4 %.
    rich = with_unit(question(154.0, 15.0), lowest=0.4)
    assert planned(by_mixing_unit(rich)).steps[0].setting_pct == pytest.approx(1.4)
    # A unit that starts at 3 % gives 3 %.
    strong = with_unit(question(154.0, 15.0), lowest=3.0)
    assert planned(by_mixing_unit(strong)).steps[0].setting_pct == 3.0


def test_no_mixing_unit_without_one_without_room_or_with_nothing_in_common() -> None:
    assert by_mixing_unit(question()) is None
    assert by_mixing_unit(with_unit(question(198.0))) is None
    assert by_mixing_unit(with_unit(question(197.5))) is None
    assert by_mixing_unit(with_unit(question(strong_pct=20.0), lowest=25.0, highest=30.0)) is None
    # Between 2.5 and 2.8 % there is no step of 2 from 1 %.
    narrow = question(154.0, 6.0, strong_pct=2.8, weak_pct=2.5)
    assert by_mixing_unit(with_unit(narrow, step=2.0)) is None


def test_hose_brings_the_water_and_strong_buckets_the_rest() -> None:
    # 10 L of 198 at 0 % want 8.43 %: 188·(1 − 8.43/20) = 108.8 L of water, then 80 L at 20 %.
    ask = question(10.0, 0.0)
    plan = planned(by_hose(ask))
    assert (plan.steps[0].kind, plan.steps[0].volume_l) == ("hose", 108.0)
    assert plan.totals.water_l == pytest.approx(108 + sum(p.count * p.water_l for p in plan.pours))
    assert plan.final.strength_pct.value == pytest.approx(8.0, abs=0.5)
    assert plan.final.volume_l <= 198.0 + 1e-9
    assert plan.final.volume_l == pytest.approx(
        118 + sum(p.count * (p.water_l + p.concentrate_l) for p in plan.pours)
    )
    assert [step.kind for step in plan.steps][-2:] == ["run", "read_again"]


def test_no_hose_where_the_fill_is_all_strong_or_all_water() -> None:
    assert by_hose(question(154.0, 2.0)) is None
    assert by_hose(question(154.0, 15.0, weak_pct=0.0)) is None
    assert by_hose(question(198.0, 5.0)) is None


def test_half_today() -> None:
    plan = planned(half_today(question(10.0, 0.0)))
    # Half of 188 L is 94 L; within one mark of the pail and one of the jug.
    assert 104 - 1.05 <= plan.final.volume_l <= 104 + 1e-9
    assert plan.final.strength_pct.value == pytest.approx(8.0, abs=0.5)
    assert half_today(question(198.0, 5.0)) is None


def test_in_marks_of_two_litres() -> None:
    coarse = question(10.0, 0.0, bucket=(10.0, 2.0, 0.05))
    hose = planned(by_hose(coarse))
    # 188·(1 − 8.4255/20) = 108.8 L, 54 marks of 2 L.
    assert hose.steps[0].volume_l == 108.0
    assert [(step.kind, step.pour) for step in hose.steps if step.kind == "bucket"] == [
        ("bucket", i) for i in range(len(hose.pours))
    ]
    # 118 L left after the hose are at 0 %; what is poured is the strongest.
    assert all(p.concentrate_l / (p.water_l + p.concentrate_l) > 0.19 for p in hose.pours)
    odd = question(151.0, 6.0, bucket=(10.0, 2.0, 0.05))
    # 47 L of room are 46 L in marks of 2 L.
    assert planned(by_mixing_unit(with_unit(odd))).steps[0].volume_l == 46.0


def test_hose_into_a_sump_that_holds_something() -> None:
    # 100 L at 6 % want (15.84 − 6)/98 = 10.04 %: 98·(1 − 10.04/20) = 48.8 L of water first.
    plan = planned(by_hose(question(100.0, 6.0)))
    assert plan.steps[0].volume_l == 48.0
    assert plan.final.strength_pct.value == pytest.approx(8.0, abs=0.5)


def test_mixing_unit_at_its_ends() -> None:
    # One mark of room is run; the unit and the fluid have a single strength in common.
    assert planned(by_mixing_unit(with_unit(question(197.0)))).steps[0].volume_l == 1.0
    single = with_unit(question(strong_pct=5.0), lowest=5.0)
    assert planned(by_mixing_unit(single)).steps[0].setting_pct == 5.0
    # 15 % is wanted; the highest of 1, 1.5, 2 ... that the unit has is 10.5 %.
    odd = with_unit(question(), highest=10.5)
    assert planned(by_mixing_unit(odd)).steps[0].setting_pct == 10.5


def test_hose_for_one_mark_and_hose_for_nearly_all() -> None:
    # 8 L of room want 17 %: 8·(1 − 17/20) = 1.2 L of water, one mark.
    short = planned(by_hose(question(190.0, 8 - 72 / 190)))
    assert short.steps[0].volume_l == 1.0
    # 44 L want 0.8 %: 44·(1 − 0.8/20) = 42.2 L of water, the concentrate in a bucket after it.
    long = planned(by_hose(question(154.0, 8 + 7.2 * 44 / 154, weak_pct=0.0)))
    assert long.steps[0].volume_l == 42.0
    assert long.totals.concentrate_l > 0


def test_buckets_after_the_hose_are_planned_for_the_thinner_sump() -> None:
    # 48.8 L of water are 45 L in marks of 5 L; 53 L at 18.6 % are left, not at 20 %.
    ask = question(100.0, 6.0, bucket=(20.0, 5.0, 0.05))
    plan = planned(by_hose(replace(ask, mixing=replace(ask.mixing, closeness_pct=0.05))))
    assert plan.steps[0].volume_l == 45.0
    assert plan.final.strength_pct.value == pytest.approx(8.0, abs=0.1)


def test_lighter_buckets_hold_one_mark_of_water_and_one_of_concentrate_at_least() -> None:
    # 1 L and 0.5 L beside a pail of 1 kg are 2.5 kg; 2.2 kg would be water alone.
    ask = question(154.0, 12.0, strong_pct=60.0, weak_pct=0.0, bucket=(10.0, 1.0, 0.5))
    for heaviest_kg, is_found in ((2.5, True), (2.2, False)):
        asked = replace(ask, effort=Effort(heaviest_kg=heaviest_kg))
        main = filled(asked)
        assert "bucket_heavy" in main.cautions
        assert (lighter_buckets(asked, main) is not None) is is_found


def test_only_a_set_weight_makes_the_main_plan_lighter() -> None:
    # 20 L weigh more than 16 kg, of which a person who set a number of buckets is only warned.
    large = question(100.0, 6.0, bucket=(20.0, 1.0, 0.05))
    for effort in (None, Effort(most_buckets=20)):
        assert "bucket_heavy" in plan_recipe(replace(large, effort=effort)).cautions
    light = plan_recipe(replace(large, effort=Effort(heaviest_kg=16.0)))
    assert "bucket_heavy" not in light.cautions


def test_no_lighter_buckets_where_the_plan_has_no_heavy_one() -> None:
    # 5 L of room are one bucket of 6 kg at the most, where 8 kg may be carried.
    ask = replace(question(193.0, 7.0), effort=Effort(heaviest_kg=8.0))
    assert lighter_buckets(ask, filled(ask)) is None


def test_lighter_buckets_where_so_little_holds_a_single_mix() -> None:
    # 6 kg are 5 L beside the pail of 1 kg: 4 L and 1 L, 20 %, and nothing else from 15 to 20 %.
    ask = question(strong_pct=20.0, weak_pct=15.0, bucket=(10.0, 4.0, 1.0))
    ask = replace(ask, effort=Effort(heaviest_kg=6.0))
    lighter = planned(lighter_buckets(ask, filled(ask)))
    assert [(pour.water_l, pour.concentrate_l) for pour in lighter.pours] == [(4.0, 1.0)]


@pytest.mark.parametrize(
    ("strength_pct", "reached_pct"),
    # (1000·15.9 + 1000·2)/2000 and so on: 980 L of water and 20 L are the 2 %, whether that ends
    # inside the band or beyond it.
    [(15.9, 8.95), (15.0, 8.5), (20.0, 11.0)],
)
def test_hose_and_buckets_together_are_no_thinner_than_the_weakest_mix(
    strength_pct: float, reached_pct: float
) -> None:
    plan = planned(by_hose(question(1000.0, strength_pct, fill_to_l=2000.0, weak_pct=2.0)))
    # 1000·(1 − 2/20) L by the hose.
    assert plan.steps[0].volume_l == 900.0
    assert plan.totals.concentrate_l == pytest.approx(20.0, abs=0.5)
    assert plan.totals.water_l == pytest.approx(980.0, abs=1.0)
    assert plan.final.strength_pct.value == pytest.approx(reached_pct, abs=0.05)


def test_buckets_after_the_hose_may_be_weaker_than_the_strongest_premix() -> None:
    # 987·(1 − 2/20) L are 880 L in marks of 10 L; the 107 L that are left bring 987·2 % at 18.4 %.
    plan = planned(
        by_hose(question(1013.0, 15.0, fill_to_l=2000.0, weak_pct=2.0, bucket=(20.0, 10.0, 0.05)))
    )
    assert plan.steps[0].volume_l == 880.0
    # (1013·15 + 987·2)/2000; one mark of the jug in each of eight buckets is 0.02 points.
    assert plan.final.strength_pct.value == pytest.approx(8.5845, abs=0.02)
