"""Length, mass, capacity and elapsed time: exact units, one or two of them, parts, words, refusals."""

from fractions import Fraction

import pint
import pytest

from routines.counting import Count, CountError, Style
from routines.counting.kinds.unit_names import NAMES
from routines.counting.kinds.units import BASE_UNITS, UNITS
from routines.errors import say
from tests.saying import saying

# pint, an independent table of units, by the names it uses for ours.
PINT_NAMES = {
    "in": "inch", "ft": "foot", "yd": "yard", "mi": "mile", "mm": "millimeter", "cm": "centimeter", "m": "meter",
    "km": "kilometer", "oz": "ounce", "lb": "pound", "ton": "US_ton", "g": "gram", "kg": "kilogram",
    "fl oz": "US_fluid_ounce", "cup": "US_liquid_cup", "pt": "US_pint", "qt": "US_liquid_quart",
    "gal": "US_liquid_gallon", "mL": "milliliter", "L": "liter", "s": "second", "min": "minute", "h": "hour", "d": "day",
}  # fmt: skip


def count_of(kind: str, start: str, step: str, terms: int = 12, **style: object) -> Count:
    return Count.parse(kind=kind, start=start, step=step, terms=terms, style=Style(**style))  # type: ignore[arg-type]


def texts(count: Count, terms: int) -> list[str]:
    return [count.text(n) for n in range(1, terms + 1)]


@pytest.mark.parametrize("symbol", UNITS)
def test_every_unit_has_the_size_that_pint_gives_it(symbol: str) -> None:
    registry = pint.UnitRegistry(non_int_type=Fraction)
    unit = UNITS[symbol]
    base = PINT_NAMES[BASE_UNITS[unit.measure, unit.system]]
    size = registry.Quantity(Fraction(1), PINT_NAMES[symbol]).to(base).magnitude
    assert Fraction(size).limit_denominator(10**6) == unit.size


def test_every_unit_has_a_name_in_both_languages() -> None:
    assert set(NAMES) == {(symbol, language) for symbol in UNITS for language in ("en", "es")}


@pytest.mark.parametrize(
    ("kind", "start", "step", "style", "written"),
    [
        ("length", "1 ft 3 in", "9 in", {}, ["1 ft 3 in", "2 ft", "2 ft 9 in", "3 ft 6 in"]),
        ("length", "9 in", "9 in", {}, ["9 in", "18 in", "27 in"]),
        ("length", "9 in", "9 in", {"units": "two"}, ["9 in", "1 ft 6 in", "2 ft 3 in"]),
        ("length", "1 ft 3 in", "9 in", {"units": "one"}, ["15 in", "24 in", "33 in"]),
        ("length", "1 ft", "1 ft", {"units": "two"}, ["1 ft", "2 ft"]),
        ("length", "2 ft", "1 ft", {"small": "ft", "large": "yd"}, ["2 ft", "1 yd", "1 yd 1 ft"]),
        ("length", "1/4 in", "1/4 in", {}, ["1/4 in", "2/4 in", "3/4 in", "1 in", "1 1/4 in"]),
        ("length", "1/4 in", "1/4 in", {"fractions": "simplified"}, ["1/4 in", "1/2 in", "3/4 in", "1 in"]),
        ("length", "1/4 in", "1/4 in", {"places": 2}, ["0.25 in", "0.50 in", "0.75 in", "1.00 in"]),
        ("length", "1.5 m", "0.5 m", {}, ["1.5 m", "2.0 m"]),
        ("length", "1.5 m", "0.5 m", {"fractions": "simplified"}, ["1.5 m", "2 m"]),
        ("length", "5 cm", "5 cm", {"small": "m"}, ["0.05 m", "0.10 m"]),
        ("length", "1 m 90 cm", "15 cm", {}, ["1 m 90 cm", "2 m 5 cm"]),
        ("mass", "2 lb 6 oz", "6 oz", {}, ["2 lb 6 oz", "2 lb 12 oz", "3 lb 2 oz"]),
        ("mass", "3 kg 40 g", "500 g", {}, ["3 kg 40 g", "3 kg 540 g"]),
        ("mass", "1 kg 50 g", "1 kg", {"small": "kg", "units": "one"}, ["1.05 kg", "2.05 kg"]),
        ("mass", "1 ton", "1 ton", {}, ["1 ton", "2 tons"]),
        ("capacity", "1/2 cup", "1/2 cup", {}, ["1/2 cup", "1 cup", "1 1/2 cups", "2 cups"]),
        ("capacity", "2 gal 2 qt", "1 qt", {}, ["2 gal 2 qt", "2 gal 3 qt", "3 gal"]),
        ("capacity", "1 L 700 mL", "150 mL", {}, ["1 L 700 mL", "1 L 850 mL", "2 L"]),
        ("capacity", "900 mL", "50 mL", {"units": "two"}, ["900 mL", "950 mL", "1 L", "1 L 50 mL"]),
        (
            "capacity",
            "3/4 cup",
            "3/4 cup",
            {"language": "es"},
            ["3/4 de taza", "1 2/4 tazas", "2 1/4 tazas", "3 tazas"],
        ),
        ("capacity", "3/4 cup", "3/4 cup", {"language": "es", "shape": "top-heavy"}, ["3/4 de taza", "6/4 de taza"]),
        ("capacity", "1 taza", "1 taza", {"language": "es"}, ["1 taza", "2 tazas"]),
        ("elapsed", "25", "25", {}, ["25 min", "50 min", "75 min"]),
        ("elapsed", "25", "25", {"units": "two"}, ["25 min", "50 min", "1 h 15 min"]),
        ("elapsed", "1 h 35 min", "35 min", {}, ["1 h 35 min", "2 h 10 min", "2 h 45 min"]),
        ("length", "1,5 m", "0,5 m", {"decimal_mark": ","}, ["1,5 m", "2,0 m"]),
        ("length", "900 cm", "100 cm", {}, ["900 cm", "1,000 cm"]),
        ("elapsed", "1:20", "0:20", {}, ["1 h 20 min", "1 h 40 min", "2 h"]),
    ],
)
def test_a_measure_is_written_in_its_style(
    kind: str, start: str, step: str, style: dict[str, object], written: list[str]
) -> None:
    assert texts(count_of(kind, start, step, **style), len(written)) == written


@pytest.mark.parametrize(
    ("kind", "start", "step", "style", "written"),
    [
        ("length", "1.5 ft", "0.5 ft", {}, ["1.5 ft", "2.0 ft", "2.5 ft"]),
        ("length", "1.50 ft", "0.5 ft", {}, ["1.50 ft", "2.00 ft", "2.50 ft"]),
        ("length", "1.5 ft", "0.5 ft", {"fractions": "simplified"}, ["1.5 ft", "2 ft", "2.5 ft"]),
        ("capacity", "0.25 cup", "0.25 cup", {}, ["0.25 cup", "0.50 cup", "0.75 cup", "1.00 cup"]),
        ("mass", "2.5 lb", "2.5 lb", {}, ["2.5 lb", "5.0 lb", "7.5 lb"]),
        ("length", "1.25 mi", "1.25 mi", {}, ["1.25 mi", "2.50 mi", "3.75 mi"]),
        ("length", "0.5 mi", "1 mi", {}, ["0.5 mi", "1.5 mi", "2.5 mi"]),
        ("elapsed", "0.25 h", "0.25 h", {}, ["0.25 h", "0.50 h", "0.75 h", "1.00 h"]),
        ("elapsed", "1/4 h", "1/4 h", {}, ["1/4 h", "2/4 h", "3/4 h", "1 h"]),
        ("elapsed", "1 1/2 h", "1/2 h", {}, ["1 1/2 h", "2 h", "2 1/2 h"]),
        ("length", "1/2 m", "1/2 m", {}, ["1/2 m", "1 m", "1 1/2 m"]),
        ("length", "3/10 mi", "1/10 mi", {}, ["3/10 mi", "4/10 mi", "5/10 mi"]),
        # A decimal beside a fraction joins it, in simplest form.
        ("length", "0.5 ft", "1/8 ft", {}, ["4/8 ft", "5/8 ft", "6/8 ft"]),
        # Decimals of the larger unit are whole numbers of the smaller one that stands beside it.
        ("length", "1.5 ft", "6 in", {}, ["1 ft 6 in", "2 ft", "2 ft 6 in"]),
        ("length", "1/4 ft", "1/2 in", {"units": "one", "small": "in"}, ["3 in", "3 1/2 in", "4 in"]),
        # Twelfths of a foot have no decimals.
        ("length", "1.5 ft", "1 in", {"units": "one", "small": "ft"}, ["1 6/12 ft", "1 7/12 ft"]),
        # A style may choose for both.
        ("length", "2/4 in", "1/4 in", {"decimals": True}, ["0.50 in", "0.75 in", "1.00 in"]),
        ("length", "0.25 m", "0.25 m", {"decimals": False}, ["1/4 m", "2/4 m", "3/4 m"]),
    ],
)
def test_parts_of_a_unit_are_written_as_they_were_typed(
    kind: str, start: str, step: str, style: dict[str, object], written: list[str]
) -> None:
    assert texts(count_of(kind, start, step, **style), len(written)) == written


@pytest.mark.parametrize(
    ("start", "english", "spanish"),
    [
        ("1/4 h", "one fourth of an hour", "un cuarto de hora"),
        ("1 1/2 h", "one and one half hours", "una hora y media"),
        ("1.5 h", "one and five tenths hours", "una hora y cinco décimas"),
    ],
)
def test_parts_of_an_hour_are_said_as_they_were_typed(start: str, english: str, spanish: str) -> None:
    count = count_of("elapsed", start, start)
    assert (count.words(1), count.words(1, "es")) == (english, spanish)


@pytest.mark.parametrize(
    ("kind", "start", "spanish"),
    [
        # RAE, Diccionario panhispánico de dudas, "millón": un millón de libras, but un millón quinientas mil libras.
        ("length", "1000000 in", "un millón de pulgadas"),
        ("elapsed", "2000000", "dos millones de minutos"),
        ("mass", "2000000 lb", "dos millones de libras"),
        ("mass", "1500000 lb", "un millón quinientas mil libras"),
        ("mass", "1000000 1/2 lb", "un millón de libras y media"),
    ],
)
def test_millions_are_joined_to_their_unit_by_de(kind: str, start: str, spanish: str) -> None:
    assert count_of(kind, start, "1" if kind == "elapsed" else f"1 {start.split()[-1]}", 2).words(1, "es") == spanish


@pytest.mark.parametrize(
    ("kind", "start", "sentence"),
    [
        ("elapsed", "25'", "Write a unit of time: “'” is a unit of length."),
        ("length", "25 min", "Write a unit of length: “min” is a unit of time."),
        ("elapsed", "9 fortnights", "Write a unit of time, one of s, min, h, d: “fortnights” is none."),
        ("mass", "--7 lb", "Type an amount such as 1 lb 4 oz or 250 g: “--7 lb” cannot be read as one."),
    ],
)
def test_a_refusal_names_the_measure_and_quotes_what_was_typed(kind: str, start: str, sentence: str) -> None:
    with pytest.raises(CountError) as refused:
        count_of(kind, start, start)
    assert say(refused.value) == sentence


@pytest.mark.parametrize(
    ("kind", "start", "system", "base"),
    [
        ("length", "9 in", "customary", "in"),
        ("length", "9 cm", "metric", "cm"),
        ("mass", "9 lb", "customary", "oz"),
        ("mass", "9 kg", "metric", "g"),
        ("capacity", "9 cups", "customary", "fl oz"),
        ("capacity", "9 L", "metric", "mL"),
        ("elapsed", "9 min", None, "min"),
    ],
)
def test_the_base_unit_is_one_per_kind_and_system(kind: str, start: str, system: str | None, base: str) -> None:
    count = count_of(kind, start, start)
    assert (count.system, count.base_unit) == (system, base)


def test_feet_and_inches_are_parts_even_where_none_is_written() -> None:
    count = count_of("length", "1 ft 3 in", "9 in")
    assert count.part_names() == ("feet", "inches")
    assert [count.parts(n) for n in (1, 2)] == [{"feet": 1, "inches": 3}, {"feet": 2, "inches": 0}]
    assert [count.parts(n)["inches"] for n in range(1, 13)] == [3, 0, 9, 6] * 3
    assert count.span(1, part="inches") == (2, 0, 1)
    assert count.span(2, part="inches") is None


def test_a_single_number_is_no_part_to_read_by_itself() -> None:
    assert count_of("length", "9 in", "9 in").part_names() == ()


@pytest.mark.parametrize(
    ("kind", "start", "english", "spanish"),
    [
        ("length", "1 ft 3 in", "one foot three inches", "un pie y tres pulgadas"),
        ("length", "9 in", "nine inches", "nueve pulgadas"),
        ("length", "21 in", "twenty-one inches", "veintiuna pulgadas"),
        ("length", "1/2 in", "half an inch", "media pulgada"),
        ("length", "2 1/2 in", "two and one half inches", "dos pulgadas y media"),
        ("length", "2 1/2 ft", "two and one half feet", "dos pies y medio"),
        ("capacity", "3/4 cup", "three fourths of a cup", "tres cuartos de taza"),
        ("length", "1.5 m", "one and five tenths meters", "un metro y cinco décimas"),
        ("length", "0.5 m", "five tenths of a meter", "cinco décimas de metro"),
        ("elapsed", "1 h 35 min", "one hour thirty-five minutes", "una hora y treinta y cinco minutos"),
        ("mass", "1 lb", "one pound", "una libra"),
    ],
)
def test_measures_are_said(kind: str, start: str, english: str, spanish: str) -> None:
    count = count_of(kind, start, start)
    assert count.words(1) == english
    assert count.words(1, "es") == spanish


@pytest.mark.parametrize(
    ("field", "kind", "start", "step"),
    [
        ("start", "length", "9", "9 in"),
        ("step", "length", "9 in", "9"),
        ("step", "length", "9 in", "9 cm"),
        ("step", "capacity", "1 cup", "50 mL"),
        ("start", "length", "9 oz", "9 oz"),
        ("start", "capacity", "8 oz", "8 oz"),
        ("start", "mass", "8 fl oz", "8 fl oz"),
        ("start", "length", "1 ft 3 cm", "1 ft"),
        ("start", "length", "3 in 1 ft", "1 ft"),
        ("start", "length", "1 ft 2 ft", "1 ft"),
        ("start", "length", "1.5 ft 3 in", "1 ft"),
        ("start", "length", "9 furlongs", "1 ft"),
        ("start", "length", "1 qt 3", "1 ft"),
        ("start", "capacity", "1 qt 3", "1 qt"),
        ("start", "length", "-9 in", "9 in"),
        ("start", "elapsed", "1:60", "5"),
        ("start", "elapsed", "1:35:20", "5"),
        ("start", "elapsed", "25:00", "5"),
        ("start", "elapsed", "1 h 35 min 7", "5"),
    ],
)
def test_what_cannot_be_measured_is_refused_at_its_field(field: str, kind: str, start: str, step: str) -> None:
    with pytest.raises(CountError) as refused:
        count_of(kind, start, step)
    assert refused.value.field == field


@pytest.mark.parametrize(
    ("start", "places", "advice"),
    [("0.25 in", 1, "Show at least 2 decimal places"), ("1/3 in", 2, "Leave the decimal places open")],
)
def test_places_that_would_lose_a_value_are_refused(start: str, places: int, advice: str) -> None:
    with pytest.raises(CountError, check=saying(advice)) as refused:
        count_of("length", start, start, places=places)
    assert refused.value.field == "style"


def test_fluid_ounces_and_ounces_are_different_measures() -> None:
    # NIST Handbook 44, Appendix C: the fluid ounce is a unit of capacity, the ounce one of mass.
    with pytest.raises(CountError, check=saying("mass")):
        count_of("capacity", "8 oz", "8 oz")


def test_going_below_zero_is_refused_naming_the_count() -> None:
    # 36, 27, 18, 9, 0 and then -9: the 6th count.
    with pytest.raises(CountError, check=saying(r"at most 5 counts.*count 6 would be below zero")) as refused:
        count_of("length", "3 ft", "-9 in", terms=12)
    assert refused.value.field == "terms"
    assert count_of("length", "3 ft", "-9 in", terms=5).text(5) == "0 in"


@pytest.mark.parametrize(
    "style",
    [
        {"small": "oz"},
        {"small": "in", "large": "L"},
        {"small": "ft", "large": "in"},
        {"small": "mi", "large": "mi"},
        {"small": "cm"},
        {"small": "furlong"},
        {"units": "three"},
    ],
)
def test_units_that_do_not_fit_are_refused(style: dict[str, object]) -> None:
    with pytest.raises(CountError) as refused:
        count_of("length", "9 in", "9 in", **style)
    assert refused.value.field == "style"
