"""pycore.desk.log.messages: field for field as in the contract."""

from dataclasses import MISSING, fields
from typing import Any

import pytest

from pycore.desk.log import messages as told
from pycore.journal import chain, clocks, file, open_pours, state
from tests.unit.desk.contract.test_messages import DEFINITIONS

REPORT = DEFINITIONS["log_report"]["properties"]
PAIRS: list[tuple[type, dict[str, Any]]] = [
    (told.FoldLogBody, DEFINITIONS["fold_log_body"]),
    (told.ReadExportBody, DEFINITIONS["read_export_body"]),
    (told.WriteExportBody, DEFINITIONS["write_export_body"]),
    (told.MergeLogsBody, DEFINITIONS["merge_logs_body"]),
    (told.NamedText, DEFINITIONS["merge_logs_body"]["properties"]["files"]["items"]),
    (told.HandoverBody, DEFINITIONS["handover_body"]),
    (told.WriteCsvBody, DEFINITIONS["write_csv_body"]),
    (told.LogReport, DEFINITIONS["log_report"]),
    (told.QuarantinedShown, REPORT["quarantined"]["items"]),
    (told.FileShown, DEFINITIONS["file_report"]),
    (told.LatestEntry, DEFINITIONS["latest_entry"]),
    (told.SetupNow, DEFINITIONS["setup_now"]),
    (told.StateNow, DEFINITIONS["state_now"]),
    (told.LevelNow, DEFINITIONS["level_now"]),
    (told.StrengthNow, DEFINITIONS["strength_now"]),
    (told.FluidNow, DEFINITIONS["fluid_now"]),
    (told.InstrumentNow, DEFINITIONS["instrument_now"]),
    (told.MachineShown, DEFINITIONS["machine_now"]),
    (file.Head, DEFINITIONS["log_head"]),
    (chain.Fork, REPORT["forks"]["items"]),
    (chain.Gap, REPORT["gaps"]["items"]),
    (chain.Break, REPORT["breaks"]["items"]),
    (clocks.ClockFlag, REPORT["clock_flags"]["items"]),
    (open_pours.OpenPour, DEFINITIONS["open_pour"]),
    (open_pours.Recheck, DEFINITIONS["due_recheck"]),
    (state.Since, DEFINITIONS["machine_now"]["properties"]["since_measured"]),
]


@pytest.mark.parametrize(("kind", "definition"), PAIRS, ids=[kind.__name__ for kind, _ in PAIRS])
def test_same_fields_and_the_same_ones_required(kind: type, definition: dict[str, Any]) -> None:
    own = fields(kind)
    assert {field.name for field in own} == set(definition["properties"])
    free = {f.name for f in own if f.default is not MISSING or f.default_factory is not MISSING}
    assert {field.name for field in own} - free == set(definition["required"])


def test_every_dataclass_is_compared() -> None:
    own = {kind for kind in vars(told).values() if isinstance(kind, type)}
    mine = {kind for kind in own if kind.__module__ == told.__name__}
    assert mine == {kind for kind, _ in PAIRS if kind.__module__ == told.__name__}
