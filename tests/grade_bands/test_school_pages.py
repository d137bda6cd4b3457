"""Classes, years, grades and bands, for administrators."""

from datetime import date, timedelta

import pytest
from django.utils import timezone

from grade_bands.models import ClassGroup, Grade, GradeBand, SchoolYear
from routines.models import Planned
from tests.factories import ClassGroupFactory, SchoolYearFactory
from tests.routines.making import make_lesson, make_routine

CLASSES = "/school/classes/"
PAGES = ["classes/", "classes/new/", "years/new/", "grades/", "grades/new/", "bands/new/"]
BUTTONS = ["standards/common-core/", "standards/import/", "standards/keep/"]


@pytest.mark.parametrize("page", PAGES)
def test_administrators_open_them_and_others_do_not(visit, administrator, owner, coach, page):
    assert visit(administrator).get(f"/school/{page}").status_code == 200
    assert visit(owner).get(f"/school/{page}").status_code == 403
    assert visit(coach).get(f"/school/{page}").status_code == 403


@pytest.mark.parametrize("button", BUTTONS)
def test_buttons_are_administrators_and_no_links(visit, administrator, owner, button):
    assert visit(owner).post(f"/school/{button}").status_code == 403
    assert visit(administrator).get(f"/school/{button}").status_code == 405


def class_fields(grade, year, *teachers, **changed) -> dict:
    return {
        "name": "2B",
        "grade": grade.pk,
        "year": year.pk,
        "teachers": [teacher.pk for teacher in teachers],
        "languages": ["en", "es"],
        **changed,
    }


def test_a_class_is_made_and_changed(visit, administrator, owner, grade_two, year):
    browser = visit(administrator)
    assert browser.post("/school/classes/new/", class_fields(grade_two, year, owner)).status_code == 302
    group = ClassGroup.objects.get(name="2B")
    assert list(group.teachers.all()) == [owner]
    assert group.languages == ["en", "es"]
    browser.post(f"/school/classes/{group.pk}/", class_fields(grade_two, year, name="2 Blue"))
    group.refresh_from_db()
    assert (group.name, group.teachers.count()) == ("2 Blue", 0)


@pytest.mark.parametrize(
    ("changed", "sentence"),
    [
        ({"name": ""}, "Write a name for the class."),
        ({"name": "2 Wren"}, "This year already has a class with this name."),
        ({"grade": ""}, "Choose a grade."),
        ({"languages": []}, "Choose at least one language."),
    ],
)
def test_a_wrong_class_is_one_sentence(visit, administrator, owner, grade_two, year, changed, sentence):
    response = visit(administrator).post("/school/classes/new/", {**class_fields(grade_two, year), **changed})
    assert response.status_code == 422
    assert sentence in response.content.decode()


def test_a_teacher_who_left_stays_listed_in_the_class_that_was_theirs(visit, administrator, owner):
    owner.leave()
    group = ClassGroup.objects.get(name="2 Wren")
    assert "Owner Ota" in visit(administrator).get(f"/school/classes/{group.pk}/").content.decode()
    assert "Owner Ota" not in visit(administrator).get("/school/classes/new/").content.decode()


def test_removing_a_class_asks_first_and_says_what_goes_with_it(visit, administrator, owner, year):
    group = ClassGroupFactory(name="2 Empty", year=year)
    Planned.objects.create(routine=make_routine(owner), class_group=group, on=year.starts_on, by=owner)
    client = visit(administrator)
    assert (
        f'href="/school/classes/{group.pk}/remove/" aria-label="Remove: 2 Empty, {year.name}"'
        in client.get(CLASSES).text
    )
    page = client.get(f"/school/classes/{group.pk}/remove/")
    assert f"Remove the class 2 Empty of {year.name}?" in page.text
    assert "What is planned for it goes with it." in page.text
    assert Planned.objects.exists()
    assert "Removed: 2 Empty." in client.post(f"/school/classes/{group.pk}/remove/", follow=True).text
    assert not ClassGroup.objects.filter(pk=group.pk).exists()
    assert not Planned.objects.exists()


def test_a_class_with_lessons_stays(visit, administrator, owner):
    make_lesson(make_routine(owner), owner)
    address = f"/school/classes/{owner.class_groups.get().pk}/remove/"
    assert "2 Wren has lessons, so it stays." in visit(administrator).post(address, follow=True).text
    assert owner.class_groups.exists()


def test_a_year_that_was_added_by_mistake_is_removed_and_one_with_classes_stays(visit, administrator, owner, year):
    mistaken = SchoolYearFactory(name="2027-28", starts_on=date(2027, 8, 16), ends_on=date(2028, 6, 16))
    client = visit(administrator)
    assert f'href="/school/years/{mistaken.pk}/remove/"' in client.get(CLASSES).text
    assert f'href="/school/years/{year.pk}/remove/"' not in client.get(CLASSES).text
    assert "Remove the year 2027-28?" in client.get(f"/school/years/{mistaken.pk}/remove/").text
    assert SchoolYear.objects.count() == 2
    assert "Removed: 2027-28." in client.post(f"/school/years/{mistaken.pk}/remove/", follow=True).text
    assert "has classes or lessons, so it stays" in client.post(f"/school/years/{year.pk}/remove/", follow=True).text
    assert list(SchoolYear.objects.all()) == [year]


def test_earlier_years_are_folded_away(visit, administrator):
    today = timezone.localdate()
    for name, weeks in (("long ago", -110), ("last year", -58), ("on now", -6), ("coming", 46)):
        first = today + timedelta(weeks=weeks)
        ClassGroupFactory(
            name=f"2 of {name}",
            year=SchoolYearFactory(name=name, starts_on=first, ends_on=first + timedelta(weeks=42)),
        )
    open_now, _summary, folded = visit(administrator).get(CLASSES).text.partition("Earlier years")
    for name in ("on now", "coming"):
        assert f"2 of {name}" in open_now
    for name in ("last year", "long ago"):
        assert f"2 of {name}" in folded


@pytest.mark.parametrize(
    ("changed", "sentence"),
    [
        ({"starts_on": "32 August"}, "Write a date such as 2026-08-15."),
        ({"ends_on": "2027-01-01"}, "Choose a last day after the first day."),
        ({"name": ""}, "Write a name, such as 2026-27."),
    ],
)
def test_a_wrong_year_is_one_sentence_and_keeps_what_was_typed(visit, administrator, changed, sentence):
    typed = {"name": "2027-28", "starts_on": "2027-08-16", "ends_on": "2028-06-16", **changed}
    response = visit(administrator).post("/school/years/new/", typed)
    page = response.content.decode()
    assert response.status_code == 422
    assert sentence in page
    assert f'value="{typed["starts_on"]}"' in page
    assert not SchoolYear.objects.exists()


def test_a_grade_keeps_the_areas_ticked_for_it(visit, administrator, grade_two):
    fields = {"name": "2", "order": 3, "level": 2, "band": grade_two.band.pk, "areas": ["whole", "ratios"]}
    visit(administrator).post(f"/school/grades/{grade_two.pk}/", fields)
    assert Grade.objects.get(pk=grade_two.pk).areas == ["whole", "ratios"]


def test_a_level_that_is_none_is_refused(visit, administrator, grade_two):
    fields = {"name": "2", "order": 3, "level": 12, "band": grade_two.band.pk, "areas": []}
    response = visit(administrator).post(f"/school/grades/{grade_two.pk}/", fields)
    assert response.status_code == 422
    assert "Choose a grade from kindergarten to 8." in response.content.decode()


def test_a_band_is_renamed(visit, administrator, middle_band):
    visit(administrator).post(f"/school/bands/{middle_band.pk}/", {"name": "Middle", "order": 2})
    assert GradeBand.objects.get(pk=middle_band.pk).name == "Middle"


def test_the_list_of_classes_takes_as_many_queries_with_many_classes_and_years_as_with_few(
    visit, administrator, grade_two, year, owner, django_assert_max_num_queries
):
    browser = visit(administrator)
    browser.get(CLASSES)
    with django_assert_max_num_queries(7) as few:
        browser.get(CLASSES)
        number = len(few)
    ClassGroupFactory.create_batch(20, grade=grade_two, year=year, teachers=[owner])
    for back in range(1, 5):
        days = {"starts_on": date(2026 - back, 8, 17), "ends_on": date(2027 - back, 6, 18)}
        earlier = SchoolYearFactory(name=f"{back} back", **days)
        ClassGroupFactory.create_batch(5, grade=grade_two, year=earlier, teachers=[owner])
    with django_assert_max_num_queries(number):
        browser.get(CLASSES)


def test_a_year_is_no_longer_than_coverage_can_show(visit, administrator):
    fields = {"name": "For ever", "starts_on": "0001-01-01", "ends_on": "9999-12-31"}
    response = visit(administrator).post("/school/years/new/", fields)
    assert response.status_code == 422
    assert "A school year has at most 400 days." in response.content.decode()
