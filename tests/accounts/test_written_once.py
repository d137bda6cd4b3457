"""Remembered pieces of pages: which values are the same piece, what may be none, and how much is remembered."""

from dataclasses import dataclass
from datetime import UTC, datetime

import pytest
from django.db import connection
from django.test.utils import CaptureQueriesContext
from django.urls import reverse
from django.utils import timezone

from accounts import written_once as pieces
from accounts.models import User
from accounts.templatetags.pieces import TOKEN_FIELD
from accounts.written_once import Later, Remembered, written_once

PIECE = "accounts/piece_of_a_test.html"
TEXT = "{% load dates %}{{ name }}, {{ at|moment }}, {{ says }}"


@dataclass(frozen=True)
class Hidden:
    says: Later


@pytest.fixture
def written(settings, monkeypatch) -> list[str]:
    """The texts of a piece that were really written."""
    loaders = [("django.template.loaders.locmem.Loader", {PIECE: TEXT})]
    engine = {**settings.TEMPLATES[0], "APP_DIRS": False, "OPTIONS": {"loaders": loaders}}
    settings.TEMPLATES = [engine]
    texts: list[str] = []
    write = pieces.write

    def watched(*args, **values):
        texts.append(write(*args, **values))
        return texts[-1]

    monkeypatch.undo()  # what compares in every test, and would write here too
    monkeypatch.setattr(pieces, "write", watched)
    return texts


@pytest.fixture
def monkeypatch():
    """One of this test alone."""
    with pytest.MonkeyPatch.context() as patch:
        yield patch


NOON = datetime(2026, 11, 29, 12, tzinfo=UTC)


def test_the_same_values_are_written_once(written):
    given = [written_once(PIECE, name="Ota & co", at=NOON) for _ in range(3)]
    assert given == ["Ota &amp; co, November 29, 2026, 12:00\u00a0PM, "] * 3
    assert len(written) == 1
    assert all(hasattr(text, "__html__") for text in given)


def test_other_values_another_language_and_another_time_zone_are_other_pieces(written, settings):
    written_once(PIECE, name="Ota", at=NOON)
    assert written_once(PIECE, name="Cole", at=NOON).startswith("Cole")
    settings.LANGUAGE_CODE = "es"
    assert "noviembre" in written_once(PIECE, name="Ota", at=NOON)
    settings.LANGUAGE_CODE = "en"
    with timezone.override("Asia/Tokyo"):
        assert "9:00\u00a0PM" in written_once(PIECE, name="Ota", at=NOON)
    assert len(written) == 4


def test_what_comes_later_is_known_by_its_mark_and_read_when_it_is_written(written):
    read: list[str] = []

    def says(mark: str) -> Later[str]:
        return Later(mark, lambda: read.append(mark) or f"says {mark}")

    texts = [written_once(PIECE, says=says(mark)) for mark in ("one", "one", "other", "one")]
    assert [text.rpartition(", ")[2] for text in texts] == ["says one", "says one", "says other", "says one"]
    assert read == ["one", "other"]


def test_what_cannot_be_written_is_not_remembered(written):
    def fails() -> str:
        raise LookupError("unreadable")

    for _ in range(2):
        with pytest.raises(LookupError):
            written_once(PIECE, says=Later("one", fails))
    assert written_once(PIECE, says=Later("one", lambda: "read")).endswith("read")


@pytest.mark.parametrize(
    "value",
    [User(pk=1), ["a list"], {"a": "dict"}, Hidden(Later("one", str)), (Later("one", str),)],
    ids=["a row", "a list", "a dict", "what hides a later one", "a later one in a tuple"],
)
def test_what_may_change_is_refused(value, written):
    with pytest.raises(TypeError):
        written_once(PIECE, name=value)


def test_the_piece_used_last_stays():
    memory = Remembered(10 * (100 + pieces.KEY_BYTES))
    for number in range(10):
        memory.put(number, b"x" * 100)
    assert memory.get(0)
    memory.put(10, b"x" * 100)
    assert [number for number in range(11) if memory.get(number) is None] == [1]


def test_no_more_is_remembered_than_there_is_room_for():
    memory = Remembered(100_000)
    for number in range(500):
        memory.put(number % 70, b"x" * (number * 37 % 10_000))
        kept = [text for key in range(70) if (text := memory.get(key)) is not None]
        assert memory.size == sum(map(len, kept)) + pieces.KEY_BYTES * len(kept) <= 100_000
    memory.put("large", b"x" * 10_001)
    assert memory.get("large") is None
    memory.clear()
    assert memory.size == 0


def test_each_page_has_its_own_token_in_the_remembered_head(owner, visit):
    """A form of the menu is sent with it, and what stands for it is on no page."""
    client = visit(owner)
    client.handler.enforce_csrf_checks = True
    first, second = (client.get(reverse("bank")) for _ in range(2))
    assert TOKEN_FIELD not in first.text + second.text
    tokens = [answer.text.split('name="csrfmiddlewaretoken" value="')[1].split('"')[0] for answer in (first, second)]
    assert tokens[0] != tokens[1]
    assert first.text.count(tokens[0]) == 3  # two forms of the menu, and the header of live parts
    assert client.post(reverse("accounts:sign_out"), {"csrfmiddlewaretoken": tokens[1]}).status_code == 302


def test_the_head_is_that_of_the_reader_of_today(owner, administrator, school, visit):
    client = visit(owner)
    assert client.get(reverse("bank")).text.count(owner.display_name) == 3
    assert reverse("accounts:school") not in client.get(reverse("bank")).text
    assert reverse("accounts:school") in visit(administrator).get(reverse("bank")).text
    owner.display_name, school.name = "<Another> Name", "Another School"
    owner.save()
    school.save()
    page = client.get(reverse("bank")).text
    assert ">Another School<" in page
    assert ">&lt;Another&gt; Name<" in page
    assert "Owner Ota, " not in page


def test_a_remembered_page_asks_for_nothing_that_is_kept(owner, visit):
    from tests.routines.making import make_routine

    pk = make_routine(owner).pk
    client = visit(owner)
    for address in (reverse("bank"), reverse("routine", args=[pk])):
        client.get(address)
        with CaptureQueriesContext(connection) as queries:
            client.get(address)
        assert not [query for query in queries.captured_queries if "routines_workedout" in query["sql"]]
