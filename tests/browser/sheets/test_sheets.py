"""Sheets on real paper: a browser prints them, the print is measured and its code scanned."""

import re
from collections.abc import Iterator
from pathlib import Path
from typing import Any

import pytest
import zxingcpp
from playwright.sync_api import Browser, Page, Playwright

from tests.browser.sheets.paper import (
    CLOSE_MM,
    measured,
    pages_of,
    picture_of,
    place_of,
    printed,
    sheet_file,
    strokes_of,
)
from tests.chromium import chromium_path, launch_arguments
from tests.examples.workshop import TABLE_SUMP
from tests.unit.desk.lathe import WHEEL_LATHE, changed
from tests.unit.desk.sheets.workshop import KINDS, body, typed

PAPERS = {"A4": (210.0, 297.0), "Letter": (215.9, 279.4)}
HOSTILE = {
    "tags": "<script>document.title='x'</script>\"&'",
    "one long word": "W" * 80,
    "many words": "Rädersatz-Drehbank am Tor 7 der zweiten Halle, ganz hinten links beim Kran",
    "other scripts": "車輪旋盤 Колёсный токарный станок \u202e olleh",
}
WORDS = ("Target", "Factor")
# Every text's box, its size and what it says, in page pixels; a millimetre is 96/25.4 of them.
BOXES = """() => [...document.querySelectorAll(".page")].map((page) => {
  const frame = page.getBoundingClientRect();
  return [...page.querySelectorAll("text")].map((text) => {
    const box = text.getBoundingClientRect();
    return [text.textContent, box.left - frame.left, box.top - frame.top, box.width, box.height,
            frame.width, frame.height];
  });
})"""


@pytest.fixture(scope="module")
def browser(playwright: Playwright) -> Iterator[Browser]:
    """A browser that can print."""
    started = playwright.chromium.launch(executable_path=chromium_path(), args=launch_arguments)
    yield started
    started.close()


@pytest.fixture
def paper(browser: Browser) -> Iterator[Page]:
    """An empty page; whatever it complains about or asks for fails the test."""
    page = browser.new_page()
    wrong: list[str] = []
    page.on("pageerror", lambda error: wrong.append(str(error)))
    page.on("request", lambda request: wrong.append(request.url))
    page.on("dialog", lambda dialog: wrong.append(dialog.message))
    yield page
    page.close()
    assert wrong == []


@pytest.mark.parametrize("paper_name", PAPERS)
@pytest.mark.parametrize("kind", KINDS)
def test_the_check_lines_come_out_true(
    paper: Page, tmp_path: Path, kind: str, paper_name: str
) -> None:
    html = sheet_file(body(kind, paper=paper_name, measured_100_mm=None))
    file = printed(paper, html, tmp_path / "sheet.pdf")
    wide, high = PAPERS[paper_name]
    wanted = (high, wide) if kind == "log_sheet" else (wide, high)
    assert len(pages_of(file)) == html.count('<div class="page">')
    # A browser rounds the sheet's size to its own dots; lines are what has to be true.
    assert pages_of(file)[0] == pytest.approx(wanted, abs=0.3)
    strokes = strokes_of(file)
    for name, length_mm in (("100 mm", 100.0), ("4 in", 101.6)):
        line = measured(strokes, place_of(html, name))
        assert line.length_mm == pytest.approx(length_mm, abs=CLOSE_MM)


@pytest.mark.parametrize("paper_name", PAPERS)
@pytest.mark.parametrize(
    ("sump", "depths_mm"),
    [
        # By hand: 198 L at 440 mm is 0.45 L for a millimetre.
        (WHEEL_LATHE["sump"], {"20 L": 20 / 0.45, "65 L": 65 / 0.45, "110 L": 110 / 0.45}),
        # A pair of the table itself, and two depths from scipy's PchipInterpolator.
        (TABLE_SUMP, {"60 L": 180.0}),
    ],
    ids=["even", "table"],
)
def test_litre_marks_lie_where_the_sump_holds_that_much(
    paper: Page, tmp_path: Path, paper_name: str, sump: dict[str, Any], depths_mm: dict[str, float]
) -> None:
    if sump is TABLE_SUMP:
        depths_mm = {**depths_mm, **{f"{n} L": scipy_depth_mm(float(n)) for n in (20, 40)}}
    asked = body("dip_scale", paper=paper_name, machine=changed("sump", sump))
    html = sheet_file(asked)
    strokes = strokes_of(printed(paper, html, tmp_path / "scale.pdf"))
    zero = measured(strokes, place_of(html, "0 L"))
    for name, depth_mm in depths_mm.items():
        mark = measured(strokes, place_of(html, name))
        assert mark.y0_mm == mark.y1_mm
        assert zero.y0_mm - mark.y0_mm == pytest.approx(depth_mm, abs=CLOSE_MM)


def scipy_depth_mm(volume_l: float) -> float:
    """Depth of an amount in the table sump by another library's curve."""
    from scipy.interpolate import PchipInterpolator
    from scipy.optimize import brentq

    curve = PchipInterpolator([0, 60, 180, 320], [0, 12, 60, 116])
    return float(brentq(lambda depth_mm: curve(depth_mm) - volume_l, 0, 320))


@pytest.mark.parametrize("paper_name", PAPERS)
def test_a_printer_that_shrinks_by_3_percent_is_made_up_for(
    paper: Page, tmp_path: Path, paper_name: str
) -> None:
    asked = body("dip_scale", paper=paper_name, measured_100_mm=typed("97", "mm"))
    html = sheet_file(asked)
    strokes = strokes_of(printed(paper, html, tmp_path / "scale.pdf"))
    shrunk = 0.97
    check = measured(strokes, place_of(html, "100 mm"))
    assert check.length_mm * shrunk == pytest.approx(100, abs=CLOSE_MM)
    zero, mark = (measured(strokes, place_of(html, name)) for name in ("0 L", "65 L"))
    assert (zero.y0_mm - mark.y0_mm) * shrunk == pytest.approx(65 / 0.45, abs=CLOSE_MM)


def test_something_far_too_wide_does_not_shrink_the_page(paper: Page, tmp_path: Path) -> None:
    html = sheet_file(body("machine_card"))
    place = place_of(html, "100 mm")
    wide = html.replace("</svg>", "</svg><div style='width:900mm;height:2px'>x</div>", 1)
    file = printed(paper, wide, tmp_path / "card.pdf")
    assert measured(strokes_of(file), place).length_mm == pytest.approx(100, abs=CLOSE_MM)
    assert len(pages_of(file)) == 1


@pytest.mark.parametrize("paper_name", PAPERS)
@pytest.mark.parametrize(
    "address", ["https://depot.example/pailwright/", "https://depot.example/" + "a" * 97]
)
def test_the_printed_square_code_is_scanned(
    paper: Page, tmp_path: Path, paper_name: str, address: str
) -> None:
    asked = body("machine_card", paper=paper_name, address=address)
    file = printed(paper, sheet_file(asked), tmp_path / "card.pdf")
    for dots_per_inch in (100, 200):
        (found,) = zxingcpp.read_barcodes(picture_of(file, 0, dots_per_inch))
        assert found.text == f"{address}#m=7K3F4"


@pytest.mark.parametrize("paper_name", PAPERS)
@pytest.mark.parametrize("name", HOSTILE.values(), ids=HOSTILE)
@pytest.mark.parametrize("kind", KINDS)
def test_texts_stay_on_the_page_and_apart(
    paper: Page, kind: str, paper_name: str, name: str
) -> None:
    machine = {**changed("name", name), "fluid": {**WHEEL_LATHE["fluid"], "name": name}}
    html = sheet_file(body(kind, paper=paper_name, machine=machine))
    paper.set_content(html)
    assert "script" not in paper.title()
    for page in paper.evaluate(BOXES):
        assert len(page) > 5
        for text, left, top, wide, high, page_wide, page_high in page:
            assert left >= -1, text
            assert left + wide <= page_wide + 1, text
            # The box is as high as the font's tallest sign, more than any here.
            assert top + 0.2 * high >= 0, text
            assert top + 0.8 * high <= page_high, text
        assert overlaps(page) == []


def overlaps(boxes: list[list[Any]]) -> list[tuple[str, str]]:
    """Pairs of texts whose inner parts lie on each other."""
    inner = [
        (text, left + 0.5, top + 0.28 * high, left + wide - 0.5, top + 0.76 * high)
        for text, left, top, wide, high, *_ in boxes
        if wide < high * 40
    ]
    return [
        (a[0], b[0])
        for i, a in enumerate(inner)
        for b in inner[i + 1 :]
        if a[1] < b[3] and b[1] < a[3] and a[2] < b[4] and b[2] < a[4]
    ]


def test_texts_on_each_other_would_be_seen(paper: Page) -> None:
    html = sheet_file(body("machine_card"))
    heights = {word: re.findall(rf'y="([0-9.]+)"[^>]*>{word}<', html)[0] for word in WORDS}
    moved = re.sub(rf'y="{heights["Target"]}"([^>]*>Target<)', rf'y="{heights["Factor"]}"\1', html)
    paper.set_content(moved)
    assert overlaps(paper.evaluate(BOXES)[0]) == [("Target", "Factor")]
