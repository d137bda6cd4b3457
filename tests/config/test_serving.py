"""The running server, before any page of ours is asked: what it believes of a proxy, and requests that are none."""

import shutil
import socket

import pytest

from tests.config.serving import Browser, served


@pytest.mark.parametrize("behind_proxy", [True, False])
def test_what_a_proxy_says_counts_only_where_there_is_one(founded, tmp_path, monkeypatch, behind_proxy):
    monkeypatch.setenv("COUNTFOLD_HTTPS", "1")
    if behind_proxy:
        monkeypatch.setenv("COUNTFOLD_BEHIND_PROXY", "1")
    with served(shutil.copytree(founded, tmp_path / "data")) as (port, _said):
        browser = Browser(port)
        status, led_to, _page = browser.ask("GET", "/sign-in/", {"X-Forwarded-Proto": "https"})
        assert (status, led_to.startswith("https://")) == ((200, False) if behind_proxy else (301, True))
        assert browser.ask("GET", "/sign-in/", {"X-Forwarded-Proto": "http"})[0] == 301


def test_a_length_of_too_many_digits_closes_that_connection_alone(founded, tmp_path):
    with served(shutil.copytree(founded, tmp_path / "data")) as (port, _said):
        other = Browser(port)
        assert other.ask("GET", "/sign-in/")[0] == 200
        for _try in range(8):  # more than there are threads
            with socket.create_connection(("127.0.0.1", port), timeout=20) as line:
                line.sendall(
                    b"POST /sign-in/ HTTP/1.1\r\nHost: 127.0.0.1\r\nContent-Length: " + b"9" * 5000 + b"\r\n\r\n"
                )
                assert line.recv(1024) == b""
        assert other.ask("GET", "/sign-in/")[0] == 200
