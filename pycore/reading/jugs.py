"""Finding the factor oneself: jugs of known strength, each read once.

The reading is what errs most, so it is fitted against the strength: reading = strength / factor,
with an offset only where the readings ask for one. Sources: weighted least squares and the test
of a term by its own standard uncertainty, NIST/SEMATECH e-Handbook 4.4.3.2 and 4.4.4.6 (from
memory); chi-squared as the test of consistency and the enlarged uncertainty where it fails
(Birge ratio): M. G. Cox, Metrologia 39 (2002) 589, procedure A, and CODATA practice (from memory).
"""

from __future__ import annotations

import math
from dataclasses import dataclass

from pycore.quantity.fault import Fault
from pycore.quantity.known import KNOWN
from pycore.quantity.measured import Measured
from pycore.reading.line import Line, fit_line

# Standard normal, two sides of 5 %: the interval that is given.
K_95 = 1.96
# Two sides of 1 %: an offset is fitted only beyond it. A mix of nothing reads nothing, so that is
# what holds until the jugs speak clearly against it; at 5 % the choice itself spoiled the interval
# (python3 -m tests.properties.reading.factor_fit: 92 % of intervals held instead of 95 %).
OFFSET_K = 2.576
# Upper 5 % points of chi-squared at 1 to 4 degrees of freedom (e-Handbook 1.3.6.7.4).
_CHI2_95 = {1: 3.841, 2: 5.991, 3: 7.815, 4: 9.488}
# A jug that lies more than this many standard uncertainties off the line stands out; of five good
# ones that happens by chance once in a hundred fits.
STANDS_OUT_K = 3.0
# Jugs closer together than this many points of strength say little: common practice, no source.
LEAST_SPAN_PCT = 3.0
FEWEST_JUGS, MOST_JUGS = 2, 5

# Relative standard uncertainty of one amount (its own mark) and of the concentrate's vessel
# against the water's (the same in every jug): common practice, no source.
VESSEL_U_SHARE = {"syringe": (0.005, 0.005), "jug": (0.02, 0.01)}


@dataclass(frozen=True)
class Jug:
    """One known mix: its strength, and the reading with the zero taken off; u of each its own."""

    strength_pct: Measured
    reading_brix: Measured


@dataclass(frozen=True)
class FittedFactor:
    """The factor, its 95 % interval, the offset where there is one, and how well the jugs fit.

    off_brix is what each jug reads above the line, scores the same in its standard uncertainties.
    """

    factor: Measured
    low_share: float
    high_share: float
    offset_brix: Measured | None
    off_brix: list[float]
    scores: list[float]
    scatters: bool
    stands_out: list[int]
    span_pct: float


def jug_of(water_l: float, concentrate_l: float, amount_u_share: float) -> Measured:
    """Strength of a jug in per cent by volume, u from both amounts' own marks.

    Volumes are taken as additive. Valid: water_l + concentrate_l above 0.

    >>> jug_of(0.95, 0.05, 0.0).value
    5.0
    """
    strength_pct = 100 * concentrate_l / (water_l + concentrate_l)
    # d(ln s) = (1 − s)(d ln concentrate − d ln water), each with the same relative u.
    share = (1 - strength_pct / 100) * math.sqrt(2) * amount_u_share
    return Measured(strength_pct, strength_pct * share)


def _first_slope(jugs: list[Jug]) -> float:
    """Brix for one per cent, good enough to weigh the jugs by. Raises ``out_of_range``."""
    oil = math.fsum(jug.strength_pct.value for jug in jugs)
    read = math.fsum(jug.reading_brix.value for jug in jugs)
    for total, unit in ((oil, "%"), (read, "Brix")):
        if total <= 0:
            raise Fault("out_of_range", "jugs", total, {"above": 0.0, "unit": unit})
    return read / oil


def fit_factor(jugs: list[Jug], vessel_u_share: float, zero_u_brix: float) -> FittedFactor:
    """The factor that two to five jugs give.

    Parameters
    ----------
    jugs : list of Jug
        Known mixes of one fluid, each with its reading.
    vessel_u_share : float
        Relative standard uncertainty of the concentrate's vessel against the water's, the same in
        every jug.
    zero_u_brix : float
        Standard uncertainty of the zero, the same in every jug, Brix.

    Errors: ``too_few``, ``too_many``; ``out_of_range`` when jugs or readings are all nothing, for
    a factor that no fluid has, or when its relative standard uncertainty leaves it open upwards.
    """
    if len(jugs) < FEWEST_JUGS:
        raise Fault("too_few", "jugs", len(jugs), {"least": FEWEST_JUGS})
    if len(jugs) > MOST_JUGS:
        raise Fault("too_many", "jugs", len(jugs), {"most": MOST_JUGS})
    slope = _first_slope(jugs)
    x = [jug.strength_pct.value for jug in jugs]
    y = [jug.reading_brix.value for jug in jugs]
    y_u = [math.hypot(jug.reading_brix.u, slope * jug.strength_pct.u) for jug in jugs]
    line = fit_line(x, y, y_u, through_zero=True)
    has_offset = False
    # A line with an offset through two jugs would fit them whatever they read.
    if len(jugs) > FEWEST_JUGS and max(x) > min(x):
        other = fit_line(x, y, y_u)
        # A zero that is a little off is no offset of the mix; its u is part of the comparison.
        has_offset = abs(other.offset) > OFFSET_K * math.hypot(other.offset_u, zero_u_brix)
        line = other if has_offset else line
    return _fitted(line, x, y_u, has_offset, vessel_u_share, zero_u_brix)


def _fitted(
    line: Line,
    x: list[float],
    y_u: list[float],
    has_offset: bool,
    vessel_u_share: float,
    zero_u_brix: float,
) -> FittedFactor:
    known = KNOWN["factor"]
    least, most = known.above or 0.0, known.maximum or 0.0
    factor = 1 / line.slope if line.slope > 0 else math.inf
    if not least < factor <= most:
        got = factor if math.isfinite(factor) else None
        raise Fault("out_of_range", "jugs", got, {"above": least, "maximum": most, "unit": "1"})
    scatters = line.freedom * line.spread**2 > _CHI2_95[line.freedom]
    enlarged = line.spread if scatters else 1.0
    zero_part = 0.0
    if not has_offset:
        # A zero that is wrong bends a line through zero; one with an offset takes it up.
        weights = [1 / u**2 for u in y_u]
        sums = [math.fsum(w * a**n for w, a in zip(weights, x, strict=True)) for n in (1, 2)]
        zero_part = zero_u_brix * sums[0] / sums[1]
    parts = (line.slope_u * enlarged, line.slope * vessel_u_share, zero_part)
    share = math.hypot(*parts) / line.slope
    if share * K_95 >= 1:
        raise Fault("out_of_range", "jugs", share, {"below": 1 / K_95, "unit": "1"})
    scores = _scores(line, x, y_u, has_offset)
    return FittedFactor(
        factor=Measured(factor, factor * share),
        # The interval of the slope, turned over: it is not the same to both sides.
        low_share=1 / (1 + K_95 * share),
        high_share=1 / (1 - K_95 * share),
        offset_brix=Measured(line.offset, line.offset_u * enlarged) if has_offset else None,
        off_brix=line.residuals,
        scores=scores,
        scatters=scatters,
        stands_out=_stands_out(scores),
        span_pct=max(x) - min(x),
    )


def _scores(line: Line, x: list[float], y_u: list[float], has_offset: bool) -> list[float]:
    """Each residual in its own standard uncertainty, which is less than the reading's: the line
    has been drawn towards it (leverage)."""
    weights = [1 / u**2 for u in y_u]
    total = math.fsum(weights)
    centre = math.fsum(w * a for w, a in zip(weights, x, strict=True)) / total if has_offset else 0
    xx = math.fsum(w * (a - centre) ** 2 for w, a in zip(weights, x, strict=True))
    scores = []
    for a, u, off in zip(x, y_u, line.residuals, strict=True):
        drawn = (1 / total if has_offset else 0.0) + (a - centre) ** 2 / xx
        left = u**2 - drawn
        # A jug that alone decides a term lies on the line whatever it reads.
        scores.append(off / math.sqrt(left) if left > 1e-9 * u**2 else 0.0)
    return scores


def _stands_out(scores: list[float]) -> list[int]:
    """Places of the jugs to look at again: the worst one, or both where only two were made."""
    worst = max(abs(score) for score in scores)
    if worst <= STANDS_OUT_K:
        return []
    # Pulled by a bad jug the others stand out too, so only the worst is named; two jugs that
    # disagree do so alike.
    return [i for i, score in enumerate(scores) if abs(score) > worst * (1 - 1e-6)]
