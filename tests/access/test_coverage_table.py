"""In a school that has taught for weeks the table says of target patterns what stands behind its cells, to each reader."""

import pytest
from django.test import Client
from django.utils import timezone

from accounts.models import User
from grade_bands.actions import load_standards
from grade_bands.models import SchoolYear
from routines.coverage.queries import CoverageCell, coverage
from routines.demo.build import make_demo_school
from tests.routines.coverage.test_patterns import table_of

pytestmark = pytest.mark.django_db


@pytest.fixture(scope="module", autouse=True)
def demo_school(undone_school):
    make_demo_school(today=timezone.localdate(), load_standards=load_standards, told=lambda line: None)


def behind(client: Client, cell: CoverageCell, days: dict) -> list[int]:
    lines = table_of(client, cell.grade, cell.area, **days)
    return [sum(int(line[at]) for line in lines) for at in (1, 2, 3)]


@pytest.mark.parametrize(("role", "least"), [("teacher", 1), ("coach", 8), ("administrator", 0)])
def test_they_agree(role, least):
    person = User.objects.filter(role=role).order_by("pk").first()
    year = SchoolYear.objects.newest_first()[0]
    days = {"first": year.starts_on, "last": timezone.localdate()}
    cells = [cell for row in coverage(user=person, year=year, **days) for cell in row.cells]
    said = [[cell.targets.seen, cell.targets.not_yet, cell.targets.not_recorded] for cell in cells]
    client = Client(SERVER_NAME="localhost")
    client.force_login(person, backend="accounts.backends.NameOrEmailBackend")
    assert [behind(client, cell, days) for cell in cells] == said
    assert sum(map(any, said)) >= least
