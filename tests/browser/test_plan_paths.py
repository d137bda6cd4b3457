"""Whole paths over the plan page in a real browser: back from the print, taking, designing, another decimal mark, a phone."""

import re

import pytest
from playwright.sync_api import Page, expect

from routines.models import PlanDraft, Routine
from tests.routines.plan_sheets import saved_plan

pytestmark = pytest.mark.django_db(transaction=True)

SAVED = re.compile(r"/routines/\d+/edit/$")
PHONE = {"width": 360, "height": 760, "has_touch": True}


@pytest.fixture(autouse=True)
def _grades(grade_two, grade_three) -> None:
    """The grades of the cast are there in every test."""


def by_six(page: Page) -> None:
    page.goto("/plans/new/")
    page.fill("#id_start", "10")
    page.fill("#id_step", "6")
    expect(page.locator("#plan-picture")).to_contain_text("154")


def test_going_back_after_print_or_save_shows_the_plan_that_was_saved(open_as, owner):
    page = open_as(owner)
    by_six(page)
    new = page.url
    with page.expect_response(re.compile(r"/routines/\d+/plan\.pdf$")):
        page.get_by_role("button", name="Print", exact=True).click()
    # The PDF is fetched beside the page, so the page stands as a browser that kept it alive gives it back.
    assert page.url == new
    page.evaluate("dispatchEvent(new PageTransitionEvent('pageshow', { persisted: true }))")
    expect(page).to_have_url(SAVED)
    expect(page.locator("#id_start")).to_have_value("10")
    expect(page.locator("#plan-undo")).not_to_contain_text("Not saved yet")

    # A browser that kept nothing alive asks again, and is led to the saved plan.
    by_six(page)
    page.get_by_role("button", name="Save", exact=True).click()
    expect(page).to_have_url(SAVED)
    saved = page.url
    page.go_back()
    expect(page).to_have_url(saved)
    expect(page.locator("#id_start")).to_have_value("10")
    assert Routine.objects.filter(owner=owner).count() == 2


def test_what_nobody_saved_stays_as_it_was_typed_when_one_comes_back(open_as, owner):
    page = open_as(owner)
    by_six(page)
    expect(page.locator("#plan-kept")).to_contain_text("kept", timeout=10_000)
    page.goto("/lessons/")
    page.go_back()
    expect(page.locator("#id_start")).to_have_value("10")
    expect(page.locator("#plan-picture")).to_contain_text("154")


def test_a_taken_suggestion_is_seen_to_arrive_and_a_draft_is_thrown_away_knowingly(open_as, owner):
    page = open_as(owner)
    by_six(page)
    page.get_by_role("button", name="Suggest stops").click()
    take = page.locator("#idea-stops .plan-take").first
    assert take.bounding_box()["height"] >= 44
    take.click()
    arrived = page.locator("#written-stops .stop-card")
    expect(arrived).to_have_class(re.compile("arrived"))
    expect(arrived).to_be_focused()
    expect(arrived).to_be_in_viewport()
    expect(page.get_by_role("status").filter(has_text="A stop was added.")).to_be_visible()
    expect(arrived).not_to_have_class(re.compile("arrived"))

    page.locator("#part-folds").scroll_into_view_if_needed()
    mine = page.locator("#plan-folds .fold-mine")
    expect(mine).to_contain_text("5 in a line")
    expect(mine).to_be_in_viewport()
    scales = page.eval_on_selector_all(
        "#plan-folds svg",
        "all => [...new Set(all.map((svg) => (svg.getBoundingClientRect().width / svg.viewBox.baseVal.width).toFixed(1)))]",
    )
    assert scales == ["1.0"]
    page.get_by_role("button", name=re.compile("Fold it this way.* 10 in a line")).click()
    expect(mine).to_contain_text("10 in a line")

    page.goto("/plans/")
    page.get_by_role("button", name=re.compile("^Remove")).click()
    expect(page.get_by_text("By 6 from 10, 25 counts, across, 10 in a line")).to_be_visible()
    page.get_by_role("link", name="Keep it").click()
    expect(page.locator("#id_line_length")).to_have_value("10")
    page.get_by_role("button", name="Remove this draft").click()
    page.get_by_role("button", name="Remove it").click()
    expect(page.get_by_text("The unfinished plan is gone.")).to_be_visible()
    assert not PlanDraft.objects.exists()


def test_a_design_for_an_area_becomes_a_count_in_another_mark(open_as, owner):
    page = open_as(owner)
    page.goto("/plans/new/?grade=3&area=decimals&design=1#tool-design")
    expect(page.locator("#id_kind")).to_have_value("decimal")
    expect(page.get_by_label("starting from")).to_have_count(0)
    page.get_by_label("landmarks stand in one column").check()
    expect(page.get_by_label("starting from")).to_have_value("0")
    page.locator("#design-box .plan-take").first.click()
    expect(page.locator("#plan-picture")).to_contain_text("1.0")
    expect(page.locator("#id_step")).to_have_value("0.1")

    page.get_by_text("Check a claim").click()
    page.select_option("[name='claim-saying']", "jump")
    page.locator("[name='claim-jump']").fill("0,5")  # the other mark, and no doubt what is meant
    expect(page.locator("#claim-box .verdict")).to_contain_text("Yes")
    page.get_by_text("How it is written and said").click()
    page.focus("#id_style-decimal_mark")
    page.select_option("#id_style-decimal_mark", ",")
    expect(page.locator("#id_step")).to_have_value("0,1")
    expect(page.locator("#plan-picture")).to_contain_text("1,1")
    expect(page.locator("#id_style-decimal_mark")).to_be_focused()
    page.locator("[name='claim-jump']").fill("0.5")
    expect(page.locator("#claim-box .verdict")).to_contain_text("Yes")
    page.fill("#id_start", "1.325")
    expect(page.locator("#plan-wrong")).to_contain_text("“1.325” is read as 1325.")


def test_on_a_phone_the_page_stays_short_and_the_grid_leaves_more_than_half(open_as, owner):
    routine = saved_plan(owner)
    page = open_as(owner, **PHONE)
    page.goto(f"/routines/{routine.pk}/edit/")
    sections = {"stops": "Suggest stops", "said": "Suggest what they may say", "next": "Suggest next counts"}
    for section, ask in sections.items():
        page.locator(f"#part-{section} > summary").tap()
        page.get_by_role("button", name=ask).tap()
        expect(page.locator(f"#ideas-{section} .plan-take").first).to_be_visible()
        assert page.locator("[data-plan-part][open]").count() == 1
        assert page.evaluate("document.documentElement.scrollHeight") < 4 * PHONE["height"]
        assert page.evaluate("document.documentElement.scrollWidth - innerWidth") == 0
    page.locator("#part-said > summary").tap()
    page.locator("#ideas-said .say-offered", has_text="slip").get_by_role("button").first.tap()
    expect(page.locator("#written-slips .slip")).to_be_in_viewport()

    picture, bar = page.locator("#plan-picture"), page.locator(".plan-head .action-bar")
    for scrolled in range(0, 900, 60):
        page.evaluate(f"scrollTo(0, {scrolled})")
        box = picture.bounding_box()
        covering = page.evaluate(
            "([x, y]) => document.elementFromPoint(x, y).closest('#plan-picture, .plan-head')?.id",
            [180, box["y"] + box["height"] - 20],
        )
        assert covering == "plan-picture"
    assert picture.bounding_box()["y"] == 0
    left = bar.bounding_box()["y"] - picture.bounding_box()["height"]
    assert left > PHONE["height"] / 2
