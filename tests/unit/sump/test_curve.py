"""pycore.sump.curve, against SciPy's own monotone interpolation."""

import numpy as np
import pytest
from scipy.interpolate import PchipInterpolator

from pycore.sump.curve import RisingCurve, depth_at

KNOTS = [
    ([0, 100], [0, 50]),
    ([0, 50, 100, 400], [0, 5, 60, 180]),
    ([0, 10, 200, 210, 400], [0, 40, 42, 90, 91]),
    ([0, 1, 2, 3, 1000], [0, 1, 4, 9, 10]),
]


@pytest.mark.parametrize(("depths", "volumes"), KNOTS)
def test_same_curve_as_scipy(depths: list[float], volumes: list[float]) -> None:
    # scipy 1.17.1 or newer, PchipInterpolator: the same method. Tolerance relative 1e-12.
    curve, other = RisingCurve.through(depths, volumes), PchipInterpolator(depths, volumes)
    for depth in np.linspace(depths[0], depths[-1], 113):
        assert curve.volume_l(depth) == pytest.approx(float(other(depth)), rel=1e-12, abs=1e-12)
        slope = float(other(depth, 1))
        assert curve.litres_per_mm(depth) == pytest.approx(slope, rel=1e-9, abs=1e-9)


@pytest.mark.parametrize(("depths", "volumes"), KNOTS)
def test_there_and_back(depths: list[float], volumes: list[float]) -> None:
    curve = RisingCurve.through(depths, volumes)
    for volume in np.linspace(volumes[0], volumes[-1], 57):
        depth = depth_at(curve.volume_l, float(volume), depths[0], depths[-1])
        back = curve.volume_l(depth)
        assert back == pytest.approx(volume, rel=1e-12, abs=1e-12)


@pytest.mark.parametrize(
    ("depths", "volumes"),
    [([0], [0]), ([], []), ([0, 1, 1], [0, 1, 2]), ([0, 1, 2], [0, 2, 2]), ([0, 1, 2], [0, 2, 1])],
)
def test_pairs_that_do_not_rise(depths: list[float], volumes: list[float]) -> None:
    with pytest.raises(ValueError, match="rise"):
        RisingCurve.through(depths, volumes)
