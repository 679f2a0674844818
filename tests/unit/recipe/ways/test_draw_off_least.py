"""The least draw-off where the jug begins high, and where the closeness is as wide as the band."""

from dataclasses import replace

import pytest

from pycore.recipe.draw_off import least_draw_off
from pycore.recipe.request import DrawOff, Mixing, Pail, Target
from tests.unit.recipe.shop import question


def test_least_over_a_whole_bucket_where_the_jug_begins_high() -> None:
    # Every bucket has 0.4 L, at most 9.9 L: 1601·(11.6 − 5.8)/(11.6 − 4.04) = 1228.3 L. But 124
    # buckets hold 1227.6 L, so it takes 125 with 50 L: (1600.45·5.8 − 5000)/11.6 = 369.2 L stay.
    ask = question(1601.0, 11.6, fill_to_l=1601.0, bucket=(10.0, 0.5, 0.05))
    ask = replace(
        ask,
        target=Target(4.0, 4.0, 5.9),
        mixing=Mixing(10.0, 0.5, 0.1),
        pail=Pail(first_mark_l=1.5, jug_first_mark_l=0.4),
        draw_off=DrawOff(allowed=True, mark_l=0.25),
    )
    plan = least_draw_off(ask)
    assert plan is not None
    assert plan.draw_off_l == 1232.0
    assert plan.totals.concentrate_l == pytest.approx(50.0)


@pytest.mark.parametrize(
    ("volume_l", "strength_pct", "aim_pct", "least_l"),
    # 640·(7.3 − 4.1)/(25 − 4.1) = 97.99 L and 640·(11 − 7.3)/(11 − 0.498) = 225.5 L.
    [(640.0, 4.1, 7.8, 97.99), (640.0, 11.0, 6.8, 225.48)],
)
def test_least_where_the_aim_is_the_far_edge_of_a_narrow_band(
    volume_l: float, strength_pct: float, aim_pct: float, least_l: float
) -> None:
    # Nothing lands on an edge in whole marks; the middle of the band is as safe as it gets.
    ask = question(volume_l, strength_pct, fill_to_l=volume_l, bucket=(10.0, 0.5, 0.05))
    ask = replace(ask, target=Target(6.8, aim_pct, 7.8), mixing=Mixing(25.0, 0.5, 1.0))
    plan = least_draw_off(ask)
    assert plan is not None
    assert least_l <= plan.draw_off_l <= least_l + 3
    assert abs(plan.final.strength_pct.value - aim_pct) <= 0.5
