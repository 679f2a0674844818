"""The measures of each kind of sump, read and handed to its shape."""

from __future__ import annotations

import math
from collections.abc import Callable
from dataclasses import dataclass

from pycore.desk.contract.messages import ObstacleTyped, SumpTyped
from pycore.desk.contract.reader import Reader
from pycore.desk.contract.records import Typed
from pycore.quantity.fault import Fault
from pycore.sump import shapes
from pycore.sump.obstacles import Obstacle
from pycore.sump.sump import Sump


@dataclass(frozen=True)
class _Measures:
    """What was typed about one sump, and the marks that were read already."""

    reader: Reader
    typed: SumpTyped
    path: str
    full_mm: float
    rim_mm: float | None

    @property
    def u_share(self) -> float:
        """Relative standard uncertainty of the litres."""
        return shapes.VOLUME_U_SHARE[self.typed.volume_known_by]

    def read(self, name: str, quantity: str) -> float:
        """One measure of the sump itself, in the quantity's own unit."""
        return self.reader.value(_given(getattr(self.typed, name)), quantity, f"{self.path}.{name}")

    def obstacles(self) -> list[Obstacle]:
        """Everything that stands in the liquid."""
        return [
            _obstacle(self.reader, thing, f"{self.path}.obstacles[{i}]")
            for i, thing in enumerate(self.typed.obstacles or [])
        ]


def _given(typed: Typed | None) -> Typed:
    # The schema asks for it wherever this is called.
    if typed is None:
        raise Fault("missing", "body")
    return typed


def _obstacle(reader: Reader, thing: ObstacleTyped, path: str) -> Obstacle:
    """One obstacle. Errors: ``missing``, ``not_for_kind`` unless its area is given just once."""
    from_mm = reader.value(thing.from_depth, "from_depth_mm", f"{path}.from_depth")
    to_mm = reader.optional(thing.to_depth, "to_depth_mm", f"{path}.to_depth")
    given = [name for name in ("length", "diameter", "volume") if getattr(thing, name) is not None]
    if not given:
        raise Fault("missing", f"{path}.length")
    by, *more = given
    if more:
        got = getattr(thing, more[0]).text
        raise Fault("not_for_kind", f"{path}.{more[0]}", got, {"allowed": [by]})
    if (thing.width is None) != (by != "length"):
        code = "missing" if thing.width is None else "not_for_kind"
        limit = {} if thing.width is None else {"allowed": [by]}
        raise Fault(code, f"{path}.width", thing.width and thing.width.text, limit)
    top_mm = math.inf if to_mm is None else to_mm
    if by == "volume":
        displaced_l = reader.value(_given(thing.volume), "displaced_l", f"{path}.volume")
        if to_mm is None:
            raise Fault("missing", f"{path}.to_depth")
        # A thing upside down is refused by the sump room, which knows what must lie above what.
        return Obstacle(from_mm, top_mm, displaced_l / abs(to_mm - from_mm or 1.0))
    if by == "diameter":
        diameter_mm = reader.value(_given(thing.diameter), "thing_mm", f"{path}.diameter")
        return Obstacle(from_mm, top_mm, math.pi * diameter_mm**2 / 4e6)
    length_mm = reader.value(_given(thing.length), "thing_mm", f"{path}.length")
    width_mm = reader.value(_given(thing.width), "thing_mm", f"{path}.width")
    return Obstacle(from_mm, top_mm, length_mm * width_mm / 1e6)


def _proportional(m: _Measures) -> Sump:
    volume_l = m.read("full_volume", "full_volume_l")
    return shapes.proportional(m.full_mm, volume_l, m.u_share, m.rim_mm)


def _box(m: _Measures) -> Sump:
    sides = m.read("length", "length_mm"), m.read("width", "length_mm")
    return shapes.box(*sides, m.full_mm, m.u_share, m.rim_mm, m.obstacles())


def _sloped_box(m: _Measures) -> Sump:
    sides = m.read("length", "length_mm"), m.read("width", "length_mm")
    rise_mm, is_deep = m.read("rise", "rise_mm"), m.typed.dipped_end == "deep"
    things = m.obstacles()
    return shapes.sloped_box(*sides, rise_mm, is_deep, m.full_mm, m.u_share, m.rim_mm, things)


def _stepped(m: _Measures) -> Sump:
    boxes = []
    for i, step in enumerate(m.typed.steps or []):
        path = f"{m.path}.steps[{i}]"
        floor_mm = m.reader.value(step.floor, "floor_mm", f"{path}.floor")
        length_mm = m.reader.value(step.length, "length_mm", f"{path}.length")
        boxes.append(
            (floor_mm, length_mm, m.reader.value(step.width, "length_mm", f"{path}.width"))
        )
    return shapes.stepped(boxes, m.full_mm, m.u_share, m.rim_mm, m.obstacles())


def _upright_cylinder(m: _Measures) -> Sump:
    diameter_mm = m.read("diameter", "diameter_mm")
    return shapes.upright_cylinder(diameter_mm, m.full_mm, m.u_share, m.rim_mm, m.obstacles())


def _horizontal_cylinder(m: _Measures) -> Sump:
    sides = m.read("diameter", "diameter_mm"), m.read("length", "length_mm")
    return shapes.horizontal_cylinder(*sides, m.full_mm, m.u_share, m.rim_mm, m.obstacles())


def _frustum(m: _Measures) -> Sump:
    bottom_mm = m.read("bottom_diameter", "bottom_diameter_mm")
    sides = m.read("top_diameter", "diameter_mm"), m.read("height", "height_mm")
    return shapes.frustum(bottom_mm, *sides, m.full_mm, m.u_share, m.rim_mm, m.obstacles())


def _table(m: _Measures) -> Sump:
    """The measured table. Error: ``missing`` at the u of a row when only others have one."""
    read, place = m.reader, f"{m.path}.points"
    points = m.typed.points or []
    depths = [
        read.value(p.depth, "point_depth_mm", f"{place}[{i}].depth") for i, p in enumerate(points)
    ]
    volumes = [
        read.value(p.volume, "volume_l", f"{place}[{i}].volume") for i, p in enumerate(points)
    ]
    us = [read.optional(p.u, "point_u_l", f"{place}[{i}].u") for i, p in enumerate(points)]
    known = [u_l for u_l in us if u_l is not None]
    if known and len(known) < len(us):
        raise Fault("missing", f"{place}[{us.index(None)}].u")
    return shapes.table(depths, volumes, m.full_mm, m.u_share, m.rim_mm, known or None)


_SHAPES: dict[str, Callable[[_Measures], Sump]] = {
    "proportional": _proportional,
    "box": _box,
    "sloped_box": _sloped_box,
    "stepped": _stepped,
    "upright_cylinder": _upright_cylinder,
    "horizontal_cylinder": _horizontal_cylinder,
    "frustum": _frustum,
    "table": _table,
}


def shape_of(
    reader: Reader, typed: SumpTyped, path: str, full_mm: float, rim_mm: float | None
) -> Sump:
    """The sump's shape from its measures, with marks in mm.

    Errors: those of ``read_typed`` at ``path`` and its fields; those of the shapes at a path that
    begins with the field itself.
    """
    return _SHAPES[typed.kind](_Measures(reader, typed, path, full_mm, rim_mm))
