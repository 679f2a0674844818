"""pycore.sheets.figures: drawings keep to their place and to their shares."""

import pytest

from pycore.sheets.figures import (
    draw_bucket,
    draw_caution,
    draw_level_sign,
    draw_section,
    draw_sign,
)
from pycore.sheets.letters import width_mm
from pycore.sheets.svg import Drawing
from tests.unit.sheets.drawn import NAMESPACE, root_of


def points(svg: str) -> list[tuple[float, float]]:
    """Corners of every line and shape."""
    found = []
    for element in root_of(svg).iter():
        if element.tag == f"{NAMESPACE}line":
            found += [
                (float(str(element.get(f"x{i}"))), float(str(element.get(f"y{i}")))) for i in (1, 2)
            ]
        if element.tag == f"{NAMESPACE}polygon":
            pairs = str(element.get("points")).split()
            found += [tuple(map(float, pair.split(","))) for pair in pairs]  # type: ignore[misc]
    return found


@pytest.mark.parametrize("water", [0.0, 0.3, 0.9, 1.0])
@pytest.mark.parametrize("concentrate", [0.0, 0.1, 0.5])
def test_a_bucket_stays_in_its_frame(water: float, concentrate: float) -> None:
    drawing = Drawing(100, 100)
    draw_bucket(drawing, (10, 20), (30, 25), water, concentrate)
    assert all(10 <= x <= 40 and 20 <= y <= 45 for x, y in points(drawing.svg()))


def test_concentrate_stands_on_the_water() -> None:
    drawing = Drawing(100, 100)
    draw_bucket(drawing, (0, 0), (20, 10), 0.6, 0.2)
    (shape,) = root_of(drawing.svg()).iter(f"{NAMESPACE}polygon")
    heights = {float(pair.split(",")[1]) for pair in str(shape.get("points")).split()}
    # By hand: water to 0.6 of 10 mm, concentrate to 0.8, counted from below.
    assert heights == {4.0, 2.0}


def test_the_level_sign_stands_on_its_line() -> None:
    drawing = Drawing(10, 10)
    draw_level_sign(drawing, (5, 6), 2)
    assert max(points(drawing.svg()), key=lambda point: point[1]) == (5, 6)


@pytest.mark.parametrize("depth", ["440 mm", "17 15/16 in", "0.4375 m"])
def test_the_depth_fits_into_the_tank(depth: str) -> None:
    drawing = Drawing(100, 100)
    draw_section(drawing, (10, 10), (38, 40), 0.9, depth)
    (text,) = root_of(drawing.svg()).iter(f"{NAMESPACE}text")
    size_mm = float(str(text.get("font-size")))
    assert float(str(text.get("x"))) + width_mm(depth, size_mm, True) <= 10 + 38 - 3


def test_sign_and_caution_are_small_and_whole() -> None:
    drawing = Drawing(10, 10)
    draw_sign(drawing, (1, 1), 4)
    draw_caution(drawing, (7, 7), 2)
    assert all(1 <= x <= 9 and 1 <= y <= 9 for x, y in points(drawing.svg()))
    assert "!" in drawing.svg()
