"""Look and smell before anything is added: one table of what was seen and measured to a decision.

Every row names its source. The thresholds are settings of the shop: published figures contradict
each other, so each default says whose it is. The table advises; a competent person decides.
"""

from __future__ import annotations

from collections.abc import Collection, Iterable, Mapping
from dataclasses import dataclass

# The decisions, each stronger than the one before.
DECISIONS = ("go_on", "skim_first", "check_chemistry_first", "do_not_feed")

_PRACTICE = "common practice, no source"
_TEST_PLAN = "DGUV Regel 109-003, annex, test plan"
_INSURERS = "GISCHEM, hazardous-substance database of the statutory accident insurers (Germany)"
_FORMER = "from memory: more than 1.0 below the first fill, change the fluid and clean the circuit"
_NITRITE = "TRGS 611, 5.3 (3): above, change, change partly, or agree with the maker"
_CLEANER = "DGUV Regel 109-003, 6.3.1.4 to 6.3.1.7: rinse carefully after system cleaner"
_WARMTH = "DGUV Regel 109-003, 6.3.1.2 no. 8: a rise is to be prevented; figures: common practice"

# What foam is looked into for, in this order: air sucked in at a low level comes first, and more
# concentrate or softer water makes it worse. Common practice, no source.
FOAM_ORDER = ("level", "cleaner", "strength", "water")


@dataclass(frozen=True)
class Limits:
    """Thresholds of the shop: pH, mg/L of nitrite, degrees Celsius, counts per mL of a dip slide.

    ph_low: GISCHEM, below it properties worsen very quickly. ph_high: GISCHEM says that too high
    irritates the skin more, and no figure; 9.8 is common practice, no source. ph_drop: DGUV Regel
    109-003, annex.
    ph_drop_far: from memory. nitrite_most_mg_l: TRGS 611, 5.3 (3). Temperatures: common practice,
    no source. Dip slide: HSE's web page calls fewer than 1,000 good control; 1,000,000 and more,
    drain and clean, is from memory, and German guidance knows no limit at all.
    """

    ph_low: float = 8.5
    ph_high: float = 9.8
    ph_drop: float = 0.5
    ph_drop_far: float = 1.0
    nitrite_most_mg_l: float = 20.0
    cold_c: float = 10.0
    warm_c: float = 40.0
    slide_scheme: str = "HSE: below 1,000 good; from 1,000,000 drain and clean (from memory)"
    slide_review_cfu_ml: float = 1e3
    slide_act_cfu_ml: float = 1e6


@dataclass(frozen=True)
class Measures:
    """What was measured beside the look; None where it was not."""

    ph: float | None = None
    first_ph: float | None = None
    nitrite_mg_l: float | None = None
    temperature_c: float | None = None
    slide_cfu_ml: float | None = None


@dataclass(frozen=True)
class Row:
    """One row of the table that holds: its code, what it decides, and who says so."""

    code: str
    decision: str
    source: str


# What is seen alone decides; split of a synthetic and smell have rules of their own below.
_SEEN: Mapping[str, tuple[str, str]] = {
    "floating_oil": ("skim_first", f"{_TEST_PLAN}: skim when seen"),
    "cream": ("check_chemistry_first", _PRACTICE),
    "grey_or_brown": ("do_not_feed", _PRACTICE),
    "slime": ("check_chemistry_first", _PRACTICE),
    "rust": ("check_chemistry_first", _PRACTICE),
    "chips_or_sludge": ("go_on", _PRACTICE),
    "skin_complaint": ("check_chemistry_first", _PRACTICE),
    "level_odd": ("check_chemistry_first", _PRACTICE),
}
_SMELL = {
    None: Row("smell", "check_chemistry_first", _PRACTICE),
    "gone": Row("smell_gone", "go_on", _PRACTICE),
    "still": Row("smell_stays", "do_not_feed", _PRACTICE),
}
# What the foam was found to come from. Air at a low level ends with filling; a cleaner does not.
_FOAM = {
    None: Row("foam", "check_chemistry_first", _PRACTICE),
    "level": Row("foam_level", "go_on", _PRACTICE),
    "cleaner": Row("foam_cleaner", "do_not_feed", _CLEANER),
    "strength": Row("foam_strength", "go_on", _PRACTICE),
    "water": Row("foam_water", "go_on", _PRACTICE),
    "none": Row("foam_none", "check_chemistry_first", _PRACTICE),
}
_SPLIT = Row("split", "do_not_feed", _PRACTICE)
# A synthetic one is clear when it is healthy.
_CLEAR = Row("clear_synthetic", "check_chemistry_first", _PRACTICE)

# Room for the last digit of a difference of two typed numbers.
_HAIR = 1e-9


def _seen(
    seen: Collection[str], fluid_type: str | None, smell_again: str | None, foam_from: str | None
) -> list[Row]:
    rows = [Row(code, *_SEEN[code]) for code in _SEEN if code in seen]
    if "foam" in seen:
        rows.append(_FOAM[foam_from])
    if "split" in seen:
        rows.append(_CLEAR if fluid_type == "synthetic" else _SPLIT)
    if "smell" in seen:
        rows.append(_SMELL[smell_again])
    return rows


def _acid(measures: Measures, limits: Limits) -> list[Row]:
    rows = []
    ph, first = measures.ph, measures.first_ph
    if ph is not None and ph < limits.ph_low:
        rows.append(Row("ph_low", "check_chemistry_first", _INSURERS))
    if ph is not None and ph > limits.ph_high:
        rows.append(Row("ph_high", "check_chemistry_first", _INSURERS))
    if ph is not None and first is not None:
        drop = first - ph
        if drop > limits.ph_drop_far + _HAIR:
            rows.append(Row("ph_dropped_far", "do_not_feed", _FORMER))
        elif drop > limits.ph_drop + _HAIR:
            rows.append(Row("ph_dropped", "check_chemistry_first", _TEST_PLAN))
    return rows


def _measured(measures: Measures, limits: Limits) -> list[Row]:
    rows = _acid(measures, limits)
    nitrite, slide, warmth = measures.nitrite_mg_l, measures.slide_cfu_ml, measures.temperature_c
    if nitrite is not None and nitrite > limits.nitrite_most_mg_l:
        rows.append(Row("nitrite_high", "do_not_feed", _NITRITE))
    if slide is not None and slide >= limits.slide_act_cfu_ml:
        rows.append(Row("germs_act", "do_not_feed", limits.slide_scheme))
    elif slide is not None and slide >= limits.slide_review_cfu_ml:
        rows.append(Row("germs_review", "check_chemistry_first", limits.slide_scheme))
    if warmth is not None and warmth > limits.warm_c:
        rows.append(Row("warm", "go_on", _WARMTH))
    if warmth is not None and warmth < limits.cold_c:
        rows.append(Row("cold", "go_on", _PRACTICE))
    return rows


def rows_that_hold(
    seen: Collection[str],
    measures: Measures,
    limits: Limits,
    fluid_type: str | None = None,
    smell_again: str | None = None,
    foam_from: str | None = None,
) -> list[Row]:
    """Rows of the table that hold, the strongest decision first.

    seen: codes of the contract's ``look``. fluid_type: None where it is not known. smell_again: how
    it smells after circulating, "gone", "still", or None while nobody has smelled again.
    foam_from: one of ``FOAM_ORDER``, "none" where all of it was looked into in vain, or None while
    nobody has looked.

    >>> [row.code for row in rows_that_hold({"smell"}, Measures(ph=8.2), Limits())]
    ['smell', 'ph_low']
    """
    rows = [*_seen(seen, fluid_type, smell_again, foam_from), *_measured(measures, limits)]
    return sorted(rows, key=lambda row: -DECISIONS.index(row.decision))


def decision_of(rows: Iterable[Row]) -> str:
    """The strongest decision of the rows; go_on where none holds.

    >>> decision_of([Row("rust", "check_chemistry_first", ""), Row("warm", "go_on", "")])
    'check_chemistry_first'
    """
    return max((row.decision for row in rows), key=DECISIONS.index, default="go_on")


# TRGS 611, 5.3 (2): weekly; after three consecutive results below 10 mg/L at most every 4 weeks,
# and weekly again after one above 10 mg/L.
WEEKLY_D = 7
RELAXED_D = 28
_CALM_MG_L = 10.0
_CALM_RESULTS = 3


def nitrite_interval_d(results_mg_l: Iterable[float]) -> int:
    """Days until nitrite is measured again at the latest, from all results, the oldest first.

    Source: TRGS 611, 5.3 (2). It holds where the control is documented.

    >>> nitrite_interval_d([8, 9, 7]), nitrite_interval_d([8, 9, 7, 11]), nitrite_interval_d([8])
    (28, 7, 7)
    """
    interval_d, calm = WEEKLY_D, 0
    for result_mg_l in results_mg_l:
        calm = calm + 1 if result_mg_l < _CALM_MG_L else 0
        if calm >= _CALM_RESULTS:
            interval_d = RELAXED_D
        elif result_mg_l > _CALM_MG_L:
            interval_d = WEEKLY_D
    return interval_d
