"""Logs for the trend: a lathe's checks in days, by round numbers."""

from typing import Any

from tests.phones import LATHE, Phone, check, moment, setup, typed
from tests.properties.asking import ask

DAY_S = 86_400
# 198 L at 440 mm, so 0.45 L a millimetre; a reading times 1.5 is the strength.


def lathe() -> Phone:
    phone = Phone("a")
    phone.save("machine_set", {"machine": setup()}, 0)
    return phone


def checked(phone: Phone, day: float, depth: str, shows: str, **more: Any) -> str:
    return phone.save("check", {**check(depth, shows), **more}, int(day * DAY_S) + 60)


def poured(phone: Phone, day: float, water: str, concentrate_ml: str, **more: Any) -> str:
    row = {"count": 1, "water": typed(water, "L"), "concentrate": typed(concentrate_ml, "mL")}
    return phone.save("pour", {"pours": [row], "finished": True, **more}, int(day * DAY_S) + 120)


def trend_of(phone: Phone, day: float, **more: Any) -> dict[str, Any]:
    """What the log says so many days after its first morning."""
    body = {"lines": phone.lines, "now": moment(int(day * DAY_S)), "machine": LATHE}
    return ask("trend", {**body, **more})


def falling() -> Phone:
    """Strength from 8.1 to 6.3 % in twelve days, topped up with water alone."""
    phone = lathe()
    for day, shows in ((0, "5.4"), (4, "5.0"), (8, "4.6"), (12, "4.2")):
        checked(phone, day, "380", shows)
        poured(phone, day, "18", "0")
    return phone
