"""The first visit to an empty server."""

from datetime import date, timedelta

import pytest
from django.core.management import call_command
from django.test import Client

from accounts.models import CodeTries, School, User
from accounts.set_up_code import set_up_code
from grade_bands.actions import lay_grades, open_school_year
from grade_bands.models import Grade, GradeBand, SchoolYear, Standard

PASSPHRASE = "otter violin sandwich moon"


def answers(**changed: object) -> dict:
    return {
        "code": set_up_code(),
        "school-name": "Larkfield School",
        "school-paper": "letter",
        "school-unit_system": "customary",
        "school-currency": "USD",
        "school-decimal_mark": ".",
        "school-thousands": ",",
        "school-clock": "12",
        "school-time_zone": "America/Chicago",
        "school-year_starts_month": "8",
        "school-year_starts_day": "15",
        "school-languages": ["en"],
        "administrator-display_name": "Ada Ames",
        "administrator-sign_in_name": "ames",
        "administrator-email": "",
        "administrator-passphrase": PASSPHRASE,
        "administrator-passphrase_again": PASSPHRASE,
        "grades-levels": ["0", "1", "2", "3", "4", "5", "6"],
        "grades-with_common_core": "on",
        **changed,
    }


@pytest.mark.django_db
@pytest.mark.parametrize("path", ["/", "/sign-in/", "/school/", "/no-such-page/"])
def test_before_there_is_a_school_every_page_leads_to_set_up(path):
    assert Client().get(path).url == "/set-up/"


@pytest.mark.django_db
def test_the_page_asks_for_the_code():
    page = Client().get("/set-up/").content.decode()
    assert "Set-up code" in page
    assert set_up_code() not in page


@pytest.mark.django_db
def test_one_form_makes_the_school_its_administrator_grades_year_and_standards():
    browser = Client()
    assert browser.post("/set-up/", answers()).url == "/school/"
    assert School.objects.current().name == "Larkfield School"
    assert not School.objects.current().is_demo
    administrator = User.objects.get()
    assert administrator.is_administrator
    assert administrator.check_password(PASSPHRASE)
    assert list(GradeBand.objects.values_list("name", flat=True)) == ["K-1", "2-3", "4-5", "6"]
    assert list(Grade.objects.values_list("name", "level")) == [(n, i) for i, n in enumerate("K123456")]
    assert SchoolYear.objects.count() == 1
    assert Standard.objects.count() == 110
    assert browser.get("/school/").status_code == 200


@pytest.mark.django_db
@pytest.mark.parametrize("code", ["", "abc-def-ghj", "ñ"])
def test_without_the_code_nothing_is_made_and_what_was_typed_stays(code):
    response = Client().post("/set-up/", answers(code=code))
    assert response.status_code == 422
    assert 'value="Larkfield School"' in response.content.decode()
    assert not School.objects.exists()
    assert not User.objects.exists()


@pytest.mark.django_db
def test_the_code_may_be_typed_in_capitals_and_without_its_hyphens():
    assert Client().post("/set-up/", answers(code=set_up_code().upper().replace("-", " "))).status_code == 302


@pytest.mark.django_db
@pytest.mark.parametrize(
    ("changed", "sentence"),
    [
        ({"school-name": ""}, "Write the name of the school."),
        ({"administrator-passphrase": "short"}, "The two are not the same."),
        ({"grades-levels": []}, "Choose at least one grade."),
    ],
)
def test_whatever_is_wrong_nothing_is_made(changed, sentence):
    response = Client().post("/set-up/", answers(**changed))
    assert response.status_code == 422
    assert sentence in response.content.decode()
    assert not School.objects.exists()
    assert not User.objects.exists()
    assert not Grade.objects.exists()


def test_once_there_is_a_school_set_up_is_closed(signed_out):
    assert signed_out.get("/set-up/").url == "/"
    assert signed_out.post("/set-up/", answers()).url == "/"
    assert School.objects.count() == 1


@pytest.mark.django_db
def test_the_command_prints_the_code_while_it_is_needed(capsys):
    call_command("set_up_code")
    assert capsys.readouterr().out.strip() == set_up_code()
    Client().post("/set-up/", answers())
    call_command("set_up_code")
    assert capsys.readouterr().out == ""


@pytest.mark.django_db
def test_a_school_with_three_grades_gets_the_bands_they_make():
    lay_grades([0, 3, 7])
    assert list(GradeBand.objects.values_list("name", flat=True)) == ["K", "3", "7"]


@pytest.mark.parametrize(
    ("day", "starts_on", "name"),
    [
        (date(2026, 11, 25), date(2026, 8, 15), "2026-27"),
        (date(2026, 8, 15), date(2026, 8, 15), "2026-27"),
        (date(2026, 8, 14), date(2025, 8, 15), "2025-26"),
        (date(2100, 1, 5), date(2099, 8, 15), "2099-00"),
    ],
)
def test_the_year_starts_on_the_schools_own_first_day(school, day, starts_on, name):
    year = open_school_year(school=school, day=day)
    assert (year.starts_on, year.name) == (starts_on, name)
    assert open_school_year(school=school, day=day) == year


WRONG = "abc-def-ghj"


@pytest.mark.django_db
def test_guesses_at_the_code_from_one_address_are_slowed_down():
    for _try in range(8):
        assert Client().post("/set-up/", answers(code=WRONG)).status_code == 422
    locked = Client().post("/set-up/", answers())
    assert locked.status_code == 429
    assert "Wait 15 minutes, then type the code again." in locked.text
    assert 'value="Larkfield School"' in locked.text
    assert not School.objects.exists()
    assert Client(REMOTE_ADDR="10.1.1.7").post("/set-up/", answers()).status_code == 302


@pytest.mark.django_db
def test_guesses_from_many_addresses_are_counted_in_all():
    for number in range(60):
        Client(REMOTE_ADDR=f"10.1.1.{number}").post("/set-up/", answers(code=WRONG))
    locked = Client(REMOTE_ADDR="10.2.2.2").post("/set-up/", answers())
    assert locked.status_code == 429
    assert not School.objects.exists()


@pytest.mark.django_db
def test_the_wait_grows_shorter_and_ends():
    for _try in range(8):
        Client().post("/set-up/", answers(code=WRONG))
    tries = CodeTries.objects.exclude(address="")
    tries.update(since=tries.get().since - timedelta(minutes=13, seconds=30))
    assert "Wait 2 minutes" in Client().post("/set-up/", answers()).text
    tries.update(since=tries.get().since - timedelta(minutes=2))
    assert Client().post("/set-up/", answers()).status_code == 302


@pytest.mark.django_db
def test_a_form_with_the_right_code_may_be_mended_as_often_as_it_takes():
    for _try in range(12):
        assert Client().post("/set-up/", answers(**{"school-name": ""})).status_code == 422
    assert Client().post("/set-up/", answers(code="")).status_code == 422
    assert Client().post("/set-up/", answers()).status_code == 302
    assert not CodeTries.objects.exists()
