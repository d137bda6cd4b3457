"""A count that is wider or longer than the board: what is out of view is said, reached by keys, wheel and finger, and its
edge looks folded under."""

import re

import pytest
from playwright.sync_api import expect

from routines.models.plan_document import CountSection, Fold
from tests.browser.board_page import Board
from tests.routines.lessons.making import append, event, open_lesson
from tests.routines.making import make_routine

pytestmark = pytest.mark.django_db(transaction=True)

FOLDED_UNDER = re.compile(r"is-more-right")


@pytest.fixture
def wide(owner):
    """Twenty times of the day side by side."""
    count = CountSection("clock", "10:05 a.m.", "25 min", 40)
    return open_lesson(
        owner, routine=make_routine(owner, title="Buses", count=count, fold=Fold(20), stops=(), targets=())
    )


@pytest.fixture
def long(owner):
    count = CountSection("whole", "7", "4", 120)
    return open_lesson(
        owner, routine=make_routine(owner, title="Fours", count=count, fold=Fold(4), stops=(), targets=())
    )


def seen(board: Board) -> list[int]:
    return board.page.eval_on_selector_all(
        "[data-n]", "all => all.filter(one => one.offsetParent).map(one => Number(one.dataset.n))"
    )


def hidden_after(board: Board) -> int:
    words = board.page.locator('[data-part="later"]').inner_text()
    return int(re.search(r"\d+", words).group()) if words else 0


def test_a_wide_count_says_how_many_columns_are_out_of_view(opened, owner, wide):
    board = Board(opened(owner, width=1920, height=1080), wide).open()
    columns = len([n for n in seen(board) if n <= 20])
    assert 1 < columns < 20
    assert hidden_after(board) == 20 - columns
    expect(board.page.locator('[data-part="later"]')).to_have_text(f"{20 - columns} columns after")
    expect(board.page.locator('[data-part="grid"]')).to_have_class(FOLDED_UNDER)
    expect(board.page.locator('[data-part="grid"]')).not_to_have_class(re.compile("is-more-(left|up|down)"))


def test_the_arrows_the_wheel_and_the_buttons_bring_it_into_view(opened, owner, wide):
    board = Board(opened(owner, width=1920, height=1080), wide).open()
    columns = len([n for n in seen(board) if n <= 20])
    board.cell(21).focus()  # below the count that is next, so that the arrow writes nothing
    board.press(*["ArrowRight"] * columns)
    assert min(seen(board)) == 2
    expect(board.page.locator(":focus")).to_have_attribute("data-n", str(21 + columns))
    board.page.locator('[data-part="earlier"]').click()
    assert min(seen(board)) == 1
    board.page.locator('[data-part="later"]').focus()
    board.press("Enter", "Enter")
    assert min(seen(board)) == 3
    board.page.locator('[data-part="grid"]').hover()
    board.page.mouse.wheel(0, 200)
    expect(board.cell(3)).to_be_hidden()
    assert min(seen(board)) == 4


def test_a_finger_reaches_both_ends_and_there_the_edge_is_whole(opened, owner, wide):
    board = Board(opened(owner, width=1920, height=1080, has_touch=True), wide).open()
    for _ in range(hidden_after(board)):
        board.page.locator('[data-part="later"]').tap()
    assert max(n for n in seen(board) if n <= 20) == 20
    assert hidden_after(board) == 0
    expect(board.page.locator('[data-part="grid"]')).not_to_have_class(FOLDED_UNDER)
    expect(board.page.locator('[data-part="grid"]')).to_have_class(re.compile("is-more-left"))


def test_what_is_counted_next_comes_into_view_by_itself(opened, owner, wide, long):
    board = Board(opened(owner, width=1920, height=1080), wide).open()
    columns = len([n for n in seen(board) if n <= 20])
    board.write(columns + 1)
    assert columns + 1 in seen(board)
    below = Board(opened(owner, width=1920, height=1080), long).open()
    rows = len(seen(below)) // 4
    expect(below.page.locator('[data-part="grid"]')).to_have_class(re.compile("is-more-down"))
    below.write(4 * rows + 1)
    assert 4 * rows + 1 in seen(below)
    assert 1 not in seen(below)


def test_an_arc_keeps_clear_of_what_children_said(opened, owner, long):
    """In the first column it runs outside the grid, but not where words stand in the gutter."""
    made = [event(2, "filled", {"from": 1, "to": 8}), event(3, "jump.add", {"from": 1, "to": 5})]
    append(long, *made)
    board = Board(opened(owner, width=1920, height=1080), long).open()
    outside = board.page.locator(".i-outside")
    expect(outside).to_have_count(1)
    append(
        long, event(4, "phrase.add", {"cells": [1, 5], "text": "each one is sixteen more than the one on top of it"})
    )
    expect(board.page.locator(".b-phrase")).to_have_count(1, timeout=10_000)
    expect(board.page.locator(".i-label")).to_have_count(1)
    label, words = board.page.locator(".i-label").bounding_box(), board.page.locator(".b-phrase q").bounding_box()
    apart = label["x"] >= words["x"] + words["width"] or label["x"] + label["width"] <= words["x"]
    assert apart or label["y"] >= words["y"] + words["height"] or label["y"] + label["height"] <= words["y"]


def test_on_a_phone_words_stand_under_the_grid_in_its_whole_width(opened, owner, wide):
    append(
        wide, event(2, "filled", {"from": 1, "to": 3}), event(3, "phrase.add", {"cells": [1], "text": "five past ten"})
    )
    board = Board(opened(owner, width=360, height=740), wide).open()
    words = board.page.locator(".b-phrase q").bounding_box()
    assert words["height"] < words["width"]
