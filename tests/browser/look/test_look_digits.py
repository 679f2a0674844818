"""Every digit of a long number is seen: a hidden one makes another number of it."""

import pytest
from playwright.sync_api import Locator, Page, expect

from tests.browser.looking import Look
from tests.browser.phone import Phone, heading
from tests.browser.server import Server
from tests.browser.walk import field, next_page, on_machine, press

pytestmark = pytest.mark.usefixtures("machine_on_phone")

LONG = ("12.75", "1250.5", "104.25")
# How far a word of a drawing reaches beyond its edge.
BEYOND = """text => text.getBoundingClientRect().right
    - text.ownerSVGElement.getBoundingClientRect().right"""
SIZES = {"upright": (360, 640), "across": (640, 360)}


def hidden_px(box: Locator) -> float:
    """How much of a field's text lies beyond its edge."""
    wide: float = box.evaluate("box => box.scrollWidth - box.clientWidth")
    return wide


def text_size(page: Page, word: str) -> None:
    """Chooses a size of the text in the settings, and comes back."""
    was = page.evaluate("location.hash")
    page.evaluate("() => { location.hash = '#/settings'; }")
    expect(heading(page)).to_have_text("Settings")
    page.get_by_role("radiogroup", name="Size of the text").get_by_text(word, exact=True).click()
    page.evaluate("was => { location.hash = was; }", was)


@pytest.mark.parametrize("held", SIZES)
@pytest.mark.parametrize("text", ["As the phone has it", "Largest"])
def test_long_numbers_are_seen_whole(phone: Phone, server: Server, held: str, text: str) -> None:
    page = on_machine(phone, server, "light")
    width, height = SIZES[held]
    page.set_viewport_size({"width": width, "height": height})
    text_size(page, text)
    look = Look(f"digits-{held}-{text.split()[0].lower()}")
    hidden = []
    press(page, "Start a check")
    press(page, "Nothing unusual")
    for number in LONG:
        field(page, "How deep").fill(number)
        hidden.append((number, hidden_px(field(page, "How deep"))))
    drawn = page.locator(".dimension-number")
    expect(drawn).to_have_text(LONG[-1])
    hidden.append(("drawn", drawn.evaluate(BEYOND)))
    look(page)
    field(page, "How deep").fill("342")
    next_page(page)
    page.get_by_role("button", name="Hard floor").click()
    for number in LONG:
        field(page, "What does the reading").fill(number)
        hidden.append((number, hidden_px(field(page, "What does the reading"))))
    look(page)
    page.get_by_text("One screen", exact=True).click()
    expect(heading(page)).to_have_text("The check on one screen")
    for name in ("Dip", "Reading"):
        for number in LONG:
            field(page, name).fill(number)
            hidden.append((number, hidden_px(field(page, name))))
    look(page)
    assert [one for one in hidden if one[1] > 0] == []
    assert look.wrong == []
