"""The class's marks as they are drawn: each kind has a shape of its own, stands on its cell and stays off the numerals."""

import re
from xml.etree import ElementTree

import pytest

from routines.drawing import Entry, Ink, JumpArc, Mark, Phrase, draw_grid, draw_letter
from routines.drawing.jumps import arcs_of
from routines.drawing.layout import lay_out
from routines.drawing.numerals import Box
from routines.drawing.phrase_letters import letter
from routines.drawing.sizes import SIZES
from tests.routines.drawing.grids import grid

SVG = "{http://www.w3.org/2000/svg}"
KINDS = ("tint", "ring", "underline", "hatch")
SHAPES = {"tint": "rect", "ring": "ellipse", "underline": "path", "hatch": "path"}


def drawn(ink: Ink, entries=None, size="plan", **options) -> ElementTree.Element:
    entries = entries or {n: Entry() for n in range(1, 26)}
    return ElementTree.fromstring(draw_grid(grid(), size=size, entries=entries, ink=ink, **options))


def of_look(root: ElementTree.Element, look: str) -> list[ElementTree.Element]:
    return [one for one in root.iter() if look in (one.get("class") or "").split()]


def written(root: ElementTree.Element) -> list[str]:
    return ["".join(text.itertext()) for text in root.iter(f"{SVG}text")]


def numbers(path: str) -> list[float]:
    return [float(number) for number in re.findall(r"-?[\d.]+", path)]


def layout_of(entries=None, of=None):
    return lay_out(of or grid(), SIZES["plan"], (), entries or {n: Entry() for n in range(1, 26)})


@pytest.mark.parametrize("kind", KINDS)
def test_each_mark_has_its_shape_on_its_own_cell(kind):
    root = drawn(Ink([Mark(8, kind)]))
    (mark,) = of_look(root, "g-mark")
    assert (mark.get("data-marked"), mark.get("data-mark")) == ("8", kind)
    (shape,) = of_look(mark, f"g-ink-{kind}")
    assert shape.tag == SVG + SHAPES[kind]
    box = layout_of().rectangle(8)
    if kind == "ring":
        x, y = float(shape.get("cx")), float(shape.get("cy"))
    elif kind == "tint":
        x, y = (float(shape.get(side)) + float(shape.get(long)) / 2 for side, long in (("x", "width"), ("y", "height")))
    else:
        x, y = numbers(shape.get("d"))[:2]
    assert box.left <= x <= box.right
    assert box.top <= y <= box.bottom


def test_on_paper_marks_are_told_apart_where_every_colour_is_one():
    """Ink is never told by colour alone: without its colours each kind is still another drawing."""
    shapes = set()
    for kind in KINDS:
        with_mark = draw_grid(grid(), size="print", ink=Ink([Mark(8, kind)]))
        shapes.add(re.sub(r' (?:fill|stroke)="[^"]*"', "", with_mark))
    shapes.add(re.sub(r' (?:fill|stroke)="[^"]*"', "", draw_grid(grid(), size="print", ink=Ink([Mark(9, "ring")]))))
    assert len(shapes) == len(KINDS) + 1


@pytest.mark.parametrize(("place", "of"), [(0, "5"), (1, "2")])
def test_an_underline_runs_under_the_digit_meant(place, of):
    # the eighth count is 52 (10 + 7 x 6)
    layout = layout_of()
    digit = layout.numerals[8].digits(0, place, place + 1).moved(*layout.middle(8))
    (line,) = of_look(drawn(Ink([Mark(8, "underline", place)])), "g-ink-underline")
    left, y, right = numbers(line.get("d"))
    assert (left, right) == pytest.approx((digit.left, digit.right), abs=0.1)
    assert digit.bottom < y < layout.rectangle(8).bottom


def test_an_underline_of_a_narrow_sign_and_of_what_was_said_otherwise():
    entries = {8: Entry("written", "1,150")}
    layout = layout_of(entries)
    (line,) = of_look(drawn(Ink([Mark(8, "underline", 1)]), entries), "g-ink-underline")
    comma = layout.numerals[8].digits(0, 1, 2).moved(*layout.middle(8))
    left, _, right = numbers(line.get("d"))
    assert (left, right) == pytest.approx((comma.left, comma.right), abs=0.1)


def test_a_place_that_no_longer_exists_underlines_the_whole():
    (line,) = of_look(drawn(Ink([Mark(8, "underline", 30)])), "g-ink-underline")
    left, _, right = numbers(line.get("d"))
    assert right - left == pytest.approx(layout_of().numerals[8].width, abs=0.2)


def test_a_hatch_leaves_the_ground_of_its_cell_around_the_numeral():
    # the eighth count stands in the second row, which is a shade darker
    (mark,) = of_look(drawn(Ink([Mark(8, "hatch")])), "g-mark")
    assert [one.get("class") for one in mark] == ["g-ink-hatch", "g-pleat"]
    *_, tinted = of_look(drawn(Ink([Mark(8, "hatch"), Mark(8, "tint")])), "g-mark")
    assert [one.get("class") for one in tinted] == ["g-ink-hatch", "g-ink-tint"]


def test_a_mark_on_a_count_that_is_not_in_the_drawing_is_left_away():
    assert of_look(drawn(Ink([Mark(99, "ring")], [JumpArc(1, 99, "+5")], [Phrase("far", [99])])), "g-mark") == []


# Jumps


@pytest.mark.parametrize(
    ("first", "last", "label"), [(1, 6, "+30"), (6, 1, "−30"), (7, 12, "+30"), (2, 4, "+12"), (11, 13, "+12"), (3, 14, "+66")]
)  # fmt: skip
def test_a_jump_says_how_far_and_its_label_stands_on_no_numeral(first, last, label):
    root = drawn(Ink(jumps=[JumpArc(first, last, label)]))
    assert label in written(root)
    layout = layout_of()
    (arc,) = arcs_of(layout, [JumpArc(first, last, label)])
    words = arc.label.box.moved(*arc.at)
    assert [n for n in range(1, 26) if words.meets(layout.ink(n))] == []


def test_jumps_at_the_sides_and_over_the_first_row_run_outside_and_the_drawing_has_room_for_them():
    layout = layout_of()
    for first, last in ((1, 6), (5, 10), (1, 3)):
        jump = JumpArc(first, last, "+30")
        (arc,) = arcs_of(layout, [jump])
        words = arc.label.box.moved(*arc.at)
        frame = layout.frame
        assert not words.meets(frame), (first, last)
        view = numbers(drawn(Ink(jumps=[jump])).get("viewBox"))
        seen = Box(view[0], view[1], view[0] + view[2], view[1] + view[3])
        assert seen.within(words) == words, (first, last)


def test_a_second_jump_over_the_same_stretch_runs_further_out():
    one, other = arcs_of(layout_of(), [JumpArc(1, 11, "+60"), JumpArc(1, 6, "+30")])
    assert other.reach.left < one.reach.left
    assert not one.label.box.moved(*one.at).meets(other.label.box.moved(*other.at))


def test_what_was_counted_again_is_underlined_row_by_row():
    (line,) = of_look(drawn(Ink(recounts=[(4, 7)])), "g-ink-recount")
    layout = layout_of()
    starts = [numbers(start) for start in re.findall(r"M[\d.]+ [\d.]+H[\d.]+", line.get("d"))]
    assert [start[0] > layout.rectangle(n).left for start, n in zip(starts, (4, 6), strict=True)] == [True, True]
    assert [round(start[1] / layout.height, 1) for start in starts] == [1.0, 2.0]


# Phrases


def test_a_phrase_is_named_by_a_letter_in_each_cell_it_is_about():
    root = drawn(Ink(phrases=[Phrase("it ends in nought", [1, 6]), Phrase("thirty more", [6])]))
    pinned = {one.get("data-pinned"): "".join(one.itertext()) for one in of_look(root, "g-phrase")}
    assert pinned == {"1": "a", "6": "a b"}
    assert "nought" not in "".join(written(root))


def test_a_letter_touches_no_numeral_and_stays_in_its_cell():
    layout = layout_of()
    root = drawn(Ink(phrases=[Phrase("all", range(1, 13))]))
    for one in of_look(root, "g-phrase"):
        n, (bubble,) = int(one.get("data-pinned")), one.findall(f"{SVG}rect")
        x, y, wide, high = (float(bubble.get(side)) for side in ("x", "y", "width", "height"))
        box = Box(x, y, x + wide, y + high)
        assert layout.rectangle(n).within(box) == box
        assert not box.meets(layout.ink(n))


def test_the_letters_go_on_after_the_alphabet_and_the_sign_beside_the_words_is_the_same():
    assert [letter(place) for place in (0, 1, 25, 26, 51, 52)] == ["a", "b", "z", "aa", "az", "ba"]
    assert written(ElementTree.fromstring(draw_letter(26))) == ["aa"]
    assert "class=" not in draw_letter(1, on_paper=True)


# What else stands in cells


def test_a_guess_is_dotted_with_a_question_mark_and_a_cover_hides_what_is_under_it():
    root = drawn(Ink(), {1: Entry(), 2: Entry("covered"), 21: Entry("prediction", "130")})
    (frame,) = of_look(root, "g-guess")
    assert frame.get("stroke-dasharray").startswith("0 ")  # round dots, no dashes
    assert written(root) == ["10", "130?"]
    assert len(of_look(root, "g-slip")) == 1
    (told,) = root.iter(f"{SVG}desc")
    assert "16" not in told.text


def test_a_count_left_out_is_a_stroke_and_no_numeral():
    root = drawn(Ink(), {1: Entry(), 2: Entry("left-out"), 3: Entry()})
    assert len(of_look(root, "g-left-out")) == 1
    assert written(root) == ["10", "22"]


@pytest.mark.parametrize("size", ["plan", "print"])
@pytest.mark.parametrize(
    "said",
    ["9", "1,000,000", "one hundred and ten", "a very long word that was said by them", "x" * 40, "13 or so, 14"],
)
def test_whatever_was_said_stays_in_its_cell_and_the_others_keep_their_size(said, size):
    entries = {n: Entry() for n in range(1, 26)}
    before = lay_out(grid(), SIZES[size], (), entries)
    layout = lay_out(grid(), SIZES[size], (), entries | {8: Entry("written", said), 9: Entry("corrected", said=said)})
    assert (layout.numeral, layout.width, layout.height) == (before.numeral, before.width, before.height)
    cell, ink = layout.rectangle(8), layout.ink(8)
    assert cell.within(ink) == ink
    drawing = draw_grid(grid(), size=size, entries={9: Entry("corrected", said=said)})
    struck = list(ElementTree.fromstring(drawing).iter(f"{SVG}text"))[:-1]
    cell = layout.rectangle(9)
    for text in struck:
        assert cell.left <= float(text.get("x")) < cell.right
        assert cell.top <= float(text.get("y")) < layout.ink(9).top


def test_a_corrected_numeral_stands_clear_of_what_is_struck_over_it_even_in_a_ring():
    entries = {n: Entry() for n in range(1, 26)} | {9: Entry("corrected", said="57")}
    root = drawn(Ink([Mark(9, "ring")]), entries)
    (ring,) = of_look(root, "g-ink-ring")
    said = next(text for text in root.iter(f"{SVG}text") if text.text == "57")
    assert float(said.get("y")) < float(ring.get("cy")) - float(ring.get("ry"))


def test_a_hyphen_in_what_was_said_is_no_minus():
    entries = {1: Entry("corrected", "-5", "sixty-four"), 2: Entry("written", "90-10")}
    assert written(drawn(Ink(), entries)) == ["sixty-four", "\u22125", "90-10"]


def test_a_value_said_as_it_is_written_keeps_its_small_unit():
    feet = grid("8 in", "8 in", 4, 2, kind="length", units="two")
    due = feet.count.text(3)
    said = draw_grid(feet, size="plan", entries={3: Entry("written", due)})
    assert said == draw_grid(feet, size="plan", entries={3: Entry()})
