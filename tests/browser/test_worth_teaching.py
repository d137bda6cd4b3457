"""From a gap in coverage to a saved plan: six counts, one taken, nothing saved before the teacher saves."""

import re

import pytest
from playwright.sync_api import expect

from routines.models import PlanDraft, Routine
from tests.browser.axe import faults, faults_in_both_themes
from tests.factories import StandardFactory

pytestmark = pytest.mark.django_db(transaction=True)


def test_a_gap_becomes_a_plan_in_two_clicks_and_a_save(open_as, owner, grade_two):
    features = "fit=direct; kind=money; step=5c|10c|25c; start=any; cross=100c"
    StandardFactory(
        grade=grade_two, area="money", code="LS.2.9", summary="Count on with coins. " * 12, count_features=features
    )
    page = open_as(owner, width=1280)
    page.goto("/coverage/")
    gap = page.get_by_role("listitem").filter(has=page.get_by_role("heading", name="Grade 2, money"))
    gap.get_by_role("link", name="Counts worth teaching").click()
    cards = page.get_by_role("article")
    expect(cards).to_have_count(6)
    assert faults_in_both_themes(page) == []
    page.set_viewport_size({"width": 320, "height": 700})
    assert faults(page) == []
    assert page.evaluate("document.documentElement.scrollWidth") <= 320
    # A choice by keyboard brings other counts, and stays where it was made.
    page.set_viewport_size({"width": 1280, "height": 900})
    page.get_by_label("Area or standard").focus()
    first = cards.first.inner_text()
    page.get_by_label("Area or standard").select_option("whole")
    expect(cards.first).not_to_contain_text(first.split("\n")[0])
    expect(page.get_by_label("Area or standard")).to_be_focused()
    expect(page).to_have_url(re.compile("about=whole"))
    page.go_back()
    expect(page.get_by_label("Area or standard")).to_have_value("money")
    count, says = (
        cards.first.get_by_role("heading").inner_text(),
        cards.first.get_by_role("paragraph").first.inner_text(),
    )
    cards.first.get_by_role("link", name="Plan this").click()
    title = page.get_by_label("Title")
    expect(title).not_to_have_value("")
    assert title.input_value().lower() in says.lower()
    assert page.get_by_label("Grade").input_value() == "2"
    expect(page.get_by_role("checkbox", checked=True).first).to_be_attached()
    assert not Routine.objects.exists()
    assert not PlanDraft.objects.exists()
    page.get_by_role("button", name="Save", exact=True).click()
    expect(page.get_by_text("Saved as version 1.")).to_be_visible()
    routine = Routine.objects.get()
    assert routine.plan.targets
    assert routine.plan.area == "money"
    assert re.sub(r"\s", "", count).lower().startswith(("by", "backby"))
