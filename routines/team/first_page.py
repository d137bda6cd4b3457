"""What the first page shows: what waits for this person, by what she does at the school. Every list is bounded."""

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import date, timedelta

from django.db.models import Q, QuerySet
from django.utils import timezone
from django.utils.safestring import SafeString
from django.utils.translation import gettext as _
from django.utils.translation import ngettext

from accounts.compiled_once import compiled_once
from accounts.models import RecoveryCode, School, User
from accounts.templatetags.dates import day
from accounts.translated import Translated
from accounts.written_once import Later, written_once
from grade_bands.models import ClassGroup, SchoolYear
from routines.coverage.queries import CoverageCell, coverage, gaps
from routines.models import Lesson, PlanDraft, Routine, RoutineNote, Suggestion
from routines.models.routine import routines_written_with
from routines.team.small_counts import pictures_of

NEW_COUNTS = 6
SHARED_LESSONS = 5
NOTES = 4
NOTES_TO_SELF = 3
DRAFTS = 4
GAPS = 6
SENT = 6
# What she noted last year about these weeks: from so long before today, a year ago, to so long after.
WEEKS_BACK, WEEKS_AHEAD = timedelta(weeks=1), timedelta(weeks=3)
YEAR = timedelta(days=364)
# So long before the school year ends its successor may well be made.
YEAR_ENDS_SOON = timedelta(days=45)
TOLD_OF_RECOVERY = timedelta(days=30)


@dataclass(frozen=True, slots=True)
class SmallCount:
    """A count with its small grid as SVG, None where it names no plan."""

    routine: Routine
    picture: Later[SafeString] | None

    @property
    def html(self) -> SafeString:
        count = self.routine
        return written_once(
            "team/_new_count.html",
            pk=count.pk,
            title=count.title,
            grade=count.grade.name,
            who=count.owner.display_name,
            shared_at=count.shared_at,
            picture=self.picture,
        )


def with_grids(routines: Sequence[Routine]) -> list[SmallCount]:
    """They come `as_cards`, and the reader may open them."""
    pictures = pictures_of(routines)
    return [SmallCount(routine, pictures.get(routine.pk)) for routine in routines]


def own_drafts(user: User) -> list[Routine]:
    return _own_drafts(user, routines_written_with(user))


@compiled_once
def _own_drafts(user: User, joined: list[int]) -> QuerySet[Routine]:
    drafts = Routine.objects.owned_or_among(user, joined).filter(status=Routine.Status.DRAFT)
    return drafts.select_related("grade").only("title", "grade__name")[:DRAFTS]


@compiled_once
def new_in_the_bank(user: User) -> QuerySet[Routine]:
    """What colleagues put into the bank, the latest first."""
    by_others = Routine.objects.in_bank().exclude(owner=user).order_by("-shared_at", "-pk")
    return by_others.as_cards("shared_at", "owner__display_name").select_related("owner")[:NEW_COUNTS]


@compiled_once
def shared_lessons(user: User) -> QuerySet[Lesson]:
    """What colleagues shared about their lessons."""
    shared = Lesson.objects.open_to(user).exclude(teacher=user).exclude(reflection=None)
    shared = shared.exclude(sharing=Lesson.Sharing.ONLY_ME)  # none of those are left; said as the index says it
    shared = shared.with_titles_for(user).select_related("class_group", "reflection")
    return shared.only("key", "taught_on", "class_group__name", "reflection__outcome")[:SHARED_LESSONS]


@compiled_once
def notes_on_own_counts(user: User) -> QuerySet[RoutineNote]:
    """What colleagues wrote on counts that are hers."""
    mine = RoutineNote.objects.visible_to(user).filter(routine__owner=user).exclude(by=user)
    return mine.select_related("routine", "by").only("at", "text", "routine__title", "by__display_name")[:NOTES]


def noted_for_now(user: User, planned: Sequence[int], today: date) -> list[Lesson]:
    """Her lessons with a note to herself: about a count that is planned now, or from these weeks of the year before."""
    then = today - YEAR
    return _noted(user, sorted(set(planned)), then - WEEKS_BACK, then + WEEKS_AHEAD)


@compiled_once
def _noted(user: User, planned: list[int], first: date, last: date) -> QuerySet[Lesson]:
    about = Q(routine__in=planned) | Q(taught_on__range=(first, last))
    noted = Lesson.objects.taught_by(user).filter(about).exclude(reflection=None).exclude(reflection__to_next_year="")
    noted = noted.with_titles_for(user).select_related("class_group", "reflection")
    return noted.only("taught_on", "class_group__name", "reflection__to_next_year")[:NOTES_TO_SELF]


@compiled_once
def unfinished(user: User) -> QuerySet[PlanDraft]:
    return PlanDraft.objects.of(user).with_titles_for(user)[:DRAFTS]


def first_gaps(user: User, today: date) -> list[CoverageCell]:
    """Where a grade expects an area of which the bank holds nothing for it."""
    year = SchoolYear.objects.on(today)
    if year is None:
        return []
    last = max(min(today, year.ends_on), year.starts_on)
    return gaps(coverage(user=user, year=year, first=year.starts_on, last=last))[:GAPS]


@compiled_once
def sent_by(user: User) -> QuerySet[Suggestion]:
    return Suggestion.objects.filter(by=user).with_titles_for(user).with_taken().in_words()[:SENT]


@dataclass(frozen=True, slots=True)
class ToDo:
    """Something an administrator may want to see to. view: the name of the page where it is done; key: of what."""

    sentence: str
    label: Translated
    view: str
    key: int | None = None


def to_do(today: date) -> list[ToDo]:
    """What the school needs before people can go on; nothing where all is in order."""
    year = SchoolYear.objects.on(today)
    if year is None:
        return [
            *ways_back_in(),
            ToDo(_("There is no school year yet, so there are no classes."), _("Add a year"), "grade_bands:new_year"),
        ]
    found = ways_back_in()
    if today > year.ends_on - YEAR_ENDS_SOON and not SchoolYear.objects.filter(starts_on__gt=year.starts_on).exists():
        words = _("The school year %(year)s ended on %(day)s.") if today > year.ends_on else _(
            "The school year %(year)s ends on %(day)s, and there is no next one yet."
        )  # fmt: skip
        said = {"year": year.name, "day": day(year.ends_on)}
        found.append(ToDo(words % said, _("Add a year"), "grade_bands:new_year"))
    classes = ClassGroup.objects.in_year(year)
    empty = list(
        classes.exclude(teachers__in=User.objects.active()).in_grade_order().values_list("name", flat=True)[:NOTES]
    )
    if not classes.exists():
        found.append(ToDo(_("This school year has no classes yet."), _("Add a class"), "grade_bands:new_class"))
    elif empty:
        words = ngettext(
            "Nobody teaches this class: %(names)s.", "Nobody teaches these classes: %(names)s.", len(empty)
        )
        found.append(ToDo(words % {"names": ", ".join(empty)}, _("Classes and years"), "grade_bands:classes"))
    teachers = User.objects.active().filter(role=User.Role.TEACHER).exclude(class_groups__in=classes)
    idle = list(teachers.in_name_order().values_list("display_name", flat=True)[:NOTES])
    if idle and classes.exists():
        words = ngettext("Has no class this year: %(names)s.", "Have no class this year: %(names)s.", len(idle))
        found.append(ToDo(words % {"names": ", ".join(idle)}, _("Classes and years"), "grade_bands:classes"))
    for person in leavers(NOTES):
        sentence = _("%(name)s has left, and counts still stand in that name.") % {"name": person.display_name}
        found.append(ToDo(sentence, _("Hand them on"), "hand_on", person.pk))
    return found


def ways_back_in() -> list[ToDo]:
    """So that no forgotten passphrase shuts the school. In the demo school everybody walks in with one click."""
    if School.objects.current().is_demo:
        return []
    found = []
    used = RecoveryCode.objects.last_used()
    if used and used.used_at and used.used_by and used.used_at > timezone.now() - TOLD_OF_RECOVERY:
        sentence = _(
            "On %(day)s %(name)s came in with the recovery code. Was it somebody else? Make a link for a new passphrase now."
        )
        said = {"day": day(used.used_at), "name": used.used_by.display_name}
        found.append(ToDo(sentence % said, _("People"), "accounts:people"))
    if User.objects.administrators().count() == 1:
        sentence = _("The school has one administrator. Two are better: each can help the other back in.")
        found.append(ToDo(sentence, _("People"), "accounts:people"))
    if not RecoveryCode.objects.usable().exists():
        sentence = _("There is no recovery code on paper yet, for a lost passphrase that nobody else can mend.")
        found.append(ToDo(sentence, _("Make one"), "accounts:recovery_code"))
    return found


def leavers(at_most: int) -> list[User]:
    """Those whose account is closed and who still own counts of the bank."""
    gone = User.objects.filter(is_active=False, owned_routines__status=Routine.Status.SHARED)
    return list(gone.distinct().in_name_order()[:at_most])
