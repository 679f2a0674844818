"""pycore.desk.check.charge_messages: field for field as in the contract."""

from dataclasses import MISSING, fields

from pycore.desk.check.charge_messages import PlanChargeBody
from tests.unit.desk.contract.test_messages import DEFINITIONS


def test_same_fields_as_in_the_contract() -> None:
    definition = DEFINITIONS["plan_charge_body"]
    own = fields(PlanChargeBody)
    assert {field.name for field in own} == set(definition["properties"])
    assert {f.name for f in own if f.default is MISSING} == set(definition["required"])
