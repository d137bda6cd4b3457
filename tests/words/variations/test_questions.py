"""What the class is asked about a next count: a question, in the voice of its grade."""

import re
from collections.abc import Callable, Iterator
from fractions import Fraction

import pytest

from routines.counting import Audience, Count, CountError, Grid
from routines.counting.outcome import Outcome
from routines.words import LANGUAGES, next_counts
from routines.words.variations import ASKED_LIKE, SpokenVariation
from tests.counting.slips.table import EXAMPLE_GRIDS
from tests.words.slips.test_sentences import LENGTHS

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


def told(grid: Grid, language: str) -> Iterator[tuple[int, SpokenVariation]]:
    for level in LENGTHS:
        for outcome in tuple(Outcome):
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
        ("es", r"[Dd]inos|[Ss]eñál|[Mm]u[eé]str|sigue|después|conoces", r"prueb|pruéb|regla|comienzo"),
    ):
        for name, bands in LANGUAGES[language].next_counts.questions.items():
            assert re.search(near, bands[0]), (name, bands[0])
            assert re.search(far, bands[3], re.IGNORECASE), (name, bands[3])


def test_every_change_has_its_sentences_and_questions_in_both_languages() -> None:
    for language in ("en", "es"):
        assert {ASKED_LIKE.get(name, name) for name in LANGUAGES[language].next_counts.changes} == set(
            LANGUAGES[language].next_counts.questions
        )
        for bands in LANGUAGES[language].next_counts.questions.values():
            assert len(bands) == 4
            assert len(set(bands)) == 4


def test_what_speaks_to_the_teacher_is_the_same_at_all_grades() -> None:
    grid = Grid(Count.parse(kind="length", start="1 ft 3 in", step="9 in", terms=12), 4)
    for outcome in tuple(Outcome):
        said = {tuple((one.what, one.reason) for one in next_counts(grid, outcome, level)) for level in (3, 4, 5)}
        asked = {tuple(one.ask for one in next_counts(grid, outcome, level)) for level in (3, 4, 6)}
        assert len(said) == 1
        assert len(asked) == 3


# What a question says of an amount, in English and Spanish, and whether that is so of the old and the new count.
SAID_OF_AN_AMOUNT: list[tuple[str, Callable[[Count, Count, Fraction], bool]]] = [
    (r"[Ee]ach jump is (.+?) more than before", lambda old, new, x: abs(new.step) - abs(old.step) == x),
    (r"[Cc]ada salto es (.+?) más largo que antes", lambda old, new, x: abs(new.step) - abs(old.step) == x),
    (r"each jump grows by (.+?)\?", lambda old, new, x: abs(new.step) - abs(old.step) == x),
    (r"cada salto crece (.+?)\?", lambda old, new, x: abs(new.step) - abs(old.step) == x),
    (r"(?:nearly|so near to|es casi) (.+?)(?:\.(?!\d)|,(?!\d)| y hasta)", lambda old, new, x: _is_nearly(new.step, x)),
    (r"do not fit evenly into (.+?)\.(?!\d)", lambda old, new, x: x % new.step != 0),
    (r"no caben justos en (.+?)\.(?!\d)", lambda old, new, x: x % new.step != 0),
    (r"(?:a multiple of|un múltiplo de) (.+?)(?:,(?!\d)| y |\?)", lambda old, new, x: x % new.step != 0),
    (
        r"(?:pass|past|pasar por(?: el)?|después del?) (.+?)(?:\.(?!\d)|,(?!\d)|:(?!\d)|\?| y )",
        lambda old, new, x: _passes(new, x),
    ),
    (r"(?:does what|hacían|what) (\d+) (?:jumps|saltos)", lambda old, new, x: new.step == x * old.step),
]


def _is_nearly(step: Fraction, round_number: Fraction) -> bool:
    return abs(abs(step) - round_number) in (1, round_number / 10)


def _passes(count: Count, value: Fraction) -> bool:
    low, high = sorted((count.value(1), count.value(count.terms)))
    return low <= value <= high or (count.wrap is not None and low <= value + count.wrap <= high)


def _read(count: Count, text: str) -> Fraction | None:
    try:
        return count.read(re.sub(r"^(?:la|las) ", "", text))
    except CountError:
        return None


@pytest.mark.parametrize("language", ["en", "es"])
@pytest.mark.parametrize("grid", [*EXAMPLE_GRIDS, *FIRST_GRADES])
def test_every_number_in_it_is_so_of_the_old_or_the_new_count(grid: Grid, language: str) -> None:
    for _, one in told(grid, language):
        old, new = grid.count, one.grid.count
        text = one.ask
        for pattern, is_so in SAID_OF_AN_AMOUNT:
            for found in list(re.finditer(pattern, text)):
                value = _amount(new, found[1])
                if value is not None:
                    assert is_so(old, new, value), (one.ask, found[1])
                    text = text.replace(found[1], "", 1)
        known = {new.text(n) for n in range(1, new.terms + 1)} | {str(one.grid.line_length)}
        known |= {new.difference_text(new.step), old.difference_text(old.step)}
        known |= {old.difference_text(old.step * grid.line_length)}
        for value in sorted(known, key=len, reverse=True):
            text = re.sub(rf"(?<![\d.,/]){re.escape(value)}(?![\d/]|[.,]\d)", "", text)
        assert not re.search(r"\d", text), (one.ask, text)


def _amount(count: Count, text: str) -> Fraction | None:
    """An amount or a count, in the base unit; on a clock an amount is of minutes."""
    if count.kind == "clock":
        hours, minutes = re.fullmatch(r"(\d+) h", text), re.fullmatch(r"(\d+) min", text)
        if hours or minutes:
            return Fraction(int(hours[1]) * 60 if hours else int(minutes[1]))  # type: ignore[index]
    return _read(count, text) if re.search(r"\d", text) else None
