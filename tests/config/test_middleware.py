"""HEAD on every address, and who may keep a copy of an answer."""

import http.client
import threading
from collections.abc import Iterator

import pytest
import waitress
from django.db import connections
from django.test import Client
from django.urls import URLPattern, get_resolver, reverse

from accounts.actions import invite, offer_new_passphrase
from config.wsgi import pages as application
from tests.config.test_urls import patterns
from tests.factories import StandardFactory
from tests.routines.making import make_lesson, make_routine


@pytest.fixture
def addresses(owner, administrator, grade_two, year, middle_band) -> list[str]:
    """Every address of the app, once, with something behind it where an address names a thing."""
    routine = make_routine(owner)
    lesson = make_lesson(routine, owner, sharing="team-coach")
    standard = StandardFactory(grade=grade_two)
    made = []
    for path, entry in patterns(get_resolver()):
        filled = path
        for part, value in (
            ("<str:token>", "no-such-token"),
            ("<six_digits:code>", "123456"),
            ("<uuid:key>", str(lesson.key)),
            ("<int:grade>", str(grade_two.pk)),
            ("<slug:area>", "whole"),
            ("<int:standard>", str(standard.pk)),
            ("<slug:name>", "plan"),
            ("<int:pk>", str(pk_for(entry, routine, grade_two, year, middle_band))),
        ):
            filled = filled.replace(part, value)
        made.append(f"/{filled}")
    return made


def pk_for(entry: URLPattern, routine, grade, year, band) -> int:
    others = {
        "edit_grade": grade.pk,
        "edit_year": year.pk,
        "edit_band": band.pk,
        "edit_class": grade.class_groups.first().pk,
    }
    return others.get(entry.name, routine.pk)


@pytest.mark.parametrize("name", ["owner", "administrator", "nobody"])
def test_head_answers_what_get_answers_without_a_body(request, addresses, visit, signed_out, name):
    client = signed_out if name == "nobody" else visit(request.getfixturevalue(name))
    answered = 0
    for address in addresses:
        got = client.get(address)
        head = client.head(address)
        assert head.status_code == got.status_code, address
        assert b"".join(head) == b"", address
        assert head.headers.get("Content-Type") == got.headers.get("Content-Type"), address
        assert (
            head.headers.get("Location", "").split("/plans/new/")[0]
            == got.headers.get("Location", "").split("/plans/new/")[0]
        ), address
        answered += got.status_code == 200
    assert answered >= (1 if name == "nobody" else 20)


def test_head_changes_nothing(visit, owner):
    routine = make_routine(owner)
    for name in ("routine_copy", "routine_retire"):
        assert visit(owner).head(reverse(name, args=[routine.pk])).status_code == 405
    routine.refresh_from_db()
    assert (routine.status, routine.copies.count()) == ("shared", 0)


def test_no_shared_cache_keeps_a_page_or_a_file(addresses, visit, owner, administrator):
    for person in (owner, administrator):
        client = visit(person)
        for address in addresses:
            answer = client.get(address)
            if address in ("/favicon.ico", "/lessons/worker.js"):  # the same for everyone
                continue
            kept = answer["Cache-Control"]
            assert "private" in kept, address
            assert "public" not in kept, address
            assert "no-cache" in kept or "no-store" in kept, address
            if "Content-Disposition" in answer:
                assert "no-store" in kept, address


def test_pages_that_hold_a_secret_are_kept_by_nobody(owner, administrator, visit):
    token = invite(by=administrator, display_name="New", role="teacher")
    for address in (
        "/sign-in/",
        reverse("accounts:invitation", args=[token]),
        reverse("accounts:new_passphrase", args=[offer_new_passphrase(by=administrator, person=owner)]),
    ):
        assert "no-store" in Client().get(address)["Cache-Control"]
    handed_out = visit(administrator).post(reverse("accounts:reset_passphrase", args=[owner.pk]))
    assert "no-store" in handed_out["Cache-Control"]


def test_errors_are_private_too(visit, owner):
    assert "private" in visit(owner).get("/no-such-page/")["Cache-Control"]


# The server that a school runs, on a real socket.


def leaving_nothing_open(environ, start_response):
    """The server's thread outlives the test and its database; what it has open there must not."""
    try:
        return application(environ, start_response)
    finally:
        connections.close_all()


@pytest.fixture
def served(school) -> Iterator[int]:
    server = waitress.create_server(leaving_nothing_open, host="127.0.0.1", port=0, threads=1)
    thread = threading.Thread(target=server.run, daemon=True)
    thread.start()
    yield server.effective_port
    server.close()
    thread.join(timeout=5)


@pytest.mark.django_db(transaction=True)
@pytest.mark.parametrize("address", ["/sign-in/", "/no-such-page/", "/favicon.ico", "/static/img/icon.svg"])
def test_nothing_follows_the_headers_of_head_on_the_wire(served, address):
    """Two requests on one connection: were a body sent, the second answer would begin in the middle of it."""
    connection = http.client.HTTPConnection("127.0.0.1", served, timeout=10)
    headers = {"Host": "localhost"}
    for _time in range(2):
        connection.request("HEAD", address, headers=headers)
        answer = connection.getresponse()
        assert answer.status in (200, 302, 404)
        assert answer.read() == b""
    connection.sock.settimeout(0.3)
    with pytest.raises(TimeoutError):
        connection.sock.recv(1)
    connection.close()
