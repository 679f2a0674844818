"""pycore.desk.setup.shop: what a shop allows and knows, for a saved machine as for a check."""

import json
from typing import Any

import pytest

from tests.examples.workshop import TABLE_SUMP, WITH_SHOP
from tests.unit.desk.lathe import WHEEL_LATHE, ask, changed, check, refusal


def _t(text: str, unit: str) -> dict[str, str]:
    return {"text": text, "unit": unit}


def _with(path: str, value: Any) -> dict[str, Any]:
    machine: dict[str, Any] = json.loads(json.dumps(WITH_SHOP))
    *parents, last = path.split(".")
    place = machine
    for parent in parents:
        place = place[parent]
    place[last] = value
    return machine


def test_every_part_reaches_the_planner() -> None:
    request = ask("plan_check", check(WITH_SHOP))["request"]
    # 470 of 440 mm and 198 L in a straight sump.
    assert request["never_above_l"] == pytest.approx(198 * 470 / 440)
    assert request["pail"] == {
        "first_mark_l": 2,
        "jug_first_mark_l": 0.1,
        "jug_max_l": 1,
        "measure_by": "jug",
    }
    assert request["draw_off"] == {"allowed": True, "mark_l": 1}
    assert request["own_fluid"] == {"allowed": True}
    assert request["losses"] == {"carry_out_l_d": 2}
    assert request["effort"] == {"most_buckets": 8, "heaviest_kg": 12}
    assert request["unit"] == {"lowest_pct": 1, "highest_pct": 10, "step_pct": 0.5}


def test_room_above_the_full_mark_is_no_room_above_a_lower_one() -> None:
    lower = ask("plan_check", check(WITH_SHOP, fill_to_depth=_t("300", "mm")))["request"]
    assert lower["fill_to_l"] == pytest.approx(198 * 300 / 440)
    assert "never_above_l" not in lower
    full = ask("plan_check", check(WITH_SHOP, fill_to_depth=_t("440", "mm")))["request"]
    assert full["never_above_l"] == pytest.approx(198 * 470 / 440)


def test_nothing_is_made_up_where_nothing_was_said() -> None:
    request = ask("plan_check", check(WHEEL_LATHE))["request"]
    parts = {"never_above_l", "pail", "effort", "unit", "own_fluid", "losses"}
    assert parts.isdisjoint(request)
    assert request["draw_off"]["allowed"] is False


def test_pounds_are_read_as_pounds() -> None:
    request = ask("plan_check", check(_with("ways.heaviest", _t("30", "lb"))))["request"]
    # International avoirdupois pound, 0.45359237 kg exactly (NIST SP 811, appendix B).
    assert request["effort"]["heaviest_kg"] == pytest.approx(30 * 0.45359237)


def test_a_bucket_heavier_than_this_person_carries_is_said() -> None:
    def cautions(text: str) -> list[str]:
        got: list[str] = ask("plan_check", check(_with("ways.heaviest", _t(text, "kg"))))["plan"][
            "cautions"
        ]
        return got

    # A full bucket of 10 L with its pail weighs 11 kg; lower ones do for 8 kg, and none for 2 kg.
    assert "bucket_heavy" in cautions("2")
    assert "many_buckets" in cautions("8")
    assert not {"bucket_heavy", "many_buckets"} & set(cautions("12"))


CONTRADICTIONS = [
    ("sump.never_above_depth", _t("439", "mm"), "order"),
    ("sump.never_above_depth", _t("485", "mm"), "out_of_range"),
    ("sump.never_above_depth", _t("", "mm"), "empty"),
    ("pail.first_mark", _t("10.5", "L"), "mark_above_bucket"),
    ("pail.jug_first_mark", _t("1001", "mL"), "mark_above_bucket"),
    ("pail.jug_size", _t("0", "mL"), "out_of_range"),
    ("ways.carry_out", _t("0", "L"), "out_of_range"),
    ("ways.most_buckets", _t("0", "1"), "out_of_range"),
    ("ways.most_buckets", _t("2 1/2", "1"), "not_whole"),
    ("ways.heaviest", _t("101", "kg"), "out_of_range"),
    ("ways.heaviest", _t("12", "L"), "wrong_dimension"),
    ("ways.unit.lowest", _t("11", "%"), "order"),
    ("ways.unit.highest", _t("0", "%"), "out_of_range"),
    ("ways.unit.step", _t("0", "%"), "out_of_range"),
    ("bucket.water_mark", _t("9.96", "L"), "mark_above_bucket"),
]


@pytest.mark.parametrize(("path", "value", "code"), CONTRADICTIONS)
def test_refused_at_the_field_when_saved_and_when_checked(
    path: str, value: dict[str, str], code: str
) -> None:
    machine = _with(path, value)
    saved = refusal("read_machine", {"machine": machine})
    assert (saved["code"], saved["path"]) == (code, f"body.machine.{path}")
    assert refusal("plan_check", check(machine)) == saved


@pytest.mark.parametrize(
    ("path", "value"),
    [
        ("sump.never_above_depth", _t("440", "mm")),
        ("sump.never_above_depth", _t("484", "mm")),
        ("pail.first_mark", _t("10", "L")),
        ("pail.jug_first_mark", _t("1000", "mL")),
        ("ways.unit.lowest", _t("10", "%")),
        ("bucket.water_mark", _t("9.95", "L")),
    ],
)
def test_the_limit_itself_is_allowed(path: str, value: dict[str, str]) -> None:
    assert ask("read_machine", {"machine": _with(path, value)})["usable_l"] == 10


def test_limits_come_in_the_unit_that_was_typed() -> None:
    # An inch is 25.4 mm exactly (NIST SP 811, appendix B).
    error = refusal("read_machine", {"machine": _with("sump.never_above_depth", _t("17", "in"))})
    # Full mark at 440 mm, rim 10 % above it.
    assert error["limit"] == {
        "minimum": pytest.approx(440 / 25.4),
        "maximum": pytest.approx(484 / 25.4),
        "unit": "in",
    }
    error = refusal("read_machine", {"machine": _with("pail.jug_first_mark", _t("1.5", "L"))})
    assert error["limit"] == {"maximum": pytest.approx(1), "unit": "L"}


def test_never_above_is_looked_at_with_the_sump_alone() -> None:
    sump = {**WHEEL_LATHE["sump"], "never_above_depth": _t("439", "mm")}
    error = refusal("assess_sump", {"sump": sump})
    assert (error["code"], error["path"]) == ("order", "body.sump.never_above_depth")


def test_never_above_in_a_table_is_read_from_its_rows() -> None:
    machine = changed("sump", {**TABLE_SUMP, "never_above_depth": _t("320", "mm")})
    got = ask("plan_check", check(machine, "200"))
    assert got["request"]["never_above_l"] == pytest.approx(116)
    machine = changed("sump", {**TABLE_SUMP, "never_above_depth": _t("321", "mm")})
    assert refusal("read_machine", {"machine": machine})["code"] == "out_of_range"


def test_wider_mark_is_named_where_two_do_not_fit() -> None:
    machine = changed("bucket.jug_mark", _t("9.5", "L"))
    error = refusal("read_machine", {"machine": machine})
    assert (error["code"], error["path"]) == ("mark_above_bucket", "body.machine.bucket.jug_mark")
    assert error["limit"] == {"maximum": pytest.approx(9000), "unit": "mL"}


def test_bucket_that_measures_concentrate_needs_two_marks() -> None:
    machine = changed("bucket.water_mark", _t("6", "L"))
    ask("read_machine", {"machine": machine})
    machine["pail"] = {"measure_by": "pail"}
    error = refusal("read_machine", {"machine": machine})
    assert (error["code"], error["path"]) == ("mark_above_bucket", "body.machine.bucket.water_mark")
    assert error["limit"] == {"maximum": pytest.approx(5), "unit": "L"}


def test_unusual_numbers_of_the_shop_are_asked_about() -> None:
    machine = _with("ways.heaviest", _t("40", "kg"))
    doubts = ask("read_machine", {"machine": machine})["doubts"]
    assert [doubt["path"] for doubt in doubts] == ["body.machine.ways.heaviest"]
