"""pycore.desk.setup.fit: jugs as typed to a factor to keep."""

from typing import Any

import pytest

from tests.unit.desk.asked import (
    HAND_GLASS,
    JUGS,
    PER_CENT_GLASS,
    ask,
    assess,
    brix,
    jug,
    refusal,
    t,
    with_fields,
)  # fmt: skip

EVEN = [jug("970", "30", "2.2"), jug("940", "60", "4.2"), jug("910", "90", "6.2")]


def _fit(**fields: Any) -> dict[str, Any]:
    return ask("fit_factor", with_fields(JUGS, **fields))


def test_factor_of_jugs_on_a_line() -> None:
    # By hand: (2.2 − 0.2)/3 = 2/3 Brix for one per cent.
    got = _fit(jugs=EVEN)
    assert got["factor"]["value"] == pytest.approx(1.5)
    assert got["interval"]["low"] < 1.5 < got["interval"]["high"]
    assert (got["model"], got["doubts"], got["on"]) == ("through_zero", [], "2026-11-25")
    # With the glass's own zero of 0.2.
    assert got["shown"]["five_reads"]["value"] == pytest.approx(3.53)


def test_what_is_kept_gives_the_strength_of_the_jugs() -> None:
    keep = _fit(jugs=EVEN)["keep"]
    fluid = {"type": "semi_synthetic", **keep}
    got = ask("assess_sump", assess({"shows": brix("4.2")}, fluid=fluid, instrument=HAND_GLASS))
    assert got["strength"]["strength_pct"]["value"] == pytest.approx(6.0, abs=0.01)


def test_an_offset_is_kept_and_used() -> None:
    jugs = [jug("980", "20", "3.1"), jug("950", "50", "5.1"), jug("920", "80", "7.1")]
    got = _fit(jugs=jugs, instrument=None)
    assert got["model"] == "with_offset"
    assert got["offset_brix"]["value"] == pytest.approx(3.1 - 4 / 3, abs=0.01)
    fluid = {"type": "semi_synthetic", **got["keep"]}
    again = ask("assess_sump", assess({"shows": brix("5.1")}, fluid=fluid))
    assert again["strength"]["strength_pct"]["value"] == pytest.approx(5.0, abs=0.02)


def test_residuals_are_shown_beside_each_jug() -> None:
    got = _fit(jugs=[EVEN[0], jug("940", "60", "4.6"), EVEN[2]])
    offs = [one["shown"]["off"]["value"] for one in got["jugs"]]
    assert offs[1] > 0 > offs[2]
    for one in got["jugs"]:
        shown = one["shown"]
        total = shown["expected"]["value"] + shown["off"]["value"]
        assert total == pytest.approx(shown["reading"]["value"], abs=0.011)


@pytest.mark.parametrize(
    ("fields", "codes"),
    [
        ({"jugs": [EVEN[0], jug("940", "60", "6.0"), EVEN[2]]}, ["jug_stands_out"]),
        ({"jugs": [jug("940", "60", "4.2"), jug("950", "50", "3.5")]}, ["range_small"]),
        ({"jugs": EVEN, "last_factor": t("1.3", "1")}, ["factor_moved"]),
        ({"jugs": EVEN, "fluid_type": "synthetic", "last_factor": t("1.5", "1")}, []),
        ({"jugs": EVEN, "fluid_type": "soluble_oil"}, ["unusual"]),
    ],
)
def test_doubts(fields: dict[str, Any], codes: list[str]) -> None:
    assert [doubt["code"] for doubt in _fit(**fields)["doubts"]] == codes


def test_a_jug_that_stands_out_is_named_with_what_the_line_leads_to() -> None:
    (doubt,) = _fit(jugs=[EVEN[0], jug("940", "60", "6.0"), EVEN[2]])["doubts"]
    assert doubt["path"] == "body.jugs[1].shows"
    assert doubt["usual_low"] < 4.72 < doubt["usual_high"] < doubt["got"]["value"]


def test_amounts_in_any_unit_give_the_same_strength() -> None:
    ounces = {
        "water": t("32", "US fl oz"), "concentrate": t("2", "US fl oz"), "shows": brix("4.0"),
    }  # fmt: skip
    got = _fit(jugs=[ounces, jug("910", "90", "6.2")])
    assert got["jugs"][0]["strength_pct"]["value"] == pytest.approx(100 / 17)


def test_an_instrument_with_a_factor_inside_is_undone() -> None:
    jugs = [{**one, "shows": t(text, "%")} for one, text in zip(EVEN, "369", strict=True)]
    got = _fit(jugs=jugs, instrument=PER_CENT_GLASS)
    assert got["factor"]["value"] == pytest.approx(1.5)


@pytest.mark.parametrize(
    ("fields", "code", "path"),
    [
        ({"jugs": EVEN[:1]}, "too_few", "jugs"),
        ({"jugs": EVEN * 2}, "too_many", "jugs"),
        ({"jugs": [EVEN[0], jug("500", "500", "6")]}, "out_of_range", "jugs[1].concentrate"),
        ({"jugs": [EVEN[0], jug("0", "0", "6")]}, "out_of_range", "jugs[1].water"),
        ({"jugs": [EVEN[0], jug("910", "90", "18.4")]}, "off_scale", "jugs[1].shows"),
        ({"jugs": [jug("970", "30", "0.1"), jug("910", "90", "0.1")]}, "out_of_range", "jugs"),
        ({"on": "25.11.2026"}, "not_a_date", "on"),
        ({"on": None}, "missing", "on"),
        ({"measured_with": None}, "missing", "measured_with"),
    ],
)
def test_refused_at_the_field(fields: dict[str, Any], code: str, path: str) -> None:
    error = refusal("fit_factor", with_fields(JUGS, **fields))
    assert (error["code"], error["path"]) == (code, f"body.{path}")
