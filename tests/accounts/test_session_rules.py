"""What docs/sign_in_rules.md asks of sessions and passphrase fields, where no other test shows it; and that its tests exist."""

import ast
import math
import re
from datetime import timedelta
from pathlib import Path

import pytest
from django.contrib.auth.hashers import PBKDF2PasswordHasher
from django.contrib.auth.models import AnonymousUser
from django.contrib.sessions.backends.base import VALID_KEY_CHARS
from django.contrib.sessions.models import Session
from django.test import Client
from django.utils import timezone

from accounts.models import User
from tests.factories import UserFactory

ROOT = Path(__file__).resolve().parents[2]
RULES = (ROOT / "docs/sign_in_rules.md").read_text(encoding="utf-8")
ROWS = [
    re.split(r" *\| *", line.strip("| "))
    for line in RULES.splitlines()
    if line.startswith("| ") and not line.startswith(("| rule", "| ---"))
]
PASSPHRASE = "otter violin sandwich moon"
KEPT_ALIVE = "countfold_session"


@pytest.fixture
def signed_in(school) -> Client:
    UserFactory(sign_in_name="moreno", passphrase=PASSPHRASE)
    client = Client()
    client.post("/sign-in/", {"name": "moreno", "passphrase": PASSPHRASE})
    return client


def test_every_row_says_what_is_done_and_where_it_is_shown():
    assert len(ROWS) > 30
    assert {len(row) for row in ROWS} == {4}
    assert {row[2] for row in ROWS} == {"yes", "no", "in part"}
    for rule, _what, done, shown in ROWS:
        assert done == "no" or "::" in shown, rule


@pytest.mark.parametrize("row", ROWS, ids=lambda row: row[0])
def test_every_test_that_is_named_exists(row):
    for path, name in re.findall(r"`([\w/]+\.py)::(\w+)`", row[3]):
        tree = ast.parse((ROOT / "tests" / path).read_text(encoding="utf-8"))
        assert name in {node.name for node in tree.body if isinstance(node, ast.FunctionDef)}, f"{path}::{name}"


def test_signing_in_begins_a_new_session_and_ends_the_one_before(signed_in):
    first = signed_in.cookies[KEPT_ALIVE].value
    UserFactory(sign_in_name="lee", passphrase=PASSPHRASE)
    signed_in.get("/sign-in/")
    signed_in.post("/sign-out/")
    signed_in.cookies[KEPT_ALIVE] = "a" * 32  # one that somebody else put there
    signed_in.post("/sign-in/", {"name": "lee", "passphrase": PASSPHRASE})
    second = signed_in.cookies[KEPT_ALIVE].value
    assert second not in (first, "a" * 32)
    assert not Session.objects.filter(pk__in=[first, "a" * 32]).exists()


def test_signing_out_removes_the_session_from_the_server(signed_in):
    key = signed_in.cookies[KEPT_ALIVE].value
    signed_in.post("/sign-out/")
    assert not Session.objects.filter(pk=key).exists()
    thief = Client()
    thief.cookies[KEPT_ALIVE] = key
    assert thief.get("/me/").status_code == 302


def test_a_session_is_named_by_chance_alone_with_128_bits_or_more(signed_in):
    key = signed_in.cookies[KEPT_ALIVE].value
    assert set(key) <= set(VALID_KEY_CHARS)
    assert len(key) * math.log2(len(VALID_KEY_CHARS)) >= 128


def test_the_cookie_is_kept_from_scripts_and_other_sites_and_ends_within_thirty_days(signed_in):
    cookie = signed_in.cookies[KEPT_ALIVE]
    assert cookie["httponly"]
    assert cookie["samesite"] == "Lax"
    assert 0 < cookie["max-age"] <= 30 * 24 * 3600
    assert PASSPHRASE not in signed_in.get("/me/").text


def test_a_session_ends_two_weeks_after_signing_in_however_it_is_used(signed_in):
    session = Session.objects.get()
    assert timedelta(days=13) < session.expire_date - timezone.now() <= timedelta(days=14)
    signed_in.get("/me/")
    signed_in.post("/me/", {"display_name": "Luz Moreno"})
    assert Session.objects.get().expire_date == session.expire_date
    Session.objects.update(expire_date=timezone.now())
    assert signed_in.get("/me/").url.startswith("/sign-in/")


def test_a_new_passphrase_is_asked_for_with_advice(signed_in):
    for page in (Client().get("/recovery/").text, signed_in.get("/me/").text):
        assert "Four or five words" in page
        assert "another keyboard" in page


def test_passphrase_fields_are_masked_and_open_to_password_managers_and_to_pasting(signed_in):
    pages = {"/sign-in/": Client(), "/recovery/": Client(), "/me/": signed_in}
    purposes = set()
    for path, client in pages.items():
        fields = re.findall(r"<input[^>]*type=\"password\"[^>]*>", client.get(path).text)
        assert fields, path
        for field in fields:
            purposes |= set(re.findall(r'autocomplete="([\w-]+)"', field))
            assert "maxlength" not in field
            assert "value=" not in field
    assert purposes == {"current-password", "new-password"}
    scripts = [path.read_text(encoding="utf-8") for path in (ROOT / "static/js").rglob("*.js")]
    assert not any('addEventListener("paste"' in script for script in scripts)


@pytest.mark.django_db
def test_a_new_server_has_no_account_at_all():
    assert not User.objects.exists()


def test_passphrases_are_kept_salted_and_hashed_slowly(settings, db):
    settings.PASSWORD_HASHERS = ["django.contrib.auth.hashers.PBKDF2PasswordHasher"]
    one, other = User(sign_in_name="one"), User(sign_in_name="other")
    for person in (one, other):
        person.set_password(PASSPHRASE)
    kept = PBKDF2PasswordHasher().decode(one.password)
    assert kept["iterations"] >= 600_000
    assert one.password != other.password
    assert PASSPHRASE not in one.password


def test_nobody_is_asked_for_a_hint_or_a_question(signed_in):
    """Whatever a person is asked for about her account, beside the token of the form."""
    asked = set(re.findall(r'<input[^>]*name="(\w+)"', signed_in.get("/me/").text))
    asked |= set(re.findall(r'<input[^>]*name="(\w+)"', Client().get("/sign-in/").text))
    assert asked - {"csrfmiddlewaretoken", "next"} == {
        "name", "display_name", "email", "current", "passphrase", "passphrase_again"
    }  # fmt: skip


def test_who_is_signed_in_is_a_person_when_a_view_asks(signed_in):
    """Not what looks her up, and says so of itself, at each question."""
    assert type(signed_in.get("/me/").wsgi_request.user) is User
    assert type(Client().get("/sign-in/").wsgi_request.user) is AnonymousUser


def test_no_answer_lets_another_site_read_it(signed_in):
    elsewhere = {"origin": "https://elsewhere.example"}
    for path in (
        "/me/",
        "/",
        "/bank/",
        "/coverage/coverage.csv",
        "/file-format.json",
        "/board/status/",
        "/no-such-page/",
    ):
        answer = signed_in.get(path, headers=elsewhere)
        assert not any(name.lower().startswith("access-control-") for name in answer.headers), path
