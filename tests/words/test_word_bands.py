"""What a child says is as long as a child of that level speaks; reasons stay short; the tone never judges."""

import re

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from routines.counting import Audience, Grid
from routines.words import find_patterns
from tests.counting.any_count import KINDS, grids
from tests.words.sentence_checker import notation_of

PER_KIND = settings(max_examples=max(settings.default.max_examples // 3, 10))

# DESIGN: K-1 6-14 words, 2-3 12-25, 4-5 15-35; above, a conjecture and its test (own limit).
BANDS = {
    0: (6, 14),
    1: (6, 14),
    2: (12, 25),
    3: (12, 25),
    4: (15, 35),
    5: (15, 35),
    6: (15, 45),
    7: (15, 45),
    8: (15, 45),
}
LONG_STATEMENT = 32
NEVER_SAID = re.compile(
    r"correct|!|None|Fraction|great|good job|well done|wrong|\{|\}|  |\.\.\.\.|, ,|\bnan\b|muy bien|perfect",
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
        least, most = BANDS[level]
        for pattern in find_patterns(grid, implied=True, audience=Audience(level, language)):
            assert least <= len(pattern.student_words.split()), pattern.student_words
            assert words_in(pattern.student_words, grid) <= most, pattern.student_words
            assert words_in(pattern.because, grid) <= most, pattern.because
            assert words_in(pattern.statement, grid) <= LONG_STATEMENT, pattern.statement
            for text in (pattern.statement, pattern.student_words, pattern.because):
                assert not NEVER_SAID.search(text), text
                assert text[0].isupper() or not text[0].isalpha(), text
            assert pattern.because.endswith(".")
            assert not pattern.statement.endswith(".") or pattern.statement.endswith(("...", "m."))

    each()
