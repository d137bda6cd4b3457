"""Invitations and links for a new passphrase: once, for a week, and only their hash is kept."""

import re
from datetime import timedelta

import pytest
from django.test import Client
from django.utils import timezone

from accounts.actions import LinkUsed, accept_invitation, invite, offer_new_passphrase
from accounts.models import OneTimeLink, User
from tests.factories import UserFactory

PASSPHRASE = "otter violin sandwich moon"
ANSWERS = {
    "display_name": "Lee Park",
    "sign_in_name": "lee",
    "email": "",
    "passphrase": PASSPHRASE,
    "passphrase_again": PASSPHRASE,
}


@pytest.fixture
def invited(administrator) -> str:
    return f"/invitation/{invite(by=administrator, display_name='Lee Park', role=User.Role.COACH)}/"


def test_an_invitation_makes_the_person_in_the_role_it_was_made_for(signed_out, invited):
    assert "Math coach" in signed_out.get(invited).content.decode()
    assert signed_out.post(invited, {**ANSWERS, "role": "administrator"}).status_code == 302
    person = User.objects.get(sign_in_name="lee")
    assert person.is_coach
    assert person.check_password(PASSPHRASE)
    assert signed_out.get("/me/").status_code == 200


def test_it_works_once(signed_out, invited):
    signed_out.post(invited, ANSWERS)
    again = Client().post(invited, {**ANSWERS, "sign_in_name": "second"})
    assert again.status_code == 410
    assert not User.objects.filter(sign_in_name="second").exists()


def test_of_two_people_who_send_it_at_once_one_gets_through(invited, administrator):
    link = OneTimeLink.objects.get()
    fields = {"display_name": "L", "email": "", "passphrase": PASSPHRASE}
    accept_invitation(link=link, sign_in_name="first", **fields)
    with pytest.raises(LinkUsed):
        accept_invitation(link=link, sign_in_name="second", **fields)
    assert not User.objects.filter(sign_in_name="second").exists()


def test_it_runs_out_after_a_week(signed_out, invited):
    OneTimeLink.objects.update(expires_at=timezone.now() - timedelta(seconds=1))
    assert signed_out.get(invited).status_code == 410
    assert signed_out.post(invited, ANSWERS).status_code == 410


def test_the_token_itself_is_stored_nowhere(invited):
    token = invited.split("/")[2]
    stored = OneTimeLink.objects.values().get()
    assert token not in str(stored)


def test_a_made_up_link_is_answered_like_an_old_one(signed_out):
    assert signed_out.get("/invitation/made-up/").status_code == 410
    assert signed_out.get("/new-passphrase/made-up/").status_code == 410


def test_an_invitation_is_no_link_for_a_new_passphrase(signed_out, invited):
    assert signed_out.get(invited.replace("invitation", "new-passphrase")).status_code == 410


@pytest.mark.parametrize(
    ("wrong", "sentence"),
    [
        ({"sign_in_name": ""}, "Choose a short name to sign in with."),
        ({"sign_in_name": "lee@park"}, "Use letters, digits, dots and hyphens only."),
        ({"sign_in_name": "ADMIN"}, "Someone already signs in with this name."),
        ({"email": "nonsense"}, "Write an e-mail such as"),
        ({"passphrase": "short", "passphrase_again": "short"}, "Use 15 characters or more."),
        ({"passphrase_again": "something else"}, "The two are not the same."),
    ],
)
def test_bad_input_is_one_sentence_and_keeps_what_was_typed(signed_out, invited, wrong, sentence):
    response = signed_out.post(invited, {**ANSWERS, **wrong})
    page = response.content.decode()
    assert response.status_code == 422
    assert sentence in page
    assert 'value="Lee Park"' in page
    assert User.objects.filter(sign_in_name="lee").count() == 0


def test_a_new_passphrase_ends_the_sessions_from_before(visit, owner, administrator):
    left_open = visit(owner)
    link = f"/new-passphrase/{offer_new_passphrase(by=administrator, person=owner)}/"
    response = Client().post(link, {"passphrase": PASSPHRASE, "passphrase_again": PASSPHRASE})
    assert response.status_code == 302
    assert left_open.get("/me/").status_code == 302
    owner.refresh_from_db()
    assert owner.check_password(PASSPHRASE)


def test_a_newer_link_replaces_the_older_one(owner, administrator):
    older = offer_new_passphrase(by=administrator, person=owner)
    newer = offer_new_passphrase(by=administrator, person=owner)
    assert Client().get(f"/new-passphrase/{older}/").status_code == 410
    assert Client().get(f"/new-passphrase/{newer}/").status_code == 200


def test_no_new_passphrase_for_someone_who_left(owner, administrator):
    token = offer_new_passphrase(by=administrator, person=owner)
    owner.leave()
    assert Client().get(f"/new-passphrase/{token}/").status_code == 410


def test_the_link_is_shown_to_the_administrator_once(visit, administrator):
    browser = visit(administrator)
    shown = browser.post("/school/people/invite/", {"display_name": "Lee Park", "role": "teacher"}).content.decode()
    address = re.search(r'value="(http://testserver/invitation/[^"]+)"', shown)[1]
    assert Client().get(address).status_code == 200
    assert address not in browser.get("/school/people/").content.decode()


@pytest.mark.parametrize(("host", "said"), [("localhost", True), ("127.0.0.1:8000", True), ("testserver", False)])
def test_a_link_that_opens_on_this_machine_alone_says_so(visit, administrator, host, said):
    invited = {"display_name": "Lee Park", "role": "teacher"}
    shown = visit(administrator).post("/school/people/invite/", invited, headers={"Host": host}).content.decode()
    assert f'value="http://{host}/invitation/' in shown
    assert ("opens on this machine only" in shown) is said


def test_an_invitation_can_be_withdrawn(visit, administrator, invited):
    link = OneTimeLink.objects.get()
    assert "Lee Park" in visit(administrator).get("/school/people/").content.decode()
    visit(administrator).post(f"/school/invitations/{link.pk}/withdraw/")
    assert Client().get(invited).status_code == 410


def test_a_reset_link_from_the_people_page_lets_that_person_in(visit, administrator):
    person = UserFactory(display_name="Noor Haddad")
    shown = visit(administrator).post(f"/school/people/{person.pk}/new-passphrase/").content.decode()
    address = re.search(r'value="(http://testserver/new-passphrase/[^"]+)"', shown)[1]
    assert "Noor Haddad" in Client().get(address).content.decode()
