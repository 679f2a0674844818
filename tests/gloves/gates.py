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


def log_of(last_depth: str) -> list[str]:
    """The machine's lines: its set-up and one check at a fixed moment."""
    phone = Phone("glove")
    phone.save("machine_set", {"machine": _MACHINE}, 0)
    phone.save("check", check(last_depth), 0)
    return phone.lines


def dip_gate(text: str, lines: list[str], days_since: int) -> Gate:
    """Where a typed dip is stopped. An empty field is refused by the page itself."""
    if not text:
        return "refused"
    gate = _assessed("dip", _dip(text))
    if gate != "passed":
        return gate
    now = moment(days_since * DAY_S)
    body = {"lines": lines, "machine": LATHE, "now": now, "dip": _dip(text)}
    answer = _ask("look_back", body)
    assert answer["ok"], answer
    verdict = answer["result"]["level"]["verdict"]
    return "asked against the log" if verdict in ("lost", "gained") else "passed"


def reading_gate(text: str) -> Gate:
    """The same for a reading, which no page holds against the log."""
    return _assessed("reading", _reading(text)) if text else "refused"


def poured_l(depth: str, reading: str) -> tuple[float, float]:
    """Water and concentrate of the main recipe for these two numbers, in litres."""
    body = {"machine": _MACHINE, "dip": _dip(depth), "reading": _reading(reading)}
    answer = _ask("plan_check", body)
    assert answer["ok"], answer
    plan = answer["result"]["plan"]
    # Of a sump with marks as fine as this one nothing is ever taken out first.
    assert plan["draw_off_l"] == 0
    return plan["totals"]["water_l"], plan["totals"]["concentrate_l"]
