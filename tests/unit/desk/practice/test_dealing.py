"""pycore.desk.practice.dealing: every deal is a check that has a recipe worth working out."""

from typing import Any

import pytest

from tests.properties.asking import ask, refusal


def deal(level: str, number: int | str) -> dict[str, Any]:
    return {"level": level, "number": {"text": str(number), "unit": "1"}}


LEVELS = ("alike", "rich", "full", "band")


def test_the_same_deal_is_the_same_sump() -> None:
    deals = [ask("deal_practice", deal("alike", 41)) for _ in range(2)]
    assert deals[0] == deals[1]
    assert deals[0]["number"] == 41
    assert deals[0]["check"] != ask("deal_practice", deal("alike", 42))["check"]


@pytest.mark.parametrize("level", LEVELS)
def test_every_deal_has_a_recipe_in_the_band(level: str) -> None:
    kinds = set()
    for number in (*range(1, 25), 9999):
        dealt = ask("deal_practice", deal(level, number))
        answer = ask("plan_check", dealt["check"])
        plan = answer["plan"]
        kinds.add(dealt["kind"])
        assert answer["doubts"] == []
        assert plan["verdict"] in ("on_target", "in_band")
        assert 2 <= plan["totals"]["buckets"] <= 8
        assert (plan["draw_off_l"] > 0) == (level == "full")
        assert ("take_out" in dealt["steps"]) == (level == "full")
        assert ("top_up" in dealt["steps"]) == (level != "full")
    assert len(kinds) > 3


def test_easy_means_buckets_all_alike() -> None:
    for number in range(1, 25):
        dealt = ask("deal_practice", deal("alike", number))
        assert len(ask("plan_check", dealt["check"])["plan"]["pours"]) == 1


@pytest.mark.parametrize(
    ("number", "code"),
    [("0", "out_of_range"), ("10000", "out_of_range"), ("2.5", "not_whole"), ("x", "not_a_number")],
)
def test_numbers_that_are_not_dealt_are_refused(number: str, code: str) -> None:
    error = refusal("deal_practice", deal("alike", number))
    assert (error["code"], error["path"]) == (code, "body.number")
