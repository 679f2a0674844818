"""The house: data walks one way, and pycore has no clock, chance, files or printing."""

import ast
from pathlib import Path

import pytest

from pycore.desk.operations import OPERATIONS
from tests import contract
from tests.repo.sources import functions, imported, name_of, python_files, tree_of
from web.build.paths import ROOT

# In the order in which data walks through; a room imports only from rooms before it.
ROOMS = [
    "quantity", "sump", "reading", "recipe", "practice", "journal", "advice", "sheets", "desk",
    "office",
]  # fmt: skip
# Of the desk, in the order of a person's tasks. What lies beside them is the door itself.
DESK = ["contract", "setup", "check", "log", "trend", "look_back", "practice", "sheets"]
PYCORE = python_files("pycore")
CLOCK_CHANCE_FILES = {
    "asyncio", "datetime", "http", "io", "logging", "os", "pathlib", "random", "secrets", "shutil",
    "socket", "sqlite3", "subprocess", "tempfile", "threading", "time", "urllib", "uuid",
}  # fmt: skip
CALLS = {"open", "print", "input", "eval", "exec", "breakpoint", "__import__"}
# Only these read stdin, write stdout or open files, or serve only those that do; the phone's bundle
# holds none of them.
DOOR = {
    "pycore/__main__.py",
    *(name_of(path) for path in PYCORE if name_of(path).startswith("pycore/office/")),
}
LIBRARIES = {"uncertainties", "segno"}


def room_of(module: str) -> tuple[int, int]:
    """Place of a pycore module in the walk; the package itself stands before all rooms."""
    parts = module.split(".")
    if len(parts) < 2 or parts[1] not in ROOMS:
        return (-1, 0)
    inner = DESK.index(parts[2]) if len(parts) > 2 and parts[2] in DESK else len(DESK)
    return (ROOMS.index(parts[1]), inner if parts[1] == "desk" else 0)


def module_of(path: Path) -> str:
    """Dotted name of a file."""
    return name_of(path).removesuffix(".py").removesuffix("/__init__").replace("/", ".")


def test_what_works_with_files_stays_off_the_phone() -> None:
    names = (name.removesuffix(".py").replace("/", ".") for name in DOOR)
    office = {name for name in names if not name.endswith("__main__")}
    packer = ROOT / "web" / "build" / "node" / "pack_modules.py"
    (left_out,) = (
        ast.literal_eval(node.value)
        for node in tree_of(packer).body
        if isinstance(node, ast.Assign) and ast.unparse(node.targets[0]) == "OFFICE"
    )
    assert len(office) > 1
    assert {name.rpartition(".")[0] for name in office} == {left_out}
    imported_by = {
        name_of(path): imported(path) & office for path in PYCORE if name_of(path) not in DOOR
    }
    assert {name: found for name, found in imported_by.items() if found} == {}


def test_every_room_has_its_place() -> None:
    folders = {module_of(path) for path in PYCORE if path.name == "__init__.py"}
    rooms = {f"pycore.{room}" for room in ROOMS} | {f"pycore.desk.{room}" for room in DESK}
    assert folders == {"pycore"} | rooms


def test_the_contract_has_the_rooms_of_the_desk() -> None:
    assert {file.split("/")[0] for file in contract.FILES} == set(DESK)
    answered_in = {
        op: answer.__module__.split(".")[2]
        for op, (_, answer) in OPERATIONS.items()
        if answer.__module__.startswith("pycore.desk.") and answer.__module__.count(".") > 2
    }
    assert len(answered_in) > 20
    assert {op: contract.room_of(op) for op in answered_in} == answered_in


@pytest.mark.parametrize("path", PYCORE, ids=name_of)
def test_nothing_walks_back(path: Path) -> None:
    own = (len(ROOMS), 0) if path.name == "__main__.py" else room_of(module_of(path))
    wrong = [name for name in imported(path) if name.startswith("pycore") and room_of(name) > own]
    assert wrong == []


@pytest.mark.parametrize("path", PYCORE, ids=name_of)
def test_no_clock_chance_files_or_printing(path: Path) -> None:
    if name_of(path) in DOOR:
        assert imported(path) & {"datetime", "random", "secrets", "time", "uuid"} == set()
        return
    used = {name.split(".")[0] for name in imported(path)} & CLOCK_CHANCE_FILES
    called = {
        node.func.id
        for node in ast.walk(tree_of(path))
        if isinstance(node, ast.Call) and isinstance(node.func, ast.Name)
    } & CALLS
    assert (used, called) == (set(), set())


@pytest.mark.parametrize("path", PYCORE, ids=name_of)
def test_no_other_library_than_the_phone_has(path: Path) -> None:
    import sys

    outside = {name.split(".")[0] for name in imported(path)}
    outside -= set(sys.stdlib_module_names) | {"pycore"}
    assert outside <= LIBRARIES


@pytest.mark.parametrize("path", python_files("pycore", "web"), ids=name_of)
def test_nothing_that_ships_imports_the_tests(path: Path) -> None:
    assert not [name for name in imported(path) if name.split(".")[0] == "tests"]


def test_no_state_is_kept_in_pycore() -> None:
    stateful = [
        f"{name_of(path)}:{node.lineno}"
        for path in PYCORE
        for node in ast.walk(tree_of(path))
        if isinstance(node, ast.Global | ast.Nonlocal)
    ]
    assert stateful == []
    assert any(True for path in PYCORE for _ in functions(path))
