"""A request that is under way while a backup is put back: asked again, with nothing saved and what was typed kept.

PostgreSQL is not restored under a running server, so there requests go on as ever. (With real processes:
test_restoring_under_a_server.py.)
"""

import pytest
from django.db import connection

from accounts.models import User
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
