"""PostgreSQL that is stopped under a running server: a page says so and keeps what was typed, and all goes on afterwards."""

import re
import select
import socket
import threading
import time
from collections.abc import Iterator
from contextlib import suppress
from html import unescape
from pathlib import Path

import psycopg
import pytest
from django.db import DatabaseError, InterfaceError, OperationalError, connection
from django.test import RequestFactory

from config import database_away
from config.database_away import is_away
from config.views import server_error
from routines.models import Job
from tests.config.serving import Browser, served
from tests.config.test_workers import ON_POSTGRESQL, PREPARE, around, asked

__all__ = ["around"]

# Which failure is one


def led_to_by(cause: Exception, kind: type[DatabaseError] = OperationalError) -> DatabaseError:
    error = kind("it went wrong")
    error.__cause__ = cause
    return error


def test_nobody_there_and_every_way_of_being_told_to_wait_are_known():
    for cause in (
        psycopg.OperationalError("connection refused"),
        psycopg.errors.AdminShutdown("terminating connection"),
        psycopg.errors.CrashShutdown(""),
        psycopg.errors.CannotConnectNow("the database system is starting up"),
        psycopg.errors.TooManyConnections(""),
        psycopg.errors.ConnectionFailure(""),
    ):
        assert is_away(led_to_by(cause)), cause
    assert is_away(led_to_by(psycopg.InterfaceError("the connection is closed"), InterfaceError))


def test_other_failures_are_not_taken_for_it():
    for cause in (psycopg.errors.LockNotAvailable(""), psycopg.errors.DiskFull(""), OSError("no")):
        assert not is_away(led_to_by(cause)), cause
    assert not is_away(led_to_by(psycopg.errors.UniqueViolation("twice"), DatabaseError))
    assert not is_away(OperationalError("database is locked"))
    assert not is_away(None)


# What is answered


def answered(**request: object):
    try:
        raise led_to_by(psycopg.OperationalError("connection refused"))
    except OperationalError:
        return server_error(RequestFactory().generic(**request))


FORM = "application/x-www-form-urlencoded"


def test_a_page_says_so_and_asks_nothing(django_assert_num_queries, db):
    with django_assert_num_queries(0):
        answer = answered(method="GET", path="/bank/?q=sevens")
    assert (answer.status_code, answer["Retry-After"]) == (503, "5")
    assert "does not answer just now" in answer.text
    assert 'href="/bank/?q=sevens"' in answer.text


def test_a_form_comes_back_with_what_was_typed():
    answer = answered(
        method="POST", path="/me/", data="display_name=Ana+%26+co&csrfmiddlewaretoken=abc", content_type=FORM
    )
    assert answer.status_code == 503
    assert 'name="display_name" value="Ana &amp; co"' in answer.text
    assert 'name="csrfmiddlewaretoken" value="abc"' in answer.text
    assert 'action="/me/"' in answer.text


def test_a_form_with_a_passphrase_does_not():
    answer = answered(method="POST", path="/sign-in/", data="name=ana&passphrase=otter+violin", content_type=FORM)
    assert "otter" not in answer.text
    assert "Go back one page" in answer.text


def test_scripts_get_one_sentence():
    for more in ({"HTTP_HX_REQUEST": "true", "content_type": FORM}, {"content_type": "application/json"}):
        answer = answered(method="POST", path="/me/", data="{}", **more)
        assert (answer.status_code, answer.text) == (503, database_away.SENTENCE)


# With real processes


class Way:
    """The way to PostgreSQL, which can be cut and mended: what a restart of it is to a server."""

    def __init__(self, host: str, port: int) -> None:
        self.to = (host, port)
        self.at = socket.create_server(("127.0.0.1", 0))
        self.port = self.at.getsockname()[1]
        self.cut = threading.Event()
        threading.Thread(target=self.go_on, daemon=True).start()

    def go_on(self) -> None:
        with suppress(OSError):
            while True:
                here, _who = self.at.accept()
                threading.Thread(target=self.carry, args=[here], daemon=True).start()

    def carry(self, here: socket.socket) -> None:
        with here, suppress(OSError):
            if self.cut.is_set():
                return
            with socket.create_connection(self.to) as there:
                other = {here: there, there: here}
                while not self.cut.is_set():
                    for ready in select.select([here, there], [], [], 0.05)[0]:
                        sent = ready.recv(65536)
                        if not sent:
                            return
                        other[ready].sendall(sent)


@pytest.fixture
def way() -> Iterator[Way]:
    kept = connection.settings_dict
    way = Way(kept["HOST"], int(kept["PORT"]))
    yield way
    way.cut.set()
    way.at.close()


@pytest.mark.django_db(transaction=True)
def test_a_school_goes_on_by_itself_when_postgresql_is_there_again(around, request):
    if not ON_POSTGRESQL:
        return
    way = request.getfixturevalue("way")
    asked(around, "from django.core.management import call_command; call_command('migrate', verbosity=0)")
    made = asked(around, PREPARE)
    session = re.search(r'"session": "(\w+)"', made)[1]
    through = re.sub(r":\d+/", f":{way.port}/", around["DATABASE_URL"])
    folder = Path(around["COUNTFOLD_DATA"])
    with served(folder, "--workers", "3", around={**around, "DATABASE_URL": through}) as (port, _said):
        browsers = [Browser(port, session) for _client in range(8)]
        for browser in browsers:
            assert browser.ask("GET", "/bank/")[0] == 200
        way.cut.set()
        time.sleep(5)  # its threads look for jobs every two seconds
        for browser in browsers:
            status, _where, page = browser.ask("GET", "/bank/")
            assert (status, "does not answer just now" in page) == (503, True)
            status, _where, page = browser.ask("POST", "/me/", display_name="Ota Two", email="")
            assert status == 503
            assert unescape(re.search(r'name="display_name" value="([^"]*)"', page)[1]) == "Ota Two"
        assert Browser(port).ask("GET", "/health/")[0] == 503
        way.cut.clear()
        for browser in browsers:
            assert browser.ask("POST", "/me/", display_name="Ota Two", email="")[0] == 302
            assert "Ota Two" in browser.ask("GET", "/me/")[2]
        assert Browser(port).ask("GET", "/health/")[0] == 200
        time.sleep(3)
    log = (folder.parent / "log").read_text()
    assert log.count("Service Unavailable: /me/") == len(browsers)
    assert log.count("Looking for jobs failed") <= 3 * len(Job.Kind)  # once each, however long it lasts
    assert "Internal Server Error" not in log
    assert "Looking for jobs goes on" in log
