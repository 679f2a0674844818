"""What went out and in since an entry of the log, and what a machine loses in a day."""

from __future__ import annotations

from dataclasses import replace

from pycore.advice.losses import usual_steps
from pycore.desk.log.history import history_of
from pycore.desk.trend.rows import steps_of, taken_l
from pycore.journal.amend import Standing
from pycore.journal.poured import poured
from pycore.journal.recheck import Went
from pycore.journal.state import MachineNow

# So many of the latest entries tell how a machine loses: some months, and a short answer.
_LATEST = 120


def after(machine: MachineNow, entry: Standing) -> list[Standing]:
    """The machine's entries after one of them, pours over which logs differ among them."""
    entries = machine.with_doubtful_pours
    places = [one.place for one in entries]
    return list(entries[places.index(entry.place) + 1 :])


def went_since(
    machine: MachineNow, last: Standing, usable_l: float | None
) -> tuple[Went, frozenset[str]] | None:
    """Litres out and in, and what went in that is not among them: water, mix, concentrate, unknown.

    Of a pour over which logs differ nobody knows how much went in, and where a pour is open its
    phone may know of buckets that are in no entry yet. None where nobody can say what went out: a
    sump that was drained, a number that cannot be read or over which logs differ.
    """
    out_l = water_l = concentrate_l = 0.0
    unknown = {"unknown"} if machine.open_pours else set()
    for entry in after(machine, last):
        took_l = taken_l(entry)
        if took_l is None or entry.kind == "clean_out":
            return None
        out_l += took_l
        if entry.is_in_doubt:
            unknown.add("unknown")
        elif entry.kind == "pour":
            went = poured(entry.content["pours"], usable_l)
            water_l, concentrate_l = water_l + went.water_l, concentrate_l + went.concentrate_l
            unknown |= {"unknown"} if went.unknown_buckets else set()
        elif entry.kind == "unknown_addition":
            unknown.add(entry.content.get("what", "unknown"))
    return Went(out_l, water_l, concentrate_l), frozenset(unknown)


def own_losses_l_d(machine: MachineNow) -> list[float]:
    """Litres a day of the latest steps from check to check that count and are not unusual."""
    entries = machine.with_doubtful_pours
    cut = max(0, len(entries) - _LATEST)
    setups = tuple(entry for entry in entries[:cut] if entry.kind == "machine_set")
    points = history_of(replace(machine, with_doubtful_pours=(*setups, *entries[cut:])))
    return [step.lost_l / step.lasted_d for step in usual_steps(steps_of(points).steps)]
