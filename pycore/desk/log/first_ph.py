"""The pH that later ones are compared with: that of the first fill of the charge that is in now."""

from __future__ import annotations

from typing import Any

from pycore.journal.amend import Standing
from pycore.journal.state import MachineNow, of_this_charge
from pycore.journal.times import DAY_S

# A pH counts as that of the first fill when it was measured within a week of the clean-out: a
# charge ages. Common practice, no source.
_FRESH_S = 7 * DAY_S
_MEASURING = ("check", "recheck")


def earlier(entry: Standing, name: str) -> dict[str, Any]:
    """A typed number of an entry, with the entry and its moment."""
    return {name: entry.content[name], "entry": entry.id, "measured_at": entry.measured_at}


def _said(machine: MachineNow) -> dict[str, Any] | None:
    """As somebody typed it at a look at this charge; the last word counts."""
    for entry in reversed(of_this_charge(machine.ordered)):
        if entry.kind in _MEASURING and "first_fill_ph" in entry.content:
            at = {"entry": entry.id, "measured_at": entry.measured_at}
            return {"ph": entry.content["first_fill_ph"], **at, "from": "log"}
    return None


def _measured(machine: MachineNow) -> dict[str, Any] | None:
    """Of the first check after the last clean-out."""
    charge = of_this_charge(machine.ordered)
    cleaned = machine.ordered[: len(machine.ordered) - len(charge)]
    for entry in charge if cleaned else ():
        fresh = entry.measured_s - cleaned[-1].measured_s <= _FRESH_S
        if entry.kind in _MEASURING and "ph" in entry.content and fresh:
            return {**earlier(entry, "ph"), "from": "log"}
    return None


def _set_up(machine: MachineNow) -> dict[str, Any] | None:
    """As the set-up says: it is repeated with every change, and the pH as old as its first one."""
    said: dict[str, Any] | None = None
    for entry in machine.ordered:
        if entry.kind != "machine_set":
            continue
        ph = entry.content["machine"]["fluid"].get("first_fill_ph")
        if ph is None:
            said = None
        elif said is None or said["ph"] != ph:
            at = {"entry": entry.id, "measured_at": entry.measured_at}
            said = {"ph": ph, **at, "from": "set_up"}
    return said


def first_ph(machine: MachineNow) -> dict[str, Any] | None:
    """What somebody said at a look, else what was measured then, else what the set-up says."""
    return _said(machine) or _measured(machine) or _set_up(machine)
