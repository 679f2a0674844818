"""What the desk answers about logs: state, export, import, merge, handover, table."""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterable
from typing import Any

from pycore.desk.contract.checked import checked
from pycore.desk.contract.refusal import error_of
from pycore.desk.log.due_checks import checks_due
from pycore.desk.log.messages import (
    FileShown,
    FoldLogBody,
    HandoverBody,
    LogReport,
    MergeLogsBody,
    QuarantinedShown,
    ReadExportBody,
    WriteCsvBody,
    WriteExportBody,
)
from pycore.desk.log.state import (
    is_low,
    level_now,
    machine_now,
    name_of,
    shop_now,
    state_now,
    strength_now,
)
from pycore.journal.chain import Chains
from pycore.journal.clocks import ClockFlag
from pycore.journal.file import PHONE, Head, LogFile, write_file
from pycore.journal.handover import handed_over
from pycore.journal.line import from_store
from pycore.journal.merge import FileReport, merged
from pycore.journal.state import MachineNow, folded
from pycore.journal.table import csv_of
from pycore.journal.times import moment_of
from pycore.journal.union import Gathered, file_of, gathered, read_lines
from pycore.quantity.fault import Fault

# Of a line in quarantine only its start is shown.
_START = 80
# Every count is there, also when it is 0.
_STANDINGS = ("as_written", "corrected", "withdrawn", "conflict", "disputed", "left_out")


def _stored(lines: Iterable[str], heads: Iterable[Head]) -> Gathered:
    return gathered(*read_lines(map(from_store, lines), checked), heads)


def _now_s(text: str | None) -> int | None:
    return None if text is None else moment_of(text, "body.now")[0]


def report_of(union: Gathered, chains: Chains, flags: Iterable[ClockFlag]) -> LogReport:
    """What does not hold, ready to send."""
    return LogReport(
        logs=sorted(union.heads),
        forks=list(chains.forks),
        gaps=list(chains.gaps),
        breaks=list(chains.breaks),
        missing_heads=list(chains.missing_heads),
        clock_flags=list(flags),
        quarantined=[
            QuarantinedShown(bad.code, bad.path, bad.line[:_START]) for bad in union.quarantined
        ],
    )


def fold_log(body: FoldLogBody) -> dict[str, Any]:
    """The present state. Error: ``not_a_date`` for a ``now`` that is no moment."""
    now_s = moment_of(body.now, "body.now")[0]
    union = _stored(body.lines, body.heads)
    now = folded(union, now_s)
    counts = {**dict.fromkeys(_STANDINGS, 0), **now.counts}
    return {
        "machines": [machine_now(machine, now_s) for machine in now.machines],
        **shop_now(now, now_s),
        "counts": counts,
        "report": report_of(union, now.chains, now.flags),
    }


def _file_shown(report: FileReport) -> FileShown:
    return FileShown(
        name=report.name,
        findings=list(report.findings),
        lines=report.lines,
        added=report.added,
        known=report.known,
        newer=report.newer,
        quarantined=report.quarantined,
        refused=None if report.refused is None else error_of(report.refused),
        missing=report.missing,
        ahead_s=report.ahead_s,
    )


def _names(union: Gathered, now_s: int | None) -> dict[str, str]:
    """By the latest set-ups, as everywhere; one of a newer build has no name here."""
    latest_s = max((entry.measured_s for entry in union.entries if entry.usable), default=0)
    now = folded(union, latest_s if now_s is None else now_s)
    return {machine.machine: name_of(machine) for machine in now.machines}


def read_export(body: ReadExportBody) -> dict[str, Any]:
    """What a file would add to a store.

    Raises the fault for which the file is refused as a whole, at ``body.text``.
    """
    have = [from_store(line) for line in body.lines]
    own = {"": LogFile(have, list(body.heads), [])}
    done = merged([("", body.text)], checked, PHONE, _now_s(body.now), own)
    report = done.files[0]
    if report.refused is not None:
        fault = report.refused
        raise Fault(fault.code, "body.text", fault.got, fault.limit)
    there = set(have)
    fresh = [entry for entry in done.union.entries if entry.line not in there]
    bad = [part.line for part in done.union.quarantined if part.line not in there]
    kinds = Counter(entry.kind for entry in fresh)
    machines = Counter(entry.machine for entry in fresh if entry.machine)
    names = _names(done.union, _now_s(body.now))
    return {
        "file": _file_shown(report),
        "added": [entry.line for entry in fresh] + bad,
        "kinds": [{"kind": kind, "count": kinds[kind]} for kind in sorted(kinds)],
        "machines": [
            {"machine": name, "name": names.get(name, ""), "count": machines[name]}
            for name in sorted(machines)
        ],
        "heads": sorted(done.union.heads),
        "report": report_of(done.union, done.chains, done.flags),
    }


def write_export(body: WriteExportBody) -> dict[str, Any]:
    """The whole store as a file. Error: ``not_a_date`` for a ``now`` that is no moment."""
    moment_of(body.now, "body.now")
    union = _stored(body.lines, body.heads)
    return {
        "text": write_file(union.lines, union.heads, body.now, body.build),
        "lines": len(union.lines),
        "newer": sum(entry.is_newer for entry in union.entries),
        "quarantined": len(union.quarantined),
        "heads": sorted(union.heads),
    }


def merge_logs(body: MergeLogsBody) -> dict[str, Any]:
    """Files into one; a file that is refused is told of and left out."""
    files = [(file.name, file.text) for file in body.files]
    done = merged(files, checked, PHONE, _now_s(body.now))
    return {
        "text": file_of(done.union),
        "files": [_file_shown(report) for report in done.files],
        "report": report_of(done.union, done.chains, done.flags),
    }


def _low_sumps(as_dipped: Iterable[MachineNow], now_s: int) -> list[dict[str, Any]]:
    """Sumps with room for a whole usable bucket, by their last dip, unless stopped or at rest."""
    found = []
    for machine in as_dipped:
        if machine.is_stopped:
            continue
        level = level_now(machine, now_s)
        if level is not None and is_low(machine, level):
            row = {"machine": machine.machine, "name": name_of(machine)}
            found.append({**row, "level": level})
    return found


def _off_band(as_read: Iterable[MachineNow], now_s: int) -> list[dict[str, Any]]:
    """Machines whose last reading is too weak or too strong by the set-up of its day."""
    found = []
    for machine in as_read:
        reading = strength_now(machine, now_s)
        strength = reading.strength if reading else None
        if strength is not None and strength.state in ("weak", "strong"):
            row = {"machine": machine.machine, "name": name_of(machine)}
            found.append({**row, "reading": reading})
    return found


def handover(body: HandoverBody) -> dict[str, Any]:
    """The shift's page. Error: ``not_a_date`` for a ``now`` or ``since`` that is no moment."""
    now_s = moment_of(body.now, "body.now")[0]
    since_s = moment_of(body.since, "body.since")[0]
    now = folded(_stored(body.lines, body.heads), now_s)
    page = handed_over(now, since_s, now_s)
    names = {machine.machine: name_of(machine) for machine in now.machines}
    due = checks_due(now, now_s)

    def of(machine: str) -> dict[str, str]:
        return {"machine": machine, "name": names.get(machine, "")}

    return {
        "open_pours": [{**of(machine), "open": pour} for machine, pour in page.open_pours],
        "rechecks": [{**of(machine), "due": again} for machine, again in page.rechecks],
        "off_band": _off_band(page.as_read, now_s),
        "checks": [one for one in due if one.due],
        "clean_outs": [one for one in due if one.clean_out_due],
        "low_sumps": _low_sumps(page.as_dipped, now_s),
        "states": [{**of(m.machine), "now": state_now(m, now_s)} for m in page.states],
        "said": [{**of(said.machine), **_said(said)} for said in page.said],
        "unknown_additions": [
            {**of(e.machine), "entry": e.id, "measured_at": e.measured_at}
            for e in page.unknown_additions
        ],
        "in_doubt": [of(machine) for machine in page.in_doubt],
    }


def _said(said: Any) -> dict[str, str]:
    return {name: getattr(said, name) for name in ("entry", "kind", "measured_at", "by", "text")}


def write_csv(body: WriteCsvBody) -> dict[str, Any]:
    """The log for a spreadsheet. Error: ``not_a_date`` for a ``now`` that is no moment."""
    now = folded(_stored(body.lines, ()), moment_of(body.now, "body.now")[0])
    names = {machine.machine: name_of(machine) for machine in now.machines}
    return {"text": csv_of(now.entries, names), "rows": len(now.entries)}
