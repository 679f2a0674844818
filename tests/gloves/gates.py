"""What the app answers to typed numbers: pycore, asked with the very questions of the pages."""

from __future__ import annotations

import json
from typing import Any, Literal

from pycore.desk.door import handle
from tests.phones import LATHE, Phone, check, moment, setup, typed

Gate = Literal["refused", "asked once", "asked against the log", "passed"]
# The order in which a number meets them.
GATES: tuple[Gate, ...] = ("refused", "asked once", "asked against the log", "passed")
DAY_S = 86_400
_MACHINE = setup()


def _ask(op: str, body: dict[str, Any]) -> dict[str, Any]:
    request = {"v": 1, "id": op, "op": op, "body": body}
    answer: dict[str, Any] = json.loads(handle(json.dumps(request)))
    return answer


def _dip(text: str) -> dict[str, Any]:
    return {"depth": typed(text, "mm"), "how": "hard_floor"}


def _reading(text: str) -> dict[str, Any]:
    return {"shows": typed(text, "Brix"), "how": "optical"}


def _assessed(part: str, content: dict[str, Any]) -> Gate:
    body = {name: _MACHINE[name] for name in ("sump", "fluid", "target", "units")}
    answer = _ask("assess_sump", {**body, part: content})
    if not answer["ok"]:
        assert answer["error"]["path"].startswith(f"body.{part}"), answer
        return "refused"
    return "asked once" if answer["result"]["doubts"] else "passed"


def log_of(last: tuple[str, str] | None) -> list[str]:
    """The machine's lines: its set-up and one check, dip and reading, at a fixed moment."""
    phone = Phone("glove")
    phone.save("machine_set", {"machine": _MACHINE}, 0)
    if last is not None:
        phone.save("check", check(*last), 0)
    return phone.lines


def _look_back(lines: list[str], days_since: int, **measured: Any) -> dict[str, Any]:
    now = moment(days_since * DAY_S)
    answer = _ask("look_back", {"lines": lines, "machine": LATHE, "now": now, **measured})
    assert answer["ok"], answer
    return dict(answer["result"])


def dip_gate(text: str, lines: list[str], days_since: int) -> Gate:
    """Where a typed dip is stopped. An empty field is refused by the page itself."""
    if not text:
        return "refused"
    gate = _assessed("dip", _dip(text))
    if gate != "passed":
        return gate
    level = _look_back(lines, days_since, dip=_dip(text)).get("level")
    is_asked = level is not None and level["verdict"] in ("lost", "gained")
    return "asked against the log" if is_asked else "passed"


def reading_gate(text: str, lines: list[str], days_since: int) -> Gate:
    """The same for a reading, beside the last one or, where there is none, beside the target."""
    gate = _assessed("reading", _reading(text)) if text else "refused"
    if gate != "passed":
        return gate
    doubts = _look_back(lines, days_since, reading=_reading(text))["doubts"]
    return "asked against the log" if doubts else "passed"


def poured_l(depth: str, reading: str) -> tuple[float, float]:
    """Water and concentrate of the main recipe for these two numbers, in litres."""
    body = {"machine": _MACHINE, "dip": _dip(depth), "reading": _reading(reading)}
    answer = _ask("plan_check", body)
    assert answer["ok"], answer
    plan = answer["result"]["plan"]
    # Of a sump with marks as fine as this one nothing is ever taken out first.
    assert plan["draw_off_l"] == 0
    return plan["totals"]["water_l"], plan["totals"]["concentrate_l"]
