"""A fluid's factor as typed: multiplied, divided or from a printed chart, never guessed."""

from __future__ import annotations

from pycore.desk.contract.reader import Reader
from pycore.desk.contract.records import FluidTyped, Typed
from pycore.quantity.dates import moment_from
from pycore.quantity.fault import Fault
from pycore.quantity.measured import Measured
from pycore.quantity.rounding import tidy
from pycore.reading.factor import (
    FACTOR_USUAL,
    MOVED_SHARE,
    UNUSUAL_U_SHARE,
    Factor,
    factor_from_chart,
    factor_from_divisor,
    has_moved,
    is_bent,
    slopes_of,
)
from pycore.reading.strength import FACTOR_U_SHARE


def _u_share(reader: Reader, fluid: FluidTyped, number: float, path: str) -> float:
    """Relative standard uncertainty: the factor's own, else by where it is from."""
    if fluid.factor_u is None:
        return FACTOR_U_SHARE[fluid.factor_known_by or "sheet"]
    read = reader.read(fluid.factor_u, "factor_u", f"{path}.factor_u")
    share = read.value / number
    if share > UNUSUAL_U_SHARE:
        usual = (0.0, UNUSUAL_U_SHARE * number)
        reader.doubt("unusual", f"{path}.factor_u", read.shown, usual)
    return share


def _from_chart(reader: Reader, fluid: FluidTyped, path: str) -> Factor:
    place = f"{path}.factor_chart"
    pairs = []
    for i, pair in enumerate(fluid.factor_chart or []):
        brix = reader.value(pair.reading, "reading_brix", f"{place}[{i}].reading")
        pairs.append((brix, reader.value(pair.strength, "chart_pct", f"{place}[{i}].strength")))
    share = FACTOR_U_SHARE[fluid.factor_known_by or "sheet"]
    factor = factor_from_chart(pairs, share, place)
    if is_bent(factor):
        slopes = slopes_of(factor)
        middle = sorted(slopes)[len(slopes) // 2]
        odd = max(slopes, key=lambda slope: abs(slope - middle))
        usual = (middle / (1 + MOVED_SHARE), middle * (1 + MOVED_SHARE))
        at = f"{place}[{slopes.index(odd) + len(pairs) - len(slopes)}].reading"
        reader.doubt("chart_bent", at, tidy(odd, "1"), usual)
    return factor


def read_factor(reader: Reader, fluid: FluidTyped, path: str) -> Factor | None:
    """The fluid's factor with its standard uncertainty, or None when it is not known.

    Errors: those of ``read_typed`` and ``factor_from_chart``; ``order`` for a factor beside a
    chart, or for what belongs to a factor where there is none.
    """
    if fluid.factor_on is not None:
        moment_from(fluid.factor_on, f"{path}.factor_on")
    if fluid.factor is None:
        for name in ("factor_direction", "factor_u", "factor_offset"):
            if getattr(fluid, name) is not None:
                raise Fault("order", f"{path}.{name}", None, {"allowed": ["with a factor"]})
        return _from_chart(reader, fluid, path) if fluid.factor_chart else None
    if fluid.factor_chart:
        one = {"allowed": ["a factor or a chart"]}
        raise Fault("order", f"{path}.factor_chart", fluid.factor.text, one)
    divides = fluid.factor_direction == "divide"
    number = reader.value(fluid.factor, "factor_divide" if divides else "factor", f"{path}.factor")
    factor = factor_from_divisor(number) if divides else number
    share = _u_share(reader, fluid, number, path)
    offset_brix = 0.0
    if fluid.factor_offset is not None:
        offset_brix = reader.value(fluid.factor_offset, "offset_brix", f"{path}.factor_offset")
    return Factor(Measured(factor, factor * share), offset_brix)


def ask_about_factor(
    reader: Reader, factor: float, fluid_type: str | None, last: Typed | None, path: str
) -> None:
    """Doubts about a factor that is unusual for its type of fluid or has moved by a tenth.

    ``path`` is the factor's own; the last one stands at ``body.last_factor``.
    """
    shown = tidy(factor, "1")
    low, high = FACTOR_USUAL.get(fluid_type or "", (0.0, 8.0))
    asked = any(doubt.path == path and doubt.code == "unusual" for doubt in reader.doubts)
    if not low <= factor <= high and not asked:
        reader.doubt("unusual", path, shown, (low, high))
    if last is not None:
        known = reader.value(last, "factor", "body.last_factor")
        if has_moved(factor, known):
            usual = (known * (1 - MOVED_SHARE), known * (1 + MOVED_SHARE))
            reader.doubt("factor_moved", path, shown, usual)


def ask_about_inside(reader: Reader, factor: float, inside: float | None, path: str) -> None:
    """A doubt where the factor inside an instrument is not the fluid's own.

    More than a hundredth apart is not rounding on a display any more.
    """
    if inside is not None and abs(inside / factor - 1) > 0.01:
        usual = (factor * 0.99, factor * 1.01)
        reader.doubt("factor_inside_differs", path, tidy(inside, "1"), usual)
