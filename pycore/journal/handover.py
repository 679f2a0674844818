"""What the next shift has to know, on one page."""

from __future__ import annotations

from collections.abc import Callable, Iterable, Iterator
from dataclasses import dataclass
from itertools import takewhile

from pycore.journal.amend import Standing
from pycore.journal.open_pours import OpenPour, Recheck
from pycore.journal.order import in_order
from pycore.journal.state import Folded, Found, MachineNow
from pycore.journal.times import moment_of

# The shift reports every machine that is not simply in use.
_TOLD = frozenset({"watch", "on_hold", "stopped", "clean_out", "out_of_service", "shutdown"})


@dataclass(frozen=True)
class Said:
    """Words that somebody wrote down, with the entry they stand in."""

    entry: str
    kind: str
    machine: str
    measured_at: str
    by: str
    text: str


@dataclass(frozen=True)
class Handover:
    """Everything by machine id; a line for each, the oldest first within a machine.

    as_read, as_dipped: machines in which the last reading or dip still holds, whatever it says;
    readings rest with the machine.
    """

    open_pours: tuple[tuple[str, OpenPour], ...]
    rechecks: tuple[tuple[str, Recheck], ...]
    as_read: tuple[MachineNow, ...]
    as_dipped: tuple[MachineNow, ...]
    states: tuple[MachineNow, ...]
    said: tuple[Said, ...]
    unknown_additions: tuple[Standing, ...]
    in_doubt: tuple[str, ...]


def _words(entry: Standing) -> str:
    return str(entry.content.get("text") or entry.content.get("remarks") or "")


def _is_told(entry: Standing, since_s: int, now_s: int) -> bool:
    if not entry.is_used or not _words(entry):
        return False
    until = entry.content.get("until")
    return entry.measured_s >= since_s or (
        until is not None and moment_of(until, "until")[0] >= now_s
    )


def _said(
    entries: Iterable[Standing], since_s: int, now_s: int, states: Iterable[MachineNow]
) -> tuple[Said, ...]:
    """What people wrote, but for the words of a state that is told itself."""
    known = {m.state.entry.id for m in states if m.state is not None}
    told = in_order(e for e in entries if e.id not in known and _is_told(e, since_s, now_s))
    return tuple(Said(e.id, e.kind, e.machine, e.measured_at, e.entry.by, _words(e)) for e in told)


def _went_in(entry: Standing) -> bool:
    """Whether something was poured; a recipe that was given up before the first bucket was not."""
    return entry.kind == "unknown_addition" or (
        entry.kind == "pour" and bool(entry.content["pours"])
    )


def _moved(entry: Standing) -> bool:
    """Whether the level was changed by hand: poured in, or taken out."""
    return _went_in(entry) or (entry.kind == "pour" and "draw_off" in entry.content)


def _after(machine: MachineNow, found: Found) -> Iterator[Standing]:
    """The machine's entries after what was read or dipped, the latest first, pours in doubt too."""
    place = found.entry.place
    return takewhile(lambda entry: entry.place != place, reversed(machine.with_doubtful_pours))


def poured_since(machine: MachineNow) -> Standing | None:
    """The last entry by which something was poured in after the last reading.

    None where that reading is still one of now, as far as the entries know, and where there is
    none.
    """
    if machine.strength is None:
        return None
    return next(filter(_went_in, _after(machine, machine.strength)), None)


def moved_since(machine: MachineNow) -> bool:
    """Whether the level was changed by hand after the last dip, as far as the entries know."""
    return machine.level is not None and any(map(_moved, _after(machine, machine.level)))


def _holds(machine: MachineNow, found: Found | None, changes: Callable[[Standing], bool]) -> bool:
    """Whether no entry changes what was read or dipped, as far as the log knows.

    Where a pour is open its phone may know of buckets that are in no entry yet.
    """
    if found is None or machine.open_pours:
        return False
    return not any(map(changes, _after(machine, found)))


def handed_over(folded: Folded, since_s: int, now_s: int) -> Handover:
    """What is open, due, stopped, said and doubtful.

    since_s: when the shift began; now_s: the device's clock; both seconds since 1970. Notes and
    remarks count from then on, a note with ``until`` as long as that has not passed. What is open
    or due counts however old it is.
    """
    machines = folded.machines
    unknown = [e for e in folded.entries if e.kind == "unknown_addition" and e.is_used]
    states = tuple(m for m in machines if m.state and m.state.entry.content["state"] in _TOLD)
    return Handover(
        open_pours=tuple((m.machine, pour) for m in machines for pour in m.open_pours),
        rechecks=tuple((m.machine, m.recheck) for m in machines if m.recheck is not None),
        as_read=tuple(m for m in machines if not m.rests and _holds(m, m.strength, _went_in)),
        as_dipped=tuple(m for m in machines if _holds(m, m.level, _moved)),
        states=states,
        said=_said(folded.entries, since_s, now_s, states),
        unknown_additions=tuple(e for e in in_order(unknown) if e.measured_s >= since_s),
        in_doubt=tuple(m.machine for m in machines if m.conflicts),
    )
