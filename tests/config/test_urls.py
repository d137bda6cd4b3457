"""Which pages may be opened without signing in: exactly these."""

from collections.abc import Iterator

from django.test import Client
from django.urls import URLPattern, URLResolver, get_resolver

OPEN = {
    "favicon.ico",
    "sign-in/",
    "sign-out/",
    "set-up/",
    "recovery/",
    "invitation/<str:token>/",
    "new-passphrase/<str:token>/",
    # a device in the classroom: it waits for a code to be typed, or shows that it has a pass to this lesson
    "board/",
    "board/status/",
    "board/code.svg",
    "lessons/worker.js",
    "lessons/<uuid:key>/board/",
    "lessons/<uuid:key>/board.json",
    "lessons/<uuid:key>/lectern/",
    "lessons/<uuid:key>/lectern.json",
    "lessons/<uuid:key>/ask/",
    "lessons/<uuid:key>/events/",
}


def patterns(resolver: URLResolver, before: str = "") -> Iterator[tuple[str, URLPattern]]:
    for entry in resolver.url_patterns:
        path = before + str(entry.pattern)
        if isinstance(entry, URLResolver):
            yield from patterns(entry, path)
        else:
            yield path, entry


def test_every_page_but_these_needs_someone_signed_in():
    every = dict(patterns(get_resolver()))
    open_ones = {path for path, entry in every.items() if not getattr(entry.callback, "login_required", True)}
    assert open_ones == OPEN
    assert len(every) > len(OPEN)


def test_every_page_has_a_name():
    assert [path for path, entry in patterns(get_resolver()) if not entry.name] == []


def test_an_unknown_address_is_404_in_our_words(visit, owner):
    response = visit(owner).get("/no-such-page/")
    assert response.status_code == 404
    assert "There is nothing at this address" in response.content.decode()


def test_a_host_we_do_not_serve_is_refused(school):
    assert Client(SERVER_NAME="elsewhere.example").get("/sign-in/").status_code == 400


def test_every_page_carries_a_policy_without_inline_anything(signed_out):
    response = signed_out.get("/sign-in/")
    policy = response["Content-Security-Policy"]
    assert "default-src 'none'" in policy
    assert "unsafe" not in policy
    assert "nonce" not in policy
    assert response["X-Frame-Options"] == "DENY"
    page = response.content.decode()
    assert "<style" not in page
    assert " style=" not in page
    assert "onclick" not in page
