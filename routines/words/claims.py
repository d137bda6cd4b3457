"""The phrases of a claim put together for a level: the teacher's line, a child's words, the reason."""

from __future__ import annotations

from collections.abc import Iterator
from functools import cached_property
from typing import Any

from .families import Phrases
from .families.phrases import Line
from .sentences import REASON_LIMITS, STUDENT_BANDS, capital, first_that_fits, sentence


class Words:
    """A claim in words, each made when it is first read: a line for the teacher, what a child may say, the reason."""

    def __init__(self, phrases: Phrases[Any]) -> None:
        self._phrases = phrases

    @cached_property
    def statement(self) -> str:
        """The teacher's line."""
        return capital(self._phrases.statement() + until(self._phrases))

    @cached_property
    def student_words(self) -> str:
        """What a child of the level may say."""
        return student_words(self._phrases)

    @cached_property
    def because(self) -> str:
        """The reason in numbers."""
        return because(self._phrases)


def until(phrases: Phrases[Any]) -> str:
    """Say where a claim ends (", until 100"); empty for what never does."""
    n = phrases.life.breaks_at
    if n is None or phrases.life.holds != "shown":
        return ""
    return phrases.say("until", until=phrases.page.value(n))


def because(phrases: Phrases[Any]) -> str:
    """Say the reason in numbers, with what happens at the end where the level has room for it."""
    return first_that_fits(_because(phrases), 1, REASON_LIMITS[phrases.page.band])


def _because(phrases: Phrases[Any]) -> Iterator[Line]:
    note = phrases.note()
    if note:
        for reason in phrases.reasons():
            yield _sentences(reason, lambda: note)
            break
    for reason in phrases.reasons():
        yield _sentences(reason)


def _sentences(*lines: Line) -> Line:
    """The lines one after the other, each a sentence."""
    return lambda: " ".join(sentence(line()) for line in lines)


def student_words(phrases: Phrases[Any]) -> str:
    """Say it as a child of the page's level would."""
    band = phrases.page.band
    return first_that_fits((_noticing, _shown, _reasoned, _tested)[band](phrases), *STUDENT_BANDS[band])


def _noticing(phrases: Phrases[Any]) -> Iterator[Line]:
    """Levels 0 and 1: what is there."""
    for core in phrases.cores():
        yield _sentences(core)


def _shown(phrases: Phrases[Any]) -> Iterator[Line]:
    """Levels 2 and 3: what is there, and where to look."""
    for evidence in phrases.evidence():
        for core in phrases.cores():
            yield _sentences(core, evidence)
    for reason in phrases.reasons():
        for core in phrases.cores():
            yield _sentences(core, reason)
    yield from _noticing(phrases)


def _reasoned(phrases: Phrases[Any]) -> Iterator[Line]:
    """Levels 4 and 5: what is there, and why; with an example where that is short."""
    for reason in phrases.reasons():
        for core in phrases.cores():
            yield from phrases.saying("student.reason", core=core(), Core=capital(core()), reason=reason())
            for evidence in phrases.evidence():
                yield from phrases.saying(
                    "student.both", Core=capital(core()), reason=reason(), Evidence=capital(evidence())
                )


def _tested(phrases: Phrases[Any]) -> Iterator[Line]:
    """Levels 6 and up: a conjecture, its reason, and where to test it."""
    test = capital(_test(phrases))
    for reason in phrases.reasons():
        for core in phrases.cores():
            yield from phrases.saying("student.test", core=core(), reason=reason(), Test=test)


def _test(phrases: Phrases[Any]) -> str:
    dies = phrases.life.breaks_at
    n = dies or phrases.term_to_test()
    key = "test.dies" if dies else "test.further" if n > phrases.grid.terms else "test.here"
    return phrases.say(key, nth=phrases.language.nth(n), v=phrases.page.value(n))
