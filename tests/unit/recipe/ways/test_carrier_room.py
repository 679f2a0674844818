"""pycore.recipe.carrier: room that is left above the sump's own fluid and its concentrate."""

from dataclasses import replace

import pytest

from pycore.recipe.carrier import by_own_fluid
from pycore.recipe.outcome import Plan
from pycore.recipe.request import OwnFluid
from tests.unit.recipe.shop import question


def carried(
    volume_l: float, strength_pct: float, bucket: tuple[float, float, float] = (10.0, 1.0, 0.05)
) -> Plan:
    ask = question(volume_l, strength_pct, bucket=bucket)
    plan = by_own_fluid(replace(ask, own_fluid=OwnFluid(True)))
    assert plan is not None
    return plan


def test_room_that_is_left_is_filled_with_mix_at_the_aim() -> None:
    # 100·(8 − 6)/92 = 2.17 L of concentrate, 43 marks, leave 95.85 L to fill at 8 %.
    plan = carried(100.0, 6.0)
    assert [pour.kind for pour in plan.pours] == ["own_fluid", "own_fluid", None]
    assert sum(p.count * p.concentrate_l for p in plan.pours[:2]) == pytest.approx(2.15)
    assert 198.0 - 1.05 <= plan.final.volume_l <= 198.0
    assert plan.final.strength_pct.value == pytest.approx(8.0, abs=0.05)


def test_no_bucket_of_mix_is_fuller_than_any_of_own_fluid_before_it() -> None:
    # 176·(8 − 3)/92 = 9.57 L, 19 marks of half a litre: four times 10 + 2 L, once 10 + 1.5 L. One
    # bucket fits into the 12.5 L that are left, and the pail would hold 12 L.
    plan = carried(176.0, 3.0, (12.0, 1.0, 0.5))
    own = [(p.count, p.fluid_l, p.concentrate_l) for p in plan.pours if p.kind == "own_fluid"]
    assert own == [(4, 10.0, 2.0), (1, 10.0, 1.5)]
    mixed = [pour for pour in plan.pours if pour.kind is None]
    assert [pour.count for pour in mixed] == [1]
    assert 11.0 <= mixed[0].water_l + mixed[0].concentrate_l <= 11.5
    assert plan.final.strength_pct.value == pytest.approx(8.0, abs=0.05)


def test_more_than_three_kinds_of_buckets_are_not_kept_apart() -> None:
    # 105·(8 − 5)/92 = 3.42 L in two kinds of own fluid; the 89.6 L above would take two more.
    plan = carried(105.0, 5.0)
    assert [pour.kind for pour in plan.pours] == ["own_fluid", "own_fluid"]
    assert plan.final.volume_l == pytest.approx(108.4)
    assert plan.final.strength_pct.value == pytest.approx(8.0, abs=0.05)
