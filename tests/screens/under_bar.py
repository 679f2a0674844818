"""What stands half under the bar with the main action, on first sight and where the keys lead."""

from __future__ import annotations

from typing import Any

from playwright.sync_api import Page

from tests.screens.measure import LEAST_PX, TARGETS

_BAR_TOP = """
(alsoScrolled) => {
  if (scrollY > 0 && !alsoScrolled) return null;
  const bar = document.querySelector(".actions-stay");
  const isOver = bar !== null && getComputedStyle(bar).position === "sticky";
  return isOver ? bar.getBoundingClientRect().top : null;
}
"""
# One frame for the scroll that the focus causes, others for what follows it.
FRAMES = """
() => new Promise((done) => requestAnimationFrame(() => requestAnimationFrame(() =>
  requestAnimationFrame(done))))
"""


def half_under(page: Page, *, also_scrolled: bool = False) -> list[str]:
    """Targets of which some is seen above the bar, but less than a target has to be.

    Of a page as it is first seen: where somebody has scrolled, nothing moves under the finger.
    """
    top = page.evaluate(_BAR_TOP, also_scrolled)
    if top is None:
        return []
    targets: list[dict[str, Any]] = page.evaluate(TARGETS)
    return [
        f"half under the bar: {one['name']}, {top - one['y']:.0f} of {one['height']:.0f} px seen"
        for one in targets
        if one["y"] < top - 1 and one["y"] + one["height"] > top + 1
        if top - one["y"] < LEAST_PX - 1
    ]


def half_under_by_keys(page: Page) -> list[str]:
    """The same after each press of Tab, from the top of the page to its end and back."""
    page.evaluate("() => { document.activeElement.blur(); scrollTo(0, 0); }")
    found = []
    for key in ("Tab", "Shift+Tab"):
        for _ in page.evaluate(TARGETS):
            page.keyboard.press(key)
            page.evaluate(FRAMES)
            found += [f"{key}: {one}" for one in half_under(page, also_scrolled=True)]
    page.evaluate("() => { document.activeElement.blur(); scrollTo(0, 0); }")
    return found
