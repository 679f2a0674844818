"""No sentence lets a number part from its unit, or a rule's number break at its hyphen."""

import json
import re
from typing import Any

import pytest

from web.build.paths import SHARED

LANGUAGES = sorted(path.stem for path in (SHARED / "words").glob("*.json"))
# Symbols after a number or a blank; "in", "m" and "g" are words or letters too.
_UNIT = r"(?:L|mL|mm|cm|kg|kB|%|Brix|°C|°F|°dH|mg/L|CFU/mL|US gal|imp gal)"
_LOOSE = re.compile(rf"[\d}}] {_UNIT}(?![\w/])")
# "DGUV Regel 109-003" broke behind "109-".
_RULE = re.compile(r"\d{3}-\d{3}")


def _sentences(language: str) -> dict[str, str]:
    path = SHARED / "words" / f"{language}.json"
    words: dict[str, Any] = json.loads(path.read_text(encoding="utf-8"))
    return {
        key: " ".join(entry.values()) if isinstance(entry, dict) else entry
        for key, entry in words.items()
    }


@pytest.mark.parametrize("language", LANGUAGES)
def test_a_number_is_tied_to_its_unit(language: str) -> None:
    loose = {key: text for key, text in _sentences(language).items() if _LOOSE.search(text)}
    assert loose == {}


@pytest.mark.parametrize("language", LANGUAGES)
def test_the_number_of_a_rule_is_one_word(language: str) -> None:
    torn = {key: text for key, text in _sentences(language).items() if _RULE.search(text)}
    assert torn == {}


def test_the_measure_finds_both() -> None:
    found = [_LOOSE.search(text) is not None for text in ("at 100 % now", "{water} L,")]
    found += [_LOOSE.search(text) is not None for text in ("at 100\u00a0%", "5 Liter")]
    found += [_RULE.search(f"Regel 109{hyphen}003") is not None for hyphen in ("-", "\u2011")]
    assert found == [True, True, False, False, True, False]
