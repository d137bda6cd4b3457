"""A session that ended before a save: what was typed comes through sign-in and is sent again."""

import re

import pytest
from django.test import Client, RequestFactory

from accounts import forms
from accounts.kept_text import MOST_CHARACTERS, KeptText, is_secret
from accounts.models import User
from tests.factories import UserFactory

PASSPHRASE = "otter violin sandwich moon"


@pytest.fixture
def person(school) -> User:
    return UserFactory(sign_in_name="moreno", display_name="Ana Moreno", passphrase=PASSPHRASE)


def hidden(page: str, name: str) -> str:
    from html import unescape

    return unescape(re.search(rf'name="{name}" value="([^"]*)"', page)[1])


def token(page: str) -> str:
    return hidden(page, "csrfmiddlewaretoken")


def test_typed_text_survives_a_lost_session_word_for_word(person):
    typed = {"display_name": 'Ana "M" <Moreno> & co\nline two', "email": ""}
    browser = Client(enforce_csrf_checks=True)
    start = browser.get("/sign-in/").content.decode()

    asked = browser.post("/me/", {**typed, "csrfmiddlewaretoken": token(start)})
    page = asked.content.decode()
    assert asked.status_code == 401
    assert "Your text is kept" in page

    sent = {"name": "moreno", "passphrase": PASSPHRASE, "next": hidden(page, "next"), "kept": hidden(page, "kept")}
    again = browser.post("/sign-in/", {**sent, "csrfmiddlewaretoken": token(page)})
    page = again.content.decode()
    assert 'action="/me/"' in page
    assert "data-send-again" in page

    fields = {name: hidden(page, name) for name in typed}
    assert fields == typed
    saved = browser.post("/me/", {**fields, "email": "ana@school.example", "csrfmiddlewaretoken": token(page)})
    assert saved.status_code == 302
    assert User.objects.get(pk=person.pk).email == "ana@school.example"


def test_it_also_survives_a_wrong_passphrase(person):
    kept = KeptText((("title", "Sixes that end in 2"),)).as_json()
    page = Client().post("/sign-in/", {"name": "moreno", "passphrase": "wrong", "kept": kept, "next": "/plans/"})
    assert hidden(page.content.decode(), "kept") == kept
    assert hidden(page.content.decode(), "next") == "/plans/"


def test_passphrases_and_tokens_are_never_carried():
    request = RequestFactory().post(
        "/me/passphrase/", {"csrfmiddlewaretoken": "t", "current_passphrase": "a", "Password": "b", "note": "c"}
    )
    assert KeptText.from_post(request).fields == (("note", "c"),)


def test_no_field_that_asks_for_a_passphrase_is_carried():
    declared = [one.base_fields for one in vars(forms).values() if hasattr(one, "base_fields")]
    asking = {name for fields in declared for name, field in fields.items() if isinstance(field, forms.PassphraseField)}
    assert asking == {"passphrase", "passphrase_again", "current"}
    assert [name for name in asking if not is_secret(name)] == []


def test_a_passphrase_sent_after_the_session_ended_is_not_written_into_the_page(person):
    sent = {"current": PASSPHRASE, "passphrase": "tambour lantern oblique fig"}
    answer = Client().post("/me/passphrase/", sent)
    assert answer.status_code == 401
    assert not any(words in answer.text for words in sent.values())


def test_repeated_fields_keep_their_order():
    request = RequestFactory().post("/x/", {"ask": ["first", "second"], "note": "n"})
    assert KeptText.from_post(request).fields == (("ask", "first"), ("ask", "second"), ("note", "n"))


def test_too_much_text_is_not_carried_but_said(signed_out):
    page = signed_out.post("/me/", {"display_name": "x" * (MOST_CHARACTERS + 1)}).content.decode()
    assert 'name="kept"' not in page
    assert "too long to carry over" in page


@pytest.mark.parametrize("text", ["", "[]", "{}", "[[1, 2]]", "nonsense", '[["a"]]', '[["a", "b", "c"]]', "null", "7"])
def test_what_is_not_kept_text_is_ignored(text):
    assert KeptText.from_json(text) is None


def test_reading_back_gives_the_same_fields():
    kept = KeptText((("a", "ü\n'\""), ("a", ""), ("b", "x")))
    assert KeptText.from_json(kept.as_json()) == kept


def test_a_form_from_elsewhere_is_refused_and_nothing_of_it_is_kept(person):
    browser = Client(enforce_csrf_checks=True)
    browser.get("/sign-in/")
    response = browser.post("/me/", {"display_name": "Mallory"}, headers={"origin": "https://elsewhere.example"})
    assert response.status_code == 403
    assert "Mallory" not in response.content.decode()


def test_a_stale_token_from_a_page_of_ours_is_offered_to_send_again(person):
    browser = Client(enforce_csrf_checks=True)
    browser.force_login(person, backend="accounts.backends.NameOrEmailBackend")
    response = browser.post(
        "/me/",
        {"display_name": "Ana M.", "email": "", "csrfmiddlewaretoken": "x" * 64},
        headers={"origin": "http://testserver"},
    )
    page = response.content.decode()
    assert response.status_code == 403
    assert hidden(page, "display_name") == "Ana M."
    assert "data-send-again" not in page
    assert User.objects.get(pk=person.pk).display_name == "Ana Moreno"
    fields = {"display_name": "Ana M.", "email": "", "csrfmiddlewaretoken": token(page)}
    assert browser.post("/me/", fields).status_code == 302


def test_an_answer_under_way_does_not_spoil_the_form_that_is_offered(person):
    """A part of the page asked for before the form was sent comes in after its answer, with the cookie of before."""
    browser, part = Client(enforce_csrf_checks=True), Client()
    browser.force_login(person, backend="accounts.backends.NameOrEmailBackend")
    browser.get("/me/")
    part.cookies.load({name: morsel.value for name, morsel in browser.cookies.items()})
    stale = {"display_name": "Ana M.", "email": "", "csrfmiddlewaretoken": "x" * 64}
    page = browser.post("/me/", stale, headers={"origin": "http://testserver"}).content.decode()
    late = part.get("/me/")
    browser.cookies.update(late.cookies)
    assert browser.post("/me/", stale | {"csrfmiddlewaretoken": token(page)}).status_code == 302


@pytest.mark.parametrize("method", ["get", "post"])
def test_htmx_is_told_to_sign_in_elsewhere_and_the_page_stays(signed_out, method):
    response = getattr(signed_out, method)("/me/", headers={"hx-request": "true"})
    assert response.status_code == 401
    assert "your text stays here" in response.content.decode()
    assert response["HX-Retarget"] == "#main"
    assert "<html" not in response.content.decode()


def test_a_script_that_posts_json_gets_401(signed_out):
    assert signed_out.post("/me/", "{}", content_type="application/json").status_code == 401
