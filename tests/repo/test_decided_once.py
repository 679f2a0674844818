"""What pycore decides the page does not decide a second time."""

import pytest

from tests.contract import DEFINITIONS
from tests.repo.sources import files, name_of

PAGE = [
    path
    for path in files()
    if path.suffix in (".ts", ".tsx") and name_of(path) != "web/src/core/messages.ts"
]


@pytest.mark.parametrize("code", DEFINITIONS["clean_out_reasons"]["items"]["enum"])
def test_the_page_weighs_no_reason_for_a_clean_out(code: str) -> None:
    assert len(PAGE) > 100
    assert [name_of(path) for path in PAGE if f'"{code}"' in path.read_text("utf-8")] == []
