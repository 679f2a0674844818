"""Versions that stand in two places are equal."""

import json
import re
import tomllib
from pathlib import Path

import pytest

import pycore
from pycore.desk import door, operations
from tests.contract import DEFINITIONS
from tests.repo.sources import files
from web.build import phone
from web.build.paths import LOCKS, NODE_MODULES, ROOT, WEB

PROJECT = tomllib.loads((ROOT / "pyproject.toml").read_text(encoding="utf-8"))
PACKAGE = json.loads((WEB / "package.json").read_text(encoding="utf-8"))
PYODIDE = json.loads((NODE_MODULES / "pyodide" / "pyodide-lock.json").read_text(encoding="utf-8"))


def pinned(lock: Path, name: str) -> set[str]:
    """Versions of a package in a lock file."""
    text = lock.read_text(encoding="utf-8")
    return set(re.findall(rf"^{re.escape(name)}==([^ ;\\]+)", text, re.MULTILINE))


def test_pycore() -> None:
    project = PROJECT["project"]
    assert project.get("version", pycore.__version__) == pycore.__version__


def test_oldest_python() -> None:
    oldest = PROJECT["project"]["requires-python"].removeprefix(">=")
    short = "py" + oldest.replace(".", "")
    assert PROJECT["tool"]["ruff"]["target-version"] == short
    assert PROJECT["tool"]["mypy"]["python_version"] == oldest
    for place in (ROOT / "tests" / "__main__.py", WEB / "__main__.py"):
        text = place.read_text(encoding="utf-8")
        assert f"OLDEST_PYTHON = ({oldest.replace('.', ', ')})" in text


def test_pyodide_and_its_python() -> None:
    locked = json.loads((WEB / "package-lock.json").read_text(encoding="utf-8"))
    wanted = PACKAGE["dependencies"]["pyodide"]
    assert locked["packages"]["node_modules/pyodide"]["version"] == wanted
    installed = json.loads((NODE_MODULES / "pyodide" / "package.json").read_text(encoding="utf-8"))
    assert installed["version"] == wanted
    assert PYODIDE["info"]["python"].startswith(phone.PHONE_PYTHON + ".")


def test_schema() -> None:
    version = DEFINITIONS["request"]["properties"]["v"]["const"]
    assert version == door.VERSION == operations.SCHEMA


@pytest.mark.parametrize(
    ("name", "places"),
    [
        ("uncertainties", [LOCKS / "phone.lock", ROOT / "tests" / "requirements.lock"]),
        (
            "segno",
            [LOCKS / "phone.lock", LOCKS / "tools.lock", ROOT / "tests" / "requirements.lock"],
        ),
        ("fastjsonschema", [LOCKS / "tools.lock", ROOT / "tests" / "requirements.lock"]),
    ],
)
def test_package_of_two_locks(name: str, places: list[Path]) -> None:
    versions = [pinned(place, name) for place in places]
    assert all(len(found) == 1 for found in versions)
    assert len(set.union(*versions)) == 1


def test_dependencies_of_pycore_are_those_on_the_phone() -> None:
    wanted = []
    for name in ("uncertainties", "segno"):
        (version,) = pinned(LOCKS / "phone.lock", name)
        wanted.append(f"{name}=={version}")
    assert PROJECT["project"]["dependencies"] == wanted


@pytest.mark.parametrize(
    "lock",
    [path for path in files() if path.suffix == ".lock"],
    ids=lambda p: p.name,
)
def test_everything_locked_has_a_hash(lock: Path) -> None:
    text = lock.read_text(encoding="utf-8").replace("\\\n", " ")
    entries = [line for line in text.splitlines() if "==" in line]
    assert entries
    assert [line.split()[0] for line in entries if "--hash=sha256:" not in line] == []


def test_npm_versions_are_exact() -> None:
    versions = {**PACKAGE["dependencies"], **PACKAGE["devDependencies"]}
    assert {name: v for name, v in versions.items() if not re.fullmatch(r"\d+\.\d+\.\d+", v)} == {}
