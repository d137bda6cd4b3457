"""One teaching of a routine to one class on one day, and what the teacher made of it."""

import uuid
from datetime import datetime, timedelta
from typing import TYPE_CHECKING, Self

from django.conf import settings
from django.db import models
from django.db.models import Case, CharField, Exists, OuterRef, Q, When
from django.db.models.fields.json import KeyTextTransform
from django.urls import reverse
from django.utils import timezone
from django.utils.translation import gettext_lazy as _

from accounts.models import User
from grade_bands.models import Area, ClassGroup

if TYPE_CHECKING:
    from .routine import Routine

QUIET = timedelta(hours=4)
"""After so long without an event a lesson is over by itself."""

CUT_OFF = timedelta(minutes=15)
"""So long after the end a guest's device that was cut off may still send what it holds."""


def _known(user: User) -> Q:
    """Her own lessons; a teacher's also those in the grades that she teaches in the same year."""
    if user.is_administrator:
        return Q(teacher=user)
    in_my_grade = ClassGroup.objects.filter(teachers=user, grade=OuterRef("grade"), year=OuterRef("year"))
    return Q(teacher=user) | Q(Exists(in_my_grade))


class LessonQuerySet(models.QuerySet["Lesson"]):
    def kept(self) -> Self:
        """Lessons that were not deleted; of those that were, only stubs are left."""
        return self.filter(deleted_at=None)

    def taught_by(self, user: User) -> Self:
        return self.kept().filter(teacher=user)

    def counted(self) -> Self:
        """Lessons that coverage counts: from the first written term on; practice runs and deleted ones never are."""
        return self.filter(practice=False, written_at__isnull=False, deleted_at__isnull=True)

    def on_now(self, now: datetime | None = None) -> Self:
        """Lessons that neither ended nor have been quiet for long."""
        since = (now or timezone.now()) - QUIET
        recent = Q(last_event_at__gte=since) | Q(last_event_at=None, created_at__gte=since)
        return self.kept().filter(recent, ended=False, closed=False)

    def taught_with(self, user: User) -> Self:
        """Lessons in which the user may stand at the lectern: her own, and those of a class that she teaches too."""
        with_me = ClassGroup.teachers.through.objects.filter(classgroup_id=OuterRef("class_group_id"), user_id=user.pk)
        return self.filter(Q(teacher=user) | Exists(with_me))

    def known_to(self, user: User) -> Self:
        """Lessons of which the user may see that they took place: her own, those in her grades, all for a coach."""
        kept = self.kept()
        return kept if user.is_coach else kept.filter(_known(user))

    def with_titles_for(self, user: User) -> Self:
        """Adds `title` and `routine_open`: whether the user may open the routine.

        The title is the routine's as it is now; where the user may no longer see that, her own lesson keeps the title that
        she taught, and another's has none.
        """
        from .routine import title_for  # that module reads lessons

        title, is_open = title_for(user, "routine")
        taught = KeyTextTransform("title", "version__plan")
        return self.annotate(
            title=Case(When(~is_open & Q(teacher=user), then=taught), default=title, output_field=CharField()),
            routine_open=is_open,
        )

    def open_to(self, user: User) -> Self:
        """Lessons whose log and reflection the user may read: her own, and what is shared with her team or with a coach."""
        allowed = Q(teacher=user)
        if user.is_coach:
            allowed |= Q(sharing=Lesson.Sharing.TEAM_AND_COACH)
        if not user.is_administrator:
            team = ClassGroup.objects.filter(teachers=user, grade__band=OuterRef("grade__band"), year=OuterRef("year"))
            allowed |= Q(sharing__in=[Lesson.Sharing.TEAM, Lesson.Sharing.TEAM_AND_COACH]) & Q(Exists(team))
        return self.kept().filter(allowed)

    def shared_about(self, routine: "Routine", user: User) -> Self:
        """How it went for colleagues: lessons of this routine whose reflection the user may read."""
        return (
            self.filter(routine=routine).open_to(user).filter(Exists(Reflection.objects.filter(lesson=OuterRef("pk"))))
        )


class Lesson(models.Model):
    """A lesson keeps the version it taught and its own year, grade and area, so that coverage is one indexed aggregate.

    `last_seq`, `last_event_at`, `written_at` (when its first standing term came) and `ended` follow from its events and are
    brought up to date with them; so are how many targets of its plan were seen, not yet, or not recorded. `closed`: somebody
    wrote after it had been over by itself.
    """

    class Surface(models.TextChoices):
        BOARD = "board", _("on the board")
        PAPER = "paper", _("on paper")

    class Sharing(models.TextChoices):
        ONLY_ME = "only-me", _("only me")
        TEAM = "team", _("my team")
        TEAM_AND_COACH = "team-coach", _("my team and the coach")

    key = models.UUIDField(default=uuid.uuid4, unique=True, editable=False)
    routine = models.ForeignKey(
        "routines.Routine", on_delete=models.PROTECT, related_name="lessons", related_query_name="lesson"
    )
    version = models.ForeignKey("routines.RoutineVersion", on_delete=models.PROTECT, related_name="lessons")
    class_group = models.ForeignKey("grade_bands.ClassGroup", on_delete=models.PROTECT, related_name="lessons")
    teacher = models.ForeignKey(settings.AUTH_USER_MODEL, on_delete=models.PROTECT, related_name="lessons")
    taught_on = models.DateField()
    surface = models.CharField(max_length=5, choices=Surface.choices)
    practice = models.BooleanField(default=False)
    ended = models.BooleanField(default=False)
    sharing = models.CharField(max_length=10, choices=Sharing.choices, default=Sharing.ONLY_ME)
    year = models.ForeignKey("grade_bands.SchoolYear", on_delete=models.PROTECT)
    grade = models.ForeignKey("grade_bands.Grade", on_delete=models.PROTECT)
    area = models.CharField(max_length=12, choices=Area.choices)
    created_at = models.DateTimeField(default=timezone.now)
    last_seq = models.PositiveIntegerField(default=0, editable=False)
    last_event_at = models.DateTimeField(null=True, editable=False)
    written_at = models.DateTimeField(null=True, editable=False)
    closed = models.BooleanField(default=False, editable=False)
    targets_seen = models.PositiveSmallIntegerField(default=0, editable=False)
    targets_not_yet = models.PositiveSmallIntegerField(default=0, editable=False)
    targets_not_recorded = models.PositiveSmallIntegerField(default=0, editable=False)
    deleted_at = models.DateTimeField(null=True, editable=False)

    objects = LessonQuerySet.as_manager()

    # Only on lessons that were asked for `with_titles_for` somebody.
    title: str
    routine_open: bool

    class Meta:
        ordering = ["-taught_on", "-pk"]
        indexes = [
            models.Index(
                fields=["year", "grade", "area", "taught_on"],
                name="lesson_counted",
                condition=Q(practice=False, written_at__isnull=False, deleted_at__isnull=True),
            ),
            models.Index(fields=["teacher", "-taught_on"], name="lesson_of_teacher"),
            models.Index(fields=["routine", "-taught_on"], name="lesson_of_routine"),
            # What colleagues shared, the newest first: few of a school's lessons, which are otherwise looked through.
            models.Index(fields=["-taught_on", "-id"], name="lesson_shared", condition=~Q(sharing="only-me")),
            # For counting one count's lessons anew: without it SQLite goes through all lessons of the year.
            models.Index(
                fields=["routine", "year", "class_group"],
                name="lesson_told",
                condition=Q(practice=False, written_at__isnull=False, deleted_at__isnull=True),
            ),
        ]

    def __str__(self) -> str:
        return f"{self.routine_id} on {self.taught_on}"

    def get_absolute_url(self) -> str:
        return reverse("lesson", args=[self.key])

    @property
    def is_counted(self) -> bool:
        """Whether coverage counts it, as `LessonQuerySet.counted` has it."""
        return not self.practice and self.written_at is not None and self.deleted_at is None

    @property
    def is_shared(self) -> bool:
        return self.sharing != Lesson.Sharing.ONLY_ME

    def is_quiet(self, now: datetime | None = None) -> bool:
        return (now or timezone.now()) - (self.last_event_at or self.created_at) > QUIET

    def is_over(self, now: datetime | None = None) -> bool:
        """Ended as its events say, or closed by itself; one that is only opened waits for its class."""
        return self.ended or self.closed or (self.written_at is not None and self.is_quiet(now))

    def is_over_for_guests(self, now: datetime | None = None) -> bool:
        """Whether a board, a substitute or a second teacher comes too late to write."""
        now = now or timezone.now()
        if not self.ended:
            return self.is_over(now)
        last_end = self.events.filter(kind="lesson.end").aggregate(at=models.Max("received_at"))["at"]
        return last_end is None or now - last_end > CUT_OFF


class Reflection(models.Model):
    """What the teacher wrote after the lesson. Ideas, never who said them. `to_next_year` and `foresaw` are hers alone."""

    class Outcome(models.TextChoices):
        NOT_YET = "not-yet", _("not there yet")
        AS_PLANNED = "as-planned", _("as planned")
        READY_FOR_MORE = "ready-for-more", _("ready for more")

    lesson = models.OneToOneField(Lesson, on_delete=models.CASCADE, related_name="reflection")
    outcome = models.CharField(max_length=14, choices=Outcome.choices, blank=True)
    seen = models.TextField(blank=True)
    stuck = models.TextField(blank=True)
    next_step = models.TextField(blank=True)
    to_next_year = models.TextField(blank=True)
    updated_at = models.DateTimeField(default=timezone.now)

    def __str__(self) -> str:
        return f"reflection on lesson {self.lesson_id}"


class TargetOutcome(models.Model):
    """Whether the class saw one target pattern of the plan taught. Targets without a row are not recorded."""

    class Seen(models.TextChoices):
        SEEN = "seen", _("seen")
        NOT_YET = "not-yet", _("not yet")

    lesson = models.ForeignKey(Lesson, on_delete=models.CASCADE, related_name="target_outcomes")
    position = models.PositiveSmallIntegerField()
    family = models.CharField(max_length=12)
    seen = models.CharField(max_length=7, choices=Seen.choices)

    class Meta:
        ordering = ["lesson", "position"]
        constraints = [
            models.UniqueConstraint(fields=["lesson", "position"], name="targetoutcome_once_per_target"),
        ]

    def __str__(self) -> str:
        return f"target {self.position} of lesson {self.lesson_id}: {self.seen}"
