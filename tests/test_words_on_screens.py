"""Words on screens: plain headings, one word for one act, one way to write a day, names for what has a name."""

import re
from datetime import date, datetime
from pathlib import Path

import pytest
from django.conf import settings
from django.urls import reverse
from django.utils import timezone

from accounts.models import School
from accounts.templatetags.dates import day, full_day, moment, time_of_day, weekday
from tests.factories import ClassGroupFactory
from tests.routines.making import make_lesson, make_routine

TEMPLATES = [path for path in Path(settings.BASE_DIR, "templates").rglob("*.html") if "sheets" not in path.parts]
ALL_BUT_PLANS = [path for path in TEMPLATES if path.parent.name != "plans"]

# Headings and buttons that had to be read twice, and second words for an act that has one.
NOT_PLAIN = (
    "What have we folded so far?",
    "Empty pages",
    "a count would sit well here",
    "Walk in as",
    "Take away",
    "take away",
    "Leave it as it was",
    "Leave everything as it is",
    "Throw away",
    "throw away",
    "Delete",
    "Nothing taught from here",
    "Step through",
    "Said otherwise",
    "Writing it together",
    "Bring in counts",
    "Look into the file",
    "Stop looking",
    "0 for kindergarten",
)
A_DAY = re.compile(
    r"\b(?:January|February|March|April|May|June|July|August|September|October|November|December) \d{1,2}, \d{4}\b"
)
ANOTHER_WAY = re.compile(
    r"\b\d{1,2} (?:Jan|Feb|Mar|Apr|May|Jun|Jul|Aug|Sep|Oct|Nov|Dec)[a-z]*\b(?! \d{1,2}, \d{4})"  # 29 November, 29 Nov 2026
    r"|\b(?:Jan|Feb|Mar|Apr|Jun|Jul|Aug|Sep|Oct|Nov|Dec)\.? \d{1,2}\b"  # Nov 29
    r"|\b\d{1,2}/\d{1,2}/\d{4}\b"
)


@pytest.mark.parametrize("path", ALL_BUT_PLANS, ids=lambda path: path.name)
def test_no_screen_speaks_in_riddles_or_has_two_words_for_one_act(path):
    text = path.read_text(encoding="utf-8")
    assert not [words for words in NOT_PLAIN if words in text]


@pytest.mark.parametrize("path", TEMPLATES, ids=lambda path: path.name)
def test_every_day_and_time_is_written_by_the_one_filter(path):
    for_machines = '|date:"Y-m-d"'  # in addresses and fields
    assert not re.search(r"\|\s*(date|time)\b", path.read_text(encoding="utf-8").replace(for_machines, ""))


@pytest.mark.parametrize("path", ALL_BUT_PLANS, ids=lambda path: path.name)
def test_no_button_is_words_alone(path):
    if path.name == "board.html":
        return  # in the board's head, beside the picture, buttons are quiet words
    assert not re.findall(r"<(?:button|summary)[^>]*text-button", path.read_text(encoding="utf-8"))


def test_a_day_is_written_as_the_language_does():
    taught = date(2026, 11, 5)
    assert day(taught) == "November 5, 2026"
    assert day(taught, "es") == "5 de noviembre de 2026"
    assert day(taught, "en-gb") == "5 November 2026"
    assert (full_day(taught), weekday(taught)) == ("Thursday, November 5, 2026", "Thursday")
    assert day(None) == full_day(None) == weekday(None) == moment(None) == time_of_day(None) == ""


def test_a_time_is_written_as_the_schools_clock_shows_it():
    at = datetime(2026, 11, 5, 14, 5)
    assert moment(at, School(clock=12)) == "November 5, 2026, 2:05\u00a0PM"
    assert moment(at, School(clock=24)) == "November 5, 2026, 14:05"
    noon_there = timezone.make_aware(datetime(2026, 11, 5, 12, 0))
    assert time_of_day(noon_there, School(clock=24)) == "12:00"


def test_pages_with_days_write_them_alike(owner, administrator, school, visit, words_of):
    routine = make_routine(owner)
    lesson = make_lesson(routine, owner)
    pages = {
        owner: [
            reverse("lessons"),
            reverse("lesson", args=[lesson.key]),
            reverse("routine", args=[routine.pk]),
            reverse("lesson_replay", args=[lesson.key]),
            reverse("print", args=[routine.pk]),
            reverse("plan_history", args=[routine.pk]),
            reverse("lesson_delete", args=[lesson.key]),
            reverse("coverage"),
            reverse("my_plans"),
            reverse("home"),
            reverse("week"),
            reverse("suggestions"),
        ],
        administrator: [reverse("grade_bands:classes"), reverse("coverage")],
    }
    dated = 0
    for person, addresses in pages.items():
        for address in addresses:
            text = words_of(visit(person).get(address))
            assert not ANOTHER_WAY.search(text), (address, ANOTHER_WAY.search(text))
            dated += bool(A_DAY.search(text))
    assert dated >= 6


def test_classes_name_their_languages(administrator, visit, words_of):
    ClassGroupFactory(name="1 Arroyo", languages=["en", "es"])
    text = words_of(visit(administrator).get(reverse("grade_bands:classes")))
    assert "English, Spanish" in text
    assert "en, es" not in text


def test_a_grade_speaks_as_for_a_grade_by_its_name(administrator, grade_two, visit, words_of):
    page = visit(administrator).get(reverse("grade_bands:edit_grade", args=[grade_two.pk]))
    assert '<option value="2" selected>Grade 2</option>' in page.text
    assert "Kindergarten" in words_of(page)


@pytest.fixture
def words_of():
    def of(response) -> str:
        assert response.status_code == 200
        return " ".join(
            re.sub(r"<[^>]+>", " ", re.sub(r"<script.*?</script>", "", response.text, flags=re.DOTALL)).split()
        )

    return of
