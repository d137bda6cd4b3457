"""The board as a teacher handles it, for browser tests."""

import re
from collections.abc import Iterator

from playwright.sync_api import expect

from routines.lessons.state import LessonState, reduce_events
from tests.browser.live_page import LivePage


class Board(LivePage):
    def open(self, base: str = "") -> "Board":
        self.page.goto(f"{base}/lessons/{self.lesson.key}/board/")
        self.wait_until_ready()
        return self

    def wait_until_ready(self) -> None:
        self.page.wait_for_selector("#board[data-ready]")

    def cell(self, n: int):
        return self.page.locator(f'[data-n="{n}"]')

    def tool(self, name: str):
        return self.page.locator(f'[data-tool="{name}"]')

    def press(self, *keys: str) -> None:
        for key in keys:
            self.page.keyboard.press(key)

    def write(self, counts: int) -> None:
        """Count on, and wait until it is painted: a key is stored first."""
        frame = self.page.locator(".is-next")
        first = int(frame.get_attribute("data-n")) if frame.count() else None
        self.press(*["PageDown"] * counts)
        if first is None:
            return
        last = first + counts - 1
        expect(self.cell(last)).to_have_class(re.compile("is-written"))

    def say(self, n: int, words: str, key: str = "Enter") -> None:
        """Focus the cell, type, Enter, and wait until it is painted: then the focus goes on, which no person outruns."""
        self.cell(n).focus()
        self.page.keyboard.type(words)
        self.press(key)
        expect(self.cell(n)).to_have_attribute("aria-label", re.compile(rf"\b{re.escape(words)}\b"))

    def readable(self) -> str:
        """All that the page holds of the board in words: texts, names, data."""
        return self.page.evaluate(
            """() => {
              const board = document.getElementById("board");
              const named = one => [one.getAttribute("aria-label") ?? "", one.title ?? "", one.value ?? ""];
              const parts = [...board.querySelectorAll("*")].flatMap(one => [...named(one), ...Object.values(one.dataset)]);
              const texts = document.createTreeWalker(board, NodeFilter.SHOW_TEXT);
              while (texts.nextNode()) parts.push(texts.currentNode.textContent);
              return parts.join(" | ");
            }"""
        )

    @property
    def events(self) -> list[dict]:
        return [event.as_dict() for event in self.lesson.events.order_by("seq")]

    @property
    def state(self) -> LessonState:
        """What the server holds, reduced."""
        return reduce_events(self.events)

    def texts(self) -> Iterator[str]:
        count = self.lesson.version.read_plan().count.count()
        return (count.text(n) for n in range(1, count.terms + 1))
