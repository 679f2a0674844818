"""pycore.office.report_machine: what a machine waits for, and what its charts hold."""

import pytest

from pycore.office.report_german import WORDS as GERMAN
from pycore.office.report_machine import Period, machine_shown
from pycore.office.report_page import MachineShown
from pycore.office.report_words import WORDS
from pycore.sheets.language import Language
from tests.phones import MORNING_S, Phone, check, id_of, moment, pour, setup
from tests.unit.journal.reading import fold

LANGUAGE = Language(WORDS)
HOUR_S = 3_600


def period(after_s: int) -> Period:
    return Period(moment(0), moment(after_s), MORNING_S, MORNING_S + after_s, MORNING_S + after_s)


def machine_with(*entries: tuple[str, dict[str, object]]) -> Phone:
    phone = Phone("a")
    phone.save("machine_set", {"machine": setup()}, 0)
    for place, (kind, body) in enumerate(entries, 1):
        phone.save(kind, body, place * HOUR_S)
    return phone


def shown(phone: Phone, language: Language = LANGUAGE) -> MachineShown:
    now = fold(phone)
    return machine_shown(now.machines[0], now, period(5 * HOUR_S), language)[0]


def waits(phone: Phone, after_s: int = 5 * HOUR_S) -> list[str]:
    now = fold(phone)
    return machine_shown(now.machines[0], now, period(after_s), LANGUAGE)[1]


def test_healthy_machine_waits_for_nothing() -> None:
    assert waits(machine_with(("check", check("342", "5.4")))) == []


@pytest.mark.parametrize(("shows", "word"), [("4.0", "Too weak"), ("6.6", "Too strong")])
def test_reading_out_of_range_is_told(shows: str, word: str) -> None:
    (said,) = waits(machine_with(("check", check("342", shows))))
    assert word in said


def test_old_reading_is_overdue_unless_the_machine_rests() -> None:
    entries = [("check", check("342", "5.4"))]
    said = "check due: last reading on 25 Nov 2026, days from check to check 7"
    assert waits(machine_with(*entries), 8 * 24 * HOUR_S) == [said]
    assert waits(machine_with(*entries), 7 * 24 * HOUR_S) == []
    resting = machine_with(*entries, ("machine_state", {"state": "shutdown"}))
    assert waits(resting, 30 * 24 * HOUR_S) == []


def test_what_speaks_for_a_clean_out_is_told_in_the_apps_words() -> None:
    phone = machine_with(*[("check", {**check("342", "5.4"), "look": ["smell"]})] * 2)
    said = "time for a clean-out: It smelled more than once in four weeks."
    assert waits(phone) == [said]
    phone.save("machine_state", {"state": "shutdown"}, 4 * HOUR_S)
    assert waits(phone) == []


def test_a_tag_is_told_with_its_time_and_who_hung_it() -> None:
    phone = machine_with(("check", check("342", "5.4")))
    tag = {"state": "on_hold", "reason": "lab_sample", "until": moment(24 * HOUR_S)}
    phone.save("machine_state", tag, 2 * HOUR_S, by="RO")
    assert waits(phone) == [
        "On hold, waits for the laboratory, until 26 Nov 2026, 07:00, by RO",
    ]


def test_open_pour_and_stopped_machine_are_told() -> None:
    phone = machine_with(
        ("check", check("342", "5.4")),
        ("pour", pour(2, finished=False)),
        ("machine_state", {"state": "stopped", "reason": "wrong_drum"}),
    )
    assert waits(phone) == [
        "Stopped, wrong drum",
        "buckets poured since 25 Nov 2026, 09:00: 2, more was to come",
    ]


def test_charts_hold_every_reading_and_the_band_of_its_day() -> None:
    phone = Phone("a")
    phone.save("machine_set", {"machine": setup()}, 0)
    phone.save("check", check("342", "5.4"), HOUR_S)
    other = setup()
    other["target"]["high"]["text"] = "10"
    phone.save("machine_set", {"machine": other}, 2 * HOUR_S)
    phone.save("check", check("300", "5.0"), 3 * HOUR_S)
    now = fold(phone)
    shown, _, points = machine_shown(now.machines[0], now, period(4 * HOUR_S), LANGUAGE)
    assert len(points) == 4
    assert shown.strengths is not None
    assert [round(mark.value, 1) for mark in shown.strengths.marks] == [8.1, 7.5]
    assert [(b.low, b.high) for b in shown.strengths.bands] == [(7, 9), (7, 10)]
    assert shown.levels is not None
    # 300 of 440 mm of 198 L.
    assert shown.levels.marks[1].value == pytest.approx(135)
    assert shown.said[0] == "Readings: 2, of them in range 2 (100\u00a0%)."


def test_rest_is_drawn_from_its_start_to_its_end() -> None:
    phone = machine_with(
        ("check", check("342", "5.4")),
        ("machine_state", {"state": "clean_out"}),
        ("machine_state", {"state": "in_use"}),
        ("machine_state", {"state": "shutdown"}),
    )
    now = fold(phone)
    shown, _, _ = machine_shown(now.machines[0], now, period(6 * HOUR_S), LANGUAGE)
    assert shown.strengths is not None
    spans = [(s.from_s - MORNING_S, s.to_s - MORNING_S) for s in shown.strengths.rests]
    assert spans == [(2 * HOUR_S, 3 * HOUR_S), (4 * HOUR_S, 6 * HOUR_S)]


Said = tuple[str, dict[str, object]]
UNKNOWN: Said = ("unknown_addition", {})


@pytest.mark.parametrize("more", [("pour", pour()), UNKNOWN])
def test_what_was_poured_makes_the_reading_one_of_before(
    more: tuple[str, dict[str, object]],
) -> None:
    phone = machine_with(("check", check("342", "5.4")), more)
    line = shown(phone)
    # 5.4 Brix times the factor 1.5.
    before = "Before: In range, 8.1\u00a0%, 25 Nov 2026, 08:00"
    assert (line.state, line.note, line.strength) == ("not_read", before, "")
    german = shown(phone, Language(GERMAN, ",", "de"))
    assert german.note == "Vorher: Im Sollbereich, 8,1\u00a0%, 25. Nov. 2026, 08:00"
    assert (WORDS["not_read"], GERMAN["not_read"]) == (
        "Poured, not read yet",
        "Nachgefüllt, noch nicht gemessen",
    )


@pytest.mark.parametrize(("shows", "state"), [("5.4", "in_range"), ("4.0", "weak")])
@pytest.mark.parametrize("kind", ["recheck", "check"])
def test_a_reading_before_the_pour_had_mixed_is_the_present_one_and_says_so(
    kind: str, shows: str, state: str
) -> None:
    # It stood there as plain "In range", and only another section said that one more is due.
    phone = machine_with(
        ("check", check("342", "4.0")), ("pour", pour(recheck_due_at=moment(4 * HOUR_S)))
    )
    again = {"of": id_of("a 3"), "reading": check("342", shows)["reading"]}
    phone.save(kind, again if kind == "recheck" else check("342", shows), 3 * HOUR_S)
    line = shown(phone)
    strength = {"in_range": "8.1\u00a0%", "weak": "6.0\u00a0%"}[state]
    note = "Hardly mixed when it was read: not mixed before 25 Nov 2026, 11:00"
    assert (line.state, line.note, line.strength) == (state, note, strength)
    german = shown(phone, Language(GERMAN, ",", "de"))
    assert german.note == "Beim Messen noch nicht durchgemischt, erst ab 25. Nov. 2026, 11:00"
    said = f"last reading {strength}: Too weak, hardly mixed when it was read"
    assert (said in waits(phone)) == (state == "weak")


@pytest.mark.parametrize(
    "more",
    [
        [("recheck", {"of": id_of("a 3"), "reading": check()["reading"]})],
        [("clean_out", {"finished": True}), ("check", check("342", "5.4"))],
    ],
)
def test_a_reading_in_time_and_one_of_the_next_charge_had_mixed(more: list[Said]) -> None:
    due = moment(3 * HOUR_S if more[0][0] == "recheck" else 9 * HOUR_S)
    phone = machine_with(("check", check()), ("pour", pour(recheck_due_at=due)), *more)
    assert shown(phone).note == ""


@pytest.mark.parametrize(
    ("kind", "body"),
    [
        ("pour", pour(2)),
        ("unknown_addition", {"what": "water"}),
        ("pour", {**pour(0), "pours": []}),
    ],
)
def test_a_dip_of_before_a_pour_is_not_the_present_level(
    kind: str, body: dict[str, object]
) -> None:
    # 154 L and its room stood there, though two buckets had gone in.
    dipped = shown(machine_with(("check", check("342", "5.4"))))
    assert (dipped.level, dipped.room) == ("154\u00a0L", "44\u00a0L")
    now = shown(machine_with(("check", check("342", "5.4")), (kind, body)))
    moved = bool(body.get("pours")) or kind == "unknown_addition"
    assert (now.level, now.room) == (("", "") if moved else (dipped.level, dipped.room))
    again = machine_with(
        ("check", check("342", "5.4")), (kind, body), ("check", check("400", "5.4"))
    )
    assert shown(again).level == "180\u00a0L"


def test_a_pour_that_poured_nothing_and_one_before_the_reading_change_nothing() -> None:
    given_up: dict[str, object] = {"pours": [], "finished": True}
    phone = machine_with(("pour", pour()), ("check", check("342", "5.4")), ("pour", given_up))
    assert (shown(phone).state, shown(phone).note) == ("in_range", "")


def test_a_machine_that_was_never_read_has_no_state_of_before() -> None:
    line = shown(machine_with(("pour", pour())))
    assert (line.state, line.note) == ("none", "")


def test_a_reading_out_of_range_is_told_with_the_pour_after_it() -> None:
    said = "last reading 6.0\u00a0%: Too weak, poured since and not read"
    assert waits(machine_with(("check", check("342", "4.0")), UNKNOWN)) == [said]


def test_a_new_charge_that_nobody_has_read_is_not_one_that_was_never_read() -> None:
    emptied: Said = ("clean_out", {"finished": True})
    assert waits(machine_with()) == ["never read"]
    assert waits(machine_with(emptied)) == ["never read"]
    said = ["no reading of this charge yet"]
    assert waits(machine_with(("check", check("342", "5.4")), emptied)) == said
    assert GERMAN["no_reading_of_charge"] == "noch keine Messung seit dem Neuansatz"


def test_one_reading_in_doubt_is_told_without_a_plural_and_not_as_never_read() -> None:
    phones = [machine_with(("check", check("342", "5.4"))), Phone("b"), Phone("c")]
    for phone, shows in zip(phones[1:], ("5.0", "5.2"), strict=True):
        body = {"corrects": id_of("a 2"), "reason": "x", "kind": "check"}
        phone.save("correction", {**body, "content": check("342", shows)}, 2 * HOUR_S, machine="")
    now = fold(*phones)
    told = machine_shown(now.machines[0], now, period(5 * HOUR_S), LANGUAGE)[1]
    assert told == [
        "entries that contradict one another: 1, somebody has to decide",
        "no reading that counts",
    ]
    german = GERMAN["conflicts"].format(n=1)
    assert german == "Einträge, die sich widersprechen: 1, jemand muss entscheiden"
