"""A school with something behind every address, and those who ask. It is built once, and what is asked leaves nothing behind."""

import uuid
from collections.abc import Iterator
from typing import Any

import pytest
from django.conf import settings
from django.db import transaction
from django.test import override_settings
from django.utils import timezone

from accounts.actions import invite, offer_new_passphrase
from accounts.models import User
from grade_bands.actions import load_standards
from grade_bands.models import Standard
from routines.demo.plans import PLANS
from routines.exchange.importing import hold_file
from routines.exchange.reading import read
from routines.exchange.writing import written
from routines.lessons.recording import delete_lesson
from routines.models import Job, JobFile, Lesson, LessonPass, Planned, RoutineVersion, Suggestion
from routines.own_words.making import start_gathering
from routines.paper.booklet_jobs import start_booklet
from routines.paper.press import PrintingProcess
from routines.paper.prints import PRINTS
from routines.plans.views.live import PART_NAMES
from tests.factories import (
    ClassGroupFactory,
    GradeBandFactory,
    GradeFactory,
    SchoolFactory,
    SchoolYearFactory,
    UserFactory,
)
from tests.fuzz.asking import Asker, pass_to, without_log
from tests.fuzz.found import Sent, every_route, filled
from tests.fuzz.walking import everything_sendable
from tests.routines.lessons.making import append, data_of_every_kind, event, open_lesson
from tests.routines.making import SEVENS, make_lesson, make_routine


@pytest.fixture(scope="module")
def whole_school(django_db_setup, django_db_blocker) -> Iterator[dict[str, User]]:
    """Nothing of it is left after the module: it stands in one transaction that is taken back."""
    plain = {
        "DEMO": True,
        "ALLOWED_HOSTS": ["localhost"],
        "PASSWORD_HASHERS": ["django.contrib.auth.hashers.MD5PasswordHasher"],
        "STATIC_ROOT": settings.BASE_DIR / "static",
        "STORAGES": {
            **settings.STORAGES,
            "staticfiles": {"BACKEND": "django.contrib.staticfiles.storage.StaticFilesStorage"},
        },
    }
    # What is asked of the printing process is bounded by its own time limit and tested with it; here it costs minutes.
    with pytest.MonkeyPatch.context() as patch, django_db_blocker.unblock(), override_settings(**plain):
        patch.setattr(PrintingProcess, "pdf", lambda self, html, css, **others: b"%PDF-")
        with transaction.atomic(), without_log():
            SchoolFactory(is_demo=True)
            year = SchoolYearFactory()
            grade = GradeFactory(
                name="2",
                order=3,
                level=2,
                band=GradeBandFactory(name="2-3", order=2),
                areas=["whole", "measurement", "money", "time"],
            )
            people = {
                "teacher": UserFactory(sign_in_name="owner", display_name="Owner Ota"),
                "teammate": UserFactory(sign_in_name="teammate", display_name="Teammate Tao"),
                "leaver": UserFactory(sign_in_name="leaver", display_name="Leaver Lund", is_active=False),
                "coach": UserFactory(sign_in_name="coach", display_name="Coach Cruz", coach=True),
                "administrator": UserFactory(sign_in_name="admin", display_name="Ames", administrator=True),
            }
            ClassGroupFactory(name="2 Wren", grade=grade, year=year, teachers=[people["teacher"]])
            ClassGroupFactory(name="2 Finch", grade=grade, year=year, teachers=[people["teammate"]])
            yield people
            transaction.set_rollback(True)


@pytest.fixture(scope="module")
def counts_file() -> bytes:
    return written([SEVENS.changed(title="From a file")])


@pytest.fixture(scope="module")
def board_lesson(whole_school) -> Lesson:
    """On now, with an event of every kind in it that does not end it."""
    lesson = open_lesson(whole_school["teacher"])
    first = event()
    left_out = {"lesson.open", "lesson.end", "lesson.reopen", "undo", "term.write"}
    rest = [event(t, kind, data) for t, (kind, data) in enumerate(data_of_every_kind(first["id"]).items(), start=2)]
    append(lesson, first, *(one for one in rest if one["kind"] not in left_out))
    return lesson


@pytest.fixture(scope="module")
def known(whole_school, board_lesson, counts_file) -> dict[str, list[Any]]:
    """Values for the parameters of addresses: by start of the route and name."""
    load_standards()
    owner, administrator = whole_school["teacher"], whole_school["administrator"]
    rich = next(demo.plan for demo in PLANS if demo.plan.grade == "2" and demo.plan.stops and demo.plan.expected)
    routine = make_routine(owner, plan=rich)
    draft = make_routine(owner, shared=False, title="A draft")
    retired = make_routine(owner, title="Put away")
    retired.retire()
    # What an older program left behind: a plan, and what a standard asks of a count, that nobody can read.
    damaged = make_routine(owner, title="Damaged")
    RoutineVersion.objects.filter(routine=damaged).update(plan={"title": "Damaged", "count": []})
    Standard.objects.filter(pk=Standard.objects.order_by("pk").first().pk).update(count_features="no such feature=x")
    lesson = make_lesson(routine, owner, sharing="team")
    dropped = make_lesson(routine, owner)
    delete_lesson(lesson=dropped)
    booklet = start_booklet(owner=owner, title="Plums", versions=[routine.current_version], contents=["plan"])
    Job.objects.filter(pk=booklet.pk).update(state="done")
    JobFile.objects.create(job=booklet, content=b"%PDF-")
    words = start_gathering(owner=owner)
    Job.objects.filter(pk=words.pk).update(state="done")
    JobFile.objects.create(job=words, content=b"PK")
    file = hold_file(by=owner, name="counts.json", read=read(counts_file, {"2"}))
    group = owner.class_groups.get()
    planned = Planned.objects.create(routine=routine, class_group=group, on=timezone.localdate(), by=owner)
    suggestion = Suggestion.objects.create(routine=routine, by=whole_school["coach"], to_teacher=owner, why="Try it.")
    sent = Suggestion.objects.create(routine=routine, by=owner, to_band=group.grade.band, why="For all of us.")
    note = routine.notes.create(by=owner, text="The gap helped.")
    link = invite(by=administrator, display_name="New Nour", role="teacher")
    reset = offer_new_passphrase(by=administrator, person=whole_school["teammate"])
    return {
        " key": [lesson.key],
        "routines/ pk": [routine.pk, draft.pk, retired.pk, damaged.pk],
        "routines/ name": sorted({*PRINTS, *PART_NAMES}),
        "routines/<int:pk>/print/ name": sorted(PRINTS),
        "routines/<int:pk>/edit/part/ name": sorted(PART_NAMES),
        "plans/new/<uuid:key>/part/ name": sorted(PART_NAMES),
        "plans/new/ key": [uuid.UUID(int=7)],
        "lessons/ key": [board_lesson.key, lesson.key, dropped.key],
        "pair/ code": ["123456"],
        "booklet/ key": [booklet.key],
        "me/words/ key": [words.key],
        "import/ key": [file.key],
        "notes/ pk": [note.pk],
        "week/ pk": [planned.pk],
        "suggestions/ pk": [suggestion.pk, sent.pk],
        "coverage/ grade": [group.grade_id],
        "coverage/ area": ["whole", "no-such-area"],
        "coverage/ standard": [Standard.objects.order_by("pk").first().pk],
        "school/people/ pk": [whole_school["teammate"].pk, whole_school["leaver"].pk],
        "school/invitations/ pk": [administrator.links_handed_out.order_by("pk").first().pk],
        "school/classes/ pk": [group.pk],
        "school/years/ pk": [group.year_id],
        "school/grades/ pk": [group.grade_id],
        "school/bands/ pk": [group.grade.band_id],
        "invitation/ token": [link],
        "new-passphrase/ token": [reset],
    }


@pytest.fixture(scope="module")
def asker_of_all(whole_school, board_lesson, known) -> Asker:
    """As those who see different things, signed out, and on the devices of a classroom."""
    people = {role: whole_school[role] for role in ("teacher", "coach", "administrator")}
    asker = Asker({**people, "signed out": None})
    for role in (LessonPass.Role.BOARD, LessonPass.Role.SUBSTITUTE):
        asker.cookies[f"{role} device"] = pass_to(board_lesson, role)
    return asker


@pytest.fixture
def asker(asker_of_all) -> Iterator[Asker]:
    asker_of_all.faults.clear()
    asker_of_all.endless.clear()
    with without_log():
        yield asker_of_all


@pytest.fixture(scope="module")
def addresses(known) -> dict[str, list[str]]:
    return {route: filled(route, known) for route, _ in every_route()}


@pytest.fixture(scope="module")
def found(asker_of_all, addresses) -> tuple[list[Sent], str]:
    """What can be sent, and what broke while the pages were opened."""
    with without_log():
        return everything_sendable(asker_of_all, addresses), asker_of_all.report()


@pytest.fixture
def sendable(found) -> list[Sent]:
    sent, faults = found
    assert faults == ""
    return sent
