"""pycore.desk.practice.judging: what was typed beside the right numbers of the wheel lathe."""

from typing import Any

import pytest

from tests.unit.desk.lathe import WHEEL_LATHE, ask, changed, check, refusal


def t(text: str, unit: str) -> dict[str, str]:
    return {"text": text, "unit": unit}


def bucket(count: str, water: str, concentrate: str) -> dict[str, Any]:
    return {"count": t(count, "1"), "water": t(water, "L"), "concentrate": t(concentrate, "mL")}


def judged(machine: dict[str, Any] = WHEEL_LATHE, **answers: Any) -> dict[str, Any]:
    return ask("judge_practice", {"check": check(machine), "answers": answers})


def step(result: dict[str, Any], name: str) -> dict[str, Any]:
    (found,) = (one for one in result["steps"] if one["step"] == name)
    return found


def test_right_numbers_come_from_the_check_itself() -> None:
    result = judged()
    # 342/440 x 198, 4.0 x 1.5, 198 - 153.9 and 8 + 153.9 x 2 / 44.1.
    assert {one["step"]: one["right"]["value"] for one in result["steps"]} == {
        "volume": 153.9,
        "strength": 6.0,
        "room": 44.1,
        "top_up": 15.0,
    }
    assert all("verdict" not in one for one in result["steps"])
    assert result["solution"]["pours"] == ask("plan_check", check(WHEEL_LATHE))["shown"]["pours"]
    assert "recipe" not in result


def test_tolerance_is_what_the_tools_cannot_tell_apart() -> None:
    result = judged()
    # 2 mm on the stick at 0.45 L a millimetre; 0.2 Brix x 1.5; one jug mark in a full pail.
    allowed = {one["step"]: one["allowed"]["value"] for one in result["steps"]}
    assert allowed == {"volume": 0.9, "strength": 0.3, "room": 0.9, "top_up": 0.5}


def test_a_whole_litre_is_near_enough_and_two_are_not() -> None:
    assert step(judged(volume=t("154", "L")), "volume")["verdict"] == "near"
    off = step(judged(volume=t("156", "L")), "volume")
    assert (off["verdict"], off["difference"]["value"]) == ("off", 2.1)
    assert "slip" not in off


def test_a_slip_is_named_and_what_follows_from_it_is_no_second_one() -> None:
    result = judged(strength=t("4", "%"), top_up=t("22", "%"))
    assert step(result, "strength")["slip"] == "factor_forgotten"
    assert step(result, "top_up")["verdict"] == "follows"
    assert step(result, "top_up")["own"]["value"] == 22.0


def test_room_follows_from_ones_own_litres() -> None:
    assert step(judged(volume=t("140", "L"), room=t("58", "L")), "room")["verdict"] == "follows"


def test_own_units_are_read() -> None:
    assert step(judged(volume=t("40.7 US gal", "L")), "volume")["verdict"] == "near"


def test_a_recipe_as_good_as_ours_is_good() -> None:
    recipe = judged(pours=[bucket("4", "8", "1500")])["recipe"]
    assert (recipe["standing"], recipe["faults"]) == ("good", [])
    assert recipe["recipe"]["buckets"] == 4
    # (9.234 + 6) / 191.9 L.
    assert recipe["recipe"]["strength"]["value"] == 7.9
    assert recipe["recipe"]["after"]["level"] < 1


def test_what_stands_above_the_rim_is_judged_and_not_drawn() -> None:
    recipe = judged(pours=[bucket("9", "8", "1500")])["recipe"]
    assert recipe["standing"] == "off"
    assert "above_mark" in recipe["faults"]
    assert "after" not in recipe["recipe"]
    # 9 x 9.5 L into 44.1 L.
    assert recipe["over"]["value"] == 41.4


def test_any_shape_has_its_own_litres() -> None:
    box = {
        "kind": "box",
        "full_depth": t("440", "mm"),
        "length": t("1000", "mm"),
        "width": t("500", "mm"),
        "volume_known_by": "measured",
    }
    # 342 mm x 1 m x 0.5 m.
    assert step(judged(changed("sump", box)), "volume")["right"]["value"] == 171.0


def full(**answers: Any) -> dict[str, Any]:
    machine = changed("ways", {"draw_off": True})
    return ask(
        "judge_practice", {"check": check(machine, depth="440", shows="3.0"), "answers": answers}
    )


def test_a_full_sump_has_its_own_step() -> None:
    result = full(take_out=t("56", "L"), pours=[bucket("5", "8", "2000")])
    assert [one["step"] for one in result["steps"]] == ["volume", "strength", "room", "take_out"]
    # 198 x 3.5 / (20 - 4.5).
    assert step(result, "take_out")["right"]["value"] == 44.7
    assert result["recipe"]["recipe"]["take_out"]["value"] == 56
    assert "too_much_out" in result["recipe"]["faults"]


def test_without_an_own_number_ours_comes_out() -> None:
    result = full(pours=[bucket("3", "8", "2000")])
    assert result["recipe"]["recipe"]["take_out"] == result["solution"]["take_out"]


REFUSED = [
    ({"volume": t("many", "L")}, "not_a_number", "body.answers.volume"),
    ({"volume": t("", "L")}, "empty", "body.answers.volume"),
    ({"strength": t("40", "%")}, "out_of_range", "body.answers.strength"),
    ({"pours": [bucket("1.5", "8", "1500")]}, "not_whole", "body.answers.pours[0].count"),
    ({"pours": [bucket("4", "8", "x")]}, "not_a_number", "body.answers.pours[0].concentrate"),
    ({"pours": []}, "too_few", "body.answers.pours"),
]


@pytest.mark.parametrize(("answers", "code", "path"), REFUSED)
def test_wrong_input_names_its_field(answers: dict[str, Any], code: str, path: str) -> None:
    error = refusal("judge_practice", {"check": check(WHEEL_LATHE), "answers": answers})
    assert (error["code"], error["path"]) == (code, path)


def test_more_than_all_cannot_come_out() -> None:
    machine = changed("ways", {"draw_off": True})
    body = {
        "check": check(machine, depth="440", shows="3.0"),
        "answers": {"take_out": t("198", "L"), "pours": [bucket("3", "8", "2000")]},
    }
    error = refusal("judge_practice", body)
    assert (error["code"], error["path"]) == ("out_of_range", "body.answers.take_out")


def test_a_fault_of_the_check_lies_below_it() -> None:
    body = {"check": check(WHEEL_LATHE, depth="999"), "answers": {}}
    assert refusal("judge_practice", body)["path"] == "body.check.dip.depth"


def test_buckets_for_an_empty_sump_are_judged_and_nothing_is_blamed() -> None:
    own = {"pours": [bucket("18", "10", "800")]}
    result = ask("judge_practice", {"check": check(WHEEL_LATHE, depth="0"), "answers": own})
    # 18 x 10.8 L are less than the 198 L that fit in, at 7.4 %.
    assert result["recipe"]["recipe"]["strength"]["value"] == 7.4
    more_out = {**own, "take_out": t("1", "L")}
    error = refusal("judge_practice", {"check": check(WHEEL_LATHE, "0"), "answers": more_out})
    assert (error["code"], error["path"]) == ("out_of_range", "body.answers.take_out")
