"""A school begins, and turns its year, in a real browser: what a person does for it is counted."""

from datetime import timedelta

import pytest
from django.utils import timezone
from playwright.sync_api import Page, expect

from accounts.models import User
from accounts.set_up_code import set_up_code
from grade_bands.models import ClassGroup, SchoolYear
from tests.browser.axe import faults_in_both_themes
from tests.browser.presses import count_from_here, done_on
from tests.factories import ClassGroupFactory, SchoolYearFactory, UserFactory

pytestmark = pytest.mark.django_db(transaction=True)

# Seconds, from the Keystroke-Level Model (Card, Moran and Newell 1980): pointing, pressing and letting go, making up
# one's mind; a character by an average typist, and a hand from the mouse to the keys and back.
POINT, PRESS, MIND, KEY, HAND = 1.1, 0.2, 1.35, 0.28, 0.4
PASSPHRASE = "otter violin sandwich moon"


def test_a_second_person_signs_in_from_another_browser(browser, live_server, transactional_db):
    """From an empty server to two people at work, by what the server prints and what the pages hand out."""
    own, others = (browser.new_context(base_url=live_server.url) for _browser in range(2))
    page = own.new_page()
    page.goto("/")
    page.get_by_label("Set-up code").fill(set_up_code())
    page.locator("[name=school-name]").fill("Larkfield School")
    page.locator("[name=administrator-display_name]").fill("Ada Ames")
    page.locator("[name=administrator-sign_in_name]").fill("ames")
    for name in ("passphrase", "passphrase_again"):
        page.locator(f"[name=administrator-{name}]").fill(PASSPHRASE)
    page.get_by_role("button", name="Open the school").click()
    page.goto("/school/people/")
    page.locator("[name=display_name]").fill("Nour Nadir")
    page.locator("form[action*=invite] button").click()
    link = page.get_by_label("The link").input_value()

    colleague = others.new_page()
    colleague.goto(link)
    expect(colleague.get_by_role("heading", name="Welcome to Larkfield School")).to_be_visible()
    colleague.locator("[name=sign_in_name]").fill("nadir")
    for name in ("passphrase", "passphrase_again"):
        colleague.locator(f"[name={name}]").fill("tambour lantern oblique fig")
    colleague.get_by_role("button", name="Start").click()
    expect(colleague.get_by_text("Nour Nadir").first).to_be_visible()
    # The link is used up, and each of the two is still signed in.
    again = others.browser.new_context(base_url=live_server.url).new_page()
    again.goto(link)
    expect(again.get_by_text("Welcome to Larkfield School")).to_have_count(0)
    page.goto("/school/people/")
    expect(page.get_by_role("row").filter(has_text="Nour Nadir")).to_contain_text("nadir")
    assert User.objects.count() == 2
    for context in (own, others, again.context):
        context.close()


@pytest.fixture
def twelve_classes(school, grade_two, grade_three):
    """Of the year that ends soon; the teachers of the first grade all change."""
    today = timezone.localdate()
    year = SchoolYearFactory(name="2026-27", starts_on=today - timedelta(days=300), ends_on=today + timedelta(days=20))
    people = [UserFactory(display_name=f"Teacher {number:02}") for number in range(13)]
    for number in range(12):
        grade = grade_two if number < 6 else grade_three
        ClassGroupFactory(name=f"Class {number:02}", grade=grade, year=year, teachers=[people[number]])
    return year


def seconds(presses: int, changes: int, characters: int) -> float:
    """How long it takes who knows what she wants: making up her mind at each field and each press."""
    return presses * (POINT + PRESS + MIND) + changes * (2 * HAND) + characters * KEY


def rename(page: Page, old: str, new: str) -> int:
    page.get_by_label(f"New name {old}").click()
    page.get_by_label(f"New name {old}").fill(new)
    return len(new)


def test_a_new_year_for_twelve_classes_takes_less_than_two_minutes(open_as, administrator, twelve_classes):
    """Every class has a new name, and four have another teacher; dates and all else stay as they are proposed."""
    page = open_as(administrator)
    page.goto("/school/classes/")
    count_from_here(page)
    page.get_by_role("link", name="New year").first.click()
    characters = 0
    for number in range(12):
        characters += rename(page, f"Class {number:02}", f"New {number:02}")
    for number in range(4):
        row = page.locator(".carried-classes > li").nth(number)
        row.locator("summary").click()
        row.get_by_label(f"Teacher {number:02}").click()
        row.get_by_label("Add by name").click()
        row.get_by_label("Add by name").fill("Teacher 12")
        characters += len("Teacher 12")
    page.get_by_role("button", name="Add the year").click()
    expect(page.locator(".message").first).to_contain_text("12 classes added")
    done = done_on(page)
    assert done.presses == 1 + 12 + 4 * 3 + 1
    assert seconds(done.presses, 12 + 4, characters) < 120
    made = SchoolYear.objects.exclude(pk=twelve_classes.pk).get()
    assert made.name == "2027-28"
    assert set(made.class_groups.values_list("name", flat=True)) == {f"New {number:02}" for number in range(12)}
    assert made.class_groups.filter(teachers__display_name="Teacher 12").count() == 4
    assert set(twelve_classes.class_groups.values_list("name", flat=True)) == {f"Class {n:02}" for n in range(12)}
    assert ClassGroup.objects.count() == 24


@pytest.mark.parametrize("width", [1280, 320])
def test_a_file_of_standards_is_looked_at_in_order(open_as, administrator, grade_two, width, tmp_path):
    file = tmp_path / "ours.csv"
    long = "Count on and back by tens from any number to a thousand, " * 5
    file.write_text(f'code,grade,area,summary\nLS.1,2,whole,"{long}"\nLS.2,13,money,Coins.\n', encoding="utf-8")
    page = open_as(administrator, width=width)
    page.goto("/school/grades/")
    page.get_by_label("Name of the standards").fill("Larkfield scheme")
    page.get_by_label("CSV file").set_input_files(file)
    page.get_by_role("button", name="Look at the file").click()
    expect(page.get_by_text("Nothing is stored yet.")).to_be_visible()
    assert faults_in_both_themes(page) == []
    assert page.evaluate("document.documentElement.scrollWidth <= innerWidth")
    page.get_by_role("button", name="Load 2 standards").click()
    expect(page.locator(".message").first).to_contain_text("2 standards are loaded.")
