"""Pours that were begun or planned and are not finished, and second readings that are due."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import dataclass

from pycore.journal.amend import Standing
from pycore.journal.times import moment_of


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


def _ends_recheck(entry: Standing) -> bool:
    """Whether nothing is due after it; a second reading without a reading says there is none.

    After a clean-out there is nothing left of the pour to read.
    """
    is_read = "reading" in entry.content
    is_emptied = entry.kind == "clean_out" and entry.content["finished"]
    return entry.kind == "recheck" or is_read or is_emptied


def due_recheck(ordered: Sequence[Standing], now_s: int, rests: bool) -> Recheck | None:
    """The second reading that is due at one machine, or None.

    A second reading before its time was of coolant that had hardly mixed, so another one is due.
    ordered: the machine's entries in order. now_s: seconds since 1970. rests: whether the
    machine's state lets checks rest.
    """
    again_s: list[int] = []
    for entry in reversed(ordered):
        if "recheck_due_at" in entry.content:
            due_at = entry.content["recheck_due_at"]
            due_s = moment_of(due_at, "recheck_due_at")[0]
            if any(read_s >= due_s for read_s in again_s):
                return None
            return Recheck(entry.id, due_at, due_s < now_s and not rests, rests)
        if entry.kind == "recheck" and "reading" in entry.content:
            again_s.append(entry.measured_s)
        elif _ends_recheck(entry):
            return None
    return None
