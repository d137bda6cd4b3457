"""Classes, years, grades and bands, for administrators."""

import pytest

from grade_bands.models import ClassGroup, Grade, GradeBand, SchoolYear
from tests.factories import ClassGroupFactory

PAGES = ["classes/", "classes/new/", "years/new/", "grades/", "grades/new/", "bands/new/"]
BUTTONS = ["standards/common-core/", "standards/import/", "standards/keep/", "classes/1/remove/"]


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


def test_an_empty_class_can_be_taken_away(visit, administrator):
    group = ClassGroupFactory()
    visit(administrator).post(f"/school/classes/{group.pk}/remove/")
    assert not ClassGroup.objects.filter(pk=group.pk).exists()


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


def test_the_list_of_classes_takes_a_bounded_number_of_queries(
    visit, administrator, grade_two, year, owner, django_assert_max_num_queries
):
    ClassGroupFactory.create_batch(20, grade=grade_two, year=year, teachers=[owner])
    browser = visit(administrator)
    with django_assert_max_num_queries(8):
        browser.get("/school/classes/")


def test_classes_are_listed_a_year_at_a_time(visit, administrator, grade_two, year):
    """The year that is on, or the one that is asked for; a year that nobody has is as if none were asked."""
    earlier = SchoolYear.objects.create(name="Before", starts_on="2001-09-03", ends_on="2002-06-14")
    ClassGroupFactory(name="2 Long ago", grade=grade_two, year=earlier)
    ClassGroupFactory(name="2 Now", grade=grade_two, year=year)
    browser = visit(administrator)
    for asked, there, not_there in (("", "2 Now", "2 Long ago"), (f"?year={earlier.pk}", "2 Long ago", "2 Now")):
        page = browser.get(f"/school/classes/{asked}").text
        assert there in page
        assert not_there not in page
    assert "Carry classes over" in browser.get("/school/classes/").text
    assert "Carry classes over" not in browser.get(f"/school/classes/?year={earlier.pk}").text
    assert "2 Now" in browser.get("/school/classes/?year=999999").text


def test_what_is_kept_leads_back_to_its_year(visit, administrator, grade_two, year):
    later = SchoolYear.objects.create(name="Later", starts_on="2101-09-03", ends_on="2102-06-14")
    browser = visit(administrator)
    answer = browser.post("/school/classes/new/", class_fields(grade_two, later))
    assert answer.url == f"/school/classes/?year={later.pk}"
    group = ClassGroup.objects.get(year=later)
    assert browser.post(f"/school/classes/{group.pk}/remove/").url == f"/school/classes/?year={later.pk}"


def test_a_year_is_no_longer_than_coverage_can_show(visit, administrator):
    fields = {"name": "For ever", "starts_on": "0001-01-01", "ends_on": "9999-12-31"}
    response = visit(administrator).post("/school/years/new/", fields)
    assert response.status_code == 422
    assert "A school year has at most 400 days." in response.content.decode()
