"""Every language brings the same: each subject with the same sentences, with the same numbers between their braces."""

from collections.abc import Iterator, Mapping
from itertools import chain
from string import Formatter
from typing import Any

import pytest

from accounts.languages import LANGUAGES as NAMES_TO_CHOOSE
from routines.counting import Count, Kind
from routines.counting.claims import FAMILIES
from routines.counting.kinds.said import SAID as SAYINGS
from routines.counting.kinds.unit_names import NAMES
from routines.counting.kinds.units import UNITS
from routines.counting.languages import LANGUAGES as SAID
from routines.counting.named_multiples import NAMED
from routines.drawing.words import WORDS
from routines.words import LANGUAGES
from routines.words.language import Language

ENGLISH = LANGUAGES["en"]
ONE_OF_EACH = [
    ("whole", "1", "1"), ("decimal", "0.5", "0.5"), ("fraction", "1/2", "1/2"),
    ("length", "1 in", "1 in"), ("length", "1 cm", "1 cm"), ("mass", "1 oz", "1 oz"), ("mass", "1 g", "1 g"),
    ("capacity", "1 fl oz", "1 fl oz"), ("capacity", "1 mL", "1 mL"), ("clock", "8:00", "5 min"), ("elapsed", "5 min", "5 min"),
]  # fmt: skip
SUBJECTS = (
    "patterns",
    "locating",
    "probes",
    "rules",
    "replies",
    "stops",
    "next_counts",
    "folds",
    "standards",
    "worth_teaching",
    "paper",
    "answers",
)
WHOLE = ("answers", "asked_back", "paper")


def tables(language: Any, subject: str) -> Iterator[tuple[str, Mapping[Any, Any]]]:
    """The tables of sentences of a subject, by name."""
    sentences = getattr(language, subject)
    named = {subject: sentences} if isinstance(sentences, Mapping) else sentences._asdict()
    for name, table in named.items():
        if isinstance(table, Mapping) and name != "parts_of_day":  # days are parted otherwise in Spanish
            yield name, table


def holes(sentence: Any) -> set[str]:
    """What is filled in; an idea that begins with a small letter, within a sentence, is the same idea."""
    if isinstance(sentence, str):
        return {name.removesuffix("_lower") for _, name, _, _ in Formatter().parse(sentence) if name}
    return set().union(*map(holes, sentence)) if sentence else set()


@pytest.mark.parametrize("language", LANGUAGES.values(), ids=LANGUAGES)
@pytest.mark.parametrize("subject", SUBJECTS)
def test_every_subject_has_the_same_sentences(language: Any, subject: str) -> None:
    for (name, ours), (_, english) in zip(tables(language, subject), tables(ENGLISH, subject), strict=True):
        assert set(ours) == set(english), name


@pytest.mark.parametrize("language", LANGUAGES.values(), ids=LANGUAGES)
def test_the_sentences_of_stops_and_next_counts_hold_the_same_numbers(language: Any) -> None:
    for change, sentences in language.next_counts.changes.items():
        assert holes(sentences[0]) == holes(ENGLISH.next_counts.changes[change][0]), change
    for reason, sentence in language.stops.answers.items():
        assert holes(sentence) == holes(ENGLISH.stops.answers[reason]), reason


def test_a_language_brings_everything_that_is_asked_of_one() -> None:
    for language in LANGUAGES.values():
        assert [name for name in Language.__annotations__ if not hasattr(language, name)] == []


@pytest.mark.parametrize("language", LANGUAGES.values(), ids=LANGUAGES)
@pytest.mark.parametrize("subject", WHOLE)
def test_a_sentence_holds_the_same_facts_in_every_language(language: Any, subject: str) -> None:
    english = getattr(ENGLISH, subject)
    for key, sentence in getattr(language, subject).items():
        wordings = (sentence,) if isinstance(sentence, str) else sentence
        assert wordings
        assert all(map(str.strip, wordings))
        assert holes(sentence) == holes(english[key]), key


def test_every_family_is_asked_back_about() -> None:
    of_digits = {f"{name} {of}" for name in ("digit", "digit-run") for of in ("of a part", "in K")}
    for language in LANGUAGES.values():
        assert set(language.asked_back) == {*FAMILIES, *of_digits}


def test_drawings_say_the_same_in_every_language() -> None:
    assert set(WORDS) == set(LANGUAGES)
    for words in WORDS.values():
        for name, ours, english in zip(words._fields, words, WORDS["en"], strict=True):
            assert (set(ours) if isinstance(ours, Mapping) else holes(ours)) == (
                set(english) if isinstance(english, Mapping) else holes(english)
            ), name


def test_units_days_and_joints_are_named_in_every_language() -> None:
    for language in LANGUAGES:
        assert {unit for unit, code in NAMES if code == language} == set(UNITS)
    for said in SAYINGS.values():
        assert set(said.coins) == set(SAYINGS["en"].coins)
        assert len(said.decimal_places) == len(SAYINGS["en"].decimal_places)
        assert said.parts_of_day[0][0] == 0
        for name, ours, english in zip(said.joints._fields, said.joints, SAYINGS["en"].joints, strict=True):
            assert ours.count("{}") == english.count("{}"), name


def test_what_is_spoken_is_what_numbers_are_said_in() -> None:
    assert tuple(LANGUAGES) == SAID == tuple(NAMES_TO_CHOOSE)


@pytest.mark.parametrize("language", LANGUAGES.values(), ids=LANGUAGES)
def test_the_multiples_that_have_a_name_are_named(language: Any) -> None:
    assert set(language.landmark_nouns) == {(unit, multiple) for unit in NAMED for multiple in NAMED[unit]}


@pytest.mark.parametrize("language", LANGUAGES.values(), ids=LANGUAGES)
def test_what_may_be_ringed_has_its_name(language: Any) -> None:
    forms = [Count.parse(kind=kind, start=start, step=step, terms=4).form for kind, start, step in ONE_OF_EACH]
    assert {form.name for form in forms} == set(Kind) - {Kind.MONEY}  # whose coins have names of their own, or none
    ringed = {(form.name, form.base_unit): set(chain(*form.ringed_multiples())) for form in forms}
    assert {what: set(names) for what, names in language.ringed.items()} == ringed
