"""From a machine's page to the paper: what comes out of the printer is as long as it says."""

from pathlib import Path

import pytest
import zxingcpp
from playwright.sync_api import Page, expect

from tests.browser.phone import Phone, heading
from tests.browser.server import Server
from tests.browser.sheets.paper import (
    CLOSE_MM,
    measured,
    pages_of,
    picture_of,
    place_of,
    strokes_of,
)
from tests.browser.walk import (
    check_until_recipe,
    field,
    next_page,
    open_machine,
    press,
    set_up_machine,
)

PAPERS = {"A4": (210.0, 297.0), "Letter": (215.9, 279.4)}
# A headless browser has no print window: this one is closed at once.
PRINT_AT_ONCE = """
window.print = () => {
  const noted = document.documentElement.dataset;
  noted.prints = Number(noted.prints || 0) + 1;
  window.dispatchEvent(new Event("afterprint"));
};
"""
AS_FILE = "svg => new XMLSerializer().serializeToString(svg)"


@pytest.fixture
def page(phone: Phone, server: Server) -> Page:
    """A phone with one machine, at its page."""
    opened = phone.start()
    opened.context.add_init_script(PRINT_AT_ONCE)
    opened.goto(server.address)
    open_machine(opened)
    return opened


def open_sheet(page: Page, name: str, paper: str = "A4") -> None:
    """From the machine's page to a drawn sheet on this paper."""
    page.get_by_role("link", name="Print for this machine").click()
    page.get_by_role("link", name=name).click()
    page.get_by_role("combobox", name="Paper").select_option(paper)
    expect(page.get_by_role("img", name=f"{name} as it will be printed")).to_be_visible()


@pytest.mark.usefixtures("machine_on_phone")
def test_card_tells_the_circuit_and_since_when_the_tank_is_measured(page: Page) -> None:
    open_sheet(page, "Machine card")
    today = page.evaluate("new Intl.DateTimeFormat('en-CA').format(new Date())")
    assert today in drawing(page)
    box = field(page, "Whole circuit")
    box.fill("1e3")
    expect(page.get_by_role("alert").first).to_contain_text("must be a number")
    expect(box).to_have_value("1e3")
    box.fill("260")
    expect(page.locator(".sheet text", has_text="260")).to_be_visible()
    page.reload()
    expect(field(page, "Whole circuit")).to_have_value("260")


def drawing(page: Page) -> str:
    """The first page of the sheet as it stands in the document."""
    return str(page.locator(".sheet svg").first.evaluate(AS_FILE))


def paper_file(page: Page, path: Path) -> Path:
    """What the browser's print window would print."""
    page.pdf(path=path, prefer_css_page_size=True, print_background=True)
    return path


@pytest.mark.usefixtures("machine_on_phone")
@pytest.mark.parametrize("paper", PAPERS)
def test_the_dip_scale_comes_out_in_true_millimetres(
    page: Page, tmp_path: Path, paper: str
) -> None:
    open_sheet(page, "Dip scale", paper)
    press(page, "Print")
    assert page.evaluate("document.documentElement.dataset.prints") == "1"
    file = paper_file(page, tmp_path / "scale.pdf")
    sheets = page.locator(".sheet svg").count()
    assert len(pages_of(file)) == sheets
    for size in pages_of(file):
        assert size == pytest.approx(PAPERS[paper], abs=0.3)
    svg, strokes = drawing(page), strokes_of(file)
    for name, length_mm in (("100 mm", 100.0), ("4 in", 101.6)):
        line = measured(strokes, place_of(svg, name))
        assert line.length_mm == pytest.approx(length_mm, abs=CLOSE_MM)
    zero = measured(strokes, place_of(svg, "0 L"))
    # By hand: 198 L at 440 mm is 0.45 L for a millimetre.
    for volume_l in (20, 65, 110):
        mark = measured(strokes, place_of(svg, f"{volume_l} L"))
        assert zero.y0_mm - mark.y0_mm == pytest.approx(volume_l / 0.45, abs=CLOSE_MM)


@pytest.mark.usefixtures("machine_on_phone")
def test_only_the_sheet_is_printed_also_in_the_dark(
    phone: Phone, server: Server, tmp_path: Path
) -> None:
    page = phone.start("dark")
    page.goto(server.address)
    open_machine(page)
    open_sheet(page, "Empty log sheet", "Letter")
    file = paper_file(page, tmp_path / "log.pdf")
    wide, high = PAPERS["Letter"]
    assert pages_of(file) == [pytest.approx((high, wide), abs=0.3)]
    picture = picture_of(file).convert("L")
    # Ground, and the place where the app's bar would be.
    for place in ((5, 5), (picture.width - 5, 5), (5, picture.height - 5)):
        assert picture.getpixel(place) == 255
    texts = page.locator(".sheet text").all_text_contents()
    assert "Coolant log" in texts
    line = measured(strokes_of(file), place_of(drawing(page), "100 mm"))
    assert line.length_mm == pytest.approx(100, abs=CLOSE_MM)


@pytest.mark.usefixtures("machine_on_phone")
def test_a_printer_that_shrinks_is_asked_about_and_made_up_for(page: Page, tmp_path: Path) -> None:
    open_sheet(page, "Dip scale")
    press(page, "Print")
    expect(
        page.get_by_role("heading", name="Now measure the 100\N{NO-BREAK SPACE}mm line")
    ).to_be_visible()
    page.get_by_role("link", name="How long is the line?").click()
    field(page, "Length of the 100\N{NO-BREAK SPACE}mm line").fill("70")
    press(page, "Continue")
    refused = page.get_by_role("alert")
    expect(refused).to_contain_text("between 90 mm and 110 mm")
    expect(refused).to_contain_text("Turn that off and print again")
    field(page, "Length of the 100\N{NO-BREAK SPACE}mm line").fill("97")
    next_page(page)
    expect(heading(page)).to_have_text("Dip scale")
    expect(page.get_by_text("your line came out 97 mm long on A4")).to_be_visible()
    expect(page.locator(".sheet svg").first).to_be_visible()
    file = paper_file(page, tmp_path / "scale.pdf")
    line = measured(strokes_of(file), place_of(drawing(page), "100 mm"))
    assert line.length_mm * 0.97 == pytest.approx(100, abs=CLOSE_MM)
    # Only of this paper, kept over a new start, and forgotten when asked to.
    page.reload()
    page.get_by_role("combobox", name="Paper").select_option("Letter")
    expect(page.get_by_role("link", name="How long is the line?")).to_be_visible()
    page.get_by_role("combobox", name="Paper").select_option("A4")
    press(page, "Forget this length")
    expect(page.get_by_role("link", name="How long is the line?")).to_be_visible()


@pytest.mark.usefixtures("machine_on_phone")
def test_a_true_printer_is_not_corrected(page: Page, tmp_path: Path) -> None:
    open_sheet(page, "Dip scale")
    page.get_by_role("link", name="How long is the line?").click()
    field(page, "Length of the 100\N{NO-BREAK SPACE}mm line").fill("99.5")
    next_page(page)
    expect(page.get_by_text("nothing is corrected")).to_be_visible()
    expect(page.locator(".sheet svg").first).to_be_visible()
    file = paper_file(page, tmp_path / "scale.pdf")
    line = measured(strokes_of(file), place_of(drawing(page), "100 mm"))
    assert line.length_mm == pytest.approx(100, abs=CLOSE_MM)


@pytest.mark.usefixtures("machine_on_phone")
def test_the_bucket_scale_asks_for_the_bucket_first(page: Page, tmp_path: Path) -> None:
    page.get_by_role("link", name="Print for this machine").click()
    # By its address it was a page with a key that could not be pressed, and no word why.
    page.evaluate("() => { location.hash += '/bucket_scale'; }")
    expect(heading(page)).to_have_text("Which bucket is it?")
    page.get_by_role("button", name="Back").click()
    page.get_by_role("link", name="Bucket scale").click()
    expect(heading(page)).to_have_text("Which bucket is it?")
    press(page, "Continue")
    expect(page.get_by_role("alert").first).to_contain_text("Enter the diameter at the floor")
    page.get_by_role("radio", name="By two fills").check(force=True)
    for name, text in (
        ("Depth of the lower", "92"),
        ("Volume of the lower", "4"),
        ("Depth of the higher", "80"),
        ("Volume of the higher", "10"),
    ):
        field(page, name).fill(text)
    press(page, "Continue")
    expect(page.get_by_role("alert").first).to_contain_text("epth of the fill")
    field(page, "Depth of the higher").fill("214")
    next_page(page)
    expect(heading(page)).to_have_text("Bucket scale")
    expect(page.locator(".sheet svg").first).to_be_visible()
    file = paper_file(page, tmp_path / "bucket.pdf")
    line = measured(strokes_of(file), place_of(drawing(page), "100 mm"))
    assert line.length_mm == pytest.approx(100, abs=CLOSE_MM)
    page.get_by_role("link", name="Change the measures of the bucket").click()
    expect(field(page, "Depth of the higher")).to_have_value("214")
    next_page(page)
    expect(heading(page)).to_have_text("Bucket scale")
    # Kept with the machine: the next time it is drawn at once.
    page.get_by_role("button", name="Back").click()
    page.get_by_role("link", name="Bucket scale").click()
    expect(page.locator(".sheet svg").first).to_be_visible()


@pytest.mark.usefixtures("machine_on_phone")
def test_the_card_carries_a_code_that_opens_the_machine(
    page: Page, server: Server, tmp_path: Path
) -> None:
    open_sheet(page, "Machine card")
    file = paper_file(page, tmp_path / "card.pdf")
    (found,) = zxingcpp.read_barcodes(picture_of(file, 0, 200))
    assert found.text.startswith(f"{server.address}#m=")
    page.goto("about:blank")
    page.goto(found.text)
    expect(heading(page)).to_have_text("Wheel lathe")
    code = found.text.split("=")[1]
    expect(page.get_by_text(f"Code {code[:4]}-{code[4:]}")).to_be_visible()


def test_a_name_of_signs_stays_a_name(phone: Phone, server: Server) -> None:
    page = phone.start()
    page.goto(server.address)
    name = "<b onload='x'>&amp;\"5 < 6\"</b>"
    set_up_machine(page, {"Name of the machine": name})
    open_sheet(page, "Empty log sheet")
    assert name in page.locator(".sheet text").all_text_contents()
    assert page.locator(".sheet b").count() == 0


@pytest.mark.usefixtures("machine_on_phone")
def test_a_saved_recipe_goes_on_a_slip(page: Page, tmp_path: Path) -> None:
    check_until_recipe(page)
    press(page, "Save to the log")
    expect(heading(page)).to_have_text("Saved to the log")
    page.get_by_role("link", name="Print this recipe").click()
    expect(page.locator(".sheet svg").first).to_be_visible()
    texts = " ".join(page.locator(".sheet text").all_text_contents())
    assert "Wheel lathe" in texts
    assert "Dip 342\u00a0mm." in texts
    assert "Reading 4.0\u00a0Brix." in texts
    assert len(pages_of(paper_file(page, tmp_path / "slip.pdf"))) == 1
    page.get_by_role("button", name="Back").click()
    next_page(page, "Back to the machines")
    page.get_by_role("link", name="Open the log").click()
    page.get_by_role("main").get_by_role("link", name="Dip 342").first.click()
    expect(page.get_by_role("link", name="Print this recipe")).to_be_visible()
    # Taken back, it could still be printed as if it held.
    slip = page.url + "/slip"
    page.get_by_role("link", name="Take this entry back").click()
    page.get_by_text("Only practice").click()
    next_page(page, "Take it back")
    expect(heading(page)).to_have_text("Saved to the log")
    page.get_by_role("link", name="Open this entry").click()
    expect(page.get_by_role("heading", name="Taken back")).to_be_visible()
    expect(page.get_by_role("link", name="Print this recipe")).to_have_count(0)
    page.goto(slip)
    expect(page.locator(".sheet svg")).to_have_count(0)
