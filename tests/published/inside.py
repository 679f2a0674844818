"""What pycore says to one row of shared/checks.

Runs in two places from this one text: in this Python, and in the Python that is shipped to the
phone. So it may import nothing but pycore and the standard library.
"""

import json
from typing import Any

from pycore.desk import handle
from pycore.quantity.measured import Measured, result, variable
from pycore.quantity.typed import read_typed
from pycore.quantity.units import UNITS, from_base
from pycore.reading.line import fit_line
from pycore.reading.refraction import brix_from_index, index_from_brix
from pycore.reading.strength import strength_from_reading
from pycore.reading.temperature import correction_brix
from pycore.recipe.balance import concentrate_needed_l, mix_strength_pct, state_after
from pycore.recipe.outlook import final_state
from pycore.recipe.request import Bucket, DrawOff, Mixing, PlanRequest, SumpState, Target
from pycore.sump.shapes import proportional

Row = dict[str, Any]


def calculate(text: str) -> str:
    """JSON of ``{"row": …, "file": …}`` to JSON of the values that the row expects."""
    message = json.loads(text)
    row = message["row"]
    return json.dumps(KINDS[row["kind"]](row, message["file"]))


def ask(op: str, body: Row) -> Row:
    """The result of one operation; a refusal is an error of the check."""
    reply = json.loads(handle(json.dumps({"v": 1, "id": "check", "op": op, "body": body})))
    if not reply["ok"]:
        raise ValueError(reply["error"]["message"])
    return reply["result"]


def litres(amount: Row) -> float:
    """An amount with its unit, as litres."""
    return read_typed(str(amount["value"]), amount["unit"], "volume_l", "check").value


def _unit(row: Row, _: Row) -> Row:
    body = {"text": row["number"], "unit": row["unit"], "quantity": row["quantity"]}
    return {"value": ask("read_quantity", body)["value"]}


def _ratio(row: Row, _: Row) -> Row:
    return {"strength_pct": mix_strength_pct(row["water_parts"], row["concentrate_parts"])}


def _bucket(row: Row, _: Row) -> Row:
    return {"strength_pct": mix_strength_pct(litres(row["water"]), litres(row["concentrate"]))}


def _mixture(row: Row, _: Row) -> Row:
    first, *others = row["mixed"]
    pours = [
        (
            1,
            part["volume_l"] * (1 - part["strength_pct"] / 100),
            part["volume_l"] * part["strength_pct"] / 100,
        )
        for part in others
    ]
    volume_l, strength_pct = state_after(first["volume_l"], first["strength_pct"], pours)
    return {"volume_l": volume_l, "strength_pct": strength_pct}


def _recipe(row: Row, _: Row) -> Row:
    now = row["now"]["volume_l"], row["now"]["strength_pct"]
    # The concentrate comes from pycore too: a wrong solution cannot land on the wanted strength.
    needed_l = concentrate_needed_l(*now, row["water_l"], row["expect"]["strength_pct"])
    volume_l, strength_pct = state_after(*now, [(1, row["water_l"], row["concentrate_l"])])
    return {"volume_l": volume_l, "strength_pct": strength_pct, "concentrate_l": needed_l}


def _tank(row: Row, file: Row) -> Row:
    sump = {**file["sumps"][row["sump"]], "volume_known_by": "poured"}
    level = ask("assess_sump", {"sump": sump, "dip": {"depth": row["dip"]}})["level"]
    return {"volume": from_base(level["volume_l"]["value"], UNITS[row["unit"]])}


def _tank_depth(row: Row, file: Row) -> Row:
    sump = {**file["sumps"][row["sump"]], "volume_known_by": "poured"}
    dip = {"depth": row["dip"], "read_as": "volume"}
    level = ask("assess_sump", {"sump": sump, "dip": dip})["level"]
    return {"depth": from_base(level["depth_mm"]["value"], UNITS[row["unit"]])}


def _strength(row: Row, _: Row) -> Row:
    reading, factor = Measured(**row["reading_brix"]), Measured(**row["factor"])
    diluted = row.get("diluted", 0)
    strength = strength_from_reading(reading, factor, row["zero_brix"], "check", diluted)
    return {"value": strength.value, "u": strength.u}


def _hardness(row: Row, _: Row) -> Row:
    typed = {"text": row["number"], "unit": row["unit"]}
    got = ask("read_water", {"water": {"kind": "mains", "hardness": typed}})["hardness"]
    return {name: got[name] for name in row["expect"]}


def _temperature(row: Row, _: Row) -> Row:
    return {"correction_brix": correction_brix(row["reading_brix"], row["prism_c"], "check")}


def _temperature_row(row: Row, _: Row) -> Row:
    return {at: correction_brix(float(at), row["prism_c"], "check") for at in row["expect"]}


def _index(row: Row, _: Row) -> Row:
    return {
        "reading_brix": brix_from_index(row["index_nd"], "check"),
        "index_nd": index_from_brix(row["reading_brix"], "check"),
    }


def _line(row: Row, _: Row) -> Row:
    x, y = ([point[side] for point in row["points"]] for side in (0, 1))
    line = fit_line(x, y, None, row["through_zero"])
    return {name: getattr(line, name) for name in row["expect"]}


def _formula(row: Row, _: Row) -> Row:
    given = {name: variable(Measured(**number), name) for name, number in row["given"].items()}
    number = result(FORMULAS[row["formula"]](**given))
    return {"value": number.value, "u": number.u}


def _calibration_standard_mg_l(m_mg: Any, purity: Any, volume_ml: Any) -> Any:
    return 1000 * m_mg * purity / volume_ml


def _end_gauge_mm(
    standard_mm: Any,
    difference_mm: Any,
    expansion_per_c: Any,
    from_20_c: Any,
    expansion_difference_per_c: Any,
    temperature_difference_c: Any,
) -> Any:
    drift = expansion_difference_per_c * from_20_c + expansion_per_c * temperature_difference_c
    return standard_mm + difference_mm - standard_mm * drift


def _sum_of_four(x1: Any, x2: Any, x3: Any, x4: Any) -> Any:
    return x1 + x2 + x3 + x4


FORMULAS = {
    "calibration_standard_mg_l": _calibration_standard_mg_l,
    "end_gauge_mm": _end_gauge_mm,
    "sum_of_four": _sum_of_four,
}


def shop_sump(row: Row, settings: Row) -> tuple[Measured, Measured, float]:
    """Litres, strength and full litres of the shop's sump after a dip and a reading."""
    sizes, u = settings["sump"], settings["standard_uncertainty"]
    full_l = litres({"value": sizes["full_volume_us_gal"], "unit": "US gal"})
    full_mm = read_typed(str(sizes["full_depth_in"]), "in", "full_depth_mm", "check").value
    dip_mm = read_typed(row["dip_in"], "in", "depth_mm", "check").value
    sump = proportional(full_mm, full_l, u["u_full_share"])
    volume = sump.volume_measured(Measured(dip_mm, u["u_dip_in"] * 25.4), "check")
    reading = Measured(float(row["reading_brix"]), u["u_reading_points"])
    strength = strength_from_reading(reading, Measured(1.0, 0.0), 0.0, "check")
    return volume, strength, full_l


def _shop_sump(row: Row, file: Row) -> Row:
    volume, strength, _ = shop_sump(row, file["settings"])
    return {
        "volume_us_gal": from_base(volume.value, UNITS["US gal"]),
        "strength_pct": strength.value,
    }


def shop_fill(row: Row, settings: Row) -> Row:
    """Premix with so much concentrate, then the weak mix up to the full mark."""
    volume, strength, full_l = shop_sump(row, settings)
    premix, weak, band = settings["premix"], settings["weak_mix"], settings["band"]
    concentrate_l = litres({"value": row["concentrate_us_gal"], "unit": "US gal"})
    water_l = concentrate_l * premix["parts_water"] / premix["parts_concentrate"]
    left_l = full_l - volume.value - water_l - concentrate_l
    jug_l = litres({"value": weak["concentrate_us_fl_oz"], "unit": "US fl oz"})
    bucket_l = litres({"value": weak["filled_to_us_gal"], "unit": "US gal"})
    weak_l = max(0.0, left_l)
    ask_for = PlanRequest(
        SumpState(volume, strength), full_l, Target(band["low_pct"], 8.0, band["high_pct"]),
        Mixing(20.0, 1.0, 0.5), Bucket(bucket_l, jug_l, jug_l), DrawOff(False, 1.0),
    )  # fmt: skip
    jugs_l = weak_l * jug_l / bucket_l
    final, _ = final_state(ask_for, water_l + weak_l - jugs_l, concentrate_l + jugs_l)
    strength_pct = final.strength_pct
    return {"overfills": left_l < 0, "strength_pct": strength_pct.value, "u_pct": strength_pct.u}


def _rule_of_thumb(row: Row, file: Row) -> Row:
    band, after = file["settings"]["band"], shop_fill(row, file["settings"])
    after["in_6_to_10_pct"] = band["low_pct"] <= after["strength_pct"] <= band["high_pct"]
    return after


def _shop_fill(row: Row, file: Row) -> Row:
    return shop_fill(row, file["settings"])


KINDS = {
    "unit": _unit,
    "ratio": _ratio,
    "bucket": _bucket,
    "mixture": _mixture,
    "recipe": _recipe,
    "tank": _tank,
    "tank_depth": _tank_depth,
    "strength": _strength,
    "hardness": _hardness,
    "temperature": _temperature,
    "temperature_row": _temperature_row,
    "index": _index,
    "line": _line,
    "formula": _formula,
    "shop_sump": _shop_sump,
    "shop_fill": _shop_fill,
    "rule_of_thumb": _rule_of_thumb,
}
