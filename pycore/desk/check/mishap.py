"""What went wrong, as it was chosen, to advice, an entry and a state that is offered."""

from __future__ import annotations

from dataclasses import dataclass, field

from pycore.reading.mishap import MISHAPS, advice_about


@dataclass(frozen=True)
class AdviseMishapBody:
    """What happened, and what is known of the machine."""

    mishap: str
    fluid_type: str | None = None
    metals: list[str] = field(default_factory=list)


@dataclass(frozen=True)
class AdviceShown:
    """A row of the table: its code, the part of the page, and who says so."""

    code: str
    part: str
    source: str


@dataclass(frozen=True)
class AdviseMishapResult:
    """The rows in their order; the state that is offered with its reason; the kind of entry."""

    rows: list[AdviceShown]
    state: str
    reason: str
    record: str


def advise_mishap(body: AdviseMishapBody) -> AdviseMishapResult:
    """Advice about a mishap of the table; the contract lets no other one in."""
    mishap = MISHAPS[body.mishap]
    rows = advice_about(body.mishap, body.fluid_type, body.metals)
    return AdviseMishapResult(
        [AdviceShown(row.code, row.part, row.source) for row in rows],
        mishap.state,
        mishap.reason,
        mishap.record,
    )
