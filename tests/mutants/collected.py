"""Tests collected once, and then run against one mutant after another, each in its own fork.

The function that a mutant changes gets the mutant's code in the place of its own. That is the
same as loading the module anew only if nothing has called the function yet, so what ran while the
tests were loaded is written down; and only if the change lies inside a function. For all other
mutants the tests are loaded anew.
"""

import gc
import inspect
import os
import sys
from collections.abc import Iterator, Sequence
from contextlib import contextmanager, suppress
from types import CodeType, FrameType, FunctionType
from typing import Any, BinaryIO

import pytest

from tests.mutants.trial import Finder, Tests, exits_well, limit, passes, silence, start

_PASS, _FAIL, _ANEW = b"p", b"f", b"n"


class Collected:
    """Tests that wait in another process; ``anew`` counts what they could not be asked."""

    def __init__(
        self, tests: Tests, others: Sequence[CodeType], questions: int, answers: BinaryIO
    ) -> None:
        self._tests, self._others = tests, others
        self._questions, self._answers = questions, answers
        self.anew = 0

    def passes(self, turn: int) -> bool:
        """Whether the tests all pass with the code no. ``turn`` for their module.

        Raises RuntimeError if the tests could not be loaded or fail without any change.
        """
        # Whoever does not answer may not listen any more either.
        with suppress(BrokenPipeError):
            os.write(self._questions, f"{turn}\n".encode())
        answer = self._answers.read(1)
        if not answer:
            raise RuntimeError("the tests could not be loaded, or fail without any change")
        if answer == _ANEW:
            self.anew += 1
            return passes(self._tests, self._others[turn])
        return answer == _PASS


@contextmanager
def collected(tests: Tests, code: CodeType, others: Sequence[CodeType]) -> Iterator[Collected]:
    """The tests, loaded with ``code`` for their module, ready to meet each of ``others``."""
    tests.check_not_loaded()
    asked, ask = os.pipe()
    read, answer = os.pipe()
    child = os.fork()
    if child == 0:
        try:
            os.close(ask)
            os.close(read)
            with os.fdopen(asked, "rb") as questions:
                _wait(tests, code, _Waiting(code, others, tests.most_s, questions, answer))
        finally:
            os._exit(1)
    os.close(asked)
    os.close(answer)
    try:
        with os.fdopen(read, "rb") as answers:
            yield Collected(tests, others, ask, answers)
    finally:
        os.close(ask)
        os.waitpid(child, 0)


class _Waiting:
    """A plugin of pytest that answers questions where the collected tests would run once."""

    def __init__(
        self,
        code: CodeType,
        others: Sequence[CodeType],
        most_s: int,
        questions: BinaryIO,
        answer: int,
    ) -> None:
        self._code, self._others, self._most_s = code, others, most_s
        self._questions, self._answer = questions, answer
        self._ran: set[int] = set()

    def note(self, frame: FrameType, event: str, arg: Any) -> None:
        """Writes down, for ``sys.setprofile``, the code that runs."""
        del event, arg
        self._ran.add(id(frame.f_code))

    @pytest.hookimpl(tryfirst=True)
    def pytest_runtestloop(self, session: pytest.Session) -> bool | None:
        """In a fork None, and pytest runs its tests; True at the end of all questions."""
        sys.setprofile(None)
        if session.testsfailed:
            os._exit(1)
        functions = [each for each in gc.get_objects() if isinstance(each, FunctionType)]
        gc.freeze()
        child = os.fork()
        if child == 0:
            return None
        _, status, used = os.wait4(child, 0)
        if status != 0:
            os._exit(1)
        # A loop that never ends is most of what needs ten times as long as no defect at all.
        most_s = min(self._most_s, 2 + int(10 * (used.ru_utime + used.ru_stime)))
        for question in self._questions:
            old, new = changed_function(self._code, self._others[int(question)])
            meant = [function for function in functions if function.__code__ is old]
            if new is None or not meant or id(old) in self._ran:
                os.write(self._answer, _ANEW)
                continue
            child = os.fork()
            if child == 0:
                limit(most_s)
                for function in meant:
                    function.__code__ = new
                return None
            os.write(self._answer, _PASS if exits_well(child) else _FAIL)
        return True


def _wait(tests: Tests, code: CodeType, waiting: _Waiting) -> None:
    silence()
    finder = Finder(tests.name, tests.path, code)
    sys.setprofile(waiting.note)
    os._exit(start(tests, finder, waiting))


def changed_function(old: CodeType, new: CodeType) -> tuple[CodeType, CodeType] | tuple[None, None]:
    """The code of the outermost function in which two modules differ, before and after.

    None twice where they differ anywhere else, in more than one function, or where the function
    before could not take the code after.

    >>> before = compile("def near(a):\\n    return a < 3", "an_example.py", "exec")
    >>> after = compile("def near(a):\\n    return a < 4", "an_example.py", "exec")
    >>> [code.co_name for code in changed_function(before, after)]
    ['near', 'near']
    >>> changed_function(before, compile("near = None", "an_example.py", "exec"))
    (None, None)
    """
    if _without_functions(old) != _without_functions(new):
        return None, None
    pairs = [
        (before, after)
        for before, after in zip(_inside(old), _inside(new), strict=True)
        if before != after
    ]
    if len(pairs) != 1:
        return None, None
    before, after = pairs[0]
    # Code of a module or of a class runs once, where it stands.
    if not before.co_flags & inspect.CO_OPTIMIZED:
        return changed_function(before, after)
    return (before, after) if before.co_freevars == after.co_freevars else (None, None)


def _inside(code: CodeType) -> list[CodeType]:
    return [each for each in code.co_consts if isinstance(each, CodeType)]


def _without_functions(code: CodeType) -> CodeType:
    left = tuple(None if isinstance(each, CodeType) else each for each in code.co_consts)
    return code.replace(co_consts=left)
