"""Two real browsers: one shows a code and waits, the other types it; and the screens for it are in order."""

from datetime import timedelta

import pytest
from django.utils import timezone
from playwright.sync_api import expect

from grade_bands.models import SchoolYear
from routines.models import Lesson
from tests.browser.axe import faults_in_both_themes
from tests.routines.lessons.making import open_lesson
from tests.routines.making import make_routine


@pytest.fixture(autouse=True)
def this_year(year):
    """The school year holds today, whenever the tests run."""
    today = timezone.localdate()
    SchoolYear.objects.filter(pk=year.pk).update(
        starts_on=today - timedelta(days=100), ends_on=today + timedelta(days=100)
    )


def test_a_device_that_waits_goes_on_by_itself_once_its_code_is_typed(open_as, owner):
    routine = make_routine(owner)
    device, teacher = open_as(None, width=1280), open_as(owner, width=390)
    device.goto("/board/")
    code = device.locator(".waiting-code").inner_text()
    drawn = device.locator(".waiting-scan")
    assert drawn.evaluate("image => image.complete && image.naturalWidth > 100")

    teacher.goto(f"/routines/{routine.pk}/")
    teacher.get_by_role("link", name="Teach", exact=True).click()
    teacher.get_by_role("button", name="Open the lesson").click()
    lesson = Lesson.objects.get()
    teacher.goto(f"/lessons/{lesson.key}/pair/")
    teacher.get_by_label("Code on the device").fill(code)
    teacher.get_by_role("button", name="Pair", exact=True).click()
    expect(teacher.get_by_text("The board is paired.")).to_be_visible()

    device.wait_for_url(f"**/lessons/{lesson.key}/board/", timeout=15_000)
    assert device.goto("/lessons/").status == 404
    assert device.goto("/").status == 404


@pytest.mark.parametrize("width", [1280, 320])
def test_every_screen_is_in_order_and_fits_in_both_themes(open_as, owner, width):
    lesson = open_lesson(owner)
    page = open_as(owner, width=width)
    addresses = [f"/routines/{lesson.routine_id}/teach/", "/board/", "/pair/123456/"]
    addresses += [f"/lessons/{lesson.key}/{part}" for part in ("", "pair/", "delete/")]
    wrong = {}
    for address in addresses:
        assert page.goto(address).status == 200, address
        found = faults_in_both_themes(page)
        if found:
            wrong[address] = found[:3]
        if page.evaluate("document.documentElement.scrollWidth") > width:
            wrong[f"{address} scrolls sideways"] = []
    assert wrong == {}
