"""What a level says of the time since the last dip: explained, lost too much, or gained.

Expected is the last dip plus what was poured. Evaporation and what parts carry out explain a fall
up to a share of the full sump for each eight hours; only what lies beyond it is asked about.
"""

from __future__ import annotations

from dataclasses import dataclass

from pycore.journal.recheck import Dip, LevelCompared, Went, level_compared
from pycore.quantity.measured import Measured

# The most that ordinary use takes in eight hours, as a share of the full sump: up to 4 % evaporate
# and some 1 % leaves with the parts at the hungriest of small machines. Counted over all hours, so
# that a hot week with one shift a day is in it. Common practice, no source.
MOST_LOST_SHARE_8H = 0.05
_SHIFT_S = 8 * 3600
# Coverage factor of the expanded uncertainty of a difference, about 95 of 100 (JCGM 100:2008).
_K = 2.0

VERDICTS = ("as_expected", "explained", "lost", "gained", "unknown_poured")


@dataclass(frozen=True)
class LevelChange:
    """The level beside what was expected, litres of the sump alone; verdict one of ``VERDICTS``.

    most_lost_l: what evaporation and parts explain. unknown_poured: the level lies higher than
    expected, and somebody poured what nobody can put into litres.
    """

    verdict: str
    expected_l: float
    found_l: float
    difference_l: Measured
    most_lost_l: float


def most_lost_l(full_l: float, elapsed_s: float) -> float:
    """Litres that ordinary use explains; never less than those of one shift, never all of it.

    >>> most_lost_l(200.0, 24 * 3600)
    30.0
    """
    shifts = max(1.0, elapsed_s / _SHIFT_S)
    return min(full_l, full_l * MOST_LOST_SHARE_8H * shifts)


def _verdict(level: LevelCompared, most_l: float, unknown: bool) -> str:
    if level.verdict == "higher":
        return "unknown_poured" if unknown else "gained"
    gone = level.difference_l
    if level.verdict == "lower":
        return "lost" if -gone.value - _K * gone.u > most_l else "explained"
    return "as_expected"


def level_change(
    first: Dip, second: Dip, went: Went, full_l: float, elapsed_s: float, unknown: bool
) -> LevelChange:
    """Two dips of one sump beside what went in between them.

    Parameters
    ----------
    first, second : Dip
        Last dip and this one.
    went : Went
        What is known to have gone out and in since.
    full_l : float
        Litres at the full mark.
    elapsed_s : float
        From the first dip to this one; a clock that was set back counts as one shift.
    unknown : bool
        Whether something was poured that is not in ``went``.

    >>> dips = Dip(180.0, 0.9, 0.03), Dip(120.0, 0.9, 0.03)
    >>> level_change(*dips, Went(0.0, 0.0, 0.0), 198.0, 8 * 3600, False).verdict
    'lost'
    """
    level = level_compared(first, second, went)
    most_l = most_lost_l(full_l, elapsed_s)
    verdict = _verdict(level, most_l, unknown)
    return LevelChange(verdict, level.expected_l, level.found_l, level.difference_l, most_l)
