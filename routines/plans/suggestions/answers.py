"""What children may say: an easy one, a deeper one, one true but not for long, a false one, a slip; more on request."""

import json
from collections.abc import Collection, Iterable, Iterator
from dataclasses import dataclass
from fractions import Fraction
from itertools import zip_longest

from routines.counting import Audience, Claim, Grid, Kind
from routines.counting.claims import NeighbourClaim, RemainderClaim, StepClaim, TableClaim
from routines.words import SpokenPattern, check, find_patterns, likely_slips, locate, ordinal, probes

from .sentences import reply_to, said

STRAIGHT = ("right", "down")


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


def suggest_answers(
    grid: Grid, audience: Audience, *, rounds: int = 1, written: Collection[str] = (), targets: Collection[Claim] = ()
) -> list[AnswerSuggestion]:
    """At most five a round, one of each sort, the ones already written left out. Targets come before other patterns."""
    patterns = find_patterns(grid, audience=audience)
    patterns.sort(key=lambda pattern: pattern.claim not in targets)
    sorts = [
        _easy(patterns, audience),
        _deeper(patterns, audience),
        _not_for_long(patterns, grid, audience),
        _not_so(grid, audience),
        _slips(grid, audience),
    ]
    fresh = [[one for one in sort if one.words not in written] for sort in sorts]
    by_round = list(zip_longest(*fresh))[:rounds]
    return [one for chosen in by_round for one in chosen if one is not None]


def _easy(patterns: Iterable[SpokenPattern], audience: Audience) -> Iterator[AnswerSuggestion]:
    for pattern in patterns:
        claim = pattern.claim
        if isinstance(claim, StepClaim) or (isinstance(claim, NeighbourClaim) and claim.direction in STRAIGHT):
            yield _of("easy", pattern, audience)


def _deeper(patterns: Iterable[SpokenPattern], audience: Audience) -> Iterator[AnswerSuggestion]:
    for pattern in patterns:
        if pattern.holds == "always" and not isinstance(pattern.claim, StepClaim | NeighbourClaim):
            yield _of("deeper", pattern, audience)


def _of(sort: str, pattern: SpokenPattern, audience: Audience) -> AnswerSuggestion:
    return AnswerSuggestion(sort, pattern.student_words, reply_to(pattern.claim, audience.language), pattern.because)


def _not_for_long(patterns: Iterable[SpokenPattern], grid: Grid, audience: Audience) -> Iterator[AnswerSuggestion]:
    for pattern in patterns:
        if pattern.breaks_at is not None:
            nth = ordinal(pattern.breaks_at, audience.language)
            reply = said("write on", audience.language, nth=nth)
            yield AnswerSuggestion("not-for-long", pattern.student_words, reply, pattern.because, pattern.breaks_at)


def _not_so(grid: Grid, audience: Audience) -> Iterator[AnswerSuggestion]:
    yield from _not_the_table(grid, audience)
    yield from _never_landed_on(grid, audience)
    yield from _not_all_even(grid, audience)


def _not_the_table(grid: Grid, audience: Audience) -> Iterator[AnswerSuggestion]:
    """Counting by 6 sounds like the six times table, from wherever it starts."""
    count, step = grid.count, abs(grid.count.step)
    if count.kind != Kind.WHOLE:
        return
    verdict = check(TableClaim(grid.count.step), grid, audience=audience)
    if verdict.true:
        return
    between = step * (int(min(count.value(1), count.value(3)) // step) + 1)
    if locate(grid, between).appears:
        return
    yield AnswerSuggestion(
        "not-so",
        said("table", audience.language, step=count.difference_text(step)),
        said("table reply", audience.language, multiple=count.text_of(between)),
        verdict.because,
    )


def _never_landed_on(grid: Grid, audience: Audience) -> Iterator[AnswerSuggestion]:
    for probe in probes(grid, audience=audience):
        if not probe.appears:
            words = said("lands", audience.language, value=probe.text)
            yield AnswerSuggestion("not-so", words, said("lands reply", audience.language), probe.why)


def _not_all_even(grid: Grid, audience: Audience) -> Iterator[AnswerSuggestion]:
    if grid.count.kind != Kind.WHOLE or grid.count.step % 2 == 0:
        return
    parity = "all even" if grid.count.start % 2 == 0 else "all odd"
    claim = RemainderClaim(Fraction(2), "count", ((grid.count.start % 2,),))
    verdict = check(claim, grid, audience=audience)
    yield AnswerSuggestion(
        "not-so", said(parity, audience.language), said("even reply", audience.language), verdict.because
    )


def _slips(grid: Grid, audience: Audience) -> Iterator[AnswerSuggestion]:
    for slip in likely_slips(grid, audience=audience):
        if not slip.equal_name:
            yield AnswerSuggestion("slip", slip.heard, slip.reply, slip.why, slip.n)
