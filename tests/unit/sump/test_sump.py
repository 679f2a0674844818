"""pycore.sump.sump: limits, the foot of the stick, and the uncertainty of rows."""

import math

import pytest

from pycore.quantity.fault import Fault
from pycore.quantity.measured import Measured
from pycore.sump.shapes import horizontal_cylinder, proportional, sloped_box, table
from pycore.sump.sump import KnownTo


def test_dip_of_zero_at_the_shallow_end_is_refused() -> None:
    sump = sloped_box(1200, 600, 60, False, 340, 0.05)
    with pytest.raises(Fault) as caught:
        sump.volume_from_depth(0.0, "dip")
    assert caught.value.limit == {"above": 0, "maximum": pytest.approx(374), "unit": "mm"}
    # By hand: the wedge below the stick's foot, 1.2·0.6·0.06/2 m³.
    assert sump.least_volume_l == pytest.approx(21.6)
    with pytest.raises(Fault) as caught:
        sump.depth_from_volume(21.5, "v")
    assert caught.value.limit["minimum"] == pytest.approx(21.6)
    assert sump.depth_from_volume(28.8, "v") == pytest.approx(10)


def test_uncertainty_at_the_floor_of_a_lying_tank_is_not_nothing() -> None:
    # By hand: V(2 mm) over 2 mm is the mean slope of what the dip may be, times its 2 mm.
    sump = horizontal_cylinder(600, 1000, 540, 0.0)
    assert sump.volume_measured(Measured(0.0, 2.0), "dip").u == pytest.approx(
        sump.volume_from_depth(2.0, "dip")
    )


def test_exact_dip_has_the_slope() -> None:
    got = proportional(400, 200, 0.0).volume_measured(Measured(300, 0.0), "dip")
    assert got == Measured(pytest.approx(150), 0.0)


def test_rows_with_their_own_uncertainty() -> None:
    sump = table([100, 400], [20, 180], 400, 0.5, None, [1.0, 4.0])
    got = sump.volume_measured(Measured(100, 2.0), "dip")
    slope = (sump.volume_from_depth(102, "d") - sump.volume_from_depth(98, "d")) / 4
    # JCGM 100:2008, 5.1.2, by hand: the row's litre and the dip's 2 mm; the share plays no part.
    assert got.u == pytest.approx(math.hypot(1.0, 2 * slope))


def test_known_to_is_straight_between_rows() -> None:
    known = KnownTo((0.0, 100.0, 400.0), (0.0, 1.0, 4.0))
    assert [known.u_l(depth) for depth in (0, 50, 100, 250, 400)] == [0, 0.5, 1, 2.5, 4]
