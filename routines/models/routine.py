"""A routine: one plan in the bank, with the exact facts that the bank filters by."""

from collections import Counter, defaultdict
from collections.abc import Container, Iterable, Sequence
from dataclasses import dataclass, replace
from functools import reduce
from operator import and_
from typing import Any, Self

from django.conf import settings
from django.db import connection, models, transaction
from django.db.models import Count, Exists, F, OuterRef, Q, Subquery, Value
from django.db.models.functions import Abs, Cast, Coalesce
from django.db.models.lookups import IsNull
from django.utils import timezone
from django.utils.translation import gettext
from django.utils.translation import gettext_lazy as _

from accounts.compiled_once import compiled_once
from accounts.models import User
from grade_bands.models import Area, ClassGroup, Grade, SchoolYear, classes_of
from routines.models.plan_document import Plan

from .among import Among
from .bank_total import count_bank_again, look_for_owners_again
from .search_word import SearchWord, SearchWordQuerySet
from .searched_words import Asked, asked_for
from .shown_families import FOR_A_WHILE, bits_of
from .taught import TimesTaught
from .version import RoutineVersion, UnreadablePlan

# The columns by which the bank is filtered; a new filter's column is put at the end of its indexes too.
FILTERED_BY = ("grade", "area", "kind", "direction", "step_numerator", "step_denominator", "shows", "owner")

# What a card is made of beside the text of its plan that is stored.
ON_A_CARD = (
    "title", "status", "area", "owner",
    "current_version", "grade__name", "grade__order", "grade__level",
)  # fmt: skip

# A number of lessons elsewhere is told only where as many classes had them.
CLASSES_TO_BE_TOLD = 2

# What stands in the place of a title that the reader may not see.
NOT_IN_BANK = "a count that is not in the bank"


def title_for(user: User, routine: str) -> tuple[Coalesce, Exists]:
    """Of the routine that this column of an outer row names: the title as the user may read it, and whether she may open it."""
    seen = Routine.objects.visible_to(user).filter(pk=OuterRef(routine))
    return Coalesce(Subquery(seen.values("title")), Value(NOT_IN_BANK)), Exists(seen)


def told_as_taught(user: User, year: SchoolYear | None) -> Q:
    """Which routines a user is told to have been taught this year; None: in any year.

    Those with a lesson known to her; else those that two classes or more had, for then none of these is known to her.
    """
    taught = TimesTaught.objects.filter(routine=OuterRef("pk"), **({"year": year} if year else {})).order_by()
    if user.is_coach:
        return looked_up(taught)
    several = taught.values("routine").annotate(classes=Count("class_group", distinct=True))
    return looked_up(taught.known_to(user)) | looked_up(several.filter(classes__gte=CLASSES_TO_BE_TOLD))


def looked_up(rows: models.QuerySet[Any, Any], name: str = "routine") -> Q:
    """Of which routines there is one of these rows, which name it: looked for at each routine that is come by.

    Not by EXISTS, which PostgreSQL would turn round: it would begin with the rows, and read every one that there is.
    """
    return Q(IsNull(Subquery(rows.order_by().values(name)[:1]), False))


# Of a word that so many counts have or fewer their keys are read, so that nothing else is looked at: how often a word is met
# PostgreSQL guesses badly, one where ten thousand had it, and SQLite not at all. A walk through the bank soon meets one
# that more have. Where few are left they are looked up by key.
FEW, OFTEN = 1_000, 20_000


models.BigAutoField.register_lookup(Among)


@dataclass(frozen=True, slots=True)
class Met:
    """Which counts have all of some words. named: the keys of those that have all the words which were read; None where
    none was, for each is met too often. often: the rows of words that are met so."""

    named: frozenset[int] | None = None
    often: tuple[SearchWordQuerySet, ...] = ()

    def also(self, rows: SearchWordQuerySet, keys: Sequence[int]) -> "Met":
        """Those of them that have one word more: its rows, and the keys that were read of them."""
        if len(keys) > OFTEN:
            return replace(self, often=(*self.often, rows))
        return replace(self, named=frozenset(keys) if self.named is None else self.named.intersection(keys))

    def among(self, routines: "RoutineQuerySet") -> "RoutineQuerySet":
        """Those of these counts, in the order in which they are asked for."""
        few = self.named is not None and len(self.named) <= FEW
        return self._looked_up(routines) if few else routines.filter(self._where())

    def _looked_up(self, routines: "RoutineQuerySet") -> "RoutineQuerySet":
        """Each by its key. SQLite, which keeps no statistics, would else walk through the whole bank; PostgreSQL knows better."""
        if connection.vendor != "sqlite":
            return routines.filter(self._where())
        theirs = Exists(routines.filter(self._where_often(), pk=OuterRef("pk")).order_by())
        return Routine.objects.filter(theirs, pk__among=sorted(self.named or ()))

    def _where(self) -> Q:
        return self._where_often() if self.named is None else Q(pk__among=sorted(self.named)) & self._where_often()

    def _where_often(self) -> Q:
        return reduce(and_, (looked_up(rows.filter(routine=OuterRef("pk"))) for rows in self.often), Q())


def met(words: Sequence[Asked]) -> Met:
    """Where all of these words are met, in the title or elsewhere."""
    found = Met()
    for word in words:
        rows = SearchWord.objects.meeting(word)
        found = found.also(rows, _read(rows))
    return found


def _read(rows: SearchWordQuerySet) -> list[int]:
    return list(rows.values_list("routine", flat=True)[: OFTEN + 1])


# Each word looked for is a search of its own.
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
        """The user's own plans, whatever their status: owned or co-authored. Each way by an index of its own."""
        return self.owned_or_among(user, routines_written_with(user))

    def owned_or_among(self, user: User, joined: Sequence[int]) -> Self:
        """joined: the keys of those that she writes with others."""
        return self.filter(Q(owner=user) | Q(pk__in=joined))

    def by_team_of(self, user: User, year: SchoolYear | None) -> Self:
        """Routines owned by those who teach in the same bands as the user in this year, the user included."""
        own = {group.grade_id for group in classes_of(user) if year and group.year_id == year.pk}
        bands = Grade.objects.filter(pk__in=own).order_by().values("band")
        grades = Grade.objects.filter(band__in=bands).order_by().values("pk")
        team = ClassGroup.objects.filter(year=year, grade__in=grades).values("teachers")
        return self.filter(owner__in={user.pk, *team.values_list("teachers", flat=True)} - {None})

    def for_grades(self, names: Iterable[str]) -> Self:
        found = Grade.objects.filter(name__in=(listed := list(names))).order_by().values("pk")
        return self.filter(grade=found[:1]) if len(listed) == 1 else self.filter(grade__in=found)

    def for_areas(self, areas: Iterable[str]) -> Self:
        return self.filter(area__in=areas)

    def for_standard(self, code: str) -> Self:
        """Each once, where two frameworks have this code too."""
        return self.filter(pk__in=Routine.standards.through.objects.filter(standard__code=code).values("routine_id"))

    def showing(self, families: Iterable[str]) -> Self:
        """Routines whose grid shows a pattern of any of these families; scattered landmarks show nothing."""
        return self._with_bits(bits_of(families))

    def staying_for_a_while(self) -> Self:
        """Routines with a pattern that holds only for a while."""
        return self._with_bits(FOR_A_WHILE)

    def _with_bits(self, bits: int) -> Self:
        return self.annotate(**{f"bits_{bits}": F("shows").bitand(bits)}).filter(**{f"bits_{bits}__gt": 0})

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

    def matching(self, text: str) -> "RoutineQuerySet":
        """Every word of the text, up to the twelfth, begins a word in title, story, count, patterns or standards."""
        return self.meeting(asked_for(text)[:MOST_WORDS_LOOKED_FOR])

    def meeting(self, words: Sequence[Asked]) -> "RoutineQuerySet":
        """Routines with all of these words."""
        return met(words).among(self) if words else self

    def taught_when(self, when: str, user: User, year: SchoolYear | None) -> Self:
        """when: "ever", "not-yet", or "this-year", by the numbers the user is told, so that a filter tells no more."""
        if when == "this-year" and year is None:
            return self.none()
        told = told_as_taught(user, year if when == "this-year" else None)
        return self.exclude(told) if when == "not-yet" else self.filter(told)

    def for_cards(self) -> Self:
        return self.select_related("owner", "grade", "band", "current_version")

    def with_document(self) -> Self:
        """Adds `document`: the saved plan as the text that is stored; None where a damaged row names no save."""
        return self.annotate(document=Cast("current_version__plan", models.TextField()))

    def as_cards(self, *further: str) -> Self:
        """What a card is made of, and no more, for lists are long. further: columns besides."""
        return self.select_related("grade").with_document().only(*ON_A_CARD, *further)


@compiled_once
def routines_written_with(user: User) -> models.QuerySet[models.Model, int]:
    """The keys of those of which she is co-author."""
    return Routine.co_authors.through.objects.filter(user_id=user.pk).values_list("routine_id", flat=True)


def tell_times_taught(routines: Iterable["Routine"], user: User, year: SchoolYear | None) -> None:
    """Sets `times_taught` of each: the lessons of this year that coverage counts, as far as the user is told of them.

    In one query for all. Of lessons that she does not know of anyway she is told only where two classes or more had them,
    so that no number points at one class. What is left out counts as nothing: that something was left out would tell it.
    """
    listed = list(routines)
    grades: set[int] = set()
    if not (user.is_coach or user.is_administrator):
        grades = {group.grade_id for group in classes_of(user) if year and group.year_id == year.pk}
    told: Counter[int] = Counter()
    untold: dict[int, Counter[int]] = defaultdict(Counter)
    for routine, group, grade, teacher, lessons in _times(year, [routine.pk for routine in listed]):
        if user.is_coach or teacher == user.pk or grade in grades:
            told[routine] += lessons
        else:
            untold[routine][group] += lessons
    for routine, groups in untold.items():
        if len(groups) >= CLASSES_TO_BE_TOLD:
            told[routine] += groups.total()
    for one in listed:
        one.times_taught = told[one.pk]


@compiled_once
def _times(
    year: SchoolYear | None, routines: list[int]
) -> models.QuerySet[TimesTaught, tuple[int, int, int, int, int]]:
    rows = TimesTaught.objects.filter(year=year, routine__in=routines)
    return rows.values_list("routine", "class_group", "grade", "teacher", "lessons")


def names_no_save(routine: int) -> UnreadablePlan:
    """Of a damaged row."""
    return UnreadablePlan(routine, "plan", gettext("It names no save as its newest one."))


class Routine(models.Model):
    times_taught: int  # where `tell_times_taught` told it
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
    # What the stored patterns say, as one number: `shown_families.shown_bits`.
    shows = models.PositiveIntegerField(default=0)

    objects = RoutineQuerySet.as_manager()

    class Meta:
        ordering = ["-created_at", "-pk"]
        indexes = [
            models.Index(fields=["status", "grade", "area"], name="routine_bank"),
            models.Index(fields=["owner", "status", "-shared_at", "-id"], name="routine_of_owner"),
            # A page of the bank is looked for in one of these alone, whatever filters are on; then its rows are read.
            models.Index(fields=["status", "-shared_at", "-id", *FILTERED_BY], name="routine_newest"),
            models.Index(fields=["status", "title", "-id", *FILTERED_BY], name="routine_by_title"),
            # The same for one grade, which is asked for most: nothing of the others is looked through.
            models.Index(fields=["status", "grade", "-shared_at", "-id", *FILTERED_BY[1:]], name="routine_of_grade"),
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
            raise names_no_save(self.pk)
        return self.current_version

    def is_author(self, user: User) -> bool:
        return self.owner_id == user.pk or self.is_co_author(user)

    def is_co_author(self, user: User) -> bool:
        return any(author.pk == user.pk for author in self.co_authors.all())

    def may_edit(self, user: User) -> bool:
        """Owner and co-authors; of a shared routine also any coach (kept in history)."""
        return self.is_author(user) or (self.status == self.Status.SHARED and user.is_coach)

    def may_retire(self, user: User) -> bool:
        return self.status != self.Status.DRAFT and (self.owner_id == user.pk or user.is_coach or user.is_administrator)

    @transaction.atomic
    def share(self) -> None:
        """Put the routine into the bank."""
        self.status = self.Status.SHARED
        self.shared_at = timezone.now()
        self.save(update_fields=["status", "shared_at"])
        self._count_again()

    @transaction.atomic
    def retire(self) -> None:
        """Take the routine out of the bank; lessons and copies keep it."""
        self.status = self.Status.RETIRED
        self.save(update_fields=["status"])
        self._count_again()

    def _count_again(self) -> None:
        """Where it stands by now: it may have been saved for another grade, or handed on, since it was read."""
        now = Routine.objects.filter(pk=self.pk)
        count_bank_again(now.values_list("grade", "area"))
        look_for_owners_again(now.values_list("owner", flat=True))


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
