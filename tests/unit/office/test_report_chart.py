"""pycore.office.report_chart: what is drawn lies where its number says."""

import re
from xml.etree import ElementTree

import pytest

from pycore.office.report_chart import Mark, Span, Trend, bars_svg, step_of, trend_svg

DAY_S = 86_400


def trend(*marks: Mark, bands: tuple[Span, ...] = (), name: str = "Strength") -> Trend:
    return Trend(name, "%", marks, bands, (), 0, 10 * DAY_S, [(5 * DAY_S, "Feb")])


def drawn(text: str) -> ElementTree.Element:
    return ElementTree.fromstring(text)


def centre(polygon: ElementTree.Element) -> tuple[float, float]:
    points = [tuple(map(float, p.split(","))) for p in polygon.attrib["points"].split()]
    xs, ys = zip(*points, strict=True)
    return (min(xs) + max(xs)) / 2, (min(ys) + max(ys)) / 2


def test_marks_lie_by_time_and_value() -> None:
    state = "in_range"
    marks = [
        Mark(0, 7, state=state),
        Mark(5 * DAY_S, 8, state=state),
        Mark(10 * DAY_S, 9, 0, state),
    ]
    places = [centre(p) for p in drawn(trend_svg(trend(*marks))).iter("polygon")]
    (x0, y0), (x1, y1), (x2, y2) = places
    assert x1 - x0 == pytest.approx(x2 - x1, abs=0.2)
    assert y0 - y1 == pytest.approx(y1 - y2, abs=0.2)
    assert y2 < y1 < y0


def test_state_shows_in_the_shape_and_not_in_the_colour_alone() -> None:
    shapes = set()
    for state in ("weak", "in_range", "strong"):
        (polygon,) = drawn(trend_svg(trend(Mark(0, 8, state=state)))).iter("polygon")
        assert polygon.attrib["class"] == f"mark {state}"
        x, y = (float(n) for n in polygon.attrib["points"].split()[0].split(","))
        shapes.add(re.sub(r"-?[0-9.]+", "", polygon.attrib["points"]) + str((x > 50, y)))
    assert len(shapes) == 3


def test_band_lies_between_its_edges() -> None:
    svg = drawn(trend_svg(trend(Mark(0, 7), Mark(1, 9), bands=(Span(0, 10 * DAY_S, 7, 9),))))
    (band,) = svg.iter("rect")
    places = [centre(p) for p in svg.iter("polygon")]
    top = float(band.attrib["y"])
    assert places[1][1] == pytest.approx(top, abs=0.3)
    assert places[0][1] == pytest.approx(top + float(band.attrib["height"]), abs=0.3)


def test_empty_chart_and_one_value_can_be_drawn() -> None:
    assert list(drawn(trend_svg(trend())).iter("polygon")) == []
    assert len(list(drawn(trend_svg(trend(Mark(0, 0.0)))).iter("polygon"))) == 1
    assert drawn(bars_svg("nothing", "L", [])).attrib["aria-label"] == "nothing"


def test_names_are_escaped() -> None:
    name = '"><script>alert(1)</script>'
    assert "<script" not in trend_svg(trend(Mark(0, 1), name=name))
    assert "<script" not in bars_svg(name, name, [(name, 1, 1)])


def test_bars_stand_on_each_other_and_are_as_high_as_their_litres() -> None:
    rects = list(drawn(bars_svg("poured", "L", [("Jan", 10, 90), ("Feb", 5, 45)])).iter("rect"))
    heights = [float(rect.attrib["height"]) for rect in rects]
    assert heights[1] == pytest.approx(9 * heights[0], rel=0.02)
    assert heights[2] == pytest.approx(heights[0] / 2, rel=0.02)
    foot = float(rects[1].attrib["y"]) + heights[1]
    assert foot == pytest.approx(float(rects[0].attrib["y"]), abs=0.2)


@pytest.mark.parametrize("span", [0.001, 0.9, 1, 3.3, 12, 180, 5e4])
def test_steps_are_round_and_few(span: float) -> None:
    assert 2 <= span / step_of(span) <= 5
