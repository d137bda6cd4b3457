"""The routine page: patterns that light up by address, the plan, lineage, and notes."""

from django.urls import reverse

from tests.routines.making import make_lesson, make_routine


def page_of(routine, client, query=""):
    return client.get(reverse("routine", args=[routine.pk]) + query)


def test_the_page_shows_grid_patterns_and_plan(owner, visit):
    page = page_of(make_routine(owner), visit(owner)).text
    for words in ("Sevens from four", "35 more", "What is under 11?", "5 jumps of 7 make 35", "7 more"):
        assert words in page


def test_the_lit_patterns_stand_in_the_address(owner, visit):
    client, routine = visit(owner), make_routine(owner)
    lit = page_of(routine, client, "?lit=p1&lit=p0").text
    assert lit.count('aria-pressed="true"') == 2
    assert page_of(routine, client, "?lit=p0").text.count('aria-pressed="true"') == 1
    assert page_of(routine, client, "?lit=").text.count('aria-pressed="true"') == 0


def test_at_most_two_are_lit_and_unknown_ones_are_none(owner, visit):
    page = page_of(make_routine(owner), visit(owner), "?lit=p0&lit=p1&lit=p2&lit=zz").text
    assert page.count('aria-pressed="true"') == 2


def test_htmx_gets_the_grid_alone(owner, visit):
    answer = visit(owner).get(reverse("routine", args=[make_routine(owner).pk]), headers={"HX-Request": "true"})
    assert "<html" not in answer.text
    assert 'id="lit-grid"' in answer.text


def test_copy_leads_to_the_copys_plan_and_the_pages_name_each_other(owner, teammate, visit):
    routine = make_routine(owner)
    answer = visit(teammate).post(reverse("routine_copy", args=[routine.pk]))
    copy = routine.copies.get()
    assert answer["Location"] == reverse("plan_edit", args=[copy.pk])
    assert "Copied from" in page_of(copy, visit(teammate)).text
    copy.share()
    assert "Copied as" in page_of(routine, visit(owner)).text


def test_a_draft_copy_is_not_told_to_the_owner_of_the_original(owner, teammate, visit):
    routine = make_routine(owner)
    visit(teammate).post(reverse("routine_copy", args=[routine.pk]))
    assert "Copied as" not in page_of(routine, visit(owner)).text


def test_an_origin_no_longer_in_the_bank_is_named_without_a_link(owner, teammate, visit):
    routine = make_routine(owner)
    visit(teammate).post(reverse("routine_copy", args=[routine.pk]))
    routine.retire()
    page = page_of(routine.copies.get(), visit(teammate)).text
    assert "Sevens from four" in page
    assert f'href="{reverse("routine", args=[routine.pk])}"' not in page


def test_a_note_that_seems_to_name_a_child_is_asked_about_and_kept_when_confirmed(owner, visit):
    client, routine = visit(owner), make_routine(owner)
    address = reverse("routine_note", args=[routine.pk])
    asked = client.post(address, {"text": "Maya said it is always even"})
    assert asked.status_code == 422
    assert "Maya said it is always even" in asked.text
    assert not routine.notes.exists()
    client.post(address, {"text": "Maya said it is always even", "no_names": "on"})
    assert routine.notes.get().text == "Maya said it is always even"


def test_an_empty_note_is_refused(owner, visit):
    answer = visit(owner).post(reverse("routine_note", args=[make_routine(owner).pk]), {"text": " "})
    assert answer.status_code == 422
    assert "Write a few words first." in answer.text


def test_hostile_words_stay_words(owner, visit):
    routine = make_routine(owner, title="<script>alert(1)</script>", notes='"><img src=x onerror=alert(1)>')
    page = page_of(routine, visit(owner)).text
    assert "<script>alert(1)" not in page
    assert "<img src=x" not in page


def test_changing_states_takes_a_post(owner, visit):
    routine = make_routine(owner)
    for name in ("routine_copy", "routine_share", "routine_retire", "routine_note"):
        assert visit(owner).get(reverse(name, args=[routine.pk])).status_code == 405


def test_what_does_not_exist_is_not_found(owner, visit):
    assert visit(owner).get(reverse("routine", args=[999])).status_code == 404


def test_queries_are_bounded(owner, visit, django_assert_max_num_queries):
    routine = make_routine(owner)
    for _ in range(5):
        make_lesson(routine, owner, sharing="team")
    client = visit(owner)
    with django_assert_max_num_queries(22):
        page_of(routine, client)
