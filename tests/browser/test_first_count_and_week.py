"""From an empty school to its first count, and a count into the week from wherever it is met, with the presses counted."""

from datetime import timedelta

import pytest
from django.utils import timezone
from playwright.sync_api import Page, expect

from routines.models import Planned, Routine
from routines.team.school_days import monday_now, next_school_day
from tests.browser.axe import faults_in_both_themes
from tests.browser.presses import count_from_here, done_on
from tests.factories import ClassGroupFactory, SchoolYearFactory, StandardFactory, UserFactory
from tests.routines.making import make_routine

pytestmark = pytest.mark.django_db(transaction=True)


@pytest.fixture
def year(school):
    """The year that is on."""
    today = timezone.localdate()
    return SchoolYearFactory(name="on now", starts_on=today - timedelta(days=90), ends_on=today + timedelta(days=200))


@pytest.mark.parametrize("name", ["owner", "coach", "administrator", "newcomer"])
def test_an_empty_school_comes_to_its_first_count_in_two_presses(request, open_as, owner, grade_two, grade_three, name):
    person = UserFactory(display_name="Newcomer Nia") if name == "newcomer" else request.getfixturevalue(name)
    page = open_as(person)
    page.goto("/")
    count_from_here(page)
    page.get_by_role("link", name="Plan a count").first.click()
    page.locator("#id_start").fill("10")
    page.locator("#id_step").fill("6")
    page.get_by_role("button", name="Save", exact=True).click()
    expect(page.get_by_text("Saved as version 1.").first).to_be_visible()
    assert done_on(page).presses == 2
    assert Routine.objects.get().owner == person


def from_the_bank(page: Page, routine: Routine) -> None:
    page.goto("/bank/")
    count_from_here(page)
    page.get_by_role("link", name=f"Put in the week: {routine.title}").click()
    page.get_by_role("button", name="Put in the week").click()


def from_its_page(page: Page, routine: Routine) -> None:
    page.goto(f"/routines/{routine.pk}/")
    count_from_here(page)
    page.get_by_role("link", name="Put in the week", exact=True).click()
    page.get_by_role("button", name="Put in the week").click()


def from_a_draft(page: Page, routine: Routine) -> None:
    Routine.objects.filter(pk=routine.pk).update(status="draft", shared_at=None)
    page.goto("/plans/")
    count_from_here(page)
    page.get_by_role("link", name=f"Put in the week: {routine.title}").click()
    page.get_by_role("button", name="Put in the week").click()


def from_the_plan(page: Page, routine: Routine) -> None:
    page.goto(f"/routines/{routine.pk}/edit/")
    count_from_here(page)
    page.get_by_role("button", name="Save and put it in the week").click()
    page.get_by_role("button", name="Put in the week").click()


def put_from_gap(page: Page, address: str, gap: str) -> None:
    page.goto(address)
    count_from_here(page)
    page.locator(".gap-card", has_text=gap).get_by_role("link", name="Put one in the week").click()
    page.get_by_role("button", name="Put in the week").click()


def from_a_gap(page: Page, routine: Routine) -> None:
    """Grade 2 expects money; the count is one of grade 3's."""
    put_from_gap(page, "/coverage/", "Grade 2, money")


def from_a_standards_gap(page: Page, routine: Routine) -> None:
    put_from_gap(page, "/coverage/standards/", "LS.2.M")


@pytest.mark.parametrize(
    "put", [from_the_bank, from_its_page, from_a_draft, from_the_plan, from_a_gap, from_a_standards_gap]
)
def test_a_count_is_planned_for_the_next_school_day_in_two_presses(open_as, owner, grade_two, grade_three, put):
    StandardFactory(code="LS.2.M", grade=grade_two, area="money")
    gap = put in (from_a_gap, from_a_standards_gap)
    routine = make_routine(owner, title="Dimes by fives", **({"grade": "3", "area": "money"} if gap else {}))
    page = open_as(owner)
    put(page, routine)
    expect(page.locator(".message").first).to_contain_text("“Dimes by fives” is in the week: 2 Wren")
    expect(page.locator(".planned")).to_contain_text("Dimes by fives")
    assert done_on(page).presses == 2
    planned = Planned.objects.get()
    assert (planned.routine, planned.class_group.name, planned.by) == (routine, "2 Wren", owner)
    assert planned.on == next_school_day(timezone.localdate())


def test_by_keys_alone_it_is_put_in_moved_removed_and_put_back(open_as, owner):
    routine = make_routine(owner)
    page = open_as(owner)
    page.goto("/bank/")
    count_from_here(page)
    page.get_by_role("link", name="Put in the week: Sevens from four").focus()
    page.keyboard.press("Enter")
    button = page.get_by_role("button", name="Put in the week")
    page.get_by_role("radio", name="2 Wren").focus()
    for _field in range(6):  # the parts of the day, and the button that opens a calendar
        page.keyboard.press("Tab")
        if button.evaluate("one => one === document.activeElement"):
            break
    page.keyboard.press("Enter")
    expect(page.locator(".message").first).to_contain_text("is in the week")
    page.get_by_role("link", name="Move: Sevens from four, 2 Wren").focus()
    page.keyboard.press("Enter")
    later = next_school_day(timezone.localdate()) + timedelta(days=7)
    page.get_by_label("Day").fill(later.isoformat())
    page.keyboard.press("Enter")
    expect(page.locator(".message").first).to_contain_text("is now planned for 2 Wren")
    assert Planned.objects.get().on == later
    page.get_by_role("button", name="Remove: Sevens from four, 2 Wren").focus()
    page.keyboard.press("Enter")
    expect(page.locator(".planned")).to_have_count(0)
    page.get_by_role("button", name="Put it back").focus()
    page.keyboard.press("Enter")
    expect(page.locator(".planned")).to_contain_text("Sevens from four")
    assert Planned.objects.get().routine == routine
    assert done_on(page).presses == 0


# What Chromium prints is seen as it prints: the colours of that moment, of what is there.
SEEN_AT_PRINT = """
() => addEventListener("beforeprint", () => {
  const ink = getComputedStyle(document.querySelector(".planned-title")).color;
  const digits = getComputedStyle(document.querySelector(".planned-picture text")).fill;
  window.printed = {ink, digits};
})
"""


@pytest.mark.parametrize("theme", ["paper", "slate"])
def test_the_week_is_printed_in_ink_on_white_whatever_ground_the_screen_has(open_as, owner, grade_two, year, theme):
    routine = make_routine(owner)
    for group in (owner.class_groups.get(), ClassGroupFactory(grade=grade_two, year=year, teachers=[owner])):
        for day in range(5):
            on = monday_now(timezone.localdate()) + timedelta(days=day)
            Planned.objects.create(routine=routine, class_group=group, on=on, by=owner)
    page = open_as(owner)
    page.add_init_script(f"localStorage.setItem('countfold-theme', '{theme}')")
    page.goto("/week/")
    assert page.evaluate("document.documentElement.dataset.theme") == (None if theme == "paper" else "slate")
    page.evaluate(SEEN_AT_PRINT)
    page.pdf(prefer_css_page_size=True)
    # #1C2B45, the ink of tokens.css
    assert page.evaluate("window.printed") == {"ink": "rgb(28, 43, 69)", "digits": "rgb(28, 43, 69)"}
    assert page.evaluate("document.documentElement.dataset.theme") == (None if theme == "paper" else "slate")
    page.emulate_media(media="print")
    expect(page.locator(".planned:visible")).to_have_count(10)
    for acts in ("Teach", "Print", "Move", "Remove"):
        expect(page.locator(f".planned :text('{acts}'):visible")).to_have_count(0)
    expect(page.get_by_role("navigation")).to_have_count(0)


def test_the_pages_that_hand_on_and_remove_are_in_order(open_as, owner, administrator, year):
    mistaken = SchoolYearFactory(
        name="Added twice", starts_on=year.ends_on + timedelta(days=60), ends_on=year.ends_on + timedelta(days=300)
    )
    group = owner.class_groups.get()
    owner.leave()
    for width in (1280, 320):
        page = open_as(administrator, width=width)
        for path in (
            "/school/classes/", f"/school/classes/{group.pk}/remove/", f"/school/years/{mistaken.pk}/remove/",
            f"/school/people/{owner.pk}/hand-on/", "/school/grades/",
        ):  # fmt: skip
            page.goto(path)
            assert faults_in_both_themes(page) == [], path
            assert page.evaluate("document.documentElement.scrollWidth <= innerWidth"), path
