"""The command that makes everything after an upgrade: stopped and run again, and while people work."""

from io import StringIO

import pytest
from django.core.management import call_command

from routines.management.commands import recompute_facts
from routines.models import Routine, RoutinePattern, WorkedOut
from routines.models.plan_document import CountSection
from routines.plans.actions import save_version
from routines.worked_out import keeping, made_by
from tests.routines.making import SEVENS, make_routine

EIGHTS = SEVENS.changed(title="Eights", count=CountSection("whole", "4", "8", 20), targets=())


@pytest.fixture(autouse=True)
def few_at_a_time(monkeypatch):
    monkeypatch.setattr(recompute_facts, "AT_A_TIME", 2)


@pytest.fixture
def routines(owner) -> list[Routine]:
    """As they are after an upgrade: older facts, and nothing worked out."""
    made = [make_routine(owner, title=f"Count {number}") for number in range(5)]
    Routine.objects.update(engine_version="older", search_text="as it was")
    return made


def recompute(*options: str) -> str:
    told = StringIO()
    call_command("recompute_facts", *options, stdout=told, stderr=told)
    return told.getvalue()


def test_everything_is_made_and_told_as_it_goes(routines):
    told = recompute()
    assert [line for line in told.splitlines() if " of " in line][:3] == ["2 of 5", "4 of 5", "5 of 5"]
    assert not Routine.objects.filter(search_text="as it was").exists()
    assert WorkedOut.objects.count() == 10


def test_again_changes_nothing(routines):
    recompute()
    rows = sorted(WorkedOut.objects.values_list("key", "said"))
    assert "facts of 0 routines, and what the pages of 0 say. Dropped 0" in recompute()
    assert sorted(WorkedOut.objects.values_list("key", "said")) == rows


def test_stopped_half_way_it_goes_on_from_there_and_every_page_is_right(routines, owner, visit, monkeypatch):
    whole = keeping.work_out

    def stopped(save):
        if save.routine == routines[3].pk:
            raise KeyboardInterrupt
        whole(save)

    monkeypatch.setattr("routines.worked_out.work_out", stopped)
    with pytest.raises(KeyboardInterrupt):
        recompute()
    assert WorkedOut.objects.count() == 6
    page = visit(owner).get("/bank/").content.decode()
    assert all(f"Count {number}" in page for number in range(5))
    assert page.count("By 7 from 4") >= 5
    WorkedOut.objects.of_documents([keeping.mark_of(keeping.save_of(routines[4].newest_save, 2).document)]).delete()
    monkeypatch.setattr("routines.worked_out.work_out", whole)
    assert "what the pages of 2 say" in recompute()


def test_what_somebody_saves_meanwhile_keeps_its_own_facts(routines, owner, monkeypatch):
    """Between the moment in which the facts of the older save were found and that in which they are written."""
    routine, find = routines[0], recompute_facts.facts_of

    def somebody_saves(plan, level):
        facts = find(plan, level)
        if not Routine.objects.filter(pk=routine.pk, title="Eights").exists():
            save_version(routine=routine, plan=EIGHTS, based_on=routine.current_version, by=owner)
        return facts

    monkeypatch.setattr(recompute_facts, "facts_of", somebody_saves)
    recompute()
    routine.refresh_from_db()
    assert (routine.step_numerator, routine.title) == (8, "Eights")
    assert "by 8" in routine.search_text
    assert RoutinePattern.objects.filter(routine=routine, claim__difference="8").exists()


def test_what_nobody_shows_any_more_is_dropped(routines, grade_two, monkeypatch):
    recompute()
    grade_two.level = 5
    grade_two.save()
    recompute()
    assert WorkedOut.objects.count() == 10
    monkeypatch.setitem(made_by.PARTS, "words", "another")
    recompute()
    assert WorkedOut.objects.count() == 10
    Routine.objects.filter(pk=routines[0].pk).delete()
    assert "Dropped 2 old rows" in recompute()
