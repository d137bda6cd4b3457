"""What README.md tells an administrator to do, once through: a server of its own, two people in two browsers, its commands."""

import re
import socket
import subprocess
import sys
from collections.abc import Iterator
from pathlib import Path

import pytest
from playwright.sync_api import BrowserContext, Page, expect

from tests.config.commands import ROOT, environment, manage

ADMINISTRATOR, COLLEAGUE = "otter violin sandwich moon", "tambour lantern oblique fig"


class School:
    """Served as `run.py serve` does it, and what it says in its window."""

    def __init__(self, folder: Path) -> None:
        with socket.socket() as probe:
            probe.bind(("127.0.0.1", 0))
            port = probe.getsockname()[1]
        self.folder = folder
        self.address = f"http://127.0.0.1:{port}/"
        words = ["-m", "config.serving", "serve", "--port", str(port), "--public", self.address]
        self.server = subprocess.Popen(
            [sys.executable, *words], cwd=ROOT, env=environment(folder), stdout=subprocess.PIPE, text=True
        )

    def heard(self, until: str) -> str:
        lines = []
        for line in self.server.stdout:
            lines.append(line)
            if until in line:
                return line
        raise AssertionError("".join(lines))


@pytest.fixture
def served(tmp_path) -> Iterator[School]:
    school = School(tmp_path / "data")
    yield school
    school.server.terminate()
    school.server.communicate(timeout=20)


def sign_in(page: Page, name: str, passphrase: str) -> None:
    page.goto("/sign-in/")
    page.get_by_label("Name or e-mail").fill(name)
    page.get_by_label("Passphrase").fill(passphrase)
    page.get_by_role("button", name="Sign in").click()
    expect(page.get_by_role("link", name="Bank").first).to_be_visible()


def test_from_the_set_up_code_to_a_backup_put_back(browser, served):
    own, others = (browser.new_context(base_url=served.address) for _browser in range(2))
    try:
        set_up(own, served.heard("set-up code").rsplit(maxsplit=1)[-1])
        accept(others, invite(own))
        add_class(own)
        count = plan_and_print(others)
        backup = re.search(r"Written: (.+)", manage(served.folder, "backup").stdout)[1]
        spoil(others, count)
        done = manage(served.folder, "restore", backup)
        assert "Everyone signs in again." in done.stdout, done.stderr
        find_it_as_it_was(own, others, count)
    finally:
        own.close()
        others.close()


def set_up(own: BrowserContext, code: str) -> None:
    page = own.new_page()
    page.goto("/")
    page.get_by_label("Set-up code").fill(code)
    page.locator("[name=school-name]").fill("Larkfield School")
    page.locator("[name=administrator-display_name]").fill("Ada Ames")
    page.locator("[name=administrator-sign_in_name]").fill("ames")
    for name in ("passphrase", "passphrase_again"):
        page.locator(f"[name=administrator-{name}]").fill(ADMINISTRATOR)
    page.get_by_role("button", name="Open the school").click()
    page.get_by_role("link", name="People").first.click()
    page.get_by_role("link", name="Recovery code").click()
    page.get_by_label("Your passphrase").fill(ADMINISTRATOR)
    page.get_by_role("button", name="Make a recovery code").click()
    expect(page.locator(".recovery-code")).to_have_text(re.compile(r"\w{4}(-\w{4}){5}"))
    page.close()


def invite(own: BrowserContext) -> str:
    page = own.new_page()
    page.goto("/school/people/")
    page.get_by_label("Name", exact=True).fill("Nour Nadir")
    page.get_by_role("button", name="Make the link").click()
    return page.get_by_label("The link").input_value()


def accept(others: BrowserContext, link: str) -> None:
    page = others.new_page()
    page.goto(link)
    page.get_by_label("Sign-in name").fill("nadir")
    for name in ("passphrase", "passphrase_again"):
        page.locator(f"[name={name}]").fill(COLLEAGUE)
    page.get_by_role("button", name="Start").click()
    expect(page.get_by_text("Nour Nadir").first).to_be_visible()


def add_class(own: BrowserContext) -> None:
    page = own.new_page()
    page.goto("/school/classes/")
    page.get_by_role("link", name="New class").click()
    page.get_by_label("Class", exact=True).fill("2B")
    page.get_by_label("Grade").select_option(label="2")
    page.get_by_label("Add by name").fill("Nour Nadir")
    page.get_by_role("button", name="Save").click()
    expect(page.get_by_role("row").filter(has_text="2B")).to_contain_text("Nour Nadir")


def plan_and_print(others: BrowserContext) -> str:
    page = others.new_page()
    page.goto("/")
    page.get_by_role("link", name="Plan a count").first.click()
    page.locator("[name=start]").fill("20")
    page.locator("[name=step]").fill("6")
    page.locator("[name=title]").fill("Sixes from twenty")
    page.locator("[name=grade]").select_option(label="Grade 2")
    expect(page.locator(".pattern-statement").first).to_be_visible()
    page.get_by_role("button", name="Save and put it into the bank").click()
    expect(page.get_by_role("heading", name="Sixes from twenty")).to_be_visible()
    count = page.url
    page.get_by_role("link", name="Print", exact=True).click()
    with page.expect_response(lambda answer: ".pdf" in answer.url) as printed:
        page.get_by_role("button", name="Print the plan").click()
    assert printed.value.headers["content-type"] == "application/pdf"
    return count


def spoil(others: BrowserContext, count: str) -> None:
    page = others.new_page()
    page.goto(f"{count}edit/")
    page.locator("[name=title]").fill("Spoiled")
    page.get_by_role("button", name="Save", exact=True).click()
    page.goto(count)
    expect(page.get_by_role("heading", name="Spoiled")).to_be_visible()


def find_it_as_it_was(own: BrowserContext, others: BrowserContext, count: str) -> None:
    for context, name, passphrase in ((others, "nadir", COLLEAGUE), (own, "ames", ADMINISTRATOR)):
        page = context.new_page()
        page.goto(count)
        expect(page).to_have_url(re.compile("/sign-in/"))
        sign_in(page, name, passphrase)
        page.goto(count)
        expect(page.get_by_role("heading", name="Sixes from twenty")).to_be_visible()
    page.goto("/school/backups/")
    expect(page.locator("tbody tr")).to_have_count(2)  # the one that was put back, and what was there until then
    page.get_by_role("button", name="Does the newest one open?").click()
    expect(page.locator(".message").first).to_contain_text("opened: 2 people, 1 count, 0 lessons")
