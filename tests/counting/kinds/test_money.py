"""Money: counted in the smallest unit of a CLDR currency, written as its country writes it."""

import re

import pytest
from babel.numbers import format_currency, get_currency_name, get_currency_precision, list_currencies

from routines.counting import Count, CountError, Style
from routines.counting.kinds.currency import currency_named
from routines.errors import say


def money(start: str, step: str, terms: int = 8, **style: object) -> Count:
    return Count.parse(kind="money", start=start, step=step, terms=terms, style=Style(**style))  # type: ignore[arg-type]


@pytest.mark.parametrize("code", ["USD", "EUR", "GBP", "JPY", "KWD", "MXN", "CAD", "CHF", "SEK", "INR"])
def test_the_base_unit_is_the_currency_s_smallest_in_cldr(code: str) -> None:
    # Unicode CLDR, supplemental currency data (fraction digits), read through Babel.
    assert money("3", "1", currency=code).start == 3 * 10 ** get_currency_precision(code)


@pytest.mark.parametrize(
    ("code", "language", "mark", "locale"),
    [
        ("USD", "en", ".", "en_US"),
        ("USD", "es", ".", "es_US"),
        ("GBP", "en", ".", "en_GB"),
        ("MXN", "es", ".", "es_MX"),
        ("CAD", "en", ".", "en_CA"),
        ("EUR", "es", ",", "es_ES"),
        ("EUR", "en", ".", "en_IE"),
        ("INR", "en", ".", "en_IN"),
    ],
)
def test_an_amount_is_written_as_cldr_does_at_home(code: str, language: str, mark: str, locale: str) -> None:
    count = money("735.5" if mark == "." else "735,5", "1", currency=code, language=language, decimal_mark=mark)
    assert count.text(1) == format_currency(735.5, code, locale=locale).replace("\u00a0", " ")


@pytest.mark.parametrize(
    ("start", "step", "written"),
    [
        ("$0.35", "$0.25", ["$0.35", "$0.60", "$0.85", "$1.10"]),
        ("35c", "25c", ["35¢", "60¢", "85¢", "110¢"]),
        ("$0.10", "25¢", ["$0.10", "$0.35", "$0.60", "$0.85"]),
        ("$1.00", "-$0.25", ["$1.00", "$0.75", "$0.50", "$0.25"]),
        ("$999", "$1", ["$999.00", "$1,000.00"]),
    ],
)
def test_dollars_and_cents_are_written_as_typed(start: str, step: str, written: list[str]) -> None:
    count = money(start, step, 4)
    assert [count.text(n) for n in range(1, len(written) + 1)] == written


def test_units_one_counts_in_cents_and_two_in_dollars() -> None:
    assert money("$0.35", "$0.25", units="one").text(4) == "110¢"
    assert money("35c", "25c", units="two").text(4) == "$1.10"


def test_dollars_and_cents_are_parts() -> None:
    count = money("$0.35", "$0.25")
    assert count.part_names() == ("dollars", "cents")
    assert [count.parts(n) for n in (1, 4)] == [{"dollars": 0, "cents": 35}, {"dollars": 1, "cents": 10}]
    pieces = count.pieces(4)
    assert [piece.text for piece in pieces] == ["$", "1", ".", "10"]
    assert count.span(4, part="cents") == (3, 0, 2)
    assert [count.span(4, place=place) for place in range(4)] == [(3, 1, 2), (3, 0, 1), (1, 0, 1), None]


@pytest.mark.parametrize(
    ("start", "style", "english", "spanish"),
    [
        ("0.35", {}, "thirty-five cents", "treinta y cinco centavos"),
        ("0.01", {}, "one cent", "un centavo"),
        ("1", {}, "one dollar", "un dólar"),
        ("1.35", {}, "one dollar and thirty-five cents", "un dólar con treinta y cinco centavos"),
        ("21", {}, "twenty-one dollars", "veintiún dólares"),
        ("1.35", {"saying": "counted"}, "one hundred thirty-five cents", "ciento treinta y cinco centavos"),
        ("21.21", {"currency": "EUR"}, "twenty-one euros and twenty-one cents", "veintiún euros con veintiún céntimos"),
        ("21.01", {"currency": "GBP"}, "twenty-one pounds and one penny", "veintiuna libras con un penique"),
        ("35", {"currency": "MXN"}, "thirty-five pesos", "treinta y cinco pesos"),
    ],
)
def test_money_is_said(start: str, style: dict[str, object], english: str, spanish: str) -> None:
    count = money(start, "1", **style)
    assert count.words(1) == english
    assert count.words(1, "es") == spanish


@pytest.mark.parametrize(
    ("code", "start", "english", "spanish"),
    [
        # Names from Unicode CLDR; "un millón de" from RAE, Diccionario panhispánico de dudas, "millón".
        ("USD", "1,000,000", "one million dollars", "un millón de dólares"),
        ("USD", "1,000,001", "one million one dollars", "un millón un dólares"),
        ("INR", "1", "one Indian rupee", "una rupia india"),
        ("INR", "21", "twenty-one Indian rupees", "veintiuna rupias indias"),
        ("INR", "2,000,000", "two million Indian rupees", "dos millones de rupias indias"),
        ("EGP", "1", "one Egyptian pound", "una libra egipcia"),
        ("SEK", "201", "two hundred one Swedish kronor", "doscientas una coronas suecas"),
        ("RUB", "21", "twenty-one Russian rubles", "veintiún rublos rusos"),
        # No name for the small coin: its parts are said as parts of the main unit.
        ("PEN", "0.50", "fifty hundredths of one Peruvian sol", "cincuenta centésimos de sol peruano"),
        ("PEN", "3.50", "three and fifty hundredths Peruvian soles", "tres soles peruanos y cincuenta centésimos"),
        ("SEK", "0.01", "one hundredth of one Swedish krona", "un centésimo de corona sueca"),
    ],
)
def test_every_currency_is_said_in_its_gender(code: str, start: str, english: str, spanish: str) -> None:
    count = money(start, "1", 2, currency=code)
    assert (count.words(1), count.words(1, "es")) == (english, spanish)


@pytest.mark.parametrize("code", sorted(list_currencies("es")))
def test_a_spanish_currency_has_the_gender_its_adjective_shows(code: str) -> None:
    # Unicode CLDR, Spanish currency names: rupia indonesia, libra egipcia, naira nigeriano.
    name = get_currency_name(code, 1, "es")
    words = re.sub(r" \(.*\)| de .*", "", name).split()
    shown = re.search(r"(?:an|in|ec|eñ|ad|ic|eg|ol|iac|ran)([oa])$", words[-1]) if len(words) > 1 else None
    if shown:
        gender = {"o": "masculine", "a": "feminine"}[shown[1]]
        assert currency_named(code, "es").main.gender == gender, name


@pytest.mark.parametrize(
    ("code", "typed", "smallest"),
    [
        ("USD", "2 dollars 35 cents", 235),
        ("USD", "2 dollars and 35 cents", 235),
        ("USD", "$1 35c", 135),
        ("USD", "$1 35¢", 135),
        ("USD", "1 325 cents", 1325),
        ("USD", "2 dólares con 35 centavos", 235),
        ("USD", "US$5", 500),
        ("MXN", "MX$5", 500),
        ("CAD", "CA$5", 500),
        ("GBP", "£1 50p", 150),
        ("MXN", "2 pesos 50 centavos", 250),
        ("JPY", "\uffe5100", 100),
        ("KWD", "1.25", 1250),
    ],
)
def test_dollars_and_cents_may_be_typed_each_with_its_name(code: str, typed: str, smallest: int) -> None:
    assert money(typed, "1", currency=code).start == smallest


@pytest.mark.parametrize(
    ("code", "typed", "sentence"),
    [
        ("USD", "€1.20", "Write amounts in dollars ($): “€1.20” is in another currency."),
        ("EUR", "$1.20", "Write amounts in euros (€): “$1.20” is in another currency."),
        ("JPY", "1.5", "Write Japanese yen without decimals."),
        ("USD", "1.355", "Write dollars with at most 2 decimal places."),
        ("USD", "1/4", "Write parts of dollars as decimals: “1/4” is a fraction."),
        ("USD", "0.65c", "Write whole cents, or the amount in dollars: “0.65c” mixes both."),
        ("USD", "0.65¢", "Write whole cents, or the amount in dollars: “0.65¢” mixes both."),
        ("USD", "$1 325c", "Write whole dollars and less than one more: “$1” and “325c” do not go together."),
        ("USD", "$1.50 35c", "Write whole dollars and less than one more: “$1.50” and “35c” do not go together."),
        ("USD", "--7", "Type a number, such as 7 or 0.5: “--7” cannot be read as one."),
    ],
)
def test_a_refused_amount_says_what_to_write(code: str, typed: str, sentence: str) -> None:
    for language in ("en", "es"):
        with pytest.raises(CountError) as refused:
            money(typed, "1", currency=code, language=language)
        assert say(refused.value) == sentence


@pytest.mark.parametrize(
    "text", ["$0.355", "$1.2.3", "35.5c", "$", "1 dollar 35", "£1", "$1,35", "0.35c", "35 pence", "35p", "2 euros"]
)
def test_what_is_no_amount_is_refused(text: str) -> None:
    with pytest.raises(CountError) as refused:
        money(text, "1")
    assert refused.value.field == "start"


@pytest.mark.parametrize(
    ("code", "text", "smallest"),
    [("GBP", "35p", 35), ("GBP", "35 pence", 35), ("GBP", "£2", 200), ("EUR", "35 c", 35), ("EUR", "2 euros", 200)],
)
def test_a_currency_s_own_names_are_understood(code: str, text: str, smallest: int) -> None:
    assert money(text, text, currency=code).start == smallest


@pytest.mark.parametrize("code", ["ZZZ", "usd", "US", "", 840])
def test_what_is_no_currency_is_refused(code: object) -> None:
    with pytest.raises(CountError) as refused:
        money("1", "1", currency=code)
    assert refused.value.field == "style"
