"""Every address and every field, asked as nobody would: no error page, no work or memory without a bound, and no row that
breaks a page afterwards.

What can be asked is found, not listed: addresses from the URLconf, fields from the pages. A request is bounded in Python
calls (effort.py), the whole in memory. Each test gathers all it finds before it fails.
"""

import json
import re
import uuid
from urllib.parse import urlencode

import pytest
from django.conf import settings as app_settings
from django.urls import reverse
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st

from accounts.models import CodeTries, School
from accounts.set_up_code import set_up_code
from grade_bands.models import ClassGroup, Grade, GradeBand, SchoolYear, Standard
from routines.jobs.runner import do_next
from routines.models import Job
from tests.fuzz.asking import FORM, bounded_memory, undone
from tests.fuzz.found import Sent, read_forms
from tests.fuzz.odd import DEEP, DIGITS_5000, bent, multipart, odd_files, odd_json, odd_text
from tests.fuzz.walking import every_field, lists_open, odd_values, send
from tests.routines.lessons.making import data_of_every_kind, event

pytestmark = pytest.mark.django_db

METHODS = ("get", "post", "put", "patch", "delete", "head", "options", "trace", "propfind")
IDS = ("9" * 30, "9223372036854775808", "0", "-1", "%00", "%ED%A0%80", "%F0%9F%A6%86", "x" * 3000, "9" * 5000)


def test_every_page_opens(sendable):
    """Beside a count and a standard that cannot be read; `sendable` opens the pages."""
    assert len(sendable) > 200


def test_every_field_with_what_once_broke_it(asker, sendable):
    by_view: dict[tuple[str, str], list[tuple[Sent, str, bool]]] = {}
    for one in every_field(sendable):
        by_view.setdefault((one[0].method, one[0].view), []).append(one)
    place = 0
    with bounded_memory(asker):
        for (_, view), ones in by_view.items():
            kept = False
            with undone():
                for sent, name, briefly in ones:
                    place += 1
                    for value in odd_values(sent.fields.get(name, [""])[0], place, briefly):
                        fields = {**sent.fields, name: [value]}
                        kept |= send(asker, sent, fields, f"{name}={value[:40]!r} ({len(value)})", live=place % 2 == 0)
                if kept:
                    lists_open(asker, ones[0][0].role, f"odd words to {view}")
    assert place > 200
    assert asker.faults == {}, asker.report()


def test_every_address_is_reached_and_asked_in_every_way(asker, addresses, sendable):
    """Wrong methods, odd bodies, unknown charsets, numbers of pages and ids out of all bounds."""
    bodies = [
        (b"\xff\xfe\x00", "application/json"),
        (DEEP.encode(), "application/json"),
        (b'{"v": 1, "events": [{"id": "\\ud800", "t": 1e999, "data": [[]]}]}', "application/json"),
        (b"[]", "application/json"),
        (b"a=%00&b=%ED%A0%80&%ff=%fe", f"{FORM}; charset=no-such-charset"),
        (b"a=1", f"{FORM}; charset=utf-7"),
        (b"a=1", "multipart/form-data"),
        (b"--x\r\nContent-Disposition: form-data; name=\"a\"\r\n\r\n", "multipart/form-data; boundary=x"),
        (b"x", "text/\x00plain"),
        ("&".join(f"f{n}={n}" for n in range(1500)).encode(), FORM),
    ]  # fmt: skip
    unreached = set()
    with bounded_memory(asker):
        for number, (route, some) in enumerate(addresses.items()):
            reached = False
            with undone():
                for turn, role in enumerate(asker.cookies):
                    body, kind = bodies[(number + turn) % len(bodies)]
                    answer = asker.ask(role, "post", some[0], body, kind, said=kind)
                    reached |= answer is not None and answer.status_code not in (404, 405)
                    if not reached:
                        answer = asker.ask(role, "get", some[0])
                        reached |= answer is not None and answer.status_code not in (404, 405, 403)
                    if (number + turn) % 3 == 0:
                        asker.ask(role, METHODS[(number * 2 + turn) % len(METHODS)], some[0], b"x=1")
                for place, odd in enumerate(IDS):
                    bent_id = re.sub(r"(?<=/)[\w-]*\d[\w-]*(?=/|$)", odd, some[0])
                    if bent_id != some[0] and (number + place) % 2 == 0:
                        asker.ask("administrator", "get", bent_id, said=odd[:40])
                    if (number + place) % 5 == 0:
                        asker.ask(
                            "teacher", "get", f"{some[0]}?page={odd}&from={odd}&{odd}={odd}", said=f"page={odd[:40]}"
                        )
            if not reached:
                unreached.add(route)
    assert unreached == set()
    assert asker.faults == {}, asker.report()


def test_every_file_field(asker, sendable, counts_file):
    fields = {(sent.view, name): (sent, name) for sent in sendable for name in sent.files}
    assert fields
    with bounded_memory(asker):
        for sent, name in fields.values():
            for file, content in odd_files(counts_file):
                with undone():
                    said = f"{name}={file[:40]!r}"
                    answer = asker.ask(
                        sent.role, "post", sent.address, *multipart(sent.fields, [(name, file, content)]), said=said
                    )
                    if answer is not None and answer.status_code == 302:
                        look = asker.ask(sent.role, "get", answer["Location"], said=f"after {said}")
                        if look is not None and look.status_code == 200:
                            for form in read_forms(look.text, answer["Location"], sent.role):
                                if form.method == "post" and "import" in form.view:
                                    send(asker, form, form.fields, f"after {said}")
                        for kind in Job.Kind:
                            do_next(kind)
                        lists_open(asker, sent.role, said)
    assert asker.faults == {}, asker.report()


def odd_events(version: int) -> list[bytes]:
    """Bodies with one event of each kind, each part of it replaced in turn."""
    odd = ["\ud800", "a\x00\u2028", "x" * 5000, 10**400, -1, 1e308, [], {}, [[]], None, True, ["\ud800"]]
    bodies = []
    for place, (kind, data) in enumerate(data_of_every_kind(str(uuid.UUID(int=5))).items()):
        whole = event(1, kind, {**data, "version": version} if "version" in data else data)
        ways = [{**whole, name: value} for name in whole for value in odd[place % 3 :: 3]]
        ways += [{**whole, "data": {**data, name: value}} for name in data for value in odd]
        ways += [{**whole, "data": {**data, "\ud800": 1}}, {}, {"id": whole["id"]}]
        bodies += [json.dumps({"v": 1, "epoch": None, "events": ways[n : n + 95]}) for n in range(0, len(ways), 95)]
    bodies += [
        f'{{"events": [{{"id": "x", "t": {DIGITS_5000}}}]}}',
        '{"events": [NaN, Infinity, null, [], "x", 1]}',
        f'{{"events": {DEEP}}}',
        f'{{"events": {{"events": {DEEP}}}}}',
        json.dumps({"events": [event()] * 101}),
        json.dumps({"events": [event(data={"n": 1, "text": "x" * 700_000})]}),
        "[" * 3_000_000,
        "null",
        "",
    ]
    return [body.encode() for body in bodies] + [b"\xff\xfe{}", b'{"events": ["\xed\xa0\x80"]}']


def test_events_of_a_lesson(asker, board_lesson):
    """As everyone who takes part or would like to; what is heard and shown afterwards opens."""
    address = reverse("lesson_events", args=[board_lesson.key])
    reading = [
        reverse(name, args=[board_lesson.key]) for name in ("lesson", "lesson_board_json", "lesson_lectern_json")
    ]
    with bounded_memory(asker):
        for place, body in enumerate(odd_events(board_lesson.version_id)):
            with undone():
                asker.ask("teacher", "post", address, body, "application/json", said=body[:60].decode("latin-1"))
                role = list(asker.cookies)[place % len(asker.cookies)]
                asker.ask(role, "post", address, body, "application/json", said=body[:60].decode("latin-1"))
                unknown = reverse("lesson_events", args=[uuid.UUID(int=9)])  # one that an older backup does not hold
                asker.ask("teacher", "post", unknown, body, "application/json")
                for seen in (reading[place % len(reading)], f"{address}?after={(0, DIGITS_5000, '²')[place % 3]}"):
                    asker.ask("teacher", "get", seen, said="after odd events")
    assert asker.faults == {}, asker.report()


def test_a_form_with_more_fields_than_are_taken(asker, addresses):
    """Each address says so with the limit: as a form, with files, from a script, signed out, and in the address itself."""
    most = app_settings.DATA_UPLOAD_MAX_NUMBER_FIELDS
    body = urlencode({f"f{n}": n for n in range(most + 1)}).encode()
    several, kind = multipart({f"f{n}": ["1"] for n in range(most + 1)}, [])
    said_nothing = []
    for place, some in enumerate(addresses.values()):
        with undone():
            role = list(asker.cookies)[place % len(asker.cookies)]
            for sent, of_kind in ((body, FORM), (several, kind))[: 1 + (place % 8 == 0)]:
                answer = asker.ask(role, "post", some[0], sent, of_kind, said="many fields", live=place % 2 == 0)
                if answer is not None and (answer.status_code != 413 or f"{most:,} fields" not in answer.text):
                    said_nothing.append((some[0], answer.status_code))
            answer = asker.ask(role, "get", f"{some[0]}?{body.decode()}", said="many fields in the address")
            if answer is not None and (answer.status_code != 414 or f"{most:,} fields" not in answer.text):
                said_nothing.append((f"{some[0]}?…", answer.status_code))
    assert said_nothing == []
    assert asker.faults == {}, asker.report()


def test_set_up_before_there_is_a_school(asker):
    """Every field of the first page, with the right code and with a wrong one."""
    with undone():
        # What of a school set-up asks about; the rest hangs on these and is hidden from it.
        for model in (Standard, ClassGroup, Grade, GradeBand, SchoolYear, School):
            model.objects.all()._raw_delete("default")
        answer = asker.ask("signed out", "get", "/set-up/")
        (form,) = [
            one for one in read_forms(answer.text, "/set-up/", "signed out") if one.method == "post" and one.fields
        ]
        form.fields |= {"code": [set_up_code()]}
        place = 0
        with bounded_memory(asker):
            for name in form.fields:
                for value in odd_values(form.fields[name][0], place, briefly=False):
                    place += 1
                    with undone():
                        CodeTries.objects.all().delete()
                        said = f"{name}={value[:40]!r}"
                        send(asker, form, {**form.fields, name: [value]}, said)
                        if School.objects.exists():
                            lists_open(asker, "administrator", said)
        assert place >= 2 * len(form.fields)
        assert asker.ask("teacher", "get", "/").status_code == 302
    assert asker.faults == {}, asker.report()


def test_anything_at_all(asker, sendable):
    """Several fields at once: odd, missing, sent twice, too many, or as JSON, as anybody."""
    posts = {(sent.view, tuple(sent.fields)): sent for sent in sendable if sent.fields}

    @settings(
        max_examples=150,
        suppress_health_check=list(HealthCheck),
        deadline=None,
    )
    @given(st.data())
    def ask(data: st.DataObject) -> None:
        sent = data.draw(st.sampled_from(list(posts.values())))
        role = data.draw(st.sampled_from(list(asker.cookies)))
        fields = {name: list(values) for name, values in sent.fields.items()}
        for name in data.draw(st.lists(st.sampled_from(sorted(fields)), min_size=1, max_size=4)):
            how = data.draw(st.sampled_from(["odd", "odd", "odd", "missing", "twice", "bent"]))
            if how == "missing":
                fields.pop(name, None)
            elif how == "bent" and (ways := bent(sent.fields[name][0] if sent.fields[name] else "")):
                fields[name] = [data.draw(st.sampled_from(ways))]
            else:
                fields[name] = data.draw(st.lists(odd_text, min_size=1, max_size=1 + (how == "twice")))
        said = str(
            {name: [value[:30] for value in values] for name, values in fields.items() if values != sent.fields[name]}
        )
        with undone():
            if data.draw(st.integers(0, 9)) == 0:
                asker.ask(role, "post", sent.address, json.dumps(data.draw(odd_json)).encode(), "application/json")
            else:
                one = Sent(sent.method, sent.address, fields, set(), role)
                send(asker, one, fields, said, live=data.draw(st.booleans()))

    with bounded_memory(asker):
        ask()
    assert asker.faults == {}, asker.report()
