"""pycore.desk.check.recipe: a recipe in the tools' own units, rounded as a person measures."""

from dataclasses import replace
from types import SimpleNamespace
from typing import Any

import pytest

from pycore.desk.check.recipe import chance_code, plan_shown, section_after, way_shown
from pycore.desk.contract.messages import Units
from pycore.desk.contract.results import Section
from pycore.quantity.measured import Measured
from pycore.quantity.rounding import Shown
from pycore.recipe.outcome import Alternative, Wait, alternative, made
from pycore.recipe.pours import Pour, Step
from pycore.recipe.request import Pail, PlanRequest
from pycore.sump.shapes import Sump, proportional
from tests.unit.recipe.shop import question

METRIC: Any = SimpleNamespace(units=Units(plate="L", stick="mm", pail="L", jug="mL"))
US: Any = SimpleNamespace(units=Units(plate="US gal", stick="in", pail="US gal", jug="US fl oz"))
AFTER = Section(0.9, 0.91, 16)
US_GAL_L = 3.785411784  # 231 cubic inches, exact


def said(part: Shown | None) -> tuple[float, int, str] | None:
    """Number, decimals and unit of what is shown."""
    return None if part is None else (part.value, part.decimals, part.unit)


def shown(ask: PlanRequest, pours: list[Pour], typed: Any = METRIC, **more: Any) -> dict[str, Any]:
    return plan_shown(made(ask, pours, **more), ask, typed)


def way(ask: PlanRequest, pours: list[Pour], wait: Wait | None = None, **more: Any) -> Alternative:
    return alternative("alike", made(ask, pours, **more), wait)


def test_bucket_in_litres_and_millilitres() -> None:
    pour = shown(question(), [Pour(4, 8.5, 0.55)])["pours"][0]
    assert pour.count == 4
    assert said(pour.water) == (8.5, 1, "L")
    assert said(pour.concentrate) == (550.0, 0, "mL")
    assert said(pour.total) == (9.05, 2, "L")
    # 0.55 in 9.05 L; 1 kg of pail, 8.5 kg of water and half a kilogram of concentrate.
    assert said(pour.strength) == (6.1, 1, "%")
    assert said(pour.weight) == (10.0, 0, "kg")
    assert (pour.water_share, pour.concentrate_share) == pytest.approx((0.85, 0.055))
    assert (pour.fluid, pour.jugs, pour.pail_mark, pour.kind) == (None, None, None, None)


def test_bucket_in_us_units() -> None:
    pour = shown(question(), [Pour(1, 2 * US_GAL_L, US_GAL_L / 32)], US)["pours"][0]
    assert said(pour.water) == (2.0, 0, "US gal")
    # A US gallon is 128 fluid ounces.
    assert said(pour.concentrate) == (4.0, 0, "US fl oz")
    # 7.571 L of water, 0.118 L of concentrate and the pail are 8.675 kg or 19.1 lb.
    assert said(pour.weight) == (19.0, 0, "lb")


@pytest.mark.parametrize(
    ("concentrate_l", "jugs"),
    [(1.3, (2, 300.0)), (1.0, (2, 0.0)), (0.5, None), (0.45, None), (1.5, (3, 0.0))],
)
def test_full_jugs_and_a_rest(concentrate_l: float, jugs: tuple[int, float] | None) -> None:
    ask = replace(question(), pail=Pail(jug_max_l=0.5))
    found = shown(ask, [Pour(1, 8.0, concentrate_l)])["pours"][0].jugs
    assert (None if found is None else (found.count, found.rest.value)) == jugs


def test_by_the_marks_of_the_pail() -> None:
    # Water to 8, concentrate to 10.
    ask = replace(question(), pail=Pail(jug_max_l=0.5, measure_by="pail"))
    pour = shown(ask, [Pour(1, 8.0, 2.0)])["pours"][0]
    assert said(pour.pail_mark) == (10.0, 0, "L")
    assert said(pour.concentrate) == (2.0, 0, "L")
    assert pour.jugs is None


def test_own_fluid_is_shown_as_what_carries() -> None:
    ask = question()
    pour = shown(ask, [Pour(1, 0.0, 1.0, fluid_l=8.0, kind="own_fluid")])["pours"][0]
    assert said(pour.fluid) == (8.0, 0, "L")
    assert said(pour.total) == (9.0, 0, "L")
    assert (pour.kind, pour.water_share) == ("own_fluid", pytest.approx(0.8))
    # 8 L of fluid at about 1 kg/L with 1 L of concentrate in a pail of 1 kg.
    assert said(pour.weight) == (10.0, 0, "kg")
    # The fluid that carries has the sump's own strength: (8 L x C + 1 L) in 9 L.
    carried = 100 * (8.0 * ask.sump.strength_pct.value / 100 + 1.0) / 9.0
    assert pour.strength.value == pytest.approx(carried, abs=0.05)


def test_sums_and_settings() -> None:
    ask = question(198.0, 5.0)
    page = shown(ask, [Pour(3, 8.0, 2.0), Pour(1, 3.0, 0.75)], draw_off_l=34.0)
    assert said(page["take_out"]) == (34.0, 0, "L")
    assert said(page["water"]) == (27.0, 0, "L")
    assert said(page["concentrate"]) == (6.75, 2, "L")
    assert said(page["added"]) == (33.8, 1, "L")
    assert said(page["now_volume"]) == (198.0, 3, "L")
    assert said(page["now_strength"]) == (5.0, 3, "%")
    assert [said(page[name]) for name in ("band_low", "aim", "band_high")] == [
        (7.0, 0, "%"), (8.0, 0, "%"), (9.0, 0, "%"),
    ]  # fmt: skip
    # (164·5 + 34·1)/198 and (164·5 + 34·20)/198.
    assert (page["reach_low"].value, page["reach_high"].value) == (4.3, 7.6)
    assert said(page["volume"]) == (198.0, 0, "L")
    # (164·5 + 675)/197.75 with one decimal of an uncertainty of 0.26.
    assert said(page["strength"]) == (7.6, 1, "%")
    assert page["low"].value < page["strength"].value < page["high"].value


def test_volume_of_a_customary_plate_has_a_decimal() -> None:
    assert said(shown(question(), [], US)["volume"]) == (40.7, 1, "US gal")


def test_way_that_waits() -> None:
    ask = question(198.0, 5.0)
    found = way_shown(way(ask, [], Wait(level_l=168.3, strength_pct=5.882)), ask, METRIC, AFTER)
    assert (said(found.level), said(found.level_strength)) == ((168.0, 0, "L"), (5.9, 1, "%"))
    assert (found.days, found.take_out, found.run_in) == (None, None, None)
    # A day that has begun counts.
    assert way_shown(way(ask, [], Wait(time_d=35.31)), ask, METRIC, AFTER).days == 36


def test_way_by_hose_or_unit() -> None:
    ask = question()
    steps = [Step("unit", volume_l=44.0, setting_pct=14.5), Step("run", minutes=30.0)]
    found = way_shown(way(ask, [], steps=steps, run_in_l=(37.62, 6.38)), ask, METRIC, AFTER)
    assert (said(found.run_in), said(found.setting)) == ((44.0, 0, "L"), (14.5, 1, "%"))
    hose = way_shown(way(ask, [], steps=[Step("hose", volume_l=40.0)]), ask, METRIC, AFTER)
    assert (said(hose.run_in), hose.setting) == ((40.0, 0, "L"), None)


def test_way_with_a_draw_off() -> None:
    ask = question(198.0, 5.0)
    found = way_shown(way(ask, [Pour(4, 8.0, 2.0)], draw_off_l=40.0), ask, METRIC, AFTER)
    assert said(found.take_out) == (40.0, 0, "L")
    assert (found.why, found.verdict, len(found.pours)) == ("alike", "on_target", 1)


@pytest.mark.parametrize(
    ("chance", "code"),
    [
        (0.95, "very_likely"),
        (0.90, "very_likely"),
        (0.89, "likely"),
        (0.5, "even"),
        (0.2, "unlikely"),
        (0.0, "very_unlikely"),
    ],
)
def test_chance_in_words(chance: float, code: str) -> None:
    final = replace(made(question(), []).final, chance_in_band=chance)
    assert chance_code(final, ["gloves_and_eyes"]) == code
    assert chance_code(final, ["rough"]) is None


def test_a_way_that_waits_promises_no_chance() -> None:
    ask = question(198.0, 5.0)
    assert way_shown(way(ask, [], Wait(time_d=3.0)), ask, METRIC, AFTER).chance is None
    poured = way_shown(way(ask, [Pour(4, 8.0, 2.0)], draw_off_l=40.0), ask, METRIC, AFTER)
    assert poured.chance is not None
    assert poured.after == AFTER


def lathe() -> Sump:
    """198 L at 440 mm, straight walls, rim at the full mark."""
    return proportional(440.0, 198.0, 0.03, 440.0)


def test_section_after_the_last_bucket() -> None:
    ask = question(99.0, 6.0)
    after = section_after(lathe(), made(ask, [Pour(4, 8.5, 1.4)]), 220.0)
    # 99 L and 39.6 L of 198 L.
    assert after.level == pytest.approx(0.7)
    # One dot is half a per cent of the full sump: (99 x 6 + 560)/138.6 % of 138.6 L.
    assert after.dots == round((99 * 0.06 + 5.6) / (0.005 * 198))


def test_section_stays_where_nothing_is_poured() -> None:
    assert section_after(lathe(), made(question(99.0), []), 219.0).level == pytest.approx(219 / 440)


def test_section_falls_when_coolant_is_only_taken_out() -> None:
    after = section_after(lathe(), made(question(99.0), [], 19.8), 220.0)
    assert after.level == pytest.approx(0.4)


def test_a_sum_may_pass_the_rim_by_the_last_digit_of_a_float() -> None:
    ask = question(198.0 - 3 * 9.9, 6.0)
    after = section_after(lathe(), made(ask, [Pour(3, 8.5, 1.4000000000001)]), 400.0)
    assert after.level == pytest.approx(1.0)


def test_strength_is_never_shown_on_the_wrong_side_of_the_band() -> None:
    page = shown(question(198.0, 6.975), [])
    assert (page["strength"].value, page["strength"].decimals) == (6.98, 2)
    # On the edge itself nothing is hidden.
    assert shown(question(198.0, 7.0), [])["strength"].decimals == 1


def test_mark_of_the_pail_in_eighths_and_sixteenths_of_a_gallon() -> None:
    ask = replace(question(), pail=Pail(measure_by="pail"))
    pour = shown(ask, [Pour(1, 1.375 * US_GAL_L, 0.25 * US_GAL_L)], US)["pours"][0]
    assert said(pour.pail_mark) == (1.625, 3, "US gal")
    pour = shown(ask, [Pour(1, 2.0625 * US_GAL_L, 0.375 * US_GAL_L)], US)["pours"][0]
    assert (said(pour.water), said(pour.pail_mark)) == (
        (2.0625, 4, "US gal"), (2.4375, 4, "US gal"),
    )  # fmt: skip


def test_level_to_wait_for_is_what_the_stick_shows() -> None:
    wait = way(question(228.0, 5.0), [], Wait(level_l=198.3, strength_pct=5.7))
    found = way_shown(wait, question(228.0, 5.0), METRIC, AFTER, Measured(30.0, 2.0))
    assert said(found.level) == (168.0, 0, "L")
    # 168.3 L are 44.46 US gal; a whole gallon would be too rough.
    gallons = way_shown(wait, question(228.0, 5.0), US, AFTER, Measured(30.0, 2.0))
    assert said(gallons.level) == (44.5, 1, "US gal")
