"""The decimal mark: both are read where there is no doubt, and what was typed turns when the mark is changed."""

from uuid import uuid4

import pytest
from django.urls import reverse
from hypothesis import given
from hypothesis import strategies as st

from routines.models import PlanDraft, Routine
from routines.plans.forms.draft import only
from routines.plans.forms.marks import in_mark, read_both_ways, turned
from tests.routines.plan_sheets import sheet

HTMX = {"HTTP_HX_REQUEST": "true"}


@pytest.mark.parametrize(
    ("typed", "mark", "kind", "read"),
    [
        ("3,5", ".", "decimal", "3.5"),
        ("3.5", ",", "decimal", "3,5"),
        ("-0,25", ".", "decimal", "-0.25"),
        ("1.325,50", ".", "money", "1325.50"),
        ("$3,50", ".", "money", "$3.50"),
        ("1,5 kg", ".", "mass", "1.5 kg"),
        ("0,325", ".", "decimal", "0.325"),  # no thousand begins with 0
        ("1,325", ".", "decimal", "1,325"),
        ("1.325", ",", "decimal", "1.325"),
        ("3,5,6", ".", "decimal", "3,5,6"),
        ("8.20", ",", "clock", "8.20"),
        ("2 1/3", ",", "fraction", "2 1/3"),
    ],
)
def test_a_number_in_the_other_mark_is_read_where_it_can_mean_one_thing_only(typed, mark, kind, read) -> None:
    assert in_mark(typed, mark, kind) == read


@given(st.integers(0, 10**6), st.integers(0, 99), st.sampled_from(["decimal", "money"]))
def test_turning_a_number_there_and_back_leaves_it_as_it_was(whole: int, hundredths: int, kind: str) -> None:
    typed = f"{whole:,}.{hundredths:02d}"
    there = turned(typed, ".", ",", kind)
    assert there == f"{whole:,}".replace(",", ".") + f",{hundredths:02d}"
    assert turned(there, ",", ".", kind) == typed


def test_what_may_be_read_both_ways_is_said() -> None:
    assert read_both_ways("1,325", ".", "decimal") == "“1,325” is read as 1325. If you mean the decimal, write 1.325."
    assert read_both_ways("1.325", ",", "money").endswith("write 1,325.")
    assert not read_both_ways("13,25", ".", "decimal")
    assert not read_both_ways("1,325", ".", "whole")


@pytest.mark.django_db
def test_changing_the_mark_turns_every_number_on_the_page(owner, grade_two, visit) -> None:
    typed = sheet(
        kind="decimal",
        start="1,200.5",
        step="0.5",
        landmark="2.5",
        story_goal="1,210.5",
        **{
            "style-decimal_mark": ",",
            "style-thousands": ",",
            "mark_before": ".",
            "ask_value": "1,203.5",
            "next-0-kind": "decimal",
            "next-0-start": "0.4",
            "next-0-step": "0.2",
            "next-0-terms": "20",
            "next-0-line_length": "5",
            "next-0-fill": "across",
            "next-0-outcome": "as-planned",
            "expected-0-sort": "slip",
            "expected-0-words": "1,201.10",
            "expected-0-n": "3",
            "expected-1-sort": "own",
            "expected-1-words": "It goes up 0.5.",
        },
    )
    key = uuid4()
    client = visit(owner)
    page = client.post(reverse("plan_preview", kwargs={"key": key}), typed, **HTMX).content.decode()
    for value in ("1.200,5", "0,5", "2,5", "1.210,5", "1.203,5", "0,4", "0,2", "1.201,10"):
        assert f'value="{value}"' in page
    assert 'name="mark_before" value=","' in page
    client.post(reverse("plan_draft", kwargs={"key": key}), typed, **HTMX)
    kept = PlanDraft.objects.get().fields["typed"]
    assert (only(kept, "start"), only(kept, "expected-1-words")) == ("1.200,5", "It goes up 0.5.")
    assert "mark_before" not in kept


@pytest.mark.django_db
def test_a_plan_typed_in_the_other_mark_is_saved_in_its_own(owner, grade_two, visit) -> None:
    typed = sheet(kind="decimal", start="3,5", step="0,5", landmark="2,5", do="save")
    visit(owner).post(reverse("plan_edit", kwargs={"key": uuid4()}), typed)
    plan = Routine.objects.get().plan
    assert (plan.count.start, plan.count.step, plan.landmark) == ("3.5", "0.5", "2.5")


@pytest.mark.django_db
@pytest.mark.parametrize(("kind", "offered"), [("decimal", "0,4"), ("money", "$0,10"), ("fraction", "1/4")])
def test_examples_stand_in_the_plan_s_mark(owner, grade_two, visit, kind, offered) -> None:
    typed = sheet(kind=kind, start="", step="", **{"style-decimal_mark": ","})
    page = visit(owner).post(reverse("plan_draft", kwargs={"key": uuid4()}), typed, follow=True).content.decode()
    assert f'placeholder="{offered}"' in page
