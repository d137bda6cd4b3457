"""`/health/`: told apart well and not well, by anybody, and nothing of the school is in it."""

import pytest
from django.db import DatabaseError
from django.test import Client

from config import health

WELL = {"database": "ok", "disk": "ok"}


def test_it_is_well_for_the_signed_out(school):
    answer = Client().get("/health/")
    assert (answer.status_code, answer.json()) == (200, WELL)
    assert "no-store" in answer["Cache-Control"]
    assert Client().head("/health/").status_code == 200


@pytest.mark.django_db
def test_before_there_is_a_school_too():
    assert Client().get("/health/").json() == WELL


def test_it_answers_by_plain_http_where_all_else_leads_to_https(school, settings):
    settings.SECURE_SSL_REDIRECT = True
    assert Client().get("/sign-in/").status_code == 301
    assert Client().get("/health/").status_code == 200


def test_no_session_is_begun_and_no_query_asks_for_people(school, django_assert_num_queries):
    with django_assert_num_queries(1):
        assert not Client().get("/health/").cookies


def test_a_database_that_does_not_answer_is_said(school, monkeypatch):
    def refuse() -> None:
        raise DatabaseError("password authentication failed for user countfold")

    with monkeypatch.context() as broken:
        broken.setattr(health.connection, "ensure_connection", refuse, raising=False)
        answer = Client().get("/health/")
    assert (answer.status_code, answer.json()) == (503, {"database": "not ok", "disk": "ok"})
    assert "countfold" not in answer.text


@pytest.mark.parametrize(("free", "well"), [(health.LEAST_ROOM, True), (health.LEAST_ROOM - 1, False)])
def test_a_disk_that_fills_up_is_said(school, monkeypatch, free, well):
    monkeypatch.setattr(health, "free_room", lambda: free)
    answer = Client().get("/health/")
    assert (answer.status_code, answer.json()["disk"]) == ((200, "ok") if well else (503, "not ok"))
