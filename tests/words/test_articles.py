"""Before a count in a Spanish sentence stands the article of its kind, drawn together with de and a.

Common practice, no source: el 19, el 3/4, las 9:05; an amount in units or in money has none.
"""

import re
from collections.abc import Mapping
from dataclasses import replace
from typing import Any

import pytest
from hypothesis import given
from hypothesis import strategies as st

from routines.counting import Audience, Count, Grid
from routines.words import LANGUAGES, find_patterns, likely_slips, next_counts, probes
from routines.words.language import Noun
from tests.counting.any_count import grids
from tests.words.grammars import CHECKERS
from tests.words.sentence_checker import Context

SPANISH = LANGUAGES["es"]
# A count as written, on a clock or not; after "el", "del", "al" and "en".
COUNTS = [
    ("19", False, ("el 19", "del 19", "al 19", "en el 19")),
    ("1,325", False, ("el 1,325", "del 1,325", "al 1,325", "en el 1,325")),
    ("-2/4", False, ("el -2/4", "del -2/4", "al -2/4", "en el -2/4")),
    ("2 3/8", False, ("el 2 3/8", "del 2 3/8", "al 2 3/8", "en el 2 3/8")),
    ("4/4 = 1", False, ("el 4/4 = 1", "del 4/4 = 1", "al 4/4 = 1", "en el 4/4 = 1")),
    ("0.25", False, ("el 0.25", "del 0.25", "al 0.25", "en el 0.25")),
    ("9:05 a. m.", True, ("las 9:05 a. m.", "de las 9:05 a. m.", "a las 9:05 a. m.", "a las 9:05 a. m.")),
    ("1:10", True, ("la 1:10", "de la 1:10", "a la 1:10", "a la 1:10")),
    ("50 g", False, ("50 g", "de 50 g", "a 50 g", "en 50 g")),
    ("1 ft 3 in", False, ("1 ft 3 in", "de 1 ft 3 in", "a 1 ft 3 in", "en 1 ft 3 in")),
    ("3/4 de taza", False, ("3/4 de taza", "de 3/4 de taza", "a 3/4 de taza", "en 3/4 de taza")),
    ("$2.60", False, ("$2.60", "de $2.60", "a $2.60", "en $2.60")),
    ("85¢", False, ("85¢", "de 85¢", "a 85¢", "en 85¢")),
    (
        "36 oz (2 lb 4 oz)",
        False,
        ("36 oz (2 lb 4 oz)", "de 36 oz (2 lb 4 oz)", "a 36 oz (2 lb 4 oz)", "en 36 oz (2 lb 4 oz)"),
    ),
]


@pytest.mark.parametrize(("text", "clock", "told"), COUNTS)
def test_a_count_takes_the_article_of_its_kind(text: str, clock: bool, told: tuple[str, ...]) -> None:
    said = SPANISH.value(text, clock=clock)
    assert tuple(f"{{0:{spec}}}".format(said) for spec in ("el", "del", "al", "en")) == told


def test_a_sentence_about_a_number_says_its_article() -> None:
    grid = Grid(Count.parse(kind="whole", start="17", step="1", terms=8), 4)
    replies = " ".join(slip.reply for slip in likely_slips(grid, audience=Audience(0, "es")))
    assert "el 19" in replies


@pytest.mark.parametrize("wrong", ["Llegamos al 50 g.", "Llegamos del 50 g."])
def test_an_amount_with_an_article_is_not_read(wrong: str) -> None:
    grid = Grid(Count.parse(kind="mass", start="25 g", step="25 g", terms=8), 4)
    assert CHECKERS["stop", "es"].problems(wrong, Context(grid, extra={"after": 1}))
    assert not CHECKERS["stop", "es"].problems("Llegamos a 50 g.", Context(grid, extra={"after": 1}))


@pytest.mark.parametrize("names", [SPANISH.landmark_nouns, SPANISH.clock_landmarks], ids=["amounts", "times"])
def test_each_of_several_under_one_name_takes_its_own_article(names: Mapping[Any, Noun]) -> None:
    gathered = [noun.among for noun in names.values() if noun.among]
    assert gathered
    for noun in gathered:
        pieces = re.split(", | y ", SPANISH.the_many(noun))
        assert len(pieces) == len(noun.parts) >= 2
        for piece, part in zip(pieces, noun.parts, strict=True):
            assert piece.split()[0] == ("las" if part.feminine else "los")
            assert not part.many.split()[0].endswith("os" if part.feminine else "as"), piece


def test_on_a_clock_the_full_hour_is_a_time_in_next_counts_too() -> None:
    grid = Grid(Count.parse(kind="clock", start="9:05 am", step="5 min", terms=24), 6)
    told = [one.why for one in next_counts(grid, "ready-for-more", audience=Audience(2, "es"))]
    assert any("una hora en punto" in why for why in told)
    assert not any("hora entera" in why for why in told)


AMOUNTS = st.sampled_from(["length", "mass", "capacity", "elapsed", "money"]).flatmap(grids)
UNIT = r"(?:mm|cm|m|km|in|ft|yd|oz|lb|g|kg|mL|L|min|h|tazas|¢)"


@given(AMOUNTS, st.integers(0, 8))
def test_several_of_a_unit_are_several(grid: Grid, level: int) -> None:
    """4,000 mL son 100 mL más; one of a unit, or a part of one, is one."""
    grid = replace(grid, count=replace(grid.count, style=replace(grid.count.style, language="es")))
    told = [pattern.because for pattern in find_patterns(grid, audience=Audience(level, "es"))]
    told += [probe.why for probe in probes(grid, Audience(level, "es"))]
    for text in told:
        text = re.sub(r"salto de .*? es ", "salto es ", text)  # the jump is one, however long
        for many in re.findall(rf"(?<!de )(?<![\d/.,])(\d[\d,. ]*) ?{UNIT} es \d", text):
            assert re.fullmatch(r"1|0[.,]\d+", many.strip()), text
