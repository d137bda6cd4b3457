"""A request that is under way while a backup is put back: asked again, with nothing saved and what was typed kept.

PostgreSQL is not restored under a running server, so there requests go on as ever. (With real processes:
test_restoring_under_a_server.py.)
"""

import sqlite3
from contextlib import closing

import pytest
from django.db import connection

from accounts.models import School, User
from config import restored_meanwhile

ON_SQLITE = connection.vendor == "sqlite"
FIELDS = {"display_name": "Ota Two", "email": ""}


@pytest.fixture
def restored(monkeypatch) -> None:
    """From now on the database holds another school than the one a request begins with."""
    monkeypatch.setattr(restored_meanwhile, "epoch_now", lambda: "0" * 32)


def test_without_a_restore_nothing_changes(visit, owner):
    assert visit(owner).post("/me/", FIELDS).status_code == 302
    assert User.objects.get(pk=owner.pk).display_name == "Ota Two"


@pytest.mark.django_db(transaction=True)
def test_a_form_is_not_saved_and_its_text_is_kept(visit, owner, restored):
    response = visit(owner).post("/me/", FIELDS)
    if ON_SQLITE:
        assert response.status_code == 401
        assert "Ota Two" in response.content.decode()
        assert not connection.connection.in_transaction
    assert User.objects.get(pk=owner.pk).display_name == ("Owner Ota" if ON_SQLITE else "Ota Two")


def test_a_page_is_asked_for_again(visit, owner, restored):
    response = visit(owner).get("/me/?here=1")
    assert (response.status_code, response.headers.get("Location")) == (
        (302, "/me/?here=1") if ON_SQLITE else (200, None)
    )


def test_a_script_is_told_to_sign_in_again(visit, owner, restored):
    response = visit(owner).post("/me/", FIELDS, headers={"HX-Request": "true"})
    assert response.status_code == (401 if ON_SQLITE else 302)
    assert ("Sign in again" in response.content.decode()) == ON_SQLITE


def test_signing_in_begins_again(signed_out, restored):
    response = signed_out.post("/sign-in/", {"name": "none", "passphrase": "otter violin"})
    assert response.status_code == (302 if ON_SQLITE else 422)
    assert "otter violin" not in response.content.decode()


@pytest.mark.django_db(transaction=True)
def test_nobody_else_writes_between_looking_at_the_school_and_a_lone_write(owner):
    turns: list[tuple[str, bool]] = []

    def look_for_a_turn(execute, sql, params, many, context):
        if sql.startswith(restored_meanwhile.WRITES):
            turns.append((sql.split()[0], free_for_another_writer()))
        return execute(sql, params, many, context)

    epoch = School.objects.get().epoch.hex
    with (
        connection.execute_wrapper(restored_meanwhile.WritesOnlyTo(epoch)),
        connection.execute_wrapper(look_for_a_turn),
    ):
        owner.display_name = "Ota Two"
        owner.save()
        made = User.objects.create(sign_in_name="new", display_name="New Nora")
    if ON_SQLITE:
        assert turns == [("UPDATE", False), ("INSERT", False)]
        assert free_for_another_writer()
        assert not connection.connection.in_transaction
    assert User.objects.get(pk=made.pk).display_name == "New Nora"


def free_for_another_writer() -> bool:
    """Whether another connection may write now; PostgreSQL has no such turn."""
    if not ON_SQLITE:
        return False
    with closing(sqlite3.connect(connection.settings_dict["NAME"], timeout=0, isolation_level=None)) as other:
        try:
            other.execute("BEGIN IMMEDIATE")
        except sqlite3.OperationalError:
            return False
        other.execute("ROLLBACK")
        return True
