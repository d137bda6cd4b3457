"""One-click sign-in: three locks, each of which alone keeps it shut."""

import pytest
from django.test import Client

from tests.factories import UserFactory


@pytest.fixture
def demo(school, settings):
    settings.DEMO = True
    settings.ALLOWED_HOSTS = ["localhost", "127.0.0.1", "[::1]", "school.lan"]
    school.is_demo = True
    school.save()
    return UserFactory(display_name="Ines Calloway")


def walk_in(person, **server: str):
    return Client(**server).post("/sign-in/", {"demo_person": person.pk, "next": "/me/"})


@pytest.mark.parametrize("host", ["localhost:8000", "127.0.0.1", "[::1]:8000"])
def test_one_click_signs_in_as_each_demo_person(demo, host):
    browser = Client(SERVER_NAME=host)
    assert "Ines Calloway" in browser.get("/sign-in/").content.decode()
    assert browser.post("/sign-in/", {"demo_person": demo.pk, "next": "/me/"}).url == "/me/"
    assert browser.get("/me/").status_code == 200


def test_not_without_the_demo_setting(demo, settings):
    settings.DEMO = False
    assert walk_in(demo, SERVER_NAME="localhost").status_code == 404
    assert "Ines Calloway" not in Client(SERVER_NAME="localhost").get("/sign-in/").content.decode()


def test_not_in_a_school_that_is_not_the_demo(demo, school):
    school.is_demo = False
    school.save()
    assert walk_in(demo, SERVER_NAME="localhost").status_code == 404


def test_not_under_another_host_name(demo):
    assert walk_in(demo, SERVER_NAME="school.lan").status_code == 404


def test_not_from_another_machine(demo):
    assert walk_in(demo, SERVER_NAME="localhost", REMOTE_ADDR="10.1.1.7").status_code == 404


def test_not_behind_a_proxy(demo, settings):
    settings.BEHIND_PROXY = True
    assert walk_in(demo, SERVER_NAME="localhost").status_code == 404


@pytest.mark.parametrize("key", ["999999", "x", "-1", ""])
def test_nobody_is_nobody(demo, key):
    response = Client(SERVER_NAME="localhost").post("/sign-in/", {"demo_person": key})
    assert response.status_code == 404


def test_demo_people_have_no_passphrase_to_guess(demo):
    response = Client(SERVER_NAME="localhost").post("/sign-in/", {"name": demo.sign_in_name, "passphrase": "None"})
    assert response.status_code == 422


def test_every_page_says_that_the_data_are_invented(demo):
    assert "invented" in Client(SERVER_NAME="localhost").get("/sign-in/").content.decode()
