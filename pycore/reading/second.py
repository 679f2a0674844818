"""A second way to the strength, beside the refractometer, and what to make of a disagreement.

Both are kept and never averaged: each method is led astray by something of its own. Source of the
disturbances: DGUV Regel 109-003, 7.1 (tramp oil, changed droplets and temperature falsify the
refractometer; carried-in acid, alkali or biocide the titration); that an acid split measures all
oil and is blind without it: common practice, no source.
"""

from __future__ import annotations

import math

from pycore.quantity.fault import Fault
from pycore.quantity.measured import Measured

# Standard uncertainty of what is read off: half a division of a split flask, half a drop or
# millilitre mark of a titration; and of either method's factor. Common practice, no source.
SECOND_U = {"acid_split": 0.5, "titration": 0.5}
SECOND_FACTOR_U_SHARE = 0.05

# Coverage factor of the expanded uncertainties that are compared.
_K = 2.0


def refuse_useless(method: str, fluid_type: str, path: str) -> None:
    """Raises ``not_allowed`` for an acid split of a synthetic fluid, which holds no oil."""
    if method == "acid_split" and fluid_type == "synthetic":
        raise Fault("not_allowed", path, method, {"allowed": ["titration"]})


def normalised_error(first_pct: Measured, second_pct: Measured) -> float:
    """Difference of two results over their combined expanded uncertainty (k = 2), with its sign.

    Beyond 1 either way they disagree by more than their uncertainties allow. Source: E_n number,
    ISO 13528 and ISO/IEC 17043 annex B (from memory). Valid: at least one u above 0, in per cent
    by volume.

    >>> round(normalised_error(Measured(8.0, 0.3), Measured(6.0, 0.4)), 9)
    2.0
    """
    return (first_pct.value - second_pct.value) / (_K * math.hypot(first_pct.u, second_pct.u))


def disturbances(method: str, fluid_type: str, first_is_high: bool) -> list[str]:
    """Codes of what can pull refractometer and second method apart in this direction.

    The refractometer sees everything in the water and errs to the high side; the split counts all
    oil, so emulsified tramp oil raises both and only minerals and cleaner are left to explain a
    high reading; the titration ignores oil, is raised by cleaner and falls in a sour fluid.
    """
    codes = []
    if first_is_high:
        if method == "titration" and fluid_type != "synthetic":
            codes.append("refractometer_sees_oil")
        codes.append("refractometer_sees_minerals")
        if method == "titration":
            codes.append("titration_falls_when_sour")
    elif method == "titration":
        codes.append("titration_raised_by_cleaner")
    else:
        codes.append("split_counts_tramp_oil")
    return [*codes, "pour_the_smaller_dose", "ask_a_laboratory"]
