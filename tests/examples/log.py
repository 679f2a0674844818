"""Example requests about logs."""

from __future__ import annotations

from typing import Any

from tests.examples.workshop import ask
from tests.phones import (
    LATHE,
    NOW,
    Phone,
    check,
    id_of,
    moment,
    newer_phone,
    setup,
    stored_in_schema_1,
    typed,
    workshop,
)

_DAY_S = 86_400
_LATHE = {"machine": LATHE, "days": 91}
_MEASURED = {
    "dip": {"depth": typed("210", "mm"), "how": "hard_floor"},
    "reading": {"shows": typed("0.4", "Brix")},
}


def _held_lathe() -> Phone:
    """A lathe with a hold tag, in a shop that has said who is asked and set a limit of its own."""
    phone = Phone("cart")
    phone.save("machine_set", {"machine": setup()}, 0)
    tag = {"state": "on_hold", "reason": "lab_sample", "until": moment(86_400)}
    phone.save("machine_state", {**tag, "remarks": "Sample 14 is away."}, 60, by="RO")
    phone.save("shop_set", {"who_to_ask": "Coolant keeper, bay 3"}, 120, machine="")
    limits = {"ph_low": typed("8.2", "1")}
    phone.save("shop_set", {"look_limits": limits}, 180, machine="")
    return phone


def _due_lines() -> list[str]:
    """A lathe that was read four days ago in a shop that checks every three days."""
    phone = Phone("cart")
    phone.save("machine_set", {"machine": setup()}, 0)
    phone.save("check", check(), 60)
    phone.save("shop_set", {"check_every_d": typed("3", "1")}, 120, machine="")
    return phone.lines


def _twelve_days() -> list[str]:
    """Four checks between which only water was poured, after a clean-out."""
    phone = Phone("foreman's phone")
    phone.save("machine_set", {"machine": setup()}, 0)
    phone.save("clean_out", {"finished": True, "left": typed("6", "L")}, 300)
    for day, shows in ((0, "5.4"), (4, "5.0"), (8, "4.6"), (12, "4.2")):
        ph = {"ph": typed("9.1", "1")} if day == 0 else {}
        phone.save("check", {**check("380", shows), **ph}, day * _DAY_S - 600 + 1200 * (day == 0))
        row = {"count": 2, "kind": "water", "each": typed("9", "L")}
        phone.save("pour", {"pours": [row], "finished": True}, day * _DAY_S + 900)
    return phone.lines


def answered() -> dict[str, Any]:
    """Examples of what is asked about logs."""
    night, day = workshop()
    lines = night.lines + day.lines
    corrected = night.clone()
    wrong = {"corrects": id_of("night shift 2"), "reason": "Read 4.0, it was 4.8.", "kind": "check"}
    corrected.save("correction", {**wrong, "content": check("342", "4.8")}, 2000, machine="")
    forked = night.clone()
    forked.save("note", {"text": "Written on the restored phone."}, 7000)
    night.save("note", {"text": "Written on the old phone."}, 7000)
    cut = day.export()[:-200]
    old = [
        stored_in_schema_1("machine", {"machine": setup()}, 1),
        stored_in_schema_1("check", {"machine": setup(), **check()}, 2),
    ]
    files = [{"name": "night.jsonl", "text": night.export()}]
    files += [{"name": "restored.jsonl", "text": forked.export()}]
    return {
        "fold_log": ask("fold_log", {"lines": corrected.lines + day.lines, "now": NOW}),
        "fold_log_schema_1": ask("fold_log", {"lines": old, "now": NOW}),
        "read_export": ask("read_export", {"text": day.export(), "lines": lines[:4], "now": NOW}),
        "read_export_cut": ask("read_export", {"text": cut, "lines": lines[:4], "now": NOW}),
        "read_export_damaged": ask(
            "read_export",
            {"text": day.export().replace("belt slips", "belt sleeps"), "lines": [], "now": NOW},
        ),
        "read_export_newer_entry": ask(
            "read_export", {"text": newer_phone().export(), "lines": [], "now": NOW}
        ),
        "write_export": ask("write_export", {"lines": day.lines, "now": NOW, "build": "example"}),
        "merge_logs_forked": ask("merge_logs", {"files": files, "now": NOW}),
        "handover": ask("handover", {"lines": lines, "now": NOW, "since": moment(0)}),
        "write_csv": ask("write_csv", {"lines": lines, "now": NOW}),
        "trend": ask("trend", {"lines": _twelve_days(), "now": moment(12 * _DAY_S), **_LATHE}),
        "plan_charge": ask(
            "plan_charge",
            {"machine": setup(), "left": typed("6", "L"), "left_strength": typed("1", "%")},
        ),
        "trend_too_few": ask("trend", {"lines": lines, "now": NOW, **_LATHE}),
        "due_checks": ask("due_checks", {"lines": _due_lines(), "now": moment(4 * _DAY_S)}),
        "fold_log_held": ask("fold_log", {"lines": _held_lathe().lines, "now": NOW}),
        "look_back": ask("look_back", {"lines": lines, "now": NOW, "machine": LATHE, **_MEASURED}),
    }


def refused() -> dict[str, Any]:
    """Files and heads that are refused."""

    def file(text: str) -> dict[str, Any]:
        return ask("read_export", {"text": text, "lines": []})

    return {
        "error_file_empty": file("\n"),
        "error_file_foreign": file("time;machine;reading\n06:30;lathe;4.8\n"),
        "error_file_newer": file('{"pailwright":"log","format":2,"parts":[]}\n'),
        "error_wrong_form": ask(
            "fold_log",
            {"lines": [], "now": NOW, "heads": [{"log": "7", "count": 1, "head": "0" * 64}]},
        ),
    }
