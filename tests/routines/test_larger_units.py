"""Amounts past a larger unit are said in both, wherever a teacher reads them."""

import re
from fractions import Fraction
from uuid import uuid4

import pytest
from django.urls import reverse

from routines.counting import Audience, Count, Grid
from routines.counting.style import Style
from routines.counting.written_units import in_both_units, in_larger_unit
from routines.drawing import Entry, draw_grid
from routines.lessons.shown_count import lectern_count, shown_of
from routines.models.plan_document import CountSection, ExpectedAnswer, Fold, Stop
from routines.plans.suggestions.answers import suggest_answers
from routines.plans.suggestions.appearing import look_for
from routines.words import suggest_stops
from tests.routines.lessons.making import open_lesson
from tests.routines.making import SEVENS, make_routine
from tests.routines.plan_sheets import sheet, stop_fields

OUNCES = SEVENS.changed(
    count=CountSection("mass", "8 oz", "8 oz", 12),
    fold=Fold(4),
    targets=(),
    stops=(Stop(4, "What do four weigh?", "2 lb."), Stop(1, "And one?")),
    expected=(ExpectedAnswer("22 oz", "How much is in one?", "slip", 3),),
)

# NIST Handbook 44, Appendix C: 12 in = 1 ft, 16 oz = 1 lb, 8 fl oz = 1 cup; SI: 100 cm = 1 m, 1000 g = 1 kg, 1000 mL = 1 L.
AMOUNTS = [
    ("mass", "8 oz", 4, "32 oz (2 lb)"),
    ("mass", "12 oz", 3, "36 oz (2 lb 4 oz)"),
    ("mass", "250 g", 5, "1250 g (1 kg 250 g)"),
    ("length", "9 in", 2, "18 in (1 ft 6 in)"),
    ("length", "75 cm", 4, "300 cm (3 m)"),
    ("capacity", "8 fl oz", 1, "8 fl oz (1 cup)"),
    ("capacity", "12 fl oz", 8, "96 fl oz (12 cups)"),
    ("capacity", "750 mL", 3, "2250 mL (2 L 250 mL)"),
    ("elapsed", "35 min", 3, "105 min (1 h 45 min)"),
    ("length", "2 in", 5, "10 in"),
    ("whole", "12", 4, "48"),
]


@pytest.mark.parametrize(("kind", "step", "n", "said"), AMOUNTS, ids=[row[3] for row in AMOUNTS])
def test_an_amount_is_said_in_both(kind, step, n, said):
    style = Style(units="one") if kind not in ("whole",) else Style()
    count = Count.parse(kind=kind, start=step, step=step, terms=12, style=style)
    assert in_both_units(count, count.value(n)).replace(",", "") == said


def test_what_is_written_in_two_units_is_not_said_again():
    count = Count.parse(kind="mass", start="1 lb 4 oz", step="1 lb 4 oz", terms=12)
    assert not any(in_larger_unit(count, count.value(n)) for n in range(1, 13))
    assert in_larger_unit(Count.parse(kind="clock", start="7:10", step="40 min", terms=9), Fraction(430)) == ""


def test_will_it_appear_says_both():
    count = Count.parse(kind="mass", start="8 oz", step="8 oz", terms=12)
    found = look_for(Grid(count, 4, "across"), "60 oz", Audience(4))
    assert (found.told, found.before, found.after) == ("60 oz (3 lb 12 oz)", "56 oz (3 lb 8 oz)", "64 oz (4 lb)")


def test_the_routine_page_says_both_at_its_stops(owner, visit):
    page = visit(owner).get(reverse("routine", args=[make_routine(owner, plan=OUNCES).pk])).text
    assert "After 32 oz (2 lb), the 4th" in page
    assert "After 8 oz, the 1st" in page


def pounds(language: str = "en") -> Grid:
    return Grid(Count.parse(kind="mass", start="8 oz", step="8 oz", terms=12, style=Style(language=language)), 4)


def test_the_grid_says_both_where_it_can_be_read():
    drawn = draw_grid(pounds(), size="plan", landmarks=[2, 4, 5])
    assert [words for words in ("1 lb", "2 lb", "2 lb 8 oz") if f">{words}<" in drawn] == ["1 lb", "2 lb"]
    assert "24 oz (1 lb 8 oz), 32 oz (2 lb);" in drawn  # for those who hear it
    assert ">2 lb<" not in draw_grid(pounds(), size="phone", landmarks=[2, 4])
    # On a board that the class fills, the pounds are for the class to find.
    assert ">2 lb<" not in draw_grid(pounds(), size="plan", landmarks=[2, 4], entries={4: Entry()})


def test_a_cell_says_both_to_who_hears_it():
    drawn = draw_grid(pounds(), size="plan", interactive=True)
    assert 'aria-label="32 oz (2 lb) (1, 4)"' in drawn
    assert 'aria-label="8 oz (1, 1)"' in drawn


def test_the_plan_page_says_both_at_its_stops_and_slips(owner, visit):
    page = visit(owner).get(reverse("plan_edit", args=[make_routine(owner, plan=OUNCES).pk])).text
    assert "32 oz (2 lb)</span>" in page
    assert "<b>24 oz (1 lb 8 oz)</b>" in page


def test_while_a_stop_is_typed_its_place_follows(owner, visit):
    client, address = visit(owner), reverse("plan_part", kwargs={"key": uuid4(), "name": "timeline"})
    data = sheet(kind="mass", start="8 oz", step="8 oz", terms="12", line_length="4") | stop_fields(1, 6, "Which?")
    answer = client.post(address, data, headers={"HX-Request": "true"}).text
    assert 'id="stops-1-said" hx-swap-oob="true">48 oz (3 lb)<' in answer
    assert "stops-1-said" not in client.post(address, data).text


@pytest.mark.parametrize("language", ["en", "es"])
def test_suggestions_say_both_to_the_teacher_alone(language):
    grid, reader = pounds(language), Audience(3, language)
    stops = suggest_stops(grid, audience=reader)
    told = " ".join(text for stop in stops for text in (stop.answer, stop.why))
    assert "64 oz (4 lb)" in told
    assert "(4 lb)" not in " ".join(stop.question for stop in stops)
    answers = suggest_answers(grid, reader)
    assert not any("(" in answer.words for answer in answers)


def test_suggested_slips_say_both(owner, visit):
    data = sheet(kind="mass", start="8 oz", step="8 oz", terms="12", line_length="4")
    address = reverse("plan_part", kwargs={"key": uuid4(), "name": "says"})
    page = visit(owner).post(address, data, headers={"HX-Request": "true"}).text
    assert re.search(r"<s>[^<]*</s> <b>(16 oz \(1 lb\)|\d+ oz \(\d+ lb[^)]*\))</b>", page)


def test_the_lectern_says_both_at_its_stops(owner):
    lesson = open_lesson(owner, routine=make_routine(owner, plan=OUNCES))
    assert [stop["said"] for stop in lectern_count(lesson, shown_of(lesson))["stops"]] == ["32 oz (2 lb)", "8 oz"]
