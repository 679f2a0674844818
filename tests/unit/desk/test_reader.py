"""pycore.desk.reader."""

import pytest

from pycore.desk.messages import Typed
from pycore.desk.reader import Reader, placed
from pycore.quantity.fault import Fault
from tests.unit.desk.lathe import ask, refusal


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


# Of pages that ask about a sump: what is asked about once, and what is refused.
LIMITS = [
    ("full_depth_mm", ("50", "2500"), ("49", "2501"), ("0", "5001"), "mm"),
    ("full_volume_l", ("5", "50000"), ("4", "50001"), ("0.9", "200001"), "L"),
    ("length_mm", ("100", "10000"), ("99", "10001"), ("0", "50001"), "mm"),
    ("rise_mm", ("5", "300"), ("4", "301"), ("0", "5001"), "mm"),
    ("diameter_mm", ("150", "4000"), ("149", "4001"), ("0", "20001"), "mm"),
    ("height_mm", ("100", "3000"), ("99", "3001"), ("0", "6001"), "mm"),
    ("reference_height_mm", ("100", "4000"), ("99", "4001"), ("0", "10001"), "mm"),
    ("zero_offset_mm", ("-50", "50"), ("-51", "51"), ("-1001", "1001"), "mm"),
    ("depth_u_mm", ("0", "20"), ("20.1", "21"), ("-1", "201"), "mm"),
    ("poured_l", ("1", "250"), ("0.9", "251"), ("0", "10001"), "L"),
    ("rest_l", ("0", "1000"), ("1001", "1002"), ("-1", "200001"), "L"),
]


@pytest.mark.parametrize(("quantity", "usual", "unusual", "impossible", "unit"), LIMITS)
def test_limits_of_what_is_asked_about_a_sump(
    quantity: str,
    usual: tuple[str, str],
    unusual: tuple[str, str],
    impossible: tuple[str, str],
    unit: str,
) -> None:
    # Common practice, no source.
    def body(text: str) -> dict[str, str]:
        return {"text": text, "unit": unit, "quantity": quantity}

    for text in usual:
        assert ask("read_quantity", body(text))["doubts"] == []
    for text in unusual:
        assert [d["code"] for d in ask("read_quantity", body(text))["doubts"]] == ["unusual"]
    for text in impossible:
        assert refusal("read_quantity", body(text))["code"] == "out_of_range"
