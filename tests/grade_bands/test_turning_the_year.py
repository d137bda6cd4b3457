"""A new year is one page: dates proposed, last year's classes carried over, nothing of last year changed."""

from datetime import date

import pytest

from grade_bands.models import ClassGroup, SchoolYear
from tests.factories import ClassGroupFactory, UserFactory

NEW = "/school/years/new/"


@pytest.fixture
def last(year, grade_two, grade_three, owner, teammate):
    """The school's year, with two classes of its own."""
    SchoolYear.objects.filter(pk=year.pk).update(name="2026-27", starts_on="2026-08-17", ends_on="2027-06-18")
    ClassGroup.objects.all().delete()
    wren = ClassGroupFactory(name="2 Wren", grade=grade_two, year=year, teachers=[owner], languages=["en", "es"])
    heron = ClassGroupFactory(name="3 Heron", grade=grade_three, year=year, teachers=[owner, teammate])
    year.refresh_from_db()
    return {"year": year, "wren": wren, "heron": heron}


def typed(last, *kept, **changed) -> dict:
    """What the page sends when these classes are ticked."""
    fields = {"name": "2027-28", "starts_on": "2027-08-16", "ends_on": "2028-06-16"}
    for group in (last["wren"], last["heron"]):
        fields |= {
            f"class{group.pk}-name": group.name,
            f"class{group.pk}-grade": str(group.grade_id),
            f"class{group.pk}-teachers": [str(teacher.pk) for teacher in group.teachers.all()],
        }
        if group in kept:
            fields[f"class{group.pk}-carried"] = "on"
    return fields | changed


def test_dates_a_name_and_all_classes_are_proposed(visit, administrator, last):
    page = visit(administrator).get(NEW).text
    for value in ('value="2027-28"', 'value="2027-08-16"', 'value="2028-06-16"'):
        assert value in page
    assert date(2026, 8, 17).weekday() == date(2027, 8, 16).weekday()
    for group in (last["wren"], last["heron"]):
        assert f'name="class{group.pk}-carried" id="id_class{group.pk}-carried" checked' in page
        assert f'value="{group.name}"' in page


def test_what_is_ticked_is_made_again_and_last_year_stays(visit, administrator, last, other_teacher):
    before = list(ClassGroup.objects.order_by("pk").values())
    wren = last["wren"].pk
    fields = typed(
        last, last["wren"], **{f"class{wren}-name": "3 Wren", f"class{wren}-teachers": [str(other_teacher.pk)]}
    )
    answer = visit(administrator).post(NEW, fields, follow=True)
    assert "Kept: 2027-28, 1 class added." in answer.text
    made = ClassGroup.objects.get(year__name="2027-28")
    assert (made.name, made.languages, list(made.teachers.all())) == ("3 Wren", ["en", "es"], [other_teacher])
    assert list(ClassGroup.objects.exclude(pk=made.pk).order_by("pk").values()) == before
    assert list(last["wren"].teachers.values_list("display_name", flat=True)) == ["Owner Ota"]


def test_a_class_that_came_in_since_the_page_was_opened_is_left_alone(visit, administrator, last, grade_two):
    fields = typed(last, last["wren"])
    ClassGroupFactory(name="2 Otter", grade=grade_two, year=last["year"])
    assert visit(administrator).post(NEW, fields).status_code == 302
    assert list(ClassGroup.objects.filter(year__name="2027-28").values_list("name", flat=True)) == ["2 Wren"]


def test_it_runs_again_safely(visit, administrator, last):
    browser = visit(administrator)
    browser.post(NEW, typed(last, last["wren"]))
    coming = SchoolYear.objects.get(name="2027-28")
    page = browser.get(NEW).text
    assert "The year 2027-28 is there already." in page
    address = f"/school/years/{coming.pk}/carry-over/"
    assert f'href="{address}"' in page
    page = browser.get(address).text
    assert "there already" in page
    assert f'id="id_class{last["wren"].pk}-carried" checked' not in page
    assert f'id="id_class{last["heron"].pk}-carried" checked' in page
    browser.post(address, typed(last, last["heron"]))
    again = browser.post(address, typed(last, last["heron"]))
    assert again.status_code == 422
    assert "This year already has a class with this name." in again.text
    names = coming.class_groups.in_grade_order().values_list("name", flat=True)
    assert list(names) == ["2 Wren", "3 Heron"]


@pytest.mark.parametrize(
    ("changed", "sentence"),
    [
        ({"class-name": ""}, "Write a name for the class."),
        ({"class-name": "3 Heron"}, "This year already has a class with this name."),
        ({"class-grade": "99999"}, "Select a valid choice"),
        ({"class-teachers": ["nobody"]}, "Choose from the list."),
        ({"class-teachers-named": ["Nobody Known"]}, "Nobody here is called “Nobody Known”."),
        ({"starts_on": "2027-06-01"}, "The year 2026-27 runs from August 17, 2026 to June 18, 2027."),
        ({"name": "2026-27"}, "There is a year with this name."),
    ],
)
def test_what_is_wrong_is_said_at_its_place_and_nothing_is_kept(visit, administrator, last, changed, sentence):
    wren = last["wren"].pk
    changed = {name.replace("class-", f"class{wren}-"): value for name, value in changed.items()}
    answer = visit(administrator).post(NEW, typed(last, last["wren"], last["heron"], **changed))
    assert answer.status_code == 422
    assert sentence in answer.text
    assert "Nothing is kept yet." in answer.text
    assert SchoolYear.objects.count() == 1
    assert ClassGroup.objects.count() == 2


def test_what_is_no_form_is_a_form_left_empty(visit, administrator, last):
    answer = visit(administrator).post(NEW, "{}", content_type="application/json")
    assert answer.status_code == 422
    assert "Write a name, such as 2026-27." in answer.text


def test_who_has_left_is_named_and_not_ticked(visit, administrator, last, teammate):
    teammate.leave()
    page = visit(administrator).get(NEW).text
    assert f"No longer here: {teammate.display_name}" in page
    assert f'value="{teammate.pk}"' not in page


def test_a_first_year_has_no_classes_to_carry_over(visit, administrator):
    SchoolYear.objects.all().delete()
    page = visit(administrator).get(NEW).text
    assert "There is no earlier year" in page
    assert visit(administrator).get("/school/years/12345/carry-over/").status_code == 404


def test_only_administrators(visit, owner, coach, last):
    for person in (owner, coach):
        for address in (NEW, f"/school/years/{last['year'].pk}/carry-over/"):
            assert visit(person).get(address).status_code == 403
            assert visit(person).post(address).status_code == 403


def test_twelve_classes_take_as_many_queries_as_two(
    visit, administrator, last, grade_two, django_assert_max_num_queries
):
    browser = visit(administrator)
    ClassGroupFactory.create_batch(12, grade=grade_two, year=last["year"], teachers=[UserFactory(), UserFactory()])
    with django_assert_max_num_queries(10):
        browser.get(NEW)
