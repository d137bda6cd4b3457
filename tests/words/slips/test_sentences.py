"""What is said about a slip: a question back to the grid, in the length of the grade, with the count's own numbers."""

import re
from collections.abc import Iterator
from dataclasses import replace

import pytest

from routines.counting import Audience, Count, Grid
from routines.counting.slips.foreseeing import AREAS
from routines.counting.slips.forms import FORMS
from routines.words import LANGUAGES, SpokenSlip, likely_slips
from routines.words.language import Language
from tests.counting.slips.table import EXAMPLE_GRIDS

# Words of a reply by level: K-1, 2-3, 4-5, 6 and up.
LENGTHS = {0: (6, 14), 1: (6, 14), 2: (12, 25), 3: (12, 25), 4: (15, 35), 5: (15, 35), 6: (15, 45), 8: (15, 45)}
JUDGING = re.compile(r"\b(correct|right|wrong|mistake|error|correcto|correcta|mal|equivocado)\b", re.IGNORECASE)
GRID = re.compile(
    r"\b(grid|row|column|point|touch|show|cuadrícula|fila|columna|señala|muestra|toca|señálalo|muéstralo)\b",
    re.IGNORECASE,
)


def told(grid: Grid) -> Iterator[tuple[int, str, SpokenSlip]]:
    """Every slip of a grid at every level, in both languages."""
    for level in LENGTHS:
        for language in ("en", "es"):
            for slip in likely_slips(grid, audience=Audience(level, language)):
                yield level, language, slip


def shortened(text: str, grid: Grid, n: int) -> str:
    """Each written count and jump as one word, so that "2 ft 9 in" is not four."""
    count = grid.count
    written = {count.text(1), count.text(n - 1), count.text(n), count.difference_text(count.step)}
    for value in sorted(written, key=len, reverse=True):
        text = text.replace(value, "#")
    return text


@pytest.mark.parametrize("language", LANGUAGES.values(), ids=LANGUAGES)
def test_every_rule_has_its_sentences_and_every_sentence_a_rule(language: Language) -> None:
    told = {key.partition(" ")[0] for key in language.replies.slips}
    assert told == {rule.id for area in AREAS for rule in area.rules} | set(FORMS)


@pytest.mark.parametrize("language", LANGUAGES.values(), ids=LANGUAGES)
def test_k_and_1_have_a_short_question_wherever_a_slip_is_met_there(language: Language) -> None:
    for area in AREAS:
        for rule in area.rules:
            if rule.grades[0] <= 1:
                assert language.replies.slips[rule.id].show is not None, rule.id


@pytest.mark.parametrize("grid", EXAMPLE_GRIDS)
def test_a_reply_asks_sends_back_to_the_grid_and_never_judges(grid: Grid) -> None:
    for _, _, slip in told(grid):
        assert "?" in slip.reply
        assert GRID.search(slip.reply), slip.reply
        assert not JUDGING.search(slip.reply), slip.reply
        assert "{" not in slip.why + slip.reply


@pytest.mark.parametrize("grid", EXAMPLE_GRIDS)
def test_a_reply_is_as_long_as_the_grade_can_take(grid: Grid) -> None:
    for level, _, slip in told(grid):
        least, most = LENGTHS[level]
        words = len(shortened(slip.reply, grid, slip.n).split())
        assert least <= words <= most, (words, slip.reply)


@pytest.mark.parametrize("grid", EXAMPLE_GRIDS)
def test_a_reply_does_not_give_the_answer_away(grid: Grid) -> None:
    count = grid.count
    for _, _, slip in told(grid):
        text = re.sub(r"\b(row|column|fila|columna) \d+", "", slip.reply)
        known = (slip.heard, count.text(slip.n - 1), count.difference_text(count.step), count.text(1))
        for value in sorted(known, key=len, reverse=True):
            text = text.replace(value, "")
        assert not re.search(rf"(?<![\w.,/:-]){re.escape(slip.correct)}(?![\w/:]|[.,]\d)", text), slip


@pytest.mark.parametrize("grid", EXAMPLE_GRIDS)
def test_every_number_of_a_reply_is_the_counts_own(grid: Grid) -> None:
    """Only the count before, the start, the size of a jump and the line on the page are named, and what was said."""
    count = grid.count
    for _, language, slip in told(grid):
        text = slip.reply
        for place in re.findall(r"\b(?:row|fila) (\d+)|\b(?:column|columna) (\d+)", text):
            row, column = grid.place(slip.n - 1)
            assert int(place[0] or place[1]) == (row if place[0] else column)
        text = re.sub(r"\b(row|column|fila|columna) \d+", "", text)
        known = (count.text(slip.n - 1), count.difference_text(count.step), count.text(1), slip.heard)
        for value in sorted(known, key=len, reverse=True):
            text = text.replace(value, "")
        # "1" stands before a unit in Spanish, whatever its gender.
        assert set(re.findall(r"\d+", text)) <= ({"1"} if language == "es" else set()), slip


def test_the_replies_to_one_slip_end_in_several_ways() -> None:
    grid = Grid(Count.parse(kind="fraction", start="1/8", step="1/8", terms=12), 4)
    replies = [slip.reply for slip in likely_slips(grid, 4) if slip.rule == "F01"]
    assert len({reply.split("?", 1)[1][:12] for reply in replies}) >= 3


@pytest.mark.parametrize(
    ("start", "step"), [("1:15 a.m.", "-50 min"), ("12:20 a.m.", "-25 min"), ("2:45 a.m.", "-35 min")]
)
def test_before_midnight_a_clock_goes_on_as_ever(start: str, step: str) -> None:
    """A clock has no zero to come near to or to go below."""
    back = Count.parse(kind="clock", start=start, step=step, terms=12)
    forth = replace(back, start=back.value(12), step=-back.step)  # the same count the other way
    assert forth.start < 0
    for count in (back, forth):
        for _, _, slip in told(Grid(count, 4)):
            assert not re.search(r"zero|\bcero", f"{slip.why} {slip.reply}", re.IGNORECASE)
