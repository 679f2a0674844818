"""pycore.quantity.typed: the listed forms, and nothing else (common practice, no source)."""

from fractions import Fraction

import pytest

from pycore.quantity.fault import Fault
from pycore.quantity.rounding import MixedFraction, Shown
from pycore.quantity.typed import FORMS, number_from, number_of, read_typed

ACCEPTED = [
    ("70", "mm", 70.0),
    ("70.5", "mm", 70.5),
    ("70,5", "mm", 70.5),
    ("0", "mm", 0.0),
    ("2 3/4", "in", 69.85),
    ("2-3/4", "in", 69.85),
    ("13 7/16", "in", 341.3125),
    ("3/4", "in", 19.05),
    ("342 mm", "mm", 342.0),
    ("342mm", "in", 342.0),
    ("34.2 cm", "mm", 342.0),
    (" 342 ", "mm", 342.0),
    ("342\u00a0mm", "mm", 342.0),
    ("2\u202f3/4", "in", 69.85),
    ('2 3/4"', "mm", 69.85),
    ("1/2", "in", 12.7),
    ("2 in.", "mm", 50.8),
    ("2 inches", "mm", 50.8),
    ("2 feet", "mm", 609.6),
    ("1 foot", "mm", 304.8),
    ("2 ft.", "mm", 609.6),
    ("30 mm.", "in", 30.0),
    ("1/8", "in", 3.175),
    ("1/32", "in", 25.4 / 32),
    ("1/64", "in", 25.4 / 64),
]

NOT_A_NUMBER = [
    "1_000", "1e3", "1E3", "0x10", "٣٤٢", "３４２", "४२", "nan", "NaN", "inf", "infinity",
    "½", "1 000", "7.", ".5", ",5", "--5", "+5", "5-", "2 3/5", "2 4/4", "2 5/4", "1/0", "3/4/5",
    "1.5.1/2", "2  3/4", "2 - 3/4", "12 mm 3", "1\x002", "1234567890",
]  # fmt: skip


@pytest.mark.parametrize(("text", "unit", "depth_mm"), ACCEPTED)
def test_accepted(text: str, unit: str, depth_mm: float) -> None:
    assert read_typed(text, unit, "depth_mm", "here").value == depth_mm


@pytest.mark.parametrize("text", NOT_A_NUMBER)
def test_refused_with_what_was_got_and_what_is_allowed(text: str) -> None:
    with pytest.raises(Fault) as caught:
        read_typed(text, "mm", "depth_mm", "here")
    fault = caught.value
    assert fault.code == "not_a_number"
    assert fault.path == "here"
    assert fault.got
    assert "2 3/4" in fault.limit["allowed"]


@pytest.mark.parametrize("text", ["-inf", "2½", "1²", "5e", "7mm2"])
def test_sign_behind_the_number_is_never_passed_over(text: str) -> None:
    with pytest.raises(Fault) as caught:
        read_typed(text, "mm", "depth_mm", "here")
    assert caught.value.code in ("not_a_number", "unknown_unit")
    assert caught.value.limit["allowed"]


@pytest.mark.parametrize("text", ["1.000,5", "6.5.", "1,2,3", "1..5", "1.000.000"])
def test_two_separators(text: str) -> None:
    with pytest.raises(Fault) as caught:
        read_typed(text, "mm", "depth_mm", "here")
    assert (caught.value.code, caught.value.got) == ("two_separators", text)


@pytest.mark.parametrize("text", ["", " ", "\u00a0", "\u202f "])
def test_empty(text: str) -> None:
    with pytest.raises(Fault) as caught:
        read_typed(text, "mm", "depth_mm", "here")
    assert caught.value.code == "empty"
    assert "2 3/4" in caught.value.limit["allowed"]


@pytest.mark.parametrize("form", FORMS)
def test_every_form_that_a_refusal_lists_is_accepted(form: str) -> None:
    assert read_typed(form, "mm", "depth_mm", "here").value > 0


@pytest.mark.parametrize(
    ("text", "zero"), [("-0.2", -0.2), ("\u22120.2", -0.2), ("\u22120,2", -0.2)]
)
def test_minus_of_the_keyboard_and_of_typography(text: str, zero: float) -> None:
    assert read_typed(text, "Brix", "zero_brix", "here").value == zero


@pytest.mark.parametrize("sign", ["\u2013", "\u2014", "\ufe63", "\uff0d"])
def test_other_dashes_are_no_minus(sign: str) -> None:
    with pytest.raises(Fault) as caught:
        read_typed(f"{sign}0.2", "Brix", "zero_brix", "here")
    assert caught.value.code == "not_a_number"


@pytest.mark.parametrize("text", ["5 gal", "5 oz", "5 qt", "5 fl oz"])
def test_bare_gallon_and_ounce(text: str) -> None:
    with pytest.raises(Fault) as caught:
        read_typed(text, "L", "volume_l", "here")
    assert caught.value.code == "ambiguous_unit"


@pytest.mark.parametrize(
    ("quantity", "unit"),
    [("depth_mm", "in"), ("volume_l", "imp gal"), ("temperature_c", "°F"), ("mass_kg", "lb"),
     ("hardness_dh", "gpg"), ("density_kg_l", "lb/US gal")],
)  # fmt: skip
def test_no_unit_at_all_is_refused_where_units_differ(quantity: str, unit: str) -> None:
    with pytest.raises(Fault) as caught:
        read_typed("5", None, quantity, "here")
    assert caught.value.code == "missing_unit"
    assert unit in caught.value.limit["allowed"]


@pytest.mark.parametrize("text", ["1,200", "1.200"])
def test_a_sign_before_three_figures_may_part_thousands(text: str) -> None:
    with pytest.raises(Fault) as caught:
        read_typed(text, "mm", "depth_mm", "here")
    assert caught.value.code == "thousands"
    assert caught.value.limit == {"allowed": ["1.2", "1200"], "unit": "mm"}


@pytest.mark.parametrize(
    ("text", "depth_mm"), [("0,200", 0.2), ("1,20", 1.2), ("1,2000", 1.2), ("1200", 1200.0)]
)
def test_other_figures_after_a_sign_part_nothing(text: str, depth_mm: float) -> None:
    assert read_typed(text, "mm", "depth_mm", "here").value == depth_mm


def test_no_stick_is_a_thousand_inches_long() -> None:
    assert read_typed("1,200", "in", "depth_mm", "here").value == pytest.approx(1.2 * 25.4)


def test_no_unit_beside_the_field_is_needed_where_there_is_only_one_or_it_was_typed() -> None:
    assert read_typed("342 mm", None, "depth_mm", "here").value == 342.0
    assert read_typed("5.2", None, "reading_brix", "here").value == 5.2


@pytest.mark.parametrize(
    ("text", "unit", "code"),
    [
        ("5 L", "mm", "wrong_dimension"),
        ("5", "L", "wrong_dimension"),
        ("5 ell", "mm", "unknown_unit"),
        ("5", "ell", "unknown_unit"),
        ("5 €", "mm", "not_a_number"),
    ],
)
def test_unit_that_does_not_fit(text: str, unit: str, code: str) -> None:
    with pytest.raises(Fault) as caught:
        read_typed(text, unit, "depth_mm", "here")
    assert caught.value.code == code
    assert "2 3/4" in caught.value.limit["allowed"] or "cm" in caught.value.limit["allowed"]


@pytest.mark.parametrize("text", ["0", "5000", "196.85039 in"])
def test_edges_belong_to_the_range(text: str) -> None:
    assert 0 <= read_typed(text, "mm", "depth_mm", "here").value <= 5000


def test_below_an_edge_that_does_not_belong_to_the_range() -> None:
    assert read_typed("39.9", "%", "strength_pct", "here").value == 39.9


@pytest.mark.parametrize(
    ("text", "unit", "quantity", "limits"),
    [("5001", "mm", "depth_mm", {"minimum": 0, "maximum": 5000, "unit": "mm"}),
     ("-1", "mm", "depth_mm", {"minimum": 0, "maximum": 5000, "unit": "mm"}),
     ("9", "mm", "full_depth_mm", {"minimum": 10, "maximum": 5000, "unit": "mm"}),
     ("0.3", "1", "factor", {"above": 0.3, "maximum": 8, "unit": "1"}),
     ("40", "%", "strength_pct", {"minimum": 0, "below": 40, "unit": "%"}),
     ("600", "cm", "depth_mm", {"minimum": 0, "maximum": 500, "unit": "cm"})],
)  # fmt: skip
def test_out_of_range_says_the_limits_in_the_typed_unit(
    text: str, unit: str, quantity: str, limits: dict[str, object]
) -> None:
    with pytest.raises(Fault) as caught:
        read_typed(text, unit, quantity, "here")
    assert caught.value.code == "out_of_range"
    assert caught.value.limit == limits


def test_unusual_is_marked_and_kept() -> None:
    assert read_typed("6", "1", "factor", "here").is_unusual
    for usual in ("0.9", "1.5", "3.5"):
        assert not read_typed(usual, "1", "factor", "here").is_unusual
    assert not read_typed("4000", "mm", "depth_mm", "here").is_unusual


def test_fraction_is_exact() -> None:
    assert number_from("13 7/16", "here") == Fraction(215, 16)
    assert number_from("0.1", "here") == Fraction(1, 10)


@pytest.mark.parametrize(
    ("text", "shown"),
    [
        ("70", Shown(70.0, 0, "mm")),
        ("70.0", Shown(70.0, 1, "mm")),
        ("70,25 cm", Shown(70.25, 2, "cm")),
        ("2 6/8 in", Shown(2.75, 6, "in", MixedFraction(2, 3, 4))),
    ],
)
def test_shown_back_as_it_was_read(text: str, shown: Shown) -> None:
    assert read_typed(text, "mm", "depth_mm", "here").shown == shown


@pytest.mark.parametrize(
    ("text", "unit", "quantity", "both"),
    [
        # A thousand litres are the largest pail that there can be.
        ("1,000", "L", "usable_l", ["1", "1000"]),
        # Too large for the quantity, and refused all the same.
        ("9,000", "mm", "depth_mm", ["9", "9000"]),
        ("30,000", "mL", "jug_amount_l", ["30", "30000"]),
    ],
)
def test_thousands_are_meant_where_they_can_be_and_where_nobody_reads_thousandths(
    text: str, unit: str, quantity: str, both: list[str]
) -> None:
    with pytest.raises(Fault) as caught:
        read_typed(text, unit, quantity, "here")
    assert (caught.value.code, caught.value.limit["allowed"]) == ("thousands", both)


def test_a_number_of_an_entry_comes_in_the_own_unit_or_not_at_all() -> None:
    # 1 in = 25.4 mm exactly (international inch).
    assert number_of({"text": "2", "unit": "in"}, "depth_mm") == 50.8
    assert number_of({"text": "9.1", "unit": "1"}, "ph") == 9.1
    assert number_of({"text": "blue", "unit": "1"}, "ph") is None
    assert number_of(None, "ph") is None
