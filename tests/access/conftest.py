"""A school with something of somebody's behind every address, and words planted in all of it that are not everybody's."""

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
from routines.erasing.look_jobs import ask_to_look
from routines.exchange.importing import hold_file
from routines.exchange.reading import read
from routines.exchange.writing import written
from routines.models import Job, JobFile, LessonPass, Planned, Suggestion
from routines.own_words.making import start_gathering
from routines.paper.booklet_jobs import start_booklet
from routines.paper.press import PrintingProcess
from routines.plans.actions import copy_routine
from tests.access.table import PEOPLE
from tests.factories import (
    ClassGroupFactory,
    GradeBandFactory,
    GradeFactory,
    SchoolFactory,
    SchoolYearFactory,
    StandardFactory,
    UserFactory,
)
from tests.routines.lessons.making import open_lesson
from tests.routines.making import SEVENS, make_lesson, make_routine

Things = dict[str, dict[str, Any]]


@pytest.fixture(scope="module")
def undone_school(django_db_setup, django_db_blocker) -> Iterator[None]:
    """Nothing of what a module makes is left after it: it stands in one transaction that is taken back."""
    plain = {
        "ALLOWED_HOSTS": ["localhost"],
        "PASSWORD_HASHERS": ["django.contrib.auth.hashers.MD5PasswordHasher"],
        "STATIC_ROOT": settings.BASE_DIR / "static",
        "STORAGES": {
            **settings.STORAGES,
            "staticfiles": {"BACKEND": "django.contrib.staticfiles.storage.StaticFilesStorage"},
        },
    }
    with django_db_blocker.unblock(), override_settings(**plain), transaction.atomic():
        yield
        transaction.set_rollback(True)


@pytest.fixture(scope="module")
def cast(undone_school) -> Iterator[dict[str, User]]:
    # Who gets a print and who is refused is decided before anything is printed.
    with pytest.MonkeyPatch.context() as patch:
        patch.setattr(PrintingProcess, "pdf", lambda self, html, css, **others: html.encode())
        yield _people()


def _people() -> dict[str, User]:
    SchoolFactory()
    year, middle, upper = (
        SchoolYearFactory(),
        GradeBandFactory(name="2-3", order=2),
        GradeBandFactory(name="4-5", order=3),
    )
    two = GradeFactory(name="2", order=3, level=2, band=middle, areas=["whole"])
    three = GradeFactory(name="3", order=4, level=3, band=middle, areas=["whole"])
    five = GradeFactory(name="5", order=6, level=5, band=upper, areas=["whole"])
    people = {
        "owner": UserFactory(sign_in_name="owner", display_name="Owner Ota"),
        "co_author": UserFactory(sign_in_name="co-author", display_name="Co-author Cole"),
        "teammate": UserFactory(sign_in_name="teammate", display_name="Teammate Tao"),
        "other_teacher": UserFactory(sign_in_name="other", display_name="Other Oyelaran"),
        "coach": UserFactory(sign_in_name="coach", display_name="Coach Cruz", coach=True),
        "administrator": UserFactory(sign_in_name="admin", display_name="Administrator Ames", administrator=True),
    }
    assert people.keys() == PEOPLE
    for name, grade, teacher in (
        ("2 Wren", two, "owner"),
        ("2 Finch", two, "teammate"),
        ("3 Plum", three, "co_author"),
        ("5 Slate", five, "other_teacher"),
    ):
        ClassGroupFactory(name=name, grade=grade, year=year, teachers=[people[teacher]])
    for grade in (two, three, five):
        StandardFactory(grade=grade)
    return people


@pytest.fixture(scope="module")
def things(cast) -> Things:
    """What stands behind the addresses, as their parameters. Whoever may not have it must not meet the word "planted"."""
    owner, co_author, coach, administrator = (cast[one] for one in ("owner", "co_author", "coach", "administrator"))
    group = owner.class_groups.get()

    def count(title: str, **more: Any):
        return make_routine(owner, co_authors=[co_author], title=f"Planted {title}", notes="planted notes", **more)

    shared, draft, retired = count("shared"), count("draft", shared=False), count("retired")
    copies = {name: copy_routine(routine=of, by=owner) for name, of in (("shared", shared), ("retired", retired))}
    hidden = copy_routine(routine=shared, by=owner)
    hidden.co_authors.set([co_author])
    for copy in copies.values():
        copy.share()
    retired.retire()
    lessons = {
        sharing: make_lesson(shared, owner, sharing=sharing, seen="planted in a reflection")
        for sharing in ("only-me", "team", "team-coach")
    }
    on_now = open_lesson(owner, routine=shared)
    device, _ = LessonPass.objects.wait(address="127.0.0.1")
    device.tie(lesson=on_now, role="board", by=owner)
    waiting, _ = LessonPass.objects.wait(address="127.0.0.1")
    booklet = start_booklet(owner=owner, title="Planted booklet", versions=[shared.current_version], contents=["plan"])
    Job.objects.filter(pk=booklet.pk).update(state="done")
    JobFile.objects.create(job=booklet, content=b"planted")
    words = start_gathering(owner=owner)
    Job.objects.filter(pk=words.pk).update(state="done")
    JobFile.objects.create(job=words, content=b"planted")
    file = hold_file(by=owner, name="planted.json", read=read(written([SEVENS.changed(title="Planted file")]), {"2"}))
    leaver = UserFactory(sign_in_name="leaver", display_name="Leaver Lund", is_active=False)
    invitation = invite(by=administrator, display_name="Planted Person", role="teacher")
    return {
        "": {},
        "plan_nobody_saved": {"key": uuid.UUID(int=7)},
        "draft": {"pk": draft.pk},
        "shared": {"pk": shared.pk},
        "retired": {"pk": retired.pk},
        "copy_of_shared": {"pk": copies["shared"].pk},
        "copy_of_retired": {"pk": copies["retired"].pk},
        "copy_in_drafts": {"pk": hidden.pk},
        "note": {"pk": shared.notes.create(by=owner, text="Planted note.").pk},
        "note_on_draft": {"pk": draft.notes.create(by=owner, text="Planted note.").pk},
        "lesson": {"key": lessons["only-me"].key},
        "lesson_for_team": {"key": lessons["team"].key},
        "lesson_for_team_and_coach": {"key": lessons["team-coach"].key},
        "lesson_on_now": {"key": on_now.key},
        "device": {"key": on_now.key, "pk": device.pk},
        "waiting_device": {"code": waiting.code},
        "planned": {"pk": Planned.objects.create(routine=shared, class_group=group, on=timezone.localdate(), by=owner).pk},
        "suggestion": {"pk": Suggestion.objects.create(routine=shared, by=coach, to_teacher=owner, why="Planted why.").pk},
        "grade_and_area": {"grade": group.grade_id, "area": "whole"},
        "grade_and_standard": {"grade": group.grade_id, "standard": group.grade.standards.get().pk},
        "booklet": {"key": booklet.key},
        "file": {"key": file.key},
        "words": {"key": words.key},
        "look": {"key": ask_to_look("planted words", by=owner, whose=owner.pk).key},
        "person": {"pk": cast["teammate"].pk},
        "leaver": {"pk": leaver.pk},
        "invitation": {"token": invitation},
        "new_passphrase": {"token": offer_new_passphrase(by=administrator, person=cast["teammate"])},
        "sent_invitation": {"pk": administrator.links_handed_out.order_by("pk").first().pk},
        "class_group": {"pk": group.pk},
        "year": {"pk": group.year_id},
        "grade": {"pk": group.grade_id},
        "band": {"pk": group.grade.band_id},
    }  # fmt: skip
