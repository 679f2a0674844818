"""pycore.desk.sheets.slip: the recipe as shown, in the words of the slip."""

from typing import Any

import pytest

from tests.unit.desk.lathe import WHEEL_LATHE, ask, check, refusal
from tests.unit.desk.sheets.workshop import BODIES, body
from tests.unit.sheets.drawn import said

RECIPE: dict[str, Any] = BODIES["recipe_slip"]["recipe"]
POUR: dict[str, Any] = RECIPE["pours"][0]


def drawn(**more: Any) -> str:
    """All texts of the slip of a recipe with fields replaced."""
    return said(ask("draw_sheet", body("recipe_slip", recipe={**RECIPE, **more}))["pages"])


def litres(value: float) -> dict[str, Any]:
    """A shown amount."""
    return {"value": value, "decimals": 1, "unit": "L"}


def test_every_number_is_the_one_that_was_shown() -> None:
    shown = ask("plan_check", check(WHEEL_LATHE))["shown"]
    text = drawn()
    assert RECIPE["pours"] == shown["pours"]
    for number in (shown["strength"], shown["low"], shown["high"], POUR["water"]):
        assert f"{number['value']:.{number['decimals']}f}" in text


def test_own_fluid_stands_before_the_concentrate_and_nothing_is_left_out() -> None:
    pour = {**POUR, "fluid": litres(7.5), "water": litres(0), "kind": "own_fluid"}
    text = drawn(pours=[pour])
    assert "WATER" not in text
    assert text.index("COOLANT 7.5 L") < text.index("CONCENTRATE")


def test_a_ready_mix_is_one_amount() -> None:
    text = drawn(pours=[{**POUR, "kind": "ready_mix", "total": litres(9.5)}])
    assert "READY MIX 9.5 L" in text
    assert "WATER" not in text


def test_jugs_and_the_mark_of_the_pail_are_told() -> None:
    jugs = {"count": 2, "rest": {"value": 200, "decimals": 0, "unit": "mL"}}
    assert "2 full jugs and 200 mL" in drawn(pours=[{**POUR, "jugs": jugs}])
    assert "fill up to 7.5 L" in drawn(pours=[{**POUR, "pail_mark": litres(7.5)}])


@pytest.mark.parametrize(
    ("count", "rest_ml", "said"),
    [(1, 200, "1 full jug and 200 mL"), (2, 0, "2 full jugs"), (2, 5, "2 full jugs and 5 mL")],
)
def test_one_jug_is_no_plural_and_no_rest_is_not_measured(
    count: int, rest_ml: int, said: str
) -> None:
    jugs = {"count": count, "rest": {"value": rest_ml, "decimals": 0, "unit": "mL"}}
    text = drawn(pours=[{**POUR, "jugs": jugs}])
    assert said in text
    assert "0 mL" not in text.replace("200 mL", "")


@pytest.mark.parametrize(("out", "is_told"), [(0.0, False), (12.0, True)])
def test_what_comes_out_is_told_where_something_does(out: float, is_told: bool) -> None:
    assert ("take out" in drawn(take_out=litres(out))) == is_told


def test_cautions_are_never_missing() -> None:
    assert "Gloves and eye protection" in drawn(cautions=[])
    text = drawn(cautions=["Strong coolant harms the skin."])
    assert "harms the skin" in text
    assert "safety data sheet" in text


def test_a_slip_needs_a_recipe() -> None:
    error = refusal("draw_sheet", body("recipe_slip", recipe=None))
    assert (error["code"], error["path"]) == ("missing", "body.recipe")
