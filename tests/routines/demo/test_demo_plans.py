"""Every plan of the demo school is a complete plan, and what it claims is so."""

import pytest

from routines.counting import check
from routines.demo.lessons import LESSONS, NOTES
from routines.demo.people import PEOPLE
from routines.demo.plans import PLANS
from routines.models.facts import area_of
from routines.models.plan_reading import read_document
from routines.models.shown_plan import ShownPlan

BY_KEY = {demo.key: demo for demo in PLANS}
plans = pytest.mark.parametrize("demo", PLANS, ids=lambda demo: demo.key)


def test_there_are_enough_plans_across_grades_areas_and_directions():
    shared = [demo.plan for demo in PLANS if demo.status == "shared"]
    assert len(shared) >= 24
    assert {plan.grade for plan in shared} == {"K", "1", "2", "3", "4", "5", "6"}
    assert {plan.area for plan in shared} >= {
        "whole",
        "integers",
        "decimals",
        "fractions",
        "measurement",
        "money",
        "time",
    }
    assert {plan.count.count().step > 0 for plan in shared} == {True, False}


@plans
def test_a_plan_reads_back_from_its_document(demo):
    assert read_document(demo.plan.as_dict()) == demo.plan


@plans
def test_the_area_is_the_one_its_numbers_belong_to(demo):
    assert demo.plan.area == area_of(demo.plan.count.count())


@plans
def test_every_target_is_seen_in_the_grid(demo):
    grid = demo.plan.grid()
    for claim in demo.plan.claims():
        alive = [
            cut for cut in range(grid.terms, 1, -1) if (verdict := check(claim, grid.cut(cut))).true and verdict.seen
        ]
        assert alive, claim.as_dict()


@plans
def test_every_target_can_be_lit(demo):
    shown = ShownPlan(demo.plan, 3)
    assert sum(item.target for item in shown.patterns) == len(demo.plan.targets)


@plans
def test_a_slip_is_something_other_than_what_should_be_said(demo):
    count = demo.plan.count.count()
    for answer in demo.plan.expected:
        if answer.sort == "slip":
            assert 1 <= answer.n <= count.terms
            assert answer.words not in (count.text(answer.n), count.words(answer.n), count.words(answer.n, "es"))


@plans
def test_the_shared_plans_are_complete(demo):
    if demo.status == "shared":
        assert demo.plan.targets
        assert demo.plan.expected
        assert demo.plan.stops
        assert demo.plan.next_counts


def test_lessons_and_notes_are_of_plans_and_people_that_exist():
    people = {person.sign_in_name: person for person in PEOPLE}
    for lesson in LESSONS:
        assert lesson.routine in BY_KEY
        assert lesson.class_name in {name for _, name, _ in people[lesson.teacher].classes}
        assert all(position < len(BY_KEY[lesson.routine].plan.targets) for position, _ in lesson.targets)
    for key, name, _ in NOTES:
        assert key in BY_KEY
        assert name in people


def test_no_text_of_the_demo_names_a_child():
    from accounts.names_of_children import look_like_names

    texts = [text for lesson in LESSONS for text in (lesson.seen, lesson.stuck, lesson.next_step, *lesson.noticed)]
    texts += [text for _, _, text in NOTES]
    assert [look_like_names(text) for text in texts] == [[]] * len(texts)
