"""Every code of practice has its sentence, and every card its title, text and source."""

import json
import re

import pytest

from tests.contract import DEFINITIONS
from web.build.paths import SHARED, WEB

WORDS = json.loads((SHARED / "words" / "en.json").read_text(encoding="utf-8"))
STEP = DEFINITIONS["step_judged"]["properties"]
OWN = DEFINITIONS["own_judged"]["properties"]
STEPS = DEFINITIONS["deal_practice_result"]["properties"]["steps"]["items"]["enum"]
KINDS = DEFINITIONS["deal_practice_result"]["properties"]["kind"]["enum"]
CODES = [
    *(f"slip.{code}" for code in {*STEP["slip"]["enum"], *OWN["slip"]["enum"]}),
    *(f"fault.{code}" for code in OWN["faults"]["items"]["enum"]),
    *(f"standing.{code}" for code in OWN["standing"]["enum"]),
    *(f"verdict.{code}" for code in [*STEP["verdict"]["enum"], "shown"]),
    *(f"level_{code}" for code in DEFINITIONS["practice_level"]["enum"]),
    *(f"machine.{code}" for code in KINDS),
    *(f"ask.{step}" for step in STEPS),
    *(f"worked.{step}" for step in STEP["step"]["enum"]),
]
CARDS = re.findall(
    r'^  "(\w+)",$', (WEB / "src/screens/learn/cards.ts").read_text(encoding="utf-8"), re.MULTILINE
)


@pytest.mark.parametrize("code", sorted(CODES))
def test_code_has_a_sentence(code: str) -> None:
    assert WORDS[f"practice.{code}"].strip()


@pytest.mark.parametrize("card", CARDS)
def test_card_says_what_it_is_and_where_it_comes_from(card: str) -> None:
    sentences = re.split(r"(?<=\.)\s", WORDS[f"learn.{card}.text"])
    assert WORDS[f"learn.{card}.title"]
    assert len(sentences) <= 5
    source = WORDS[f"learn.{card}.source"]
    assert "no source" in source or card == "percent"


def test_there_are_the_cards_of_the_list() -> None:
    assert len(CARDS) == 10
    assert {
        key.split(".")[1] for key in WORDS if key.endswith(".title") and key[:6] == "learn."
    } == {
        "title",
        *CARDS,
    }
