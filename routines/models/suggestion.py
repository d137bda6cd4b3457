"""A count suggested to a teacher or to a team. Others never see what became of it."""

from typing import Self

from django.conf import settings
from django.db import models
from django.db.models import Exists, OuterRef, Q
from django.utils import timezone
from django.utils.translation import gettext
from django.utils.translation import gettext_lazy as _

from accounts.models import User
from grade_bands.models import ClassGroup, SchoolYear

from .routine import title_for


class SuggestionQuerySet(models.QuerySet["Suggestion"]):
    def visible_to(self, user: User) -> Self:
        """What the user made, was sent, or what went to a team in which she teaches."""
        return self.filter(Q(by=user) | self._received(user, SchoolYear.objects.now()))

    def sent_to(self, user: User, year: SchoolYear | None) -> Self:
        """What she was sent herself or through a team; never what she sent. A team is who teaches together in that year."""
        return self.filter(self._received(user, year)).exclude(by=user)

    def answered_by(self, user: User, *answers: str) -> Self:
        return self.filter(Exists(self._answers(user).filter(answer__in=answers)))

    def waiting_for(self, user: User) -> Self:
        """What she has not answered, or kept for later: she has one answer to each, or none."""
        return self.filter(~Exists(self._answers(user).exclude(answer=SuggestionAnswer.Answer.KEPT)))

    def with_taken(self) -> Self:
        """Adds `taken`: somebody took it. That is all its sender is told, and never who."""
        took = SuggestionAnswer.objects.filter(suggestion=OuterRef("pk"), answer=SuggestionAnswer.Answer.TAKEN)
        return self.annotate(taken=Exists(took))

    def with_titles_for(self, user: User) -> Self:
        """Adds `title` and `routine_open`, as lessons have them: a count may leave the bank after it was suggested."""
        title, is_open = title_for(user, "routine")
        return self.annotate(title=title, routine_open=is_open)

    def in_words(self) -> Self:
        """With all whose names stand beside it."""
        return self.select_related("by", "to_teacher", "to_band", "to_grade")

    @staticmethod
    def _received(user: User, year: SchoolYear | None) -> Q:
        classes = ClassGroup.objects.taught_by(user).in_year(year).order_by()
        return (
            Q(to_teacher=user)
            | Exists(classes.filter(grade__band=OuterRef("to_band")))
            | Exists(classes.filter(grade=OuterRef("to_grade")))
        )

    @staticmethod
    def _answers(user: User) -> "models.QuerySet[SuggestionAnswer]":
        return SuggestionAnswer.objects.filter(suggestion=OuterRef("pk"), person=user)


class Suggestion(models.Model):
    routine = models.ForeignKey("routines.Routine", on_delete=models.CASCADE, related_name="suggestions")
    by = models.ForeignKey(settings.AUTH_USER_MODEL, on_delete=models.PROTECT, related_name="+")
    to_teacher = models.ForeignKey(
        settings.AUTH_USER_MODEL, null=True, blank=True, on_delete=models.CASCADE, related_name="suggestions"
    )
    to_band = models.ForeignKey(
        "grade_bands.GradeBand", null=True, blank=True, on_delete=models.CASCADE, related_name="suggestions"
    )
    to_grade = models.ForeignKey(
        "grade_bands.Grade", null=True, blank=True, on_delete=models.CASCADE, related_name="suggestions"
    )
    why = models.TextField()
    by_when = models.DateField(null=True, blank=True)
    made_at = models.DateTimeField(default=timezone.now)

    objects = SuggestionQuerySet.as_manager()

    # Only on rows that were asked for them.
    title: str
    routine_open: bool
    taken: bool

    class Meta:
        ordering = ["-made_at", "-pk"]
        constraints = [
            models.CheckConstraint(
                condition=Q(to_teacher__isnull=False, to_band__isnull=True, to_grade__isnull=True)
                | Q(to_teacher__isnull=True, to_band__isnull=False, to_grade__isnull=True)
                | Q(to_teacher__isnull=True, to_band__isnull=True, to_grade__isnull=False),
                name="suggestion_to_a_teacher_or_a_team",
                violation_error_message=_("Suggest the count to one teacher or to one team."),
            )
        ]

    def __str__(self) -> str:
        return f"{self.routine_id} suggested by {self.by_id}"

    @property
    def to_whom(self) -> str:
        """The team, the grade or the colleague, in the middle of a sentence."""
        if self.to_band:
            return gettext("team %(name)s") % {"name": self.to_band.name}
        if self.to_grade:
            return gettext("grade %(name)s") % {"name": self.to_grade.name}
        return self.to_teacher.display_name if self.to_teacher else ""

    @property
    def is_past(self) -> bool:
        """Whether the day by which it was wanted is over."""
        return self.by_when is not None and self.by_when < timezone.localdate()

    @property
    def receiver_left(self) -> bool:
        """Whether it went to one colleague who is no longer here; a team's goes to whoever teaches there."""
        return self.to_teacher is not None and not self.to_teacher.is_active

    def answer(self, person: User, answer: str) -> None:
        """What this person makes of it; a second answer takes the place of the first."""
        SuggestionAnswer.objects.update_or_create(suggestion=self, person=person, defaults={"answer": answer})


class SuggestionAnswer(models.Model):
    """What one of those it was sent to made of a suggestion. Read by herself alone; its sender learns only that it was taken."""

    class Answer(models.TextChoices):
        TAKEN = "taken", _("taken")
        KEPT = "kept", _("kept for later")
        DECLINED = "declined", _("declined")

    suggestion = models.ForeignKey(Suggestion, on_delete=models.CASCADE, related_name="answers")
    person = models.ForeignKey(settings.AUTH_USER_MODEL, on_delete=models.CASCADE, related_name="+")
    answer = models.CharField(max_length=8, choices=Answer.choices)

    class Meta:
        constraints = [models.UniqueConstraint(fields=["suggestion", "person"], name="suggestion_answered_once")]

    def __str__(self) -> str:
        return f"answer to {self.suggestion_id}"
