"""pycore.recipe.stock where a single mark, level or code decides; balances by hand."""

from dataclasses import replace

import pytest

from pycore.recipe.draw_off import filled
from pycore.recipe.outcome import Plan, made
from pycore.recipe.plan import plan_recipe
from pycore.recipe.request import DrawOff, Pail, PlanRequest, ReadyMix, Stock, Target
from pycore.recipe.stock import fill_less, filled_to_edge, from_ready_mixes, missing, within_stock
from tests.unit.recipe.shop import question

FINE = (6.0, 0.5, 0.1)


def kept_to(ask: PlanRequest, stock: Stock) -> Plan:
    asked = replace(ask, stock=stock)
    return within_stock(asked, filled(asked))


def poured(plan: Plan) -> list[tuple[int, float, float]]:
    return [(p.count, p.water_l, pytest.approx(p.concentrate_l)) for p in plan.pours]


def test_past_the_band_is_no_way_to_come_nearer_to_it() -> None:
    # Full, 7 L of water and 1 L are 7.8 %; with 2 L of water it is 1.4 L of 13 L, 10.8 %.
    lean = question(10.0, 4.0, fill_to_l=20.0, strong_pct=50.0, bucket=(10.0, 1.0, 1.0))
    plan = kept_to(lean, Stock(water_l=2.0))
    said = ["water_short", "not_filled_up", "best_reachable", "weak_must_not_stand"]
    assert (plan.pours, plan.cautions) == ([], said)


def test_new_charge_outside_the_band_is_not_poured() -> None:
    # 6 L of water and 1 L are 14.3 %, nearer to 9 % than nothing is to 7 %.
    empty = question(0.0, 0.0, fill_to_l=14.0, strong_pct=50.0, bucket=(10.0, 1.0, 1.0))
    plan = kept_to(empty, Stock(water_l=6.4))
    assert (plan.pours, plan.cautions) == ([], ["water_short", "not_filled_up"])


def test_new_charge_that_fills_the_room_out_of_reach_says_so() -> None:
    # 8 % in 168 L of room are at the most 13.44 L of 198 L, 6.8 %; taking 21 L out needs more.
    weak = replace(question(30.0, 0.0, strong_pct=8.0), draw_off=DrawOff(allowed=True, mark_l=1.0))
    plan = plan_recipe(replace(weak, stock=Stock(14.0)))
    assert plan.draw_off_l == 0
    assert 6.6 <= plan.final.strength_pct.value <= 6.8
    assert plan.cautions[:2] == ["stock_short", "best_reachable"]


def test_a_low_level_is_said_once() -> None:
    # 2.2 L of room take 2 L of plain water, or none: 0.5 L beside 1 L are 33 %.
    full = question(195.8, 6.5, weak_pct=0.0, bucket=(10.0, 1.0, 0.5))
    full = replace(full, draw_off=DrawOff(allowed=True, mark_l=1.0))
    assert plan_recipe(full).draw_off_l > 0
    plan = plan_recipe(replace(full, stock=Stock(0.4)))
    said = ["stock_short", "not_filled_up", "best_reachable", "weak_must_not_stand"]
    assert plan.cautions == said


def test_less_than_a_mark_at_hand_pours_nothing_and_says_what_is_short() -> None:
    plan = kept_to(question(154.0, 8.0), Stock(0.02))
    assert (plan.pours, plan.cautions) == ([], ["stock_short", "not_filled_up"])
    assert fill_less(replace(question(154.0, 8.0), stock=Stock(0.02))) is None


@pytest.mark.parametrize(
    ("ask", "have_l", "level_l", "is_open"),
    [
        # 17.5 L fill 19.2 L of room to within 2.5 L, 27 L fill 28.1 L to within 1.5 L.
        (question(51.7, 6.9, fill_to_l=70.9, weak_pct=0.0, bucket=(10.0, 2.0, 0.5)),
         1.97, 69.2, False),
        (question(56.0, 10.9, fill_to_l=84.1, weak_pct=0.0, bucket=(10.0, 1.0, 0.5)),
         0.17, 83.0, False),
        # 2 L of 7 L of room.
        (question(13.2, 5.3, fill_to_l=20.2, bucket=(10.0, 1.0, 0.5)), 0.5, 15.7, True),
    ],
)  # fmt: skip
def test_the_level_is_low_where_another_mark_of_each_would_fit(
    ask: PlanRequest, have_l: float, level_l: float, *, is_open: bool
) -> None:
    plan = kept_to(ask, Stock(have_l))
    assert plan.final.volume_l == pytest.approx(level_l)
    assert ("not_filled_up" in plan.cautions) is is_open


def test_of_two_fills_to_within_a_mark_the_nearer_to_the_aim() -> None:
    # All 0.5 L reach for 7 % of 17.1 L. With 2 L of water 119.96/15.7 is 7.6 %, with 3 L 7.2 %.
    plan = kept_to(question(13.2, 5.3, fill_to_l=20.2, bucket=(10.0, 1.0, 0.5)), Stock(0.5))
    assert poured(plan) == [(1, 2.0, 0.5)]


def test_water_alone_comes_as_high_as_the_band_allows() -> None:
    # 203.74/7 is 29.1 L. Two pails of 6 L of water reach 28.7 L, 7.1 %; one of 10 L only 26.7 L.
    rich = question(16.7, 12.2, fill_to_l=31.6, weak_pct=0.0, bucket=(10.0, 2.0, 0.5))
    rich = replace(rich, stock=Stock(0.13))
    edge = filled_to_edge(rich, made(rich, []))
    assert edge is not None
    assert poured(edge) == [(2, 6.0, 0.0)]
    # 203.74/24.7 is 8.2 %, and the more likely one.
    assert poured(kept_to(rich, Stock(0.13))) == [(1, 8.0, 0.0)]


@pytest.mark.parametrize(
    ("ask", "stock", "level_l"),
    [
        # In the band: 190.08 and 90 in 34.5 L are 8.1 %.
        (question(21.6, 8.8, fill_to_l=43.5, strong_pct=35.0, bucket=FINE), Stock(0.95, 12.4),
         34.5),
        # Rich: 366.3 and 30 in 45.6 L are 8.7 %.
        (question(33.3, 11.0, fill_to_l=61.8, strong_pct=35.0, bucket=FINE), Stock(None, 15.6),
         45.6),
    ],
)  # fmt: skip
def test_what_lies_in_the_band_is_poured_though_the_levels_above_it_miss(
    ask: PlanRequest, stock: Stock, level_l: float
) -> None:
    plan = kept_to(ask, stock)
    assert plan.verdict != "out_of_band"
    assert plan.final.volume_l >= level_l - 1e-9


def test_nobody_carries_for_what_no_glass_shows() -> None:
    # 2.25 L would bring 12 % down to 11.96 %.
    rich = question(48.8, 12.0, fill_to_l=58.0, bucket=(5.0, 1.0, 0.25))
    assert kept_to(rich, Stock(water_l=2.5)).pours == []


def test_between_levels_that_no_glass_tells_apart_the_nearer_one_first_found() -> None:
    # All 1.4 L: with 3 L of water 361.16/62.6 is 5.77 %, with 4 L 5.68 %.
    lean = question(58.2, 3.8, fill_to_l=63.7, strong_pct=35.0, bucket=FINE)
    assert poured(kept_to(lean, Stock(1.41))) == [(1, 3.0, 1.4)]


def test_fill_less_needs_no_more_than_there_is_and_ends_in_the_band() -> None:
    found = 0
    for tenths in range(70):
        ask = replace(question(), stock=Stock(tenths / 10, 30.0))
        less = fill_less(ask)
        if less is not None:
            assert missing(ask, less.totals) == []
            assert less.verdict != "out_of_band"
            assert less.final.volume_l <= ask.fill_to_l
            found += 1
    assert found >= 20


def test_fill_less_passes_over_a_level_at_which_coarse_marks_miss_the_band() -> None:
    # 62.32 and 100 in 22.2 L are 7.3 %, with 2 L of water less they are 8.0 %.
    coarse = question(15.2, 4.1, fill_to_l=24.5, strong_pct=50.0, weak_pct=0.0, bucket=(6, 2, 1))
    less = fill_less(replace(coarse, target=Target(7.4, 8.0, 8.6), stock=Stock(3.0)))
    assert less is not None
    assert less.final.volume_l == pytest.approx(20.2)
    assert less.final.strength_pct.value == pytest.approx(162.32 / 20.2)


def test_half_a_litre_of_a_ready_mix() -> None:
    ask = question(157.5, bucket=(10.0, 0.5, 0.05))
    (plan,) = from_ready_mixes(replace(ask, stock=Stock(ready_mixes=[ReadyMix(15.0, 60.0)])))
    assert [(p.count, p.water_l + p.concentrate_l) for p in plan.pours] == [
        (4, pytest.approx(10.0)), (1, pytest.approx(0.5)),
    ]  # fmt: skip


def test_a_rest_just_at_the_first_mark_of_the_pail() -> None:
    ask = replace(question(), pail=Pail(first_mark_l=4.0))
    (plan,) = from_ready_mixes(replace(ask, stock=Stock(ready_mixes=[ReadyMix(15.0, 60.0)])))
    assert [pour.count for pour in plan.pours] == [4, 1]
