"""Every free text of board and lectern: one that looks as if it named a child is asked about before it is kept; the question
is answered by keyboard, and never loses what was typed. One that is too long is refused in a sentence.
"""

import pytest
from playwright.sync_api import Page, expect

from routines.lessons.recording import state_of
from tests.browser.board_page import Board
from tests.browser.lectern_page import Lectern
from tests.routines.lessons.making import open_lesson
from tests.routines.making import make_routine

pytestmark = pytest.mark.django_db(transaction=True)

NAMED = "Maya said ten"


@pytest.fixture
def lesson(owner):
    return open_lesson(owner, routine=make_routine(owner))


def board_said(page, lesson):
    Board(page, lesson).open().cell(1).focus()
    page.keyboard.press("s")
    return page.locator("#slip-words"), lambda state: state.entries[1][0].text


def board_guess(page, lesson):
    Board(page, lesson).open().cell(9).focus()
    page.keyboard.press("g")
    return page.locator("#slip-words"), lambda state: state.predictions[9]["text"]


def board_phrase(page, lesson):
    board = Board(page, lesson).open()
    board.write(2)
    board.cell(2).focus()
    page.keyboard.press("p")
    return page.locator("#slip-words"), lambda state: state.phrases[0]["text"]


def lectern_noticing(page, lesson):
    Lectern(page, lesson).open().does("notice")
    return page.locator("#notice-words"), lambda state: state.notices[0]["text"]


def lectern_changed_noticing(page, lesson):
    lectern = Lectern(page, lesson).open()
    lectern.notice("the ones repeat")
    page.get_by_role("button", name="change: the ones repeat").click()
    return page.locator("#notice-words"), lambda state: state.notices[0]["text"]


def lectern_cell(page, lesson):
    Lectern(page, lesson).open().part("grid").locator('[data-n="1"]').click()
    return page.locator("#cell-words"), lambda state: state.entries[1][0].text


def lectern_guess(page, lesson):
    Lectern(page, lesson).open().part("grid").locator('[data-n="9"]').click()
    return page.locator("#cell-words"), lambda state: state.predictions[9]["text"]


FIELDS = [
    (board_said, 40), (board_guess, 40), (board_phrase, 280),
    (lectern_noticing, 280), (lectern_changed_noticing, 280), (lectern_cell, 40), (lectern_guess, 40),
]  # fmt: skip


def question(page: Page):
    return page.locator("[data-ask]:visible")


@pytest.mark.parametrize(("open_field", "longest"), FIELDS, ids=lambda value: getattr(value, "__name__", ""))
def test_a_free_text_is_asked_about_by_keyboard_and_never_lost(open_as, owner, lesson, open_field, longest):
    page = open_as(owner)
    field, kept = open_field(page, lesson)
    too_long = "9" * (longest + 1)
    field.fill(too_long)
    field.press("Enter")
    expect(page.locator("[data-too-long]:visible")).to_have_text(
        f"That is {longest + 1} characters long; {longest} is the most here."
    )
    expect(field).to_have_value(too_long)
    field.fill(NAMED)
    field.press("Enter")
    expect(question(page)).to_contain_text("Is Maya a child?")
    page.keyboard.press("Enter")  # "Change it" has the focus
    expect(question(page)).to_have_count(0)
    expect(field).to_be_focused()
    expect(field).to_have_value(NAMED)
    field.press("Enter")
    expect(question(page)).to_be_visible()
    page.keyboard.press("Tab")
    page.keyboard.press("Enter")  # "Not a child; keep it"
    expect(field).to_be_hidden()
    expect(page.locator('[data-part="status"] p')).to_contain_text("all sent")
    page.wait_for_timeout(300)
    expect(page.locator('[data-part="status"] p')).to_contain_text("all sent")
    assert kept(state_of(lesson)) == NAMED


def test_escape_leaves_the_question_before_it_leaves_the_slip(open_as, owner, lesson):
    page = open_as(owner)
    field, _kept = board_phrase(page, lesson)
    field.fill(NAMED)
    field.press("Enter")
    expect(question(page)).to_be_visible()
    page.keyboard.press("Escape")
    expect(field).to_have_value(NAMED)
    expect(field).to_be_focused()
    page.keyboard.press("Escape")
    expect(field).to_be_hidden()


def test_a_tap_elsewhere_asks_too(open_as, owner, lesson):
    page = open_as(owner)
    field, _kept = board_said(page, lesson)
    field.fill(NAMED)
    page.locator('[data-n="20"]').click()
    expect(question(page)).to_be_visible()
    expect(field).to_have_value(NAMED)
