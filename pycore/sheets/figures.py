"""Small drawings that the sheets share: sign, level sign, bucket, tank in section."""

from __future__ import annotations

import itertools

from pycore.sheets.letters import size_that_fits_mm
from pycore.sheets.svg import Drawing


def draw_sign(drawing: Drawing, corner_mm: tuple[float, float], size_mm: float) -> None:
    """The app's sign: outline of a bucket with the level sign on a line inside it."""
    x, y = corner_mm
    s = size_mm
    weight_mm = s * 0.1
    drawing.line((x, y), (x + 0.14 * s, y + s), weight_mm)
    drawing.line((x + 0.14 * s, y + s), (x + 0.86 * s, y + s), weight_mm)
    drawing.line((x + 0.86 * s, y + s), (x + s, y), weight_mm)
    drawing.line((x + 0.06 * s, y + 0.5 * s), (x + 0.94 * s, y + 0.5 * s), weight_mm)
    draw_level_sign(drawing, (x + 0.5 * s, y + 0.5 * s), 0.36 * s)


def draw_level_sign(drawing: Drawing, at_mm: tuple[float, float], size_mm: float) -> None:
    """The draughtsman's level sign: a triangle that stands with its point on the line."""
    x, y = at_mm
    drawing.shape([(x - size_mm / 2, y - size_mm * 0.87), (x + size_mm / 2, y - size_mm * 0.87),
                   (x, y)])  # fmt: skip


def draw_bucket(
    drawing: Drawing, corner_mm: tuple[float, float], size_mm: tuple[float, float],
    water_share: float, concentrate_share: float,
) -> None:  # fmt: skip
    """A tapered bucket, filled to shares of its usable height: dashes are water, black the rest."""
    (x, y), (wide, high) = corner_mm, size_mm
    taper = 0.14 * wide

    def edge(share: float) -> tuple[float, float]:
        inset = taper * (1 - share)
        return x + inset, x + wide - inset

    water_y = y + high * (1 - water_share)
    top_share = min(1.0, water_share + concentrate_share)
    top_y = y + high * (1 - top_share)
    if concentrate_share > 0:
        (l0, r0), (l1, r1) = edge(water_share), edge(top_share)
        drawing.shape([(l0, water_y), (r0, water_y), (r1, top_y), (l1, top_y)])
    if water_share > 0:
        for i in range(1, 6):
            share = water_share * (1 - i / 6)
            left, right = edge(share)
            at_y = y + high * (1 - share)
            drawing.line((left + 1.2, at_y), (right - 1.2, at_y), 0.3, dash="2.4 1.6")
        left, right = edge(water_share)
        drawing.line((left, water_y), (right, water_y), 0.5)
    (l0, r0), (l1, r1) = edge(0), edge(1)
    for start, end in (((l1, y), (l0, y + high)), ((l0, y + high), (r0, y + high)),
                       ((r0, y + high), (r1, y))):  # fmt: skip
        drawing.line(start, end, 0.7)


def draw_section(
    drawing: Drawing, corner_mm: tuple[float, float], size_mm: tuple[float, float],
    full_share: float, depth: str,
) -> None:  # fmt: skip
    """The tank in section, walls hatched, level at the full mark with its depth as a dimension."""
    (x, y), (wide, high) = corner_mm, size_mm
    wall = 3.0
    inner_high = high - wall
    for part, size in (((x, y), (wall, high)), ((x + wide - wall, y), (wall, high)),
                       ((x + wall, y + inner_high), (wide - 2 * wall, wall))):  # fmt: skip
        drawing.hatch(part, size, 1.3)
    outline = [(x + wall, y), (x + wall, y + inner_high), (x + wide - wall, y + inner_high),
               (x + wide - wall, y)]  # fmt: skip
    for start, end in itertools.pairwise(outline):
        drawing.line(start, end, 0.6)
    level_y = y + inner_high * (1 - full_share)
    drawing.line((x + wall, level_y), (x + wide - wall, level_y), 0.9)
    draw_level_sign(drawing, (x + wide * 0.68, level_y), 4)
    arrow_x = x + wide * 0.3
    drawing.line((arrow_x, level_y), (arrow_x, y + inner_high), 0.3)
    for tip_y, back_y in ((level_y, level_y + 2.6), (y + inner_high, y + inner_high - 2.6)):
        drawing.shape([(arrow_x, tip_y), (arrow_x - 0.8, back_y), (arrow_x + 0.8, back_y)])
    text_x = arrow_x + 1.8
    text_mm = size_that_fits_mm(depth, 4.4, x + wide - wall - 1 - text_x, True)
    drawing.text((text_x, (level_y + y + inner_high) / 2 + 1.6), depth, text_mm, True)


def draw_caution(drawing: Drawing, centre_mm: tuple[float, float], radius_mm: float) -> None:
    """The octagon with a call sign that stands before a caution."""
    x, y = centre_mm
    # tan(22.5°): corners of a regular octagon in units of its inner radius.
    near_mm = radius_mm * 0.41421356
    drawing.shape([(x - near_mm, y - radius_mm), (x + near_mm, y - radius_mm),
                   (x + radius_mm, y - near_mm), (x + radius_mm, y + near_mm),
                   (x + near_mm, y + radius_mm), (x - near_mm, y + radius_mm),
                   (x - radius_mm, y + near_mm), (x - radius_mm, y - near_mm)])  # fmt: skip
    drawing.text((x, y + 0.58 * radius_mm), "!", 1.6 * radius_mm, True, "middle", fill="#fff")
