"""pycore.recipe.ways: when each other way is offered. Their laws stand in tests/properties."""

from dataclasses import replace
from typing import Any

import pytest

from pycore.quantity.measured import Measured
from pycore.recipe.outcome import Alternative
from pycore.recipe.plan import plan_recipe
from pycore.recipe.request import (
    DrawOff,
    Effort,
    Losses,
    MixingUnit,
    OwnFluid,
    Pail,
    PlanRequest,
    ReadyMix,
    Stock,
    SumpState,
    Target,
)
from tests.unit.recipe.shop import question


def ways(ask: PlanRequest) -> dict[str, Alternative]:
    return {way.why: way for way in plan_recipe(ask).alternatives}


def full(strength_pct: float = 5.0, **more: Any) -> PlanRequest:
    return replace(question(198.0, strength_pct), **more)


def test_strong_buckets_first_and_a_reading_half_way() -> None:
    way = ways(question())["strong_first"]
    strengths = [p.concentrate_l / (p.water_l + p.concentrate_l) for p in way.pours]
    # 20 % is four parts of water to one, and the rest is weaker.
    assert strengths[0] == pytest.approx(0.2)
    assert strengths[-1] < 0.2
    kinds = [step.kind for step in way.steps]
    assert kinds[:3] == ["bucket", "run", "read_again"]
    assert kinds.count("read_again") == 2
    assert way.final.volume_l <= 198.0 + 1e-9


@pytest.mark.parametrize(
    ("volume_l", "strength_pct", "weak_pct"),
    [(713.0, 6.0, 0.0), (778.0, 5.0, 0.0), (778.0, 6.0, 1.0)],
)
def test_strong_buckets_first_are_three_kinds_at_the_most(
    volume_l: float, strength_pct: float, weak_pct: float
) -> None:
    # With 4 US gal pails in whole gallons and this closeness the rest would come in three kinds.
    gal_l = 3.785411784
    bucket = (4 * gal_l, gal_l, gal_l / 32)
    ask = question(
        volume_l, strength_pct, fill_to_l=1000.0, strong_pct=35.0, weak_pct=weak_pct, bucket=bucket
    )
    way = ways(replace(ask, mixing=replace(ask.mixing, closeness_pct=0.01))).get("strong_first")
    assert way is None or len(way.pours) <= 3


@pytest.mark.parametrize(
    ("volume_l", "strength_pct"),
    [(170.0, 8.2), (150.0, 9.6), (10.0, 2.0), (188.0, 5.0), (191.0, 6.8), (176.5, 4.0),
     (170.0, 5.3), (154.0, 7.2), (178.0, 6.6), (154.0, 5.0)],
)  # fmt: skip
def test_no_strong_buckets_first(volume_l: float, strength_pct: float) -> None:
    # In range, rich, nearly empty, out of reach, a single bucket, out of reach of three, in reach
    # of the strongest only, and four strong pails that leave 4 of 44 L to decide about.
    assert "strong_first" not in ways(question(volume_l, strength_pct))


def test_all_alike_beside_two_kinds() -> None:
    plan = plan_recipe(question(170.0, 8.2))
    way = ways(question(170.0, 8.2))["alike"]
    assert len(plan.pours) > 1
    assert len(way.pours) == 1
    assert way.verdict != "out_of_band"
    assert "alike" not in ways(question())


def doubtful(volume_u: float, strength_u: float, strength_pct: float = 6.0) -> PlanRequest:
    ask = question(154.0, strength_pct)
    state = SumpState(Measured(154.0, volume_u), Measured(strength_pct, strength_u))
    return replace(ask, sump=state)


@pytest.mark.parametrize(
    ("volume_u", "strength_u", "offered"),
    [(15.4, 0.1, True), (15.3, 0.1, False), (1.0, 0.3, False), (1.0, 0.8, True)],
)
def test_smaller_dose_where_volume_or_reading_isdoubtful(
    volume_u: float, strength_u: float, offered: bool
) -> None:
    # A tenth of the volume, or more than the closeness of 0.5 points in the result.
    ask = doubtful(volume_u, strength_u)
    found = ways(ask)
    assert ("smaller_dose" in found) is offered
    if offered:
        dose, main = found["smaller_dose"].totals, plan_recipe(ask).totals
        assert dose.concentrate_l < main.concentrate_l


def test_no_smaller_dose_into_a_rich_sump() -> None:
    assert "smaller_dose" not in ways(doubtful(30.0, 1.0, 10.0))


def test_room_up_to_the_never_above_mark() -> None:
    way = ways(full(never_above_l=212.0))["above_full_mark"]
    assert 198.0 < way.final.volume_l <= 212.0 + 1e-9
    assert "above_full_mark" not in ways(full(never_above_l=198.0))
    assert "above_full_mark" not in ways(full())
    # Only where the band is out of reach without it.
    assert "above_full_mark" not in ways(replace(question(), never_above_l=212.0))


def test_ways_of_a_lean_and_full_sump() -> None:
    ask = full(own_fluid=OwnFluid(True), never_above_l=212.0)
    assert list(ways(ask)) == [
        "own_fluid", "above_full_mark", "leave_room", "least_draw_off", "draw_off_to_aim",
    ]  # fmt: skip
    drawing = replace(ask, draw_off=DrawOff(allowed=True, mark_l=1.0))
    # Its own coolant takes out less then, and is the main plan.
    assert list(ways(drawing)) == ["above_full_mark", "leave_room", "least_draw_off"]
    fresh = replace(drawing, own_fluid=None)
    # Without it nothing would be poured at all.
    assert list(ways(fresh)) == ["above_full_mark", "leave_room", "draw_off_to_aim"]
    with_room = ways(replace(fresh, fill_to_l=208.0))["without_draw_off"]
    assert (with_room.draw_off_l, with_room.totals.buckets) == (0, 1)
    assert ways(ask)["least_draw_off"].draw_off_l == plan_recipe(fresh).draw_off_l


def test_ways_of_a_rich_and_full_sump() -> None:
    assert list(ways(full(11.0, losses=Losses(2.0)))) == [
        "use_it_up", "least_draw_off", "draw_off_to_aim",
    ]  # fmt: skip


def test_draw_off_to_the_aim_only_where_it_takes_more() -> None:
    # With a closeness as wide as the band the least is the way to the aim already.
    ask = full(5.0)
    wide = replace(ask, mixing=replace(ask.mixing, closeness_pct=2.0))
    assert "draw_off_to_aim" in ways(ask)
    assert "draw_off_to_aim" not in ways(wide)


def test_more_is_taken_out_only_for_what_the_glass_shows() -> None:
    # 34 L for 7.5 % or more, 40 L for 8 %; with an aim of 7.6 % nothing is gained that shows.
    assert ways(full())["draw_off_to_aim"].final.strength_pct.value == pytest.approx(8.0, abs=0.05)
    near = replace(full(), target=Target(7.0, 7.6, 9.0))
    least = ways(near)["least_draw_off"].final.strength_pct.value
    assert abs(least - 7.6) < 0.1
    assert "draw_off_to_aim" not in ways(near)


def by_pail(volume_l: float, strength_pct: float, **more: Any) -> PlanRequest:
    """Concentrate by marks of 2 L in a pail of 15 L, up to 25 %."""
    ask = question(volume_l, strength_pct, strong_pct=25.0, bucket=(15.0, 2.0, 0.05))
    return replace(ask, pail=Pail(measure_by="pail"), target=Target(5.4, 5.9, 6.2), **more)


def test_no_way_that_misses_a_band_the_main_plan_meets() -> None:
    # Strong buckets first would end far above it, since the rest has no room left to thin them.
    ask = by_pail(108.0, 3.9)
    assert plan_recipe(ask).verdict != "out_of_band"
    outside = {why for why, way in ways(ask).items() if way.verdict == "out_of_band"}
    assert outside <= {"fill_up"}
    # A unit up to 10 % brings (135·3 + 63·10)/198 = 5.2 %, and the buckets 8 %.
    unit = replace(question(135.0, 3.0), unit=MixingUnit(1.0, 10.0, 0.5))
    assert plan_recipe(unit).verdict == "on_target"
    assert "mixing_unit" not in ways(unit)


def test_no_way_that_leads_further_off_than_doing_nothing() -> None:
    # The unit gives 3 % at the most: (150·6.5 + 48·3)/198 = 5.65 %; pails of 6 % less far.
    lean = question(150.0, 6.5, strong_pct=6.0)
    assert "mixing_unit" not in ways(replace(lean, unit=MixingUnit(1.0, 3.0, 0.5)))
    assert "fill_up" in ways(lean)


def test_room_above_the_mark_is_no_way_where_it_is_not_used() -> None:
    # 10 L of room and 10.5 L hold the same pail of 8 L and 2 L.
    ask = replace(question(188.0, 2.0), draw_off=DrawOff(allowed=True, mark_l=1.0))
    found = ways(replace(ask, never_above_l=198.5))
    assert "above_full_mark" not in found
    assert found["without_draw_off"].final.volume_l == 198.0


def test_why_the_aim_is_out_of_reach_is_said_by_the_main_plan_alone() -> None:
    plan = plan_recipe(replace(question(180.0, 2.0), never_above_l=212.0))
    assert plan.cautions[:2] == ["best_reachable", "needs_stronger_premix"]
    above = next(way for way in plan.alternatives if way.why == "above_full_mark")
    told = ["gloves_and_eyes", "water_first", "weak_must_not_stand"]
    assert (above.verdict, above.cautions) == ("out_of_band", told)


def test_one_way_has_one_name() -> None:
    # Lower buckets are all alike here: 7 L each, where this person may carry 8 kg.
    ask = replace(question(100.0, 7.4), effort=Effort(heaviest_kg=8.0))
    for asked in (ask, replace(ask, sump=question(170.0, 8.2).sump)):
        done = [(way.wait, way.steps, way.pours) for way in plan_recipe(asked).alternatives]
        assert all(done.count(each) == 1 for each in done)
    mix = ReadyMix(15.0, 60.0)
    found = plan_recipe(replace(question(), stock=Stock(ready_mixes=[mix, mix]))).alternatives
    assert [way.why for way in found].count("ready_mix") == 1


def test_ready_mix_only_where_it_is_enough() -> None:
    good = Stock(ready_mixes=[ReadyMix(15.0, 60.0), ReadyMix(2.0, 60.0)])
    found = plan_recipe(replace(question(), stock=good)).alternatives
    ready = [w for w in found if w.why == "ready_mix"]
    assert len(ready) == 1
    assert ready[0].final.strength_pct.value == pytest.approx(8.0)


def test_another_way_comes_first_when_it_is_too_much_to_carry() -> None:
    unit = MixingUnit(1.0, 20.0, 0.5)
    large = replace(question(10.0, 0.0), unit=unit)
    assert {"mixing_unit", "hose", "two_days"} <= set(ways(large))
    small = ways(replace(question(), unit=unit))
    assert "mixing_unit" in small
    assert "hose" not in small
    assert "two_days" not in small
    assert "mixing_unit" not in ways(question(10.0, 0.0))


def test_no_way_twice_and_none_like_the_main_plan() -> None:
    for ask in (question(), full(), full(11.0), question(10.0, 0.0)):
        plan = plan_recipe(ask)
        names = [way.why for way in plan.alternatives]
        assert len(set(names)) == len(names)
        assert not [w for w in plan.alternatives if w.wait is None and w.steps == plan.steps
                    and w.pours == plan.pours]  # fmt: skip
