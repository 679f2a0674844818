"""Every code has a sentence for people, and every operation and refusal an example."""

import json
from typing import Any

import pytest

from tests.contract import DEFINITIONS, OPERATIONS
from tests.examples.files import (
    EXAMPLES,
    WITHOUT_EXAMPLE,
    examples,
    path_of,
    request_text,
)
from tests.properties.asking import answer
from web.build.paths import SHARED

WORDS = json.loads((SHARED / "words" / "en.json").read_text(encoding="utf-8"))
CODES = DEFINITIONS["error_code"]["enum"]
PLAN = DEFINITIONS["plan_recipe_result"]["properties"]
NOTES = DEFINITIONS["assess_sump_result"]["properties"]["notes"]["items"]["enum"]

# A person's typing cannot cause these: the page's defect, told by its code.
OF_PROGRAMS = {
    "not_json", "duplicate_key", "too_large", "too_deep", "unknown_version", "unknown_op",
    "unknown_field", "wrong_type", "wrong_form", "internal",
}  # fmt: skip
# Sentence of the same meaning under another key.
SAME_AS = {
    "missing": "error.empty",
    "not_finite": "error.not_a_number",
    "out_of_range": "error.range.from_to",
}


@pytest.mark.parametrize("code", CODES)
def test_error_code_has_a_sentence(code: str) -> None:
    key = "error.other" if code in OF_PROGRAMS else SAME_AS.get(code, f"error.{code}")
    assert WORDS[key].strip()
    if code in OF_PROGRAMS:
        assert "{code}" in WORDS[key]


@pytest.mark.parametrize("code", PLAN["cautions"]["items"]["enum"])
def test_caution_has_a_sentence(code: str) -> None:
    assert WORDS[f"caution.{code}"].strip()


@pytest.mark.parametrize("code", NOTES)
def test_note_has_a_sentence(code: str) -> None:
    assert WORDS[f"note.{code}"].strip()


@pytest.mark.parametrize("code", PLAN["shares"]["items"]["properties"]["input"]["enum"])
def test_share_has_a_sentence(code: str) -> None:
    assert WORDS[f"share.{code}"].strip()


def _codes(part: Any) -> set[str]:
    return set(part["items"]["enum"])


DOUBTS = DEFINITIONS["doubt"]["properties"]["code"]["enum"]
CURES = DEFINITIONS["strength"]["properties"]["cures"]
FLUID = DEFINITIONS["read_fluid_result"]["properties"]
WATER = DEFINITIONS["read_water_result"]["properties"]
SECOND = DEFINITIONS["second_strength"]["properties"]
APART = DEFINITIONS["disagreement"]["properties"]
OF_FLUID = {
    *(f"doubt.{code}" for code in DOUBTS),
    *(f"cure.{code}" for code in _codes(CURES)),
    *(f"note.{code}" for code in _codes(FLUID["notes"])),
    *(f"caution.{code}" for code in _codes(FLUID["cautions"])),
    *(f"caution.{code}" for code in _codes(WATER["cautions"])),
    *(f"caution.{code}" for code in _codes(SECOND["cautions"])),
    *(f"second.{code}" for code in _codes(APART["codes"])),
}


@pytest.mark.parametrize("key", sorted(OF_FLUID))
def test_code_about_fluid_and_instrument_has_a_sentence(key: str) -> None:
    assert WORDS[key].strip()


def test_no_sentence_is_empty() -> None:
    sentences = {
        f"{key} {form}": sentence
        for key, entry in WORDS.items()
        for form, sentence in (entry.items() if isinstance(entry, dict) else [("", entry)])
    }
    # A plain number, such as a factor, is written without a unit.
    empty = [key for key, sentence in sentences.items() if not sentence.strip()]
    assert empty == ["unit.1 "]


FILES = examples()


@pytest.mark.parametrize("code", sorted(set(CODES) - WITHOUT_EXAMPLE))
def test_error_code_has_an_example(code: str) -> None:
    assert FILES[f"error_{code}"]["reply"]["error"]["code"] == code


def test_operation_has_an_example() -> None:
    asked = {
        f["request"]["op"]
        for f in FILES.values()
        if isinstance(f["request"], dict) and f["reply"]["ok"]
    }
    assert asked == OPERATIONS


@pytest.mark.parametrize("name", FILES)
def test_example_is_answered_as_it_says(name: str) -> None:
    example: dict[str, Any] = FILES[name]
    reply = answer(request_text(example["request"]))
    if name == "describe":
        # The one answer that depends on where it is asked.
        reply["result"]["python"] = example["reply"]["result"]["python"]
    assert reply == example["reply"]


def test_every_example_lies_with_its_operation() -> None:
    wanted = {path_of(name, example["request"]) for name, example in FILES.items()}
    assert {path for path in EXAMPLES.rglob("*") if path.is_file()} == wanted


def _once(pairs: list[tuple[str, Any]]) -> dict[str, Any]:
    names = [name for name, _ in pairs]
    assert sorted(set(names)) == sorted(names), [name for name in names if names.count(name) > 1]
    return dict(pairs)


def test_no_key_is_given_twice() -> None:
    # Of two sentences with one key the last would win, and a button silently gets another name.
    text = (SHARED / "words" / "en.json").read_text(encoding="utf-8")
    assert len(json.loads(text, object_pairs_hook=_once)) == len(WORDS)
    with pytest.raises(AssertionError, match="a"):
        json.loads('{"a": 1, "a": 2}', object_pairs_hook=_once)
