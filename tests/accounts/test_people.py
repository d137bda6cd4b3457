"""The school's page: its settings and its people, for administrators."""

from functools import partial

import pytest
from django.utils.html import escape

from accounts.actions import LastAdministrator, change_role, close_account, invite
from accounts.models import School, User
from accounts.views.school import INVITATIONS_SHOWN, PEOPLE_ON_A_PAGE
from tests.at_once import at_once
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


@pytest.mark.django_db(transaction=True)
@pytest.mark.parametrize("way", [partial(change_role, role="teacher"), close_account])
def test_of_two_administrators_who_go_at_once_one_stays(administrator, way):
    def go(person: User) -> bool:
        try:
            way(person=User.objects.get(pk=person.pk))
        except LastAdministrator:
            return False
        return True

    other = UserFactory(administrator=True)
    assert sorted(at_once(lambda: go(administrator), lambda: go(other))) == [False, True]
    assert User.objects.administrators().count() == 1


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
    with django_assert_max_num_queries(7):
        browser.get("/school/people/")


@pytest.mark.parametrize("typed", ["lucia", "LUCÍA FER", "ferrer-ruiz", "ruiz lucía", "lfr"])
def test_somebody_is_found_by_a_part_of_a_name(visit, administrator, typed):
    UserFactory(display_name="Lucía Ferrer-Ruiz", sign_in_name="lfr")
    UserFactory(display_name="Ida Sørensen")
    page = visit(administrator).get("/school/people/", {"q": typed}).text
    assert "Lucía Ferrer-Ruiz" in page
    assert "Ida Sørensen" not in page


def test_every_typed_word_is_looked_for(visit, administrator):
    UserFactory(display_name="Lucía Ferrer-Ruiz")
    UserFactory(display_name="Lucía Sørensen")
    page = visit(administrator).get("/school/people/", {"q": "lucia fer"}).text
    assert "Lucía Ferrer-Ruiz" in page
    assert "Lucía Sørensen" not in page


def test_nobody_found_is_said_and_the_way_back_shown(visit, administrator):
    page = visit(administrator).get("/school/people/", {"q": "<Zebulon>"}).text
    assert "Nobody here is called “&lt;Zebulon&gt;”." in page
    assert "Show everybody" in page


def test_many_people_stand_on_pages_and_what_is_done_leads_back_to_the_same_one(visit, administrator):
    """A district's two thousand people would be a page of megabytes."""
    for number in range(PEOPLE_ON_A_PAGE + 5):
        UserFactory(display_name=f"Zoe {number:03}")
    browser = visit(administrator)
    assert "Zoe 052" not in browser.get("/school/people/").text
    second = browser.get("/school/people/?q=zoe&page=2").text
    assert "Zoe 049" not in second
    person = User.objects.get(display_name="Zoe 052")
    action = f"/school/people/{person.pk}/role/?q=zoe&page=2"
    assert escape(action) in second
    answer = browser.post(action, {"role": "coach"})
    assert answer.url == "/school/people/?q=zoe&page=2"
    person.refresh_from_db()
    assert person.is_coach


def test_many_open_invitations_are_shown_in_part_and_that_is_said(visit, administrator):
    for number in range(INVITATIONS_SHOWN + 1):
        invite(by=administrator, display_name=f"New {number:02}", role="teacher")
    page = visit(administrator).get("/school/people/").text
    assert "New 00," not in page
    assert f"New {INVITATIONS_SHOWN:02}," in page
    assert "These are the newest." in page


@pytest.mark.parametrize("open_ones", [6, 7])
def test_the_home_page_says_where_the_other_invitations_are(visit, administrator, open_ones):
    for number in range(open_ones):
        invite(by=administrator, display_name=f"Invited {number}", role=User.Role.TEACHER)
    home = visit(administrator).get("/").text
    assert home.count("<li>Invited ") == 6
    assert ('href="/school/people/#open-invitations">All open invitations</a>' in home) == (open_ones > 6)
    assert 'id="open-invitations"' in visit(administrator).get("/school/people/").text
