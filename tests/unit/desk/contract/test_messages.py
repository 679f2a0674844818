"""pycore.desk.contract.messages: field for field as in the contract."""

from dataclasses import fields
from typing import Any

import pytest

from pycore.desk.contract import answers, messages, records, results
from pycore.recipe import holding, outcome, outlook, pours, request
from pycore.sump import outline
from tests.contract import DEFINITIONS
from tests.unit.desk.contract.compared import (
    Pairs,
    assert_same_fields,
    names_of,
)

PLAN_BODY = DEFINITIONS["plan_recipe_body"]["properties"]
PLAN_RESULT = DEFINITIONS["plan_recipe_result"]["properties"]
FLUID = DEFINITIONS["fluid_typed"]["properties"]
FIT = DEFINITIONS["fit_factor_result"]["properties"]
SUMP = DEFINITIONS["sump_typed"]["properties"]
CALIBRATION = DEFINITIONS["calibrate_sump_body"]["properties"]
PAIRS: Pairs = [
    (records.Typed, DEFINITIONS["typed"]),
    (messages.PointTyped, DEFINITIONS["sump_typed"]["properties"]["points"]["items"]),
    (messages.SumpTyped, DEFINITIONS["sump_typed"]),
    (messages.StepTyped, SUMP["steps"]["items"]),
    (messages.ObstacleTyped, DEFINITIONS["obstacle_typed"]),
    (messages.HiddenTyped, SUMP["hidden"]),
    (messages.CalibrateSumpBody, DEFINITIONS["calibrate_sump_body"]),
    (messages.CalibrationStep, CALIBRATION["steps"]["items"]),
    (messages.CalibrationPair, CALIBRATION["pairs"]["items"]),
    (results.CalibrateSumpResult, DEFINITIONS["calibrate_sump_result"]),
    (results.CalibratedRow, DEFINITIONS["calibrated_row"]),
    (results.CalibratedStep, DEFINITIONS["calibrated_step"]),
    (outline.Drawing, DEFINITIONS["drawing"]),
    (outline.Wall, DEFINITIONS["drawing"]["properties"]["outline"]["items"]),
    (outline.Block, DEFINITIONS["drawing"]["properties"]["blocks"]["items"]),
    (records.FluidTyped, DEFINITIONS["fluid_typed"]),
    (records.TargetTyped, DEFINITIONS["target_typed"]),
    (messages.MixingTyped, DEFINITIONS["mixing_typed"]),
    (messages.BucketTyped, DEFINITIONS["bucket_typed"]),
    (messages.MachineTyped, DEFINITIONS["machine_typed"]),
    (messages.PailTyped, DEFINITIONS["pail_typed"]),
    (messages.WaysTyped, DEFINITIONS["ways_typed"]),
    (messages.UnitTyped, DEFINITIONS["unit_typed"]),
    (results.Jugs, DEFINITIONS["pour_shown"]["properties"]["jugs"]),
    (results.WayShown, DEFINITIONS["way_shown"]),
    (messages.DipTyped, DEFINITIONS["dip_typed"]),
    (records.ReadingTyped, DEFINITIONS["reading_typed"]),
    (messages.DescribeBody, DEFINITIONS["describe_body"]),
    (messages.ReadQuantityBody, DEFINITIONS["read_quantity_body"]),
    (messages.ReadMachineBody, DEFINITIONS["read_machine_body"]),
    (messages.AssessSumpBody, DEFINITIONS["assess_sump_body"]),
    (messages.PlanCheckBody, DEFINITIONS["plan_check_body"]),
    (messages.HoldCheckBody, DEFINITIONS["hold_check_body"]),
    (messages.LastCheck, DEFINITIONS["hold_check_body"]["properties"]["last"]),
    (messages.LaterReading, DEFINITIONS["hold_check_body"]["properties"]["read"]),
    (results.HoldCheckResult, DEFINITIONS["hold_check_result"]),
    (records.ChartPairTyped, FLUID["factor_chart"]["items"]),
    (records.WaterLimitsTyped, DEFINITIONS["water_limits_typed"]),
    (records.ZeroTyped, DEFINITIONS["zero_typed"]),
    (records.InstrumentTyped, DEFINITIONS["instrument_typed"]),
    (records.SecondTyped, DEFINITIONS["second_typed"]),
    (records.ReadFluidBody, DEFINITIONS["read_fluid_body"]),
    (records.WaterTyped, DEFINITIONS["water_typed"]),
    (records.ReadWaterBody, DEFINITIONS["read_water_body"]),
    (records.JugTyped, DEFINITIONS["jug_typed"]),
    (records.FitFactorBody, DEFINITIONS["fit_factor_body"]),
    (answers.Drum, DEFINITIONS["read_fluid_result"]["properties"]["drum"]),
    (answers.ReadFluidResult, DEFINITIONS["read_fluid_result"]),
    (answers.Hardness, DEFINITIONS["hardness"]),
    (answers.ReadWaterResult, DEFINITIONS["read_water_result"]),
    (answers.FittedJug, DEFINITIONS["fitted_jug"]),
    (answers.Interval, FIT["interval"]),
    (answers.Keep, FIT["keep"]),
    (answers.FitFactorResult, DEFINITIONS["fit_factor_result"]),
    (results.SecondStrength, DEFINITIONS["second_strength"]),
    (results.Disagreement, DEFINITIONS["disagreement"]),
    (results.Doubt, DEFINITIONS["doubt"]),
    (results.Level, DEFINITIONS["level"]),
    (results.Strength, DEFINITIONS["strength"]),
    (results.Section, DEFINITIONS["section"]),
    (results.AssessSumpResult, DEFINITIONS["assess_sump_result"]),
    (results.PourShown, DEFINITIONS["pour_shown"]),
    (results.PlanCheckResult, DEFINITIONS["plan_check_result"]),
    (request.PlanRequest, DEFINITIONS["plan_recipe_body"]),
    (request.SumpState, PLAN_BODY["sump"]),
    (request.Target, DEFINITIONS["plan_target"]),
    (request.Mixing, DEFINITIONS["plan_mixing"]),
    (request.Bucket, DEFINITIONS["plan_bucket"]),
    (request.DrawOff, PLAN_BODY["draw_off"]),
    (request.Pail, DEFINITIONS["plan_pail"]),
    (request.Effort, PLAN_BODY["effort"]),
    (request.MixingUnit, PLAN_BODY["unit"]),
    (request.Stock, PLAN_BODY["stock"]),
    (request.ReadyMix, PLAN_BODY["stock"]["properties"]["ready_mixes"]["items"]),
    (request.OwnFluid, PLAN_BODY["own_fluid"]),
    (request.Losses, PLAN_BODY["losses"]),
    (outcome.Plan, DEFINITIONS["plan_recipe_result"]),
    (outcome.Alternative, DEFINITIONS["alternative"]),
    (outcome.Wait, DEFINITIONS["alternative"]["properties"]["wait"]),
    (outcome.Reach, PLAN_RESULT["reachable"]),
    (pours.Pour, DEFINITIONS["pour"]),
    (pours.Step, DEFINITIONS["step"]),
    (pours.Totals, PLAN_RESULT["totals"]),
    (holding.HoldingRequest, DEFINITIONS["plan_holding_body"]),
    (holding.LastReading, DEFINITIONS["plan_holding_body"]["properties"]["last"]),
    (holding.Holding, DEFINITIONS["plan_holding_result"]),
    (holding.Ends, DEFINITIONS["plan_holding_result"]["properties"]["ends"]),
    (outlook.Final, PLAN_RESULT["final"]),
    (outlook.Share, PLAN_RESULT["shares"]["items"]),
]


@pytest.mark.parametrize(("kind", "definition"), PAIRS, ids=names_of(PAIRS))
def test_same_fields_and_the_same_ones_required(kind: type, definition: dict[str, Any]) -> None:
    assert_same_fields(kind, definition)


def test_every_dataclass_of_the_messages_is_compared() -> None:
    own = {
        kind.__name__
        for module in (messages, records, results, answers)
        for kind in vars(module).values()
        if isinstance(kind, type) and kind.__module__ == module.__name__
    }
    compared = {kind.__name__ for kind, _ in PAIRS if kind.__module__.startswith("pycore.desk")}
    assert own - {"Units"} == compared
    assert {field.name for field in fields(messages.Units)} == set(
        DEFINITIONS["units"]["properties"]
    )
