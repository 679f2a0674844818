"""pycore.reading.water. Conversions are checked in shared/checks/hardness.json."""

import pytest

from pycore.reading.water import DEMINERALISED_MOST_MG_L, hardness_in_units, water_cautions


def test_five_units_of_one_hardness() -> None:
    got = hardness_in_units(178.4799224)
    assert got["hardness_dh"] == pytest.approx(10.0)
    assert got["hardness_fh"] == pytest.approx(17.848, abs=1e-3)
    # 178.48 mg/L are 10 °dH; a grain a US gallon is 17.118 mg/L, a mmol/L 100.09 mg/L.
    assert got["hardness_mg_l"] == pytest.approx(178.4799224)
    assert got["hardness_gpg"] == pytest.approx(10.427, abs=2e-3)
    assert got["hardness_mmol_l"] == pytest.approx(1.783, abs=2e-3)
    assert len(got) == 5


@pytest.mark.parametrize(
    ("water", "codes"),
    [
        (("mains", 200.0, 40.0, 20.0, (89.0, 268.0)), []),
        # Limits and edges belong to what is allowed; what is not known is not blamed.
        (("mains", 89.0, None, None, (89.0, 268.0)), []),
        (("mains", 268.0, None, None, (89.0, 268.0)), []),
        (("mains", None, None, None, (89.0, 268.0)), []),
        (("mains", 0.5, None, None, None), []),
        (("demineralised", DEMINERALISED_MOST_MG_L, None, None, None), []),
        (("demineralised", None, None, None, None), []),
        (("mains", 88.0, None, None, (89.0, 268.0)), ["water_too_soft"]),
        (("mains", 269.0, None, None, (89.0, 268.0)), ["water_too_hard"]),
        (("mains", 500.0, None, None, None), []),
        (("softened", None, None, None, None), ["softened_keeps_salts"]),
        (("demineralised", 143.0, None, None, None), ["hard_for_demineralised"]),
        (("demineralised", 142.0, None, None, None), []),
        # TRGS 611, 5.2: 50 mg/L of nitrate is still allowed.
        (("mains", None, 100.0, 50.0, None), []),
        (("mains", None, 100.1, 50.1, None), ["chloride_high", "nitrate_high"]),
    ],
)
def test_cautions(
    water: tuple[str, float | None, float | None, float | None, tuple[float, float] | None],
    codes: list[str],
) -> None:
    assert water_cautions(*water) == codes
