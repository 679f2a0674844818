"""Depth and litres: rising, and back again; tables against SciPy and tanks against fluids."""

from typing import Any

import pytest
from fluids.geometry import TANK
from hypothesis import assume, given, settings
from hypothesis import strategies as st
from scipy.interpolate import PchipInterpolator

from pycore.sump.shapes import box, proportional, table
from pycore.sump.sump import Sump


@st.composite
def tables(draw: st.DrawFn) -> tuple[list[float], list[float]]:
    steps = st.lists(st.tuples(st.floats(0.5, 300), st.floats(0.05, 500)), min_size=2, max_size=30)
    depths, volumes = [0.0], [0.0]
    for depth, volume in draw(steps):
        depths.append(depths[-1] + depth)
        volumes.append(volumes[-1] + volume)
    return depths, volumes


@st.composite
def sumps(draw: st.DrawFn) -> Sump:
    full_mm = draw(st.floats(20, 2000))
    kind = draw(st.sampled_from(["proportional", "box", "table"]))
    if kind == "proportional":
        return proportional(full_mm, draw(st.floats(1, 200_000)), 0.1)
    if kind == "box":
        return box(draw(st.floats(100, 10_000)), draw(st.floats(100, 10_000)), full_mm, 0.1)
    depths, volumes = draw(tables())
    return table(depths[1:], volumes[1:], depths[-1], 0.1)


@given(sumps(), st.floats(0, 1), st.floats(0, 1))
def test_more_depth_is_more_coolant(sump: Sump, a: float, b: float) -> None:
    low, high = sorted((a * sump.rim_depth_mm, b * sump.rim_depth_mm))
    assume(high - low > 1e-6 * sump.rim_depth_mm)
    assert sump.volume_from_depth(low, "x") < sump.volume_from_depth(high, "x")


@given(sumps(), st.floats(0, 1))
def test_there_and_back(sump: Sump, share: float) -> None:
    volume_l = share * sump.rim_volume_l
    back = sump.volume_from_depth(sump.depth_from_volume(volume_l, "x"), "x")
    assert back == pytest.approx(volume_l, rel=1e-9, abs=1e-9 * sump.rim_volume_l)


@given(tables(), st.floats(0, 1))
def test_table_is_the_curve_of_scipy(pairs: tuple[list[float], list[float]], share: float) -> None:
    depths, volumes = pairs
    depth = share * depths[-1]
    ours = table(depths[1:], volumes[1:], depths[-1], 0.1).volume_from_depth(depth, "x")
    theirs = float(PchipInterpolator(depths, volumes)(depth))
    assert ours == pytest.approx(theirs, rel=1e-9, abs=1e-9 * volumes[-1])


@settings(max_examples=40, deadline=None)
@given(st.floats(0.2, 2.0), st.floats(0.5, 4.0), st.floats(0.02, 1.0))
def test_lying_cylinder_as_a_table(diameter_m: float, length_m: float, share: float) -> None:
    # fluids.geometry.TANK, 1.3.1. Tolerance: 0.2 % of the tank for a row every twentieth.
    tank: Any = TANK(D=diameter_m, L=length_m, horizontal=True)
    heights = [diameter_m * i / 20 for i in range(1, 21)]
    volumes = [float(tank.V_from_h(height)) * 1000 for height in heights]
    sump = table([1000 * h for h in heights], volumes, 1000 * heights[-1], 0.1)
    depth_m = share * diameter_m
    theirs = float(tank.V_from_h(depth_m)) * 1000
    ours = sump.volume_from_depth(min(1000 * depth_m, sump.rim_depth_mm), "x")
    assert ours == pytest.approx(theirs, abs=0.002 * volumes[-1])
