"""All pages together are the list that was never divided: each count once, in the same order, there and back, for each reader.

A list that one page holds is read without any of the short ways by which a page of many is found.
"""

from collections.abc import Iterator
from datetime import timedelta

import pytest
from django.http import QueryDict
from django.utils import timezone

from grade_bands.models import Grade, SchoolYear
from routines.bank.forms.filters import BankFilter
from routines.bank.paging import HowMany, Order, Page, read_page
from routines.bank.views.bank import own_grades
from routines.bank.views.mine import own_plans
from routines.models import Routine
from tests.factories import ClassGroupFactory, UserFactory
from tests.routines.making import make_lesson, make_routine

pytestmark = pytest.mark.django_db

READERS = ["owner", "teammate", "other_teacher", "coach", "administrator"]
QUERIES = ["", "sort=newest", "sort=title", "sort=taught", "q=plum", "q=plum&sort=title", "q=basket&sort=taught",
           "grade=2&sort=taught", "taught=this-year&sort=taught", "taught=not-yet&sort=taught", "whose=team"]  # fmt: skip
ALL = 100

# Who taught each count, each name a lesson; in the bank two came in at a moment, and titles stand twice.
TAUGHT = ["", "owner", "other_teacher", "owner other_teacher", "owner owner other_teacher", "owner far", "far other_teacher",
          "owner teammate co_author other_teacher far", "other_teacher other_teacher other_teacher", "owner owner owner",
          "owner owner other_teacher other_teacher", "teammate far far far", "co_author", "far far far far far"]  # fmt: skip


@pytest.fixture
def bank(request, owner, grade_two, grade_three, grade_five, year):
    far = UserFactory(sign_in_name="far")
    ClassGroupFactory(name="5 Reed", grade=grade_five, year=year, teachers=[far])
    words = ["Plum basket", "Basket", "Plum", "Orchard plum", "Ladder"]
    now = timezone.now()
    for number, names in enumerate(TAUGHT):
        routine = make_routine(owner, title=f"{words[number % 5]} {number // 3}", grade=("2", "3", "5")[number % 3])
        for name in names.split():
            make_lesson(routine, far if name == "far" else request.getfixturevalue(name))
        Routine.objects.filter(pk=routine.pk).update(shared_at=now + timedelta(minutes=number // 2))


def order_for(reader, query: str, year: SchoolYear) -> Order:
    grades = list(Grade.objects.order_by("order"))
    own = tuple(grade.pk for grade in own_grades(reader, grades, year))
    return BankFilter.read(QueryDict(query), grades, own).order(reader, year)


def walked(order: Order, reader, size: int, start: dict[str, int], way: str) -> Iterator[Page]:
    page = read_page(order, {name: str(key) for name, key in start.items()}, reader=reader, size=size)
    yield page
    if then := getattr(page, way):
        yield from walked(order, reader, size, then, way)


def held_to_the_list(order: Order, reader, sizes: tuple[int, ...] = (2, 3, 5)) -> None:
    whole = read_page(order, {}, reader=reader, size=ALL).routines
    assert len(whole) == len(set(whole)) == HowMany.of(order.every, ALL).number
    for size in sizes:
        there = list(walked(order, reader, size, {}, "later"))
        assert [key for page in there for key in page.routines] == whole
        assert all(len(page.routines) == size for page in there[:-1])
        back = list(walked(order, reader, size, there[-2].later or {}, "earlier")) if there[1:] else there
        assert [page.routines for page in reversed(back)] == [page.routines for page in there]
        numbered = [
            read_page(order, {"page": str(number + 1)}, reader=reader, size=size) for number in range(len(there))
        ]
        assert [page.routines for page in numbered] == [page.routines for page in there]


@pytest.mark.parametrize("query", QUERIES)
@pytest.mark.parametrize("name", READERS)
def test_the_bank(request, bank, year, name, query):
    reader = request.getfixturevalue(name)
    held_to_the_list(order_for(reader, query, year), reader)


@pytest.mark.parametrize("looked_for", ["", "plum"])
def test_ones_own_plans(bank, owner, looked_for):
    make_routine(owner, title="Plum draft", shared=False)
    Routine.objects.filter(title__startswith="Basket").first().retire()
    held_to_the_list(own_plans(owner, looked_for), owner)


def test_the_most_taught_is_what_each_reader_is_told(request, bank, year):
    """By hand: the counts of which she is told most, and the newer one first where she is told as many."""
    told = {
        "owner": [0, 1, 0, 1, 2, 1, 2, 5, 0, 3, 2, 1, 0, 0],
        "other_teacher": [0, 0, 1, 1, 1, 1, 2, 5, 3, 0, 2, 3, 0, 5],
        "coach": [len(names.split()) for names in TAUGHT],
    }
    keys = list(Routine.objects.order_by("pk").values_list("pk", flat=True))
    for name, numbers in told.items():
        reader = request.getfixturevalue(name)
        wanted = sorted(range(len(TAUGHT)), key=lambda at, numbers=numbers: (numbers[at], at), reverse=True)
        found = read_page(order_for(reader, "sort=taught", year), {}, reader=reader, size=ALL).routines
        assert [keys.index(key) for key in found] == wanted, name
