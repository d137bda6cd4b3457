"""A lesson taught on paper is kept by tapping: interactions counted at 360 px, the keyboard alone at 1280."""

import pytest
from playwright.sync_api import Page, expect

from routines.lessons.recording import state_of
from routines.models import Lesson, Routine
from tests.routines.lessons.making import append, event, open_lesson
from tests.routines.making import make_routine

pytestmark = pytest.mark.django_db(transaction=True)

AIM = 12
MOST_KEYS, MOST_TABS = 30, 80


@pytest.fixture
def routine(owner, grade_three) -> Routine:
    return make_routine(owner)


class Counted:
    """Taps, counted."""

    def __init__(self, page: Page) -> None:
        self.page, self.taps = page, 0

    def __call__(self, where) -> None:
        where.click()
        self.taps += 1


def test_two_slips_two_targets_and_a_next_count_take_few_taps_on_a_phone(open_as, owner, routine):
    page = open_as(owner, width=360, height=800)
    problems: list[str] = []
    page.on("pageerror", lambda error: problems.append(str(error)))
    page.goto(f"/routines/{routine.pk}/taught/")
    tap = Counted(page)
    for n in (8, 14):
        tap(page.locator(f'#log-grid [data-n="{n}"]'))
        tap(page.locator(f'.cell-slip[data-cell="{n}"] .chip-said').first)
        expect(page.locator("#log-grid .g-strike")).to_have_count(1 if n == 8 else 2)
        tap(page.locator(f'.cell-slip[data-cell="{n}"]').get_by_role("button", name="Done"))
    tap(page.locator(".chip:has([name=target-0][value=seen])"))
    tap(page.locator(".chip:has([name=target-1][value=not-yet])"))
    tap(page.locator(".next-grid").first)
    tap(page.get_by_role("button", name="Keep the lesson"))
    expect(page.get_by_text("The lesson is kept.")).to_be_visible()
    assert tap.taps <= AIM
    assert problems == []
    state = state_of(Lesson.objects.get())
    assert sorted(state.entries) == [8, 14]
    assert state.targets == {0: "seen", 1: "not-yet"}
    assert Routine.objects.filter(copied_from=routine, owner=owner).count() == 1


class Keys:
    """Keys, counted; the focus goes nowhere but by them."""

    def __init__(self, page: Page) -> None:
        self.page, self.pressed = page, 0

    def press(self, *keys: str) -> None:
        for key in keys:
            self.page.keyboard.press(key)
            self.pressed += 1

    def tab_to(self, where) -> None:
        for _ in range(MOST_TABS):
            if where.evaluate("one => one === document.activeElement"):
                return
            self.press("Tab")
        expect(where).to_be_focused()


def test_the_keyboard_alone_is_enough(open_as, owner, routine):
    page = open_as(owner)
    page.goto(f"/routines/{routine.pk}/taught/")
    keys, cell = Keys(page), lambda n: page.locator(f'#log-grid [data-n="{n}"]')
    keys.press("Tab")
    expect(page.get_by_role("link", name="Skip to the page")).to_be_focused()
    keys.press("Enter")
    keys.tab_to(cell(1))
    keys.press("ArrowRight", "ArrowRight", "Enter")  # the third cell opens, its first chip has the focus
    expect(page.locator('.cell-slip[data-cell="3"]')).to_be_visible()
    keys.press("Space")
    expect(page.locator("#log-grid .g-strike")).to_have_count(1)
    keys.press("Escape")
    expect(cell(3)).to_be_focused()
    keys.tab_to(page.get_by_role("button", name="faded"))
    keys.press("Enter")
    keys.press(*["Shift+Tab"] * 3)  # back over two other voices; the grid is one stop, at the cell that was left
    expect(cell(3)).to_be_focused()
    keys.press("Enter", "ArrowRight", "Enter")
    expect(page.locator(".g-voice-faded")).to_have_count(2)
    keys.press("Control+Enter")
    expect(page.get_by_text("Kept.").first).to_be_visible()
    assert keys.pressed <= MOST_KEYS
    state = state_of(Lesson.objects.get())
    assert sorted(state.entries) == [3]
    assert [(voice["from"], voice["to"], voice["how"]) for voice in state.voices] == [(3, 4, "faded")]


def test_the_button_is_reached_by_tab_too(open_as, owner, routine):
    page = open_as(owner)
    page.goto(f"/routines/{routine.pk}/taught/")
    keys = Keys(page)
    keys.tab_to(page.get_by_role("button", name="Keep the lesson"))
    keys.press("Enter")
    expect(page.get_by_text("Kept.").first).to_be_visible()


def test_the_log_asks_which_of_two_devices_was_right(open_as, owner, routine):
    lesson = open_lesson(owner, routine=routine)
    append(
        lesson,
        event(2, data={"n": 1, "text": "4", "over": None}, device="board"),
        event(2, data={"n": 1, "text": "14", "over": None}, device="lectern"),
        event(3, "lesson.end", {}),
    )
    page = open_as(owner, width=360, height=800)
    page.goto(f"/lessons/{lesson.key}/replay/")
    page.keyboard.press("End")
    expect(page.locator('.g-cell[data-n="1"]')).to_have_text("4 | 14")
    page.goto(f"/lessons/{lesson.key}/")
    asked = page.get_by_role("group", name="Two devices wrote the 1st differently. Which was it?")
    expect(asked.get_by_role("radio", checked=True)).to_have_count(0)
    asked.get_by_role("radio", name="14", exact=True).check()
    page.get_by_role("button", name="Keep the lesson").click()
    expect(page.get_by_text("Kept.").first).to_be_visible()
    expect(asked).to_have_count(0)
    assert [entry.text for entry in state_of(lesson).entries[1]] == ["14"]


def test_the_form_is_whole_without_scripts(open_as, owner, routine):
    page = open_as(owner, java_script_enabled=False)
    page.goto(f"/routines/{routine.pk}/taught/")
    page.get_by_text("What was said differently, cell by cell").click()
    page.locator('.cell-slip[data-cell="8"] summary').click()
    page.locator('.cell-slip[data-cell="8"] [data-other]').fill("54")
    page.get_by_role("button", name="Keep the lesson").click()
    expect(page.get_by_text("Kept.").first).to_be_visible()
    assert state_of(Lesson.objects.get()).entries[8][0].struck == ["54"]


def test_a_replay_is_stepped_by_key(open_as, owner, routine):
    page = open_as(owner)
    page.goto(f"/routines/{routine.pk}/taught/")
    page.locator('#log-grid [data-n="8"]').click()
    page.locator('.cell-slip[data-cell="8"] .chip-said').first.click()
    page.get_by_role("button", name="Keep the lesson").click()
    expect(page.get_by_text("Kept.").first).to_be_visible()
    page.get_by_role("link", name="Replay").click()
    expect(page.locator("[data-replay]")).to_have_attribute("data-at", "0")
    page.wait_for_load_state()  # its scripts listen by then
    page.keyboard.press("ArrowRight")
    expect(page.locator("[data-replay]")).to_have_attribute("data-at", "1")
    page.keyboard.press("End")
    expect(page.locator(".g-strike")).to_have_count(1)
