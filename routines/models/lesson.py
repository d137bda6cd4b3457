"""One teaching of a routine to one class on one day, and what the teacher made of it."""

import uuid
from typing import Self

from django.conf import settings
from django.db import models
from django.db.models import Count, Exists, IntegerField, OuterRef, Q, Subquery, Value
from django.db.models.functions import Coalesce
from django.urls import reverse
from django.utils import timezone

from grade_bands.models import Area, ClassGroup

# A number of lessons elsewhere is told only where as many classes had them.
CLASSES_TO_BE_TOLD = 2


def _known(user) -> Q:
    """Her own lessons; a teacher's also those in the grades that she teaches in the same year."""
    if user.is_administrator:
        return Q(teacher=user)
    in_my_grade = ClassGroup.objects.filter(teachers=user, grade=OuterRef("grade"), year=OuterRef("year"))
    return Q(teacher=user) | Exists(in_my_grade)


class LessonQuerySet(models.QuerySet["Lesson"]):
    def taught_by(self, user) -> Self:
        return self.filter(teacher=user)

    def counted(self) -> Self:
        """Lessons that coverage counts: practice runs never are."""
        return self.filter(practice=False)

    def known_to(self, user) -> Self:
        """Lessons of which the user may see that they took place: her own, those in her grades, all for a coach."""
        return self if user.is_coach else self.filter(_known(user))

    def times_shown_to(self, user):
        """How many of these lessons of one routine are told to the user, as an expression; `self` names an outer routine.

        Those she knows of anyway are counted; the others only where two classes or more had them, so that no number
        points at one class. What is left out counts as nothing: that something was left out would tell it.
        """

        def number(lessons: Self, *conditions: Q):
            rows = (
                lessons.order_by()
                .values("routine")
                .annotate(times=Count("pk"), classes=Count("class_group", distinct=True))
            )
            return Coalesce(Subquery(rows.filter(*conditions).values("times"), output_field=IntegerField()), Value(0))

        if user.is_coach:
            return number(self)
        return number(self.known_to(user)) + number(self.exclude(_known(user)), Q(classes__gte=CLASSES_TO_BE_TOLD))

    def with_titles_for(self, user) -> Self:
        """Adds `title`, of the routine as it is now, and `routine_open`: whether the user may open it."""
        from .routine import title_for  # that module reads lessons

        title, is_open = title_for(user, "routine")
        return self.annotate(title=title, routine_open=is_open)

    def open_to(self, user) -> Self:
        """Lessons whose log and reflection the user may read: her own, and what is shared with her team or with a coach."""
        allowed = Q(teacher=user)
        if user.is_coach:
            allowed |= Q(sharing=Lesson.Sharing.TEAM_AND_COACH)
        if not user.is_administrator:
            team = ClassGroup.objects.filter(teachers=user, grade__band=OuterRef("grade__band"), year=OuterRef("year"))
            allowed |= Q(sharing__in=[Lesson.Sharing.TEAM, Lesson.Sharing.TEAM_AND_COACH]) & Exists(team)
        return self.filter(allowed)

    def shared_about(self, routine, user) -> Self:
        """How it went for colleagues: lessons of this routine whose reflection the user may read."""
        return (
            self.filter(routine=routine).open_to(user).filter(Exists(Reflection.objects.filter(lesson=OuterRef("pk"))))
        )


class Lesson(models.Model):
    """A lesson keeps the version it taught and its own year, grade and area, so that coverage is one indexed aggregate."""

    class Surface(models.TextChoices):
        BOARD = "board", "on the board"
        PAPER = "paper", "on paper"

    class Sharing(models.TextChoices):
        ONLY_ME = "only-me", "only me"
        TEAM = "team", "my team"
        TEAM_AND_COACH = "team-coach", "my team and the coach"

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

    objects = LessonQuerySet.as_manager()

    class Meta:
        ordering = ["-taught_on", "-pk"]
        indexes = [
            models.Index(fields=["practice", "year", "grade", "area", "taught_on"], name="lesson_coverage"),
            models.Index(fields=["teacher", "-taught_on"], name="lesson_of_teacher"),
            models.Index(fields=["routine", "-taught_on"], name="lesson_of_routine"),
            # How often each count was taught: without it SQLite goes through all lessons of the year for every count.
            models.Index(fields=["routine", "year", "practice", "class_group"], name="lesson_told"),
        ]

    def __str__(self) -> str:
        return f"{self.routine_id} on {self.taught_on}"

    def get_absolute_url(self) -> str:
        return reverse("lesson", args=[self.key])


class ReflectionQuerySet(models.QuerySet["Reflection"]):
    def readable_by(self, user) -> Self:
        return self.filter(lesson__in=Lesson.objects.open_to(user).values("pk"))


class Reflection(models.Model):
    """What the teacher wrote after the lesson. Ideas, never who said them. `to_next_year` and `foresaw` are hers alone."""

    class Outcome(models.TextChoices):
        NOT_YET = "not-yet", "not there yet"
        AS_PLANNED = "as-planned", "as planned"
        READY_FOR_MORE = "ready-for-more", "ready for more"

    lesson = models.OneToOneField(Lesson, on_delete=models.CASCADE, related_name="reflection")
    outcome = models.CharField(max_length=14, choices=Outcome.choices)
    seen = models.TextField(blank=True)
    stuck = models.TextField(blank=True)
    next_step = models.TextField(blank=True)
    to_next_year = models.TextField(blank=True)
    updated_at = models.DateTimeField(default=timezone.now)

    objects = ReflectionQuerySet.as_manager()

    def __str__(self) -> str:
        return f"reflection on lesson {self.lesson_id}"


class TargetOutcome(models.Model):
    """Whether the class saw one target pattern of the plan taught. Targets without a row are not recorded."""

    class Seen(models.TextChoices):
        SEEN = "seen", "seen"
        NOT_YET = "not-yet", "not yet"

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
