"""What the server writes into its window after a busy day: nothing that anybody typed, and still where a fault was."""

import json
import logging
import re
import shutil
import sys

import pytest
from django.http import HttpRequest
from django.urls import resolve

from config.logs import WithoutWords
from tests.config.commands import environment, manage
from tests.config.serving import Browser, served

WORD = "zebrafinch"
SIGN_IN = """
import json
from django.test import Client
from accounts.actions import invite
from accounts.models import User
from tests.factories import GradeFactory, ClassGroupFactory, SchoolYearFactory
admin = User.objects.get()
User.objects.update(role="administrator")
ClassGroupFactory(grade=GradeFactory(name="2"), year=SchoolYearFactory(), teachers=[admin])
client = Client()
client.force_login(admin, backend="accounts.backends.NameOrEmailBackend")
token = invite(by=admin, display_name="zebrafinch", role="teacher")
print(json.dumps([client.cookies["countfold_session"].value, token]))
"""


@pytest.mark.parametrize("level", ["WARNING", "INFO"])
def test_after_a_busy_day_nothing_that_was_typed_stands_in_the_log(founded, tmp_path, level):
    folder = shutil.copytree(founded, tmp_path / "data")
    session, token = json.loads(manage(folder, "shell", "--verbosity", "0", "-c", SIGN_IN).stdout)
    answers = []
    with served(folder, around={**environment(folder), "COUNTFOLD_LOG_LEVEL": level}) as (port, _said):
        stranger, ames = Browser(port), Browser(port, session)

        def ask(browser: Browser, method: str, path: str, **fields: str) -> None:
            answers.append(browser.ask(method, path, **fields)[0])

        for _try in range(9):
            ask(stranger, "POST", "/sign-in/", name=WORD, passphrase=f"{WORD} {WORD}")
        ask(stranger, "POST", f"/invitation/{token}/", sign_in_name=WORD, display_name=WORD, passphrase=WORD)
        ask(stranger, "GET", f"/invitation/{WORD}/")
        ask(stranger, "GET", f"/{WORD}/?q={WORD}")
        ask(stranger, "GET", f"/static/{WORD}.css")
        ask(stranger, "POST", "/recovery/", name=WORD, pass_code=WORD)
        ask(stranger, "POST", "/me/", display_name=WORD)
        for path in ("/bank/", "/", "/plans/", "/coverage/", "/school/people/", f"/plans/new/?first={WORD}"):
            ask(ames, "GET", path + ("&" if "?" in path else "?") + f"q={WORD}&search={WORD}")
        ask(ames, "GET", f"/routines/{WORD}/")
        ask(ames, "POST", "/me/", display_name=WORD, email=f"{WORD}@")
        ask(ames, "POST", "/me/", display_name=WORD, email="")
        ask(ames, "POST", "/school/people/invite/", display_name=WORD, role=WORD)
        ask(ames, "POST", "/school/people/999/role/", role=WORD)
        ask(ames, "DELETE", f"/bank/?q={WORD}")
        answers.append(ames.send("/plans/new/", {WORD: WORD})[0])
        answers.append(ames.send(f"/lessons/{WORD}/events/", {"events": [WORD]})[0])
        forged = ames.ask("POST", "/me/", {"X-CSRFToken": "x", "Origin": "http://elsewhere.example"}, display_name=WORD)
        answers.append(forged[0])
    log = (folder.parent / "log").read_text()
    assert {302, 404, 410, 422, 429} <= set(answers)
    assert not [status for status in answers if status >= 500]
    assert len(log.splitlines()) > 8, "so quiet that it shows nothing"
    assert WORD not in log
    assert token not in log
    assert "/invitation/<str:token>/" in log


def formatted(record: logging.LogRecord) -> str:
    return WithoutWords("{levelname} {name}: {message}", style="{").format(record)


def test_of_an_error_its_kind_and_its_way_are_told_and_not_what_it_said():
    def fail() -> None:
        try:
            raise KeyError(f"Key (name)=({WORD})")
        except KeyError as error:
            raise ValueError(WORD) from error

    try:
        fail()
    except ValueError:
        record = logging.LogRecord("countfold", logging.ERROR, __file__, 1, "It failed", (), sys.exc_info())
    text = formatted(record)
    assert "which came of:" in text
    assert re.search(r'File ".*test_logs.py", line \d+, in fail', text)
    assert [line for line in text.splitlines() if line in ("ValueError", "KeyError")] == ["ValueError", "KeyError"]
    assert f"({WORD})" not in text


@pytest.mark.parametrize("found", [True, False], ids=["in a view", "before its view was found"])
def test_the_route_stands_in_the_place_of_the_address(found):
    request = HttpRequest()
    request.path = request.path_info = f"/invitation/{WORD}/"
    request.resolver_match = resolve(request.path) if found else None
    record = logging.LogRecord("django.request", logging.WARNING, "", 1, "%s: %s", ("Gone", request.path), None)
    record.request = request
    assert formatted(record) == "WARNING django.request: Gone: /invitation/<str:token>/"
