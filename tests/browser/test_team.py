"""What colleagues do for each other, in a real browser: from a gap to a suggestion, taken, planned and seen on the first page."""

from datetime import timedelta

import pytest
from django.utils import timezone
from playwright.sync_api import Page, expect

from routines.models import Planned, Routine, Suggestion
from routines.team.school_days import next_school_day
from tests.browser.axe import faults_in_both_themes
from tests.factories import SchoolYearFactory
from tests.routines.making import make_routine

pytestmark = pytest.mark.django_db(transaction=True)

WHY = "Thirds come home in the third column."


@pytest.fixture
def year(school):
    """The year that is on."""
    today = timezone.localdate()
    return SchoolYearFactory(name="on now", starts_on=today - timedelta(days=90), ends_on=today + timedelta(days=200))


def in_order(pages: list[Page], path: str) -> None:
    """Found by axe to be in order, wide and on a small phone, and nothing is cut there."""
    for page in pages:
        page.goto(path)
        assert faults_in_both_themes(page) == [], path
        assert page.evaluate("document.documentElement.scrollWidth <= innerWidth"), path


def test_from_a_gap_to_the_week(open_as, owner, co_author, coach, administrator):
    """Grade 3 expects fractions, of which the bank has one for grade 2."""
    count = make_routine(owner, title="Thirds in threes", area="fractions")
    at_her_desk = open_as(coach)

    # Two clicks, and the words.
    at_her_desk.goto("/coverage/")
    gap = at_her_desk.locator(".gap-card", has_text="Grade 3, fractions")
    gap.get_by_role("link", name="Suggest one").click()
    at_her_desk.get_by_label("Why").fill(WHY)
    at_her_desk.get_by_role("button", name="Suggest it").click()
    row = at_her_desk.get_by_role("row").filter(has_text="Thirds in threes")
    expect(row).to_contain_text("grade 3")
    expect(row).to_contain_text("open")
    suggestion = Suggestion.objects.get()
    assert (suggestion.routine, suggestion.by, suggestion.why) == (count, coach, WHY)

    # Her colleague in grade 3 takes it as a copy, and plans that for the next school day.
    page = open_as(co_author)
    page.goto("/")
    expect(page.get_by_text(WHY)).to_be_visible()
    page.get_by_role("link", name="take, keep or decline").click()
    page.get_by_role("button", name="Take as a copy").click()
    expect(page.get_by_text("This is your own copy.")).to_be_visible()
    copy = Routine.objects.get(owner=co_author)
    page.goto(f"/routines/{copy.pk}/")
    page.get_by_role("link", name="Put in the week", exact=True).click()
    page.get_by_role("button", name="Put in the week").click()
    expect(page.locator(".message")).to_contain_text("is in the week: 3 Plum")
    planned = Planned.objects.get()
    assert (planned.routine, planned.class_group.name) == (copy, "3 Plum")
    assert planned.on == next_school_day(timezone.localdate())

    # Taken out by mistake, it is put back.
    page.get_by_role("button", name="Remove").click()
    expect(page.locator(".planned")).to_have_count(0)
    page.get_by_role("button", name="Put it back").click()
    expect(page.locator(".planned")).to_contain_text("Thirds in threes")

    # Today it would be taught: it stands on the first page, with print and teach beside it.
    Planned.objects.update(on=timezone.localdate() if timezone.localdate().weekday() < 5 else planned.on)
    page.goto("/")
    card = page.locator(".home-week .planned")
    expect(card).to_contain_text("Thirds in threes")
    expect(card.get_by_role("link", name="Print")).to_be_visible()
    card.get_by_role("link", name="Teach").click()
    expect(page.get_by_role("radio", name="3 Plum")).to_be_checked()

    # The coach is told that it was taken.
    at_her_desk.goto("/")
    expect(at_her_desk.get_by_text("to grade 3: taken")).to_be_visible()

    # Every new screen, on both widths.
    Suggestion.objects.create(routine=count, by=coach, to_teacher=co_author, why=WHY, by_when=timezone.localdate())
    note = count.notes.create(by=co_author, text="Worked with strips of paper.")
    phone = open_as(co_author, width=320)
    team = f"/week/?team={co_author.class_groups.get().grade.band_id}"
    row = Planned.objects.get().pk
    for path in (
        "/", "/week/", team, f"/week/{row}/move/", f"/routines/{count.pk}/week/", "/suggestions/",
        f"/routines/{count.pk}/suggest/", f"/notes/{note.pk}/", f"/notes/{note.pk}/remove/",
    ):  # fmt: skip
        in_order([page, phone], path)
    coachs = [at_her_desk, open_as(coach, width=320)]
    gap_of_grade = f"/coverage/{co_author.class_groups.get().grade_id}/fractions/suggest/"
    for path in ("/", "/week/", "/suggestions/", gap_of_grade, f"/suggestions/{suggestion.pk}/withdraw/"):
        in_order(coachs, path)
    owner.leave()
    administrators = [open_as(administrator), open_as(administrator, width=320)]
    for path in ("/", f"/school/people/{owner.pk}/hand-on/"):
        in_order(administrators, path)
