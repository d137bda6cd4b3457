"""Every number in every generated sentence is computed again from the sentence itself."""

import re
from fractions import Fraction

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from routines.counting import Audience, Claim, Count, Grid
from routines.words import check, describe, find_patterns
from routines.words.page import page_of
from tests.counting.any_count import KINDS, grids
from tests.counting.claims import a_claim
from tests.words.sentence_checker import Context, SentenceChecker, ordinal_is_spelled
from tests.words.sentence_rules import RULES

CHECKERS = {language: SentenceChecker(RULES, language) for language in ("en", "es")}
PER_KIND = settings(max_examples=max(settings.default.max_examples // 3, 10))
AUDIENCES = st.builds(Audience, st.integers(0, 8), st.sampled_from(["en", "es"]))

TENS = Grid(Count.parse(kind="whole", start="10", step="6", terms=25), line_length=5)


def problems(text: str, grid: Grid, claim: Claim | None = None, **facts: int | None) -> list[str]:
    language = "es" if facts.pop("spanish", None) else "en"
    return CHECKERS[language].problems(text, Context(grid, claim, **facts))


@pytest.mark.parametrize("kind", KINDS)
def test_patterns_of_every_kind_say_only_what_is_so(kind: str) -> None:
    @PER_KIND
    @given(grids(kind), AUDIENCES, st.randoms(use_true_random=False))
    def each(grid: Grid, audience: Audience, random) -> None:
        patterns = find_patterns(grid, implied=True, audience=audience)
        families = sorted({pattern.claim.family for pattern in patterns})
        for family in families:
            pattern = random.choice([one for one in patterns if one.claim.family == family])
            context = Context(grid, pattern.claim, pattern.breaks_at)
            for text in (pattern.statement, pattern.student_words, pattern.because):
                assert CHECKERS[audience.language].problems(text, context) == []
                assert ordinal_is_spelled(text)

    each()


@pytest.mark.parametrize("language", ["en", "es"])
def test_midnight_is_no_zero(language: str) -> None:
    count = Count.parse(kind="clock", start="3:00 am", step="-2 h", terms=6)
    for pattern in find_patterns(Grid(count, 2), implied=True, audience=Audience(2, language)):
        assert not re.search(r"\b(?:zero|cero)\b", pattern.because), pattern.because
        assert (
            CHECKERS[language].problems(pattern.because, Context(Grid(count, 2), pattern.claim, pattern.breaks_at))
            == []
        )


@pytest.mark.parametrize("kind", KINDS)
def test_verdicts_on_claims_from_elsewhere_say_only_what_is_so(kind: str) -> None:
    """A pattern of one grid is claimed of another fold of another count: mostly false, sometimes not."""

    @PER_KIND
    @given(grids(kind), grids(kind), AUDIENCES, st.randoms(use_true_random=False))
    def each(found_in: Grid, grid: Grid, audience: Audience, random) -> None:
        patterns = find_patterns(found_in, implied=True)
        for claim in random.sample([one.claim for one in patterns], min(4, len(patterns))):
            if claim.parameters.get("part") is not None and claim.parameters.get("part") not in grid.count.part_names():
                continue
            verdict = check(claim, grid, audience=audience)
            context = Context(grid, claim, verdict.breaks_at if verdict.true else None, verdict.true_from)
            assert CHECKERS[audience.language].problems(verdict.because, context) == []

    each()


def test_a_refusal_shows_the_count_that_speaks_against_the_claim() -> None:
    """Readings with a space in them ("1 2/6") were cut at the end, just where the claim broke."""
    ragged = Grid(Count.parse(kind="fraction", start="0/6", step="1/6", terms=34), line_length=25, lead=17)
    claim = next(
        one.claim
        for one in find_patterns(ragged, implied=True)
        if one.claim.family == "remainder"
        and one.claim.parameters.get("modulus") == 2
        and one.claim.parameters.get("along") == "row"
    )
    grid = Grid(Count.parse(kind="fraction", start="0/6", step="1/6", terms=19), line_length=9)
    verdict = check(claim, grid, audience=Audience(3, "en"))
    assert verdict.because.endswith("the remainders past a multiple of 2 are ..., 3/6, 4/6, 5/6, 1, 1 1/6, 1 2/6.")
    context = Context(grid, claim, None, verdict.true_from)
    assert CHECKERS["en"].problems(verdict.because, context) == []


class TestTheCheckerItself:
    """It would not prove much if it let wrong numbers through."""

    tens = a_claim("landmarks", multiple="10", every=5, first=1, lie="column", lines=[1])
    ones = a_claim("digit", place=0, along="column", blocks=[[0], [6], [2], [8], [4]])

    @pytest.mark.parametrize(
        "wrong",
        [
            "5 jumps of 6 make 36.",
            "5 jumps of 7 make 35.",
            "5 jumps of 6 make 30, which is 4 tens.",
            "The tens are in column 2",
            "Every 4th count is a ten",
            "Look at 10, 40 and 100: these are the tens.",
            "6 more than 10 is 17.",
            "The 3rd count is 23.",
            "The tens are in column 1, until 100",
            "There are 12 of them.",
        ],
    )
    def test_a_wrong_number_is_found(self, wrong: str) -> None:
        assert problems(wrong, TENS, self.tens)

    @pytest.mark.parametrize(
        "wrong",
        [
            "Ones digits stay in their column: 0, 6, 2, 8, 5",
            "Ones digits stay in their column: 0, 6, 2, 8, 4, 0",
            "In column 1 we wrote 10, 40 and 70, always with 1.",
            "In column 2 we wrote 10, 40 and 70, always with 0.",
            "In column 2 the ones digits go 6, 6, 2.",
        ],
    )
    def test_a_wrong_digit_is_found(self, wrong: str) -> None:
        assert problems(wrong, TENS, self.ones)

    @pytest.mark.parametrize(
        "right",
        [
            "5 jumps of 6 make 30, and 30 is 3 tens.",
            "Look at 10, 40 and 70: these are the tens.",
            "The tens are in column 1",
        ],
    )
    def test_right_numbers_pass(self, right: str) -> None:
        assert problems(right, TENS, self.tens) == []

    def test_a_wrong_end_is_found(self) -> None:
        run = a_claim("digit-run", place=1, along="column", change=3)
        grid = Grid(Count.parse(kind="whole", start="10", step="6", terms=15), line_length=5)
        assert problems("Tens digits go up 3 down each column, until 100", grid, run, breaks_at=16) == []
        assert problems("Tens digits go up 3 down each column, until 106", grid, run, breaks_at=16)
        assert problems("Tens digits go up 2 down each column, until 100", grid, run, breaks_at=16)


def test_jumps_are_multiplied() -> None:
    assert page_of(TENS, Audience()).jumps(5) == "5 jumps of 6 make 30"
    assert page_of(TENS, Audience(3, "es")).jumps(5) == "5 saltos de 6 hacen 30"
    inches = Grid(Count.parse(kind="length", start="1 ft 3 in", step="9 in", terms=12), line_length=4)
    assert page_of(inches, Audience()).jumps(4) == "4 jumps of 9 in make 3 ft"


def test_until_names_the_written_count() -> None:
    down = a_claim("neighbour", direction="down", difference="30")
    assert describe(down, TENS, "shown", 16).statement.endswith(" more, until 100")
    assert "until" not in describe(down, TENS, "always", None).statement
    clock = Grid(Count.parse(kind="clock", start="8:10", step="20 min", terms=15), line_length=3)
    later = a_claim("neighbour", direction="down", difference="60")
    assert describe(later, clock, "shown", 16, Audience(3, "es")).statement.endswith(", hasta llegar a la 1:10")


def test_money_is_written_the_schools_way() -> None:
    """Common practice, no source: a number in a sentence looks as it does in the grid."""
    count = Count.parse(kind="money", start="$0.10", step="$0.25", terms=12)
    grid = Grid(count, line_length=4)
    words = describe(a_claim("neighbour", direction="down", difference=Fraction(100)), grid, "always", None)
    assert words.statement == "Each step down a column is $1.00 more"
