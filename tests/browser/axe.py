"""What axe finds wrong on a page as it stands, on paper and on slate."""

from typing import Any

from axe_playwright_python.sync_playwright import Axe
from playwright.sync_api import Page

RULES = {
    "runOnly": {"type": "tag", "values": ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa", "best-practice"]},
    "resultTypes": ["violations"],
}
COLOURS = {
    "runOnly": {"type": "rule", "values": ["color-contrast", "link-in-text-block"]},
    "resultTypes": ["violations"],
}


def faults(page: Page, rules: dict[str, Any] = RULES) -> list[str]:
    found = Axe().run(page, options=rules).response["violations"]
    return [f"{rule['id']}: {node['html']}" for rule in found for node in rule["nodes"]]


def faults_in_both_themes(page: Page) -> list[str]:
    """Slate is the same page in other colours: all else has been looked at on paper. The page is paper again afterwards."""
    found = faults(page)
    page.emulate_media(reduced_motion="reduce")  # colours that are still on their way are neither theme's
    page.evaluate("document.documentElement.dataset.theme = 'slate'")
    found += [f"on slate, {fault}" for fault in faults(page, COLOURS)]
    page.evaluate("document.documentElement.dataset.theme = 'paper'")
    return found
