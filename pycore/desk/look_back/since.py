"""What went out and in since an entry of the log, and what a machine loses in a day."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import replace

from pycore.advice.losses import usual_steps
from pycore.desk.log.history import history_of
from pycore.desk.trend.rows import number_of, steps_of
from pycore.journal.amend import Standing
from pycore.journal.poured import poured
from pycore.journal.recheck import Went
from pycore.journal.state import MachineNow

# So many of the latest entries tell how a machine loses: some months, and a short answer.
_LATEST = 120


def after(machine: MachineNow, entry: Standing) -> list[Standing]:
    """The machine's entries after one of them."""
    places = [one.place for one in machine.ordered]
    return list(machine.ordered[places.index(entry.place) + 1 :])


def went_since(
    entries: Iterable[Standing], usable_l: float | None
) -> tuple[Went, frozenset[str]] | None:
    """Litres out and in, and what went in that is not among them: water, mix, concentrate, unknown.

    None where nobody can say what went out: a sump that was drained, a number that cannot be read.
    """
    out_l = water_l = concentrate_l = 0.0
    unknown: set[str] = set()
    is_open = False
    for entry in entries:
        if entry.kind == "clean_out":
            return None
        if entry.kind == "pour":
            went = poured(entry.content["pours"], usable_l)
            water_l, concentrate_l = water_l + went.water_l, concentrate_l + went.concentrate_l
            unknown |= {"unknown"} if went.unknown_buckets else set()
            is_open = not entry.content["finished"]
            taken_l = number_of(entry.content, "draw_off", "volume_l")
            if taken_l is None and "draw_off" in entry.content:
                return None
            out_l += taken_l or 0.0
        if entry.kind == "unknown_addition":
            unknown.add(entry.content.get("what", "unknown"))
    unknown |= {"unknown"} if is_open else set()
    return Went(out_l, water_l, concentrate_l), frozenset(unknown)


def own_losses_l_d(machine: MachineNow) -> list[float]:
    """Litres a day of the latest steps from check to check that count and are not unusual."""
    ordered, cut = machine.ordered, max(0, len(machine.ordered) - _LATEST)
    setups = tuple(entry for entry in ordered[:cut] if entry.kind == "machine_set")
    points = history_of(replace(machine, ordered=(*setups, *ordered[cut:])))
    return [step.lost_l / step.lasted_d for step in usual_steps(steps_of(points).steps)]
