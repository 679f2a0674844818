"""pycore.desk.check.check: the whole walk in one question."""

import json
from typing import Any

import pytest

from pycore.desk.contract.build import built
from pycore.recipe.request import PlanRequest, whole_circuit
from tests.properties.recipe.plans import broken_laws
from tests.unit.desk.lathe import WHEEL_LATHE, ask, changed, check, refusal


def test_request_and_plan_belong_together() -> None:
    got = ask("plan_check", check(WHEEL_LATHE))
    assert ask("plan_recipe", got["request"]) == got["plan"]
    assert broken_laws(got["request"], got["plan"]) == []


def test_shown_amounts_are_the_plans_own() -> None:
    got = ask("plan_check", check(WHEEL_LATHE))
    for pour, said in zip(got["plan"]["pours"], got["shown"]["pours"], strict=True):
        litres = said["concentrate"]["value"] / (1000 if said["concentrate"]["unit"] == "mL" else 1)
        assert said["water"]["value"] == pytest.approx(pour["water_l"])
        assert litres == pytest.approx(pour["concentrate_l"])
        assert said["count"] == pour["count"]
        total = pour["water_l"] + pour["concentrate_l"]
        assert said["total"]["value"] == pytest.approx(total, abs=0.005)
        assert said["strength"]["value"] == pytest.approx(
            100 * pour["concentrate_l"] / total, abs=0.05
        )


@pytest.mark.parametrize(
    ("pail", "jug", "marks"),
    [("US gal", "US fl oz", ("4", "1", "2")), ("imp gal", "imp fl oz", ("2", "0.5", "4"))],
)
def test_amounts_in_the_tools_own_units_are_whole_marks(
    pail: str, jug: str, marks: tuple[str, str, str]
) -> None:
    machine = changed("units", {"plate": pail, "stick": "in", "pail": pail, "jug": jug})
    names = ("usable", "water_mark", "jug_mark")
    machine["bucket"] = {
        name: {"text": text, "unit": unit}
        for name, text, unit in zip(names, marks, (pail, pail, jug), strict=True)
    }
    pours = ask("plan_check", check(machine))["shown"]["pours"]
    assert pours
    for pour in pours:
        assert (pour["water"]["unit"], pour["concentrate"]["unit"]) == (pail, jug)
        assert pour["water"]["value"] % float(marks[1]) == 0
        assert pour["concentrate"]["value"] % float(marks[2]) == 0


def test_own_aim_for_this_once() -> None:
    got = ask("plan_check", check(WHEEL_LATHE, aim={"text": "8.5"}))
    assert got["request"]["target"]["aim_pct"] == 8.5
    error = refusal("plan_check", check(WHEEL_LATHE, aim={"text": "9.5"}))
    assert (error["code"], error["path"]) == ("order", "body.aim")


def test_fill_lower_for_this_once() -> None:
    lower: dict[str, Any] = {"text": "400", "unit": "mm"}
    got = ask("plan_check", check(WHEEL_LATHE, fill_to_depth=lower))
    assert got["request"]["fill_to_l"] == pytest.approx(180)
    assert got["plan"]["final"]["volume_l"] <= 180
    error = refusal("plan_check", check(WHEEL_LATHE, fill_to_depth={"text": "441", "unit": "mm"}))
    assert (error["code"], error["path"]) == ("order", "body.fill_to_depth")


def test_lower_mark_is_shown_with_the_room_up_to_it() -> None:
    lower: dict[str, Any] = {"text": "400", "unit": "mm"}
    said = ask("plan_check", check(WHEEL_LATHE, fill_to_depth=lower))["shown"]
    assert said["fill_to"] == {"value": 400, "decimals": 0, "unit": "mm"}
    # 58 mm of 0.45 L each, to the litre, since the dip is no surer.
    assert said["fill_room"] == {"value": 26, "decimals": 0, "unit": "L"}
    assert "fill_to" not in ask("plan_check", check(WHEEL_LATHE))["shown"]


def test_fault_of_the_mark_is_told_before_the_dip_is_there() -> None:
    above = {"text": "441", "unit": "mm"}
    error = refusal("plan_check", check(WHEEL_LATHE, "", fill_to_depth=above))
    assert (error["path"], error["limit"]) == (
        "body.fill_to_depth", {"maximum": 440.0, "unit": "mm"},
    )  # fmt: skip


def test_no_recipe_without_a_factor() -> None:
    error = refusal("plan_check", check(changed("fluid.factor", None)))
    assert (error["code"], error["path"]) == ("no_factor", "body.machine.fluid.factor")


def test_drawing_after_pouring_is_at_the_final_volume() -> None:
    got = ask("plan_check", check(WHEEL_LATHE))
    depth_mm = got["after"]["level"] * 484
    assert depth_mm == pytest.approx(got["plan"]["final"]["volume_l"] / 0.45, rel=1e-6)


def test_full_and_in_range_has_nothing_to_pour() -> None:
    got = ask("plan_check", check(WHEEL_LATHE, "440", "5.3"))
    assert got["plan"]["pours"] == []
    assert "nothing_to_pour" in got["plan"]["cautions"]
    assert got["after"]["level"] == pytest.approx(440 / 484)


def _typed(text: str, unit: str) -> dict[str, str]:
    return {"text": text, "unit": unit}


def test_rim_at_the_full_mark_is_no_reason_to_refuse() -> None:
    # Six buckets up to the rim passed it by a float's last digit.
    machine = json.loads(json.dumps(WHEEL_LATHE))
    machine["sump"] = {
        "kind": "proportional",
        "full_depth": _typed("300", "mm"),
        "full_volume": _typed("55", "L"),
        "rim_depth": _typed("300", "mm"),
        "volume_known_by": "said",
    }
    machine["bucket"]["jug_mark"] = _typed("100", "mL")
    body = {
        "machine": machine,
        "dip": {"depth": _typed("90", "mm")},
        "reading": {"shows": _typed("4.5", "Brix")},
    }
    assert ask("plan_check", body)["after"]["level"] == pytest.approx(1.0)


def test_more_litres_than_any_sump_holds_are_refused_at_the_field() -> None:
    machine = json.loads(json.dumps(WHEEL_LATHE))
    machine["sump"] = {
        "kind": "box",
        "full_depth": _typed("5000", "mm"),
        "length": _typed("50000", "mm"),
        "width": _typed("50000", "mm"),
        "volume_known_by": "plate",
    }
    error = refusal("read_machine", {"machine": machine})
    assert (error["code"], error["path"]) == ("out_of_range", "body.machine.sump.full_depth")
    assert error["limit"]["maximum"] == 200000


def test_weight_of_a_bucket_counts_with_the_concentrates_own_density() -> None:
    got = ask("plan_check", check(changed("fluid.density", {"text": "0.9", "unit": "kg/L"})))
    assert got["request"]["density_kg_l"] == 0.9
    plain = ask("plan_check", check(WHEEL_LATHE))
    assert "density_kg_l" not in plain["request"]


HIDDEN = {
    "volume": {"text": "30", "unit": "L"},
    "u": {"text": "3", "unit": "L"},
    "drains_back": False,
}


def test_what_does_not_show_on_the_stick_counts_in_the_balance() -> None:
    got = ask("plan_check", check(changed("sump.hidden", HIDDEN)))
    assert got["request"]["hidden"]["volume_l"] == {"value": 30, "u": 3}
    assert ask("plan_recipe", got["request"]) == got["plan"]
    # By hand: 153.9 L seen and 30 L hidden; the room up to the mark is the same.
    assert got["shown"]["now_volume"]["value"] == pytest.approx(183.9, abs=0.5)
    poured = sum(p["count"] * (p["water_l"] + p["concentrate_l"]) for p in got["plan"]["pours"])
    assert got["plan"]["final"]["volume_l"] == pytest.approx(183.9 + poured)
    assert 43 < poured < 44.2
    # The drawing shows the sump alone.
    assert got["after"]["level"] == pytest.approx((153.9 + poured) / 217.8)
    plain = ask("plan_check", check(WHEEL_LATHE))
    assert got["plan"]["totals"]["concentrate_l"] > plain["plan"]["totals"]["concentrate_l"]


@pytest.mark.parametrize("hidden_l", ["0", "0.001", "30", "5000"])
def test_same_coolant_has_one_error_of_the_reading(hidden_l: str) -> None:
    hidden = {**HIDDEN, "volume": {"text": hidden_l, "unit": "L"}}
    request = ask("plan_check", check(changed("sump.hidden", hidden)))["request"]
    # It says no number of its own, so that none can grow past what a strength may be off by.
    assert "strength_pct" not in request["hidden"]
    whole = whole_circuit(built(PlanRequest, request)).sump.strength_pct
    alone = ask("plan_check", check(WHEEL_LATHE))["request"]["sump"]["strength_pct"]
    assert (whole.value, whole.u) == pytest.approx((alone["value"], alone["u"]))


def test_what_drained_back_is_in_the_sump_already() -> None:
    machine = changed("sump.hidden", {**HIDDEN, "drains_back": True})
    got = ask("plan_check", check(machine))
    assert "hidden" not in got["request"]
    assert got["plan"] == ask("plan_check", check(WHEEL_LATHE))["plan"]


def test_hidden_coolant_with_a_strength_of_its_own() -> None:
    body = check(changed("sump.hidden", HIDDEN), hidden_strength={"text": "2"})
    got = ask("plan_check", body)
    assert got["request"]["hidden"]["strength_pct"]["value"] == 2
    # By hand: (153.9·6 + 30·2)/183.9.
    assert got["shown"]["now_strength"]["value"] == pytest.approx(5.35, abs=0.1)
    error = refusal("plan_check", check(WHEEL_LATHE, hidden_strength={"text": "2"}))
    assert (error["code"], error["path"]) == ("not_for_kind", "body.hidden_strength")


def test_coolant_above_the_mark_is_said_as_so_much_too_much() -> None:
    got = ask("plan_check", check(WHEEL_LATHE, "342", fill_to_depth={"text": "300", "unit": "mm"}))
    # By hand: 42 mm of 0.45 L.
    assert got["shown"]["fill_over"]["value"] == pytest.approx(18.9, abs=0.5)
    assert "fill_room" not in got["shown"]
    high = ask("plan_check", check(WHEEL_LATHE, "460"))["assessment"]["level"]["shown"]
    assert high["over"]["value"] == pytest.approx(9, abs=0.5)
    assert "over" not in ask("plan_check", check(WHEEL_LATHE))["assessment"]["level"]["shown"]


def test_reading_just_outside_the_band_is_not_shown_on_its_edge() -> None:
    # 4.65 x 1.5 = 6.975.
    got = ask("plan_check", check(WHEEL_LATHE, "440", "4.65"))
    strength = got["assessment"]["strength"]
    assert (strength["state"], strength["shown"]["strength"]["value"]) == ("weak", 6.98)
    assert got["shown"]["strength"]["value"] == 6.98
