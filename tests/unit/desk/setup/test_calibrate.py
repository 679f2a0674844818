"""pycore.desk.setup.calibrate: a pour test's result. Coverage: tests/properties/sump/pours.py."""

from typing import Any

import pytest

from tests.unit.desk.lathe import ask, changed, check, refusal
from tests.unit.desk.setup.test_pourtest import pour_test, steps
from tests.unit.desk.sumps import litres, mm

# 20 L in a box of 0.5 L/mm, by hand.
STRAIGHT = [str(40 * (i + 1)) for i in range(10)]


def calibrate(*depths: str, **more: Any) -> dict[str, Any]:
    return ask("calibrate_sump", pour_test(*depths, **more))


def test_straight_walls() -> None:
    got = calibrate(*STRAIGHT)
    assert got["notes"] == []
    assert got["doubts"] == []
    assert got["full_volume_l"]["value"] == pytest.approx(200, abs=0.5)
    # The vessel's 3 % is most of it, common practice, no source.
    assert 6 < got["full_volume_l"]["u"] < 6.5
    assert got["shown"]["one_holds"]["value"] == 0.5
    assert [step["poured_l"] for step in got["steps"]] == [20 * (i + 1) for i in range(10)]


def test_checked_vessel_is_better() -> None:
    marks, checked = (calibrate(*STRAIGHT, vessel_known_by=by) for by in ("marks", "checked"))
    assert checked["full_volume_l"]["u"] < 0.4 * marks["full_volume_l"]["u"]


def test_result_is_a_sump_as_it_stands() -> None:
    got = calibrate(*STRAIGHT)
    machine = changed("sump", got["sump"])
    read = ask("read_machine", {"machine": machine})
    assert read["full_volume_l"] == pytest.approx(got["full_volume_l"]["value"], abs=1e-3)
    assert read["doubts"] == []
    dip = {"depth": mm("200"), "u": mm("0")}
    level = ask("assess_sump", {"sump": got["sump"], "dip": dip})["level"]["volume_l"]
    row = min(got["rows"], key=lambda row: abs(row["depth_mm"] - 200))
    assert level["value"] == pytest.approx(100, abs=0.5)
    assert level["u"] == pytest.approx(row["volume_l"]["u"], rel=0.1)
    assert ask("plan_check", check(machine))["plan"]["pours"]


def test_few_steps_and_none_near_full() -> None:
    got = calibrate("40", "80", "120")
    assert got["notes"] == ["few_steps", "not_near_full", "poorly_known"]
    (gap,) = got["gaps"]
    assert (gap["from_depth"]["value"], gap["to_depth"]["value"]) == (120, 400)
    # What no dip reaches is known worse the farther away it is.
    shares = [row["volume_l"]["u"] for row in got["rows"]]
    assert shares == sorted(shares)
    assert got["rows"][-1]["volume_l"]["u"] > 2 * calibrate(*STRAIGHT)["rows"][-1]["volume_l"]["u"]


def test_unknown_rest() -> None:
    got = ask(
        "calibrate_sump",
        {
            "full_depth": mm("400"),
            "start": "rest",
            "start_depth": mm("40"),
            "steps": steps(*STRAIGHT[1:]),
        },
    )
    assert got["notes"] == ["rest_estimated"]
    assert got["rest_l"]["value"] == pytest.approx(20, abs=2 * got["rest_l"]["u"])
    assert 1 < got["rest_l"]["u"] < 8
    assert got["shown"]["rest"]["unit"] == "L"


def test_logged_top_ups() -> None:
    pairs = [
        {"before": mm(before), "poured": litres(poured), "after": mm(after)}
        for before, poured, after in (
            ("120", "80", "280"),
            ("240", "70", "380"),
            ("60", "60", "180"),
        )
    ]
    got = ask("calibrate_sump", {"full_depth": mm("400"), "pairs": pairs})
    assert got["notes"] == ["few_steps", "rest_estimated"]
    assert got["full_volume_l"]["value"] == pytest.approx(200, abs=2 * got["full_volume_l"]["u"])
    assert got["steps"] == []


def test_pairs_add_to_a_test() -> None:
    pairs = [{"before": mm("200"), "poured": litres("50"), "after": mm("300")}]
    more = calibrate(*STRAIGHT, pairs=pairs, vessel_known_by="checked")
    less = calibrate(*STRAIGHT, vessel_known_by="checked")
    assert more["full_volume_l"]["u"] < less["full_volume_l"]["u"]


def test_forgotten_bucket_is_asked_about() -> None:
    # One bucket was poured and not noted: a rise twice as large as those beside it.
    depths = ["40", "80", "120", "200", "240", "280"]
    doubts = calibrate(*depths)["doubts"]
    assert "body.steps[3].depth" in [doubt["path"] for doubt in doubts]
    doubt = next(doubt for doubt in doubts if doubt["path"] == "body.steps[3].depth")
    assert doubt["code"] == "uneven_step"
    assert doubt["usual_high"] < 200


def test_even_change_of_the_rise_is_no_doubt() -> None:
    # A cone: each bucket rises less than the one before.
    assert calibrate("120", "150", "172", "190", "205", "218")["doubts"] == []


@pytest.mark.parametrize(("maker", "differs"), [("205", False), ("170", False), ("300", True)])
def test_maker_figure(maker: str, differs: bool) -> None:
    got = calibrate(*STRAIGHT, maker_volume=litres(maker))
    assert ("maker_differs" in got["notes"]) is differs
    assert got["maker_difference_l"] == pytest.approx(float(maker) - got["full_volume_l"]["value"])
    assert got["shown"]["maker_volume"]["value"] == float(maker)


def test_rows_that_are_poorly_known_are_marked() -> None:
    rows = calibrate("120", "150", "172", "190", "205", "218")["rows"]
    assert rows[0]["poorly_known"] is True
    assert calibrate(*STRAIGHT)["rows"][-1]["poorly_known"] is False


def test_too_little_for_any_sump() -> None:
    body = {"full_depth": mm("400"), "start": "empty", "steps": steps("300", poured="0.5")}
    error = refusal("calibrate_sump", body)
    assert (error["code"], error["path"]) == ("out_of_range", "body.full_depth")


def test_pours_that_contradict_each_other_end_in_a_question() -> None:
    got = calibrate("40", "41", "140", "141", "300")
    assert got["doubts"]
    volumes = [row["volume_l"]["value"] for row in got["rows"]]
    assert volumes == sorted(set(volumes))


def test_dips_that_are_as_good_as_equal() -> None:
    error = refusal("calibrate_sump", pour_test("0.000001"))
    assert (error["code"], error["path"]) == ("pours_contradict", "body.steps[0].depth")


def test_stored_numbers_are_short_and_never_part_thousands() -> None:
    points = calibrate(*STRAIGHT)["sump"]["points"]
    assert [point["depth"]["text"] for point in points[:3]] == ["11", "22", "33"]
    texts = [part["text"] for point in points for part in point.values()]
    assert not [text for text in texts if len(text.partition(".")[2]) == 3]
