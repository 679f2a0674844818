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
