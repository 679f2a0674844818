"""Every source that advice names is said in the page's own language."""

import json
import re

import pytest

from pycore.reading.look import FOAM_ORDER, Limits, Measures, rows_that_hold
from pycore.reading.mishap import MISHAPS, advice_about
from web.build.paths import SHARED, WEB

LANGUAGES = sorted(path.stem for path in (SHARED / "words").glob("*.json"))
# A title stays as its publisher wrote it.
SAME = {"source_of.hse_cleaning_a_water_mix_fluid_sump"}


def _sources() -> set[str]:
    seen = re.findall(r'"look_seen\.(\w+)"', (SHARED / "words" / "en.json").read_text("utf-8"))
    found = {row.source for what in MISHAPS for row in advice_about(what, None, ("magnesium",))}
    for foam in (None, "none", *FOAM_ORDER):
        for smell in (None, "gone", "still"):
            for ph, warmth, slide in ((8.0, 5.0, 1e3), (8.6, 50.0, 1e7)):
                measures = Measures(ph, 9.2, 30.0, warmth, slide)
                rows = rows_that_hold(seen, measures, Limits(), "synthetic", smell, foam)
                found |= {row.source for row in rows}
    return found


def _key(source: str) -> str:
    return "source_of." + re.sub(r"[^a-z0-9]+", "_", source.lower()).strip("_")


def _plain(text: str) -> str:
    return text.replace("\u2011", "-")


def test_english_says_what_pycore_says() -> None:
    words = json.loads((SHARED / "words" / "en.json").read_text(encoding="utf-8"))
    said = {key: text for key, text in words.items() if key.startswith("source_of.")}
    sources = _sources()
    assert len(sources) > 8
    assert {key: _plain(text) for key, text in said.items()} == {_key(one): one for one in sources}


@pytest.mark.parametrize("language", [one for one in LANGUAGES if one != "en"])
def test_no_source_is_left_in_english(language: str) -> None:
    english = json.loads((SHARED / "words" / "en.json").read_text(encoding="utf-8"))
    words = json.loads((SHARED / "words" / f"{language}.json").read_text(encoding="utf-8"))
    keys = [key for key in english if key.startswith("source_of.")]
    assert {key for key in keys if words[key] == english[key]} == SAME


def test_both_pages_of_advice_say_it_so() -> None:
    for name in ("check/look/advice.tsx", "mishap/advice.tsx"):
        code = (WEB / "src" / "screens" / name).read_text(encoding="utf-8")
        assert "sourceWord(source)" in code
