"""pycore.recipe.harm: at which level pouring stops where filling up would do harm."""

from dataclasses import replace

import pytest

from pycore.recipe.harm import does_harm, harmless_pours
from pycore.recipe.marks import Pours, Space
from pycore.recipe.request import PlanRequest, Target
from tests.unit.recipe.shop import question, space


def litres(room: Space, pours: Pours) -> float:
    """What these pours bring into the sump."""
    return sum(group.count * room.bucket_l(group.water, group.jug) for group in pours)


def sour(strength_pct: float, weak_pct: float, jug_mark_l: float = 0.05) -> PlanRequest:
    """A sump of 100 L whose weakest mix is strong, with 98 L of room."""
    bucket = (10.0, 1.0, jug_mark_l)
    return question(100.0, strength_pct, weak_pct=weak_pct, strong_pct=30.0, bucket=bucket)


def test_a_sump_in_its_band_takes_what_keeps_it_there() -> None:
    # 11 % is the weakest mix but for rounding, 10.7 % at least: 98 L bring 9.3 %, and
    # (100·8 + 10.7·x)/(100 + x) is 9 % at 59 L. The 1.05 L of a mark of each, doubled six times,
    # may stay open.
    room = space(sour(8.0, 11.0))
    found = harmless_pours(room).pours
    assert 98 - 64 * 1.05 - 1e-9 <= litres(room, found) <= 59.0
    assert room.strength_pct(found) <= 9.0


@pytest.mark.parametrize("mix_pct", [11.0, 11.95])
def test_a_mix_a_little_weaker_than_a_rich_sump_leads_nearer(mix_pct: float) -> None:
    # 12 % in the sump and nothing weaker than 11 or 11.95 %, in marks of 1 mL.
    room = space(sour(12.0, mix_pct, 0.001))
    found = harmless_pours(room).pours
    assert found
    assert room.strength_pct(found) < 12.0


@pytest.mark.parametrize("water_mark_l", [0.25, 1.0, 2.0])
def test_a_mix_stronger_than_a_lean_sump_leads_nearer(water_mark_l: float) -> None:
    room = space(question(154.0, 6.0, bucket=(10.0, water_mark_l, 0.05)))
    found = harmless_pours(room).pours
    assert found
    assert room.strength_pct(found) > 6.0


@pytest.mark.parametrize(
    ("weak_pct", "strong_pct", "low_pct"), [(1.0, 20.0, 25.0), (20.0, 30.0, 7.0)]
)
def test_a_mix_as_strong_as_the_sump_leads_nowhere(
    weak_pct: float, strong_pct: float, low_pct: float
) -> None:
    # 8 L and 2 L are 20 %, as what is in the sump.
    ask = question(100.0, 20.0, weak_pct=weak_pct, strong_pct=strong_pct)
    ask = replace(ask, target=Target(low_pct, low_pct + 1, low_pct + 2))
    assert not does_harm(ask, 20.0)
    assert harmless_pours(space(ask)).pours == ()


def test_a_new_charge_that_no_level_makes_strong_enough_is_not_poured() -> None:
    # 9 L and 0.5 L, 5.3 %, is the only bucket; 20 % would be allowed and bring the band.
    ask = question(10.0, 2.0, bucket=(9.5, 9.0, 0.5))
    assert harmless_pours(space(ask)).pours == ()
    assert does_harm(ask, 5.3)
