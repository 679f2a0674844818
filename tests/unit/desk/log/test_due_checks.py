"""pycore.desk.log.due_checks: the shop's intervals are facts of the log, and all pages agree."""

import json
from pathlib import Path
from typing import Any

import pytest

from pycore.advice.due import CHECK_EVERY_D, CLEAN_OUT_EVERY_D
from pycore.office.reporting import report_command
from tests.phones import LATHE, MORNING_S, Phone, check, moment, setup, typed
from tests.properties.asking import ask
from tests.unit.desk.trend.logs import DAY_S, checked, lathe

EVERY_3 = {"check_every_d": typed("3", "1")}


def shop(*facts: dict[str, Any]) -> Phone:
    """A lathe that was read a minute after the morning, and what the shop said since."""
    phone = lathe()
    checked(phone, 0, "380", "5.4")
    for place, fact in enumerate(facts, 1):
        phone.save("shop_set", fact, 60 + 60 * place, machine="")
    return phone


def due_of(phone: Phone, day: float) -> dict[str, Any]:
    """What is due at the lathe so many days after the morning."""
    body = {"lines": phone.lines, "now": moment(int(day * DAY_S))}
    (found,) = ask("due_checks", body)["checks"]
    return dict(found)


def shift_of(phone: Phone, day: float) -> list[dict[str, Any]]:
    now = moment(int(day * DAY_S))
    return list(ask("handover", {"lines": phone.lines, "now": now, "since": now})["checks"])


def trend_of(phone: Phone, day: float) -> dict[str, Any]:
    body = {"lines": phone.lines, "now": moment(int(day * DAY_S)), "machine": LATHE}
    return dict(ask("trend", body))


def is_in_report(phone: Phone, day: float, folder: Path) -> bool:
    log, page = folder / "log.jsonl", folder / "report.html"
    log.write_text(phone.export(), encoding="utf-8")
    assert report_command([str(log), "-o", str(page), "--now", moment(int(day * DAY_S))]) == 0
    return "last reading" in page.read_text(encoding="utf-8")


@pytest.mark.parametrize("fact", [{}, EVERY_3, {"check_every_d": typed("14", "1")}])
@pytest.mark.parametrize("day", [2, 4, 6.9, 7.1, 13, 15])
def test_every_page_calls_the_same_machines_due(
    fact: dict[str, Any], day: float, tmp_path: Path
) -> None:
    phone = shop(fact)
    every_d = float(fact["check_every_d"]["text"]) if fact else CHECK_EVERY_D
    due = due_of(phone, day)
    assert due["every_d"] == every_d
    assert due["due_s"] == MORNING_S + 60 + every_d * DAY_S
    assert due["due"] is (day * DAY_S >= 60 + every_d * DAY_S)
    assert shift_of(phone, day) == ([due] if due["due"] else [])
    told = trend_of(phone, day)["next_check"]
    assert (told["due_s"], told["overdue"]) == (due["due_s"], due["due"])
    assert is_in_report(phone, day, tmp_path) is due["due"]


def test_each_interval_is_a_fact_of_its_own_and_an_empty_one_takes_it_back() -> None:
    phone = shop(EVERY_3, {"clean_out_every_d": typed("90", "1")}, {"who_to_ask": "Bay 3"})
    found = trend_of(phone, 1)
    assert (found["next_check"]["every_d"], found["clean_out"]["every_d"]) == (3, 90)
    phone.save("shop_set", {"check_every_d": typed("", "1")}, 3600, machine="")
    found = trend_of(phone, 1)
    assert (found["next_check"]["every_d"], found["clean_out"]["every_d"]) == (CHECK_EVERY_D, 90)
    assert trend_of(lathe(), 1)["clean_out"]["every_d"] == CLEAN_OUT_EVERY_D


def test_the_latest_entries_alone_give_the_same_answer() -> None:
    """What the phone's list sends: the rest of the log is not read for it."""
    phone = shop(EVERY_3)
    checked(phone, 5, "370", "5.2")
    phone.save("note", {"text": "Skimmer is off."}, 6 * DAY_S)
    bearing = [line for line in phone.lines if json.loads(line)["seq"] in (1, 3, 4)]
    body = {"lines": bearing, "now": moment(9 * DAY_S)}
    assert ask("due_checks", body)["checks"] == [due_of(phone, 9)]
    assert due_of(phone, 9)["due"] is True


def test_a_machine_at_rest_or_cleaned_out_since() -> None:
    phone = shop()
    phone.save("clean_out", {"finished": True}, 3600)
    emptied = due_of(phone, 1)
    assert emptied["due"] is True
    assert "due_s" not in emptied
    assert shift_of(phone, 1) == [emptied]
    phone.save("machine_state", {"state": "shutdown"}, 7200)
    assert (due_of(phone, 1)["due"], due_of(phone, 1)["resting"]) == (False, True)
    assert shift_of(phone, 1) == []


def test_a_machine_that_nobody_has_set_up_is_not_among_them() -> None:
    phone = Phone("a")
    phone.save("check", check(), 0)
    assert ask("due_checks", {"lines": phone.lines, "now": moment(DAY_S)}) == {"checks": []}


@pytest.mark.parametrize(
    ("fact", "text", "unit"),
    [
        *(("check_every_d", text, "1") for text in ("soon", "0", "400", "7 L")),
        ("most_lost_pct_d", "much", "%"),
    ],
)
def test_a_fact_that_cannot_be_read_takes_its_line_out_and_nothing_else(
    fact: str, text: str, unit: str
) -> None:
    phone = shop(EVERY_3, {fact: typed(text, unit)})
    assert due_of(phone, 1)["every_d"] == 3
    told = ask("fold_log", {"lines": phone.lines, "now": moment(DAY_S)})["report"]["quarantined"]
    assert [one["path"] for one in told] == [f"line.body.{fact}"]


def test_a_build_that_does_not_know_a_field_keeps_the_line_and_does_not_use_it() -> None:
    """What an older build does with an interval: stored, exported and told of, byte for byte."""
    phone = shop()
    phone.save("shop_set", {"who_to_ask": "Bay 3", "field_of_tomorrow": 1}, 120, machine="")
    phone.save("machine_set", {"machine": setup("Later")}, 180)
    now = moment(DAY_S)
    folded = ask("fold_log", {"lines": phone.lines, "now": now})
    assert [one["path"] for one in folded["report"]["quarantined"]] == [
        "line.body.field_of_tomorrow"
    ]
    assert "who" not in folded
    assert folded["machines"][0]["name"] == "Later"
    file = ask("write_export", {"lines": phone.lines, "now": now, "build": "older"})["text"]
    assert phone.lines[2] in file.splitlines()
