"""Number words against num2words where that is right, and against sources where it is not."""

import pytest
from hypothesis import given
from hypothesis import strategies as st
from num2words import num2words

from routines.counting.kinds.number_words import cardinal, counted, decimal_parts, equal_parts

sizes = st.one_of(st.integers(0, 2000), st.integers(0, 10**9))


@given(sizes)
def test_english_cardinals_are_num2words_without_and(value: int) -> None:
    # num2words says the British "one hundred and one"; US schools say "one hundred one" (common practice, no source).
    assert cardinal(value, "en") == num2words(value, lang="en").replace(" and ", " ").replace(",", "")


@given(sizes)
def test_spanish_cardinals_are_num2words_with_un_before_mil(value: int) -> None:
    # num2words leaves "uno" before "mil" and "millones"; the Diccionario panhispánico de dudas ("veintiuno",
    # "uno") has "veintiún mil", "treinta y un mil" (from memory).
    expected = num2words(value, lang="es")
    for name in ("mil", "millones"):
        expected = expected.replace(f"veintiuno {name}", f"veintiún {name}").replace(f"uno {name}", f"un {name}")
    assert cardinal(value, "es") == expected


@pytest.mark.parametrize("bottom", [*range(3, 100), *range(101, 1000, 37)])
def test_english_parts_are_named_by_the_ordinal(bottom: int) -> None:
    ordinal = num2words(bottom, lang="en", to="ordinal").replace(" and ", " ").replace(" ", "-")
    assert equal_parts(1, bottom, "en") == f"one {ordinal}"
    assert equal_parts(2, bottom, "en") == f"two {ordinal}s"


@pytest.mark.parametrize(
    ("value", "masculine", "feminine"),
    [
        # Diccionario panhispánico de dudas, "cardinales" (from memory).
        (1, "un", "una"),
        (21, "veintiún", "veintiuna"),
        (31, "treinta y un", "treinta y una"),
        (101, "ciento un", "ciento una"),
        (200, "doscientos", "doscientas"),
        (521, "quinientos veintiún", "quinientas veintiuna"),
        (100, "cien", "cien"),
        (1000, "mil", "mil"),
        (200_000, "doscientos mil", "doscientas mil"),
        (1_000_001, "un millón un", "un millón una"),
    ],
)
def test_spanish_numbers_agree_with_what_they_count(value: int, masculine: str, feminine: str) -> None:
    assert cardinal(value, "es", "masculine") == masculine
    assert cardinal(value, "es", "feminine") == feminine


@pytest.mark.parametrize(
    ("bottom", "name"),
    [
        # Diccionario panhispánico de dudas, "fraccionarios" (from memory).
        (2, "medios"), (3, "tercios"), (4, "cuartos"), (5, "quintos"), (6, "sextos"), (7, "séptimos"), (8, "octavos"),
        (9, "novenos"), (10, "décimos"), (11, "onceavos"), (12, "doceavos"), (15, "quinceavos"), (16, "dieciseisavos"),
        (20, "veinteavos"), (30, "treintavos"), (100, "centésimos"), (1000, "milésimos"),
    ],
)  # fmt: skip
def test_spanish_parts_have_their_names(bottom: int, name: str) -> None:
    assert equal_parts(5, bottom, "es") == f"cinco {name}"


def test_decimal_parts_are_feminine_in_spanish() -> None:
    assert [decimal_parts(1, places, "es") for places in (1, 2, 3)] == ["una décima", "una centésima", "una milésima"]
    assert decimal_parts(200, 3, "es") == "doscientas milésimas"


@pytest.mark.parametrize(
    ("value", "said"),
    [
        # Diccionario panhispánico de dudas, "millón": "de" only right before what is counted.
        (999_000, "novecientos noventa y nueve mil pies"),
        (1_000_000, "un millón de pies"),
        (2_000_000, "dos millones de pies"),
        (2_000_001, "dos millones un pies"),
        (1_500_000, "un millón quinientos mil pies"),
        (1_000_000_000, "mil millones de pies"),
        (0, "cero pies"),
    ],
)
def test_spanish_millions_take_de(value: int, said: str) -> None:
    assert counted(value, "pies", "es", "masculine") == said


def test_english_millions_need_nothing() -> None:
    assert counted(1_000_000, "feet", "en") == "one million feet"
