"""Writing a plan in a real browser: by keyboard alone, by touch, without scripts, and with what may go wrong."""

import re

import pytest
from playwright.sync_api import Page, Route, expect

from routines.models import PlanDraft, Routine
from tests.browser.axe import faults_in_both_themes
from tests.routines.plan_sheets import saved_plan

pytestmark = pytest.mark.django_db(transaction=True)


@pytest.fixture(autouse=True)
def _grades(grade_two, grade_three) -> None:
    """The grades of the cast are there in every test."""


def reach(page: Page, selector: str) -> None:
    """Tab until the field is reached, as somebody without a mouse does."""
    wanted = page.locator(selector).first
    for _ in range(400):
        if wanted.evaluate("field => field === document.activeElement"):
            return
        page.keyboard.press("Tab")
    raise AssertionError(f"{selector} cannot be reached by the keyboard")


def kept(page: Page) -> None:
    expect(page.locator("#plan-kept")).to_contain_text("kept", timeout=10_000)


def test_what_is_typed_before_the_scripts_run_is_previewed_and_kept(open_as, owner):
    page = open_as(owner)
    late: list[Route] = []
    page.route(re.compile(r"/js/plan\..*js"), lambda route: late.append(route))
    page.goto("/plans/new/", wait_until="commit")
    page.locator("#id_step").fill("6")
    page.locator("#id_start").fill("10")
    page.locator("[name=title]").fill("Early sixes")
    assert late, "the script is not held back"
    for route in late:
        route.continue_()
    expect(page.locator("#plan-picture")).to_contain_text("154")
    kept(page)
    fields = PlanDraft.objects.get().fields
    assert "Early sixes" in str(fields)


def test_a_plan_is_written_by_keyboard_alone(open_as, owner):
    page = open_as(owner)
    problems: list[str] = []
    page.on("console", lambda said: problems.append(said.text) if "Content Security" in said.text else None)
    page.on("pageerror", lambda error: problems.append(str(error)))
    page.goto("/plans/new/")

    reach(page, "#id_step")
    page.keyboard.type("6")
    reach(page, "#id_start")
    page.keyboard.type("10")
    expect(page.locator("#plan-picture")).to_contain_text("154")

    reach(page, "#plan-list input[name=target]")
    page.keyboard.press("Space")
    expect(page.locator("#plan-list input[name=target]:checked")).to_have_count(1)

    reach(page, "text=Suggest stops")
    page.keyboard.press("Enter")
    reach(page, "#idea-stops .plan-take")
    page.keyboard.press("Enter")
    expect(page.locator("#written-stops .stop-card")).to_have_count(1)

    reach(page, "#add-expected")
    page.keyboard.press("Enter")
    expect(page.locator("[name='expected-0-words']")).to_be_focused()
    page.keyboard.type("The ones go 0, 6, 2, 8, 4.")
    reach(page, "text=Suggest what they may say")
    page.keyboard.press("Enter")
    reach(page, "#idea-says .plan-take")
    page.keyboard.press("Enter")
    expect(page.locator("#written-said .say")).to_have_count(2)

    page.locator("#part-folds").scroll_into_view_if_needed()
    reach(page, "#plan-folds .plan-take")
    page.keyboard.press("Enter")
    expect(page.locator("#id_line_length")).not_to_have_value("5")

    reach(page, "button[value=save]")
    page.keyboard.press("Enter")
    expect(page).to_have_url(re.compile(r"/routines/\d+/edit/"))
    plan = Routine.objects.get(owner=owner).plan
    assert (plan.count.start, plan.count.step, len(plan.stops), len(plan.expected)) == ("10", "6", 1, 2)
    assert plan.fold.line_length != 5
    assert problems == []


def test_from_an_empty_page_to_the_print_in_few_steps(open_as, owner):
    """Each press, tick or field typed into is a step: start, step, one target, stops, two answers, print; Back is one more."""
    page = open_as(owner)
    page.goto("/plans/new/")
    steps = 0

    def step(action, *given) -> None:
        nonlocal steps
        action(*given)
        steps += 1

    step(page.fill, "#id_start", "10")
    step(page.fill, "#id_step", "6")
    expect(page.locator("#plan-picture")).to_contain_text("154")
    step(page.locator("#plan-list input[name=target]").first.check)
    step(page.get_by_role("button", name="Suggest stops").click)
    step(page.locator("#idea-stops .plan-take").first.click)
    expect(page.locator("#written-stops .stop-card")).to_have_count(1)
    step(page.get_by_role("button", name="Suggest what they may say").click)
    for taken in (1, 2):
        first = page.locator("#idea-says .plan-take").first
        suggestion = first.get_attribute("value")
        step(first.click)
        expect(page.locator("#written-said .say")).to_have_count(taken)
        expect(first).not_to_have_attribute("value", suggestion)  # pressed twice, one suggestion is taken once
    with page.expect_response(re.compile(r"/routines/\d+/plan\.pdf$")):
        step(page.get_by_role("button", name="Print", exact=True).click)
    plan = Routine.objects.get(owner=owner).plan
    assert (len(plan.targets), len(plan.stops), len(plan.expected)) == (1, 1, 2)
    assert steps == 9


def test_a_phone_keeps_the_grid_on_top_and_nothing_scrolls_sideways(open_as, owner):
    routine = saved_plan(owner)
    page = open_as(owner, width=360, height=760, has_touch=True)
    page.goto(f"/routines/{routine.pk}/edit/")
    page.locator("#part-stops > summary").tap()
    page.get_by_role("button", name="Add a stop").tap()
    expect(page.locator("#written-stops .stop-card")).to_have_count(2)
    page.locator("#part-folds > summary").tap()
    expect(page.locator("#plan-folds .fold").first).to_be_visible()
    assert page.locator("#plan-picture").bounding_box()["y"] == 0
    assert page.evaluate("document.documentElement.scrollWidth - innerWidth") == 0
    expect(page.get_by_role("button", name="Save", exact=True)).to_be_in_viewport()


def test_a_closed_browser_loses_nothing(open_as, owner):
    page = open_as(owner)
    page.goto("/plans/new/")
    page.fill("#id_start", "8")
    page.fill("#id_step", "9")
    kept(page)
    address = page.url
    page.fill("#id_title", "Words typed at the last moment")
    page.close(run_before_unload=False)
    again = open_as(owner)
    again.goto(address)
    expect(again.locator("#id_start")).to_have_value("8")
    expect(again.locator("#id_title")).to_have_value("Words typed at the last moment")


def test_a_wrong_step_says_so_beside_it_and_stays_typed(open_as, owner):
    page = open_as(owner)
    page.goto("/plans/new/")
    page.fill("#id_start", "8")
    page.fill("#id_step", "0")
    expect(page.locator("#wrong-step")).to_have_text("Choose a step other than 0.")
    expect(page.locator("#id_step")).to_have_attribute("aria-invalid", "true")
    expect(page.locator("#id_step")).to_have_value("0")
    page.fill("#id_step", "4")
    expect(page.locator("#plan-picture")).to_contain_text("12")
    expect(page.locator("#id_step")).not_to_have_attribute("aria-invalid", "true")


def test_a_session_that_ended_leaves_the_text_on_the_page(open_as, owner):
    routine = saved_plan(owner)
    page = open_as(owner)
    page.goto(f"/routines/{routine.pk}/edit/")
    page.context.clear_cookies(name="countfold_session")
    page.get_by_text("Story, standards, notes").click()
    page.fill("#id_notes", "Written after the session ended")
    expect(page.get_by_text("sign in again", exact=False).first).to_be_visible(timeout=10_000)
    expect(page.locator("#id_notes")).to_have_value("Written after the session ended")


def test_tapped_cells_and_a_claim_are_answered(open_as, owner):
    routine = saved_plan(owner)
    page = open_as(owner)
    page.goto(f"/routines/{routine.pk}/edit/")
    for text in ("20", "44", "68"):
        page.locator("#plan-picture .g-cell", has_text=re.compile(rf"^{text}$")).first.click()
    expect(page.locator("#cells-answer")).to_contain_text("20, 44, 68")
    page.locator("#cells-answer").get_by_role("button", name=re.compile("Tick it")).first.click()
    expect(page.locator("#plan-list input[name=target]:checked")).to_have_count(1)

    page.get_by_text("Check a claim").click()
    page.select_option("[name='claim-saying']", "jump")
    page.locator("[name='claim-jump']").fill("24")
    expect(page.locator("#claim-box .verdict")).to_contain_text("Yes")


def test_a_child_s_rule_is_judged_and_judged_again_when_the_count_changes(open_as, owner):
    routine = saved_plan(owner, grade="3")
    page = open_as(owner)
    page.goto(f"/routines/{routine.pk}/edit/")
    page.get_by_text("Check a child’s rule").click()
    page.locator("#ask-rule").fill("4 times the place, plus 16")
    page.locator("#tool-rule").get_by_role("button", name="Check it").click()
    expect(page.locator("#rule-box .verdict")).to_contain_text("Yes, for every n: 20, 24, 28")
    page.fill("#id_step", "5")
    expect(page.locator("#rule-box .verdict")).to_contain_text("at place 2 it gives 24, and we count 25")


def test_without_scripts_a_plan_is_previewed_written_and_saved(open_as, owner):
    page = open_as(owner, java_script_enabled=False)
    page.goto("/plans/new/")
    page.fill("#id_start", "10")
    page.fill("#id_step", "6")
    page.get_by_role("button", name="Show the grid").last.click()
    expect(page.locator("#plan-picture")).to_contain_text("154")
    page.locator("#part-stops > summary").click()
    page.get_by_role("button", name="Add a stop").click()
    page.locator("[name='stops-0-question']").fill("What is under 10?")
    page.get_by_role("button", name="Save", exact=True).click()
    assert Routine.objects.get(owner=owner).plan.stops[0].question == "What is under 10?"
    assert not PlanDraft.objects.exists()


@pytest.mark.parametrize("width", [1280, 320])
def test_axe_finds_nothing_on_the_plan_page(open_as, owner, width):
    routine = saved_plan(owner)
    page = open_as(owner, width=width)
    page.goto(f"/routines/{routine.pk}/edit/")
    # On a narrow page one section is open at a time; here all are looked at.
    page.evaluate(
        "document.querySelectorAll('[data-plan-part]').forEach((part) => part.removeAttribute('data-plan-part'))"
    )
    page.evaluate("document.querySelectorAll('#main details').forEach((fold) => { fold.open = true; })")
    page.get_by_role("button", name="Suggest what they may say").click()
    expect(page.locator("#idea-says .say-offered").first).to_be_visible()
    page.evaluate("scrollTo(0, 0)")
    page.wait_for_load_state("networkidle")
    assert faults_in_both_themes(page) == []
    assert page.evaluate("document.documentElement.scrollWidth - innerWidth") == 0
