"""Who teaches a class is ticked or named; a page has everybody's names once, however many classes it has."""

import pytest
from django.core.exceptions import ValidationError

from grade_bands.models import ClassGroup, SchoolYear
from grade_bands.teachers import Everybody
from grade_bands.turning import CLASSES_AT_ONCE
from tests.factories import ClassGroupFactory, UserFactory

NEW = "/school/years/new/"


@pytest.fixture
def namesakes(db):
    return [UserFactory(display_name="Rosa Ibarra", sign_in_name=name) for name in ("ibarra", "ribarra")]


def class_fields(group: ClassGroup, **changed) -> dict:
    fields = {"name": group.name, "grade": group.grade_id, "year": group.year_id, "languages": ["en"]}
    return {**fields, **changed}


@pytest.mark.parametrize("typed", ["Ximena Underwood", "ximena underwood ", "UNDERWOOD"])
def test_who_is_meant_is_found_by_name_or_name_for_signing_in(db, typed):
    person = UserFactory(display_name="Ximena Underwood", sign_in_name="underwood")
    assert Everybody([person, UserFactory()]).find(typed) == person.pk


def test_who_shares_a_name_is_offered_with_the_one_for_signing_in(namesakes):
    everybody = Everybody(namesakes)
    assert list(everybody.named.values()) == ["Rosa Ibarra (ibarra)", "Rosa Ibarra (ribarra)"]
    assert everybody.find("Rosa Ibarra (ribarra)") == everybody.find("ribarra") == namesakes[1].pk
    with pytest.raises(ValidationError, match="More than one person is called “Rosa Ibarra”"):
        everybody.find("Rosa Ibarra")


def test_a_teacher_is_unticked_and_two_are_named(visit, administrator, owner, teammate, other_teacher, grade_two, year):
    group = ClassGroupFactory(name="2 Otter", grade=grade_two, year=year, teachers=[owner])
    browser = visit(administrator)
    address = f"/school/classes/{group.pk}/"
    assert f'value="{owner.pk}" checked' in browser.get(address).text
    named = [teammate.display_name, other_teacher.sign_in_name, "  "]
    assert browser.post(address, class_fields(group, **{"teachers-named": named})).status_code == 302
    assert set(group.teachers.all()) == {teammate, other_teacher}


def test_what_was_typed_stays_where_it_is_refused(visit, administrator, owner, teammate, grade_two, year, namesakes):
    group = ClassGroupFactory(name="2 Otter", grade=grade_two, year=year, teachers=[owner])
    sent = class_fields(group, **{"teachers": [teammate.pk], "teachers-named": ["Rosa Ibarra", "Quentin <Nobody>"]})
    answer = visit(administrator).post(f"/school/classes/{group.pk}/", sent)
    assert answer.status_code == 422
    assert "More than one person is called “Rosa Ibarra”." in answer.text
    assert 'value="Rosa Ibarra"' in answer.text
    assert 'value="Quentin &lt;Nobody&gt;"' in answer.text
    assert f'value="{teammate.pk}" checked' in answer.text
    assert f'value="{owner.pk}">' in answer.text
    assert list(group.teachers.all()) == [owner]


def test_who_left_stays_a_teacher_until_unticked_and_is_not_offered(
    visit, administrator, owner, teammate, year, grade_two
):
    group = ClassGroupFactory(name="2 Otter", grade=grade_two, year=year, teachers=[owner, teammate])
    teammate.leave()
    browser = visit(administrator)
    address = f"/school/classes/{group.pk}/"
    assert f'<option value="{teammate.display_name}">' not in browser.get(address).text
    sent = class_fields(group, teachers=[owner.pk, teammate.pk])
    assert browser.post(address, sent).status_code == 302
    assert group.teachers.count() == 2
    refused = browser.post(address, class_fields(group, **{"teachers-named": [teammate.display_name]}))
    assert f"Nobody here is called “{teammate.display_name}”." in refused.text


def test_a_new_year_names_everybody_once(visit, administrator, grade_two, year):
    """Forty classes and forty people are not sixteen hundred boxes."""
    people = [UserFactory(display_name=f"Person {number:02}") for number in range(40)]
    for number in range(40):
        ClassGroupFactory(name=f"Room {number:02}", grade=grade_two, year=year, teachers=[people[0]])
    page = visit(administrator).get(NEW).text
    for person in people[1:]:
        assert page.count(person.display_name) == 1


def test_a_district_carries_its_classes_over_some_at_a_time(visit, administrator, grade_two, year, owner):
    SchoolYear.objects.filter(pk=year.pk).update(name="2026-27", starts_on="2026-08-17", ends_on="2027-06-18")
    ClassGroup.objects.all().delete()
    for number in range(CLASSES_AT_ONCE + 7):
        ClassGroupFactory(name=f"Room {number:03}", grade=grade_two, year=year, teachers=[owner])
    before = list(ClassGroup.objects.order_by("pk").values())
    browser = visit(administrator)

    def sent(groups) -> dict:
        fields = {"name": "2027-28", "starts_on": "2027-08-16", "ends_on": "2028-06-16"}
        for group in groups:
            as_it_is = {"carried": "on", "name": group.name, "grade": group.grade_id, "teachers": [owner.pk]}
            fields |= {f"class{group.pk}-{name}": value for name, value in as_it_is.items()}
        return fields

    page = browser.get(NEW).text
    assert f"These are classes 1 to {CLASSES_AT_ONCE} of {CLASSES_AT_ONCE + 7}." in page
    groups = list(ClassGroup.objects.in_grade_order())
    answer = browser.post(NEW, sent(groups))
    coming = SchoolYear.objects.get(name="2027-28")
    assert coming.class_groups.count() == CLASSES_AT_ONCE
    assert answer.url == f"/school/years/{coming.pk}/carry-over/?page=2"
    page = browser.get(answer.url).text
    assert 'value="Room 106"' in page
    assert 'value="Room 099"' not in page
    last = browser.post(answer.url, sent(groups[CLASSES_AT_ONCE:]))
    assert last.url == f"/school/classes/?year={coming.pk}"
    assert coming.class_groups.filter(teachers=owner).count() == CLASSES_AT_ONCE + 7
    assert list(year.class_groups.order_by("pk").values()) == before
    listed = browser.get(last.url).text
    assert "Room 099" in listed
    assert "Room 100" not in listed
    assert "Room 100" in browser.get(f"{last.url}&page=2").text
