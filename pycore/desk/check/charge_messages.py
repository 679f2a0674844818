"""What is asked about a new charge, field for field as in ``shared/schema``."""

from __future__ import annotations

from dataclasses import dataclass

from pycore.desk.contract.messages import MachineTyped
from pycore.desk.contract.records import Typed


@dataclass(frozen=True)
class PlanChargeBody:
    """An emptied sump: what the rinse left behind, and its strength."""

    machine: MachineTyped
    left: Typed
    left_strength: Typed
    concentrate_at_hand: Typed | None = None
