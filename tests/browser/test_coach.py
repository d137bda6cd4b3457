"""From a gap that a coach sees to the cell that a lesson fills, through four people's screens, with the presses counted."""

from datetime import timedelta

import pytest
from django.utils import timezone
from playwright.sync_api import expect

from grade_bands.models import Area
from routines.coverage.queries import weeks_between
from routines.models import BankTotal, Lesson, Planned, Routine, Suggestion, TaughtInWeek
from tests.browser.axe import faults_in_both_themes
from tests.browser.presses import count_from_here, done_on
from tests.factories import ClassGroupFactory, GradeFactory, SchoolYearFactory, StandardFactory, UserFactory
from tests.routines.making import make_routine

pytestmark = pytest.mark.django_db(transaction=True)

WHY = "Thirds come home in the third column."
LONG = (
    "Count on and back by equal steps of a unit fraction, past a whole and through it, and say what stays the same. "
    * 2
)


@pytest.fixture
def year(school):
    """The year that is on."""
    today = timezone.localdate()
    return SchoolYearFactory(name="on now", starts_on=today - timedelta(days=90), ends_on=today + timedelta(days=200))


@pytest.fixture
def thirds(owner, grade_three):
    """The only count of fractions, for grade 2; grade 3 expects them, and has a standard for them."""
    StandardFactory(code="LS.3.F", grade=grade_three, area="fractions", summary=LONG)
    return make_routine(owner, title="Thirds in threes", area="fractions", standards=("LS.3.F",))


def test_a_gap_becomes_a_cell_that_a_lesson_filled(open_as, opened, co_author, coach, grade_three, thirds):
    # The coach, by standard: two presses, and the words.
    at_her_desk = open_as(coach)
    at_her_desk.goto(f"/coverage/standards/?grade={grade_three.pk}")
    count_from_here(at_her_desk)
    gap = at_her_desk.locator(".gap-card", has_text="LS.3.F")
    gap.get_by_role("link", name="Suggest one").click()
    at_her_desk.get_by_label("Why").fill(WHY)
    at_her_desk.get_by_role("button", name="Suggest it").click()
    expect(at_her_desk.get_by_role("row").filter(has_text="Thirds in threes")).to_contain_text("open")
    assert done_on(at_her_desk).presses == 2
    assert Suggestion.objects.get().why == WHY

    # Grade 3's teacher makes it the team's own: takes a copy, says for which grade, and puts it into the bank.
    page = opened(co_author)
    page.goto("/")
    count_from_here(page)
    page.get_by_role("link", name="take, keep or decline").click()
    page.get_by_role("button", name="Take as a copy").click()
    expect(page.get_by_text("This is your own copy.")).to_be_visible()
    page.locator("#id_grade").select_option("3")
    page.get_by_role("button", name="Save and put it into the bank").click()
    expect(page.locator(".message").first).to_contain_text("is in the bank")
    copy = Routine.objects.get(owner=co_author)
    assert (copy.grade, copy.status, copy.copied_from) == (grade_three, "shared", thirds)
    assert done_on(page).presses == 3

    # Planned for the next school day: two presses.
    page.get_by_role("link", name="Put in the week", exact=True).click()
    page.get_by_role("button", name="Put in the week").click()
    expect(page.locator(".message").first).to_contain_text("is in the week: 3 Plum")
    assert done_on(page).presses == 5

    # On its day (at a weekend, the next) it is taught from there, with its class chosen.
    today = timezone.localdate()
    Planned.objects.update(on=today if today.weekday() < 5 else Planned.objects.get().on)
    page.goto("/")
    page.locator(".home-week .planned").get_by_role("link", name="Teach").click()
    expect(page.get_by_role("radio", name="3 Plum")).to_be_checked()
    page.get_by_role("radio", name="my plan is on paper").check()
    page.get_by_role("button", name="Open the lesson").click()
    page.wait_for_selector("#board[data-ready]")
    lesson = Lesson.objects.get()
    assert not lesson.is_counted
    with page.expect_response(lambda answer: answer.request.method == "POST" and "events" in answer.url):
        page.keyboard.press("PageDown")  # the class says the first count
    lesson.refresh_from_db()
    assert (lesson.is_counted, lesson.grade, lesson.routine) == (True, grade_three, copy)
    page.goto("about:blank")

    # The coach finds the cell filled, by area and by standard, and that it was taken.
    at_her_desk.goto("/coverage/")
    row = at_her_desk.locator("tbody tr").filter(has=at_her_desk.locator("th", has_text="3")).first
    expect(row.locator("td[data-area='fractions']")).to_contain_text("few · 1")
    expect(row.locator("td[data-area='fractions']")).to_contain_text("taught 1")
    at_her_desk.goto(f"/coverage/standards/?grade={grade_three.pk}")
    row = at_her_desk.locator("tbody tr", has_text="LS.3.F")
    expect(row).to_contain_text("few · 1")
    expect(row).to_contain_text("1 lesson")
    expect(at_her_desk.locator(".gap-card")).to_have_count(0)
    row.get_by_role("link", name="LS.3.F", exact=True).click()
    expect(at_her_desk.get_by_text("3 Plum")).to_be_visible()
    at_her_desk.goto("/")
    expect(at_her_desk.get_by_text("to grade 3: taken")).to_be_visible()


def test_the_last_of_many_gaps_is_as_near_as_the_first(open_as, coach, year, thirds):
    grades = [GradeFactory(areas=["fractions"]) for _ in range(9)]
    ClassGroupFactory(grade=grades[-1], year=year, teachers=[UserFactory()])
    page = open_as(coach)
    page.goto("/coverage/")
    count_from_here(page)
    last = page.locator(".gap-lines > li").last
    expect(last).to_contain_text(f"Grade {grades[-1].name}, fractions")
    last.get_by_role("link", name="Suggest one").click()
    page.get_by_label("Why").fill(WHY)
    page.get_by_role("button", name="Suggest it").click()
    expect(page.get_by_role("row").filter(has_text="Thirds in threes")).to_contain_text("open")
    assert done_on(page).presses == 2


@pytest.fixture
def nine_grades(year):
    """With names as long as may be, after forty weeks in which they taught in all areas but one, which is a gap."""
    year.starts_on, year.ends_on = (timezone.localdate() + timedelta(days=days) for days in (-279, 30))
    year.save()
    mondays = weeks_between(year.starts_on, timezone.localdate())
    assert len(mondays) >= 40
    taught = [area for area in Area if area not in (Area.RATIOS, Area.MONEY)]
    for number in range(9):
        grade = GradeFactory(name=f"Transition {number}", areas=[*taught, Area.MONEY])
        for area in taught:
            BankTotal.objects.create(grade=grade, area=area, counts=40)
            TaughtInWeek.objects.bulk_create(
                TaughtInWeek(
                    year=year, grade=grade, area=area, monday=monday, lessons=4,
                    coach_seen=3, coach_not_yet=3, coach_not_recorded=3,
                )
                for monday in mondays
            )  # fmt: skip


def test_nine_grades_after_forty_weeks_are_seen_in_one_look(open_as, coach, nine_grades):
    page = open_as(coach, width=1280, height=1080)
    page.goto("/coverage/")
    expect(page.locator(".coverage-table tbody tr")).to_have_count(9)
    expect(page.locator(".coverage-table .said-not-recorded").first).to_be_visible()
    wide = "one => [one.scrollWidth - one.clientWidth, one.getBoundingClientRect().bottom]"
    beyond, bottom = page.locator(".coverage-table").locator("..").evaluate(wide)
    assert beyond == 0  # no column is behind its edge
    assert bottom <= 1080
    for one in page.locator("details").all():
        one.evaluate("one => one.open = true")
    assert faults_in_both_themes(page) == []


@pytest.mark.parametrize("width", [1280, 320])
def test_the_screens_of_the_coverage_are_in_order(open_as, co_author, coach, administrator, grade_three, thirds, width):
    standard = thirds.standards.get()
    StandardFactory(code="LS." + "LONGCODE." * 4, grade=grade_three, area="fractions", summary="W" * 300)
    gap = f"/coverage/{grade_three.pk}/standards/{standard.pk}/"
    for person, paths in (
        (coach, ["/coverage/", f"/coverage/standards/?grade={grade_three.pk}", gap, f"{gap}suggest/"]),
        (co_author, [f"{gap}week/", f"/coverage/{grade_three.pk}/time/week/"]),
        (administrator, ["/coverage/standards/"]),
    ):
        page = open_as(person, width=width)
        for path in paths:
            page.goto(path)
            for one in page.locator("details").all():
                one.evaluate("one => one.open = true")
            assert faults_in_both_themes(page) == [], path
            assert page.evaluate("document.documentElement.scrollWidth <= innerWidth"), path
