"""pycore.office.report_german: the report's sentences in German, the same ones as in English."""

import json

from pycore.office.report_german import WORDS
from pycore.office.report_words import WORDS as ENGLISH
from web.build.paths import SHARED
from web.build.words import REPORT_ALSO, REPORT_PREFIX

ALL = json.loads((SHARED / "words" / "de.json").read_text(encoding="utf-8"))


def test_the_words_are_those_of_the_one_source() -> None:
    wanted = {key.removeprefix(REPORT_PREFIX): ALL[key] for key in ALL if REPORT_PREFIX in key}
    wanted |= {key: ALL[key] for key in ALL if key.startswith(REPORT_ALSO)}
    assert dict(WORDS) == wanted
    assert WORDS.keys() == ENGLISH.keys()
