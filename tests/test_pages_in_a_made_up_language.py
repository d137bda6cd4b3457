"""In a made-up language, what a template of each room says itself is translated: its headings, buttons and heads of tables.

The rest of a page is held by its template's source (test_template_words.py), or said by Python.
"""

from html.parser import HTMLParser

import pytest
from django.urls import reverse

from accounts.models import User
from grade_bands.models import ClassGroup
from tests.pseudo_locale import speak_in_brackets, untranslated
from tests.routines.making import make_lesson, make_routine

SAID_BY_TEMPLATES = {"title", "h1", "h2", "h3", "th", "button", "summary", "caption"}
DRAWN = {"svg", "script", "style"}


class _Said(HTMLParser):
    """The whole text of each element that a template writes itself."""

    def __init__(self, page: str) -> None:
        super().__init__()
        self.texts: list[str] = []
        self._open: list[str] = []
        self._drawn = 0
        self.feed(page)

    def handle_starttag(self, tag, attributes) -> None:
        self._drawn += tag in DRAWN
        if tag in SAID_BY_TEMPLATES and not self._drawn:
            self._open.append(tag)
            self.texts.append("")

    def handle_endtag(self, tag) -> None:
        self._drawn -= tag in DRAWN
        if self._open and tag == self._open[-1]:
            self._open.pop()

    def handle_data(self, data) -> None:
        if self._open and not self._drawn:
            self.texts[-1] += f" {data}"


def left_bare(page: str, peoples: set[str]) -> list[str]:
    return [left for text in _Said(page).texts if (left := untranslated(" ".join(text.split()), peoples))]


PAGES = [
    "bank", "bank, nothing found", "a count", "my plans", "plan", "history", "print", "booklet", "coverage",
    "coverage of one area", "files", "removing words", "own account", "nothing there", "school", "people", "classes", "grades",
]  # fmt: skip


@pytest.fixture
def pages(owner, teammate, coach, grade_two) -> dict[str, str]:
    routine = make_routine(owner)
    make_lesson(routine, owner, sharing="team")
    routine.notes.create(by=teammate, text="worked")
    return {
        "bank": "/",
        "bank, nothing found": "/?q=zigzag",
        "a count": reverse("routine", args=[routine.pk]),
        "my plans": reverse("my_plans"),
        "plan": reverse("plan_edit", args=[routine.pk]),
        "history": reverse("plan_history", args=[routine.pk]),
        "print": reverse("print", args=[routine.pk]),
        "booklet": reverse("booklet_choose"),
        "coverage": reverse("coverage"),
        "coverage of one area": reverse("coverage_cell", args=[grade_two.pk, "whole"]),
        "files": reverse("import"),
        "removing words": reverse("erase_words"),
        "own account": reverse("accounts:own_account"),
        "nothing there": "/nowhere/",
        "school": reverse("accounts:school"),
        "people": reverse("accounts:people"),
        "classes": reverse("grade_bands:classes"),
        "grades": reverse("grade_bands:grades"),
    }


@pytest.mark.parametrize("name", PAGES)
def test_what_a_template_says_is_translated(name, owner, administrator, visit, school, pages, monkeypatch):
    person = administrator if name in ("school", "people", "classes", "grades") else owner
    speak_in_brackets(monkeypatch)
    answer = visit(person).get(pages[name])
    assert answer.status_code == (404 if name == "nothing there" else 200)
    assert "⟦" in answer.text
    people = {*User.objects.values_list("display_name", flat=True), *ClassGroup.objects.values_list("name", flat=True)}
    assert left_bare(answer.text, {"Sevens from four", school.name, *people}) == []


@pytest.mark.parametrize("name", ["sign_in", "set_up"])
def test_so_are_the_pages_before_there_is_anyone(name, db, client, request, monkeypatch):
    if name == "sign_in":
        request.getfixturevalue("school")
    speak_in_brackets(monkeypatch)
    answer = client.get(reverse({"sign_in": "accounts:sign_in", "set_up": "grade_bands:set_up"}[name]))
    assert answer.status_code == 200
    assert left_bare(answer.text, set()) == []


def test_a_heading_that_is_not_translated_is_found():
    page = "<title>⟦Bank⟧ · Countfold</title><h2>Empty <b>pages</b></h2><th>⟦Class⟧</th><svg><title>12</title></svg><p>text</p>"
    assert left_bare(page, set()) == ["Empty pages"]
