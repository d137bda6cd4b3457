"""What is said to be kept, held to what there is: every column of people's words has its row, on the page and in the README."""

from collections import Counter
from datetime import timedelta
from pathlib import Path

import pytest
from axes.models import AccessAttempt
from django.conf import settings
from django.test import Client
from django.urls import reverse
from django.utils import timezone

from accounts.models.one_time_link import LIFETIME
from config.backups import KEEP
from routines.models.job import KEPT as JOBS_KEPT
from routines.models.people_words import ALL
from routines.own_words.what_is_kept import KEPT
from tests.factories import UserFactory

PASSPHRASE = "otter violin sandwich moon"


def in_the_readme() -> str:
    head = ["| what | for how long | who reads it |", "| --- | --- | --- |"]
    return "\n".join(head + [f"| {row.what} | {row.how_long} | {row.who_reads} |" for row in KEPT])


def test_every_column_of_peoples_words_stands_in_one_row():
    told = Counter(column for row in KEPT for column in row.columns)
    assert set(told) == {str(column) for column in ALL}
    assert set(told.values()) == {1}


def test_the_readme_says_the_same():
    assert in_the_readme() in (Path(settings.BASE_DIR) / "README.md").read_text(encoding="utf-8")


def test_the_times_are_those_of_the_program():
    assert {row.how_long for row in KEPT} >= {"An hour"}
    assert timedelta(hours=1) == JOBS_KEPT
    assert timedelta(days=7) == LIFETIME
    assert KEEP == 14


@pytest.mark.parametrize("passphrase", [PASSPHRASE, "not that one at all"])
def test_a_wrong_try_to_sign_in_is_gone_after_a_quarter_of_an_hour_when_somebody_signs_in_or_tries_to(
    school, passphrase
):
    UserFactory(sign_in_name="moreno", passphrase=PASSPHRASE)
    Client().post("/sign-in/", {"name": "somebody else", "passphrase": "what I typed"})
    assert "what I typed" not in str(list(AccessAttempt.objects.values()))
    AccessAttempt.objects.update(attempt_time=timezone.now() - timedelta(minutes=16))
    Client().post("/sign-in/", {"name": "moreno", "passphrase": passphrase})
    assert not AccessAttempt.objects.filter(username="somebody else").exists()


def test_the_page_is_open_to_everyone_signed_in_and_every_page_leads_there(
    owner, coach, administrator, visit, signed_out
):
    address = reverse("what_is_kept")
    for person in (owner, coach, administrator):
        client = visit(person)
        page = client.get(address)
        assert page.status_code == 200
        assert all(str(row.what) in page.text.replace("&#x27;", "'") for row in KEPT)
        for other in ("home", "bank", "accounts:own_account"):
            assert address in client.get(reverse(other)).text
    assert signed_out.get(address).status_code == 302
    assert address not in signed_out.get(reverse("accounts:sign_in")).text
