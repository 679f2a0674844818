"""pycore.sump.solids against fluids.geometry, scipy's integration, and by hand."""

import math
from typing import Any

import pytest
from fluids.geometry import TANK
from scipy.integrate import quad

from pycore.sump.solids import Frustum, LyingCylinder, SlopedFloor, Solid, Steps, Straight

SOLIDS: list[tuple[Solid, float]] = [
    (Straight(0.72, 1200.0), 500.0),
    (SlopedFloor(1200, 600, 60), 500.0),
    (Steps(((0.0, 400.0, 600.0), (120.0, 800.0, 600.0), (120.0, 100.0, 100.0))), 500.0),
    (LyingCylinder(600, 1000), 600.0),
    (Frustum(200, 600, 500), 500.0),
    (Frustum(600, 200, 500), 500.0),
    (Frustum(0, 600, 200), 200.0),
]


@pytest.mark.parametrize(("solid", "top_mm"), SOLIDS)
def test_volume_is_the_integral_of_the_surface(solid: Solid, top_mm: float) -> None:
    # scipy 1.17.1 or newer, integrate.quad; the corners of a floor are given to it.
    for share in (0.05, 0.1, 0.3, 0.7, 1.0):
        height = share * top_mm
        corners = [corner for corner in (60.0, 120.0) if corner < height]
        area, _ = quad(solid.litres_per_mm, 0, height, points=corners or None, limit=200)
        assert solid.volume_l(height) == pytest.approx(area, rel=1e-8)


@pytest.mark.parametrize(("solid", "top_mm"), SOLIDS)
def test_nothing_at_the_floor(solid: Solid, top_mm: float) -> None:
    assert solid.volume_l(0.0) == 0.0
    assert solid.volume_l(top_mm) > 0.0


@pytest.mark.parametrize("share", [1e-6, 0.001, 0.02, 0.25, 0.5, 0.9, 0.999, 1.0])
def test_lying_cylinder(share: float) -> None:
    # fluids 1.3.1, geometry.TANK; near the floor its own digits are lost, hence the absolute part.
    tank: Any = TANK(D=0.6, L=1.0, horizontal=True)
    theirs = float(tank.V_from_h(0.6 * share)) * 1000
    assert LyingCylinder(600, 1000).volume_l(600 * share) == pytest.approx(
        theirs, rel=1e-9, abs=1e-9
    )


def test_lying_cylinder_keeps_its_digits_near_the_floor() -> None:
    # By the first term of the segment's own series, L·(4/3)·√(2r)·h^1.5, for h far below r.
    h_mm, r_mm = 1e-6, 300.0
    first = 1000 * 4 / 3 * math.sqrt(2 * r_mm) * h_mm**1.5 / 1e6
    assert LyingCylinder(600, 1000).volume_l(h_mm) == pytest.approx(first, rel=1e-8)


@pytest.mark.parametrize("height_mm", [10.0, 100.0, 199.0, 200.0])
def test_pointed_cone(height_mm: float) -> None:
    # fluids 1.3.1, geometry.TANK with a conical bottom of 0.2 m.
    tank: Any = TANK(D=0.6, L=0.8, horizontal=False, sideA="conical", sideA_a=0.2)
    theirs = float(tank.V_from_h(height_mm / 1000)) * 1000
    assert Frustum(0, 600, 200).volume_l(height_mm) == pytest.approx(theirs, rel=1e-12)


@pytest.mark.parametrize("height_mm", [30.0, 150.0, 300.0])
def test_frustum_is_the_upper_part_of_a_cone(height_mm: float) -> None:
    # fluids 1.3.1: cone of 0.6 m over 0.45 m, less its lowest 0.15 m, is 0.2 m to 0.6 m over 0.3 m.
    tank: Any = TANK(D=0.6, L=0.1, horizontal=False, sideA="conical", sideA_a=0.45)
    theirs = 1000 * float(tank.V_from_h(0.15 + height_mm / 1000) - tank.V_from_h(0.15))
    assert Frustum(200, 600, 300).volume_l(height_mm) == pytest.approx(theirs, rel=1e-12)


def test_sloped_floor_by_hand() -> None:
    # W·L·h²/2s up to h = s, then W·L·(h − s/2).
    solid = SlopedFloor(1200, 600, 60)
    assert solid.volume_l(30) == pytest.approx(5.4)
    assert solid.volume_l(60) == pytest.approx(21.6)
    assert solid.volume_l(160) == pytest.approx(93.6)
    assert solid.litres_per_mm(30) == pytest.approx(0.36)


@pytest.mark.parametrize(("solid", "top_mm"), SOLIDS)
def test_edges_run_from_floor_to_top(solid: Solid, top_mm: float) -> None:
    edges = solid.edges(top_mm)
    assert edges[0][0] == 0
    assert edges[-1][0] == top_mm
    assert [edge[0] for edge in edges] == sorted(edge[0] for edge in edges)
    assert all(left <= right for _, left, right in edges)


def test_edges_below_the_corner_of_a_sloped_floor() -> None:
    assert SlopedFloor(1200, 600, 60).edges(30)[-1] == (30, 0, 600)
