"""Phones that save, clone, wipe, restore, set clocks and exchange files, in any order."""

from __future__ import annotations

from dataclasses import dataclass, field

from hypothesis import settings
from hypothesis import strategies as st
from hypothesis.stateful import RuleBasedStateMachine, initialize, invariant, rule
from hypothesis.stateful import run_state_machine_as_test as check_machine

from pycore.desk.contract.checked import checked
from pycore.journal.file import PHONE, LogFile
from pycore.journal.merge import merged
from pycore.journal.union import file_of, gathered, read_lines
from tests.phones import NOW_S, Phone, check, id_of
from tests.properties.journal.shop import lines_in, merge, state_of

DEVICES = st.integers(0, 3)


@dataclass
class Device:
    """A phone with its own log, and the lines of others that it was given."""

    own: Phone
    given: set[str] = field(default_factory=set)

    @property
    def lines(self) -> set[str]:
        return {*self.own.lines, *self.given}

    def export(self) -> str:
        return file_of(gathered(*read_lines(sorted(self.lines), checked), self.own.head()))


class Shop(RuleBasedStateMachine):
    """Whatever happens, a file that was taken in never takes anything away."""

    @initialize()
    def start(self) -> None:
        self.count = 0
        self.devices = [Device(self.fresh()) for _ in range(4)]
        self.saved: dict[str, str] = {}
        self.exports: list[str] = []
        self.writers: dict[str, set[int]] = {}

    def fresh(self) -> Phone:
        self.count += 1
        return Phone(f"log {self.count}")

    @rule(at=DEVICES, after_s=st.integers(-9000, 9000))
    def save(self, at: int, after_s: int) -> None:
        phone = self.devices[at].own
        self.count += 1
        identity = phone.save("check", check(), after_s, id=id_of(f"entry {self.count}"))
        self.saved[identity] = phone.lines[-1]
        self.writers.setdefault(phone.title, set()).add(id(phone))

    @rule(at=DEVICES, fast_s=st.sampled_from([-86_400, 0, 86_400]))
    def set_clock(self, at: int, fast_s: int) -> None:
        self.devices[at].own.fast_s = fast_s

    @rule(at=DEVICES, to=DEVICES)
    def clone(self, at: int, to: int) -> None:
        if at != to:
            self.devices[to] = Device(self.devices[at].own.clone(), set(self.devices[at].given))

    @rule(at=DEVICES)
    def wipe(self, at: int) -> None:
        self.devices[at] = Device(self.fresh())

    @rule(at=DEVICES)
    def export(self, at: int) -> None:
        self.exports.append(self.devices[at].export())

    @rule(at=DEVICES, which=st.integers(0, 99))
    def restore(self, at: int, which: int) -> None:
        if self.exports:
            text = self.exports[which % len(self.exports)]
            self.devices[at] = Device(self.fresh(), lines_in(text))

    @rule(at=DEVICES, to=DEVICES)
    def exchange(self, at: int, to: int) -> None:
        sender, receiver = self.devices[at], self.devices[to]
        before = receiver.lines
        store = LogFile(sorted(before), receiver.own.head(), [])
        done = merged([("", sender.export())], checked, PHONE, NOW_S, {"store": store})
        assert done.files[0].findings == ()
        assert done.files[0].added == len(sender.lines - before)
        assert set(done.union.lines) == before | sender.lines
        receiver.given |= sender.lines

    @invariant()
    def every_line_on_a_phone_was_saved_by_somebody(self) -> None:
        for device in self.devices:
            assert device.lines <= set(self.saved.values())

    @invariant()
    def the_office_gets_the_same_from_any_order_and_misses_nothing(self) -> None:
        texts = [device.export() for device in self.devices]
        done, back = merge(texts), merge(list(reversed(texts)))
        assert file_of(done.union) == file_of(back.union)
        assert set(done.union.lines) == set().union(*(device.lines for device in self.devices))
        assert state_of(*texts).entries == state_of(*reversed(texts)).entries

    @invariant()
    def a_number_that_stands_twice_is_a_fork(self) -> None:
        done = merge([device.export() for device in self.devices])
        places = [(entry.log, entry.seq) for entry in done.union.entries]
        twice = {place for place in places if places.count(place) > 1}
        assert {(fork.log, fork.seq) for fork in done.chains.forks if fork.log} == twice


def test_any_history_of_phones() -> None:
    wanted = settings(max_examples=25, stateful_step_count=25, deadline=None)
    check_machine(Shop, settings=wanted)
