"""The page's second look in Python: the balance once more, from the shown digits alone.

The same rules as ``web/src/core/secondlook.ts``; litres in one unit of NIST SP 811, appendix B.8.
"""

from typing import Any

LITRES = {"L": 1.0, "mL": 0.001, "US gal": 3.785411784, "US fl oz": 0.0295735295625}
# Amounts to pour are shown with every decimal they have, up to three.
AMOUNT_ROUNDING = 0.0005


def litres(shown: dict[str, Any]) -> float:
    """Litres of a shown amount."""
    return float(shown["value"] * LITRES[shown["unit"]])


def _rounding(shown: dict[str, Any]) -> float:
    return float(0.5 * 10 ** -shown["decimals"])


def _amounts(recipe: dict[str, Any]) -> list[tuple[int, dict[str, Any], float]]:
    """Count, shown amount and per cent of concentrate in it of everything that goes in."""
    amounts = []
    for pour in recipe["pours"]:
        amounts.append((pour["count"], pour["water"], 0.0))
        amounts.append((pour["count"], pour["concentrate"], 100.0))
    if "run_in" in recipe:
        setting = recipe["setting"]["value"] if "setting" in recipe else 0.0
        amounts.append((1, recipe["run_in"], setting))
    return amounts


def disagreements(start: dict[str, Any], recipe: dict[str, Any]) -> list[str]:
    """What a recipe promises and its digits do not give: strength, volume, level."""
    now_l, now_pct = litres(start["now_volume"]), start["now_strength"]["value"]
    slack_pct = _rounding(start["now_strength"])
    if "level" in recipe and "level_strength" in recipe:
        hidden_l = litres(start["hidden"]) if "hidden" in start else 0.0
        level_l, level = litres(recipe["level"]) + hidden_l, recipe["level"]
        half_l = _rounding(level) * LITRES[level["unit"]]
        slack_pct += _rounding(recipe["level_strength"]) + 1e-9
        said_pct = recipe["level_strength"]["value"]
        least_pct = now_l * now_pct / (level_l + half_l) - slack_pct
        is_near = least_pct <= said_pct <= now_l * now_pct / (level_l - half_l) + slack_pct
        return [] if is_near else ["level"]
    out_l = litres(recipe["take_out"]) if "take_out" in recipe else 0.0
    volume_l, blur_l = now_l - out_l, _rounding(start["now_volume"])
    blur_l *= LITRES[start["now_volume"]["unit"]]
    concentrate_l = volume_l * now_pct / 100
    for count, amount, pct in _amounts(recipe):
        volume_l += count * litres(amount)
        concentrate_l += count * litres(amount) * pct / 100
        blur_l += count * AMOUNT_ROUNDING * LITRES[amount["unit"]]
    found_pct = 100 * concentrate_l / volume_l
    slack_pct += 100 * blur_l / volume_l + _rounding(recipe["strength"])
    slack_l = blur_l + _rounding(recipe["volume"]) * LITRES[recipe["volume"]["unit"]]
    said = {
        "strength": abs(found_pct - recipe["strength"]["value"]) > slack_pct + 1e-9,
        "volume": abs(volume_l - litres(recipe["volume"])) > slack_l + 1e-9,
    }
    return [name for name, differs in said.items() if differs]
