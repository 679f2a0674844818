"""pycore.sheets.language: whole sets of words, numbers with the language's sign."""

import pytest

from pycore.quantity.fault import Fault
from pycore.quantity.rounding import MixedFraction, Shown
from pycore.sheets.english import WORDS
from pycore.sheets.language import Language, language_of


def test_english_without_words() -> None:
    language = language_of(None, None, "words")
    assert language.say("page", n="1", total="2") == "Page 1 of 2"
    assert language.number(Shown(8.5, 1, "L")) == "8.5"


def test_another_language_with_a_comma() -> None:
    words = {key: f"{key}!" for key in WORDS} | {"page": "Seite {n} von {total}"}
    language = language_of(words, ",", "words")
    assert language.say("page", n="1", total="2") == "Seite 1 von 2"
    assert language.amount(Shown(8.5, 1, "US gal")) == "8,5\u00a0US\u00a0gal"


def test_fractions_and_plain_numbers() -> None:
    language = Language({})
    rule = Shown(13.4375, 6, "in", MixedFraction(13, 7, 16))
    assert language.amount(rule) == "13\u00a07/16\u00a0in"
    assert language.number(Shown(0.5, 6, "in", MixedFraction(0, 1, 2))) == "1/2"
    assert language.amount(Shown(1.5, 1, "1")) == "1.5"


def test_a_sentence_cannot_reach_into_the_program() -> None:
    language = Language({"page": "{n.__class__} {0} {other} {n}"})
    assert language.say("page", n="{total}") == "{n.__class__} {0} {other} {total}"


def test_half_a_set_is_refused() -> None:
    words = dict(WORDS)
    del words["full"]
    with pytest.raises(Fault) as caught:
        language_of(words, None, "body.words")
    assert (caught.value.code, caught.value.path) == ("missing", "body.words.full")


def test_an_unknown_key_is_refused() -> None:
    with pytest.raises(Fault) as caught:
        language_of({**WORDS, "colour": "x"}, None, "body.words")
    assert (caught.value.code, caught.value.path) == ("unknown_field", "body.words.colour")
