"""The lectern as a teacher handles it, for browser tests."""

from playwright.sync_api import Page, expect

from routines.models import Lesson


class Lectern:
    def __init__(self, page: Page, lesson: Lesson) -> None:
        self.page = page
        self.lesson = lesson

    def open(self) -> "Lectern":
        self.page.goto(f"/lessons/{self.lesson.key}/lectern/")
        self.page.wait_for_selector("#lectern[data-ready]")
        return self

    def part(self, name: str):
        return self.page.locator(f'[data-part="{name}"]')

    def does(self, name: str) -> None:
        self.page.locator(f'[data-does="{name}"]').first.click()

    def tap(self, words: str, within: str = "#lectern") -> None:
        self.page.locator(within).get_by_role("button", name=words, exact=True).click()

    def write(self, counts: int) -> None:
        for _ in range(counts):
            self.does("next")

    def notice(self, words: str) -> None:
        self.does("notice")
        self.page.fill("#notice-words", words)
        self.part("notice-sheet").get_by_role("button", name="Keep it", exact=True).click()

    def shown(self) -> dict[int, str]:
        return {
            int(n): words
            for n, words in self.page.eval_on_selector_all(
                ".b-cell.is-written", "all => all.map(one => [one.dataset.n, one.getAttribute('aria-label')])"
            )
        }

    def expect_next(self, n: int) -> None:
        expect(self.page.locator(".is-next")).to_have_attribute("data-n", str(n), timeout=10_000)

    def expect_status(self, words: str) -> None:
        expect(self.part("status").locator("p")).to_contain_text(words, timeout=20_000)

    def all_sent(self) -> None:
        self.page.wait_for_timeout(150)
        self.expect_status("all sent")
