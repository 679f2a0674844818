"""Mixing water: its hardness in every unit, and what to think of before it goes into a bucket."""

from __future__ import annotations

import math

from pycore.quantity.units import UNITS, from_base

# Unit of each hardness that is given back, all exact (sources in pycore/quantity/units.py).
HARDNESS_UNITS = {
    "hardness_mg_l": "mg/L CaCO₃",
    "hardness_dh": "°dH",
    "hardness_fh": "°fH",
    "hardness_gpg": "gpg",
    "hardness_mmol_l": "mmol/L",
}
# TRGS 611, 5.2: mixing and top-up water holds at most so much nitrate.
NITRATE_MOST_MG_L = 50.0
# Rust and germs above: common practice, no source.
CHLORIDE_MOST_MG_L = 100.0
# Water that was demineralised holds less hardness than this; 8 °dH: common practice, no source.
DEMINERALISED_MOST_MG_L = 8 * float(UNITS["°dH"].factor)


def hardness_in_units(hardness_mg_l: float) -> dict[str, float]:
    """A hardness in mg/L of calcium carbonate in all five units, valid from 0 on.

    >>> round(hardness_in_units(100.0)["hardness_dh"], 3)
    5.603
    """
    return {name: from_base(hardness_mg_l, UNITS[unit]) for name, unit in HARDNESS_UNITS.items()}


def water_cautions(
    kind: str,
    hardness_mg_l: float | None,
    chloride_mg_l: float | None,
    nitrate_mg_l: float | None,
    limits_mg_l: tuple[float, float] | None,
) -> list[str]:
    """Codes of what to take care of with this water.

    kind is demineralised, softened or mains. limits_mg_l are the fluid's own limits of the mixing
    water's hardness in mg/L of calcium carbonate: published advice differs so far (DGUV 10 to
    20 °dH, the United States call the same water very hard) that there is no limit of our own.
    """
    hard, chloride, nitrate = hardness_mg_l, chloride_mg_l, nitrate_mg_l
    low_mg_l, high_mg_l = limits_mg_l or (-math.inf, math.inf)
    is_too_hard = hard is not None and hard > DEMINERALISED_MOST_MG_L
    holds = {
        "softened_keeps_salts": kind == "softened",
        "hard_for_demineralised": kind == "demineralised" and is_too_hard,
        "water_too_soft": hard is not None and hard < low_mg_l,
        "water_too_hard": hard is not None and hard > high_mg_l,
        "chloride_high": chloride is not None and chloride > CHLORIDE_MOST_MG_L,
        "nitrate_high": nitrate is not None and nitrate > NITRATE_MOST_MG_L,
    }
    return [code for code, so in holds.items() if so]
