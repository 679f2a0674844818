"""The pages about printing and codes in both themes: a picture, axe, no sideways scrolling."""

import pytest
from playwright.sync_api import Page, expect

from tests.browser.looking import Look
from tests.browser.phone import Phone, Theme, heading
from tests.browser.server import Server
from tests.browser.walk import check_until_recipe, field, leave, on_machine, press

pytestmark = pytest.mark.usefixtures("machine_on_phone")


def back(page: Page) -> None:
    """The button at the top left."""
    before = heading(page).inner_text()
    page.get_by_role("button", name="Back").click()
    expect(heading(page)).not_to_have_text(before)


def look_at_sheet(page: Page, look: Look, name: str) -> None:
    """From the choice of sheets to one of them and back."""
    page.get_by_role("link", name=name).click()
    expect(page.locator(".sheet svg").first).to_be_visible()
    look(page)
    back(page)


def look_at_bucket(page: Page, look: Look) -> None:
    """The bucket's page with a fault, with a doubt, and the scale."""
    page.get_by_role("link", name="Bucket scale").click()
    expect(heading(page)).to_have_text("Which bucket is it?")
    press(page, "Continue")
    expect(page.get_by_role("alert").first).to_be_visible()
    look(page)
    for name, text in (("at the floor", "240"), ("at the brim", "280"), ("height", "290")):
        field(page, name).fill(text)
    press(page, "Continue")
    expect(page.locator(".sheet svg").first).to_be_visible()
    look(page)
    back(page)


@pytest.mark.parametrize("theme", ["light", "dark"])
def test_pages_about_printing(phone: Phone, server: Server, theme: Theme) -> None:
    page = on_machine(phone, server, theme)
    look = Look(f"{theme}-print")
    leave(page, page.get_by_role("link", name="Print for this machine"))
    look(page)
    for name in ("Dip scale", "Machine card", "Empty log sheet"):
        look_at_sheet(page, look, name)
    look_at_bucket(page, look)
    page.get_by_role("link", name="Dip scale").click()
    page.get_by_role("link", name="How long is the line?").click()
    field(page, "Length of the 100\N{NO-BREAK SPACE}mm line").fill("70")
    press(page, "Continue")
    expect(page.get_by_role("alert")).to_be_visible()
    look(page)
    field(page, "Length of the 100\N{NO-BREAK SPACE}mm line").fill("97")
    press(page, "Continue")
    expect(page.get_by_role("button", name="Forget this length")).to_be_visible()
    # Another look at a page of the same name, now with a correction.
    corrected = Look(f"{theme}-corrected")
    expect(page.locator(".sheet svg").first).to_be_visible()
    corrected(page)
    assert len(look.seen) == 7
    assert look.wrong + corrected.wrong == []


@pytest.mark.parametrize("theme", ["light", "dark"])
def test_pages_about_codes_and_slips(phone: Phone, server: Server, theme: Theme) -> None:
    page = on_machine(phone, server, theme)
    look = Look(f"{theme}-code")
    page.get_by_role("link", name="Give it a short code").click()
    expect(page.get_by_text("on any phone that has it")).to_be_visible()
    look(page)
    back(page)
    look(page)
    check_until_recipe(page)
    press(page, "Save to the log")
    page.get_by_role("link", name="Print this recipe").click()
    expect(page.locator(".sheet svg").first).to_be_visible()
    look(page)
    back(page)
    press(page, "Back to the machines")
    expect(heading(page)).to_have_text("Machines")
    look(page)
    page.get_by_role("link", name="Type a code").click()
    field(page, "Code on the label").fill("22222")
    press(page, "Open the machine")
    expect(page.get_by_text("No machine has the code")).to_be_visible()
    look(page)
    field(page, "Code on the label").fill("1K3F4")
    press(page, "Open the machine")
    expect(page.get_by_role("alert")).to_be_visible()
    alike = Look(f"{theme}-alike")
    alike(page)
    assert len(look.seen) == 5
    assert look.wrong + alike.wrong == []
