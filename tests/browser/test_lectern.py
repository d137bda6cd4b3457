"""The lectern and the board at once, in two real browsers: both show the same, nothing is lost, and the board's side never
holds what is for the teacher's eyes.
"""

import json

import pytest
from playwright.sync_api import expect

from routines.models import Lesson, LessonPass
from routines.models.plan_document import CountSection, ExpectedAnswer, Fold, Stop, Target
from tests.browser.axe import faults_in_both_themes
from tests.browser.board_page import Board
from tests.browser.lectern_page import Lectern
from tests.routines.lessons.making import open_lesson
from tests.routines.making import make_routine

pytestmark = pytest.mark.django_db(transaction=True)

SECRETS = (
    "A planned title that tells", "What stands under zork", "The planned answer quux", "A planned route frob",
    "they fall in columns plugh", "the reply xyzzy", "the target wibble", "sixty-for", "ask them about fnord", "a note grault",
    "noticed garply",
)  # fmt: skip
STOPS = (
    Stop(3, "What stands under zork one", "The planned answer quux one", ("A planned route frob",), 20, 60, 90),
    Stop(5, "What stands under zork two", "The planned answer quux two"),
    Stop(20, "What stands under zork three", "The planned answer quux three"),
)
EXPECTED = (
    ExpectedAnswer("they fall in columns plugh", "the reply xyzzy"),
    ExpectedAnswer("sixty-for", "ask them about fnord", "slip", 10),
)


@pytest.fixture
def lesson(owner):
    routine = make_routine(
        owner,
        title="A planned title that tells",
        count=CountSection("whole", "10", "6", 30),
        fold=Fold(5),
        stops=STOPS,
        expected=EXPECTED,
        targets=(Target({"family": "step", "difference": "6"}, "the target wibble"),),
        notes="a note grault",
    )
    return open_lesson(owner, routine=routine)


@pytest.fixture
def lectern(opened, owner, lesson) -> Lectern:
    return Lectern(opened(owner, width=390, height=844), lesson).open()


@pytest.fixture
def paired(opened, lectern):
    """A device without anyone signed in, paired by its code; `.heard` is every text that the server ever sent it."""

    def pairing(role: str = "a board for the class"):
        page = opened(None, width=1920, height=1080)
        page.heard = []

        def listen(route):
            told = route.fetch(max_redirects=0)
            if any(kind in told.headers.get("content-type", "") for kind in ("json", "html", "script")):
                page.heard.append(told.text())
            route.fulfill(response=told)

        page.route("**/*", listen)
        page.goto("/board/")
        code = page.locator(".waiting-code").inner_text()
        lectern.does("devices")
        sheet = lectern.part("devices-sheet")
        sheet.get_by_label("Code on the device").fill(code)
        sheet.get_by_role("radio", name=role).check()
        sheet.get_by_role("button", name="Pair", exact=True).click()
        expect(sheet.get_by_text("is paired.")).to_be_visible()
        expect(sheet.get_by_role("button", name="Disconnect")).to_be_visible()
        sheet.get_by_role("button", name="close").click()
        return page

    return pairing


@pytest.fixture
def board(paired, lesson) -> Board:
    page = paired()
    page.wait_for_url("**/board/", timeout=15_000)
    page.wait_for_url(f"**/lessons/{lesson.key}/board/", timeout=15_000)
    opened = Board(page, lesson)
    opened.wait_until_ready()
    return opened


def picture_of_board(board: Board) -> dict:
    """What is seen on the board: in each cell what stands, what is struck and how it is marked; jumps; phrases."""
    return board.page.evaluate(
        """() => {
          const told = (one, look) => [...one.querySelectorAll(look)].map(part => part.textContent);
          const cells = [...document.querySelectorAll(".b-cell[data-n]")].map(cell => [cell.dataset.n, {
            stands: told(cell, ".b-entry > .numeral, .b-guess").join(" | "), struck: told(cell, ".b-struck .numeral").join(", "),
            leftOut: cell.querySelector(".b-left-out") !== null, guess: cell.querySelector(".b-guess") !== null,
            covered: cell.matches(".is-covered"), tint: cell.matches(".is-tint"), hatch: cell.matches(".is-hatch")}]);
          const over = look => document.querySelectorAll("[data-part=ink] " + look).length;
          return {cells: Object.fromEntries(cells), jumps: told(document, ".i-label"), rings: over(".i-ring"),
            underlines: over(".i-underline"), recounts: over(".i-recount"), phrases: told(document, ".b-phrase q")};
        }"""
    )


def picture_of_replay(page) -> dict:
    """The same of the replay's drawing."""
    return page.evaluate(
        """() => {
          const grid = document.querySelector("[data-replay] .g-root");
          const told = (one, look) => [...one.querySelectorAll(look)].map(part => part.textContent);
          const marked = (n, mark) => grid.querySelector(`[data-marked="${n}"][data-mark=${mark}]`) !== null;
          const has = (cell, look) => cell !== null && cell.querySelector(look) !== null;
          const cells = Array.from({length: 30}, (_, i) => String(i + 1)).map(n => {
            const cell = grid.querySelector(`.g-cell[data-n="${n}"]`);
            return [n, {stands: cell ? told(cell, ".g-numeral, .g-guessed").join(" | ") : "",
              struck: cell ? told(cell, ".g-quiet").join(", ") : "", leftOut: has(cell, ".g-left-out"),
              guess: has(cell, ".g-guess"), covered: has(cell, ".g-slip"), tint: marked(n, "tint"), hatch: marked(n, "hatch")}];
          });
          const over = look => grid.querySelectorAll(look).length;
          return {cells: Object.fromEntries(cells), jumps: told(grid, ":scope > .g-quiet"), rings: over(".g-ink-ring"),
            underlines: over(".g-ink-underline"), recounts: over(".g-ink-recount"),
            phrases: [...document.querySelectorAll(".replay-phrases li")]
              .map(one => one.lastChild.textContent.trim().slice(1, -1))};
        }"""
    )


def alike(lectern: Lectern, board: Board, counts: int) -> None:
    """Both show the same, and what the server holds."""
    lectern.expect_next(counts + 1)
    expect(board.page.locator(".is-next")).to_have_attribute("data-n", str(counts + 1), timeout=10_000)
    lectern.all_sent()
    board.all_sent()
    lectern.page.wait_for_timeout(2500)
    assert lectern.shown() == board.shown()
    events = lectern.lesson.events.order_by("seq")
    assert [one.seq for one in events] == list(range(1, len(events) + 1))
    assert len({one.event_id if hasattr(one, "event_id") else one.as_dict()["id"] for one in events}) == len(events)


def test_a_whole_lesson_on_lectern_and_board(lectern, board, lesson, opened, owner):
    lectern.write(3)
    stop = lectern.part("now")
    expect(stop).to_contain_text("What stands under zork one")
    expect(stop.get_by_role("button", name="Go on")).to_be_visible()
    lectern.tap("Think, 20 s")
    expect(lectern.part("times")).to_contain_text("s left")
    expect(board.page.locator("[data-part=think]")).to_have_class("b-think is-thinking", timeout=5000)
    lectern.tap("end the time")
    expect(lectern.part("times")).to_be_hidden()
    lectern.write(2)
    expect(stop).to_contain_text("What stands under zork two")
    lectern.tap("Go on")
    expect(stop).to_contain_text("still to come")

    lectern.write(4)
    lectern.tap("They said “sixty-for”")
    expect(lectern.part("said")).to_contain_text("“sixty-for” stands where 64 belongs.")
    expect(lectern.part("said")).to_contain_text("ask them about fnord")
    lectern.tap("The class corrects: 64")
    expect(lectern.part("said")).to_be_hidden()
    lectern.tap("“64” again")
    lectern.page.locator("[data-part=grid] [data-n='11']").click()
    lectern.tap("The class corrects: 70", "[data-part=cell-sheet]")
    lectern.tap("Left out")
    lectern.tap("Let it stand")
    lectern.expect_next(13)

    expect(board.page.locator(".is-next")).to_have_attribute("data-n", "13", timeout=10_000)
    board.cell(1).focus()
    board.press("r", "j")
    board.cell(6).focus()
    board.press("j", "t", "h", "u")
    board.cell(3).focus()
    board.press("p")
    board.page.keyboard.type("the ones come again")
    board.press("Enter")
    board.cell(2).focus()
    board.press("c")
    board.cell(13).focus()
    board.write(7)
    lectern.expect_next(20)
    lectern.page.locator("[data-part=grid] [data-n='25']").click()
    lectern.page.fill("#cell-words", "150")
    lectern.tap("Write the guess", "[data-part=cell-sheet]")
    expect(board.cell(25)).to_have_attribute("aria-label", "guess: 150", timeout=5000)
    lectern.write(1)
    expect(stop).to_contain_text("What stands under zork three")

    lectern.tap("mixed")
    lectern.does("notice")
    lectern.tap("they fall in columns plugh", "[data-part=notice-sheet]")
    expect(lectern.part("expected")).to_contain_text("the reply xyzzy")
    lectern.page.fill("#notice-words", "noticed garply")
    lectern.tap("Keep it", "[data-part=notice-sheet]")
    lectern.tap("seen")
    lectern.write(9)
    alike(lectern, board, 29)
    assert board.shown()[10] == "64, struck: sixty-for"
    assert board.shown()[11] == "70, struck: 64"
    assert board.shown()[12] == "left out"

    replay = opened(owner)
    replay.goto(f"/lessons/{lesson.key}/replay/")
    replay.keyboard.press("End")
    expect(replay.locator(".replay-now")).to_contain_text("the end")
    again, before = picture_of_replay(replay), picture_of_board(board)
    assert {n: (again["cells"][n], cell) for n, cell in before["cells"].items() if cell != again["cells"][n]} == {}
    assert again == before

    state = board.state
    assert sorted(state.stops) == [0, 1, 2]
    assert [(one["text"], one["expected"]) for one in state.notices] == [
        ("they fall in columns plugh", 0),
        ("noticed garply", None),
    ]
    assert [(one["from"], one["to"], one["how"]) for one in state.voices] == [(1, 20, "mixed")]
    assert state.targets == {0: "seen"}
    assert [(one["from"], one["to"]) for one in state.jumps] == [(1, 6)]

    tree = json.dumps(board.page.locator("body").aria_snapshot())
    told = board.readable() + board.page.content() + tree
    assert any('"kind": "term.correct"' in one for one in board.page.heard)
    told += "".join(board.page.heard)
    said_aloud = {"sixty-for"}
    assert {words for words in SECRETS if words in told} == said_aloud
    for path in (
        "/",
        "/bank/",
        "/lessons/",
        f"/lessons/{lesson.key}/",
        f"/lessons/{lesson.key}/lectern/",
        "/coverage/",
    ):
        assert board.page.request.get(path).status == 404, path
    assert board.page.request.get(f"/lessons/{lesson.key}/lectern.json").status == 404
    assert board.page.request.post(f"/lessons/{lesson.key}/ask/", data={}).status in (403, 404)


def test_with_the_network_cut_for_both_every_event_arrives_once(lectern, board):
    lectern.write(2)
    lectern.all_sent()
    expect(board.page.locator(".is-next")).to_have_attribute("data-n", "3", timeout=10_000)
    board.page.unroute_all(behavior="ignoreErrors")  # what is fetched for the page would go around the cut
    for page in (lectern.page, board.page):
        page.context.set_offline(True)
    lectern.write(6)
    lectern.notice("noticed garply")
    board.write(3)
    board.say(6, "41")
    board.page.wait_for_timeout(1500)
    lectern.expect_status("6 counts are on this device only")
    board.expect_status("4 counts are on this device only")
    for page in (lectern.page, board.page):
        page.context.set_offline(False)
    lectern.all_sent()
    board.all_sent()
    lectern.page.wait_for_timeout(2500)
    assert lectern.shown() == board.shown()
    assert len(board.state.entries[6]) == 2
    expect(lectern.part("differ")).to_contain_text("Two devices wrote different things for 40. Which stands?")
    lectern.tap("“41”")
    expect(lectern.part("differ")).to_be_hidden()
    alike(lectern, board, 8)
    assert [entry.text for entry in board.state.entries[6]] == ["41"]
    assert [one["text"] for one in board.state.notices] == ["noticed garply"]


def test_a_second_teacher_writes_nothing_twice(lectern, opened, owner, lesson, teammate):
    lesson.class_group.teachers.add(teammate)
    second = Lectern(opened(teammate, width=390, height=844), lesson).open()
    lectern.write(2)
    second.expect_next(3)
    for one in (lectern, second):
        one.page.context.set_offline(True)
    lectern.write(1)
    second.write(1)
    for one in (lectern, second):
        one.page.context.set_offline(False)
    for one in (lectern, second):
        one.all_sent()
        one.expect_next(4)
    second.page.wait_for_timeout(2500)
    assert lectern.shown() == second.shown() == {1: "10", 2: "16", 3: "22"}
    expect(second.part("now")).to_contain_text("What stands under zork one")
    expect(second.part("differ")).to_be_hidden()


def test_a_substitute_teaches_and_notes_but_ends_nothing(lectern, paired, lesson):
    page = paired("a lectern for a substitute")
    page.wait_for_url(f"**/lessons/{lesson.key}/lectern/", timeout=15_000)
    page.wait_for_selector("#lectern[data-ready]")
    guest = Lectern(page, lesson)
    guest.write(3)
    expect(guest.part("now")).to_contain_text("What stands under zork one")
    for words in ("End the lesson", "Pair a device", "The log", "Open it again"):
        assert page.get_by_text(words, exact=True).count() == 0, words
    guest.notice("noticed garply")
    guest.does("ask")
    page.fill("#ask-value", "64")
    guest.tap("Check", "[data-part=ask-sheet]")
    expect(page.locator("#appear-answer")).to_contain_text("64 is the 10th count")
    guest.part("ask-sheet").get_by_role("button", name="close").click()
    guest.all_sent()
    lectern.expect_next(4)
    assert page.request.get(f"/lessons/{lesson.key}/").status == 404
    assert page.request.post(f"/lessons/{lesson.key}/end/").status in (403, 404)


def test_questions_are_answered_here_and_say_so_without_network(lectern):
    lectern.does("ask")
    page = lectern.page
    page.fill("#ask-value", "65")
    page.keyboard.press("Enter")
    expect(page.locator("#appear-answer")).to_contain_text("65 is not counted")
    page.fill("#ask-value", "a cat")
    page.keyboard.press("Enter")
    expect(page.locator("#appear-answer .field-error")).to_be_visible()
    page.select_option("#id_claim-saying", "lands")
    expect(page.get_by_label("Multiples of")).to_be_visible()
    page.select_option("#id_claim-saying", "jump")
    expect(page.get_by_label("Goes up by")).to_be_visible()
    page.get_by_label("Goes up by").fill("30")
    lectern.tap("Check it", "[data-part=ask-sheet]")
    expect(page.locator("#claim-box .l-verdict")).to_contain_text("It always holds.")
    page.context.set_offline(True)
    lectern.tap("Check it", "[data-part=ask-sheet]")
    expect(page.get_by_text("This question needs the server")).to_be_visible()


def test_a_childs_name_is_asked_about_before_it_is_kept(lectern):
    lectern.notice("Maya said the ones repeat")
    sheet = lectern.part("notice-sheet")
    expect(sheet.get_by_text("Is Maya a child?")).to_be_visible()
    assert "nothing kept yet." in lectern.part("noticed").inner_text().lower()
    lectern.tap("Change it", "[data-part=notice-sheet]")
    lectern.page.fill("#notice-words", "the ones repeat")
    lectern.tap("Keep it", "[data-part=notice-sheet]")
    expect(lectern.part("noticed")).to_contain_text("the ones repeat")
    lectern.page.get_by_role("button", name="change: the ones repeat").click()
    lectern.page.fill("#notice-words", "the ones repeat after five")
    lectern.tap("Keep it", "[data-part=notice-sheet]")
    expect(lectern.part("noticed")).to_contain_text("the ones repeat after five")
    lectern.does("undo")
    expect(lectern.part("noticed").locator("span").first).to_have_text("the ones repeat")
    lectern.does("undo")
    expect(lectern.part("noticed")).to_contain_text("Nothing kept yet.")


def test_a_stretch_is_picked_by_two_taps_or_by_dragging(lectern):
    lectern.write(10)
    page = lectern.page
    cell = lambda n: page.locator(f"[data-part=grid] [data-n='{n}']")  # noqa: E731
    lectern.tap("another stretch")
    cell(2).click()
    cell(4).click()
    expect(lectern.part("voice-heading")).to_have_text("The voice from 16 to 28")
    lectern.tap("faded")
    lectern.tap("another stretch")
    page.locator("[data-part=grid]").scroll_into_view_if_needed()
    box, to = cell(6).bounding_box(), cell(9).bounding_box()
    page.mouse.move(box["x"] + 8, box["y"] + 8)
    page.mouse.down()
    page.mouse.move(to["x"] + 8, to["y"] + 8, steps=6)
    page.mouse.up()
    expect(lectern.part("voice-heading")).to_have_text("The voice from 40 to 58")
    lectern.tap("strong")
    lectern.all_sent()
    voices = [one.data for one in lectern.lesson.events.filter(kind="voice").order_by("seq")]
    assert voices == [{"from": 2, "to": 4, "how": "faded"}, {"from": 6, "to": 9, "how": "strong"}]


def test_the_end_is_asked_once_and_leads_to_the_log(lectern, lesson):
    lectern.write(3)
    lectern.does("end")
    lectern.tap("Go on teaching", "[data-part=end-sheet]")
    assert not Lesson.objects.get().ended
    lectern.does("end")
    lectern.tap("End it", "[data-part=end-sheet]")
    lectern.page.wait_for_url(f"**/lessons/{lesson.key}/", timeout=10_000)
    assert Lesson.objects.get().is_over()
    lectern.open()
    expect(lectern.page.get_by_text("This lesson has ended.")).to_be_visible()
    lectern.tap("Open it again")
    expect(lectern.page.get_by_text("This lesson has ended.")).to_be_hidden()
    lectern.all_sent()
    assert not Lesson.objects.get().is_over()


def test_the_board_alone_offers_the_end_to_its_teacher(opened, owner, lesson):
    board = Board(opened(owner, width=1280), lesson)
    board.page.goto(f"/lessons/{lesson.key}/board/?alone=1")
    board.wait_until_ready()
    board.write(2)
    board.page.get_by_role("button", name="end the lesson").click()
    board.page.get_by_role("button", name="End it").click()
    board.page.wait_for_url(f"**/lessons/{lesson.key}/", timeout=10_000)
    assert Lesson.objects.get().is_over()


def test_a_paired_board_is_not_offered_the_end_and_can_be_disconnected(lectern, board):
    assert board.page.get_by_role("button", name="end the lesson").count() == 0
    lectern.does("devices")
    lectern.part("devices-sheet").get_by_role("button", name="Disconnect").click()
    expect(lectern.part("devices-sheet").get_by_text("No other device is in this lesson.")).to_be_visible()
    assert not LessonPass.objects.filter(lesson=lectern.lesson).exists()
    assert board.page.request.get(f"/lessons/{lectern.lesson.key}/board.json").status in (401, 404)


def test_signed_out_the_lectern_keeps_all_and_says_how_to_send_it(lectern):
    lectern.write(2)
    lectern.all_sent()
    lectern.page.context.clear_cookies()
    lectern.write(2)
    lectern.expect_status("sign in again to send")
    expect(lectern.part("sign-in")).to_be_visible()
    lectern.expect_status("2 counts are on this device only")
    lectern.expect_next(5)


@pytest.mark.parametrize("width", [1280, 320])
def test_axe_finds_nothing_on_the_lectern_and_its_sheets_in_either_theme(opened, owner, lesson, width):
    page = opened(owner, width=width)
    lectern = Lectern(page, lesson).open()
    lectern.write(9)
    lectern.tap("They said “sixty-for”")
    lectern.tap("mixed")
    lectern.notice("noticed garply")
    lectern.page.locator("[data-part=stops] button").first.click()
    lectern.tap("Think, 20 s")
    opening = {
        "": lambda: None,
        "notice-sheet": lambda: lectern.does("notice"),
        "ask-sheet": lambda: lectern.does("ask"),
        "devices-sheet": lambda: lectern.does("devices"),
        "end-sheet": lambda: lectern.does("end"),
        "cell-sheet": lambda: page.locator("[data-part=grid] [data-n='10']").click(),
    }
    wrong = {}
    for name, act in opening.items():
        act()
        if found := faults_in_both_themes(page):
            wrong[name] = found[:3]
        small = page.eval_on_selector_all(
            "button, a, input, select",
            """all => all.filter(one => one.offsetParent && one.type !== "hidden" && one.type !== "radio")
              .map(one => [one.textContent.trim() || one.name, one.offsetWidth, one.offsetHeight])""",
        )
        wrong |= {f"{name} {box}": "small" for box in small if min(box[1:]) < 44}
        if name:
            page.keyboard.press("Escape")
            expect(lectern.part(name)).to_be_hidden()
    assert wrong == {}
    assert page.evaluate("document.documentElement.scrollWidth - innerWidth") <= 0


def test_nothing_moves_by_itself_where_motion_is_not_wanted(opened, owner, lesson):
    lectern = Lectern(opened(owner, width=390, reduced_motion="reduce"), lesson).open()
    lectern.write(3)
    lectern.tap("Think, 20 s")
    assert lectern.page.evaluate("document.getAnimations().length") == 0


def test_everything_by_keyboard(lectern):
    page = lectern.page
    page.keyboard.press("PageDown")
    page.keyboard.press("PageDown")
    lectern.expect_next(3)
    page.keyboard.press("PageUp")
    lectern.expect_next(2)
    page.locator("[data-part=grid] [tabindex='0']").focus()
    page.keyboard.press("Home")
    page.keyboard.press("Enter")
    expect(lectern.part("cell-sheet")).to_be_visible()
    page.keyboard.press("Escape")
    expect(lectern.part("cell-sheet")).to_be_hidden()
    page.locator("[data-does=next]").focus()
    page.keyboard.press("Enter")
    lectern.expect_next(3)
    page.keyboard.press("Control+z")
    lectern.expect_next(2)
    page.get_by_role("button", name="Left out", exact=True).focus()
    page.keyboard.press("Enter")
    lectern.expect_next(3)
    expect(page.get_by_role("button", name="Left out", exact=True)).to_be_focused()


def test_a_stop_is_opened_from_the_list_before_the_count_is_there(lectern):
    lectern.write(1)
    lectern.page.locator("[data-part=stops] button").nth(2).click()
    expect(lectern.part("now")).to_contain_text("What stands under zork three")
    lectern.write(1)
    expect(lectern.part("now")).to_contain_text("What stands under zork three")
    lectern.tap("Go on")
    expect(lectern.part("now")).to_contain_text("What stands under zork one")
    lectern.all_sent()
    assert [one.kind for one in lectern.lesson.events.filter(kind__startswith="stop.").order_by("seq")] == [
        "stop.enter",
        "stop.leave",
    ]
