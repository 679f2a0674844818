"""pycore.desk.check.second and the recipe for two methods: never averaged, smaller dose first."""

from typing import Any

import pytest

from tests.unit.desk.asked import WHEEL_LATHE, ask, changed, check, refusal, t, with_fields

TITRATION = {"method": "titration", "factor": t("0.5", "1")}


def _plan(shows: str, depth: str = "342", brix: str = "4.0", **second: Any) -> dict[str, Any]:
    body = check(WHEEL_LATHE, depth, brix, second={**TITRATION, "shows": t(shows, "1"), **second})
    return ask("plan_check", body)


def test_agreement_leaves_the_plan_as_it_was() -> None:
    # The refractometer says 6.0 %, 12 drops the same.
    got, alone = _plan("12"), ask("plan_check", check(WHEEL_LATHE))
    assert got["second"]["agrees"] is True
    assert "disagreement" not in got
    assert got["plan"] == alone["plan"]


@pytest.mark.parametrize("shows", ["12.5", "11"])
def test_a_difference_within_the_uncertainties_is_never_averaged(shows: str) -> None:
    got = _plan(shows)
    assert got["second"]["agrees"] is True
    assert got["request"]["sump"]["strength_pct"]["value"] == pytest.approx(6.0)


@pytest.mark.parametrize(("shows", "brix"), [("8", "4.0"), ("17", "4.0"), ("26", "7.0")])
def test_disagreement_gives_both_recipes_and_the_smaller_dose_first(shows: str, brix: str) -> None:
    got = _plan(shows, brix=brix)
    found = got["disagreement"]
    assert abs(got["second"]["normalised_error"]) > 1
    assert found["low_pct"] < found["high_pct"]
    main, other = got["plan"], found["other"]["plan"]
    assert main["totals"]["concentrate_l"] <= other["totals"]["concentrate_l"]
    ends = {"low": found["low_pct"], "high": found["high_pct"]}
    planned = got["request"]["sump"]["strength_pct"]["value"]
    assert planned == ends[found["planned_for"]]
    assert {planned, found["other"]["request"]["sump"]["strength_pct"]["value"]} == set(
        ends.values()
    )


def test_both_recipes_are_the_planners_own() -> None:
    got = _plan("8")
    for side in (got, got["disagreement"]["other"]):
        assert ask("plan_recipe", side["request"]) == side["plan"]


def test_what_the_glass_says_stays_beside_it() -> None:
    got = _plan("17")
    assert got["assessment"]["strength"]["strength_pct"]["value"] == pytest.approx(6.0)
    assert got["second"]["strength_pct"]["value"] == pytest.approx(8.5)
    assert "titration_raised_by_cleaner" in got["disagreement"]["codes"]


def test_own_uncertainty_decides() -> None:
    # By hand: 4 drops of doubt are 2 % of strength, as much as the two methods differ.
    assert _plan("8", u=t("4", "1"))["second"]["agrees"] is True
    assert _plan("8", u=t("0.1", "1"))["second"]["agrees"] is False


def test_factor_of_the_fluids_record_is_used() -> None:
    machine = changed("fluid.titration_factor", t("0.5", "1"))
    second = {"method": "titration", "shows": t("8", "1")}
    got = ask("plan_check", check(machine, second=second))
    assert got["second"]["strength_pct"]["value"] == pytest.approx(4.0)


def test_strong_acid_is_cautioned() -> None:
    second = {"method": "acid_split", "shows": t("5", "1"), "factor": t("1", "1")}
    got = ask("plan_check", check(WHEEL_LATHE, second=second))
    assert got["second"]["cautions"] == ["strong_acid"]
    assert got["second"]["shown"]["factor"]["value"] == 1


@pytest.mark.parametrize(
    ("fields", "code", "path"),
    [
        ({"factor": None}, "no_factor", "factor"),
        ({"shows": t("100", "1")}, "out_of_range", "shows"),
        ({"shows": t("-1", "1")}, "out_of_range", "shows"),
        ({"method": "smell"}, "not_allowed", "method"),
    ],
)
def test_refused_at_the_field(fields: dict[str, Any], code: str, path: str) -> None:
    second = with_fields({**TITRATION, "shows": t("8", "1")}, **fields)
    error = refusal("plan_check", check(WHEEL_LATHE, second=second))
    assert (error["code"], error["path"]) == (code, f"body.second.{path}")


def test_a_split_of_a_synthetic_is_refused() -> None:
    second = {"method": "acid_split", "shows": t("5", "1"), "factor": t("1", "1")}
    machine = changed("fluid.type", "synthetic")
    error = refusal("plan_check", check(machine, second=second))
    assert (error["code"], error["limit"]["allowed"]) == ("not_allowed", ["titration"])


def test_other_recipe_draws_its_own_strength_and_keeps_the_mark_of_this_once() -> None:
    body = check(WHEEL_LATHE, second={**TITRATION, "shows": t("8", "1")})
    result = ask("plan_check", {**body, "fill_to_depth": t("400", "mm")})
    both = [result, result["disagreement"]["other"]]
    dots = {answer["assessment"]["section"]["dots"] for answer in both}
    assert len(dots) == 2
    assert [answer["shown"]["fill_to"]["value"] for answer in both] == [400, 400]
