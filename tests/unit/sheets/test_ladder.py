"""pycore.sheets.ladder: steps of 1, 2, 5, never too dense to read."""

import itertools
import math

import pytest
from hypothesis import given
from hypothesis import strategies as st

from pycore.sheets.ladder import LABEL_GAP_MM, LINE_GAP_MM, Mark, marks, ruler


@given(st.floats(0.5, 200000), st.floats(60, 5000), st.sampled_from([1.0, 0.5, 1.7, 3.0]))
def test_marks_are_round_numbers_far_enough_apart(
    top: float, length_mm: float, power: float
) -> None:
    def place_mm(amount: float) -> float:
        return float(length_mm * (amount / top) ** power)

    found = marks(top, length_mm, place_mm)
    numbered = [mark for mark in found if mark.label]
    assert found[0].amount == 0
    assert found[-1].amount <= top
    gaps = [b.at_mm - a.at_mm for a, b in itertools.pairwise(found)]
    label_gaps = [b.at_mm - a.at_mm for a, b in itertools.pairwise(numbered)]
    if len(numbered) > 2:
        assert min(label_gaps) >= LABEL_GAP_MM
        step = numbered[1].amount
        digit = step / 10 ** math.floor(math.log10(step) + 1e-9)
        assert min(abs(digit - wanted) for wanted in (1, 2, 5, 10)) < 1e-6
    if len(found) > len(numbered):
        assert min(gaps) >= LINE_GAP_MM
    for mark in numbered:
        assert float(mark.label) == pytest.approx(mark.amount, rel=1e-9)
        assert mark.at_mm == pytest.approx(place_mm(mark.amount))


def test_an_even_scale_by_hand() -> None:
    found = marks(10, 100, lambda amount: amount * 10)
    assert [mark.label for mark in found if mark.label] == [str(n) for n in range(11)]
    assert found[1] == Mark(2.0, 0.2)


def test_a_scale_as_fine_as_the_eye_bears() -> None:
    # One litre for a millimetre: numbers each 10, lines each 2.
    found = marks(100, 100, lambda amount: amount)
    assert [mark.amount for mark in found[:3]] == [0, 2, 4]


def test_millimetres_and_eighths() -> None:
    metric = ruler(25, "cm")
    assert [mark.label for mark in metric if mark.label] == ["0", "10", "20"]
    assert [mark.at_mm for mark in metric] == [float(n) for n in range(26)]
    assert [mark.at_mm for mark in metric if mark.is_half] == [5, 15, 25]
    inches = ruler(51, "in")
    assert [mark.label for mark in inches if mark.label] == ["0", "1", "2"]
    assert inches[8].at_mm == pytest.approx(25.4)
    assert [mark.at_mm for mark in inches if mark.is_half] == pytest.approx([12.7, 38.1])


def test_marks_from_a_number_on() -> None:
    found = marks(120, 70.0, lambda amount: amount - 50, 50)
    assert [mark.label for mark in found if mark.label] == [
        "50",
        "60",
        "70",
        "80",
        "90",
        "100",
        "110",
        "120",
    ]
    assert (found[0].at_mm, found[-1].at_mm) == (0, 70)
    # Nothing is marked below it: with lines each 2, the first one is 54.
    assert marks(120, 67.0, lambda amount: amount - 53, 53)[0].amount == 54
