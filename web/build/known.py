"""Writes ``pycore/quantity/known.py`` from the quantities in ``shared/quantities.json``."""

from typing import Any

LIMITS = ("minimum", "maximum", "above", "below", "usual_low", "usual_high")
LONGEST_LINE = 100

HEAD = '''"""Generated from shared/quantities.json by `python3 -m web contract`. Do not edit."""

from collections.abc import Mapping
from dataclasses import dataclass
from types import MappingProxyType


@dataclass(frozen=True)
class Known:
    """Unit and range of one quantity, in that unit; None where a side is open."""

    unit: str
    typed: bool
    minimum: float | None = None
    maximum: float | None = None
    above: float | None = None
    below: float | None = None
    usual_low: float | None = None
    usual_high: float | None = None


KNOWN: Mapping[str, Known] = MappingProxyType(
    {
'''
FOOT = "    }\n)\n"


def known_module(quantities: dict[str, dict[str, Any]]) -> str:
    """The text of the module, laid out as the formatter would."""
    return HEAD + "".join(_row(name, fields) for name, fields in quantities.items()) + FOOT


def _row(name: str, fields: dict[str, Any]) -> str:
    given = [f'unit="{fields["unit"]}"', f"typed={bool(fields['typed'])}"]
    given += [f"{limit}={fields[limit]!r}" for limit in LIMITS if limit in fields]
    start = f'        "{name}": Known('
    line = f"{start}{', '.join(given)}),\n"
    if len(line) <= LONGEST_LINE + 1:
        return line
    inner = f"            {', '.join(given)}\n"
    if len(inner) <= LONGEST_LINE + 1:
        return f"{start}\n{inner}        ),\n"
    return f"{start}\n" + "".join(f"            {item},\n" for item in given) + "        ),\n"
