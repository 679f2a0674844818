"""Reading typed numbers with a memory for what to ask about, and faults put at their field."""

from __future__ import annotations

from dataclasses import dataclass, field

from pycore.desk.contract.records import Typed
from pycore.desk.contract.results import Doubt
from pycore.quantity.fault import Fault
from pycore.quantity.known import KNOWN
from pycore.quantity.rounding import Shown
from pycore.quantity.typed import Reading, read_typed
from pycore.quantity.units import UNITS, from_base


@dataclass
class Reader:
    """Reads typed numbers and collects the unusual ones on the way."""

    doubts: list[Doubt] = field(default_factory=list)

    def read(self, typed: Typed, quantity: str, path: str) -> Reading:
        """The number, or a Fault as of ``read_typed``."""
        reading = read_typed(typed.text, typed.unit, quantity, path)
        self.doubts += doubts_about(reading)
        return reading

    def value(self, typed: Typed, quantity: str, path: str) -> float:
        """The number in the quantity's own unit."""
        return self.read(typed, quantity, path).value

    def optional(self, typed: Typed | None, quantity: str, path: str) -> float | None:
        """The same, or None where nothing was typed because the field is not there."""
        return None if typed is None else self.value(typed, quantity, path)

    def doubt(self, code: str, path: str, got: Shown, usual: tuple[float, float]) -> None:
        """Notes a doubt about what numbers say together; ``usual`` is in the unit of ``got``."""
        self.doubts.append(Doubt(path, code, got, *usual))


def doubts_about(reading: Reading) -> list[Doubt]:
    """What to ask once about a number, bounds in the unit that was typed."""
    doubts = []
    if reading.is_unusual:
        known = KNOWN[reading.quantity]
        low, high = known.usual_low or 0.0, known.usual_high or 0.0
        usual = (from_base(low, reading.unit), from_base(high, reading.unit))
        doubts.append(Doubt(reading.path, "unusual", reading.shown, *usual))
    return doubts


def placed(fault: Fault, path: str, unit: str) -> Fault:
    """A room's fault at a path of the message, its numbers in ``unit`` where that fits."""
    limit, got = dict(fault.limit), fault.got
    own, theirs = UNITS[unit], UNITS.get(str(limit.get("unit")))
    if theirs is not None and theirs.dimension == own.dimension and isinstance(got, float):
        for side in ("minimum", "maximum", "above", "below"):
            if side in limit:
                limit[side] = from_base(limit[side], own)
        limit["unit"], got = own.name, from_base(got, own)
    return Fault(fault.code, path, got, limit)
