"""pycore.reading.drum: how old the drum is, and magnesium."""

import pytest

from pycore.quantity.dates import Moment, moment_from
from pycore.quantity.fault import Fault
from pycore.reading.drum import DrumAge, drum_age, metal_cautions


def _moment(text: str | None) -> Moment | None:
    return moment_from(text, "x") if text else None


def _age(delivered: str | None, opened: str | None, months: int | None, today: str) -> DrumAge:
    return drum_age(_moment(delivered), _moment(opened), months, moment_from(today, "x"), "fluid")


@pytest.mark.parametrize(
    ("today", "codes"),
    [("2027-05-04", []), ("2027-05-04T14:00", []), ("2027-05-05", ["past_shelf_life"])],
)
def test_last_day_of_the_shelf_life_still_counts(today: str, codes: list[str]) -> None:
    got = _age("2026-05-04", None, 12, today)
    assert (got.best_before, got.cautions) == ("2027-05-04", codes)


@pytest.mark.parametrize(
    ("today", "codes"),
    [
        ("2026-11-04", []),
        ("2026-11-04T14:00", []),
        ("2026-11-05", ["ask_shelf_life"]),
        ("2027-05-04", ["ask_shelf_life"]),
        ("2027-05-04T14:00", ["ask_shelf_life"]),
        ("2027-05-05", ["past_usual_shelf_life"]),
    ],
)
def test_without_a_shelf_life_the_usual_one_is_asked_about(today: str, codes: list[str]) -> None:
    # DGUV Information 209-051: usually 6 to 12 months.
    assert _age("2026-05-04", None, None, today).cautions == codes


def test_whole_days_of_both_dates() -> None:
    got = _age("2026-05-04", "2026-10-12", 12, "2026-11-25T14:00")
    assert (got.delivered_d, got.opened_d) == (205, 44)


def test_nothing_known_is_said() -> None:
    assert _age(None, None, 12, "2026-11-25").cautions == ["drum_age_unknown"]


@pytest.mark.parametrize(
    ("delivered", "opened", "path"),
    [
        ("2026-11-26", None, "fluid.delivered_on"),
        (None, "2026-11-26", "fluid.opened_on"),
        ("2026-06-01", "2026-05-01", "fluid.delivered_on"),
    ],
)
def test_dates_in_the_wrong_order(delivered: str | None, opened: str | None, path: str) -> None:
    with pytest.raises(Fault) as caught:
        _age(delivered, opened, 12, "2026-11-25")
    assert (caught.value.code, caught.value.path) == ("order", path)


@pytest.mark.parametrize(
    ("metals", "made", "codes"),
    [
        (None, None, ["magnesium_not_asked"]),
        ([], None, []),
        (["steel"], None, []),
        (["magnesium"], True, ["magnesium"]),
        (["steel", "magnesium"], None, ["magnesium", "not_made_for_magnesium"]),
    ],
)
def test_magnesium(metals: list[str] | None, made: bool | None, codes: list[str]) -> None:
    assert metal_cautions(metals, made) == codes


def test_shelf_life_counts_from_the_opening_where_no_delivery_is_known() -> None:
    assert _age(None, "2026-05-04", 12, "2026-06-01").best_before == "2027-05-04"
