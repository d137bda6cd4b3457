"""A person's own page."""

import pytest
from django.test import Client

from accounts.actions import offer_new_passphrase
from tests.factories import UserFactory

OLD, NEW = "otter violin sandwich moon", "lantern quarry biscuit seven"


@pytest.fixture
def person(school):
    return UserFactory(sign_in_name="moreno", display_name="Ana Moreno", passphrase=OLD)


def test_name_and_email_are_saved(visit, person):
    assert visit(person).post("/me/", {"display_name": "Ana M.", "email": "ana@school.example"}).status_code == 302
    person.refresh_from_db()
    assert (person.display_name, person.email) == ("Ana M.", "ana@school.example")


def test_a_role_cannot_be_given_to_oneself(visit, person):
    visit(person).post("/me/", {"display_name": "Ana", "email": "", "role": "administrator", "sign_in_name": "x"})
    person.refresh_from_db()
    assert (person.role, person.sign_in_name) == ("teacher", "moreno")


def test_a_bad_email_keeps_what_was_typed(visit, person):
    response = visit(person).post("/me/", {"display_name": "Ana M.", "email": "nonsense"})
    assert response.status_code == 422
    assert 'value="nonsense"' in response.content.decode()
    assert "leave it empty" in response.content.decode()


def test_a_new_passphrase_keeps_this_session_and_ends_the_others(visit, person):
    here, elsewhere = visit(person), visit(person)
    sent = {"current": OLD, "passphrase": NEW, "passphrase_again": NEW}
    assert here.post("/me/passphrase/", sent).status_code == 302
    person.refresh_from_db()
    assert person.check_password(NEW)
    assert here.get("/me/").status_code == 200
    assert elsewhere.get("/me/").status_code == 302


def test_the_old_passphrase_is_asked_for(visit, person):
    sent = {"current": "not this one either", "passphrase": NEW, "passphrase_again": NEW}
    response = visit(person).post("/me/passphrase/", sent)
    assert response.status_code == 422
    assert "This is not your passphrase." in response.content.decode()
    person.refresh_from_db()
    assert person.check_password(OLD)


def test_guesses_at_ones_own_passphrase_are_slowed_down_with_those_at_sign_in(visit, person):
    """Whoever sits down at an open session guesses no faster than at the sign-in page."""
    here = visit(person)
    wrong = {"current": "not this one either", "passphrase": NEW, "passphrase_again": NEW}
    answers = [here.post("/me/passphrase/", wrong) for _try in range(8)]
    assert [answer.status_code for answer in answers] == [422] * 7 + [429]
    assert "Wait a quarter of an hour" in answers[-1].text
    assert "Your account" in answers[-1].text
    right = {**wrong, "current": OLD}
    assert here.post("/me/passphrase/", right).status_code == 429
    assert Client().post("/sign-in/", {"name": "moreno", "passphrase": OLD}).status_code == 429
    assert here.get("/me/").status_code == 200
    person.refresh_from_db()
    assert person.check_password(OLD)


def test_after_the_right_one_the_tries_are_forgotten(visit, person):
    here = visit(person)
    wrong = {"current": "not this one either", "passphrase": NEW, "passphrase_again": NEW}
    for _try in range(7):
        here.post("/me/passphrase/", wrong)
    assert here.post("/me/passphrase/", {**wrong, "current": OLD}).status_code == 302
    for _try in range(7):
        assert here.post("/me/passphrase/", wrong).status_code == 422


def test_ones_own_page_says_when_a_link_set_the_passphrase_and_who_made_it(visit, person, signed_out):
    """A link that she never asked for is seen before it is used, and one that was used is seen too."""
    head = UserFactory(administrator=True, display_name="Ada Ames")
    assert "Ada Ames" not in visit(person).get("/me/").text
    offer_new_passphrase(by=head, person=person)
    assert "Ada Ames made a link with which a new one can be set for you" in visit(person).get("/me/").text
    token = offer_new_passphrase(by=head, person=person)
    signed_out.post(f"/new-passphrase/{token}/", {"passphrase": NEW, "passphrase_again": NEW})
    page = signed_out.get("/me/").text
    assert "one was set with a link that Ada Ames made" in page
    assert "can be set for you" not in page
