"""Every page, CSV, JSON and PDF that links lead to in the demo school, and what stands behind the private addresses, as each
who should not meet the words planted there."""

import pytest
from django.test import Client
from django.utils import timezone

from accounts.models import User
from grade_bands.actions import load_standards
from routines.demo.build import make_demo_school
from tests.access.crawling import crawl
from tests.access.planting import LOOKING, Planted, plant
from tests.fuzz.asking import without_log
from tests.fuzz.found import view_of
from tests.routines.lessons.making import paired
from tests.routines.printed import pango

__all__ = ["pango"]
pytestmark = pytest.mark.django_db


@pytest.fixture(scope="module")
def planted(undone_school) -> Planted:
    make_demo_school(today=timezone.localdate(), load_standards=load_standards, told=lambda line: None)
    return plant()


def met(client: Client, begin_at: list[str]) -> tuple[dict[str, str], set[str]]:
    """All words of each address, and the names of the pages that opened."""
    texts, opened = {}, set()
    with without_log():
        for address, text, status in crawl(client, begin_at):
            assert status < 500, address
            texts[address] = text.lower()
            if status == 200:
                opened.add(view_of(address))
    return texts, opened


def wrongly_told(texts: dict[str, str], planted: Planted, role: str) -> list[str]:
    return [
        f"{word} at {address}"
        for address, text in texts.items()
        if "zq" in text
        for word, readers in planted.readers.items()
        if word in text
        and (role not in readers or not view_of(address).startswith(planted.only_on.get((word, role), "")))
    ]


@pytest.mark.parametrize("role", LOOKING)
def test_nobody_meets_what_is_not_hers(role, planted, pango):
    client = Client(SERVER_NAME="localhost")
    client.force_login(User.objects.get(sign_in_name=LOOKING[role]), backend="accounts.backends.NameOrEmailBackend")
    texts, opened = met(client, ["/", *planted.addresses])
    assert wrongly_told(texts, planted, role) == []
    everything = " ".join(texts.values())
    hers = {word for word, readers in planted.readers.items() if role in readers}
    assert {word for word in hers if word not in everything} == set(), "the crawl does not come where these stand"
    assert {"home", "bank", "routine", "coverage", "coverage_csv", "coverage_pdf", "print_pdf plan"} <= opened
    assert len(texts) > 150


def test_a_board_hears_of_its_grid_alone(planted):
    client = paired(Client(SERVER_NAME="localhost"), planted.on_now)
    texts, opened = met(client, ["/", *planted.addresses])
    assert wrongly_told(texts, planted, "board") == []
    assert opened == {"lesson_board", "lesson_board_json", "lesson_events"}


def test_the_signed_out_hear_of_nothing(planted):
    texts, opened = met(Client(SERVER_NAME="localhost"), ["/", *planted.addresses])
    assert wrongly_told(texts, planted, "signed_out") == []
    assert opened <= {"accounts:sign_in", "accounts:recover", "board_wait", "board_code", "favicon"}
