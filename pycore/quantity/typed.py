"""Reading what a person typed, strictly: listed forms or a refusal, never a guess."""

from __future__ import annotations

import re
from collections.abc import Mapping
from dataclasses import dataclass
from fractions import Fraction
from typing import Any

from pycore.quantity.fault import Fault
from pycore.quantity.known import KNOWN, Known
from pycore.quantity.rounding import Shown, as_read
from pycore.quantity.units import UNITS, Unit, from_base, names_of, to_base, unit_named

FORMS = ["70", "70.5", "70,5", "2 3/4", "2-3/4", "342 mm"]

# ASCII digits only: \d would let the digits of other scripts through.
_NUMBER = re.compile(
    r"(?P<sign>[-−])?"
    r"(?:(?:(?P<whole>[0-9]{1,9})(?: |-))?(?P<top>[0-9]{1,3})/(?P<bottom>[0-9]{1,2})"
    r"|(?P<decimal>[0-9]{1,9}(?:[.,][0-9]{1,9})?))"
)
# One sign with three digits behind it: 1.2 in one country, twelve hundred in another.
_PARTED = re.compile(r"[-−]?[1-9][0-9]{0,2}[.,][0-9]{3}")
_NEVER_THOUSANDTHS = {"mm", "mL"}
_UNIT_START = re.compile(r"[^\W\d_]|[\"'″′%°]")
_RULE_DENOMINATORS = {2, 4, 8, 16, 32, 64}
# Dimensions whose units are all in use side by side, so that none can be taken for granted.
_ASK_UNIT = {"length", "volume", "temperature", "mass", "hardness", "density"}
_SPACES = str.maketrans({"\u00a0": " ", "\u202f": " ", "\u2009": " "})


@dataclass(frozen=True)
class Reading:
    """A typed number: its value in the quantity's own unit, and the number and unit as read.

    decimals is how many were typed, None when it was a fraction of a rule.
    """

    quantity: str
    value: float
    number: Fraction
    decimals: int | None
    unit: Unit
    path: str

    @property
    def shown(self) -> Shown:
        """The number shown back just as it was read, in the unit that was meant."""
        return as_read(self.number, self.unit.name, self.decimals)

    @property
    def is_unusual(self) -> bool:
        """Whether the value lies outside the usual range, where the page asks once."""
        known = KNOWN[self.quantity]
        low, high = known.usual_low, known.usual_high
        return low is not None and high is not None and not low <= self.value <= high


def _split(text: str, path: str) -> tuple[str, str]:
    clean = text.translate(_SPACES).strip(" ")
    if not clean:
        raise Fault("empty", path, text, {"allowed": FORMS})
    found = _UNIT_START.search(clean)
    # "1e3", "0x10" and "nan" are mistyped numbers, not numbers with an unknown unit.
    if found is None or found.start() == 0 or re.search(r"\d", clean[found.start() :]):
        return clean, ""
    return clean[: found.start()].rstrip(" "), clean[found.start() :]


def number_from(text: str, path: str) -> Fraction:
    """The exact number in a text without a unit.

    Allowed: whole numbers, one decimal sign (point or comma) with a digit on both sides, a whole
    number with a fraction of a rule (halves to sixty-fourths) after a space or a hyphen, a minus
    sign in front. Errors: ``two_separators``, ``not_a_number``, each with what is allowed.

    >>> number_from("13 7/16", "depth")
    Fraction(215, 16)
    >>> number_from("70,5", "depth")
    Fraction(141, 2)
    """
    found = _NUMBER.fullmatch(text)
    if found is None:
        many = re.fullmatch(r"[-−]?(?:[0-9]*[.,]){2}[0-9.,]*", text)
        raise Fault("two_separators" if many else "not_a_number", path, text, {"allowed": FORMS})
    if found["decimal"] is not None:
        number = Fraction(found["decimal"].replace(",", "."))
    else:
        top, bottom = int(found["top"]), int(found["bottom"])
        if bottom not in _RULE_DENOMINATORS or top >= bottom:
            raise Fault("not_a_number", path, text, {"allowed": FORMS})
        number = Fraction(found["whole"] or 0) + Fraction(top, bottom)
    return -number if found["sign"] else number


def _within(known: Known, value: float) -> bool:
    return (
        (known.minimum is None or value >= known.minimum)
        and (known.maximum is None or value <= known.maximum)
        and (known.above is None or value > known.above)
        and (known.below is None or value < known.below)
    )


def _may_be_parted(text: str, number: Fraction, unit: Unit, known: Known) -> bool:
    """Whether the sign can have been meant to part thousands.

    Not where the quantity is never so large; but nobody reads a thousandth of a millimetre or of a
    millilitre, so there it is never taken for a decimal sign.
    """
    if _PARTED.fullmatch(text) is None:
        return False
    return unit.name in _NEVER_THOUSANDTHS or _within(known, float(to_base(number * 1000, unit)))


def _plain(number: Fraction) -> str:
    """A number of three decimals at most, without idle zeros."""
    return f"{float(number):.3f}".rstrip("0").rstrip(".")


def _limit(known: Known, unit: Unit) -> dict[str, object]:
    bounds = {
        "minimum": known.minimum,
        "maximum": known.maximum,
        "above": known.above,
        "below": known.below,
    }
    shown = {side: from_base(b, unit) for side, b in bounds.items() if b is not None}
    return {**shown, "unit": unit.name}


def read_typed(text: str, unit: str | None, quantity: str, path: str) -> Reading:
    """Reads a typed number of a known quantity into that quantity's own unit.

    Parameters
    ----------
    text : str
        What was typed, at most 40 characters, such as ``"2 3/4"`` or ``"342 mm"``.
    unit : str or None
        Name of the unit that stood beside the field; a unit in the text wins over it.
    quantity : str
        A typed name of ``shared/quantities.json``; its range is the valid range.
    path : str
        Where it stood in the request, for the error.

    A comma and a point are both decimal signs, so that a stored text means the same in every
    language. Where the sign could part thousands as well (``1,200`` of a quantity that may be 1.2
    and 1200), it is refused as ``thousands`` with both numbers as they can be typed.

    Errors: ``empty``, ``not_a_number``, ``two_separators``, ``thousands``, ``missing_unit``,
    ``ambiguous_unit``, ``unknown_unit``, ``wrong_dimension``, ``out_of_range`` (limits in the
    unit that was typed). ``KeyError`` for a quantity that is not known.

    >>> read_typed("2 3/4", "in", "depth_mm", "dip").value
    69.85
    """
    known = KNOWN[quantity]
    dimension = UNITS[known.unit].dimension
    number_text, spelling = _split(text, path)
    meant = unit_named(spelling, dimension, path) if spelling else UNITS.get(unit or known.unit)
    if not spelling and unit is None and dimension in _ASK_UNIT:
        raise Fault("missing_unit", path, text, {"allowed": names_of(dimension)})
    if meant is None:
        raise Fault("unknown_unit", path, unit, {"allowed": names_of(dimension)})
    if meant.dimension != dimension:
        raise Fault("wrong_dimension", path, meant.name, {"allowed": names_of(dimension)})
    number = number_from(number_text, path)
    if _may_be_parted(number_text, number, meant, known):
        both = [_plain(number), _plain(number * 1000)]
        raise Fault("thousands", path, text, {"allowed": both, "unit": meant.name})
    value = float(to_base(number, meant))
    if not _within(known, value):
        raise Fault("out_of_range", path, text, _limit(known, meant))
    decimals = None if "/" in number_text else len(re.split("[.,]", number_text + ".")[1])
    return Reading(quantity, value, number, decimals, meant, path)


def number_of(typed: Mapping[str, Any] | None, quantity: str) -> float | None:
    """A typed number of an entry in the quantity's own unit, ``{"text": "2", "unit": "in"}``.

    None where it is absent or cannot be read, never a guess. ``KeyError`` as for ``read_typed``.

    >>> number_of({"text": "2", "unit": "in"}, "depth_mm"), number_of(None, "depth_mm")
    (50.8, None)
    """
    if typed is None:
        return None
    try:
        return read_typed(typed["text"], typed.get("unit"), quantity, quantity).value
    except Fault:
        return None
