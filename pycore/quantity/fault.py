"""The one kind of refusal that every room raises and the desk turns into an error reply."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Any


class Fault(ValueError):
    """Something that was asked cannot be answered as it stands.

    Attributes
    ----------
    code : str
        One of the codes in ``shared/schema/common.schema.json``, definition ``error_code``.
    path : str
        Where in the request, such as ``body.dip.depth``; empty when nothing finer is known.
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
        """One plain English line that names the place, what was got and what is allowed."""
        got = "nothing" if self.got is None else repr(self.got)
        allowed = ", ".join(_phrase(side, bound) for side, bound in self.limit.items())
        return f"{self.code} at {self.path or 'request'}: got {got}" + (
            f"; allowed: {allowed}" if allowed else ""
        )


def _phrase(side: str, bound: object) -> str:
    if isinstance(bound, list):
        return ", ".join(str(entry) for entry in bound)
    if isinstance(bound, float):
        return f"{side} {bound:.6g}"
    return f"{side} {bound}"
