"""pycore.sheets.strip: pieces join without a gap, and words beside them do not touch."""

import itertools

import pytest

from pycore.sheets.ladder import marks, ruler
from pycore.sheets.paper import new_page
from pycore.sheets.strip import (
    EDGE_MM,
    TAB_MM,
    Band,
    Line,
    Scale,
    Strip,
    joint_name,
    piece_length_mm,
    pieces_of,
)
from tests.unit.sheets.drawn import NAMESPACE, lines, root_of, said
from tests.unit.sheets.pages import A4, LETTER, PAPERS


def scale(length_mm: float, **more: object) -> Scale:
    """An even scale, one litre for a millimetre."""
    return Scale(
        length_mm, ruler(length_mm, "mm"), marks(length_mm, length_mm, float), "L", "mm",
        **more,  # type: ignore[arg-type]
    )  # fmt: skip


@pytest.mark.parametrize("paper", PAPERS, ids=lambda p: f"{p.name} {p.stretch:.2f}")
@pytest.mark.parametrize("length_mm", [40, 250, 250.5, 484, 5000])
def test_pieces_follow_each_other_and_fit_on_the_paper(paper, length_mm: float) -> None:
    pieces = pieces_of(scale(length_mm), paper)
    assert pieces[0][0] == 0
    assert pieces[-1][1] == length_mm
    assert all(a[1] == b[0] for a, b in itertools.pairwise(pieces))
    longest_mm = max(high - low for low, high in pieces) * paper.stretch
    assert longest_mm + TAB_MM + 2 * EDGE_MM <= paper.room_mm[1]


def test_a_piece_is_250_mm_unless_a_correction_needs_the_room() -> None:
    assert piece_length_mm(A4) == piece_length_mm(LETTER) == 250
    assert {piece_length_mm(paper) for paper in PAPERS if paper.stretch > 1.05} == {200}


def test_joints_are_named_once() -> None:
    names = [joint_name(i) for i in range(60)]
    assert names[:2] == ["A", "B"]
    assert names[25:28] == ["Z", "AA", "AB"]
    assert len(set(names)) == 60


def drawn(whole: Scale, index: int, paper=A4) -> str:
    """One piece of a scale."""
    page = new_page(paper)
    Strip(page, whole, paper, index, pieces_of(whole, paper)[index], 1.0, 260.0).draw()
    return page.svg()


def test_the_mark_at_a_joint_stands_on_both_pieces() -> None:
    whole = scale(484)
    lower = {line.name: line for line in lines(drawn(whole, 0))}
    upper = {line.name: line for line in lines(drawn(whole, 1))}
    (shared,) = set(lower) & set(upper)
    assert shared == "250 L"
    assert lower[shared].y1_mm == pytest.approx(10)
    assert upper[shared].y1_mm == pytest.approx(260)


def test_both_pieces_carry_the_name_of_their_joint() -> None:
    whole = scale(600)
    assert [name for name in ("A", "B") if name in said([drawn(whole, 0)]).split()] == ["A"]
    assert [name for name in ("A", "B") if name in said([drawn(whole, 1)]).split()] == ["A", "B"]
    assert [name for name in ("A", "B") if name in said([drawn(whole, 2)]).split()] == ["B"]


def test_words_beside_lines_do_not_touch_and_stay_beside_the_strip() -> None:
    crowd = [Line(at_mm, f"T{at_mm}", ("note", "note")) for at_mm in range(0, 50, 4)]
    page = drawn(scale(200, lines=crowd), 0)
    rows = [
        (float(str(text.get("y"))), str(text.text))
        for text in root_of(page).iter(f"{NAMESPACE}text")
        if str(text.text).startswith(("T", "note"))
    ]
    heights = sorted(y for y, _ in rows)
    assert len(rows) == 39
    assert min(b - a for a, b in itertools.pairwise(heights)) > 3.5
    assert max(heights) <= 261
    titles = [text for _, text in sorted(rows) if text.startswith("T")]
    assert titles == [line.title for line in reversed(crowd)]


def test_bands_are_cut_at_the_joint() -> None:
    whole = scale(400, bands=[Band(0, 100, 300, "solid")])
    for index, high_mm in ((0, 150), (1, 50)):
        boxes = [
            box
            for box in root_of(drawn(whole, index)).iter(f"{NAMESPACE}rect")
            if box.get("fill") == "#000"
        ]
        assert [float(str(box.get("height"))) for box in boxes] == [high_mm]
