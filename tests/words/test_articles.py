"""Before a count in a Spanish sentence stands the article of its kind, drawn together with de and a.

Common practice, no source: el 19, el 3/4, las 9:05; an amount in units or in money has none.
"""

import pytest

from routines.counting import Audience, Count, Grid
from routines.words import LANGUAGES, likely_slips
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
