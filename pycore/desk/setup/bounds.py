"""Limits of what follows from typed numbers: litres of a circuit, and how sure they are.

Each typed number has its range, but together they may say more litres than any sump holds, or so
little that the answer would be a guess. Then the field that brings the most is named.
"""

from __future__ import annotations

import math

from pycore.desk.contract.messages import DipTyped
from pycore.desk.contract.reader import placed
from pycore.desk.contract.records import ReadingTyped
from pycore.desk.setup.tank import MOST_L, Tank
from pycore.quantity.fault import Fault
from pycore.quantity.measured import Measured
from pycore.sump.sump import Sump

# A strength that may be off by more than this could be any: no mix is above 100 %.
STRENGTH_U_MOST_PCT = 100.0
# Room for the last digit of a float.
_HAIR = 1e-9


def most_depth_mm(sump: Sump, beside_l: float = 0.0) -> float:
    """The deepest dip with at most MOST_L in the circuit, mm; beside_l counts with the sump."""
    most_l = MOST_L - beside_l
    if sump.rim_volume_l <= most_l:
        return sump.rim_depth_mm
    return sump.depth_from_volume(max(0.0, most_l), "full_depth")


def refuse_too_many_litres(
    tank: Tank, depth_mm: float, circuit_l: float, path: str, unit: str
) -> None:
    """Error: ``out_of_range`` at the dip, where more than MOST_L would be in the circuit."""
    if circuit_l <= MOST_L * (1 + _HAIR):
        return
    beside_l = circuit_l - tank.sump.volume_from_depth(depth_mm, path)
    limit = {"minimum": 0.0, "maximum": most_depth_mm(tank.sump, beside_l), "unit": "mm"}
    fault = Fault("out_of_range", path, depth_mm, limit)
    raise placed(tank.stick.as_shown(fault, path), path, unit)


def refuse_unsure_litres(
    tank: Tank, volume: Measured, beside: Measured, dip: DipTyped, paths: tuple[str, str]
) -> None:
    """Error: ``too_uncertain``, in litres, where they could be off by more than there is and more
    than sump and pipes hold: at the hidden litres or at the dip, at its own u if one was typed.

    ``volume`` is what the dip says, ``beside`` what counts beside it, both in litres; ``paths``
    are those of the dip and of the sump.
    """
    hidden_l = tank.hidden.volume_l.value if tank.hidden is not None else 0.0
    most_l = max(tank.sump.full_volume_l + hidden_l, volume.value + beside.value)
    u_l = math.hypot(volume.u, beside.u)
    if u_l <= most_l:
        return
    dip_path, sump_path = paths
    held_u_l = tank.hidden.volume_l.u if tank.hidden is not None else 0.0
    path = f"{dip_path}.u" if dip.u is not None else f"{dip_path}.depth"
    # Where the pipes have drained into the sump, or out of it, their share is in ``volume``.
    if held_u_l > u_l / math.sqrt(2):
        path = f"{sump_path}.hidden.u"
    raise Fault("too_uncertain", path, u_l, {"maximum": most_l, "unit": "L"})


def refuse_unsure_strength(strength_pct: Measured, reading: ReadingTyped, path: str) -> None:
    """Error: ``too_uncertain`` at the reading, at its own u where one was typed, in per cent."""
    if strength_pct.u <= STRENGTH_U_MOST_PCT:
        return
    place = f"{path}.u" if reading.u is not None else f"{path}.shows"
    limit = {"maximum": STRENGTH_U_MOST_PCT, "unit": "%"}
    raise Fault("too_uncertain", place, strength_pct.u, limit)
