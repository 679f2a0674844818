"""Something went wrong: one table of what happened to what is done about it, and who says so.

Stopping comes first, then what makes it worse, then what to do and whom to ask. The table advises;
the safety data sheet, the supplier and whoever is responsible for the coolant decide.
"""

from __future__ import annotations

from collections.abc import Collection
from dataclasses import dataclass

# In this order on the page.
PARTS = ("stop", "never", "do", "ask", "safety")

_PRACTICE = "common practice, no source"
_CLEAN_OUT = "HSE, Cleaning a water-mix fluid sump"
_DISEASE = "DGUV Information 209-051, 9: disinfectants only after a competent person was asked"
_CLEANER = "DGUV Regel 109-003, 6.3.1.4 to 6.3.1.7: rinse carefully after system cleaner"
_NITRITE = "TRGS 611, 5.3 limits nitrite; why: common practice, no source"
_OIL_BEARING = frozenset({"soluble_oil", "semi_synthetic"})


@dataclass(frozen=True)
class Advice:
    """One row: its code, the part of the page it stands in, and who says so.

    only_for: fluid types for which it holds; None: for all. metal: only where it is worked.
    """

    code: str
    part: str
    source: str = _PRACTICE
    only_for: frozenset[str] | None = None
    metal: str | None = None


@dataclass(frozen=True)
class Mishap:
    """What happened: its own rows, the state that is offered, its reason and the kind of entry."""

    rows: tuple[Advice, ...]
    state: str
    reason: str
    record: str


def _rows(*rows: tuple[str, str]) -> tuple[Advice, ...]:
    return tuple(Advice(code, part) for part, code in rows)


MISHAPS: dict[str, Mishap] = {
    "wrong_drum": Mishap(
        (
            *_rows(
                ("stop", "stop_adding"),
                ("never", "not_thin_it_out"),
                ("never", "not_start_again"),
                ("do", "keep_sample"),
                ("do", "write_both_names"),
                ("do", "may_be_changed_whole"),
                ("ask", "ask_both_suppliers"),
            ),
            Advice("magnesium_at_once", "safety", metal="magnesium"),
        ),
        "stopped", "wrong_drum", "unknown_addition",
    ),
    "neat_poured": Mishap(
        (
            *_rows(("stop", "stop_adding"), ("never", "not_more_concentrate")),
            Advice("neat_goes_lumpy", "never", only_for=_OIL_BEARING),
            Advice("neat_synthetic", "do", only_for=frozenset({"synthetic"})),
            Advice("skim_lumps", "do", only_for=_OIL_BEARING),
            *_rows(("do", "circulate_then_read"), ("do", "weak_mix_to_correct")),
            *_rows(("ask", "ask_supplier"), ("safety", "neat_on_skin")),
        ),
        "on_hold", "neat_concentrate", "unknown_addition",
    ),
    "lumpy_bucket": Mishap(
        _rows(
            ("stop", "lumps_stay_out"),
            ("never", "not_by_hand_or_air"),
            ("do", "set_aside_and_label"),
            ("do", "lumps_into_water"),
            ("do", "lumps_are_waste"),
            ("do", "lumps_in_the_sump"),
            ("ask", "ask_if_again"),
        ),
        "in_use", "lumpy_mix", "note",
    ),
    "overfilled": Mishap(
        _rows(
            ("stop", "stop_water"),
            ("never", "not_run_it_off"),
            ("do", "floor_is_slippery"),
            ("do", "pump_off_rises"),
            ("do", "take_out_clean"),
            ("ask", "ask_cabinet_wet"),
            ("safety", "electric_and_water"),
        ),
        "on_hold", "overfilled", "note",
    ),
    "ran_dry": Mishap(
        _rows(
            ("stop", "stop_machine"),
            ("never", "not_fill_yet"),
            ("do", "look_for_leak"),
            ("do", "clean_screen"),
            ("do", "pump_may_be_hurt"),
            ("do", "then_new_charge"),
            ("ask", "ask_maintenance"),
        ),
        "stopped", "ran_dry", "note",
    ),
    "split": Mishap(
        (
            Advice("clear_is_healthy", "stop", only_for=frozenset({"synthetic"})),
            Advice("stop_machining", "stop", only_for=_OIL_BEARING),
            Advice("not_feed_split", "never", only_for=_OIL_BEARING),
            *_rows(
                ("do", "jar_test"),
                ("do", "ph_and_water"),
                ("do", "plan_clean_out"),
                ("ask", "ask_supplier"),
            ),
            Advice("acid_split_trained", "safety"),
        ),
        "stopped", "split", "note",
    ),
    "cleaner_in_it": Mishap(
        (
            *_rows(("stop", "stop_adding"), ("never", "not_defoamer"), ("never", "not_read_it")),
            Advice("drain_and_rinse", "do", _CLEANER),
            *_rows(("do", "rinse_with_weak_mix"), ("ask", "ask_cleaner_and_supplier")),
            Advice("cleaner_harms", "safety", _CLEANER),
        ),
        "stopped", "cleaner_in_it", "additive",
    ),
    "oil_leak": Mishap(
        _rows(
            ("stop", "stop_if_fast"),
            ("never", "no_finger_on_leak"),
            ("do", "which_oil"),
            ("do", "skim_then_read"),
            ("do", "reads_too_high"),
            ("ask", "ask_maintenance"),
            ("safety", "oil_under_pressure"),
        ),
        "watch", "hydraulic_oil", "note",
    ),
}  # fmt: skip

# Said whatever happened.
_ALWAYS = (
    Advice("never_in_the_sump", "never", _DISEASE),
    Advice("never_nitrite", "never", _NITRITE),
    Advice("off_is_not_isolated", "safety"),
    Advice("no_hands_no_gloves", "safety"),
    Advice("gas_at_pits", "safety"),
    Advice("waste_is_hazardous", "safety", _CLEAN_OUT),
    Advice("sheet_decides", "safety"),
)


def advice_about(
    mishap: str, fluid_type: str | None = None, metals: Collection[str] = ()
) -> list[Advice]:
    """Rows for what happened, stop first; inside a part its own rows before those for all.

    fluid_type: soluble_oil, semi_synthetic, synthetic, or None where it is not known: then rows
    of every type are told. metals: what the machine works.

    >>> [row.code for row in advice_about("neat_poured", "synthetic") if row.part == "do"][:1]
    ['neat_synthetic']
    """

    def holds(row: Advice) -> bool:
        of_fluid = row.only_for is None or fluid_type is None or fluid_type in row.only_for
        return of_fluid and (row.metal is None or row.metal in metals)

    rows = [row for row in (*MISHAPS[mishap].rows, *_ALWAYS) if holds(row)]
    return sorted(rows, key=lambda row: PARTS.index(row.part))
