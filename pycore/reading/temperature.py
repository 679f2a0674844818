"""What the temperature of the prism does to a reading on the sucrose scale.

Source of the table: the international temperature correction table for 20 °C (ICUMSA; printed in
NBS Circular 440 and many standards). Rows of 10 to 21 °C and that of 22 °C up to 25 % were read in
a reprint, an interstate food standard's table A.1; the rest of 22 to 30 °C is from memory. The
tests hold every number against shared/checks, and the 0 % column against the refractive index of
water (IAPWS R9-97): it agrees within 0.025 Brix.
"""

from __future__ import annotations

import math
from bisect import bisect_left

from pycore.quantity.fault import Fault

COLUMNS_BRIX = (0, 5, 10, 15, 20, 25, 30)

# °C: hundredths of a Brix to add to a reading, by column.
_TABLE = {
    10: (-50, -54, -58, -61, -64, -66, -68),
    11: (-46, -49, -53, -55, -58, -60, -62),
    12: (-42, -45, -48, -50, -52, -54, -56),
    13: (-37, -40, -42, -44, -46, -48, -49),
    14: (-33, -35, -37, -39, -40, -41, -42),
    15: (-27, -29, -31, -33, -34, -34, -35),
    16: (-22, -24, -25, -26, -27, -28, -28),
    17: (-17, -18, -19, -20, -21, -21, -21),
    18: (-12, -13, -13, -14, -14, -14, -14),
    19: (-6, -6, -6, -7, -7, -7, -7),
    20: (0, 0, 0, 0, 0, 0, 0),
    21: (6, 7, 7, 7, 7, 8, 8),
    22: (13, 13, 14, 14, 15, 15, 15),
    23: (19, 20, 21, 22, 22, 23, 23),
    24: (26, 27, 28, 29, 30, 30, 31),
    25: (33, 35, 36, 37, 38, 38, 39),
    26: (40, 42, 43, 44, 45, 46, 47),
    27: (48, 50, 52, 53, 54, 55, 55),
    28: (56, 57, 60, 61, 62, 63, 63),
    29: (64, 66, 68, 69, 71, 72, 72),
    30: (72, 74, 77, 78, 79, 80, 80),
}
LOWEST_C, HIGHEST_C = min(_TABLE), max(_TABLE)

# Standard uncertainty of each of the two temperatures: common practice, no source.
TEMPERATURE_U_C = 1.0


def _in_row(row: tuple[int, ...], reading_brix: float) -> float:
    # Water warmer than 20 °C reads below 0; its column is the first one.
    at_brix = max(reading_brix, 0.0)
    right = max(bisect_left(COLUMNS_BRIX, at_brix), 1)
    left = right - 1
    part = (at_brix - COLUMNS_BRIX[left]) / (COLUMNS_BRIX[right] - COLUMNS_BRIX[left])
    return (row[left] + part * (row[right] - row[left])) / 100


def correction_brix(reading_brix: float, prism_c: float, path: str) -> float:
    """What a reading at ``prism_c`` lacks to the reading at 20 °C, in Brix, to be added.

    Straight lines between the table's entries. Valid: up to 30 Brix, 10 to 30 °C. Error:
    ``out_of_range`` outside, since no published value is there to go by; ``path`` names the
    temperature.

    >>> round(correction_brix(0.0, 30.0, "temperature"), 9)
    0.72
    """
    if not LOWEST_C <= prism_c <= HIGHEST_C:
        limit = {"minimum": float(LOWEST_C), "maximum": float(HIGHEST_C), "unit": "°C"}
        raise Fault("out_of_range", path, prism_c, limit)
    if reading_brix > COLUMNS_BRIX[-1]:
        limit = {"maximum": float(COLUMNS_BRIX[-1]), "unit": "Brix"}
        raise Fault("out_of_range", path, reading_brix, limit)
    below_c = min(int(prism_c), HIGHEST_C - 1)
    low = _in_row(_TABLE[below_c], reading_brix)
    high = _in_row(_TABLE[below_c + 1], reading_brix)
    return low + (prism_c - below_c) * (high - low)


def change_brix(
    reading_brix: float, zero_c: float, prism_c: float, path: str, zero_path: str
) -> float:
    """What to add to a reading because the prism is warmer or colder than it was at the zero.

    Zeroing in water has already taken off what the temperature did then, so only the difference
    between the two temperatures is left: none at all where they are equal, at any temperature.
    Errors: those of ``correction_brix``, at the path of the temperature that is outside.

    >>> change_brix(5.0, 30.0, 30.0, "temperature", "zero")
    0.0
    >>> round(change_brix(5.0, 20.0, 30.0, "temperature", "zero"), 9)
    0.74
    """
    if zero_c == prism_c:
        return 0.0
    at_prism = correction_brix(reading_brix, prism_c, path)
    return at_prism - correction_brix(reading_brix, zero_c, zero_path)


def change_u_brix(zero_c: float, prism_c: float) -> float:
    """Standard uncertainty of that change from the two temperatures' own, in Brix.

    The slope is that of the 0 % column; each temperature is known to ``TEMPERATURE_U_C``. Valid:
    10 to 30 °C.
    """
    slopes = [_slope_per_c(at_c) for at_c in (zero_c, prism_c)]
    return TEMPERATURE_U_C * math.hypot(*slopes)


def _slope_per_c(at_c: float) -> float:
    below_c = min(int(at_c), HIGHEST_C - 1)
    return (_TABLE[below_c + 1][0] - _TABLE[below_c][0]) / 100
