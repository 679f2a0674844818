"""First order against propagation of distributions (JCGM 101:2008), 10⁶ draws, fixed seed."""

import random

import numpy as np
import pytest

from tests.properties.recipe import chance
from tests.properties.recipe.chance import NEARLY_EMPTY, SEED, TEN, compared, table

U_WITHIN_SHARE = 0.05
CHANCE_WITHIN = 0.02


@pytest.mark.parametrize("name", TEN)
def test_first_order_is_good_enough_where_rough_is_not_said(name: str) -> None:
    got = compared(TEN[name])
    assert not got.rough
    assert got.u_pct == pytest.approx(got.drawn_u_pct, rel=U_WITHIN_SHARE)
    assert got.chance == pytest.approx(got.drawn_chance, abs=CHANCE_WITHIN)


@pytest.mark.parametrize("name", NEARLY_EMPTY)
def test_first_order_fails_in_a_nearly_empty_sump_and_rough_is_said(name: str) -> None:
    got = compared(NEARLY_EMPTY[name])
    assert got.rough
    assert abs(got.u_pct / got.drawn_u_pct - 1) > U_WITHIN_SHARE


def test_rough_is_said_wherever_first_order_fails(monkeypatch: pytest.MonkeyPatch) -> None:
    # 10⁵ draws: u to 0.7 %, chances to 0.005 (three standard deviations of the drawing).
    monkeypatch.setattr(chance, "DRAWS", 100_000)
    draw = random.Random(SEED)
    silent, said = [], 0
    for _ in range(150):
        full_l = draw.uniform(20, 500)
        share = draw.choice([draw.uniform(0.001, 0.2), draw.random()])
        u_l = draw.choice([0.02, 0.05, 0.1]) * full_l
        state = full_l * share, u_l, draw.uniform(0, 18), draw.uniform(0.1, 1)
        asked = chance._sump(*state, fill_to_l=full_l)
        got = compared(asked)
        said += got.rough
        fails = abs(got.u_pct / got.drawn_u_pct - 1) > U_WITHIN_SHARE + 0.007
        fails = fails or abs(got.chance - got.drawn_chance) > CHANCE_WITHIN + 0.005
        silent += [state] if fails and not got.rough else []
    assert silent == []
    # Not by calling everything rough.
    assert 10 <= said <= 75


def test_table_has_every_sump() -> None:
    lines = table().splitlines()
    assert len(lines) == 1 + len(TEN) + len(NEARLY_EMPTY)
    assert [line.endswith("rough") for line in lines[1:]] == [False] * 10 + [True] * 3


# JCGM 101:2008, 9.2.2 and 9.2.3: sum of four quantities of standard deviation 1. Published
# values as the trade notes give them, second hand; tolerances for 10⁶ draws as there.
@pytest.mark.parametrize(("shape", "end"), [("normal", 3.92), ("rectangular", 3.88)])
def test_the_drawing_itself_against_the_supplement(shape: str, end: float) -> None:
    generator = np.random.default_rng(SEED)
    size = (4, chance.DRAWS)
    half = 3**0.5
    each = (
        generator.normal(0, 1, size) if shape == "normal" else generator.uniform(-half, half, size)
    )
    total = each.sum(axis=0)
    assert np.std(total) == pytest.approx(2.00, abs=0.005)
    assert np.quantile(total, [0.025, 0.975]) == pytest.approx([-end, end], abs=0.02)
