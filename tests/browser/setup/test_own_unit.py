"""A unit that is typed into a field of another one is taken, said in both, and never doubled."""

from playwright.sync_api import Page, expect

from tests.browser.phone import heading
from tests.browser.sidesteps import until_answers
from tests.browser.walk import field, has_button, open_machine, press, set_up_machine


def test_centimetres_in_a_field_of_millimetres(page: Page) -> None:
    seen = []

    def look(page: Page) -> None:
        main = page.get_by_role("main")
        if field(page, "Depth at the full mark").count():
            field(page, "Depth at the full mark").fill("44 cm")
            expect(main).to_contain_text("44\u00a0cm = 440\u00a0mm")
            field(page, "Depth at the full mark").fill("440")
            expect(main).not_to_contain_text("= 440")
            field(page, "Depth at the full mark").fill("44 cm")
            seen.append("typed")
        if has_button(page, "Save the machine"):
            expect(main).to_contain_text("44\u00a0cm")
            expect(main).not_to_contain_text("cm\u00a0mm")
            seen.append("checked")

    set_up_machine(page, at_page=look)
    assert seen == ["typed", "checked"]
    press(page, "Back")
    open_machine(page)
    until_answers(page, "34,2 cm", "4.0 Brix")
    expect(heading(page)).to_have_text("Is everything right?")
    main = page.get_by_role("main")
    for text in ("34.2\u00a0cm", "= 154\u00a0L", "4.0\u00a0Brix"):
        expect(main).to_contain_text(text)
    for doubled in ("cm\u00a0mm", "Brix\u00a0Brix"):
        expect(main).not_to_contain_text(doubled)
