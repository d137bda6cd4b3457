"""Target patterns in the table itself: seen, not yet, not recorded, of the logs that its reader may open; on paper and in files
only what two classes or more said.
"""

import csv
import io
import re
from datetime import date

import pytest
from django.urls import reverse

from routines.coverage.queries import coverage
from routines.coverage.targets import NOTHING_SAID, TargetsSeen
from routines.lessons.recording import save_reflection
from tests.factories import ClassGroupFactory
from tests.routines.coverage.test_patterns import DAYS, say
from tests.routines.making import make_lesson, make_routine

FIRST, LAST = date(2026, 8, 17), date(2026, 11, 20)


@pytest.fixture
def sevens(owner):
    """Its targets: the step, and jumps down the columns."""
    return make_routine(owner)


def cells(user, year, first=FIRST, last=LAST, **options) -> dict[tuple[str, str], TargetsSeen]:
    """The cells in which something was said."""
    rows = coverage(user=user, year=year, first=first, last=last, **options)
    return {(row.grade.name, cell.area): cell.targets for row in rows for cell in row.cells if cell.targets}


@pytest.mark.parametrize(
    ("sharing", "readers"),
    [("only-me", {"owner"}), ("team", {"owner", "teammate"}), ("team-coach", {"owner", "teammate", "coach"})],
)
@pytest.mark.parametrize("name", ["owner", "teammate", "other_teacher", "coach", "administrator"])
def test_a_cell_says_what_the_logs_say_that_its_reader_may_open(request, sevens, owner, year, sharing, readers, name):
    say(make_lesson(sevens, owner, sharing=sharing), t0="not-yet")
    expected = {("2", "whole"): TargetsSeen(0, 1, 1)} if name in readers else {}
    assert cells(request.getfixturevalue(name), year) == expected


@pytest.mark.parametrize("sharing", ["only-me", "team", "team-coach"])
def test_a_coach_who_teaches_reads_her_own_logs_and_those_of_her_team(
    sevens, owner, coach, other_teacher, grade_two, grade_five, year, sharing
):
    ClassGroupFactory(name="2 Jay", grade=grade_two, year=year, teachers=[coach])
    say(make_lesson(sevens, owner, sharing=sharing), t0="seen", t1="seen")
    say(make_lesson(sevens, coach, sharing=sharing), t0="not-yet")
    fives = make_routine(other_teacher, title="Fives", grade="5")
    say(make_lesson(fives, other_teacher, sharing=sharing), t0="seen")
    told = cells(coach, year)
    assert told["2", "whole"] == (TargetsSeen(0, 1, 1) if sharing == "only-me" else TargetsSeen(2, 1, 1))
    assert told.get(("5", "whole")) == (TargetsSeen(1, 0, 1) if sharing == "team-coach" else None)


def test_one_class_alone_says_what_its_own_shared_lessons_say(sevens, owner, teammate, coach, administrator, year):
    say(make_lesson(sevens, owner, sharing="team-coach"), t0="seen")
    say(make_lesson(sevens, owner), t0="seen")
    say(make_lesson(sevens, teammate, sharing="team-coach"), t0="not-yet", t1="not-yet")
    group = owner.class_groups.get()
    assert cells(coach, year, class_group=group) == {("2", "whole"): TargetsSeen(1, 0, 1)}
    assert cells(owner, year, class_group=group) == {("2", "whole"): TargetsSeen(2, 0, 2)}
    assert cells(administrator, year, class_group=group) == {}


def test_other_days_are_not_in_it(sevens, owner, coach, year):
    say(make_lesson(sevens, owner, sharing="team-coach", taught_on=date(2026, 9, 1)), t0="seen")
    assert cells(coach, year, first=date(2026, 9, 2)) == {}
    assert cells(owner, year, last=date(2026, 8, 31)) == {}


def test_what_is_no_longer_shared_is_no_longer_told(sevens, owner, coach, year):
    say(lesson := make_lesson(sevens, owner, sharing="team-coach"), t0="seen")
    assert cells(coach, year)
    save_reflection(lesson=lesson, sharing="only-me")
    assert cells(coach, year) == {}


def test_the_page_says_it_in_words_beside_its_marks(sevens, owner, coach, visit):
    say(make_lesson(sevens, owner, sharing="team-coach"), t0="seen")
    page = visit(coach).get(reverse("coverage"), DAYS).text
    link = re.search(r'<a href="[^"]*/whole/[^"]*">(.*?)</a>', page, re.DOTALL)[1]
    words = " ".join(re.sub(r"<[^>]+>", " ", link).split())
    assert words == "few · 1 taught 1 seen 1 not yet 0 not recorded 1"
    assert "Target patterns in lessons whose log you may open:" in page


def test_where_nothing_was_said_the_page_has_no_marks_to_explain(sevens, owner, coach, administrator, visit):
    say(make_lesson(sevens, owner, sharing="team"), t0="seen")
    for person in (coach, administrator):
        page = visit(person).get(reverse("coverage"), DAYS).text
        assert "said-seen" not in page
        assert "Target patterns" not in page


def of_whole_numbers(client) -> list[str]:
    """Seen, not yet, not recorded, as grade 2's line of the file has them."""
    answer = client.get(reverse("coverage_csv"), DAYS)
    head, *lines = csv.reader(io.StringIO(answer.content.decode("utf-8-sig")))
    at = head.index("target patterns seen")
    assert head[at + 1 : at + 3] == ["not yet", "not recorded"]
    return next(line[at : at + 3] for line in lines if line[:2] == ["2", "whole numbers"])


def said_on_paper(client) -> list[tuple[str, str]]:
    """Each mark, as it is said, and its number."""
    page = client.get(reverse("coverage_print"), DAYS).text.partition("</table>")[0]
    return re.findall(r"<title>([a-z ]+)</title>(?:(?!<svg).)*?</svg> (\d+)</span>", page)


def test_files_pass_on_what_two_classes_or_more_said(sevens, owner, teammate, coach, administrator, visit):
    client = visit(coach)
    say(make_lesson(sevens, owner, sharing="team-coach"), t0="seen")
    say(make_lesson(sevens, owner, sharing="team-coach", taught_on=date(2026, 9, 1)), t0="seen")
    say(make_lesson(sevens, teammate, sharing="team"), t0="seen")
    assert of_whole_numbers(client) == ["", "", ""]
    assert said_on_paper(client) == []
    say(make_lesson(sevens, teammate, sharing="team-coach"), t1="not-yet")
    assert of_whole_numbers(client) == ["2", "1", "3"]
    assert said_on_paper(client) == [("seen", "2"), ("not yet", "1"), ("not recorded", "3")]
    assert of_whole_numbers(visit(administrator)) == ["", "", ""]
    assert said_on_paper(visit(administrator)) == []


def test_its_queries_are_as_many_whatever_was_said(sevens, owner, coach, visit, django_assert_num_queries):
    client = visit(coach)
    client.get(reverse("coverage"), DAYS)
    with django_assert_num_queries(12) as before:
        client.get(reverse("coverage"), DAYS)
    for number in range(5):
        say(make_lesson(sevens, owner, sharing="team-coach", taught_on=date(2026, 10, 1 + number)), t0="seen")
    with django_assert_num_queries(len(before)):
        client.get(reverse("coverage"), DAYS)


def test_nothing_said_is_false_and_something_true():
    assert not NOTHING_SAID
    assert TargetsSeen(not_recorded=1)
    assert not TargetsSeen(classes=3)
