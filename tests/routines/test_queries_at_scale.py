"""Pages over a large bank ask the database as often as over a small one: 5,000 counts and 40.

Where one's own grades come first, a page that these fill asks for no other counts. Of forty counts too few are in them, so the
large bank is asked once less there. So it is where words are looked for: where more have them in their titles than are counted,
no others are asked for. In any other order the numbers are the same.
"""

from uuid import uuid4

import pytest
from django.core.management import call_command
from django.db import connection
from django.http import QueryDict
from django.test import Client
from django.test.utils import CaptureQueriesContext
from django.urls import reverse
from django.utils import timezone

from accounts.models import User
from bench._many_counts import fill
from bench._page_server import PREVIEWED
from grade_bands.models import Grade
from routines.bank.forms.filters import BankFilter
from routines.bank.views import bank, mine
from routines.models import Lesson, Routine
from routines.paper.views import booklets
from routines.team.first_page import shared_lessons
from tests.routines.making import make_lesson, make_routine
from tests.routines.many_copies import copy_all

FEW, MANY = 40, 5000
MOST = 26
TITLES_ALONE = ("q=golden",)
OWN_GRADES_FIRST = ("taught=this-year", "whose=team", "whose=mine", "owner={teacher}")


def asked(client: Client, address: str) -> int:
    client.get(address)  # what its cards say is worked out
    with CaptureQueriesContext(connection) as queries:
        assert client.get(address).status_code == 200
    return len(queries)


def previewed(client: Client, address: str) -> int:
    with CaptureQueriesContext(connection) as queries:
        assert client.post(address, PREVIEWED, headers={"HX-Request": "true"}).status_code == 200
    return len(queries)


def queries_of_each_page() -> dict[str, int]:
    teacher = User.objects.get(sign_in_name="person3")
    teacher.role = User.Role.TEACHER
    client = Client()
    client.force_login(teacher, backend="accounts.backends.NameOrEmailBackend")
    newest = Routine.objects.in_bank().order_by("-shared_at", "-pk")
    grade = Grade.objects.filter(class_groups__teachers=teacher).first()
    searches = (
        "q=golden",
        "q=from+each",
        "q=sets+out&sort=title",
        "q=1,000",
        "grade=2&area=money",
        "shows=sums&while=1",
    )
    orders = ("sort=title", "sort=taught", "taught=not-yet")
    pages = {
        "home": "/",
        "bank": "/bank/",
        "a page further": f"/bank/?sort=newest&after={newest[20].pk}",
        "a page back": f"/bank/?sort=newest&before={newest[20].pk}",
        "an old address": "/bank/?page=3",
        **{query: f"/bank/?{query}" for query in (*searches, *orders)},
        **{query: f"/bank/?{query.format(teacher=teacher.pk)}" for query in OWN_GRADES_FIRST},
        **{f"{query}, newest": f"/bank/?{query.format(teacher=teacher.pk)}&sort=newest" for query in OWN_GRADES_FIRST},
        "my plans": reverse("my_plans"),
        "searched": f"{reverse('my_plans')}?q=from",
        "booklet": f"{reverse('booklet_choose')}?grade=2",
        "coverage": reverse("coverage"),
        "cell": reverse("coverage_cell", args=[grade.pk, "whole"]),
        "lessons": reverse("lessons"),
        "count": reverse("routine", args=[newest[0].pk]),
    }
    preview = reverse("plan_preview", kwargs={"key": uuid4()})
    return {name: asked(client, address) for name, address in pages.items()} | {"preview": previewed(client, preview)}


@pytest.mark.django_db
@timezone.override("America/Chicago")
def test_five_thousand_counts_take_as_many_queries_as_forty(monkeypatch):
    for room, name in ((bank, "PAGE_SIZE"), (mine, "SHOWN_AT_MOST"), (booklets, "OFFERED_AT_ONCE")):
        monkeypatch.setattr(room, name, 2)  # the fewer cards, the sooner they are drawn
    fill(FEW, people=8, kinds_of_count=12)
    call_command("check_kept")  # which fails where a filled bank is not as the app's own actions leave one
    few = queries_of_each_page()
    copy_all(MANY // FEW - 1)
    assert (Routine.objects.in_bank().count(), Lesson.objects.counted().count()) == (MANY, MANY * 5)
    many = queries_of_each_page()
    fewer = {name for name in (*OWN_GRADES_FIRST, *TITLES_ALONE) if many[name] == few[name] - 1}
    assert {name: many[name] - few[name] for name in few if many[name] != few[name] and name not in fewer} == {}
    assert {name: number for name, number in many.items() if number > MOST} == {}


@pytest.mark.django_db
def test_what_colleagues_shared_is_found_by_its_own_index(owner, teammate):
    """Else the first page looks through every lesson that the school ever held."""
    lesson = make_lesson(make_routine(owner), teammate, sharing="team")
    make_lesson(make_routine(owner), teammate)
    with CaptureQueriesContext(connection) as asked:
        assert list(shared_lessons(owner)) == [lesson]
    shared = next(one["sql"] for one in asked if "'only-me'" in one["sql"])
    if connection.vendor == "sqlite":  # PostgreSQL decides by how many lessons there are
        with connection.cursor() as cursor:
            plan = str(cursor.execute(f"EXPLAIN QUERY PLAN {shared}").fetchall())
        assert "USING INDEX lesson_shared" in plan
        assert "ORDER BY" not in plan


def plan_of(routines, *, holds: str) -> str:
    """How SQLite answers the query of this page that has these words. It keeps no statistics, so a small bank shows it."""
    with CaptureQueriesContext(connection) as asked:
        routines()
    sql = next(one["sql"] for one in asked if holds in one["sql"])
    with connection.cursor() as cursor:
        return str(cursor.execute(f"EXPLAIN QUERY PLAN {sql}").fetchall())


@pytest.mark.django_db
@pytest.mark.parametrize(
    ("address", "holds", "used"),
    [
        ("/bank/?grade=2&direction=forward", "LIMIT 25", "COVERING INDEX routine_of_grade (status=? AND grade_id=?)"),
        ("/bank/?grade=2&grade=3", "LIMIT 25", "COVERING INDEX routine_newest (status=?)"),
        ("/bank/?grade=2&sort=title", "LIMIT 25", "COVERING INDEX routine_by_title (status=?)"),
        ("/bank/?q=plums", "run_0", "COVERING INDEX searchword_by_word (word=? AND in_title=?)"),
        ("/bank/?q=plu+plums", "run_0", "sqlite_autoindex_routines_searchword_1 (routine_id=? AND word=?)"),
        ("/coverage/", "routines_taughtinweek", "COVERING INDEX taughtinweek_of_grade"),
        ("/coverage/", "routines_taughton", "COVERING INDEX taughton_by_week"),
    ],
)
def test_a_page_is_found_by_the_index_that_is_there_for_it(owner, grade_three, visit, address, holds, used):
    make_lesson(make_routine(owner, title="Plums"), owner)
    client = visit(owner)
    assert client.get(address).status_code == 200
    if connection.vendor == "sqlite":  # PostgreSQL decides by how many rows there are
        plan = plan_of(lambda: client.get(address), holds=holds)
        assert used in plan
        assert "TEMP B-TREE" not in plan


@pytest.mark.django_db
def test_a_teams_counts_are_counted_by_the_index_of_owners(owner, teammate, year):
    make_routine(owner)
    order = BankFilter.read(QueryDict("whose=team"), []).order(owner, year)
    assert order.how_many().number == 1
    if connection.vendor == "sqlite":
        plan = plan_of(order.how_many, holds="COUNT(*)")
        assert "COVERING INDEX routine_of_owner (owner_id=? AND status=?)" in plan
        assert "TEMP B-TREE" not in plan
