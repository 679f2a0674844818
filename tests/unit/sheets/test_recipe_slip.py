"""pycore.sheets.recipe_slip."""

from dataclasses import replace

from pycore.sheets.recipe_slip import RecipeSlip, SlipPart, SlipPour, recipe_slip
from tests.unit.sheets.drawn import NAMESPACE, lines, root_of, said
from tests.unit.sheets.pages import A4, ENGLISH, LONG, PAPERS

PARTS = [SlipPart("water", "6\u00a0L"), SlipPart("concentrate", "1.2\u00a0L", "2 full jugs")]
POUR = SlipPour(6, PARTS, 0.6, 0.12, "16.7 %")
SLIP = RecipeSlip(
    "Wheel lathe", "14 March 2026, 09:42", ["Dip 342\u00a0mm."], None, [POUR],
    "After that: about 8.3\u00a0%.", ["Wear gloves.", "The safety data sheet decides."],
)  # fmt: skip


def test_the_recipe_in_big_type() -> None:
    (page,) = recipe_slip(SLIP, A4, ENGLISH)
    sizes = {
        str(text.text): float(str(text.get("font-size")))
        for text in root_of(page).iter(f"{NAMESPACE}text")
    }
    # Read from the floor: more than 12 mm high type for what is poured.
    assert sizes["6\u00a0L"] == sizes["1.2\u00a0L"] > 12
    text = said([page])
    for part in ("Wheel lathe", "6 buckets, each", "WATER", "CONCENTRATE", "09:42", "Dip 342 mm",
                 "2 full jugs", "about 8.3 %", "Wear gloves."):  # fmt: skip
        assert part in text


def test_a_box_for_each_bucket() -> None:
    def boxes(count: int) -> int:
        (page,) = recipe_slip(replace(SLIP, pours=[replace(POUR, count=count)]), A4, ENGLISH)
        return sum(box.get("width") == "7" for box in root_of(page).iter(f"{NAMESPACE}rect"))

    assert [boxes(1), boxes(6), boxes(12)] == [1, 6, 12]
    # More are counted, not ticked.
    assert boxes(40) == 0


def test_take_out_comes_first() -> None:
    (page,) = recipe_slip(replace(SLIP, take_out="12\u00a0L"), A4, ENGLISH)
    text = said([page])
    assert text.index("First take out 12 L.") < text.index("6 buckets")


def test_nothing_to_pour_is_said() -> None:
    (page,) = recipe_slip(replace(SLIP, pours=[]), A4, ENGLISH)
    assert "Nothing to pour." in said([page])


def test_many_kinds_and_cautions_go_on_on_another_page() -> None:
    for paper in PAPERS:
        long = replace(SLIP, pours=[POUR] * 7, cautions=["Caution. " * 30] * 16)
        pages = recipe_slip(long, paper, LONG)
        assert len(pages) > 3
        assert said(pages).count("WATER") >= 7
        assert said(pages).count("Caution.") >= 16
        for page in pages:
            check_mm = next(line.y1_mm for line in lines(page) if line.name == "100 mm")
            own = [float(str(t.get("y"))) for t in root_of(page).iter(f"{NAMESPACE}text")
                   if str(t.text).startswith("Caution")]  # fmt: skip
            assert all(y < check_mm - 4 for y in own)
            assert "Wheel lathe" in said([page])
