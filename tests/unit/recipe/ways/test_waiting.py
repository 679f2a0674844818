"""pycore.recipe.waiting: a level to fall to, and days of use, each by its balance."""

import math
from dataclasses import replace

import pytest

from pycore.recipe.request import DrawOff, Losses, Target
from pycore.recipe.waiting import leave_room, use_it_up
from tests.unit.recipe.shop import question


def test_room_for_the_strongest_premix() -> None:
    # 198 L at 5 % hold 9.9 L, wanted 15.84 L: 29.7 L of 20 % from a level of 168.3 L.
    found = leave_room(question(198.0, 5.0))
    assert found is not None
    plan, wait = found
    assert wait.level_l == pytest.approx(168.3)
    # Evaporation takes no concentrate: 9.9 L in 168.3 L.
    assert wait.strength_pct == pytest.approx(990 / 168.3)
    assert (plan.pours, wait.time_d) == ([], None)


def test_evaporation_never_helps_a_rich_sump_nor_one_in_range() -> None:
    assert leave_room(question(198.0, 11.0)) is None
    assert leave_room(question(198.0, 7.0)) is None


def test_no_level_where_the_premix_is_weaker_than_the_aim_or_there_is_room_already() -> None:
    assert leave_room(question(198.0, 5.0, strong_pct=7.9)) is None
    assert leave_room(question(100.0, 6.0)) is None
    # 160 L at 5 % and 40 L at 20 % are 200 L at 8 % as they are.
    assert leave_room(question(160.0, 5.0, fill_to_l=200.0)) is None


def test_lowest_levels_to_wait_for() -> None:
    # Half of 198 L at 3.5 % in its level, which is 7 %, and half of it at 9 %: together 8 %.
    at_half = leave_room(question(198.0, 3.5, strong_pct=9.0))
    assert at_half is not None
    assert at_half[1].level_l == pytest.approx(99.0)
    assert leave_room(question(198.0, 3.5, strong_pct=8.99)) is None
    # With 8 % itself: 198 L less (15.84 − 13.662)/0.08 L.
    held = leave_room(question(198.0, 6.9, strong_pct=8.0))
    assert held is not None
    assert held[1].level_l == pytest.approx(198 * 6.9 / 8)


def test_nobody_waits_for_days_with_a_sump_that_rusts_meanwhile() -> None:
    # The band begins at 7 %. Water alone had been left for days until half of it was gone.
    assert leave_room(question(198.0, 0.0)) is None
    assert leave_room(question(198.0, 3.49)) is None
    assert leave_room(question(198.0, 3.5)) is not None


def test_no_level_below_what_cannot_be_taken_out() -> None:
    # 168.3 L, as above; of 198 L 29.7 L have to be free.
    ask = question(198.0, 5.0)
    for most_l, is_found in ((29.8, True), (29.6, False)):
        drained = replace(ask, draw_off=DrawOff(allowed=True, mark_l=1.0, most_l=most_l))
        assert (leave_room(drained) is not None) is is_found


def test_days_of_use() -> None:
    # V/D·ln((C − weak)/(aim − weak)) = 198/2·ln(10/7) d.
    ask = replace(question(198.0, 11.0), losses=Losses(2.0))
    found = use_it_up(ask)
    assert found is not None
    assert found[1].time_d == pytest.approx(99 * math.log(10 / 7))
    assert (found[0].pours, found[1].level_l) == ([], None)


def test_no_more_days_than_a_year() -> None:
    # 198/D·ln(10/7) d are 365 d at D = 0.1935 L a day.
    for carried_l_d, is_found in ((0.194, True), (0.193, False)):
        ask = replace(question(198.0, 11.0), losses=Losses(carried_l_d))
        assert (use_it_up(ask) is not None) is is_found


def test_a_year_to_the_day_is_still_a_way() -> None:
    # Of 365 L a litre a day down to a part in e: ln(e) is 1.
    ask = question(365.0, math.e, fill_to_l=365.0, weak_pct=0.0)
    found = use_it_up(replace(ask, target=Target(0.5, 1.0, 2.0), losses=Losses(1.0)))
    assert found is not None
    assert found[1].time_d == 365.0


def test_a_rich_sump_can_be_used_up_though_nobody_knows_the_days() -> None:
    found = use_it_up(question(198.0, 11.0))
    assert found is not None
    plan, wait = found
    assert (plan.pours, wait.level_l, wait.time_d) == ([], None, None)
    assert plan.cautions == ["strong_harms_skin"]
    assert use_it_up(question(198.0, 9.0)) is None
    assert use_it_up(question(198.0, 11.0, weak_pct=8.0)) is None


def test_days_only_for_a_rich_sump_and_a_weaker_mix() -> None:
    rich = replace(question(198.0, 11.0), losses=Losses(2.0))
    assert use_it_up(replace(question(198.0, 9.0), losses=Losses(2.0))) is None
    assert use_it_up(replace(rich, mixing=replace(rich.mixing, weak_pct=8.0))) is None


def test_rich_rinse_water_of_a_new_charge_is_not_used_up() -> None:
    # 6 of 198 L: the machine waits for its coolant, which brings them down to 8 % in an hour.
    assert use_it_up(question(6.0, 15.0)) is None
    assert use_it_up(replace(question(6.0, 15.0), losses=Losses(2.0))) is None


def test_waiting_warns_of_the_sump_and_not_of_a_recipe() -> None:
    lean, rich = (
        leave_room(question(198.0, 5.0)),
        use_it_up(replace(question(200.0, 11.0), losses=Losses(2.0))),
    )
    assert lean is not None
    assert rich is not None
    # It stays weak until then, so a weekend is no time for it.
    assert lean[0].cautions == ["weak_must_not_stand"]
    # Fuller than its mark, and stronger than the range.
    assert rich[0].cautions == ["above_full_mark", "strong_harms_skin"]
