"""Whether the last reading was of coolant in which a pour had mixed."""

from __future__ import annotations

from itertools import takewhile

from pycore.journal.state import MachineNow, of_this_charge
from pycore.journal.times import moment_of


def unmixed_before(machine: MachineNow) -> str:
    """The moment, as stored, before which the coolant of the last reading had not mixed.

    Empty where that reading is none of before a second reading's time, as far as the pours of
    this charge say when one is due, and where there is no reading.
    """
    if machine.strength is None:
        return ""
    read = machine.strength.entry
    before = takewhile(lambda entry: entry.place != read.place, of_this_charge(machine.ordered))
    due = [str(e.content["recheck_due_at"]) for e in before if "recheck_due_at" in e.content]
    due_s = {moment_of(text, "recheck_due_at")[0]: text for text in due}
    return due_s[max(due_s)] if due_s and max(due_s) > read.measured_s else ""
