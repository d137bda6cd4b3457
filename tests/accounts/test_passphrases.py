"""What a passphrase must be. Source: NIST SP 800-63B-4 (2025), 3.1.1.2, cited at each claim that rests on it."""

import random
import string
import unicodedata

import pytest
from django.contrib.auth.password_validation import validate_password
from django.core.exceptions import ValidationError

from accounts.models import User
from accounts.predictable import common_words, left_to_guess
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


# "Each Unicode code point SHALL be counted as a single character", after the form in which it is hashed.
@pytest.mark.parametrize("passphrase", ["açaí ñu öl ýsa", "🐍🎈🌙🍋🚲🎻🦉🌵🧦🍕🪁🐙🧩🎲"])
def test_length_is_counted_in_characters_of_the_normal_form(passphrase):
    assert len(passphrase) == 14
    for typed in (passphrase, unicodedata.normalize("NFD", passphrase)):
        with pytest.raises(ValidationError, match="15 characters"):
            validate_password(typed, PERSON)
        validate_password(typed + "ß", PERSON)


# "SHOULD permit a maximum password length of at least 64 characters"; ours is said in a sentence.
def test_long_ones_are_taken_up_to_a_bound_that_is_said():
    words = "otter violin sandwich quarry lantern nettle "
    validate_password((words * 7)[:256], PERSON)
    validate_password((words * 10)[:400], PERSON)
    with pytest.raises(ValidationError, match="400 characters at most"):
        validate_password((words * 10)[:401], PERSON)


def test_a_pasted_one_past_the_bound_is_neither_cut_nor_taken(visit, owner):
    typed = "otter violin sandwich quarry " * 60
    sent = {"current": "x", "passphrase": typed, "passphrase_again": typed}
    answer = visit(owner).post("/me/passphrase/", sent)
    assert answer.status_code == 422
    assert "400 characters at most" in answer.text
    assert "maxlength" not in answer.text[answer.text.index("New passphrase") :]


@pytest.mark.parametrize("sign", ["\x07", "\u0378", "\U000e0080"])
def test_a_sign_that_has_no_meaning_yet_is_refused(sign):
    with pytest.raises(ValidationError, match="does not know"):
        validate_password(f"otter violin sandwich {sign}", PERSON)


PATTERNS = [
    # one word again and again
    "monkey monkey monkey",
    "Monkey-Monkey-Monkey!",
    "monkeymonkeydragon1",
    "monkey1monkey2monkey3",
    "lantern1lantern2lantern3",
    "elephant elephant 1",
    "abcabcabcabcabc",
    "asdfasdfasdfasdf",
    "violin moon violin moon",
    # runs and walks
    "1234567890abcde",
    "qwertyuiop12345",
    "qwertyuiopasdfghjkl1",
    "1qaz2wsx3edc4rfv",
    "poiuytrewq098765",
    "246824682468246",
    "abcdefghijklmno1",
    # a well-known word with what everybody appends
    "Password123456!",
    "P@ssw0rd12345678",
    "Summer2026!!!!!!!",
    "Summer2025Summer2026",
    "football2026football2027",
    "Elephants123456!",
    "welcome to our school 2026!",
    "correcthorsebatterystaple1!",
    "20242025202620272028",
    "!!!!!!!!!!!!!!!!!!",
]


@pytest.mark.parametrize("passphrase", PATTERNS)
def test_hardly_more_than_a_pattern_is_refused(passphrase):
    with pytest.raises(ValidationError, match="Many people would try this one"):
        validate_password(passphrase, PERSON)


# No composition rules: "SHALL NOT impose other composition rules". Words, whatever they are made of.
UNLIKELY = [
    "otter violin sandwich moon",
    "monkey dragon sunshine football",  # four of the best-known words, but four that don't belong together
    "lantern quarry biscuit seven",
    "the cat sat on the mat beside the dog",
    "k$7!pQ@9#zL&2^w",
    "839204817265093",
    "春眠不覚暁処処聞啼鳥夜来風雨声",
    "надёжный чайник у окна",
    "कमल नदी पहाड़ चिड़िया",
    "ten green kettles in 1984",
]


@pytest.mark.parametrize("passphrase", UNLIKELY)
def test_what_has_enough_beside_its_patterns_passes(passphrase):
    validate_password(passphrase, PERSON)


def test_false_alarms_are_few():
    """Four different words of the list of best-known ones, and fifteen random characters, as password managers make them."""
    luck = random.Random(20261128)
    words = sorted(word for word in common_words() if word.isalpha() and len(word) < 10)
    of_words = [" ".join(luck.sample(words, 4)) for _ in range(600)]
    of_characters = ["".join(luck.choices(string.printable[:94], k=15)) for _ in range(600)]
    assert sum(left_to_guess(passphrase) < 9 for passphrase in of_words) <= 6
    assert sum(left_to_guess(passphrase) < 9 for passphrase in of_characters) == 0


@pytest.mark.parametrize("passphrase", ["p.i.l.a.r quiroga 12345", "Quiroga!Quiroga!2026"])
def test_ones_own_name_with_a_pattern_is_refused(passphrase):
    with pytest.raises(ValidationError, match=r"mostly your own name|Many people"):
        validate_password(passphrase, PERSON)


def test_ones_own_name_among_other_words_is_no_matter():
    validate_password("Pilar feeds eleven llamas", PERSON)
