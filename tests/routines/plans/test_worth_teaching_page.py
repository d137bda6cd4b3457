"""Counts worth teaching as a page: choosing, six at once, and a plan page that opens with all of it filled in."""

import re
from html import unescape

import pytest
from django.urls import reverse

from routines.counting import Claim, check
from routines.models import PlanDraft, Routine
from routines.plans.forms.draft import only
from routines.plans.forms.plan import PlanForm
from tests.factories import StandardFactory

ADDRESS = "/plans/worth-teaching/"


def page_of(client, **asked) -> str:
    answer = client.get(ADDRESS, asked)
    assert answer.status_code == 200
    return answer.content.decode()


def plans_of(html: str) -> list[str]:
    return [unescape(found) for found in re.findall(rf'href="({reverse("plan_new")}\?kind=[^"]+)"', html)]


@pytest.fixture
def by_fives(grade_two):
    return StandardFactory(
        grade=grade_two, code="LS.2.7", count_features="fit=direct; step=5|10; start=any; max=1000; cross=100"
    )


def test_a_teacher_finds_six_for_her_grade_that_differ(owner, visit):
    plans = plans_of(page_of(visit(owner)))
    assert len(plans) == len(set(plans)) == 6


def test_there_are_more_on_request_and_no_more_than_three_pages(owner, visit, by_fives):
    client = visit(owner)
    asked = {"grade": "2", "about": str(by_fives.pk)}
    pages = [plans_of(page_of(client, **asked, page=number)) for number in (1, 2, 3, 4)]
    assert [len(set(plans)) for plans in pages] == [6, 6, 6, 6]
    assert len({plan for plans in pages for plan in plans}) == 18
    assert pages[3] == pages[2]


def test_one_click_fills_the_plan_page_and_saves_nothing(owner, visit, by_fives):
    client = visit(owner)
    for address in plans_of(page_of(client, grade="2", about=str(by_fives.pk))):
        answer = client.get(address, follow=True)
        form: PlanForm = answer.context["form"]
        assert answer.status_code == 200
        assert form.reading is not None
        assert form.reading.title in answer.content.decode()
        assert (form.reading.grade, form.reading.area, form.reading.standards) == ("2", "whole", ("LS.2.7",))
        assert 1 <= len(form.reading.targets) == len(form.targets) <= 2
        assert form.reading.count.step.removeprefix("-") in ("5", "10")
        lasting = check(Claim.from_dict(dict(form.targets[0].claim)), form.reading.grid())
        assert (lasting.true, lasting.holds) == (True, "always")
    assert not Routine.objects.exists()
    assert not PlanDraft.objects.exists()


def test_what_was_filled_in_is_saved_when_the_teacher_saves(owner, visit, by_fives, all_through):
    client = visit(owner)
    address = plans_of(page_of(client, grade="2", about=str(by_fives.pk)))[0]
    answer = client.get(address, follow=True)
    with all_through():
        typed = answer.context["form"].typed
        saved = client.post(answer.request["PATH_INFO"], {**typed, "do": "save"})
    assert saved.status_code == 302
    plan = Routine.objects.get().plan
    assert plan.title == only(typed, "title")
    assert len(plan.targets) == len(typed["target"])


@pytest.mark.parametrize(
    ("about", "said"),
    [
        ("ratios", "takes two counts side by side"),
        ("fractions", "does not count with these numbers yet"),
    ],
)
def test_where_there_are_none_a_sentence_says_why(owner, visit, about, said):
    html = page_of(visit(owner), grade="2", about=about)
    assert said in html
    assert plans_of(html) == []
    assert "Plan one yourself" in html


def test_a_narrow_standard_says_that_these_are_all(owner, visit, grade_two):
    narrow = StandardFactory(grade=grade_two, count_features="fit=direct; step=37; start=2; terms<=4")
    assert "leaves room for no" in page_of(visit(owner), grade="2", about=str(narrow.pk))


def test_a_standard_whose_features_cannot_be_read_is_said_and_the_page_stays(owner, visit, grade_two):
    broken = StandardFactory(grade=grade_two, count_features="fit=direct; step=banana")
    html = page_of(visit(owner), grade="2", about=str(broken.pk))
    assert plans_of(html) == []
    assert "banana" in html


@pytest.mark.parametrize(
    "asked", [{}, {"grade": "no such"}, {"about": "x" * 500}, {"about": "0"}, {"page": "x"}, {"language": "xx"}]
)
def test_what_is_not_on_offer_gives_way_to_the_first_that_is(owner, visit, asked):
    assert len(plans_of(page_of(visit(owner), **asked))) == 6


def test_another_grade_takes_its_own_area_where_a_standard_was_chosen(owner, visit, by_fives, grade_three):
    html = page_of(visit(owner), grade="3", about=str(by_fives.pk))
    assert 'value="whole" selected' in html
    assert "LS.2.7" not in html


def test_it_speaks_spanish_where_the_school_does(owner, visit, school):
    school.languages = ["en", "es"]
    school.save()
    html = page_of(visit(owner), language="es")
    assert "Pregunta por" in html
    assert all("language=es" in plan for plan in plans_of(html))


def test_numbers_are_written_as_the_school_writes_them(owner, visit, school, grade_five):
    school.decimal_mark, school.thousands, school.currency = ",", " ", "EUR"
    school.save()
    plans = plans_of(page_of(visit(owner), grade=grade_five.name, about="decimals"))
    answer = visit(owner).get(plans[0], follow=True)
    assert "," in only(answer.context["form"].typed, "step")
    assert answer.context["form"].reading is not None


def test_a_school_without_grades_is_told_what_to_do(coach, visit):
    assert "Set up grades" in page_of(visit(coach))


def test_only_looking_is_allowed_and_only_signed_in(owner, visit, signed_out):
    assert visit(owner).post(ADDRESS).status_code == 405
    assert signed_out.get(ADDRESS).status_code == 302


def test_a_choice_brings_its_part_of_the_page(owner, visit):
    part = visit(owner).get(ADDRESS, {"grade": "2"}, headers={"HX-Request": "true"}).content.decode()
    assert "<html" not in part
    assert part.lstrip().startswith('<section id="worth"')


def test_however_many_standards_there_are_the_queries_are_the_same(
    owner, visit, grade_two, django_assert_max_num_queries
):
    client = visit(owner)
    page_of(client)
    for _ in range(2):
        StandardFactory.create_batch(15, grade=grade_two, count_features="fit=direct; step=5; max=100")
        with django_assert_max_num_queries(10):
            page_of(client)


def test_coverage_the_bank_and_a_new_plan_lead_there(owner, coach, visit, grade_two, year):
    grade_two.areas = ["whole", "money"]
    grade_two.save()
    assert f'href="{ADDRESS}?grade=2&amp;about=money"' in visit(owner).get("/coverage/").content.decode()
    cell = visit(owner).get(f"/coverage/{grade_two.pk}/money/").content.decode()
    assert f'href="{ADDRESS}?grade=2&amp;about=money"' in cell
    assert (
        f'href="{ADDRESS}?grade=2"' in visit(owner).get(reverse("bank"), {"grade": "2", "step": "77"}).content.decode()
    )
    new = visit(owner).get("/plans/new/?grade=2", follow=True).content.decode()
    assert f'href="{ADDRESS}?grade=2"' in new
