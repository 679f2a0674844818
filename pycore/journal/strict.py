"""JSON text that comes from outside, read strictly: what is doubtful is refused."""

from __future__ import annotations

import json
import re
from collections import Counter
from collections.abc import Callable
from typing import Any

from pycore.quantity.fault import Fault

# Python parses longer numbers slowly, and no float needs them: 25 signs are the most that a program
# writes, with sign, point and exponent.
MOST_SIGNS = 31
# Twice the longest number that a person may type.
_LONGEST_GOT = 80

# Strings are skipped, so that brackets and digits inside them do not count. One that never ends is
# skipped too. Possessive: giving signs back would take hours, and memory for each of them.
_STRING = re.compile(r'"(?:[^"\\]++|\\.)*+(?:"|\\?\Z)', re.DOTALL)
_BRACKET = re.compile(r"[\[\]{}]")
_LONG_NUMBER = re.compile(rf"[0-9.eE+-]{{{MOST_SIGNS + 1},}}")
_SURROGATE = re.compile("[\ud800-\udfff]")
_SURROGATE_WRITTEN = re.compile(r"[\ud800-\udfff]|\\u[dD][89a-fA-F]")


def short(value: Any) -> Any:
    """What stood there, fit for an error: long texts and whole objects only by their size.

    Half of a surrogate pair, which no file or pipe can hold, becomes its escape.
    """
    if isinstance(value, str):
        said = value.encode(errors="backslashreplace").decode()
        return said if len(said) <= _LONGEST_GOT else said[:_LONGEST_GOT] + "…"
    if isinstance(value, dict):
        return f"an object with {len(value)} fields"
    if isinstance(value, list):
        return f"a list of {len(value)}"
    return value


def _depth(bare: str) -> int:
    deepest = depth = 0
    for sign in _BRACKET.findall(bare):
        if sign in "[{":
            depth += 1
            deepest = max(deepest, depth)
        else:
            depth -= 1
    return deepest


def _hooks(path: str, refused_keys: frozenset[str]) -> dict[str, Callable[[Any], Any]]:
    def refuse_constant(name: str) -> float:
        raise Fault("not_finite", path, name, {"type": "a finite number"})

    def finite(text: str) -> float:
        number = float(text)
        if number in (float("inf"), float("-inf")):
            raise Fault("not_finite", path, text, {"type": "a finite number"})
        return number

    def once(pairs: list[tuple[str, Any]]) -> dict[str, Any]:
        message = dict(pairs)
        if len(message) < len(pairs):
            counts = Counter(name for name, _ in pairs)
            raise Fault("duplicate_key", path, short(counts.most_common()[0][0]))
        if not refused_keys.isdisjoint(message):
            raise Fault("unknown_field", path, min(refused_keys & message.keys()))
        return message

    return {"parse_constant": refuse_constant, "parse_float": finite, "object_pairs_hook": once}


def parsed_object(
    text: str, path: str, most_depth: int, refused_keys: frozenset[str] = frozenset()
) -> dict[str, Any]:
    """The JSON object in a text.

    Parameters
    ----------
    text : str
        JSON; its length has been checked by the caller.
    path : str
        What the text is called in a refusal.
    most_depth : int
        Levels of brackets that are allowed.
    refused_keys : frozenset of str
        Names that no object in it may have.

    Errors: ``too_deep``; ``too_long`` for a number of more than 31 signs; ``not_finite``;
    ``duplicate_key``; ``unknown_field`` for a refused name; ``not_json``, also for half of a
    surrogate pair; ``wrong_type`` for JSON that is not an object.

    >>> parsed_object('{"a": [1, 2]}', "request", 4)
    {'a': [1, 2]}
    """
    bare = _STRING.sub("", text)
    if _depth(bare) > most_depth:
        raise Fault("too_deep", path, None, {"most": most_depth})
    if _LONG_NUMBER.search(bare):
        raise Fault("too_long", path, None, {"most": MOST_SIGNS})
    try:
        message = json.loads(text, **_hooks(path, refused_keys))  # type: ignore[arg-type]
    except json.JSONDecodeError as error:
        raise Fault("not_json", path, f"character {error.pos}") from None
    if not isinstance(message, dict):
        raise Fault("wrong_type", path, short(message), {"type": "object"})
    if _SURROGATE_WRITTEN.search(text) and _SURROGATE.search(
        json.dumps(message, ensure_ascii=False)
    ):
        raise Fault("not_json", path, "half of a surrogate pair")
    return message
