"""One number of a person beside the right one: right, near enough, a slip that has a name."""

from __future__ import annotations

from dataclasses import dataclass

from pycore.practice.figures import Figures

# Room for the last digit of a float where a difference equals what is allowed.
_HAIR = 1e-9


@dataclass(frozen=True)
class Judged:
    """The verdict on one number: right, near, follows or off, and the slip that explains it.

    follows: right from the person's own earlier numbers; own is then what they lead to.
    """

    verdict: str
    slip: str | None = None
    own: float | None = None


def _is_near(number: float, other: float | None, allowed: float) -> bool:
    return other is not None and abs(number - other) <= allowed + _HAIR


def slip_of(number: float, slips: dict[str, float], right: float, allowed: float) -> str | None:
    """The slip that gives this number most nearly; one that cannot be told from right is none."""
    fits = {
        code: abs(number - value)
        for code, value in slips.items()
        if _is_near(number, value, allowed) and not _is_near(value, right, allowed)
    }
    return min(fits, key=lambda code: fits[code]) if fits else None


def judge(
    step: str, number: float, true: Figures, own: Figures, allowed: float, last_digit: float
) -> Judged:
    """A person's number at a step, beside the right one and beside their own earlier numbers.

    allowed is what the tools themselves cannot tell apart, last_digit the last digit that the
    right number is shown with, both in the step's unit.
    """
    right, theirs = true.at(step), own.at(step)
    if right is None or _is_near(number, right, last_digit / 2):
        return Judged("right")
    if _is_near(number, right, allowed):
        return Judged("near")
    if _is_near(number, theirs, allowed):
        return Judged("follows", own=theirs)
    for figures in (true, own):
        reference = figures.at(step)
        slip = slip_of(
            number, figures.slips(step), right if reference is None else reference, allowed
        )
        if slip is not None:
            return Judged("off", slip)
    return Judged("off")
