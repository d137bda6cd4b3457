"""Which picture, and which dozen of its terms, an address asks for; and the section of the routine page that shows it."""

import re

import pytest
from django.urls import reverse

from routines.bank.shown_picture import HOW_TO_READ, shown_picture
from routines.counting import Count
from tests.routines.making import make_routine

MONEY = Count("money", 5, 10, 30)


@pytest.mark.parametrize("asked", [{}, {"picture": "clock"}, {"picture": "<svg>"}, {"picture": ""}])
def test_what_is_not_known_is_the_best_picture(asked: dict[str, str]) -> None:
    assert shown_picture(MONEY, asked).kind == "coins"


def test_a_chosen_picture_is_shown() -> None:
    picture = shown_picture(MONEY, {"picture": "line"})
    assert (picture.kind, picture.label) == ("line", "Number line")


@pytest.mark.parametrize(
    ("first", "shown"),
    [
        ("", (1, 12)), ("1", (1, 12)), ("13", (13, 24)), ("25", (25, 30)), ("30", (30, 30)), ("31", (1, 12)),
        ("0", (1, 12)), ("-3", (1, 12)), ("x", (1, 12)), ("9" * 5000, (1, 12)), ("٣", (1, 12)),
    ],
)  # fmt: skip
def test_a_dozen_begins_where_asked_and_nonsense_is_the_first(first: str, shown: tuple[int, int]) -> None:
    picture = shown_picture(MONEY, {"first": first})
    assert (picture.first, picture.last) == shown


def test_the_dozens_lead_round() -> None:
    starts = [1]
    for _ in range(3):
        starts.append(shown_picture(MONEY, {"first": str(starts[-1])}).after)
    assert starts == [1, 13, 25, 1]
    back = [1]
    for _ in range(3):
        back.append(shown_picture(MONEY, {"first": str(back[-1])}).before)
    assert back == [1, 25, 13, 1]


def test_a_dozen_or_less_needs_no_way_on() -> None:
    assert not shown_picture(Count("money", 5, 10, 12), {}).has_more
    assert shown_picture(Count("money", 5, 10, 13), {}).has_more


@pytest.mark.parametrize(
    "kind", ["whole", "decimal", "fraction", "length", "mass", "capacity", "money", "clock", "elapsed"]
)
def test_every_picture_says_how_to_read_it(kind: str) -> None:
    picture = shown_picture(Count(kind, 1, 1, 12), {})
    assert {name for name, _ in picture.choices} <= set(HOW_TO_READ)
    assert picture.how_to_read.endswith((".", "?"))


def page_of(routine, client, query="", **headers):
    return client.get(reverse("routine", args=[routine.pk]) + query, headers=headers)


def test_the_page_shows_the_count_another_way_with_plain_links(owner, visit) -> None:
    page = page_of(make_routine(owner), visit(owner), "?lit=p1").text
    assert "Pictures" in page
    assert 'data-picture="line"' in page
    assert 'href="?lit=p1&amp;picture=line&amp;first=13#pictures"' in page


def test_htmx_gets_the_pictures_alone(owner, visit) -> None:
    answer = page_of(
        make_routine(owner), visit(owner), "?picture=line&first=13", **{"HX-Request": "true", "HX-Target": "pictures"}
    )
    assert "<html" not in answer.text
    assert 'id="pictures"' in answer.text
    assert 'id="lit-grid"' not in answer.text
    assert "Counts 13 to " in answer.text


def test_a_draft_is_no_picture_for_others(owner, teammate, visit) -> None:
    draft = make_routine(owner, shared=False)
    answer = page_of(draft, visit(teammate), "?picture=line", **{"HX-Request": "true", "HX-Target": "pictures"})
    assert answer.status_code == 404


def test_no_id_stands_twice_on_the_page(owner, visit) -> None:
    ids = re.findall(r'\bid="([^"]+)"', page_of(make_routine(owner), visit(owner)).text)
    assert len(ids) == len(set(ids))
