"""A state is understood on a black-and-white print: by its word and its shape, never by its hue."""

import io

import pytest
from PIL import Image, ImageChops
from playwright.sync_api import Page, expect

from tests.browser.phone import PICTURES, Phone, Theme, heading
from tests.browser.server import Server
from tests.browser.walk import field, next_page, open_machine, start_check

# Readings of 6.0, 7.95 and 12 per cent in a band of 7 to 9.
STATES = {"4.0": "Too weak", "5.3": "In range", "8.0": "Too strong"}
# Of all points of a mark, those that differ between two states.
LEAST_SHARE = 0.1
ZOOM = 8


def _black_and_white(page: Page, state: str, theme: str) -> Image.Image:
    """The mark's shape as a printer without grey prints it."""
    shot = page.locator(".state-shape:visible").first.screenshot()
    grey = Image.open(io.BytesIO(shot)).convert("L").resize((28 * ZOOM, 28 * ZOOM))
    low, high = grey.getextrema()
    # Drawn lines must stand out from the ground at all.
    assert isinstance(low, int)
    assert isinstance(high, int)
    assert high - low > 100, f"{state}: only {low} to {high}"
    middle = (low + high) // 2
    black = grey.point(lambda value: 255 if value > middle else 0)
    black.save(PICTURES / f"grey-{theme}-{state.replace(' ', '-').lower()}.png")
    return black


@pytest.mark.usefixtures("machine_on_phone")
@pytest.mark.parametrize("theme", ["light", "dark"])
def test_shapes_and_words_differ_without_colour(phone: Phone, server: Server, theme: Theme) -> None:
    page = phone.start(theme)
    page.goto(server.address)
    PICTURES.mkdir(parents=True, exist_ok=True)
    open_machine(page)
    start_check(page)
    field(page, "How deep").fill("342")
    next_page(page)
    page.get_by_role("button", name="Hard floor").click()
    expect(heading(page)).to_have_text("What does the reading say?")
    marks = {}
    for reading, word in STATES.items():
        field(page, "What does the reading").fill(reading)
        expect(page.get_by_role("main")).to_contain_text(word)
        page.wait_for_timeout(400)
        marks[word] = _black_and_white(page, word, theme)
    words = list(marks)
    for i, one in enumerate(words):
        for other in words[i + 1 :]:
            histogram = ImageChops.difference(marks[one], marks[other]).histogram()
            share = histogram[255] / sum(histogram)
            print(f"{theme} {one} / {other}: {share:.0%} of the mark differs in black and white")
            assert share > LEAST_SHARE
