"""pycore.desk.check.strength: readings as typed to strength, nothing corrected or applied twice."""

from typing import Any

import pytest

from tests.unit.desk.asked import (
    HAND_GLASS,
    NOW,
    PER_CENT_GLASS,
    WHEEL_LATHE,
    ask,
    assess,
    brix,
    refusal,
    t,
    with_fields,
)  # fmt: skip


def _zeroed(temperature: str | None, **more: Any) -> dict[str, Any]:
    zero = with_fields(HAND_GLASS["zero"], shows=brix("0"))
    zero["temperature"] = t(temperature, "°C") if temperature else None
    return with_fields(HAND_GLASS, zero=with_fields(zero), **more)


def _strength(reading: dict[str, Any], **more: Any) -> dict[str, Any]:
    return ask("assess_sump", assess(reading, now=NOW, **more))["strength"]


def test_zeroed_at_30_and_read_at_30_is_not_corrected() -> None:
    # By hand: 5 × 1.5; the table on top would make 8.61 % of it, one point too much.
    reading = {"shows": brix("5"), "temperature": t("30", "°C")}
    got = _strength(reading, instrument=_zeroed("30"))
    assert got["strength_pct"]["value"] == pytest.approx(7.5)
    assert "temperature_change_brix" not in got


def test_zeroed_at_20_and_read_at_30_is_corrected_by_the_table() -> None:
    # By hand: (5 + 0.74) × 1.5.
    reading = {"shows": brix("5"), "temperature": t("86", "°F")}
    got = _strength(reading, instrument=_zeroed("20"))
    assert got["strength_pct"]["value"] == pytest.approx(8.61)
    assert got["temperature_change_brix"] == pytest.approx(0.74)
    assert got["shown"]["corrected"]["value"] == pytest.approx(5.74)


# By hand: 3.3 × 1.5 = 4.95, 4 × 1.5 = 6; in floating point the first is 4.949999999999999.
@pytest.mark.parametrize(
    ("reading", "worked_out", "decimals", "strength"),
    [("3.3", 4.95, 2, 5.0), ("4.0", 6.0, 1, 6.0), ("3.37", 5.055, 3, 5.1)],
)
def test_the_line_of_arithmetic_is_true_digit_for_digit(
    reading: str, worked_out: float, decimals: int, strength: float
) -> None:
    said = _strength({"shows": brix(reading)})["shown"]
    assert (said["worked_out"]["value"], said["worked_out"]["decimals"]) == (worked_out, decimals)
    assert said["strength"]["value"] == strength


def test_a_line_that_needs_more_digits_says_about() -> None:
    # (5 + 0.74) × 1.5678 = 8.999172.
    fluid = {**WHEEL_LATHE["fluid"], "factor": t("1.5678", "1")}
    reading = {"shows": brix("5"), "temperature": t("30", "°C")}
    said = _strength(reading, instrument=_zeroed("20"), fluid=fluid)["shown"]
    assert "worked_out" not in said


def test_automatic_compensation_is_left_alone() -> None:
    reading = {"shows": brix("5"), "temperature": t("30", "°C")}
    got = _strength(reading, instrument=_zeroed("20", compensation="automatic"))
    assert got["strength_pct"]["value"] == pytest.approx(7.5)


def test_temperature_outside_the_table_is_refused_in_its_own_unit() -> None:
    reading = {"shows": brix("5"), "temperature": t("95", "°F")}
    error = refusal("assess_sump", assess(reading, instrument=_zeroed("20")))
    assert (error["code"], error["path"]) == ("out_of_range", "body.reading.temperature")
    assert error["limit"] == {"minimum": 50.0, "maximum": 86.0, "unit": "°F"}


def test_zero_is_taken_off_and_shown() -> None:
    got = _strength({"shows": brix("5")}, instrument=HAND_GLASS)
    assert got["strength_pct"]["value"] == pytest.approx(4.8 * 1.5)
    assert got["shown"]["zero"]["value"] == 0.2
    assert got["shown"]["corrected"]["value"] == 4.8


def test_diluted_one_to_one_doubles_reading_and_doubt() -> None:
    # DGUV/IFA: 2.6 after one to one is 5.2; × 1.5 = 7.8.
    plain = _strength({"shows": brix("5.2"), "how": "blurred"})
    thin = _strength({"shows": brix("2.6"), "how": "blurred", "diluted": t("1", "1")})
    assert thin["strength_pct"]["value"] == pytest.approx(7.8)
    assert thin["corrected_brix"] == pytest.approx({"value": 5.2, "u": 1.6})
    assert plain["cures"][-1] == "dilute_and_double"
    assert thin["strength_pct"]["u"] > plain["strength_pct"]["u"]


def test_several_readings_give_their_mean_and_spread() -> None:
    got = _strength({"shows": brix("5.0"), "again": [brix("5.2"), brix("5.4")]})
    assert got["reading_brix"]["value"] == pytest.approx(5.2)
    assert got["spread_brix"] == pytest.approx(0.2)
    assert got["shown"]["reading"]["value"] == 5.0
    assert got["shown"]["mean"]["value"] == pytest.approx(5.2)


def test_readings_that_scatter_are_asked_about() -> None:
    got = ask("assess_sump", assess({"shows": brix("4"), "again": [brix("5")]}))
    assert [doubt["code"] for doubt in got["doubts"]] == ["readings_scatter"]


def test_per_cent_with_the_factor_inside_is_not_multiplied_again() -> None:
    got = _strength({"shows": t("7.8", "%")}, instrument=PER_CENT_GLASS)
    assert got["strength_pct"]["value"] == pytest.approx(7.8)
    assert got["reading_brix"]["value"] == pytest.approx(5.2)


def test_another_factor_inside_is_undone_and_asked_about() -> None:
    # By hand: 7.8/1.3 = 6 Brix, × 1.5 = 9 %.
    inside = with_fields(PER_CENT_GLASS, factor_inside=t("1.3", "1"))
    got = ask("assess_sump", assess({"shows": t("7.8", "%")}, instrument=inside))
    assert got["strength"]["strength_pct"]["value"] == pytest.approx(9.0)
    assert [doubt["code"] for doubt in got["doubts"]] == ["factor_inside_differs"]


def test_per_cent_stands_where_the_fluids_factor_is_not_known() -> None:
    got = ask(
        "assess_sump",
        assess({"shows": t("7.8", "%")}, instrument=PER_CENT_GLASS, fluid={"type": "synthetic"}),
    )
    assert got["strength"]["strength_pct"]["value"] == pytest.approx(7.8)
    assert "no_fluid_factor" in got["notes"]


def test_refractive_index_is_read_on_the_sucrose_scale() -> None:
    # chemicals 1.5.2: 1.341452 is 5.8 Brix; water by the same scale 1.33299.
    glass = {"shows": "refractive_index", "zero": {"shows": t("1.33299", "nD"), "on": NOW}}
    got = _strength({"shows": t("1.341452", "nD")}, instrument=glass)
    assert got["strength_pct"]["value"] == pytest.approx(5.8 * 1.5, abs=1e-3)
    error = refusal("assess_sump", assess({"shows": t("1.5", "nD")}, instrument=glass))
    assert (error["code"], error["limit"]["unit"]) == ("out_of_range", "nD")


@pytest.mark.parametrize(
    ("glass", "typed"),
    [(HAND_GLASS, t("5", "%")), (PER_CENT_GLASS, t("5", "Brix")), (HAND_GLASS, t("5 %", "Brix"))],
)
def test_a_reading_in_another_unit_than_the_scale_is_refused(
    glass: dict[str, Any], typed: dict[str, str]
) -> None:
    error = refusal("assess_sump", assess({"shows": typed}, instrument=glass))
    assert (error["code"], error["path"]) == ("wrong_dimension", "body.reading.shows")


def test_off_the_scale_names_its_ends_and_the_reading() -> None:
    reading = {"shows": brix("5"), "again": [brix("18.2")]}
    error = refusal("assess_sump", assess(reading, instrument=HAND_GLASS))
    assert (error["code"], error["path"]) == ("off_scale", "body.reading.again[0]")
    assert error["limit"]["maximum"] == 18


def test_impossible_strength_is_refused_in_the_scales_unit() -> None:
    body = assess({"shows": t("41", "%")}, instrument=PER_CENT_GLASS)
    error = refusal("assess_sump", body)
    assert (error["code"], error["path"]) == ("out_of_range", "body.reading.shows")
    assert (error["limit"]["below"], error["limit"]["unit"]) == (pytest.approx(40), "%")


@pytest.mark.parametrize(
    ("now", "notes"),
    [
        ("2026-11-25T14:00", []),
        ("2026-11-26T06:10", []),
        ("2026-11-26T06:11", ["zero_old"]),
        (None, ["zero_age_unknown"]),
    ],
)
def test_age_of_the_zero(now: str | None, notes: list[str]) -> None:
    more = {"now": now} if now else {}
    reading = {"shows": brix("5"), "temperature": t("20", "°C")}
    assert ask("assess_sump", assess(reading, instrument=HAND_GLASS, **more))["notes"] == notes


def test_zero_ahead_of_now_is_refused() -> None:
    body = assess({"shows": brix("5")}, instrument=HAND_GLASS, now="2026-11-25T06:00")
    error = refusal("assess_sump", body)
    assert (error["code"], error["path"]) == ("order", "body.instrument.zero.on")


def test_chart_and_offset_keep_the_line_on_the_page_true() -> None:
    fluid = with_fields(WHEEL_LATHE["fluid"], factor_offset=brix("0.5"))
    got = _strength({"shows": brix("5.0")}, fluid=fluid)
    # By hand: (5 − 0.5) × 1.5 = 6.75 = 5 × 1.35.
    assert got["strength_pct"]["value"] == pytest.approx(6.75)
    assert got["shown"]["factor"]["value"] == pytest.approx(1.35)


def test_beyond_the_chart_is_said() -> None:
    chart = [{"strength": t("5", "%"), "reading": brix("4")}]
    fluid = {"type": "soluble_oil", "factor_chart": chart}
    got = ask("assess_sump", assess({"shows": brix("6")}, fluid=fluid))
    assert "beyond_chart" in got["notes"]
    assert got["strength"]["strength_pct"]["value"] == pytest.approx(7.5)


def test_magnesium_stands_beside_every_reading() -> None:
    fluid = with_fields(WHEEL_LATHE["fluid"], metals=["magnesium"])
    assert "magnesium" in ask("assess_sump", assess({"shows": brix("5")}, fluid=fluid))["notes"]
