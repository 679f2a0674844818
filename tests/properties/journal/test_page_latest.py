"""What counts as the latest set-up, word and fact on the page beside pycore, with wrong clocks."""

import random
from typing import Any

from tests.phones import Phone, setup
from tests.properties.journal.test_page_order import MACHINES, YEARS_S, asked
from tests.unit.journal.reading import fold

SEED, CASES, MOST_SAID = 20261129, 600, 9
SHOWN = {"shown": {"full_depth": {}, "low": {}, "high": {}}}


def said(chance: random.Random) -> list[Phone]:
    """Three phones that set things up; one day a clock of theirs is years ahead or behind."""
    phones = [Phone(title) for title in "abc"]
    for number in range(chance.randint(1, MOST_SAID)):
        kind, body, more = chance.choice(
            [
                ("machine_set", {"machine": setup()}, {"shown": SHOWN}),
                ("machine_state", {"state": chance.choice(("in_use", "watch"))}, {}),
                ("shop_set", {"who_to_ask": f"person {number}"}, {}),
                ("note", {"text": "x"}, {}),
            ]
        )
        at_s = number * 3600
        if chance.random() < 0.2:
            at_s += chance.choice((YEARS_S, -YEARS_S))
        machine = "" if kind == "shop_set" else chance.choice(MACHINES)
        chance.choice(phones).save(kind, body, at_s, machine, **more)
    return phones


def by_pycore(phones: list[Phone]) -> dict[str, Any]:
    now = fold(*phones)
    machines = {one.machine: one for one in now.machines}
    found: dict[str, Any] = {"setups": [], "stated": [], "who": ""}
    for name in MACHINES:
        machine = machines.get(name)
        setups, states = (machine.definition, machine.state) if machine else (None, None)
        found["setups"].append(setups.entry.id if setups else None)
        is_told = states is not None and states.entry.content["state"] != "in_use"
        found["stated"].append(states.entry.id if states is not None and is_told else None)
    if "who_to_ask" in now.shop:
        found["who"] = now.shop["who_to_ask"].entry.content["who_to_ask"]
    return found


def test_page_and_pycore_agree_about_what_was_said_last() -> None:
    chance = random.Random(SEED)
    cases = [said(chance) for _ in range(CASES)]
    told = asked(cases)
    found = [one["now"] for one in told]
    wanted = [by_pycore(phones) for phones in cases]
    assert found == wanted
    # So does the part of the log that a start reads.
    assert [one["setups_at_start"] for one in told] == [one["setups"] for one in wanted]
    assert any(one["stated"][0] for one in wanted)


def test_a_clock_that_was_wrong_once_makes_no_old_set_up_the_present_one() -> None:
    old, new = Phone("a"), Phone("b")
    machine = MACHINES[0]
    old.save("note", {"text": "years ahead"}, YEARS_S, machine)
    old.save("machine_set", {"machine": setup(factor="1.5")}, 0, machine, shown=SHOWN)
    latest = new.save("machine_set", {"machine": setup(factor="2.0")}, 86_400, machine, shown=SHOWN)
    (found,) = asked([[old, new]])
    assert found["now"]["setups"][0] == latest
