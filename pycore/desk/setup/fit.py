"""The operation fit_factor: a person's own jugs to a factor that can be kept."""

from __future__ import annotations

from pycore.desk.contract.answers import FitFactorResult, FittedJug, Interval, Keep
from pycore.desk.contract.reader import Reader
from pycore.desk.contract.records import FitFactorBody, JugTyped, Typed
from pycore.desk.setup.factor import ask_about_factor, ask_about_inside
from pycore.desk.setup.instrument import Glass, how_read, read_glass
from pycore.quantity.dates import moment_from
from pycore.quantity.fault import Fault
from pycore.quantity.measured import Measured
from pycore.quantity.rounding import Shown, decimals_for, half_up, shown
from pycore.reading.averaging import mean_reading
from pycore.reading.factor import EXAMPLE_PCT, Factor
from pycore.reading.jugs import (
    LEAST_SPAN_PCT,
    STANDS_OUT_K,
    VESSEL_U_SHARE,
    FittedFactor,
    Jug,
    fit_factor,
    jug_of,
)
from pycore.reading.strength import READING_U_BRIX, STRENGTH_BELOW_PCT

# A zero is set on the sharp line of water, twice as well as a line is read: common practice, no
# source.
_ZERO_SHARE = 0.5


def _jug(
    reader: Reader, typed: JugTyped, glass: Glass, u_brix: float, amount_share: float, path: str
) -> tuple[Jug, Shown]:
    water_l = reader.value(typed.water, "jug_amount_l", f"{path}.water")
    concentrate_l = reader.value(typed.concentrate, "jug_amount_l", f"{path}.concentrate")
    if water_l + concentrate_l <= 0:
        raise Fault("out_of_range", f"{path}.water", water_l, {"above": 0.0, "unit": "L"})
    strength = jug_of(water_l, concentrate_l, amount_share)
    if strength.value >= STRENGTH_BELOW_PCT:
        # Thicker than any coolant, and often a paste: no refractometer reads it well.
        limit = {"below": STRENGTH_BELOW_PCT, "unit": "%"}
        raise Fault("out_of_range", f"{path}.concentrate", strength.value, limit)
    read, brix = glass.read(reader, typed.shows, f"{path}.shows")
    mean = mean_reading([brix], u_brix, glass.instrument.resolution_brix).brix
    return Jug(strength, Measured(mean.value - glass.zero_brix, mean.u)), read.shown


def _doubts(reader: Reader, found: FittedFactor, jugs: list[Jug], glass: Glass) -> None:
    """What to look at again: a jug that stands out, jugs that scatter, jugs too much alike."""
    for i in found.stands_out:
        off, score = found.off_brix[i], found.scores[i]
        # The reading that the other jugs lead to, give or take what a good jug may be off.
        room = abs(off / score) * STANDS_OUT_K
        at_brix = jugs[i].reading_brix.value + glass.zero_brix
        usual = (at_brix - off - room, at_brix - off + room)
        reader.doubt("jug_stands_out", f"body.jugs[{i}].shows", shown(at_brix, "Brix", 1), usual)
    if found.scatters and not found.stands_out:
        worst = max(range(len(jugs)), key=lambda i: abs(found.scores[i]))
        off_brix = abs(found.off_brix[worst])
        usual = (0.0, off_brix / abs(found.scores[worst]))
        reader.doubt("jugs_scatter", "body.jugs", shown(off_brix, "Brix", 2), usual)
    if found.span_pct < LEAST_SPAN_PCT:
        usual = (LEAST_SPAN_PCT, STRENGTH_BELOW_PCT)
        reader.doubt("range_small", "body.jugs", shown(found.span_pct, "%", 1), usual)


def _fitted_jugs(found: FittedFactor, jugs: list[Jug]) -> list[FittedJug]:
    return [
        FittedJug(
            jug.strength_pct,
            jug.reading_brix,
            off,
            score,
            {
                "strength": shown(jug.strength_pct.value, "%", 2),
                "reading": shown(jug.reading_brix.value, "Brix", 2),
                "expected": shown(jug.reading_brix.value - off, "Brix", 2),
                "off": shown(off, "Brix", 2),
            },
        )
        for jug, off, score in zip(jugs, found.off_brix, found.scores, strict=True)
    ]


def _typed(number: float, decimals: int, unit: str) -> Typed:
    return Typed(f"{half_up(number, decimals):.{decimals}f}", unit)


def _kept(found: FittedFactor, on: str, decimals: int) -> Keep:
    """The fields of the fluid's record; one digit more than is shown, so that nothing is lost."""
    offset = found.offset_brix
    return Keep(
        factor=_typed(found.factor.value, decimals + 1, "1"),
        factor_u=_typed(found.factor.u, decimals + 1, "1"),
        factor_known_by="own_jugs",
        factor_on=on,
        factor_offset=_typed(offset.value, 2, "Brix") if offset else None,
    )


def answer_fit_factor(body: FitFactorBody) -> FitFactorResult:
    """The factor of two to five known jugs, with what to keep and what to doubt.

    Errors: those of ``read_typed``, ``read_glass`` and ``fit_factor``; ``not_a_date``.
    """
    reader = Reader()
    moment_from(body.on, "body.on")
    glass = read_glass(reader, body.instrument, None, "body")
    amount_share, vessel_share = VESSEL_U_SHARE[body.measured_with]
    u_brix = READING_U_BRIX[how_read(body.how, glass)]
    jugs = [
        _jug(reader, typed, glass, u_brix, amount_share, f"body.jugs[{i}]")[0]
        for i, typed in enumerate(body.jugs)
    ]
    zero_u_brix = _ZERO_SHARE * READING_U_BRIX[how_read(None, glass)]
    try:
        found = fit_factor(jugs, vessel_share, zero_u_brix)
    except Fault as fault:
        raise Fault(fault.code, f"body.{fault.path}", fault.got, fault.limit) from None
    _doubts(reader, found, jugs, glass)
    factor = found.factor
    ask_about_factor(reader, factor.value, body.fluid_type, body.last_factor, "body.jugs")
    ask_about_inside(
        reader, factor.value, glass.instrument.factor_inside, f"{glass.path}.factor_inside"
    )
    decimals = max(2, decimals_for(factor.u, 1))
    offset = found.offset_brix
    ends = Interval(factor.value * found.low_share, factor.value * found.high_share)
    reads_brix = Factor(factor, offset.value if offset else 0.0).reads_brix(EXAMPLE_PCT)
    said = {
        "factor": shown(factor.value, "1", decimals),
        "low": shown(ends.low, "1", decimals),
        "high": shown(ends.high, "1", decimals),
        "five_reads": glass.said(reads_brix + glass.zero_brix, "body.jugs"),
    }
    if offset:
        said["offset"] = shown(offset.value, "Brix", 2)
    return FitFactorResult(
        on=body.on,
        model="with_offset" if offset else "through_zero",
        factor=factor,
        interval=ends,
        jugs=_fitted_jugs(found, jugs),
        keep=_kept(found, body.on, decimals),
        shown=said,
        doubts=reader.doubts,
        offset_brix=offset,
    )
