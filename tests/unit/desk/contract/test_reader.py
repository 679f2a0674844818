"""pycore.desk.contract.reader: unusual numbers are remembered, faults put at their field."""

import pytest

from pycore.desk.contract.reader import Reader, placed
from pycore.desk.contract.records import Typed
from pycore.quantity.fault import Fault
from pycore.quantity.rounding import Shown
from tests.unit.desk.lathe import ask, refusal


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


def test_optional_number() -> None:
    reader = Reader()
    assert reader.optional(None, "depth_mm", "here") is None
    assert reader.optional(Typed("5", "cm"), "depth_mm", "here") == 50


@pytest.mark.parametrize("text", ["1,200", "1.200", "12,000"])
@pytest.mark.parametrize(("unit", "quantity"), [("mm", "depth_mm"), ("L", "full_volume_l")])
def test_sign_that_may_part_thousands_is_refused_with_both_readings(
    text: str, unit: str, quantity: str
) -> None:
    error = refusal("read_quantity", {"text": text, "unit": unit, "quantity": quantity})
    meant = text.replace(",", "").replace(".", "")
    assert (error["code"], error["path"], error["got"]) == ("thousands", "body.text", text)
    decimal = str(float(meant) / 1000).removesuffix(".0")
    assert error["limit"] == {"allowed": [decimal, meant], "unit": unit}


@pytest.mark.parametrize(
    ("text", "unit"),
    [("1,2", "mm"), ("0,250", "mm"), ("1,2000", "mm"), ("1.200", "m"), ("1200", "mm")],
)
def test_other_numbers_are_not(text: str, unit: str) -> None:
    got = ask("read_quantity", {"text": text, "unit": unit, "quantity": "depth_mm"})
    assert got["doubts"] == []


@pytest.mark.parametrize(
    ("text", "unit", "quantity"),
    [("1.333", "nD", "reading_nd"), ("1,125", None, "factor"), ("12.375", "in", "depth_mm")],
)
def test_three_decimals_of_what_is_never_so_large_are_decimals(
    text: str, unit: str | None, quantity: str
) -> None:
    asked = {"text": text, "quantity": quantity, **({} if unit is None else {"unit": unit})}
    got = ask("read_quantity", asked)
    assert got["read_as"]["value"] == float(text.replace(",", "."))


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
