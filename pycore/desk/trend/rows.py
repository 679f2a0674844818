"""A machine's history as rows: what each check found, and what went in since the one before."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, field

from pycore.advice.losses import Shared, State, Step
from pycore.desk.log.history import Point
from pycore.desk.trend.messages import Addition, LeftOut, TrendRow
from pycore.journal.amend import Standing
from pycore.journal.recheck import dip_of
from pycore.journal.state import AT_REST
from pycore.journal.times import DAY_S
from pycore.quantity.measured import Measured
from pycore.quantity.rounding import Shown, shown, tidy
from pycore.quantity.typed import number_of

_MEASURING = frozenset({"check", "recheck"})
_ADDING = frozenset({"pour", "unknown_addition"})


def added_by(point: Point) -> Addition | None:
    """What a pour or an unknown addition brought; None for other entries and empty pours.

    A pour over which logs differ brought something, and nobody knows how much.
    """
    went, kind = point.poured, point.entry.kind
    at = point.entry.measured_at, point.entry.measured_s
    if kind not in _ADDING:
        return None
    if went is None:
        is_unknown = kind == "unknown_addition" or point.entry.is_in_doubt
        return Addition(*at, 0.0, 0.0, 1) if is_unknown else None
    return Addition(*at, went.water_l, went.concentrate_l, went.unknown_buckets)


def taken_l(entry: Standing) -> float | None:
    """Litres that were taken out for a pour; 0 for none, None where nobody knows how many."""
    if entry.kind != "pour" or "draw_off" not in entry.content:
        return 0.0
    return None if entry.is_in_doubt else number_of(entry.content.get("draw_off"), "volume_l")


def _row(point: Point, since: Sequence[Addition], unit: str) -> TrendRow | None:
    entry = point.entry
    ph = number_of(entry.content.get("ph"), "ph")
    is_told = entry.kind in _MEASURING and (
        point.strength is not None or point.level is not None or ph is not None or point.trouble
    )
    if not is_told and entry.kind != "clean_out":
        return None
    charge = point.poured if entry.kind == "clean_out" else None
    water_l = sum(one.water_l for one in since) + (charge.water_l if charge else 0.0)
    neat_l = sum(one.concentrate_l for one in since) + (charge.concentrate_l if charge else 0.0)
    said: dict[str, Shown] = {
        "water": shown(water_l, unit, 1),
        "concentrate": shown(neat_l, unit, 2),
    }
    level, strength = point.level, point.strength
    if level is not None:
        said["volume"] = level.shown["volume"]
    if strength is not None and "strength" in strength.shown:
        said["strength"] = strength.shown["strength"]
    if ph is not None:
        said["ph"] = tidy(ph, "1", 2)
    return TrendRow(
        entry=entry.id,
        kind=entry.kind,
        measured_at=entry.measured_at,
        at_s=entry.measured_s,
        water_l=water_l,
        concentrate_l=neat_l,
        added_unknown=sum(one.unknown for one in since) + (charge.unknown_buckets if charge else 0),
        trouble=list(point.trouble),
        shown=said,
        strength_pct=None if strength is None else strength.strength_pct,
        state=None if strength is None else strength.state,
        volume_l=None if level is None else level.volume_l,
        ph=ph,
    )


def rows_of(points: Sequence[Point], unit: str) -> list[TrendRow]:
    """Rows in order; litres are shown in ``unit``."""
    rows, since = [], []
    for point in points:
        added = added_by(point)
        if added is not None:
            since.append(added)
        row = _row(point, since, unit)
        if row is not None:
            rows.append(row)
            since = []
    return rows


def _state(point: Point) -> State | None:
    """Litres of the whole circuit and strength with their own errors; None without both.

    An empty sump and plain water are none either: no concentrate tells what was carried out.
    """
    level, strength = point.level, point.strength
    if level is None or strength is None or strength.strength_pct is None:
        return None
    dip = dip_of(level.volume_l, level.depth_mm.u, level.litres_per_mm)
    whole_l = (level.circuit_l or level.volume_l).value
    if whole_l <= 0 or strength.strength_pct.value <= 0:
        return None
    brix, pct = strength.corrected_brix or strength.reading_brix, strength.strength_pct
    own = pct.value * brix.u / brix.value if brix.value > 0 else pct.u
    return State(Measured(whole_l, dip.u_l), Measured(pct.value, min(own, pct.u)))


def shared_of(points: Sequence[Point]) -> Shared:
    """What all checks have in common, by the last one that has both a dip and a reading."""
    for point in reversed(points):
        state, level, strength = _state(point), point.level, point.strength
        if state is None or level is None or strength is None or strength.strength_pct is None:
            continue
        dip = dip_of(level.volume_l, level.depth_mm.u, level.litres_per_mm)
        pct, own = strength.strength_pct, state.strength_pct
        rest = max(0.0, pct.u**2 - own.u**2) ** 0.5
        return Shared(dip.scale_u_share, rest / pct.value if pct.value > 0 else 0.0)
    return Shared()


@dataclass
class _Open:
    """What went in and out since the last whole check, and why its step may not count."""

    water_l: float = 0.0
    concentrate_l: float = 0.0
    out_l: float = 0.0
    why: str | None = None
    rests: bool = False


@dataclass
class Steps:
    """Steps from check to check, and how many do not count, by their reason."""

    steps: list[Step] = field(default_factory=list)
    left_out: dict[str, int] = field(default_factory=dict)

    def counted(self, unusual: int) -> list[LeftOut]:
        """The reasons with their counts; those of the calculation stand last."""
        told = {**self.left_out, **({"unusual": unusual} if unusual else {})}
        return [LeftOut(why, count) for why, count in told.items()]


def _note(point: Point, since: _Open) -> None:
    kind, content = point.entry.kind, point.entry.content
    if kind == "machine_state":
        since.rests = content["state"] in AT_REST
        since.why = "at_rest" if since.rests else since.why
    added = added_by(point)
    if added is not None:
        since.water_l += added.water_l
        since.concentrate_l += added.concentrate_l
        since.why = "unknown_added" if added.unknown else since.why
    out_l = taken_l(point.entry)
    since.out_l += out_l or 0.0
    since.why = "unknown_taken" if out_l is None else since.why


def _after(since: _Open) -> _Open:
    """The next step begins as the machine stands: at rest, or not."""
    return _Open(why="at_rest" if since.rests else None, rests=since.rests)


def steps_of(points: Sequence[Point]) -> Steps:
    """From each check with dip and reading to the next one of the same charge."""
    found = Steps()
    before: tuple[State, int] | None = None
    since = _Open()
    for point in points:
        _note(point, since)
        if point.entry.kind == "clean_out" and point.entry.content["finished"]:
            before, since = None, _after(since)
        state = _state(point)
        if state is None:
            continue
        at_s = point.entry.measured_s
        days = (at_s - before[1]) / DAY_S if before is not None else 0.0
        if before is not None and since.out_l >= before[0].volume_l.value:
            # More than there was: the number is not what was taken out.
            since.why = since.why or "unknown_taken"
        if before is not None and since.why is not None:
            found.left_out[since.why] = found.left_out.get(since.why, 0) + 1
        elif before is not None and days > 0:
            amounts = since.water_l, since.concentrate_l, since.out_l
            found.steps.append(Step(days, before[0], state, *amounts))
        before, since = (state, at_s), _after(since)
    return found
