"""In a made-up language, everything that a page says is translated, whether its template or Python says it.

What stays is of people, and of the engine, which speaks the language of the class.
"""

import re
from html.parser import HTMLParser
from itertools import chain
from zoneinfo import available_timezones

import pytest
from django.urls import reverse

from accounts.models import School, User
from grade_bands.models import ClassGroup, Standard
from grade_bands.standards import COMMON_CORE, COMMON_CORE_NOTICE
from routines.drawing.pictures import pictures_for
from routines.models.shown_ideas import ideas_of
from routines.models.shown_plan import ShownPlan
from routines.words import title_of
from tests.bare_words import SAID_IN
from tests.factories import StandardFactory
from tests.pseudo_locale import CLOSE, OPEN, speak_in_brackets, untranslated
from tests.routines.making import SEVENS, make_lesson, make_routine

ENDS_A_TEXT = {
    "a", "button", "caption", "dd", "div", "dt", "h1", "h2", "h3", "label", "legend", "li", "option", "p", "section", "summary",
    "td", "th", "title",
}  # fmt: skip
DRAWN = {"svg", "script", "style"}


class _Said(HTMLParser):
    """The texts of a page, each whole, with the attributes that are read aloud."""

    def __init__(self, page: str) -> None:
        super().__init__()
        self.texts: list[str] = [""]
        self._drawn = 0
        self.feed(page)

    def handle_starttag(self, tag, attributes) -> None:
        self._drawn += tag in DRAWN
        if not self._drawn:
            said = [value for name, value in attributes if name in SAID_IN and value]
            self.texts[-1:-1] = said
        self._end(tag)

    def handle_endtag(self, tag) -> None:
        self._drawn -= tag in DRAWN
        self._end(tag)

    def _end(self, tag) -> None:
        # A sentence may hold a link: it is whole where all its brackets are closed again.
        if tag in ENDS_A_TEXT and self.texts[-1].count(OPEN) == self.texts[-1].count(CLOSE):
            self.texts.append("")

    def handle_data(self, data) -> None:
        if not self._drawn:
            self.texts[-1] += data


def left_bare(page: str, peoples: set[str]) -> set[str]:
    said = {" ".join(text.split()) for text in _Said(page).texts}
    return {left for text in said if (left := untranslated(text, peoples))}


PAGES = [
    "home", "week", "suggestions", "suggesting", "bank", "bank, nothing found", "a count", "my plans", "plan",
    "history", "print", "booklet", "coverage", "coverage of one area",
    "coverage by standard", "coverage of one standard", "files", "removing words", "own account",
    "nothing there", "school", "people", "classes", "grades",
]  # fmt: skip


@pytest.fixture
def pages(owner, teammate, coach, grade_two) -> dict[str, str]:
    standard = StandardFactory(code="LS.2", grade=grade_two)
    routine = make_routine(owner, standards=("LS.2",))
    make_lesson(routine, owner, sharing="team")
    routine.notes.create(by=teammate, text="worked")
    return {
        "home": reverse("home"),
        "week": reverse("week"),
        "suggestions": reverse("suggestions"),
        "suggesting": reverse("suggest", args=[routine.pk]),
        "bank": reverse("bank"),
        "bank, nothing found": "/bank/?q=zigzag",
        "a count": reverse("routine", args=[routine.pk]),
        "my plans": reverse("my_plans"),
        "plan": reverse("plan_edit", args=[routine.pk]),
        "history": reverse("plan_history", args=[routine.pk]),
        "print": reverse("print", args=[routine.pk]),
        "booklet": reverse("booklet_choose"),
        "coverage": reverse("coverage"),
        "coverage of one area": reverse("coverage_cell", args=[grade_two.pk, "whole"]),
        "coverage by standard": reverse("coverage_standards"),
        "coverage of one standard": reverse("coverage_standard", args=[grade_two.pk, standard.pk]),
        "files": reverse("import"),
        "removing words": reverse("erase_words"),
        "own account": reverse("accounts:own_account"),
        "nothing there": "/nowhere/",
        "school": reverse("accounts:school"),
        "people": reverse("accounts:people"),
        "classes": reverse("grade_bands:classes"),
        "grades": reverse("grade_bands:grades"),
    }


def said_by_people() -> set[str]:
    people = User.objects.values_list("display_name", "sign_in_name")
    standards = Standard.objects.values_list("code", "framework", "summary")
    return {
        *chain(*people),
        *chain(*standards),
        *ClassGroup.objects.values_list("name", flat=True),
        "worked",
        School.objects.get().name,
    }


def said_by_the_engine() -> set[str]:
    """Of the count that these pages show, as its class hears it."""
    shown = ShownPlan(SEVENS, 2)
    found = [one.pattern for one in (*shown.patterns, *ideas_of(shown.grid, shown.audience))]
    patterns = {words for pattern in found for words in (pattern.statement, pattern.because)}
    stops = {words for stop in SEVENS.stops for words in (stop.question, *stop.routes)}
    pictures = {name for _, name in pictures_for(shown.grid.count)}
    title = title_of(shown.grid, [one.pattern for one in shown.patterns], "en")
    return {SEVENS.title, title, *(words.rstrip(".") for words in patterns), *stops, *pictures}


# Days are written by CLDR, which has no made-up languages.
A_DAY = re.compile(r"(?:, )?[A-Z][a-z]+ \d{1,2}, \d{4},?")
# Names of places on the clock; a published notice; a code of a language.
IN_EVERY_LANGUAGE = {*(zone.replace("_", " ") for zone in available_timezones()), COMMON_CORE_NOTICE, COMMON_CORE}


@pytest.mark.parametrize("name", PAGES)
def test_all_that_a_page_says_is_translated(name, owner, administrator, visit, school, pages, monkeypatch):
    person = administrator if name in ("school", "people", "classes", "grades") else owner
    speak_in_brackets(monkeypatch)
    answer = visit(person).get(pages[name])
    assert answer.status_code == (404 if name == "nothing there" else 200)
    assert "⟦" in answer.text
    others = said_by_people() | said_by_the_engine() | IN_EVERY_LANGUAGE
    assert left_bare(A_DAY.sub("", answer.text), others) - {"en"} == set()


@pytest.mark.parametrize("name", ["sign_in", "set_up"])
def test_so_is_all_before_there_is_anyone(name, db, client, request, monkeypatch):
    if name == "sign_in":
        request.getfixturevalue("school")
    speak_in_brackets(monkeypatch)
    answer = client.get(reverse({"sign_in": "accounts:sign_in", "set_up": "grade_bands:set_up"}[name]))
    assert answer.status_code == 200
    assert left_bare(answer.text, {"Larkfield School"} | IN_EVERY_LANGUAGE) == set()


def test_words_that_are_not_translated_are_found():
    page = "<title>⟦Bank⟧ · Countfold</title><p>⟦Leads <a>⟦home⟧</a>.⟧</p><h2>Empty <b>pages</b></h2><input placeholder='name'>"
    assert left_bare(page + "<svg><title>drawn</title></svg>", set()) == {"Empty pages", "name"}
