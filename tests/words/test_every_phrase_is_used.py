"""Counts as classrooms have them, folded in many ways: together they use every phrase, and all of it is so."""

import pytest

from routines.counting import Audience, Count, Grid
from routines.words import LANGUAGES, check, describe, find_patterns
from tests.counting.claims import a_claim
from tests.words.sentence_checker import Context, SentenceChecker
from tests.words.sentence_rules import RULES

# kind, start, step, terms, line length, fill
COUNTS = [
    ("whole", "10", "6", 25, 5, "across"),
    ("whole", "10", "6", 15, 5, "across"),
    ("whole", "12", "2", 8, 4, "across"),
    ("whole", "9", "9", 10, 5, "across"),
    ("whole", "9", "9", 10, 5, "down"),
    ("whole", "3", "3", 20, 9, "across"),
    ("whole", "-9", "3", 12, 4, "across"),
    ("whole", "-9", "3", 5, 3, "across-up"),
    ("whole", "34", "11", 6, 3, "across"),
    ("whole", "7", "10", 8, 4, "down"),
    ("whole", "5", "5", 24, 4, "across"),
    ("whole", "5", "10", 12, 4, "across-up"),
    ("whole", "15", "5", 20, 2, "across"),
    ("whole", "1", "1", 60, 10, "across"),
    ("whole", "40", "-4", 12, 4, "across"),
    ("whole", "120", "-8", 15, 5, "down"),
    ("whole", "1325", "-50", 16, 4, "across"),
    ("whole", "7", "7", 12, 3, "across"),
    ("whole", "2", "3", 16, 9, "across"),
    ("whole", "2", "3", 24, 11, "across"),
    ("whole", "20", "1", 20, 10, "across"),
    ("whole", "90", "91", 9, 3, "across"),
    ("whole", "3", "4", 8, 2, "down"),
    ("whole", "3", "4", 6, 6, "across"),
    ("whole", "20", "1", 8, 4, "across"),
    ("whole", "0", "51", 8, 4, "across"),
    ("whole", "2", "2", 30, 10, "across"),
    ("whole", "4", "6", 6, 2, "across-up"),
    ("whole", "2", "2", 16, 4, "across-up"),
    ("whole", "2", "2", 18, 6, "across-up"),
    ("whole", "140", "-10", 5, 5, "across"),
    ("whole", "-200", "51", 3, 3, "across"),
    ("whole", "34", "-10", 4, 4, "across"),
    ("whole", "22", "30", 3, 3, "across"),
    ("whole", "-20", "10", 6, 3, "across"),
    ("decimal", "0.2", "0.2", 20, 5, "across"),
    ("decimal", "4.75", "-0.25", 16, 4, "across"),
    ("decimal", "-1.2", "0.4", 18, 6, "across"),
    ("decimal", "0.5", "0.25", 16, 4, "across-up"),
    ("fraction", "1/3", "2/3", 12, 3, "across"),
    ("fraction", "3/8", "3/8", 16, 8, "across"),
    ("fraction", "3/8", "3/8", 7, 4, "across"),
    ("money", "$0.10", "$0.25", 12, 4, "across"),
    ("money", "$9.50", "$0.50", 12, 4, "down"),
    ("length", "1 ft 3 in", "9 in", 12, 4, "across"),
    ("length", "8 ft", "-6 in", 17, 4, "across"),
    ("capacity", "250 mL", "250 mL", 12, 4, "across"),
    ("clock", "10:50", "20 min", 12, 3, "across"),
    ("clock", "10:30", "-10 min", 4, 2, "across"),
    ("clock", "8:10", "20 min", 18, 3, "down"),
    ("clock", "1:20", "7 min", 5, 3, "down"),
    ("clock", "7:00", "60 min", 5, 5, "across"),
    ("clock", "12:45", "-5 min", 9, 3, "across"),
    ("clock", "9:00", "15 min", 12, 4, "across"),
    ("clock", "9:05", "5 min", 24, 6, "across"),
    ("clock", "9:05", "5 min", 11, 4, "across"),
    ("clock", "9:10", "65 min", 7, 3, "across"),
    ("elapsed", "20 min", "20 min", 12, 3, "across"),
    ("elapsed", "1 h 35 min", "1 h 35 min", 8, 4, "across"),
    ("elapsed", "1 h 35 min", "1 h 35 min", 9, 3, "across"),
    ("elapsed", "1 h 35 min", "1 h 35 min", 10, 5, "across"),
]

# Claims from the floor, some of them false, some open, some about what is not there.
CLAIMS = [
    a_claim("step", difference="5"),
    a_claim("neighbour", direction="down", difference="7"),
    a_claim("neighbour", direction="right"),
    a_claim("neighbour", direction="down-left"),
    a_claim("digit", place=0, along="count", length=1),
    a_claim("digit", place=0, along="count", length=2),
    a_claim("digit", place=0, along="count", length=4),
    a_claim("digit", place=0, along="column", length=1),
    a_claim("digit", place=0, along="row", length=2),
    a_claim("digit", place=0, along="row", length=3),
    a_claim("digit", place=0, along="row"),
    a_claim("digit", place=0, along="column", length=2),
    a_claim("digit", place=0, along="column", length=5),
    a_claim("digit", place=0, along="count", length=5),
    a_claim("digit", place=0, along="count", length=10),
    a_claim("digit", place=0, along="row", length=5),
    a_claim("digit", place=0),
    a_claim("digit", place=0, along="row", blocks=[[5, 0]] * 6),
    a_claim("digit", place=0, along="row", blocks=[[2, 4, 6, 8, 0]] * 3),
    a_claim("digit", place=1, along="count", length=2),
    a_claim("digit", place=1, along="row", length=2),
    a_claim("remainder", modulus="2", along="column", length=1),
    a_claim("remainder", modulus="2", along="column", blocks=[[1], [0], [1], [0]]),
    a_claim("remainder", modulus="2", along="row", length=2),
    a_claim("remainder", modulus="2", along="row", blocks=[[1, 0]] * 6),
    a_claim("remainder", modulus="2", along="row", blocks=[[0, 1], [0, 1]]),
    a_claim("digit-run", place=1, along="column"),
    a_claim("digit", place=0, along="count"),
    a_claim("digit", place=0, along="column", length=1, lines=[2]),
    a_claim("digit", place=0, along="column", blocks=[[0]]),
    a_claim("digit", place=0, along="column", blocks=[[0], [0], [0]]),
    a_claim("digit-run", place=0, along="count", change=1),
    a_claim("digit-run", place=0, along="row"),
    a_claim("digit-sum", along="count", blocks=[[9]]),
    a_claim("remainder", modulus="2", along="count", blocks=[["1"]]),
    a_claim("landmarks", multiple="10", every=2, first=1, lie="column", lines=[1]),
    a_claim("landmarks", multiple="3", lie="row"),
    a_claim("landmarks", multiple="100"),
    a_claim("landmarks", multiple="11", lie="scattered"),
    a_claim("how-many", multiple="10", block=[2]),
    a_claim("how-many", multiple="1000", block=[2]),
    a_claim("sums", which="block-corners"),
    a_claim("sums", which="centre-mean"),
    a_claim("sums", which="line-totals"),
    a_claim("sums", which="line-totals", along="row", difference="1"),
    a_claim("table", step="3"),
    a_claim("opposites", pairs=[[1, 3]]),
    a_claim("opposites"),
]

CLAIMS_ON = {
    "whole": CLAIMS,
    "clock": [
        a_claim("step", difference="5"),
        a_claim("neighbour", direction="down", difference="7"),
        a_claim("digit", part="hours", along="count", length=1),
        a_claim("digit", part="minutes", along="column", length=1),
    ],
}


class Overheard(dict[str, tuple[str, ...]]):
    """The sentences of a language, noting which are asked for."""

    def __init__(self, sentences: dict[str, tuple[str, ...]]) -> None:
        super().__init__(sentences)
        self.heard: set[str] = set()

    def __getitem__(self, key: str) -> tuple[str, ...]:
        self.heard.add(key)
        return super().__getitem__(key)


@pytest.mark.parametrize("language", LANGUAGES)
def test_every_phrase_is_used_and_so(language: str, monkeypatch: pytest.MonkeyPatch) -> None:
    overheard = Overheard(dict(LANGUAGES[language].patterns))
    monkeypatch.setattr(type(LANGUAGES[language]), "patterns", overheard)
    checker = SentenceChecker(RULES, language)
    for number, (kind, start, step, terms, length, fill) in enumerate(COUNTS):
        grid = Grid(Count.parse(kind=kind, start=start, step=step, terms=terms), length, fill)
        for level in (0, 2, 4, 6):
            for pattern in find_patterns(grid, audience=Audience(level, language)):
                context = Context(grid, pattern.claim, pattern.breaks_at)
                for text in (pattern.statement, pattern.student_words, pattern.because):
                    assert checker.problems(text, context) == []
        if kind in CLAIMS_ON:
            for claim in CLAIMS_ON[kind]:
                verdict = check(claim, grid, audience=Audience(number % 9, language))
                context = Context(grid, claim, verdict.breaks_at if verdict.true else None, verdict.true_from)
                assert checker.problems(verdict.because, context) == [], claim
                if verdict.true and verdict.seen:
                    words = describe(claim, grid, verdict.holds, verdict.breaks_at, Audience(number % 9, language))
                    for text in (words.statement, words.student_words, words.because):
                        assert checker.problems(text, context) == [], claim
    wholes = Grid(Count.parse(kind="fraction", start="1", step="1", terms=4), 2)
    for odd_claim in (a_claim("digit", part="top", along="count", length=1), a_claim("sums", which="centre-mean")):
        assert check(odd_claim, wholes, audience=Audience(3, language)).because
        assert describe(odd_claim, wholes, None, None, Audience(3, language)).because
    no_full_line = Grid(Count.parse(kind="whole", start="1", step="1", terms=2), 2, lead=1)
    assert describe(a_claim("sums", which="line-totals"), no_full_line, None, None, Audience(3, language)).student_words
    assert sorted(set(overheard) - overheard.heard) == []
