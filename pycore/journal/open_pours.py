"""Pours that were begun or planned and are not finished, and second readings that are due."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import dataclass

from pycore.journal.amend import Standing
from pycore.journal.times import DAY_S, moment_of, text_of
from pycore.quantity.fault import Fault


@dataclass(frozen=True)
class OpenPour:
    """A recipe or a top-up that is not finished.

    plan: id of the plan, empty for a top-up without one. since: time of its first entry, as
    stored. buckets_planned is 0 without a plan.
    """

    plan: str
    since: str
    buckets_planned: int
    buckets_poured: int
    pours: tuple[str, ...]


@dataclass(frozen=True)
class Recheck:
    """A second reading that is due: after which pour, when, and whether its time has passed.

    resting: the machine rests, and so does the reading.
    """

    pour: str
    due_at: str
    overdue: bool
    resting: bool


def _buckets(entry: Standing) -> int:
    return sum(row["count"] for row in entry.content["pours"])


def open_pours(ordered: Iterable[Standing]) -> tuple[OpenPour, ...]:
    """What is open at one machine after its entries in order.

    A pour that is finished closes its plan; a later plan and a clean-out close everything before.
    A finished pour without a plan closes what was begun without one.
    """
    found: dict[str, OpenPour] = {}
    for entry in ordered:
        if entry.kind in ("plan", "clean_out"):
            found = {}
        if entry.kind == "plan":
            found[entry.id] = OpenPour(entry.id, entry.measured_at, _buckets(entry), 0, ())
        if entry.kind != "pour":
            continue
        plan = entry.content.get("plan", "")
        if entry.content["finished"]:
            found.pop(plan, None)
            continue
        now = found.get(plan, OpenPour(plan, entry.measured_at, 0, 0, ()))
        poured = now.buckets_poured + _buckets(entry)
        pours = (*now.pours, entry.id)
        found[plan] = OpenPour(plan, now.since, now.buckets_planned, poured, pours)
    return tuple(found[plan] for plan in sorted(found))


def read_s(entry: Standing) -> int:
    """When a reading was read, seconds since 1970: as it was typed, and never after it was stored.

    A ``now`` without a time of day says less than the time of the entry, which stands for it then.
    """
    if "now" not in entry.content:
        return entry.measured_s
    try:
        return min(moment_of(entry.content["now"], "now")[0], entry.measured_s)
    except Fault:
        return entry.measured_s


def _last_due(ordered: Sequence[Standing]) -> tuple[Standing, int] | None:
    """The last pour with a due time, and the place of what it poured last.

    The rest of a recipe may have been given up, hours later too: the part before it is what mixes.
    Where nothing of the recipe went in, as after a correction, nothing does.
    """
    pours = [(place, entry) for place, entry in enumerate(ordered) if entry.kind == "pour"]
    for place, pour in reversed(pours):
        if "recheck_due_at" not in pour.content:
            continue
        plan = pour.content.get("plan", pour.id)
        own = [
            before
            for before, part in pours
            if before <= place
            and part.content["pours"]
            and part.content.get("plan", part.id) == plan
        ]
        if own:
            return pour, own[-1]
    return None


def _ends_recheck(entry: Standing, first_s: int, mixes_s: int, told_s: list[int]) -> bool:
    """Whether nothing is due after it; a second reading without a reading says there is none.

    What was read before the pump had mixed says little of the sump, so it ends nothing. A day
    before, a clock was wrong at the pour or is now, and a due time of next year would never end.
    After a clean-out there is nothing left of the pour to read. first_s: due by the recipe's
    pour; told_s: what was poured since, seconds since 1970; mixes_s: how long each mixes.
    """
    if "reading" in entry.content:
        at_s = read_s(entry)
        due_s = max([first_s, *(told + mixes_s for told in told_s if told <= at_s)])
        return not due_s - DAY_S < at_s < due_s
    is_emptied = entry.kind == "clean_out" and entry.content["finished"]
    return entry.kind == "recheck" or is_emptied


def due_recheck(ordered: Sequence[Standing], now_s: int, rests: bool) -> Recheck | None:
    """The second reading that is due at one machine, or None.

    What is poured in while it is due has to mix as long, so the reading is due that much later;
    what was told only after a reading was taken does not make that one too early.
    ordered: the machine's entries in order, among them pours over which logs differ: how much went
    in is in doubt there, not that something did. now_s: seconds since 1970. rests: whether the
    machine's state lets checks rest.
    """
    found = _last_due(ordered)
    if found is None:
        return None
    pour, place = found
    first_s, ahead_min = moment_of(pour.content["recheck_due_at"], "recheck_due_at")
    mixes_s = first_s - pour.measured_s
    told_s: list[int] = []
    for entry in ordered[place + 1 :]:
        if entry.kind == "pour" and entry.content["pours"]:
            told_s.append(entry.measured_s)
        if _ends_recheck(entry, first_s, mixes_s, told_s):
            return None
    due_s = max([first_s, *(at_s + mixes_s for at_s in told_s)])
    moved = due_s != first_s
    due_at = text_of(due_s, ahead_min) if moved else pour.content["recheck_due_at"]
    return Recheck(pour.id, due_at, due_s < now_s and not rests, rests)
