"""pycore.office.report_page: one page, self-contained, with every text escaped."""

from dataclasses import replace
from html.parser import HTMLParser

from pycore.office.report_page import MachineShown, Month, Report, report_page
from pycore.office.report_words import WORDS
from pycore.sheets.language import Language

EVIL = "<script>alert(1)</script><img src=x onerror=alert(2)>\"'&"
LANGUAGE = Language(WORDS)


def machine(name: str, state: str = "weak") -> MachineShown:
    return MachineShown(
        name, state, "", "6 %", "7 – 9 %", "154 L", "44 L", "25 Nov 2026", said=[name]
    )


def report(text: str = "Wheel lathe", invented: bool = False) -> Report:
    months = [Month(text, 2, 18.0, 2.0), Month("Dec 2026", 1, 9.0, 1.0)]
    return Report(
        span=text,
        counts=text,
        invented=invented,
        waiting=[(text, [text, text])],
        machines=[machine(text)],
        months=months,
        audit=[[text] * 5],
        audit_more=3,
        notes=[text],
        findings=[text],
    )


class Tags(HTMLParser):
    """What a browser would make of the page."""

    def __init__(self, page: str) -> None:
        super().__init__()
        self.tags: list[str] = []
        self.attributes: list[tuple[str, str | None]] = []
        self.texts: list[str] = []
        self.feed(page)

    def handle_starttag(self, tag: str, attrs: list[tuple[str, str | None]]) -> None:
        self.tags.append(tag)
        self.attributes += attrs

    def handle_data(self, data: str) -> None:
        self.texts.append(data)


def test_no_text_can_break_out() -> None:
    page = Tags(report_page(report(EVIL), LANGUAGE))
    assert {"script", "img"} & set(page.tags) == set()
    assert not [name for name, _ in page.attributes if name.startswith("on")]
    assert page.texts.count(EVIL) >= 5


def test_nothing_is_fetched() -> None:
    page = Tags(report_page(report(), LANGUAGE))
    assert {"link", "iframe", "object", "script", "img"} & set(page.tags) == set()
    assert not [name for name, _ in page.attributes if name in ("src", "href", "xlink:href")]
    assert "url(" not in report_page(report(), LANGUAGE)


def test_months_add_up() -> None:
    page = " ".join(Tags(report_page(report(), LANGUAGE)).texts)
    assert "All 3 27 3.0" in page


def test_state_has_a_word_and_an_invented_log_says_so() -> None:
    page = report_page(report(invented=True), LANGUAGE)
    assert WORDS["weak"] in page
    assert WORDS["invented"] in page
    assert WORDS["invented"] not in report_page(report(), LANGUAGE)


def test_what_is_poured_and_not_read_has_its_own_shape_and_the_old_state_below() -> None:
    old = "Before: In range, 8.1\u00a0%, 25 Nov 2026, 08:00"
    line = replace(machine("Wheel lathe", "not_read"), strength="", note=old)
    page = report_page(replace(report(), machines=[line]), LANGUAGE)
    assert WORDS["not_read"] in page
    assert Tags(page).texts.count(old) == 1
    assert page != report_page(replace(report(), machines=[replace(line, state="none")]), LANGUAGE)


def test_empty_log_gives_a_page_that_says_so() -> None:
    page = report_page(Report("", "", False, [], [], [], [], 0), LANGUAGE)
    for key in ("waiting_none", "audit_none", "all_holds"):
        assert WORDS[key] in page
