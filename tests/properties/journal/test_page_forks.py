"""Places that several lines claim, on the page beside pycore: a copied phone, and both went on."""

import random
from itertools import count
from typing import Any

import pytest

from tests.phones import LATHE, Phone, id_of, pour
from tests.properties.journal.test_page_order import MACHINES, READ, SHOWN, asked, wanted
from tests.unit.journal.reading import both_count, fold

SEED, CASES, MOST_DEEDS = 20261128, 600, 8
STATES = ("in_use", "watch", "stopped", "on_hold")


class Copied:
    """A phone with a copy of it that went on, and two others on which people decide."""

    def __init__(self, chance: random.Random, back_min: int) -> None:
        self.chance = chance
        self.names = (id_of(f"entry {number}") for number in count())
        self.old, self.at_s = Phone("a"), 0
        self.saved: list[tuple[str, str, dict[str, Any]]] = []
        self.deeds(self.old, chance.randint(0, 3))
        self.copy = self.old.clone()
        self.others = [Phone("b"), Phone("c")]
        for phone in (self.old, self.copy):
            # A clock that was ahead may be put right with the copy.
            self.at_s -= chance.choice((0, back_min)) * 60
            self.deeds(phone, chance.randint(1, MOST_DEEDS))

    @property
    def phones(self) -> list[Phone]:
        """All of them."""
        return [self.old, self.copy, *self.others]

    def deeds(self, phone: Phone, number: int) -> None:
        for _ in range(number):
            self.at_s += self.chance.randint(1, 20) * 60
            self.deed(phone)

    def deed(self, phone: Phone) -> None:
        kind, body = self.chance.choice(
            [
                ("check", READ),
                ("pour", pour(1)),
                ("note", {"text": "x"}),
                ("machine_state", {"state": self.chance.choice(STATES)}),
                ("clean_out", {"finished": True}),
            ]
        )
        if self.saved and self.chance.random() < 0.3:
            target, of, content = self.chance.choice(self.saved)
            kind = self.chance.choice(("correction", "withdrawal"))
            said = {"corrects": target, "kind": of, "content": content}
            body = {**(said if kind == "correction" else {"retracts": target}), "reason": "r"}
        name = next(self.names)
        if self.saved and self.chance.random() < 0.1:
            # A changed file: another entry under the same id.
            name = self.chance.choice(self.saved)[0]
        phone.save(kind, body, self.at_s, self.chance.choice(MACHINES), shown=SHOWN, id=name)
        if kind not in ("correction", "withdrawal"):
            self.saved.append((name, kind, body))

    def decide(self) -> None:
        """Now and then about not all lines, differently on two phones, or taken back again."""
        for fork in fold(*self.phones).chains.forks:
            for phone in self.others:
                if self.chance.random() < 0.5:
                    self.say(phone, fork.hashes)
                if self.chance.random() < 0.2:
                    self.say(phone, fork.hashes)
        if self.others[0].seq and self.chance.random() < 0.2:
            # Another line in the place of a decision.
            last = self.others[0]
            end = last.hash_of(last.seq - 1) if last.seq > 1 else ""
            before = Phone(last.title, 0, last.lines[:-1], end, last.seq - 1)
            self.deeds(before, 1)
            self.others.append(before)
        for phone in self.phones:
            # Lines come in any order.
            self.chance.shuffle(phone.lines)

    def say(self, phone: Phone, hashes: tuple[str, ...]) -> None:
        named = [name for name in hashes if self.chance.random() < 0.95]
        use = [name for name in named if self.chance.random() < 0.7]
        leave = [name for name in named if name not in use]
        body = {"use": use, "leave": leave, "reason": "r"}
        told = phone.save("decision", body, self.at_s, machine="", id=next(self.names))
        if self.chance.random() < 0.1:
            back = {"retracts": told, "reason": "r"}
            phone.save("withdrawal", back, self.at_s, machine="", id=next(self.names))


def copied(back_min: int) -> list[list[Phone]]:
    chance = random.Random(SEED)
    cases = []
    for _ in range(CASES):
        case = Copied(chance, back_min)
        case.decide()
        cases.append(case.phones)
    return cases


def told_by_pycore(phones: list[Phone]) -> dict[str, Any]:
    now = fold(*phones)
    machines = {one.machine: one for one in now.machines}
    used = [machines[name].ordered if name in machines else () for name in MACHINES]
    disputed = [one for one in now.entries if one.standing == "disputed"]
    return {
        "hashes": [[one.entry.hash for one in ordered] for ordered in used],
        "held": [name in machines and machines[name].is_stopped for name in MACHINES],
        "disputed": sorted(one.id for one in disputed if one.kind == "machine_state"),
    }


@pytest.mark.parametrize("back_min", [0, 150])
def test_page_and_pycore_agree_about_lines_that_claim_one_place(back_min: int) -> None:
    cases = copied(back_min)
    found = asked(cases)
    told = [told_by_pycore(phones) for phones in cases]
    assert [one["hashes"] for one in found] == [one["hashes"] for one in told]
    assert [one["disputed"] for one in found] == [one["disputed"] for one in told]
    assert [one["due"] for one in found] == [wanted(phones)["due"] for phones in cases]
    # Which clocks went back only pycore knows, and then takes none of their words for certain.
    if back_min == 0:
        assert [one["held"] for one in found] == [one["held"] for one in told]
    # The part of a log that a start reads tells the same.
    assert [one["held_at_start"] for one in found] == [one["held"] for one in found]
    assert [one["disputed_again"] for one in found] == [one["disputed"] for one in told]
    assert {one["odd"] for one in found} == {0}
    counts = [one["aside"] for one in found]
    assert 0 < counts.count(0) < len(counts)
    assert any(one["disputed"] for one in told)


def test_a_clock_that_was_ahead_before_a_split_takes_no_tag_off_after_it() -> None:
    old = Phone("a")
    old.save("machine_state", {"state": "in_use"}, 7200, MACHINES[0])
    copy = old.clone()
    old.save("machine_state", {"state": "stopped"}, 600, MACHINES[0], id=id_of("stop"))
    copy.save("note", {"text": "x"}, 700, MACHINES[0], id=id_of("note"))
    decider = both_count(old, copy)
    for found in asked([[old, copy], [old, copy, decider]]):
        assert found["held"] == found["held_at_start"] == [True, False]


def test_a_tag_on_the_shorter_part_of_a_copied_phone_is_not_lost() -> None:
    old = Phone("a")
    old.save("check", READ, 0, shown=SHOWN)
    copy = old.clone()
    for number in range(3):
        name = id_of(f"watch {number}")
        old.save("machine_state", {"state": "watch"}, 60 * number, MACHINES[0], id=name)
    old.save("machine_state", {"state": "in_use"}, 600, MACHINES[0], id=id_of("in use"))
    copy.save("machine_state", {"state": "stopped"}, 7200, MACHINES[0], id=id_of("stop"))
    decider = both_count(old, copy)
    before, after = asked([[old, copy], [old, copy, decider]])
    assert before["held"] == before["held_at_start"] == [True, False]
    assert after["held"] == after["held_at_start"] == [True, False]
    assert after["now"]["stated"][0] == id_of("stop")


def test_both_of_a_copied_phone_count_when_somebody_says_so() -> None:
    old = Phone("a")
    old.save("check", READ, 0, shown=SHOWN)
    copy = old.clone()
    here = old.save("check", READ, 60, shown=SHOWN, id=id_of("on the old phone"))
    there = copy.save("check", READ, 120, LATHE, shown=SHOWN, id=id_of("on the copy"))
    (before,) = asked([[old, copy]])
    assert before["order"][0] == [id_of("a 1")]
    assert before["aside"] == 2
    body = {"use": [old.hash_of(2), copy.hash_of(2)], "leave": [], "reason": "both were made"}
    old.save("decision", body, 180, machine="")
    (after,) = asked([[old, copy]])
    assert after["order"][0] == [id_of("a 1"), here, there]
    assert after["aside"] == 0
