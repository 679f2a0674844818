"""pycore.recipe.outlook: a level that may be further out than the room below the mark."""

from dataclasses import replace

import pytest

from pycore.quantity.measured import Measured
from pycore.recipe.holding import HoldingRequest, plan_holding
from pycore.recipe.outcome import made
from pycore.recipe.plan import plan_recipe
from pycore.recipe.pours import Pour
from pycore.recipe.request import HiddenState
from tests.unit.recipe.shop import question


@pytest.mark.parametrize(
    ("u_l", "usable_l", "is_watched"),
    [
        # 44 L of room in 198 L, filled by 10 L buckets: twice 6 L is more than one.
        (6.0, 10.0, True),
        (4.9, 10.0, False),
        (6.0, 13.0, False),
        (None, 10.0, False),
    ],
)
def test_a_level_that_may_be_out_by_a_bucket_is_watched(
    u_l: float | None, usable_l: float, is_watched: bool
) -> None:
    ask = replace(question(), level_u_l=u_l)
    ask = replace(ask, bucket=replace(ask.bucket, usable_l=usable_l))
    plan = plan_recipe(ask)
    assert ("watch_the_mark" in plan.cautions) is is_watched
    assert plan.pours


def test_what_is_hidden_makes_a_rough_level_no_better_known() -> None:
    ask = replace(question(), level_u_l=6.0, hidden=HiddenState(Measured(300.0, 15.0)))
    assert "watch_the_mark" in plan_recipe(ask).cautions


def test_a_rough_level_says_nothing_where_nothing_is_poured() -> None:
    ask = replace(question(volume_l=198.0, strength_pct=8.0), level_u_l=20.0)
    assert "watch_the_mark" not in plan_recipe(ask).cautions


@pytest.mark.parametrize(("never_above_l", "is_watched"), [(260.0, False), (210.0, True)])
def test_who_fills_above_the_full_mark_watches_the_upper_one(
    never_above_l: float, is_watched: bool
) -> None:
    ask = question(volume_l=190.0, strength_pct=3.0)
    # Filled up to the upper mark by the way that goes above the full one.
    plan = made(replace(ask, level_u_l=6.0, never_above_l=never_above_l), [Pour(1, 9.0, 1.0)])
    assert plan.final.volume_l == 200
    assert ("watch_the_mark" in plan.cautions) is is_watched


@pytest.mark.parametrize(("u_l", "is_watched"), [(6.0, True), (4.9, False), (None, False)])
def test_a_top_up_without_a_reading_is_watched_too(u_l: float | None, is_watched: bool) -> None:
    ask = question()
    asked = HoldingRequest(
        ask.sump.volume_l, ask.fill_to_l, 5.0, ask.target, ask.mixing, ask.bucket, level_u_l=u_l
    )
    holding = plan_holding(asked)
    assert holding.pours
    assert ("watch_the_mark" in holding.cautions) is is_watched
