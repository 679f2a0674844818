"""pycore.recipe.harm: doing nothing beats harm; balances by hand."""

from dataclasses import replace

import pytest

from pycore.recipe.harm import does_harm, harmless_pours, lower_cautions
from pycore.recipe.plan import plan_recipe
from pycore.recipe.request import Pail
from tests.unit.recipe.shop import question, space


@pytest.mark.parametrize(
    ("volume_l", "strength_pct", "after_pct", "harms"),
    [
        (154.0, 6.0, 5.9, True), (154.0, 6.0, 6.0, False), (154.0, 6.0, 9.0, False),
        (154.0, 6.0, 9.5, True), (154.0, 8.0, 6.9, True), (154.0, 8.0, 7.0, False),
        # Past the band to its other side is harm however near to it.
        (154.0, 12.0, 6.9, True), (154.0, 12.0, 7.0, False), (154.0, 12.0, 12.1, True),
        # A fifth of 198 L are 39.6 L: below that it is a new charge, which may be too rich.
        (39.5, 8.0, 10.0, False), (39.6, 8.0, 10.0, True), (39.5, 8.0, 6.9, True),
    ],
)  # fmt: skip
def test_harm_is_further_from_the_band_than_now(
    volume_l: float, strength_pct: float, after_pct: float, harms: bool
) -> None:
    assert does_harm(question(volume_l, strength_pct), after_pct) is harms


def test_plain_water_is_not_poured_into_a_lean_sump() -> None:
    # A pail of 10 L with marks every 5 L and a jug of 3 L: 5 L + 3 L is above 20 %, so only plain
    # water may be poured; 40 L of it would bring 6 % down to 924/194 = 4.76 %.
    plan = plan_recipe(question(154.0, 6.0, weak_pct=0.0, bucket=(10.0, 5.0, 3.0)))
    assert (plan.pours, plan.verdict) == ([], "out_of_band")
    assert plan.cautions[:3] == ["not_filled_up", "best_reachable", "marks_too_coarse"]
    up = {way.why: way for way in plan.alternatives}["fill_up"]
    assert up.final.strength_pct.value == pytest.approx(924 / 194)


def test_new_charge_is_never_thinner_than_the_band_where_marks_are_coarse() -> None:
    # A jug that shows nothing below 5 L makes 50 % beside 5 L of water: plain water is left.
    coarse = question(4.5, 0.0, weak_pct=0.0)
    plan = plan_recipe(replace(coarse, pail=Pail(jug_first_mark_l=5.0)))
    assert (plan.pours, plan.verdict) == ([], "out_of_band")
    assert plan.cautions[:3] == ["not_filled_up", "best_reachable", "marks_too_coarse"]
    # Nor is that offered as another way: an emptied sump rusts under plain water.
    assert plan.alternatives == []
    # 2.5 L need 10 L of water; 13.5 L at 8.1 % bear 2.1 L of plain water at the most.
    plan = plan_recipe(question(13.5, 8.1, weak_pct=0.0, bucket=(10.0, 1.0, 2.5)))
    assert plan.verdict != "out_of_band"
    assert plan.final.volume_l <= 15.6
    assert plan.cautions == ["not_filled_up", "marks_too_coarse"]
    assert "fill_up" not in [way.why for way in plan.alternatives]
    # A sump that is not empty has enough in it.
    assert lower_cautions(question(), ["nothing_to_pour"]) == ["not_filled_up", "nothing_to_pour"]


def test_level_stays_lower_where_filling_up_leaves_the_band() -> None:
    # 100 L at 8.5 % with a premix of 5 %: (850 + 98·5)/198 = 6.77 %, and 7.0 % at 175 L.
    ask = question(100.0, 8.5, strong_pct=5.0)
    plan = plan_recipe(ask)
    assert plan.verdict != "out_of_band"
    assert 100.0 < plan.final.volume_l <= 175.0
    assert plan.cautions[0] == "not_filled_up"
    assert harmless_pours(space(ask)).outside_pct == 0


def test_new_charge_is_filled_whatever_was_left() -> None:
    # 20 L at 8.5 % with a premix of 5 %: (170 + 178·5)/198 = 5.35 %.
    plan = plan_recipe(question(20.0, 8.5, strong_pct=5.0))
    assert plan.final.volume_l > 196.0
    assert plan.verdict == "out_of_band"
    assert "not_filled_up" not in plan.cautions


def test_nothing_is_poured_where_every_bucket_does_harm() -> None:
    # 7.0 % is the edge of the band, and the premix of 5 % is below it.
    edge = replace(question(150.0, 7.0, strong_pct=5.0))
    assert harmless_pours(space(edge)).pours == ()
    assert plan_recipe(edge).pours == []


@pytest.mark.parametrize(
    ("strength_pct", "strong_pct", "weak_pct"), [(6.0, 4.0, 0.0), (9.5, 20, 10)]
)
def test_no_level_is_tried_where_every_bucket_leads_away(
    monkeypatch: pytest.MonkeyPatch, strength_pct: float, strong_pct: float, weak_pct: float
) -> None:
    def searched(_: object) -> None:
        raise AssertionError

    monkeypatch.setattr("pycore.recipe.harm.best_pours", searched)
    ask = question(154.0, strength_pct, strong_pct=strong_pct, weak_pct=weak_pct)
    assert harmless_pours(space(ask)).pours == ()
