"""pycore.desk.log.first_ph by look_back: which pH later ones are compared with."""

from tests.phones import check, moment, setup, typed
from tests.unit.desk.look_back.test_look_back import DAY_S, asked, lathe


def test_first_ph_is_that_of_the_set_up_with_its_first_day() -> None:
    phone = lathe("9.3")
    again = setup()
    again["fluid"]["first_fill_ph"] = typed("9.3", "1")
    phone.save("machine_set", {"machine": again}, -DAY_S)
    found = asked(phone)["first_fill_ph"]
    assert (found["ph"], found["from"]) == (typed("9.3", "1"), "set_up")
    assert found["measured_at"] == moment(-90 * DAY_S)


def test_first_ph_after_a_clean_out_is_that_of_the_next_days() -> None:
    phone = lathe("9.3")
    phone.save("clean_out", {"finished": True}, -30 * DAY_S)
    phone.save("check", {**check(), "ph": typed("9.1", "1")}, -29 * DAY_S)
    phone.save("check", {**check(), "ph": typed("8.8", "1")}, -5 * DAY_S)
    found = asked(phone)["first_fill_ph"]
    assert (found["ph"]["text"], found["from"]) == ("9.1", "log")


def test_first_ph_that_somebody_said_at_a_look_goes_before_both() -> None:
    phone = lathe("9.3")
    phone.save("clean_out", {"finished": True}, -30 * DAY_S)
    phone.save("check", {**check(), "ph": typed("9.1", "1")}, -29 * DAY_S)
    said = {"look": ["normal"], "first_fill_ph": typed("9.4", "1")}
    phone.save("check", said, -5 * DAY_S)
    found = asked(phone)["first_fill_ph"]
    assert (found["ph"]["text"], found["from"]) == ("9.4", "log")
    assert found["measured_at"] == moment(-5 * DAY_S)
    phone.save("clean_out", {"finished": True}, -DAY_S)
    assert asked(phone)["first_fill_ph"]["from"] == "set_up"


def test_a_later_ph_is_not_that_of_the_first_fill() -> None:
    phone = lathe("9.3")
    phone.save("clean_out", {"finished": True}, -30 * DAY_S)
    phone.save("check", {**check(), "ph": typed("8.8", "1")}, -5 * DAY_S)
    assert asked(phone)["first_fill_ph"]["from"] == "set_up"
