"""The access table, cell by cell: each address, whatever stands behind it, asked by everybody in every way of asking."""

from collections.abc import Iterator
from http.cookies import SimpleCookie

import pytest
from django.http import HttpResponse
from django.test import Client
from django.urls import URLPattern, URLResolver, get_resolver, reverse

from routines.models import Lesson
from tests.access.table import EVERYBODY, IN_A_LESSON, PEOPLE, SIGNED_OUT, TABLE, WAITING, Cell
from tests.fuzz.asking import pass_to, undone, without_log

pytestmark = pytest.mark.django_db

SENT = {
    "plan_change": {"change": "stops.add"},
    "plan_restore": {"number": "1"},
    "lesson_events": {"v": 1, "events": []},
}
PARTS = {"print_html": {"name": "plan"}, "print_pdf": {"name": "plan"}, "plan_part": {"name": "stops"}}


def every_address(resolver: URLResolver, route: str = "", space: str = "") -> Iterator[str]:
    """Each address by the name of its rule."""
    for entry in resolver.url_patterns:
        whole = route + str(entry.pattern)
        if isinstance(entry, URLPattern):
            new = " new" if whole.startswith("plans/new/<") else ""
            yield f"{space}{entry.name}{new}"
        else:
            yield from every_address(entry, whole, f"{entry.namespace}:" if entry.namespace else space)


def test_every_address_has_a_rule_and_every_rule_an_address():
    assert sorted(every_address(get_resolver())) == sorted(TABLE)


@pytest.fixture(scope="module")
def browsers(cast, things) -> dict[str, SimpleCookie]:
    """The cookies of everybody, by role."""
    held: dict[str, SimpleCookie] = {}
    for role in EVERYBODY:
        client = Client(SERVER_NAME="localhost")
        if role in PEOPLE:
            client.force_login(cast[role], backend="accounts.backends.NameOrEmailBackend")
        held[role] = client.cookies
    lesson = Lesson.objects.get(key=things["lesson_on_now"]["key"])
    for role in IN_A_LESSON:
        held[role] = SimpleCookie(pass_to(lesson, role))
    waiting = Client(SERVER_NAME="localhost")
    waiting.get(reverse("board_wait"))
    held["waiting_device"] = waiting.cookies
    return held


@pytest.fixture
def ask(browsers):
    def answer(role: str, method: str, address: str, sent: dict[str, object]) -> HttpResponse:
        client = Client(SERVER_NAME="localhost")
        client.cookies = SimpleCookie(browsers[role].output(header="", sep=";"))
        with undone(), without_log():
            if method != "post":
                return getattr(client, method)(address)
            return client.post(address, sent, **({"content_type": "application/json"} if "events" in sent else {}))

    return answer


CELLS = [(name, cell) for name, cells in TABLE.items() for cell in cells]


@pytest.mark.parametrize(("name", "cell"), CELLS, ids=[f"{name}-{cell.thing}" for name, cell in CELLS])
def test_one_cell(name: str, cell: Cell, ask, things):
    view = name.removesuffix(" new")
    address = reverse(view, kwargs={**things[cell.thing], **PARTS.get(view, {})})
    wrong = []
    for role in sorted(EVERYBODY):
        for method in ("get", "head", "post"):
            is_hers = role in cell.open_to(method)
            expected = ("gets it",) if is_hers else refused(role, cell)
            answer = ask(role, method, address, SENT.get(view, {}))
            if answer.status_code == 405:
                continue
            if told(answer) not in expected or (not is_hers and b"planted" in answer.content.lower()):
                wrong.append(f"{role} {method}: {told(answer)} ({answer.status_code}), not: {expected[0]}")
    assert wrong == []


def refused(role: str, cell: Cell) -> tuple[str, ...]:
    if role in SIGNED_OUT | WAITING:
        return (
            ("finds nothing",)
            if cell.allowed == WAITING
            else ("signs in first", "finds nothing")[: 1 + (role in WAITING)]
        )
    return ("is told it is not hers",) if role in cell.seen else ("finds nothing",)


def told(answer: HttpResponse) -> str:
    """What an answer is to who asked."""
    if answer.status_code == 401 or answer.get("Location", "").startswith(reverse("accounts:sign_in") + "?"):
        return "signs in first"
    return {403: "is told it is not hers", 404: "finds nothing"}.get(answer.status_code, "gets it")
