"""The drawn grid as markup: every count once and in order, nothing that gives unwritten counts away, safe and unstyled."""

import re
from xml.etree import ElementTree

import pytest
from hypothesis import given

from routines.counting import Grid
from routines.drawing import Entry, draw_grid
from routines.drawing.sizes import SIZES
from tests.routines.drawing.grids import drawn_grids, first_column, grid, pattern, tens_of_each_column

SVG = "{http://www.w3.org/2000/svg}"


def parse(drawn: str) -> ElementTree.Element:
    return ElementTree.fromstring(drawn)


def written(drawn: str) -> list[str]:
    return ["".join(text.itertext()) for text in parse(drawn).iter(f"{SVG}text")]


@pytest.mark.parametrize("fill", ["across", "down", "across-up"])
@pytest.mark.parametrize("size", ["phone", "plan", "print", "board"])
def test_each_count_is_written_once_in_counting_order(fill: str, size: str) -> None:
    drawn = draw_grid(grid(fill=fill, lead=2), size=size)
    assert written(drawn) == [str(10 + 6 * i) for i in range(25)]


@given(drawn_grids())
def test_cells_carry_their_term_numbers_in_counting_order(of: Grid) -> None:
    cells = [int(g.get("data-n")) for g in parse(draw_grid(of, size="plan")).iter(f"{SVG}g") if g.get("data-n")]
    assert cells == list(range(1, of.terms + 1))


def test_a_fraction_is_stacked_and_a_minus_is_a_minus() -> None:
    assert written(draw_grid(grid("1/3", "2/3", 4, 2, kind="fraction"), size="plan"))[:2] == ["1", "3"]
    assert written(draw_grid(grid("-2", "1", 4, 2), size="plan"))[:2] == ["\u22122", "\u22121"]


@pytest.mark.parametrize("size", ["card", "fold", "phone", "plan", "board"])
def test_a_drawing_for_the_screen_has_no_colour_style_or_id_of_its_own(size: str) -> None:
    of = grid()
    drawn = draw_grid(of, size=size, lit=(first_column(of), tens_of_each_column(of, 16)), landmarks=[1, 6])
    assert not re.search(r'#[0-9A-Fa-f]{3}|rgb|(fill|stroke|style|id|onclick)="', drawn)


def painted(element, above=(None, None)):
    """Every element with the fill and stroke of the groups that it stands in: both are inherited (SVG 1.1, 11.3 and 11.4)."""
    yield element, above
    for part in element:
        yield from painted(part, (element.get("fill", above[0]), element.get("stroke", above[1])))


def test_a_drawing_for_paper_has_every_colour_written_out_and_no_class() -> None:
    of = grid()
    entries = {n: Entry() for n in range(1, 20)} | {4: Entry("corrected", said="27"), 20: Entry("next")}
    entries |= {21: Entry("prediction", text="130"), 22: Entry("covered")}
    drawn = draw_grid(
        of, size="print", lit=(first_column(of), tens_of_each_column(of, 16)), landmarks=[1, 6], entries=entries
    )
    assert "class=" not in drawn
    assert "var(" not in drawn
    for shape, (fill, stroke) in painted(parse(drawn)):
        if shape.tag in {f"{SVG}{name}" for name in ("path", "rect", "text", "circle")}:
            paints = [shape.get("fill", fill), shape.get("stroke", stroke)]
            assert any(re.fullmatch(r"#[0-9A-F]{6}", paint or "") for paint in paints), ElementTree.tostring(shape)
            assert all(paint is None or paint == "none" or paint.startswith("#") for paint in paints)


def test_a_title_and_statements_that_look_like_markup_stay_words() -> None:
    of = grid()
    hostile = '<script>alert("x")</script>'
    spiteful = pattern([[1, 6]])
    drawn = draw_grid(
        of,
        title=hostile,
        entries={1: Entry(text=hostile), 2: Entry("corrected", said=hostile)},
        overlays=[(hostile, spiteful)],
    )
    assert "<script" not in drawn
    assert parse(drawn).find(f"{SVG}title").text == hostile


def test_the_description_reads_the_rows_and_says_what_is_lit() -> None:
    of = grid(terms=6, length=3)
    told = parse(draw_grid(of, title="By 6s", lit=(first_column(of),))).find(f"{SVG}desc").text
    assert "10, 16, 22; 28, 34, 40." in told
    assert "Six more each time (always holds)." in told


@given(drawn_grids())
def test_beside_words_every_numeral_stands_where_it_stands_alone(of: Grid) -> None:
    """What a group says is inherited (SVG 1.1, 6.5 and 10.10): look and size of each numeral and bar are the same."""
    shown = {"size": "card", "lit": [first_column(of)], "landmarks": [1]}
    alone, beside = draw_grid(of, **shown), draw_grid(of, **shown, beside_words=True)
    assert list(numerals(parse(alone))) == list(numerals(ElementTree.fromstring(beside)))
    assert (beside.width, beside.height, beside.numeral) == (alone.width, alone.height, alone.numeral)


def numerals(element, above=("", "")):
    """Each text and bar of the numerals: its words and place, with the classes and the size that it has or inherits."""
    own = tuple(
        value or found for value, found in zip((element.get("class"), element.get("font-size")), above, strict=True)
    )
    looks, size = f"{above[0]} {own[0]}", own[1]
    name = element.tag.removeprefix(SVG)
    if "g-numeral" in looks and name in ("text", "rect"):
        places = {key: element.get(key) for key in ("x", "y", "width", "height")}
        yield name, element.text, places, "g-bold" in looks, size if name == "text" else ""
    for part in element:
        yield from numerals(part, (looks, size))


def test_beside_words_nothing_is_read_out_and_nothing_taken_hold_of() -> None:
    of = grid()
    lit = (first_column(of), tens_of_each_column(of, 16))
    drawn = draw_grid(of, lit=lit, landmarks=[1, 6], title="By 6s", beside_words=True)
    kinds = {part.tag for part in ElementTree.fromstring(drawn).iter()}
    assert kinds == {"svg", "g", "rect", "path", "text"}
    assert not re.search(r"data-(?!size)|By 6s|role=|g-cell|g-layer|\"\"", drawn)


@pytest.mark.parametrize("interactive", [False, True])
def test_counts_that_are_not_written_yet_are_nowhere_in_the_markup(interactive: bool) -> None:
    for drawn in (
        draw_grid(grid(), size="board", upto=3, interactive=interactive),
        draw_grid(grid(), size="board", entries={n: Entry() for n in (1, 2, 3)}, interactive=interactive),
    ):
        words = re.sub(r'\s(?!aria-label)[\w-]+="[^"]*"', "", drawn)
        assert "22" in words
        assert not any(str(10 + 6 * i) in words for i in range(3, 25))


def test_a_covered_count_is_not_in_the_markup() -> None:
    assert "16" not in written(draw_grid(grid(), size="board", entries={1: Entry(), 2: Entry("covered")}))


def test_a_correction_keeps_what_was_said_beside_what_stands() -> None:
    assert written(draw_grid(grid(), size="plan", entries={2: Entry("corrected", said="15")})) == ["15", "16"]


def test_a_prediction_is_written_as_the_child_said_it_with_a_question_mark() -> None:
    assert written(draw_grid(grid(), size="plan", entries={21: Entry("prediction", text="120")})) == ["120?"]


def test_an_unknown_state_is_refused() -> None:
    with pytest.raises(ValueError, match="guessed"):
        Entry("guessed")


def test_two_patterns_are_lit_at_most_and_what_always_holds_lies_on_top() -> None:
    of = grid()
    always, shown = first_column(of), tens_of_each_column(of)
    drawn = parse(draw_grid(of, size="plan", lit=(always, shown, pattern([[2, 7]]))))
    kinds = [g.get("data-holds") for g in drawn.iter(f"{SVG}g") if g.get("data-holds")]
    assert kinds == ["while", "always", "while", "always"]  # shapes, then marks


def test_overlays_wait_unlit_and_a_lit_one_is_drawn_once() -> None:
    of = grid()
    always, shown = first_column(of), tens_of_each_column(of, 16)
    drawn = parse(draw_grid(of, size="plan", lit=(shown,), overlays=[("a", always), ("b", shown)]))
    layers = [(g.get("data-pattern"), "g-off" in g.get("class")) for g in drawn.iter(f"{SVG}g") if g.get("data-holds")]
    assert sorted(layers) == [("a", True), ("a", True), ("b", False), ("b", False)]


def test_an_overlay_that_is_left_out_leaves_everything_else_where_it_was() -> None:
    of = grid()
    overlays = [("a", tens_of_each_column(of, 16)), ("b", first_column(of)), ("c", tens_of_each_column(of, 21))]
    whole = draw_grid(of, size="plan", lit=[overlays[2][1]], overlays=overlays)
    part = parse(draw_grid(of, size="plan", lit=[overlays[2][1]], overlays=overlays, left_out=["a", "b", "c"]))
    expected = parse(whole)
    for layer in [layer for layer in expected if layer.get("data-pattern") in ("a", "b")]:
        expected.remove(layer)
    assert ElementTree.tostring(part) == ElementTree.tostring(expected)


def test_a_pattern_is_not_drawn_where_its_counts_are_not_written() -> None:
    of = grid()
    assert 'class="g-always"' not in draw_grid(of, size="plan", upto=1, lit=(pattern([[6, 11]]),))


def test_interactive_cells_are_buttons_and_only_the_first_is_in_the_tab_order() -> None:
    cells = [g for g in parse(draw_grid(grid(), size="plan", interactive=True, chosen=[7])).iter() if g.get("data-n")]
    assert all(cell.get("role") == "button" for cell in cells)
    assert [cell.get("tabindex") for cell in cells] == ["0"] + ["-1"] * 24
    assert [cell.get("data-n") for cell in cells if cell.get("aria-pressed") == "true"] == ["7"]
    assert cells[6].get("data-place") == "2 2"


def test_a_count_too_big_for_a_card_says_how_far_it_goes() -> None:
    drawn = draw_grid(grid(terms=120, length=5))
    assert written(drawn)[-1] == "… 724"
    assert 0 < len([cell for cell in parse(drawn).iter() if cell.get("data-n")]) < 120


@pytest.mark.parametrize("size", sorted(SIZES))
@pytest.mark.parametrize(("terms", "length"), [(200, 12), (200, 200), (200, 1), (2, 1)])
def test_the_largest_grids_are_drawn_in_every_size(size: str, terms: int, length: int) -> None:
    of = grid("98765", "4321", terms, length)
    assert parse(draw_grid(of, size=size, lit=(first_column(of),), title="a title of many words " * 6)) is not None
