"""A routine: one plan in the bank, with the exact facts that the bank filters by."""

from collections.abc import Container, Iterable
from typing import Self

from django.conf import settings
from django.db import models
from django.db.models import Case, Exists, F, OuterRef, Q, Subquery, Value, When
from django.db.models.functions import Abs, Cast, Coalesce
from django.utils import timezone
from django.utils.translation import gettext
from django.utils.translation import gettext_lazy as _

from accounts.models import User
from grade_bands.models import Area, ClassGroup, Grade, SchoolYear
from routines.models.plan_document import Plan

from .lesson import Lesson, LessonQuerySet
from .version import RoutineVersion, UnreadablePlan

# What stands in the place of a title that the reader may not see.
NOT_IN_BANK = "a count that is not in the bank"


def title_for(user: User, routine: str) -> tuple[Coalesce, Exists]:
    """Of the routine that this column of an outer row names: the title as the user may read it, and whether she may open it."""
    seen = Routine.objects.visible_to(user).filter(pk=OuterRef(routine))
    return Coalesce(Subquery(seen.values("title")), Value(NOT_IN_BANK)), Exists(seen)


def _lessons_of_each() -> LessonQuerySet:
    """The lessons that coverage counts, of each routine that a query goes through."""
    return Lesson.objects.counted().filter(routine=OuterRef("pk"))


# Each word looked for is a search through every count.
MOST_WORDS_LOOKED_FOR = 12


class RoutineQuerySet(models.QuerySet["Routine"]):
    def visible_to(self, user: User) -> Self:
        """Shared routines for everyone; drafts for owner and co-authors; retired ones also for those who may bring them back."""
        own = Q(owner=user) | Q(
            Exists(Routine.co_authors.through.objects.filter(routine_id=OuterRef("pk"), user_id=user.pk))
        )
        seen = Q(status=Routine.Status.SHARED) | own
        if user.is_coach or user.is_administrator:
            seen |= Q(status=Routine.Status.RETIRED)
        return self.filter(seen)

    def in_bank(self) -> Self:
        return self.filter(status=Routine.Status.SHARED)

    def of(self, user: User) -> Self:
        """The user's own plans, whatever their status: owned or co-authored."""
        return self.filter(
            Q(owner=user)
            | Exists(Routine.co_authors.through.objects.filter(routine_id=OuterRef("pk"), user_id=user.pk))
        )

    def by_team_of(self, user: User, year: SchoolYear | None) -> Self:
        """Routines owned by those who teach in the same bands as the user in this year, the user included."""
        bands = ClassGroup.objects.filter(teachers=user, year=year).values("grade__band")
        team = ClassGroup.objects.filter(year=year, grade__band__in=bands).values("teachers")
        return self.filter(Q(owner=user) | Q(owner__in=team))

    def for_grades(self, names: Iterable[str]) -> Self:
        return self.filter(grade__name__in=names)

    def with_nearness_to(self, names: Iterable[str]) -> Self:
        """Adds `nearness`: 0 for these grades, 1 for others of their bands, 2 for all else."""
        own = list(names)
        bands = Grade.objects.filter(name__in=own).values("band")
        near = [When(grade__name__in=own, then=Value(0)), When(grade__band__in=bands, then=Value(1))]
        return self.annotate(nearness=Case(*near, default=Value(2), output_field=models.IntegerField()))

    def for_areas(self, areas: Iterable[str]) -> Self:
        return self.filter(area__in=areas)

    def showing(self, families: Iterable[str]) -> Self:
        """Routines whose grid shows a pattern of any of these families; scattered landmarks show nothing."""
        shown = RoutinePattern.objects.filter(routine_id=OuterRef("pk"), family__in=list(families))
        return self.filter(Exists(shown.exclude(lie="scattered")))

    def staying_for_a_while(self) -> Self:
        """Routines with a pattern that holds only for a while."""
        return self.filter(
            Exists(RoutinePattern.objects.filter(routine_id=OuterRef("pk"), holds=RoutinePattern.Holds.SHOWN))
        )

    def with_step(self, sizes: Container[str]) -> Self:
        """Routines whose step, without its sign and in the kind's base unit, is of one of these sizes: small, ones, tens."""
        wanted = Q()
        one, ten = F("step_denominator"), F("step_denominator") * 10
        if "small" in sizes:
            wanted |= Q(step_size__lt=one)
        if "ones" in sizes:
            wanted |= Q(step_size__gte=one, step_size__lt=ten)
        if "tens" in sizes:
            wanted |= Q(step_size__gte=ten)
        return self.annotate(step_size=Abs("step_numerator")).filter(wanted)

    def matching(self, text: str) -> Self:
        """Every word of the text, up to the twelfth, stands somewhere in title, story, count, patterns or standards."""
        found = self
        for word in text.casefold().split()[:MOST_WORDS_LOOKED_FOR]:
            found = found.filter(search_text__contains=word)
        return found

    def with_teaching_for(self, user: User, year: SchoolYear | None) -> Self:
        """Adds `times_taught`: the lessons of this year that coverage counts, as far as the user is told of them."""
        return self.annotate(times_taught=_lessons_of_each().filter(year=year).times_shown_to(user))

    def taught_when(self, when: str, user: User, year: SchoolYear | None) -> Self:
        """when: "ever", "not-yet", or "this-year", by the numbers the user is told, so that a filter tells no more."""
        lessons = _lessons_of_each().filter(year=year) if when == "this-year" else _lessons_of_each()
        found = self.alias(times_told=lessons.times_shown_to(user))
        return found.filter(times_told=0) if when == "not-yet" else found.filter(times_told__gt=0)

    def for_cards(self) -> Self:
        return self.select_related("owner", "grade", "band", "current_version")

    def with_document(self) -> Self:
        """Adds `document`: the saved plan as the text that is stored; None where a damaged row names no save."""
        return self.annotate(document=Cast("current_version__plan", models.TextField()))

    def as_cards(self) -> Self:
        """What a card is made of, and no more: plans and texts to search are long, and lists are too."""
        return (
            self.select_related("grade", "current_version")
            .with_document()
            .defer("story", "search_text", "current_version__plan")
        )


def tell_times_taught(routines: Iterable["Routine"], user: User, year: SchoolYear | None) -> None:
    """Sets `times_taught` of each, as `with_teaching_for` does, of rows that are read already: in one query for all."""
    listed = list(routines)
    told = Lesson.objects.counted().filter(year=year, routine__in=listed).times_told(user, year)
    for routine in listed:
        routine.times_taught = told.get(routine.pk, 0)


class Routine(models.Model):
    times_taught: int  # where `with_teaching_for` or `tell_times_taught` told it
    document: str | None  # where `with_document` read it

    class Status(models.TextChoices):
        DRAFT = "draft", _("draft")
        SHARED = "shared", _("shared")
        RETIRED = "retired", _("retired")

    class Direction(models.TextChoices):
        FORWARD = "forward", _("forward")
        BACKWARD = "backward", _("backward")

    title = models.CharField(max_length=120)
    story = models.TextField(blank=True)
    band = models.ForeignKey("grade_bands.GradeBand", on_delete=models.PROTECT)
    grade = models.ForeignKey("grade_bands.Grade", on_delete=models.PROTECT)
    area = models.CharField(max_length=12, choices=Area.choices)
    standards = models.ManyToManyField("grade_bands.Standard", blank=True)
    owner = models.ForeignKey(settings.AUTH_USER_MODEL, on_delete=models.PROTECT, related_name="owned_routines")
    co_authors = models.ManyToManyField(settings.AUTH_USER_MODEL, blank=True, related_name="co_authored_routines")
    status = models.CharField(max_length=8, choices=Status.choices, default=Status.DRAFT)
    copied_from = models.ForeignKey("self", null=True, blank=True, on_delete=models.SET_NULL, related_name="copies")
    copied_from_version = models.ForeignKey(
        "routines.RoutineVersion", null=True, blank=True, on_delete=models.SET_NULL, related_name="+"
    )
    current_version = models.ForeignKey(
        "routines.RoutineVersion", null=True, blank=True, on_delete=models.SET_NULL, related_name="+"
    )
    created_at = models.DateTimeField(default=timezone.now)
    shared_at = models.DateTimeField(null=True, blank=True)

    # Facts of the current version, computed by the engine at save; `engine_version` says by which.
    kind = models.CharField(max_length=10)
    direction = models.CharField(max_length=8, choices=Direction.choices)
    terms = models.PositiveSmallIntegerField()
    line_length = models.PositiveSmallIntegerField()
    fill = models.CharField(max_length=10)
    start_numerator = models.BigIntegerField()
    start_denominator = models.PositiveIntegerField()
    step_numerator = models.BigIntegerField()
    step_denominator = models.PositiveIntegerField()
    largest_numerator = models.BigIntegerField()
    largest_denominator = models.PositiveIntegerField()
    engine_version = models.CharField(max_length=20)
    search_text = models.TextField(blank=True)

    objects = RoutineQuerySet.as_manager()

    class Meta:
        ordering = ["-created_at", "-pk"]
        indexes = [
            models.Index(fields=["status", "grade", "area"], name="routine_bank"),
            models.Index(fields=["status", "-created_at"], name="routine_newest"),
            models.Index(fields=["status", "kind", "direction"], name="routine_kind"),
        ]
        constraints = [
            models.CheckConstraint(
                condition=Q(step_denominator__gt=0) & Q(start_denominator__gt=0) & Q(largest_denominator__gt=0),
                name="routine_denominators_positive",
                violation_error_message=_("A stored number has no denominator."),
            ),
            models.CheckConstraint(
                condition=~Q(step_numerator=0),
                name="routine_step_not_zero",
                violation_error_message=_("Choose a step other than 0."),
            ),
            models.CheckConstraint(
                condition=Q(terms__gte=2) & Q(terms__lte=200),
                name="routine_terms_2_to_200",
                violation_error_message=_("A count has 2 to 200 terms."),
            ),
        ]

    def __str__(self) -> str:
        return self.title

    @property
    def plan(self) -> Plan:
        """The saved plan, read from the current version. Raises UnreadablePlan."""
        return self.newest_save.read_plan()

    @property
    def newest_save(self) -> RoutineVersion:
        """The current version. Raises UnreadablePlan where a damaged row names none."""
        if self.current_version is None:
            raise UnreadablePlan(self.pk, "plan", gettext("It names no save as its newest one."))
        return self.current_version

    def is_author(self, user: User) -> bool:
        return self.owner_id == user.pk or any(author.pk == user.pk for author in self.co_authors.all())

    def may_edit(self, user: User) -> bool:
        """Owner and co-authors; of a shared routine also any coach (kept in history)."""
        return self.is_author(user) or (self.status == self.Status.SHARED and user.is_coach)

    def may_retire(self, user: User) -> bool:
        return self.status != self.Status.DRAFT and (self.owner_id == user.pk or user.is_coach or user.is_administrator)

    def share(self) -> None:
        """Put the routine into the bank."""
        self.status = self.Status.SHARED
        self.shared_at = timezone.now()
        self.save(update_fields=["status", "shared_at"])

    def retire(self) -> None:
        """Take the routine out of the bank; lessons and copies keep it."""
        self.status = self.Status.RETIRED
        self.save(update_fields=["status"])


class RoutinePattern(models.Model):
    """A pattern that the routine's grid shows: what the bank filters by. Its position says how noticeable it is."""

    class Holds(models.TextChoices):
        ALWAYS = "always", _("always")
        SHOWN = "shown", _("for a while")

    routine = models.ForeignKey(Routine, on_delete=models.CASCADE, related_name="patterns")
    position = models.PositiveSmallIntegerField()
    family = models.CharField(max_length=12)
    holds = models.CharField(max_length=6, choices=Holds.choices)
    lie = models.CharField(max_length=10, blank=True)
    claim = models.JSONField()

    class Meta:
        ordering = ["routine", "position"]
        indexes = [models.Index(fields=["family", "routine"], name="routinepattern_family")]
        constraints = [
            models.UniqueConstraint(fields=["routine", "position"], name="routinepattern_position_once"),
        ]

    def __str__(self) -> str:
        return f"{self.family} of {self.routine_id}"
