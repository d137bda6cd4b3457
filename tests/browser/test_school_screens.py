"""The school's own screens in a real browser: found by axe to be in order, and they fit a small phone."""

import pytest

from grade_bands.actions import load_standards
from tests.browser.axe import faults, faults_in_both_themes

pytestmark = pytest.mark.django_db(transaction=True)

PAGES = [
    "/school/",
    "/school/people/",
    "/school/classes/",
    "/school/classes/new/",
    "/school/years/new/",
    "/school/grades/",
    "/school/grades/new/",
    "/school/bands/new/",
    "/school/backups/",
    "/school/recovery-code/",
    "/me/",
    "/me/words/",
    "/what-is-kept/",
]


@pytest.mark.parametrize("width", [1280, 320])
def test_administrators_screens(open_as, administrator, owner, year, width):
    load_standards()
    year.term_starts = ["2026-08-17", "2027-01-11"]
    year.save()
    page = open_as(administrator, width=width)
    for path in [*PAGES, f"/school/years/{year.pk}/"]:
        page.goto(path)
        assert faults_in_both_themes(page) == [], path
        assert page.evaluate("document.documentElement.scrollWidth") <= width, path


@pytest.mark.parametrize("width", [1280, 320])
def test_sign_in(open_as, owner, width):
    page = open_as(None, width=width)
    page.goto("/sign-in/")
    assert faults(page) == []
    page.get_by_role("button", name="Sign in").click()
    assert faults(page) == []
    page.goto("/recovery/")
    assert faults_in_both_themes(page) == []
    assert page.evaluate("document.documentElement.scrollWidth") <= width


def test_everything_on_the_sign_in_page_can_be_done_by_keyboard(open_as, owner):
    page = open_as(None)
    page.goto("/sign-in/")
    page.get_by_label("Name or e-mail").focus()
    page.keyboard.type("owner")
    page.keyboard.press("Tab")
    page.keyboard.type("wrong wrong wrong")
    page.keyboard.press("Enter")
    page.get_by_text("don't go together").wait_for()
    assert page.get_by_label("Name or e-mail").input_value() == "owner"
