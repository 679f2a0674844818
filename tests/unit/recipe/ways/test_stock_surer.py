"""pycore.recipe.stock: a lower level for a surer landing, and the edge above it; sums by hand."""

from dataclasses import replace

import pytest

from pycore.quantity.measured import Measured
from pycore.recipe.draw_off import filled
from pycore.recipe.outcome import made
from pycore.recipe.request import PlanRequest, Stock, SumpState, Target
from pycore.recipe.stock import _nearest, _surer_levels_l, filled_to_edge, within_stock
from tests.unit.recipe.shop import question


def edge_and_aim(held: float, edge_l: float, above: float, count: int) -> list[float]:
    """Levels that hold 100 times so many litres of concentrate, by eighths from edge to 8 %."""
    edge_pct = (held - above) / edge_l
    return [held / (edge_pct + part * (8 - edge_pct) / 8) for part in range(1, count + 1)]


@pytest.mark.parametrize(
    ("ask", "stock", "levels_l"),
    [
        # 17 L of water and 2.95 of 3 L end at 173.95 L. A fifth of 15 L is the strongest: 169 L.
        (question(), Stock(3.0), [*edge_and_aim(1224, 173.95, 5, 1), 169.0]),
        # From the low end of the band on less of the concentrate lands there too: down to the aim.
        (question(154.0, 7.0), Stock(3.0), edge_and_aim(1378, 195.95, 5, 8)),
        # The aim's own level is the last.
        (question(150.0, 9.0, weak_pct=0.0), Stock(1.0), edge_and_aim(1450, 198.0, 0, 8)),
        # Water alone makes 158 L; nothing below the 154 L that are there.
        (question(154.0, 7.2, weak_pct=0.0), Stock(0.0), edge_and_aim(1108.8, 158.0, 0, 1)),
        # 0.3 L beside the one litre of water that they need: nothing stronger is left to try.
        (question(20.0, 6.0, fill_to_l=24.0, strong_pct=25.0), Stock(0.3), []),
        # Plain water alone may be poured, which leaves a lean sump out of the band.
        (question(100.0, 6.0, weak_pct=0.0, bucket=(10.0, 5.0, 3.0)), Stock(1.0), []),
        # Short of water, not of concentrate.
        (question(), Stock(water_l=20.0), []),
    ],
)  # fmt: skip
def test_levels_from_the_edge_to_the_aim(
    ask: PlanRequest, stock: Stock, levels_l: list[float]
) -> None:
    ask = replace(ask, stock=stock)
    assert _surer_levels_l(ask, _nearest(ask)) == pytest.approx(levels_l)


def test_at_an_aim_on_the_low_end_nothing_richer_is_poured() -> None:
    # 440 and 100 are 5.05 % of 107 L, which is what was asked for; 4 L of water made 5.14 %.
    ask = question(100.0, 4.4, fill_to_l=120.0, bucket=(5.0, 2.0, 0.5))
    sump = SumpState(Measured(100.0, 5.0), Measured(4.4, 0.1))
    ask = replace(ask, sump=sump, target=Target(5.0, 5.0, 7.0), stock=Stock(1.15))
    assert within_stock(ask, filled(ask)).final.volume_l == pytest.approx(107.0)


def test_a_gain_of_chance_that_nobody_notices_leaves_no_room_open() -> None:
    # 7.7 % give or take 1: 157 L at 7.55 % lands nearly as often as 155 L at 7.65 %.
    ask = replace(question(154.0, 7.7, weak_pct=0.0), stock=Stock(0.0))
    ask = replace(ask, sump=SumpState(Measured(154.0, 3.0), Measured(7.7, 1.0)))
    plan = within_stock(ask, filled(ask))
    lower, edge = _nearest(replace(ask, fill_to_l=155.0)), _nearest(ask)
    assert plan.final.volume_l == pytest.approx(157.0)
    assert plan.final.chance_in_band > edge.final.chance_in_band + 0.1
    assert 0 < lower.final.chance_in_band - plan.final.chance_in_band < 0.02


def test_the_same_level_or_a_mark_more_is_no_other_way() -> None:
    # 0.3 L and one litre of water: the highest level and the surest.
    ask = replace(question(20.0, 6.0, fill_to_l=24.0, strong_pct=25.0), stock=Stock(0.3))
    assert filled_to_edge(ask, within_stock(ask, filled(ask))) is None
    # One litre of water to 51 L, or none; two, 7.02 %, are further from the aim for one mark more.
    ask = question(50.0, 7.3, fill_to_l=55.0, weak_pct=0.0, bucket=(10.0, 1.0, 0.5))
    ask = replace(ask, stock=Stock(0.0))
    assert _nearest(ask).final.volume_l == 51.0
    assert filled_to_edge(ask, made(ask, [])) is None


def test_out_of_the_band_there_is_no_edge_to_fill_to() -> None:
    # 10 L of water bring 12 % to 11.25 %, which is nearer to 9 % and not there.
    ask = replace(question(150.0, 12.0, weak_pct=0.0), stock=Stock(water_l=10.0))
    assert _nearest(ask).final.volume_l == 160.0
    assert filled_to_edge(ask, made(ask, [])) is None
