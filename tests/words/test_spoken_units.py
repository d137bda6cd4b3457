"""What a child says has the names of units, what the teacher reads has their signs."""

import re

import pytest
from hypothesis import given
from hypothesis import strategies as st

from routines.counting import Audience, Count, Grid, Style
from routines.plans.suggestions.answers import suggest_answers
from routines.words import find_patterns, suggest_stops
from routines.words.spoken_units import with_unit_names
from tests.counting.any_count import grids
from tests.counting.rulings.asking import grid

MEASURED = ("length", "mass", "capacity", "elapsed", "clock")
SIGN = re.compile(
    r"\d (?:in|ft|yd|mi|mm|cm|m|km|oz|lb|g|kg|fl oz|pt|qt|gal|mL|L|s|min|h|d)(?= more| less| later| más| menos|[.,])"
)


@pytest.mark.parametrize(
    ("amount", "english", "spanish"),
    [
        ("9 in", "9 inches", "9 pulgadas"),
        ("1 ft 3 in", "1 foot 3 inches", "1 pie 3 pulgadas"),
        ("1,250 g", "1,250 grams", "1,250 gramos"),
        ("-0.5 m", "-0.5 meters", "-0.5 metros"),
        ("3/4 in", "3/4 inch", "3/4 de pulgada"),
        ("1 1/2 in", "1 1/2 inches", "1 1/2 pulgadas"),
        ("8 fl oz", "8 fluid ounces", "8 onzas líquidas"),
        ("1 h 20 min", "1 hour 20 minutes", "1 hora 20 minutos"),
        ("9:05 a. m.", "9:05 a. m.", "9:05 a. m."),
        ("3/4 cup", "3/4 cup", "3/4 cup"),
        ("25¢", "25¢", "25¢"),
    ],
)
def test_an_amount_with_the_names_of_its_units(amount: str, english: str, spanish: str) -> None:
    assert with_unit_names(amount, "en") == english
    assert with_unit_names(amount, "es") == spanish


@given(st.sampled_from(MEASURED), st.data(), st.integers(0, 8), st.sampled_from(["en", "es"]))
def test_no_child_says_a_sign(kind: str, data: st.DataObject, level: int, language: str) -> None:
    view = data.draw(grids(kind))
    audience = Audience(level, language)
    said = [words for one in find_patterns(view, audience=audience)[:12] for words in one.ways_to_say_it]
    said += [one.words for one in suggest_answers(view, audience, rounds=2)]
    said += [stop.answer for stop in suggest_stops(view, audience=audience)]
    assert [words for words in said if SIGN.search(words)] == []


@pytest.mark.parametrize("language", ["en", "es"])
def test_at_a_stop_the_child_says_names_and_the_teacher_reads_signs(language: str) -> None:
    minutes = suggest_stops(grid("25 min", "25 min", 15, 5, "elapsed"), audience=Audience(3, language))
    assert [bool(re.search(r"\d min\b", stop.answer)) for stop in minutes] == [False] * len(minutes)
    assert all("minut" in stop.answer for stop in minutes)
    assert all(re.search(r"\d (?:h|min)\b", stop.why) for stop in minutes[:-1])


@pytest.mark.parametrize("language", ["en", "es"])
def test_a_number_before_a_word_is_no_amount(language: str) -> None:
    for text in ("1 h later in row 3, column 4: 2 rows under 5 in", "column 3: 1 m more", "column 3: 3/4 in more"):
        assert with_unit_names(text, language).startswith(
            text.partition(":")[0].replace("1 h", {"en": "1 hour", "es": "1 hora"}[language])
        )
    assert with_unit_names("column 3: 1 m more", "en") == "column 3: 1 meter more"
    assert with_unit_names("hay 1 día más", "es") == "hay 1 día más"


def test_the_teacher_reads_signs() -> None:
    step = find_patterns(grid("25 cm", "25 cm", 16, 4, "length"), audience=Audience(2))[0]
    assert "25 cm more" in step.statement
    assert "25 cm more than 25 cm is 50 cm" in step.because
    assert "25 centimeters" in step.student_words


@pytest.mark.parametrize(
    ("kind", "start", "step", "length", "language", "told"),
    [
        ("money", "35c", "25c", 4, "en", r"\$1 more"),
        ("money", "35c", "25c", 4, "es", r"\$1\b"),
        ("length", "75 cm", "25 cm", 4, "en", "1 meter more"),
        ("mass", "250 g", "250 g", 4, "es", "1 kilogramo"),
        ("mass", "250 g", "250 g", 3, "en", "750 grams more"),  # fills no kilogram
        ("elapsed", "20 min", "20 min", 6, "en", "2 hours more"),
    ],
)
def test_a_move_that_fills_larger_units_is_told_in_them(
    kind: str, start: str, step: str, length: int, language: str, told: str
) -> None:
    count = Count.parse(kind=kind, start=start, step=step, terms=4 * length, style=Style(language=language))
    down = next(
        one
        for one in find_patterns(Grid(count, length), audience=Audience(3, language))
        if one.claim.parameters.get("direction") == "down"
    )
    for words in down.ways_to_say_it:
        assert re.search(told, words), words


@given(grids("whole"), st.sampled_from(["en", "es"]))
def test_nobody_in_k_speaks_of_digits(view: Grid, language: str) -> None:
    for one in find_patterns(view, implied=True, audience=Audience(0, language)):
        if one.claim.family in ("digit", "digit-run"):
            for words in one.ways_to_say_it:
                assert not re.search("digit|cifra", words), words
