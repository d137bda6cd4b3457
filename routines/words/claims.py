"""The phrases of a claim put together for a level: the teacher's line, a child's words, the reason."""

from __future__ import annotations

from collections.abc import Iterator
from functools import cached_property
from typing import Any

from routines.counting.claims import NeighbourClaim, StepClaim

from .families import Phrases
from .families.phrases import Line
from .sentences import MOST_WORDS_OF_A_CHILD, REASON_LIMITS, capital, first_that_fits, sentence
from .spoken_units import spoken_page

# A jump is seen at once, and noticed at any level; what takes looking is a conjecture from grade 6 on.
NOTICING = 2


class Words:
    """A claim in words, each made when it is first read: a line for the teacher, what a child may say, the reason."""

    def __init__(self, phrases: Phrases[Any]) -> None:
        self._phrases = phrases

    @cached_property
    def statement(self) -> str:
        """The teacher's line."""
        return _stated(self._phrases)

    @cached_property
    def said_aloud(self) -> str:
        """The teacher's line as it is read aloud, with the names of units."""
        return _stated(self._phrases.on(spoken_page(self._phrases.page)))

    @cached_property
    def noticed(self) -> str:
        """What is noticed, plainly, in words of the level."""
        return capital(next(self._phrases.on(spoken_page(self._phrases.page)).cores())())

    @property
    def student_words(self) -> str:
        """What a child of the level may say."""
        return self.ways_to_say_it[0]

    @cached_property
    def ways_to_say_it(self) -> tuple[str, ...]:
        """The ways in which a child of the level may say it, the best first."""
        return ways_to_say(self._phrases.on(spoken_page(self._phrases.page)))

    @cached_property
    def because(self) -> str:
        """The reason in numbers."""
        return because(self._phrases)


def _stated(phrases: Phrases[Any]) -> str:
    return capital(phrases.statement() + until(phrases))


def until(phrases: Phrases[Any]) -> str:
    """Say where a claim ends (", until 100"); empty for what never does."""
    n = phrases.life.breaks_at
    if n is None or phrases.life.holds != "shown":
        return ""
    return phrases.say(phrases.ends, until=phrases.page.value(n))


def because(phrases: Phrases[Any]) -> str:
    """Say the reason in numbers, with what happens at the end where the level has room for it."""
    return first_that_fits(_because(phrases), 1, REASON_LIMITS[phrases.page.band])


def _because(phrases: Phrases[Any]) -> Iterator[Line]:
    reasons, notes = list(phrases.reasons()), list(phrases.notes())
    for note in notes:
        yield from (_sentences(reason, note) for reason in reasons)
    # Why it ends says more of an idea that ends than why it began.
    yield from map(_sentences, notes)
    if phrases.life.breaks_at:
        yield from (_sentences(reason, phrases.stops_at) for reason in reasons)
    yield from map(_sentences, reasons)


def _sentences(*lines: Line) -> Line:
    """The lines one after the other, each a sentence."""
    return lambda: " ".join(sentence(line()) for line in lines)


def ways_to_say(phrases: Phrases[Any]) -> tuple[str, ...]:
    """Say it as a child of the page's level would: short, one idea, in the first person or pointing (EXACT 30)."""
    page = phrases.page
    said = [sentence(own()) for own in phrases.says()]
    cores = [core() for core in phrases.cores()]
    at_once = isinstance(phrases.claim, StepClaim | NeighbourClaim)
    frames = phrases.variants(f"student.{min(page.band, NOTICING) if at_once else page.band}")
    for turn in range(len(frames)):
        said += [sentence(frames[(at + turn) % len(frames)].format(core=core)) for at, core in enumerate(cores)]
    first = phrases.seed % len(said)
    said = list(dict.fromkeys(said[first:] + said[:first]))
    fitting = [text for text in said if text.count(" ") < MOST_WORDS_OF_A_CHILD[page.level]]
    return tuple(fitting or [min(said, key=lambda text: (text.count(" "), len(text)))])
