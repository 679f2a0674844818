"""No sentence blames its reader, and none writes an amount in a way that is misread."""

import json
import re

import pytest

from web.build.paths import SHARED

WORDS = json.loads((SHARED / "words" / "en.json").read_text(encoding="utf-8"))
SENTENCES = {
    f"{key} {form}".strip(): sentence
    for key, entry in WORDS.items()
    for form, sentence in (entry.items() if isinstance(entry, dict) else [("", entry)])
}
BLAME = re.compile(r"\b(?:invalid|please|sorry|oops|error code)\b", re.IGNORECASE)
# .5 is read as 5, 1:20 as 1 in 20 or 1 and 20; cc, oz and a bare gal have more than one size.
MISREAD = re.compile(r"(?<![\w.])\.\d|\b\d+:\d+\b|[\d}]\s(?:cc|oz)\b|[\d}]\s(?:gal|gallons?)\b")


def test_the_patterns_find_what_they_are_for() -> None:
    assert BLAME.search("Please enter a number.")
    for text in ("add .5 L", "mix 1:20", "3 cc", "{n} oz", "{n} gal", "8 gallons"):
        assert MISREAD.search(text), text
    for text in ("0.5 L", "3 US gal", "7.3 is low"):
        assert not MISREAD.search(text), text


@pytest.mark.parametrize("pattern", [BLAME, MISREAD])
def test_no_sentence_has_one(pattern: re.Pattern[str]) -> None:
    assert len(SENTENCES) > 1_000
    assert {key: said for key, said in SENTENCES.items() if pattern.search(said)} == {}


UNITS = r"(?:L|mL|mm|cm|ft|kg|%|Brix|°C|US gal|imp gal|min)(?![\w/])"
# What is drawn on paper has no lines to break at, and the report's words are checked with it.
ON_PAPER = ("sheet.", "report.")
PARTED = re.compile(r"[\d}] " + UNITS)


@pytest.mark.parametrize("language", ["en", "de"])
def test_no_number_can_part_from_its_unit(language: str) -> None:
    words = (SHARED / "words" / f"{language}.json").read_text(encoding="utf-8")
    lines = [line for line in words.splitlines() if not line.strip(' "').startswith(ON_PAPER)]
    assert len(lines) > 1_000
    assert [line for line in lines if PARTED.search(line)] == []
    assert PARTED.search("Pour 10 L")


# GOV.UK's style guide splits what is longer than 25 words (from memory); the house wants 12.
MOST_WORDS, WANTED_WORDS = 25, 12
_END = re.compile(r"(?<=[.!?])\s+")
_WORD = re.compile(r"[\w{}'\u2019-]+")


def _lengths(language: str) -> dict[str, int]:
    """Words of each sentence, by its own text."""
    words = json.loads((SHARED / "words" / f"{language}.json").read_text(encoding="utf-8"))
    said = [entry.values() if isinstance(entry, dict) else [entry] for entry in words.values()]
    parts = {part for forms in said for text in forms for part in _END.split(text)}
    # Labels and words of buttons are no sentences.
    return {part: len(_WORD.findall(part)) for part in parts if part.endswith((".", "!", "?"))}


@pytest.mark.parametrize("language", ["en", "de"])
def test_sentences_are_short(language: str) -> None:
    lengths = _lengths(language)
    assert len(lengths) > 1_000
    short = sum(n <= WANTED_WORDS for n in lengths.values())
    mean = sum(lengths.values()) / len(lengths)
    print(
        f"{language}: {len(lengths)} sentences, mean {mean:.1f} words, "
        f"{short / len(lengths):.0%} of {WANTED_WORDS} or fewer, longest {max(lengths.values())}"
    )
    assert {part: n for part, n in lengths.items() if n > MOST_WORDS} == {}
