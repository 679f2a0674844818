"""pycore.reading.instrument: scale, zero, temperature and a blurred line."""

from dataclasses import replace

import pytest

from pycore.quantity.fault import Fault
from pycore.quantity.units import UNITS
from pycore.reading.instrument import (
    SCALE_UNITS,
    Instrument,
    TemperatureChange,
    cures_of,
    refuse_off_scale,
    temperature_change,
    zero_notes,
)

PLAIN = Instrument(zero_brix=0.0, zero_c=20.0, compensation="none")


@pytest.mark.parametrize(
    ("instrument", "shown", "brix"),
    [
        (Instrument(), 5.2, 5.2),
        (Instrument("per_cent", 1.5), 7.8, 5.2),
        (Instrument("refractive_index"), 1.341452, 5.8),
    ],
)
def test_scale_to_brix_and_back(instrument: Instrument, shown: float, brix: float) -> None:
    assert instrument.brix_from(shown, "x") == pytest.approx(brix, abs=1e-3)
    assert instrument.shown_from(brix, "x") == pytest.approx(shown, abs=1e-6)


def test_every_scale_has_its_unit_and_brix_is_the_usual_one() -> None:
    # The contract's names of the three scales.
    assert set(SCALE_UNITS) == {"brix", "refractive_index", "per_cent"}
    assert set(SCALE_UNITS.values()) <= UNITS.keys()
    assert Instrument().scale in SCALE_UNITS
    assert Instrument().resolution_brix == 0.0


def test_steps_of_each_scale() -> None:
    assert Instrument().step_brix(0.2) == 0.2
    assert Instrument("per_cent", 2.0).step_brix(0.2) == 0.1
    # By hand: 0.0001/0.00143.
    assert Instrument("refractive_index").step_brix(0.0001) == pytest.approx(0.0699, abs=1e-4)


@pytest.mark.parametrize("shown", [-0.1, 18.1])
def test_off_scale_is_refused_and_its_ends_are_not(shown: float) -> None:
    with pytest.raises(Fault) as caught:
        refuse_off_scale(shown, 0.0, 18.0, "Brix", "x")
    assert caught.value.code == "off_scale"
    assert caught.value.limit == {"minimum": 0.0, "maximum": 18.0, "unit": "Brix"}
    assert refuse_off_scale(18.0, 0.0, 18.0, "Brix", "x") is None
    assert refuse_off_scale(0.0, 0.0, 18.0, "Brix", "x") is None
    assert refuse_off_scale(40.0, 0.0, None, "Brix", "x") is None


def test_only_the_difference_is_corrected_and_only_without_compensation() -> None:
    assert temperature_change(PLAIN, 5.0, 28.0, "p", "z").change_brix == pytest.approx(0.57)
    assert temperature_change(PLAIN, 5.0, 20.0, "p", "z") == TemperatureChange(0.0, 0.0, None)
    for compensation in ("automatic", None):
        other = replace(PLAIN, compensation=compensation)
        assert temperature_change(other, 5.0, 28.0, "p", "z").change_brix == 0.0


@pytest.mark.parametrize(
    ("zero_c", "prism_c", "compensation", "note"),
    [
        (20.0, 28.0, "none", None),
        (20.0, 28.0, "automatic", None),
        (20.0, 28.0, None, "compensation_not_known"),
        (20.0, 21.0, None, None),
        (20.0, 18.6, None, None),
        (20.0, 21.5, None, "compensation_not_known"),
        (None, 28.0, "none", "temperature_not_known"),
        (20.0, None, "none", "temperature_not_known"),
        (None, None, "automatic", None),
    ],
)
def test_what_is_not_known_is_said(
    zero_c: float | None, prism_c: float | None, compensation: str | None, note: str | None
) -> None:
    instrument = Instrument(zero_brix=0.0, zero_c=zero_c, compensation=compensation)
    assert temperature_change(instrument, 5.0, prism_c, "p", "z").note == note


@pytest.mark.parametrize(
    ("age_d", "notes"),
    [(None, ["zero_age_unknown"]), (0.0, []), (1.0, []), (1.01, ["zero_old"])],
)
def test_zero_older_than_a_day(age_d: float | None, notes: list[str]) -> None:
    assert zero_notes(PLAIN, age_d) == notes


def test_zero_never_taken() -> None:
    assert zero_notes(Instrument(), None) == ["zero_not_taken"]


def test_cures_of_a_blurred_line() -> None:
    assert cures_of("optical", False) == []
    # DGUV/IFA portal, "Gebrauchskonzentration": filter first, dilute after that.
    at_first = ["filter_the_sample", "read_the_middle"]
    assert cures_of("blurred", False) == [*at_first, "dilute_and_double"]
    assert cures_of("blurred", True) == [*at_first, "use_the_second_method"]
