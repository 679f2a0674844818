"""pycore.desk.log.messages: field for field as in the contract."""

from typing import Any

import pytest

from pycore.desk.log import messages as told
from pycore.journal import chain, clocks, file, open_pours, state
from tests.contract import DEFINITIONS
from tests.unit.desk.contract.compared import (
    Pairs,
    assert_all_compared,
    assert_same_fields,
    names_of,
)

REPORT = DEFINITIONS["log_report"]["properties"]
PAIRS: Pairs = [
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


@pytest.mark.parametrize(("kind", "definition"), PAIRS, ids=names_of(PAIRS))
def test_same_fields_and_the_same_ones_required(kind: type, definition: dict[str, Any]) -> None:
    assert_same_fields(kind, definition)


def test_every_dataclass_is_compared() -> None:
    assert_all_compared(told, PAIRS)
