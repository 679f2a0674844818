"""What a level says of the time since the last dip: explained, lost too much, or gained.

Expected is the last dip plus what was poured. Evaporation and what parts carry out explain a fall,
by the machine's own losses where its log tells them; only what lies beyond it is asked about.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from math import floor

from pycore.journal.recheck import Dip, LevelCompared, Went, level_compared
from pycore.journal.times import DAY_S
from pycore.quantity.measured import Measured

# The most that ordinary use takes in one shift of eight hours, as a share of the full sump: up to
# 4 % evaporate and some 1 % leaves with the parts at the hungriest of small machines. It may always
# have been a shift. Common practice, no source.
MOST_LOST_SHARE_8H = 0.05
# Per cent of the full sump in a day, where neither the shop nor the log says more: two such shifts.
# Common practice, no source.
MOST_LOST_PCT_D = 10.0
# With fewer steps from check to check a machine has no losses of its own (judgement, no source).
LEAST_OWN = 5
# The own most is twice what nine of ten steps stay below: hot weeks are not in every log
# (judgement, no source).
_OWN_SHARE, _OWN_TIMES = 0.9, 2.0
# Coverage factor of the expanded uncertainty of a difference, about 95 of 100 (JCGM 100:2008).
_K = 2.0


@dataclass(frozen=True)
class LevelChange:
    """The level beside what was expected, litres of the sump alone.

    verdict: ``as_expected``, ``explained``, ``lost``, ``gained`` or ``unknown_poured``.
    most_lost_l: what evaporation and parts explain. unknown_poured: the level lies higher than
    expected, and somebody poured what nobody can put into litres.
    """

    verdict: str
    expected_l: float
    found_l: float
    difference_l: Measured
    most_lost_l: float


@dataclass(frozen=True)
class MostLost:
    """Litres a day that ordinary use takes at the most, and by what: own, shop or practice."""

    l_d: float
    by: str


def quantile(values: Sequence[float], share: float) -> float:
    """The value below which a share of them lies, straight lines between (definition 7 of R. J.
    Hyndman and Y. Fan, The American Statistician 50, 1996, 361); at least one value.

    >>> quantile([1.0, 2.0, 3.0, 4.0, 5.0], 0.9)
    4.6
    """
    ordered, place = sorted(values), share * (len(values) - 1)
    below = floor(place)
    above = min(below + 1, len(ordered) - 1)
    return ordered[below] + (place - below) * (ordered[above] - ordered[below])


def most_lost(full_l: float, own_l_d: Sequence[float], shop_pct_d: float | None) -> MostLost:
    """By the machine's own losses (litres a day of each step), else the shop's word, else ours.

    >>> most_lost(200.0, [1.0] * 5, None)
    MostLost(l_d=2.0, by='own')
    >>> most_lost(200.0, [], None)
    MostLost(l_d=20.0, by='practice')
    """
    if len(own_l_d) >= LEAST_OWN:
        return MostLost(max(0.0, _OWN_TIMES * quantile(own_l_d, _OWN_SHARE)), "own")
    if shop_pct_d is not None:
        return MostLost(full_l * shop_pct_d / 100, "shop")
    return MostLost(full_l * MOST_LOST_PCT_D / 100, "practice")


def most_lost_l(full_l: float, most: MostLost, elapsed_s: float) -> float:
    """Litres that ordinary use explains; never less than those of one shift, never all of it.

    >>> most_lost_l(200.0, MostLost(20.0, "practice"), 2 * DAY_S)
    40.0
    """
    return min(full_l, max(full_l * MOST_LOST_SHARE_8H, most.l_d * elapsed_s / DAY_S))


def _verdict(level: LevelCompared, most_l: float, unknown: bool) -> str:
    if level.verdict == "higher":
        return "unknown_poured" if unknown else "gained"
    gone = level.difference_l
    if level.verdict == "lower":
        return "lost" if -gone.value - _K * gone.u > most_l else "explained"
    return "as_expected"


def level_change(first: Dip, second: Dip, went: Went, most_l: float, unknown: bool) -> LevelChange:
    """Two dips of one sump beside what went in between them.

    Parameters
    ----------
    first, second : Dip
        Last dip and this one.
    went : Went
        What is known to have gone out and in since.
    most_l : float
        Litres that ordinary use explains in the time between them.
    unknown : bool
        Whether something was poured that is not in ``went``.

    >>> dips = Dip(180.0, 0.9, 0.03), Dip(120.0, 0.9, 0.03)
    >>> level_change(*dips, Went(0.0, 0.0, 0.0), 9.9, False).verdict
    'lost'
    """
    level = level_compared(first, second, went)
    verdict = _verdict(level, most_l, unknown)
    return LevelChange(verdict, level.expected_l, level.found_l, level.difference_l, most_l)
