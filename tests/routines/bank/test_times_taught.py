"""How often a count was taught: on cards, in filters, in the order, behind a cell. All tell the same, and no more.

A teacher is told of her own grades, a coach of all; of lessons elsewhere the others are told only where two classes or
more had them, so that no number points at one class. What may not be told reads like what never happened.
"""

import re
from datetime import date

import pytest
from django.urls import reverse

from routines.bank.views import bank
from routines.coverage.queries import coverage
from routines.models import Routine
from routines.models.plan_document import CountSection, Fold
from tests.factories import ClassGroupFactory, SchoolYearFactory, UserFactory
from tests.routines.bank.walking import walked
from tests.routines.making import make_lesson, make_routine

pytestmark = pytest.mark.django_db

READERS = ["owner", "teammate", "co_author", "other_teacher", "coach", "administrator"]


@pytest.fixture
def taught(owner, teammate, co_author, other_teacher, coach, administrator, grade_five, year):
    """Counts by who taught them, each lesson once. Owner and teammate teach grade 2, co_author 3, other and far 5."""
    far = UserFactory(sign_in_name="far")
    ClassGroupFactory(name="5 Reed", grade=grade_five, year=year, teachers=[far])
    people = {"owner": owner, "teammate": teammate, "co_author": co_author, "other": other_teacher, "far": far}
    plan = {
        "Nobody": (),
        "Owner alone": ("owner",),
        "Grade five once": ("other",),
        "Grade five twice": ("other", "far"),
        "One here one there": ("owner", "other"),
        "Everywhere": ("owner", "teammate", "co_author", "other", "far"),
        "Same class twice": ("other", "other"),
    }
    for title, who in plan.items():
        routine = make_routine(owner, title=title)
        for name in who:
            make_lesson(routine, people[name])
    make_lesson(Routine.objects.get(title="Nobody"), owner, practice=True)
    return list(plan)


# What each reader is told, worked out by hand from the table; 0 is also what stands for "not told".
TOLD = {
    #                      owner teammate co_author other coach administrator
    "Nobody":             (0, 0, 0, 0, 0, 0),
    "Owner alone":        (1, 1, 0, 0, 1, 0),
    "Grade five once":    (0, 0, 0, 1, 1, 0),
    "Grade five twice":   (2, 2, 2, 2, 2, 2),
    "One here one there": (1, 1, 2, 1, 2, 2),
    "Everywhere":         (5, 5, 5, 5, 5, 5),
    "Same class twice":   (0, 0, 0, 2, 2, 0),
}  # fmt: skip


def told_to(name):
    return {title: row[READERS.index(name)] for title, row in TOLD.items()}


CARD = re.compile(r'<h2><a href="[^"]*">([^<]*)</a></h2>.*?<span>Grade [^<]*</span> <span>([^<]*)</span>', re.DOTALL)
WORDS = {"taught once this year": 1, "taught twice this year": 2, "taught 5 times this year": 5}


def cards(answer):
    """The titles of a page's cards, in order, each with its number as read from its words."""
    return [(title, WORDS.get(words, 0)) for title, words in CARD.findall(answer.text)]


@pytest.mark.parametrize("name", READERS)
def test_the_cards_of_the_bank(request, taught, visit, name):
    client = visit(request.getfixturevalue(name))
    assert dict(cards(client.get("/bank/"))) == told_to(name)


@pytest.mark.parametrize("name", READERS)
def test_the_filters_and_the_order_tell_what_the_cards_tell(request, taught, visit, name):
    client = visit(request.getfixturevalue(name))
    told = told_to(name)
    some, none = {title for title in told if told[title]}, {title for title in told if not told[title]}
    for query, expected in (("this-year", some), ("ever", some), ("not-yet", none)):
        assert {title for title, _times in cards(client.get(f"/bank/?taught={query}"))} == expected, query
    order = [title for title, _times in cards(client.get("/bank/?sort=taught"))]
    newest_first = list(reversed(taught))
    assert order == sorted(newest_first, key=lambda title: -told[title])


@pytest.mark.parametrize("name", READERS)
def test_a_booklet_is_chosen_by_the_same_numbers(request, taught, visit, name):
    page = visit(request.getfixturevalue(name)).get(reverse("booklet_choose") + "?taught=this-year").text
    told = told_to(name)
    assert {title for title in told if f"<span>{title} <" in page} == {title for title in told if told[title]}


@pytest.mark.parametrize("name", READERS)
def test_the_page_of_a_count_and_its_neighbours(request, taught, visit, name):
    client = visit(request.getfixturevalue(name))
    told = told_to(name)
    for routine in Routine.objects.all():
        page = client.get(reverse("routine", args=[routine.pk]))
        went = re.search(r"How it went</h2>(.*?)</section>", page.text, re.DOTALL)[1]
        if "/lessons/" not in went:  # where a lesson is open to the reader it stands there itself
            assert (
                next((times for words, times in WORDS.items() if words.capitalize() in went), 0) == told[routine.title]
            )
        assert all(told[title] == times for title, times in cards(page))


@pytest.mark.parametrize("name", ["owner", "teammate", "coach", "administrator"])
def test_behind_a_cell_of_the_coverage(request, taught, visit, grade_two, name):
    client = visit(request.getfixturevalue(name))
    page = client.get(reverse("coverage_cell", args=[grade_two.pk, "whole"]))
    assert dict(cards(page)) == told_to(name)


def test_ones_own_plans_tell_no_more_than_the_bank(taught, owner, visit):
    assert dict(cards(visit(owner).get(reverse("my_plans")))) == told_to("owner")


def test_what_may_not_be_told_reads_like_what_never_happened(taught, visit, administrator, co_author):
    for reader in (administrator, co_author):
        feet = dict(CARD.findall(visit(reader).get("/bank/").text))
        assert feet["Owner alone"] == feet["Same class twice"] == feet["Nobody"]


def test_the_numbers_are_those_of_coverage(taught, coach, year, visit):
    """Every lesson is in one grade's coverage and on one card, so the sums are the same for who is told of all."""
    rows = coverage(user=coach, year=year, first=year.starts_on, last=year.ends_on)
    assert sum(row.lessons for row in rows) == sum(times for _title, times in cards(visit(coach).get("/bank/")))


def test_another_years_lessons_are_no_number_on_a_card(owner, coach, grade_two, visit, year):
    last_year = SchoolYearFactory(name="2025-26", starts_on=date(2025, 8, 18), ends_on=date(2026, 6, 19))
    earlier = UserFactory(sign_in_name="earlier")
    ClassGroupFactory(name="2 Wren", grade=grade_two, year=last_year, teachers=[earlier])
    routine = make_routine(
        owner, title="Of last year", count=CountSection("whole", "5", "5", 20), fold=Fold(5), targets=(), stops=()
    )
    make_lesson(routine, earlier, taught_on=date(2026, 3, 3))
    assert cards(visit(coach).get("/bank/")) == [("Of last year", 0)]
    assert cards(visit(coach).get("/bank/?taught=ever")) == [("Of last year", 0)]
    assert cards(visit(coach).get("/bank/?taught=this-year")) == []
    # The owner had no class in that grade then: of one class's lesson in another year she is not told.
    assert cards(visit(owner).get("/bank/?taught=ever")) == []
    assert cards(visit(owner).get("/bank/?taught=not-yet")) == [("Of last year", 0)]


def test_an_administrator_who_teaches_is_told_of_her_own_lesson(owner, administrator, grade_two, year, visit):
    ClassGroupFactory(name="2 Sorrel", grade=grade_two, year=year, teachers=[administrator])
    make_lesson(make_routine(owner, title="Hers"), administrator)
    make_lesson(make_routine(owner, title="Not hers"), owner)
    assert dict(cards(visit(administrator).get("/bank/"))) == {"Hers": 1, "Not hers": 0}


@pytest.mark.parametrize(
    ("query", "most"),
    [
        ("", 13),
        ("?taught=ever", 14),
        ("?taught=not-yet", 14),
        ("?sort=taught", 15),
        ("?taught=this-year&sort=taught", 15),
    ],
)
def test_the_numbers_cost_two_queries_for_all_cards(taught, owner, visit, query, most, django_assert_max_num_queries):
    client = visit(owner)
    client.get("/bank/")
    # The numbers, and in which grades she teaches; one whether she has a class at all. The order by them looks for counts
    # of which she is told all, a part and nothing.
    with django_assert_max_num_queries(most):
        client.get("/bank/" + query)


@pytest.mark.parametrize("name", READERS)
def test_the_order_by_them_is_the_same_page_by_page(request, taught, visit, name, monkeypatch):
    client = visit(request.getfixturevalue(name))
    order = [title for title, _times in cards(client.get("/bank/?sort=taught"))]
    monkeypatch.setattr(bank, "PAGE_SIZE", 2)
    assert walked(client, "/bank/?sort=taught") == order


def test_a_class_taught_by_two_is_one_class(owner, other_teacher, administrator, co_author, visit):
    """Two teachers of one class: nobody outside its grade is told of it by adding them up."""
    group = other_teacher.class_groups.get()
    colleague = UserFactory(sign_in_name="colleague")
    routine = make_routine(owner, title="Shared class")
    make_lesson(routine, other_teacher)
    group.teachers.set([colleague])
    make_lesson(routine, colleague)
    for reader, told in ((administrator, 0), (co_author, 0), (other_teacher, 1), (colleague, 2)):
        client = visit(reader)
        assert cards(client.get("/bank/")) == [("Shared class", told)]
        assert bool(cards(client.get("/bank/?taught=this-year"))) is bool(told)
