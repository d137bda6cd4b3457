"""A session that a restore, or another tab, ends between the last look at it and its save: asked to sign in, not refused."""

import pytest
from django.contrib.sessions.backends.db import SessionStore
from django.contrib.sessions.models import Session
from django.test import Client
from django.urls import reverse

from tests.factories import UserFactory

PASSPHRASE = "otter violin sandwich moon"

SAID = "You were signed out while this was under way, as everyone is when a backup is put back. Sign in again."


@pytest.fixture
def owner(school):
    return UserFactory(sign_in_name="ota", passphrase=PASSPHRASE)


@pytest.fixture
def client_that_checks(school):
    return Client(enforce_csrf_checks=True)


@pytest.fixture
def end_before_the_save(monkeypatch, settings):
    """From then on, whatever session is about to be saved over itself is not there any more."""

    def begin() -> None:
        settings.SESSION_SAVE_EVERY_REQUEST = True
        save = SessionStore.save

        def save_too_late(self, must_create=False):
            if not must_create and self.session_key:
                assert Session.objects.filter(session_key=self.session_key).delete()[0] == 1
            return save(self, must_create)

        monkeypatch.setattr(SessionStore, "save", save_too_late)

    return begin


def sign_in(client, owner, **more):
    fields = {"name": owner.sign_in_name, "passphrase": PASSPHRASE, "next": "/plans/", **more}
    return client.post(reverse("accounts:sign_in"), fields)


def test_signing_in_is_asked_for_again_in_one_sentence(signed_out, owner, end_before_the_save):
    end_before_the_save()
    answer = sign_in(signed_out, owner)
    assert answer.status_code == 401
    assert SAID in answer.text
    assert 'name="next" value="/plans/"' in answer.text
    assert PASSPHRASE not in answer.text
    assert answer.cookies["countfold_session"]["max-age"] == 0


def test_the_second_try_is_let_in_with_the_token_of_the_answer(
    client_that_checks, owner, monkeypatch, end_before_the_save
):
    page = client_that_checks.get(reverse("accounts:sign_in"))
    token = {"csrfmiddlewaretoken": page.context["csrf_token"]}
    end_before_the_save()
    again = sign_in(client_that_checks, owner, **token)
    assert again.status_code == 401
    monkeypatch.undo()
    token = {"csrfmiddlewaretoken": again.context["csrf_token"]}
    answer = sign_in(client_that_checks, owner, **token)
    assert (answer.status_code, answer["Location"]) == (302, "/plans/")


def test_text_that_waited_for_the_sign_in_still_waits(signed_out, owner, end_before_the_save):
    kept = signed_out.post("/me/", {"display_name": "Ota Two", "email": ""}).context["kept"].as_json()
    end_before_the_save()
    answer = sign_in(signed_out, owner, kept=kept)
    assert answer.status_code == 401
    assert "Your text is kept. Sign in to save it." in answer.text
    assert "Ota Two" in answer.text


def test_a_form_keeps_its_text(visit, owner, end_before_the_save):
    client = visit(owner)
    end_before_the_save()
    answer = client.post("/me/", {"display_name": "Ota Two", "email": ""})
    assert answer.status_code == 401
    assert "Your text is kept. Sign in to save it." in answer.text
    assert "Ota Two" in answer.text


def test_a_script_is_told_at_the_top_of_its_page(visit, owner, end_before_the_save):
    client = visit(owner)
    end_before_the_save()
    answer = client.post("/me/", {"display_name": "Ota Two", "email": ""}, headers={"HX-Request": "true"})
    assert answer.status_code == 401
    assert answer["HX-Retarget"] == "#main"


def test_a_page_is_asked_for_again_after_signing_in(visit, owner, end_before_the_save):
    client = visit(owner)
    end_before_the_save()
    answer = client.get("/me/?here=1")
    assert (answer.status_code, SAID in answer.text) == (401, True)
    assert 'name="next" value="/me/?here=1"' in answer.text


def test_where_nobody_signs_in_nothing_is_sent_again(visit, owner, end_before_the_save):
    client = visit(owner)
    end_before_the_save()
    answer = client.post(reverse("accounts:recover"), {"name": "x", "code": "medlar"})
    assert answer.status_code == 401
    assert 'name="next" value="/"' in answer.text
    assert "medlar" not in answer.text
