"""Pours that were begun or planned and are not finished, and second readings that are due."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import dataclass

from pycore.journal.amend import Standing
from pycore.journal.times import moment_of, text_of


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


def _ends_recheck(entry: Standing, due_s: int) -> bool:
    """Whether nothing is due after it; a second reading without a reading says there is none.

    What was read before the pump had mixed says little of the sump, so it ends nothing. After a
    clean-out there is nothing left of the pour to read.
    """
    if "reading" in entry.content:
        return entry.measured_s >= due_s
    is_emptied = entry.kind == "clean_out" and entry.content["finished"]
    return entry.kind == "recheck" or is_emptied


def due_recheck(ordered: Sequence[Standing], now_s: int, rests: bool) -> Recheck | None:
    """The second reading that is due at one machine, or None.

    What is poured in while it is due has to mix as long, so the reading is due that much later.
    ordered: the machine's entries in order, among them pours over which logs differ: how much went
    in is in doubt there, not that something did. now_s: seconds since 1970. rests: whether the
    machine's state lets checks rest.
    """
    dues = [n for n, entry in enumerate(ordered) if "recheck_due_at" in entry.content]
    if not dues:
        return None
    pour = ordered[dues[-1]]
    first_s, ahead_min = moment_of(pour.content["recheck_due_at"], "recheck_due_at")
    due_s = first_s
    for entry in ordered[dues[-1] + 1 :]:
        if _ends_recheck(entry, due_s):
            return None
        if entry.kind == "pour" and entry.content["pours"]:
            due_s = max(due_s, entry.measured_s + first_s - pour.measured_s)
    moved = due_s != first_s
    due_at = text_of(due_s, ahead_min) if moved else pour.content["recheck_due_at"]
    return Recheck(pour.id, due_at, due_s < now_s and not rests, rests)
