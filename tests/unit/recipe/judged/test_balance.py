"""pycore.recipe.balance. Worked recipes: shared/checks, conservation: tests/properties."""

import pytest

from pycore.recipe.balance import concentrate_needed_l, mix_strength_pct, state_after


def test_empty_sump_and_empty_bucket() -> None:
    assert state_after(0, 7.0, []) == (0.0, 7.0)
    assert mix_strength_pct(0, 0) == 0.0


def test_new_charge_has_the_strength_of_its_buckets() -> None:
    # C1·V1 = C2·V2 by hand: 10 × (9.2 + 0.8 L) is 100 L at 8 %.
    assert state_after(0, 0, [(10, 9.2, 0.8)]) == pytest.approx((100.0, 8.0))


def test_too_rich_needs_less_than_nothing() -> None:
    assert concentrate_needed_l(100, 10, 0, 8) < 0
    assert concentrate_needed_l(100, 8, 0, 8) == 0


def test_less_than_a_litre_is_a_mix_and_a_sump_like_any_other() -> None:
    # 50 mL in half a litre are 10 %; with 0.5 L at 2 % in the sump that makes 6 %.
    assert mix_strength_pct(0.45, 0.05) == pytest.approx(10.0)
    assert state_after(0, 2.0, [(1, 0.45, 0.05)]) == pytest.approx((0.5, 10.0))
    assert state_after(0.25, 2.0, [(1, 0.225, 0.025)]) == pytest.approx((0.5, 6.0))


def test_water_needs_concentrate_of_its_own() -> None:
    # 46 L of water and 4 L of concentrate are 50 L at 8 %, beside any sump at 8 %.
    assert concentrate_needed_l(100, 8, 46, 8) == pytest.approx(4.0)
