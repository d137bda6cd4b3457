"""What few pages need is loaded when one of them is asked for, not with the server: each takes megabytes."""

import subprocess
import sys

import pytest

from tests.routines.making import make_routine

STARTED = """
import sys
import config.wsgi
from django.urls import get_resolver
assert get_resolver().url_patterns
print(*(name for name in sys.argv[1].split() if name in sys.modules))
"""


def loaded(names: str) -> list[str]:
    asked = subprocess.run([sys.executable, "-c", STARTED, names], capture_output=True, text=True, check=True)
    return asked.stdout.split()


def test_the_server_starts_without_what_few_pages_need():
    assert loaded("django routines.models pydantic pydantic_core babel segno sympy weasyprint") == [
        "django",
        "routines.models",
    ]


@pytest.mark.django_db
def test_pages_of_saved_plans_load_no_calendar_of_all_languages(monkeypatch, owner, visit):
    for name in [name for name in sys.modules if name.partition(".")[0] == "babel"]:
        monkeypatch.delitem(sys.modules, name)
    for address in ("/", "/bank/", "/lessons/", "/coverage/", "/plans/"):
        assert visit(owner).get(address).status_code == 200
    assert "babel" not in sys.modules


@pytest.mark.django_db
def test_pages_of_one_plan_read_it_without_pydantic(monkeypatch, owner, visit):
    routine = make_routine(owner)
    for name in [name for name in sys.modules if name.partition(".")[0] in ("pydantic", "pydantic_core")]:
        monkeypatch.delitem(sys.modules, name)
    for address in (f"/routines/{routine.pk}/", f"/routines/{routine.pk}/edit/"):
        assert visit(owner).get(address).status_code == 200
    assert "pydantic" not in sys.modules
