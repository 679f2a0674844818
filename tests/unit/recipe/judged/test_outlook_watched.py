"""pycore.recipe.outlook: a level that may be further out than the room below the mark."""

from dataclasses import replace

import pytest

from pycore.quantity.measured import Measured
from pycore.recipe.outcome import made
from pycore.recipe.outlook import may_overfill
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


@pytest.mark.parametrize(
    ("water_l", "u_l", "is_watched"),
    [
        # 190 L, and 1 L of concentrate: at the full mark of 198 L there is no room below it.
        (7.0, 6.0, True),
        # Above it the upper mark counts, 11.5 and 5 L further up.
        (7.5, 5.5, False),
        (7.5, 6.0, True),
        (14.0, 5.5, True),
    ],
)
def test_who_fills_above_the_full_mark_watches_the_upper_one(
    water_l: float, u_l: float, is_watched: bool
) -> None:
    ask = replace(question(volume_l=190.0, strength_pct=3.0), never_above_l=210.0)
    plan = made(replace(ask, level_u_l=u_l), [Pour(1, water_l, 1.0)])
    assert plan.final.volume_l == 191 + water_l
    assert ("watch_the_mark" in plan.cautions) is is_watched


def test_without_an_upper_mark_the_full_one_counts() -> None:
    ask = replace(question(volume_l=190.0, strength_pct=3.0), level_u_l=6.0)
    assert "watch_the_mark" in made(ask, [Pour(1, 8.0, 1.0)]).cautions


@pytest.mark.parametrize(
    ("u_l", "usable_l", "room_l", "may"),
    [
        (6.0, 11.9, 11.9, True),
        (6.0, 12.0, 0.0, False),
        (6.0, 5.0, 12.0, False),
        (6.0, 5.0, -1.0, True),
        (None, 0.5, -1.0, False),
    ],
)
def test_more_than_a_bucket_and_more_than_the_room(
    u_l: float | None, usable_l: float, room_l: float, may: bool
) -> None:
    assert may_overfill(u_l, usable_l, room_l) is may
