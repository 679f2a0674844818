"""pycore.recipe.holding: a rough level is watched, and the pump mixes as long as is set."""

from dataclasses import replace

import pytest

from pycore.quantity.measured import Measured
from pycore.recipe.holding import HoldingRequest, plan_holding
from tests.unit.recipe.shop import question

ASK = HoldingRequest(
    Measured(154.0, 3.0), 198.0, 5.0, question().target, question().mixing, question().bucket
)


@pytest.mark.parametrize(("u_l", "is_watched"), [(6.0, True), (4.9, False), (None, False)])
def test_a_top_up_without_a_reading_is_watched_too(u_l: float | None, is_watched: bool) -> None:
    holding = plan_holding(replace(ASK, level_u_l=u_l))
    assert holding.pours
    assert ("watch_the_mark" in holding.cautions) is is_watched


def test_nothing_is_watched_where_nothing_is_poured() -> None:
    holding = plan_holding(replace(ASK, volume_l=Measured(198.0, 3.0), level_u_l=20.0))
    assert not holding.pours
    assert "watch_the_mark" not in holding.cautions


@pytest.mark.parametrize(("mix_min", "minutes"), [(None, 30), (90, 90)])
def test_the_pump_runs_as_long_as_the_machine_needs(mix_min: int | None, minutes: int) -> None:
    holding = plan_holding(replace(ASK, mix_min=mix_min))
    assert [step.minutes for step in holding.steps if step.kind == "run"] == [minutes]
