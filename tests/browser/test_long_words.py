"""A title or a name that is one long word breaks in its place: no page grows wider by it, and nothing lies over it."""

import pytest

from routines.team.suggesting import suggest
from tests.factories import GradeFactory
from tests.routines.making import make_lesson, make_routine

pytestmark = pytest.mark.django_db(transaction=True)

TITLE = "Forty" + "less" * 24
NAME = "Ada" + "fellow" * 12

BOXES = """texts => [...document.querySelectorAll('main *, header *')]
    .filter(one => texts.some(text => one.textContent.trim().startsWith(text)) && one.scrollWidth > one.clientWidth + 1
        && !['inline', 'none'].includes(getComputedStyle(one).display)
        && getComputedStyle(one).textOverflow !== 'ellipsis' && !one.closest('.table-scroll') && one.checkVisibility())
    .map(one => one.outerHTML.slice(0, 120))"""


@pytest.fixture
def long_words(owner, teammate, coach, grade_two):
    for person in (owner, teammate, coach):
        person.display_name = NAME
        person.save()
    routine = make_routine(owner, title=TITLE)
    make_lesson(routine, owner, sharing="team", seen="w" * 300)
    routine.notes.create(by=teammate, text="w" * 300)
    for person in (owner, teammate):
        suggest(routine=routine, by=coach, why="w" * 300, by_when=None, to={"to_teacher": person})
    gap = GradeFactory(name="Reception", level=2, band=grade_two.band)
    return [
        "/",
        "/bank/",
        f"/routines/{routine.pk}/",
        f"/routines/{routine.pk}/teach/",
        "/lessons/",
        "/suggestions/",
        "/booklet/",
        "/coverage/",
        f"/coverage/{grade_two.pk}/whole/",
        f"/coverage/{grade_two.pk}/whole/week/",
        f"/coverage/{gap.pk}/whole/suggest/",
    ]


@pytest.mark.parametrize("width", [1280, 900, 360])
@pytest.mark.parametrize("who", ["teammate", "coach"])
def test_a_long_word_widens_nothing(request, open_as, long_words, who, width):
    page = open_as(request.getfixturevalue(who), width=width)
    wide = {}
    for address in long_words:
        if page.goto(address).status != 200:
            continue  # a teacher has no part in another grade
        sideways = page.evaluate("document.documentElement.scrollWidth") - width
        if sideways > 0 or (over := page.evaluate(BOXES, [TITLE, NAME, "w" * 50])):
            wide[address] = (sideways, sideways <= 0 and over)
    assert wide == {}


@pytest.mark.parametrize("width", [900, 700])
def test_a_title_is_no_strip_beside_the_buttons(owner, open_as, width):
    routine = make_routine(owner, title=TITLE)
    page = open_as(owner, width=width)
    page.goto(f"/routines/{routine.pk}/")
    assert page.locator("h1").bounding_box()["width"] > width / 3
