"""The engines, each started once."""

from collections.abc import Iterator

import pytest

from tests.published.checks import Native, Shipped


@pytest.fixture(scope="session")
def shipped() -> Iterator[Shipped]:
    """The shipped WebAssembly bundle."""
    engine = Shipped()
    yield engine
    engine.close()


@pytest.fixture(params=["native", "shipped"])
def engine(request: pytest.FixtureRequest) -> Native | Shipped:
    """First this Python, then the shipped one."""
    return Native() if request.param == "native" else request.getfixturevalue("shipped")
