"""A school of as many counts as asked for, on its own server. Started by bench/scale.py."""

from __future__ import annotations

import json
import os
import sys
from datetime import date
from time import perf_counter
from typing import Any

import django

os.environ["DJANGO_SETTINGS_MODULE"] = "config.settings"

NUMBERED_PAGE = 200
TRIES = 30


def prepare(counts: int, people: int) -> dict[str, Any]:
    """The bank, sessions in it, the pages to ask for, and how long each spends in the database."""
    from django.core.management import call_command
    from django.db import connection

    call_command("migrate", verbosity=0)
    call_command("collectstatic", interactive=False, verbosity=0)
    from accounts.models import User
    from bench._many_counts import fill, settle
    from routines.bank.views.bank import PAGE_SIZE
    from routines.models import Lesson, Routine

    if not Routine.objects.exists():
        fill(counts, people=people, told=lambda line: sys.stderr.write(f"  {line}\n"))
        settle()
    teacher = User.objects.get(sign_in_name="person3")
    as_coach = {"display_name": "Coach", "role": User.Role.COACH}
    coach, _made = User.objects.get_or_create(sign_in_name="coach", defaults=as_coach)
    newest = Routine.objects.in_bank().order_by("-shared_at", "-pk").values_list("pk", flat=True)
    before = min(NUMBERED_PAGE, newest.count() // PAGE_SIZE) * PAGE_SIZE - PAGE_SIZE - 1
    pages = {
        "bank": (teacher, "/bank/"),
        "home": (teacher, "/"),
        "bank, filtered": (teacher, "/bank/?grade=2&direction=forward"),
        "bank, two filters few pass": (teacher, "/bank/?kind=clock&shows=opposites&shows=sums&grade=5"),
        "bank, searched": (teacher, "/bank/?q=golden+lad"),
        "bank, page 200": (teacher, f"/bank/?after={newest[before]}"),
        "bank, team": (teacher, "/bank/?whose=team"),
        "bank, most taught": (teacher, "/bank/?sort=taught"),
        "bank, not yet taught": (teacher, "/bank/?taught=not-yet"),
        "my plans": (teacher, "/plans/"),
        "choosing a booklet": (teacher, "/booklet/?grade=2"),
        "coverage": (coach, "/coverage/"),
        "coverage, own window": (coach, f"/coverage/?first={date(2026, 9, 3)}&last={date(2026, 12, 16)}"),
    }
    signed_in = {person: _signed_in(person) for person in (teacher, coach)}
    return {
        "pages": {
            name: (signed_in[person].cookies["countfold_session"].value, at) for name, (person, at) in pages.items()
        },
        "queries": {name: _in_the_database(signed_in[person], at) for name, (person, at) in pages.items()},
        "part": {
            name: _in_the_database(signed_in[person], at, HTTP_HX_REQUEST="true")
            for name, (person, at) in pages.items()
            if at.startswith("/bank/")
        },
        "counts": counts,
        "lessons": Lesson.objects.count(),
        "database": connection.vendor,
    }


def _signed_in(person: Any) -> Any:
    from django.test import Client

    client = Client(HTTP_HOST="127.0.0.1")
    client.force_login(person, backend="accounts.backends.NameOrEmailBackend")
    return client


def _in_the_database(client: Any, address: str, **headers: str) -> tuple[int, float]:
    """How many queries a page asks when everything is warm, and their milliseconds until the last row is there.

    They are asked again by themselves, so that nothing else is timed: the shortest of some tries of each, added up.
    """
    from django.db import connection

    asked: list[tuple[str, Any]] = []

    def kept(execute: Any, sql: str, params: Any, *rest: Any) -> Any:
        asked.append((sql, params))
        return execute(sql, params, *rest)

    for _ in range(3):
        asked.clear()
        with connection.execute_wrapper(kept):
            answer = client.get(address, **headers)
        assert answer.status_code == 200, (address, answer.status_code)
    with connection.cursor() as cursor:
        return len(asked), sum(min(_timed(cursor, *query) for _ in range(TRIES)) for query in asked)


def _timed(cursor: Any, sql: str, params: Any) -> float:
    assert sql.startswith("SELECT"), sql
    began = perf_counter()
    cursor.execute(sql, params)
    cursor.fetchall()
    return 1000 * (perf_counter() - began)


if __name__ == "__main__":
    django.setup()
    if sys.argv[1] == "prepare":
        sys.stdout.write(json.dumps(prepare(*map(int, sys.argv[2:]))))
    else:
        from bench._page_server import serve

        serve(int(sys.argv[2]))
