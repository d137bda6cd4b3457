"""Answers are sent shrunk, are what they were when unpacked, and their length tells no secret."""

import gzip

import pytest
from django.http import HttpResponse, StreamingHttpResponse
from django.test import RequestFactory

from config.packing import PackingMiddleware

LONG = b"<p>4, 8, 12, 16</p>" * 200


def sent(response, accepts: str = "gzip, deflate, br"):
    request = RequestFactory().get("/", headers={"Accept-Encoding": accepts})
    return PackingMiddleware(lambda request: response)(request)


def test_what_is_unpacked_is_what_was_written():
    answer = sent(HttpResponse(LONG))
    assert answer["Content-Encoding"] == "gzip"
    assert answer["Vary"] == "Accept-Encoding"
    assert int(answer["Content-Length"]) == len(answer.content) < len(LONG) / 5
    assert gzip.decompress(answer.content) == LONG


def test_the_same_page_is_not_always_as_long():
    assert len({len(sent(HttpResponse(LONG)).content) for _ in range(60)}) > 10


@pytest.mark.parametrize("accepts", ["", "identity", "br"])
def test_who_cannot_unpack_it_is_sent_it_as_it_is(accepts):
    answer = sent(HttpResponse(LONG), accepts)
    assert answer.content == LONG
    assert not answer.has_header("Content-Encoding")
    assert answer["Vary"] == "Accept-Encoding"


def test_what_is_short_or_packed_already_stays():
    assert sent(HttpResponse(b"no")).content == b"no"
    packed = gzip.compress(LONG)
    assert sent(HttpResponse(packed, headers={"Content-Encoding": "gzip"})).content == packed


def test_streams_and_marked_answers_go_djangos_own_way():
    assert gzip.decompress(b"".join(sent(StreamingHttpResponse([LONG])).streaming_content)) == LONG
    marked = sent(HttpResponse(LONG, headers={"ETag": '"one"'}))
    assert marked["ETag"] == 'W/"one"'
    assert gzip.decompress(marked.content) == LONG
