"""The number line: every dot and mark where its number belongs, jumps in counting order, smaller numbers at the left."""

from fractions import Fraction
from itertools import pairwise

import pytest
from hypothesis import given

from routines.counting import Count
from routines.drawing.pictures import NARROW, draw_picture
from tests.routines.drawing.pictures.drawn import count, counts, number, of_class, parse, written

TENTH = 0.06  # positions are written to a tenth of a pixel


def dots(drawn: str) -> list[tuple[float, float]]:
    return [(number(dot, "cx"), number(dot, "cy")) for dot in of_class(drawn, "p-dot")]


def lines(places: list[tuple[float, float]]) -> list[list[float]]:
    """The dots' x by line of the page, in drawing order."""
    found: dict[float, list[float]] = {}
    for x, y in places:
        found.setdefault(y, []).append(x)
    return list(found.values())


def written_at(drawn: str, words: str) -> float:
    [text] = [text for text in written(drawn) if text.words == words]
    return (text.left + text.right) / 2


@given(counts())
def test_the_terms_stand_at_equal_distances_in_the_direction_of_the_count(of: Count) -> None:
    drawn = draw_picture(of, kind="line")
    apart = {round(b - a, 0) for line in lines(dots(drawn)) for a, b in pairwise(line)}
    assert len(apart) == 1
    assert (apart.pop() > 0) == (of.step > 0)


def test_every_line_of_the_page_goes_on_from_the_last_term_of_the_line_before() -> None:
    of = count("whole", "10", "6", 12)
    by_line = lines(dots(draw_picture(of, width=NARROW)))
    assert len(by_line) > 1
    assert sum(len(line) - 1 for line in by_line) == 11


def test_numbers_between_stand_where_they_belong() -> None:
    # 20, 26, ... 86 leaves out 30, 40, 60 and 70: a third of the way from 26 to 32 on, and so on.
    drawn = draw_picture(count("whole", "20", "6", 12))
    places = {20 + 6 * k: x for k, (x, _) in enumerate(dots(drawn))}
    for friendly in (30, 40, 60, 70):
        expected = places[20] + (places[86] - places[20]) * (friendly - 20) / 66
        assert written_at(drawn, str(friendly)) == pytest.approx(expected, abs=2 * TENTH)


@pytest.mark.parametrize(("start", "step"), [("-22", "4"), ("18", "-3")])
def test_negative_numbers_lie_left_of_zero(start: str, step: str) -> None:
    of = count("whole", start, step, 12)
    drawn = draw_picture(of)
    values = [int(start) + int(step) * k for k in range(12)]
    by_value = sorted(zip(values, [x for x, _ in dots(drawn)], strict=True))
    assert all(a < b for (_, a), (_, b) in pairwise(by_value))
    assert any(text.words.startswith("\u2212") for text in written(drawn))


def test_a_line_near_its_start_begins_at_0_and_one_far_away_does_not() -> None:
    near = draw_picture(count("money", "$1.15", "$1.15", 6), kind="line")
    [first, second, *_] = [x for x, _ in dots(near)]
    assert written_at(near, "$0.00") == pytest.approx(first - (second - first), abs=2 * TENTH)
    far = draw_picture(count("money", "$9.15", "$1.15", 6), kind="line")
    assert "$0.00" not in [text.words for text in written(far)]


def test_every_jump_says_its_size_and_its_direction() -> None:
    forward = [text.words for text in written(draw_picture(count("whole", "10", "6", 12)))]
    assert forward.count("+6") == 11
    back = [text.words for text in written(draw_picture(count("whole", "100", "-6", 12)))]
    assert back.count("\u22126") == 11


def test_the_jump_into_a_later_dozen_is_shown() -> None:
    drawn = draw_picture(count("whole", "10", "6", 30), first=13, last=14)
    assert len(of_class(drawn, "p-jump")) == 2
    assert {text.words for text in written(drawn)} >= {"76", "82", "88"}


def test_a_term_alone_is_drawn_without_jumps() -> None:
    drawn = draw_picture(count("whole", "10", "6", 30), last=1)
    assert not of_class(drawn, "p-jump")
    assert len(dots(drawn)) == 1


def test_hundredths_stay_exact_over_two_hundred_terms() -> None:
    of = Count("decimal", Fraction(1, 100), Fraction(7, 100), 200)
    places = [x for x, _ in dots(draw_picture(of, kind="line", first=190, last=200))]
    step = (places[-1] - places[0]) / (len(places) - 1)
    assert [x - places[0] for x in places] == pytest.approx([step * k for k in range(len(places))], abs=2 * TENTH)


def test_the_drawing_is_one_image_for_those_who_hear_it() -> None:
    assert parse(draw_picture(count("whole", "10", "6"))).get("role") == "img"
