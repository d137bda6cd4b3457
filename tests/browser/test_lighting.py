"""Lighting patterns on the routine page: without a round trip, two at most, kept in the address, and without scripts too."""

import pytest
from playwright.sync_api import Page, expect

from routines.models import Routine
from routines.models.plan_document import CountSection, Fold
from tests.routines.making import make_routine

pytestmark = pytest.mark.django_db(transaction=True)


@pytest.fixture
def sixes(owner, grade_three) -> Routine:
    return make_routine(owner, title="Sixes", grade="3", count=CountSection("whole", "20", "6", 25), fold=Fold(5))


def lit(page: Page) -> list[str]:
    return page.eval_on_selector_all('[data-light][aria-pressed="true"]', "all => all.map(one => one.dataset.light)")


def shown(page: Page) -> set[str]:
    """The patterns whose drawing can be seen."""
    return set(
        page.eval_on_selector_all(
            "[data-pattern]", "all => all.filter(one => one.getClientRects().length).map(one => one.dataset.pattern)"
        )
    )


def controls(page: Page) -> list[str]:
    return page.eval_on_selector_all("[data-light]", "all => all.map(one => one.dataset.light)")


def test_a_pattern_lights_up_at_once_and_stays_after_a_reload(open_as, owner, sixes):
    page = open_as(owner)
    page.goto(f"/routines/{sixes.pk}/?lit=")
    assert shown(page) == set()
    first = controls(page)[0]
    sent = []
    page.on("request", lambda request: sent.append(request.url) if "/static/" not in request.url else None)
    page.locator(f'[data-light="{first}"]').click()
    assert shown(page) == {first}
    assert sent == []
    page.reload()
    assert lit(page) == [first]
    assert shown(page) == {first}


def test_two_at_most_are_lit_and_the_space_bar_puts_one_out(open_as, owner, sixes):
    page = open_as(owner)
    page.goto(f"/routines/{sixes.pk}/?lit=")
    keys = controls(page)[:3]
    for key in keys:
        page.locator(f'[data-light="{key}"]').click()
    assert len(lit(page)) == 2
    assert keys[2] in lit(page)
    assert shown(page) == set(lit(page))
    page.locator(f'[data-light="{keys[2]}"]').focus()
    page.keyboard.press("Space")
    assert keys[2] not in lit(page)


def test_what_is_folded_away_is_drawn_when_it_is_opened(open_as, owner, sixes):
    page = open_as(owner)
    page.goto(f"/routines/{sixes.pk}/?lit=")
    keys = controls(page)
    assert len(keys) > 6
    page.locator(f'[data-light="{keys[0]}"]').click()
    page.evaluate("window.same = true")
    page.locator(".more-patterns > summary").click()
    page.locator(f'[data-light="{keys[-1]}"]').click()
    expect(page.locator(f'[data-light="{keys[-1]}"]')).to_have_attribute("aria-pressed", "true")
    assert page.evaluate("window.same"), "the page was asked for anew"
    assert shown(page) == set(lit(page))
    assert keys[-1] in shown(page)
    page.reload()
    assert keys[-1] in shown(page)


def test_where_the_folded_drawings_do_not_come_the_controls_are_links(open_as, owner, sixes):
    page = open_as(owner)
    page.goto(f"/routines/{sixes.pk}/?lit=")
    last = controls(page)[-1]
    page.route("**/*layers=all*", lambda route: route.abort())
    page.locator(".more-patterns > summary").click()
    page.locator(f'[data-light="{last}"]').click()
    page.wait_for_url(f"**lit={last}*")
    assert shown(page) == {last}


def test_without_scripts_the_same_controls_are_links(open_as, owner, sixes):
    page = open_as(owner, java_script_enabled=False)
    page.goto(f"/routines/{sixes.pk}/?lit=")
    page.locator("[data-light]").first.click()
    expect(page.locator('[data-light][aria-pressed="true"]')).to_have_count(1)
    expect(page.locator(".plan-grid [data-pattern]:not(.g-off)").first).to_be_visible()
