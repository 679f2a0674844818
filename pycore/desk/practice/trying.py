"""What a sump becomes, change by change, for whoever wants to see why."""

from __future__ import annotations

from pycore.desk.check.assess import section_of
from pycore.desk.check.check import plan_check
from pycore.desk.check.recipe import pour_shown
from pycore.desk.contract.reader import Reader
from pycore.desk.practice.messages import ChangeTyped, Tried, TrySumpBody, TrySumpResult
from pycore.desk.setup.machine import read_machine
from pycore.practice.trying import Change, changed
from pycore.quantity.fault import Fault
from pycore.quantity.rounding import shown
from pycore.reading.strength import state_of
from pycore.recipe.pours import Pour

# Where two states are compared, a litre and a tenth of a point are what a person can see.
_DECIMALS = 1


def _read(reader: Reader, typed: ChangeTyped, path: str) -> Change:
    """The change in litres. Error: ``missing`` for an amount that its kind needs."""
    names = ("water", "concentrate") if typed.kind == "pour" else ("volume",)
    quantities = {
        "water": "bucket_water_l",
        "concentrate": "bucket_concentrate_l",
        "volume": "volume_l",
    }
    amounts_l = {}
    for name in names:
        amount = getattr(typed, name)
        if amount is None:
            raise Fault("missing", f"{path}.{name}")
        amounts_l[f"{name}_l"] = reader.value(amount, quantities[name], f"{path}.{name}")
    return Change(typed.kind, count=typed.count or 1, **amounts_l)


def try_sump(body: TrySumpBody) -> TrySumpResult:
    """The sump of a check before and after each change.

    Errors: those of ``plan_check`` at body.check; those of ``read_typed`` and ``missing`` at the
    change; ``out_of_range`` where more leaves than there is or more is poured than it holds.
    """
    reader = Reader()
    try:
        answer = plan_check(body.check)
        machine = read_machine(reader, body.check.machine, "body.machine")
    except Fault as fault:
        path = fault.path.replace("body", "body.check", 1)
        raise Fault(fault.code, path, fault.got, fault.limit) from None
    request, typed = answer.request, body.check.machine
    volume_l, strength_pct = request.sump.volume_l.value, request.sump.strength_pct.value
    target = request.target

    def seen(path: str) -> Tried:
        depth_mm = machine.sump.depth_from_volume(volume_l, path)
        return Tried(
            volume=shown(volume_l, typed.units.plate, _DECIMALS),
            strength=shown(strength_pct, "%", _DECIMALS),
            state=state_of(strength_pct, target.low_pct, target.high_pct),
            section=section_of(machine.sump, depth_mm, volume_l, strength_pct),
        )

    states, pours = [seen("body.check.dip.depth")], []
    for i, one in enumerate(body.changes):
        path = f"body.changes[{i}]"
        change = _read(reader, one, path)
        volume_l, strength_pct = changed(volume_l, strength_pct, change, path)
        states.append(seen(path))
        if change.kind == "pour":
            pour = Pour(change.count, change.water_l, change.concentrate_l)
            pours.append(pour_shown(pour, request, typed.units))
    return TrySumpResult(states, pours, [*answer.doubts, *reader.doubts])
