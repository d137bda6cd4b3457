"""What is typed as a passphrase may be looked at until it is sent."""

import pytest
from playwright.sync_api import Page, expect

from accounts.actions import invite, offer_new_passphrase
from accounts.models import School

pytestmark = pytest.mark.django_db(transaction=True)

PASSPHRASE = "otter violin sandwich moon"
NOT_SENT = "document.addEventListener('submit', event => event.preventDefault())"


@pytest.fixture
def asking(owner, administrator) -> dict[str, object]:
    """Every page that asks for a passphrase, and who opens it."""
    administrator.set_password(PASSPHRASE)
    administrator.save()
    invited = invite(by=administrator, display_name="New", role="teacher")
    return {
        "/sign-in/": None,
        "/recovery/": None,
        f"/invitation/{invited}/": None,
        f"/new-passphrase/{offer_new_passphrase(by=administrator, person=owner)}/": None,
        "/me/": owner,
        "/school/recovery-code/": administrator,
    }


def shown(page: Page) -> list[str]:
    return page.locator(".typed-unseen > input").evaluate_all("all => all.map(one => one.type)")


def is_shown_and_hidden_again(page: Page) -> None:
    fields, buttons = page.locator(".typed-unseen > input"), page.locator("button[data-shows]")
    hidden = ["password"] * fields.count()
    assert hidden == shown(page)
    assert hidden
    assert page.locator("input[type=password]").count() == buttons.count() == len(hidden)
    for at in range(len(hidden)):
        fields.nth(at).fill(PASSPHRASE)
        buttons.nth(at).click()
        assert shown(page) == [*hidden[:at], "text", *hidden[at + 1 :]]
        expect(buttons.nth(at)).to_have_attribute("aria-pressed", "true")
        buttons.nth(at).press("Enter")
        assert shown(page) == hidden
        expect(buttons.nth(at)).to_have_attribute("aria-pressed", "false")
        assert fields.nth(at).input_value() == PASSPHRASE
        assert fields.nth(at).get_attribute("spellcheck") == "false"
    buttons.last.click()
    page.evaluate(NOT_SENT)
    fields.last.evaluate("field => { field.form.noValidate = true; field.form.requestSubmit(); }")
    assert shown(page) == hidden
    assert set(buttons.evaluate_all("all => all.map(one => one.getAttribute('aria-pressed'))")) == {"false"}


def test_on_every_page_that_asks_for_one(open_as, asking):
    for address, person in asking.items():
        page = open_as(person, width=360)
        page.goto(address)
        is_shown_and_hidden_again(page)


def test_at_set_up(open_as, school):
    School.objects.all().delete()
    page = open_as(None)
    page.goto("/set-up/")
    is_shown_and_hidden_again(page)


def test_each_button_says_which_passphrase_it_shows(open_as, owner):
    page = open_as(owner)
    page.goto("/me/")
    for name in ("Show Your passphrase until now", "Show New passphrase", "Show The same again"):
        expect(page.get_by_role("button", name=name)).to_be_visible()


def test_a_page_that_is_left_hides_it(open_as, school):
    """Some browsers keep a page as it is and show it again on the way back. Here it is only told that it is left."""
    page = open_as(None)
    page.goto("/sign-in/")
    page.get_by_label("Passphrase").fill(PASSPHRASE)
    page.get_by_role("button", name="Show").click()
    assert shown(page) == ["text"]
    page.evaluate("window.dispatchEvent(new PageTransitionEvent('pagehide', { persisted: true }))")
    assert shown(page) == ["password"]


def test_without_scripts_it_is_a_plain_field(open_as, school):
    page = open_as(None, java_script_enabled=False)
    page.goto("/sign-in/")
    assert shown(page) == ["password"]
    expect(page.get_by_role("button", name="Show")).to_have_count(0)
