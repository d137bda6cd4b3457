"""Two ways of typing the same: passphrases, and the names and e-mails people sign in with."""

import unicodedata
from importlib import import_module

import pytest
from django.apps import apps
from django.db import IntegrityError, connection
from django.test import Client
from hypothesis import given
from hypothesis import strategies as st

from accounts.models import User
from accounts.same_text import passphrase_text, sign_in_text
from tests.factories import UserFactory

COMPOSED = "caf\u00e9 corti\u00e7a \u00f1and\u00fa lago"
DECOMPOSED = unicodedata.normalize("NFD", COMPOSED)
NO_BREAK = COMPOSED.replace(" ", "\u00a0")


# Unicode Standard Annex 15, table "Canonical composites": Å as U+00C5, U+0041 U+030A and U+212B are one character.
@pytest.mark.parametrize("typed", ["\u00c5", "A\u030a", "\u212b"])
def test_one_character_however_it_is_encoded(typed):
    assert passphrase_text(typed) == "\u00c5"


# The same annex, "Compatibility composites": ligature and superscript differ in NFC, as they do to the eye.
@pytest.mark.parametrize(("typed", "other"), [("\ufb01", "fi"), ("2\u2075", "25"), ("A", "a")])
def test_what_looks_different_stays_different_in_a_passphrase(typed, other):
    assert passphrase_text(typed) != passphrase_text(other)


# RFC 8265 4.2.2: any non-ASCII space is mapped to SPACE.
@pytest.mark.parametrize("space", ["\u00a0", "\u2009", "\u3000"])
def test_every_space_is_a_space(space):
    assert passphrase_text(f"a{space}b") == "a b"


@given(st.text())
def test_the_form_of_a_form_is_itself(typed):
    assert passphrase_text(passphrase_text(typed)) == passphrase_text(typed)
    assert sign_in_text(sign_in_text(typed)) == sign_in_text(typed)


@pytest.mark.parametrize("set_as", [COMPOSED, DECOMPOSED, NO_BREAK])
@pytest.mark.parametrize("typed", [COMPOSED, DECOMPOSED, NO_BREAK])
def test_a_passphrase_is_right_in_every_form(school, set_as, typed):
    person = UserFactory(sign_in_name="moreno")
    person.set_password(set_as)
    person.save()
    assert Client().post("/sign-in/", {"name": "moreno", "passphrase": typed}).status_code == 302
    assert person.check_password(COMPOSED.upper()) is False


def test_one_kept_as_it_was_typed_still_opens_and_is_then_kept_in_one_form(school):
    # The factory hashes what it is given, as people's passphrases were hashed before.
    person = UserFactory(sign_in_name="moreno", passphrase=DECOMPOSED)
    before = person.password
    assert Client().post("/sign-in/", {"name": "moreno", "passphrase": COMPOSED}).status_code == 422
    assert Client().post("/sign-in/", {"name": "moreno", "passphrase": DECOMPOSED}).status_code == 302
    person.refresh_from_db()
    assert person.password != before
    assert Client().post("/sign-in/", {"name": "moreno", "passphrase": COMPOSED}).status_code == 302


NAMES = [
    ("Óscar", "óSCAR"),
    ("Óscar", "O\u0301scar"),
    ("straße", "STRASSE"),
    ("Ωmega", "ωMEGA"),
    ("Жанна", "жАННА"),
    ("lee", "\uff4c\uff45\uff45"),  # full-width letters of an East Asian keyboard
]


@pytest.mark.parametrize(("name", "typed"), NAMES)
def test_a_name_is_found_however_it_is_typed(db, name, typed):
    person = UserFactory(sign_in_name=name)
    assert User.objects.for_sign_in(f" {typed} ").get() == person
    assert User.objects.get_by_natural_key(typed) == person


@pytest.mark.parametrize(("name", "typed"), NAMES)
def test_and_nobody_else_can_have_it(db, name, typed):
    UserFactory(sign_in_name=name)
    with pytest.raises(IntegrityError):
        UserFactory(sign_in_name=typed)


@pytest.mark.parametrize(("name", "typed"), NAMES)
def test_a_name_that_is_taken_is_said_on_the_page_of_the_invitation(school, administrator, name, typed):
    from accounts.actions import invite

    UserFactory(sign_in_name=name)
    token = invite(by=administrator, display_name="New", role="teacher")
    fields = {"passphrase": COMPOSED, "passphrase_again": DECOMPOSED, "display_name": "New", "email": ""}
    answer = Client().post(f"/invitation/{token}/", {**fields, "sign_in_name": typed})
    assert answer.status_code == 422
    assert "Someone already signs in with this name" in answer.text
    assert Client().post(f"/invitation/{token}/", {**fields, "sign_in_name": "another"}).status_code == 302


def test_an_email_is_found_and_kept_unique_however_it_is_typed(visit, school):
    person = UserFactory(email="Zoe@München.example")
    assert User.objects.for_sign_in("ZOE@MU\u0308NCHEN.example").get() == person
    assert User.objects.for_sign_in("zoe\uff20münchen.example").get() == person
    answer = visit(UserFactory()).post("/me/", {"display_name": "Other", "email": "ZOE@MÜNCHEN.example"})
    assert answer.status_code == 422
    assert "Someone already has this e-mail" in answer.text


def test_names_from_before_are_folded_and_none_is_lost(db):
    fold = import_module("accounts.migrations.0003_fold_sign_in_names").fold
    rows = [("Óscar", "Óscar@x.example"), ("óscar", "óscar@x.example"), ("óscar-2", ""), ("plain", "plain@x.example")]
    with connection.cursor() as cursor:
        for name, email in rows:
            sql = "UPDATE accounts_user SET sign_in_name = %s, email = %s WHERE id = %s"
            cursor.execute(sql, [name, email, UserFactory().pk])
    fold(apps, None)
    kept = [(person.sign_in_name, person.email) for person in User.objects.order_by("pk")]
    assert kept == [("óscar", "óscar@x.example"), ("óscar-2", ""), ("óscar-2-2", ""), ("plain", "plain@x.example")]
