"""The board in a real browser: what is written is painted once it is kept, and never lost; nothing unwritten is in the page."""

import re
import time

import pytest
from playwright.sync_api import expect

from routines.models.plan_document import CountSection, Fold
from tests.browser.board_page import Board
from tests.browser.line import line_to
from tests.routines.lessons.making import open_lesson
from tests.routines.making import make_routine

pytestmark = pytest.mark.django_db(transaction=True)

UUID = re.compile(r"[0-9a-f]{8}-[0-9a-f-]{27}")  # addresses hold them, and their digits are no counts
SIXES = CountSection("whole", "10", "6", 30)


@pytest.fixture
def lesson(owner):
    return open_lesson(
        owner, routine=make_routine(owner, title="Sixes", count=SIXES, fold=Fold(5), stops=(), targets=())
    )


@pytest.fixture
def hundred(owner):
    count = CountSection("whole", "1", "1", 100)
    return open_lesson(
        owner, routine=make_routine(owner, title="Ones", count=count, fold=Fold(10), stops=(), targets=())
    )


@pytest.fixture
def board(opened, owner, lesson) -> Board:
    return Board(opened(owner, width=1920, height=1080), lesson).open()


def test_a_lesson_of_thirty_counts_as_it_was_said_and_marked(board):
    board.write(7)
    board.say(8, "54")
    board.say(8, "52")
    board.cell(9).focus()
    board.write(10)
    board.say(19, "119")
    board.say(19, "118", "Shift+Enter")
    board.cell(20).focus()
    board.write(11)
    board.cell(1).focus()
    board.press("r", "t", "j")
    board.cell(6).focus()
    board.press("j", "h", "u")
    board.cell(11).focus()
    board.press("p")
    board.page.keyboard.type("they all end with zero")
    board.press("Enter")
    board.all_sent()
    state = board.state
    assert state.next == 31
    assert [(entry.text, entry.struck) for entry in state.entries[8]] == [("52", ["54"])]
    assert [(entry.text, entry.struck) for entry in state.entries[19]] == [("118", [])]
    assert {(mark["n"], mark["mark"]) for mark in state.marks} == {
        (1, "ring"),
        (1, "tint"),
        (6, "hatch"),
        (6, "underline"),
    }
    assert [(jump["from"], jump["to"]) for jump in state.jumps] == [(1, 6)]
    assert [(phrase["text"], phrase["cells"]) for phrase in state.phrases] == [("they all end with zero", [11])]
    assert board.shown()[8] == "52, struck: 54"
    assert board.page.locator(".i-label").text_content() == "+30"
    board.page.reload()
    board.wait_until_ready()
    assert len(board.shown()) == 30
    assert board.page.locator(".i-ring").count() == 1


def test_space_the_arrow_and_a_tap_on_the_next_cell_write_it(board):
    board.press("Space", "ArrowRight")
    board.expect_next(3)
    board.cell(3).click()
    board.tool("next").click()
    board.expect_next(5)
    assert board.shown() == {1: "10", 2: "16", 3: "22", 4: "28"}


def test_the_arrows_go_through_the_cells_and_write_only_on_the_next(board):
    board.write(7)
    board.press("ArrowUp", "ArrowRight", "ArrowLeft", "ArrowDown")
    expect(board.cell(8)).to_be_focused()
    board.press("ArrowLeft", "ArrowRight")
    board.expect_next(8)
    board.press("ArrowRight")
    board.expect_next(9)


def test_a_clicker_goes_on_and_back_wherever_the_focus_is(board):
    board.page.locator('[data-does="bare"]').first.focus()
    board.press("PageDown", "PageDown", "PageUp")
    board.expect_next(2)


def test_a_key_that_is_held_down_writes_once(board):
    for _ in range(5):
        board.page.keyboard.down("Space")
    board.page.keyboard.up("Space")
    board.expect_next(2)


def test_a_guess_stands_in_an_empty_cell_until_it_is_counted(board):
    board.say(3, "20")
    expect(board.cell(3)).to_have_attribute("aria-label", "guess: 20")
    board.write(3)
    assert board.shown()[3] == "22"
    board.all_sent()
    assert board.state.predictions == {}


def test_a_covered_count_is_nowhere_in_the_page(board):
    board.write(3)
    board.cell(2).focus()
    board.press("c")
    expect(board.cell(2)).to_have_attribute("aria-label", "covered")
    assert "16" not in UUID.sub("", board.page.locator("main").aria_snapshot())
    assert "16" not in board.page.locator("main").text_content()
    board.press("c")
    expect(board.cell(2)).not_to_have_attribute("aria-label", "covered")  # painted once it is stored
    assert board.shown()[2] == "16"


def test_a_finger_takes_a_tool_and_uses_it(opened, owner, lesson):
    board = Board(opened(owner, width=820, height=1180, has_touch=True), lesson).open()
    board.write(4)
    board.tool("underline").tap()
    numeral = board.cell(3).locator(".numeral").bounding_box()
    board.page.touchscreen.tap(numeral["x"] + 4, numeral["y"] + numeral["height"] / 2)
    board.tool("jump").tap()
    board.cell(1).tap()
    board.cell(4).tap()
    board.tool("phrase").tap()
    board.cell(1).tap()
    board.cell(2).tap()
    board.page.get_by_label("What was noticed?").fill("six more")
    board.page.get_by_role("button", name="pin").tap()
    board.all_sent()
    assert [(mark["n"], mark["mark"], mark["place"]) for mark in board.state.marks] == [(3, "underline", 0)]
    assert [(jump["from"], jump["to"]) for jump in board.state.jumps] == [(1, 4)]
    assert [phrase["cells"] for phrase in board.state.phrases] == [[1, 2]]
    board.tool("undo").tap()
    expect(board.page.locator(".b-phrase")).to_have_count(0)


def test_the_right_count_is_a_button_too_and_says_nothing_before_it_is_pressed(board):
    board.write(1)
    board.say(2, "15")
    board.cell(2).focus()
    board.press("s")
    assert "16" not in UUID.sub("", board.page.locator("[data-part=desk]").aria_snapshot())
    board.page.get_by_role("button", name="as it counts").click()
    expect(board.cell(2)).to_have_attribute("aria-label", "16, struck: 15")  # painted once it is stored


def test_a_line_is_counted_again_and_thinking_has_its_bar(board):
    board.write(6)
    board.cell(2).focus()
    board.press("a", "k")
    expect(board.page.locator(".i-recount")).to_have_count(1)
    expect(board.page.locator(".is-thinking")).to_have_count(1)
    left = float(
        board.page.evaluate("getComputedStyle(document.querySelector('.b-think-bar')).getPropertyValue('--left')")
    )
    assert 0.8 < left <= 1
    board.press("k")
    expect(board.page.locator(".is-thinking")).to_have_count(0)


def test_after_the_planned_end_the_board_goes_on_only_when_asked_twice(board):
    board.write(30)
    expect(board.page.locator(".is-next")).to_have_count(0)
    assert board.page.locator("[data-n]").count() == 30
    board.write(1)
    board.expect_next(31)
    board.write(1)
    assert board.shown()[31] == "190"


def test_the_tools_go_away_with_one_key_and_come_back(board):
    board.press("b")
    expect(board.tool("tint")).to_be_hidden()
    board.press("b")
    expect(board.tool("tint")).to_be_visible()


# Nothing before its time


def numbers_in(words: str) -> set[str]:
    return set(re.findall(r"\d+", words))


def test_with_the_tools_away_the_focus_stays_in_its_cell(board):
    board.write(3)
    board.cell(2).focus()
    board.press("b", "t")
    expect(board.cell(2)).to_have_class(re.compile("is-tint"))
    expect(board.cell(2)).to_be_focused()


def test_nothing_unwritten_is_in_the_source_the_page_or_what_is_heard(board):
    board.write(5)
    later = set(list(board.texts())[5:])
    # Cells and lines are numbered, and so are those of the unwritten: places, not values.
    places = {str(n) for n in range(1, 31)}
    source = board.page.request.get(board.page.url).text()
    main = re.sub(r'data-token="[^"]*"|<svg.*?</svg>', "", source[source.index("<main") :], flags=re.DOTALL)
    assert numbers_in(UUID.sub("", main)) & later == set()
    assert numbers_in(UUID.sub("", board.page.locator("[data-part=desk]").aria_snapshot())) & later == set()
    words = UUID.sub("", board.readable())
    found = numbers_in(words) & (later - places)
    assert found == set(), [words[words.index(n) - 80 : words.index(n) + 40] for n in found]
    cells = board.page.eval_on_selector_all(
        "[data-n]", "all => all.map(one => one.textContent + ' ' + one.getAttribute('aria-label')).join(' ')"
    )
    assert numbers_in(cells) & later == set()


def test_what_the_board_is_told_holds_no_answer(board):
    told = board.page.request.get(f"/lessons/{board.lesson.key}/board.json").json()
    assert not {"questions", "coming", "expected", "targets", "probes", "flags"} & told.keys()


# Without network, without session, without store


def test_without_network_the_counts_stay_here_and_go_when_it_is_back(opened, owner, lesson):
    board = Board(opened(owner), lesson).open()
    board.write(2)
    board.all_sent()
    board.page.context.set_offline(True)
    board.write(12)
    board.expect_status("12 counts are on this device only")
    assert len(board.shown()) == 14
    board.page.context.set_offline(False)
    board.all_sent()
    written = [event["data"]["n"] for event in board.events if event["kind"] == "term.write"]
    assert written == list(range(1, 15))


def test_an_answer_that_was_never_heard_leaves_one_row(opened, owner, lesson):
    board = Board(opened(owner), lesson).open()
    board.all_sent()
    lost = []

    def lose(route):
        if route.request.method == "POST" and not lost:
            lost.append(route.fetch())
            route.abort()
        else:
            route.continue_()

    board.page.route("**/events/**", lose)
    board.write(3)
    board.all_sent()
    assert lost
    assert [event["data"]["n"] for event in board.events if event["kind"] == "term.write"] == [1, 2, 3]


def test_a_reload_without_network_shows_everything_that_was_painted(opened, owner, lesson, live_server):
    with line_to(live_server.url) as line:
        board = Board(opened(owner), lesson).open(line.url)
        board.page.evaluate("navigator.serviceWorker.ready")
        board.page.wait_for_function("async () => (await (await caches.open('countfold-lessons')).keys()).length > 15")
        board.write(3)
        board.all_sent()
        line.cut()
        board.write(4)
        board.expect_next(8)
        board.page.reload()
        board.wait_until_ready()
        assert list(board.shown()) == [1, 2, 3, 4, 5, 6, 7]
        board.write(1)
        board.expect_status("5 counts are on this device only")
        line.mend()
        board.all_sent()
    assert [event["data"]["n"] for event in board.events if event["kind"] == "term.write"] == list(range(1, 9))


def test_a_session_that_ended_keeps_the_counts_and_sends_them_after_signing_in(opened, owner, lesson):
    board = Board(opened(owner), lesson).open()
    board.write(1)
    board.all_sent()
    cookies = board.page.context.cookies()
    board.page.context.clear_cookies()
    board.write(2)
    board.expect_status("2 counts are on this device only · sign in again to send")
    board.page.context.add_cookies(cookies)
    board.all_sent()
    assert board.state.next == 4


def test_a_token_that_changed_is_fetched_anew(opened, owner, lesson):
    board = Board(opened(owner), lesson).open()
    board.all_sent()
    board.page.context.clear_cookies(name="countfold_csrf")
    board.write(2)
    board.all_sent()
    assert board.state.next == 3


@pytest.mark.parametrize("closing", ["undefined", "{open() { throw new Error('closed'); }}"])
def test_a_browser_that_keeps_nothing_says_so_and_sends_all_the_same(opened, owner, lesson, closing):
    page = opened(owner)
    page.add_init_script(f"Object.defineProperty(window, 'indexedDB', {{value: {closing}}})")
    board = Board(page, lesson).open()
    board.write(2)
    board.expect_status("kept on this page only")
    board.all_sent()
    assert board.state.next == 3


def test_two_tabs_of_one_browser_show_the_same_without_doubles(opened, owner, lesson):
    one = Board(opened(owner), lesson).open()
    two = Board(one.page.context.new_page(), lesson).open()
    one.page.context.set_offline(True)
    one.page.bring_to_front()
    one.write(3)
    expect(two.page.locator(".is-next")).to_have_attribute("data-n", "4")
    two.page.bring_to_front()
    two.write(2)
    expect(one.page.locator(".is-next")).to_have_attribute("data-n", "6")
    one.page.context.set_offline(False)
    one.all_sent()
    two.all_sent()
    assert [event["data"]["n"] for event in one.events if event["kind"] == "term.write"] == [1, 2, 3, 4, 5]


# Quick, and readable


def test_keys_faster_than_the_network_are_all_kept_in_order(opened, owner, hundred):
    board = Board(opened(owner), hundred).open()
    board.page.route("**/events/**", lambda route: (time.sleep(0.4), route.continue_()))
    # One on and one back, so that the order matters; twenty a second for ten seconds.
    keys = (["PageDown", "PageDown", "PageUp"] * 67)[:200]
    began = time.monotonic()
    for position, key in enumerate(keys):
        board.press(key)
        time.sleep(max(0, began + (position + 1) / 20 - time.monotonic()))
    board.expect_next(69)
    board.page.unroute("**/events/**")
    board.all_sent()
    kinds = [event["kind"] for event in board.events if event["kind"] != "lesson.open"]
    assert kinds == [{"PageDown": "term.write", "PageUp": "undo"}[key] for key in keys]
    assert list(board.shown().values()) == [str(n) for n in range(1, 69)]
