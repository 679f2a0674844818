"""The focus is seen at every stop of the keys: enough points around it change, and clearly."""

import io

import pytest
from PIL import Image, ImageChops
from playwright.sync_api import FloatRect, Page, expect

from tests.browser.phone import PHONE_SIZE, Phone, Theme, heading
from tests.browser.server import Server
from tests.browser.walk import check_until_recipe, open_machine

# WCAG 2.2, 2.4.13: a ring of 2 px around the control, 3:1 against what was there before.
RING_PX, LEAST_RATIO = 2, 3.0
AROUND_PX = 10
PLACES = ("", "/dip", "/reading", "/target", "/answers", "/recipe", "/all")
_FRAMES = """
() => new Promise((done) => requestAnimationFrame(() => requestAnimationFrame(() =>
  requestAnimationFrame(done))))
"""
# Radio buttons and ticks are drawn on the row that labels them; others are laid over their part.
_FOCUSED = """
() => {
  const one = document.activeElement;
  if (one === document.body) return null;
  const after = getComputedStyle(one, "::after");
  const isOver = after.content !== "none" && after.position === "absolute" &&
    getComputedStyle(one).position === "static";
  const seen = isOver ? one.offsetParent : (one.closest("label") ?? one);
  const { x, y, width, height } = seen.getBoundingClientRect();
  const name = one.getAttribute("aria-label") ?? one.innerText;
  return { name, x, y, width, height };
}
"""


def _light(picture: Image.Image) -> list[float]:
    def one(part: int) -> float:
        share = part / 255
        return share / 12.92 if share <= 0.04045 else ((share + 0.055) / 1.055) ** 2.4

    table = [one(part) for part in range(256)]
    data = picture.tobytes()
    return [
        0.2126 * table[data[i]] + 0.7152 * table[data[i + 1]] + 0.0722 * table[data[i + 2]]
        for i in range(0, len(data), 3)
    ]


def _picture(page: Page, clip: FloatRect) -> Image.Image:
    shot = page.screenshot(clip=clip, animations="disabled")
    return Image.open(io.BytesIO(shot)).convert("RGB")


def _changed_px(with_focus: Image.Image, without: Image.Image) -> int:
    """Points whose light changes by 3:1 or more."""
    if ImageChops.difference(with_focus, without).getbbox() is None:
        return 0
    pairs = zip(_light(with_focus), _light(without), strict=True)
    ratios = ((max(pair) + 0.05) / (min(pair) + 0.05) for pair in pairs)
    return sum(ratio >= LEAST_RATIO for ratio in ratios)


def _stops(page: Page, place: str) -> list[str]:
    """Tab from the top to the end; what is too faint at each stop."""
    found, seen = [], list[str]()
    while len(seen) < 60:
        page.keyboard.press("Tab")
        page.evaluate(_FRAMES)
        box = page.evaluate(_FOCUSED)
        if box is None:
            break
        name = box.pop("name")
        seen.append(name)
        left, top = max(0, box["x"] - AROUND_PX), max(0, box["y"] - AROUND_PX)
        right = min(PHONE_SIZE[0], box["x"] + box["width"] + AROUND_PX)
        bottom = min(PHONE_SIZE[1], box["y"] + box["height"] + AROUND_PX)
        clip: FloatRect = {"x": left, "y": top, "width": right - left, "height": bottom - top}
        with_focus = _picture(page, clip)
        # Only the ring goes: the page stays where the focus has brought it.
        page.evaluate("() => { window.had = document.activeElement; window.had.blur(); }")
        without = _picture(page, clip)
        page.evaluate("() => window.had.focus({ preventScroll: true, focusVisible: true })")
        least = RING_PX * 2 * (box["width"] + box["height"])
        changed = _changed_px(with_focus, without)
        if changed < least:
            found.append(f"{place} {name!r}: {changed} of {least:.0f} px change by 3:1")
    print(f"{place or 'machine'}: {len(seen)} stops")
    assert seen
    return found


@pytest.mark.usefixtures("machine_on_phone")
@pytest.mark.parametrize("theme", ["light", "dark"])
def test_focus_is_seen_at_every_stop(phone: Phone, server: Server, theme: Theme) -> None:
    page = phone.start(theme)
    page.goto(server.address)
    open_machine(page)
    machine = page.url.split("#")[1]
    check_until_recipe(page)
    found = []
    for place in PLACES:
        page.evaluate("(place) => { location.hash = place; }", f"#{machine}{place}")
        expect(heading(page)).to_be_visible()
        page.wait_for_timeout(800)
        found += _stops(page, place)
    print("\n".join(found))
    assert found == []
