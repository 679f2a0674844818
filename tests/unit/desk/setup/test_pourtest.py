"""pycore.desk.setup.pourtest: dips and pours as typed, every contradiction at its field."""

from typing import Any

import pytest

from tests.unit.desk.lathe import ask, refusal
from tests.unit.desk.sumps import litres, mm

Body = dict[str, Any]


def steps(*depths: str, poured: str = "20") -> list[Body]:
    """Steps of a pour test."""
    return [{"poured": litres(poured), "depth": mm(depth)} for depth in depths]


def pour_test(*depths: str, **more: Any) -> Body:
    """A pour test of a sump with its full mark at 400 mm."""
    return {"full_depth": mm("400"), "start": "empty", "steps": steps(*depths), **more}


def test_time_of_a_step_is_a_time() -> None:
    asked = pour_test("64")
    asked["steps"][0]["at"] = "yesterday"
    error = refusal("calibrate_sump", asked)
    assert (error["code"], error["path"]) == ("not_a_date", "body.steps[0].at")


@pytest.mark.parametrize(
    ("body", "code", "path"),
    [
        (pour_test("50", "50"), "not_rising", "body.steps[1].depth"),
        (pour_test("50", "80", "79"), "not_rising", "body.steps[2].depth"),
        (pour_test("0"), "not_rising", "body.steps[0].depth"),
        (pour_test("441"), "out_of_range", "body.steps[0].depth"),
        (pour_test("50", rim_depth=mm("399")), "order", "body.rim_depth"),
        ({"full_depth": mm("400")}, "too_few", "body.steps"),
        ({"full_depth": mm("400"), "steps": steps("50")}, "missing", "body.start"),
        (pour_test("50", start="rest"), "missing", "body.start_depth"),
        (pour_test("50", start_depth=mm("5")), "not_for_kind", "body.start_depth"),
        (
            pour_test("50", start="rest", start_depth=mm("60")),
            "not_rising",
            "body.steps[0].depth",
        ),
        (
            {
                "full_depth": mm("400"),
                "pairs": [{"before": mm("90"), "poured": litres("20"), "after": mm("80")}],
            },
            "not_rising",
            "body.pairs[0].after",
        ),
        (
            {
                "full_depth": mm("400"),
                "pairs": [{"before": mm("90"), "poured": litres("0"), "after": mm("99")}],
            },
            "out_of_range",
            "body.pairs[0].poured",
        ),
    ],
)
def test_refused_at_the_field(body: Body, code: str, path: str) -> None:
    error = refusal("calibrate_sump", body)
    assert (error["code"], error["path"]) == (code, path)


def test_falling_step_says_what_it_must_lie_above() -> None:
    error = refusal("calibrate_sump", pour_test("50", "80", "7.9", "120"))
    assert (error["got"], error["limit"]) == (pytest.approx(7.9), {"above": 80, "unit": "mm"})


def test_from_the_top_falling_means_a_smaller_number() -> None:
    body = {
        "full_depth": mm("400"),
        "dip_from": "top",
        "reference_height": mm("600"),
        "start": "empty",
        "steps": steps("550", "555"),
    }
    error = refusal("calibrate_sump", body)
    assert (error["code"], error["path"]) == ("not_rising", "body.steps[1].depth")
    assert error["limit"] == pytest.approx({"below": 550, "unit": "mm"})


def test_dips_from_the_top_make_the_same_table() -> None:
    plain = ask("calibrate_sump", pour_test("50", "100", "150", "200"))
    top = pour_test("550", "500", "450", "400", dip_from="top", reference_height=mm("600"))
    other = ask("calibrate_sump", top)
    assert [row["volume_l"] for row in other["rows"]] == [row["volume_l"] for row in plain["rows"]]
