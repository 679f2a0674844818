"""What is wrong with pycore's reply to a text: a defect inside, a reply off its schema, a hang."""

import json
import signal
import sys
import time
import traceback
from collections.abc import Iterator
from contextlib import contextmanager
from types import FrameType
from typing import Any

import fastjsonschema

from pycore.desk import door
from pycore.quantity.fault import Fault
from tests.contract import DEFINITIONS, validator

# Seconds of a processor, not of the clock: a busy machine is no hang.
MOST_S = 2.0


class Hang(BaseException):
    """Not an Exception: the door catches those."""


class Wrong(Exception):
    """``kind`` is the same for all texts that lie on one defect."""

    def __init__(self, kind: str, text: str) -> None:
        super().__init__(kind)
        self.kind, self.text = kind, text


@contextmanager
def _limit() -> Iterator[None]:
    def end(_: int, frame: FrameType | None) -> None:
        raise Hang("".join(traceback.format_stack(frame)[-1:]).strip())

    # Windows has no such timer; there a reply that never comes stops the run.
    has_timer = hasattr(signal, "setitimer")
    if has_timer:
        signal.signal(signal.SIGPROF, end)
        signal.setitimer(signal.ITIMER_PROF, MOST_S)
    try:
        yield
    finally:
        if has_timer:
            signal.setitimer(signal.ITIMER_PROF, 0)


def _refuse(name: str) -> float:
    raise ValueError(f"a reply holds {name}")


def _where(text: str) -> str:
    """Innermost place of pycore in the traceback of a defect that the door has caught."""
    try:
        door._answer(door._parsed(text))
    except Fault as fault:
        error: BaseException | None = fault.__cause__ or fault
    except Exception as caught:
        error = caught
    else:
        return "not again"
    frames = traceback.extract_tb(error.__traceback__ if error else None)
    ours = [frame for frame in frames if "pycore" in frame.filename] or list(frames)
    last = ours[-1]
    return f"{type(error).__name__} in {last.filename.rsplit('pycore/', 1)[-1]} {last.name}"


def judge(text: str) -> dict[str, Any]:
    """The reply to a text. Raises Wrong where the promise of the door is broken."""
    started_s = time.process_time()
    try:
        with _limit():
            said = door.handle(text)
    except Hang as hang:
        raise Wrong(f"hang: {hang}", text) from None
    except Exception as error:
        raise Wrong(f"raised {type(error).__name__}", text) from error
    took_s = time.process_time() - started_s
    if took_s > MOST_S:
        raise Wrong(f"took more than {MOST_S} s", text)
    try:
        reply: dict[str, Any] = json.loads(said, parse_constant=_refuse)
        said.encode("utf-8")
        validator("reply")(reply)
    except (ValueError, fastjsonschema.JsonSchemaException) as error:
        raise Wrong(f"envelope: {error}", text) from None
    if not reply["ok"] and reply["error"]["code"] == "internal":
        raise Wrong(f"internal: {_where(text)}", text)
    if reply["ok"]:
        _judge_result(json.loads(text.removeprefix("\ufeff"))["op"], reply["result"], text)
    return reply


def _judge_result(op: str, result: Any, text: str) -> None:
    if f"{op}_result" not in DEFINITIONS:
        raise Wrong(f"{op}: no result in the contract", text)
    try:
        validator(f"{op}_result")(result)
    except fastjsonschema.JsonSchemaException as error:
        place = "".join("." + part if not part.isdigit() else "[]" for part in error.path[1:])
        raise Wrong(f"{op}: {error.rule} at {place}", text) from None


if __name__ == "__main__":
    for line in sys.stdin:
        try:
            print(json.dumps(judge(line.rstrip("\n")), ensure_ascii=False)[:400])
        except Wrong as wrong:
            print(f"WRONG {wrong.kind}")
