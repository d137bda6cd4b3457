"""In a made-up language, everything that board and lectern say, scripts included, is translated."""

import pytest
from playwright.sync_api import expect

from routines.lessons.recording import state_of
from tests.browser.board_page import Board
from tests.browser.lectern_page import Lectern
from tests.pseudo_locale import speak_in_brackets, untranslated
from tests.routines.lessons.making import open_lesson
from tests.routines.lessons.pseudo_locale import people_and_plan
from tests.routines.making import make_routine

pytestmark = pytest.mark.django_db(transaction=True)

# Sentences in their own element, so that one that holds a stacked fraction is read whole.
SHOWN = """() => {
  const found = [];
  const seen = one => one.checkVisibility({ visibilityProperty: true });
  for (const one of document.body.querySelectorAll("*")) {
    if (one.closest("script, style, svg") || !seen(one)) continue;
    for (const name of ["aria-label", "title", "placeholder"]) if (one.getAttribute(name)) found.push(one.getAttribute(name));
    if ([...one.childNodes].some(node => node.nodeType === Node.TEXT_NODE && node.data.trim())) found.push(one.textContent);
  }
  return found;
}"""


@pytest.fixture
def lesson(owner):
    return open_lesson(owner, routine=make_routine(owner))


def left_bare(page, lesson) -> set[str]:
    peoples = people_and_plan(lesson, state_of(lesson)) | {"zigzag", "quince idea", "Rosalind said ten", "Rosalind"}
    return {left for words in page.evaluate(SHOWN) if (left := untranslated(words, peoples))}


def test_the_board(owner, lesson, open_as, monkeypatch):
    speak_in_brackets(monkeypatch)
    board = Board(open_as(owner, width=1920, height=1080), lesson).open()
    assert left_bare(board.page, lesson) == set()
    board.write(6)
    board.say(3, "17")
    for tool, cell in (("tint", 1), ("ring", 2), ("hatch", 4), ("underline", 5), ("cover", 6), ("again", 4)):
        board.tool(tool).click()
        board.cell(cell).click()
        assert left_bare(board.page, lesson) == set(), tool
        board.tool(tool).click()
    board.tool("jump").click()
    board.cell(1).click()
    assert left_bare(board.page, lesson) == set()
    board.cell(4).click()
    board.tool("phrase").click()
    board.cell(2).click()
    assert left_bare(board.page, lesson) == set()
    board.page.keyboard.type("zigzag")
    board.press("Enter")
    expect(board.page.locator(".b-phrase")).to_be_visible()
    board.cell(12).focus()
    board.press("g")
    assert left_bare(board.page, lesson) == set()
    board.page.keyboard.type("88")
    board.press("Enter")
    board.cell(2).focus()
    board.press("s")
    assert left_bare(board.page, lesson) == set()
    board.press("Escape")
    board.press("k", "b", "?")
    expect(board.page.locator('[data-part="help"]')).to_be_visible()
    assert left_bare(board.page, lesson) == set()
    board.page.context.set_offline(True)
    board.press("Escape", "PageDown", "PageDown")
    board.expect_status("on this device only")
    assert left_bare(board.page, lesson) == set()
    board.page.context.set_offline(False)


def test_the_lectern(owner, lesson, open_as, monkeypatch):
    speak_in_brackets(monkeypatch)
    lectern = Lectern(open_as(owner, width=390, height=844), lesson).open()
    page = lectern.page
    assert left_bare(page, lesson) == set()
    lectern.write(10)  # the stop is after the 10th
    lectern.expect_next(11)
    assert left_bare(page, lesson) == set()
    page.locator(".l-heard").first.click()
    expect(page.locator('[data-part="said"] .l-said')).to_be_visible()
    assert left_bare(page, lesson) == set()
    page.locator('[data-how="mixed"]').click()
    page.locator('[data-part="voice-pick"]').click()
    assert left_bare(page, lesson) == set()
    page.locator('[data-part="voice-pick"]').click()
    page.locator('[data-key="0-seen"]').click()
    lectern.does("notice")
    assert left_bare(page, lesson) == set()
    page.fill("#notice-words", "Rosalind said ten")
    page.press("#notice-words", "Enter")
    expect(page.locator('[data-part="notice-sheet"] [data-ask]')).to_be_visible()
    assert left_bare(page, lesson) == set()
    page.locator('[data-part="notice-sheet"] [data-does="change"]').click()
    page.fill("#notice-words", "quince idea")
    page.press("#notice-words", "Enter")
    expect(page.locator(".l-kept")).to_be_visible()
    assert left_bare(page, lesson) == set()
    for cell in (11, 12, 16):
        page.locator(f'[data-n="{cell}"]').click()
        expect(page.locator('[data-part="cell-sheet"]')).to_be_visible()
        assert left_bare(page, lesson) == set()
        page.keyboard.press("Escape")
    for sheet in ("ask", "devices", "end"):
        lectern.does(sheet)
        assert left_bare(page, lesson) == set(), sheet
        page.keyboard.press("Escape")
