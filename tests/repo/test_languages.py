"""Every language says everything that English says, with the same blanks and its own plurals."""

import json
import re
import subprocess
from pathlib import Path
from typing import Any

import pytest

from web.build.node import ensure_node
from web.build.paths import SHARED, WEB, files_below
from web.build.steps import Steps

FOLDER = SHARED / "words"
ENGLISH: dict[str, Any] = json.loads((FOLDER / "en.json").read_text(encoding="utf-8"))
OTHERS = sorted(path.stem for path in FOLDER.glob("*.json") if path.stem != "en")
# Plural categories of each language: Unicode CLDR, supplemental data, plurals; from memory.
FORMS = {"en": {"one", "other"}, "de": {"one", "other"}}
# The same in German: names, signs, blanks alone, and words that both languages have.
SAME_IN_GERMAN = {
    "about.pyodide", "about.python", "amend.deed", "amend.said", "amend.said_by", "amend.why_more",
    "answers.second_value", "app.name", "compact.line.digital",
    "compact.unanswered", "dip.volume", "facts.name", "facts.thing_sides", "field.first_fill_ph",
    "field.in_unit", "field.ph", "found.factor", "install.android", "install.iphone",
    "language.de", "language.en",
    "limits.nitrite_most_hint", "limits.review_hint", "look.nitrite_row", "look.ph",
    "pour.aloud_amount", "pour.aloud_step",
    "machine.code", "machines.next", "metal.aluminium", "metal.magnesium", "method.titration",
    "mishap.note",
    "pours.give_or_take", "practice.worked.room", "practice.worked.strength",
    "practice.worked.volume", "print.A4", "print.Letter", "recipe.now", "sheet.bucket_strength",
    "sheet.code_is", "sheet.full_of", "sheet.made_by", "sheet.mix_makes", "sheet.zero",
    "shift.said", "shift.said_by", "shows.brix", "stock.in_unit", "told.state_why", "trend.ph",
    "source_of.hse_cleaning_a_water_mix_fluid_sump",
    "trend.table_concentrate", "trend.table_not_known", "unit.1", "unit.Brix",
}  # fmt: skip


def words_of(language: str) -> dict[str, Any]:
    words: dict[str, Any] = json.loads((FOLDER / f"{language}.json").read_text(encoding="utf-8"))
    return words


def sentences(entry: str | dict[str, str]) -> list[str]:
    return list(entry.values()) if isinstance(entry, dict) else [entry]


def blanks(sentence: str) -> list[str]:
    return sorted(set(re.findall(r"\{(\w+)\}", sentence)))


@pytest.mark.parametrize("language", OTHERS)
def test_no_sentence_is_missing_and_none_is_left_over(language: str) -> None:
    words = words_of(language)
    assert [key for key in ENGLISH if key not in words] == []
    assert [key for key in words if key not in ENGLISH] == []
    # One order, so that a new sentence stands beside its relatives in every language.
    assert list(words) == list(ENGLISH)


@pytest.mark.parametrize("language", OTHERS)
def test_blanks_are_those_of_english(language: str) -> None:
    words = words_of(language)
    wanted = {key: blanks(" ".join(sentences(entry))) for key, entry in ENGLISH.items()}
    found = {key: blanks(" ".join(sentences(words.get(key, "")))) for key in ENGLISH}
    assert found == wanted


@pytest.mark.parametrize("language", ["en", *OTHERS])
def test_plural_forms_are_those_of_the_language(language: str) -> None:
    words = words_of(language)
    counted = {key for key, entry in ENGLISH.items() if isinstance(entry, dict)}
    assert {key for key, entry in words.items() if isinstance(entry, dict)} == counted
    wrong = {key: words[key] for key in counted if set(words[key]) != FORMS[language]}
    assert wrong == {}
    # Each form is a whole sentence with all blanks, but for the number itself in the singular.
    uneven = {
        key
        for key in counted
        for form in words[key].values()
        if set(blanks(" ".join(words[key].values()))) - set(blanks(form)) - {"n", "count"}
    }
    assert uneven == set()


def test_no_german_sentence_is_empty_or_still_english() -> None:
    words = words_of("de")
    empty = [key for key in words if not all(text.strip() for text in sentences(words[key]))]
    assert empty == ["unit.1"]
    assert {key for key in words if words[key] == ENGLISH[key]} == SAME_IN_GERMAN


def test_the_page_never_shows_a_sentence_of_pycore() -> None:
    # What pycore says in words is for the command line; the page has its own, by code.
    shown = [
        path.relative_to(WEB).as_posix()
        for part in ("screens", "words", "elements")
        for path in files_below(WEB / "src" / part, ".ts", ".tsx")
        if "error.message" in path.read_text(encoding="utf-8")
    ]
    assert shown == []


def test_a_hint_and_a_reason_belong_to_one_page() -> None:
    """The set-up's mixes once said what stands on another page: that a published figure holds."""
    used: dict[str, set[str]] = {}
    for path in files_below(WEB / "src", ".ts", ".tsx"):
        for key in re.findall(r'"([a-z_.]+\.(?:hint|why))"', path.read_text(encoding="utf-8")):
            used.setdefault(key, set()).add(path.relative_to(WEB).as_posix())
    assert used
    assert {key: pages for key, pages in used.items() if len(pages) > 1} == {}


def _written_out(folder: Path) -> list[str]:
    node = ensure_node(Steps())
    done = subprocess.run(
        [*map(str, node.node), str(Path(__file__).with_name("literals.mjs")), str(folder)],
        cwd=WEB, capture_output=True, text=True, check=True, timeout=120,
    )  # fmt: skip
    found: list[str] = json.loads(done.stdout)
    return found


def test_no_sentence_stands_in_the_code_of_the_page(tmp_path: Path) -> None:
    assert _written_out(WEB / "src") == []
    code = 'export const A = () => <p title="Some words" class="note">And more</p>;\n'
    (tmp_path / "a.tsx").write_text(code, encoding="utf-8")
    assert len(_written_out(tmp_path)) == 2
