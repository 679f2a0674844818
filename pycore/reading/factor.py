"""A fluid's factor: given as a number to multiply or divide by, or as a printed chart.

Inside it is always per cent by volume for one Brix. Which way round a sheet means it is never
guessed: "a 5 % mix reads …" says it so that a person can see it.
"""

from __future__ import annotations

from dataclasses import dataclass, replace
from itertools import pairwise

from pycore.quantity.fault import Fault
from pycore.quantity.known import KNOWN
from pycore.quantity.measured import Measured

# The mix whose reading is shown as an example: a strength that every such fluid is run near.
EXAMPLE_PCT = 5.0

# Usual factor of each type of fluid, asked about once outside: common practice, no source.
FACTOR_USUAL = {
    "soluble_oil": (0.9, 1.2),
    "semi_synthetic": (1.1, 1.9),
    "synthetic": (1.4, 3.5),
}
# A factor that moved by more than this share since the last time is asked about, and an
# uncertainty of the factor beyond the second one: common practice, no source.
MOVED_SHARE = 0.10
UNUSUAL_U_SHARE = 0.15
# Slopes of a printed chart that differ by more than this are asked about: a misread pair is more
# likely than a fluid so far from a straight line. Common practice, no source.
BENT_SHARE = 0.15
# Relative standard uncertainty where a chart is carried on past its last pair, as for a factor
# found on old fluid: common practice, no source.
BEYOND_U_SHARE = 0.10


@dataclass(frozen=True)
class Segment:
    """The factor that holds at one reading, the Brix at which its line meets 0 %, and whether
    the reading lies beyond the printed chart."""

    factor: Measured
    offset_brix: float
    is_beyond: bool = False


@dataclass(frozen=True)
class Factor:
    """Per cent for one Brix, what a mix of nothing reads, and the chart it may come from.

    The chart is (Brix, per cent) from (0, 0) upwards; factor is then that of the example mix.
    """

    factor: Measured
    offset_brix: float = 0.0
    chart: tuple[tuple[float, float], ...] = ()

    @property
    def u_share(self) -> float:
        """Relative standard uncertainty."""
        return self.factor.u / self.factor.value

    def at(self, reading_brix: float) -> Segment:
        """What holds at a reading whose zero has been taken off, in Brix."""
        if not self.chart:
            return Segment(self.factor, self.offset_brix)
        rows = list(pairwise(self.chart))
        is_beyond = reading_brix > self.chart[-1][0]
        (left_brix, left_pct), (right_brix, right_pct) = next(
            (row for row in rows if reading_brix <= row[1][0]), rows[-1]
        )
        slope = (right_pct - left_pct) / (right_brix - left_brix)
        share = max(self.u_share, BEYOND_U_SHARE) if is_beyond else self.u_share
        return Segment(
            Measured(slope, slope * share), left_brix - left_pct / slope, is_beyond=is_beyond
        )

    def reads_brix(self, strength_pct: float) -> float:
        """What a mix of this strength reads once the zero is taken off, in Brix.

        >>> Factor(Measured(1.25, 0.0)).reads_brix(5.0)
        4.0
        """
        if not self.chart:
            return strength_pct / self.factor.value + self.offset_brix
        rows = list(pairwise(self.chart))
        left, right = next((row for row in rows if strength_pct <= row[1][1]), rows[-1])
        return left[0] + (strength_pct - left[1]) * (right[0] - left[0]) / (right[1] - left[1])


def factor_from_divisor(divisor: float) -> float:
    """Per cent for one Brix where the sheet divides: the divisor is Brix for one per cent.

    >>> factor_from_divisor(0.8)
    1.25
    """
    return 1 / divisor


def factor_from_chart(pairs: list[tuple[float, float]], u_share: float, path: str) -> Factor:
    """A factor from a printed chart's pairs of Brix and per cent, straight lines between them.

    The pair (0, 0) is put in front where it is missing. Errors: ``not_rising`` when a pair does
    not lie above the one before, ``out_of_range`` for a step whose slope no factor has.
    """
    rows = pairs if pairs[0] == (0.0, 0.0) else [(0.0, 0.0), *pairs]
    known = KNOWN["factor"]
    first = len(rows) - len(pairs)
    for i, (left, right) in enumerate(pairwise(rows)):
        place = f"{path}[{i + 1 - first}]"
        for side, name in ((0, "reading"), (1, "strength")):
            if right[side] <= left[side]:
                raise Fault("not_rising", f"{place}.{name}", right[side], {"above": left[side]})
        slope = (right[1] - left[1]) / (right[0] - left[0])
        if not (known.above or 0) < slope <= (known.maximum or 0):
            limit = {"above": known.above, "maximum": known.maximum, "unit": "1"}
            raise Fault("out_of_range", f"{place}.reading", slope, limit)
    chart = Factor(Measured(1.0, u_share), 0.0, tuple(rows))
    factor = EXAMPLE_PCT / chart.reads_brix(EXAMPLE_PCT)
    return replace(chart, factor=Measured(factor, factor * u_share))


def slopes_of(factor: Factor) -> list[float]:
    """Per cent for one Brix of each step of the chart; empty without one."""
    return [(b[1] - a[1]) / (b[0] - a[0]) for a, b in pairwise(factor.chart)]


def is_bent(factor: Factor) -> bool:
    """Whether a chart's slopes differ by more than a misread pair would explain away."""
    slopes = slopes_of(factor)
    return bool(slopes) and max(slopes) > min(slopes) * (1 + BENT_SHARE)


def has_moved(factor: float, last_factor: float) -> bool:
    """Whether a factor differs from the last known one by more than a tenth.

    >>> has_moved(1.5, 1.4), has_moved(1.5, 1.3)
    (False, True)
    """
    return abs(factor / last_factor - 1) > MOVED_SHARE
