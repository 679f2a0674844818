"""pycore.recipe.plan: cases, verdicts and steps. Laws for every plan stand in tests/properties."""

from dataclasses import replace

import pytest

from pycore.quantity.fault import Fault
from pycore.recipe.plan import plan_recipe
from pycore.recipe.request import DrawOff, Pail, Stock
from tests.unit.recipe.shop import question


@pytest.mark.parametrize(
    ("volume_l", "strength_pct", "case"),
    [(154.0, 6.0, "lean_low"), (198.0, 6.0, "lean_full"), (154.0, 8.0, "in_range_low"),
     (198.0, 8.0, "in_range_full"), (154.0, 12.0, "rich_low"), (198.0, 12.0, "rich_full"),
     (0.0, 0.0, "emptied"), (39.0, 6.0, "new_charge"), (40.0, 6.0, "lean_low"),
     (154.0, 7.0, "in_range_low"), (154.0, 9.0, "in_range_low")],
)  # fmt: skip
def test_case(volume_l: float, strength_pct: float, case: str) -> None:
    assert plan_recipe(question(volume_l, strength_pct)).case == case


@pytest.mark.parametrize(
    ("volume_l", "strength_pct", "verdict"),
    [(154.0, 6.0, "on_target"), (198.0, 8.0, "on_target"), (198.0, 8.6, "in_band"),
     (198.0, 9.0, "in_band"), (198.0, 9.1, "out_of_band"), (198.0, 6.0, "out_of_band"),
     (190.0, 6.0, "out_of_band")],
)  # fmt: skip
def test_verdict(volume_l: float, strength_pct: float, verdict: str) -> None:
    assert plan_recipe(question(volume_l, strength_pct)).verdict == verdict


def test_walk_ends_with_running_the_pump_and_reading_again() -> None:
    kinds = [step.kind for step in plan_recipe(question()).steps]
    assert kinds[-2:] == ["run", "read_again"]
    assert kinds[0] == "bucket"
    assert plan_recipe(question(198.0, 8.0)).steps == []


def test_empty_sump_is_charged_at_the_aim() -> None:
    # C1·V1 = C2·V2 by hand: 198 L at 8 % hold 15.84 L of concentrate.
    plan = plan_recipe(question(0.0, 0.0))
    assert plan.totals.concentrate_l == pytest.approx(15.84, abs=198 * 0.005)
    assert plan.verdict == "on_target"


def test_too_rich_with_room_gets_the_weakest_mix() -> None:
    plan = plan_recipe(question(154.0, 15.0))
    assert plan.verdict == "out_of_band"
    assert all(100 * p.concentrate_l / (p.water_l + p.concentrate_l) <= 1.3 for p in plan.pours)


def test_contradiction_is_refused() -> None:
    with pytest.raises(Fault):
        plan_recipe(question(weak_pct=30.0))


def test_concentrate_measured_by_the_pail_comes_in_whole_marks_of_the_pail() -> None:
    by_pail = plan_recipe(replace(question(), pail=Pail(measure_by="pail")))
    assert by_pail.totals.concentrate_l > 0
    assert all(pour.concentrate_l == round(pour.concentrate_l) for pour in by_pail.pours)
    by_jug = plan_recipe(replace(question(), pail=Pail(measure_by="jug")))
    assert by_jug.pours == plan_recipe(question()).pours


def test_never_above_below_full_is_refused() -> None:
    with pytest.raises(Fault) as caught:
        plan_recipe(replace(question(), never_above_l=150.0))
    assert caught.value.path == "never_above_l"


@pytest.mark.parametrize(
    ("volume_l", "strength_pct", "draw_off_l"),
    [(198.0, 5.0, 34.0), (198.0, 8.6, 0.0), (154.0, 6.0, 0.0)],
)
def test_taken_out_only_where_the_band_is_out_of_reach(
    volume_l: float, strength_pct: float, draw_off_l: float
) -> None:
    allowed = replace(question(volume_l, strength_pct), draw_off=DrawOff(True, 1.0))
    assert plan_recipe(allowed).draw_off_l == draw_off_l


def test_best_reachable_where_not_even_taking_out_helps() -> None:
    # The strongest premix is 6 %, below the band.
    weak = replace(question(198.0, 5.0, strong_pct=6.0), draw_off=DrawOff(True, 1.0))
    plan = plan_recipe(weak)
    assert (plan.verdict, plan.draw_off_l, plan.pours) == ("out_of_band", 0.0, [])


def test_what_to_fetch_is_said_only_where_the_stock_is_short() -> None:
    short = plan_recipe(replace(question(), stock=Stock(concentrate_l=3.0)))
    fetch = next(way for way in short.alternatives if way.why == "fetch_concentrate")
    assert fetch.pours == plan_recipe(question()).pours
    enough = plan_recipe(replace(question(), stock=Stock(concentrate_l=30.0)))
    assert [way.why for way in enough.alternatives if way.why == "fetch_concentrate"] == []


def test_nothing_comes_out_where_a_weak_mix_in_whole_marks_reaches_the_band() -> None:
    # 39.5 L at 1 % would end at 9.005 %; 39 L with 0.3 L, in buckets of 7 and 6 L with 50 mL each,
    # end at 1773.5/197.8 = 8.97 %.
    ask = replace(question(158.5, 11.0), draw_off=DrawOff(allowed=True, mark_l=1.0))
    plan = plan_recipe(ask)
    assert plan.reachable.low_pct > 9.0
    assert (plan.draw_off_l, plan.verdict) == (0.0, "in_band")
    assert plan.final.strength_pct.value == pytest.approx(1773.5 / 197.8)


def test_what_is_short_can_be_fetched_or_filled_less_high() -> None:
    full = plan_recipe(question())
    some = plan_recipe(replace(question(), stock=Stock(concentrate_l=5.0)))
    ways = {way.why: way for way in some.alternatives}
    assert ways["fetch_concentrate"].pours == full.pours
    # 154 L at 6 % and 5 L: 7 % at (9.24 + 5)/7 % = 203 L, so the band in 198 L; 8 % in 178 L.
    assert ways["fill_less"].final.volume_l == pytest.approx(178.0, abs=1.05)
    dry = plan_recipe(replace(question(), stock=Stock(water_l=20.0)))
    assert [w.why for w in dry.alternatives if w.pours == full.pours] == ["fetch_water"]
    assert "fill_less" not in [way.why for way in dry.alternatives]
    for plan in (some, dry):
        assert all(w.wait or w.pours != plan.pours for w in plan.alternatives)
