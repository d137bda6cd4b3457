"""Signing in and out."""

import json
from datetime import timedelta

import pytest
from axes.models import AccessAttempt
from django.test import Client

from accounts.models import User
from tests.factories import UserFactory

PASSPHRASE = "otter violin sandwich moon"


@pytest.fixture
def person(school) -> User:
    return UserFactory(sign_in_name="moreno", email="moreno@school.example", passphrase=PASSPHRASE)


def sign_in(client: Client, name: str, passphrase: str = PASSPHRASE, **more: str):
    return client.post("/sign-in/", {"name": name, "passphrase": passphrase, **more})


def is_signed_in(client: Client) -> bool:
    return client.get("/me/").status_code == 200


@pytest.mark.parametrize("name", ["moreno", "MORENO", "moreno@school.example", " Moreno@School.example "])
def test_name_or_email_signs_in(signed_out, person, name):
    response = sign_in(signed_out, name)
    assert (response.status_code, response.url) == (302, "/")
    assert is_signed_in(signed_out)


def test_after_signing_in_one_gets_where_one_wanted(signed_out, person):
    asked = signed_out.get("/me/")
    assert asked.url == "/sign-in/?next=/me/"
    assert 'name="next" value="/me/"' in signed_out.get(asked.url).content.decode()
    assert sign_in(signed_out, "moreno", next="/me/").url == "/me/"


@pytest.mark.parametrize("elsewhere", ["https://elsewhere.example/", "//elsewhere.example/", "javascript:alert(1)"])
def test_next_never_leads_away_from_here(signed_out, person, elsewhere):
    assert sign_in(signed_out, "moreno", next=elsewhere).url == "/"


def test_a_wrong_passphrase_keeps_the_name_and_says_one_sentence(signed_out, person):
    response = sign_in(signed_out, "moreno", "not that one at all")
    assert response.status_code == 422
    assert 'value="moreno"' in response.content.decode()
    assert "go together" in response.content.decode()
    assert "not that one at all" not in response.content.decode()
    assert not is_signed_in(signed_out)


def test_an_unknown_name_is_answered_like_a_wrong_passphrase(signed_out, person):
    assert "go together" in sign_in(signed_out, "nobody").content.decode()


def test_empty_fields_are_asked_for(signed_out):
    page = sign_in(signed_out, "", "").content.decode()
    assert "Write your sign-in name or your e-mail." in page
    assert "Write your passphrase." in page


def test_someone_who_left_cannot_sign_in(signed_out, person):
    person.leave()
    assert sign_in(signed_out, "moreno").status_code == 422


def test_eight_wrong_tries_stop_that_name_from_that_address_only(signed_out, person):
    colleague = UserFactory(sign_in_name="ota", passphrase=PASSPHRASE)
    for _try in range(8):
        answer = sign_in(signed_out, "Moreno", "wrong wrong wrong wrong")
    assert answer.status_code == 429
    assert "Wait a quarter of an hour" in answer.content.decode()
    assert sign_in(signed_out, "moreno").status_code == 429
    assert sign_in(Client(), colleague.sign_in_name).status_code == 302
    assert sign_in(Client(REMOTE_ADDR="10.1.1.7"), "moreno").status_code == 302


def test_name_and_email_share_one_counter_however_they_are_typed(signed_out, person):
    ways = ["moreno", "MORENO", "moreno@school.example", "Moreno@School.example", " moreno", "ｍoreno"]
    answers = [sign_in(signed_out, name, "wrong wrong wrong wrong").status_code for name in [*ways, *ways][:8]]
    assert answers == [422] * 7 + [429]
    for name in ways:
        assert sign_in(signed_out, name).status_code == 429


def test_the_right_passphrase_forgets_the_tries(signed_out, person):
    for _try in range(7):
        sign_in(signed_out, "moreno", "wrong wrong wrong wrong")
    assert sign_in(signed_out, "moreno@school.example").status_code == 302
    for _try in range(7):
        assert sign_in(Client(), "moreno", "wrong wrong wrong wrong").status_code == 422


def test_the_wait_ends_when_it_was_said_to_end(signed_out, person):
    for _try in range(8):
        sign_in(signed_out, "moreno", "wrong wrong wrong wrong")
    attempts = AccessAttempt.objects.filter(username="moreno")
    began = attempts.get().attempt_time
    assert sign_in(signed_out, "moreno", "another wrong one").status_code == 429
    assert (attempts.get().attempt_time, attempts.get().failures_since_start) == (began, 8)
    attempts.update(attempt_time=began - timedelta(minutes=16))
    assert sign_in(signed_out, "moreno").status_code == 302


def test_nothing_that_was_typed_at_a_failed_try_is_kept(signed_out, person):
    kept = json.dumps([["seen", "planted mulberry"]])
    sign_in(signed_out, "moreno", "planted medlar passphrase", kept=kept, next="/plantedquince/")
    row = AccessAttempt.objects.get()
    assert "failures" in {field.name.split("_")[0] for field in row._meta.fields}
    for word in ("medlar", "mulberry", "quince"):
        assert word not in row.post_data + row.get_data + row.path_info


def test_sign_out_ends_the_session(visit, owner):
    browser = visit(owner)
    assert browser.post("/sign-out/").url == "/sign-in/"
    assert not is_signed_in(browser)


@pytest.mark.parametrize("way", ["/sign-out/", "/sign-out/everywhere/"])
def test_what_waits_to_be_said_to_her_goes_with_her(visit, owner, way):
    browser = visit(owner)
    browser.post("/me/", {"display_name": "Ana Moreno", "email": ""})  # and the page that it leads to is never opened
    assert "countfold_said" in browser.cookies
    page = browser.post(way, follow=True).text
    assert "Saved." not in page
    assert ("signed out on every device" in page) == ("everywhere" in way)


def test_sign_out_needs_a_post(visit, owner):
    assert visit(owner).get("/sign-out/").status_code == 405


def test_sign_out_everywhere_is_a_button_of_ones_own(visit, owner):
    at_home, in_class = visit(owner), visit(owner)
    assert at_home.post("/sign-out/everywhere/").status_code == 302
    assert not is_signed_in(in_class)


def test_a_signed_in_person_is_sent_on_from_the_sign_in_page(visit, owner):
    assert visit(owner).get("/sign-in/?next=/me/").url == "/me/"


def test_sign_in_refuses_a_form_without_its_token(person):
    assert sign_in(Client(enforce_csrf_checks=True), "moreno").status_code == 403
