"""An invitation sent twice is one link, shown by both answers; a taken one lets in whoever took it."""

import re

import pytest
from django.test import Client

from accounts.models import OneTimeLink, User
from tests.at_once import at_once

pytestmark = pytest.mark.django_db(transaction=True)

INVITED = {"display_name": "Lee Okafor", "role": "teacher"}
PASSPHRASE = "otter violin sandwich moon"
TAKEN = {"display_name": "Lee Okafor", "sign_in_name": "lee", "passphrase": PASSPHRASE, "passphrase_again": PASSPHRASE}


def key_in(page) -> str:
    return re.search(r'name="form_key" value="([^"]+)"', page.text)[1]


def link_in(page) -> str:
    return re.search(r"/invitation/[\w-]+/", page.text)[0]


def invite(client, **changed):
    fields = {**INVITED, "form_key": key_in(client.get("/school/people/")), **changed}
    return fields, client.post("/school/people/invite/", fields)


def test_three_presses_at_once_show_one_link_that_works(visit, administrator):
    key = key_in(visit(administrator).get("/school/people/"))
    pages = at_once(*[lambda: visit(administrator).post("/school/people/invite/", {**INVITED, "form_key": key})] * 3)
    links = {link_in(page) for page in pages}
    assert OneTimeLink.objects.count() == len(links) == 1
    assert Client().get(links.pop()).status_code == 200


def test_the_link_is_not_the_key_and_not_stored(visit, administrator):
    fields, page = invite(visit(administrator))
    token = link_in(page).split("/")[2]
    assert fields["form_key"] not in token
    assert OneTimeLink.objects.get().token_hash != token


def test_another_name_from_the_same_page_makes_no_link_unasked(visit, administrator):
    client = visit(administrator)
    fields, _page = invite(client)
    again = client.post("/school/people/invite/", {**fields, "display_name": "Mia Chen"})
    assert again.status_code == 422
    assert "Mia Chen" in again.text
    assert OneTimeLink.objects.count() == 1
    client.post("/school/people/invite/", {**fields, "display_name": "Mia Chen", "form_key": key_in(again)})
    assert OneTimeLink.objects.count() == 2


def test_a_withdrawn_link_is_not_shown_again(visit, administrator):
    client = visit(administrator)
    fields, page = invite(client)
    OneTimeLink.objects.get().withdraw()
    again = client.post("/school/people/invite/", fields)
    assert again.status_code == 422
    assert link_in(page) not in again.text


def test_without_a_key_each_press_makes_a_link(visit, administrator):
    for _press in range(2):
        assert visit(administrator).post("/school/people/invite/", INVITED).status_code == 200
    assert OneTimeLink.objects.count() == 2


def test_an_invitation_taken_by_three_presses_signs_in_one_person(visit, administrator):
    _fields, page = invite(visit(administrator))
    found = at_once(*[lambda: Client().post(link_in(page), TAKEN)] * 3)
    assert [answer.status_code for answer in found] == [302] * 3
    assert all("countfold_session" in answer.cookies for answer in found)
    assert User.objects.filter(sign_in_name="lee").count() == 1


def test_a_taken_invitation_lets_in_nobody_else(visit, administrator):
    _fields, page = invite(visit(administrator))
    Client().post(link_in(page), TAKEN)
    for wrong in ({"passphrase": "another otter entirely here"}, {"sign_in_name": "administrator"}):
        assert Client().post(link_in(page), {**TAKEN, **wrong}).status_code == 410


def test_of_two_links_for_a_passphrase_made_at_once_one_works(visit, administrator, owner):
    address = f"/school/people/{owner.pk}/new-passphrase/"
    at_once(*[lambda: visit(administrator).post(address)] * 3)
    assert OneTimeLink.objects.usable().count() == 1
