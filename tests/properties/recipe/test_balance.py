"""Conservation of volume and of concentrate (C1·V1 + C2·V2, to a billionth)."""

import math

import pytest
from hypothesis import given
from hypothesis import strategies as st

from pycore.recipe.balance import concentrate_needed_l, mix_strength_pct, state_after

POURS = st.lists(st.tuples(st.integers(1, 50), st.floats(0, 20), st.floats(0, 20)), max_size=6)


@given(st.floats(0.001, 200_000), st.floats(0, 40), POURS)
def test_nothing_is_lost(
    volume_l: float, strength_pct: float, pours: list[tuple[int, float, float]]
) -> None:
    after_l, after_pct = state_after(volume_l, strength_pct, pours)
    poured = math.fsum(count * (water + oil) for count, water, oil in pours)
    oil = math.fsum(count * oil for count, _, oil in pours)
    assert after_l == pytest.approx(volume_l + poured, rel=1e-9)
    assert after_l * after_pct / 100 == pytest.approx(
        volume_l * strength_pct / 100 + oil, rel=1e-9, abs=1e-12
    )


@given(st.floats(0.001, 200_000), st.floats(0, 40), POURS, st.randoms(use_true_random=False))
def test_order_of_pouring_does_not_matter(
    volume_l: float, strength_pct: float, pours: list[tuple[int, float, float]], random: object
) -> None:
    other = list(pours)
    random.shuffle(other)
    for one, two in zip(
        state_after(volume_l, strength_pct, pours),
        state_after(volume_l, strength_pct, other),
        strict=True,
    ):
        assert one == pytest.approx(two, rel=1e-9)


@given(st.floats(1, 200_000), st.floats(0, 40), st.floats(0, 1000), st.floats(0.1, 60))
def test_needed_concentrate_lands_on_the_aim(
    volume_l: float, now: float, water_l: float, aim: float
) -> None:
    needed_l = concentrate_needed_l(volume_l, now, water_l, aim)
    if needed_l >= 0:
        _, strength = state_after(volume_l, now, [(1, water_l, needed_l)])
        assert strength == pytest.approx(aim, rel=1e-9)
    else:
        assert state_after(volume_l, now, [(1, water_l, 0)])[1] > aim


@given(st.floats(0.001, 1000), st.floats(0, 1000))
def test_mix_lies_between_water_and_concentrate(water_l: float, concentrate_l: float) -> None:
    strength = mix_strength_pct(water_l, concentrate_l)
    assert 0 <= strength < 100 or math.isclose(strength, 100)
    assert strength == pytest.approx(100 * concentrate_l / (water_l + concentrate_l), rel=1e-12)
