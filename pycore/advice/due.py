"""When the next check and the next clean-out are due, and why then."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from pycore.advice.drift import Slope

# A reading a week at the least: DGUV/IFA, Prüfung wassergemischter Kühlschmierstoffe.
CHECK_EVERY_D = 7.0
# HSE, Legionnaires' disease L8, as others summarise it: six months, or more often where the maker
# says so. Second hand; a shop that manages its sumps sets its own.
CLEAN_OUT_EVERY_D = 182.0
# Smell in two looks of four weeks is no Monday smell any more (common practice, no source).
SMELLS = 2
RECENT_D = 28.0


@dataclass(frozen=True)
class Due:
    """Days after the last check; why: interval, out_of_band, drifts_low or drifts_high."""

    after_d: float
    why: str


def next_check(
    every_d: float,
    strength_pct: float | None,
    band: tuple[float, float] | None,
    slope: Slope | None,
) -> Due:
    """When to check again: the interval, or earlier where the drift leaves the band before.

    slope: None while there are too few readings or none that drifts; else the steeper end of its
    interval counts, so that the check comes before the edge. strength_pct: now, per cent by volume.

    >>> next_check(7, 8.5, (7, 9), Slope(0.125, 0.0625, 0.25))
    Due(after_d=2.0, why='drifts_high')
    """
    if strength_pct is None or band is None:
        return Due(every_d, "interval")
    low, high = band
    if not low <= strength_pct <= high:
        return Due(0.0, "out_of_band")
    found = Due(every_d, "interval")
    if slope is not None and slope.slope > 0:
        found = Due((high - strength_pct) / slope.high, "drifts_high")
    elif slope is not None and slope.slope < 0:
        found = Due((low - strength_pct) / slope.low, "drifts_low")
    return found if found.after_d < every_d else Due(every_d, "interval")


@dataclass(frozen=True)
class Findings:
    """What speaks for a clean-out: ages in days, counts and falls; None where nobody knows."""

    age_d: float | None
    germs_cfu_ml: float | None
    smells_d: Sequence[float]
    fall_ph: float | None


def clean_out_reasons(
    found: Findings, every_d: float, review_cfu_ml: float, act_cfu_ml: float, ph_drop_far: float
) -> list[str]:
    """Codes of what speaks for a clean-out, the strongest first; empty where nothing does.

    smells_d: how many days ago a smell was seen, of this charge. fall_ph: below the first fill.

    >>> clean_out_reasons(Findings(200, 1e6, [3, 10], 0.4), 182, 1e3, 1e6, 1.0)
    ['germs_act', 'smells', 'old']
    """
    reasons = []
    germs = found.germs_cfu_ml
    if germs is not None and germs >= review_cfu_ml:
        reasons.append("germs_act" if germs >= act_cfu_ml else "germs_review")
    if found.fall_ph is not None and found.fall_ph > ph_drop_far + 1e-9:
        reasons.append("ph_dropped_far")
    if sum(age_d <= RECENT_D for age_d in found.smells_d) >= SMELLS:
        reasons.append("smells")
    if found.age_d is not None and found.age_d >= every_d:
        reasons.append("old")
    return reasons


def is_clean_out_due(reasons: Sequence[str]) -> bool:
    """Whether these codes of ``clean_out_reasons`` want a clean-out.

    A dip slide that only wants to be looked into does not: with it alone every machine of a shop
    would stand among those that need somebody.

    >>> is_clean_out_due(["germs_review"]), is_clean_out_due(["germs_review", "old"])
    (False, True)
    """
    return any(reason != "germs_review" for reason in reasons)
