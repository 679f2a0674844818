"""pycore.recipe.outlook with hidden coolant of its own strength; derivatives by hand."""

import math
from dataclasses import replace

import pytest

from pycore.quantity.measured import Measured, moves_with, variable
from pycore.recipe.plan import plan_recipe
from pycore.recipe.request import (
    DrawOff,
    HiddenState,
    MixedState,
    PlanRequest,
    SumpState,
    whole_circuit,
)
from tests.unit.recipe.shop import question


def asked(u_l: float, u_pct: float, hidden_u_l: float = 0.0) -> PlanRequest:
    """100 L at 6 % on the stick, 60 L at 2 % beside it, and room for 38 L."""
    sump = SumpState(Measured(100.0, u_l), Measured(6.0, u_pct))
    hidden = HiddenState(Measured(60.0, hidden_u_l), Measured(2.0, 0.0))
    return replace(question(fill_to_l=138.0), sump=sump, hidden=hidden)


@pytest.mark.parametrize(
    ("u_l", "u_pct", "hidden_u_l"),
    [(10.0, 0.0, 0.0), (10.0, 0.3, 0.0), (0.0, 0.3, 0.0), (6.0, 0.2, 8.0), (0.0, 0.0, 0.0)],
)
def test_one_error_of_the_dip_moves_volume_and_strength(
    u_l: float, u_pct: float, hidden_u_l: float
) -> None:
    plan = plan_recipe(asked(u_l, u_pct, hidden_u_l))
    volume_l, end_pct = plan.final.volume_l, plan.final.strength_pct.value
    # (100·6 + 60·2 + 100·concentrate) / volume, by each of the inputs.
    parts = (
        u_l * (6 - end_pct),
        u_pct * 100,
        hidden_u_l * (2 - end_pct),
        0.03 * plan.totals.water_l * -end_pct,
        0.03 * plan.totals.concentrate_l * (100 - end_pct),
    )
    assert plan.final.strength_pct.u == pytest.approx(math.hypot(*parts) / volume_l, rel=1e-9)


def test_what_is_taken_out_leaves_the_same_dependence() -> None:
    ask = replace(
        asked(10.0, 0.0),
        fill_to_l=100.0,
        draw_off=DrawOff(allowed=True, mark_l=1.0),
    )
    plan = plan_recipe(ask)
    out_l, end_pct = plan.draw_off_l, plan.final.strength_pct.value
    assert out_l > 0
    # What comes out has the mixed strength of 4.5 %, which moves by (6 - 4.5)/160 a litre.
    by_dip = 10.0 * (6 - end_pct - out_l * (6 - 4.5) / 160)
    by_water = 0.03 * plan.totals.water_l * -end_pct
    by_concentrate = 0.03 * plan.totals.concentrate_l * (100 - end_pct)
    assert plan.final.strength_pct.u == pytest.approx(
        math.hypot(by_dip, by_water, by_concentrate) / plan.final.volume_l, rel=1e-9
    )


def test_coolant_of_one_strength_moves_with_no_litre() -> None:
    same = replace(asked(10.0, 0.3), hidden=HiddenState(Measured(60.0, 5.0)))
    mixed, other = whole_circuit(same).sump, whole_circuit(asked(10.0, 0.3)).sump
    assert isinstance(mixed, MixedState)
    assert isinstance(other, MixedState)
    # (6 - 4.5)/160 a litre.
    assert (mixed.per_l_pct, other.per_l_pct) == (0.0, pytest.approx(1.5 / 160))
    assert moves_with(variable(Measured(5.0, 0.0), "known"), variable(Measured(1.0, 0.1), "x")) == 0
    assert moves_with(variable(Measured(1.0, 0.1), "x"), 5.0) == 0
