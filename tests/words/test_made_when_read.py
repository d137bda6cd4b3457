"""Sentences are made when they are read, one by one, and only once."""

from collections.abc import Callable, Iterable
from typing import Any

import pytest

from routines import words
from routines.counting import Audience, Count, Grid
from routines.words import LANGUAGES

COUNT = Count.parse(kind="whole", start="58", step="6", terms=20)
GRID = Grid(COUNT, 5)


class Asked(dict[str, Any]):
    """A language's sentences on one subject, noting how often one is asked for."""

    times = 0

    def __getitem__(self, key: str) -> Any:
        type(self).times += 1
        return super().__getitem__(key)


@pytest.fixture
def asked(monkeypatch: pytest.MonkeyPatch) -> type[Asked]:
    class Here(Asked):
        pass

    english = type(LANGUAGES["en"])
    monkeypatch.setattr(english, "patterns", Here(english.patterns))
    monkeypatch.setattr(english, "probes", Here(english.probes))
    for subject in ("locating", "replies", "stops", "next_counts", "folds"):
        sentences = getattr(english, subject)
        tables = {name: Here(value) for name, value in sentences._asdict().items() if isinstance(value, dict)}
        monkeypatch.setattr(english, subject, sentences._replace(**tables))
    return Here


ANSWERS: list[tuple[Callable[[], Iterable[Any]], str]] = [
    (lambda: words.find_patterns(GRID), "statement"),
    (lambda: words.find_patterns(GRID), "student_words"),
    (lambda: words.find_patterns(GRID), "because"),
    (lambda: [idea.pattern for idea in words.ideas(GRID)], "statement"),
    (lambda: [words.locate(GRID, 130)], "reason"),
    (lambda: words.probes(GRID), "why"),
    (lambda: words.compare_folds(COUNT), "sentence"),
    (lambda: words.likely_slips(GRID), "reply"),
    (lambda: words.likely_slips(GRID), "why"),
    (lambda: [words.classify(GRID, 3, "71")], "note"),
    (lambda: words.suggest_stops(GRID), "question"),
    (lambda: words.next_counts(GRID, "as-planned"), "ask"),
]


@pytest.mark.parametrize(("answers", "name"), ANSWERS)
def test_none_is_made_before_it_is_read_and_none_twice(
    answers: Callable[[], Iterable[Any]], name: str, asked: type[Asked]
) -> None:
    found = list(answers())
    assert asked.times == 0
    read = [getattr(one, name) for one in found]
    assert asked.times > 0
    before = asked.times
    assert [getattr(one, name) for one in found] == read
    assert asked.times == before


def test_reading_one_makes_no_other(asked: type[Asked]) -> None:
    first, *_ = words.find_patterns(GRID, audience=Audience(3, "en"))
    _ = first.statement
    assert "because" not in vars(first._words)
    assert "student_words" not in vars(first._words)
