"""A sheet as it was asked for: typed fields in, pages of SVG out."""

from __future__ import annotations

import math
import re
from typing import Any

from pycore.desk.contract.messages import MachineTyped
from pycore.desk.contract.reader import Reader, placed
from pycore.desk.contract.records import Typed
from pycore.desk.setup.machine import Machine, read_machine
from pycore.desk.setup.shop import read_never_above
from pycore.desk.sheets.messages import (
    DrawSheetBody,
    DrawSheetResult,
    PailShapeTyped,
)
from pycore.desk.sheets.slip import slip_of
from pycore.quantity.dates import moment_from
from pycore.quantity.fault import Fault
from pycore.quantity.rounding import Shown, on_rule, tidy
from pycore.sheets.bucket_scale import BucketScale, UsualBucket, bucket_at_aim, bucket_scale
from pycore.sheets.code import read_code, shown_code
from pycore.sheets.dip_scale import DipScale, dip_scale, read_off
from pycore.sheets.language import Language, language_of
from pycore.sheets.log_sheet import LogSheet, log_sheet
from pycore.sheets.machine_card import MachineCard, machine_card
from pycore.sheets.pail import RoundPail, from_diameters, from_fills
from pycore.sheets.paper import CHECK_MM, PASSES_MM, Paper, paper_of
from pycore.sheets.recipe_slip import recipe_slip
from pycore.sheets.svg import printable

# Signs of a web address as of RFC 3986, without "#", which begins the fragment.
_ADDRESS = re.compile(r"https?://[A-Za-z0-9._~:/?\[\]@!$&'()*+,;=%-]+")
_WIDE = {"log_sheet"}


def _address(text: str | None) -> str:
    if text is None or not _ADDRESS.fullmatch(text):
        raise Fault("not_allowed", "body.address", text, {"allowed": ["https://…", "http://…"]})
    return text


def _given(value: Any, path: str) -> Any:
    # The schema asks for it wherever this is called.
    if value is None:
        raise Fault("missing", path)
    return value


class _Ask:
    """One request with what all sheets need of it already read."""

    def __init__(self, body: DrawSheetBody) -> None:
        self.body, self.reader = body, Reader()
        self.language: Language = language_of(body.words, body.decimal_sign, "body.words")
        measured = None
        if body.measured_100_mm is not None:
            path = "body.measured_100_mm"
            measured = self.reader.value(body.measured_100_mm, "measured_100_mm", path)
        is_wide = body.kind in _WIDE
        self.paper: Paper = paper_of(body.paper, is_wide, measured, "body.measured_100_mm")

    def machine(self) -> tuple[MachineTyped, Machine]:
        typed = _given(self.body.machine, "body.machine")
        return typed, read_machine(self.reader, typed, "body.machine")

    def value(self, typed: Typed | None, quantity: str, path: str) -> float:
        return self.reader.value(_given(typed, path), quantity, path)

    def code(self) -> str | None:
        return None if self.body.code is None else read_code(self.body.code, "body.code")

    def facts(self, typed: MachineTyped, machine: Machine) -> dict[str, str | None]:
        """Amounts of the machine as they are written out, by the key of their word."""
        language, target = self.language, machine.target
        kind = language.say(f"type_{typed.fluid.type}")
        name = printable(typed.fluid.name) if typed.fluid.name else ""
        low, high, aim = (tidy(pct, "%") for pct in (target.low_pct, target.high_pct,
                                                     target.aim_pct))  # fmt: skip
        band = {"low": language.number(low), "high": language.amount(high)}
        return {
            "card_coolant": f"{name} ({kind})" if name else kind,
            "card_target": language.say("target_of", **band, aim=language.amount(aim)),
            "card_factor": self._factor(machine),
            "card_glass": self._glass(machine),
            "card_full": self._full(typed, machine),
        }

    def _factor(self, machine: Machine) -> str | None:
        factor = machine.factor
        if factor is None:
            return None
        # One number says it all only without a chart and an offset; what the glass reads does.
        if factor.chart or factor.offset_brix:
            return self.language.say("factor_chart")
        return self.language.number(tidy(factor.factor.value, "1"))

    def _glass(self, machine: Machine) -> str | None:
        """The band as the instrument shows it, rounded inwards, so that it never promises more."""
        if machine.factor is None:
            return None
        glass, path = machine.glass, "body.machine.target"
        decimals = 4 if glass.unit == "nD" else 1
        low, high = (
            glass.instrument.shown_from(machine.factor.reads_brix(pct) + glass.zero_brix, path)
            * 10**decimals
            for pct in (machine.target.low_pct, machine.target.high_pct)
        )
        least, most = math.ceil(low - 1e-9), math.floor(high + 1e-9)
        if least > most:
            return None
        said = self.language
        return said.say(
            "glass_of",
            low=said.number(Shown(least / 10**decimals, decimals, glass.unit)),
            high=said.amount(Shown(most / 10**decimals, decimals, glass.unit)),
        )

    def _full(self, typed: MachineTyped, machine: Machine) -> str:
        sump, units, language = machine.sump, typed.units, self.language
        return language.say(
            "full_of",
            depth=language.amount(on_rule(sump.full_depth_mm, units.stick)),
            volume=language.amount(read_off(sump.full_volume_l, units.plate)),
        )


def _never_above_mm(ask: _Ask, typed: MachineTyped, machine: Machine) -> float | None:
    path = "body.machine.sump"
    volume_l = read_never_above(ask.reader, typed.sump, machine.sump, path)
    return None if volume_l is None else machine.sump.depth_from_volume(volume_l, path)


def _dip_scale(ask: _Ask) -> list[str]:
    typed, machine = ask.machine()
    code = ask.code()
    units = typed.units
    return dip_scale(
        DipScale(
            name=printable(typed.name),
            sump=machine.sump,
            plate=units.plate,
            stick=units.stick,
            pail=units.pail,
            usable_l=machine.bucket.usable_l,
            code=None if code is None else shown_code(code),
            never_above_mm=_never_above_mm(ask, typed, machine),
            is_true_running=machine.tank.is_true_running,
            reference_mm=machine.tank.stick.reference_height_mm,
            offset_mm=machine.tank.stick.zero_offset_mm,
        ),
        ask.paper,
        ask.language,
    )


def read_pail(reader: Reader, typed: PailShapeTyped, path: str) -> RoundPail:
    """The pail from its measures or fills. Errors: those of ``read_typed`` and ``from_fills``."""
    if typed.kind == "diameters":
        floor, brim, height = (
            reader.value(_given(getattr(typed, name), f"{path}.{name}"), quantity, f"{path}.{name}")
            for name, quantity in (
                ("floor_diameter", "pail_diameter_mm"),
                ("brim_diameter", "pail_diameter_mm"),
                ("height", "pail_height_mm"),
            )
        )
        return from_diameters(floor, brim, height)
    fills = []
    for i, fill in enumerate(_given(typed.fills, f"{path}.fills")):
        depth = reader.read(fill.depth, "pail_height_mm", f"{path}.fills[{i}].depth")
        volume = reader.read(fill.volume, "pail_fill_l", f"{path}.fills[{i}].volume")
        fills.append((depth, volume))
    (low_depth, low), (high_depth, high) = fills
    try:
        return from_fills(low_depth.value, low.value, high_depth.value, high.value, f"{path}.fills")
    except Fault as fault:
        unit = high_depth.unit if fault.path.endswith("depth") else high.unit
        raise placed(fault, fault.path, unit.name) from None


def _bucket_scale(ask: _Ask) -> list[str]:
    typed, machine = ask.machine()
    units, body = typed.units, ask.body
    shape = read_pail(ask.reader, _given(body.pail_shape, "body.pail_shape"), "body.pail_shape")
    buckets = [bucket_at_aim(machine.bucket, machine.target)]
    if body.buckets is not None:
        buckets = [
            UsualBucket(
                ask.value(one.water, "bucket_water_l", f"body.buckets[{i}].water"),
                ask.value(
                    one.concentrate, "bucket_concentrate_l", f"body.buckets[{i}].concentrate"
                ),
            )
            for i, one in enumerate(body.buckets)
        ]
    usable_l = machine.bucket.usable_l
    scale = BucketScale(shape, usable_l, units.pail, units.jug, units.stick, buckets)
    try:
        return bucket_scale(scale, printable(typed.name), ask.paper, ask.language)
    except Fault as fault:
        place = "machine.bucket.usable" if fault.path == "usable_l" else fault.path
        raise placed(fault, f"body.{place}", units.pail) from None


def _circuit_l(machine: Machine) -> float | None:
    """Litres of the whole circuit at the full mark, as a balance counts them; None where nobody
    has said what does not show on the stick."""
    return None if machine.tank.hidden is None else machine.tank.circuit_full_l


def _machine_card(ask: _Ask) -> list[str]:
    typed, machine = ask.machine()
    body, language = ask.body, ask.language
    circuit_l = _circuit_l(machine)
    if body.circuit_volume is not None:
        circuit_l = ask.value(body.circuit_volume, "circuit_volume_l", "body.circuit_volume")
    plate = typed.units.plate
    circuit = None if circuit_l is None else language.amount(read_off(circuit_l, plate))
    day = body.calibrated_on
    if day is not None:
        moment_from(day, "body.calibrated_on")
    facts = ask.facts(typed, machine)
    facts |= {"card_circuit": circuit, "card_calibrated": day}
    sump = machine.sump
    card = MachineCard(
        name=printable(typed.name),
        code=read_code(_given(body.code, "body.code"), "body.code"),
        address=_address(body.address),
        facts=list(facts.items()),
        full_share=sump.height_share(sump.full_depth_mm),
        full_depth=language.amount(on_rule(sump.full_depth_mm, typed.units.stick)),
        is_true_running=machine.tank.is_true_running,
    )
    return machine_card(card, ask.paper, language)


def _log_sheet(ask: _Ask) -> list[str]:
    keys = ("card_coolant", "card_target", "card_factor", "card_full")
    facts: dict[str, str | None] = dict.fromkeys(keys)
    units = {"col_reading": "Brix", "col_strength": "%", "col_after": "Brix"}
    name = None
    if ask.body.machine is not None:
        typed, machine = ask.machine()
        name = printable(typed.name)
        facts = {key: ask.facts(typed, machine)[key] for key in keys}
        own = typed.units
        units.update(col_dip=own.stick, col_water=own.pail, col_concentrate=own.jug)
        units.update(col_reading=machine.glass.unit, col_after=machine.glass.unit)
    return log_sheet(LogSheet(name, list(facts.items()), units), ask.paper, ask.language)


def _recipe_slip(ask: _Ask) -> list[str]:
    typed, _ = ask.machine()
    recipe = _given(ask.body.recipe, "body.recipe")
    slip = slip_of(printable(typed.name), ask.body.when, recipe, ask.language)
    return recipe_slip(slip, ask.paper, ask.language)


_SHEETS = {
    "dip_scale": _dip_scale,
    "bucket_scale": _bucket_scale,
    "machine_card": _machine_card,
    "log_sheet": _log_sheet,
    "recipe_slip": _recipe_slip,
}


def draw_sheet(body: DrawSheetBody) -> DrawSheetResult:
    """The pages of one sheet.

    Errors: every fault of reading the machine and the other fields, at the path of the field;
    ``out_of_range`` for a check line that a correction cannot make up for.
    """
    ask = _Ask(body)
    paper = ask.paper
    measured_mm = paper.measured_mm
    return DrawSheetResult(
        kind=body.kind,
        paper=body.paper,
        page_width_mm=paper.page_mm[0],
        page_height_mm=paper.page_mm[1],
        width_mm=paper.room_mm[0],
        height_mm=paper.room_mm[1],
        pages=_SHEETS[body.kind](ask),
        print_scale=paper.stretch,
        doubts=ask.reader.doubts,
        line_passes=None if measured_mm is None else abs(measured_mm - CHECK_MM) <= PASSES_MM,
    )
