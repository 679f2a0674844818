"""The factor found with own jugs: typed, refused, undone, resumed, used, kept."""

import pytest
from playwright.sync_api import Page, expect

from tests.browser.fluid import fill_jugs, to_jugs
from tests.browser.phone import heading
from tests.browser.setup.test_record import machine_of
from tests.browser.setup.test_wrong_input import WRONG, assert_refused
from tests.browser.walk import field, next_page, open_group, open_machine, press

pytestmark = pytest.mark.usefixtures("machine_on_phone")

# Read a hair off a factor of 1.5: 3 % reads 2.0, 6 % 4.0, 9 % 6.0 Brix.
GOOD = [("970", "30", "2.0"), ("940", "60", "4.1"), ("910", "90", "6.0")]


def at_jugs(page: Page) -> None:
    """A fresh machine, and its jugs."""
    open_machine(page)
    open_group(page, "factor")
    to_jugs(page)


def test_factor_found_and_used(page: Page) -> None:
    at_jugs(page)
    fill_jugs(page, GOOD)
    next_page(page)
    expect(page.get_by_text("Jug 2 reads 0.07 Brix too high.")).to_be_visible()
    expect(page.get_by_text("Likely between")).to_be_visible()
    press(page, "Use this factor")
    expect(heading(page)).to_have_text("How does the sheet give the factor?")
    expect(page.get_by_role("radio", name="Multiply the reading")).to_be_checked()
    found = field(page, "Multiply the reading by").input_value()
    assert 1.45 < float(found) < 1.52
    next_page(page)
    expect(heading(page)).to_have_text("Is the set-up right?")
    expect(page.get_by_text("Own test with a known mix")).to_be_visible()
    next_page(page, "Save the machine")
    fluid = machine_of(page)["fluid"]
    assert fluid["factor"]["text"] == found
    assert fluid["factor_known_by"] == "own_jugs"
    assert float(fluid["factor_u"]["text"]) > 0
    assert len(fluid["factor_on"]) == len("2026-11-25")
    # Typed over by hand it is another factor, and what belonged to the jugs goes.
    open_group(page, "factor")
    field(page, "Multiply the reading by").fill("1.5")
    next_page(page)
    next_page(page, "Save the machine")
    fluid = machine_of(page)["fluid"]
    assert "factor_u" not in fluid
    assert "factor_on" not in fluid


def test_wrong_input_in_every_cell(page: Page) -> None:
    at_jugs(page)
    press(page, "Continue")
    expect(page.get_by_role("alert").first).to_contain_text("in jug 1")
    fill_jugs(page, GOOD[:2])
    for name in ("Water in jug 2", "Concentrate in jug 2", "Reading of jug 2"):
        kept = field(page, name).input_value()
        for text in ["", *WRONG]:
            assert_refused(page, name, text)
        field(page, name).fill(kept)
    # Thicker than any coolant.
    assert_refused(page, "Concentrate in jug 2", "940")


def test_added_taken_out_undone_and_resumed(page: Page) -> None:
    at_jugs(page)
    expect(page.get_by_role("button", name="Take out")).to_have_count(0)
    fill_jugs(page, GOOD)
    page.get_by_role("button", name="Take out jug 2").click()
    expect(field(page, "Water in jug 2")).to_have_value("910")
    page.reload()
    expect(field(page, "Water in jug 2")).to_have_value("910")
    press(page, "Undo: jugs as before")
    expect(field(page, "Water in jug 2")).to_have_value("940")
    expect(field(page, "Reading of jug 3")).to_have_value("6.0")
    press(page, "Add a jug")
    expect(field(page, "Water in jug 4")).to_be_visible()
    # A second press within a second counts as the same one.
    page.wait_for_timeout(1_100)
    press(page, "Add a jug")
    expect(page.get_by_role("button", name="Add a jug")).to_have_count(0)


@pytest.mark.parametrize("answer", ["Keep", "Change the jugs"])
def test_doubts_are_asked_once_each(page: Page, answer: str) -> None:
    at_jugs(page)
    fill_jugs(page, [GOOD[0], ("940", "60", "6.0"), GOOD[2]])
    press(page, "Continue")
    doubt = page.get_by_role("region", name="Is that right?")
    expect(doubt).to_be_visible()
    page.get_by_role("button", name=answer).first.click()
    if answer == "Change the jugs":
        expect(field(page, "Reading of jug 2")).to_have_value("6.0")
        return
    for _ in range(3):
        shown = page.get_by_text("Likely between")
        expect(doubt.or_(shown).first).to_be_visible()
        if shown.count():
            break
        page.get_by_role("button", name="Keep").click()
    expect(page.get_by_text("Jug 2 reads")).to_contain_text("too high")
