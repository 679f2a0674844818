"""The temperature table's 0 % column against water itself: IAPWS R9-97 by the library iapws.

n of water against vacuum, at the sodium line and 0.101325 MPa; differences from 20 °C, so that the
index of air falls out but for 3 in 10,000. One Brix is 0.00143 of nD at water (ICUMSA scale).
"""

import pytest
from iapws import IAPWS95
from iapws._iapws import _Refractive

from pycore.reading.refraction import BRIX_PER_INDEX
from pycore.reading.temperature import HIGHEST_C, LOWEST_C, correction_brix

SODIUM_UM = 0.5893


def index_of_water(at_c: float) -> float:
    """Refractive index against vacuum."""
    at_k = at_c + 273.15
    return float(_Refractive(IAPWS95(T=at_k, P=0.101325).rho, at_k, SODIUM_UM))


def test_the_library_gives_the_release_its_own_check_points() -> None:
    # IAPWS R9-97, table of computer-program verification: 1.39277824 and 1.00949307.
    assert _Refractive(997.047435, 298.15, 0.2265) == pytest.approx(1.39277824, abs=5e-9)
    assert _Refractive(30.4758534, 773.15, SODIUM_UM) == pytest.approx(1.00949307, abs=5e-9)


@pytest.mark.parametrize("at_c", range(LOWEST_C, HIGHEST_C + 1))
def test_water_reads_what_the_table_takes_off(at_c: int) -> None:
    lost = index_of_water(20.0) - index_of_water(at_c)
    # Tolerance: 0.025 Brix; the table is of 1936 and given to 0.01.
    assert correction_brix(0.0, at_c, "x") == pytest.approx(lost * BRIX_PER_INDEX, abs=0.025)


def test_the_scale_begins_at_water_in_air() -> None:
    # n of air at 20 °C and 101,325 Pa is 1.000272 (from memory); against vacuum the zero would
    # be 0.25 Brix wrong.
    assert index_of_water(20.0) / 1.000272 == pytest.approx(1.33299, abs=1e-5)
