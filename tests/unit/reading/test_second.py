"""pycore.reading.second: comparing two methods, and what pulls them apart."""

import pytest

from pycore.quantity.fault import Fault
from pycore.quantity.measured import Measured
from pycore.reading.second import METHODS, disturbances, normalised_error, refuse_useless


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
@pytest.mark.parametrize("method", METHODS)
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
