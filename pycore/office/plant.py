"""The tables of the office's database: one for each kind of entry, and those that explain them."""

from __future__ import annotations

import json
from collections.abc import Iterable, Iterator
from dataclasses import dataclass
from typing import Any

from pycore.desk.log.history import Point, history_of
from pycore.desk.log.state import machine_now, name_of
from pycore.journal.amend import AMENDING, Standing
from pycore.journal.handover import moved_since, poured_since
from pycore.journal.state import MachineNow
from pycore.journal.times import DAY_S
from pycore.office.columns import BUCKET_COLUMNS, COLUMNS_OF, Cell, Column
from pycore.office.mixing import unmixed_before
from pycore.office.opened import OpenLog

# The number of this layout; it goes up when a table or column changes its meaning.
LAYOUT = 2
# Plural, so that no name is a word of SQL.
TABLE_OF = {kind: f"{kind}s" for kind in COLUMNS_OF}
_ROWS_OF = {"plan": "pours", "pour": "pours", "clean_out": "charge"}
Row = list[Cell]


@dataclass(frozen=True)
class Table:
    """A table ready to write; ``rows`` fit the columns in their order."""

    name: str
    meaning: str
    columns: tuple[Column, ...]
    rows: Iterable[Row]
    indexed: tuple[str, ...] = ()


def _plain(name: str, type_: str, meaning: str) -> Column:
    return Column(name, type_, meaning, lambda _: None)


_ENTRY = _plain("entry", "TEXT", "id of the entry, as in the table entries")
_ENTRIES = (
    _plain("entry", "TEXT", "id of the entry"),
    _plain("kind", "TEXT", "its kind; the table of that kind holds the rest"),
    _plain("machine", "TEXT", "id of the machine, empty for the whole shop"),
    _plain("name", "TEXT", "the machine's name by its latest set-up"),
    _plain("measured_at", "TEXT", "local time with its offset, as confirmed"),
    _plain("measured_s", "INTEGER", "the same in seconds since 1970, to sort and subtract"),
    _plain("day", "TEXT", "the date as the person saw it"),
    _plain("by", "TEXT", "who, by initials"),
    _plain("standing", "TEXT", "as_written, corrected, withdrawn, conflict, disputed, left_out"),
    _plain("used", "INTEGER", "1 where it may feed a calculation"),
    _plain("amended_by", "TEXT", "ids of the corrections and withdrawals about it"),
    _plain("log", "TEXT", "id of the log, one for each phone"),
    _plain("number", "INTEGER", "its number in that log"),
    _plain("written_at", "TEXT", "the phone's clock when it was saved"),
    _plain("hash", "TEXT", "SHA-256 of the line"),
    _plain("content", "TEXT", "what it says, corrected where it was corrected, as JSON"),
)
_SAID = (
    _plain("volume_l", "REAL", "litres in the sump by the set-up of the day"),
    _plain("room_l", "REAL", "litres that fit below the full mark"),
    _plain("strength_pct", "REAL", "strength by the set-up of the day, % by volume"),
    _plain("strength_u_pct", "REAL", "its standard uncertainty, % by volume"),
    _plain("low_pct", "REAL", "low end of the band on that day, % by volume"),
    _plain("high_pct", "REAL", "high end of the band on that day, % by volume"),
    _plain("state", "TEXT", "weak, in_range or strong"),
    _plain("trouble", "TEXT", "codes of what could not be worked out"),
)
_WENT_IN = (
    _plain("buckets", "INTEGER", "buckets that went in"),
    _plain("unknown_buckets", "INTEGER", "of these, what was in so many is not known"),
    _plain("all_water_l", "REAL", "water in those that are known, litres"),
    _plain("all_concentrate_l", "REAL", "concentrate in those that are known, litres"),
)
# An age to an entry that lies after the time at which the log is looked at.
_LATER = "negative where it lies after the time in about"
_MACHINES = (
    _plain("machine", "TEXT", "id of the machine"),
    _plain("name", "TEXT", "its name"),
    _plain("code", "TEXT", "its code, as on the label"),
    _plain("state", "TEXT", "in_use and so on; empty where nobody has said"),
    _plain(
        "volume_l",
        "REAL",
        "litres by the last dip; empty where something was poured in or taken out since",
    ),
    _plain("room_l", "REAL", "litres that fit below the full mark; empty where volume_l is"),
    _plain(
        "level_age_d",
        "REAL",
        f"days since the last dip, also where its litres hold no more; {_LATER}",
    ),
    _plain("strength_pct", "REAL", "strength by the last reading, % by volume"),
    _plain("strength_state", "TEXT", "weak, in_range or strong, by that reading"),
    _plain("strength_age_d", "REAL", f"days since that reading; {_LATER}"),
    _plain(
        "poured_age_d",
        "REAL",
        "days since the last pour after that reading, which is then one of before; empty for "
        f"none, {_LATER}",
    ),
    _plain(
        "hardly_mixed",
        "INTEGER",
        "1 where what was poured by a recipe had not mixed yet, so that its strength and "
        "state may be off; empty without a reading",
    ),
    _plain("open_pours", "INTEGER", "recipes and top-ups that are not finished"),
    _plain("recheck_due_at", "TEXT", "when a second reading is due"),
    _plain("recheck_overdue", "INTEGER", "1 where that time has passed"),
    _plain(
        "later",
        "INTEGER",
        "entries of the machine after the time in about, which are used all the same",
    ),
    _plain("conflicts", "INTEGER", "entries that contradict one another"),
)
_MEASURING = frozenset({"check", "recheck"})
_POURING = frozenset({"pour", "clean_out"})


def _said(point: Point | None) -> Row:
    if point is None:
        return [None] * len(_SAID)
    level, strength, band = point.level, point.strength, point.band
    pct = strength.strength_pct if strength else None
    return [
        level.volume_l.value if level else None,
        level.room_l if level else None,
        pct.value if pct else None,
        pct.u if pct else None,
        band.low_pct if band else None,
        band.high_pct if band else None,
        strength.state if strength else None,
        " ".join(point.trouble) or None,
    ]


def _went_in(point: Point | None) -> Row:
    went = point.poured if point else None
    if went is None:
        return [None] * len(_WENT_IN)
    return [went.buckets, went.unknown_buckets, went.water_l, went.concentrate_l]


def _entry_row(entry: Standing, name: str) -> Row:
    return [
        *(entry.id, entry.kind, entry.machine, name, entry.measured_at, entry.measured_s),
        *(entry.measured_at[:10], entry.entry.by, entry.standing, int(entry.is_used)),
        *(" ".join(entry.by) or None, entry.entry.log, entry.entry.seq),
        *(_wall(entry), entry.entry.hash, json.dumps(entry.content, ensure_ascii=False)),
    ]


def _wall(entry: Standing) -> Cell:
    found: Any = json.loads(entry.entry.line).get("wall")
    return str(found)


def _all_entries(log: OpenLog) -> list[Standing]:
    """What every entry says now; corrections and withdrawals, which say nothing else, with them."""
    amending = [
        Standing(e, "as_written", e.machine, e.measured_at, e.measured_s, e.body)
        for e in log.merged.union.entries
        if e.usable and e.kind in AMENDING
    ]
    return sorted([*log.folded.entries, *amending], key=lambda entry: entry.place)


def _of_kind(kind: str, entries: list[Standing], points: dict[str, Point]) -> Table:
    more = _SAID if kind in _MEASURING else _WENT_IN if kind in _POURING else ()
    added = _said if kind in _MEASURING else _went_in

    def rows() -> Iterator[Row]:
        for entry in entries:
            own = [column.of(entry.content) for column in COLUMNS_OF[kind]]
            beside = added(points.get(entry.entry.hash)) if more else []
            yield [entry.id, *own, *beside]

    meaning = f"entries of the kind {kind}; join with entries for time, machine and standing"
    return Table(TABLE_OF[kind], meaning, (_ENTRY, *COLUMNS_OF[kind], *more), rows(), ("entry",))


def _buckets(entries: list[Standing]) -> Table:
    rows = (
        [entry.id, place, *(column.of(row) for column in BUCKET_COLUMNS)]
        for entry in entries
        for place, row in enumerate(entry.content.get(_ROWS_OF.get(entry.kind, ""), ()), 1)
    )
    place = _plain("place", "INTEGER", "1 for the buckets that went in first")
    meaning = "buckets of plans, pours and new charges, those that are alike in one row"
    return Table("buckets", meaning, (_ENTRY, place, *BUCKET_COLUMNS), rows, ("entry",))


def _machines(log: OpenLog) -> Table:
    def row(machine: MachineNow) -> Row:
        shown, poured = machine_now(machine, log.now_s), poured_since(machine)
        level = shown.level.level if shown.level and not moved_since(machine) else None
        strength = shown.strength.strength if shown.strength else None
        pct = strength.strength_pct if strength else None
        return [
            *(shown.machine, shown.name, shown.setup.code if shown.setup else None),
            shown.state.state["state"] if shown.state else None,
            *((level.volume_l.value, level.room_l) if level else (None, None)),
            shown.level.age_d if shown.level else None,
            *((pct.value, strength.state) if strength and pct else (None, None)),
            shown.strength.age_d if shown.strength else None,
            (log.now_s - poured.measured_s) / DAY_S if poured else None,
            int(bool(unmixed_before(machine))) if shown.strength else None,
            len(shown.open_pours),
            shown.recheck.due_at if shown.recheck else None,
            int(shown.recheck.overdue) if shown.recheck else None,
            sum(entry.measured_s > log.now_s for entry in machine.ordered),
            len(shown.conflicts),
        ]

    rows = (row(machine) for machine in log.folded.machines)
    return Table("machines", "how each machine stands at the time in about", _MACHINES, rows)


def _findings(log: OpenLog) -> Table:
    chains, union = log.merged.chains, log.merged.union
    rows: list[Row] = [["fork", f.log, f.seq, f.id, " ".join(f.hashes)] for f in chains.forks]
    rows += [["break", b.log, b.seq, None, b.hash] for b in chains.breaks]
    rows += [["gap", g.log, g.first, None, f"to {g.last}"] for g in chains.gaps]
    rows += [["missing_end", h.log, h.count, None, h.head] for h in chains.missing_heads]
    rows += [[f"clock_{f.flag}", f.log, f.seq, None, f.hash] for f in log.folded.flags]
    rows += [["newer", e.log, e.seq, e.id, e.kind] for e in union.entries if e.is_newer]
    rows += [["quarantine", None, None, None, f"{q.code} {q.path}"] for q in union.quarantined]
    columns = (
        _plain("what", "TEXT", "fork, break, gap, missing_end, clock_…, newer, quarantine"),
        _plain("log", "TEXT", "id of the log"),
        _plain("number", "INTEGER", "number in that log, the first one of a gap"),
        _plain("entry", "TEXT", "id of the entry, where it has one"),
        _plain("detail", "TEXT", "hashes, the last number of a gap, kind or code"),
    )
    return Table("findings", "what does not hold in the log", columns, rows)


def _about(log: OpenLog) -> Table:
    values: dict[str, Cell] = {
        "made by": "Pailwright, python3 -m pycore table; rebuilt from the log, never read back",
        "layout": LAYOUT,
        "looked at": log.now,
        "lines": len(log.merged.union.lines),
        "lines that can be used": len(log.folded.entries),
    }
    columns = (_plain("name", "TEXT", "what"), _plain("value", "", "its value"))
    return Table("about", "this database", columns, [[*pair] for pair in values.items()])


def _columns(tables: list[Table]) -> Table:
    columns = (
        _plain("table_name", "TEXT", "table"),
        _plain("column_name", "TEXT", "column; empty in the line about the whole table"),
        _plain("meaning", "TEXT", "what stands in it, with its unit"),
    )
    own = Table("columns", "what stands in every table and column", columns, [])
    rows: list[Row] = []
    for table in [*tables, own]:
        rows.append([table.name, None, table.meaning])
        rows += [[table.name, column.name, column.meaning] for column in table.columns]
    return Table(own.name, own.meaning, columns, rows)


def tables_of(log: OpenLog) -> list[Table]:
    """Every table, those that explain the others first."""
    points = {
        point.entry.entry.hash: point
        for machine in log.folded.machines
        for point in history_of(machine)
    }
    entries = _all_entries(log)
    by_kind: dict[str, list[Standing]] = {kind: [] for kind in COLUMNS_OF}
    for entry in entries:
        by_kind[entry.kind].append(entry)
    names = {machine.machine: name_of(machine) for machine in log.folded.machines}
    rows = (_entry_row(entry, names.get(entry.machine, "")) for entry in entries)
    indexed = ("entry", "machine", "kind")
    tables = [
        _about(log),
        _machines(log),
        Table("entries", "every entry that can be read", _ENTRIES, rows, indexed),
        *(_of_kind(kind, found, points) for kind, found in by_kind.items()),
        _buckets(entries),
        _findings(log),
    ]
    return [_columns(tables), *tables]
