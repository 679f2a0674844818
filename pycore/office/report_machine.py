"""One machine of the report: its line, its charts, its sums, and what it waits for."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from pycore.desk.log.due_checks import CheckDue, check_due
from pycore.desk.log.history import Point, history_of
from pycore.desk.log.spells import bands_of, rests_of
from pycore.desk.log.state import machine_now
from pycore.journal.handover import moved_since, poured_since
from pycore.journal.state import AT_REST, Folded, MachineNow
from pycore.office.mixing import unmixed_before
from pycore.office.report_chart import Mark, Span, Trend
from pycore.office.report_page import MachineShown
from pycore.office.report_times import day_word, ticks_of, time_word
from pycore.sheets.language import Language

# A level's chart is half as high as that of the strength.
_LEVEL_HIGH = 110
# No line breaks between a number and its unit.
_TIE = "\u00a0"


@dataclass(frozen=True)
class Period:
    """The time that the report shows: first and last entry as text and in seconds, and now."""

    first: str
    last: str
    start_s: int
    end_s: int
    now_s: int


def _strengths(points: Sequence[Point]) -> list[Mark]:
    return [
        Mark(p.entry.measured_s, s.strength_pct.value, 2 * s.strength_pct.u, s.state or "")
        for p in points
        if (s := p.strength) is not None and s.strength_pct is not None
    ]


def _trends(
    name: str, points: Sequence[Point], time: Period, language: Language
) -> tuple[Trend | None, Trend | None]:
    rests = [Span(rest.from_s, rest.to_s) for rest in rests_of(points, time.end_s)]
    ticks = ticks_of(time.first, time.last, language)
    shared = (rests, time.start_s, time.end_s, ticks)
    strengths = _strengths(points)
    levels = [
        Mark(p.entry.measured_s, p.level.volume_l.value) for p in points if p.level is not None
    ]
    fulls = [p.level.full_volume_l for p in points if p.level is not None]
    full = [Span(time.start_s, time.end_s, 0.0, fulls[-1])] if fulls else []
    return (
        Trend(
            language.say("strength_chart", name=name), "%", strengths,
            [Span(b.from_s, b.to_s, b.low_pct, b.high_pct) for b in bands_of(points, time.end_s)],
            *shared,
        ) if strengths else None,
        Trend(
            language.say("level_chart", name=name), "L", levels, full, *shared, _LEVEL_HIGH
        ) if levels else None,
    )  # fmt: skip


def _said(points: Sequence[Point], language: Language) -> list[str]:
    """What happened in the time that is shown, in sentences."""
    marks = _strengths(points)
    inside = sum(mark.state == "in_range" for mark in marks)
    percent = str(round(100 * inside / len(marks))) if marks else ""
    blanks = {"n": str(len(marks)), "inside": str(inside), "percent": percent}
    said = [language.say("readings", **blanks) if marks else language.say("no_readings")]
    went = [point.poured for point in points if point.poured is not None]
    if went:
        blanks = {
            "buckets": language.plain(sum(part.buckets for part in went)),
            "water": language.plain(sum(part.water_l for part in went)),
            "concentrate": language.plain(sum(part.concentrate_l for part in went), 1),
        }
        said.append(language.say("poured_machine", **blanks))
    unknown = sum(part.unknown_buckets for part in went)
    unwritten = sum(point.entry.kind == "unknown_addition" for point in points)
    cleaned = [
        day_word(point.entry.measured_at, language)
        for point in points
        if point.entry.kind == "clean_out" and point.entry.content["finished"]
    ]
    said += [language.say("unknown", n=str(unknown))] if unknown else []
    said += [language.say("unwritten", n=str(unwritten))] if unwritten else []
    said += [language.say("cleaned", days=", ".join(cleaned))] if cleaned else []
    return said


def _use(machine: MachineNow, language: Language) -> str:
    """How the machine is used; empty for the ordinary, which needs no word."""
    if machine.state is None or machine.state.entry.content["state"] == "in_use":
        return ""
    entry = machine.state.entry
    content = entry.content
    said = [language.say(content["state"])]
    if "reason" in content:
        said.append(language.say(f"stop_reason.{content['reason']}"))
    if "until" in content:
        said.append(language.say("until", time=time_word(content["until"], language)))
    if entry.entry.by:
        said.append(language.say("said_by", by=entry.entry.by))
    return ", ".join(said)


@dataclass(frozen=True)
class _Read:
    """The last reading in words, whether something was poured after it, and the time before which
    its coolant had not mixed, empty where it had."""

    state: str
    strength: str
    is_of_before: bool
    unmixed_before: str


def _note(machine: MachineNow, read: _Read, language: Language) -> str:
    """The last reading as one of before, or of coolant that had hardly mixed; empty where it is
    neither or says nothing."""
    if machine.strength is None or not read.strength:
        return ""
    if not read.is_of_before:
        due = read.unmixed_before
        return language.say("unmixed", time=time_word(due, language)) if due else ""
    time = time_word(machine.strength.entry.measured_at, language)
    state = language.say(read.state)
    return language.say("before", state=state, strength=read.strength, time=time)


def machine_shown(
    machine: MachineNow, folded: Folded, time: Period, language: Language
) -> tuple[MachineShown, list[str], list[Point]]:
    """The machine for the page, what it waits for, and its history."""
    now = machine_now(machine, time.now_s)
    points = history_of(machine)
    strength = now.strength.strength if now.strength else None
    level = now.level.level if now.level and not moved_since(machine) else None
    bands = [point.band for point in points if point.band is not None]
    ends = [language.round(end) for end in (bands[-1].low_pct, bands[-1].high_pct)] if bands else []
    name = now.name or machine.machine[:8]
    strengths, levels = _trends(name, points, time, language)
    known = strength is not None and strength.strength_pct is not None
    read = _Read(
        (strength.state if strength else None) or "none",
        language.amount(strength.shown["strength"]) if strength and known else "",
        poured_since(machine) is not None,
        unmixed_before(machine),
    )
    shown = MachineShown(
        name=name,
        state="not_read" if read.is_of_before else read.state,
        use=_use(machine, language),
        strength="" if read.is_of_before else read.strength,
        band=f"{' – '.join(ends)}{_TIE}%" if ends else "",
        level=language.amount(level.shown["volume"]) if level else "",
        room=f"{language.plain(level.room_l)}{_TIE}L" if level else "",
        checked=day_word(now.checked.measured_at, language) if now.checked else "",
        strengths=strengths,
        levels=levels,
        said=_said(points, language),
        note=_note(machine, read, language),
    )
    due = check_due(machine, folded, time.now_s)
    return shown, _waits(machine, due, shown.use, read, language), points


def _waits(
    machine: MachineNow, due: CheckDue, use: str, read: _Read, language: Language
) -> list[str]:
    """What is overdue, open, stopped or out of range at a machine."""
    say = language.say
    state = machine.state.entry.content["state"] if machine.state else "in_use"
    waits = [use] if state not in ("in_use", *AT_REST) else []
    for pour in machine.open_pours:
        key = "open_plan" if pour.buckets_planned else "open_pour"
        counts = {"poured": str(pour.buckets_poured), "planned": str(pour.buckets_planned)}
        waits.append(say(key, **counts, time=time_word(pour.since, language)))
    if machine.recheck is not None:
        again = machine.recheck
        key = "recheck_rests" if again.resting else "recheck_due"
        key = "recheck_overdue" if again.overdue else key
        waits.append(say(key, time=time_word(again.due_at, language)))
    if machine.conflicts:
        waits.append(say("conflicts", n=str(len(machine.conflicts))))
    if due.resting:
        return waits
    if due.clean_out_due:
        why = " ".join(say(f"trend.reason.{code}") for code in due.clean_out)
        waits.append(say("clean_out_due", why=why))
    if machine.strength is None:
        was_read = any("reading" in entry.content for entry in machine.ordered)
        key = "no_reading_of_charge" if was_read else "no_reading"
        # One of the entries that contradict one another may be a reading.
        return [*waits, say("no_reading_counts" if machine.conflicts else key)]
    if due.due:
        last = day_word(machine.strength.entry.measured_at, language)
        waits.append(say("old_reading", last=last, n=language.round(due.every_d)))
    if read.state in ("weak", "strong"):
        key = "out_of_range_unmixed" if read.unmixed_before else "out_of_range"
        key = "out_of_range_before" if read.is_of_before else key
        waits.append(say(key, strength=read.strength, state=say(read.state)))
    return waits
