"""The measure of torn words finds what was once seen on German pages, and lets the rest be."""

from tests.browser.phone import Phone
from tests.screens.torn import torn

# A long word in a narrow column, and a list narrower than its answer: both as they stood.
WRONG = """
<main style="font: 18px sans-serif; overflow-wrap: anywhere">
  <p style="width: 6rem">Chargennummer</p>
  <select style="width: 6rem"><option>Nicht angegeben</option></select>
</main>
<span class="top-step">Schritt 1 von 3</span><br><a class="top-switch">Eine Seite</a>
"""
RIGHT = """
<main style="font: 18px sans-serif; overflow-wrap: break-word">
  <p style="width: 12rem">Chargennummer</p>
  <p style="width: 4rem">Rück&shy;gängig DGUV-Regel</p>
  <select style="width: 14rem"><option>Keine Angabe</option></select>
</main>
<span class="top-step">Schritt 1 von 3</span> <a class="top-switch">Eine Seite</a>
"""


def test_what_is_torn_is_found_and_nothing_else(phone: Phone) -> None:
    page = phone.start()
    page.set_content(WRONG)
    assert torn(page) == [
        "torn: Chargennummer",
        "cut in its list: Nicht angegeben",
        "a third line in the top bar: Schritt 1 von 3 Eine Seite",
    ]
    page.set_content(RIGHT)
    assert torn(page) == []
