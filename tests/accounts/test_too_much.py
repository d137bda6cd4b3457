"""A form with too many fields or too many bytes gets an answer about that, with what was typed."""

from html import unescape
from urllib.parse import urlencode
from uuid import uuid4

import pytest
from django.conf import settings
from django.test import Client
from django.urls import reverse

from accounts.kept_text import MOST_CHARACTERS, MOST_FIELDS, KeptText

FORM = "application/x-www-form-urlencoded"
US = {"HTTP_ORIGIN": "http://testserver"}
HTMX = {"HTTP_HX_REQUEST": "true"}
TEXT = "Typed for an hour & <more>"


def too_many(**more: str) -> dict[str, str]:
    return {"notes": TEXT, "passphrase": "otter violin sandwich moon", **more, **{f"f{n}": "x" for n in range(2_000)}}


def test_too_many_fields_get_a_sentence_and_the_texts_back(owner, visit):
    answer = visit(owner).post(reverse("plan_edit", kwargs={"key": uuid4()}), urlencode(too_many()), FORM, **US)
    assert answer.status_code == 413
    assert (
        "This page holds more than 2,000 fields, the most that is taken at once. Nothing of it was kept." in answer.text
    )
    assert "another device" not in answer.text
    assert TEXT in unescape(answer.text)
    assert TEXT not in answer.text
    assert "otter violin" not in answer.text


@pytest.mark.parametrize("origin", [{}, {"HTTP_ORIGIN": "https://elsewhere.example"}, {"HTTP_ORIGIN": "null"}])
def test_what_another_site_sends_is_not_shown(owner, visit, origin):
    answer = visit(owner).post("/me/", urlencode(too_many()), FORM, **origin)
    assert answer.status_code == 413
    assert "Typed for an hour" not in answer.text


def test_the_signed_out_get_the_same_sentence(signed_out):
    answer = signed_out.post("/sign-in/", urlencode(too_many()), FORM)
    assert answer.status_code == 413
    assert "more than 2,000 fields" in answer.text


def test_it_comes_before_the_token_is_asked_for(owner):
    client = Client(enforce_csrf_checks=True)
    client.force_login(owner, backend="accounts.backends.NameOrEmailBackend")
    assert client.post("/me/", urlencode(too_many()), FORM).status_code == 413


def test_too_many_bytes_get_a_sentence(owner, visit):
    answer = visit(owner).post("/me/", urlencode({"notes": "x" * 5_300_000}), FORM, **US)
    assert answer.status_code == 413
    assert "This page holds more than 5 MB of text, the most that is taken at once." in answer.text


def test_too_many_fields_beside_a_file_get_a_sentence(owner, visit):
    answer = visit(owner).post(reverse("import"), too_many(), **US)
    assert answer.status_code == 413
    assert "more than 2,000 fields" in answer.text


def test_a_script_gets_the_sentence_alone(owner, visit):
    address = reverse("plan_draft", kwargs={"key": uuid4()})
    answer = visit(owner).post(address, urlencode(too_many()), FORM, **HTMX)
    assert answer.status_code == 413
    assert answer.text == (
        "Not kept. This page holds more than 2,000 fields, the most that is taken at once. "
        "What you typed stays on this page."
    )


def test_as_many_fields_as_are_taken_can_be_kept_through_sign_in():
    assert settings.DATA_UPLOAD_MAX_NUMBER_FIELDS == MOST_FIELDS


@pytest.mark.parametrize("letter", ["x", "ñ", "五", "🐘", '"', "\n", "\x01"])
def test_as_long_a_text_as_is_kept_can_be_sent_back_whatever_its_letters(signed_out, letter):
    kept = KeptText((("notes", letter * (MOST_CHARACTERS - 5)),)).as_json()
    answer = signed_out.post("/sign-in/", urlencode({"name": "n", "passphrase": "p", "kept": kept}), FORM)
    assert answer.status_code == 422
    assert KeptText.from_json(kept) is not None


def test_a_text_too_long_to_be_carried_is_said_when_the_token_is_old(owner):
    client = Client(enforce_csrf_checks=True)
    client.force_login(owner, backend="accounts.backends.NameOrEmailBackend")
    answer = client.post("/me/", {"notes": "x" * (MOST_CHARACTERS + 1)}, **US)
    assert answer.status_code == 403
    assert "the text was too long to carry over. Go back one page: it is still there." in answer.text
    assert "Your text is not saved yet" not in client.post("/me/", {"notes": "short"}).text


def test_an_old_token_is_told_from_a_plan_of_somebody_else(owner, teammate, visit):
    client = Client(enforce_csrf_checks=True)
    client.force_login(owner, backend="accounts.backends.NameOrEmailBackend")
    stale = client.post(reverse("plan_draft", kwargs={"key": uuid4()}), {"title": "Fours"}, **HTMX)
    assert (stale.status_code, stale["X-Stale-Form"]) == (403, "1")
