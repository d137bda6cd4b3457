"""The page that is read line by line: what a teacher is told of each of the forty counts, in both languages."""

from collections.abc import Iterator

from routines.counting import Audience, Grid, Outcome
from routines.models.facts import FILLS
from routines.plans.suggestions.answers import suggest_answers
from routines.words import likely_slips, next_counts, patterns_to_say, proposed_landmarks, suggest_stops

from .counts import COUNTS, Heard

FIRST_PATTERNS = 6
FIRST_SLIPS = 3
NEXT_OF_EACH = 2
LANGUAGES = {"en": "English", "es": "Spanish"}


def page() -> str:
    """The whole page as Markdown."""
    lines = ["# What a teacher hears", "", "Written by `python -m tests.what_a_teacher_hears`; not by hand.", ""]
    for number, heard in enumerate(COUNTS, start=1):
        lines += _one(number, heard)
    return "\n".join(lines) + "\n"


def _one(number: int, heard: Heard) -> Iterator[str]:
    grid = heard.grid("en")
    way = f"from {heard.start} by {heard.step}"
    level = "K" if heard.level == 0 else str(heard.level)
    yield f"## {number}. {heard.kind.capitalize()}, {way}, level {level}"
    yield ""
    empty = f", {heard.lead} {'cell' if heard.lead == 1 else 'cells'} empty" if heard.lead else ""
    yield f"{grid.terms} counts, {FILLS[grid.fill]}, {grid.line_length} in a line{empty}"
    yield ""
    yield "```"
    yield from _drawn(grid)
    yield "```"
    if heard.group:
        reached = grid.count.reaching(heard.goal)
        by = "" if reached.met else f", passed by {grid.count.difference_text(reached.by)}"
        yield f"Story: each {heard.group} {heard.step}; {heard.goal} at {heard.group} {reached.n}{by}"
    for language, name in LANGUAGES.items():
        yield ""
        yield f"### {name}"
        yield ""
        yield from _told(heard.grid(language), Audience(heard.level, language))
    yield ""


def _drawn(grid: Grid) -> Iterator[str]:
    rows = [[cell.text if cell else "·" for cell in row] for row in grid.cells()]
    wide = max(len(text) for row in rows for text in row)
    for row in rows:
        yield "  ".join(text.rjust(wide) for text in row).rstrip()


def _told(grid: Grid, audience: Audience) -> Iterator[str]:
    ringed = proposed_landmarks(grid)
    count = grid.count
    yield (
        f"- Ringed: {ringed[0].name} ({', '.join(map(count.text, ringed[0].terms))})" if ringed else "- Ringed: nothing"
    )
    for i, pattern in enumerate(patterns_to_say(grid, audience=audience)[:FIRST_PATTERNS], start=1):
        yield f"- Pattern {i}: {pattern.statement} | {pattern.student_words} | {pattern.because}"
    for answer in suggest_answers(grid, audience):
        yield f"- Answer, {answer.sort}: {answer.words} | {answer.reply} | {answer.why}"
    for slip in likely_slips(grid, audience=audience)[:FIRST_SLIPS]:
        name = "also right" if slip.equal_name else slip.rule
        yield f"- Slip, {name}: {slip.heard} for {slip.correct} | {slip.reply} | {slip.why}"
    for stop in suggest_stops(grid, audience=audience):
        yield f"- Stop after {count.text(stop.after)}: {stop.question} | {stop.answer} | {stop.why}"
    for outcome in Outcome:
        for new in next_counts(grid, outcome, audience=audience)[:NEXT_OF_EACH]:
            yield f"- Next, {outcome}: {new.what} | {new.why}"
