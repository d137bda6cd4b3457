"""What a first visit costs: few styles and scripts a page, and a bank page that is light on a school's line."""

import gzip
import re

import pytest
from django.urls import reverse

from tests.routines.lessons.making import open_lesson
from tests.routines.making import make_lesson, make_routine

AT_MOST = 4
LIGHT = 40 * 1024
CARDS = 24


@pytest.fixture
def addresses(owner) -> dict[str, str]:
    routine = make_routine(owner)
    taught = open_lesson(owner, routine=routine)
    pages = {name: reverse(name) for name in ("bank", "my_plans", "plan_new", "lessons", "coverage")}
    return pages | {
        "routine": reverse("routine", args=[routine.pk]),
        "plan": reverse("plan_edit", args=[routine.pk]),
        "print": reverse("print", args=[routine.pk]),
        "board": reverse("lesson_board", args=[taught.key]),
        "lectern": reverse("lesson_lectern", args=[taught.key]),
        "lesson": reverse("lesson", args=[make_lesson(routine, owner).key]),
    }


def test_no_page_asks_for_more_than_four_styles_or_scripts(client, owner, addresses):
    client.force_login(owner)
    for name, address in addresses.items():
        page = client.get(address, follow=True)
        assert page.status_code == 200, name
        text = page.content.decode()
        assert len(re.findall(r'<link rel="stylesheet"', text)) <= AT_MOST, name
        assert 1 <= len(re.findall(r"<script[^>]* src=", text)) <= AT_MOST, name


def test_a_bank_page_full_of_cards_is_light(client, owner):
    for number in range(CARDS):
        make_routine(owner, title=f"A count with a rather long title, number {number} of the year")
    client.force_login(owner)
    page = client.get(reverse("bank"))
    assert page.content.decode().count('class="card"') == CARDS
    assert len(gzip.compress(page.content, 6)) < LIGHT
