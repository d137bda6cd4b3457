"""The lectern as a teacher handles it, for browser tests."""

from tests.browser.live_page import LivePage


class Lectern(LivePage):
    patience = 20_000

    def open(self) -> "Lectern":
        self.page.goto(f"/lessons/{self.lesson.key}/lectern/")
        self.page.wait_for_selector("#lectern[data-ready]")
        return self

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
