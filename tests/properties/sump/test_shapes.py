"""Laws of every shape, and of what stands in it."""

import random

import pytest
from hypothesis import example, given
from hypothesis import strategies as st

from pycore.sump.obstacles import Obstacle
from pycore.sump.outline import drawing_of
from pycore.sump.shapes import box
from tests.properties.sump.tanks import KINDS, Tank, largest_difference

# Each of these is drawn from a seed, so that a failure names one tank.
SEEDS = st.integers(0, 10**9)


def _tank(kind: int, seed: int) -> Tank:
    return KINDS[kind](random.Random(seed))


@pytest.mark.parametrize("kind", range(len(KINDS)), ids=[make.__name__ for make in KINDS])
def test_as_others_say(kind: int) -> None:
    # fluids 1.3.1 and scipy: ten digits of the whole tank. 1,000 tanks: shapes.py beside this file.
    assert largest_difference(KINDS[kind], 60, seed=7) < 1e-10


@given(st.sampled_from(range(len(KINDS))), SEEDS, st.floats(0.001, 1))
@example(1, 672560, 1.0)  # Came back a last digit above the rim, and was refused.
@example(6, 138474, 0.9999999999999999)  # Litres a last digit above those at the rim.
def test_depth_to_litres_and_back(kind: int, seed: int, share: float) -> None:
    sump = _tank(kind, seed).sump
    depth_mm = share * sump.rim_depth_mm
    volume_l = sump.volume_from_depth(depth_mm, "depth")
    back_mm = sump.depth_from_volume(volume_l, "volume")
    assert back_mm == pytest.approx(depth_mm, rel=1e-9, abs=1e-9 * sump.rim_depth_mm)
    assert sump.volume_from_depth(back_mm, "depth") == pytest.approx(volume_l, rel=1e-9)


@given(st.sampled_from(range(len(KINDS))), SEEDS, st.floats(0.001, 0.99))
def test_litres_rise_with_depth_up_to_the_whole(kind: int, seed: int, share: float) -> None:
    sump = _tank(kind, seed).sump
    low_mm, high_mm = share * sump.rim_depth_mm, (share + 0.01) * sump.rim_depth_mm
    low_l = sump.volume_from_depth(low_mm, "depth")
    high_l = sump.volume_from_depth(min(high_mm, sump.rim_depth_mm), "depth")
    assert 0 < low_l < high_l <= sump.rim_volume_l
    assert low_l >= sump.least_volume_l


@given(st.sampled_from(range(len(KINDS))), SEEDS, st.floats(0.01, 0.97))
def test_one_millimetre_is_worth_the_slope(kind: int, seed: int, share: float) -> None:
    sump = _tank(kind, seed).sump
    depth_mm = share * sump.rim_depth_mm
    step_mm = 1e-4 * sump.rim_depth_mm
    corners = [0.0]
    for wall in drawing_of(sump).outline:
        corners.append(wall.height_share * (sump.rim_depth_mm + sump.zero_mm) - sump.zero_mm)
    for block in drawing_of(sump).blocks:
        corners += [share * sump.rim_depth_mm for share in (block.from_share, block.to_share)]
    # At a corner the slope jumps, and a lying tank's outline is a chain of small ones.
    if KINDS[kind].__name__ != "horizontal_cylinder" and any(
        abs(depth_mm - corner) < 2 * step_mm for corner in corners
    ):
        return
    rise_l = sump.volume_from_depth(depth_mm + step_mm, "d") - sump.volume_from_depth(
        depth_mm - step_mm, "d"
    )
    assert sump.litres_per_mm(depth_mm) == pytest.approx(rise_l / (2 * step_mm), rel=1e-3)


@given(
    st.lists(st.tuples(st.floats(0, 300), st.floats(1, 300), st.floats(0.001, 0.05)), max_size=6),
    st.floats(0, 1),
)
def test_each_obstacle_takes_just_its_own(
    sizes: list[tuple[float, float, float]], share: float
) -> None:
    things = [Obstacle(foot, foot + tall, area) for foot, tall, area in sizes]
    sump, empty = box(1200, 600, 400, 0.05, None, things), box(1200, 600, 400, 0.05)
    depth_mm = share * sump.rim_depth_mm
    under_l = sum(
        thing.area_l_per_mm * min(max(depth_mm - thing.from_mm, 0), thing.to_mm - thing.from_mm)
        for thing in things
    )
    less_l = empty.volume_from_depth(depth_mm, "d") - sump.volume_from_depth(depth_mm, "d")
    assert less_l == pytest.approx(under_l, abs=1e-9)


@given(st.sampled_from(range(len(KINDS))), SEEDS)
def test_outline_stays_inside_its_frame(kind: int, seed: int) -> None:
    drawing = drawing_of(_tank(kind, seed).sump)
    for wall in drawing.outline:
        assert 0 <= wall.height_share <= 1 + 1e-12
        assert -1e-12 <= wall.left_share <= wall.right_share <= 1 + 1e-12
    assert (drawing.outline[0].height_share, drawing.outline[-1].height_share) == (0, 1)
    assert all(0 <= b.from_share < b.to_share <= 1 for b in drawing.blocks if b.from_share < 1)
