"""What of a machine's log speaks for a clean-out: by the decision table and the shop's interval."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from pycore.advice.due import Findings, clean_out_reasons, is_clean_out_due
from pycore.desk.check.look import LookLimitsTyped, read_limits
from pycore.desk.contract.reader import Reader
from pycore.desk.log.first_ph import first_ph
from pycore.journal.amend import Standing
from pycore.journal.state import MachineNow
from pycore.journal.times import DAY_S
from pycore.quantity.typed import number_of


@dataclass(frozen=True)
class CleanOutNow:
    """Age of the charge, what speaks for a clean-out, and whether that is enough for one."""

    reasons: list[str]
    due: bool
    every_d: float
    at: str | None = None
    age_d: float | None = None


def _first_ph(machine: MachineNow) -> float | None:
    found = first_ph(machine)
    return None if found is None else number_of(found.get("ph"), "ph")


def clean_out_of(
    machine: MachineNow,
    charge: Sequence[Standing],
    shop: LookLimitsTyped | None,
    every_d: float,
    now_s: int,
) -> CleanOutNow:
    """The age of the charge, and what of its log speaks for a clean-out."""
    limits = read_limits(Reader(), shop)
    ends = [one for one in machine.ordered if one.kind == "clean_out" and one.content["finished"]]
    age_d = (now_s - ends[-1].measured_s) / DAY_S if ends else None
    contents = [entry.content for entry in charge]
    phs = [ph for one in contents if (ph := number_of(one.get("ph"), "ph")) is not None]
    slides = [
        germs
        for one in contents
        if (germs := number_of(one.get("dip_slide", {}).get("germs"), "dip_slide_cfu_ml"))
        is not None
    ]
    smells = [
        (now_s - entry.measured_s) / DAY_S
        for entry in charge
        if "smell" in entry.content.get("look", ())
    ]
    first = _first_ph(machine)
    fall = first - phs[-1] if first is not None and phs else None
    found = Findings(age_d, slides[-1] if slides else None, smells, fall)
    reasons = clean_out_reasons(
        found, every_d, limits.slide_review_cfu_ml, limits.slide_act_cfu_ml, limits.ph_drop_far
    )
    at = ends[-1].measured_at if ends else None
    return CleanOutNow(reasons, is_clean_out_due(reasons), every_d, at, age_d)
