"""The gate for text, at every address: whatever stands in a field, a file name, a cookie or a header, nothing breaks."""

import json
import re
from collections.abc import Iterator
from io import BytesIO
from urllib.parse import urlencode
from uuid import uuid4

import pytest
from django.core.files.uploadedfile import SimpleUploadedFile
from django.core.signals import request_started
from django.db import close_old_connections, transaction
from django.http import QueryDict
from django.test import Client, RequestFactory
from django.urls import URLPattern, URLResolver, get_resolver
from hypothesis import given

from accounts.text import is_text
from config.text_gate import mended_fields
from config.wsgi import pages as application
from grade_bands.models import ClassGroup
from routines.exchange.importing import hold_file
from routines.exchange.reading import read
from routines.exchange.writing import written
from routines.models import PlanDraft
from tests.accounts.test_text import ANY_TEXT
from tests.factories import StandardFactory
from tests.routines.making import SEVENS, make_lesson, make_routine


def addresses(resolver: URLResolver | None = None, before: str = "") -> Iterator[str]:
    for entry in (resolver or get_resolver()).url_patterns:
        path = before + str(entry.pattern)
        if isinstance(entry, URLPattern):
            yield path
        else:
            yield from addresses(entry, path)


ADDRESSES = sorted(set(addresses()))

# A browser can send these: controls and noncharacters. Halves of pairs come in JSON, where they are written as escapes.
ODD = "\x00 Tens\x1b go\ufdd0 up\uffff \x85\U0010ffff"
HALVES = '"\\ud800 Tens \\udc00\\u0000\\uffff"'

NAMES = """
    administrator-display_name administrator-passphrase after all_found amount answer area areas ask_probe
    ask_rule ask_value author back band based_on by_when change claim-digits claim-jump class_group cleaned code contents
    count csrfmiddlewaretoken currency current demo_person display_name do email ends_on expected-0-n
    expected-0-reply expected-0-sort expected-0-words fill first framework from grade into_bank kept key kind
    kind_before kind_changed landmark language languages last lead leave lesson level line_length lit lit_before
    more name new_passphrase next next-0-kind next-0-start next-0-step next-0-why next_step no_names notes
    noticed number order outcome owner page passphrase passphrase_again person practice q role rounds routine
    school-name seen sharing show shown_before sign_in_name sort standard standards start starts_at starts_on step
    stops-0-after stops-0-answer stops-0-question stops-0-routes story_goal story_group story_text stuck
    style-currency style-large summary tapped target taught taught_on teachers terms text theirs title
    to_next_year voice while whose words words_of year
""".split()  # noqa: SIM905 - a list of them would be as long as the rest of this file
BY_JSON = [
    {"change": f'stops.add {{"question": {HALVES}, "after": {HALVES}}}'},
    {"change": f'expected.add {{"words": {HALVES}, "reply": {HALVES}}}'},
    {"change": f'next.add {{"why": {HALVES}, "start": {HALVES}}}'},
    {"change": f'fold {{"fill": {HALVES}, "line_length": {HALVES}}}'},
    {"change": f'count {{"kind": {HALVES}, "start": {HALVES}}}'},
    {"change": f'target.add {{"family": {HALVES}}}', "target": f'{{"family": "step", "difference": {HALVES}}}'},
    {"lit": f'{{"family": {HALVES}}}', "tapped": f"[{HALVES}]", "kept": f"[[{HALVES}, {HALVES}]]", "name": "owner"},
]
HALVES_FILE = f'{{"format": "countfold-routines", "version": 1, "routines": [{{"title": {HALVES}}}]}}'.encode()
LONG_CELL_FILE = b"code,area,summary\n" + b"x" * 200_000


@pytest.fixture
def place(owner, coach):
    """The address of something that is there, for every pattern."""
    routine = make_routine(owner)
    draft = PlanDraft.objects.create(person=owner, fields={"typed": {"title": ["Begun"]}})
    held = hold_file(by=owner, name="counts.json", read=read(written([SEVENS]), {"2"}))
    lesson = make_lesson(routine, owner)
    group = ClassGroup.objects.select_related("grade__band", "year").get(teachers=owner)
    keys = {"plans": draft.key, "import": held.key, "lessons": lesson.key, "booklet": uuid4()}
    rows = {"routines": routine.pk, "people": coach.pk, "classes": group.pk, "years": group.year.pk}
    rows |= {"grades": group.grade.pk, "bands": group.grade.band.pk, "invitations": 1}

    standard = StandardFactory(grade=group.grade)

    def filled(pattern: str) -> str:
        first, *_ = parts = pattern.split("/")
        values = {
            "pk": rows.get(parts[1] if first == "school" else first, 1),
            "key": keys.get(first, uuid4()),
            "grade": group.grade.pk,
            "area": "whole",
            "standard": standard.pk,
            "name": "plan" if "print" in pattern else "says",
            "token": "no-such-token",
            "code": "123456",
        }
        return "/" + re.sub(r"<(?:\w+:)?(\w+)>", lambda found: str(values[found[1]]), pattern)

    return filled


def assert_understood(response) -> None:
    assert response.status_code < 500
    request = response.wsgi_request
    for fields in (request.GET, request.POST):
        assert all(is_text(name) and all(map(is_text, texts)) for name, texts in fields.lists())
    for name, files in request.FILES.lists():
        assert is_text(name)
        assert all(is_text(file.name) for file in files)


@pytest.fixture
def visits(place, visit, owner, coach, administrator):
    """Every address in turn, with a browser of each person, or of these; what they did is undone before the next."""

    def each(*people) -> Iterator[tuple[str, Client]]:
        for pattern in ADDRESSES:
            for person in people or (owner, coach, administrator, None):
                with transaction.atomic():
                    yield place(pattern), visit(person) if person else Client()
                    transaction.set_rollback(True)

    return each


def test_no_text_in_a_query_or_a_form_breaks_an_address(visits):
    odd = {**dict.fromkeys(NAMES, ODD), ODD: ODD}
    for address, browser in visits():
        assert_understood(browser.get(address, odd))
        assert_understood(browser.post(address, odd))


def test_no_half_of_a_character_in_json_breaks_an_address(visits, owner):
    for address, browser in visits(owner):
        for fields in BY_JSON:
            assert_understood(browser.post(address, fields))
        assert_understood(browser.post(address, BY_JSON[0], headers={"HX-Request": "true"}))
        assert_understood(browser.get(address, BY_JSON[-1]))


@pytest.mark.parametrize("content", [HALVES_FILE, LONG_CELL_FILE, b"\xff\xfe\x00", ODD.encode()])
def test_no_file_breaks_an_address(content, visits):
    for address, browser in visits():
        named = SimpleUploadedFile("a\x00b\u202e\uffff.json", content)
        assert_understood(browser.post(address, {"file": named, "framework": ODD}))


FORMS = ("application/x-www-form-urlencoded", "multipart/form-data; boundary=x", "application/json")
SENTENCE = "Countfold reads UTF-8"


def test_unknown_letters_are_answered_in_a_sentence_at_every_address(visits):
    for address, browser in visits():
        for form in FORMS:
            response = browser.generic("POST", address, b"title=a", content_type=f"{form}; charset=xyz")
            assert (response.status_code, SENTENCE in response.content.decode()) == (415, True)
        assert browser.get(address, headers={"Content-Type": "text/plain; charset=hex"}).status_code == 415


@pytest.mark.parametrize("charset", ["latin-1", "hex", "undefined", "utf-16", "utf-7", "unicode_escape", '"', ""])
def test_letters_other_than_utf_8_are_answered_in_a_sentence(charset, signed_out):
    for form in FORMS:
        response = signed_out.generic("POST", "/sign-in/", b"name=a", content_type=f"{form}; charset={charset}")
        assert (response.status_code, SENTENCE in response.content.decode()) == (415, True)


@pytest.mark.parametrize("charset", ["utf-8", "UTF-8", "utf8", '"utf-8"', "us-ascii", "ASCII"])
def test_utf_8_under_any_of_its_names_is_read(charset, visit, owner, place):
    address = place("routines/<int:pk>/notes/")
    sent = visit(owner).post(
        address, "text=Tens+go+up", content_type=f"application/x-www-form-urlencoded; charset={charset}"
    )
    assert sent.status_code == 302


CONTENT_TYPES = [
    "text/plain; charset*=xyz''a",
    "multipart/form-data; boundary*=xyz''abc",
    "application/x-www-form-urlencoded; charset*0*=undefined''u",
    "text/plain; charset=a\x00b",
    "text/plain; name*=idna''%ff",
]


@pytest.fixture
def entrance(school):
    """The server's own way in, past the test client, whose requests are made more kindly than a browser's."""

    def ask(content_type: str = "", method: str = "GET") -> tuple[int, str]:
        environ = RequestFactory().generic(method, "/sign-in/", b"name=a").environ
        answer: list[str] = []
        sent = {**environ, "CONTENT_TYPE": content_type, "SERVER_NAME": "localhost"}
        body = application(sent, lambda status, headers: answer.append(status))
        return int(answer[0].split()[0]), b"".join(body).decode()

    # As the test client does: the transaction of a test lives in a connection that a request must not close.
    request_started.disconnect(close_old_connections)
    yield ask
    request_started.connect(close_old_connections)


@pytest.mark.parametrize("content_type", CONTENT_TYPES)
@pytest.mark.parametrize("method", ["GET", "POST"])
def test_a_content_type_that_django_gives_up_on_is_answered_too(content_type, method, entrance):
    status, page = entrance(content_type, method)
    assert status in (400, 415)
    assert "This request was not understood" in page


def test_the_entrance_serves_what_is_in_order(entrance):
    assert entrance()[0] == 200
    assert entrance("text/plain; charset=utf-8")[0] == 200


@pytest.mark.parametrize("part", ["name*=xyz''text", "name*=hex''74", "name*=unicode_escape''%5Cud800"])
def test_a_part_of_a_form_named_in_unknown_letters_breaks_nothing(part, visits, owner):
    body = (
        f"--x\r\nContent-Disposition: form-data; {part}\r\n\r\nTens\r\n"
        f"--x\r\nContent-Disposition: form-data; name=file; file{part}\r\n\r\nTens\r\n--x--\r\n"
    )
    for address, browser in visits(owner):
        assert_understood(browser.post(address, body, content_type="multipart/form-data; boundary=x"))


def test_a_header_with_control_characters_is_answered_in_a_sentence(signed_out):
    response = signed_out.get("/sign-in/", headers={"User-Agent": "a\x00b"})
    assert response.status_code == 400
    assert "holds signs that belong to no text" in response.content.decode()


@pytest.mark.parametrize("method", ["GET", "POST"])
@pytest.mark.parametrize("address", ["/", "/sign-in/", "/no-such-page/"])
def test_an_address_with_too_many_fields_is_answered_in_a_sentence(address, method, visit, owner, signed_out):
    """With different names, and with one name again and again, which is one field to whoever reads it by name."""
    for fields in (urlencode({f"f{n}": n for n in range(15_000)}), "a=1&" * 15_000):
        for browser in (signed_out, visit(owner)):
            answer = browser.generic(method, address, QUERY_STRING=fields)
            assert answer.status_code == 414
            assert "This address holds more than 2,000 fields, the most that is taken at once." in answer.text


def test_an_address_with_as_many_fields_as_are_taken_is_read(signed_out):
    assert signed_out.get("/sign-in/", QUERY_STRING="&".join(f"f{n}=1" for n in range(2_000))).status_code == 200


def test_a_cookie_that_is_no_text_is_nobody_s(signed_out):
    response = signed_out.get("/", headers={"Cookie": 'countfold_session="\\000\\001aaaaaaaaaaaa"'})
    assert response.status_code == 302
    assert response.wsgi_request.COOKIES == {}


def test_a_client_that_left_in_the_middle_of_its_form_breaks_nothing(visit, owner, monkeypatch):
    class Gone(BytesIO):
        def read(self, *args):
            raise OSError("gone")

    browser = visit(owner)
    monkeypatch.setattr("django.test.client.FakePayload.read", lambda *args: Gone().read())
    response = browser.post("/me/", b"display_name=a", content_type="application/x-www-form-urlencoded")
    assert response.status_code < 500


@given(ANY_TEXT, ANY_TEXT)
def test_fields_are_mended_and_keep_their_order(name, text):
    fields = QueryDict(mutable=True)
    fields.setlist(name, [text, "kept", text])
    fields["other"] = "left alone"
    found = mended_fields(fields)
    assert [len(texts) for _, texts in found.lists()] in ([3, 1], [4])
    assert all(is_text(one) for one in [*found, *(text for _, texts in found.lists() for text in texts)])
    assert found.urlencode().isascii()
    if found is not fields:
        with pytest.raises(AttributeError):
            found["more"] = "no"


def test_a_form_in_order_is_the_very_form_that_came():
    fields = QueryDict("title=Tens&title=Fives&notes=%F0%9F%98%80")
    assert mended_fields(fields) is fields


def test_a_name_typed_with_unseen_characters_is_kept_without_them(visit, owner):
    sent = visit(owner).post("/me/", {"display_name": "Ow\x00ner\x1b O\ufdd0ta", "email": ""})
    owner.refresh_from_db()
    assert (sent.status_code, owner.display_name) == (302, "Owner Ota")


def test_a_plan_changed_by_half_a_character_still_opens_for_everyone(visit, owner):
    routine = make_routine(owner)
    browser = visit(owner)
    row = json.dumps({"question": "What \ud83d\x00 next?", "after": 5})
    changed = browser.post(f"/routines/{routine.pk}/edit/change/", {"change": f"stops.add {row}", "title": "Half \x00"})
    assert changed.status_code == 302
    page = browser.get(f"/routines/{routine.pk}/edit/")
    assert page.status_code == 200
    assert "What \ufffd next?" in page.content.decode()
