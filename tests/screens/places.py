"""Where every screen stands: addresses of places that can be opened without a way to them."""

from tests.browser.app.test_languages import OF_MACHINE, OF_SHOP, SETUP

# Of a machine, while a check of it stands open with everything answered.
OF_CHECK = [
    *("look", "dip", "touched", "since", "reading", "line", "target", "answers", "recipe"),
    *("recipe/way/1", "recipe/way/2", "stock", "fill", "holding", "usual", "state", "again"),
    *("blurred", "second", "zero"),
]
# Of a machine, without a check.
ABOUT_MACHINE = ["wrong", "wrong/wrong_drum", "clean-out", "trend", *OF_MACHINE]
ABOUT_MACHINE += [
    "hand-over/show",
    "print/pail",
    "print/log_sheet",
    *(f"set-up/{step}" for step in SETUP),
]
CARDS = [
    "strength",
    "dip",
    "factor",
    "evaporate",
    "percent",
    "top_up",
    "choose",
    "order",
    "again",
    "safety",
]
OF_PHONE = [
    *("settings", "about", "licences", "install", "who", "care", "backup", "handover", "log"),
    *(
        "take-in/camera",
        "tell",
        "learn",
        *(f"learn/{card}" for card in CARDS),
        "practice",
        *OF_SHOP,
    ),
]
