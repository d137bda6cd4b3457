"""A request that is under way while a backup is put back: asked again, with nothing saved and what was typed kept.

PostgreSQL is not restored under a running server, so there requests go on as ever. (With real processes:
test_restoring_under_a_server.py.)
"""

import sqlite3
from collections.abc import Callable
from contextlib import closing, nullcontext
from typing import Any

import pytest
from django.db import IntegrityError, connection
from django.utils import timezone

from accounts.models import CodeTries, School, User
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


def restore_before(statement: str, refused: list[str]) -> Callable[..., Any]:
    """Wraps the database: just before such a statement another process puts a backup back, if it is let in."""

    def wrapper(execute, sql, params, many, context):
        if sql.startswith(statement) and "accounts_" in sql:
            with closing(sqlite3.connect(connection.settings_dict["NAME"], timeout=0)) as other:
                try:
                    other.execute("UPDATE accounts_school SET epoch = ?", ["0" * 32])
                    other.commit()
                except sqlite3.OperationalError as error:
                    refused.append(str(error))
        return execute(sql, params, many, context)

    return wrapper


@pytest.mark.django_db(transaction=True)
@pytest.mark.parametrize("statement", ["UPDATE", "INSERT", "DELETE"])
def test_no_restore_comes_between_the_look_and_the_write(owner, statement):
    epoch = School.objects.get().epoch
    refused = []
    with (
        connection.execute_wrapper(restored_meanwhile.WritesOnlyTo(epoch.hex)) if ON_SQLITE else nullcontext(),
        connection.execute_wrapper(restore_before(statement, refused)) if ON_SQLITE else nullcontext(),
    ):
        User.objects.filter(pk=owner.pk).update(display_name="Ota Two")
        made = CodeTries(address="192.0.2.7", since=timezone.now())
        made.save()
        assert CodeTries.objects.get(pk=made.pk).address == "192.0.2.7"
        CodeTries.objects.filter(pk=made.pk)._raw_delete(using="default")
    assert refused == (["database is locked"] if ON_SQLITE else [])
    assert School.objects.get().epoch == epoch
    assert not CodeTries.objects.exists()


@pytest.mark.django_db(transaction=True)
def test_a_write_that_fails_leaves_nothing_open(owner):
    only = restored_meanwhile.WritesOnlyTo(School.objects.get().epoch.hex)
    with connection.execute_wrapper(only) if ON_SQLITE else nullcontext():
        with pytest.raises(IntegrityError):
            User.objects.filter(pk=owner.pk).update(sign_in_name="no@name")
        assert not ON_SQLITE or not connection.connection.in_transaction
        User.objects.filter(pk=owner.pk).update(display_name="Ota Two")
    assert User.objects.get(pk=owner.pk).display_name == "Ota Two"
