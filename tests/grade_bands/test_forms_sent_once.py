"""Classes, years, grades, bands and the school itself: the form sent twice makes one, and the second answer is the first's."""

import re

import pytest
from django.db import IntegrityError
from django.forms import ModelForm
from django.test import Client

from accounts.models import School, User
from grade_bands.models import ClassGroup, Grade, GradeBand, SchoolYear
from tests.at_once import at_once
from tests.grade_bands.test_set_up import answers

pytestmark = pytest.mark.django_db(transaction=True)


@pytest.fixture
def fields(grade_two, year, middle_band):
    return {
        "/school/classes/new/": {"name": "2B", "grade": grade_two.pk, "year": year.pk, "languages": ["en"]},
        "/school/years/new/": {"name": "2027-28", "starts_on": "2027-08-16", "ends_on": "2028-06-16"},
        "/school/grades/new/": {"name": "7", "order": 8, "level": 7, "band": middle_band.pk, "areas": ["whole"]},
        "/school/bands/new/": {"name": "6-8", "order": 9},
    }


PAGES = {
    "/school/classes/new/": ClassGroup,
    "/school/years/new/": SchoolYear,
    "/school/grades/new/": Grade,
    "/school/bands/new/": GradeBand,
}


def key_in(page) -> str:
    return re.search(r'name="form_key" value="([^"]+)"', page.text)[1]


@pytest.mark.parametrize("address", PAGES)
def test_three_sends_at_once_make_one_and_all_lead_there(visit, administrator, fields, address):
    key = key_in(visit(administrator).get(address))
    found = at_once(*[lambda: visit(administrator).post(address, {**fields[address], "form_key": key})] * 3)
    assert [answer.status_code for answer in found] == [302] * 3
    assert len({answer["Location"] for answer in found}) == 1
    assert PAGES[address].objects.filter(name=fields[address]["name"]).count() == 1


@pytest.mark.parametrize("address", PAGES)
def test_sent_again_later_it_says_so(visit, administrator, fields, address):
    client = visit(administrator)
    sent = {**fields[address], "form_key": key_in(client.get(address))}
    client.post(address, sent)
    assert "so it was not kept a second time" in client.post(address, sent, follow=True).text
    # Without the key the name is in its own way.
    assert client.post(address, fields[address]).status_code == 422


def test_another_class_from_the_same_page_asks_first(visit, administrator, fields):
    client, address = visit(administrator), "/school/classes/new/"
    sent = {**fields[address], "form_key": key_in(client.get(address))}
    client.post(address, sent)
    answer = client.post(address, {**sent, "name": "2C"})
    assert answer.status_code == 422
    assert "This page was sent before" in answer.text
    client.post(address, {**sent, "name": "2C", "form_key": key_in(answer)})
    assert set(ClassGroup.objects.filter(name__in=["2B", "2C"]).values_list("name", flat=True)) == {"2B", "2C"}


def test_a_row_that_was_there_may_be_changed_from_the_same_page_again(visit, administrator, fields):
    client, address = visit(administrator), "/school/classes/new/"
    client.post(address, fields[address])
    own = f"/school/classes/{ClassGroup.objects.get(name='2B').pk}/"
    key = key_in(client.get(own))
    for name in ("2 Blue", "2 Green", "2 Blue"):
        assert client.post(own, {**fields[address], "name": name, "form_key": key}).status_code == 302
    assert ClassGroup.objects.filter(name="2 Blue").exists()


def test_a_name_taken_a_moment_ago_is_a_sentence(visit, administrator, fields, monkeypatch):
    def taken(form, commit=True):
        raise IntegrityError("UNIQUE constraint failed")

    monkeypatch.setattr(ModelForm, "save", taken)
    answer = visit(administrator).post("/school/bands/new/", fields["/school/bands/new/"])
    assert answer.status_code == 422
    assert "Somebody else kept one like this a moment ago." in answer.text


def test_a_school_set_up_by_three_presses_is_one_and_each_is_signed_in():
    found = at_once(*[lambda: Client().post("/set-up/", answers())] * 3)
    assert [answer["Location"] for answer in found] == ["/school/"] * 3
    assert all("countfold_session" in answer.cookies for answer in found)
    assert (School.objects.count(), User.objects.count()) == (1, 1)


def test_set_up_lets_nobody_in_without_the_passphrase():
    Client().post("/set-up/", answers())
    other = Client().post("/set-up/", answers(**{"administrator-passphrase": "another otter entirely here"}))
    assert other["Location"] == "/"
    assert "countfold_session" not in other.cookies
