"""What is kept is shown only where this program made it of all that it follows from: nothing old can come to light."""

import pytest
from django.db import DatabaseError

from accounts.models import School
from accounts.written_once import remembered
from routines import worked_out
from routines.models import Routine, RoutineVersion, WorkedOut
from routines.models.plan_document import CountSection
from routines.plans.actions import copy_routine, save_version
from routines.worked_out import made_by, says
from tests.routines.making import SEVENS, make_lesson, make_routine

EIGHTS = SEVENS.changed(title="Eights", count=CountSection("whole", "4", "8", 20), targets=())


@pytest.fixture
def routine(owner, all_through):
    with all_through():
        return make_routine(owner)


def mark(routine) -> str:
    return worked_out.mark_of(worked_out.save_of(routine.newest_save, 2).document)


@pytest.fixture(params=["remembers", "began anew"])
def asked(request, visit, owner):
    """An address, of a process that remembers pieces of pages and of one that has only what is kept."""

    def ask(address: str) -> str:
        if request.param == "began anew":
            remembered.clear()
        return visit(owner).get(address).content.decode()

    return ask


@pytest.fixture
def bank(asked):
    return lambda: asked("/bank/")


@pytest.fixture(params=["/bank/", "/routines/{0}/"])
def page(request, asked, routine):
    return lambda: asked(request.param.format(routine.pk))


@pytest.fixture
def other_words(monkeypatch):
    """From now on the program names a count in other words."""
    monkeypatch.setattr(says, "count_in_words", lambda grid: "Said in other words")


def test_while_nothing_changes_it_is_what_was_kept(page, other_words):
    """Without this the tests below could not fail."""
    assert "Said in other words" not in page()
    assert "Said in other words" not in page()


@pytest.mark.parametrize("part", made_by.PARTS)
def test_a_change_of_any_part_of_the_program_makes_it_anew(part, page, other_words, monkeypatch):
    before = page()
    monkeypatch.setitem(made_by.PARTS, part, "another")
    assert "Said in other words" not in before
    assert "Said in other words" in page()
    monkeypatch.undo()
    assert "Said in other words" not in page()  # an older program, beside it or after it, has its own words


def test_any_change_of_a_source_file_is_a_change_of_the_program(tmp_path):
    marks = [made_by.mark_of_folder(tmp_path)]

    def changed() -> bool:
        marks.append(made_by.mark_of_folder(tmp_path))
        return marks[-1] not in marks[:-1]

    (tmp_path / "en").mkdir()
    (tmp_path / "en" / "sums.py").write_text("SAID = 'adds to'\n")
    assert changed()
    (tmp_path / "en" / "sums.py").write_text("SAID = 'makes up'\n")
    assert changed()
    (tmp_path / "en" / "sums.py").rename(tmp_path / "en" / "totals.py")
    assert changed()
    (tmp_path / "__pycache__").mkdir()
    (tmp_path / "__pycache__" / "totals.pyc").write_text("")
    assert not changed()


def test_every_room_that_says_or_draws_is_a_part():
    assert {"counting", "words", "drawing", "models", "worked_out", "Babel", "sympy"} <= set(made_by.PARTS)
    assert all(made_by.PARTS.values())


def test_another_level_of_the_grade(page, other_words, grade_two):
    page()
    grade_two.level = 6
    grade_two.save()
    assert "Said in other words" in page()


def test_another_language_of_the_pages(page, other_words, settings):
    page()
    settings.LANGUAGE_CODE = "es"
    assert "Said in other words" in page()


def test_another_plan(routine, page, owner):
    before = page()
    save_version(routine=routine, plan=EIGHTS, based_on=routine.current_version, by=owner)
    assert "By 7 from 4" in before
    assert "By 8 from 4" in page()
    assert "By 7 from 4" not in page()


def test_words_that_were_taken_out_of_a_plan_are_gone_from_its_pages(routine, page):
    """By erasing, which changes what was saved without a new save."""
    stop = routine.plan.stops[0].question
    assert routine.title in page()
    plan = routine.current_version.plan
    plan["stops"][0]["question"] = "[taken out]"
    RoutineVersion.objects.filter(pk=routine.current_version_id).update(plan=plan)
    Routine.objects.filter(pk=routine.pk).update(title="[taken out]")
    now = page()
    assert "[taken out]" in now
    assert stop not in now
    assert f">{routine.title}<" not in now


def test_what_others_write_about_a_count_is_that_of_today(routine, asked, owner, teammate):
    """The parts of the routine page that no plan says."""
    address = f"/routines/{routine.pk}/"
    note = routine.notes.create(by=teammate, text="Try fours first")
    lesson = make_lesson(routine, owner, sharing="team", seen="the ones digit comes back")
    copy = copy_routine(routine=routine, by=teammate)
    copy.share()
    before = asked(address)
    for words in ("Try fours first", "the ones digit comes back", "Copied as", teammate.display_name):
        assert words in before
    note.delete()
    lesson.reflection.delete()
    copy.retire()
    teammate.display_name = "Another Name"
    teammate.save()
    now = asked(address)
    for words in ("Try fours first", "the ones digit comes back", "Copied as", "Teammate Tao"):
        assert words not in now
    routine.co_authors.add(teammate)
    assert "Another Name" in asked(address)


@pytest.mark.parametrize(
    ("kind", "style", "shown"),
    [
        ("decimal", {"decimal_mark": ","}, "0,5"),
        ("decimal", {"decimal_mark": "."}, "0.5"),
        ("money", {"currency": "EUR"}, "€"),
        ("money", {"currency": "USD"}, "$"),
    ],
)
def test_marks_and_currency_are_those_of_the_plan(kind, style, shown, owner, bank):
    """They were the school's when it was planned. What the school chooses later changes no plan, kept or not."""
    half = "0,5" if style.get("decimal_mark") == "," else "0.5"
    make_routine(owner, count=CountSection(kind, half, half, 20, style), targets=())
    before = bank()
    remembered.clear()
    assert shown in before
    School.objects.update(decimal_mark=",", thousands=".", currency="GBP")
    assert _without_token(bank()) == _without_token(before)
    WorkedOut.objects.all().delete()
    remembered.clear()
    assert _without_token(bank()) == _without_token(before)


def _without_token(page: str) -> str:
    return "\n".join(line for line in page.splitlines() if "csrf" not in line.lower())


def test_a_save_drops_what_its_former_self_said(routine, owner, all_through):
    former = mark(routine)
    assert WorkedOut.objects.of_documents([former]).count() == 2
    with all_through():
        save_version(routine=routine, plan=EIGHTS, based_on=routine.current_version, by=owner)
    routine.refresh_from_db()
    assert not WorkedOut.objects.of_documents([former]).exists()
    assert WorkedOut.objects.of_documents([mark(routine)]).count() == 2


def test_equal_documents_share_it(routine, teammate, all_through):
    with all_through():
        copy_routine(routine=routine, by=teammate).share()
    assert WorkedOut.objects.count() == 2


def test_of_words_that_were_taken_out_meanwhile_nothing_is_kept(routine):
    """A page that is being made of the plan as it was."""
    WorkedOut.objects.all().delete()
    save = worked_out.save_of(routine.newest_save, 2)
    plan = {**routine.current_version.plan, "title": "[taken out]"}
    RoutineVersion.objects.filter(pk=save.version).update(plan=plan)
    worked_out.page(save)()
    worked_out.work_out(save)
    assert not WorkedOut.objects.exists()


def test_a_damaged_row_is_made_again(routine, bank):
    before = bank()
    WorkedOut.objects.update(said=b"nonsense")
    remembered.clear()
    assert _without_token(bank()) == _without_token(before)
    assert WorkedOut.objects.exclude(said=b"nonsense").count() == 1  # that of the card


def test_where_nothing_can_be_written_pages_are_shown_all_the_same(routine, bank, monkeypatch):
    before = bank()
    WorkedOut.objects.all().delete()
    remembered.clear()

    def full(*args, **options):
        raise DatabaseError("disk is full")

    monkeypatch.setattr("django.db.models.query.QuerySet.bulk_create", full)
    assert _without_token(bank()) == _without_token(before)
    assert not WorkedOut.objects.exists()
