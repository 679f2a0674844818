"""pycore.sump.stick: innage, outage, gauge and two sides, by hand."""

import math

import pytest

from pycore.quantity.fault import Fault
from pycore.quantity.measured import Measured
from pycore.sump.stick import Stick, both_sides, gauge_depth


def test_innage_is_reference_height_less_outage() -> None:
    # Tank gauging, from memory: innage = reference height − outage.
    assert Stick(0.0, 600.0).depth_mm(250) == 350
    assert Stick(5.0, 600.0).depth_mm(250) == 345
    assert Stick(5.0).depth_mm(250) == 255


@pytest.mark.parametrize("stick", [Stick(), Stick(-3.0), Stick(5.0, 600.0)])
def test_there_and_back(stick: Stick) -> None:
    assert stick.depth_mm(stick.shown_mm(123.0)) == pytest.approx(123)


def test_limits_turn_round_with_the_tape() -> None:
    fault = Fault("out_of_range", "dip", 500.0, {"minimum": 0.0, "maximum": 440.0, "unit": "mm"})
    turned = Stick(0.0, 600.0).as_shown(fault, "here")
    assert (turned.path, turned.got) == ("here", 100)
    assert turned.limit == {"minimum": 160, "maximum": 600, "unit": "mm"}
    above = Fault("not_rising", "dip", 40.0, {"above": 50.0, "unit": "mm"})
    assert Stick(0.0, 600.0).as_shown(above, "x").limit == {"below": 550, "unit": "mm"}
    assert Stick(2.0).as_shown(above, "x").limit == {"above": 48, "unit": "mm"}


def test_gauge_is_rough() -> None:
    # A quarter of the way to read, a rectangle of 1/8 to either side, and as much for the float.
    got = gauge_depth(0.75, None, 400)
    assert got.value == pytest.approx(300)
    assert got.u == pytest.approx(400 * math.hypot(1 / 8 / math.sqrt(3), 1 / 8 / math.sqrt(3)))


def test_between_two_marks_is_a_rectangle() -> None:
    # JCGM 100:2008, 4.3.7: width over the root of 12.
    got = gauge_depth(0.0, 1.0, 400)
    assert got == Measured(200, pytest.approx(400 / math.sqrt(12)))
    with pytest.raises(Fault) as caught:
        gauge_depth(0.5, 0.5, 400)
    assert (caught.value.code, caught.value.path) == ("order", "gauge_to")


def test_two_sides() -> None:
    sides = both_sides(Measured(340, 2), Measured(330, 2))
    assert (sides.depth.value, sides.difference_mm) == (335, 10)
    assert sides.depth.u == pytest.approx(math.hypot(math.sqrt(2), 10 / math.sqrt(12)))
