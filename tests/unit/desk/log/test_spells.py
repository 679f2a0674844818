"""pycore.desk.log.spells: bands and rests as long as they held."""

from pycore.desk.log.history import history_of
from pycore.desk.log.spells import BandSpell, Spell, bands_of, rests_of
from tests.phones import MORNING_S, Phone, check, setup, typed
from tests.unit.journal.reading import fold

END_S = MORNING_S + 9000


def points_of(phone: Phone) -> list:  # type: ignore[type-arg]
    (machine,) = fold(phone).machines
    return history_of(machine)


def test_a_band_holds_until_another_one_is_set() -> None:
    phone = Phone("a")
    phone.save("machine_set", {"machine": setup()}, 0)
    phone.save("check", check(), 60)
    phone.save("check", check(), 120)
    narrow = {**setup(), "target": {n: typed(t, "%") for n, t in
              (("low", "6"), ("aim", "7"), ("high", "8"))}}  # fmt: skip
    phone.save("machine_set", {"machine": narrow}, 180)
    phone.save("check", check(), 240)
    assert bands_of(points_of(phone), END_S) == [
        BandSpell(MORNING_S + 60, MORNING_S + 240, 7, 9),
        BandSpell(MORNING_S + 240, END_S, 6, 8),
    ]


def test_rests_begin_and_end() -> None:
    phone = Phone("a")
    phone.save("machine_state", {"state": "stopped"}, 0)
    phone.save("machine_state", {"state": "clean_out"}, 60)
    phone.save("machine_state", {"state": "in_use"}, 120)
    phone.save("machine_state", {"state": "watch"}, 180)
    phone.save("machine_state", {"state": "shutdown"}, 240)
    assert rests_of(points_of(phone), END_S) == [
        Spell(MORNING_S, MORNING_S + 120),
        Spell(MORNING_S + 240, END_S),
    ]
    assert rests_of([], END_S) == []
