"""A button that stands in every row says of which row it is, to whoever hears the page instead of seeing it."""

from collections import defaultdict
from datetime import timedelta
from html.parser import HTMLParser

import pytest
from django.utils import timezone

from accounts.actions import invite
from routines.models import Planned, Suggestion
from routines.team.school_days import monday_now
from tests.factories import ClassGroupFactory, SchoolYearFactory
from tests.routines.making import make_lesson, make_routine

ACTS = ("a", "button")


class Acts(HTMLParser):
    """By name as it is heard, where the links and buttons of that name lead."""

    def __init__(self, page: str) -> None:
        super().__init__()
        self.leads: dict[str, set[str]] = defaultdict(set)
        self.form = ""
        self.inside: tuple[str, str, str] | None = None  # its tag, where it leads, what it is called
        self.words = ""
        self.feed(page)

    def handle_starttag(self, tag, attrs):
        said = dict(attrs)
        if tag == "form":
            self.form = said.get("action", "")
        elif tag in ACTS and said.get("aria-hidden") != "true" and "hidden" not in said:
            where = said.get("href") or f"{self.form}?{said.get('name', '')}={said.get('value', '')}"
            self.inside, self.words = (tag, where, said.get("aria-label", "")), ""

    def handle_data(self, text):
        self.words += text

    def handle_endtag(self, tag):
        if self.inside and tag == self.inside[0]:
            seen = " ".join(self.words.split())
            _tag, where, name = self.inside
            assert not name or seen.split()[0] in name, (seen, name)  # what is seen is in what is heard
            self.leads[name or seen].add(where)
            self.inside = None

    def shared(self) -> dict[str, set[str]]:
        return {name: where for name, where in self.leads.items() if len(where) > 1}


@pytest.fixture
def year(school):
    """The year that is on."""
    today = timezone.localdate()
    return SchoolYearFactory(name="on now", starts_on=today - timedelta(days=90), ends_on=today + timedelta(days=200))


@pytest.fixture
def full_school(owner, co_author, teammate, coach, administrator, grade_two, year):
    monday = monday_now(timezone.localdate())
    second = ClassGroupFactory(name="2 Siskin", grade=grade_two, year=year, teachers=[owner])
    for n, title in enumerate(("Sevens from four", "Nines", "Tens back")):
        routine = make_routine(owner, title=title)
        make_routine(owner, title=f"{title}, a draft", shared=False)
        make_routine(teammate, title=f"{title}, hers")
        for group in (owner.class_groups.get(name="2 Wren"), second):
            Planned.objects.create(routine=routine, class_group=group, on=monday + timedelta(days=n), by=owner)
        for receiver in (owner, teammate):
            Suggestion.objects.create(routine=routine, by=coach, to_teacher=receiver, why=f"Try it, {n}.")
        make_lesson(routine, teammate, sharing="team")
        invite(by=administrator, display_name=f"New {n}", role="teacher")
    last = year.starts_on - timedelta(days=300)
    ClassGroupFactory(
        name="2 Wren", year=SchoolYearFactory(name="last", starts_on=last, ends_on=last + timedelta(days=280))
    )
    co_author.leave()


@pytest.mark.parametrize(
    ("name", "path"),
    [
        ("owner", "/"),
        ("owner", "/week/"),
        ("owner", "/suggestions/"),
        ("owner", "/plans/"),
        ("coach", "/"),
        ("coach", "/week/?team=all"),
        ("coach", "/suggestions/"),
        ("administrator", "/"),
        ("administrator", "/school/classes/"),
        ("administrator", "/school/people/"),
        ("administrator", "/school/grades/"),
        ("administrator", "/school/years/new/"),
    ],
)
def test_no_two_that_lead_elsewhere_are_called_the_same(request, full_school, visit, name, path):
    page = visit(request.getfixturevalue(name)).get(path)
    assert page.status_code == 200
    assert Acts(page.text).shared() == {}
