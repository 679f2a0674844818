"""The log as the report's page shows it."""

from __future__ import annotations

from collections.abc import Iterable, Sequence

from pycore.desk.log.history import Point
from pycore.journal.amend import AMENDING, Standing
from pycore.journal.entry import INVENTED, Entry
from pycore.journal.order import in_order
from pycore.journal.poured import Poured
from pycore.office.opened import OpenLog, about_lines, later_lines, say, zone_lines
from pycore.office.report_machine import Period, machine_shown
from pycore.office.report_page import Month, Report
from pycore.office.report_times import day_word, month_word, months_between, time_word
from pycore.sheets.language import Language

# Rows of the auditor's table; the command table writes all of them.
_MOST_ROWS = 60
_KINDS = ("check", "recheck", "pour", "plan", "clean_out", "machine_state")


def _period(log: OpenLog) -> Period:
    entries = [entry for entry in log.folded.entries if entry.is_used]
    first = min(entries, key=lambda entry: entry.measured_s, default=None)
    last = max(entries, key=lambda entry: entry.measured_s, default=None)
    if first is None or last is None:
        return Period(log.now, log.now, log.now_s, log.now_s, log.now_s)
    return Period(first.measured_at, last.measured_at, first.measured_s, last.measured_s, log.now_s)


def _months(points: Iterable[Point], period: Period, language: Language) -> list[Month]:
    went: dict[str, list[Poured]] = {}
    for point in points:
        if point.poured is not None:
            went.setdefault(point.entry.measured_at[:7], []).append(point.poured)
    return [
        Month(
            month_word(month, language),
            sum(part.buckets for part in went.get(month, ())),
            sum(part.water_l for part in went.get(month, ())),
            sum(part.concentrate_l for part in went.get(month, ())),
        )
        for month in months_between(period.first, period.last)
        if went
    ]


class _Audit:
    """Rows of when, machine, what, why, who."""

    def __init__(self, log: OpenLog, names: dict[str, str], language: Language) -> None:
        self.log, self.names, self.language = log, names, language
        self.about = {entry.id: entry for entry in log.folded.entries}

    def rows(self) -> list[Sequence[str]]:
        """The latest first."""
        amending = [
            Standing(e, "as_written", e.machine, e.measured_at, e.measured_s, e.body)
            for e in self.log.merged.union.entries
            if e.usable and e.kind in AMENDING
        ]
        plain = [e for e in self.log.folded.entries if e.kind in ("clean_out", "machine_state")]
        return [self._row(entry) for entry in reversed(in_order([*amending, *plain]))]

    def _kind(self, kind: str) -> str:
        return self.language.say(f"kind_{kind}" if kind in _KINDS else "kind_other")

    def _row(self, entry: Standing) -> Sequence[str]:
        target = self._target(entry.entry)
        about = target or entry
        what = self._kind(about.kind)
        if target is not None:
            at = time_word(target.measured_at, self.language)
            what = f"{what}, {at}: {self._standing(target)}"
        elif entry.kind == "machine_state":
            what = f"{what}: {self.language.say(entry.content['state'])}"
        content = entry.content
        why = content.get("reason", "") if entry.kind in AMENDING else content.get("remarks", "")
        when = time_word(entry.measured_at, self.language)
        return (when, self.names.get(about.machine, ""), what, why, entry.entry.by)

    def _standing(self, target: Standing) -> str:
        # An amendment that does not count any more leaves its entry as it was written.
        known = ("corrected", "withdrawn", "conflict", "disputed", "left_out")
        return self.language.say(target.standing) if target.standing in known else ""

    def _target(self, entry: Entry) -> Standing | None:
        name = {"correction": "corrects", "withdrawal": "retracts"}.get(entry.kind, "")
        return self.about.get(entry.body.get(name, "")) if name else None


def _zero_note(log: OpenLog, language: Language) -> list[str]:
    zeros = [
        entry
        for entry in log.folded.entries
        if entry.kind == "calibration" and entry.is_used and entry.content["of"] == "instrument"
    ]
    if not zeros:
        return []
    day = day_word(max(zeros, key=lambda entry: entry.measured_s).measured_at, language)
    return [language.say("calibrated", n=str(len(zeros)), day=day)]


def report_of(log: OpenLog, language: Language) -> Report:
    """Everything that the page shows."""
    period = _period(log)
    shown, waiting, points, names = [], [], [], {}
    machines = log.folded.machines
    for place, machine in enumerate(machines, 1):
        page, waits, history = machine_shown(machine, log.folded, period, language)
        say(f"[3/3] {page.name} ({place} of {len(machines)})")
        shown.append(page)
        names[machine.machine] = page.name
        points += history
        waiting += [(page.name, waits)] if waits else []
    shown.sort(key=lambda machine: machine.name)
    rows = _Audit(log, names, language).rows()
    entries = log.merged.union.entries
    phones = len({entry.log for entry in entries if entry.log})
    first, last = (day_word(text, language) for text in (period.first, period.last))
    counts = {"entries": language.plain(len(log.folded.entries)), "phones": str(phones)}
    return Report(
        span=language.say("span", first=first, last=last, now=time_word(log.now, language)),
        counts=" · ".join(
            [
                language.say("counts", **counts, machines=str(len(machines))),
                *later_lines(log, language),
            ]
        ),
        invented=any(INVENTED in entry.line for entry in entries),
        waiting=sorted(waiting),
        machines=shown,
        months=_months(points, period, language),
        audit=rows[:_MOST_ROWS],
        audit_more=max(0, len(rows) - _MOST_ROWS),
        notes=[*_zero_note(log, language), *zone_lines(log, language)],
        findings=about_lines(log, language),
    )
