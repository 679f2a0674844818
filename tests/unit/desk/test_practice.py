"""pycore.desk.practice: every deal is a check that has a recipe worth working out."""

import pytest

from tests.properties.asking import ask, refusal

LEVELS = ("alike", "rich", "full", "band")


def test_the_same_deal_is_the_same_sump() -> None:
    deals = [ask("deal_practice", {"level": "alike", "number": 41}) for _ in range(2)]
    assert deals[0] == deals[1]
    assert deals[0] != ask("deal_practice", {"level": "alike", "number": 42})


@pytest.mark.parametrize("level", LEVELS)
def test_every_deal_has_a_recipe_in_the_band(level: str) -> None:
    kinds = set()
    for number in (*range(1, 25), 9999):
        deal = ask("deal_practice", {"level": level, "number": number})
        answer = ask("plan_check", deal["check"])
        plan = answer["plan"]
        kinds.add(deal["kind"])
        assert answer["doubts"] == []
        assert plan["verdict"] in ("on_target", "in_band")
        assert 2 <= plan["totals"]["buckets"] <= 8
        assert (plan["draw_off_l"] > 0) == (level == "full")
        assert ("take_out" in deal["steps"]) == (level == "full")
        assert ("top_up" in deal["steps"]) == (level != "full")
    assert len(kinds) > 3


def test_easy_means_buckets_all_alike() -> None:
    for number in range(1, 25):
        deal = ask("deal_practice", {"level": "alike", "number": number})
        assert len(ask("plan_check", deal["check"])["plan"]["pours"]) == 1


@pytest.mark.parametrize("number", [0, 10000])
def test_numbers_that_are_not_dealt_are_refused(number: int) -> None:
    error = refusal("deal_practice", {"level": "alike", "number": number})
    assert (error["code"], error["path"]) == ("out_of_range", "body.number")
