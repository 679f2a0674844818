"""The sump that was dipped and what counts beside it, at the strength that was read."""

from __future__ import annotations

import math
from dataclasses import dataclass

from pycore.desk.check.dip import Dipped
from pycore.desk.contract.reader import Reader
from pycore.desk.contract.records import Typed
from pycore.quantity.fault import Fault
from pycore.quantity.measured import Measured
from pycore.recipe.request import SumpState


@dataclass(frozen=True)
class Circuit:
    """A level, and the strength of the hidden coolant where it has one of its own."""

    dipped: Dipped
    strength_pct: float | None = None

    @property
    def drainable_l(self) -> float | None:
        """Litres above the rest that the pump cannot reach; None where no rest is known."""
        pumpable_l = self.dipped.level.pumpable_l
        return None if pumpable_l is None else max(pumpable_l, 0.0)

    def at(self, read_pct: Measured) -> tuple[SumpState, SumpState | None]:
        """The sump at the strength that was read, and what does not show beside it.

        Litres and per cent by volume; None where nothing is hidden.
        """
        sump, hidden_l = SumpState(self.dipped.level.volume_l, read_pct), self.dipped.hidden_l
        if hidden_l is None:
            return sump, None
        if self.strength_pct is not None:
            return sump, SumpState(hidden_l, Measured(self.strength_pct, read_pct.u))
        # The same coolant, so the same error of the reading: the planner adds the two variances,
        # and this share of them makes the mixture just as uncertain as the reading itself.
        seen_l = sump.volume_l.value
        times = math.sqrt(1 + 2 * seen_l / hidden_l.value) if hidden_l.value > 0 else 1.0
        return sump, SumpState(hidden_l, Measured(read_pct.value, read_pct.u * times))


def read_circuit(reader: Reader, dipped: Dipped, typed: Typed | None, path: str) -> Circuit:
    """The circuit of a dip. Error: ``not_for_kind`` for a strength of nothing hidden."""
    if typed is None:
        return Circuit(dipped)
    if dipped.hidden_l is None:
        raise Fault("not_for_kind", path, typed.text)
    return Circuit(dipped, reader.value(typed, "strength_pct", path))
