"""From the press of a key to the painted count, on the board in a real browser: twenty presses a second.

The baseline is a page without any of our scripts in the same browser: a grid of as many cells, into which a key writes a
text at once and keeps nothing. What stands above it is what storing before painting and the board's own drawing cost.
"""

from __future__ import annotations

import sys
import time

from playwright.sync_api import Page, sync_playwright

from bench._served_school import served_school
from tests.browser.chromium import find_chromium, start_chromium

A_SECOND = 20
PRESSES = 200
TIMED = """grid => {
  window.delays = [];
  let pressed = [];
  addEventListener("keydown", event => pressed.push(event.timeStamp), true);
  new MutationObserver(() => {
    const mine = pressed;
    pressed = [];
    requestAnimationFrame(() => setTimeout(() => mine.forEach(at => window.delays.push(performance.now() - at))));
  }).observe(grid, {subtree: true, childList: true});
}"""
BARE = """<style>main { display: grid; grid-template-columns: repeat(10, 1fr) } b { height: 90px; font-size: 60px }</style>
<main></main><script>
const grid = document.querySelector("main");
for (let n = 0; n < CELLS; n += 1) grid.append(document.createElement("b"));
let next = 0;
addEventListener("keydown", () => { grid.children[next % CELLS].textContent = String(next); next += 1; });
</script>"""


def main() -> int:
    """Print median and 95th percentile of both, and their ratio."""
    path = find_chromium()
    if path is None:
        raise SystemExit("Chromium is missing.")
    with served_school("30", server="bench._lesson_server") as (port, school), sync_playwright() as playwright:
        browser = start_chromium(playwright, path)
        write(f"{'':<34}{'p50 ms':>8}{'p95 ms':>8}{'most':>8}{'p95 / bare':>12}")
        bare_page = browser.new_page(viewport={"width": 1920, "height": 1080})
        bare_page.set_content(BARE.replace("CELLS", "100"))
        bare = delays_of(bare_page, "main")
        told("a bare page", bare, bare)
        for device in chosen(school["devices"]):
            context = browser.new_context(viewport={"width": 1920, "height": 1080}, base_url=f"http://127.0.0.1:{port}")
            context.add_cookies(
                [{"name": "countfold_session", "value": device["session"], "url": f"http://127.0.0.1:{port}"}]
            )
            page = context.new_page()
            page.goto(f"/lessons/{device['key']}/board/")
            page.wait_for_selector("#board[data-ready]")
            told(f"a board of {page.locator('[data-n]').count()} counts", delays_of(page, "[data-part=grid]"), bare)
            context.close()
        browser.close()
    return 0


def chosen(devices: list[dict[str, str]]) -> list[dict[str, str]]:
    """Every tenth lesson: counts of several kinds and lengths."""
    return devices[::10]


def delays_of(page: Page, grid: str) -> list[float]:
    """Milliseconds from each press to the frame that shows it; on and back, so that no count comes to its end."""
    page.locator(grid).evaluate(TIMED)
    keys = (["PageDown", "PageDown", "PageUp", "PageUp"] * PRESSES)[:PRESSES]
    began = time.monotonic()
    for position, key in enumerate(keys):
        page.keyboard.press(key)
        time.sleep(max(0.0, began + (position + 1) / A_SECOND - time.monotonic()))
    page.wait_for_timeout(500)
    found: list[float] = sorted(page.evaluate("window.delays"))
    if len(found) < PRESSES / 2:
        raise SystemExit(f"Only {len(found)} of {PRESSES} presses were painted.")
    return found


def told(name: str, delays: list[float], bare: list[float]) -> None:
    ratio = at(0.95, delays) / at(0.95, bare)
    write(f"{name:<34}{at(0.5, delays):>8.1f}{at(0.95, delays):>8.1f}{delays[-1]:>8.1f}{ratio:>12.2f}")


def at(part: float, ordered: list[float]) -> float:
    return ordered[min(len(ordered) - 1, int(part * len(ordered)))]


def write(text: str) -> None:
    sys.stdout.write(f"{text}\n")
    sys.stdout.flush()


if __name__ == "__main__":
    raise SystemExit(main())
