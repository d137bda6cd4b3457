"""Log, replay and the pages around them, in both themes and on a phone, as axe sees them."""

import pytest
from playwright.sync_api import expect

from tests.browser.axe import faults_in_both_themes
from tests.routines.lessons.making import append, event, identity, open_lesson
from tests.routines.making import make_routine

pytestmark = pytest.mark.django_db(transaction=True)


@pytest.fixture
def lesson(owner):
    """A lesson of twelve counts that is over, with ink of every kind."""
    made = open_lesson(owner, routine=make_routine(owner))
    texts = made.version.read_plan().count.count().text
    written = [event(n + 1, data={"n": n, "text": texts(n), "over": None}) for n in range(1, 13) if n != 8]
    wrong = identity()
    append(
        made,
        *written,
        event(20, data={"n": 8, "text": "54", "over": None}, identity=wrong),
        event(21, "term.correct", {"n": 8, "text": texts(8), "over": wrong}),
        event(22, data={"n": 9, "text": "somewhat over sixty", "over": None}, device="lectern"),
        event(23, "mark.add", {"n": 1, "mark": "ring", "place": None}),
        event(24, "mark.add", {"n": 2, "mark": "tint", "place": None}),
        event(25, "mark.add", {"n": 3, "mark": "underline", "place": 1}),
        event(26, "mark.add", {"n": 4, "mark": "hatch", "place": None}),
        event(27, "jump.add", {"from": 1, "to": 6}),
        event(28, "phrase.add", {"text": "one more ten, and then less", "cells": [4, 5]}),
        event(29, "predict", {"n": 19, "text": "130"}),
        event(30, "cover", {"n": 5}),
        event(31, "recount", {"from": 6, "to": 10}),
        event(32, "term.left-out", {"n": 13, "over": None}),
        event(33, "notice.add", {"text": "odd and even take turns", "expected": None}),
        event(34, "voice", {"from": 1, "to": 10, "how": "mixed"}),
        event(35, "lesson.end", {}),
    )
    return made


def pages(lesson):
    own = f"/lessons/{lesson.key}/"
    return {
        "log": own,
        "replay": f"{own}replay/?moment=6",
        "lessons": "/lessons/",
        "teach": f"/routines/{lesson.routine_id}/teach/",
        "taught on paper": f"/routines/{lesson.routine_id}/taught/",
        "pair": f"{own}pair/",
        "waiting": "/board/",
    }


@pytest.mark.parametrize("width", [1280, 320])
def test_axe_finds_nothing_in_either_theme_and_nothing_scrolls_sideways(open_as, owner, lesson, width):
    page = open_as(owner, width=width)
    wrong = {}
    for name, address in pages(lesson).items():
        page.goto(address)
        page.wait_for_load_state("networkidle")
        if name == "log":
            page.locator('#log-grid [data-n="8"]').click()
            expect(page.locator('.cell-slip[data-cell="8"]')).to_be_visible()
        if name == "replay":
            page.keyboard.press("End")
            expect(page.locator(".g-phrase")).to_have_count(2)
        if found := faults_in_both_themes(page):
            wrong[name] = found[:3]
        if page.evaluate("document.documentElement.scrollWidth - innerWidth") > 0:
            wrong[f"{name}, sideways"] = True
    page.goto("about:blank")
    assert wrong == {}


def test_nothing_moves_by_itself_where_motion_is_not_wanted(open_as, owner, lesson):
    page = open_as(owner, reduced_motion="reduce")
    for address in (f"/lessons/{lesson.key}/", f"/lessons/{lesson.key}/replay/"):
        page.goto(address)
        page.wait_for_load_state("networkidle")
        assert page.evaluate("document.getAnimations().length") == 0
    before = page.locator("[data-replay]").get_attribute("data-at")
    page.keyboard.press("ArrowRight")
    expect(page.locator("[data-replay]")).to_have_attribute("data-at", "1")
    assert before == "0"
    assert page.evaluate("document.getAnimations().length") == 0


def test_on_a_phone_a_lesson_in_the_list_is_read_whole(open_as, owner, lesson):
    page = open_as(owner, width=320)
    page.goto("/lessons/")
    assert page.eval_on_selector(".table-scroll", "box => box.scrollWidth - box.clientWidth") <= 0
    for words in ("2 Wren", "only me", "September 15, 2026"):
        expect(page.get_by_text(words).first).to_be_in_viewport()
