"""What can be measured on a page while its picture is taken: printed, for a person to judge."""

from __future__ import annotations

from typing import Any

from axe_playwright_python.sync_playwright import Axe
from playwright.sync_api import Page

LEAST_PX = 60
# A number, a space that may break, a unit.
_PARTED = r"""
() => (document.body.innerText.match(
  /\d (?:L|mL|mm|cm|in|ft|kg|%|Brix|°C|US gal|imp gal|min)(?![\w/])/g) ?? [])
"""
# Radio buttons and ticks are as large as the row that labels them; others are laid over their part.
TARGETS = """
() => [...document.querySelectorAll("button, a, input, summary, select")]
  .filter((one) => one.getClientRects().length > 0)
  .map((one) => {
    const after = getComputedStyle(one, "::after");
    const isOver = after.content !== "none" && after.position === "absolute" &&
      getComputedStyle(one).position === "static";
    const met = isOver ? one.offsetParent : (one.closest("label") ?? one);
    const { x, y, width, height } = met.getBoundingClientRect();
    const name = (one.getAttribute("aria-label") || one.innerText || one.name || one.id).trim();
    return { name, x, y, width, height };
  })
"""


def _small(page: Page) -> list[str]:
    return [
        f"{one['name']} {one['width']:.0f} x {one['height']:.0f}"
        for one in page.evaluate(TARGETS)
        if min(one["width"], one["height"]) < LEAST_PX - 0.5
    ]


def measured(page: Page) -> list[str]:
    """Numbers that may part from their unit, small targets, and text under 7:1."""
    wrong = [f"may part: {found!r}" for found in page.evaluate(_PARTED)]
    wrong += [f"small: {found}" for found in _small(page)]
    return wrong


def broken(page: Page) -> list[str]:
    """What axe calls wrong with the page as it stands there, whatever it weighs."""
    found: list[dict[str, Any]] = Axe().run(page).response["violations"]
    return [f"axe {entry['id']}: {entry['nodes'][0]['html'][:90]}" for entry in found]


def faint(page: Page) -> list[str]:
    """Text under 7:1 in the theme that stands there (large text under 4.5:1), by axe."""
    only = {"runOnly": {"type": "rule", "values": ["color-contrast-enhanced"]}}
    found: list[dict[str, Any]] = Axe().run(page, options=only).response["violations"]
    return [f"faint: {node['html'][:90]}" for entry in found for node in entry["nodes"]]
