"""pycore.desk.reader: unusual numbers are remembered, faults put at their field."""

from pycore.desk.reader import Reader, placed
from pycore.desk.records import Typed
from pycore.quantity.fault import Fault
from pycore.quantity.rounding import Shown


def test_unusual_numbers_are_collected_with_their_range_in_the_typed_unit() -> None:
    reader = Reader()
    assert reader.value(Typed("50", "°F"), "temperature_c", "a") == 10.0
    assert reader.value(Typed("113", "°F"), "temperature_c", "b") == 45.0
    (doubt,) = reader.doubts
    assert (doubt.path, doubt.code) == ("b", "unusual")
    assert (doubt.usual_low, doubt.usual_high) == (50.0, 104.0)


def test_doubts_of_numbers_together() -> None:
    reader = Reader()
    reader.doubt("factor_moved", "a", Shown(1.5, 1, "1"), (1.0, 1.2))
    assert [(d.code, d.usual_high) for d in reader.doubts] == [("factor_moved", 1.2)]


def test_placed_turns_numbers_into_the_unit_of_the_field() -> None:
    fault = placed(Fault("order", "x", 254.0, {"minimum": 508.0, "unit": "mm"}), "body.x", "in")
    assert (fault.path, fault.got, fault.limit) == ("body.x", 10.0, {"minimum": 20.0, "unit": "in"})
    other = placed(Fault("order", "x", 25.4, {"minimum": 50.8, "unit": "mm"}), "body.x", "L")
    assert other.limit == {"minimum": 50.8, "unit": "mm"}
