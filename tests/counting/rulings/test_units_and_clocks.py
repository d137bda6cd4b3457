"""Rulings 12, 13, 14, 25 and 26: base units, clocks, where a value appears, styles, typed forms."""

from fractions import Fraction
from typing import Any

import pytest

from routines.counting import Count, CountError, Style
from routines.errors import say
from routines.words import locate

from .asking import grid, listed, pattern


class TestBaseUnits:
    @pytest.mark.parametrize(
        ("kind", "start", "value", "unit"),
        [
            ("length", "1 ft 3 in", 15, "in"),
            ("length", "2 yd", 72, "in"),
            ("length", "1 m 5 cm", 105, "cm"),
            ("length", "3 km", 300_000, "cm"),
            ("length", "5 mm", Fraction(1, 2), "cm"),
            ("mass", "1 lb 4 oz", 20, "oz"),
            ("mass", "2 kg 50 g", 2050, "g"),
            ("capacity", "1 qt", 32, "fl oz"),
            ("capacity", "2 cup", 16, "fl oz"),
            ("capacity", "1 L 50 mL", 1050, "mL"),
            ("money", "$1.35", 135, "cent"),
            ("elapsed", "1 h 35 min", 95, "min"),
            ("clock", "10:50", 650, "min"),
        ],
    )
    def test_one_for_each_kind_and_system(self, kind: str, start: str, value: Any, unit: str) -> None:
        step = {"money": "$0.05", "clock": "5 min", "elapsed": "5 min"}.get(kind, start)
        count = Count.parse(kind=kind, start=start, step=step, terms=3)
        assert (count.value(1), count.base_unit) == (value, unit)

    @pytest.mark.parametrize(
        ("kind", "start", "step"), [("length", "1 ft", "10 cm"), ("mass", "1 kg", "4 oz"), ("capacity", "1 L", "1 cup")]
    )
    def test_customary_with_metric_is_refused_at_the_step(self, kind: str, start: str, step: str) -> None:
        with pytest.raises(CountError) as refused:
            Count.parse(kind=kind, start=start, step=step, terms=4)
        assert refused.value.field == "step"

    @pytest.mark.parametrize(("kind", "step"), [("length", "1 in"), ("mass", "1 oz"), ("capacity", "1 mL")])
    def test_a_bare_measure_is_asked_for_its_unit(self, kind: str, step: str) -> None:
        with pytest.raises(CountError) as refused:
            Count.parse(kind=kind, start="5", step=step, terms=4)
        assert refused.value.field == "start"
        assert "unit" in say(refused.value)

    def test_a_bare_amount_is_in_dollars_and_a_bare_length_of_time_in_minutes(self) -> None:
        assert Count.parse(kind="money", start="2", step="1", terms=3).value(1) == 200
        assert Count.parse(kind="money", start="0.35", step="0.05", terms=3).value(1) == 35
        assert Count.parse(kind="elapsed", start="35", step="10", terms=3).value(2) == 45

    @pytest.mark.parametrize(("currency", "digits"), [("USD", 2), ("EUR", 2), ("JPY", 0), ("KWD", 3)])
    def test_the_smallest_unit_of_money_is_the_currencys_in_cldr(self, currency: str, digits: int) -> None:
        # Fraction digits: CLDR supplementalData, currencyData (ISO 4217 minor units).
        count = Count.parse(kind="money", start="3", step="1", terms=3, style=Style(currency=currency))
        assert count.value(1) == 3 * 10**digits


class TestClock:
    def test_values_never_wrap_and_texts_do(self) -> None:
        count = Count.parse(kind="clock", start="10:50", step="20 min", terms=12)
        assert [count.value(n) for n in (1, 5, 37)] == [650, 730, 1370]
        assert [count.text(n) for n in (1, 5, 37)] == ["10:50", "12:10", "10:50"]

    def test_on_a_12_hour_clock_12_is_the_hour_0(self) -> None:
        assert Count.parse(kind="clock", start="12:30", step="20 min", terms=3).value(1) % 720 == 30

    def test_only_these_claims_are_made(self) -> None:
        view = grid("10:50", "20 min", 24, 3, "clock")
        families = {"step", "neighbour", "remainder", "landmarks", "digit", "digit-run"}
        for family in ("table", "sums", "opposites", "how-many", "digit-sum"):
            assert listed(view, family, implied=True) == []
        assert families >= {"step", "remainder"}
        assert not [c for c in listed(view, "digit", implied=True) if "place" in c]

    def test_moduli_divide_the_wrap(self) -> None:
        for hours, wrap in ((12, 720), (24, 1440)):
            view = (
                grid("0:07", "90 min", 40, 4, "clock", style={"clock": 24})
                if hours == 24
                else grid("10:50", "20 min", 80, 3, "clock")
            )
            for claim in listed(view, "remainder", implied=True):
                assert wrap % int(claim["modulus"]) == 0
            for claim in listed(view, "landmarks", implied=True):
                assert wrap % int(claim["multiple"]) == 0
            assert all(p["modulus"] for p in listed(view, "remainder"))

    @pytest.mark.parametrize(("step", "hours"), [("12 h", 12), ("24 h", 12), ("24 h", 24), ("-12 h", 12)])
    def test_a_step_of_whole_turns_is_refused(self, step: str, hours: int) -> None:
        with pytest.raises(CountError) as refused:
            Count.parse(kind="clock", start="10:50", step=step, terms=4, style=Style(clock=hours))
        assert refused.value.field == "step"

    def test_12_hours_on_a_24_hour_clock_take_turns(self) -> None:
        count = Count.parse(kind="clock", start="10:50", step="12 h", terms=4, style=Style(clock=24))
        assert [count.text(n) for n in (1, 2, 3)] == ["10:50", "22:50", "10:50"]

    def test_a_clock_goes_back_past_midnight(self) -> None:
        count = Count.parse(kind="clock", start="0:20", step="-30 min", terms=4, style=Style(clock=24))
        assert [count.value(n) for n in (1, 2)] == [20, -10]
        assert count.text(2) == "23:50"


class TestLocate:
    def test_past_the_end_too_with_its_place_in_the_grid_grown_to_hold_it(self) -> None:
        # 1,325 by -50 in rows of 4: 475 is 17 jumps on: the 18th, row 5, column 2.
        here = locate(grid("1,325", "-50", 16, 4), 475)
        assert (here.appears, here.n, here.row, here.column) == (True, 18, 5, 2)
        assert (here.before, here.after) == (525, 425)

    def test_upwards_the_row_is_1(self) -> None:
        here = locate(grid("58", "6", 20, 5, fill="across-up"), 178)
        assert (here.n, here.row, here.column) == (21, 1, 1)
        far = locate(grid("58", "6", 20, 5, fill="across-up"), 58 + 6 * 99)
        assert (far.n, far.row, far.column) == (100, 1, 5)

    def test_not_below_term_1(self) -> None:
        nowhere = locate(grid("58", "6", 20, 5), 52)
        assert (nowhere.appears, nowhere.n, nowhere.before, nowhere.after) == (False, None, None, 58)

    def test_between_two_terms(self) -> None:
        nowhere = locate(grid("1,325", "-50", 16, 4), 500)
        assert (nowhere.appears, nowhere.before, nowhere.after) == (False, 525, 475)
        first = locate(grid("58", "6", 20, 5), 60)
        assert (first.before, first.after) == (58, 64)

    def test_the_first_term_has_nothing_before_it(self) -> None:
        here = locate(grid("58", "6", 20, 5), 58)
        assert (here.n, here.before, here.after) == (1, None, 64)

    def test_routes_are_two_or_three(self) -> None:
        for value in (475, 1025, 575):
            assert 2 <= len(locate(grid("1,325", "-50", 16, 4), value).routes) <= 3

    def test_on_a_clock_the_first_meeting_with_its_turn_and_the_part_of_the_day(self) -> None:
        view = grid("10:50", "20 min", 12, 3, "clock")
        late = locate(view, "9:30")  # 650 + 32 x 20 = 1,290 = 21:30
        assert (late.appears, late.n, late.turn, late.day_part) == (True, 33, 1, "night")
        soon = locate(view, "4:10")  # 650 + 16 x 20 = 970 = 16:10
        assert (soon.n, soon.turn, soon.day_part) == (17, 1, "afternoon")
        assert not locate(view, "4:20").appears

    @pytest.mark.parametrize(
        ("start", "value", "part"),
        [
            ("7:00", "7:20", "morning"),
            ("11:20", "11:40", "morning"),
            ("11:59", "12:19", "afternoon"),
            ("12:10", "12:30", "afternoon"),
            ("1:50", "2:10", "afternoon"),
            ("6:30", "6:50", "evening"),
            ("6:50", "7:10", "evening"),
        ],
    )
    def test_a_bare_12_hour_start_from_7_to_11_59_is_am_else_pm(self, start: str, value: str, part: str) -> None:
        here = locate(grid(start, "20 min", 12, 3, "clock"), value)
        assert (here.n, here.day_part) == (2, part)

    def test_a_start_with_am_or_pm_keeps_its_half(self) -> None:
        assert locate(grid("1:50 am", "20 min", 12, 3, "clock"), "2:10").day_part == "morning"
        assert locate(grid("9:30 pm", "20 min", 12, 3, "clock"), "9:50").day_part == "night"

    def test_a_time_asked_for_with_its_half_of_the_day_is_met_in_that_half(self) -> None:
        view = grid("10:50", "20 min", 12, 3, "clock")
        assert locate(view, "9:30 pm").n == 33
        # 9:30 in the morning is half a day, 36 jumps of 20 min, later.
        morning = locate(view, "9:30 am")
        assert (morning.n, morning.day_part) == (69, "morning")
        # From 1:50 in the afternoon 2:10 a.m. is 12 h 20 min on: 37 jumps.
        assert locate(grid("1:50", "20 min", 12, 3, "clock"), "2:10 am").n == 38

    def test_a_half_of_the_day_that_never_comes(self) -> None:
        # 7:00 a.m., 3:00 p.m., 11:00 p.m., 7:00 a.m. ...: 7:00 comes, but only in the morning.
        view = grid("7:00 am", "8 h", 6, 3, "clock")
        assert locate(view, "7:00").appears
        evening = locate(view, "7:00 pm")
        assert not evening.appears
        assert "7:00 p.m." in evening.reason

    def test_a_reason_never_names_the_other_half_of_the_day(self) -> None:
        # 1:50 a.m., 2:10 a.m. ...: 2:10 p.m. comes 12 h 20 min on.
        here = locate(grid("1:50 am", "20 min", 12, 3, "clock"), "2:10 pm")
        assert (here.n, here.day_part) == (38, "afternoon")
        assert "2:10 a.m." not in here.reason


class TestStyles:
    def test_values_and_claims_never_follow_the_style(self) -> None:
        plain = grid("2/8", "2/8", 8, 4, "fraction")
        simple = grid("2/8", "2/8", 8, 4, "fraction", style={"fractions": "simplified", "shape": "top-heavy"})
        assert [plain.count.value(n) for n in range(1, 9)] == [simple.count.value(n) for n in range(1, 9)]
        assert listed(plain, "remainder") == listed(simple, "remainder")
        assert (plain.count.text(2), simple.count.text(2)) == ("4/8", "1/2")
        assert (plain.count.text(6), simple.count.text(6)) == ("1 4/8", "3/2")

    @pytest.mark.parametrize(
        ("kind", "start", "step", "style", "n", "text"),
        [
            ("fraction", "1/3", "1/3", {"wholes": "number"}, 3, "1"),
            ("fraction", "1/3", "1/3", {"wholes": "fraction"}, 3, "3/3"),
            ("fraction", "1/3", "1/3", {"shape": "top-heavy"}, 4, "4/3"),
            ("fraction", "1/3", "1/3", {"shape": "mixed"}, 4, "1 1/3"),
            ("clock", "10:50", "20 min", {"clock": 24}, 8, "13:10"),
            ("clock", "10:50", "20 min", {"clock": 12}, 8, "1:10"),
            ("length", "1 ft 3 in", "9 in", {"units": "two"}, 2, "2 ft 0 in"),
            ("length", "1 ft 3 in", "9 in", {"units": "one", "small": "in"}, 2, "24 in"),
            ("decimal", "0.5", "0.25", {"places": 2}, 1, "0.50"),
            ("decimal", "0,5", "0,25", {"decimal_mark": ","}, 2, "0,75"),
            ("whole", "1000", "250", {"thousands": " "}, 2, "1 250"),
            ("whole", "1000", "250", {"thousands": ""}, 2, "1250"),
            ("whole", "1000", "250", {"decimal_mark": ",", "thousands": "."}, 2, "1.250"),
        ],
    )
    def test_text_follows_it(self, kind: str, start: str, step: str, style: dict[str, Any], n: int, text: str) -> None:
        written = grid(start, step, 12, 4, kind, style=style).count.text(n)
        assert written in (text, text.replace(" 0 in", ""))

    def test_wholes_may_be_written_both_ways(self) -> None:
        assert grid("1/3", "1/3", 12, 3, "fraction", style={"wholes": "both"}).count.text(3) == "3/3 = 1"

    @pytest.mark.parametrize(
        "style",
        [
            {"decimal_mark": ",", "thousands": ","},
            {"decimal_mark": ".", "thousands": "."},
            {"fractions": "short"},
            {"shape": "tall"},
            {"clock": 13},
            {"units": "three"},
            {"language": "xx"},
            {"currency": "dollars"},
            {"wholes": "none"},
            {"places": -1},
            {"places": 1.5},
        ],
    )
    def test_a_style_that_clashes_or_is_not_on_offer_is_refused(self, style: dict[str, Any]) -> None:
        with pytest.raises(CountError) as refused:
            Style(**style)
        assert refused.value.field == "style"

    def test_too_few_places_would_lose_a_value(self) -> None:
        with pytest.raises(CountError) as refused:
            Count.parse(kind="decimal", start="0.5", step="0.25", terms=4, style=Style(places=1))
        assert refused.value.field == "style"


TYPED = [
    ("whole", "1,325", 1325), ("whole", "-7", -7), ("decimal", ".8", Fraction(4, 5)), ("fraction", "2/3", Fraction(2, 3)),
    ("fraction", "2 1/3", Fraction(7, 3)), ("money", "$1.35", 135), ("money", "35c", 35), ("money", "0.35", 35),
    ("money", "$0.35", 35), ("length", "9 in", 9), ("length", "2 ft 3 in", 27), ("length", "2'9\"", 33),
    ("capacity", "8 fl oz", 8), ("capacity", "1 L 50 mL", 1050), ("capacity", "450 mL", 450), ("mass", "1 lb 4 oz", 20),
    ("capacity", "1 L 50", 1050), ("clock", "10:50", 650), ("clock", "10:50 pm", 1370), ("elapsed", "25 min", 25),
    ("elapsed", "1 h 35 min", 95), ("length", "1 yd", 36), ("length", "5 mm", Fraction(1, 2)), ("length", "5 cm", 5),
    ("length", "5 m", 500), ("length", "1 km", 100_000), ("mass", "3 oz", 3), ("mass", "2 lb", 32), ("mass", "7 g", 7),
    ("mass", "2 kg", 2000), ("capacity", "1 cup", 8), ("capacity", "1 pt", 16), ("capacity", "1 qt", 32),
    ("capacity", "1 gal", 128), ("capacity", "3 mL", 3), ("capacity", "2 L", 2000), ("clock", "10:50 a.m.", 650),
    ("clock", "10:50 p.m.", 1370), ("clock", "noon", 720), ("clock", "midnight", 0),
]  # fmt: skip


@pytest.mark.parametrize(("kind", "text", "value"), TYPED)
def test_typed_forms_are_understood(kind: str, text: str, value: Any) -> None:
    step = {"clock": "5 min", "money": "$0.05", "elapsed": "5 min"}.get(kind, text)
    assert Count.parse(kind=kind, start=text, step=step, terms=2).value(1) == value


@pytest.mark.parametrize(
    ("kind", "start", "step", "value"),
    [
        ("whole", "1,325", "-50", -50),
        ("whole", "58", "+6", 6),
        ("money", "$5.00", "-$0.35", -35),
        ("money", "$5.00", "-35c", -35),
        ("length", "9 ft", "-9 in", -9),
        ("length", "20 ft", "-2'9\"", -33),
        ("clock", "10:50", "-20 min", -20),
        ("fraction", "5", "-2/3", Fraction(-2, 3)),
        ("fraction", "9", "-2 1/3", Fraction(-7, 3)),
        ("elapsed", "3 h", "-25 min", -25),
    ],
)
def test_a_step_may_carry_the_sign(kind: str, start: str, step: str, value: Any) -> None:
    assert Count.parse(kind=kind, start=start, step=step, terms=3).step == value


def test_a_pattern_of_a_measure_speaks_in_the_base_unit() -> None:
    down = pattern(grid("1 ft 3 in", "9 in", 12, 4, "length"), "neighbour", direction="down")
    assert down.claim.as_dict() == {"family": "neighbour", "direction": "down", "difference": "36"}
