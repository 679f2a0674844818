"""How often a shop wants its machines checked and cleaned out, and where either is due.

List, machine's page, trend, handover and the office's report all ask here.
"""

from __future__ import annotations

from dataclasses import dataclass, field

from pycore.advice.due import CHECK_EVERY_D, CLEAN_OUT_EVERY_D
from pycore.desk.check.look import LookLimitsTyped
from pycore.desk.contract.build import built
from pycore.desk.contract.checked import checked
from pycore.desk.contract.reader import Reader
from pycore.desk.contract.records import Typed
from pycore.desk.log.clean_due import clean_out_of
from pycore.desk.log.state import name_of
from pycore.journal.line import from_store
from pycore.journal.state import Folded, MachineNow, folded, of_this_charge
from pycore.journal.times import DAY_S, moment_of
from pycore.journal.union import gathered, read_lines
from pycore.quantity.fault import Fault

_PUBLISHED_D = {"check_every_d": CHECK_EVERY_D, "clean_out_every_d": CLEAN_OUT_EVERY_D}


@dataclass(frozen=True)
class DueChecksBody:
    """Rows of the store and the device's clock."""

    lines: list[str]
    now: str


@dataclass(frozen=True)
class CheckDue:
    """When a machine's next check is due by the shop's interval, days, and its clean-out.

    read_at, due_s (seconds since 1970): None without a reading of this charge, which is due at
    once. resting: nothing is due while the machine rests. clean_out: what speaks for one, also
    while it rests, the strongest first; empty where that is not enough.
    """

    machine: str
    name: str
    due: bool
    resting: bool
    every_d: float
    clean_out_due: bool
    read_at: str | None = None
    due_s: int | None = None
    clean_out: list[str] = field(default_factory=list)


def shop_number(now: Folded, fact: str) -> float | None:
    """A fact of the shop as a number in its own unit; None where nobody has set it.

    Errors: none, a line in which the number cannot be read is in quarantine (``checked``).
    """
    found = now.shop.get(fact)
    typed = None if found is None else built(Typed, found.entry.content[fact])
    if typed is None or not typed.text.strip():
        return None
    return Reader().value(typed, fact, fact)


def every_d_of(now: Folded, fact: str) -> float:
    """The shop's ``check_every_d`` or ``clean_out_every_d`` in days; the published one else."""
    own_d = shop_number(now, fact)
    return _PUBLISHED_D[fact] if own_d is None else own_d


def _clean_out(machine: MachineNow, now: Folded, now_s: int) -> list[str]:
    """As machine's page and trend have it; nothing where the shop's limits cannot be read."""
    own = now.shop.get("look_limits")
    limits = None if own is None else built(LookLimitsTyped, own.entry.content["look_limits"])
    every_d, charge = every_d_of(now, "clean_out_every_d"), of_this_charge(machine.ordered)
    try:
        found = clean_out_of(machine, charge, limits, every_d, now_s)
    except Fault:
        return []
    return found.reasons if found.due else []


def check_due(machine: MachineNow, now: Folded, now_s: int) -> CheckDue:
    """By this charge and the facts of the shop. now_s: seconds since 1970."""
    every_d = every_d_of(now, "check_every_d")
    last = machine.strength.entry if machine.strength else None
    due_s = None if last is None else last.measured_s + int(every_d * DAY_S)
    clean_out = _clean_out(machine, now, now_s)
    return CheckDue(
        machine=machine.machine,
        name=name_of(machine),
        due=not machine.rests and (due_s is None or due_s <= now_s),
        resting=machine.rests,
        every_d=every_d,
        clean_out_due=bool(clean_out) and not machine.rests,
        read_at=None if last is None else last.measured_at,
        due_s=due_s,
        clean_out=clean_out,
    )


def checks_due(now: Folded, now_s: int) -> list[CheckDue]:
    """One for each machine that somebody has set up."""
    machines = (machine for machine in now.machines if machine.definition is not None)
    return [check_due(machine, now, now_s) for machine in machines]


def due_checks(body: DueChecksBody) -> dict[str, list[CheckDue]]:
    """The same for the door. Error: ``not_a_date`` for a ``now`` that is no moment."""
    now_s = moment_of(body.now, "body.now")[0]
    union = gathered(*read_lines(map(from_store, body.lines), checked), ())
    return {"checks": checks_due(folded(union, now_s), now_s)}
