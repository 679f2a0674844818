"""The report as one self-contained page: HTML with inline drawings, nothing fetched, no script."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import dataclass, field

from pycore.office.report_chart import Trend, bars_svg, trend_svg
from pycore.office.report_style import STYLE
from pycore.sheets.language import Language
from pycore.sheets.svg import escaped

_SHAPES = {
    "weak": '<path d="M2 3h12v1.500H2zM3 6h10l-5 8z"/>',
    "strong": '<path d="M2 11.500h12V13H2zM8 2l5 8H3z"/>',
    "in_range": '<path d="M1 1.500h14V3H1zM1 13h14v1.500H1zM8 3.500L12.500 8 8 12.500 3.500 8z"/>',
    "none": '<path fill-rule="evenodd" d="M8 2a6 6 0 1 0 .01 0zM8 4a4 4 0 1 1-.01 0z"/>',
    # The app's bucket in the ring of what nobody has read.
    "not_read": '<path fill-rule="evenodd" d="M8 1a7 7 0 1 0 .01 0z'
    'M8 2.500a5.500 5.500 0 1 1-.01 0zM5 5.500h6L9.800 11H6.200z"/>',
}
_COLOURS = {
    "weak": "weak",
    "strong": "strong",
    "in_range": "fine",
    "none": "ink-2",
    "not_read": "ink-2",
}


@dataclass(frozen=True)
class MachineShown:
    """One machine as the page shows it; every text is ready to read.

    state: weak, in_range, strong, none, or not_read where something was poured after the last
    reading: ``note`` tells that one, and ``strength`` is empty. note: also that the coolant had
    hardly mixed when it was read; empty for neither. use: how the machine is used, empty where
    nobody said.
    """

    name: str
    state: str
    use: str
    strength: str
    band: str
    level: str
    room: str
    checked: str
    strengths: Trend | None = None
    levels: Trend | None = None
    said: Sequence[str] = ()
    note: str = ""


@dataclass(frozen=True)
class Month:
    """What went in during one month, litres."""

    word: str
    buckets: int
    water_l: float
    concentrate_l: float


@dataclass(frozen=True)
class Report:
    """All that the page shows. audit: rows of when, machine, what, why, who."""

    span: str
    counts: str
    invented: bool
    waiting: Sequence[tuple[str, Sequence[str]]]
    machines: Sequence[MachineShown]
    months: Sequence[Month]
    audit: Sequence[Sequence[str]]
    audit_more: int
    notes: Sequence[str] = ()
    findings: Sequence[str] = field(default_factory=tuple)


def _paragraph(text: str) -> str:
    return f"<p>{escaped(text)}</p>"


def _note_below(text: str) -> str:
    return f'<br><span class="note">{escaped(text)}</span>' if text else ""


class _Writer:
    """The parts of the page in one language."""

    def __init__(self, language: Language) -> None:
        self.say, self.language = language.say, language

    def table(
        self, heads: Sequence[str], rows: Iterable[str], numbers: int = 0, kind: str = ""
    ) -> str:
        """A table; the last ``numbers`` columns are numbers. kind: narrow for rows that become
        cards on a narrow screen.
        """
        first = len(heads) - numbers
        cells = "".join(
            f'<th scope="col"{"" if place < first else _NUMBER}>{escaped(self.say(head))}</th>'
            for place, head in enumerate(heads)
        )
        return (
            f'<div class="wide"><table class="{kind}"><thead><tr>{cells}</tr></thead>'
            f"<tbody>{''.join(rows)}</tbody></table></div>"
        )

    def state(self, state: str) -> str:
        """Shape, word and colour."""
        shape = f'<svg viewBox="0 0 16 16" aria-hidden="true">{_SHAPES[state]}</svg>'
        style = f' style="fill:var(--{_COLOURS[state]})"'
        kind = "state long" if state == "not_read" else "state"
        return f'<span class="{kind}"{style}>{shape}{escaped(self.say(state))}</span>'

    def waiting(self, report: Report) -> str:
        """What is overdue, open, stopped or out of range, by machine."""
        if not report.waiting:
            return _paragraph(self.say("waiting_none"))
        rows = "".join(
            f"<li><b>{escaped(name)}</b>: {escaped('; '.join(said))}</li>"
            for name, said in report.waiting
        )
        return f"<ul>{rows}</ul>"

    def overview(self, machines: Sequence[MachineShown]) -> str:
        """Every machine in one line."""
        heads = [
            f"col_{head}"
            for head in ("machine", "state", "strength", "band", "level", "room", "checked")
        ]
        rows = []
        for machine in machines:
            use = _note_below(machine.use)
            texts = (machine.strength, machine.band, machine.level, machine.room, machine.checked)
            cells = "".join(
                f"<td{_NUMBER}{self._head(head)}>{escaped(text)}</td>"
                for head, text in zip(heads[2:], texts, strict=True)
            )
            name = f"<td><b>{escaped(machine.name)}</b>{use}</td>"
            note = _note_below(machine.note)
            rows.append(f"<tr>{name}<td>{self.state(machine.state)}{note}</td>{cells}</tr>")
        return self.table(heads, rows, 5, "narrow")

    def _head(self, head: str) -> str:
        """The column's name inside the cell, where a narrow screen shows rows as cards."""
        return f' data-head="{escaped(self.say(head))}"'

    def machine(self, machine: MachineShown) -> str:
        """One machine's charts and sums."""
        parts = [f"<h3>{escaped(machine.name)}</h3>"]
        for head, trend in (("strength", machine.strengths), ("level", machine.levels)):
            if trend is not None:
                title = escaped(self.say(f"{head}_head"))
                parts.append(
                    f'<div class="keep"><h4>{title}</h4>{trend_svg(trend, self.language)}</div>'
                )
        said = "<br>".join(escaped(text) for text in machine.said)
        parts.append(f'<p class="note">{said}</p>')
        return f'<section class="machine">{"".join(parts)}</section>'

    def key(self) -> str:
        """What the grounds of the charts mean."""
        words = (("band", "chart_key"), ("rest", "rest_key"), ("doubt", "doubt_key"))
        parts = (
            f'<span class="key {kind}"></span>{escaped(self.say(word))}' for kind, word in words
        )
        return f'<p class="note">{"".join(parts)}</p>'

    def poured(self, months: Sequence[Month]) -> str:
        """Each month's litres as bars and as numbers."""
        columns = [(month.word.split()[0], month.concentrate_l, month.water_l) for month in months]
        bars = bars_svg(self.say("poured_chart"), "L", columns, self.language)
        key = "".join(
            f'<span class="key {kind}"></span>{escaped(self.say(kind))}'
            for kind in ("concentrate", "water")
        )
        rows = [self._month(month) for month in months]
        whole = Month(
            self.say("sum"),
            sum(month.buckets for month in months),
            sum(month.water_l for month in months),
            sum(month.concentrate_l for month in months),
        )
        heads = ["col_month", "col_buckets", "col_water", "col_concentrate"]
        table = self.table(heads, [*rows, self._month(whole, "b")], 3)
        note = f'<p class="note">{escaped(self.say("poured_note"))}</p>'
        return f'<div class="keep">{bars}<p class="note">{key}</p></div>{table}{note}'

    def _month(self, month: Month, tag: str = "span") -> str:
        plain = self.language.plain
        texts = (plain(month.buckets), plain(month.water_l), plain(month.concentrate_l, 1))
        cells = "".join(f"<td{_NUMBER}><{tag}>{text}</{tag}></td>" for text in texts)
        return f"<tr><td><{tag}>{escaped(month.word)}</{tag}></td>{cells}</tr>"

    def audit(self, report: Report) -> str:
        """Corrections and withdrawals beside what they are about, clean-outs and states."""
        if not report.audit:
            return _paragraph(self.say("audit_none"))
        heads = ["col_when", "col_machine", "col_what", "col_why", "col_who"]
        rows = (
            "<tr>"
            + "".join(
                f"<td{self._head(head)}>{escaped(text)}</td>"
                for head, text in zip(heads, row, strict=True)
            )
            + "</tr>"
            for row in report.audit
        )
        more = self.say("more", n=str(report.audit_more)) if report.audit_more else ""
        return self.table(heads, rows, 0, "narrow audit") + (
            f'<p class="note">{escaped(more)}</p>' if more else ""
        )

    def findings(self, report: Report) -> str:
        """What is missing, doubled or damaged; or that nothing is."""
        if not report.findings:
            return _paragraph(self.say("all_holds"))
        return "<ul>" + "".join(f"<li>{escaped(text)}</li>" for text in report.findings) + "</ul>"


_NUMBER = ' class="n"'


def page_start(language: Language) -> str:
    """How every report in a language begins, whatever is in it: up to its title."""
    return (
        f'<!doctype html><html lang="{language.code}"><head><meta charset="utf-8">'
        '<meta http-equiv="Content-Security-Policy" '
        "content=\"default-src 'none'; style-src 'unsafe-inline'\">"
        '<meta name="viewport" content="width=device-width,initial-scale=1">'
        f"<title>{escaped(language.say('title'))}</title>"
    )


def report_page(report: Report, language: Language) -> str:
    """The whole HTML file. Every text is escaped; its policy forbids scripts and addresses."""
    write, say = _Writer(language), language.say
    invented = f'<p class="invented">{escaped(say("invented"))}</p>' if report.invented else ""
    sections = [
        ("waiting", write.waiting(report)),
        ("machines", write.overview(report.machines)),
        ("poured", write.poured(report.months) if report.months else ""),
        ("audit", write.audit(report)),
        ("holds", write.findings(report)),
    ]
    charts = "".join(write.machine(m) for m in report.machines if m.strengths or m.levels)
    parts = []
    for key, content in sections:
        if content:
            parts.append(f"<h2>{escaped(say(key))}</h2>{content}")
        if key == "machines":
            parts.append((write.key() if charts else "") + charts)
    notes = "".join(f'<p class="note">{escaped(text)}</p>' for text in report.notes)
    title = escaped(say("title"))
    return (
        f"{page_start(language)}<style>{STYLE}</style></head><body>{invented}"
        f"<header><h1>{title}</h1><p>{escaped(report.span)}</p><p>{escaped(report.counts)}</p>"
        f"</header><main>{''.join(parts)}{notes}"
        f'<p class="note">{escaped(say("caution"))}</p>'
        f'<p class="note">{escaped(say("made_by"))}</p></main></body></html>\n'
    )
