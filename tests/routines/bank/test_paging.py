"""Pages that begin after a count: whole, in order, the same for a colleague; and addresses that lead nowhere."""

from datetime import timedelta

import pytest
from django.http import QueryDict
from django.utils import timezone

from grade_bands.models import Grade
from routines.bank.forms.filters import BankFilter
from routines.bank.paging import read_page
from routines.bank.views import bank
from routines.models import Routine
from tests.routines.bank.walking import link, pages, titles_on, walked
from tests.routines.making import make_lesson, make_routine

pytestmark = pytest.mark.django_db
TITLES = [f"Count x{letter}" for letter in "hbgacfed"]


@pytest.fixture
def shown(owner, monkeypatch):
    """Eight counts, the last of this list the newest, on pages of three."""
    monkeypatch.setattr(bank, "PAGE_SIZE", 3)
    now = timezone.now()
    made = [make_routine(owner, title=title) for title in TITLES]
    for number, routine in enumerate(made):
        Routine.objects.filter(pk=routine.pk).update(shared_at=now + timedelta(minutes=number // 2))  # two at a time
    return made


ORDERS = {"": TITLES[::-1], "sort=title": sorted(TITLES), "sort=taught": TITLES[::-1], "q=count": TITLES[::-1]}


@pytest.mark.parametrize("query", ORDERS)
def test_going_further_shows_every_count_once_and_back_the_same_pages(shown, owner, teammate, visit, query):
    answers = pages(visit(owner), f"/bank/?{query}")
    assert [titles_on(answer) for answer in answers] == [ORDERS[query][:3], ORDERS[query][3:6], ORDERS[query][6:]]
    assert "Previous" not in answers[0].text
    assert "Next" not in answers[-1].text
    back = visit(teammate).get("/bank/" + link(answers[-1], "Previous"))  # the address, opened by a colleague
    assert titles_on(back) == ORDERS[query][3:6]
    assert titles_on(visit(owner).get("/bank/" + link(back, "Previous"))) == ORDERS[query][:3]
    assert titles_on(visit(owner).get("/bank/" + link(back, "Next"))) == ORDERS[query][6:]


def test_what_came_in_meanwhile_shifts_nothing(shown, owner, visit):
    client = visit(owner)
    further = link(client.get("/bank/"), "Next")
    make_routine(owner, title="Came in meanwhile")
    assert titles_on(client.get("/bank/" + further)) == TITLES[::-1][3:6]


def test_a_page_back_that_is_not_full_is_the_first(shown, owner, visit):
    second = Routine.objects.get(title=TITLES[-2])
    assert titles_on(visit(owner).get("/bank/", {"before": second.pk})) == TITLES[::-1][:3]


def test_an_address_by_number_is_still_understood(shown, owner, visit):
    client = visit(owner)
    page = client.get("/bank/?page=2")
    assert titles_on(page) == TITLES[::-1][3:6]
    assert titles_on(client.get("/bank/" + link(page, "Next"))) == TITLES[::-1][6:]
    assert titles_on(client.get("/bank/" + link(page, "Previous"))) == TITLES[::-1][:3]
    for number in ("99", "9" * 30, "201"):
        answer = client.get("/bank/", {"page": number})
        assert titles_on(answer) == TITLES[::-1][:3]
        assert "This is the first" in answer.text or len(number) == 30
    for nothing in ("0", "-1", "x", ""):
        assert titles_on(client.get("/bank/", {"page": nothing})) == TITLES[::-1][:3]


def test_a_count_that_left_the_bank_still_marks_its_place_for_who_sees_it(shown, owner, teammate, visit):
    gone = Routine.objects.get(title=TITLES[-3])
    gone.retire()
    assert titles_on(visit(owner).get("/bank/", {"after": gone.pk})) == TITLES[::-1][3:6]
    answer = visit(teammate).get(
        "/bank/", {"after": gone.pk}
    )  # where a title she may not see stands is not hers to know
    assert "has left the bank. This is the first page." in answer.text
    assert titles_on(answer) == [*TITLES[::-1][:2], TITLES[::-1][3]]


@pytest.mark.parametrize("after", ["999999", "9" * 30, "x", "-1", "0"])
def test_a_place_that_never_was_is_the_first_page(shown, owner, visit, after):
    assert titles_on(visit(owner).get("/bank/", {"after": after})) == TITLES[::-1][:3]


@pytest.mark.parametrize("query", ORDERS)
def test_past_the_end_is_a_sentence_and_the_first_page(shown, owner, visit, query):
    last = Routine.objects.get(title=ORDERS[query][-1])
    answer = visit(owner).get(f"/bank/?{query}&after={last.pk}")
    assert "There is no page after that. This is the first one." in answer.text
    assert titles_on(answer) == ORDERS[query][:3]


def test_how_many_are_said_up_to_a_thousand(shown, owner, visit, monkeypatch):
    client = visit(owner)
    assert "8 of 8 counts." in client.get("/bank/").text
    assert "1 of 8 counts for grade 2." in client.get("/bank/?grade=2&q=xh").text
    monkeypatch.setattr("routines.bank.paging.COUNTED_UP_TO", 5)
    assert "More than 5 counts." in client.get("/bank/").text
    assert "1 of more than 5 counts." in client.get("/bank/?q=xe").text


@pytest.mark.parametrize("query", ["grade=2&q=xh", "q=count", "whose=mine", "kind=clock", "q=xh&page=1"])
@pytest.mark.parametrize("size", [3, 8])
def test_a_page_that_shows_all_counts_them_as_the_database_does(shown, owner, monkeypatch, query, size):
    wanted = BankFilter.read(QueryDict(query), list(Grade.objects.all()))
    order = wanted.order(owner, None)
    page = read_page(order, QueryDict(query), reader=owner, size=size)
    assert page.how_many(order) == order.how_many()


def test_the_order_by_title_goes_on_in_the_middle_of_equal_titles(owner, visit, monkeypatch):
    monkeypatch.setattr(bank, "PAGE_SIZE", 2)
    for _ in range(3):
        make_routine(owner, title="The same")
    make_routine(owner, title="Zoo")
    assert walked(visit(owner), "/bank/?sort=title") == ["The same"] * 3 + ["Zoo"]


def test_filters_orders_and_pages_go_together(shown, owner, teammate, visit):
    for title in TITLES[::2]:
        make_lesson(Routine.objects.get(title=title), teammate)
    taught = [title for title in TITLES[::-1] if title in TITLES[::2]]
    others = [title for title in TITLES[::-1] if title not in taught]
    client = visit(owner)
    assert walked(client, "/bank/?taught=this-year") == taught
    assert walked(client, "/bank/?taught=not-yet&sort=title") == sorted(others)
    assert walked(client, "/bank/?sort=taught") == [*taught, *others]
    assert walked(client, "/bank/?whose=team&shows=jumps&q=count+xc&sort=taught") == ["Count xc"]
