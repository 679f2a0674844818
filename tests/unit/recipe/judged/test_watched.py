"""pycore.recipe.outlook: a level that may be further out than the room below the mark."""

from dataclasses import replace

import pytest

from pycore.recipe.plan import plan_recipe
from tests.unit.recipe.shop import question


@pytest.mark.parametrize(
    ("u_l", "usable_l", "is_watched"),
    [
        # 44 L of room in 198 L, filled by 10 L buckets: twice 6 L is more than one and than 3 %.
        (6.0, 10.0, True),
        (4.9, 10.0, False),
        (6.0, 13.0, False),
        (None, 10.0, False),
        # Smaller than 3 % of the mark, though more than a small bucket.
        (2.9, 5.0, False),
        (3.1, 5.0, True),
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


def test_a_rough_level_says_nothing_where_nothing_is_poured() -> None:
    ask = replace(question(volume_l=198.0, strength_pct=8.0), level_u_l=20.0)
    assert "watch_the_mark" not in plan_recipe(ask).cautions
