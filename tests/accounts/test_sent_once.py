"""A form with a key is kept once."""

import re
from datetime import timedelta
from threading import Event
from uuid import uuid4

import pytest
from django.contrib.messages.storage.fallback import FallbackStorage
from django.core.files.uploadedfile import SimpleUploadedFile
from django.db import IntegrityError, transaction
from django.template import Context, Template
from django.test import RequestFactory
from django.utils import timezone

from accounts.models import SentForm, User
from accounts.sent_once import SentBefore, answer_again, content_of, keep_once
from tests.at_once import at_once
from tests.factories import UserFactory


def sent(person: User, fields: dict, path: str = "/notes/"):
    request = RequestFactory().post(path, fields)
    request.user, request.session = person, {}
    request._messages = FallbackStorage(request)
    return request


def maker(made: list[str], name: str = "first"):
    def make() -> str:
        made.append(name)
        return f"/made/{name}/"

    return make


def test_a_page_gives_each_form_a_key_of_its_own():
    page = Template("{% load form_key %}{% form_key %}{% form_key %}").render(Context())
    keys = re.findall(r'<input type="hidden" name="form_key" value="([0-9a-f-]{36})" autocomplete="off">', page)
    assert len(set(keys)) == 2


@pytest.mark.django_db
def test_the_same_form_again_leads_to_what_the_first_made(owner):
    made, fields = [], {"form_key": uuid4(), "text": "Tens go up"}
    answers = [keep_once(sent(owner, fields), maker(made)), keep_once(sent(owner, fields), maker(made, "second"))]
    assert made == ["first"]
    assert [answer["Location"] for answer in answers] == ["/made/first/", "/made/first/"]


@pytest.mark.django_db
def test_a_form_in_its_own_way_is_answered_all_the_same(owner):
    fields = {"form_key": uuid4(), "text": "Tens go up"}
    assert answer_again(sent(owner, fields)) is None
    keep_once(sent(owner, fields), maker([]))
    assert answer_again(sent(owner, fields))["Location"] == "/made/first/"
    assert answer_again(sent(owner, {**fields, "text": "Something else"})) is None


@pytest.mark.django_db
@pytest.mark.parametrize("key", [{}, {"form_key": ""}, {"form_key": "no key"}])
def test_a_form_without_a_key_is_kept_as_often_as_it_comes(owner, key):
    made = []
    for _time in range(2):
        keep_once(sent(owner, {"text": "Tens go up", **key}), maker(made))
    assert made == ["first", "first"]
    assert not SentForm.objects.exists()


@pytest.mark.django_db
@pytest.mark.parametrize("change", [{"text": "Other words"}, {"more": "one more field"}])
def test_other_words_under_the_same_key_are_told_apart_and_nothing_is_written(owner, change):
    made, fields = [], {"form_key": uuid4(), "text": "Tens go up"}
    keep_once(sent(owner, fields), maker(made))
    with pytest.raises(SentBefore) as before:
        keep_once(sent(owner, {**fields, **change}), maker(made, "second"))
    assert before.value.address == "/made/first/"
    assert made == ["first"]


@pytest.mark.django_db
def test_a_new_token_makes_no_other_form(owner):
    made, fields = [], {"form_key": uuid4(), "text": "Tens go up"}
    for token in ("one", "two"):
        keep_once(sent(owner, {**fields, "csrfmiddlewaretoken": token}), maker(made))
    assert made == ["first"]


@pytest.mark.django_db
def test_a_key_of_one_person_is_nothing_to_another(owner, teammate):
    made, fields = [], {"form_key": uuid4(), "text": "Tens go up"}
    for person in (owner, teammate):
        keep_once(sent(person, fields), maker(made, person.sign_in_name))
    assert made == ["owner", "teammate"]


@pytest.mark.django_db
def test_a_try_that_failed_does_not_burn_the_key(owner):
    made, fields = [], {"form_key": uuid4(), "text": "Tens go up"}

    def fail() -> str:
        raise IntegrityError("taken meanwhile")

    with pytest.raises(IntegrityError):
        keep_once(sent(owner, fields), fail)
    keep_once(sent(owner, fields), maker(made))
    assert made == ["first"]


@pytest.mark.django_db
def test_the_words_are_not_stored(owner):
    keep_once(sent(owner, {"form_key": uuid4(), "text": "Tens go up"}), maker([]))
    row = SentForm.objects.get()
    assert re.fullmatch("[0-9a-f]{64}", row.content)
    assert row.made == {"address": "/made/first/"}


@pytest.mark.django_db
def test_old_keys_are_cleaned_up(owner):
    SentForm.objects.create(person=owner, key=uuid4(), sent_at=timezone.now() - timedelta(days=121))
    young = SentForm.objects.create(person=owner, key=uuid4(), sent_at=timezone.now() - timedelta(days=119))
    keep_once(sent(owner, {"form_key": uuid4()}), maker([]))
    assert set(SentForm.objects.exclude(made={"address": "/made/first/"})) == {young}


@pytest.mark.django_db(transaction=True)
@pytest.mark.parametrize("first_fails", [False, True])
def test_of_two_at_once_the_second_waits_until_the_first_is_through(first_fails):
    """On PostgreSQL the second stands at the unique key while the first is not committed, on SQLite at its start."""
    person, key = UserFactory(), uuid4()
    claimed, order = Event(), []

    def first():
        with transaction.atomic():
            _row, is_first = SentForm.objects.claim(person=person, key=key)
            claimed.set()
            Event().wait(0.5)  # long enough for the second to arrive
            order.append("first through")
            transaction.set_rollback(first_fails)
        return is_first

    def second():
        claimed.wait(10)
        with transaction.atomic():
            _row, is_first = SentForm.objects.claim(person=person, key=key)
            order.append("second through")
        return is_first

    assert at_once(first, second) == [True, first_fails]
    assert order == ["first through", "second through"]
    assert SentForm.objects.count() == 1


@pytest.mark.django_db(transaction=True)
def test_eight_at_once_make_one():
    person, made = UserFactory(), []
    fields = {"form_key": uuid4(), "text": "Tens go up"}
    answers = at_once(*[lambda: keep_once(sent(person, fields), maker(made))["Location"]] * 8)
    assert answers == ["/made/first/"] * 8
    assert made == ["first"]


def test_every_file_of_a_field_is_part_of_what_was_sent():
    def content(*names: str) -> str:
        files = [SimpleUploadedFile(name, b"[]") for name in names]
        return content_of(RequestFactory().post("/notes/", {"file": files}))

    assert content("first.json", "last.json") == content("first.json", "last.json")
    assert content("first.json", "last.json") != content("other.json", "last.json")
