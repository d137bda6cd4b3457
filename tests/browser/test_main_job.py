"""The main job from end to end in a real browser: find, copy, change, see, plan, print, teach, write down; then the coach."""

import io
import re

import pytest
from playwright.sync_api import Page, expect
from pypdf import PdfReader

from routines.models import Lesson, Routine
from routines.models.plan_document import CountSection, ExpectedAnswer, Fold, Stop, Target
from tests.routines.making import make_routine

pytestmark = pytest.mark.django_db(transaction=True)


@pytest.fixture
def tens(other_teacher, grade_three) -> Routine:
    """A colleague's count in the bank: by 6 from 20, the tens in column 1."""
    return make_routine(
        other_teacher,
        title="Tens come home",
        grade="3",
        count=CountSection("whole", "20", "6", 25),
        fold=Fold(5),
        targets=(
            Target({"family": "landmarks", "multiple": "10", "every": 5, "first": 1, "lie": "column", "lines": [1]}),
        ),
        expected=(ExpectedAnswer("Straight down is 30 more.", "Where are the five sixes?", "deeper"),),
        stops=(Stop(10, "What is straight down?", "30 more", ("5 jumps of 6 make 30",)),),
    )


def wait_for_grid(page: Page, text: str) -> None:
    expect(page.locator("#plan-picture, .plan-grid").first).to_contain_text(text)


def test_a_count_goes_from_the_bank_to_the_coverage(open_as, owner, coach, tens):
    page = open_as(owner)
    problems: list[str] = []
    page.on("console", lambda message: problems.append(message.text) if message.type == "error" else None)
    page.on("pageerror", lambda error: problems.append(str(error)))

    # Find it in the bank, by what its grid shows.
    page.goto("/bank/")
    page.get_by_label("Search").fill("tens")
    page.get_by_role("link", name="Tens come home", exact=True).click()

    # See exactly what it shows: lighting a pattern is kept in the address.
    expect(page.get_by_role("heading", name="Tens come home")).to_be_visible()
    expect(page.get_by_text("5 jumps of 6 make 30").first).to_be_visible()

    # Copy it, and change the count.
    page.get_by_role("button", name="Copy").click()
    expect(page).to_have_url(re.compile(r"/routines/\d+/edit/"))
    page.locator("[name=title]").fill("Tens move over")
    page.locator("[name=start]").fill("16")
    wait_for_grid(page, "160")
    found = page.locator(".pattern-statement").filter(has_text="column 5").first
    expect(found).to_be_visible()
    for box in page.locator("input[name=target]:checked").all():
        box.uncheck()
    found.click()

    # Plan a stop.
    page.get_by_role("button", name="Add a stop").click()
    after = page.get_by_label("After count").last
    expect(page.get_by_label("After count")).to_have_count(2)
    after.fill("15")
    page.get_by_label("Question").last.fill("Where will the next ten stand?")
    page.get_by_role("button", name="Save", exact=True).click()
    expect(page.get_by_label("After count")).to_have_count(2)

    copy = Routine.objects.get(owner=owner)
    assert (copy.copied_from, copy.title, copy.current_version.number) == (tens, "Tens move over", 2)
    assert copy.plan.count.start == "16"
    assert [stop.after for stop in copy.plan.stops] == [10, 15]

    # Print it: the PDF holds the plan's numbers.
    pdf = page.request.get(f"/routines/{copy.pk}/plan.pdf")
    assert pdf.headers["content-type"] == "application/pdf"
    text = " ".join(page.extract_text() for page in PdfReader(io.BytesIO(pdf.body())).pages)
    words = text.split()
    # by hand: 16 + 6 x 24 = 160, and the tens of column 5 are 40, 70, 100, 130, 160
    for number in ("16", "40", "70", "100", "130", "160"):
        assert number in words
    assert "Where will the next ten stand?" in " ".join(words)

    # Teach it, and write down how it went.
    page.goto(f"/routines/{copy.pk}/taught/")
    page.get_by_role("radio", name="ready for more", exact=True).check()
    page.locator('#log-grid [data-n="15"]').click()
    page.locator('.cell-slip[data-cell="15"]').get_by_label("Other words").fill("90")
    page.get_by_role("button", name="Done").click()
    page.get_by_label("What else was noticed?").fill("the tens moved to the last column")
    page.get_by_label("my team and the coach").check()
    page.get_by_role("button", name="Keep the lesson").click()
    expect(page.get_by_text("Kept.").first).to_be_visible()
    lesson = Lesson.objects.get()
    assert (lesson.teacher, lesson.sharing) == (owner, "team-coach")
    assert lesson.events.get(kind="filled").data == {"from": 1, "to": 25}
    assert lesson.events.get(kind="term.write").data["text"] == "90"

    # The coach finds the lesson in the coverage.
    coverage = open_as(coach)
    coverage.goto("/coverage/")
    row = coverage.locator("tbody tr").filter(has=coverage.locator("th", has_text=lesson.grade.name)).first
    cell = row.locator("td[data-area='whole numbers']")
    expect(cell).to_contain_text("taught 1")
    cell.get_by_role("link").click()
    # that a lesson took place is seen by the coach; what it was taught from is still its owner's draft
    expect(coverage.get_by_text("a count that is not in the bank").first).to_be_visible()
    assert "Tens move over" not in coverage.content()
    # htmx tells of a request that a newer one replaced, as an error; that is how typing is meant to go.
    assert [told for told in problems if not told.startswith(("htmx:afterRequest", "htmx:sendAbort"))] == []
