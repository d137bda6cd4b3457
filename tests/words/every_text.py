"""Every text that the public face says about a grid, each with what it is about."""

import re
from collections.abc import Iterator
from fractions import Fraction
from random import Random
from typing import NamedTuple

from routines.counting import Audience, CountError, Grid, Slip
from routines.counting.checking import judge
from routines.counting.stops.choosing import choose
from routines.counting.stories import Story, larger_name
from routines.words import (
    SpokenPattern,
    SpokenSlip,
    check,
    classify,
    compare_folds,
    explain_cells,
    find_patterns,
    ideas,
    likely_slips,
    locate,
    next_counts,
    probes,
    proposed_landmarks,
    suggest_standards,
    suggest_stops,
)
from tests.brute_force.locating import first_meeting, first_meeting_on_clock
from tests.words.sentence_checker import Context


class Told(NamedTuple):
    """A text of one sort, and what it is about."""

    sort: str
    text: str
    about: Context

    @property
    def family(self) -> str:
        """Which grammar it is read with."""
        return self.sort.split(":")[0]


def about_value(grid: Grid, value: Fraction) -> Context:
    """The context of sentences about whether a value is counted: at which count, found by saying the count."""
    count = grid.count
    start, step = Fraction(count.start), Fraction(count.step)
    n = (
        first_meeting(start, step, value)
        if count.wrap is None
        else first_meeting_on_clock(start, step, value, count.wrap)
    )
    return Context(grid, extra={"value": value, "n": n})


def located(grid: Grid, audience: Audience, random: Random) -> Iterator[Told]:
    """Values that are counted, in view and past it, and values that are not."""
    count = grid.count
    tried = [
        count.value(random.randint(1, grid.terms)),
        count.value(1),
        count.value(grid.terms + random.randint(1, 40)),
    ]
    tried += [
        count.value(random.randint(1, 30)) + random.choice((1, -1, 2, 5, 10)) * Fraction(1, count.scale) for _ in "123"
    ]
    tried += [Fraction(count.start) - random.randint(1, 3) * Fraction(count.step)]
    for value in tried:
        if value < 0 and not count.form.goes_below_zero:
            continue
        about = about_value(grid, value)
        try:
            where = locate(grid, value, audience)
        except CountError:  # an amount that this kind cannot write
            continue
        yield Told("place: reason", where.reason, about)
        for route in where.routes:
            yield Told("place: route", str(route), about)


def asked_about(grid: Grid, audience: Audience) -> Iterator[Told]:
    for probe in probes(grid, audience):
        yield Told("place: probe", probe.why, about_value(grid, probe.value))


def told_by(pattern: SpokenPattern, grid: Grid, sort: str) -> Iterator[Told]:
    about = Context(grid, pattern.claim, pattern.breaks_at, printed=pattern.printed)
    yield Told(f"pattern: {sort} statement", pattern.statement, about)
    yield Told(f"pattern: {sort} student words", pattern.student_words, about)
    yield Told(f"pattern: {sort} because", pattern.because, about)


def patterns(grid: Grid, audience: Audience, random: Random) -> Iterator[Told]:
    """One pattern of each family that is found, with what is implied."""
    found = find_patterns(grid, implied=True, audience=audience)
    for family in sorted({pattern.claim.family for pattern in found}):
        yield from told_by(random.choice([one for one in found if one.claim.family == family]), grid, "found")


def explained(grid: Grid, audience: Audience, random: Random) -> Iterator[Told]:
    """What a few tapped cells have in common."""
    for _ in range(2):
        cells = random.sample(range(1, grid.terms + 1), min(random.randint(1, 3), grid.terms))
        for pattern in explain_cells(grid, cells, audience):
            yield from told_by(pattern, grid, "explained")


def imagined(grid: Grid, audience: Audience, random: Random) -> Iterator[Told]:
    """Ideas that live and die while the count is written, each told of its fullest view."""
    found = ideas(grid, audience)
    for idea in random.sample(found, min(6, len(found))):
        pattern = idea.pattern
        lasts = [n for n in range(idea.seen_at, grid.terms + 1) if _is_so(grid.cut(n), pattern)]
        yield from told_by(pattern, grid.cut(max(lasts)) if lasts else grid, "idea")


def _is_so(view: Grid, pattern: SpokenPattern) -> bool:
    try:
        judged = judge(pattern.claim, view)[1]
    except CountError:
        return False
    return judged.true and judged.seen


def answered(grid: Grid, elsewhere: Grid, audience: Audience, random: Random) -> Iterator[Told]:
    """Answers to claims that are true of another grid: mostly false, sometimes not."""
    found = find_patterns(elsewhere, implied=True)
    for claim in random.sample([one.claim for one in found], min(4, len(found))):
        try:
            verdict = check(claim, grid, audience=audience)
        except CountError:  # a claim that makes no sense of these numbers
            continue
        breaks = verdict.breaks_at if verdict.true else None
        about = Context(grid, claim, breaks, verdict.true_from, {"against": verdict.counterexample})
        yield Told("pattern: verdict", verdict.because, about)


def folded(grid: Grid, audience: Audience, random: Random) -> Iterator[Told]:
    """The strip of folds, each next to the one before."""
    lengths = sorted(random.sample(range(2, 13), 5))
    before: int | None = None
    for report in compare_folds(grid.count, lengths, (random.choice(("across", "down", "across-up")),), audience):
        yield Told("fold: sentence", report.sentence, Context(report.grid, extra={"before": before}))
        before = report.line_length
    for report in compare_folds(grid.count, lengths, (grid.fill,), audience, against=grid):
        is_it = report.before is None
        compared = {} if is_it else {"before": grid.line_length, "against": grid}
        yield Told("fold: sentence", report.sentence, Context(report.grid, extra=compared))


def slipped(grid: Grid, audience: Audience, random: Random) -> Iterator[Told]:
    found = likely_slips(grid, audience=audience)
    for slip in random.sample(found, min(8, len(found))):
        yield from _slip(grid, slip)


def _slip(grid: Grid, slip: SpokenSlip) -> Iterator[Told]:
    about = Context(grid, extra={"n": slip.n, "said": slip.heard})
    yield Told("slip: why", slip.why, about)
    yield Told("slip: reply", slip.reply, about)


def heard(grid: Grid, audience: Audience, random: Random) -> Iterator[Told]:
    """What is said of answers of all sorts, at counts that follow others said before."""
    count = grid.count
    for _ in range(6):
        n = random.randint(2, grid.terms)
        off = random.choice((0, 1, -1, 2, 10)) * Fraction(1, count.scale)
        jumps = random.choice((0, 0, 1, 2, -1, -2, 5))
        said = count.value(n) + off + jumps * count.step
        earlier = {n - 1: count.text_of(count.value(n - 1) + off)} if random.random() < 0.4 else {}
        if min(said, count.value(n - 1) + off) < 0:
            continue
        text = count.text_of(said)
        answer = classify(grid, n, text, earlier, audience=audience)
        if isinstance(answer.hearing, Slip) and answer.slip is not None:
            yield from _slip(grid, answer.slip)
        else:
            yield Told("slip: note", answer.note, Context(grid, extra={"n": n, "said": text, "earlier": earlier}))


def stopped(grid: Grid, audience: Audience, random: Random) -> Iterator[Told]:
    """Stops for what shows best, or for a target of the teacher's."""
    found = find_patterns(grid)
    targets = [random.choice(found).claim] if found and random.random() < 0.5 else []
    choices = {choice.after: choice for choice in choose(grid, targets, audience.level)}
    for stop in suggest_stops(grid, targets, audience=audience):
        choice = choices[stop.after]
        view = grid if stop.after >= grid.terms or choice.reason != "dies" else grid.cut(stop.after)
        about = Context(view, choice.claim, _until(grid, choice.claim, stop.after), extra={"after": stop.after})
        asked = _asked_value(stop.question, grid) if choice.reason == "end" else None
        if asked is not None:
            about = about_value(grid, asked)
            about.extra["after"] = stop.after
            yield Told("place: stop answer", stop.answer, about)
            yield Told("probe: stop question", stop.question, about)
        else:
            about.extra["goal"] = _goal(stop.question, stop.answer, grid, stop.after)
            yield Told("stop: question", stop.question, about)
            goes_by = stop.by if stop.reason in ("target", "end") else choice.claim
            until = about.breaks_at if goes_by == choice.claim else None
            yield Told("stop: answer", stop.answer, Context(view, goes_by, until, extra=about.extra))
        goal = stop.after + 1 if asked is not None else _goal(stop.question, stop.answer, grid, stop.after)
        board = grid if stop.after >= grid.terms else grid.cut(stop.after)
        toward = about if asked is not None else Context(board, extra={"value": grid.count.value(goal), "n": goal})
        for route in stop.routes:
            yield Told("place: stop route", route, toward)
        seen, *follows = re.split("(?=What is asked for here|Lo que se pide aquí)", stop.why)
        yield Told("stop: why", seen, Context(view, choice.claim, about.breaks_at, extra={"after": stop.after}))
        for text in follows:
            yield Told("stop: why", text, Context(view, stop.by, extra={"after": stop.after}))


def _until(grid: Grid, claim: object, after: int) -> int | None:
    """Until which count a stop's claim is so, as it stands on the board there."""
    if claim is None:
        return None
    for view in (grid, grid.cut(after)):
        judged = judge(claim, view)[1]  # type: ignore[arg-type]
        if judged.true:
            return judged.breaks_at
    return None


def _goal(question: str, answer: str, grid: Grid, after: int) -> int:
    """Which count the answer names: the next one, or the one in a cell further on."""
    about = Context(grid)
    written = about.notation.value
    named = re.match(
        rf"(?:[^\d-]*? )??({written})(?=:|,| comes| next| ends| begins| termina| empieza| (?:y )?ya no[ :.]|[.]|$)",
        answer,
    )
    assert named is not None, answer
    value = about.notation.read(named[1])
    ahead = [n for n in range(after + 1, after + 2 * grid.line_length + 3) if about.same(about.value(n), value)]
    place = re.search(r"(?:row|fila) (\d+), (?:column|columna) (\d+)", question)
    # On a clock the same time may come in several cells.
    there = [n for n in ahead if place and about.place(n) == (int(place[1]), int(place[2]))]
    return (there or ahead)[0]


def _asked_value(question: str, grid: Grid) -> Fraction | None:
    """The number that a stop at the end asks about; None where it asks about the next cell."""
    notation = Context(grid).notation
    found = re.search(rf"(?<![\w-]){notation.value}", re.sub(r"(?:jump|salto)[^?]*?, ", "", question))
    if found is None or re.search(r"(?:row|fila) \d", question):
        return None
    return notation.read(found[0])


def followed(grid: Grid, audience: Audience, random: Random) -> Iterator[Told]:
    """Next counts after each outcome, some of them after slips or with a pattern unseen."""
    found = find_patterns(grid)
    for outcome in ("not-yet", "as-planned", "ready-for-more"):
        slips = [random.randint(2, grid.terms)] if random.random() < 0.5 else []
        unseen = [random.choice(found).claim] if found and random.random() < 0.5 else []
        for new in next_counts(grid, outcome, slips=slips, unseen=unseen, audience=audience):
            claim = new.shows[0] if new.shows else None
            breaks = judge(claim, new.grid)[1].breaks_at if claim else None
            about = Context(new.grid, claim, breaks, extra={"old": grid, "hard": _hard(new.reason, grid)})
            yield Told("next: what", new.what, about)
            yield Told("next: reason", new.reason, about)
            yield Told("next: question", new.ask, about)
            assert new.reason in new.why
            assert new.ask in new.why


def _hard(reason: str, grid: Grid) -> Fraction | None:
    """The count that a reason says is hard to come to, or to write."""
    notation = Context(grid).notation
    written = notation.value
    jump = re.search(
        rf"(?:jump from|El salto del?) {written} (?:to|al?) ({written})|^({written}) (?:comes|llega)", reason
    )
    return notation.read(jump[1] or jump[2]) if jump else None


def served(grid: Grid, audience: Audience, standards: list[dict[str, str]]) -> Iterator[Told]:
    for fit in suggest_standards(grid, standards, audience=audience):
        yield Told("standard: reason", fit.reason, Context(grid))


def narrated(grid: Grid, audience: Audience, random: Random) -> Iterator[Told]:
    """A story's groups and what each holds, and the names of its landmarks."""
    count = grid.count
    story = Story(count, "crate", count.text_of(count.value(grid.terms)))
    for n in random.sample(range(1, grid.terms + 1), min(4, grid.terms)):
        yield Told("story: label", story.label(n), Context(grid, extra={"n": n}))
    yield Told("story: each", f"each {story.each}", Context(grid))
    for landmarks in proposed_landmarks(grid):
        for n in landmarks.terms[:4]:
            larger = larger_name(count, count.value(n), landmarks.multiple)
            if larger is not None:
                yield Told("story: larger name", f"{count.text(n)} = {larger}", Context(grid, extra={"n": n}))
