"""In a real browser: two presses make one thing, limits are said before they are met, and autosave says why it was refused."""

import re
from uuid import uuid4

import pytest
from playwright.sync_api import Page, expect

from accounts.kept_text import MOST_CHARACTERS
from routines.models import Lesson, PlanDraft, Routine, RoutineNote
from tests.routines.making import make_routine
from tests.routines.plan_sheets import saved_plan, sheet, stop_fields

pytestmark = pytest.mark.django_db(transaction=True)


@pytest.fixture(autouse=True)
def _grades(grade_two, grade_three) -> None:
    """The grades of the cast are there in every test."""


def state(page: Page):
    return page.locator("#plan-kept")


def draft_with_stops(owner, number: int) -> str:
    rows = {name: value for n in range(number) for name, value in stop_fields(n, 6, f"Question {n}?").items()}
    typed = {name: [str(value)] for name, value in sheet(**rows).items()}
    return f"/plans/new/{PlanDraft.objects.create(person=owner, key=uuid4(), fields={'typed': typed}).key}/"


def test_a_double_click_on_save_makes_one_count(open_as, owner):
    page = open_as(owner)
    page.goto("/plans/new/")
    page.fill("#id_start", "10")
    page.fill("#id_step", "6")
    page.get_by_role("button", name="Save", exact=True).dblclick()
    expect(page).to_have_url(re.compile(r"/routines/\d+/edit/"))
    expect(page.get_by_text("Saved as version 1.").first).to_be_visible()
    page.wait_for_load_state("networkidle")
    assert Routine.objects.get().versions.count() == 1
    assert not PlanDraft.objects.exists()


def test_back_and_a_change_are_saved_into_the_same_count(open_as, owner):
    page = open_as(owner)
    page.goto("/plans/new/")
    page.fill("#id_start", "10")
    page.fill("#id_step", "6")
    page.get_by_role("button", name="Save", exact=True).click()
    expect(page).to_have_url(re.compile(r"/routines/\d+/edit/"))
    page.go_back()
    expect(page).to_have_url(re.compile(r"/routines/\d+/edit/"))  # the page has looked again what became of it
    page.fill("#id_title", "After going back")
    page.get_by_role("button", name="Save", exact=True).click()
    expect(page.locator("#id_title")).to_have_value("After going back")
    page.wait_for_load_state("networkidle")
    routine = Routine.objects.get()
    assert (routine.title, routine.current_version.number) == ("After going back", 2)


def test_double_clicks_make_one_copy_one_note_and_one_lesson(open_as, owner):
    routine = make_routine(owner)
    page = open_as(owner)
    page.goto(f"/routines/{routine.pk}/")
    page.get_by_role("button", name="Copy").dblclick()
    expect(page).to_have_url(re.compile(r"/routines/\d+/edit/"))

    page.goto(f"/routines/{routine.pk}/")
    page.get_by_label("A note for colleagues").fill("The columns helped.")
    page.get_by_role("button", name="Add the note").dblclick()
    expect(page.get_by_text("The columns helped.")).to_have_count(1)

    page.goto(f"/routines/{routine.pk}/taught/")
    page.get_by_role("radio", name="as planned", exact=True).check()
    page.get_by_label("Day").fill("2026-09-15")
    page.get_by_role("button", name="Keep the lesson").dblclick()
    expect(page).to_have_url(re.compile(r"/lessons/[0-9a-f-]{36}/"))
    page.wait_for_load_state("networkidle")
    assert (Routine.objects.count(), RoutineNote.objects.count(), Lesson.objects.count()) == (2, 1, 1)


def test_the_most_stops_are_told_before_and_when_they_are_there(open_as, owner):
    page = open_as(owner)
    page.goto(draft_with_stops(owner, 38))
    stops = page.locator("#part-stops")
    expect(stops.get_by_text("2 more can be added.")).to_be_visible()
    for number in (39, 40):
        stops.get_by_role("button", name="Add a stop").click()
        expect(stops.locator(".stop-card")).to_have_count(number)
    expect(stops.get_by_text("40 stops are the most a plan holds. Take one out to add another.")).to_be_visible()
    expect(stops.get_by_role("button", name="Add a stop")).to_have_count(0)
    stops.get_by_role("button", name="Remove").last.click()
    expect(stops.get_by_text("1 more can be added.")).to_be_visible()
    expect(stops.get_by_role("button", name="Add a stop")).to_be_focused()


@pytest.mark.parametrize(
    ("status", "sentence"),
    [
        (500, "Not kept: something broke on the server."),
        (507, "Not kept: the server’s disk is full."),
        (403, "Not kept: this plan is no longer yours to change."),
        (404, "Not kept: this plan is not at this address any more."),
        (413, "Not kept: this is too much at once."),
        (0, "Not kept: no connection."),
    ],
)
def test_autosave_says_why_it_was_refused(open_as, owner, status, sentence):
    routine = saved_plan(owner, notes="Bring chalk")
    page = open_as(owner)
    page.goto(f"/routines/{routine.pk}/edit/")
    page.route("**/draft/", lambda route: route.fulfill(status=status) if status else route.abort())
    page.fill("#id_notes", "Words to keep")
    expect(state(page)).to_contain_text(sentence, timeout=10_000)
    expect(state(page)).not_to_contain_text("sign in")
    expect(page.locator("#id_notes")).to_have_value("Words to keep")


def test_autosave_tries_again_by_itself(open_as, owner):
    routine = saved_plan(owner, notes="Bring chalk")
    page = open_as(owner)
    page.goto(f"/routines/{routine.pk}/edit/")
    page.route("**/draft/", lambda route: route.abort())
    page.fill("#id_notes", "Words to keep")
    expect(state(page)).to_contain_text("no connection", timeout=10_000)
    page.unroute("**/draft/")
    page.evaluate("dispatchEvent(new Event('online'))")
    expect(state(page)).to_have_text(re.compile(r"^\s*kept"), timeout=10_000)
    assert PlanDraft.objects.get().fields["typed"]["notes"] == ["Words to keep"]


def test_autosave_of_a_plan_too_long_says_so_and_leaves_it_on_the_page(open_as, owner):
    routine = saved_plan(owner, notes="Bring chalk")
    page = open_as(owner)
    page.goto(f"/routines/{routine.pk}/edit/")
    page.fill("#id_notes", "x" * (MOST_CHARACTERS + 1))
    expect(state(page)).to_contain_text("400,000 are the most that can be kept.", timeout=20_000)
    assert len(page.locator("#id_notes").input_value()) == MOST_CHARACTERS + 1


def test_an_autosave_older_than_the_sign_in_leads_to_save(open_as, owner):
    routine = saved_plan(owner, notes="Bring chalk")
    page = open_as(owner)
    page.goto(f"/routines/{routine.pk}/edit/")
    page.context.clear_cookies(name="countfold_csrf")
    page.fill("#id_notes", "Words to keep")
    expect(state(page)).to_contain_text("Press Save: what you typed goes along.", timeout=10_000)
    page.get_by_role("button", name="Save", exact=True).click()
    page.get_by_role("button", name="Save it now").click()
    expect(page.get_by_text("Saved as version 2.").first).to_be_visible()
    routine.refresh_from_db()
    assert routine.plan.notes == "Words to keep"


def test_a_text_says_how_much_room_is_left_and_is_never_cut(open_as, owner):
    routine = saved_plan(owner, notes="Bring chalk")
    page = open_as(owner)
    page.goto(f"/routines/{routine.pk}/edit/")
    notes, said = page.locator("#id_notes"), page.locator("#id_notes + [data-limit-says]")
    notes.fill("n" * 1000)
    expect(said).to_have_count(0)
    notes.fill("n" * 1900)
    expect(said).to_have_text("100 of 2000 characters left.")
    notes.fill("n" * 2034)
    expect(said).to_have_text("Shorten this by 34: 2000 characters are the most.")
    page.get_by_role("button", name="Save", exact=True).click()
    expect(page.get_by_text("Shorten this to 2000 characters; it has 2034.")).to_be_visible()
    assert len(notes.input_value()) == 2034


def test_a_code_of_a_few_letters_is_not_called_nearly_full(open_as, administrator):
    page = open_as(administrator)
    page.goto("/school/")
    currency, said = page.locator("#id_currency"), page.locator("#id_currency + [data-limit-says]")
    currency.fill("EUR")
    expect(said).to_have_count(0)
    currency.fill("EURO")
    expect(said).to_have_text("Shorten this by 1: 3 characters are the most.")
