"""pycore.sump.outline: the true outline in shares, by hand."""

import pytest

from pycore.sump.obstacles import Obstacle
from pycore.sump.outline import Block, Wall, drawing_of
from pycore.sump.shapes import (
    box,
    frustum,
    horizontal_cylinder,
    proportional,
    sloped_box,
    stepped,
    table,
)
from pycore.sump.sump import Sump


def _walls(sump: Sump) -> list[tuple[float, float, float]]:
    return [
        pytest.approx((wall.height_share, wall.left_share, wall.right_share))
        for wall in drawing_of(sump).outline
    ]


def test_box_in_true_proportions() -> None:
    sump = box(1200, 600, 400, 0.05, 480)
    assert _walls(sump) == [(0, 0, 1), (1, 0, 1)]
    assert drawing_of(sump).aspect_share == pytest.approx(2.5)


def test_where_no_width_is_known_there_are_no_proportions() -> None:
    assert drawing_of(proportional(400, 200, 0.1)).aspect_share is None
    assert drawing_of(table([100, 400], [20, 180], 400, 0.1)).aspect_share is None


def test_sloped_floor_and_foot_of_the_stick() -> None:
    sump = sloped_box(1200, 600, 100, False, 350, 0.05, 400)
    assert _walls(sump) == [(0, 0, 0), (0.2, 0, 1), (1, 0, 1)]
    assert drawing_of(sump).zero_share == pytest.approx(0.2)


def test_steps_are_two_walls_at_one_height() -> None:
    sump = stepped([(0, 400, 600), (120, 800, 600)], 400, 0.05, 480)
    third = 1 / 3
    assert _walls(sump) == [(0, 0, third), (0.25, 0, third), (0.25, 0, 1), (1, 0, 1)]


def test_lying_cylinder_is_round() -> None:
    walls = drawing_of(horizontal_cylinder(600, 1000, 540, 0.05, 600)).outline
    for wall in walls:
        half = (wall.height_share * (1 - wall.height_share)) ** 0.5
        assert (wall.left_share, wall.right_share) == pytest.approx((0.5 - half, 0.5 + half))


def test_cone_is_centred() -> None:
    assert _walls(frustum(300, 600, 500, 450, 0.05, 500)) == [(0, 0.25, 0.75), (1, 0, 1)]


def test_table_is_as_wide_as_its_surface() -> None:
    # By hand: 0.1 L/mm below 100 mm, 0.4 above.
    sump = table([100, 200], [10, 50], 200, 0.1)
    assert _walls(sump) == [
        (0, 0.375, 0.625), (0.25, 0.375, 0.625), (0.75, 0, 1), (1, 0, 1)
    ]  # fmt: skip


def test_block() -> None:
    sump = box(1200, 600, 400, 0.05, 400, [Obstacle(100, 900, 0.18)])
    assert drawing_of(sump).blocks == [Block(0.25, 1.0, pytest.approx(0.25))]
    assert drawing_of(sump).outline == [Wall(0.0, 0.0, 1.0), Wall(1.0, 0.0, 1.0)]
