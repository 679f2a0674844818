"""``python validators.py CONTRACT OUT``: the checks of every message as plain Python.

Runs in ``.venv``, where fastjsonschema is. What it writes needs no package on the phone.
"""

import ast
import json
import re
import sys
from pathlib import Path
from typing import Any

import fastjsonschema

HEADER = '''"""Generated from shared/schema by `python3 -m web contract`. Do not edit.

One function for each message; it returns the message or raises SchemaRefusal.
"""

# ruff: noqa
# mypy: ignore-errors

'''
REFUSAL = "from pycore.desk.contract.refusal import SchemaRefusal as JsonSchemaValueException"
# The generator catches this one too, for a mode of several refusals at once that is not used.
ALIAS = "JsonSchemaValuesException = JsonSchemaValueException"


def validators_module(contract: dict[str, Any]) -> str:
    """The text of ``pycore/desk/contract/validators.py``."""
    messages = contract["messages"]
    # A schema that mentions each message once makes the generator write one function for each.
    root = {
        "$schema": "http://json-schema.org/draft-07/schema#",
        "definitions": contract["definitions"],
        "type": "object",
        "properties": {name: {"$ref": f"#/definitions/{name}"} for name in messages},
    }
    tree = ast.parse(fastjsonschema.compile_to_code(root, use_default=False))
    tree.body = [part for part in tree.body if not _is_left_out(part)]
    code = ast.unparse(ast.fix_missing_locations(_SmallDefinitions().visit(tree)))
    functions = {name: f"validate___definitions_{name}" for name in messages}
    for function in functions.values():
        if not re.search(rf"^def {function}\(", code, re.MULTILINE):
            raise SystemExit(f"fastjsonschema did not write {function}")
    if "fastjsonschema" in code:
        raise SystemExit("fastjsonschema writes something new that would be needed on the phone")
    table = "".join(f'    "{name}": {function},\n' for name, function in functions.items())
    return f"{HEADER}{REFUSAL}\n\n{ALIAS}\n{code}\n\nVALIDATORS = {{\n{table}}}\n"


def _is_left_out(part: ast.stmt) -> bool:
    """The import of the package, and the check of the root that exists only to name the others."""
    if isinstance(part, ast.ImportFrom):
        return (part.module or "").startswith("fastjsonschema")
    return isinstance(part, ast.FunctionDef) and part.name == "validate"


class _SmallDefinitions(ast.NodeTransformer):
    """Keeps of each refusal only what ``fault_from`` reads.

    That is of the ``definition`` the rule that was broken, and of the sentence the names that only
    it tells. The generator repeats the whole definition at each of its rules, and a sentence: more
    than half a megabyte that every phone would load.
    """

    def visit_Call(self, node: ast.Call) -> ast.AST:
        self.generic_visit(node)
        named = {keyword.arg: keyword for keyword in node.keywords}
        if "definition" not in named or "rule" not in named:
            return node
        definition, rule = named["definition"].value, ast.literal_eval(named["rule"].value)
        whole = ast.literal_eval(definition)
        if rule != "additionalProperties":
            node.args = [ast.Constant(rule)]
        named["definition"].value = ast.parse(repr({rule: whole.get(rule)}), mode="eval").body
        return node


if __name__ == "__main__":
    source, target = Path(sys.argv[1]), Path(sys.argv[2])
    target.write_text(
        validators_module(json.loads(source.read_text(encoding="utf-8"))), encoding="utf-8"
    )
