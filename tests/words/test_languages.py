"""Every language brings the same: each subject with the same sentences, with the same numbers between their braces."""

from collections.abc import Iterator, Mapping
from string import Formatter
from typing import Any

import pytest

from routines.counting.kinds.ringed import FRIENDLIEST, LESS_FRIENDLY
from routines.counting.languages import LANGUAGES as SAID
from routines.counting.named_multiples import NAMED
from routines.words import LANGUAGES

ENGLISH = LANGUAGES["en"]
SUBJECTS = ("patterns", "locating", "probes", "replies", "stops", "next_counts", "folds", "standards")


def tables(language: Any, subject: str) -> Iterator[tuple[str, Mapping[Any, Any]]]:
    """The tables of sentences of a subject, by name."""
    sentences = getattr(language, subject)
    named = {subject: sentences} if isinstance(sentences, Mapping) else sentences._asdict()
    for name, table in named.items():
        if isinstance(table, Mapping) and name != "parts_of_day":  # days are parted otherwise in Spanish
            yield name, table


def holes(sentence: Any) -> set[str]:
    if isinstance(sentence, str):
        return {name for _, name, _, _ in Formatter().parse(sentence) if name}
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


def test_what_is_spoken_is_what_numbers_are_said_in() -> None:
    assert tuple(LANGUAGES) == SAID


@pytest.mark.parametrize("language", LANGUAGES.values(), ids=LANGUAGES)
def test_the_multiples_that_have_a_name_are_named(language: Any) -> None:
    assert set(language.landmark_nouns) == {(unit, multiple) for unit in NAMED for multiple in NAMED[unit]}


@pytest.mark.parametrize("language", LANGUAGES.values(), ids=LANGUAGES)
def test_what_may_be_ringed_has_its_name(language: Any) -> None:
    ringed = {what: {*FRIENDLIEST[what], *LESS_FRIENDLY[what]} for what in FRIENDLIEST if what[0] != "money"}
    assert {what: set(names) for what, names in language.ringed.items()} == ringed
