"""Where the keys lie: read from the real pages in a browser at 360 x 640."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from playwright.sync_api import Page, expect

from tests.browser.phone import heading
from tests.browser.walk import field, next_page, open_machine, start_check

# A phone of 360 x 640 CSS px at 160 px an inch: 57 x 102 mm, on which 60 px are 9.5 mm.
PX_PER_MM = 160 / 25.4
_SEEN = """
() => [...document.querySelectorAll("button, a, input, summary")]
  .filter((one) => one.getClientRects().length > 0)
  .map((one) => {
    const { x, y, width, height } = one.getBoundingClientRect();
    const name = one.getAttribute("aria-label") ?? one.innerText;
    return { name: name.trim(), x, y, width, height };
  })
"""
KEY_OF = {
    "Decimal sign": ".",
    "Clear": "clear",
    "Delete the last digit": "delete",
    "Continue": "continue",
}


@dataclass(frozen=True)
class Target:
    """Something that can be tapped, in CSS px; ``key`` is empty where it types nothing."""

    key: str
    x: float
    y: float
    width: float
    height: float

    def holds(self, x: float, y: float) -> bool:
        """Whether a tap there meets it."""
        return 0 <= x - self.x < self.width and 0 <= y - self.y < self.height

    @property
    def middle(self) -> tuple[float, float]:
        """Where a person aims."""
        return self.x + self.width / 2, self.y + self.height / 2


@dataclass(frozen=True)
class Pages:
    """What can be tapped on the pages that ask for dip and reading."""

    dip: Sequence[Target]
    reading: Sequence[Target]


def _targets(page: Page) -> list[Target]:
    found = []
    for one in page.evaluate(_SEEN):
        name = one.pop("name")
        key = KEY_OF.get(name, name if name.isdigit() and len(name) == 1 else "")
        found.append(Target(key, **one))
    return found


def read_pages(page: Page) -> Pages:
    """From the list of a phone with one machine to both pages; the fields are empty."""
    open_machine(page)
    start_check(page)
    expect(field(page, "How deep")).to_be_visible()
    dip = _targets(page)
    field(page, "How deep").fill("342")
    next_page(page)
    page.get_by_role("button", name="Hard floor").click()
    expect(heading(page)).to_have_text("What does the reading say?")
    return Pages(dip, _targets(page))
