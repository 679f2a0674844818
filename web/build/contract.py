"""The contract in ``shared`` turned into code for both sides: ``python3 -m web contract``.

``shared/schema/*/*.schema.json`` and ``shared/quantities.json`` are the one source. From them come
the validators that pycore runs, the types that the page is checked with, and the table of
quantities; from ``shared/words/en.json`` the sentences that pycore prints on paper. The results
are committed; ``stale()`` tells which of them no longer fit.
"""

import json
import re
from pathlib import Path
from typing import Any

from web.build.environment import ensure_venv, venv_python
from web.build.known import known_module
from web.build.node import ensure_node, ensure_packages
from web.build.paths import PYCORE, ROOT, SCRIPTS, SHARED, STATE, WEB
from web.build.run import run_tool
from web.build.steps import Steps, write_whole
from web.build.trouble import Trouble
from web.build.words import PREFIX, REPORT_ALSO, REPORT_PREFIX, words_module

SCHEMAS = SHARED / "schema"
VALIDATORS = PYCORE / "desk" / "contract" / "validators.py"
KNOWN = PYCORE / "quantity" / "known.py"
ENGLISH = PYCORE / "sheets" / "english.py"
REPORT = PYCORE / "office" / "report_words.py"
REPORT_GERMAN = PYCORE / "office" / "report_german.py"
GERMAN = PYCORE / "office" / "german.py"
MESSAGES = WEB / "src" / "core" / "messages.ts"

MERGED = STATE / "contract.json"
REFERENCE = re.compile(r"^(?:(?:\.\./[a-z_]+/)?[a-z_]+\.schema\.json)?#/definitions/([a-z0-9_]+)$")
# What pycore checks is what comes in: the outside of a request, and each operation's body.
# Results are checked in the tests, from the schema itself; on the phone they would be dead weight.
ENVELOPE = ("request",)


def write_contract(steps: Steps) -> list[str]:
    """Writes the generated files that differ and returns their names. Raises Trouble."""
    changed = _differing(steps)
    for path, content in changed.items():
        write_whole(path, content.encode())
    return [path.relative_to(ROOT).as_posix() for path in changed]


def stale(steps: Steps | None = None) -> list[str]:
    """Names of the generated files that are not what the contract would make now."""
    return [path.relative_to(ROOT).as_posix() for path in _differing(steps or Steps())]


def _differing(steps: Steps) -> dict[Path, str]:
    return {
        path: content
        for path, content in generated(steps).items()
        if not path.exists() or path.read_text(encoding="utf-8") != content
    }


def generated(steps: Steps) -> dict[Path, str]:
    """Every generated file's path and the text that it should have. Raises Trouble."""
    ensure_venv(steps)
    node = ensure_node(steps)
    ensure_packages(node, steps)
    definitions = merged_definitions(SCHEMAS)
    write_whole(MERGED, json.dumps(contract_of(definitions), indent=1).encode())
    with steps.show("Contract"):
        run_tool(
            "Generating the validators",
            [venv_python(), WEB / "build" / "validators.py", MERGED, STATE / "validators.py"],
        )
        run_tool(
            "Generating the message types",
            [*node.node, SCRIPTS / "messages.mjs", MERGED, STATE / "messages.ts"],
            extra_environment=node.environment,
        )
        quantities = json.loads((SHARED / "quantities.json").read_text(encoding="utf-8"))
        words, german = (
            json.loads((SHARED / "words" / name).read_text(encoding="utf-8"))
            for name in ("en.json", "de.json")
        )
        return {
            ENGLISH: words_module(words, PREFIX),
            GERMAN: words_module(german, PREFIX, file="de.json"),
            REPORT: words_module(words, REPORT_PREFIX, REPORT_ALSO),
            REPORT_GERMAN: words_module(german, REPORT_PREFIX, REPORT_ALSO, "de.json"),
            VALIDATORS: (STATE / "validators.py").read_text(encoding="utf-8"),
            MESSAGES: (STATE / "messages.ts").read_text(encoding="utf-8"),
            KNOWN: known_module(quantities["quantities"]),
        }


def contract_of(definitions: dict[str, Any]) -> dict[str, Any]:
    """What the two generators read: all definitions, the operations, and the messages to check."""
    operations = sorted(name[: -len("_body")] for name in definitions if name.endswith("_body"))
    for name in operations:
        if f"{name}_result" not in definitions:
            raise Trouble(
                f"The contract has {name}_body but no {name}_result.",
                "Add the missing definition in shared/schema.",
            )
    messages = [name for name in ENVELOPE if name in definitions]
    messages += [f"{name}_body" for name in operations]
    messages += sorted(name for name in definitions if name.endswith(("_entry", "_content")))
    return {"definitions": definitions, "operations": operations, "messages": messages}


def merged_definitions(folder: Path) -> dict[str, Any]:
    """All files' definitions in one namespace, references pointing into it. Raises Trouble."""
    merged: dict[str, Any] = {}
    for path in sorted(folder.rglob("*.schema.json")):
        for name, definition in json.loads(path.read_text(encoding="utf-8"))["definitions"].items():
            if name in merged:
                raise Trouble(
                    f"Two files in shared/schema define {name!r}, one of them is {path.name}.",
                    "Give one of them another name.",
                )
            merged[name] = _with_local_references(definition, path.name)
    missing = sorted(_referenced(merged) - merged.keys())
    if missing:
        raise Trouble(
            f"The contract refers to what no file in shared/schema defines: {', '.join(missing)}.",
            "Add the definition, or correct the reference.",
        )
    return dict(sorted(merged.items()))


def _with_local_references(part: Any, file_name: str) -> Any:
    if isinstance(part, list):
        return [_with_local_references(item, file_name) for item in part]
    if not isinstance(part, dict):
        return part
    fresh = {key: _with_local_references(value, file_name) for key, value in part.items()}
    if isinstance(fresh.get("$ref"), str):
        found = REFERENCE.match(fresh["$ref"])
        if found is None:
            raise Trouble(
                f"{file_name} has a reference in a form that is not read: {fresh['$ref']}",
                "Write it as ../room/other.schema.json#/definitions/name.",
            )
        fresh["$ref"] = f"#/definitions/{found.group(1)}"
    return fresh


def _referenced(part: Any) -> set[str]:
    if isinstance(part, list):
        return set().union(*map(_referenced, part)) if part else set()
    if not isinstance(part, dict):
        return set()
    own = {part["$ref"].rsplit("/", 1)[-1]} if isinstance(part.get("$ref"), str) else set()
    return own.union(*map(_referenced, part.values()))
