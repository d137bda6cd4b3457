"""A server that can be killed again and again: Django is loaded once, and every time the server dies another is forked.

`python -m tests.routines.lessons.killed_server prepare` makes a school with a lesson and prints what its devices need.
`python -m tests.routines.lessons.killed_server serve PORT` serves until its standard input is closed; each server's
process id is printed on a line of its own.
"""

import json
import os
import sys
import threading

import django

os.environ["DJANGO_SETTINGS_MODULE"] = "config.settings"
DEVICES = 4


def say(text: str) -> None:
    sys.stdout.write(text + "\n")
    sys.stdout.flush()


def prepare() -> None:
    from django.core.management import call_command

    call_command("migrate", verbosity=0)
    from routines.models import LessonPass
    from tests.factories import ClassGroupFactory, GradeFactory, SchoolFactory, SchoolYearFactory, UserFactory
    from tests.routines.lessons.making import open_lesson

    SchoolFactory()
    teacher = UserFactory(sign_in_name="teacher")
    ClassGroupFactory(grade=GradeFactory(name="2"), year=SchoolYearFactory(), teachers=[teacher])
    lesson = open_lesson(teacher)
    secrets = []
    for _ in range(DEVICES):
        held, secret = LessonPass.objects.wait(address="127.0.0.1")
        held.tie(lesson=lesson, role="board", by=teacher)
        secrets.append(secret)
    say(json.dumps({"key": str(lesson.key), "pk": lesson.pk, "secrets": secrets}))


def serve(port: int) -> None:
    from config.wsgi import application  # no database is opened before the fork

    closing = threading.Event()

    def wait_for_the_end() -> None:
        sys.stdin.read()
        closing.set()
        os._exit(0)

    parent = os.getpid()
    while not closing.is_set():
        child = os.fork()
        if child == 0:
            import waitress

            threading.Thread(target=end_with, args=(parent,), daemon=True).start()
            waitress.serve(application, host="127.0.0.1", port=port, threads=4, ident=None)
            os._exit(0)
        if not any(thread.name == "end" for thread in threading.enumerate()):
            threading.Thread(target=wait_for_the_end, name="end", daemon=True).start()
        say(str(child))
        os.waitpid(child, 0)


def end_with(parent: int) -> None:
    """A server whose parent has gone ends too."""
    import time

    while os.getppid() == parent:
        time.sleep(0.2)
    os._exit(0)


if __name__ == "__main__":
    django.setup()
    prepare() if sys.argv[1] == "prepare" else serve(int(sys.argv[2]))
