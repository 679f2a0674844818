"""pycore.office.report_words: the report's own sentences, all of them used."""

import json
import re

from pycore.office.report_words import WORDS
from web.build.paths import PYCORE, SHARED
from web.build.words import REPORT_ALSO, REPORT_PREFIX

ALL = json.loads((SHARED / "words" / "en.json").read_text(encoding="utf-8"))

GENERATED = ("report_words.py", "report_german.py")


def test_the_words_are_those_of_the_one_source() -> None:
    wanted = {key.removeprefix(REPORT_PREFIX): ALL[key] for key in ALL if REPORT_PREFIX in key}
    wanted |= {key: ALL[key] for key in ALL if key.startswith(REPORT_ALSO)}
    assert dict(WORDS) == wanted


def test_every_word_is_used_and_every_used_word_is_there() -> None:
    files = [*(PYCORE / "office").glob("report*.py"), PYCORE / "office" / "opened.py"]
    code = "".join(p.read_text(encoding="utf-8") for p in files if p.name not in GENERATED)
    # Keys that are put together from a kind, a column or a state of the machine.
    made = re.compile(
        r"^(kind_|col_|.*_head$|in_use|watch|on_hold|stopped$|stop_reason\.|trend\.reason\.|out_of_service|shutdown|conflict$|holds$|machines$)"
    )
    unused = [key for key in WORDS if f'"{key}"' not in code and not made.match(key)]
    asked = set(re.findall(r'\bsay\(\s*"([a-z_0-9]+)"', code))
    assert unused == []
    assert asked - set(WORDS) == set()
