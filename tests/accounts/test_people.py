"""The school's page: its settings and its people, for administrators."""

import pytest

from accounts.models import School, User
from tests.factories import UserFactory

BUTTONS = [
    "/school/people/invite/",
    "/school/people/{pk}/new-passphrase/",
    "/school/people/{pk}/role/",
    "/school/people/{pk}/close/",
    "/school/people/{pk}/reopen/",
    "/school/invitations/1/withdraw/",
]
ADMINISTRATORS_ONLY = [
    ("get", "/school/"),
    ("post", "/school/"),
    ("get", "/school/people/"),
    *(("post", path) for path in BUTTONS),
]
SETTINGS = {
    "name": "Larkfield School",
    "paper": "a4",
    "unit_system": "metric",
    "currency": "eur",
    "decimal_mark": ",",
    "thousands": " ",
    "clock": "24",
    "time_zone": "Europe/Madrid",
    "year_starts_month": "9",
    "year_starts_day": "1",
    "languages": ["es", "en"],
}


@pytest.mark.parametrize(("method", "path"), ADMINISTRATORS_ONLY)
def test_teachers_and_coaches_are_refused(visit, owner, coach, method, path):
    for person in (owner, coach):
        response = getattr(visit(person), method)(path.format(pk=coach.pk))
        assert response.status_code == 403


@pytest.mark.parametrize("path", BUTTONS)
def test_what_changes_something_is_not_done_by_a_link(visit, administrator, path):
    assert visit(administrator).get(path.format(pk=administrator.pk)).status_code == 405


def test_the_place_is_saved(visit, administrator):
    assert visit(administrator).post("/school/", SETTINGS).status_code == 302
    school = School.objects.current()
    assert (school.paper, school.currency, school.decimal_mark, school.clock) == ("a4", "EUR", ",", 24)
    assert school.languages == ["es", "en"]


@pytest.mark.parametrize(
    ("wrong", "sentence"),
    [
        ({"name": ""}, "Write the name of the school."),
        ({"thousands": ","}, "Choose something other than the decimal mark."),
        ({"currency": "dollars"}, "Write the three letters of the currency"),
        ({"currency": "$$$"}, "Write the three letters of the currency"),
        ({"time_zone": "Mars/Olympus"}, "Choose a time zone from the list."),
        ({"year_starts_month": "2", "year_starts_day": "30"}, "This month has no such day."),
        ({"year_starts_month": "13"}, "Choose a month."),
        ({"languages": []}, "Choose at least one language."),
    ],
)
def test_a_wrong_setting_is_one_sentence_and_nothing_is_saved(visit, administrator, wrong, sentence):
    response = visit(administrator).post("/school/", {**SETTINGS, **wrong})
    assert response.status_code == 422
    assert sentence in response.content.decode()
    assert School.objects.current().paper == "letter"


def test_a_role_can_be_changed(visit, administrator, owner):
    visit(administrator).post(f"/school/people/{owner.pk}/role/", {"role": "coach"})
    owner.refresh_from_db()
    assert owner.is_coach


def test_an_unknown_role_changes_nothing(visit, administrator, owner):
    page = visit(administrator).post(f"/school/people/{owner.pk}/role/", {"role": "king"}, follow=True)
    assert "Choose teacher, math coach or administrator." in page.content.decode()
    owner.refresh_from_db()
    assert owner.role == User.Role.TEACHER


@pytest.mark.parametrize(("action", "sent"), [("role", {"role": "teacher"}), ("close", {})])
def test_the_last_administrator_stays(visit, administrator, action, sent):
    page = visit(administrator).post(f"/school/people/{administrator.pk}/{action}/", sent, follow=True)
    assert "A school needs one administrator." in page.content.decode()
    administrator.refresh_from_db()
    assert administrator.is_administrator
    assert administrator.is_active


def test_one_of_two_administrators_may_go(visit, administrator):
    second = UserFactory(administrator=True)
    visit(administrator).post(f"/school/people/{second.pk}/close/")
    second.refresh_from_db()
    assert not second.is_active


def test_a_closed_account_can_be_opened_again(visit, administrator, owner):
    owner.leave()
    visit(administrator).post(f"/school/people/{owner.pk}/reopen/")
    owner.refresh_from_db()
    assert owner.is_active


def test_the_list_of_people_takes_a_bounded_number_of_queries(visit, administrator, django_assert_max_num_queries):
    UserFactory.create_batch(30)
    browser = visit(administrator)
    with django_assert_max_num_queries(6):
        browser.get("/school/people/")
