"""Whole words, whatever their capitals and whatever stands between them; accents tell words apart."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from routines.words_erased.matching import Sought, mark_of, words_of


@pytest.mark.parametrize(
    ("words", "text", "left"),
    [
        ("maya", "Maya said the tens go up.", "[words removed] said the tens go up."),
        ("Maya", "MAYA, maya!", "[words removed], [words removed]!"),
        ("Maya", "Maya’s idea and Maya's", "[words removed]’s idea and [words removed]'s"),
        ("Mary Ann", "Mary-Ann, Mary\nAnn and Mary, Ann", "[words removed], [words removed] and [words removed]"),
        ("O'Brien", "So O’Brien said", "So [words removed] said"),
        ("José", "Jose\u0301 y José", "[words removed] y [words removed]"),
        ("Ana", "Ma\u00adna A\u00adna", "Ma\u00adna [words removed]"),
        ("straße", "STRASSE", "[words removed]"),
    ],
)
def test_words_are_taken_out(words, text, left):
    assert Sought.in_words(words).taken_out(text) == left


@pytest.mark.parametrize(
    ("words", "text"),
    [("Ana", "Banana and Anabel"), ("Jose", "José"), ("Mary Ann", "Mary and Ann"), ("Mary Ann", "Mary")],
)
def test_other_words_stay(words, text):
    assert Sought.in_words(words).taken_out(text) == text


def test_several_are_found_at_once_and_overlaps_go_whole():
    sought = Sought([mark_of("Mary Ann"), mark_of("Ann Lee"), mark_of("Bo")])
    assert sought.taken_out("Bo and Mary Ann Lee and Ann") == "[words removed] and [words removed] and Ann"


def test_a_mark_depends_on_this_servers_key(settings):
    mine = mark_of("Maya")
    settings.SECRET_KEY = "x" * 60
    assert mark_of("Maya") != mine


@given(st.text(max_size=30), st.text(max_size=60), st.text(max_size=60))
def test_what_was_taken_out_is_found_no_more(words, before, after):
    if not words_of(words):
        return
    sought = Sought.in_words(words)
    text = f"{before} {words} {after}"
    assert sought.stands_in(text)
    assert not sought.stands_in(sought.taken_out(text, "…"))


@given(st.text(st.characters(max_codepoint=127)))
def test_plain_letters_are_read_as_all_others_are(text):
    """A letter with an accent behind it takes the long way through the same text."""
    assert words_of(text) == words_of(f"{text} é")[:-1]
