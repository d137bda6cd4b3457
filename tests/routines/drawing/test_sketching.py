"""What a card lights: one pattern of each kind at most, by an example where it covers much of the grid."""

from routines.drawing.sketching import sketch
from tests.routines.drawing.grids import first_column, grid, pattern, tens_of_each_column

EVERY_TERM = range(1, 26)


def test_one_pattern_of_each_kind_is_lit_the_first_that_tells_something() -> None:
    of = grid()
    always, other, shown = first_column(of), pattern([[2, 7]]), pattern([[3, 8]], "shown")
    assert sketch(of, [always, other, shown], EVERY_TERM) == [always, shown]


def test_what_lies_in_every_line_is_shown_in_one_clear_of_what_is_lit_already() -> None:
    of = grid()
    always, everywhere = first_column(of), tens_of_each_column(of)
    assert sketch(of, [always, everywhere], EVERY_TERM)[1].groups == (of.lines("column")[1],)
    assert sketch(of, [everywhere], EVERY_TERM)[0].groups == (of.lines("column")[0],)


def test_an_example_is_a_line_that_the_drawing_shows_whole() -> None:
    of = grid(lead=3)  # the first row holds two counts only
    everywhere = pattern(of.lines("row"))
    assert sketch(of, [everywhere], EVERY_TERM)[0].groups == (of.lines("row")[1],)
    of = grid(fill="across-up")
    seen = [n for n in EVERY_TERM if of.place(n)[0] > 2]
    assert sketch(of, [pattern(of.lines("row"))], seen)[0].groups == (of.lines("row")[2],)


def test_one_group_over_the_whole_count_is_left_to_the_words() -> None:
    of = grid()
    whole, column = pattern([list(EVERY_TERM)]), first_column(of)
    assert sketch(of, [whole, column], EVERY_TERM) == [column]
    assert sketch(of, [whole], EVERY_TERM) == []
