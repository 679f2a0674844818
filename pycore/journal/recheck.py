"""Expected against found: the second reading after a pour, and what a difference means.

Expected is the balance C1·V1 = C2·V2 with what really went in. Both readings share the fluid's
factor and both dips the sump's scale, so these errors are counted once and largely cancel.
"""

from __future__ import annotations

import math
from dataclasses import dataclass
from typing import Any

from pycore.quantity.measured import Measured, result, shares, variable
from pycore.recipe.outlook import VESSEL_U_SHARE
from pycore.recipe.request import SumpState

# Coverage factor of the expanded uncertainty of a difference, about 95 of 100 (JCGM 100:2008).
_K = 2.0

# A volume that is worked back from two readings says something while its standard uncertainty is
# at most this share of it: common practice, no source.
USEFUL_U_SHARE = 0.25

# What to check first, by the input that the difference is most sensitive to.
_CHECKS = {
    "volume": "check_dip",
    "strength": "check_reading",
    "found": "check_reading",
    "factor": "check_factor",
    "pail_marks": "check_marks",
    "jug_marks": "check_marks",
}


@dataclass(frozen=True)
class Went:
    """What was taken out at the sump's own strength and what was poured, in litres."""

    draw_off_l: float
    water_l: float
    concentrate_l: float


@dataclass(frozen=True)
class Comparison:
    """Expected and found strength; verdict is as_expected, weaker or stronger.

    normalised_error is the difference over its expanded uncertainty (k = 2): beyond 1 either way
    the two do not fit. implied_l is what must have been in the sump before the pour, after the
    draw-off, for the found strength to be right; None where it would say nothing.
    """

    expected_l: Measured
    expected_pct: Measured
    found_pct: Measured
    difference_pct: Measured
    normalised_error: float
    verdict: str
    checks: list[str]
    before_l: Measured
    implied_l: Measured | None = None


@dataclass(frozen=True)
class Dip:
    """A dip as litres: of the depth's own error u_l, of the scale a share of the litres."""

    volume_l: float
    u_l: float
    scale_u_share: float


@dataclass(frozen=True)
class LevelCompared:
    """Expected and found litres on the stick; verdict is as_expected, higher or lower."""

    expected_l: float
    found_l: float
    difference_l: Measured
    normalised_error: float
    verdict: str


def _own(strength_pct: Measured, factor_u_share: float) -> Measured:
    """The strength without the factor's part of its uncertainty."""
    of_factor_pct = strength_pct.value * factor_u_share
    return Measured(strength_pct.value, math.sqrt(max(0.0, strength_pct.u**2 - of_factor_pct**2)))


def _errors(difference: Measured) -> float:
    if difference.u > 0:
        return difference.value / (_K * difference.u)
    return 0.0 if difference.value == 0 else math.copysign(math.inf, difference.value)


def _checks(difference: Any) -> list[str]:
    """What to check, the input that decides most first."""
    found = [_CHECKS[name] for name in shares(difference)]
    return list(dict.fromkeys(found))


def _implied(before: Any, added: Any, neat: Any, found: Any) -> Measured | None:
    """V1 from C1·V1 + 100·c = C2·(V1 + w + c), where two readings are far enough apart for it."""
    gap = found - before
    if abs(result(gap).value) <= _K * result(gap).u:
        return None
    volume = result((100 * neat - found * added) / gap)
    useful = volume.value > 0 and volume.u <= USEFUL_U_SHARE * volume.value
    return volume if useful else None


def compared(
    before: SumpState, went: Went, found_pct: Measured, factor_u_share: float
) -> Comparison:
    """The second reading beside what the balance expects.

    Parameters
    ----------
    before : SumpState
        Circuit at the first dip and reading, before anything was taken out or poured.
    went : Went
        What really went out and in.
    found_pct : Measured
        Strength at the second reading, per cent by volume.
    factor_u_share : float
        Relative standard uncertainty of the factor that both strengths were worked out with.

    >>> sump = SumpState(Measured(154.0, 0.0), Measured(6.0, 0.0))
    >>> again = compared(sump, Went(0.0, 37.0, 6.7), Measured(8.1, 0.2), 0.0)
    >>> round(again.expected_pct.value, 2), again.verdict
    (8.06, 'as_expected')
    """
    factor = variable(Measured(1.0, factor_u_share), "factor")
    first = variable(_own(before.strength_pct, factor_u_share), "strength") * factor
    second = variable(_own(found_pct, factor_u_share), "found") * factor
    volume = variable(before.volume_l, "volume") - went.draw_off_l
    water = went.water_l * variable(Measured(1.0, VESSEL_U_SHARE), "pail_marks")
    neat = went.concentrate_l * variable(Measured(1.0, VESSEL_U_SHARE), "jug_marks")
    total = volume + water + neat
    expected = (volume * first + 100 * neat) / total
    difference = second - expected
    gap = result(difference)
    error = _errors(gap)
    verdict = "as_expected" if abs(error) <= 1 else "weaker" if error < 0 else "stronger"
    return Comparison(
        expected_l=result(total),
        expected_pct=result(expected),
        found_pct=found_pct,
        difference_pct=gap,
        normalised_error=error,
        verdict=verdict,
        checks=[] if verdict == "as_expected" else _checks(difference),
        before_l=result(volume),
        implied_l=None if verdict == "as_expected" else _implied(first, water + neat, neat, second),
    )


def dip_of(volume_l: Measured, depth_u_mm: float, litres_per_mm: float) -> Dip:
    """A dip's litres with the depth's error apart from the scale's, which all dips share."""
    u_l = min(volume_l.u, depth_u_mm * litres_per_mm)
    rest_l = math.sqrt(max(0.0, volume_l.u**2 - u_l**2))
    return Dip(volume_l.value, u_l, rest_l / volume_l.value if volume_l.value > 0 else 0.0)


def level_compared(first: Dip, second: Dip, went: Went) -> LevelCompared:
    """The second dip beside the first one plus what was poured; litres of the sump alone.

    >>> dips = Dip(154.0, 0.9, 0.03), Dip(197.5, 0.9, 0.03)
    >>> level_compared(*dips, Went(0.0, 37.0, 6.7)).verdict
    'as_expected'
    """
    added_l = went.water_l + went.concentrate_l
    expected_l = first.volume_l - went.draw_off_l + added_l
    change_l = second.volume_l - first.volume_l
    parts_l = (
        first.u_l,
        second.u_l,
        change_l * second.scale_u_share,
        VESSEL_U_SHARE * added_l,
    )
    gap = Measured(second.volume_l - expected_l, math.hypot(*parts_l))
    error = _errors(gap)
    verdict = "as_expected" if abs(error) <= 1 else "lower" if error < 0 else "higher"
    return LevelCompared(expected_l, second.volume_l, gap, error, verdict)
