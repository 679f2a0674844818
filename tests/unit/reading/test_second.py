"""pycore.reading.second: comparing two methods, and what pulls them apart."""

import pytest

from pycore.quantity.fault import Fault
from pycore.quantity.measured import Measured
from pycore.reading.second import (
    SECOND_FACTOR_U_SHARE,
    SECOND_U,
    disturbances,
    normalised_error,
    refuse_useless,
)


def test_normalised_error_by_hand() -> None:
    # 2/(2·0.5), with its sign.
    assert normalised_error(Measured(8.0, 0.3), Measured(6.0, 0.4)) == pytest.approx(2.0)
    assert normalised_error(Measured(6.0, 0.4), Measured(8.0, 0.3)) == pytest.approx(-2.0)


def test_a_split_is_blind_for_a_synthetic() -> None:
    with pytest.raises(Fault) as caught:
        refuse_useless("acid_split", "synthetic", "body.second.method")
    assert caught.value.limit == {"allowed": ["titration"]}
    assert refuse_useless("titration", "synthetic", "x") is None
    assert refuse_useless("acid_split", "soluble_oil", "x") is None


@pytest.mark.parametrize("fluid_type", ["soluble_oil", "semi_synthetic", "synthetic"])
@pytest.mark.parametrize("method", SECOND_U)
@pytest.mark.parametrize("first_is_high", [True, False])
def test_each_direction_has_its_own_reasons(
    method: str, fluid_type: str, first_is_high: bool
) -> None:
    codes = disturbances(method, fluid_type, first_is_high)
    assert codes[-2:] == ["pour_the_smaller_dose", "ask_a_laboratory"]
    assert len(codes) > 2
    assert not set(codes) & set(disturbances(method, fluid_type, not first_is_high)[:-2])
    # No oil is dissolved in a synthetic; the split counts oil just as the refractometer sees it.
    assert ("refractometer_sees_oil" in codes) == (
        first_is_high and method == "titration" and fluid_type != "synthetic"
    )


def test_normalised_error_where_its_denominator_is_not_one() -> None:
    # 2 / (2 · 1.0) and 3 / (2 · 0.25).
    assert normalised_error(Measured(8.0, 0.6), Measured(6.0, 0.8)) == pytest.approx(1.0)
    assert normalised_error(Measured(9.0, 0.15), Measured(6.0, 0.2)) == pytest.approx(6.0)


@pytest.mark.parametrize(
    ("method", "first_is_high", "codes"),
    [
        # DGUV Regel 109-003, 7.1; of the split: common practice, no source.
        ("acid_split", True, ["refractometer_sees_minerals"]),
        ("acid_split", False, ["split_counts_tramp_oil"]),
        ("titration", False, ["titration_raised_by_cleaner"]),
        (
            "titration",
            True,
            ["refractometer_sees_oil", "refractometer_sees_minerals", "titration_falls_when_sour"],
        ),
    ],
)
def test_what_pulls_the_two_apart(method: str, first_is_high: bool, codes: list[str]) -> None:
    assert disturbances(method, "soluble_oil", first_is_high)[:-2] == codes


def test_what_is_read_off_and_the_factor_have_their_errors() -> None:
    # Half a division, half a drop, and a twentieth of the factor: common practice, no source.
    assert SECOND_U == {"acid_split": 0.5, "titration": 0.5}
    assert SECOND_FACTOR_U_SHARE == 0.05
