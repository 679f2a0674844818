"""pycore.recipe.carrier: the sump's own fluid carries concentrate, nothing is wasted."""

from dataclasses import replace

import pytest

from pycore.recipe.carrier import by_own_fluid
from pycore.recipe.outcome import Plan
from pycore.recipe.request import Bucket, DrawOff, OwnFluid, Pail, PlanRequest
from tests.unit.recipe.shop import question


def full(strength_pct: float = 5.0) -> PlanRequest:
    return replace(question(198.0, strength_pct), own_fluid=OwnFluid(True))


def low() -> PlanRequest:
    """With room for all of the concentrate below the mark, and for nothing more."""
    return replace(full(), fill_to_l=205.0)


def planned(ask: PlanRequest) -> Plan:
    plan = by_own_fluid(ask)
    assert plan is not None
    return plan


def test_concentrate_on_top_lands_on_the_aim() -> None:
    # V·(C2 − C1)/(100 − C2) = 198·3/92 = 6.457 L, 129 marks of 50 mL.
    plan = planned(low())
    assert plan.totals.concentrate_l == pytest.approx(6.45)
    assert plan.final.volume_l == pytest.approx(198 + 6.45)
    assert plan.final.strength_pct.value == pytest.approx((990 + 645) / 204.45)
    assert (plan.draw_off_l, plan.totals.water_l) == (0.0, 0.0)


def test_each_bucket_keeps_to_the_strongest_premix() -> None:
    # 8 L at 5 % may carry 8·15/80 = 1.5 L up to 20 %; the pail would hold 2 L.
    for pour in planned(full()).pours:
        assert pour.kind == "own_fluid"
        mixed = (5 * pour.fluid_l + 100 * pour.concentrate_l) / (pour.fluid_l + pour.concentrate_l)
        assert mixed <= 20.0
        assert pour.fluid_l + pour.concentrate_l <= 10.0


def test_few_buckets_as_alike_as_marks_allow() -> None:
    plan = planned(low())
    assert plan.totals.buckets == 5
    sizes = [pour.concentrate_l for pour in plan.pours]
    assert max(sizes) - min(sizes) == pytest.approx(0.05)


def test_what_does_not_fit_is_kept_out_as_good_fluid() -> None:
    # The 6.2 L of concentrate need 7 whole litres of room.
    plan = planned(full())
    assert plan.draw_off_l == 7.0
    assert [step.kind for step in plan.steps][:2] == ["take_out", "own_fluid"]
    assert 197.0 <= plan.final.volume_l <= 198.0
    # (191·5 + 100·k)/(191 + k) = 8: k = 191·3/92 = 6.228 L.
    assert plan.totals.concentrate_l == pytest.approx(6.228, abs=0.025)


def test_room_above_the_mark_is_not_used() -> None:
    assert planned(replace(full(), never_above_l=212.0)) == planned(full())
    # 198 L are 63 L above a mark of 135 L: 135·(8 − 5)/(100 − 5) = 4.26 L of it is concentrate.
    plan = planned(replace(full(), fill_to_l=135.0, never_above_l=212.0))
    assert plan.draw_off_l == 68.0
    assert 134.0 <= plan.final.volume_l <= 135.0
    assert plan.final.strength_pct.value == pytest.approx(8.0, abs=0.05)


def test_no_more_is_kept_out_than_can_be_taken() -> None:
    # 7 L stay out, and a bucket has to come out before it can be poured back: 1 L is the smallest.
    for most_l, is_found in ((8.0, True), (7.9, False), (6.9, False), (0.0, False)):
        ask = replace(full(), draw_off=DrawOff(allowed=False, mark_l=1.0, most_l=most_l))
        assert (by_own_fluid(ask) is not None) is is_found


def test_no_bucket_holds_more_than_can_be_taken_out() -> None:
    # 150 of 198 L are in the pipes: the pail of 10 L was filled from 5 L that come out.
    ask = replace(low(), draw_off=DrawOff(allowed=False, mark_l=1.0, most_l=5.5))
    carriers = [pour for pour in planned(ask).pours if pour.kind == "own_fluid"]
    assert carriers
    assert {pour.fluid_l for pour in carriers} == {5.0}


def test_only_where_it_is_allowed_and_the_sump_is_lean() -> None:
    assert by_own_fluid(question(198.0, 5.0)) is None
    assert by_own_fluid(replace(full(), own_fluid=OwnFluid(False))) is None
    assert by_own_fluid(full(7.0)) is None
    assert by_own_fluid(full(11.0)) is None


def test_no_plan_where_not_even_one_mark_may_be_carried() -> None:
    # 10 L of fluid at 5 % carry 10·0.2/94.8 = 21 mL up to 5.2 %: less than one mark.
    assert by_own_fluid(replace(full(), mixing=replace(full().mixing, strong_pct=5.2))) is None


def test_a_neat_premix_limit_is_the_pail_itself() -> None:
    ask = replace(
        low(),
        mixing=replace(full().mixing, strong_pct=100.0),
        bucket=Bucket(10.0, 1.0, 0.05),
    )
    plan = planned(ask)
    # A pail with 1 L of fluid has room for 9 L of concentrate: one bucket carries all.
    assert plan.totals.buckets == 1
    assert plan.totals.concentrate_l == pytest.approx(6.45)


def test_marks_that_pail_and_jug_do_not_have() -> None:
    # 8 L carry 1.5 L: with a first mark of 1.3 L the 129 marks of 50 mL are 4 × 30 and no rest.
    ask = replace(low(), pail=Pail(first_mark_l=7.0, jug_first_mark_l=1.3))
    assert [(p.count, p.fluid_l, p.concentrate_l) for p in planned(ask).pours] == [(4, 8.0, 1.5)]
    assert by_own_fluid(replace(full(), pail=Pail(jug_first_mark_l=1.55))) is None
    high = planned(replace(full(), pail=Pail(first_mark_l=9.0)))
    assert {pour.fluid_l for pour in high.pours} == {9.0}


def test_in_marks_of_half_a_litre() -> None:
    # 9 L: 6.2 L of concentrate need 6.5 L of room; 8 L carry 1.5 L and 7.5 L carry 1.4 L.
    half = replace(
        full(),
        bucket=Bucket(9.5, 0.5, 0.05),
        draw_off=DrawOff(allowed=True, mark_l=0.5),
    )
    plan = planned(half)
    assert plan.draw_off_l == 6.5
    # (191.5·5 + 100·k)/(191.5 + k) = 8: k = 191.5·3/92 = 6.245 L, 125 marks.
    assert plan.totals.concentrate_l == pytest.approx(6.25)
    assert {pour.fluid_l for pour in plan.pours} == {8.0}
    assert [(s.kind, s.volume_l, s.pour) for s in plan.steps] == [
        ("take_out", 6.5, None),
        *[("own_fluid", None, i) for i in range(len(plan.pours))],
        ("run", None, None),
        ("read_again", None, None),
    ]
    assert [(s.kind, s.pour) for s in planned(low()).steps][:2] == [
        ("own_fluid", 0), ("own_fluid", 1),
    ]  # fmt: skip


def test_one_mark_is_enough_and_a_pail_as_large_as_one_mark() -> None:
    # 0.6 L at 6.99 % to 8 %: 0.0066 L is no mark of 50 mL; 4.5 L want 0.049 L, one mark.
    small = replace(full(6.99), sump=question(4.5, 6.99).sump, fill_to_l=5.0)
    assert [(p.count, p.concentrate_l) for p in planned(small).pours] == [(1, 0.05)]
    tiny = replace(small, sump=question(0.6, 6.99).sump, fill_to_l=1.0)
    assert by_own_fluid(tiny) is None


def test_no_bucket_runs_over_where_neat_concentrate_may_go_in() -> None:
    neat = replace(full(), mixing=replace(full().mixing, strong_pct=100.0))
    assert all(p.fluid_l + p.concentrate_l <= 10.0 + 1e-9 for p in planned(neat).pours)


def test_rounding_to_marks_of_the_jug_never_passes_the_mark() -> None:
    # 191.52·(8 − C)/92 = 6.48 L fit below 198 L; 130 marks of 50 mL, 6.5 L, do not.
    lean = question(191.52, 8 - 6.48 * 92 / 191.52, fill_to_l=198.0)
    plan = planned(replace(lean, own_fluid=OwnFluid(True)))
    assert plan.draw_off_l == 0.0
    assert plan.final.volume_l == pytest.approx(191.52 + 6.45)


def test_what_is_kept_out_and_what_goes_in_belong_together() -> None:
    # 5/92 L of concentrate for each litre: 19 L and 1.03 L do not fit into 20 L, 18 L and 0.98 L
    # do. Twenty marks of 50 mL on 18 L at 3 % are 1.54 L in 19 L.
    small = question(20.0, 3.0, fill_to_l=20.0, strong_pct=12.0)
    plan = planned(replace(small, own_fluid=OwnFluid(True)))
    assert (plan.draw_off_l, plan.totals.concentrate_l) == (2.0, pytest.approx(1.0))
    assert plan.final.strength_pct.value == pytest.approx(100 * 1.54 / 19)
