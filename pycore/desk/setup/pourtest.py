"""A pour test as typed: dips, and what was poured between them."""

from __future__ import annotations

from dataclasses import dataclass, field

from pycore.desk.contract.messages import CalibrateSumpBody
from pycore.desk.contract.reader import Reader, placed
from pycore.desk.contract.records import Typed
from pycore.desk.setup.tank import read_stick
from pycore.quantity.dates import moment_from
from pycore.quantity.fault import Fault
from pycore.quantity.typed import Reading
from pycore.sump.calibration import Pour
from pycore.sump.shapes import DIP_U_MM, RIM_OVER_FULL
from pycore.sump.stick import Stick


@dataclass
class Pours:
    """Dips and pours in the order they were typed, with the field of each dip."""

    dips: list[Reading | None] = field(default_factory=list)
    depths_mm: list[float] = field(default_factory=list)
    pours: list[Pour] = field(default_factory=list)
    chain: int = 0

    def dip(self, read: Reading | None, depth_mm: float) -> int:
        """Adds a dip; None is the floor of an empty sump. Its place in the list."""
        self.dips.append(read)
        self.depths_mm.append(depth_mm)
        return len(self.dips) - 1


@dataclass(frozen=True)
class PourTest:
    """What was read of a pour test."""

    found: Pours
    full: Reading
    rim_mm: float
    dip_u_mm: float
    stick: Stick


def _read_dip(reader: Reader, test: PourTest, typed: Typed, path: str) -> int:
    """One dip of the test. Error: ``out_of_range`` outside floor and rim, as the stick shows."""
    stick = test.stick
    quantity = "depth_mm" if stick.reference_height_mm is None else "outage_mm"
    read = reader.read(typed, quantity, path)
    depth_mm = stick.depth_mm(read.value)
    if not 0 <= depth_mm <= test.rim_mm:
        limit = {"minimum": 0.0, "maximum": test.rim_mm, "unit": "mm"}
        fault = stick.as_shown(Fault("out_of_range", path, depth_mm, limit), path)
        raise placed(fault, path, read.unit.name)
    return test.found.dip(read, depth_mm)


def _add_pour(
    reader: Reader, test: PourTest, before: int, after: int, poured: Typed, path: str
) -> None:
    """One pour between two dips. Error: ``not_rising`` at the dip after it."""
    found = test.found
    volume_l = reader.value(poured, "poured_l", path)
    if found.depths_mm[after] <= found.depths_mm[before]:
        read = found.dips[after]
        place = "" if read is None else read.path
        limit = {"above": found.depths_mm[before], "unit": "mm"}
        fault = Fault("not_rising", place, found.depths_mm[after], limit)
        unit = "mm" if read is None else read.unit.name
        raise placed(test.stick.as_shown(fault, place), place, unit)
    found.pours.append(Pour(before, after, volume_l))


def _read_steps(reader: Reader, body: CalibrateSumpBody, test: PourTest) -> None:
    """The steps of the test. Errors: ``missing`` and ``not_for_kind`` for how it started,
    ``not_a_date`` for a step's time."""
    steps = body.steps or []
    if not steps:
        return
    if body.start is None:
        raise Fault("missing", "body.start")
    if body.start == "empty":
        if body.start_depth is not None:
            allowed = {"allowed": ["start: rest"]}
            raise Fault("not_for_kind", "body.start_depth", body.start_depth.text, allowed)
        before = test.found.dip(None, 0.0)
    elif body.start_depth is None:
        raise Fault("missing", "body.start_depth")
    else:
        before = _read_dip(reader, test, body.start_depth, "body.start_depth")
    for i, step in enumerate(steps):
        if step.at is not None:
            moment_from(step.at, f"body.steps[{i}].at")
        after = _read_dip(reader, test, step.depth, f"body.steps[{i}].depth")
        _add_pour(reader, test, before, after, step.poured, f"body.steps[{i}].poured")
        before = after
    test.found.chain = len(steps)


def read_test(reader: Reader, body: CalibrateSumpBody) -> PourTest:
    """Dips and pours of a calibration.

    Errors: those of ``read_typed``; ``missing`` and ``not_for_kind`` for how the test started;
    ``not_rising`` at the dip of the step or pair whose level did not rise; ``order`` for a rim
    below the full mark; ``out_of_range`` for a dip outside the sump; ``too_few`` without any pour.
    """
    full = reader.read(body.full_depth, "full_depth_mm", "body.full_depth")
    rim_mm = reader.optional(body.rim_depth, "rim_depth_mm", "body.rim_depth")
    if rim_mm is not None and rim_mm < full.value:
        limit = {"minimum": full.value, "unit": "mm"}
        fault = Fault("order", "body.rim_depth", rim_mm, limit)
        raise placed(fault, "body.rim_depth", full.unit.name)
    own_u_mm = reader.optional(body.dip_u, "depth_u_mm", "body.dip_u")
    test = PourTest(
        Pours(),
        full,
        full.value * RIM_OVER_FULL if rim_mm is None else rim_mm,
        DIP_U_MM[body.how or "hard_floor"] if own_u_mm is None else own_u_mm,
        read_stick(reader, body.dip_from, body.reference_height, body.zero_offset, "body"),
    )
    _read_steps(reader, body, test)
    for i, pair in enumerate(body.pairs or []):
        before = _read_dip(reader, test, pair.before, f"body.pairs[{i}].before")
        after = _read_dip(reader, test, pair.after, f"body.pairs[{i}].after")
        _add_pour(reader, test, before, after, pair.poured, f"body.pairs[{i}].poured")
    if not test.found.pours:
        raise Fault("too_few", "body.steps", None, {"least": 1})
    return test
