"""pycore.desk.check.hold: a typed dip without a reading; ends by C1·V1 = C2·V2 by hand."""

from typing import Any

import pytest

from pycore.desk.check.hold import DRIFT_PCT_D
from tests.examples.hold import LAST_AT
from tests.unit.desk.lathe import WHEEL_LATHE, ask, changed, check, refusal

NOW = "2026-11-25T07:40:00+01:00"
AGE_D = 7.0


def hold(machine: dict[str, Any] = WHEEL_LATHE, depth: str = "342", **more: Any) -> dict[str, Any]:
    return {
        "machine": machine,
        "dip": {"depth": {"text": depth, "unit": "mm"}},
        "now": NOW,
        **more,
    }


def usual(text: str = "3") -> dict[str, Any]:
    return {"text": text, "unit": "%"}


def last(shows: str = "5.4", at: str = LAST_AT, depth: str = "380") -> dict[str, Any]:
    return {"check": check(WHEEL_LATHE, depth, shows), "at": at}


def test_request_and_holding_belong_together() -> None:
    got = ask("hold_check", hold(usual=usual(), last=last()))
    assert ask("plan_holding", got["request"]) == got["holding"]


def test_shown_amounts_are_the_holdings_own() -> None:
    got = ask("hold_check", hold(usual=usual()))
    assert got["shown"]["pours"]
    for pour, said in zip(got["holding"]["pours"], got["shown"]["pours"], strict=True):
        assert said["water"]["value"] == pytest.approx(pour["water_l"])
        assert said["concentrate"]["value"] / 1000 == pytest.approx(pour["concentrate_l"])
        assert said["count"] == pour["count"]


def test_ends_stand_on_what_the_last_recipe_led_to() -> None:
    checked = ask("plan_check", check(WHEEL_LATHE, "380", "5.4"))
    strength = checked["plan"]["final"]["strength_pct"]
    got = ask("hold_check", hold(usual=usual(), last=last()))
    away = 2 * strength["u"] + AGE_D * DRIFT_PCT_D
    totals = got["holding"]["totals"]
    volume_l = 342 * 198 / 440
    after_l = volume_l + totals["water_l"] + totals["concentrate_l"]
    for side, start in (("low_pct", -away), ("high_pct", away)):
        neat_l = volume_l * (strength["value"] + start) / 100 + totals["concentrate_l"]
        assert got["holding"]["ends"][side] == pytest.approx(100 * neat_l / after_l)
    assert got["shown"]["last"]["value"] == pytest.approx(strength["value"], abs=0.05)
    assert got["shown"]["drift"] == {"value": DRIFT_PCT_D, "decimals": 2, "unit": "%"}
    assert got["assumed"] == ["last_recipe_poured", "drift"]


def test_usual_strength_is_the_last_recipes_where_nobody_types_one() -> None:
    totals = ask("plan_check", check(WHEEL_LATHE, "380", "5.4"))["plan"]["totals"]
    got = ask("hold_check", hold(last=last()))
    poured_l = totals["water_l"] + totals["concentrate_l"]
    assert got["request"]["usual_pct"] == pytest.approx(100 * totals["concentrate_l"] / poured_l)
    assert got["assumed"] == ["last_recipe_poured", "usual_of_last_recipe", "drift"]


# Lean; rich; in range, but with a mix of 20 % that leads up to the aim.
@pytest.mark.parametrize(("shows", "depth"), [("4.0", "380"), ("6.5", "380"), ("4.9", "430")])
def test_a_recipe_that_corrected_is_told_apart(shows: str, depth: str) -> None:
    got = ask("hold_check", hold(last=last(shows, depth=depth)))
    assert "usual_of_correction" in got["assumed"]
    assert "usual_of_last_recipe" not in got["assumed"]


def test_typed_strength_wins_over_the_last_recipes() -> None:
    got = ask("hold_check", hold(usual=usual("3,5"), last=last()))
    assert got["request"]["usual_pct"] == 3.5
    assert got["shown"]["usual"] == {"value": 3.5, "decimals": 1, "unit": "%"}


@pytest.mark.parametrize("shows", ["5.3", "8.0"])
def test_usual_strength_is_asked_for_where_nothing_tells_it(shows: str) -> None:
    # Nothing was poured at the first; the second's weakest mix is below what may be mixed now.
    machine = changed("mixing.weak", {"text": "2", "unit": "%"})
    depth = "440" if shows == "5.3" else "380"
    for more in ({}, {"last": last(shows, depth=depth)}):
        error = refusal("hold_check", hold(machine, **more))
        assert (error["code"], error["path"]) == ("missing", "body.usual")


def test_nothing_is_said_about_the_strength_without_a_last_check() -> None:
    got = ask("hold_check", hold(usual=usual()))
    assert "ends" not in got["holding"]
    assert {"last", "drift", "low", "high"} & got["shown"].keys() == set()
    assert got["assumed"] == []
    assert "may_be_out_of_band" in got["holding"]["cautions"]


def test_full_sump_has_nothing_to_pour_and_stays_where_it_is() -> None:
    got = ask("hold_check", hold(depth="440", usual=usual(), last=last()))
    assert got["holding"]["pours"] == got["shown"]["pours"] == []
    assert "nothing_to_pour" in got["holding"]["cautions"]
    assert got["after"]["level"] == pytest.approx(440 / 484)


def test_last_check_that_poured_nothing_needs_no_such_assumption() -> None:
    got = ask("hold_check", hold(usual=usual(), last=last("5.3", depth="440")))
    assert got["assumed"] == ["drift"]


def test_drawing_rises_to_the_new_volume_and_counts_no_dots() -> None:
    got = ask("hold_check", hold(usual=usual()))
    assert got["after"]["level"] * 484 == pytest.approx(got["holding"]["volume_l"] / 0.45, rel=1e-6)
    assert "dots" not in got["after"]


def test_fills_to_a_lower_mark_for_this_once() -> None:
    got = ask("hold_check", hold(usual=usual(), fill_to_depth={"text": "400", "unit": "mm"}))
    assert got["holding"]["volume_l"] <= 180
    assert got["shown"]["fill_to"]["value"] == 400
    error = refusal("hold_check", hold(usual=usual(), fill_to_depth={"text": "441", "unit": "mm"}))
    assert (error["code"], error["path"]) == ("order", "body.fill_to_depth")


def test_keeps_to_the_first_marks_of_pail_and_jug() -> None:
    machine = changed("pail", {"jug_first_mark": {"text": "500", "unit": "mL"}})
    pours = ask("hold_check", hold(machine, usual=usual("4")))["holding"]["pours"]
    assert pours
    assert all(pour["concentrate_l"] == 0 or pour["concentrate_l"] >= 0.5 for pour in pours)
    above = changed("pail", {"first_mark": {"text": "11", "unit": "L"}})
    error = refusal("hold_check", hold(above, usual=usual()))
    assert (error["code"], error["path"]) == (
        "mark_above_bucket", "body.machine.pail.first_mark",
    )  # fmt: skip


def test_concentrate_measured_by_the_pail_comes_in_its_marks() -> None:
    # 1 L beside 9 L of water are 10 %; from 7.5 % that is too far, and nothing is poured.
    machine = changed("pail", {"measure_by": "pail"})
    got = ask("hold_check", hold(machine, usual=usual("9")))
    assert {pour["concentrate_l"] for pour in got["holding"]["pours"]} == {1.0}
    assert got["shown"]["poured"]["value"] == pytest.approx(10.0, abs=1.0)
    assert got["shown"]["usual"]["value"] == 9
    far = ask("hold_check", hold(machine, usual=usual("7.5")))
    assert (far["holding"]["pours"], "poured" in far["shown"]) == ([], False)
    assert "no_usual_mix" in far["holding"]["cautions"]


def test_usual_strength_that_may_not_be_mixed_is_refused_at_its_field() -> None:
    error = refusal("hold_check", hold(usual=usual("30")))
    assert (error["code"], error["path"]) == ("order", "body.usual")
    assert error["limit"] == {"minimum": 1.0, "maximum": 20.0, "unit": "%"}


def test_unusual_strength_is_asked_about() -> None:
    doubts = ask("hold_check", hold(usual=usual("18")))["doubts"]
    assert [doubt["path"] for doubt in doubts] == ["body.usual"]


@pytest.mark.parametrize(
    ("at", "code", "path"),
    [
        ("2026-11-25T07:41:00+01:00", "order", "body.now"),
        ("2016-11-20T07:40:00+01:00", "out_of_range", "body.last.at"),
        ("last week", "not_a_date", "body.last.at"),
    ],
)
def test_times_that_cannot_be_are_refused(at: str, code: str, path: str) -> None:
    error = refusal("hold_check", hold(usual=usual(), last=last(at=at)))
    assert (error["code"], error["path"]) == (code, path)


def test_time_is_read_also_where_no_last_check_needs_it() -> None:
    error = refusal("hold_check", hold(usual=usual(), now="today"))
    assert (error["code"], error["path"]) == ("not_a_date", "body.now")


def test_check_of_this_very_moment_has_no_age() -> None:
    got = ask("hold_check", hold(usual=usual(), last=last(at=NOW)))
    assert got["request"]["last"]["age_d"] == 0


@pytest.mark.parametrize(
    ("depth", "shows", "path"),
    [
        ("3420", "5.4", "body.last.check.dip.depth"),
        ("380", "five", "body.last.check.reading.shows"),
    ],
)
def test_fault_of_the_last_check_is_told_at_its_place(depth: str, shows: str, path: str) -> None:
    error = refusal("hold_check", hold(usual=usual(), last=last(shows, depth=depth)))
    assert error["path"] == path


def later(shows: str = "5.0", at: str = "2026-11-24T07:40:00+01:00") -> dict[str, Any]:
    reading = {"shows": {"text": shows, "unit": "Brix"}}
    return {"machine": WHEEL_LATHE, "reading": reading, "at": at}


def test_later_reading_replaces_the_strength_and_leaves_the_usual_mix() -> None:
    before = ask("hold_check", hold(last=last()))
    got = ask("hold_check", hold(last=last(), read=later()))
    assert got["request"]["usual_pct"] == before["request"]["usual_pct"]
    assert got["request"]["last"]["strength_pct"]["value"] == pytest.approx(7.5)
    assert got["request"]["last"]["age_d"] == pytest.approx(1)
    assert got["assumed"] == ["usual_of_last_recipe", "drift"]


def test_later_reading_alone_gives_ends_but_no_usual_mix() -> None:
    assert "ends" in ask("hold_check", hold(usual=usual(), read=later()))["holding"]
    assert refusal("hold_check", hold(read=later()))["path"] == "body.usual"


def test_fault_of_a_later_reading_is_told_at_its_place() -> None:
    unknown = {**later(), "machine": changed("fluid.factor", None)}
    for read, code, path in (
        (later("five"), "not_a_number", "body.read.reading.shows"),
        (later(at="2026-11-25T08:00:00+01:00"), "order", "body.now"),
        (unknown, "no_factor", "body.read.machine.fluid.factor"),
    ):
        error = refusal("hold_check", hold(usual=usual(), read=read))
        assert (error["code"], error["path"]) == (code, path)


def test_fault_of_the_dip_is_told_at_its_place() -> None:
    assert refusal("hold_check", hold(depth="3420"))["path"] == "body.dip.depth"
