"""pycore.desk.check.dip: stick, tape, scale, gauge, two sides, and both pump states."""

import math
from typing import Any

import pytest

from tests.unit.desk.lathe import ask, changed, check, refusal
from tests.unit.desk.sumps import BOX, litres, mm

TOP = {**BOX, "dip_from": "top", "reference_height": mm("600")}


def _ask(sump: dict[str, Any], **dip: Any) -> dict[str, Any]:
    return ask("assess_sump", {"sump": sump, "dip": dip})


def test_from_the_top() -> None:
    # By hand: 600 − 350 mm deep, 0.72 L/mm.
    got = _ask(TOP, depth=mm("350"))["level"]
    assert (got["depth_mm"]["value"], got["volume_l"]["value"]) == pytest.approx((250, 180))
    assert got["shown"]["depth"]["value"] == 250


def test_unusual_level_from_the_top_is_said_as_the_tape_shows_it() -> None:
    # By hand: 600 mm less the mark at 400 mm, and less a fifth of it.
    (doubt,) = _ask(TOP, depth=mm("590"))["doubts"]
    assert (doubt["code"], doubt["got"]["value"]) == ("unusual_level", 590)
    assert (doubt["usual_low"], doubt["usual_high"]) == pytest.approx((200, 520))


def test_zero_of_the_stick() -> None:
    got = _ask({**BOX, "zero_offset": mm("-10")}, depth=mm("260"))["level"]
    assert got["depth_mm"]["value"] == 250


@pytest.mark.parametrize("text", ["159", "601", "9000"])
def test_limits_as_the_tape_shows_them(text: str) -> None:
    error = refusal("assess_sump", {"sump": TOP, "dip": {"depth": mm(text)}})
    assert (error["code"], error["path"]) == ("out_of_range", "body.dip.depth")
    assert error["limit"] == pytest.approx({"minimum": 160, "maximum": 600, "unit": "mm"})


def test_printed_scale_in_litres() -> None:
    got = _ask(BOX, depth=litres("180"), read_as="volume")["level"]
    assert (got["depth_mm"]["value"], got["volume_l"]["value"]) == pytest.approx((250, 180))
    error = refusal(
        "assess_sump", {"sump": BOX, "dip": {"depth": litres("400"), "read_as": "volume"}}
    )
    assert error["limit"] == pytest.approx({"minimum": 0, "maximum": 316.8, "unit": "L"})


def test_gauge_is_rough_and_says_so() -> None:
    got = _ask({**BOX, "read_as": "gauge"}, depth={"text": "3/4"})
    assert got["notes"] == ["rough_level"]
    assert got["level"]["depth_mm"]["value"] == pytest.approx(300)
    assert got["level"]["volume_l"]["u"] > 25


def test_between_low_and_full() -> None:
    got = _ask(BOX, depth={"text": "0"}, gauge_to={"text": "1"}, read_as="gauge")["level"]
    # JCGM 100:2008, 4.3.7.
    assert got["depth_mm"] == {"value": 200, "u": pytest.approx(400 / math.sqrt(12))}


@pytest.mark.parametrize(
    ("dip", "code", "end"),
    [
        ({"depth": {"text": "1.5"}, "read_as": "gauge"}, "out_of_range", "depth"),
        ({"depth": mm("1"), "read_as": "gauge"}, "wrong_dimension", "depth"),
        ({"depth": mm("300"), "read_as": "volume"}, "wrong_dimension", "depth"),
        ({"depth": litres("30")}, "wrong_dimension", "depth"),
        ({"depth": mm("300"), "gauge_to": {"text": "1"}}, "not_for_kind", "gauge_to"),
        (
            {"depth": {"text": "1/2"}, "gauge_to": {"text": "1/4"}, "read_as": "gauge"},
            "order",
            "gauge_to",
        ),
        (
            {"depth": {"text": "1/2"}, "clean_side": {"text": "1/2"}, "read_as": "gauge"},
            "not_for_kind",
            "clean_side",
        ),
        ({"depth": {"text": "1/2"}, "u": mm("5"), "read_as": "gauge"}, "not_for_kind", "u"),
    ],
)
def test_fields_that_contradict_each_other(dip: dict[str, Any], code: str, end: str) -> None:
    error = refusal("assess_sump", {"sump": BOX, "dip": dip})
    assert (error["code"], error["path"]) == (code, f"body.dip.{end}")


def test_not_waited_is_rough() -> None:
    # Common practice, no source: 8 mm as with the pump running.
    got = _ask(BOX, depth=mm("250"), waited=False)
    assert got["notes"] == ["not_waited"]
    assert got["level"]["depth_mm"]["u"] == 8
    assert _ask(BOX, depth=mm("250"), waited=False, how="chips")["level"]["depth_mm"]["u"] == 15


def test_a_running_level_is_rough() -> None:
    # Common practice, no source: 8 mm while the pump runs, also where the marks hold only then.
    for sump, dip in (({**BOX, "level_true": "running"}, {}), (BOX, {"pump": "running"})):
        level = _ask(sump, depth=mm("250"), **dip)["level"]
        assert level["depth_mm"]["u"] == 8
        assert _ask(sump, depth=mm("250"), how="chips", **dip)["level"]["depth_mm"]["u"] == 15
        assert _ask(sump, depth=mm("250"), u=mm("3"), **dip)["level"]["depth_mm"]["u"] == 3
    still = _ask({**BOX, "level_true": "running"}, depth=mm("250"), pump="stopped")
    assert still["level"]["depth_mm"]["u"] == 2


def test_sides_that_agree_are_one_level() -> None:
    got = _ask(BOX, depth=mm("250"), clean_side=mm("240"))
    assert got["notes"] == []
    assert (got["level"]["depth_mm"]["value"], got["level"]["sides_mm"]) == (245, 10)


@pytest.mark.parametrize("clean", ["229", "271"])
def test_sides_that_differ_give_no_recipe(clean: str) -> None:
    # Common practice, no source: more than 20 mm at rest.
    dip = {"depth": mm("250"), "clean_side": mm(clean)}
    assert "screen_blocked" in _ask(BOX, **dip)["notes"]
    body = {**check(changed("sump", BOX)), "dip": dip}
    error = refusal("plan_check", body)
    assert (error["code"], error["path"]) == ("screen_blocked", "body.dip.clean_side")
    assert (error["got"], error["limit"]) == (21, {"maximum": 20, "unit": "mm"})


def test_sides_may_differ_while_the_pump_runs() -> None:
    got = _ask({**BOX, "level_true": "running"}, depth=mm("250"), clean_side=mm("200"))
    assert got["notes"] == []


HIDDEN = {"volume": litres("30"), "u": litres("4"), "drains_back": True}


@pytest.mark.parametrize(
    ("true", "pump", "volume_l", "notes"),
    [
        ("stopped", "stopped", 180, []),
        ("stopped", "running", 210, ["drain_back_counted"]),
        ("running", "running", 180, []),
        ("running", "stopped", 150, ["drain_back_counted"]),
    ],
)
def test_dip_in_the_other_pump_state(
    true: str, pump: str, volume_l: float, notes: list[str]
) -> None:
    sump = {**BOX, "level_true": true, "hidden": HIDDEN}
    got = _ask(sump, depth=mm("250"), pump=pump)
    assert got["notes"] == notes
    assert got["level"]["volume_l"]["value"] == pytest.approx(volume_l)


def test_other_pump_state_without_known_litres_is_only_said() -> None:
    got = _ask(BOX, depth=mm("250"), pump="running")
    assert got["notes"] == ["other_pump_state"]
    assert got["level"]["volume_l"]["value"] == pytest.approx(180)


def test_more_cannot_run_into_the_pipes_than_there_is() -> None:
    sump = {**BOX, "level_true": "running", "hidden": HIDDEN}
    dip = {"depth": mm("10"), "pump": "stopped"}
    error = refusal("assess_sump", {"sump": sump, "dip": dip})
    assert (error["code"], error["path"]) == ("order", "body.sump.hidden.volume")


def test_circuit_and_rest() -> None:
    sump = {**BOX, "hidden": {**HIDDEN, "drains_back": False}, "rest": litres("20")}
    got = _ask(sump, depth=mm("250"), u=mm("0"))
    # By hand: 180 L with 5 %, 30 L with 4 L.
    circuit = got["level"]["circuit_l"]
    assert circuit == {"value": pytest.approx(210), "u": pytest.approx(math.hypot(9, 4))}
    assert got["level"]["pumpable_l"] == pytest.approx(160)
    assert _ask(sump, depth=mm("25"))["notes"] == ["below_rest"]


@pytest.mark.parametrize(
    ("units", "one", "holds"),
    [
        ({"stick": "mm", "plate": "L"}, (1, "mm"), (0.72, "L")),
        ({"stick": "in", "plate": "US gal"}, (1, "in"), (4.8, "US gal")),
        ({"stick": "m", "plate": "L"}, (1, "cm"), (7.2, "L")),
    ],
)
def test_what_one_is_worth(
    units: dict[str, str], one: tuple[Any, ...], holds: tuple[Any, ...]
) -> None:
    # By hand: 0.72 L/mm, 25.4 of them in an inch, 3.785411784 L in a US gallon.
    body = {"sump": BOX, "dip": {"depth": mm("250")}, "units": {"pail": "L", "jug": "mL", **units}}
    said = ask("assess_sump", body)["level"]["shown"]
    assert (said["one"]["value"], said["one"]["unit"]) == one
    assert (said["one_holds"]["value"], said["one_holds"]["unit"]) == holds
