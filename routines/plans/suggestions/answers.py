"""What children may say: an easy one, a deeper one, one true but not for long, a false one, a slip; more on request."""

import json
from collections.abc import Collection, Iterable, Iterator
from dataclasses import dataclass, replace
from itertools import zip_longest

from routines.counting import Audience, Claim, Grid
from routines.counting.believed import worth_believing
from routines.counting.claims import (
    DigitClaim,
    LandmarksClaim,
    NeighbourClaim,
    OppositesClaim,
    RemainderClaim,
    StepClaim,
)
from routines.counting.probes import goes_below_zero
from routines.models.shown_ideas import dying_ideas
from routines.words import LANGUAGES, SpokenPattern, likely_slips, patterns_to_say
from routines.words.sentences import opening
from routines.words.spoken_units import with_unit_names

from .near_misses import near_misses
from .sentences import replies_to, ways

STRAIGHT = ("right", "down")
ENDINGS_KNOWN_FOR_LONG, EVEN_KNOWN_FOR_LONG = 5, 6


@dataclass(frozen=True, slots=True)
class AnswerSuggestion:
    """An expected answer ready to be taken; `why` tells the teacher what is behind it."""

    sort: str
    words: str
    reply: str
    why: str
    n: int = 0

    @property
    def take(self) -> str:
        """The change that takes it into the plan."""
        row = {"sort": self.sort, "words": self.words, "reply": self.reply, "n": self.n or ""}
        return f"expected.add {json.dumps(row)}"


@dataclass(frozen=True, slots=True)
class _Wording:
    """An answer with all the ways to say it and to reply."""

    sort: str
    words: tuple[str, ...]
    replies: tuple[str, ...]
    why: str
    n: int = 0

    def chosen(self, openings: Collection[str], replies: Collection[str]) -> AnswerSuggestion:
        """The first way that does not begin as another answer does, with a reply that no other has (EXACT 30)."""
        words = next((words for words in self.words if opening(words) not in openings), self.words[0])
        reply = next((reply for reply in self.replies if reply not in replies), self.replies[0])
        return AnswerSuggestion(self.sort, words, reply, self.why, self.n)


def suggest_answers(
    grid: Grid, audience: Audience, *, rounds: int = 1, written: Collection[str] = (), targets: Collection[Claim] = ()
) -> list[AnswerSuggestion]:
    """At most five a round, one of each sort, the ones already written left out. Targets come before other patterns."""
    patterns = patterns_to_say(grid, audience=audience)
    patterns.sort(key=lambda pattern: pattern.claim not in targets)
    sorts = [
        _easy(patterns, audience),
        _deeper(patterns, grid, audience),
        _not_for_long(patterns, grid, audience),
        _not_so(grid, audience),
        _slips(grid, audience),
    ]
    fresh = [[one for one in sort if not set(one.words) & set(written)] for sort in sorts]
    return [one for chosen in list(zip_longest(*fresh))[:rounds] for one in _told_apart(chosen)]


def _told_apart(chosen: Iterable[_Wording | None]) -> Iterator[AnswerSuggestion]:
    """The answers of a round, each begun and replied to in its own way. What is said in one way only chooses first."""
    wordings = [one for one in chosen if one is not None]
    openings: set[str] = set()
    replies: set[str] = set()
    told: dict[int, AnswerSuggestion] = {}
    for at in sorted(range(len(wordings)), key=lambda i: len(wordings[i].words)):
        one = told[at] = wordings[at].chosen(openings, replies)
        openings.add(opening(one.words))
        replies.add(one.reply)
    return iter([told[at] for at in range(len(wordings))])


def _easy(patterns: Iterable[SpokenPattern], audience: Audience) -> Iterator[_Wording]:
    for pattern in patterns:
        claim = pattern.claim
        if isinstance(claim, StepClaim) or (isinstance(claim, NeighbourClaim) and claim.direction in STRAIGHT):
            yield _of("easy", pattern, audience)


def _deeper(patterns: Iterable[SpokenPattern], grid: Grid, audience: Audience) -> Iterator[_Wording]:
    """What lasts, and can be looked for; what is slight comes last."""
    lasting = [pattern for pattern in patterns if _lasts(pattern, grid, audience.level)]
    for pattern in sorted(lasting, key=lambda one: _is_slight(one.claim, audience.level)):
        yield _of("deeper", pattern, audience)


def _lasts(pattern: SpokenPattern, grid: Grid, level: int) -> bool:
    """Whether it goes on as far as the class may count; of opposites another pair only makes more of them."""
    if isinstance(pattern.claim, StepClaim | NeighbourClaim):
        return False
    if pattern.breaks_at is None or isinstance(pattern.claim, OppositesClaim):
        return True
    return grid.count.value(pattern.breaks_at) < 0 and not goes_below_zero(grid, level)


def _is_slight(claim: Claim, level: int) -> bool:
    """What every count shows, and last digits and even numbers to those who have known them for long."""
    if isinstance(claim, LandmarksClaim):
        return claim.multiple == 2 and level >= EVEN_KNOWN_FOR_LONG
    if isinstance(claim, DigitClaim) and claim.place == 0:
        return level >= ENDINGS_KNOWN_FOR_LONG and (claim.block_length or 0) <= 2
    return isinstance(claim, RemainderClaim) and claim.along == "count" and claim.block_length == 1


def _of(sort: str, pattern: SpokenPattern, audience: Audience) -> _Wording:
    return _Wording(sort, pattern.ways_to_say_it, replies_to(pattern.claim, audience), pattern.because)


def _not_for_long(patterns: Iterable[SpokenPattern], grid: Grid, audience: Audience) -> Iterator[_Wording]:
    """What a child would believe, and what ends just past the board or on it (EXACT 29).

    What ends with the first line is believed while that is written; of a board with a second one nobody says it any more.
    What ends on the board comes first: there the class can look.
    """
    over = [idea.pattern for idea in dying_ideas(grid, audience)]
    ending = [
        (pattern, pattern.breaks_at)
        for pattern in (*patterns, *over)
        if pattern.breaks_at is not None
        and pattern.breaks_at != grid.line_length + 1
        and worth_believing(pattern, grid, audience.level)
    ]
    for pattern, end in sorted(ending, key=lambda one: one[1] > grid.terms):
        replies = _where_it_ends(grid, end, audience)
        yield replace(_of("not-for-long", pattern, audience), replies=replies, n=end)


def _where_it_ends(grid: Grid, end: int, audience: Audience) -> tuple[str, ...]:
    """Leads to the count with which an idea ends: by its place on the board; past the board by what it is."""
    language = LANGUAGES[audience.language]
    if end > grid.terms:
        value = language.value(grid.count.text(end), clock=grid.count.wrap is not None)
        return ways("write past the end", audience.language, value=value)
    row, column = grid.place(end)
    return ways("write on", audience.language, place=language.cell.format(row=row, column=column))


def _not_so(grid: Grid, audience: Audience) -> Iterator[_Wording]:
    for miss in near_misses(grid, audience):
        yield _Wording("not-so", miss.words, miss.replies, miss.why)


def _slips(grid: Grid, audience: Audience) -> Iterator[_Wording]:
    for slip in likely_slips(grid, audience=audience):
        if not slip.equal_name:
            said = with_unit_names(slip.heard, audience.language)
            yield _Wording("slip", (said,), (slip.reply,), slip.why, slip.n)
