"""The demo school on its own server, and one address more: `bare/` answers what a page costs before it says anything.

Started by bench/pages.py, in a data folder of its own. `bare/` goes through the same middleware, reads session and person,
and writes 15 KB with a form's token by a template.
"""

import json
import os
import re
import sys
from datetime import date
from typing import Any
from urllib.parse import urlencode

import django

os.environ["DJANGO_SETTINGS_MODULE"] = "config.settings"

BARE = (
    "<!doctype html><html lang='en'><head><title>Bare</title></head><body><h1>{{ user.display_name }}</h1>"
    "<form method='post'>{% csrf_token %}<button>Send</button></form>{% for row in rows %}<p>{{ row }}</p>{% endfor %}"
    "</body></html>"
)
ROWS = [f"Row {number} of a page that says nothing of a count, {number * number % 97:03}." for number in range(235)]
PREVIEW = "/plans/new/9b2f3c1e-7a54-4d0e-8a56-5f1f6f0c2d11/preview/"
SAME_COUNT, NEW_COUNT = "preview, words typed", "preview, a new count"
"""Of 48 cells: while words are typed under one count, and each of a count that nobody asked for before."""
PREVIEWED = {
    "title": "Fours", "grade": "2", "area": "", "language": "en", "kind": "whole", "start": "20", "step": "4",
    "terms": "48", "line_length": "6", "fill": "across", "lead": "0",
}  # fmt: skip


def prepare() -> dict[str, Any]:
    """The demo school, a teacher's session in it, and the pages to ask for, with how many queries each takes."""
    from django.core.management import call_command
    from django.db import connection
    from django.test import Client
    from django.test.utils import CaptureQueriesContext

    call_command("migrate", verbosity=0)
    call_command("collectstatic", interactive=False, verbosity=0)
    from accounts.models import User
    from grade_bands.models import Grade
    from routines.demo.build import make_demo_school
    from routines.models import Routine

    make_demo_school(today=date.today(), load_standards=lambda: None, told=lambda line: None)
    call_command("recompute_facts", stdout=sys.stderr)
    teacher = User.objects.filter(class_groups__isnull=False, owned_routines__isnull=False).order_by("pk").first()
    assert teacher is not None
    client = Client(HTTP_HOST="127.0.0.1")
    client.force_login(teacher, backend="accounts.backends.NameOrEmailBackend")
    routine = Routine.objects.in_bank().order_by("-terms").first()
    assert routine is not None
    grade = Grade.objects.filter(routine__status="shared").order_by("order").first()
    assert grade is not None
    pages = {
        "home": "/",
        "bank": "/bank/",
        "bank, filtered by grade": f"/bank/?grade={grade.name}",
        "routine": f"/routines/{routine.pk}/",
        "coverage": "/coverage/",
        "lessons": "/lessons/",
        "my plans": "/plans/",
        SAME_COUNT: PREVIEW,
        NEW_COUNT: PREVIEW,
    }
    headers = {"HX-Request": "true"}
    # As the page sends it: with the marks of what it shows, which is made and sent anew only where they change.
    offered = client.post(PREVIEW, PREVIEWED, headers=headers).content.decode()
    marks = dict(re.findall(r'name="(kind_before|mark_before|shown_before)" value="([^"]*)"', offered))
    assert len(marks) == 3
    previewed = PREVIEWED | marks
    asked = {}
    for name, address in pages.items():
        for _ in range(2):
            with CaptureQueriesContext(connection) as queries:
                body = previewed if "preview" in name else None
                answer = client.post(address, body, headers=headers) if body else client.get(address)
                assert answer.status_code == 200, (address, answer.status_code)
        asked[name] = len(queries)
    return {
        "session": client.cookies["countfold_session"].value,
        "pages": pages,
        "queries": asked,
        "previewed": urlencode(previewed),
        "counts": Routine.objects.in_bank().count(),
    }


def serve(port: int) -> None:
    from django.http import HttpRequest, HttpResponse
    from django.template import engines
    from django.urls import path

    from config import urls
    from config.serving import CONNECTION_LIMIT, THREADS

    template = engines["django"].from_string(BARE)

    def bare(request: HttpRequest) -> HttpResponse:
        return HttpResponse(template.render({"rows": ROWS}, request))

    urls.urlpatterns += [path("bare/", bare, name="bare")]
    import waitress

    from config.wsgi import application

    waitress.serve(
        application, host="127.0.0.1", port=port, threads=THREADS, connection_limit=CONNECTION_LIMIT, ident=None
    )


if __name__ == "__main__":
    django.setup()
    if sys.argv[1] == "prepare":
        sys.stdout.write(json.dumps(prepare()))
    else:
        serve(int(sys.argv[2]))
