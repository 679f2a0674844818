"""The folded log as a message: dips and readings by the set-up of their day."""

from __future__ import annotations

from collections.abc import Callable
from typing import Any

from pycore.desk.contract.build import built
from pycore.desk.contract.messages import MachineTyped
from pycore.desk.contract.reader import Reader
from pycore.desk.contract.refusal import error_of
from pycore.desk.log.history import level_of, setup_from, strength_of
from pycore.desk.log.messages import (
    FluidNow,
    InstrumentNow,
    LatestEntry,
    LevelNow,
    MachineShown,
    SetupNow,
    StateNow,
    StrengthNow,
)
from pycore.journal.state import Folded, Found, MachineNow
from pycore.journal.times import DAY_S
from pycore.quantity.fault import Fault

# Where a fact of the shop stands in the message, and its field in the entry.
_FACTS = {"who": "who_to_ask", "limits": "look_limits"}


def _latest(found: Found, now_s: int) -> dict[str, Any]:
    entry = found.entry
    return {
        "entry": entry.id,
        "measured_at": entry.measured_at,
        "age_d": (now_s - entry.measured_s) / DAY_S,
        "certain": found.is_certain,
        "others": [other.id for other in found.others],
    }


def _tried(answer: Callable[[], Any], name: str) -> dict[str, Any]:
    """The answer under its name, or why there is none."""
    try:
        return {name: answer()}
    except Fault as fault:
        return {"trouble": error_of(fault)}


def _level(machine: MachineNow, found: Found, now_s: int) -> LevelNow:
    entry = found.entry

    def answer() -> Any:
        return level_of(entry, setup_from(machine.setup_at(entry)))

    return LevelNow(**_latest(found, now_s), **_tried(answer, "level"))


def _strength(machine: MachineNow, found: Found, now_s: int) -> StrengthNow:
    entry = found.entry

    def answer() -> Any:
        return strength_of(entry, setup_from(machine.setup_at(entry)))

    return StrengthNow(**_latest(found, now_s), **_tried(answer, "strength"))


def name_of(machine: MachineNow) -> str:
    """The machine's name by its latest set-up, empty when nobody has set it up."""
    return str(machine.definition.entry.content["machine"]["name"]) if machine.definition else ""


def state_now(machine: MachineNow, now_s: int) -> StateNow | None:
    """The machine's state, or None when nobody has set one."""
    found = machine.state
    if found is None:
        return None
    entry = found.entry
    return StateNow(**_latest(found, now_s), state=entry.content, by=entry.entry.by)


def level_now(machine: MachineNow, now_s: int) -> LevelNow | None:
    """The last dip as a level, or None where there is no dip."""
    return None if machine.level is None else _level(machine, machine.level, now_s)


def strength_now(machine: MachineNow, now_s: int) -> StrengthNow | None:
    """The last reading as a strength, or None where there is no reading."""
    return None if machine.strength is None else _strength(machine, machine.strength, now_s)


def is_low(machine: MachineNow, level: LevelNow) -> bool:
    """Whether a usable bucket of the machine's present set-up fits below the full mark."""
    if machine.definition is None or level.level is None:
        return False
    typed = built(MachineTyped, machine.definition.entry.content["machine"])
    try:
        usable_l = Reader().value(typed.bucket.usable, "usable_l", "machine.bucket.usable")
    except Fault:
        return False
    return level.level.room_l >= usable_l


def machine_now(machine: MachineNow, now_s: int) -> MachineShown:
    """One machine ready to send; now_s: the device's clock, seconds since 1970."""
    setup, checked = machine.definition, machine.checked
    return MachineShown(
        machine=machine.machine,
        name=name_of(machine),
        open_pours=list(machine.open_pours),
        since_measured=machine.since,
        conflicts=list(machine.conflicts),
        setup=None
        if setup is None
        else SetupNow(
            **_latest(setup, now_s),
            machine=setup.entry.content["machine"],
            code=setup.entry.content.get("code"),
        ),
        state=state_now(machine, now_s),
        level=level_now(machine, now_s),
        strength=strength_now(machine, now_s),
        checked=None if checked is None else LatestEntry(**_latest(checked, now_s)),
        recheck=machine.recheck,
    )


def shop_now(folded: Folded, now_s: int) -> dict[str, Any]:
    """Fluids, instruments and the shop's own facts ready to send; a fact nobody set is absent."""
    facts = {
        message: {**_latest(found, now_s), name: found.entry.content[name]}
        for message, name in _FACTS.items()
        if (found := folded.shop.get(name)) is not None
    }
    return {
        **facts,
        "fluids": [FluidNow(**_latest(f, now_s), fluid=f.entry.content) for f in folded.fluids],
        "instruments": [
            InstrumentNow(**_latest(found, now_s), instrument=found.entry.content)
            for found in folded.instruments
        ],
    }
