"""What a reading can be, after the last one and what went in since. Only what lies outside is asked
about, once; nothing is refused.

Everything is counted in what the glass shows, so that a factor that was changed in between does
not matter. Dilution is linear in it: r·V = r1·V1 + r_neat·c.
"""

from __future__ import annotations

import math
from dataclasses import dataclass

from pycore.journal.recheck import Went
from pycore.journal.times import DAY_S
from pycore.quantity.measured import Measured

# A sump that was mixed badly, oil on the glass, another hand: a fifth either way says nothing.
# Common practice, no source.
ALIKE_SHARE = 0.2
# Coverage factor of the expanded uncertainty of a difference, about 95 of 100 (JCGM 100:2008).
_K = 2.0
# After a week the drift says no more: sumps are topped up. Common practice, no source.
_MOST_DRIFT_D = 7.0
# Twice the aim and half of it, where no earlier reading is there: common practice, no source.
FAR_FROM_AIM = 2.0

# What somebody poured without saying how much: water makes weaker, anything else also stronger.
WATER_ONLY = frozenset({"water"})


@dataclass(frozen=True)
class Before:
    """The last reading in Brix, the litres it was taken in, and how many seconds ago, from 0 on."""

    brix: Measured
    volume_l: float
    age_s: float


@dataclass(frozen=True)
class Range:
    """Lowest and highest plausible reading in Brix; high_brix is inf where nothing limits it."""

    low_brix: float
    high_brix: float
    expected_brix: float

    def holds(self, brix: float) -> bool:
        """Whether a reading lies inside, the ends included."""
        return self.low_brix <= brix <= self.high_brix

    def slip(self, brix: float) -> float | None:
        """The reading with its decimal sign moved by one place, where only that one is plausible.

        >>> Range(3.2, 5.4, 4.1).slip(0.4)
        4.0
        """
        moved = [one for one in (round(brix * 10, 9), round(brix / 10, 9)) if self.holds(one)]
        return moved[0] if len(moved) == 1 and not self.holds(brix) else None


def plausible(
    before: Before,
    went: Went,
    neat_brix: float,
    full_l: float,
    lost_l: float,
    drift_brix_d: float,
    unknown: frozenset[str],
) -> Range:
    """The range of the next reading.

    Parameters
    ----------
    before : Before
        The last reading.
    went : Went
        What is known to have gone out and in since; less out than there was.
    neat_brix : float
        What undiluted concentrate would show, by the factor: 100 % over it.
    full_l, lost_l : float
        Litres at the full mark, and the most that can have evaporated since.
    drift_brix_d : float
        How far the reading can move in a day where nobody tops up.
    unknown : frozenset of str
        What went in that nobody can put into litres: water, mix, concentrate, unknown.

    >>> nothing = Went(0.0, 0.0, 0.0)
    >>> last = Before(Measured(4.1, 0.2), 150.0, 2 * DAY_S)
    >>> found = plausible(last, nothing, 66.7, 198.0, 15.0, 0.17, frozenset())
    >>> round(found.low_brix, 2), round(found.high_brix, 2)
    (2.54, 5.87)
    """
    left_l = before.volume_l - went.draw_off_l
    filled_l = left_l + went.water_l + went.concentrate_l
    expected = (left_l * before.brix.value + went.concentrate_l * neat_brix) / filled_l
    spread = _K * before.brix.u + drift_brix_d * min(before.age_s / DAY_S, _MOST_DRIFT_D)
    low = max(0.0, expected * (1 - ALIKE_SHARE) - spread)
    if unknown and full_l > filled_l:
        low *= filled_l / full_l
    gone_l = min(lost_l, filled_l / 2)
    high = expected * filled_l / (filled_l - gone_l) * (1 + ALIKE_SHARE) + _K * before.brix.u
    return Range(low, high if unknown <= WATER_ONLY else math.inf, expected)


def near_aim(aim_brix: float) -> Range:
    """The range of a first reading: between half of the aim and twice the aim."""
    return Range(aim_brix / FAR_FROM_AIM, aim_brix * FAR_FROM_AIM, aim_brix)
