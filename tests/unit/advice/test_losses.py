"""pycore.advice.losses: the balance by hand, what is left out, and how sure it is."""

import math

import pytest

from pycore.advice.losses import Shared, State, Step, losses, usual_steps
from pycore.quantity.measured import Measured


def state(volume_l: float, pct: float, u_l: float = 0.9, u_pct: float = 0.15) -> State:
    return State(Measured(volume_l, u_l), Measured(pct, u_pct))


def losing(evaporated_l: float, carried_l: float, parts: int = 10_000) -> State:
    """200 L at 8 % after a steady loss, in many small parts: a balance of its own."""
    water_l, neat_l = 184.0, 16.0
    for _ in range(parts):
        share = carried_l / parts / (water_l + neat_l)
        water_l, neat_l = water_l * (1 - share) - evaporated_l / parts, neat_l * (1 - share)
    return state(water_l + neat_l, 100 * neat_l / (water_l + neat_l))


def test_loss_of_a_table_worked_by_hand() -> None:
    # 200 L at 8 %, 30 L evaporated, 6 L carried out: 164 L at 9.4387 % (steady), so 0.5205 L gone.
    end = losing(30, 6)
    assert end.volume_l.value == pytest.approx(164)
    assert end.strength_pct.value == pytest.approx(9.4387, abs=1e-4)
    step = Step(10, state(200, 8), end, 0, 0)
    assert step.lost_l == pytest.approx(36)
    assert step.concentrate_lost_l == pytest.approx(0.5205, abs=1e-4)
    # A sixth of the sump is gone between two checks: still within 1 %.
    assert step.carried_l == pytest.approx(6, rel=0.01)


def test_three_checks_by_hand() -> None:
    # 198 L at 8 % to 184 L at 8.2 % in 4 days; 10 L of water and 0.5 L of concentrate make 194.5 L
    # at 8.0144 %; 3 days later 182 L at 8.3 %.
    first, second, third = state(198, 8), state(184, 8.2), state(182, 8.3)
    steps = [Step(4, first, second, 0, 0), Step(3, second, third, 10, 0.5)]
    found = losses(steps, 8, Shared())
    assert found is not None
    # 14 and 12.5 L in 7 days.
    assert found.lost_l_d.value == pytest.approx(26.5 / 7)
    # 15.84 - 15.088 = 0.752 L, 15.088 + 0.5 - 15.106 = 0.482 L of concentrate.
    assert found.concentrate_l_d.value == pytest.approx((0.752 + 0.482) / 7)
    carried = 0.752 / 0.081 + 0.482 / ((0.15588 / 1.945 + 0.083) / 2)
    assert found.carry_out_l_d.value == pytest.approx(carried / 7, rel=1e-6)
    assert found.evaporation_l_d.value == pytest.approx((26.5 - carried) / 7, rel=1e-6)
    assert found.top_up_pct is not None
    assert found.top_up_pct.value == pytest.approx(8 * carried / 26.5, rel=1e-6)
    assert (found.steps, found.over_d, found.unusual) == (2, 7, 0)


def test_hours_make_no_loss_a_day() -> None:
    first, second, third = state(200, 8), state(196, 8), state(192, 8)

    def over(days: float) -> float | None:
        steps = [Step(days / 2, first, second, 0, 0), Step(days / 2, second, third, 0, 0)]
        found = losses(steps, 8, Shared())
        return None if found is None else found.lost_l_d.value

    assert over(0.99) is None
    assert over(1.0) == pytest.approx(8)


def test_steady_state_is_that_of_the_balance() -> None:
    # C·D/(E + D): 8 % and E : D = 4 : 1 give 1.6 %, 3 : 3 give 4 %.
    for evaporated, carried, pct in ((4, 1, 1.6), (3, 3, 4.0)):
        step = Step(2, state(200, 8), losing(evaporated, carried), 0, 0)
        found = losses([step, step, step], 8, Shared())
        assert found is not None
        assert found.top_up_pct is not None
        assert found.top_up_pct.value == pytest.approx(pct, rel=2e-3)


def test_what_is_taken_out_is_no_loss() -> None:
    start, end = state(200, 8), state(150, 8)
    step = Step(1, start, end, 0, 0, out_l=50)
    assert step.lost_l == 0
    assert step.concentrate_lost_l == pytest.approx(0)


def test_fewer_than_three_checks_say_nothing() -> None:
    step = Step(4, state(198, 8), state(184, 8.2), 0, 0)
    assert losses([step], 8, Shared()) is None
    assert losses([], 8, Shared()) is None


def test_more_in_the_sump_than_was_written_down_is_left_out() -> None:
    day = Step(3, state(198, 8), state(188, 8.2), 0, 0)
    gained = Step(3, state(188, 8.2), state(198, 7.8), 0, 0)
    assert usual_steps([day, gained, day]) == [day, day]
    # Within what two dips can tell it stays.
    still = Step(3, state(188, 8.2), state(189, 8.2), 0, 0)
    assert usual_steps([day, still, day]) == [day, still, day]


def test_a_spill_lies_apart_from_five_usual_steps() -> None:
    days = [Step(3, state(198, 8), state(198 - lost, 8.2), 0, 0) for lost in (9, 10, 11, 10, 9)]
    spill = Step(3, state(198, 8), state(120, 8.2), 0, 0)
    assert usual_steps([*days, spill]) == days
    assert usual_steps([days[0], spill]) == [days[0], spill]
    found = losses([*days, spill], 8, Shared())
    assert found is not None
    assert (found.steps, found.unusual) == (5, 1)


def test_uncertainty_comes_from_the_loose_ends_where_nothing_scatters() -> None:
    # Two steps of the same loss in a row: the check between them drops out.
    one, two, three = state(198, 8), state(188, 8), state(178, 8)
    found = losses([Step(4, one, two, 0, 0), Step(4, two, three, 0, 0)], 8, Shared())
    assert found is not None
    assert found.lost_l_d.u == pytest.approx(math.hypot(0.9, 0.9) / 8)
    apart = [Step(4, state(198, 8), state(188, 8), 0, 0) for _ in range(2)]
    loose = losses(apart, 8, Shared())
    assert loose is not None
    assert loose.lost_l_d.u == pytest.approx(math.sqrt(4 * 0.9**2) / 8)


def test_vessel_scale_and_factor_do_not_average_away() -> None:
    a, b = state(198, 8, 1e-6, 1e-6), state(188, 8, 1e-6, 1e-6)
    steps = [Step(4, b, b, 9.2, 0.8), Step(4, b, b, 9.2, 0.8)]
    found = losses(steps, 8, Shared())
    assert found is not None
    # 3 % of each vessel: 18.4 L by the pail, 1.6 L by the jug.
    assert found.lost_l_d.u == pytest.approx(0.03 * math.hypot(18.4, 1.6) / 8, rel=1e-3)
    fall = [Step(4, a, b, 0, 0), Step(4, a, b, 0, 0)]
    scaled = losses(fall, 8, Shared(scale_share=0.1))
    assert scaled is not None
    assert scaled.lost_l_d.u == pytest.approx(0.1 * 20 / 8, rel=1e-3)
    by_factor = losses(fall, 8, Shared(factor=0.05))
    assert by_factor is not None
    assert by_factor.carry_out_l_d.u == pytest.approx(0.05 * 20 / 8, rel=1e-3)


def test_no_top_up_where_no_loss_is_seen() -> None:
    still = Step(4, state(198, 8), state(197.9, 8), 0, 0)
    found = losses([still, still], 8, Shared())
    assert found is not None
    assert found.top_up_pct is None
