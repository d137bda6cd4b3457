"""What a child says is as long as a child of that level speaks; reasons stay short; the tone never judges."""

import re

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from routines.counting import Audience, Count, Grid, Style
from routines.words import find_patterns
from routines.words.describing import describe
from tests.counting.any_count import CURRENCIES, KINDS, grids
from tests.counting.claims import a_claim
from tests.words.sentence_checker import notation_of

PER_KIND = settings(max_examples=max(settings.default.max_examples // 3, 10))

# EXACT 30: what a child says is short at every grade.
MOST_WORDS = {0: 12, 1: 12, 2: 12, 3: 16, 4: 16, 5: 16, 6: 20, 7: 20, 8: 20}
FEWEST_WORDS = 4
MOST_OF_A_REASON = {0: 14, 1: 14, 2: 25, 3: 25, 4: 35, 5: 35, 6: 45, 7: 45, 8: 45}
# A child speaks of itself and its class, says where to look or what it sees, supposes, or names the line it points at.
OF_ONESELF_OR_POINTING = re.compile(
    r"\b(?:I|me|my|we|our|look|here)\b"
    r"|\b(?:me|mi|nos|mira|miro|encuentro|veo|noto|creo|vi|descubrí|si (?:sumo|los junto))\b"
    r"|\b(?:contamos|decimos|damos|llegamos)\b",
    re.IGNORECASE,
)
# Multiples and remainders are learned in grade 4 (4.OA.B.4, 4.NBT.B.6: Common Core State Standards, 2010).
LEARNED_LATER = re.compile("multiple|múltiplo|remainder|residuos? al dividir", re.IGNORECASE)
GRADE_OF_MULTIPLES = 4
LONG_STATEMENT = 32
NEVER_SAID = re.compile(
    r"correct|!|(?-i:None)|Fraction|great|good job|well done|wrong|\{|\}|  |\.\.\.\.|, ,|\bnan\b|muy bien|perfect",
    re.IGNORECASE,
)


def words_in(text: str, grid: Grid) -> int:
    """Words, an amount being one, however it is written: 1,240 lb 12 oz; 9.30; $ 1 250.00."""
    notation = notation_of(grid)
    return len(re.sub(f"{notation.value}|{notation.difference}", "#", text).split())


@pytest.mark.parametrize("kind", KINDS)
def test_lengths_and_tone(kind: str) -> None:
    @PER_KIND
    @given(grids(kind), st.integers(0, 8), st.sampled_from(["en", "es"]))
    def each(grid: Grid, level: int, language: str) -> None:
        for pattern in find_patterns(grid, implied=True, audience=Audience(level, language)):
            for words in pattern.ways_to_say_it:
                assert len(words.split()) >= FEWEST_WORDS, words
                assert words_in(words, grid) <= MOST_WORDS[level], words
                assert OF_ONESELF_OR_POINTING.search(words), words
                assert words.count("=") == 0, words
                assert level >= GRADE_OF_MULTIPLES or not LEARNED_LATER.search(words), words
            assert words_in(pattern.because, grid) <= MOST_OF_A_REASON[level], pattern.because
            assert words_in(pattern.statement, grid) <= LONG_STATEMENT, pattern.statement
            for text in (pattern.statement, pattern.student_words, pattern.because):
                assert not NEVER_SAID.search(text), text
                assert text[0].isupper() or not text[0].isalpha(), text
            assert pattern.because.endswith(".")
            assert not pattern.statement.endswith(".") or pattern.statement.endswith(("...", "m."))

    each()


# Place by place, from the smallest coin to tens of thousands of the large one.
PLACES_OF_MONEY = range(7)


@pytest.mark.parametrize("language", ["en", "es"])
@pytest.mark.parametrize("currency", CURRENCIES)
def test_every_place_of_money_is_told_briefly(currency: str, language: str) -> None:
    style = Style(currency=currency, language=language, units="two")
    told_briefly(Count.parse(kind="money", start="10,000", step="1,111", terms=12, style=style), PLACES_OF_MONEY)


@pytest.mark.parametrize("language", ["en", "es"])
def test_every_place_of_whole_numbers_is_told_briefly(language: str) -> None:
    style = Style(language=language)
    told_briefly(Count.parse(kind="whole", start="100,000", step="11,111", terms=12, style=style), range(6))


def told_briefly(count: Count, places: range) -> None:
    grid, language = Grid(count, 4), count.style.language
    for level in MOST_WORDS:
        for along in ("count", "row", "column"):
            for place in places:
                lines = 1 if along == "count" else grid.rows if along == "row" else grid.columns
                run = a_claim("digit-run", place=place, along=along, change=1)
                stays = a_claim("digit", place=place, along=along, blocks=[[1]] * lines)
                turns = a_claim("digit", place=place, along=along, blocks=[[1, 2]] * lines)
                for claim in (run, stays, turns):
                    for words in describe(claim, grid, "always", None, Audience(level, language)).ways_to_say_it:
                        assert words_in(words, grid) <= MOST_WORDS[level], words
