"""pycore.recipe.stock: what is at hand limits the recipe; balances by hand."""

from dataclasses import replace

import pytest

from pycore.recipe.draw_off import filled
from pycore.recipe.outcome import alternative, made
from pycore.recipe.plan import plan_recipe
from pycore.recipe.pours import Pour, Totals
from pycore.recipe.request import DrawOff, Mixing, Pail, PlanRequest, ReadyMix, Stock
from pycore.recipe.stock import (
    affordable,
    fill_less,
    filled_to_edge,
    from_ready_mixes,
    level_for_l,
    missing,
    within_stock,
)
from tests.unit.recipe.shop import question


def with_stock(concentrate_l: float | None, ask: PlanRequest | None = None) -> PlanRequest:
    return replace(ask or question(), stock=Stock(concentrate_l=concentrate_l))


def test_enough_leaves_the_plan_alone() -> None:
    plan = filled(question())
    needed_l = plan.totals.concentrate_l
    for have_l in (None, needed_l, needed_l + 1):
        assert within_stock(with_stock(have_l), plan) is plan
    assert within_stock(question(), plan) is plan


def test_level_stays_lower_where_the_range_is_met_so() -> None:
    # All of 3 L are 6.18 % of a full sump, and 7 % of (924 + 300)/7 = 174.9 L; at the strongest
    # premix they are 7.24 % of 169 L.
    ask = with_stock(3.0)
    short = within_stock(ask, filled(ask))
    assert short.totals.concentrate_l == pytest.approx(3.0)
    assert short.verdict == "in_band"
    assert short.final.volume_l == pytest.approx(169.0)
    edge = filled_to_edge(ask, short)
    assert edge is not None
    assert 172.8 <= edge.final.volume_l <= 174.9
    assert short.cautions[:2] == ["stock_short", "not_filled_up"]
    assert set(short.cautions) & {"best_reachable", "marks_too_coarse"} == set()


def test_rich_sump_is_not_ruined_with_plain_water() -> None:
    # 45 L at 13.5 %: plain water up to 607.5/7 = 86.8 L stays inside, up to 198 L it is 3.07 %.
    plan = plan_recipe(with_stock(0.0, question(45.0, 13.5, weak_pct=0.0)))
    assert (plan.verdict, plan.totals.concentrate_l) == ("on_target", 0.0)
    edge = next(way for way in plan.alternatives if way.why == "fill_to_edge")
    assert (edge.verdict, edge.totals.concentrate_l) == ("in_band", 0.0)
    assert 84.7 <= edge.final.volume_l <= 86.8
    assert 75.0 <= plan.final.volume_l < 84.7
    # One jug mark of 50 mL beside 7 L rounds to the weakest mix of 1 %: 0.5 L make 70.5 L.
    plan = plan_recipe(with_stock(0.5, question(99.0, 13.5)))
    assert plan.verdict == "on_target"
    assert plan.final.volume_l == pytest.approx(169.5)


def test_out_of_the_band_the_nearest_to_it_is_poured() -> None:
    # With 10 L of water 150 L at 12 % come to 11.25 %, and 11.2 % is as thin as they get.
    ask = replace(question(150.0, 12.0, weak_pct=0.0), stock=Stock(water_l=10.0))
    plan = plan_recipe(ask)
    assert plan.final.strength_pct.value == pytest.approx(1800 / 160)
    assert plan.cautions[:3] == ["water_short", "not_filled_up", "best_reachable"]


@pytest.mark.parametrize(
    ("have_l", "poured_l", "is_inside"),
    # 1.2 L are in 20 L: with 1 L of water 0.3 L make 7.04 %, 0.25 L 6.82 % and 0.2 L 6.60 %.
    [(0.34, 0.3, True), (0.3, 0.3, True), (0.29, 0.25, False), (0.24, 0.2, False)],
)
def test_the_last_jug_mark_goes_in_and_the_level_stays_low(
    have_l: float, poured_l: float, *, is_inside: bool
) -> None:
    # Filled higher it would be thinner: with 2 L of water 0.3 L are 6.73 %.
    plan = plan_recipe(with_stock(have_l, question(20.0, 6.0, fill_to_l=24.0, strong_pct=25.0)))
    assert plan.totals.water_l == 1.0
    assert plan.totals.concentrate_l == pytest.approx(poured_l)
    assert (plan.verdict != "out_of_band") is is_inside
    assert plan.cautions[:2] == ["stock_short", "not_filled_up"]


def test_a_rest_smaller_than_a_mark_is_left() -> None:
    ask = with_stock(3.04)
    assert within_stock(ask, filled(ask)).totals.concentrate_l <= 3.0 + 1e-9


def test_none_at_all() -> None:
    # No bucket may be plain water here, so nothing is poured; with weak 0 water may go in.
    dry = within_stock(with_stock(0.0), filled(question()))
    assert (dry.pours, dry.verdict, dry.cautions[0]) == ([], "out_of_band", "stock_short")
    # Plain water would bring 6 % down to 924/198 = 4.67 %.
    water = with_stock(0.0, question(weak_pct=0.0))
    assert within_stock(water, filled(water)).pours == []
    # From 8.2 % it may, up to 154·8.2/7 = 180.4 L.
    in_band = with_stock(0.0, question(154.0, 8.2, weak_pct=0.0))
    plan = within_stock(in_band, filled(in_band))
    assert plan.totals.concentrate_l == 0
    # That is missed every other time; 154·8.2/170 = 7.43 % very likely is not.
    assert plan.final.volume_l == pytest.approx(170.0)


def test_nothing_is_taken_out_where_the_stock_cannot_make_it_good() -> None:
    # 34 L out and 1 L of concentrate in would bring 5 % down to 4.6 %.
    full = replace(question(198.0, 5.0), draw_off=DrawOff(allowed=True, mark_l=1.0))
    plan = plan_recipe(with_stock(1.0, full))
    assert plan.draw_off_l == 0
    assert plan.final.strength_pct.value >= 5.0
    assert plan.cautions[0] == "stock_short"
    fetch = next(way for way in plan.alternatives if way.why == "fetch_concentrate")
    assert fetch.draw_off_l == 34.0


def test_fill_less_high_to_the_aim_or_else_to_the_band() -> None:
    # (924 + 500)/8 = 178 L; with 3 L only 153 L, so up to the band: (924 + 300)/7 = 174.9 L.
    ways = {
        litres: {way.why: way for way in plan_recipe(with_stock(litres)).alternatives}
        for litres in (1.0, 3.0, 5.0)
    }
    aim = ways[5.0]["fill_less"]
    band = fill_less(with_stock(3.0))
    assert band is not None
    assert (aim.verdict, band.verdict) == ("on_target", "in_band")
    assert 176.0 <= aim.final.volume_l <= 178.0 + 1e-9
    assert 172.8 <= band.final.volume_l <= 174.9
    # With 3 L that is filling higher than the main plan, to the edge.
    assert "fill_less" not in ways[3.0]
    assert ways[3.0]["fill_to_edge"].final == band.final
    assert aim.totals.concentrate_l <= 5.0 + 1e-9
    # (924 + 100)/7 = 146.3 L is less than there is.
    assert "fill_less" not in ways[1.0]
    assert fill_less(with_stock(1.0)) is None


def test_level_that_the_concentrate_reaches() -> None:
    assert level_for_l(with_stock(5.0), 8.0) == pytest.approx(1424 / 8)


def test_too_little_concentrate_does_no_harm() -> None:
    # All of 1 L in a full sump is 1024/198 = 5.17 %; in one bucket of 20 % it is 1024/159 = 6.44 %.
    plan = plan_recipe(with_stock(1.0))
    assert plan.final.strength_pct.value == pytest.approx(1024 / 159)
    assert plan.cautions[:3] == ["stock_short", "not_filled_up", "best_reachable"]


def test_new_charge_is_filled_less_high_and_never_too_thin() -> None:
    # 6 L at 0.4 % and 5 L of concentrate: 5.024 L are 8 % of 62.8 L; in 198 L they were 2.5 %.
    plan = plan_recipe(with_stock(5.0, question(6.0, 0.4)))
    assert plan.verdict == "on_target"
    assert 60.0 <= plan.final.volume_l <= 62.8
    assert plan.cautions[:2] == ["stock_short", "not_filled_up"]
    # 0.3 L are 8 % of 4 L: less than the rinse water that is there.
    nothing = plan_recipe(with_stock(0.3, question(6.0, 0.4)))
    assert nothing.pours == []
    assert nothing.cautions == ["stock_short", "not_filled_up"]


def test_too_little_water_fills_less_high() -> None:
    # 154·6 + 100·x = 8·(174 + x) with 20 L of water: x = 5.09 L, so 179 L.
    plan = plan_recipe(replace(question(), stock=Stock(water_l=20.0)))
    assert plan.totals.water_l <= 20.0 + 1e-9
    assert plan.verdict == "on_target"
    assert plan.final.volume_l == pytest.approx(179.0, abs=1.05)
    assert plan.cautions[0] == "water_short"
    fetch = plan.alternatives[0]
    assert (fetch.why, fetch.totals) == ("fetch_water", plan_recipe(question()).totals)


def test_no_water_at_all_and_neither_of_both() -> None:
    dry = plan_recipe(replace(question(), stock=Stock(water_l=0.0)))
    assert (dry.pours, dry.cautions[0]) == ([], "water_short")
    both = plan_recipe(replace(question(), stock=Stock(concentrate_l=1.0, water_l=10.0)))
    assert both.cautions[:2] == ["stock_short", "water_short"]
    assert both.totals.water_l <= 10.0 + 1e-9
    assert both.totals.concentrate_l <= 1.0 + 1e-9
    assert both.alternatives[0].why == "fetch_concentrate"


def test_what_is_missing() -> None:
    ask = replace(question(), stock=Stock(concentrate_l=1.0, water_l=10.0))
    assert missing(ask, Totals(2, 10.0, 1.0)) == []
    assert missing(ask, Totals(2, 10.1, 1.0)) == ["water_short"]
    assert missing(ask, Totals(2, 10.0, 1.1)) == ["stock_short"]
    assert missing(question(), Totals(2, 1e6, 1e6)) == []


def test_no_way_is_the_main_plan_again() -> None:
    # Nothing is taken out for want of water, which is what "without_draw_off" would say, too.
    full = replace(question(198.0, 5.0), draw_off=DrawOff(allowed=True, mark_l=1.0))
    plan = plan_recipe(replace(full, stock=Stock(water_l=20.0)))
    assert plan.pours == []
    assert [way.why for way in plan.alternatives] == ["fetch_water", "leave_room"]


def test_what_the_stock_does_not_allow_is_no_way() -> None:
    small = alternative("alike", made(question(), [Pour(2, 8.0, 1.0)]))
    large = alternative("alike", made(question(), [Pour(3, 8.0, 1.0)]))
    assert affordable(with_stock(2.0), [small, large]) == [small]
    assert affordable(with_stock(None), [small, large]) == [small, large]
    assert affordable(question(), [large]) == [large]


def test_a_ready_mix_needs_no_concentrate_from_the_stock() -> None:
    mix = alternative("ready_mix", made(question(), [Pour(4, 8.5, 1.5, kind="ready_mix")]))
    assert affordable(with_stock(0.0), [mix]) == [mix]


def test_other_ways_keep_to_the_stock_where_the_main_plan_does() -> None:
    # Rich and full, nothing taken out: no concentrate is needed, and none is at hand.
    found = plan_recipe(with_stock(0.0, question(198.0, 11.0))).alternatives
    assert [way.why for way in found if way.totals.concentrate_l > 0] == []


def test_ready_mix_as_far_as_it_and_the_room_reach() -> None:
    ask = replace(question(), stock=Stock(ready_mixes=[ReadyMix(15.0, 60.0), ReadyMix(10.0, 13.5)]))
    both = from_ready_mixes(ask)
    # 44 L of room: 4 pails of 10 L and one of 4 L; 13.5 L reach for 10 L and 3 whole litres.
    assert [[(p.count, p.water_l, p.concentrate_l) for p in plan.pours] for plan in both] == [
        [(4, 8.5, 1.5), (1, pytest.approx(3.4), pytest.approx(0.6))],
        [(1, 9.0, 1.0), (1, pytest.approx(2.7), pytest.approx(0.3))],
    ]
    assert {pour.kind for plan in both for pour in plan.pours} == {"ready_mix"}
    # 154 L at 6 % and 44 L at 15 %.
    assert both[0].final.strength_pct.value == pytest.approx(8.0)


@pytest.mark.parametrize("strength_pct", [100.0, 60.0, 20.1, 0.9])
def test_no_ready_mix_that_this_fluid_may_not_be_poured_at(strength_pct: float) -> None:
    mixes = [ReadyMix(strength_pct, 60.0), ReadyMix(20.0, 60.0), ReadyMix(1.0, 60.0)]
    plans = from_ready_mixes(replace(question(), stock=Stock(ready_mixes=mixes)))
    assert [plan.pours[0].concentrate_l for plan in plans] == pytest.approx([2.0, 0.1])


def test_ready_mix_keeps_to_the_first_mark_of_the_pail() -> None:
    # 44 L of room: the last 4 L do not reach the first mark of 5 L.
    ask = replace(question(), stock=Stock(ready_mixes=[ReadyMix(15.0, 60.0)]))
    (plan,) = from_ready_mixes(replace(ask, pail=Pail(first_mark_l=5.0)))
    assert [pour.count for pour in plan.pours] == [4]
    assert from_ready_mixes(replace(ask, fill_to_l=158.0, pail=Pail(first_mark_l=5.0))) == []


def test_no_ready_mix_without_one_or_without_room() -> None:
    assert from_ready_mixes(question()) == []
    assert from_ready_mixes(with_stock(3.0)) == []
    full = replace(question(198.0), stock=Stock(ready_mixes=[ReadyMix(15.0, 60.0)]))
    assert from_ready_mixes(full) == []


@pytest.mark.parametrize("asked", [(180.0, 2.0), (180.0, 15.0), (198.0, 5.0)])
def test_the_stock_is_named_instead_of_premix_or_room(asked: tuple[float, float]) -> None:
    drawing = replace(question(*asked), draw_off=DrawOff(allowed=True, mark_l=1.0))
    said = plan_recipe(with_stock(0.2, drawing)).cautions
    assert said[0] == "stock_short"
    assert set(said) & {"needs_stronger_premix", "needs_weaker_mix", "no_room"} == set()


def test_water_alone_fills_up_a_rich_sump_but_no_lean_and_no_empty_one() -> None:
    # 154 L at 9.5 % are 7.39 % in 198 L; 154 L at 6 % would be 4.67 %.
    water = with_stock(0.0, question(154.0, 9.5, weak_pct=0.0))
    assert within_stock(water, filled(water)).totals.water_l == pytest.approx(44.0)
    lean = with_stock(0.0, question(weak_pct=0.0))
    assert within_stock(lean, filled(lean)).pours == []
    empty = with_stock(0.0, question(0.0, 0.0, weak_pct=0.0))
    assert within_stock(empty, filled(empty)).pours == []


def test_half_a_litre_is_not_taken_out_for_nothing() -> None:
    small = question(20.0, 6.9, fill_to_l=20.0, bucket=(10.0, 0.25, 0.05))
    small = replace(small, mixing=Mixing(20.0, 1.0, 0.02), draw_off=DrawOff(True, 0.5))
    assert plan_recipe(small).draw_off_l == 0.5
    assert plan_recipe(with_stock(0.0, small)).draw_off_l == 0.0


def test_ready_mix_in_coarse_marks_and_a_rest_of_one_mark() -> None:
    mixes = Stock(ready_mixes=[ReadyMix(15.0, 60.0)])
    # 44 L in pails of 9 L with marks every 2 L: five of 8 L and one of 4 L.
    (coarse,) = from_ready_mixes(replace(question(bucket=(9.0, 2.0, 0.1)), stock=mixes))
    sizes = [(p.count, p.water_l + p.concentrate_l) for p in coarse.pours]
    assert sizes == [(5, pytest.approx(8.0)), (1, pytest.approx(4.0))]
    (rest,) = from_ready_mixes(replace(question(157.0), stock=mixes))
    sizes = [(p.count, p.water_l + p.concentrate_l) for p in rest.pours]
    assert sizes == [(4, pytest.approx(10.0)), (1, pytest.approx(1.0))]


def test_no_water_is_poured_into_water_for_want_of_concentrate() -> None:
    asked = with_stock(0.04, question(100.0, 0.0, weak_pct=0.0))
    assert within_stock(asked, filled(asked)).pours == []
