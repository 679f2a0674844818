"""How things stand: the lines of the log folded into the present state of each machine.

The fold is a function of the set of lines: it does not depend on the order in which they came.
"""

from __future__ import annotations

from collections import Counter, defaultdict
from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from typing import Any

from pycore.journal.amend import Standing, standings
from pycore.journal.chain import Chains, chains_of
from pycore.journal.clocks import ClockFlag, clock_flags
from pycore.journal.decide import Decided, decisions, unusable
from pycore.journal.open_pours import OpenPour, Recheck, due_recheck, open_pours
from pycore.journal.order import CERTAIN_S, in_order, latest
from pycore.journal.poured import Poured, poured, usable_of
from pycore.journal.strands import strands_of
from pycore.journal.union import Gathered

# Machines at which checks rest.
AT_REST = frozenset({"clean_out", "out_of_service", "shutdown"})
# Nothing is poured in. On hold checks go on: somebody has hung a tag on the machine.
HELD = frozenset({"on_hold", "stopped"})
# Fields of the shop's own facts; each counts by its own latest entry.
SHOP_FACTS = (
    "who_to_ask",
    "look_limits",
    "check_every_d",
    "clean_out_every_d",
    "most_lost_pct_d",
)
_MEASURING = frozenset({"check", "recheck"})
_MOVING = frozenset({"pour", "unknown_addition"})
# Of a pour over which logs differ nobody knows how many buckets went in, but that something did.
_DOUBTFUL = Poured(0.0, 0.0, buckets=1, unknown_buckets=1)


@dataclass(frozen=True)
class Found:
    """The latest entry of some kind, and ids of those that may be later."""

    entry: Standing
    others: tuple[Standing, ...]

    @property
    def is_certain(self) -> bool:
        """Whether no other entry can be the latest one."""
        return not self.others


@dataclass(frozen=True)
class Since:
    """What was poured since the last dip or reading, or since the sump was cleaned out.

    Litres are those of the buckets that are known; unknown_buckets are not in them. A pour over
    which logs differ counts as one such bucket.
    """

    pours: int
    buckets: int
    unknown_buckets: int
    unknown_additions: int
    water_l: float
    concentrate_l: float


@dataclass(frozen=True)
class MachineNow:
    """One machine: what is known of it, and how certain that is.

    ordered: the entries that may be used. with_doubtful_pours: the same and the pours over which
    logs differ: how much went in is in doubt there, not that something did.
    """

    machine: str
    definition: Found | None
    state: Found | None
    level: Found | None
    strength: Found | None
    checked: Found | None
    open_pours: tuple[OpenPour, ...]
    recheck: Recheck | None
    since: Since
    conflicts: tuple[str, ...]
    ordered: tuple[Standing, ...]
    with_doubtful_pours: tuple[Standing, ...]

    @property
    def is_stopped(self) -> bool:
        """Whether its state says that nothing is poured in now.

        One of several states that may be the latest is enough: a tag is not lost to a doubt.
        """
        found = self.state
        states = [found.entry, *found.others] if found else []
        return any(entry.content["state"] in HELD | AT_REST for entry in states)

    @property
    def rests(self) -> bool:
        """Whether its state lets checks rest."""
        return _rests(self.state)

    def setup_at(self, entry: Standing) -> dict[str, Any] | None:
        """The set-up by which an entry is read: its own copy, else the one in force at its time.

        An old reading keeps the factor of its day.
        """
        setup: dict[str, Any] | None = entry.content.get("machine")
        for before in self.ordered if setup is None else ():
            if before.place == entry.place:
                break
            if before.kind == "machine_set":
                setup = before.content["machine"]
        return setup


@dataclass(frozen=True)
class Folded:
    """The state of a log: machines, fluids and instruments by id, and what does not hold."""

    machines: tuple[MachineNow, ...]
    fluids: tuple[Found, ...]
    instruments: tuple[Found, ...]
    shop: dict[str, Found]
    entries: tuple[Standing, ...]
    chains: Chains
    flags: tuple[ClockFlag, ...]
    counts: dict[str, int]


class _Finder:
    """Finds the latest entries; knows which clocks are in doubt and what people decided."""

    def __init__(self, flags: Iterable[ClockFlag], decided: Decided) -> None:
        self.flagged = frozenset(flag.hash for flag in flags)
        self.decided = decided

    def last(self, entries: Iterable[Standing]) -> Found | None:
        """The latest that may be used; those in doubt that may be later are told beside it."""
        entries = list(entries)
        used = [entry for entry in entries if entry.is_used]
        found = latest(used, self.flagged, self.decided)
        if found is None:
            return None
        named = {found.hash, *found.others}
        by_hash = {entry.entry.hash: entry for entry in used if entry.entry.hash in named}
        first = by_hash[found.hash]
        others = [by_hash[other] for other in found.others]
        doubtful = (entry for entry in entries if entry.is_in_doubt)
        others += [entry for entry in doubtful if not _is_before(entry, first)]
        return Found(first, tuple(others))


def _is_before(entry: Standing, other: Standing) -> bool:
    """Whether an entry is certainly earlier than another one."""
    if entry.strand == other.strand:
        return entry.entry.seq < other.entry.seq
    if entry.strand in other.earlier or other.strand in entry.earlier:
        return entry.strand in other.earlier
    return other.measured_s - entry.measured_s > CERTAIN_S


def _starts_anew(entry: Standing) -> bool:
    """Whether what was poured before is in a later dip or reading, or gone with the old charge."""
    is_emptied = entry.kind == "clean_out" and entry.content["finished"]
    # Only what measures has one of these fields.
    return is_emptied or "dip" in entry.content or "reading" in entry.content


def _since(ordered: list[Standing]) -> Since:
    last = (place for place in range(len(ordered), 0, -1) if _starts_anew(ordered[place - 1]))
    start = next(last, 0)
    before = (ordered[place] for place in range(start - 1, -1, -1))
    setup = next((entry for entry in before if entry.kind == "machine_set"), None)
    usable_l = usable_of(setup.content["machine"] if setup else None)
    water_l = concentrate_l = 0.0
    pours = additions = buckets = unknown = 0
    # What was poured before is read no more: a long log has thousands of buckets.
    for entry in ordered[start:]:
        if entry.kind == "machine_set":
            usable_l = usable_of(entry.content["machine"])
        elif entry.kind == "unknown_addition":
            additions += 1
        elif entry.kind == "pour":
            pours += 1
            rows = entry.content["pours"]
            went = _DOUBTFUL if entry.is_in_doubt else poured(rows, usable_l)
            water_l, concentrate_l = water_l + went.water_l, concentrate_l + went.concentrate_l
            buckets, unknown = buckets + went.buckets, unknown + went.unknown_buckets
    return Since(pours, buckets, unknown, additions, water_l, concentrate_l)


def _rests(state: Found | None) -> bool:
    return state is not None and state.entry.content["state"] in AT_REST


def of_this_charge(ordered: Sequence[Standing]) -> Sequence[Standing]:
    """Entries after the last clean-out: what was measured before is of another fluid."""
    for place in range(len(ordered), 0, -1):
        entry = ordered[place - 1]
        if entry.kind == "clean_out" and entry.is_used and entry.content["finished"]:
            return ordered[place:]
    return ordered


def _machine(machine: str, entries: list[Standing], find: _Finder, now_s: int) -> MachineNow:
    used = [entry for entry in entries if entry.is_used]
    doubtful = [entry for entry in entries if entry.is_in_doubt]
    ordered = in_order(used)
    told = in_order([*used, *doubtful]) if doubtful else ordered
    measured = [entry for entry in of_this_charge(told) if entry.kind in _MEASURING]
    stated = [entry for entry in told if entry.kind == "machine_state"]
    # A tag whose only word is in doubt is not lost to the doubt.
    state = find.last(stated) or (Found(stated[-1], tuple(stated[:-1])) if stated else None)
    moving = [entry for entry in doubtful if entry.kind in _MOVING]
    moved = in_order([*used, *moving]) if moving else ordered
    return MachineNow(
        machine=machine,
        definition=find.last(entry for entry in told if entry.kind == "machine_set"),
        state=state,
        level=find.last(entry for entry in measured if "dip" in entry.content),
        strength=find.last(entry for entry in measured if "reading" in entry.content),
        checked=find.last(measured),
        open_pours=open_pours(ordered),
        recheck=due_recheck(moved, now_s, _rests(state)),
        since=_since(moved),
        conflicts=tuple(sorted({entry.id for entry in doubtful})),
        ordered=tuple(ordered),
        with_doubtful_pours=tuple(moved),
    )


def _by(entries: Iterable[Standing], kind: str, find: _Finder) -> tuple[Found, ...]:
    """The latest setting of each fluid or instrument, by its id."""
    groups: dict[str, list[Standing]] = defaultdict(list)
    setting = f"{kind}_set"
    for entry in entries:
        if entry.kind == setting:
            groups[entry.content[kind]].append(entry)
    found = (find.last(groups[identity]) for identity in sorted(groups))
    return tuple(one for one in found if one is not None)


def _shop(entries: Iterable[Standing], find: _Finder) -> dict[str, Found]:
    """The latest entry for each fact of the shop, by the fact's name."""
    set_here = [entry for entry in entries if entry.kind == "shop_set"]
    found = {
        name: find.last(entry for entry in set_here if name in entry.content) for name in SHOP_FACTS
    }
    return {name: one for name, one in found.items() if one is not None}


def folded(union: Gathered, now_s: int) -> Folded:
    """The present state.

    Parameters
    ----------
    union : Gathered
        All lines that are known.
    now_s : int
        The reading device's clock, seconds since 1970. It decides only what is overdue and which
        clocks are ahead.
    """
    entries = union.entries
    chains = chains_of(entries, union.heads)
    strands = strands_of(entries, chains.forks)
    flags = clock_flags(entries, now_s, strands)
    disputed = frozenset(name for fork in chains.forks for name in fork.hashes)
    decided = decisions(entries, disputed)
    open_lines, left_out = unusable(chains.forks, decided)
    standing = standings(entries, open_lines, left_out, strands)
    find = _Finder(flags, decided)
    groups: dict[str, list[Standing]] = defaultdict(list)
    for entry in standing:
        if entry.machine:
            groups[entry.machine].append(entry)
    counts = Counter(entry.standing for entry in standing)
    counts["lines"] = len(entries) + len(union.quarantined)
    counts["newer"] = sum(entry.is_newer for entry in entries)
    counts["quarantined"] = len(union.quarantined)
    return Folded(
        machines=tuple(_machine(name, groups[name], find, now_s) for name in sorted(groups)),
        fluids=_by(standing, "fluid", find),
        instruments=_by(standing, "instrument", find),
        shop=_shop(standing, find),
        entries=tuple(standing),
        chains=chains,
        flags=flags,
        counts=dict(counts),
    )
