"""An invented sump to plan for: 198 L at the full mark, 7 to 9 %, a 10 L pail and a 50 mL jug."""

from pycore.quantity.measured import Measured
from pycore.recipe.marks import Space
from pycore.recipe.request import Bucket, DrawOff, Mixing, PlanRequest, SumpState, Target


def question(
    volume_l: float = 154.0,
    strength_pct: float = 6.0,
    *,
    fill_to_l: float = 198.0,
    strong_pct: float = 20.0,
    weak_pct: float = 1.0,
    bucket: tuple[float, float, float] = (10.0, 1.0, 0.05),
) -> PlanRequest:
    """A question to the planner."""
    return PlanRequest(
        SumpState(Measured(volume_l, 3.0), Measured(strength_pct, 0.3)),
        fill_to_l,
        Target(7.0, 8.0, 9.0),
        Mixing(strong_pct, weak_pct, 0.5),
        Bucket(*bucket),
        DrawOff(allowed=False, mark_l=1.0),
    )


def space(ask: PlanRequest) -> Space:
    """The room of a question, open by at most one bucket mark and one jug mark."""
    room_l = ask.fill_to_l - ask.sump.volume_l.value
    return Space(ask, room_l, room_l - ask.bucket.water_mark_l - ask.bucket.jug_mark_l)
