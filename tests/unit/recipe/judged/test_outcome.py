"""pycore.recipe.outcome: verdict on its edges, case, and what a plan is made of."""

from dataclasses import replace

import pytest

from pycore.recipe.marks import Group, Space
from pycore.recipe.outcome import alternative, bucket_pours, case_of, drawn, made, verdict_of
from pycore.recipe.pours import Pour
from pycore.recipe.request import Target
from tests.unit.recipe.shop import question


@pytest.mark.parametrize(
    ("strength_pct", "verdict"),
    [(6.999, "out_of_band"), (7.0, "in_band"), (7.499, "in_band"), (7.5, "on_target"),
     (8.5, "on_target"), (8.501, "in_band"), (9.0, "in_band"), (9.001, "out_of_band")],
)  # fmt: skip
def test_verdict_on_its_edges(strength_pct: float, verdict: str) -> None:
    assert verdict_of(question(), 198.0, strength_pct) == verdict


def test_half_a_jug_mark_is_near_enough_in_a_small_sump() -> None:
    # Half a mark of 0.25 L is 0.125 L: 1.25 points of 10 L, 0.0625 points of 200 L.
    coarse = question(bucket=(10.0, 1.0, 0.25))
    assert verdict_of(coarse, 10.0, 7.1) == "on_target"
    assert verdict_of(coarse, 200.0, 7.1) == "in_band"
    assert verdict_of(coarse, 10.0, 6.9) == "out_of_band"
    assert verdict_of(question(), 0.0, 8.0) == "on_target"


def test_case_is_full_where_no_bucket_fits() -> None:
    assert case_of(question(10.0, 5.0), has_room=True) == "new_charge"
    assert case_of(question(10.0, 1.0), has_room=True) == "new_charge"
    assert case_of(question(10.0, 0.99), has_room=True) == "emptied"
    assert case_of(question(10.0, 5.0), has_room=False) == "lean_full"
    assert case_of(question(150.0, 9.0), has_room=True) == "in_range_low"
    assert case_of(question(150.0, 9.1), has_room=False) == "rich_full"


def test_what_is_taken_out_leaves_the_strength_alone() -> None:
    left = drawn(question(198.0, 5.0), 40.0)
    assert (left.sump.volume_l.value, left.sump.strength_pct.value) == (158.0, 5.0)
    ask = question()
    assert drawn(ask, 0.0) is ask


def test_marks_become_litres() -> None:
    groups = (Group(4, 8, 30), Group(1, 3, 12))
    assert bucket_pours(Space.of(question()), groups) == [
        Pour(4, 8.0, pytest.approx(1.5)),
        Pour(1, 3.0, pytest.approx(0.6)),
    ]


def test_plan_after_a_draw_off() -> None:
    # 198 − 40 = 158 L at 5 %, 40 L at 20 %: 15.9 L in 198 L.
    plan = made(question(198.0, 5.0), [Pour(4, 8.0, 2.0)], 40.0)
    assert plan.final.volume_l == pytest.approx(198.0)
    assert plan.final.strength_pct.value == pytest.approx(1590 / 198)
    assert (plan.case, plan.verdict, plan.draw_off_l) == ("lean_full", "on_target", 40.0)
    assert plan.reachable.high_pct == pytest.approx(1590 / 198)
    assert plan.steps[0].volume_l == 40.0


def test_what_is_run_in_counts_in_the_result() -> None:
    # 154 L at 6 % and 40 L of water: 9.24 L in 194 L.
    plan = made(question(), [], steps=[], run_in_l=(40.0, 0.0))
    assert plan.final.strength_pct.value == pytest.approx(924 / 194)
    assert (plan.totals.buckets, plan.totals.water_l, plan.verdict) == (0, 40.0, "out_of_band")


def test_another_way_carries_all_of_its_plan() -> None:
    plan = made(question(), [Pour(4, 8.0, 2.0)])
    way = alternative("alike", plan)
    for name in ("verdict", "draw_off_l", "pours", "steps", "totals", "final", "shares"):
        assert getattr(way, name) == getattr(plan, name), name
    assert (way.why, way.wait, way.cautions) == ("alike", None, plan.cautions)


def test_half_a_jug_mark_in_less_than_a_litre_and_in_nothing() -> None:
    coarse = question(bucket=(10.0, 1.0, 0.25))
    assert verdict_of(coarse, 0.5, 7.1) == "on_target"
    # 1.25 points of 10 L, and not more.
    wide = replace(coarse, target=Target(6.0, 8.0, 10.0))
    assert verdict_of(wide, 10.0, 8 - 1.24) == "on_target"
    assert verdict_of(wide, 10.0, 8 - 1.26) == "in_band"
    # With nothing in the sump a jug mark has no size in points.
    assert verdict_of(question(), 0.0, 8.9) == "in_band"


def test_a_fifth_is_no_new_charge_and_the_edge_is_in_range() -> None:
    assert case_of(question(40.0, 5.0, fill_to_l=200.0), has_room=True) == "lean_low"
    assert case_of(question(150.0, 7.0), has_room=True) == "in_range_low"


def test_what_is_run_in_counts_once_in_the_verdict() -> None:
    # 154 L at 6 % with 37.4 L of water and 6.6 L of concentrate: 15.84 L in 198 L.
    assert made(question(), [], steps=[], run_in_l=(37.4, 6.6)).verdict == "on_target"


def test_a_bucket_that_misses_a_band_in_reach_is_laid_to_the_marks() -> None:
    # 44 L of room with mixes of 1 to 20 % reach 4.9 to 9.1 %: 1 L of 4.8 % is not what it takes.
    poured = made(question(), [Pour(1, 1.0, 0.05)])
    assert poured.cautions[:2] == ["best_reachable", "marks_too_coarse"]
    # Up to 3 % it is the mix: 5.3 % at the most.
    weak = made(question(strong_pct=3.0), [Pour(1, 1.0, 0.05)])
    assert weak.cautions[:2] == ["best_reachable", "needs_stronger_premix"]
    rich = made(question(154.0, 14.0, weak_pct=2.0), [Pour(1, 1.0, 0.05)])
    assert rich.cautions[:2] == ["best_reachable", "needs_weaker_mix"]
