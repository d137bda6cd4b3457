"""Texts that look as if they named a child are noticed; ordinary sentences about a lesson are not."""

import pytest

from routines.names_of_children import look_like_names


@pytest.mark.parametrize(
    ("text", "names"),
    [
        ("Maya said the tens go up", ["Maya"]),
        ("Luis: it is always even", ["Luis"]),
        ("then Ana noticed and José: no", ["Ana", "José"]),
        ("Íñigo pensó que era par", ["Íñigo"]),
        ("They said it goes up by 6.", []),
        ("Someone said ninety-ten.", []),
        ("Stop 2: nobody saw the column.", []),
        ("We asked whether 200 would come.", []),
        ("the tens stand in column 1", []),
        ("", []),
    ],
)
def test_names_are_found_and_sentences_left_alone(text, names):
    assert look_like_names(text) == names
