"""What a person does on pages, counted: presses of the pointer, fields that were changed, characters that were typed."""

from dataclasses import dataclass

from playwright.sync_api import Page

# Kept for the tab, so that it goes on from page to page.
COUNTING = """
for (const kind of ["pointerdown", "change", "input"]) {
  addEventListener(kind, (event) => {
    if (!event.isTrusted && kind === "pointerdown") return;
    const done = JSON.parse(sessionStorage.done || "{}");
    done[kind] = (done[kind] || 0) + 1;
    sessionStorage.done = JSON.stringify(done);
  }, true);
}
"""


@dataclass(frozen=True, slots=True)
class Done:
    presses: int
    changes: int


def count_from_here(page: Page) -> None:
    """Begin to count on this page and those after it in its tab; it is loaded anew for that."""
    page.add_init_script(COUNTING)
    page.reload()
    page.evaluate("sessionStorage.removeItem('done')")


def done_on(page: Page) -> Done:
    done = page.evaluate("JSON.parse(sessionStorage.done || '{}')")
    return Done(done.get("pointerdown", 0), done.get("change", 0))
