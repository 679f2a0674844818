"""pycore.recipe.draw_off: asked again for what the marks left open on the way to the aim."""

from dataclasses import replace

import pytest

from pycore.recipe.draw_off import draw_off_to_aim
from pycore.recipe.request import DrawOff, Mixing, PlanRequest, Target
from tests.unit.recipe.shop import question


def drawing(ask: PlanRequest, target: Target, mixing: Mixing, mark_l: float) -> PlanRequest:
    """The question with a target, a fluid and a vessel of its own."""
    return replace(ask, target=target, mixing=mixing, draw_off=DrawOff(True, mark_l))


def test_asked_again_it_lands_nearer() -> None:
    # 92 L out and ten pails with 0.5 L each are (104.1·10.2 + 500)/197.1 = 7.92 %. For 0.08 points
    # more 2 L of water less do: (107·10.2 + 500)/198 = 8.04 %.
    ask = question(196.1, 10.2, bucket=(10.0, 1.0, 0.5))
    ask = drawing(ask, Target(7.0, 8.0, 10.0), Mixing(60.0, 3.0, 2.0), 0.05)
    plan = draw_off_to_aim(ask)
    assert plan is not None
    assert plan.draw_off_l == pytest.approx(89.1)
    assert plan.final.strength_pct.value == pytest.approx((107 * 10.2 + 500) / 198)


def test_what_lands_further_off_when_asked_again_is_not_taken() -> None:
    # 3 L out and 12 L of water in are 43.8·7.2/55.8 = 5.65 %; 4 L and 16 L are 5.24 %.
    ask = question(46.8, 7.2, fill_to_l=60.0, bucket=(5.0, 4.0, 1.0))
    plan = draw_off_to_aim(drawing(ask, Target(5.0, 5.5, 7.0), Mixing(12.0, 0.0, 0.5), 1.0))
    assert plan is not None
    assert plan.draw_off_l == 3.0
    assert plan.final.strength_pct.value == pytest.approx(43.8 * 7.2 / 55.8)
    # 5.5 L and 7.5 L with 1.5 L in them are (31·4.9 + 150)/38.5 = 7.84 %; a litre more of each, and
    # nothing more than 1.5 L of concentrate, 7.71 %.
    ask = question(36.5, 4.9, fill_to_l=40.0, bucket=(10.0, 1.0, 0.5))
    plan = draw_off_to_aim(drawing(ask, Target(7.0, 8.0, 9.0), Mixing(20.0, 1.0, 0.5), 0.5))
    assert plan is not None
    assert plan.draw_off_l == 5.5
    assert plan.final.strength_pct.value == pytest.approx((31 * 4.9 + 150) / 38.5)
