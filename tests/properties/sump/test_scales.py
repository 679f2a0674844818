"""Every mark on a printed scale stands where the sump, or the pail, holds that much."""

import random
import re
from typing import Any

import pytest

from pycore.desk.contract.build import built
from pycore.desk.contract.messages import SumpTyped
from pycore.desk.contract.reader import Reader
from pycore.desk.setup.tank import read_tank
from pycore.desk.sheets.drawing import read_pail
from pycore.desk.sheets.messages import PailShapeTyped
from pycore.quantity.units import UNITS
from tests.examples.workshop import WHEEL_LATHE
from tests.properties.asking import ask
from tests.unit.sheets.drawn import lines

Body = dict[str, Any]
CLOSE_MM = 0.01
PIECE_MM = {True: 200.0, False: 250.0}
SEEDS = range(40)


def typed(value: float, unit: str) -> dict[str, str]:
    """A number with four decimals; with three the sign might part thousands."""
    return {"text": f"{value:.4f}", "unit": unit}


def random_sump(chance: random.Random) -> Body:
    """A sump of one of the kinds, from a saw's to a central system's."""
    full_mm = chance.uniform(60, 1800)
    base: Body = {
        "full_depth": typed(full_mm, "mm"),
        "volume_known_by": chance.choice(["plate", "poured", "said"]),
    }
    kind = chance.choice(["proportional", "box", "sloped_box", "horizontal_cylinder", "table"])
    if kind == "proportional":
        return {**base, "kind": kind, "full_volume": typed(chance.uniform(10, 5000), "L")}
    if kind == "horizontal_cylinder":
        sides = {"length": 2 * full_mm, "diameter": full_mm * chance.uniform(1.05, 1.6)}
        return {**base, "kind": kind, **{name: typed(mm, "mm") for name, mm in sides.items()}}
    if kind != "table":
        sides = {name: chance.uniform(200, 3000) for name in ("length", "width")}
        measures = {name: typed(mm, "mm") for name, mm in sides.items()}
        if kind == "sloped_box":
            measures["rise"] = typed(full_mm * chance.uniform(0.02, 0.5), "mm")
            base["dipped_end"] = chance.choice(["deep", "shallow"])
        return {**base, "kind": kind, **measures}
    depth_mm = volume_l = 0.0
    points = []
    while depth_mm < full_mm + 20:
        depth_mm += chance.uniform(15, 250)
        volume_l += chance.uniform(2, 120)
        points.append({"depth": typed(depth_mm, "mm"), "volume": typed(volume_l, "L")})
    if len(points) < 2:
        points.append({"depth": typed(depth_mm + 30, "mm"), "volume": typed(volume_l + 9, "L")})
    return {**base, "kind": kind, "points": points}


def places(pages: list[str], unit: str, piece_mm: float, stretch: float) -> dict[float, set[float]]:
    """Amount of each mark -> where it stands above the scale's zero, mm, on every piece."""
    found: dict[float, set[float]] = {}
    # The ruler along the edge is drawn before the marks; all pieces end at the height of its zero.
    ruler = pages[0].split("data-mark")[0]
    zero_y_mm = max(float(y) for y in re.findall(r"M[0-9.]+ ([0-9.]+)L", ruler))
    piece = -1
    for page in pages:
        own = [line for line in lines(page) if line.name.endswith(f" {unit}")]
        lefts: list[float] = []
        for line in own:
            if line.x2_mm not in lefts:
                lefts.append(line.x2_mm)
                piece += 1
            at_mm = (zero_y_mm - line.y1_mm) / stretch + piece * piece_mm
            found.setdefault(float(line.name.split(" ")[0]), set()).add(at_mm)
    return found


@pytest.mark.parametrize("seed", SEEDS)
def test_every_mark_of_a_dip_scale(seed: int) -> None:
    chance = random.Random(seed)
    plate = chance.choice(["L", "US gal", "imp gal"])
    is_short = chance.random() < 0.4
    stretch = 100 / 92 if is_short else 1.0
    units = {**WHEEL_LATHE["units"], "plate": plate, "stick": chance.choice(["mm", "in"])}
    machine = {**WHEEL_LATHE, "units": units, "sump": random_sump(chance)}
    body: Body = {"kind": "dip_scale", "paper": chance.choice(["A4", "Letter"]), "machine": machine}
    if is_short:
        body["measured_100_mm"] = typed(92, "mm")
    pages = ask("draw_sheet", body)["pages"]
    sump = read_tank(Reader(), built(SumpTyped, machine["sump"]), "sump").sump
    marks = places(pages, plate, PIECE_MM[is_short], stretch)
    factor_l = float(UNITS[plate].factor)
    # What is below the end of the stick at a shallow end cannot be read off.
    assert min(marks) * factor_l >= sump.least_volume_l * (1 - 1e-9)
    assert sump.zero_mm > 0 or marks[0] == {0.0}
    assert max(marks) * factor_l <= sump.rim_volume_l * (1 + 1e-9)
    for amount, everywhere in marks.items():
        for at_mm in everywhere:
            below_mm, low = at_mm - CLOSE_MM, sump.least_volume_l
            if below_mm > 0:
                low = sump.volume_from_depth(below_mm, "depth")
            high = sump.volume_from_depth(min(sump.rim_depth_mm, at_mm + CLOSE_MM), "depth")
            assert low <= amount * factor_l * (1 + 1e-9)
            assert amount * factor_l * (1 - 1e-9) <= high


@pytest.mark.parametrize("seed", SEEDS)
def test_every_mark_of_a_bucket_scale(seed: int) -> None:
    chance = random.Random(seed)
    floor_mm = chance.uniform(180, 320)
    shape = {
        "kind": "diameters",
        "floor_diameter": typed(floor_mm, "mm"),
        "brim_diameter": typed(floor_mm * chance.uniform(0.9, 1.4), "mm"),
        "height": typed(chance.uniform(240, 480), "mm"),
    }
    pail = read_pail(Reader(), built(PailShapeTyped, shape), "pail")
    usable_l = pail.brim_l * chance.uniform(0.6, 0.99)
    bucket = {
        "usable": typed(usable_l, "L"),
        "water_mark": typed(0.5, "L"),
        "jug_mark": typed(50, "mL"),
    }
    machine = {**WHEEL_LATHE, "bucket": bucket}
    body = {"kind": "bucket_scale", "paper": "A4", "machine": machine, "pail_shape": shape}
    marks = places(ask("draw_sheet", body)["pages"], "L", 250.0, 1.0)
    assert max(marks) >= usable_l * 0.9
    for amount, everywhere in marks.items():
        for at_mm in everywhere:
            depth_mm = at_mm / pail.along_wall_mm(1.0)
            low, high = pail.volume_l(depth_mm - CLOSE_MM), pail.volume_l(depth_mm + CLOSE_MM)
            assert low <= amount <= high


def test_a_wrong_mark_would_be_seen() -> None:
    body = {"kind": "dip_scale", "paper": "A4", "machine": WHEEL_LATHE}
    page = ask("draw_sheet", body)["pages"][0]
    (end,) = re.findall(r'y1="([0-9.]+)"[^>]* data-mark="50 L"', page)
    moved = page.replace(f'y1="{end}"', f'y1="{float(end) + 0.05}"')
    # By hand: 50 L of 0.45 L/mm.
    assert places([page], "L", 250.0, 1.0)[50].pop() == pytest.approx(50 / 0.45, abs=CLOSE_MM)
    assert abs(places([moved], "L", 250.0, 1.0)[50].pop() - 50 / 0.45) > CLOSE_MM
