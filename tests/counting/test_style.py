"""Styles: every choice offered, every other refused."""

import json
from dataclasses import fields

import pytest
from hypothesis import given
from hypothesis import strategies as st

from routines.counting import Audience, CountError, Style
from routines.counting.style import CHOICES
from tests.counting.any_count import KINDS, styles


def test_thousands_go_with_the_decimal_mark_unless_chosen() -> None:
    assert (Style().thousands, Style(decimal_mark=",").thousands) == (",", ".")
    assert Style() == Style(thousands=",")


@pytest.mark.parametrize("name", CHOICES)
def test_every_choice_on_offer_is_taken(name: str) -> None:
    for choice in CHOICES[name]:
        others = {"thousands": ""} if name == "decimal_mark" else {}
        others |= {"decimal_mark": ","} if (name, choice) == ("thousands", ".") else {}
        assert getattr(Style(**{name: choice}, **others), name) == choice  # type: ignore[arg-type]


@pytest.mark.parametrize("name", [field.name for field in fields(Style)])
@pytest.mark.parametrize("value", ["nonsense", -1, 3.5, b"x", [], object()])
def test_every_other_value_is_refused(name: str, value: object) -> None:
    with pytest.raises(CountError) as refused:
        Style(**{name: value})  # type: ignore[arg-type]
    assert refused.value.field == "style"


@pytest.mark.parametrize("kind", KINDS)
@given(data=st.data())
def test_a_style_stored_as_json_comes_back_the_same(kind: str, data: st.DataObject) -> None:
    style = data.draw(styles(kind))
    assert Style.from_dict(json.loads(json.dumps(style.as_dict()))) == style


def test_the_plain_style_stores_nothing() -> None:
    assert Style().as_dict() == {}


@pytest.mark.parametrize("stored", [{"colour": "red"}, {"clock": 13}, {3: 4}, [], None, "mixed"])
def test_a_stored_style_that_is_none_is_refused(stored: object) -> None:
    with pytest.raises(CountError) as refused:
        Style.from_dict(stored)  # type: ignore[arg-type]
    assert refused.value.field == "style"


@pytest.mark.parametrize("marks", [(".", "."), (",", ",")])
def test_one_mark_cannot_stand_for_decimals_and_thousands(marks: tuple[str, str]) -> None:
    with pytest.raises(CountError) as refused:
        Style(decimal_mark=marks[0], thousands=marks[1])
    assert refused.value.field == "style"


@pytest.mark.parametrize(
    ("field", "keywords"),
    [
        ("level", {"level": -1}),
        ("level", {"level": 9}),
        ("level", {"level": True}),
        ("level", {"level": "3"}),
        ("level", {"level": 2.0}),
        ("language", {"language": "fr"}),
        ("language", {"language": None}),
    ],
)
def test_an_audience_has_a_level_and_a_language(field: str, keywords: dict[str, object]) -> None:
    with pytest.raises(CountError) as refused:
        Audience(**keywords)  # type: ignore[arg-type]
    assert refused.value.field == field
