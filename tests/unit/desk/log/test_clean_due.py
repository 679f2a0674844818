"""pycore.desk.log.clean_due: what speaks for a clean-out, in the same words on every page."""

import json
from pathlib import Path
from typing import Any

import pytest

from pycore.office.report_words import WORDS
from pycore.office.reporting import report_command
from tests.phones import Phone, moment, typed
from tests.properties.asking import ask
from tests.unit.desk.trend.logs import DAY_S, checked, falling, lathe, trend_of

SLIDE = {"germs": typed("1000000", "CFU/mL")}
HIGH = {"scheme": "Own", "review": typed("2000000", "CFU/mL"), "act": typed("3000000", "CFU/mL")}


def test_findings_speak_for_a_clean_out() -> None:
    phone = falling()
    slide = {"germs": typed("1000000", "CFU/mL")}
    phone.save("check", {"look": ["smell"], "dip_slide": slide}, 13 * DAY_S)
    phone.save("check", {"look": ["smell"]}, 14 * DAY_S)
    found = trend_of(phone, 15)["clean_out"]
    assert found["reasons"] == ["germs_act", "smells"]
    high, higher = (typed(text, "CFU/mL") for text in ("2000000", "3000000"))
    band = {"scheme": "Own", "review": high, "act": higher}
    phone.save("shop_set", {"clean_out_every_d": typed("90", "1")}, 14 * DAY_S, machine="")
    own = trend_of(phone, 15, limits={"dip_slide": band})
    assert own["clean_out"] == {"reasons": ["smells"], "due": True, "every_d": 90}


def at(phone: Phone, day: float, **more: Any) -> dict[str, Any]:
    return {"lines": phone.lines, "now": moment(int(day * DAY_S)), **more}


def due_of(phone: Phone, day: float) -> dict[str, Any]:
    """What list and machine's page are told."""
    (found,) = ask("due_checks", at(phone, day))["checks"]
    return dict(found)


def in_list(phone: Phone, day: float) -> list[str]:
    found = due_of(phone, day)
    return found["clean_out"] if found["clean_out_due"] else []


def in_trend(phone: Phone, day: float, **more: Any) -> tuple[list[str], bool]:
    """The reasons, and whether they are enough."""
    found = trend_of(phone, day, **more)["clean_out"]
    return found["reasons"], found["due"]


def in_shift(phone: Phone, day: float) -> list[str]:
    now = at(phone, day)
    rows = ask("handover", {**now, "since": now["now"]})["clean_outs"]
    return [code for row in rows for code in row["clean_out"]]


def in_report(phone: Phone, day: float, folder: Path) -> list[str]:
    log, page = folder / "log.jsonl", folder / "report.html"
    log.write_text(phone.export(), encoding="utf-8")
    command = [str(log), "-o", str(page), "--now", moment(int(day * DAY_S))]
    assert report_command(command) == 0
    text = page.read_text(encoding="utf-8")
    said = {code: WORDS[f"trend.reason.{code}"] for code in REASONS}
    found = [code for code in REASONS if said[code] in text]
    assert (WORDS["clean_out_due"].split(":")[0] in text) is bool(found)
    return found


REASONS = ("germs_act", "germs_review", "ph_dropped_far", "smells", "old")


def smelly() -> Phone:
    """Cleaned out and read; then it smells twice, the pH falls and a slide is bad."""
    phone = lathe()
    phone.save("clean_out", {"finished": True}, 60)
    checked(phone, 1, "380", "5.4", ph=typed("9.3", "1"))
    checked(phone, 10, "380", "5.4", ph=typed("9.0", "1"), look=["smell"])
    checked(phone, 12, "380", "5.4", look=["smell"], dip_slide=SLIDE)
    checked(phone, 14, "380", "5.4", ph=typed("7.9", "1"))
    return phone


def limited() -> Phone:
    phone = smelly()
    phone.save("shop_set", {"look_limits": {"dip_slide": HIGH}}, 14 * DAY_S + 300, machine="")
    return phone


def contradicting() -> Phone:
    """Own limits of another build; one of them has nothing to do with a clean-out."""
    phone = smelly()
    limits = {"ph_low": typed("10", "1"), "warm": typed("5", "°C")}
    phone.save("shop_set", {"look_limits": limits}, 14 * DAY_S + 300, machine="")
    return phone


def resting() -> Phone:
    phone = smelly()
    phone.save("machine_state", {"state": "shutdown"}, 14 * DAY_S + 300)
    return phone


def emptied() -> Phone:
    phone = smelly()
    phone.save("clean_out", {"finished": True}, 14 * DAY_S + 300)
    return phone


ALL = ["germs_act", "ph_dropped_far", "smells"]


@pytest.mark.parametrize(
    ("phone", "day", "reasons"),
    [
        (smelly(), 15, ALL),
        (smelly(), 45, ["germs_act", "ph_dropped_far"]),
        (smelly(), 183, ["germs_act", "ph_dropped_far", "old"]),
        (limited(), 15, ["ph_dropped_far", "smells"]),
        (contradicting(), 15, ALL),
        (resting(), 15, []),
        (emptied(), 15, []),
        (lathe(), 400, []),
    ],
)
def test_every_page_says_the_same(
    phone: Phone, day: float, reasons: list[str], tmp_path: Path
) -> None:
    assert in_list(phone, day) == reasons
    assert in_shift(phone, day) == reasons
    assert in_report(phone, day, tmp_path) == reasons
    # Machine's page and trend tell also while the machine rests; the trend is told the limits.
    limits = json.loads(phone.lines[-1])["body"].get("look_limits")
    more = {} if limits is None else {"limits": limits}
    always = ALL if "shutdown" in phone.lines[-1] else reasons
    assert due_of(phone, day)["clean_out"] == always
    assert in_trend(phone, day, **more) == (always, bool(always))


def test_a_slide_to_look_into_is_no_clean_out(tmp_path: Path) -> None:
    """In the invented shop every machine was said to need a clean-out for such a slide."""
    phone = lathe()
    phone.save("clean_out", {"finished": True}, 60)
    slide = {"germs": typed("10000", "CFU/mL")}
    checked(phone, 12, "380", "5.4", dip_slide=slide)
    assert in_trend(phone, 14) == (["germs_review"], False)
    assert due_of(phone, 14)["clean_out"] == []
    assert in_list(phone, 14) == []
    assert in_shift(phone, 14) == []
    assert in_report(phone, 14, tmp_path) == []
    # Beside another reason it is told with it.
    assert in_trend(phone, 190) == (["germs_review", "old"], True)
    assert in_list(phone, 190) == ["germs_review", "old"]


def test_the_latest_entries_alone_give_the_same_answer() -> None:
    """What the phone's list sends: clean-out, first pH, last pH and slide, two smells, set-up."""
    phone = smelly()
    for day in (20, 21, 22):
        checked(phone, day, "370", "5.2")
    kept = {1, 2, 3, 4, 5, 6, 9}
    bearing = [line for line in phone.lines if json.loads(line)["seq"] in kept]
    body = {"lines": bearing, "now": moment(23 * DAY_S)}
    (found,) = ask("due_checks", body)["checks"]
    assert found["clean_out"] == in_list(phone, 23) == ALL


def test_limits_that_cannot_be_read_say_nothing() -> None:
    phone = smelly()
    bad = {"look_limits": {"ph_drop_far": typed("lots", "1")}}
    phone.save("shop_set", bad, 14 * DAY_S + 300, machine="")
    assert in_list(phone, 15) == []
