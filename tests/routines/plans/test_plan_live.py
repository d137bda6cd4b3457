"""The live part: one small fragment per pause in typing."""

import re
from datetime import date
from uuid import uuid4

import pytest
from django.urls import reverse
from django.utils.safestring import mark_safe

from accounts import written_once
from routines.models import Lesson
from routines.models.plan_document import CountSection
from routines.plans.forms.plan import PlanForm, text_of_claim
from routines.plans.suggestions.counted_before import counted_before
from routines.plans.views import live as live_page
from routines.plans.views.live import FoundRow, LivePlan
from tests.routines.making import make_lesson
from tests.routines.plan_sheets import saved_plan, sheet

pytestmark = pytest.mark.django_db

HTMX = {"HTTP_HX_REQUEST": "true"}


def live(grades=(), **fields: object) -> LivePlan:
    typed = {name: value if isinstance(value, list) else [str(value)] for name, value in sheet(**fields).items()}
    return LivePlan(PlanForm(typed, grades=list(grades)))


def rows_of(shown: LivePlan) -> list[FoundRow]:
    """A row for every pattern, as if all were shown."""
    return [shown._row(item) for item in shown.listed]


def test_the_grid_and_its_patterns_come_as_a_fragment(owner, visit):
    answer = visit(owner).post(reverse("plan_preview", kwargs={"key": uuid4()}), sheet(), **HTMX)
    page = answer.content.decode()
    assert answer.status_code == 200
    assert "<html" not in page
    assert 'id="plan-picture"' in page
    assert 'name="target"' in page


def test_without_scripts_the_preview_is_a_page(owner, visit):
    answer = visit(owner).post(reverse("plan_preview", kwargs={"key": uuid4()}), sheet())
    assert "<html" in answer.content.decode()


def test_a_pause_in_typing_costs_few_queries(owner, visit, django_assert_max_num_queries):
    client = visit(owner)
    client.post(reverse("plan_preview", kwargs={"key": uuid4()}), sheet(), **HTMX)
    with django_assert_max_num_queries(6):
        client.post(reverse("plan_preview", kwargs={"key": uuid4()}), sheet(), **HTMX)


def test_a_wrong_step_says_so_at_its_field_and_leaves_the_last_grid(owner, visit):
    answer = visit(owner).post(reverse("plan_preview", kwargs={"key": uuid4()}), sheet(step="0"), **HTMX)
    page = answer.content.decode()
    assert answer.status_code == 422
    assert "Choose a step other than 0." in page
    assert 'id="plan-picture"' not in page


def test_an_unfinished_sentence_is_no_mistake(owner, visit):
    answer = visit(owner).post(reverse("plan_preview", kwargs={"key": uuid4()}), sheet(step=""), **HTMX)
    assert answer.status_code == 200
    assert "A new count" in answer.content.decode()


def test_another_kind_brings_its_own_way_of_writing(owner, visit):
    data = sheet(kind="fraction", start="2/3", step="1/3", kind_before="whole")
    assert (
        'name="style-shape"'
        in visit(owner).post(reverse("plan_preview", kwargs={"key": uuid4()}), data, **HTMX).content.decode()
    )


SIXES = {"start": 10, "step": 6, "terms": 25, "line_length": 5}


def as_the_page_fills_it(shown: LivePlan) -> dict[str, object]:
    """The boxes of the list as a browser sends them when nobody touched them."""
    lit = [row.value for row in rows_of(shown) if row.lit]
    return {"lit": ["", *lit], "lit_before": lit, **({"lit_by_itself": "1"} if shown.lit_by_itself else {})}


def test_what_is_lit_is_as_the_one_rule_says_unless_asked_otherwise():
    assert live(**SIXES).lit == live(**SIXES).shown.lit
    assert len(live(**SIXES).lit) == 2
    assert live(lit=[""]).lit == []


def test_what_lit_up_by_itself_does_so_anew_in_another_count():
    boxes = as_the_page_fills_it(live(**SIXES))
    tens = live(start=0, step=10, terms=12, line_length=5, **boxes)
    assert tens.lit == tens.shown.lit
    assert tens.lit_by_itself


def test_a_light_put_out_stays_out_in_another_fold():
    boxes = as_the_page_fills_it(live(**SIXES))
    kept = boxes["lit"][:-1]
    again = live(**{**SIXES, "line_length": 10}, **{**boxes, "lit": kept})
    assert [item.pattern.claim.family for item in again.lit] == ["landmarks"]
    assert not again.lit_by_itself


def test_of_three_lights_the_newest_stays_and_one_goes_out():
    found = rows_of(live())
    asked = [row.value for row in found[:3]]
    lit = [text_of_claim(item.pattern.claim) for item in live(lit=["", *asked], lit_before=asked[:2]).lit]
    assert len(lit) == 2
    assert asked[2] in lit


def test_a_light_follows_its_subject_into_another_fold():
    tens = next(row for row in rows_of(live()) if row.pattern.claim.family == "landmarks")
    followed = live(line_length=5, lit=["", tens.value]).lit
    assert [item.pattern.claim.parameters.get("multiple") for item in followed] == [
        tens.pattern.claim.parameters.get("multiple")
    ]


def test_a_ticked_pattern_stays_ticked():
    ticked = rows_of(live())[2]
    again = live(target=[ticked.value])
    assert [row.value for row in rows_of(again) if row.target] == [ticked.value]


@pytest.mark.parametrize("text", ["", "{", "[]", '{"family": "nothing"}', "[" * 5000])
def test_a_tick_box_that_holds_no_claim_is_left_out(text):
    assert live(target=[text]).form.targets == ()


def test_a_ticked_pattern_of_another_fold_is_named_and_leaves_with_the_save():
    rows_of_six = next(row for row in rows_of(live()) if row.pattern.claim.parameters.get("along") == "column")
    refolded = live(line_length=7, target=[rows_of_six.value])
    assert [row.value for row in refolded.gone] == [rows_of_six.value]
    assert refolded.form.reading.targets == ()


def test_a_ticked_pattern_that_makes_no_sense_for_another_kind_is_named_too():
    digits = next(row for row in rows_of(live()) if row.pattern.claim.family == "digit")
    as_fractions = live(kind="fraction", start="2/3", step="1/3", target=[digits.value])
    assert len(as_fractions.gone) == 1


def test_a_long_list_keeps_to_what_one_reads_until_more_is_asked_for():
    fields = {"start": 10, "step": 6, "terms": 48, "line_length": 8}
    assert len(live(**fields).rows) <= 8
    assert len(live(**fields).rows) + live(**fields).further == len(live(**fields, all_found="1").rows) <= 26


def test_a_list_that_leaves_some_out_even_then_says_how_many_there_are(owner, visit, monkeypatch):
    monkeypatch.setattr("routines.plans.views.live.ALL_SHOWN", 10)
    fields = {"start": 10, "step": 6, "terms": 48, "line_length": 8, "all_found": "1"}
    shown = live(**fields)
    assert shown.unshown == len(rows_of(shown)) - len(shown.rows) > 0
    client, address = visit(owner), reverse("plan_preview", kwargs={"key": uuid4()})
    page = client.post(address, sheet(**fields), **HTMX).text
    assert f"These are the {len(shown.rows)} most noticeable of {len(rows_of(shown))}." in page
    monkeypatch.setattr("routines.plans.views.live.ALL_SHOWN", len(rows_of(shown)))
    assert "most noticeable of" not in client.post(address, sheet(**fields), **HTMX).text


def test_what_held_for_a_while_on_the_grid_and_is_over_is_listed():
    """By six from ten the tens digits go up by 3 down each column until 100, the 16th count, breaks them."""
    shown = live(start=10, step=6, terms=25, line_length=5)
    over = [row.pattern for row in rows_of(shown) if row.pattern.claim.family == "digit-run"]
    assert [(pattern.claim.parameters.get("change"), pattern.breaks_at) for pattern in over] == [(3, 16)]
    assert over[0] in shown.lit_patterns


@pytest.mark.parametrize(
    ("fields", "said"),
    [
        ({"start": 10, "step": 6, "terms": 25, "line_length": 5}, ""),
        ({"start": 1200, "step": 125, "terms": 48, "line_length": 12}, "columns can be read at once"),
        ({"start": 1, "step": 1, "terms": 40, "line_length": 4}, "rows can be read at once"),
    ],
)
def test_a_grid_too_large_for_the_back_of_the_room_is_said_to_be(fields, said):
    assert (said in live(**fields).too_wide) if said else live(**fields).too_wide == ""


def test_a_class_that_counted_this_already_is_named(owner):
    routine = saved_plan(owner)
    make_lesson(routine, owner, taught_on=date(2026, 10, 6))
    count = routine.plan.count.count()
    assert counted_before(count, owner, date(2026, 11, 25)) == "2 Wren counted this in October, in sixes."


def test_lessons_of_others_practice_other_counts_and_other_years_are_not_named(owner, teammate):
    shared = saved_plan(owner, shared=True)
    make_lesson(shared, teammate)
    make_lesson(shared, owner, practice=True)
    make_lesson(saved_plan(owner, count=CountSection("whole", "20", "5", 18)), owner)
    make_lesson(shared, owner, taught_on=date(2026, 9, 1))
    count = shared.plan.count.count()
    assert counted_before(count, owner, date(2027, 9, 1)) == ""
    Lesson.objects.filter(teacher=owner, routine=shared, practice=False).delete()
    assert counted_before(count, owner, date(2026, 11, 25)) == ""


MANY = {"start": "20", "step": "4", "terms": "48", "line_length": "6"}
FEW = {"start": "7", "step": "13", "terms": "6", "line_length": "6"}


def as_if_all_were_looked_for(shown: LivePlan) -> LivePlan:
    shown.offered = shown.listed
    return shown


@pytest.mark.parametrize("count", [MANY, FEW, {"start": "4", "step": "7"}], ids=str)
@pytest.mark.parametrize("asked", ["nothing", "all", "over", "words", "found"])
def test_what_is_over_is_left_out_only_where_it_could_not_be_shown(count, asked):
    whole = live(**count)
    over = [text_of_claim(item.pattern.claim) for item in whole.listed if item.key.startswith("d")]
    there = [text_of_claim(item.pattern.claim) for item in whole.shown.listed]
    fields: dict[str, dict[str, object]] = {
        "nothing": {},
        "all": {"all_found": "1"},
        "over": {"lit": ["", *over[-1:]], "lit_before": there[:1]},
        "words": {"words_of": over[:1] + there[-1:], "words": ["So it begins", ""][: len(over[:1] + there[-1:])]},
        "found": {"lit": ["", *there[-1:]]},
    }
    shown, all_looked_for = live(**count, **fields[asked]), as_if_all_were_looked_for(live(**count, **fields[asked]))
    for name in ("rows", "lit_now", "all_to_show", "further", "unshown"):
        assert getattr(shown, name) == getattr(all_looked_for, name), name


def test_while_one_types_nothing_is_looked_for_that_is_not_shown(owner, visit, monkeypatch):
    """The ideas that are over take the grid of every count on the way: four fifths of what a new count took."""

    def never(*args: object) -> None:
        raise AssertionError("Looked for what is over.")

    monkeypatch.setattr("routines.plans.views.live.dying_ideas", never)
    at = reverse("plan_preview", kwargs={"key": uuid4()})
    page = visit(owner).post(at, sheet(**MANY), **HTMX).text
    assert "Show all 24" in page
    with pytest.raises(AssertionError, match="Looked for"):
        visit(owner).post(at, sheet(**MANY, all_found="1"), **HTMX)


def test_a_drawing_is_made_once_while_words_are_typed(owner, visit, monkeypatch):
    """And anew for each part of what it shows."""
    drawn: list[str] = []
    for name in ("grid_tag", "strip"):
        draw = getattr(live_page, name)
        monkeypatch.setattr(
            live_page, name, lambda *args, draw=draw, name=name, **options: drawn.append(name) or draw(*args, **options)
        )
    monkeypatch.setattr(written_once, "as_kept", lambda text, make: mark_safe(text.decode()))
    client, at = visit(owner), reverse("plan_preview", kwargs={"key": uuid4()})

    def drawings(**fields: object) -> list[str]:
        drawn.clear()
        client.post(at, sheet(**MANY | fields), **HTMX)
        return sorted(drawn)

    assert drawings() == ["grid_tag", "strip"]
    assert drawings(title="Another title") == []
    assert drawings(tapped="3 4") == ["grid_tag"]
    assert drawings(lit=[""]) == ["grid_tag"]
    for field in (
        {"start": "24"},
        {"line_length": "8"},
        {"lead": "2"},
        {"terms": "40"},
        {"fill": "down"},
        {"landmark": "12"},
    ):
        assert drawings(**field) == ["grid_tag", "strip"], field
    assert drawings(kind="decimal", start="0.5", step="0.5") == ["grid_tag", "strip"]
    comma = {"start": "0,5", "step": "0,5", "style-decimal_mark": ","}
    assert drawings(kind="decimal", **comma) == ["grid_tag", "strip"]
    for currency in ("USD", "EUR"):
        assert drawings(kind="money", start="1", step="2", **{"style-currency": currency}) == ["grid_tag", "strip"]
    assert drawings() == []


def preview_of(client, **fields: object) -> str:
    return client.post(reverse("plan_preview", kwargs={"key": FORM}), sheet(**MANY | fields), **HTMX).text


def mark_in(page: str) -> str:
    return re.search(r'name="shown_before" value="(\w+)"', page)[1]


FORM = uuid4()
SEEN = '{"difference":"4","family":"step"}'
GOES_ON = '{"along":"column","change":2,"family":"digit-run","place":1}'
TICKED = {"target": [SEEN], "words_of": [SEEN], "words": ["Four more"]}
ELSEWHERE = [
    {"title": "Another title"},
    {"area": "decimals"},
    {"story_text": "Crates stand in a row."},
    {"standards": "3.OA.D.9"},
    {"notes": "Draw the line first."},
    {"based_on": "7"},
    {"words": ["Four more each time"]},
    {"words": [""]},
    {"stops-0-after": "4", "stops-0-question": "What is next?", "stops-0-answer": "36"},
    {"expected-0-words": "It grows", "expected-0-sort": "say"},
    {"next-0-kind": "whole", "next-0-start": "3", "next-0-step": "5", "next-0-terms": "20", "next-0-why": "Fives"},
]
SHOWN = [
    {"start": "24"},
    {"line_length": "8"},
    {"terms": "40"},
    {"fill": "down"},
    {"grade": "3"},
    {"language": "es"},
    {"landmark": "12"},
    {"story_goal": "40", "story_group": "crate"},
    {"lit": [""]},
    {"all_found": "1"},
    {"target": []},
    {"words_of": [SEEN, GOES_ON], "words": ["Four more", "So it goes on"]},
    {"words": ["x" * 401]},
    {"style-thousands": " "},
]


@pytest.mark.parametrize("typed", ELSEWHERE, ids=str)
def test_while_words_are_typed_nothing_comes_that_is_there_already(owner, visit, grade_two, typed):
    client = visit(owner)
    stands = preview_of(client, **TICKED)
    offered = re.search(r'name="kind_before" value="([^"]*)"', stands)[1]
    short = preview_of(client, **TICKED | typed, shown_before=mark_in(stands), kind_before=offered)
    assert re.findall(r'id="(plan-[a-z-]+)"', short) == ["plan-minutes", "plan-wrong"]
    anew = preview_of(client, **TICKED | typed)
    assert mark_in(anew) == mark_in(stands)

    def shown(page: str) -> str:
        own_words = re.compile(r'(<input id="words-\w+" name="words" value=")[^"]*')
        return own_words.sub(r"\1", page[: page.index('id="plan-minutes"')])

    assert shown(anew) == shown(stands)


@pytest.mark.parametrize("typed", SHOWN, ids=lambda typed: str(typed)[:40])
def test_whatever_shows_another_grid_or_list_brings_it_whole(owner, visit, grade_two, grade_three, typed):
    client = visit(owner)
    stands = preview_of(client, **TICKED)
    assert preview_of(client, **TICKED | typed, shown_before=mark_in(stands)) == preview_of(client, **TICKED | typed)
    assert mark_in(preview_of(client, **TICKED | typed)) != mark_in(stands)


def test_a_grade_that_teaches_at_another_level_brings_the_grid_anew(owner, visit, grade_two):
    stands = preview_of(visit(owner))
    type(grade_two).objects.filter(pk=grade_two.pk).update(level=7)
    assert 'id="plan-picture"' in preview_of(visit(owner), shown_before=mark_in(stands))


def test_a_count_that_came_back_after_one_that_cannot_be_read_still_stands(owner, visit):
    """Nothing was shown of the one that could not be read, so the page shows what it showed."""
    client = visit(owner)
    mark = mark_in(preview_of(client))
    assert "Choose a step other than 0." in preview_of(client, step="0", shown_before=mark)
    again = preview_of(client, shown_before=mark)
    assert "Choose a step" not in again
    assert 'id="plan-picture"' not in again


def test_without_scripts_the_whole_preview_comes_whatever_the_page_says_it_shows(owner, visit):
    client = visit(owner)
    address, mark = reverse("plan_preview", kwargs={"key": FORM}), mark_in(preview_of(client))
    assert 'id="plan-picture"' in client.post(address, sheet(**MANY, shown_before=mark)).text
