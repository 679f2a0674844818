"""pycore.sheets.paper: sizes, the correction and its limits, check lines."""

import pytest

from pycore.quantity.fault import Fault
from pycore.quantity.known import KNOWN
from pycore.sheets.paper import (
    CHECK_MM,
    MOST_OFF_MM,
    draw_check_lines,
    draw_foot,
    foot_height_mm,
    new_page,
    paper_of,
)
from tests.unit.sheets.drawn import lines, said
from tests.unit.sheets.pages import A4, ENGLISH, LETTER, PAPERS


def test_sizes_by_hand() -> None:
    # A4 is 210 × 297 mm (ISO 216), Letter 8.5 × 11 in; 10 mm margin and 1 mm slack on each side.
    assert A4.page_mm == (210, 297)
    assert A4.room_mm == (188, 275)
    assert LETTER.page_mm == pytest.approx((8.5 * 25.4, 11 * 25.4))
    assert paper_of("A4", True, None, "m").page_mm == (297, 210)


@pytest.mark.parametrize("measured_mm", [90, 97.3, 99, 100, 104, 110])
def test_a_printer_that_shrinks_is_made_up_for(measured_mm: float) -> None:
    paper = paper_of("A4", False, measured_mm, "m")
    # What the printer does to a line of this length brings it back to 100 mm.
    assert CHECK_MM * paper.stretch * measured_mm / 100 == pytest.approx(100)


@pytest.mark.parametrize("measured_mm", [0, 10, 89.9, 110.1, 1000, -100])
def test_silly_lengths_are_refused(measured_mm: float) -> None:
    with pytest.raises(Fault) as caught:
        paper_of("A4", False, measured_mm, "measured")
    assert caught.value.code == "out_of_range"
    assert caught.value.limit == {"minimum": 90, "maximum": 110, "unit": "mm"}


def test_the_limits_are_those_of_the_quantity() -> None:
    known = KNOWN["measured_100_mm"]
    assert (known.minimum, known.maximum) == (CHECK_MM - MOST_OFF_MM, CHECK_MM + MOST_OFF_MM)


@pytest.mark.parametrize("paper", PAPERS, ids=lambda p: f"{p.name} {p.stretch:.2f}")
@pytest.mark.parametrize("upright", [True, False])
def test_check_lines_are_100_mm_and_4_in_times_the_correction(paper, upright: bool) -> None:
    drawing = new_page(paper)
    draw_check_lines(drawing, paper, (20, 150), upright)
    length = {}
    for line in lines(drawing.svg()):
        length[line.name] = abs(line.x2_mm - line.x1_mm) + abs(line.y2_mm - line.y1_mm)
    assert length["100 mm"] == pytest.approx(100 * paper.stretch, abs=1e-3)
    assert length["4 in"] == pytest.approx(101.6 * paper.stretch, abs=1e-3)


def test_the_foot_says_what_was_corrected_for() -> None:
    paper = paper_of("Letter", False, 97.25, "m")
    drawing = new_page(paper)
    draw_foot(drawing, paper, ENGLISH, (2, 3))
    text = said([drawing.svg()])
    assert "Page 2 of 3" in text
    assert "97.3 mm" in text
    assert foot_height_mm(paper) > foot_height_mm(A4)


def test_one_page_is_not_numbered() -> None:
    drawing = new_page(A4)
    draw_foot(drawing, A4, ENGLISH, (1, 1))
    assert said([drawing.svg()]) == "Pailwright"
