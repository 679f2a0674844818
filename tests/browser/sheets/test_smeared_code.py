"""The machine card's square code with oil over it, as a phone sees it from 30 cm."""

from pathlib import Path
from typing import Any

import numpy as np
import pytest
import zxingcpp
from PIL import Image, ImageFilter
from playwright.sync_api import Playwright

from tests.browser.sheets.paper import picture_of, printed, sheet_file
from tests.chromium import chromium_path, launch_arguments
from tests.unit.desk.sheets.workshop import body

SEED, TRIES = 20261126, 40
ADDRESS = "https://depot.example/pailwright/"
# A phone with 4,000 px across 60 degrees has 11.5 px a mm at 30 cm. 150 px an inch are 5.9, so that
# half of its sharpness is left over for a shaking hand.
DOTS_PER_INCH = 150
# Radius of the blur: an edge is then as wide as half a module of 0.8 mm.
BLUR_PX = 1.5
# Each of four streaks is a sixth of the code wide. That oily paper gives back three quarters
# of the light is assumed, no source; with little more than half only some looks succeed.
STREAKS, STREAK_SHARE = 4, 1 / 6
OILY, SOAKED = 0.75, 0.55


def smeared(
    picture: Image.Image, box: tuple[int, int, int, int], given_back: float, chance: Any
) -> Image.Image:
    """The picture out of focus, with streaks of oil across the code and the sensor's noise."""
    seen = np.asarray(picture.convert("L").filter(ImageFilter.GaussianBlur(BLUR_PX)), float)
    left, top, right, bottom = box
    size = right - left
    y, x = np.mgrid[0 : seen.shape[0], 0 : seen.shape[1]]
    for _ in range(STREAKS):
        angle, off = chance.uniform(0, np.pi), chance.uniform(-0.5, 0.5) * size
        middle_x, middle_y = (left + right) / 2, (top + bottom) / 2
        across = (x - middle_x) * np.cos(angle) + (y - middle_y) * np.sin(angle) - off
        seen = np.where(np.abs(across) < size * STREAK_SHARE / 2, seen * given_back, seen)
    # A blot that hides a twentieth of the code altogether, anywhere in its lower right quarter,
    # where no finder pattern lies: what covers one of those hides the code from every reader.
    blot_x, blot_y = chance.uniform(0.55, 0.9, 2)
    radius = size * np.sqrt(0.05 / np.pi)
    away = np.hypot(x - left - blot_x * size, y - top - blot_y * size)
    seen = np.where(away < radius, 40, seen)
    noisy = seen + chance.normal(0, 8, seen.shape)
    return Image.fromarray(np.clip(noisy, 0, 255).astype(np.uint8))


@pytest.fixture
def card(playwright: Playwright, tmp_path: Path) -> Image.Image:
    """The printed card as a picture."""
    browser = playwright.chromium.launch(executable_path=chromium_path(), args=launch_arguments)
    asked = body("machine_card", paper="A4", address=ADDRESS)
    file = printed(browser.new_page(), sheet_file(asked), tmp_path / "card.pdf")
    browser.close()
    picture: Image.Image = picture_of(file, 0, DOTS_PER_INCH)
    return picture


def test_the_code_is_read_through_oil(card: Image.Image) -> None:
    (clean,) = zxingcpp.read_barcodes(card)
    at = clean.position
    box = (at.top_left.x, at.top_left.y, at.bottom_right.x, at.bottom_right.y)
    counts = {}
    for given_back in (OILY, SOAKED):
        chance = np.random.default_rng(SEED)
        looks = [smeared(card, box, given_back, chance) for _ in range(TRIES)]
        texts = [found.text for look in looks for found in zxingcpp.read_barcodes(look)]
        # Never another code than the printed one.
        assert set(texts) == {f"{ADDRESS}#m=7K3F4"}
        counts[given_back] = len(texts)
    print(f"of {TRIES} looks read, by the share of light that oily paper gives back: {counts}")
    assert counts[OILY] >= 0.95 * TRIES
    # A camera looks many times a second: one in four is enough to be read at once.
    assert counts[SOAKED] >= TRIES / 4
