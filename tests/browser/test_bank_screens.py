"""The bank's, the plan's, the lessons' and the coverage's screens: found by axe to be in order, and they fit a small phone."""

import pytest

from routines.demo.plans import PLANS
from routines.models.plan_document import CountSection, Fold
from routines.plans.actions import copy_routine, save_version
from tests.browser.axe import faults_in_both_themes
from tests.routines.making import SEVENS, make_lesson, make_routine

pytestmark = pytest.mark.django_db(transaction=True)

BY_KEY = {demo.key: demo.plan for demo in PLANS}


@pytest.fixture
def bank(owner, teammate, grade_three):
    """A bank with a plan of every look: fractions, feet and inches, a clock, a large grid with a long title; a copy; lessons."""
    made = [
        make_routine(owner, plan=BY_KEY[key].changed(grade="3"))
        for key in ("tens-by-six", "three-fourths", "shelves", "ferries-every-forty", "opposites-in-the-fold")
    ]
    large = SEVENS.changed(
        title="Sixty characters of a title that runs on and on and on and on",
        count=CountSection("whole", "1,000,003", "12345", 200),
        fold=Fold(12),
        targets=(),
        stops=(),
    )
    made.append(make_routine(owner, plan=large))
    copy = copy_routine(routine=made[0], by=owner)
    save_version(routine=copy, plan=copy.plan.changed(title="Changed"), based_on=copy.current_version, by=owner)
    made.append(copy)
    lessons = [make_lesson(made[0], owner, sharing="team"), make_lesson(made[1], teammate, sharing="team")]
    return made, lessons


@pytest.mark.parametrize("width", [1280, 320])
def test_every_screen_is_in_order_and_fits_in_both_themes(open_as, owner, bank, grade_two, width):
    routines, lessons = bank
    page = open_as(owner, width=width)
    addresses = [
        "/bank/",
        "/bank/?q=nothing",
        "/plans/",
        "/plans/new/",
        "/lessons/",
        "/coverage/",
        "/import/",
        "/booklet/",
    ]
    addresses += [f"/coverage/{grade_two.pk}/whole/"]
    addresses += [f"/routines/{routine.pk}/" for routine in routines]
    addresses += [f"/routines/{routines[0].pk}/{part}/" for part in ("edit", "taught", "edit/history", "print")]
    addresses += [f"/routines/{routines[5].pk}/edit/", f"/routines/{routines[-1].pk}/compare/"]
    addresses += [lesson.get_absolute_url() for lesson in lessons]
    wrong = {}
    for address in addresses:
        answer = page.goto(address)
        assert answer.status == 200, address
        found = faults_in_both_themes(page)
        if found:
            wrong[address] = found[:3]
        if page.evaluate("document.documentElement.scrollWidth") > width:
            wrong[f"{address} scrolls sideways"] = []
    assert wrong == {}
