"""pycore.sheets.english: the page's own sentences, no other ones."""

import json
import re

from pycore.sheets.english import WORDS
from web.build.paths import PYCORE, SHARED
from web.build.words import PREFIX

ALL = json.loads((SHARED / "words" / "en.json").read_text(encoding="utf-8"))


def test_the_words_are_those_of_the_one_source() -> None:
    wanted = {key.removeprefix(PREFIX): ALL[key] for key in ALL if key.startswith(PREFIX)}
    assert dict(WORDS) == wanted


def test_every_word_is_used_and_every_used_word_is_there() -> None:
    files = [*(PYCORE / "sheets").glob("*.py"), *(PYCORE / "desk" / "sheets").glob("*.py")]
    # The report has words of its own.
    files = [path for path in files if path.name != "english.py" and "report" not in path.name]
    code = "".join(path.read_text(encoding="utf-8") for path in files)
    # Keys that are put together from a kind or a number.
    made = re.compile(r"^(dip_step_|bucket_step_|type_)")
    unused = [key for key in WORDS if f'"{key}"' not in code and not made.match(key)]
    asked = set(re.findall(r'\.say\(\s*"([a-z_0-9]+)"', code))
    assert unused == []
    assert asked - set(WORDS) == set()
