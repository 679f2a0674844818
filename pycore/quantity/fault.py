"""The one kind of refusal that every room raises and the desk turns into an error reply."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Any

# What each code says on the command line; the page has its own sentences, by language.
_SENTENCES = {
    "not_json": "the text is not JSON",
    "duplicate_key": "the same field stands there twice",
    "not_finite": "only finite numbers can be used",
    "too_large": "the request is too long",
    "too_deep": "the request is nested too deeply",
    "unknown_version": "this version of the messages is not known",
    "unknown_op": "this operation is not known",
    "missing": "this field is missing",
    "unknown_field": "this field is not known",
    "wrong_type": "the value is of another kind",
    "too_long": "the text or number is too long",
    "too_few": "the list is too short",
    "too_many": "the list is too long",
    "not_allowed": "the value is not one of those allowed",
    "out_of_range": "the number is outside its range",
    "empty": "nothing was typed",
    "not_a_number": "this cannot be read as a number",
    "not_whole": "this is counted in whole numbers",
    "two_separators": "a number has one decimal sign and no thousands sign",
    "thousands": "the sign may part thousands or be a decimal sign; type one of the allowed",
    "missing_unit": "the number needs a unit",
    "ambiguous_unit": "this unit means more than one thing",
    "unknown_unit": "this unit is not known",
    "wrong_dimension": "this unit measures something else",
    "order": "this contradicts another setting",
    "too_uncertain": "what follows is too uncertain to say anything",
    "not_rising": "depth and litres must both rise from row to row",
    "not_for_kind": "this field belongs to another kind of sump",
    "obstacle_too_large": "what stands in the liquid leaves no free surface",
    "pours_contradict": "what was poured and dipped here does not fit the rest",
    "screen_blocked": "the sides of the tank differ at rest; look whether the screen is blocked",
    "mark_above_bucket": "the marks are too wide apart to mix in the bucket",
    "no_factor": "without the fluid's factor a reading is not a strength",
    "not_a_date": "this cannot be read as a date",
    "off_scale": "the reading lies off the instrument's scale; dilute the sample one to one",
    "neat_oil": "water-mixed coolant must not go into a neat-oil machine; ask the supplier",
    "not_a_code": "a code has five letters or digits",
    "code_mismatch": "the code does not fit its check character",
    "wrong_form": "the text does not have the form that is needed",
    "seal_missing": "the line does not end with its hash",
    "seal_broken": "the line is not the one that was stored: its hash does not fit",
    "file_empty": "the file holds no line",
    "file_foreign": "the file is not an export of a log",
    "file_newer": "the file was written by a newer version",
    "internal": "this is a defect of the program",
}
_SIDES = {
    "minimum": "at least",
    "maximum": "at most",
    "above": "above",
    "below": "below",
    "most": "at most",
    "least": "at least",
}


class Fault(ValueError):
    """Something that was asked cannot be answered as it stands.

    Attributes
    ----------
    code : str
        One of the codes in ``shared/schema/contract/common.schema.json``, definition
        ``error_code``.
    path : str
        Where in the request, such as ``body.dip.depth``.
    got : object
        What stood there, JSON-ready; None when nothing did.
    limit : mapping
        What is allowed: minimum, maximum, above, below, unit, allowed, type, most, least.
    """

    def __init__(
        self, code: str, path: str, got: object = None, limit: Mapping[str, Any] | None = None
    ) -> None:
        self.code = code
        self.path = path
        self.got = got
        self.limit: dict[str, Any] = dict(limit or {})
        super().__init__(self.sentence())

    def sentence(self) -> str:
        """One plain English line: the place, the reason, what was got and what is allowed.

        >>> Fault("out_of_range", "dip", 500.0, {"minimum": 0.0, "maximum": 484.0, "unit": "mm"})
        Fault('dip: the number is outside its range; got 500; allowed: at least 0 at most 484 mm')
        """
        parts = [f"{self.path}: {_SENTENCES[self.code]}"]
        if self.got is not None:
            parts.append(f"got {_number(self.got) if _is_number(self.got) else repr(self.got)}")
        if self.limit:
            parts.append(f"allowed: {self._allowed()}")
        return "; ".join(parts)

    def _allowed(self) -> str:
        limit = self.limit
        words = [f"{word} {_number(limit[side])}" for side, word in _SIDES.items() if side in limit]
        words += [str(limit[name]) for name in ("unit", "type") if name in limit]
        return " ".join([*words, ", ".join(limit.get("allowed", []))]).strip()


def _is_number(value: object) -> bool:
    return isinstance(value, int | float) and not isinstance(value, bool)


def _number(value: Any) -> str:
    return f"{value:.6g}"
