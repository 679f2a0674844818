"""pycore.recipe.outlook: how sure the result is, and what is said with it."""

import math
from dataclasses import replace

import pytest

from pycore.quantity.measured import Measured
from pycore.recipe.outcome import made
from pycore.recipe.outlook import (
    bucket_weight_kg,
    final_state,
    heaviest_kg,
    light_usable_l,
    reach_pct,
)
from pycore.recipe.plan import plan_recipe
from pycore.recipe.pours import Pour
from pycore.recipe.request import Effort, Pail, PlanRequest, SumpState
from tests.unit.recipe.shop import question, space


def test_first_order_uncertainty_by_hand() -> None:
    # JCGM 100:2008, 5.1.2, for C = (V·c + 100·k)/(V + w + k); 3 % of a vessel (common practice).
    ask, water, concentrate = question(), 36.0, 6.0
    total = 154 + water + concentrate
    strength = (154 * 6 + 100 * concentrate) / total
    by_volume = 3.0 * (6 - strength) / total
    by_strength = 0.3 * 154 / total
    by_pail = 0.03 * water * -strength / total
    by_jug = 0.03 * concentrate * (100 - strength) / total
    final, shares = final_state(ask, water, concentrate)
    parts = {
        "volume": by_volume,
        "strength": by_strength,
        "pail_marks": by_pail,
        "jug_marks": by_jug,
    }
    u = math.hypot(*parts.values())
    assert final.strength_pct.value == pytest.approx(strength)
    assert final.strength_pct.u == pytest.approx(u)
    assert (final.low_pct, final.high_pct) == pytest.approx((strength - 2 * u, strength + 2 * u))
    assert {s.input: s.share for s in shares} == pytest.approx(
        {k: (v / u) ** 2 for k, v in parts.items()}
    )


def test_nothing_poured_leaves_the_reading_alone() -> None:
    final, shares = final_state(question(), 0.0, 0.0)
    assert (final.volume_l, final.strength_pct.value, final.strength_pct.u) == (154.0, 6.0, 0.3)
    assert [share.input for share in shares] == ["strength"]


def test_reach_is_the_room_filled_with_the_weakest_and_the_strongest() -> None:
    # By hand: (154·6 + 44·1)/198 and (154·6 + 44·20)/198.
    assert reach_pct(space(question())) == pytest.approx((968 / 198, 1804 / 198))
    assert reach_pct(space(question(198.0, 6.0))) == (6.0, 6.0)


def test_weight_of_a_pail() -> None:
    # Water 0.9982 kg/L at 20 °C (IAPWS-95); concentrate and pail about 1 (common practice).
    assert bucket_weight_kg(8.0, 2.0) == pytest.approx(11, abs=0.1)


@pytest.mark.parametrize(
    ("changes", "caution"),
    [
        ({"volume_l": 200.0, "strength_pct": 8.0}, "above_full_mark"),
        ({"volume_l": 198.0, "strength_pct": 8.0}, "nothing_to_pour"),
        ({"volume_l": 198.0, "strength_pct": 5.0}, "no_room"),
        ({"volume_l": 180.0, "strength_pct": 2.0}, "needs_stronger_premix"),
        ({"volume_l": 180.0, "strength_pct": 15.0}, "needs_weaker_mix"),
        ({"volume_l": 180.0, "strength_pct": 15.0}, "strong_harms_skin"),
        ({"volume_l": 198.0, "strength_pct": 5.0}, "weak_must_not_stand"),
        ({"volume_l": 100.0, "strength_pct": 3.0}, "large_change"),
        ({"fill_to_l": 400.0}, "many_buckets"),
        ({"bucket": (25.0, 1.0, 0.05)}, "bucket_heavy"),
        ({}, "gloves_and_eyes"),
        ({}, "water_first"),
    ],
)
def test_caution(changes: dict[str, float], caution: str) -> None:
    assert caution in plan_recipe(question(**changes)).cautions


def test_weight_that_a_person_may_carry() -> None:
    # 16 kg less 1 kg for the pail at 1 kg/L; HSE INDG143(rev4), figure 1, from memory.
    assert (heaviest_kg(question()), light_usable_l(question())) == (16.0, 15.0)
    said = replace(question(), effort=Effort(heaviest_kg=25.0), density_kg_l=1.2)
    assert (heaviest_kg(said), light_usable_l(said)) == (25.0, pytest.approx(20.0))


def test_ordinary_fill_has_the_cautions_of_mixing_only() -> None:
    assert plan_recipe(question()).cautions == ["gloves_and_eyes", "water_first"]


def test_water_comes_first_only_where_concentrate_is_stirred_into_it() -> None:
    said = {
        "mixed": made(question(), [Pour(4, 8.0, 1.0)]).cautions,
        "own": made(question(), [Pour(4, 0.0, 1.0, fluid_l=8.0, kind="own_fluid")]).cautions,
        "ready": made(question(), [Pour(4, 8.0, 1.0, kind="ready_mix")]).cautions,
        "run in": made(question(), [], run_in_l=(40.0, 4.0)).cautions,
        "water": made(question(), [Pour(4, 9.0, 0.0)]).cautions,
    }
    assert {way for way, codes in said.items() if "water_first" in codes} == {"mixed"}
    assert {way for way, codes in said.items() if "gloves_and_eyes" not in codes} == {"water"}


def test_half_of_a_large_change_can_be_poured_only_from_buckets() -> None:
    # 5 L of concentrate in 100 L at 3 % are nearly 5 points.
    lean = question(100.0, 3.0)
    own = Pour(1, 0.0, 5.0, fluid_l=5.0, kind="own_fluid")
    said = {
        "mixed": made(lean, [Pour(1, 5.0, 5.0)]).cautions,
        "ready": made(lean, [Pour(1, 5.0, 5.0, kind="ready_mix")]).cautions,
        "drawn": made(lean, [Pour(1, 5.0, 5.0)], 10.0).cautions,
        "own": made(lean, [own]).cautions,
        "unit": made(lean, [], run_in_l=(5.0, 5.0)).cautions,
        "hose": made(lean, [Pour(1, 4.0, 5.0)], run_in_l=(1.0, 0.0)).cautions,
    }
    halves = {way for way, codes in said.items() if "large_change" in codes}
    whole = {way for way, codes in said.items() if "large_change_read" in codes}
    assert (halves, whole) == ({"mixed", "ready"}, {"drawn", "own", "unit", "hose"})


@pytest.mark.parametrize(
    ("volume_l", "u_l", "strength_pct", "rough"),
    [
        # A tenth of what is there afterwards.
        (154.0, 19.9, 6.0, True), (154.0, 19.0, 6.0, False),
        # Less than two uncertainties, and the volume matters.
        (20.0, 11.0, 16.0, True), (20.0, 9.0, 16.0, False),
        # Less than two uncertainties, but it is at the strength it will have.
        (20.0, 11.0, 8.0, False),
    ],
)  # fmt: skip
def test_rough_where_first_order_is_not_enough(
    volume_l: float, u_l: float, strength_pct: float, rough: bool
) -> None:
    state = SumpState(Measured(volume_l, u_l), Measured(strength_pct, 0.3))
    plan = plan_recipe(replace(question(), sump=state))
    assert ("rough" in plan.cautions) is rough


def test_room_that_no_bucket_fills_is_not_called_full() -> None:
    # The pail's first mark is its brim, so no mix can be measured at all, with 44 L free.
    plan = plan_recipe(replace(question(154.0, 6.0), pail=Pail(first_mark_l=10.0)))
    assert plan.pours == []
    assert plan.case == "lean_low"
    assert plan.cautions[:2] == ["best_reachable", "marks_too_coarse"]


def state(volume_l: float, u_l: float, strength_pct: float, u_pct: float) -> PlanRequest:
    """A question about a sump whose state is in doubt by so much."""
    sump = SumpState(Measured(volume_l, u_l), Measured(strength_pct, u_pct))
    return replace(question(), sump=sump)


def said(ask: PlanRequest, *pours: Pour, draw_off_l: float = 0.0) -> set[str]:
    """What is said beside these pours."""
    return set(made(ask, list(pours), draw_off_l).cautions)


@pytest.mark.parametrize(("volume_l", "strength_pct"), [(198.1, 5.3), (154.0, 6.0), (7.0, 0.1)])
def test_nothing_poured_changes_no_digit(volume_l: float, strength_pct: float) -> None:
    ask = question(volume_l, strength_pct, fill_to_l=volume_l)
    final, shares = final_state(ask, 0.0, 0.0)
    assert final.strength_pct == ask.sump.strength_pct
    assert [(part.input, part.share) for part in shares] == [("strength", 1.0)]
    assert reach_pct(space(ask)) == (strength_pct, strength_pct)


def test_exact_inputs_and_vessels_not_used_have_no_share() -> None:
    assert final_state(state(154.0, 0.0, 6.0, 0.0), 0.0, 0.0)[1] == []
    names = {part.input for part in final_state(question(), 0.0, 5.0)[1]}
    assert names == {"volume", "strength", "jug_marks"}


@pytest.mark.parametrize(
    ("volume_l", "water_l", "concentrate_l", "strength_pct"),
    [(154.0, 5.0, 5.0, 1424 / 164), (154.0, 0.8, 0.2, 944 / 155), (0.0, 0.9, 0.1, 10.0)],
)
def test_a_single_litre_counts(
    volume_l: float, water_l: float, concentrate_l: float, strength_pct: float
) -> None:
    # C1·V1 + 100·concentrate over the sum of volumes, by hand.
    final, _ = final_state(question(volume_l, 6.0), water_l, concentrate_l)
    assert final.strength_pct.value == pytest.approx(strength_pct)


def test_reach_of_a_single_litre_and_with_a_weakest_mix_of_two_per_cent() -> None:
    assert reach_pct(space(question(197.0, 6.0))) == pytest.approx((1183 / 198, 1202 / 198))
    assert reach_pct(space(question(0.5, 6.0, fill_to_l=1.0))) == pytest.approx((3.5, 13.0))
    # (154·6 + 44·2)/198.
    assert reach_pct(space(question(weak_pct=2.0)))[0] == pytest.approx(1012 / 198)


def test_likely_range_stays_between_nothing_and_neat() -> None:
    assert final_state(question(strength_pct=0.3), 0.0, 0.0)[0].low_pct == 0.0
    assert final_state(question(strength_pct=99.9), 0.0, 0.0)[0].high_pct == 100.0


def test_weight_with_the_density_of_the_concentrate() -> None:
    # 1 kg of pail, 8 × 0.9982 and 2 × 0.9 kg.
    assert bucket_weight_kg(8.0, 2.0, 0.9) == pytest.approx(1 + 7.9856 + 1.8)


@pytest.mark.parametrize(
    ("changes", "cautions"),
    [
        ({"volume_l": 198.0, "strength_pct": 5.0}, ["best_reachable", "no_room"]),
        # A litre of water goes in and is not enough: the room is not what is said.
        ({"volume_l": 19.0, "strength_pct": 12.0, "fill_to_l": 20.0, "weak_pct": 0.0},
         ["best_reachable", "needs_weaker_mix"]),
        # A bucket of one mark, 4.76 %, fits: it is the premix that is too weak, not the room.
        ({"volume_l": 196.95, "strength_pct": 4.5}, ["best_reachable", "needs_stronger_premix"]),
        # The same bucket would lead away from the band.
        ({"volume_l": 196.95, "strength_pct": 5.0}, ["not_filled_up", "best_reachable"]),
        # 2 L of room, and a mix of 1 to 1.5 % that marks of 50 mL cannot measure in it.
        ({"volume_l": 196.0, "strength_pct": 5.0, "strong_pct": 1.5},
         ["best_reachable", "marks_too_coarse"]),
        # 15 % would do, but marks of 2 L give no mix between water and 18 %, and water alone harms.
        ({"volume_l": 150.0, "strong_pct": 15.0, "weak_pct": 0.0, "bucket": (10.0, 1.0, 2.0)},
         ["not_filled_up", "best_reachable", "marks_too_coarse"]),
    ],
)  # fmt: skip
def test_what_keeps_the_band_out_of_reach(changes: dict[str, float], cautions: list[str]) -> None:
    assert plan_recipe(question(**changes)).cautions[: len(cautions)] == cautions


@pytest.mark.parametrize(
    ("u_l", "u_pct", "sensitive"), [(25.0, 0.1, True), (15.0, 0.1, False), (3.0, 1.2, False)]
)
def test_sensitive_to_the_dip_where_it_brings_most_of_a_large_doubt(
    u_l: float, u_pct: float, sensitive: bool
) -> None:
    # 100 L at 3 % filled to 8 %: u_l·5/198 and u_pct·100/198 points, against a closeness of 0.5.
    found = plan_recipe(state(100.0, u_l, 3.0, u_pct)).cautions
    assert ("sensitive_to_dip" in found) is sensitive


def test_rough_only_where_something_is_poured_even_into_a_sump_of_a_litre() -> None:
    assert "rough" not in said(state(198.0, 30.0, 8.0, 0.3))
    assert "rough" in said(state(0.2, 0.1, 6.0, 0.3), Pour(1, 0.4, 0.1))


def test_a_person_may_set_what_is_heavy_and_what_is_many() -> None:
    limits = replace(question(), effort=Effort(most_buckets=3, heaviest_kg=9.0))
    assert {"bucket_heavy", "many_buckets"} <= said(limits, Pour(4, 8.0, 1.0))
    assert said(limits, Pour(3, 6.0, 1.0)) & {"bucket_heavy", "many_buckets"} == set()


@pytest.mark.parametrize(
    ("pours", "caution"),
    [
        ([Pour(12, 9.0, 1.0)], set()),
        ([Pour(13, 1.0, 0.1)], {"many_buckets"}),
        ([Pour(12, 8.0, 2.05)], {"many_buckets"}),
        ([Pour(12, 0.0, 2.05, fluid_l=8.0)], {"many_buckets"}),
        # 1 kg, 13.5 L of 0.9982 kg/L and 1.5 kg are 15.98 kg; a tenth of a litre more are 16.08 kg.
        ([Pour(1, 13.5, 1.5)], set()),
        ([Pour(1, 13.6, 1.5)], {"bucket_heavy"}),
        ([Pour(1, 13.6, 1.5), Pour(1, 2.0, 0.2)], {"bucket_heavy"}),
        ([Pour(1, 0.0, 1.5, fluid_l=13.6)], {"bucket_heavy"}),
    ],
)
def test_a_dozen_buckets_120_litres_and_16_kilograms(pours: list[Pour], caution: set[str]) -> None:
    # Common practice, no source; what the sump's own fluid weighs is carried too.
    assert said(question(), *pours) & {"many_buckets", "bucket_heavy"} == caution


@pytest.mark.parametrize(
    ("volume_l", "strength_pct", "pour", "large"),
    [
        # 100 L to 200 L: half of the difference between the sump and what is poured.
        (100.0, 3.0, Pour(10, 8.7, 1.3), True), (100.0, 15.0, Pour(10, 9.2, 0.8), True),
        (100.0, 7.0, Pour(10, 8.7, 1.3), False),
        # Less than a fifth of the 198 L is a new charge, a fifth is not.
        (30.0, 3.0, Pour(10, 8.7, 1.3), False), (39.6, 3.0, Pour(10, 8.7, 1.3), True),
    ],
)  # fmt: skip
def test_large_change_up_and_down(
    volume_l: float, strength_pct: float, pour: Pour, large: bool
) -> None:
    assert ("large_change" in said(question(volume_l, strength_pct), pour)) is large


def test_small_amounts_are_said_like_large_ones() -> None:
    full = question(198.0, 8.0)
    assert said(full) == {"nothing_to_pour"}
    assert said(full, Pour(1, 0.8, 0.0)) == set()
    assert said(full, Pour(1, 0.4, 0.5)) == {"gloves_and_eyes", "water_first"}
    own = said(question(154.0, 7.5), Pour(2, 0.0, 0.5, 8.0, "own_fluid"))
    assert own == {"gloves_and_eyes", "own_fluid_clean"}
    assert said(full, draw_off_l=0.5) == {"taken_out_is_waste"}
    assert "nothing_to_pour" not in said(question(198.0, 5.0))
    assert said(question(198.0, 9.0)) == {"nothing_to_pour"}
