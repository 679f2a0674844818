"""Facts of the shop and the hold tag in the fold: whatever the order of the lines."""

import itertools

from pycore.desk.contract.checked import checked
from pycore.journal.file import PHONE
from pycore.journal.handover import handed_over
from pycore.journal.merge import merged
from pycore.journal.state import folded
from tests.phones import LATHE, MORNING_S, NOW_S, Phone, moment, typed
from tests.unit.journal.reading import fold, machine

LIMITS = {"ph_low": typed("8.2", "1")}
TAG = {"state": "on_hold", "reason": "lab_sample", "until": moment(86_400)}


def test_each_fact_counts_by_its_own_latest_entry() -> None:
    one, two = Phone("a"), Phone("b")
    one.save("shop_set", {"who_to_ask": "Bay 3"}, 0, machine="")
    two.save("shop_set", {"look_limits": LIMITS}, 3600, machine="")
    one.save("shop_set", {"look_limits": {}}, 1800, machine="")
    latest = one.save("shop_set", {"who_to_ask": ""}, 7200, machine="")
    for phones in itertools.permutations((one, two)):
        shop = fold(*phones).shop
        assert shop["who_to_ask"].entry.id == latest
        assert shop["look_limits"].entry.content["look_limits"] == LIMITS
        assert shop["look_limits"].is_certain


def test_a_shop_without_facts_has_none() -> None:
    assert fold(Phone("a")).shop == {}


def test_a_withdrawn_limit_gives_way_to_the_one_before() -> None:
    phone = Phone("a")
    first = phone.save("shop_set", {"look_limits": LIMITS}, 0, machine="")
    gone = phone.save("shop_set", {"look_limits": {"ph_low": typed("7", "1")}}, 60, machine="")
    phone.save("withdrawal", {"retracts": gone, "reason": "typed wrong"}, 120, machine="")
    assert fold(phone).shop["look_limits"].entry.id == first


def test_a_tag_is_handed_over_until_somebody_takes_it_off() -> None:
    phone = Phone("a")
    phone.save("machine_state", TAG, 0, by="RO")
    (told,) = handed_over(fold(phone), MORNING_S, NOW_S).states
    assert told.state is not None
    assert told.state.entry.entry.by == "RO"
    assert machine(phone).is_stopped
    # The clock does not lift it.
    late_s = MORNING_S + 10 * 86_400
    assert len(handed_over(fold(phone), late_s, late_s).states) == 1
    phone.save("machine_state", {"state": "in_use"}, 7200, by="KT")
    assert handed_over(fold(phone), MORNING_S, NOW_S).states == ()
    assert not machine(phone).is_stopped


def test_a_tag_is_not_lost_where_two_phones_do_not_know_which_came_later() -> None:
    one, two = Phone("a"), Phone("b")
    one.save("machine_state", TAG, 0)
    two.save("machine_state", {"state": "watch"}, 120)
    for phones in itertools.permutations((one, two)):
        found = machine(*phones)
        assert found.state is not None
        assert found.state.entry.content["state"] == "watch"
        assert not found.state.is_certain
        assert found.is_stopped
    assert found.machine == LATHE


def test_a_backup_carries_tag_limits_and_names() -> None:
    phone = Phone("a")
    phone.save("machine_state", TAG, 0, by="RO")
    phone.save("shop_set", {"look_limits": LIMITS, "who_to_ask": "Bay 3"}, 60, machine="")
    done = merged([("backup.jsonl", phone.export())], checked, PHONE, NOW_S)
    assert done.files[0].refused is None
    assert done.files[0].quarantined == 0
    back = folded(done.union, NOW_S)
    assert back.shop["look_limits"].entry.content["look_limits"] == LIMITS
    assert back.shop["who_to_ask"].entry.content["who_to_ask"] == "Bay 3"
    (lathe,) = back.machines
    assert lathe.state is not None
    assert (lathe.state.entry.content, lathe.state.entry.entry.by) == (TAG, "RO")
