"""Every address that leads to a page, as axe sees it on paper and on slate, wide and on a small phone.

A new page is found by itself. Screens in all their states, and with more on them, have tests of their own beside this one.
"""

import pytest
from django.urls import get_resolver

from accounts.actions import invite, offer_new_passphrase
from accounts.models import School
from tests.browser.axe import faults_in_both_themes
from tests.browser.test_nothing_missing import pages_for, school_life
from tests.config.test_urls import patterns

__all__ = ["school_life"]
pytestmark = [pytest.mark.django_db(transaction=True), pytest.mark.one_database]

WHO = ("owner", "coach", "administrator")
WIDTHS = [1280, 320]
PASSPHRASE = "otter violin sandwich moon"

NEITHER = {
    "sign_in": "test_signed_out, below",
    "plan_new": "leads to plan_edit with a fresh key",
    "set_up": "test_an_empty_server, below",
    "invitation": "test_signed_out, below",
    "new_passphrase": "test_signed_out, below",
    "lesson_pair_code": "tests/browser/test_pairing_screens.py",
    "erase_look": "tests/browser/test_erasing.py",
    "erase_progress": "tests/browser/test_erasing.py",
    "import_look": "tests/browser/test_background_work.py",
    "import_progress": "tests/browser/test_background_work.py",
    "booklet": "tests/browser/test_background_work.py",
}
"""Names of addresses that answer nobody here with a page: why, or the test that has axe look at them."""


def is_page(answer) -> bool:
    return answer.status_code == 200 and answer.get("Content-Type", "").startswith("text/html")


@pytest.fixture
def pages(request, visit, school_life, grade_two, year) -> dict[str, list[str]]:
    """The addresses by who looks at them: the first who is answered with a page. "" has those without one, by name."""
    clients = {name: visit(request.getfixturevalue(name)) for name in WHO}
    found: dict[str, list[str]] = {name: [] for name in (*WHO, "")}
    for (_path, entry), address in zip(patterns(get_resolver()), pages_for(school_life, grade_two, year), strict=True):
        if "." in address.split("/")[-1]:
            continue  # a file
        answers = {name: client.get(address) for name, client in clients.items()}
        if any(answer.status_code == 405 or is_data(answer) for answer in answers.values()):
            continue  # only forms are sent there, or scripts ask
        found[next((name for name in WHO if is_page(answers[name])), "")].append(
            address if any(map(is_page, answers.values())) else entry.name
        )
    return found


def is_data(answer) -> bool:
    return answer.status_code == 200 and not is_page(answer)


def looked_at(page, addresses: list[str], width: int) -> dict[str, list[str]]:
    wrong = {}
    for address in addresses:
        page.goto(address)
        if found := out_of_order(page, width):
            wrong[address] = found
    return wrong


def out_of_order(page, width: int) -> list[str]:
    for one in page.locator("details").all():
        one.evaluate("one => one.open = true")
    found = faults_in_both_themes(page)[:3]
    if page.evaluate("document.documentElement.scrollWidth") > width:
        found.append("scrolls sideways")
    return found


def send_empty(page) -> None:
    """As a browser would that checks nothing; the page comes back with what is wrong at its fields."""
    page.locator("main form").last.evaluate("form => { form.noValidate = true; form.requestSubmit() }")
    page.locator(".field-error").first.wait_for()


def test_every_address_is_a_page_that_is_looked_at_or_has_its_reason(pages):
    assert sorted(set(pages[""])) == sorted(NEITHER)
    assert {name: len(pages[name]) > least for name, least in (("owner", 35), ("administrator", 12))} == {
        "owner": True,
        "administrator": True,
    }


@pytest.mark.parametrize("width", WIDTHS)
@pytest.mark.parametrize("name", WHO)
def test_every_page(request, opened, pages, name, width):
    assert looked_at(opened(request.getfixturevalue(name), width=width), pages[name], width) == {}


@pytest.mark.parametrize("width", WIDTHS)
def test_signed_out(open_as, owner, administrator, width):
    link = f"/invitation/{invite(by=administrator, display_name='New', role='teacher')}/"
    other = f"/new-passphrase/{offer_new_passphrase(by=administrator, person=owner)}/"
    page = open_as(None, width=width)
    addresses = ["/sign-in/", "/recovery/", link, other, "/invitation/of-nobody/", "/no-such-page/"]
    assert looked_at(page, addresses, width) == {}
    for address in (link, other, "/sign-in/", "/recovery/"):
        page.goto(address)
        send_empty(page)
        assert (address, out_of_order(page, width)) == (address, [])


@pytest.mark.parametrize("width", WIDTHS)
def test_an_empty_server(open_as, school, width):
    page = open_as(None, width=width)
    School.objects.all().delete()
    assert looked_at(page, ["/set-up/"], width) == {}
    send_empty(page)
    assert out_of_order(page, width) == []


@pytest.mark.parametrize("width", WIDTHS)
def test_pages_that_a_form_leads_to(open_as, owner, administrator, width):
    administrator.set_password(PASSPHRASE)
    administrator.save()
    page = open_as(administrator, width=width)
    page.goto("/school/people/")
    page.locator("form[action$='/invite/']").get_by_label("Name").fill("Nadia Newcomer-Featherstonehaugh of the Valley")
    page.get_by_role("button", name="Make the link").click()
    page.get_by_role("link", name="Back to people").wait_for()
    assert out_of_order(page, width) == []
    page.goto("/school/recovery-code/")
    page.get_by_label("passphrase").fill(PASSPHRASE)
    page.get_by_role("button", name="Make a recovery code").click()
    page.wait_for_load_state("networkidle")
    assert out_of_order(page, width) == []
    page.goto("/me/")
    page.get_by_label("Name").first.fill("Ada Ames")
    page.context.clear_cookies(name="countfold_session")
    page.get_by_role("button", name="Save").first.click()
    page.get_by_text("Your text is kept").wait_for()
    assert out_of_order(page, width) == []
