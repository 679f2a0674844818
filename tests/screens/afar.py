"""How large and how clear a text is for an eye at a distance and in daylight, from its picture.

Assumed: a phone of 160 CSS px an inch, a screen of 500 cd/m2 that throws back 4.5 % of the light
evenly. Whether a person reads it also depends on the person, on oil on the glass and on the hurry.
"""

from __future__ import annotations

import io
import math
from dataclasses import dataclass

from PIL import Image
from playwright.sync_api import Locator

MM_PER_PX = 25.4 / 160
SCREEN_CD_M2, THROWN_BACK = 500.0, 0.045
# An eye of 6/6 reads a letter of 5' (ISO 8596, from memory).
LETTER_OF_FULL_SIGHT_ARCMIN = 5.0


@dataclass(frozen=True)
class Seen:
    """Height of the ink in minutes of arc, and luminances of a white of 1."""

    arcmin: float
    ink: float
    ground: float

    def ratio(self, lux: float) -> float:
        """Contrast with so much light on the glass, as WCAG counts it where there is none."""
        extra = lux * THROWN_BACK / math.pi / SCREEN_CD_M2 if lux else 0.05
        low, high = sorted((self.ink, self.ground))
        return (high + extra) / (low + extra)

    @property
    def acuity(self) -> float:
        """The least acuity (1 is 6/6) whose letter is as high."""
        return LETTER_OF_FULL_SIGHT_ARCMIN / self.arcmin


def _luminance(colour: tuple[int, ...]) -> float:
    shares = [part / 255 for part in colour]
    linear = [one / 12.92 if one <= 0.04045 else ((one + 0.055) / 1.055) ** 2.4 for one in shares]
    return 0.2126 * linear[0] + 0.7152 * linear[1] + 0.0722 * linear[2]


def seen(text: Locator, distance_mm: float = 1000.0) -> Seen:
    """The commonest colour is the ground, the one furthest from it the ink."""
    picture = Image.open(io.BytesIO(text.screenshot())).convert("RGB")
    colours = picture.getcolors(picture.width * picture.height)
    assert colours is not None
    ground = max(colours)[1]
    assert isinstance(ground, tuple)
    light = {colour: _luminance(colour) for _, colour in colours if isinstance(colour, tuple)}
    ink = max(light.values(), key=lambda one: abs(one - light[ground]))
    middle = (ink + light[ground]) / 2
    is_dark = ink < middle
    rows = []
    for y in range(picture.height):
        line = [light[picture.getpixel((x, y))] for x in range(picture.width)]  # type: ignore[index]
        if any((one < middle) == is_dark for one in line):
            rows.append(y)
    height_mm = (rows[-1] - rows[0] + 1) * MM_PER_PX
    return Seen(math.degrees(math.atan(height_mm / distance_mm)) * 60, ink, light[ground])
