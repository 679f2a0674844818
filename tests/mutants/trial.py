"""Tests started anew for one mutant, in a forked process that ends with it."""

import gc
import os
import sys
from collections.abc import Sequence
from dataclasses import dataclass
from importlib.abc import MetaPathFinder
from importlib.machinery import ModuleSpec, SourceFileLoader
from importlib.util import spec_from_file_location
from pathlib import Path
from types import CodeType, ModuleType

import hypothesis

# Loaded once, here, and not again after every fork; none of them loads pycore.
import numpy as np  # noqa: F401
import playwright.sync_api  # noqa: F401
import pytest
import scipy.interpolate
import scipy.optimize
import scipy.special
import scipy.stats  # noqa: F401
import uncertainties  # noqa: F401

from web.build.paths import ROOT

# Against lists that never stop growing.
MOST_BYTES = 4 * 2**30


@dataclass(frozen=True)
class Tests:
    """Arguments of pytest that run the tests of the module ``name`` in the file ``path``.

    ``most_s`` seconds of a processor end them, against loops that never end.
    """

    arguments: Sequence[str]
    name: str
    path: Path
    most_s: int

    def check_not_loaded(self) -> None:
        """Raises RuntimeError if the module is loaded, since a mutant would not be met then."""
        if self.name in sys.modules:
            raise RuntimeError(f"{self.name} is loaded already: a mutant could not take its place")


class _Loader(SourceFileLoader):
    """Gives a module the code of a mutant."""

    def __init__(self, name: str, path: Path, code: CodeType) -> None:
        super().__init__(name, str(path))
        self._code = code

    def get_code(self, fullname: str) -> CodeType:
        """The mutant, whatever stands in the file."""
        del fullname
        return self._code


class Finder(MetaPathFinder):
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

    def __init__(self, finder: Finder | None) -> None:
        self._finder = finder

    def pytest_configure(self) -> None:
        # pytest has put a loader of its own in front meanwhile, which reads the file itself.
        if self._finder is not None:
            sys.meta_path.insert(0, self._finder)


def name_of(path: Path) -> str:
    """Dotted name of a module's file."""
    return ".".join(path.relative_to(ROOT).with_suffix("").parts)


def passes(tests: Tests, code: CodeType | None) -> bool:
    """Whether the tests all pass, with their module as ``code``, or as it is with None.

    A run that ends in any other way, by its limit of time or memory too, does not pass.
    """
    tests.check_not_loaded()
    # What is loaded stays: to walk it in every fork took half of the time.
    gc.freeze()
    child = os.fork()
    if child == 0:
        try:
            limit(tests.most_s)
            silence()
            finder = None if code is None else Finder(tests.name, tests.path, code)
            os._exit(start(tests, finder))
        finally:
            os._exit(1)
    return exits_well(child)


def exits_well(child: int) -> bool:
    """Waits for a process; whether it ended with 0."""
    return os.waitstatus_to_exitcode(os.waitpid(child, 0)[1]) == 0


def limit(most_s: int) -> None:
    """Ends this process after ``most_s`` seconds of a processor or with too much memory."""
    # Not on Windows, where this file is read all the same when tests are collected.
    import resource

    resource.setrlimit(resource.RLIMIT_CPU, (most_s, most_s))
    resource.setrlimit(resource.RLIMIT_AS, (MOST_BYTES, MOST_BYTES))


def silence() -> None:
    """Leaves this process without any output."""
    nowhere = os.open(os.devnull, os.O_WRONLY)
    os.dup2(nowhere, 1)
    os.dup2(nowhere, 2)


def start(tests: Tests, finder: Finder | None, *plugins: object) -> int:
    """Runs pytest up to the first failure, with the module that ``finder`` gives; its status."""
    # The same cases for every mutant, no time spent on the smallest failing one, and no failure
    # because the machine is busy.
    quick = [hypothesis.Phase.explicit, hypothesis.Phase.generate]
    hypothesis.settings.register_profile(
        "mutants", phases=quick, derandomize=True, database=None, deadline=None
    )
    hypothesis.settings.load_profile("mutants")
    sys.dont_write_bytecode = True
    if finder is not None:
        # Here already, since the first files of tests are loaded before pytest is configured.
        sys.meta_path.insert(0, finder)
    options = ["-x", "-q", "-p", "no:cacheprovider", "--hypothesis-profile=mutants"]
    return int(pytest.main([*options, *tests.arguments], plugins=[_Plugin(finder), *plugins]))
