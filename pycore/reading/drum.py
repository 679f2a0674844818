"""The drum and the metal: what a fluid's record has to be asked about."""

from __future__ import annotations

import math
from dataclasses import dataclass

from pycore.quantity.dates import Moment, days_between, months_later

# Usual shelf life of a concentrate, in months, where its maker has not said (DGUV Information
# 209-051: 6 to 12 months).
USUAL_MONTHS = (6, 12)


@dataclass(frozen=True)
class DrumAge:
    """Whole days since delivery and opening, where known, and the last day of its shelf life."""

    delivered_d: int | None
    opened_d: int | None
    best_before: str | None
    cautions: list[str]


def drum_age(
    delivered: Moment | None,
    opened: Moment | None,
    shelf_life_months: int | None,
    today: Moment,
    path: str,
) -> DrumAge:
    """How old a drum is on a day, in days, with codes of what to take care of.

    Shelf life counts from delivery, or from opening where the delivery is not known. Errors:
    ``order`` for a date after today or an opening before the delivery, below ``path``.
    """
    delivered_d = opened_d = None
    if delivered is not None:
        delivered_d = math.floor(days_between(delivered, today, f"{path}.delivered_on"))
    if opened is not None:
        opened_d = math.floor(days_between(opened, today, f"{path}.opened_on"))
        if delivered is not None:
            days_between(delivered, opened, f"{path}.delivered_on")
    start = delivered or opened
    if start is None:
        return DrumAge(None, None, None, ["drum_age_unknown"])
    if shelf_life_months is not None:
        end = months_later(start, shelf_life_months)
        is_past = end.text < today.text[:10]
        cautions = ["past_shelf_life"] if is_past else []
        return DrumAge(delivered_d, opened_d, end.text, cautions)
    early, late = (months_later(start, months).text for months in USUAL_MONTHS)
    day = today.text[:10]
    code = "past_usual_shelf_life" if late < day else "ask_shelf_life" if early < day else None
    return DrumAge(delivered_d, opened_d, None, [code] if code else [])


def metal_cautions(metals: list[str] | None, made_for_magnesium: bool | None) -> list[str]:
    """Codes about the metals worked: magnesium makes hydrogen with water and can burn.

    Only fluids made for it may touch it (common practice; the safety data sheet decides).
    """
    if metals is None:
        return ["magnesium_not_asked"]
    if "magnesium" not in metals:
        return []
    return ["magnesium"] if made_for_magnesium else ["magnesium", "not_made_for_magnesium"]
