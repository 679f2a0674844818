"""Spells of a machine's history: which band held from when to when, and when nothing ran."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, replace

from pycore.desk.log.history import Point
from pycore.journal.state import AT_REST

_QUIET = AT_REST | {"stopped"}


@dataclass(frozen=True)
class Spell:
    """Seconds since 1970, from and to."""

    from_s: int
    to_s: int


@dataclass(frozen=True)
class BandSpell(Spell):
    """A target band as long as it held, per cent by volume."""

    low_pct: float
    high_pct: float


def bands_of(points: Sequence[Point], end_s: int) -> list[BandSpell]:
    """The band as it was on each day; it holds until another one is set."""
    spells: list[BandSpell] = []
    for point in points:
        if point.band is None:
            continue
        low, high = point.band.low_pct, point.band.high_pct
        if spells and (spells[-1].low_pct, spells[-1].high_pct) == (low, high):
            continue
        at_s = point.entry.measured_s
        if spells:
            spells[-1] = replace(spells[-1], to_s=at_s)
        spells.append(BandSpell(at_s, end_s, low, high))
    return spells


def rests_of(points: Sequence[Point], end_s: int) -> list[Spell]:
    """When the machine was stopped or at rest."""
    spells: list[Spell] = []
    since: int | None = None
    for point in points:
        if point.entry.kind != "machine_state":
            continue
        quiet = point.entry.content["state"] in _QUIET
        if since is not None and not quiet:
            spells.append(Spell(since, point.entry.measured_s))
        since = (since or point.entry.measured_s) if quiet else None
    return [*spells, Spell(since, end_s)] if since is not None else spells
