"""What a child says is as long as a child of that level speaks; reasons stay short; the tone never judges."""

import re

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from routines.counting import Audience, Grid, find_patterns
from tests.counting.any_count import KINDS, grids

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


def words_in(text: str) -> int:
    """Words, a number with spaces between its thousands being one."""
    return len(re.sub(r"(?<=\d) (?=\d{3}(?!\d))", "", text).split())


@pytest.mark.parametrize("kind", KINDS)
def test_lengths_and_tone(kind: str) -> None:
    @PER_KIND
    @given(grids(kind), st.integers(0, 8), st.sampled_from(["en", "es"]))
    def each(grid: Grid, level: int, language: str) -> None:
        least, most = BANDS[level]
        written = [grid.count.text(n) for n in range(1, grid.terms + 40)]
        written += [grid.count.difference_text(grid.count.step * k) for k in range(1, grid.terms)]
        units = max(text.count(" ") for text in written) + 1
        for pattern in find_patterns(grid, implied=True, audience=Audience(level, language)):
            said = words_in(pattern.student_words)
            # Amounts in two units ("1,240 lb 12 oz") take four words where a number takes one.
            assert least <= said <= most + 6 * (units - 1), pattern.student_words
            assert words_in(pattern.because) <= most + 6 * (units - 1), pattern.because
            assert words_in(pattern.statement) <= LONG_STATEMENT + 6 * (units - 1), pattern.statement
            for text in (pattern.statement, pattern.student_words, pattern.because):
                assert not NEVER_SAID.search(text), text
                assert text[0].isupper() or not text[0].isalpha(), text
            assert pattern.because.endswith(".")
            assert not pattern.statement.endswith(".") or pattern.statement.endswith(("...", "m."))

    each()
