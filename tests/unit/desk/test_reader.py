"""pycore.desk.reader."""

import pytest

from pycore.desk.messages import Typed
from pycore.desk.reader import Reader, placed
from pycore.quantity.fault import Fault
from tests.unit.desk.lathe import ask


def test_optional_number() -> None:
    reader = Reader()
    assert reader.optional(None, "depth_mm", "here") is None
    assert reader.optional(Typed("5", "cm"), "depth_mm", "here") == 50


@pytest.mark.parametrize("text", ["1,200", "1.200", "12,000"])
def test_sign_that_may_part_thousands_is_asked_about(text: str) -> None:
    got = ask("read_quantity", {"text": text, "unit": "mm", "quantity": "length_mm"})
    (doubt,) = [doubt for doubt in got["doubts"] if doubt["code"] == "thousands"]
    meant = float(text.replace(",", "").replace(".", ""))
    assert (doubt["usual_low"], doubt["usual_high"]) == (meant, meant)
    assert got["value"] == pytest.approx(meant / 1000)


@pytest.mark.parametrize(
    ("text", "unit"),
    [("1,2", "mm"), ("0,250", "mm"), ("1,2000", "mm"), ("1.200", "m"), ("1200", "mm")],
)
def test_other_numbers_are_not(text: str, unit: str) -> None:
    got = ask("read_quantity", {"text": text, "unit": unit, "quantity": "depth_mm"})
    assert got["doubts"] == []


def test_placed_fault_speaks_the_typed_unit() -> None:
    fault = Fault("order", "rim_depth", 254.0, {"minimum": 508.0, "unit": "mm"})
    there = placed(fault, "body.sump.rim_depth", "in")
    assert (there.got, there.limit) == (10, {"minimum": 20, "unit": "in"})
    litres = Fault("out_of_range", "full_depth", 0.5, {"minimum": 1.0, "unit": "L"})
    assert placed(litres, "x", "in").limit == {"minimum": 1, "unit": "L"}
