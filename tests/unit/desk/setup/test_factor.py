"""pycore.desk.setup.factor: a factor as typed, its direction never guessed."""

from typing import Any

import pytest

from tests.unit.desk.asked import HAND_GLASS, WHEEL_LATHE, ask, brix, fluid_body, refusal, t

PAIRS = [
    {"strength": t("2", "%"), "reading": brix("1.4")},
    {"strength": t("5", "%"), "reading": brix("3.5")},
]
NO_FACTOR = {"factor": None, "factor_direction": None}


@pytest.mark.parametrize(
    ("fields", "factor", "five_reads"),
    [
        # The instrument is not recorded here; 5 % over the factor by hand.
        ({"factor": t("1.25", "1"), "factor_direction": "multiply"}, 1.25, 4.0),
        ({"factor": t("0.8", "1"), "factor_direction": "divide"}, 1.25, 4.0),
        ({"factor": t("1.25", "1"), "factor_direction": None}, 1.25, 4.0),
        ({**NO_FACTOR, "factor_chart": PAIRS}, 10 / 7, 3.5),
    ],
)
def test_every_direction_is_shown_back(
    fields: dict[str, Any], factor: float, five_reads: float
) -> None:
    got = ask("read_fluid", fluid_body(**fields))
    assert got["factor"]["value"] == pytest.approx(factor)
    assert got["shown"]["five_reads"]["value"] == pytest.approx(five_reads)


def test_without_a_factor_there_is_none_and_it_is_said() -> None:
    got = ask("read_fluid", fluid_body(**NO_FACTOR, factor_known_by=None))
    assert "factor" not in got
    assert "no_factor" in got["notes"]


def test_own_uncertainty_wins_and_a_large_one_is_asked_about() -> None:
    got = ask("read_fluid", fluid_body(factor_u=t("0.134", "1")))
    # By hand: 20 % of 1/0.67.
    assert got["factor"]["u"] == pytest.approx(0.2 / 0.67)
    assert [doubt["path"] for doubt in got["doubts"]] == ["body.fluid.factor_u"]


@pytest.mark.parametrize(
    ("fields", "code", "path"),
    [
        ({"factor": t("4", "1")}, "out_of_range", "factor"),
        ({"factor_chart": PAIRS}, "order", "factor_chart"),
        ({"factor": None}, "order", "factor_direction"),
        ({**NO_FACTOR, "factor_u": t("0.1", "1")}, "order", "factor_u"),
        ({**NO_FACTOR, "factor_offset": brix("0.1")}, "order", "factor_offset"),
        ({**NO_FACTOR, "factor_chart": PAIRS[::-1]}, "not_rising", "factor_chart[1].reading"),
        ({**NO_FACTOR, "factor_chart": []}, "too_few", "factor_chart"),
        ({"factor_on": "yesterday"}, "not_a_date", "factor_on"),
        ({"factor_direction": "both"}, "not_allowed", "factor_direction"),
    ],
)
def test_refused_at_the_field(fields: dict[str, Any], code: str, path: str) -> None:
    error = refusal("read_fluid", fluid_body(**fields))
    assert (error["code"], error["path"]) == (code, f"body.fluid.{path}")


def test_moved_and_unusual_are_asked_about_once_each() -> None:
    body = {**fluid_body(factor=t("0.4", "1")), "last_factor": t("1.5", "1")}
    doubts = ask("read_fluid", body)["doubts"]
    assert [doubt["code"] for doubt in doubts] == ["unusual", "factor_moved"]
    # A semi-synthetic's own usual range, not that of all fluids.
    assert (doubts[0]["usual_low"], doubts[0]["usual_high"]) == (1.1, 1.9)


def test_a_bent_chart_is_asked_about_at_its_pair() -> None:
    third = {"strength": t("10", "%"), "reading": brix("5")}
    got = ask("read_fluid", fluid_body(**NO_FACTOR, factor_chart=[*PAIRS, third]))
    doubt = next(d for d in got["doubts"] if d["code"] == "chart_bent")
    assert doubt["path"] == "body.fluid.factor_chart[2].reading"


def test_a_moved_factor_is_shown_beside_the_last_one_give_or_take_a_tenth() -> None:
    body = {
        **fluid_body(factor=t("1.25", "1"), factor_direction=None),
        "last_factor": t("1.5", "1"),
    }
    (doubt,) = ask("read_fluid", body)["doubts"]
    assert (doubt["usual_low"], doubt["usual_high"]) == pytest.approx((1.35, 1.65))
    assert doubt["got"]["value"] == 1.25


def test_five_per_cent_reads_on_a_glass_that_is_not_at_zero() -> None:
    # By hand: 5/1.5 and the glass's own 0.2.
    machine = {**WHEEL_LATHE, "instrument": HAND_GLASS}
    shown = ask("read_machine", {"machine": machine})["shown"]["five_reads"]
    assert shown == {"value": 3.53, "decimals": 2, "unit": "Brix"}
    body = {**fluid_body(factor=t("1.5", "1"), factor_direction=None), "instrument": HAND_GLASS}
    assert ask("read_fluid", body)["shown"]["five_reads"] == shown
