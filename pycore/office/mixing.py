"""Whether the last reading was of coolant in which a pour had mixed."""

from __future__ import annotations

from itertools import takewhile

from pycore.journal.open_pours import due_recheck, read_s
from pycore.journal.state import MachineNow
from pycore.journal.times import DAY_S, moment_of


def unmixed_before(machine: MachineNow) -> str:
    """The moment, as stored, before which the coolant of the last reading had not mixed.

    Empty where that reading is none of before a second reading's time, and where there is no
    reading.
    """
    if machine.strength is None:
        return ""
    read = machine.strength.entry
    before = takewhile(lambda entry: entry.place != read.place, machine.with_doubtful_pours)
    due = due_recheck(tuple(before), read.measured_s, rests=False)
    if due is None:
        return ""
    due_s = moment_of(due.due_at, "due_at")[0]
    return due.due_at if due_s - DAY_S < read_s(read) < due_s else ""
