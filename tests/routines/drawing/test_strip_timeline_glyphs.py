"""The unfolded strip, the idea timeline and the small drawings."""

from dataclasses import replace
from xml.etree import ElementTree

import pytest
from hypothesis import given

from routines.counting import Grid, Idea
from routines.drawing import draw_folded_glyph, draw_sign, draw_strip, draw_timeline, draw_week_bars
from tests.routines.drawing.grids import drawn_grids, grid, pattern

SVG = "{http://www.w3.org/2000/svg}"


def parse(drawn: str) -> ElementTree.Element:
    return ElementTree.fromstring(drawn)


def words(drawn: str) -> list[str]:
    return ["".join(text.itertext()) for text in parse(drawn).iter(f"{SVG}text")]


def of_class(drawn: str, name: str) -> list[ElementTree.Element]:
    return [shape for shape in parse(drawn).iter() if name in (shape.get("class") or "").split()]


def idea(seen_at: int, dies_at: int | None = None) -> Idea:
    shows = pattern([[1, 2]], "shown" if dies_at else "always", dies_at)
    return Idea(shows.claim, seen_at, dies_at, 25, shows)


def test_the_strip_is_creased_where_the_grid_folds() -> None:
    assert len(of_class(draw_strip(grid(terms=10, length=5)), "g-crease")) == 1
    assert len(of_class(draw_strip(grid(terms=12, length=3)), "g-crease")) == 3
    assert len(of_class(draw_strip(grid(terms=4, length=3, lead=2)), "g-crease")) == 1  # folded after the first count


@given(drawn_grids())
def test_a_strip_keeps_within_its_width_and_says_how_far_it_goes(of: Grid) -> None:
    drawn = draw_strip(of, width=900)
    assert float(parse(drawn).get("width")) <= 902
    if "…" in words(drawn):
        assert parse(drawn).find(f"{SVG}desc").text.endswith(of.count.text(of.terms).replace("-", "\u2212"))


def test_an_idea_that_goes_on_is_a_solid_bar_and_one_that_dies_a_dashed_one_with_a_flag() -> None:
    drawn = draw_timeline([idea(2), idea(11, 16)], [10, 15, 25], 25, count=grid().count)
    assert len(of_class(drawn, "g-always")) == len(of_class(drawn, "g-while")) == 1
    assert "at 100" in words(drawn)
    assert [word for word in words(drawn) if word.startswith("stop")] == ["stop 1", "stop 2", "stop 3"]


def test_an_idea_that_dies_past_the_end_has_no_flag() -> None:
    assert not of_class(draw_timeline([idea(2, 40)], [], 25, count=grid().count), "g-banner")


def test_tabs_of_close_stops_do_not_cover_each_other() -> None:
    tabs = of_class(draw_timeline([idea(2)], [9, 10, 11, 24], 25, count=grid().count), "g-tab")
    boxes = [tuple(float(tab.get(key)) for key in ("x", "y", "width", "height")) for tab in tabs]
    for i, (x, y, w, h) in enumerate(boxes):
        for ox, oy, ow, oh in boxes[i + 1 :]:
            assert x + w <= ox or ox + ow <= x or y + h <= oy or oy + oh <= y


def test_a_long_statement_is_shortened_in_the_timeline_but_whole_in_its_description() -> None:
    statement = "Every count of this grid is so and so and goes on being so for ever and a day"
    long = replace(pattern([[1, 2]]), statement=statement)
    told = Idea(long.claim, 2, None, 25, long)
    drawn = draw_timeline([told], [], 25, count=grid().count)
    assert any(word.endswith("…") for word in words(drawn))
    assert statement in parse(drawn).find(f"{SVG}desc").text


@pytest.mark.parametrize("holds", ["always", "shown", "flag"])
def test_a_sign_says_what_it_means(holds: str) -> None:
    assert parse(draw_sign(holds)).find(f"{SVG}title").text
    assert (
        parse(draw_sign(holds, language="es")).find(f"{SVG}title").text
        != parse(draw_sign(holds)).find(f"{SVG}title").text
    )


def test_folded_glyphs_differ_by_shape_and_refuse_other_amounts() -> None:
    assert [len(list(parse(draw_folded_glyph(amount)).iter(f"{SVG}circle"))) for amount in ("none", "few", "good")] == [
        0,
        2,
        6,
    ]
    with pytest.raises(ValueError, match="many"):
        draw_folded_glyph("many")


def test_a_week_without_a_lesson_has_no_bar() -> None:
    assert of_class(draw_week_bars([0, 2, 0, 1]), "g-notch")[0].get("d").count("M") == 2
    assert not of_class(draw_week_bars([0, 0]), "g-notch")


@pytest.mark.parametrize(
    "drawn",
    [
        draw_strip(grid(), on_paper=True),
        draw_timeline([idea(2), idea(11, 16)], [10], 25, count=grid().count, on_paper=True),
        draw_sign("flag", on_paper=True),
        draw_folded_glyph("good", on_paper=True),
        draw_week_bars([1, 2], on_paper=True),
    ],
)
def test_on_paper_nothing_depends_on_a_class(drawn: str) -> None:
    assert "class=" not in drawn
    assert "var(" not in drawn
