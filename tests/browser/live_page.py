"""What board and lectern have in common for browser tests: their grid, their status, the lesson behind them."""

from playwright.sync_api import Page, expect

from routines.models import Lesson


class LivePage:
    patience = 5_000  # ms until what was done elsewhere is seen here

    def __init__(self, page: Page, lesson: Lesson) -> None:
        self.page = page
        self.lesson = lesson

    def part(self, name: str):
        return self.page.locator(f'[data-part="{name}"]')

    def shown(self) -> dict[int, str]:
        """What stands in the written cells, as it is said to those who hear the grid."""
        return {
            int(n): words
            for n, words in self.page.eval_on_selector_all(
                ".b-cell.is-written", "all => all.map(one => [one.dataset.n, one.getAttribute('aria-label')])"
            )
        }

    def expect_status(self, words: str) -> None:
        expect(self.part("status").locator("p")).to_contain_text(words, timeout=self.patience)

    def expect_next(self, n: int) -> None:
        expect(self.page.locator(".is-next")).to_have_attribute("data-n", str(n), timeout=self.patience)

    def all_sent(self) -> None:
        self.page.wait_for_timeout(150)  # a key is stored first; until then the words are those of before
        self.expect_status("all sent")
