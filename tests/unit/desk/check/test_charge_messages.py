"""pycore.desk.check.charge_messages: field for field as in the contract."""

from pycore.desk.check.charge_messages import PlanChargeBody
from tests.contract import DEFINITIONS
from tests.unit.desk.contract.compared import assert_same_fields


def test_same_fields_as_in_the_contract() -> None:
    assert_same_fields(PlanChargeBody, DEFINITIONS["plan_charge_body"])
