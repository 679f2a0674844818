"""Generated from shared/words/en.json by `python3 -m web contract`. Do not edit."""

# ruff: noqa: E501

from collections.abc import Mapping
from types import MappingProxyType

WORDS: Mapping[str, str] = MappingProxyType(
    {
        "title": "Coolant report",
        "span": "{first} to {last} · as of {now}",
        "counts": "{entries} entries from {phones} phones, {machines} machines",
        "invented": "An invented example. Nothing here was measured.",
        "waiting": "What needs somebody",
        "waiting_none": "Nothing is overdue, open, stopped or out of range.",
        "recheck_overdue": "second reading was due at {time}",
        "recheck_due": "second reading is due at {time}",
        "recheck_rests": "second reading rests with the machine",
        "open_plan": "{poured} of {planned} buckets poured since {time}, not finished",
        "open_pour": "{poured} buckets poured since {time}, more was to come",
        "no_reading": "never read",
        "old_reading": "last reading {days} days ago",
        "out_of_range": "last reading {strength}: {state}",
        "conflicts": "{n} entries contradict one another: somebody has to decide",
        "machines": "Machines",
        "col_machine": "Machine",
        "col_state": "State",
        "col_strength": "Strength",
        "col_band": "Range",
        "col_level": "In the sump",
        "col_room": "Room",
        "col_checked": "Last check",
        "weak": "Too weak",
        "in_range": "In range",
        "strong": "Too strong",
        "none": "No reading",
        "in_use": "In use",
        "watch": "Watch",
        "stopped": "Stopped",
        "clean_out": "Clean-out",
        "out_of_service": "Out of service",
        "shutdown": "Shutdown",
        "strength_chart": "Strength of {name}, % by volume",
        "level_chart": (
            "Coolant in the sump of {name}, litres; the upper edge of the band is the full mark"
        ),
        "strength_head": "Strength, %",
        "level_head": "In the sump, L",
        "chart_key": "range on that day",
        "rest_key": "at rest or stopped",
        "readings": "{n} readings, {inside} of them in range ({percent} %).",
        "no_readings": "No reading in this log.",
        "poured_machine": (
            "Poured as written down: {buckets} buckets, {water} L water, {concentrate} L concentrate."
        ),
        "unknown": "What was in {n} buckets is not known.",
        "unwritten": "{n} times somebody had poured and not written it down.",
        "cleaned": "New charge on {days}.",
        "poured": "What was poured",
        "poured_chart": "Litres poured in each month, concentrate below and water above",
        "poured_note": (
            "As it was written down. What nobody wrote down is not in it, nor are recipes without an entry of what went in."
        ),
        "col_month": "Month",
        "col_buckets": "Buckets",
        "col_water": "Water, L",
        "col_concentrate": "Concentrate, L",
        "sum": "All",
        "water": "water",
        "concentrate": "concentrate",
        "audit": "Corrections, clean-outs and states",
        "audit_none": "No correction, withdrawal, clean-out or change of state in this log.",
        "col_when": "When",
        "col_what": "What",
        "col_why": "Why",
        "col_who": "Who",
        "corrected": "corrected",
        "withdrawn": "withdrawn",
        "conflict": "contradicted, not used",
        "disputed": "two versions, not used",
        "left_out": "decided against",
        "kind_check": "Check",
        "kind_recheck": "Second reading",
        "kind_pour": "Pour",
        "kind_plan": "Recipe",
        "kind_clean_out": "Clean-out",
        "kind_machine_state": "State",
        "kind_other": "Entry",
        "more": "and {n} earlier ones: python -m pycore table has them all",
        "calibrated": "The zero of an instrument was looked at {n} times, last on {day}.",
        "holds": "What does not hold in the log",
        "all_holds": "Every line of the log is there, follows the one before and is unchanged.",
        "caution": (
            "This page repeats what was typed. The supplier’s data sheet, the safety data sheet, the shop’s own rules, local codes and trained people decide. A reading without its instrument’s zero and the right factor says little."
        ),
        "made_by": "Made by Pailwright from the log; nothing is fetched, nothing is sent.",
        "months": "Jan Feb Mar Apr May Jun Jul Aug Sep Oct Nov Dec",
    }
)
