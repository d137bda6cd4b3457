"""A telling put together for a level: the teacher's line, a child's words, the reason."""

from __future__ import annotations

from collections.abc import Iterator
from functools import cached_property
from typing import Any

from .families import Telling
from .families.telling import Line
from .sentences import REASON_LIMITS, STUDENT_BANDS, capital, first_that_fits, sentence


class Words:
    """A claim in words, each made when it is first read: a line for the teacher, what a child may say, the reason."""

    def __init__(self, telling: Telling[Any]) -> None:
        self._telling = telling

    @cached_property
    def statement(self) -> str:
        """The teacher's line."""
        return capital(self._telling.statement() + until(self._telling))

    @cached_property
    def student_words(self) -> str:
        """What a child of the level may say."""
        return student_words(self._telling)

    @cached_property
    def because(self) -> str:
        """The reason in numbers."""
        return because(self._telling)


def until(telling: Telling[Any]) -> str:
    """Say where a claim ends (", until 100"); empty for what never does."""
    n = telling.life.breaks_at
    if n is None or telling.life.holds != "shown":
        return ""
    return telling.say("until", until=telling.page.value(n))


def because(telling: Telling[Any]) -> str:
    """Say the reason in numbers, with what happens at the end where the level has room for it."""
    return first_that_fits(_because(telling), 1, REASON_LIMITS[telling.page.band])


def _because(telling: Telling[Any]) -> Iterator[Line]:
    note = telling.note()
    if note:
        for reason in telling.reasons():
            yield lambda reason=reason: f"{sentence(reason())} {sentence(note)}"  # type: ignore[misc]
            break
    for reason in telling.reasons():
        yield lambda reason=reason: sentence(reason())  # type: ignore[misc]


def student_words(telling: Telling[Any]) -> str:
    """Say it as a child of the page's level would."""
    band = telling.page.band
    return first_that_fits((_noticing, _shown, _reasoned, _tested)[band](telling), *STUDENT_BANDS[band])


def _noticing(telling: Telling[Any]) -> Iterator[Line]:
    """Levels 0 and 1: what is there."""
    for core in telling.cores():
        yield lambda core=core: sentence(core())  # type: ignore[misc]


def _shown(telling: Telling[Any]) -> Iterator[Line]:
    """Levels 2 and 3: what is there, and where to look."""
    for evidence in telling.evidence():
        for core in telling.cores():
            yield lambda core=core, evidence=evidence: f"{sentence(core())} {sentence(evidence())}"  # type: ignore[misc]
    for reason in telling.reasons():
        for core in telling.cores():
            yield lambda core=core, reason=reason: f"{sentence(core())} {sentence(reason())}"  # type: ignore[misc]
    yield from _noticing(telling)


def _reasoned(telling: Telling[Any]) -> Iterator[Line]:
    """Levels 4 and 5: what is there, and why; with an example where that is short."""
    for reason in telling.reasons():
        for core in telling.cores():
            yield from telling.saying("student.reason", core=core(), Core=capital(core()), reason=reason())
            for evidence in telling.evidence():
                yield from telling.saying(
                    "student.both", Core=capital(core()), reason=reason(), Evidence=capital(evidence())
                )


def _tested(telling: Telling[Any]) -> Iterator[Line]:
    """Levels 6 and up: a conjecture, its reason, and where to test it."""
    test = capital(_test(telling))
    for reason in telling.reasons():
        for core in telling.cores():
            yield from telling.saying("student.test", core=core(), reason=reason(), Test=test)


def _test(telling: Telling[Any]) -> str:
    dies = telling.life.breaks_at
    n = dies or telling.term_to_test()
    key = "test.dies" if dies else "test.further" if n > telling.grid.terms else "test.here"
    return telling.say(key, nth=telling.language.nth(n), v=telling.page.value(n))
