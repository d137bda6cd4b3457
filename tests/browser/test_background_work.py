"""A booklet and an import watched in a real browser: the page follows them to their end by itself, and can be left."""

import re

import pytest

from routines.exchange.writing import written
from routines.jobs.runner import Runner
from tests.browser.axe import faults
from tests.routines.making import SEVENS, make_routine
from tests.routines.printed import pango

__all__ = ["pango"]

pytestmark = pytest.mark.django_db(transaction=True)


@pytest.fixture
def serving():
    """Begins what a server does beside its pages."""
    here = Runner()
    yield here.start
    here.stop()


def in_order(page, width: int) -> None:
    assert faults(page) == []
    assert page.evaluate("document.documentElement.scrollWidth") <= width


@pytest.mark.parametrize("width", [1280, 320])
def test_an_import_is_followed_to_its_end(open_as, owner, serving, width):
    page = open_as(owner, width=width)
    page.goto("/import/")
    counts = written([SEVENS.changed(title=f"Sevens {number}") for number in range(12)])
    page.get_by_label("A file of counts").set_input_files(
        {"name": "sevens.json", "mimeType": "application/json", "buffer": counts}
    )
    page.get_by_role("button", name="Check the file").click()
    page.get_by_role("button", name="Add 12 counts").click()
    page.get_by_text("It begins in a moment").wait_for()
    in_order(page, width)
    page.goto("/import/")
    page.get_by_role("link", name="See how far it is").click()
    serving()
    page.get_by_text("12 added").wait_for()
    assert page.get_by_role("button", name="Stop adding").count() == 0
    in_order(page, width)


@pytest.mark.parametrize("width", [1280, 320])
def test_a_booklet_is_followed_to_its_end(open_as, owner, serving, width, pango):
    make_routine(owner)
    page = open_as(owner, width=width)
    page.goto("/booklet/?from=mine")
    page.get_by_role("button", name="Make the booklet").click()
    page.get_by_text("It begins in a moment").wait_for()
    in_order(page, width)
    serving()
    page.get_by_role("link", name="Open the booklet").wait_for(timeout=60_000)
    assert page.get_by_text("1 count on 2 pages.").count() == 1
    assert page.get_by_role("button", name=re.compile("Stop")).count() == 0
    in_order(page, width)


def test_a_booklet_no_longer_wanted_is_dropped(open_as, owner):
    make_routine(owner)
    page = open_as(owner)
    page.goto("/booklet/?from=mine")
    page.get_by_role("button", name="Make the booklet").click()
    page.get_by_role("button", name="Stop and remove this booklet").click()
    page.get_by_text("was removed").wait_for()
