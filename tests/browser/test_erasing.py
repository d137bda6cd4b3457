"""Words removed everywhere, as an administrator does it and a teacher may: looked for, chosen, followed to the end, gone."""

import pytest
from playwright.sync_api import Page, expect

from routines.erasing import doing
from routines.jobs.runner import Runner
from routines.models import Job, RoutineNote
from routines.words_erased import list_of_erasures
from tests.browser.axe import faults_in_both_themes
from tests.routines.lessons.making import append, event, open_lesson
from tests.routines.making import make_routine

pytestmark = pytest.mark.django_db(transaction=True)

NAME = "Zebulina"


@pytest.fixture(autouse=True)
def own_data_folder(settings, tmp_path):
    settings.DATA_DIR = tmp_path


@pytest.fixture
def serving():
    """Begins what a server does beside its pages."""
    here = Runner()
    yield here.start
    here.stop()


@pytest.fixture
def lesson(owner, teammate):
    """The name in a title, in notes by two people, and in what was said and noticed in a lesson that is over."""
    routine = make_routine(owner, title=f"{NAME}’s sevens", notes=f"Ask {NAME} first.")
    RoutineNote.objects.create(routine=routine, by=owner, text=f"{NAME.upper()} liked it")
    RoutineNote.objects.create(routine=routine, by=teammate, text=f"A thought of mine, with {NAME}")
    made = open_lesson(owner, routine=routine)
    append(
        made,
        event(2, "term.write", {"n": 2, "text": f"what {NAME} said", "over": None}),
        event(3, "phrase.add", {"text": f"{NAME} sees tens", "cells": [2, 3]}),
        event(4, "notice.add", {"text": f"{NAME}: the ones repeat", "expected": None}),
        event(5, "lesson.end", {}),
    )
    return made


def faults_in(page: Page, width: int) -> list[str]:
    found = faults_in_both_themes(page)
    wide = page.evaluate("document.documentElement.scrollWidth") > width
    return found + ["scrolls sideways"] * wide


def look(page: Page, words: str = NAME) -> None:
    page.get_by_label("Words to remove").fill(words)
    page.get_by_role("button", name="Search", exact=True).click()


def everything(lesson) -> dict[str, str]:
    own = f"/lessons/{lesson.key}/"
    return {
        "count": f"/routines/{lesson.routine_id}/",
        "bank": "/bank/",
        "search": f"/bank/?q={NAME}",
        "log": own,
        "replay": f"{own}replay/?moment=3",
    }


def holding(page: Page, lesson) -> set[str]:
    """The pages whose source, scripts' data included, holds the name; of the search, whose list holds a count."""
    found = set()
    for name, address in everything(lesson).items():
        page.goto(address)
        holds = NAME.casefold() in page.content().casefold()
        if page.locator(".card").count() if name == "search" else holds:
            found.add(name)
    return found


def test_an_administrator_removes_a_name_from_everything(open_as, owner, administrator, lesson, serving):
    teacher = open_as(owner)
    assert holding(teacher, lesson) == set(everything(lesson)), "they hold it before"
    serving()
    page = open_as(administrator)
    page.goto("/remove-words/")
    page.get_by_label("In whose texts").select_option("In what anyone wrote")
    look(page)
    heading = page.get_by_role("heading", name="found in")
    expect(heading).to_contain_text("“Zebulina”")
    expect(heading).to_contain_text("“ZEBULINA”")
    expect(page.get_by_label("Words to remove")).to_have_value(NAME)
    for place in (
        "Saved plans, older saves too: 2",
        "Notes on counts: 2",
        "Lessons: what was said, written and noticed: 3",
    ):
        expect(page.get_by_label(place)).to_be_checked()
    assert "A thought of mine" not in page.content(), "of others' texts she sees the words alone"
    page.get_by_role("button", name="Remove them for good").click()
    expect(page.get_by_text("Done: the words are out of every place that was ticked.")).to_be_visible(timeout=30_000)
    expect(page.get_by_text("7 texts of anyone")).to_be_visible()
    assert NAME.casefold() not in page.content().casefold()
    assert holding(teacher, lesson) == set()
    teacher.goto(f"/routines/{lesson.routine_id}/")
    expect(teacher.get_by_role("heading", level=1)).to_contain_text("[words removed]’s sevens")


def test_a_teacher_removes_it_from_what_she_wrote_and_from_nothing_else(open_as, owner, teammate, lesson, serving):
    serving()
    page = open_as(teammate)
    page.goto("/remove-words/")
    expect(page.get_by_label("In whose texts")).to_have_count(0)
    look(page)
    expect(page.get_by_text("A thought of mine, with")).to_be_visible()
    assert "liked it" not in page.content()
    page.get_by_role("button", name="Remove them for good").click()
    expect(page.get_by_text("Done: the words are out")).to_be_visible(timeout=30_000)
    assert list(RoutineNote.objects.order_by("pk").values_list("text", flat=True)) == [
        f"{NAME.upper()} liked it",
        "A thought of mine, with [words removed]",
    ]
    assert holding(open_as(owner), lesson) == set(everything(lesson))


def test_a_look_can_be_left_come_back_to_and_stopped(open_as, owner, lesson, serving):
    page = open_as(owner)
    page.goto("/remove-words/")
    look(page)
    expect(page.get_by_text("Searching…")).to_be_visible()
    page.goto("/")
    page.goto("/remove-words/")
    expect(page.get_by_text("Searching…")).to_be_visible()
    expect(page.get_by_label("Words to remove")).to_have_value("")
    page.get_by_role("button", name="Stop searching").click()
    expect(page.get_by_text("Nothing was changed.")).to_be_visible()
    look(page)
    serving()
    expect(page.get_by_role("heading", name="found in")).to_be_visible()
    page.get_by_role("button", name="Keep as it is").click()
    expect(page.get_by_text("Nothing was changed.")).to_be_visible()
    assert not Job.objects.exists()
    assert not list_of_erasures.file().exists()


def test_by_keyboard_alone(open_as, owner, lesson, serving):
    serving()
    page = open_as(owner)
    page.goto("/remove-words/")
    page.get_by_label("Words to remove").focus()
    page.keyboard.type(NAME)
    page.keyboard.press("Enter")
    expect(page.get_by_role("heading", name="found in")).to_be_visible()
    tabs = 0
    while page.evaluate("document.activeElement.textContent") != "Remove them for good":
        page.keyboard.press("Tab")
        tabs += 1
        assert tabs < 60
    page.keyboard.press("Enter")
    expect(page.get_by_text("Done: the words are out")).to_be_visible(timeout=30_000)


@pytest.mark.parametrize("width", [1280, 320])
def test_every_state_of_the_page_is_in_order_in_both_themes(
    open_as, administrator, lesson, serving, monkeypatch, width
):
    page = open_as(administrator, width=width)
    wrong = {}

    def seen(state: str) -> None:
        if found := faults_in(page, width):
            wrong[state] = found

    page.goto("/remove-words/")
    seen("empty")
    look(page, "x" * 81)
    expect(page.get_by_text("Shorten this to 80 characters")).to_be_visible()
    seen("refused")
    page.get_by_label("In whose texts").select_option("In what anyone wrote")
    look(page)
    expect(page.get_by_text("Searching…")).to_be_visible()
    seen("looking")
    with monkeypatch.context() as failing:
        failing.setattr("routines.erasing.look_jobs.look_for", lambda *args, **asked: 1 // 0)
        serving()
        expect(page.get_by_text("The search stopped in the middle")).to_be_visible()
    seen("look failed")
    page.get_by_role("button", name="Search again").click()
    expect(page.get_by_role("heading", name="found in")).to_be_visible()
    seen("found")
    look(page, "Nowhereword")
    expect(page.get_by_text("stands nowhere in what")).to_be_visible()
    seen("nothing found")
    page.get_by_label("In whose texts").select_option("In what anyone wrote")
    look(page)
    expect(page.get_by_role("heading", name="found in")).to_be_visible()
    go_on = doing._go_through
    held = []

    def stays(part, erasures, told) -> None:
        told.begin_part(part, 1000)
        while not held:
            doing.time.sleep(0.05)
        raise RuntimeError("in the middle")

    with monkeypatch.context() as failing:
        failing.setattr(doing, "_go_through", stays)
        page.get_by_role("button", name="Remove them for good").click()
        expect(page.get_by_text("Going through what is written")).to_be_visible()
        seen("under way")
        held.append(True)
        expect(page.get_by_text("It stopped in the middle")).to_be_visible()
    seen("failed")
    assert doing._go_through is go_on
    page.get_by_role("button", name="Go on with it").click()
    expect(page.get_by_text("Done: the words are out")).to_be_visible(timeout=30_000)
    seen("done")
    assert wrong == {}
