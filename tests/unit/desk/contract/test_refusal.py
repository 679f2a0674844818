"""pycore.desk.contract.refusal: from a broken rule to a code, a path and what is allowed."""

import pytest

from pycore.desk.contract.refusal import SchemaRefusal, fault_from, short
from tests.properties.asking import refusal


@pytest.mark.parametrize(
    ("rule", "definition", "value", "code", "limit"),
    [
        ("minimum", {"minimum": 0}, -1, "out_of_range", {"minimum": 0}),
        ("exclusiveMaximum", {"exclusiveMaximum": 40}, 40, "out_of_range", {"below": 40}),
        ("maxLength", {"maxLength": 3}, "long", "too_long", {"most": 3}),
        ("minItems", {"minItems": 2}, [1], "too_few", {"least": 2}),
        ("maxItems", {"maxItems": 2}, [1, 2, 3], "too_many", {"most": 2}),
        ("enum", {"enum": ["a", "b"]}, "c", "not_allowed", {"allowed": ["a", "b"]}),
        ("type", {"type": "number"}, True, "wrong_type", {"type": "number"}),
    ],
)
def test_rule(rule: str, definition: object, value: object, code: str, limit: object) -> None:
    broken = SchemaRefusal("no", value, "data.a[2].b", definition, rule)
    fault = fault_from(broken, "body")
    assert (fault.code, fault.limit) == (code, limit)
    assert fault.path == "body.a[2].b"


def test_missing_field_is_part_of_the_path() -> None:
    missing = SchemaRefusal("no", {"a": 1}, "data", {"required": ["a", "b"]}, "required")
    assert fault_from(missing, "body").path == "body.b"


@pytest.mark.parametrize("name", ["z", "a'b", 'a"b', "} properties", "{'a'}", "\n", "é", "\\", ""])
def test_unknown_field_is_part_of_the_path(name: str) -> None:
    error = refusal("describe", {name: 2})
    assert (error["code"], error["path"], error["got"]) == ("unknown_field", f"body.{name}", name)


def test_first_of_several_unknown_fields_whatever_their_order() -> None:
    fields = {"zeta": 1, "beta": 2, "eta": 3}
    backwards = dict(reversed(fields.items()))
    assert refusal("describe", fields) == refusal("describe", backwards)


def test_long_values_are_shortened() -> None:
    assert len(short("x" * 1000)) < 100
    assert len(short({"a": 1})) < 40
    assert short(7) == 7
