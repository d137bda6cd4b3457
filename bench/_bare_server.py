"""A Django server that does nothing but sign people in: the same server program, sessions, persons and forms, one page of 15 KB.

Started by bench/memory.py and bench/start.py, in a data folder of its own.
"""

import os
import sys
from pathlib import Path

import django
from django.conf import settings

from bench._page_server import BARE, ROWS

FOLDER = Path(os.environ["COUNTFOLD_DATA"])

settings.configure(
    SECRET_KEY="a bare server has nothing to hide",  # noqa: S106
    ALLOWED_HOSTS=["127.0.0.1"],
    DATABASES={"default": {"ENGINE": "django.db.backends.sqlite3", "NAME": FOLDER / "bare.sqlite3"}},
    INSTALLED_APPS=[
        "django.contrib.auth",
        "django.contrib.contenttypes",
        "django.contrib.sessions",
        "django.contrib.messages",
    ],
    MIDDLEWARE=[
        "django.middleware.security.SecurityMiddleware",
        "django.contrib.sessions.middleware.SessionMiddleware",
        "django.middleware.common.CommonMiddleware",
        "django.middleware.csrf.CsrfViewMiddleware",
        "django.contrib.auth.middleware.AuthenticationMiddleware",
        "django.contrib.messages.middleware.MessageMiddleware",
    ],
    TEMPLATES=[{"BACKEND": "django.template.backends.django.DjangoTemplates"}],
    ROOT_URLCONF=__name__,
)

urlpatterns: list[object] = []


def serve(port: int) -> None:
    import waitress
    from django.core.wsgi import get_wsgi_application
    from django.http import HttpRequest, HttpResponse
    from django.template import engines
    from django.urls import path

    from config.serving import CONNECTION_LIMIT, THREADS

    template = engines["django"].from_string(BARE)

    def bare(request: HttpRequest) -> HttpResponse:
        request.session["seen"] = True
        return HttpResponse(template.render({"rows": ROWS, "user": request.user}, request))

    urlpatterns.append(path("bare/", bare))
    application = get_wsgi_application()
    waitress.serve(
        application, host="127.0.0.1", port=port, threads=THREADS, connection_limit=CONNECTION_LIMIT, ident=None
    )


def prepare() -> None:
    from django.core.management import call_command

    call_command("migrate", verbosity=0)
    sys.stdout.write("{}")


if __name__ == "__main__":
    django.setup()
    if sys.argv[1] == "prepare":
        prepare()
    else:
        serve(int(sys.argv[2]))
