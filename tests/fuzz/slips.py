"""Requests that went wrong somewhere: an example with one slip or more in it."""

import json
from collections.abc import Iterator
from typing import Any

from hypothesis import strategies as st

from pycore.quantity.known import KNOWN
from tests.fuzz.seeds import examples, pool, written

# What fingers, other programs and other countries type: edges, other forms, other signs.
TYPED = [
    "0", "1", "-1", "0.001", "0.0001", "1000000", "99999999999", "0.1", "5", "7.5", "12", "100",
    "99.99", "3 1/2", "1/64", "1/0", "0/1", "1,200", "1.200", "1e3", "0x10", "1_000", "", " ",
    "\u22125", "½", "\u0663", "NaN", "inf", "0.30000000000000004", "6,5", "6.5.", ".5", "5.",
    "0" * 40, "9" * 23, "1" * 30, "200", "440", "439.999", "440.001", "2000", "50", "20", "0.5",
]  # fmt: skip
UNITS = [
    "mm", "cm", "in", "L", "mL", "US gal", "imp gal", "US qt", "US fl oz", "%", "Brix", "1", "°C",
    "°F", "mg/L", "°dH", "°fH", "gpg", "mmol/L", "kg/L", "d", "h", "min", "kg", "lb", "", "gal",
]  # fmt: skip
MOMENTS = [
    "2026-11-25", "2026-11-25T12:00:00+01:00", "0001-01-01T00:00:00+14:00", "2026-02-29",
    "9999-12-31T23:59:59-14:00", "2026-11-25T12:00", "1970-01-01T00:00:00Z", "2026-13-01",
]  # fmt: skip
# The ends of what may be typed, each in its own unit: what follows from them has limits too.
ENDS = sorted(
    {
        (f"{end:.15g}", known.unit)
        for known in KNOWN.values()
        for end in (known.minimum, known.above, known.maximum, known.below)
        if known.typed and end is not None
    }
)
ODD = [None, True, False, 0, -1, 1, 2.5, 1e308, -0.0, 10**30, "", "x", "\u202e", "\x00", [], {}]
CUTS = ["", "\x00", "{", "}", '"', ",", "\\", "\n", "\r\n", "\ufeff", "\ud800", "9" * 50, "[" * 30]

SLIPS = ["replace"] * 7 + ["leave out", "add", "again"]


def _is_typed(part: Any) -> bool:
    return isinstance(part, dict) and "text" in part and set(part) <= {"text", "unit"}


def _leaves(part: Any, path: tuple[Any, ...] = ()) -> Iterator[tuple[Any, ...]]:
    """Where values stand; what was typed is one of them, with its unit."""
    if isinstance(part, dict | list) and part and not _is_typed(part):
        for step in part if isinstance(part, dict) else range(len(part)):
            yield from _leaves(part[step], (*path, step))
    else:
        yield path


def _steps(draw: st.DrawFn, part: Any) -> tuple[Any, ...]:
    """A value most of the time, else anything that holds values."""
    path: tuple[Any, ...] = draw(st.sampled_from(list(_leaves(part))))
    return path if draw(st.integers(0, 3)) else path[: draw(st.integers(0, len(path)))]


def _at(part: Any, path: tuple[Any, ...]) -> Any:
    for step in path:
        part = part[step]
    return part


def _with(part: Any, path: tuple[Any, ...], value: Any) -> Any:
    if not path:
        return value
    fresh = dict(part) if isinstance(part, dict) else list(part)
    fresh[path[0]] = _with(part[path[0]], path[1:], value)
    return fresh


def _name(path: tuple[Any, ...]) -> str:
    return next((step for step in reversed(path) if isinstance(step, str)), "")


def _replaced(draw: st.DrawFn, part: Any, name: str) -> Any:
    """Another value where ``part`` stands: one of the same name, a typed form, or anything."""
    same = pool().get(name, [])
    likely = TYPED if name == "text" else UNITS if name == "unit" else MOMENTS
    if _is_typed(part) and draw(st.integers(0, 3)) == 0:
        ends = [end for end in ENDS if end[1] == part.get("unit")] or ENDS
        return dict(zip(("text", "unit"), draw(st.sampled_from(ends)), strict=True))
    if _is_typed(part) and draw(st.integers(0, 3)):
        return {**part, "text": draw(st.sampled_from(TYPED))}
    if _is_typed(part) and draw(st.booleans()):
        return {**part, "unit": draw(st.sampled_from(UNITS))}
    if isinstance(part, str) and name in ("text", "unit", "now", "today", "wall", "measured_at"):
        return draw(st.sampled_from([*likely, *same]))
    return draw(st.sampled_from(same if same and draw(st.integers(0, 9)) else ODD))


def _slip(draw: st.DrawFn, request: Any) -> Any:
    is_whole = isinstance(request, dict) and "body" in request
    start = ("body",) if is_whole and draw(st.integers(0, 19)) else ()
    path = (*start, *_steps(draw, _at(request, start)))
    part = _at(request, path)
    kind = draw(st.sampled_from(SLIPS))
    if kind == "leave out" and path:
        around = _at(request, path[:-1])
        if isinstance(around, dict):
            rest: Any = {name: value for name, value in around.items() if name != path[-1]}
        else:
            rest = [value for i, value in enumerate(around) if i != path[-1]]
        return _with(request, path[:-1], rest)
    if kind == "add" and isinstance(part, dict):
        like = [other for other in pool().get(_name(path), []) if isinstance(other, dict)]
        more = draw(st.sampled_from(like)) if like else {draw(st.sampled_from(sorted(pool()))): 1}
        return _with(request, path, {**part, **more})
    if kind == "again" and isinstance(part, list) and part:
        again = draw(st.sampled_from(part))
        return _with(request, path, [*part, *[again] * draw(st.sampled_from([1, 2, 40]))])
    return _with(request, path, _replaced(draw, part, _name(path)))


@st.composite
def requests(draw: st.DrawFn) -> str:
    """A request as text, most of them whole JSON and close to what the app sends."""
    request = draw(st.sampled_from(examples()))
    for _ in range(draw(st.sampled_from([1, 1, 1, 2, 2, 3, 5]))):
        request = _slip(draw, request)
    sent = written(request, chained=draw(st.integers(0, 4)) > 0)
    text = json.dumps(sent, ensure_ascii=False)
    if draw(st.integers(0, 19)) == 0:
        at = draw(st.integers(0, len(text)))
        text = text[:at] + draw(st.sampled_from(CUTS)) + text[at + draw(st.integers(0, 9)) :]
    return text


@st.composite
def files(draw: st.DrawFn) -> str:
    """A request that takes in a file of which letters, lines or the end are damaged."""
    with_file = [one for one in examples() if one["op"] in ("read_export", "merge_logs")]
    request = written(draw(st.sampled_from(with_file)), chained=True)
    holders = [request["body"], *request["body"].get("files", [])]
    holder = draw(st.sampled_from([one for one in holders if isinstance(one.get("text"), str)]))
    text = holder["text"]
    for _ in range(draw(st.integers(1, 4))):
        at = draw(st.integers(0, len(text)))
        text = text[:at] + draw(st.sampled_from(CUTS)) + text[at + draw(st.integers(0, 200)) :]
    holder["text"] = text
    return json.dumps(request, ensure_ascii=draw(st.booleans()))
