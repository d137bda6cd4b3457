"""Numbers that are none, or too long for any use, in every path, query and field: no address answers with an error of ours.

The addresses are those of the URLconf, so that a new one is walked without being listed here.
"""

import re

import pytest
from django.test import Client
from django.urls import URLPattern, get_resolver

from routines.plans.forms.draft import ROWS
from tests.factories import StandardFactory
from tests.routines.making import make_lesson, make_routine
from tests.routines.plan_sheets import answer_fields, sheet, stop_fields

ODD_NUMBERS = {
    "past Python's own limit": "9" * 5_000,
    "just within it": "9" * 4_299,
    "beyond 64 bits": "9" * 20,
    "the last of 64 bits": str(2**63 - 1),
    "below zero": "-" + "9" * 30,
    "other digits": "٣",
    "a digit that is no number": "²",
    "an exponent": "1e999",
    "a fraction": "1/0",
    "nothing": "",
}
PLAN_ROWS = [f"{section}-{number}-{name}" for section, names in ROWS.items() for number in (0, 999) for name in names]
FIELDS = [
    *(
        "page",
        "first",
        "owner",
        "grade",
        "q",
        "standard",
        "picture",
        "lit",
        "title",
        "kind",
        "from",
        "language",
        "amount",
    ),
    *(
        "start",
        "step",
        "terms",
        "line_length",
        "lead",
        "fill",
        "based_on",
        "rounds",
        "tapped",
        "ask_value",
        "ask_probe",
    ),
    *(
        "style-over",
        "style-places",
        "style-clock",
        "story_group",
        "story_goal",
        "landmark",
        "target",
        "words_of",
        "notes",
    ),
    *(
        "theirs",
        "number",
        "leave",
        "person",
        "routine",
        "contents",
        "class_group",
        "taught_on",
        "slips",
        "target-0",
        "lesson",
    ),
    *(
        "starts_at",
        "last",
        "demo_person",
        "kept",
        "year_starts_day",
        "year_starts_month",
        "order",
        "level",
        "band",
        "year",
    ),
    *(
        "teachers",
        "levels",
        "starts_on",
        "ends_on",
        "role",
        "clock",
        "lit_before",
        "kind_before",
        "shown_before",
        "all_found",
        "do",
    ),
    *(
        f"claim-{name}"
        for name in ("saying", "reading", "digits", "where", "line", "jump", "multiple", "lie", "many", "rest")
    ),
    *(f"design-{name}" for name in ("start_low", "start_high", "step_low", "step_high", "grain", "multiple")),
    *(f"design-{name}" for name in ("length_low", "length_high", "terms_low", "terms_high", "before", "off")),
    *PLAN_ROWS,
]
CHANGES = ("stops.remove.{}", "expected.remove.{}", "next.remove.{}", "stops.add", "expected.add", "standards.add {}")


def addresses(patterns=None, before: str = "") -> list[str]:
    """Every route, as the URLconf writes it."""
    found = []
    for entry in get_resolver().url_patterns if patterns is None else patterns:
        route = before + str(entry.pattern)
        found += [route] if isinstance(entry, URLPattern) else addresses(entry.url_patterns, route)
    return found


def filled(route: str, values: dict[str, str]) -> str:
    """A route with its parts filled in: by the name of the part, else by its converter."""
    return "/" + re.sub(r"<(\w+):(\w+)>", lambda part: values.get(part[2], values.get(part[1], "x")), route)


@pytest.fixture
def known(owner, teammate, administrator, visit, settings, school) -> dict[str, str]:
    """Parts of addresses that lead to something."""
    settings.DEMO = True
    school.is_demo = True
    school.save()
    routine = make_routine(owner, co_authors=[teammate])
    lesson = make_lesson(routine, owner)
    return {
        "pk": str(routine.pk),
        "key": str(lesson.key),
        "grade": str(routine.grade_id),
        "area": "whole",
        "standard": str(StandardFactory(grade=routine.grade).pk),
        "name": "says",
    }


@pytest.fixture
def people(owner, administrator, visit) -> list[Client]:
    return [visit(owner), visit(administrator), Client()]


ROUTES = addresses()
# Those that break different things: reading, storing, and what looks like a digit.
WALKED = {
    name: ODD_NUMBERS[name] for name in ("past Python's own limit", "beyond 64 bits", "a digit that is no number")
}
walked = pytest.mark.parametrize("odd", WALKED.values(), ids=WALKED)


@pytest.fixture(autouse=True)
def nothing_is_printed(monkeypatch) -> None:
    monkeypatch.setattr("routines.paper.press.PrintingProcess.pdf", lambda *given, **named: b"%PDF")


def fine(response) -> bool:
    return response.status_code < 500


@walked
def test_odd_numbers_in_paths_lead_nowhere(odd, people, known):
    paths = {filled(route, {**known, part: odd}) for route in ROUTES for part in re.findall(r"<\w+:(\w+)>", route)}
    assert len(paths) > 40
    for path in paths:
        for client in people[:2]:
            assert fine(client.get(path)), path
            assert fine(client.post(path)), path


@walked
def test_odd_numbers_in_queries_are_answered(odd, people, known):
    query = dict.fromkeys(FIELDS, odd[:5_000])
    for path in {filled(route, known) for route in ROUTES}:
        for client in people:
            assert fine(client.get(path, query)), path


@walked
def test_odd_numbers_in_every_field_are_answered(odd, people, known):
    for path in {filled(route, known) for route in ROUTES}:
        for client in people:
            assert fine(client.post(path, dict.fromkeys(FIELDS, odd))), path


@pytest.mark.parametrize("odd", ODD_NUMBERS.values(), ids=ODD_NUMBERS)
def test_an_odd_number_is_no_demo_person(odd, known):
    assert Client(SERVER_NAME="localhost").post("/sign-in/", {"demo_person": odd, "next": "/"}).status_code == 404


@walked
def test_one_odd_number_in_a_plan_that_is_right_otherwise_is_answered(odd, known, visit, owner):
    """The other fields are fine, so that reading does not end at the first one that is not."""
    client, whole = visit(owner), {**sheet(), **stop_fields(0, 6, "What next?"), **answer_fields(0, "By fours")}
    at = f"/routines/{known['pk']}/edit/"
    for name in (
        "terms",
        "line_length",
        "lead",
        "start",
        "step",
        "stops-0-after",
        "stops-0-think",
        "expected-0-n",
        "based_on",
    ):
        for asked in (at, f"{at}preview/", f"{at}draft/", f"{at}part/stops/"):
            assert fine(client.post(asked, {**whole, "expected-0-sort": "slip", name: odd})), (asked, name)
        for change in CHANGES:
            assert fine(client.post(f"{at}change/", {**whole, name: odd, "change": change.format(odd)})), (change, name)
    for part in ("claim", "says", "cells", "appear", "design"):
        odd_fields = {name: odd for name in FIELDS if name.startswith(("claim-", "design-", "rounds", "tapped", "ask"))}
        assert fine(client.post(f"{at}part/{part}/", {**whole, **odd_fields})), part
        for saying in ("ends", "jump", "lands", "many", "rest"):
            assert fine(client.post(f"{at}part/{part}/", {**whole, **odd_fields, "claim-saying": saying})), (
                part,
                saying,
            )
    for json in ('{"line_length": %s}', '{"after": %s}', '{"terms": "%s"}', "[" * 100_000):
        for what in ("fold", "count", "stops.add"):
            given = json.replace("%s", odd or "0")
            assert fine(client.post(f"{at}change/", {**whole, "change": f"{what} {given}"})), what


@walked
def test_odd_ids_among_those_ticked_are_refused_beside_the_right_ones(odd, known, visit, owner, administrator):
    booklet = {"title": "Ours", "contents": "plan", "routine": [known["pk"], odd]}
    assert visit(owner).post("/booklet/", booklet).status_code in (302, 422)
    group = owner.class_groups.get()
    fields = {"name": "2 Wren", "grade": group.grade_id, "year": group.year_id, "languages": "en"}
    kept = visit(administrator).post(f"/school/classes/{group.pk}/", {**fields, "teachers": [str(owner.pk), odd]})
    assert kept.status_code in (302, 422)
    assert list(group.teachers.all()) == [owner]


def test_an_id_written_with_a_nought_before_it_is_the_same(known, visit, owner, monkeypatch):
    started = []
    monkeypatch.setattr(
        "routines.paper.views.booklets._start", lambda request, form: started.append(form) or stand_in()
    )
    booklet = {"title": "Ours", "contents": "plan", "routine": [f" 0{known['pk']}"]}
    assert visit(owner).post("/booklet/", booklet).status_code == 302
    assert [str(routine.pk) for routine in started[0].cleaned_data["routine"]] == [known["pk"]]


def stand_in():
    class Job:
        key = "00000000-0000-4000-8000-000000000000"

    return Job()


def test_text_kept_through_sign_in_may_be_nested_without_end(signed_out):
    answer = signed_out.post("/sign-in/", {"name": "owner", "passphrase": "wrong", "kept": "[" * 200_000})
    assert answer.status_code == 422
