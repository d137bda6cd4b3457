"""What a passphrase must be."""

import pytest
from django.contrib.auth.password_validation import validate_password
from django.core.exceptions import ValidationError

from accounts.models import User
from tests.factories import SchoolFactory

pytestmark = pytest.mark.django_db

PERSON = User(sign_in_name="l.quiroga", display_name="Pilar Quiroga", email="pilar.quiroga@school.example")


@pytest.mark.parametrize(
    "passphrase",
    ["otter violin sandwich moon", "aaaaaaaaaaaaaab lantern", "ñandú sombrero gaviota", "14 geese crossed the quarry"],
)
def test_long_and_unlikely_is_enough(passphrase):
    validate_password(passphrase, PERSON)


@pytest.mark.parametrize("passphrase", ["otter violin", "Tr0ub4dor&3", "x" * 14])
def test_short_ones_are_refused_whatever_is_in_them(passphrase):
    with pytest.raises(ValidationError, match="15 characters"):
        validate_password(passphrase, PERSON)


@pytest.mark.parametrize(
    "passphrase",
    [
        "Correct Horse Battery Staple",
        "correct-horse-battery-staple",
        "passwordpassword",
        "aaaaaaaaaaaaaaaa",
        "abcabcabcabcabcabc",
        "abcdefghijklmnop",
        "zyxwvutsrqponmlk",
        "1234567890123456",
        "qwertyuiopasdfgh",
    ],
)
def test_those_that_everybody_tries_are_refused(passphrase):
    with pytest.raises(ValidationError, match="Many people would try this one"):
        validate_password(passphrase, PERSON)


@pytest.mark.parametrize("passphrase", ["pilarquirogapilar", "Quiroga Pilar 2026", "larkfieldschool1"])
def test_ones_own_name_and_the_schools_are_refused(passphrase):
    SchoolFactory()
    with pytest.raises(ValidationError, match="mostly your own name"):
        validate_password(passphrase, PERSON)
