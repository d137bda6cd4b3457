"""The board from the back row, on a phone, and as axe sees it."""

import pytest

from routines.demo.plans import PLANS
from routines.models.plan_document import CountSection, Fold
from tests.browser.axe import faults_in_both_themes
from tests.browser.board_page import Board
from tests.routines.lessons.making import append, event, open_lesson
from tests.routines.making import make_routine

pytestmark = pytest.mark.django_db(transaction=True)

DIGIT = 0.723  # height of a digit, of the font's size
BACK_ROW = 53  # px of a picture 1920 px wide: DESIGN 11, ten metres from a picture of two metres


def filled(teacher, plan):
    """A lesson whose counts all stand, with ink of every kind."""
    lesson = open_lesson(teacher, routine=make_routine(teacher, plan=plan, grade="2"))
    terms = plan.count.count().terms
    append(lesson, event(2, "filled", {"from": 1, "to": terms}))
    return lesson


@pytest.mark.parametrize("demo", PLANS, ids=[demo.key for demo in PLANS])
def test_the_back_row_reads_every_demo_count(opened, owner, demo):
    board = Board(opened(owner, width=1920, height=1080), filled(owner, demo.plan)).open()
    board.page.wait_for_selector(".is-written:not([hidden])")
    seen = board.page.eval_on_selector_all(
        ".b-cell.is-written:not([hidden])",
        """cells => cells.filter(cell => cell.offsetParent).map(cell => ({
          size: parseFloat(getComputedStyle(cell).fontSize), over: cell.scrollWidth - cell.clientWidth,
          words: cell.querySelector(".numeral").getBoundingClientRect().width, room: cell.getBoundingClientRect().width}))""",
    )
    assert seen
    assert min(cell["size"] for cell in seen) * DIGIT >= BACK_ROW
    assert [cell for cell in seen if cell["words"] > cell["room"]] == []
    assert board.page.evaluate("document.documentElement.scrollWidth - innerWidth") <= 0
    stage = board.page.locator("[data-part=stage]").bounding_box()
    grid = board.page.locator("[data-part=grid]").bounding_box()
    assert grid["x"] + grid["width"] <= stage["x"] + stage["width"] + 2
    assert grid["y"] + grid["height"] <= stage["y"] + stage["height"] + 2


@pytest.mark.parametrize("width", [1280, 320])
def test_axe_finds_nothing_on_the_board_in_either_theme(opened, owner, width):
    page = opened(owner, width=width)
    count = CountSection("whole", "10", "6", 30)
    lesson = open_lesson(owner, routine=make_routine(owner, title="Sixes", count=count, fold=Fold(5)))
    board = Board(page, lesson).open()
    board.write(7)
    board.say(3, "24")
    board.say(12, "80")
    board.cell(1).focus()
    board.press("t", "r", "j")
    board.cell(6).focus()
    board.press("h", "u", "j", "p")
    page.keyboard.type("thirty more")
    board.press("Enter")
    board.cell(2).focus()
    board.press("c", "k")
    board.all_sent()
    for act in (lambda: None, lambda: board.press("s"), lambda: (board.press("Escape"), board.press("?"))):
        act()
        assert faults_in_both_themes(page) == []
    assert page.evaluate("document.documentElement.scrollWidth - innerWidth") <= 0


@pytest.mark.parametrize("width", [1280, 320])
def test_whatever_is_tapped_is_as_large_as_a_finger(opened, owner, width):
    lesson = open_lesson(owner)
    board = Board(opened(owner, width=width), lesson).open()
    board.cell(1).focus()
    board.press("s")
    boxes = board.page.eval_on_selector_all(
        "button, a, input, [data-n]",
        "all => all.filter(one => one.offsetParent).map(one => [one.textContent, one.offsetWidth, one.offsetHeight])",
    )
    assert [box for box in boxes if min(box[1:]) < 44] == []


def test_nothing_moves_by_itself_where_motion_is_not_wanted(opened, owner):
    board = Board(opened(owner, reduced_motion="reduce"), open_lesson(owner)).open()
    board.write(3)
    board.press("k")
    assert board.page.evaluate("document.getAnimations().length") == 0
