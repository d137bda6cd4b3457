"""Whose tries are counted together: by the address of the device, which nobody can make up."""

import pytest
from axes.models import AccessAttempt
from django.test import Client, RequestFactory

from accounts.throttling import client_address
from tests.factories import UserFactory

PROXY = "10.0.0.1"


def address(**sent: str) -> str:
    return client_address(RequestFactory(REMOTE_ADDR=PROXY).get("/", **sent))


def guess(number: int, forwarded: str) -> int:
    tried = {"name": "moreno", "passphrase": f"wrong wrong wrong {number}"}
    return Client(REMOTE_ADDR=PROXY).post("/sign-in/", tried, HTTP_X_FORWARDED_FOR=forwarded).status_code


@pytest.mark.parametrize(
    "header", ["HTTP_X_FORWARDED_FOR", "HTTP_FORWARDED", "HTTP_X_REAL_IP", "HTTP_CLIENT_IP", "HTTP_X_FORWARDED"]
)
def test_without_a_proxy_nothing_that_a_visitor_says_is_her_address(header):
    assert address(**{header: "198.51.100.7"}) == PROXY


def test_without_a_proxy_made_up_addresses_do_not_dodge_the_wait(school):
    UserFactory(sign_in_name="moreno")
    answers = [guess(number, f"198.51.100.{number}") for number in range(9)]
    assert answers == [422] * 7 + [429] * 2


def test_behind_a_proxy_what_the_visitor_put_in_front_does_not_dodge_the_wait(school, settings):
    settings.BEHIND_PROXY = True
    UserFactory(sign_in_name="moreno")
    answers = [guess(number, f"198.51.100.{number}, 203.0.113.9:{40_000 + number}") for number in range(9)]
    assert answers == [422] * 7 + [429] * 2
    assert {attempt.ip_address for attempt in AccessAttempt.objects.all()} == {"203.0.113.9"}
    assert guess(9, "203.0.113.10") == 422


@pytest.mark.parametrize(
    ("entry", "meant"),
    [
        ("203.0.113.9", "203.0.113.9"),
        (" 1.1.1.1 ,203.0.113.9 ", "203.0.113.9"),
        ("203.0.113.9:51234", "203.0.113.9"),
        ("2001:DB8:0::9", "2001:db8::9"),
        ("[2001:db8::9]", "2001:db8::9"),
        ("[2001:db8::9]:443", "2001:db8::9"),
        ("::ffff:203.0.113.9", "203.0.113.9"),
        ("fe80::1%eth0", "fe80::1"),
        ("", PROXY),
        ("203.0.113.9,", PROXY),
        ("unknown", PROXY),
        ("203.0.113", PROXY),
        ("203.0.113.999", PROXY),
        ("'; --", PROXY),
        ("9" * 5000, PROXY),
    ],
)
def test_behind_a_proxy_its_own_entry_counts_where_it_is_an_address(settings, entry, meant):
    settings.BEHIND_PROXY = True
    assert address(HTTP_X_FORWARDED_FOR=entry) == meant
