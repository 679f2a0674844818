"""pycore.recipe.stock: the levels that are tried, from shares of concentrate by hand."""

from dataclasses import replace

import pytest

from pycore.recipe.request import PlanRequest, Stock
from pycore.recipe.stock import _levels_l, _share_of_concentrate, _strongest_fill_l
from tests.unit.recipe.shop import question


@pytest.mark.parametrize(
    ("ask", "leanest", "richest"),
    [
        # 50 mL in 7 L of water are 0.7 %, as near to 1 % as may be rounded; 2 L in 8 L are 20 %.
        (question(), 0.05 / 7.05, 0.2),
        # 0.5 L beside 8 L of water, and 2 L: marks every 2 L and 0.5 L.
        (question(bucket=(10.0, 2.0, 0.5)), 0.5 / 8.5, 0.2),
        # Beside 1 L of water 2 L fill a pail of 3 L; 0.5 L beside 2 L are the least.
        (question(strong_pct=100.0, weak_pct=5.0, bucket=(3.0, 1.0, 0.5)), 0.2, 2 / 3),
        # Plain water and nothing else: 3 L beside 5 L or in a pail of 10 L with 10 L are too much.
        (question(weak_pct=0.0, bucket=(10.0, 5.0, 3.0)), 0.0, 0.0),
        # Of more marks than are tried one by one neat concentrate is the limit.
        (question(strong_pct=100.0, weak_pct=0.0, bucket=(40.0, 0.5, 0.05)), 0.0, 1.0),
    ],
)
def test_share_of_concentrate(ask: PlanRequest, leanest: float, richest: float) -> None:
    assert _share_of_concentrate(ask) == pytest.approx((leanest, richest))


@pytest.mark.parametrize(
    ("have_l", "share", "litres"),
    [
        # Marks every 2 L and 0.5 L: 1.5 L take 6 L at a fifth, and 3.5 L, so 4 L, at 0.3.
        (1.7, 0.2, 7.5), (1.5, 0.3, 5.5),
        # 0.5 L take 2 L at a fifth and half a litre at a half, so one mark.
        (0.7, 0.2, 2.5), (0.5, 0.5, 2.5), (0.4, 0.2, 0.0),
    ],
)  # fmt: skip
def test_strongest_fill(have_l: float, share: float, litres: float) -> None:
    ask = question(bucket=(10.0, 2.0, 0.5))
    assert _strongest_fill_l(ask, have_l, share) == pytest.approx(litres)


def down(highest_l: float, step_l: float = 1.0, count: int = 12) -> list[float]:
    return [highest_l - step * step_l for step in range(count)]


@pytest.mark.parametrize(
    ("ask", "stock", "levels_l"),
    [
        # (924 + 300)/7 L is as high as 3 L reach; at a fifth they and 12 L of water end at 169 L.
        (question(), Stock(3.0), down(1224 / 7) + down(180.0)[::-1]),
        # On the low end or above it the strongest fill is of no use.
        (question(154.0, 7.0), Stock(3.0), down((1078 + 300) / 7)),
        # In half litres.
        (question(bucket=(10.0, 0.5, 0.05)), Stock(3.0),
         down(1224 / 7, 0.5) + down(174.5, 0.5)[::-1]),
        # 20 L of water in buckets of a fifth are 25 L; concentrate there is enough.
        (question(), Stock(water_l=20.0), [*down(179.0), 198.0]),
        # Nothing at or below what is there and nothing above the mark.
        (question(20.0, 6.0, fill_to_l=24.0, strong_pct=25.0), Stock(0.34),
         [22.0, 21.0, 21.3, 22.3, 23.3]),
        # Rich: 0.1 L reach for 14.1 L of the leanest buckets.
        (question(150.0, 12.0), Stock(0.1), down(164.1)),
        # A new charge is for the aim: (2.4 + 500)/8 L, and 25 L of the strongest.
        (question(6.0, 0.4), Stock(5.0), down(62.8) + down(42.0)[::-1]),
        # Plain water only: one mark of 5 L.
        (question(100.0, 11.0, weak_pct=0.0, bucket=(10.0, 5.0, 3.0)), Stock(1.0, 5.0), [105.0]),
        # Neat concentrate needs no water.
        (question(154.0, 8.0, strong_pct=100.0, weak_pct=0.0, bucket=(40.0, 0.5, 0.05)),
         Stock(water_l=5.0), down(198.0, 0.5)),
    ],
)  # fmt: skip
def test_levels(ask: PlanRequest, stock: Stock, levels_l: list[float]) -> None:
    assert list(_levels_l(replace(ask, stock=stock))) == pytest.approx(levels_l)
