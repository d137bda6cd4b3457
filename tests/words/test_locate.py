"""Will it appear: positions, neighbours, reasons and routes."""

import re
from datetime import time
from fractions import Fraction

import pytest
from babel import Locale
from babel.dates import get_period_id
from hypothesis import given
from hypothesis import strategies as st

from routines.counting.audience import Audience
from routines.counting.count import Count
from routines.counting.errors import CountError
from routines.counting.grid import Grid
from routines.counting.locate.routes import terms_moved
from routines.counting.style import Style
from routines.words import locate, probes
from tests.brute_force.locating import first_meeting, first_meeting_on_clock, neighbours, place_by_writing
from tests.saying import saying


def fold(kind: str, start: str, step: str, terms: int, length: int, fill: str = "across", lead: int = 0) -> Grid:
    return Grid(Count.parse(kind=kind, start=start, step=step, terms=terms), length, fill, lead)


@st.composite
def number_grids(draw: st.DrawFn) -> Grid:
    kind = draw(st.sampled_from(["whole", "decimal", "fraction"]))
    bottom = {"whole": 1, "decimal": 100}.get(kind) or draw(st.integers(2, 12))
    step = draw(st.integers(-60, 60).filter(bool))
    start = draw(st.integers(-300, 300))
    terms = draw(st.integers(2, 40))
    length = draw(st.integers(1, terms))
    count = Count.parse(kind=kind, start=Fraction(start, bottom), step=Fraction(step, bottom), terms=terms)
    fill = draw(st.sampled_from(["across", "down", "across-up"]))
    return Grid(count, length, fill, draw(st.integers(0, length - 1)))


@given(number_grids(), st.integers(-400, 900), st.integers(1, 3))
def test_agrees_with_saying_the_count_term_after_term(grid, numerator, bottom):
    count = grid.count
    value = Fraction(numerator, bottom * count.scale)
    found = locate(grid, value)
    n = first_meeting(count.start, count.step, value)
    assert (found.appears, found.n) == (n is not None, n)
    assert (found.before, found.after) == neighbours(count.start, count.step, value)
    if n is not None:
        assert found.column == place_by_writing(n, grid.line_length, grid.fill, grid.lead)[1]


@given(number_grids(), st.integers(1, 90))
def test_every_counted_value_is_found_in_its_place_of_the_grid_grown_to_hold_it(grid, n):
    found = locate(grid, grid.count.value(n))
    assert found.n == n
    grown = max(n, grid.terms)
    row, column = place_by_writing(n, grid.line_length, grid.fill, grid.lead)
    if grid.fill == "across-up":
        # Rows are numbered from the top of the page, so count up from the bottom row.
        row = -(-(grown + grid.lead) // grid.line_length) - (n + grid.lead - 1) // grid.line_length
    assert (found.row, found.column) == (row, column)


@given(number_grids(), st.integers(1, 90))
def test_every_route_leads_to_the_term(grid, n):
    for route in locate(grid, grid.count.value(n)).routes:
        assert 1 <= route.start <= min(n - 1, grid.terms)
        assert route.start + sum(terms_moved(grid, move) for move in route.moves) == n


@given(number_grids(), st.integers(2, 90), st.sampled_from(["en", "es"]))
def test_the_amounts_in_a_route_make_the_difference(grid, n, language):
    count = grid.count
    for route in locate(grid, count.value(n), Audience(3, language)).routes:
        amounts = re.findall(r"\(([^)]+) (more|less|más|menos)\)", route.text)
        made = sum((count.read(size) if word in ("more", "más") else -count.read(size)) for size, word in amounts)
        assert made == count.value(n) - count.value(route.start)
        assert count.text(route.start) in route.text


@given(number_grids(), st.integers(2, 90))
def test_routes_are_two_or_three_different_ways(grid, n):
    routes = locate(grid, grid.count.value(n)).routes
    assert 1 <= len(routes) <= 3
    assert len({route.text for route in routes}) == len(routes)
    if n > grid.line_length + 1 > 2:
        assert len(routes) >= 2


def test_a_whole_number_past_the_end():
    grid = fold("whole", "1325", "-50", 16, 4)
    found = locate(grid, "475")
    assert (found.appears, found.n, found.row, found.column) == (True, 18, 5, 2)


def test_a_whole_number_jumped_over():
    found = locate(fold("whole", "1325", "-50", 16, 4), 500)
    assert (found.appears, found.n, found.before, found.after) == (False, None, 525, 475)
    assert found.routes == ()


def test_a_value_ahead_of_the_first_term_has_nothing_before_it():
    found = locate(fold("whole", "58", "6", 20, 5), 52)
    assert (found.appears, found.before, found.after) == (False, None, 58)


def test_routes_start_at_a_landmark_and_at_the_start():
    found = locate(fold("whole", "58", "6", 20, 5), 124)
    assert [route.text for route in found.routes] == [
        "From 100, the 8th count: 1 row down (30 more) and 1 left (6 less).",
        "From 94, the 7th count: 1 row down (30 more).",
        "From 58: 11 jumps of 6 (66 more).",
    ]


def test_a_row_of_an_upward_grid_is_reached_by_going_up():
    found = locate(fold("fraction", "2/3", "1/3", 12, 3, "across-up"), "5")
    assert (found.n, found.row, found.column) == (14, 1, 2)
    assert "From 4, the 11th count: 1 row up (1 more)." in [route.text for route in found.routes]


def test_a_length_past_the_end_and_one_that_is_jumped_over():
    grid = fold("length", "1 ft 3 in", "9 in", 12, 4)
    assert locate(grid, "14 ft").n == 18
    never = locate(grid, "12 ft")
    assert (never.appears, never.before, never.after) == (False, 141, 150)


class TestClock:
    GRID = ("clock", "10:50", "20 min", 12, 3)

    def test_a_time_past_twelve_is_still_on_the_first_round(self):
        # 16 jumps of 20 min make 5 h 20 min.
        found = locate(fold(*self.GRID), "4:10")
        assert (found.n, found.row, found.column, found.turn, found.day_part) == (17, 6, 2, 1, "afternoon")

    def test_the_hands_have_been_round_once_after_twelve_hours(self):
        # From 12:15 back by 25 min 6:00 comes after 6 h 15 min; from 10:50 on by 25 min 8:00 after 45 h 10 min.
        assert locate(fold("clock", "12:15", "-25 min", 12, 4), "6:00").turn == 1
        late = locate(fold("clock", "10:50 am", "7 h", 12, 4), "10:50 pm")
        assert ((late.n - 1) * 7, late.turn) == (84, 8)

    def test_a_time_that_is_never_shown(self):
        found = locate(fold(*self.GRID), "4:20")
        assert (found.appears, found.n, found.turn) == (False, None, None)
        assert (grid := fold(*self.GRID)).count.text_of(found.before) == "4:10"
        assert grid.count.text_of(found.after) == "4:30"
        assert "The minutes here are only 10, 30 and 50; 4:20 has 20." in found.reason

    def test_a_time_first_met_at_night(self):
        found = locate(fold(*self.GRID), "9:30", Audience(level=4))
        assert (found.n, found.day_part) == (33, "night")
        assert "The first 9:30 comes at night" in found.reason
        assert "it is the 33rd count" in found.reason

    def test_the_small_hours_have_their_name_in_spanish(self):
        early = fold("clock", "1:16 am", "5 min", 12, 6)
        assert "2:41 de la madrugada" in locate(early, "2:41", Audience(4, "es")).reason
        assert "9:30 de la noche" in locate(fold(*self.GRID), "9:30", Audience(4, "es")).reason

    @given(st.integers(0, 1439), st.integers(-900, 900), st.integers(0, 1439), st.sampled_from([12, 24]))
    def test_the_first_meeting_agrees_with_going_round(self, start, step, value, hours):
        wrap = hours * 60
        if step % wrap == 0:
            return
        count = Count.parse(kind="clock", start=start, step=step, terms=6, style=Style(clock=hours))
        found = locate(Grid(count, 3), value)
        n = first_meeting_on_clock(Fraction(start), Fraction(step), Fraction(value), wrap)
        assert (found.appears, found.n) == (n is not None, n)
        if n is not None:
            back_at_the_start = [gone for gone in range(1, (n - 1) * abs(step) + 1) if gone % wrap == 0]
            assert found.turn == len(back_at_the_start) + 1

    @pytest.mark.parametrize("language", ["en", "es"])
    @pytest.mark.parametrize("minute", [1, 260, 359, 360, 719, 721, 1050, 1079, 1080, 1199, 1200, 1259, 1260, 1439])
    def test_the_part_of_the_day_is_said_as_cldr_says_it(self, language, minute):
        # Unicode CLDR, day periods, read through Babel.
        count = Count.parse(kind="clock", start="00:00", step="1 min", terms=12, style=Style(clock=24))
        period = get_period_id(time(*divmod(minute, 60)), locale=language)
        phrase = Locale.parse(language).day_periods["format"]["abbreviated"][period]
        assert f" {phrase}" in locate(Grid(count, 4), minute, Audience(4, language)).reason

    @pytest.mark.parametrize("language", ["en", "es"])
    @pytest.mark.parametrize("level", [0, 2, 4, 6])
    def test_a_time_with_its_half_of_the_day_ends_a_sentence_with_one_stop(self, language, level):
        style = Style(language=language)
        count = Count.parse(kind="clock", start="9:45 am", step="25 min", terms=12, style=style)
        grid, audience = Grid(count, 4), Audience(level, language)
        for value in ("9:45 am", "10:10 am", "10:20 am", "5:40 pm", "10:00 pm"):
            found = locate(grid, value, audience)
            assert not any(".." in text for text in (found.reason, *map(str, found.routes))), value
        assert not any(".." in probe.why for probe in probes(grid, audience))


@pytest.mark.parametrize("value", ["", "many", "1e3", "2..5"])
def test_what_is_no_value_is_refused(value):
    with pytest.raises(CountError) as refused:
        locate(fold("whole", "58", "6", 20, 5), value)
    assert refused.value.field == "value"


@pytest.mark.parametrize("value", [1.5, True, None])
def test_what_is_not_exact_is_refused(value):
    with pytest.raises(CountError) as refused:
        locate(fold("whole", "58", "6", 20, 5), value)
    assert refused.value.field == "value"


def test_a_value_in_units_of_another_system_is_refused_and_not_read_as_the_bare_number():
    # One meter is no 100 inches (NIST Handbook 44, Appendix C: 1 inch = 2.54 centimeters).
    with pytest.raises(CountError, check=saying("customary units")) as refused:
        locate(fold("length", "1 ft 3 in", "9 in", 12, 4), "1 m")
    assert refused.value.field == "value"


class TestReasons:
    LIMITS = {0: (6, 14), 2: (8, 30), 4: (8, 40), 6: (8, 50)}

    @pytest.mark.parametrize(
        ("grid", "value", "part"),
        [
            (("whole", "1325", "-50", 16, 4), 500, "Every count here is odd, and 500 is even."),
            (("whole", "5", "10", 12, 4), 47, "Every count here ends in 5; 47 ends in 7."),
            (("whole", "130", "25", 12, 4), 212, "The endings here are only 0 and 5; 212 ends in 2."),
            (("whole", "7", "9", 12, 4), 20, "Every count here is 7 more than a multiple of 9; 20 is 2 more."),
            (("whole", "7", "7", 12, 4), 30, "Every count here is a multiple of 7; 30 is 2 more than a multiple."),
            (("whole", "65", "-5", 12, 4), 31, "Down to 0, the endings here are only 0 and 5; 31 ends in 1."),
            (("money", "$1.00", "-$0.60", 2, 2), 70, "Down to 0, the cents here are only 0 and 40; $0.70 has 70."),
            (("whole", "10", "-25", 2, 2), 4, "Down to 0, every count here ends in 0; 4 ends in 4."),
            (("money", "$0.10", "$0.25", 12, 4), 140, "The cents here are only 10, 35, 60 and 85; $1.40 has 40."),
            (("fraction", "1/3", "2/3", 12, 4), "8/3", "2 2/3 is a multiple of 2/3; every count here is 1/3 more"),
        ],
    )
    def test_a_skipped_value_lacks_what_every_count_has(self, grid, value, part):
        assert part in locate(fold(*grid), value, Audience(level=4)).reason

    @pytest.mark.parametrize(
        ("kind", "start", "step", "style", "value", "english", "spanish"),
        [
            ("capacity", "250 mL", "250 mL", {"units": "two"}, "1 L 100 mL", "The milliliters here", "los mililitros"),
            ("length", "1 yd 1 ft", "3 yd", {}, "2 yd", "The feet here", "los pies"),
            ("mass", "1 ton 500 lb", "500 lb", {}, "2 ton 100 lb", "The pounds here", "las libras"),
            ("capacity", "1 gal", "2 qt", {}, "1 gal 1 qt", "The quarts here", "los cuartos de galón"),
            ("money", "0.50", "2.50", {"currency": "MXN"}, "3.20", "The centavos here", "los centavos"),
            ("money", "0.50", "2.50", {"currency": "GBP"}, "3.20", "The pence here", "los peniques"),
            ("money", "0.50", "2.50", {"currency": "SEK"}, "3.20", "The small coins here", "las monedas pequeñas"),
        ],
    )
    def test_a_part_is_called_by_its_name(self, kind, start, step, style, value, english, spanish):
        count = Count.parse(kind=kind, start=start, step=step, terms=6, style=Style(**style))
        assert english in locate(Grid(count, 3), value, Audience(4)).reason
        assert f"Aquí, en {spanish}, s" in locate(Grid(count, 3), value, Audience(4, "es")).reason

    def test_a_part_that_is_no_whole_number_is_not_read_by_itself(self):
        reason = locate(fold("length", "1 ft 3 in", "9 in", 12, 4), "3 ft 6 1/2 in", Audience(4)).reason
        assert "The inches" not in reason

    @given(number_grids(), st.integers(-400, 900), st.sampled_from([0, 2, 4, 6]), st.sampled_from(["en", "es"]))
    def test_a_reason_names_the_value_and_is_as_long_as_the_level_bears(self, grid, numerator, level, language):
        value = Fraction(numerator, grid.count.scale)
        reason = locate(grid, value, Audience(level, language)).reason
        assert grid.count.text_of(value) in reason
        assert reason[-1] in ".?"
        assert not re.search(r"[{}]|  ", reason)
        # A value such as "2 1/3" is one number but two words.
        few, many = self.LIMITS[level]
        numbers_apart = len(re.findall(r"\d \d", reason))
        assert few <= len(reason.split()) - numbers_apart <= many + 8 * (language == "es")

    @given(number_grids(), st.integers(2, 60))
    def test_the_jumps_in_a_reason_make_the_total_in_it(self, grid, n):
        count = grid.count
        reason = locate(grid, count.value(n), Audience(level=4)).reason
        jumps, step, total = re.search(r"(\d+) jumps? of (.+?) makes? (.+?)\. So", reason).groups()
        assert int(jumps) * abs(count.step) == abs(count.value(n) - count.start)
        assert (step, total) == (count.difference_text(count.step), count.difference_text(int(jumps) * count.step))
