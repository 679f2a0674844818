"""Tests run against one mutant, in a forked process that ends with it."""

import os
import sys
from collections.abc import Sequence
from importlib.abc import MetaPathFinder
from importlib.machinery import ModuleSpec, SourceFileLoader
from importlib.util import spec_from_file_location
from pathlib import Path
from types import CodeType, ModuleType

import hypothesis

# Loaded once, here, and not again after every fork; none of them loads pycore.
import numpy as np  # noqa: F401
import pytest
import scipy.interpolate
import scipy.special  # noqa: F401
import uncertainties  # noqa: F401

from web.build.paths import ROOT

# Against loops that never end and lists that never stop growing. Without a defect a module's own
# tests take about one second, and the wider set about twenty.
OWN_CPU_S = 6
WIDE_CPU_S = 90
MOST_BYTES = 4 * 2**30


class _Loader(SourceFileLoader):
    """Gives a module the code of a mutant."""

    def __init__(self, name: str, path: Path, code: CodeType) -> None:
        super().__init__(name, str(path))
        self._code = code

    def get_code(self, fullname: str) -> CodeType:
        """The mutant, whatever stands in the file."""
        del fullname
        return self._code


class _Finder(MetaPathFinder):
    """Finds one module as its mutant and no other one."""

    def __init__(self, name: str, path: Path, code: CodeType) -> None:
        self._name, self._path, self._code = name, path, code

    def find_spec(
        self, fullname: str, path: Sequence[str] | None, target: ModuleType | None = None
    ) -> ModuleSpec | None:
        """The spec of the mutant under its module's name."""
        del path, target
        if fullname != self._name:
            return None
        loader = _Loader(self._name, self._path, self._code)
        return spec_from_file_location(fullname, self._path, loader=loader)


class _Plugin:
    """A plugin of pytest that keeps the mutant in front."""

    def __init__(self, finder: _Finder | None) -> None:
        self._finder = finder

    def pytest_configure(self) -> None:
        # pytest has put a loader of its own in front meanwhile, which reads the file itself.
        if self._finder is not None:
            sys.meta_path.insert(0, self._finder)


def name_of(path: Path) -> str:
    """Dotted name of a module's file."""
    return ".".join(path.relative_to(ROOT).with_suffix("").parts)


def passes(arguments: Sequence[str], path: Path, code: CodeType | None, most_s: int) -> bool:
    """Whether the tests all pass, with the module at ``path`` as ``code``, or as it is with None.

    A run that ends in any other way, after ``most_s`` seconds of a processor or by its limit of
    memory too, does not pass.
    """
    if "pycore" in sys.modules:
        raise RuntimeError("pycore is loaded already, so a mutant could not take its place")
    child = os.fork()
    if child == 0:
        status = 1
        try:
            status = _run(arguments, path, code, most_s)
        finally:
            os._exit(status)
    return os.waitstatus_to_exitcode(os.waitpid(child, 0)[1]) == 0


def _run(arguments: Sequence[str], path: Path, code: CodeType | None, most_s: int) -> int:
    # Not on Windows, where this file is read all the same when tests are collected.
    import resource

    resource.setrlimit(resource.RLIMIT_CPU, (most_s, most_s))
    resource.setrlimit(resource.RLIMIT_AS, (MOST_BYTES, MOST_BYTES))
    nowhere = os.open(os.devnull, os.O_WRONLY)
    os.dup2(nowhere, 1)
    os.dup2(nowhere, 2)
    # The same cases for every mutant, no time spent on the smallest failing one, and no failure
    # because the machine is busy.
    quick = [hypothesis.Phase.explicit, hypothesis.Phase.generate]
    hypothesis.settings.register_profile(
        "mutants", phases=quick, derandomize=True, database=None, deadline=None
    )
    hypothesis.settings.load_profile("mutants")
    sys.dont_write_bytecode = True
    finder = None if code is None else _Finder(name_of(path), path, code)
    if finder is not None:
        # Here already, since the first files of tests are loaded before pytest is configured.
        sys.meta_path.insert(0, finder)
    options = ["-x", "-q", "-p", "no:cacheprovider", "--hypothesis-profile=mutants"]
    return int(pytest.main([*options, *arguments], plugins=[_Plugin(finder)]))
