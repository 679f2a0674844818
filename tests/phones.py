"""Phones of the tram depot's workshop that write entries, for tests, examples and figures.

Ids are counted, not drawn, so that the same calls write the same lines.
"""

from __future__ import annotations

import hashlib
import json
from dataclasses import dataclass, field
from typing import Any

from pycore.journal.file import Head, write_file
from pycore.journal.line import opened, written
from pycore.journal.migrations import ENTRY_SCHEMA

VERSIONS = {"build": "example", "pycore": "0.1.0"}
# 2026-11-25T06:00:00Z, the day on which the examples are set.
MORNING_S = 1_795_586_400


def id_of(text: str) -> str:
    """A random-looking id that belongs to a word."""
    return hashlib.sha256(text.encode()).hexdigest()[:32]


def moment(after_s: int, offset_min: int = 60) -> str:
    """So many seconds after the morning, as local time with an offset, without a clock library."""
    from datetime import UTC, datetime, timedelta, timezone

    at = datetime.fromtimestamp(MORNING_S + after_s, UTC)
    return at.astimezone(timezone(timedelta(minutes=offset_min))).isoformat()


NOW = moment(8 * 3600)
NOW_S = MORNING_S + 8 * 3600
LATHE = id_of("wheel lathe")


def typed(text: str, unit: str) -> dict[str, str]:
    """A typed number."""
    return {"text": text, "unit": unit}


def setup(title: str = "Wheel lathe", factor: str = "1.5") -> dict[str, Any]:
    """A machine of the workshop, as typed."""
    return {
        "name": title,
        "sump": {
            "kind": "proportional",
            "full_depth": typed("440", "mm"),
            "full_volume": typed("198", "L"),
            "volume_known_by": "poured",
        },
        "fluid": {
            "type": "semi_synthetic",
            "factor": typed(factor, "1"),
            "factor_known_by": "sheet",
        },
        "target": {"low": typed("7", "%"), "aim": typed("8", "%"), "high": typed("9", "%")},
        "mixing": {
            "strong": typed("20", "%"),
            "weak": typed("1", "%"),
            "closeness": typed("0.5", "%"),
        },
        "bucket": {
            "usable": typed("10", "L"),
            "water_mark": typed("1", "L"),
            "jug_mark": typed("50", "mL"),
        },
        "units": {"plate": "L", "stick": "mm", "pail": "L", "jug": "mL"},
    }


def check(depth: str = "342", shows: str = "4.8") -> dict[str, Any]:
    """What a check holds."""
    return {"dip": {"depth": typed(depth, "mm")}, "reading": {"shows": typed(shows, "Brix")}}


def pour(count: int = 2, finished: bool = True, **more: Any) -> dict[str, Any]:
    """A top-up of buckets of about 3 %."""
    row = {"count": count, "strength": typed("3", "%"), "about": True}
    return {"pours": [row], "finished": finished, **more}


@dataclass
class Phone:
    """One installation with its log. ``fast_s``: how far its clock is ahead."""

    title: str
    fast_s: int = 0
    lines: list[str] = field(default_factory=list)
    prev: str = ""
    seq: int = 0

    @property
    def log(self) -> str:
        """Id of the log."""
        return id_of(f"log of {self.title}")

    def save(
        self, kind: str, body: dict[str, Any], after_s: int, machine: str = LATHE, **more: Any
    ) -> str:
        """Writes an entry and returns its id; machine empty for a kind that has none."""
        identity = more.pop("id", id_of(f"{self.title} {self.seq + 1}"))
        at = moment(after_s)
        wall = more.pop("wall", moment(after_s + self.fast_s))
        schema = more.pop("schema", ENTRY_SCHEMA)
        content: dict[str, Any] = {"id": identity, "schema": schema, "kind": kind}
        if machine:
            content["machine"] = machine
        content |= {"measured_at": at, "wall": wall, "clock_flags": [], "body": body}
        content |= {"versions": VERSIONS, **more}
        self.seq += 1
        line = written(content, self.log, self.seq, self.prev)
        self.prev = opened(line)[1]
        self.lines.append(line)
        return str(identity)

    def clone(self) -> Phone:
        """The same log on another phone: a restored backup."""
        return Phone(self.title, self.fast_s, list(self.lines), self.prev, self.seq)

    def head(self) -> list[Head]:
        """The last line as others will know of it."""
        return [Head(self.log, self.seq, self.prev)] if self.seq else []

    def export(self, after_s: int = 8 * 3600) -> str:
        """The whole log as a file."""
        return write_file(self.lines, self.head(), moment(after_s + self.fast_s), "example")

    def hash_of(self, seq: int) -> str:
        """Hash of one of its lines."""
        return opened(self.lines[seq - 1])[1]


def stored_in_schema_1(
    kind: str, body: dict[str, Any], seq: int, title: str = "old", **more: Any
) -> str:
    """A row as the first version of the app stored it: no chain, no flags, no hash."""
    entry = {
        "id": id_of(f"{title} {seq}"),
        "log": id_of(f"log of {title}"),
        "seq": seq,
        "schema": 1,
        "kind": kind,
        "machine": LATHE,
        "measured_at": moment(60 * seq),
        "wall": moment(60 * seq),
        "body": body,
        "shown": {},
        "versions": VERSIONS,
        **more,
    }
    return json.dumps(entry, ensure_ascii=False, separators=(",", ":"))


def workshop() -> tuple[Phone, Phone]:
    """Two phones after an ordinary morning at the wheel lathe."""
    day, night = Phone("day shift"), Phone("night shift")
    night.save("machine_set", {"machine": setup(), "code": "7K3F4"}, 0, by="PA")
    night.save("check", {**check("342", "4.0"), "look": ["normal"]}, 600, by="PA")
    plan = {
        "pours": [{"count": 3, "water": typed("9", "L"), "concentrate": typed("1000", "mL")}],
    }
    first = night.save("plan", plan, 700, by="PA")
    poured = {"pours": [{"count": 2, "water": typed("9", "L"), "concentrate": typed("1000", "mL")}]}
    due = moment(3000)
    night.save(
        "pour", {**poured, "plan": first, "finished": False, "recheck_due_at": due}, 1200, by="PA"
    )
    day.save("unknown_addition", {"what": "water", "remarks": "Level rose overnight."}, 4000)
    day.save("note", {"text": "Skimmer belt slips; ordered."}, 4200, machine="", by="RO")
    day.save(
        "machine_state",
        {"state": "stopped", "reason": "wrong_drum", "remarks": "Do not top up."},
        5000,
        machine=id_of("axle grinder"),
        by="RO",
    )
    return night, day


def newer_phone() -> Phone:
    """A phone with a later version of the app: a later schema, and a kind that is not known."""
    phone = Phone("new phone")
    phone.save("check", check(), 100)
    phone.save("check", {"prism": "wet"}, 200, schema=3)
    phone.save("odour_panel", {"score": 2}, 300)
    return phone
