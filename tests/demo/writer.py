"""Two phones of the example's shop that write lines as the app does, with days of their own."""

from __future__ import annotations

from dataclasses import dataclass, field
from datetime import date, datetime, time
from typing import Any
from zoneinfo import ZoneInfo

from pycore.journal.file import Head
from pycore.journal.line import opened, written
from pycore.journal.migrations import ENTRY_SCHEMA
from tests.phones import id_of

ZONE = ZoneInfo("Europe/Berlin")
# Stands in every line: whoever reads one can see that nothing in it was measured.
VERSIONS = {"build": "example, invented", "pycore": "0.1.0"}


def at(day: date, hour: int, minute: int) -> str:
    """The shop's local time with its offset."""
    return datetime.combine(day, time(hour, minute), ZONE).isoformat()


@dataclass
class Writer:
    """One phone's log."""

    title: str
    lines: list[str] = field(default_factory=list)
    prev: str = ""
    wall: str = ""

    @property
    def log(self) -> str:
        """Id of the log, always the same: an example is never another one."""
        return id_of(f"example log of {self.title}")

    def save(self, kind: str, body: dict[str, Any], when: str, **more: Any) -> str:
        """Writes one entry and returns its id. ``more``: machine, by, shown."""
        seq = len(self.lines) + 1
        identity = id_of(f"example {self.title} {seq}")
        flags = ["zone"] if self.wall and self.wall[-6:] != when[-6:] else []
        content = {"id": identity, "schema": ENTRY_SCHEMA, "kind": kind, **more}
        content |= {"measured_at": when, "wall": when, "clock_flags": flags, "body": body}
        line = written({**content, "versions": VERSIONS}, self.log, seq, self.prev)
        self.prev, self.wall = opened(line)[1], when
        self.lines.append(line)
        return identity

    def head(self) -> Head:
        """The log's end."""
        return Head(self.log, len(self.lines), self.prev)
