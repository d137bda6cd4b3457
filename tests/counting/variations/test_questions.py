"""What the class is asked about a next count: a question, in the voice of its grade."""

import re
from collections.abc import Iterator

import pytest

from routines.counting import Audience, Count, Grid, Variation, next_counts
from routines.counting.variations import OUTCOMES
from routines.counting.variations.questions import ASKED_LIKE, QUESTIONS
from routines.counting.variations.sentences import SENTENCES
from tests.counting.slips.table import EXAMPLE_GRIDS
from tests.counting.slips.test_sentences import LENGTHS

LIMIT = 400  # what a plan keeps of one sentence
FIRST_GRADES = [
    Grid(Count.parse(kind="whole", start=start, step=step, terms=terms), length)
    for start, step, terms, length in (
        ("1", "1", 20, 5),
        ("0", "10", 11, 5),
        ("2", "2", 20, 5),
        ("7", "5", 16, 4),
        ("20", "-1", 20, 10),
    )
]


def told(grid: Grid, language: str) -> Iterator[tuple[int, Variation]]:
    for level in LENGTHS:
        for outcome in OUTCOMES:
            for slips in ((), (4,)):
                for one in next_counts(grid, outcome, slips=slips, audience=Audience(level, language)):
                    yield level, one


def shortened(text: str, old: Grid, new: Grid) -> str:
    """Each written count, amount and landmark as one word, so that "2 ft 9 in" is not four."""
    counts = (old.count, new.count)
    written = {count.text(n) for count in counts for n in range(1, count.terms + 2)}
    written |= {count.difference_text(many * count.step) for count in counts for many in (1, old.line_length)}
    written |= set(re.findall(r"\d[\d,]*(?:\.\d+)? (?:ft|lb|L|kg|gal|h|min|mL|oz|in|g)\b", text))
    for value in sorted(written, key=len, reverse=True):
        text = re.sub(rf"(?<![\w#]){re.escape(value)}(?![\w#])", "#", text)
    return text


@pytest.mark.parametrize("language", ["en", "es"])
@pytest.mark.parametrize("grid", [*EXAMPLE_GRIDS, *FIRST_GRADES])
def test_it_is_as_long_as_the_grade_can_take(grid: Grid, language: str) -> None:
    for level, one in told(grid, language):
        least, most = LENGTHS[level]
        words = len(shortened(one.ask, grid, one.grid).split())
        assert least <= words <= most, (level, words, one.ask)


@pytest.mark.parametrize("language", ["en", "es"])
@pytest.mark.parametrize("grid", [*EXAMPLE_GRIDS, *FIRST_GRADES])
def test_it_asks_and_stands_at_the_end_of_the_reason(grid: Grid, language: str) -> None:
    for _, one in told(grid, language):
        assert "?" in one.ask
        assert "{" not in one.what + one.why
        assert one.why.startswith(one.reason)
        assert one.why.endswith(f"“{one.ask}”" if language == "en" else f"«{one.ask}»")
        assert "?" not in one.reason
        assert len(one.what) + len(one.why) + 1 <= LIMIT


def test_the_youngest_point_and_show_and_the_oldest_test() -> None:
    for language, near, far in (
        ("en", r"[Pp]oint|[Ss]how|[Tt]ell|next|know|after|Point", r"test|rule|start"),
        ("es", r"[Ss]eñál|[Mm]u[eé]str|sigue|después|conoces", r"prueb|pruéb|regla|comienzo"),
    ):
        for name, bands in QUESTIONS[language].items():
            assert re.search(near, bands[0]), (name, bands[0])
            assert re.search(far, bands[3], re.IGNORECASE), (name, bands[3])


def test_every_change_has_its_sentences_and_questions_in_both_languages() -> None:
    for language in ("en", "es"):
        assert {ASKED_LIKE.get(name, name) for name in SENTENCES[language]} == set(QUESTIONS[language])
        for bands in QUESTIONS[language].values():
            assert len(bands) == 4
            assert len(set(bands)) == 4


def test_what_speaks_to_the_teacher_is_the_same_at_all_grades() -> None:
    grid = Grid(Count.parse(kind="length", start="1 ft 3 in", step="9 in", terms=12), 4)
    for outcome in OUTCOMES:
        said = {tuple((one.what, one.reason) for one in next_counts(grid, outcome, level)) for level in (3, 4, 5)}
        asked = {tuple(one.ask for one in next_counts(grid, outcome, level)) for level in (3, 4, 6)}
        assert len(said) == 1
        assert len(asked) == 3
