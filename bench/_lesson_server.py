"""The school's own server with thirty open lessons, and two addresses more: `bare/` does nothing, `used/` says how much
processor time the server has used. Started by bench/lesson.py, in a data folder of its own.
"""

import json
import os
import sys
from datetime import date, timedelta
from time import process_time
from typing import Any

import django

os.environ["DJANGO_SETTINGS_MODULE"] = "config.settings"


def prepare(lessons: int) -> dict[str, Any]:
    """A school with so many open lessons, each with a board that is paired, and a booklet's worth of counts."""
    from django.core.management import call_command
    from django.test import Client

    call_command("migrate", verbosity=0)
    call_command("collectstatic", interactive=False, verbosity=0)
    from accounts.models import School, User
    from grade_bands.models import ClassGroup, Grade, GradeBand, SchoolYear
    from routines.demo.plans import PLANS
    from routines.lessons.recording import keep_events, made_event, start_lesson
    from routines.models import LessonPass
    from routines.plans.actions import start_routine

    School.objects.create(pk=1, name="Bench")
    band = GradeBand.objects.create(name="all", order=1)
    grades = {name: Grade.objects.create(name=name, order=n, level=min(n, 8), band=band)
              for n, name in enumerate(dict.fromkeys(demo.plan.grade for demo in PLANS))}  # fmt: skip
    today = date.today()
    year = SchoolYear.objects.create(
        name="now", starts_on=today - timedelta(days=90), ends_on=today + timedelta(days=90)
    )
    first = User.objects.create(sign_in_name="first", display_name="First")
    routines = []
    for demo in PLANS:
        routine = start_routine(plan=demo.plan, by=first)
        routine.share()
        routines.append(routine)
    devices = []
    for number in range(lessons):
        teacher = User.objects.create(sign_in_name=f"teacher{number}", display_name=f"Teacher {number}")
        group = ClassGroup.objects.create(name=f"Class {number}", grade=next(iter(grades.values())), year=year)
        group.teachers.add(teacher)
        routine = routines[number % len(routines)]
        lesson = start_lesson(
            version=routine.newest_save, class_group=group, teacher=teacher, taught_on=today, surface="board"
        )
        moment = lesson.created_at
        written = [
            made_event(2 + n, "bench", moment, "term.write", {"n": 1 + n, "text": "12", "over": None})
            for n in range(12)
        ]
        keep_events(lesson=lesson, events=written)
        held, secret = LessonPass.objects.wait(address=f"10.0.0.{number}")
        held.tie(lesson=lesson, role="board", by=teacher)
        client = Client()
        client.force_login(teacher, backend="accounts.backends.NameOrEmailBackend")
        session = client.cookies["countfold_session"].value
        devices.append({"key": str(lesson.key), "last": lesson.last_seq, "secret": secret, "session": session})
    return {"devices": devices, "routines": [routine.pk for routine in routines]}


def serve(port: int) -> None:
    from django.contrib.auth.decorators import login_not_required
    from django.http import HttpResponse
    from django.urls import path

    from config import urls
    from config.serving import CONNECTION_LIMIT, THREADS

    bare = login_not_required(lambda request: HttpResponse("ok"))
    used = login_not_required(lambda request: HttpResponse(f"{process_time():.4f}"))
    urls.urlpatterns += [path("bare/", bare, name="bare"), path("used/", used, name="used")]
    import waitress

    from config.wsgi import application

    waitress.serve(
        application, host="127.0.0.1", port=port, threads=THREADS, connection_limit=CONNECTION_LIMIT, ident=None
    )


if __name__ == "__main__":
    django.setup()
    if sys.argv[1] == "prepare":
        sys.stdout.write(json.dumps(prepare(int(sys.argv[2]))))
    else:
        serve(int(sys.argv[2]))
