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
from pycore.recipe.request import Effort, Pail, SumpState
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
