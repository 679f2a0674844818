"""pycore.sheets.letters: nothing is wider than it was taken for, and every cut can be seen."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from pycore.sheets.letters import (
    shortened,
    size_for_words_mm,
    size_that_fits_mm,
    width_mm,
    wrapped,
)

NAMES = st.text(min_size=1, max_size=80).map(lambda text: " ".join(text.split())).filter(bool)


@given(NAMES, st.floats(12, 120), st.integers(1, 4), st.booleans())
def test_lines_fit_and_only_an_ellipsis_loses_text(
    text: str, room_mm: float, most: int, bold: bool
) -> None:
    lines = wrapped(text, 4, room_mm, most, bold)
    assert 1 <= len(lines) <= most
    assert all(width_mm(line, 4, bold) <= room_mm * (1 + 1e-9) for line in lines)
    if not (len(lines) == most and lines[-1].endswith("…")):
        assert "".join(lines).replace(" ", "") == text.replace(" ", "")


@given(NAMES, st.floats(8, 60))
def test_shortened_fits_and_shows_its_cut(text: str, room_mm: float) -> None:
    short = shortened(text, 4, room_mm)
    assert width_mm(short, 4) <= room_mm * (1 + 1e-9)
    assert short == text or short.endswith("…")


@given(NAMES, st.floats(5, 100))
def test_size_that_fits_fits(text: str, room_mm: float) -> None:
    size_mm = size_that_fits_mm(text, 10, room_mm, True)
    assert size_mm <= 10
    assert width_mm(text, size_mm, True) <= room_mm * (1 + 1e-9)


def test_a_line_breaks_behind_a_hyphen() -> None:
    assert wrapped("Rädersatz-Drehbank", 4, 26, 2) == ["Rädersatz-", "Drehbank"]


@pytest.mark.parametrize("text", ["W" * 80, "x" * 80, "中" * 40])
def test_a_word_without_spaces_is_broken(text: str) -> None:
    lines = wrapped(text, 4, 40, 50)
    assert len(lines) > 1
    assert "".join(lines) == text


def test_the_longest_word_decides_the_size_down_to_a_least() -> None:
    assert size_for_words_mm("a b c", 5, 4, 30) == 5
    assert 4 < size_for_words_mm("Schleifmaschine a", 5, 4, 42) < 5
    assert size_for_words_mm("W" * 40, 5, 4, 30) == 4
