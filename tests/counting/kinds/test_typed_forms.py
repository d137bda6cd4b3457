"""What teachers type is understood: the forms of every kind, with the signs that phones and word processors put in."""

from fractions import Fraction

import pytest

from routines.counting import Count, Style

EUROPEAN = Style(decimal_mark=",")


def read(kind: str, text: str, style: Style | None = None) -> Fraction:
    """The value of a typed start, in the base unit."""
    step = 1 if kind == "clock" else text
    return Count.parse(kind=kind, start=text, step=step, terms=2, style=style).start


@pytest.mark.parametrize(
    ("kind", "text", "value"),
    [
        ("whole", "1,325", "1325"),
        ("whole", "1 325", "1325"),
        ("whole", "1\u202f325", "1325"),
        ("whole", " 58 ", "58"),
        ("whole", "-7", "-7"),
        ("whole", "\u22127", "-7"),
        ("whole", "\u20137", "-7"),
        ("whole", "- 7", "-7"),
        ("whole", "+7", "7"),
        ("whole", "1,000,000", "1000000"),
        ("decimal", ".8", "4/5"),
        ("decimal", "0.8", "4/5"),
        ("decimal", "-.8", "-4/5"),
        ("decimal", "1,325.25", "5301/4"),
        ("decimal", "3", "3"),
        ("decimal", "1/2", "1/2"),
        ("fraction", "2/3", "2/3"),
        ("fraction", "2 / 3", "2/3"),
        ("fraction", "2 1/3", "7/3"),
        ("fraction", "-2 1/3", "-7/3"),
        ("fraction", "2\u00a01/3", "7/3"),
        ("fraction", "2½", "5/2"),
        ("fraction", "¾", "3/4"),
        ("fraction", "2\u20443", "2/3"),
        ("fraction", "2\u22153", "2/3"),
        ("fraction", "2-1/3", "7/3"),
        ("fraction", "-2-1/3", "-7/3"),
        ("fraction", "2 and 1/3", "7/3"),
        ("fraction", "7/3", "7/3"),
        ("fraction", "4", "4"),
        ("fraction", "0.5", "1/2"),
        ("fraction", "3/3 = 1", "1"),
        ("money", "$1.35", "135"),
        ("money", "$ 1.35", "135"),
        ("money", "1.35 USD", "135"),
        ("money", "35c", "35"),
        ("money", "35¢", "35"),
        ("money", "35 cents", "35"),
        ("money", "0.35", "35"),
        ("money", ".35", "35"),
        ("money", "$.5", "50"),
        ("money", "2", "200"),
        ("money", "2 dollars", "200"),
        ("money", "$1,250", "125000"),
        ("money", "35 centavos", "35"),
        ("length", "9 in", "9"),
        ("length", "9in", "9"),
        ("length", "9 in.", "9"),
        ("length", "9 inches", "9"),
        ("length", "2 ft 3 in", "27"),
        ("length", "2 ft, 3 in", "27"),
        ("length", "2 feet and 3 inches", "27"),
        ("length", "2 feet, and 3 inches", "27"),
        ("length", "2'-9\"", "33"),
        ("length", "2-1/2 in", "5/2"),
        ("length", "2 and 1/2 in", "5/2"),
        ("length", "2 ft 2-1/2 in", "53/2"),
        ("length", "2 feet 3 inches", "27"),
        ("length", "2 Ft 3 In", "27"),
        ("length", "2'9\"", "33"),
        ("length", "2' 9\"", "33"),
        ("length", "2\u20199\u201d", "33"),
        ("length", "2\u20329\u2033", "33"),
        ("length", "2'9''", "33"),
        ("length", "2'9", "33"),
        ("length", "1 yd 2 ft 3 in", "63"),
        ("length", "2 1/2 in", "5/2"),
        ("length", "2 ft 2½ in", "53/2"),
        ("length", "1.5 ft", "18"),
        ("length", "45 cm", "45"),
        ("length", "12 mm", "6/5"),
        ("length", "1.5 m", "150"),
        ("length", "1 m 50", "150"),
        ("length", "2 km", "200000"),
        ("length", "2 metres", "200"),
        ("mass", "1 lb 4 oz", "20"),
        ("mass", "1 lb. 4 oz.", "20"),
        ("mass", "3 lbs", "48"),
        ("mass", "3/8 lb", "6"),
        ("mass", "250 g", "250"),
        ("mass", "1 kg 50 g", "1050"),
        ("mass", "1.05 kg", "1050"),
        ("capacity", "8 fl oz", "8"),
        ("capacity", "8 fl. oz.", "8"),
        ("capacity", "8 fluid ounces", "8"),
        ("capacity", "1 cup", "8"),
        ("capacity", "2 1/2 cups", "20"),
        ("capacity", "1 pt", "16"),
        ("capacity", "2 qt", "64"),
        ("capacity", "1 gal 2 qt", "192"),
        ("capacity", "1 L 50 mL", "1050"),
        ("capacity", "1 L 50", "1050"),
        ("capacity", "1 l 50 ml", "1050"),
        ("capacity", "450 mL", "450"),
        ("capacity", "450 millilitres", "450"),
        ("elapsed", "25 min", "25"),
        ("elapsed", "25", "25"),
        ("elapsed", "1 h 35 min", "95"),
        ("elapsed", "1 hr 35 mins", "95"),
        ("elapsed", "1h35", "95"),
        ("elapsed", "1:35", "95"),
        ("elapsed", "1 h and 35 min", "95"),
        ("elapsed", "2 hours", "120"),
        ("elapsed", "90 s", "3/2"),
        ("clock", "10:50", "650"),
        ("clock", "1:50", "110"),
        ("clock", "12:15", "15"),
        ("clock", "10:50 pm", "1370"),
        ("clock", "10:50pm", "1370"),
        ("clock", "10:50 p.m.", "1370"),
        ("clock", "10:50 P.M.", "1370"),
        ("clock", "10:50\u00a0p. m.", "1370"),
        ("clock", "10:50 am", "650"),
        ("clock", "12:15 am", "15"),
        ("clock", "12:15 pm", "735"),
        ("clock", "2 pm", "840"),
        ("clock", "noon", "720"),
        ("clock", "12:00 noon", "720"),
        ("clock", "midnight", "0"),
        ("clock", "12:00 midnight", "0"),
        ("clock", "13:10", "790"),
    ],
)
def test_a_typed_form_is_understood(kind: str, text: str, value: str) -> None:
    assert read(kind, text) == Fraction(value)


@pytest.mark.parametrize(
    ("kind", "text", "value"),
    [
        ("decimal", "3,5", "7/2"),
        ("decimal", ",8", "4/5"),
        ("decimal", "1.325,5", "2651/2"),
        ("whole", "1.325", "1325"),
        ("money", "$1,35", "135"),
        ("length", "1,5 m", "150"),
    ],
)
def test_a_school_with_a_decimal_comma_types_it(kind: str, text: str, value: str) -> None:
    assert read(kind, text, EUROPEAN) == Fraction(value)


@pytest.mark.parametrize(
    ("kind", "text", "value"),
    [
        ("length", "2 pies 9 pulgadas", "33"),
        ("length", "2 pies y 9 pulgadas", "33"),
        ("elapsed", "1 hora y 35 minutos", "95"),
        ("capacity", "2 tazas", "16"),
        ("capacity", "3/4 de taza", "6"),
        ("mass", "3 libras", "48"),
        ("elapsed", "1 hora 35 minutos", "95"),
        ("money", "35 centavos", "35"),
        ("money", "2 dólares", "200"),
        ("clock", "mediodía", "720"),
        ("clock", "2:30 p. m.", "870"),
    ],
)
def test_spanish_unit_names_are_understood(kind: str, text: str, value: str) -> None:
    assert read(kind, text, Style(language="es")) == Fraction(value)


@pytest.mark.parametrize("step", ["-9 in", "\u22129 in", "- 9 in", "-9 inches", '-9"'])
def test_a_step_may_carry_the_sign(step: str) -> None:
    assert Count.parse(kind="length", start="9 ft", step=step, terms=12).step == -9


@pytest.mark.parametrize(
    ("step", "value"),
    [("20 min", 20), ("20", 20), ("-20 min", -20), ("1 h 15 min", 75), ("1 h", 60), ("1:20", 80), ("-1:20", -80)],
)
def test_the_step_of_a_clock_is_a_length_of_time(step: str, value: int) -> None:
    assert Count.parse(kind="clock", start="10:50", step=step, terms=12).step == value


def test_whole_and_exact_numbers_are_taken_in_the_base_unit() -> None:
    assert Count.parse(kind="money", start=35, step=25, terms=4).text(2) == "$0.60"
    assert Count.parse(kind="fraction", start=Fraction(2, 3), step=Fraction(1, 3), terms=4).text(2) == "1"


@pytest.mark.parametrize("text", ["58", "-7", "1,325"])
def test_a_count_reads_a_value_as_it_reads_its_start(text: str) -> None:
    count = Count.parse(kind="whole", start=text, step=6, terms=20)
    assert count.read(text) == count.start
