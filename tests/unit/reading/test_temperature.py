"""pycore.reading.temperature. Published rows stand in shared/checks: refractometer, temperature."""

import json

import pytest
from hypothesis import given
from hypothesis import strategies as st

from pycore.quantity.fault import Fault
from pycore.reading.temperature import (
    COLUMNS_BRIX,
    HIGHEST_C,
    LOWEST_C,
    change_brix,
    change_u_brix,
    correction_brix,
)
from web.build.paths import SHARED

TABLE = json.loads((SHARED / "checks" / "temperature.json").read_text(encoding="utf-8"))["rows"]
READINGS = st.floats(0, 30)
TEMPERATURES = st.floats(10, 30)


@given(READINGS, TEMPERATURES)
def test_zeroed_as_warm_as_read_nothing_is_left(reading_brix: float, at_c: float) -> None:
    assert change_brix(reading_brix, at_c, at_c, "prism", "zero") == 0.0


def test_the_table_is_the_published_one() -> None:
    assert [row["prism_c"] for row in TABLE] == list(range(LOWEST_C, HIGHEST_C + 1))
    for row in TABLE:
        assert tuple(map(int, row["expect"])) == COLUMNS_BRIX
        for at_brix, wanted in row["expect"].items():
            got = correction_brix(float(at_brix), row["prism_c"], "prism")
            assert got == pytest.approx(wanted, abs=1e-9), (row["name"], at_brix)


def test_zeroed_and_read_at_any_temperature_outside_the_table() -> None:
    assert change_brix(5.0, 38.0, 38.0, "prism", "zero") == 0.0


@given(READINGS, TEMPERATURES, TEMPERATURES)
def test_warmer_adds_and_colder_takes_off(
    reading_brix: float, zero_c: float, prism_c: float
) -> None:
    change = change_brix(reading_brix, zero_c, prism_c, "prism", "zero")
    assert (change > 0) == (prism_c > zero_c) or abs(prism_c - zero_c) < 1e-9
    # Trade rule: 0.04 to 0.10 Brix for one degree between 10 and 30 °C.
    assert abs(change) <= 0.11 * abs(prism_c - zero_c) + 1e-12


def test_not_corrected_twice_at_30_degrees() -> None:
    # Zeroed at 30 °C the table would still add 0.74 Brix, 1.1 points at a factor of 1.5.
    assert correction_brix(5.0, 30.0, "prism") * 1.5 == pytest.approx(1.11)
    assert change_brix(5.0, 30.0, 30.0, "prism", "zero") * 1.5 == 0.0


@pytest.mark.parametrize(
    ("zero_c", "prism_c", "path"), [(20, 30.5, "prism"), (20, 9.9, "prism"), (31, 20, "zero")]
)
def test_outside_the_table_is_refused_at_the_temperature(
    zero_c: float, prism_c: float, path: str
) -> None:
    with pytest.raises(Fault) as caught:
        change_brix(5.0, zero_c, prism_c, "prism", "zero")
    assert (caught.value.code, caught.value.path) == ("out_of_range", path)
    assert caught.value.limit == {"minimum": 10.0, "maximum": 30.0, "unit": "°C"}
    assert caught.value.got == (prism_c if path == "prism" else zero_c)


def test_beyond_30_brix_there_is_no_column() -> None:
    with pytest.raises(Fault) as caught:
        correction_brix(30.5, 25.0, "prism")
    assert caught.value.limit == {"maximum": 30.0, "unit": "Brix"}


def test_uncertainty_of_the_two_temperatures() -> None:
    # By hand: slopes 0.06 at 20 °C and 0.08 at 29 to 30 °C, each by 1 °C.
    assert change_u_brix(20.0, 30.0) == pytest.approx(0.1)
    # 0.06 from 14 to 15 °C and 0.08 from 26 to 27 °C.
    assert change_u_brix(14.0, 26.5) == pytest.approx(0.1)


def test_between_columns_and_rows_straight_lines() -> None:
    # By hand: columns of 0 and 5 Brix at 14 °C, -0.33 and -0.35; at 15 °C, -0.27 and -0.29.
    assert correction_brix(2.0, 14.25, "prism") == pytest.approx(-0.323)
    # Below 0 Brix the first column holds.
    assert correction_brix(-0.5, 28.0, "prism") == correction_brix(0.0, 28.0, "prism")
