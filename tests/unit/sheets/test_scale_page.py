"""pycore.sheets.scale_page: nothing runs into the check lines, whatever the language."""

import pytest

from pycore.sheets.ladder import marks, ruler
from pycore.sheets.scale_page import Mix, Said, Tank, scale_pages
from pycore.sheets.strip import Scale
from tests.unit.sheets.drawn import NAMESPACE, lines, root_of, said
from tests.unit.sheets.pages import A4, ENGLISH, LONG, PAPERS

WORDS = Said(
    "Dip scale",
    "Achsschenkelbolzenschleifmaschine in der zweiten Halle, ganz hinten links am Tor",
    ["Code 7K3F-4", "Small numbers: mm"],
    [LONG.say(f"dip_step_{i}") for i in range(1, 6)],
    [Mix(0.5, 0.1, ["3 1/2 US gal water", "+ 64 US fl oz concentrate", "= 14.3 %"])] * 3,
    Tank(0.9, "440 mm"),
)


def scale(length_mm: float) -> Scale:
    """An even scale."""
    return Scale(length_mm, ruler(length_mm, "mm"), marks(100, length_mm, lambda a: a * length_mm
                 / 100), "L", "mm")  # fmt: skip


@pytest.mark.parametrize("paper", PAPERS, ids=lambda p: f"{p.name} {p.stretch:.2f}")
@pytest.mark.parametrize("length_mm", [100, 484])
def test_words_end_above_the_check_lines(paper, length_mm: float) -> None:
    for page in scale_pages(scale(length_mm), WORDS, paper, LONG):
        checks = [line for line in lines(page) if line.name == "4 in"]
        top_mm = min(checks[0].y1_mm, checks[0].y2_mm)
        side = [
            text
            for text in root_of(page).iter(f"{NAMESPACE}text")
            if float(str(text.get("x"))) >= checks[0].x1_mm - 13
        ]
        above = [float(str(text.get("y"))) for text in side]
        told = [y for y in above if y <= top_mm]
        assert "= 14.3 %" in said([page])
        # What stands lower is the foot and what to do with the check lines.
        lower = {str(t.text) for t, y in zip(side, above, strict=True) if y > top_mm}
        assert told
        assert not any("concentrate" in text or "US" in text for text in lower)


def test_each_page_has_check_lines_and_a_number() -> None:
    pages = scale_pages(scale(1200), WORDS, A4, ENGLISH)
    assert len(pages) == 3
    for number, page in enumerate(pages, 1):
        assert {"100 mm", "4 in"} <= {line.name for line in lines(page)}
        assert f"Page {number} of 3" in said([page])


def test_strips_stay_inside_the_page() -> None:
    for paper in PAPERS:
        for page in scale_pages(scale(700), WORDS, paper, ENGLISH):
            wide, high = paper.room_mm
            for line in lines(page):
                assert 0 <= min(line.x1_mm, line.x2_mm) <= max(line.x1_mm, line.x2_mm) <= wide
                assert 0 <= min(line.y1_mm, line.y2_mm) <= max(line.y1_mm, line.y2_mm) <= high
