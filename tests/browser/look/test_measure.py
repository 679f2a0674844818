"""What is measured beside the pictures of every screen is found where it is wrong."""

import pytest

from tests.browser.phone import Phone
from tests.screens.measure import faint, measured

PAGE = """<!doctype html><html lang="en"><title>Tank</title><main><h1>Tank</h1>
<p style="color: {color}; background: #fff">Fill 8{space}L of water</p>
<button style="width: {px}px; height: 60px">Add</button></main>"""


@pytest.mark.parametrize(
    ("color", "space", "px", "found"),
    [
        ("#14171c", "\u00a0", 60, []),
        ("#14171c", " ", 59, ["may part: '8 L'", "small: Add 59 x 60"]),
    ],
)
def test_numbers_and_targets(
    phone: Phone, color: str, space: str, px: int, found: list[str]
) -> None:
    page = phone.start()
    page.set_content(PAGE.format(color=color, space=space, px=px))
    assert measured(page) == found
    assert faint(page) == []
    page.set_content(PAGE.format(color="#767676", space=space, px=px))
    assert len(faint(page)) == 1
