"""pycore.office.german: the sheets' sentences in German, the same ones as in English."""

import json

from pycore.office.german import WORDS
from pycore.sheets.english import WORDS as ENGLISH
from web.build.paths import SHARED
from web.build.words import PREFIX

ALL = json.loads((SHARED / "words" / "de.json").read_text(encoding="utf-8"))


def test_the_words_are_those_of_the_one_source() -> None:
    wanted = {key.removeprefix(PREFIX): ALL[key] for key in ALL if key.startswith(PREFIX)}
    assert dict(WORDS) == wanted
    assert WORDS.keys() == ENGLISH.keys()
