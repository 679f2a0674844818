"""pycore.journal.open_pours."""

from typing import Any

from pycore.journal.open_pours import OpenPour, Recheck
from tests.phones import Phone, check, moment, pour
from tests.unit.journal.reading import machine

PLAN: dict[str, Any] = {"pours": [{"count": 3}, {"count": 1}]}


def test_a_plan_is_open_until_a_finished_pour_names_it() -> None:
    phone = Phone("a")
    plan = phone.save("plan", PLAN, 0)
    assert machine(phone).open_pours == (OpenPour(plan, moment(0), 4, 0, ()),)
    first = phone.save("pour", pour(2, finished=False, plan=plan), 60)
    assert machine(phone).open_pours == (OpenPour(plan, moment(0), 4, 2, (first,)),)
    second = phone.save("pour", pour(1, finished=False, plan=plan), 120)
    assert machine(phone).open_pours == (OpenPour(plan, moment(0), 4, 3, (first, second)),)
    phone.save("pour", pour(1, plan=plan), 180)
    assert machine(phone).open_pours == ()


def test_what_is_open_with_and_without_a_plan_stands_in_one_order() -> None:
    phone = Phone("a")
    plan = phone.save("plan", PLAN, 0)
    loose = phone.save("pour", pour(1, finished=False), 60)
    assert machine(phone).open_pours == (
        OpenPour("", moment(60), 0, 1, (loose,)),
        OpenPour(plan, moment(0), 4, 0, ()),
    )


def test_after_a_finished_one_the_next_is_open() -> None:
    phone = Phone("a")
    phone.save("pour", pour(2), 0)
    begun = phone.save("pour", pour(1, finished=False), 60)
    assert machine(phone).open_pours == (OpenPour("", moment(60), 0, 1, (begun,)),)


def test_given_up_is_finished() -> None:
    phone = Phone("a")
    plan = phone.save("plan", PLAN, 0)
    phone.save("pour", {"pours": [], "finished": True, "plan": plan}, 60)
    assert machine(phone).open_pours == ()


def test_a_top_up_without_a_plan_leaves_the_plan_open() -> None:
    phone = Phone("a")
    plan = phone.save("plan", PLAN, 0)
    phone.save("pour", pour(1), 60)
    assert [found.plan for found in machine(phone).open_pours] == [plan]


def test_an_unfinished_top_up_without_a_plan() -> None:
    phone = Phone("a")
    first = phone.save("pour", pour(1, finished=False), 60)
    assert machine(phone).open_pours == (OpenPour("", moment(60), 0, 1, (first,)),)
    phone.save("pour", pour(1), 90)
    assert machine(phone).open_pours == ()


def test_a_new_plan_and_a_clean_out_close_what_was_before() -> None:
    phone = Phone("a")
    phone.save("plan", PLAN, 0)
    phone.save("pour", pour(1, finished=False), 30)
    later = phone.save("plan", PLAN, 60)
    assert [found.plan for found in machine(phone).open_pours] == [later]
    phone.save("clean_out", {"finished": False}, 90)
    assert machine(phone).open_pours == ()


def test_poured_on_one_phone_and_finished_on_another() -> None:
    one, two = Phone("a"), Phone("b")
    plan = one.save("plan", PLAN, 0)
    two.save("pour", pour(4, plan=plan), 900)
    assert machine(one, two).open_pours == machine(two, one).open_pours == ()


def test_second_reading_is_due_until_somebody_reads() -> None:
    phone = Phone("a")
    poured = phone.save("pour", pour(2, recheck_due_at=moment(3600)), 0)
    assert machine(phone).recheck == Recheck(poured, moment(3600), True, False)
    phone.save("check", {"dip": check()["dip"]}, 1800)
    assert machine(phone).recheck is not None
    phone.save("recheck", {**check(), "of": poured}, 3700)
    assert machine(phone).recheck is None
    phone.save("pour", pour(2, recheck_due_at=moment(9000)), 4000)
    phone.save("check", check(), 9000)
    assert machine(phone).recheck is None


def test_a_second_reading_before_its_time_leaves_one_due() -> None:
    phone = Phone("a")
    poured = phone.save("pour", pour(2, recheck_due_at=moment(3600)), 0)
    phone.save("recheck", {**check(), "of": poured}, 3599)
    assert machine(phone).recheck == Recheck(poured, moment(3600), True, False)
    phone.save("recheck", {**check(), "of": poured}, 3600)
    assert machine(phone).recheck is None


def test_a_check_before_the_pump_has_mixed_leaves_the_second_reading_due() -> None:
    phone = Phone("a")
    poured = phone.save("pour", pour(2, recheck_due_at=moment(3600)), 0)
    phone.save("check", check(), 60)
    assert machine(phone).recheck == Recheck(poured, moment(3600), True, False)
    phone.save("check", check(), 3600)
    assert machine(phone).recheck is None


def test_what_is_poured_while_a_reading_is_due_mixes_as_long() -> None:
    phone = Phone("a")
    poured = phone.save("pour", pour(2, recheck_due_at=moment(3600)), 0)
    phone.save("pour", pour(1), 3500)
    assert machine(phone).recheck == Recheck(poured, moment(7100), True, False)
    phone.save("recheck", {**check(), "of": poured}, 7099)
    assert machine(phone).recheck is not None
    phone.save("recheck", {**check(), "of": poured}, 7100)
    assert machine(phone).recheck is None
    # After a reading that counted, more of the same is no reason for another one.
    phone.save("pour", pour(1), 7200)
    assert machine(phone).recheck is None


def test_a_told_pour_of_before_and_a_recipe_given_up_shift_nothing() -> None:
    one, two = Phone("a"), Phone("b")
    one.save("pour", pour(1), 0)
    poured = one.save("pour", pour(2, recheck_due_at=moment(3600)), 60)
    two.save("pour", {**pour(0), "pours": []}, 1800)
    # Told late: it went in before the recipe did.
    one.save("pour", pour(1), -600)
    assert machine(one, two).recheck == Recheck(poured, moment(3600), True, False)


def test_a_pour_over_which_two_logs_differ_is_read_again_too() -> None:
    one, two = Phone("a"), Phone("b")
    poured = one.save("pour", pour(3, recheck_due_at=moment(3600)), 0)
    for phone, count in ((one, 4), (two, 2)):
        content = pour(count, recheck_due_at=moment(3600))
        said = {"corrects": poured, "reason": "miscounted", "kind": "pour", "content": content}
        phone.save("correction", said, 90, machine="")
    now = machine(one, two)
    assert now.conflicts == (poured,)
    assert now.recheck == Recheck(poured, moment(3600), True, False)


def test_a_clean_out_or_a_word_after_an_early_reading_ends_it() -> None:
    for kind, content in (("clean_out", {"finished": True}), ("recheck", {"remarks": "No."})):
        phone = Phone("a")
        poured = phone.save("pour", pour(2, recheck_due_at=moment(3600)), 0)
        phone.save("recheck", {**check(), "of": poured}, 60)
        assert machine(phone).recheck is not None
        phone.save(kind, {**content, "of": poured} if kind == "recheck" else content, 90)
        assert machine(phone).recheck is None


def test_due_to_the_second_is_not_overdue() -> None:
    phone = Phone("a")
    poured = phone.save("pour", pour(2, recheck_due_at=moment(8 * 3600)), 0)
    assert machine(phone).recheck == Recheck(poured, moment(8 * 3600), False, False)


def test_the_word_that_nobody_will_read_closes_it() -> None:
    phone = Phone("a")
    poured = phone.save("pour", pour(2, recheck_due_at=moment(3600)), 0)
    phone.save("check", {"dip": check()["dip"]}, 60)
    assert machine(phone).recheck is not None
    phone.save("recheck", {"of": poured, "remarks": "Glass is broken."}, 90)
    assert machine(phone).recheck is None


def test_due_later_is_not_overdue_and_rests_with_the_machine() -> None:
    phone = Phone("a")
    poured = phone.save("pour", pour(2, recheck_due_at=moment(9 * 3600)), 0)
    assert machine(phone).recheck == Recheck(poured, moment(9 * 3600), False, False)
    second = phone.save("pour", pour(2, recheck_due_at=moment(60)), 30)
    phone.save("machine_state", {"state": "shutdown"}, 90)
    assert machine(phone).recheck == Recheck(second, moment(60), False, True)
    phone.save("machine_state", {"state": "in_use"}, 99)
    assert machine(phone).recheck == Recheck(second, moment(60), True, False)


def test_after_a_clean_out_no_second_reading_of_the_old_charge_is_due() -> None:
    phone = Phone("a")
    phone.save("pour", pour(2, recheck_due_at=moment(60)), 0)
    phone.save("clean_out", {"finished": False}, 90)
    assert machine(phone).recheck is not None
    phone.save("clean_out", {"finished": True}, 120)
    assert machine(phone).recheck is None


def test_the_rest_is_given_up_after_the_part_before_was_read() -> None:
    phone = Phone("a")
    plan = phone.save("plan", PLAN, 0)
    phone.save("pour", pour(1, finished=False, plan=plan), 60)
    # The rest comes later; hours later somebody checks, and only then gives it up.
    phone.save("check", check(), 18_000)
    given_up = {"pours": [], "finished": True, "plan": plan, "recheck_due_at": moment(1860)}
    last = phone.save("pour", given_up, 60)
    assert machine(phone).recheck is None
    other = Phone("b")
    plan = other.save("plan", PLAN, 0)
    other.save("pour", pour(1, finished=False, plan=plan), 60)
    other.save("check", check(), 120)
    last = other.save("pour", {**given_up, "plan": plan}, 60)
    assert machine(other).recheck == Recheck(last, moment(1860), True, False)


def test_a_recipe_of_which_nothing_went_in_has_nothing_to_read() -> None:
    phone = Phone("a")
    before = phone.save("pour", pour(1, recheck_due_at=moment(1800)), 0)
    plan = phone.save("plan", PLAN, 30)
    nothing = {"pours": [], "finished": True, "recheck_due_at": moment(3600)}
    phone.save("pour", {**nothing, "plan": plan}, 60)
    # Without a plan it is part of none.
    phone.save("pour", nothing, 90)
    assert machine(phone).recheck == Recheck(before, moment(1800), True, False)


def test_a_clock_that_was_ahead_at_the_pour_keeps_nothing_due_for_ever() -> None:
    year_s = 365 * 86_400
    phone = Phone("a")
    phone.save("pour", pour(1, recheck_due_at=moment(year_s + 1800)), year_s)
    assert machine(phone).recheck is not None
    phone.save("check", check(), 86_400)
    assert machine(phone).recheck is None
    # Up to a day before, it may be a reading that was typed before the pour.
    for early_s, ended in ((86_399, False), (86_400, True)):
        other = Phone("b")
        other.save("pour", pour(1, recheck_due_at=moment(90_000)), 88_200)
        other.save("check", check(), 90_000 - early_s)
        assert (machine(other).recheck is None) is ended


def test_what_is_told_after_a_reading_was_typed_does_not_make_it_early() -> None:
    phone = Phone("a")
    phone.save("pour", pour(2, recheck_due_at=moment(1800)), 0)
    # The check is under way when yesterday's bucket is written down.
    phone.save("pour", pour(1), 7260)
    phone.save("check", {**check(), "now": moment(7200)}, 7320)
    assert machine(phone).recheck is None


def test_what_is_told_in_the_second_of_a_reading_was_there_before_it() -> None:
    phone = Phone("a")
    poured = phone.save("pour", pour(2, recheck_due_at=moment(1800)), 0)
    phone.save("pour", pour(1), 7200)
    phone.save("check", {**check(), "now": moment(7200)}, 7320)
    assert machine(phone).recheck == Recheck(poured, moment(9000), True, False)


def test_a_reading_is_as_old_as_its_digits() -> None:
    for now, ended in ((moment(600), False), (moment(9000), True), ("2026-11-25", True)):
        phone = Phone("a")
        poured = phone.save("pour", pour(2, recheck_due_at=moment(1800)), 0)
        phone.save("check", {**check(), "now": now}, 1860)
        found = machine(phone).recheck
        assert found == (None if ended else Recheck(poured, moment(1800), True, False))


def test_a_stray_part_after_the_recipe_was_read_asks_for_no_other_reading() -> None:
    phone = Phone("a")
    plan = phone.save("plan", PLAN, 0)
    phone.save("pour", pour(2, plan=plan, recheck_due_at=moment(1800)), 0)
    phone.save("check", check(), 1800)
    phone.save("pour", pour(1, finished=False, plan=plan), 2000)
    assert machine(phone).recheck is None
