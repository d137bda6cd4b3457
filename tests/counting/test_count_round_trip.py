"""What a count writes, it reads again as the same value, in every kind and style."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from routines.counting.kinds.piece import join
from tests.counting.any_count import KINDS, counts


@pytest.mark.parametrize("kind", KINDS)
@given(data=st.data())
def test_every_written_count_reads_as_its_value(kind: str, data: st.DataObject) -> None:
    count = data.draw(counts(kind))
    for n in (1, 2, count.terms, data.draw(st.integers(1, 300))):
        read = count.read(count.text(n))
        away = read - count.value(n)
        assert away == 0 or (count.wrap is not None and away % count.wrap == 0), count.text(n)


@pytest.mark.parametrize("kind", KINDS)
@given(data=st.data())
def test_pieces_make_up_the_text(kind: str, data: st.DataObject) -> None:
    count = data.draw(counts(kind))
    n = data.draw(st.integers(1, 300))
    text = count.text(n)
    assert join(count.pieces(n)) == text
    at = 0
    for piece in count.pieces(n):
        at = text.index(piece.text, at) + len(piece.text)
    assert at == len(text)


@pytest.mark.parametrize("kind", KINDS)
@given(data=st.data())
def test_parts_are_the_numbers_that_are_written(kind: str, data: st.DataObject) -> None:
    count = data.draw(counts(kind))
    n = data.draw(st.integers(1, 300))
    parts = count.parts(n)
    written = {piece.part: piece.text for piece in count.pieces(n) if piece.part}
    marks = str.maketrans("", "", count.style.thousands)
    for name, value in parts.items():
        if name in written:
            assert value == int(written[name].translate(marks))
        else:
            assert value == 0
    assert all(name in parts or name in ("whole", "top", "bottom") for name in count.part_names())


@pytest.mark.parametrize("kind", KINDS)
@given(data=st.data())
def test_a_part_stands_where_its_span_says(kind: str, data: st.DataObject) -> None:
    count = data.draw(counts(kind))
    n = data.draw(st.integers(1, 300))
    pieces = count.pieces(n)
    marks = str.maketrans("", "", count.style.thousands)
    for name, value in count.parts(n).items():
        span = count.span(n, part=name)
        if span is not None:
            index, first, last = span
            assert int(pieces[index].text[first:last].translate(marks)) == value


@pytest.mark.parametrize("kind", ["whole", "decimal", "money"])
@given(data=st.data())
def test_a_digit_stands_where_its_span_says(kind: str, data: st.DataObject) -> None:
    count = data.draw(counts(kind))
    n = data.draw(st.integers(1, 300))
    pieces = count.pieces(n)
    for place in range(-3, 7):
        digit = int(abs(count.value(n)) * 10 ** (3 - place) // 10**3) % 10
        span = count.span(n, place=place)
        if span is None:
            assert digit == 0
        else:
            index, first, last = span
            assert pieces[index].text[first:last] == str(digit)


@pytest.mark.parametrize("kind", KINDS)
@given(data=st.data())
def test_every_count_can_be_said_in_both_languages(kind: str, data: st.DataObject) -> None:
    count = data.draw(counts(kind))
    n = data.draw(st.integers(1, 300))
    for language in ("en", "es"):
        words = count.words(n, language)
        assert words
        assert not any(sign.isdigit() for sign in words)


@pytest.mark.parametrize("kind", KINDS)
@given(data=st.data())
def test_a_jump_is_written_without_sign(kind: str, data: st.DataObject) -> None:
    count = data.draw(counts(kind))
    assert not count.difference_text(count.step).startswith("-")
    assert count.difference_text(count.step) == count.difference_text(-count.step)
