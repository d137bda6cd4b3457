"""People: how they are found at sign-in, what may not be twice, and when their sessions end."""

import pytest
from django.core.exceptions import ValidationError
from django.db import IntegrityError

from accounts.models import User
from tests.factories import UserFactory

pytestmark = pytest.mark.django_db


def test_a_sign_in_name_is_found_in_either_case():
    person = UserFactory(sign_in_name="Moreno")
    assert User.objects.for_sign_in(" morENO ").get() == person


def test_an_email_is_found_in_either_case():
    person = UserFactory(email="Moreno@school.example")
    assert User.objects.for_sign_in("moreno@SCHOOL.example").get() == person


def test_two_people_cannot_share_a_name_that_differs_in_case_only():
    UserFactory(sign_in_name="lee")
    with pytest.raises(IntegrityError):
        UserFactory(sign_in_name="LEE")


def test_two_people_cannot_share_an_email_that_differs_in_case_only():
    UserFactory(email="lee@school.example")
    with pytest.raises(IntegrityError):
        UserFactory(email="LEE@school.example")


def test_many_people_may_have_no_email():
    UserFactory()
    UserFactory()
    assert User.objects.filter(email="").count() == 2


def test_a_sign_in_name_with_an_at_sign_is_refused_by_the_database():
    with pytest.raises(IntegrityError):
        UserFactory(sign_in_name="lee@school.example")


def test_a_name_that_is_taken_is_said_in_one_sentence():
    UserFactory(sign_in_name="lee")
    with pytest.raises(ValidationError) as refused:
        User(sign_in_name="LEE", display_name="Lee", password="x").full_clean()
    assert "Someone already signs in with this name" in str(refused.value)


def test_signing_out_everywhere_ends_the_sessions_of_that_person_only(visit, owner, coach):
    at_home, in_class, someone_else = visit(owner), visit(owner), visit(coach)
    owner.sign_out_everywhere()
    assert at_home.get("/me/").status_code == 302
    assert in_class.get("/me/").status_code == 302
    assert someone_else.get("/me/").status_code == 200


def test_someone_who_left_is_signed_out_and_cannot_come_in(visit, owner):
    browser = visit(owner)
    owner.leave()
    assert browser.get("/me/").status_code == 302


def test_roles_say_who_is_who(owner, coach, administrator):
    assert (owner.is_coach, owner.is_administrator) == (False, False)
    assert (coach.is_coach, coach.is_administrator) == (True, False)
    assert (administrator.is_coach, administrator.is_administrator) == (False, True)


def test_no_passphrase_at_all_is_never_right():
    assert not UserFactory().check_password(None)
