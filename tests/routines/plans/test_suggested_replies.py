"""The questions with which suggestions answer."""

import pytest

from routines.counting import Audience
from routines.counting.claims import FAMILIES
from routines.plans.suggestions.sentences import replies_to
from routines.words import LANGUAGES
from tests.counting.claims import a_claim


@pytest.mark.parametrize("language", LANGUAGES)
def test_every_family_is_answered_by_a_question_of_its_own_or_a_way_to_look(language: str) -> None:
    for level in (0, 4):
        replies = [replies_to(a_claim(family), Audience(level, language))[0] for family in FAMILIES]
        assert len(set(replies)) == len(FAMILIES)


@pytest.mark.parametrize(("language", "digit"), [("en", "digit"), ("es", "cifra")])
def test_the_minutes_are_a_part_and_no_digit(language: str, digit: str) -> None:
    for family in ("digit", "digit-run"):
        assert digit in " ".join(replies_to(a_claim(family, place=0), Audience(1, language)))
        assert digit not in " ".join(replies_to(a_claim(family, part="minutes"), Audience(1, language)))


@pytest.mark.parametrize(("language", "digit"), [("en", "digit"), ("es", "cifra")])
def test_who_has_not_met_digits_is_not_asked_about_them(language: str, digit: str) -> None:
    for claim in (a_claim("digit", place=0), a_claim("digit-run", place=0), a_claim("digit-run", place=1)):
        assert digit not in " ".join(replies_to(claim, Audience(0, language)))
