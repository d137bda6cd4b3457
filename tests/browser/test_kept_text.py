"""In a real browser: a session that ended before a save loses no word."""

import pytest

from accounts.models import User
from tests.factories import UserFactory

pytestmark = pytest.mark.django_db(transaction=True)

PASSPHRASE = "otter violin sandwich moon"


def test_text_typed_before_the_session_ended_is_saved_after_signing_in_again(open_as):
    person = UserFactory(sign_in_name="moreno", display_name="Ana", passphrase=PASSPHRASE)
    page = open_as(person)
    page.goto("/me/")
    page.get_by_label("Your name").fill('Ana "Lu" Moreno & co')
    page.context.clear_cookies(name="countfold_session")
    page.get_by_role("button", name="Save", exact=True).click()

    page.get_by_role("heading", name="Your text is kept. Sign in to save it.").wait_for()
    page.get_by_label("Name or e-mail").fill("moreno")
    page.get_by_label("Passphrase").fill(PASSPHRASE)
    page.get_by_role("button", name="Sign in").click()

    page.get_by_text("Saved.").wait_for()
    assert User.objects.get(pk=person.pk).display_name == 'Ana "Lu" Moreno & co'


def test_signing_in_again_in_another_tab_does_not_lose_it_either(open_as):
    person = UserFactory(sign_in_name="moreno", display_name="Ana", passphrase=PASSPHRASE)
    first = open_as(person)
    first.goto("/me/")
    first.get_by_label("Your name").fill("Ana Moreno")
    first.context.clear_cookies(name="countfold_session")
    second = first.context.new_page()
    second.goto("/sign-in/")
    second.get_by_label("Name or e-mail").fill("moreno")
    second.get_by_label("Passphrase").fill(PASSPHRASE)
    second.get_by_role("button", name="Sign in").click()
    second.get_by_role("link", name="Bank", exact=True).wait_for()

    first.get_by_role("button", name="Save", exact=True).click()
    first.get_by_role("button", name="Save it now").click()
    first.get_by_text("Saved.").wait_for()
    assert User.objects.get(pk=person.pk).display_name == "Ana Moreno"
