"""One routine: its grid, whose patterns light up their cells, its whole plan, where it came from and how it went."""

from collections.abc import Callable
from datetime import date, datetime
from functools import partial
from typing import Any, NamedTuple, TypeVar
from uuid import UUID

from django.contrib import messages
from django.core.exceptions import PermissionDenied
from django.db.models import QuerySet
from django.http import Http404, HttpResponse
from django.shortcuts import get_object_or_404, redirect, render
from django.urls import reverse
from django.utils import timezone
from django.utils.safestring import SafeString
from django.utils.translation import gettext as _
from django.views.decorators.http import require_GET, require_POST
from django.views.decorators.vary import vary_on_headers

from accounts.compiled_once import CompiledOnce, compiled_once, hold
from accounts.fragments import wants_fragment
from accounts.models import User
from accounts.requests import SignedInRequest
from accounts.sent_once import SentBefore, keep_once
from accounts.typed_numbers import typed_id
from accounts.written_once import Later, write, written_once
from grade_bands.models import SchoolYear, Standard
from routines import worked_out
from routines.bank.alike import alike
from routines.bank.cards import cards_of
from routines.bank.forms.co_author import CoAuthorForm, may_be_taken_in
from routines.bank.forms.note import NoteForm
from routines.bank.pattern_list import pattern_list
from routines.bank.shown_picture import ShownPicture, shown_picture
from routines.lessons.noticed import noticed_at
from routines.models import Lesson, Routine, RoutineNote, RoutineVersion
from routines.models.facts import count_in_words
from routines.models.plan_differences import changes_between
from routines.models.routine import NOT_IN_BANK, tell_times_taught
from routines.models.shown_plan import ShownPlan
from routines.plans.actions import copy_routine
from routines.plans.suggestions.counted_before import notes_to_self
from routines.templatetags.countfold import times_taught
from routines.words_erased.late_words import what_went

NOTES_AT_FIRST = 20
LESSONS_AT_FIRST = 6
VERSIONS_AT_FIRST = 8
COPIES_AT_FIRST = 6

ON_ITS_PAGE = (
    "title", "status", "area", "kind", "direction", "line_length", "step_numerator", "step_denominator",
    "copied_from", "current_version", "owner__display_name", "grade__name", "grade__level",
)  # fmt: skip

R = TypeVar("R")


@require_GET
@vary_on_headers("HX-Request", "HX-History-Restore-Request")
def routine(request: SignedInRequest, pk: int) -> HttpResponse:
    year = SchoolYear.objects.on(timezone.localdate())
    found = next(iter(_opened(request.user, pk)), None)
    if found is None:
        raise Http404
    said = _what_it_says(request, worked_out.shown_now(found))
    if wants_fragment(request):
        piece = "bank/_pictures.html" if request.htmx.target == "pictures" else "bank/_lit_grid.html"
        return HttpResponse(write(piece, **said))
    hold(found, "co_authors", co_authors_of(found))
    like_it = alike(found)
    tell_times_taught([found, *like_it], request.user, year)
    written = _writing(request)
    context = {
        "section": "bank",
        "routine": found,
        "head": written("bank/_routine_head.html", **_head(request, found), plan=said["plan"], says=said["says"]),
        "plan": written("bank/_routine_plan.html", **said),
        "went": written(
            "bank/_routine_went.html",
            **_lessons(request, found),
            **_lineage(request, found),
            notes_to_self=tuple(notes_to_self(request.user, routine=found)),
            asked=said["asked"],
        ),
        "together": _writing_together(request, found),
        "is_co_author": found.is_co_author(request.user),
        "alike": cards_of(like_it, reader=request.user),
        **_notes(request, found),
        "note_fields": written_once("bank/_note_fields.html", note_form=NoteForm),
        "may_edit": found.may_edit(request.user),
        "may_share": found.status == Routine.Status.DRAFT and found.is_author(request.user),
        "may_retire": found.may_retire(request.user),
    }
    return render(request, "bank/routine.html", context)


@compiled_once
def _opened(reader: User, pk: int) -> QuerySet[Routine]:
    found = Routine.objects.visible_to(reader).filter(pk=pk).with_document()
    return found.select_related("owner", "grade").only(*ON_ITS_PAGE)


@compiled_once
def co_authors_of(routine: Routine) -> QuerySet[User]:
    return User.objects.filter(co_authored_routines=routine).only("display_name")


@compiled_once
def _standards_of(routine: Routine) -> QuerySet[Standard, str]:
    return Standard.objects.filter(routine=routine).values_list("code", flat=True)


def _newest(
    request: SignedInRequest, name: str, rows: CompiledOnce[..., R], *args: Any, at_first: int
) -> tuple[list[R], int]:
    """The newest rows and how many more there are; with `name`=all in the query string every one."""
    if request.GET.get(name) == "all":
        return rows(*args, at_most=None), 0
    shown = rows(*args, at_most=at_first + 1)
    if len(shown) <= at_first:
        return shown, 0
    return shown[:at_first], rows.queryset(*args, at_most=None).count() - at_first


@compiled_once
def _offered(routine: Routine, owner: int) -> QuerySet[User]:
    return may_be_taken_in(routine, owner).only("display_name")


@compiled_once
def _notes_on(routine: Routine, *, at_most: int | None) -> QuerySet[RoutineNote, tuple[int, int, str, datetime, str]]:
    notes = RoutineNote.objects.filter(routine=routine)
    return notes.values_list("pk", "by", "by__display_name", "at", "text")[:at_most]


@compiled_once
def _shared_about(routine: Routine, reader: User, *, at_most: int | None) -> QuerySet[Lesson]:
    shared = Lesson.objects.shared_about(routine, reader)
    return shared.select_related("reflection", "class_group")[:at_most]


@compiled_once
def _saves_of(routine: Routine, *, at_most: int | None) -> QuerySet[RoutineVersion, tuple[int, datetime, str]]:
    saves = RoutineVersion.objects.filter(routine=routine).newest_first()
    return saves.values_list("number", "at", "by__display_name")[:at_most]


@compiled_once
def _copies_of(routine: Routine, reader: User, *, at_most: int | None) -> QuerySet[Routine, tuple[int, str, str]]:
    copies = Routine.objects.visible_to(reader).filter(copied_from=routine)
    return copies.values_list("pk", "title", "owner__display_name")[:at_most]


class Origin(NamedTuple):
    """What a count was copied from, where that may be opened."""

    title: str
    owner: str


class Head(NamedTuple):
    """What stands above a plan. copied_from: the key of what it was copied from, None for nothing."""

    pk: int
    title: str
    grade: str
    area: str
    owner: str
    co_authors: tuple[str, ...]
    status: str
    copied_from: int | None
    origin: Origin | None


class Taught(NamedTuple):
    """A lesson whose reflection may be read here, and what was noticed."""

    key: UUID
    taught_on: date
    class_name: str
    outcome: str
    noticed: tuple[str, ...]


class Saved(NamedTuple):
    number: int
    at: datetime
    by: str


class Copied(NamedTuple):
    pk: int
    title: str
    owner: str


class Note(NamedTuple):
    pk: int
    by: str
    is_own: bool
    at: datetime
    text: str


class LitGrid(NamedTuple):
    """The drawn grid and its list of patterns."""

    grids: worked_out.Grids
    patterns: SafeString


def _writing(request: SignedInRequest) -> Callable[..., SafeString]:
    """The page as it opens is remembered; what an address chooses of it is written for that address."""
    return write if request.GET else written_once


def _what_it_says(request: SignedInRequest, save: worked_out.Save) -> dict[str, Any]:
    """All that follows from the saved plan, as values of pieces. Asked, they raise UnreadablePlan."""
    says = worked_out.page(save)
    later = partial(Later, says.mark)
    shown = later(lambda: worked_out.shown(save))
    return {
        "says": says,
        "shown": shown,
        "plan": later(lambda: shown().plan),
        "said": later(lambda: [answer for answer in shown().plan.expected if answer.sort != "slip"]),
        "slips": later(lambda: [answer for answer in shown().plan.expected if answer.sort == "slip"]),
        "lit": later(lambda: _lit_grid(request, shown, says)),
        "picture": later(lambda: shown_picture(shown().grid.count, request.GET)),
        "pictures": later(lambda: _pictures(shown_picture(shown().grid.count, request.GET), shown(), says())),
        "asked": Later(request.GET.urlencode(), lambda: request.GET),
    }


def _lit_grid(request: SignedInRequest, shown: Later[ShownPlan], says: Later[worked_out.PageSays]) -> LitGrid:
    """`lit` in the query string says which patterns are lit, two at most.

    `layers`=all asks for the drawing with every pattern waiting in it; without it those of the folded list are left out.
    """
    listed, lit_at_first = says().patterns, says().lit
    every = request.GET.get("layers") == "all"
    keys = [item.key for item in listed]
    asked = [key for key in request.GET.getlist("lit") if key in keys][:2]
    lit = tuple(asked) if "lit" in request.GET else lit_at_first
    as_kept = set(lit) == set(lit_at_first) and not every
    grids = says().grids if as_kept else worked_out.drawn_grids(shown(), listed, lit, every=every)
    return LitGrid(grids, pattern_list(says, lit))


def _pictures(picture: ShownPicture, shown: ShownPlan, says: worked_out.PageSays) -> worked_out.Pictures:
    """The picture that `picture` and `first` in the query string ask for."""
    kept = picture.kind == says.picture and picture.is_first
    return says.pictures if kept else worked_out.drawn_pictures(shown, picture.kind, picture.first)


def _head(request: SignedInRequest, found: Routine) -> dict[str, Any]:
    origin = _origin(request, found)
    authors = tuple(author.display_name for author in found.co_authors.all())
    head = Head(
        found.pk,
        found.title,
        found.grade.name,
        found.get_area_display(),
        found.owner.display_name,
        authors,
        found.status,
        found.copied_from_id,
        Origin(origin.title, origin.owner.display_name) if origin else None,
    )
    return {"routine": head, "hidden_title": NOT_IN_BANK, "for_administrator": request.user.is_administrator}


def _origin(request: SignedInRequest, found: Routine) -> Routine | None:
    """What it was copied from, where that may be opened."""
    if found.copied_from_id is None:
        return None
    return next(iter(_opened(request.user, found.copied_from_id)), None)


def _lessons(request: SignedInRequest, found: Routine) -> dict[str, Any]:
    """The latest lessons whose reflection may be read here."""
    shown, older = _newest(request, "lessons", _shared_about, found, request.user, at_first=LESSONS_AT_FIRST)
    noticed = noticed_at(shown)
    lessons = tuple(
        Taught(
            lesson.key,
            lesson.taught_on,
            lesson.class_group.name,
            lesson.reflection.get_outcome_display(),
            tuple(noticed[lesson.pk]),
        )
        for lesson in shown
    )
    taught = times_taught(found.times_taught, request.user)
    return {"lessons": lessons, "older_lessons": older, "times_taught": found.times_taught, "taught": taught}


def _lineage(request: SignedInRequest, found: Routine) -> dict[str, Any]:
    """The saves of the plan, the copies that others made of it, and the standards that it serves."""
    versions, older = _newest(request, "lineage", _saves_of, found, at_first=VERSIONS_AT_FIRST)
    copies, further = _newest(request, "lineage", _copies_of, found, request.user, at_first=COPIES_AT_FIRST)
    return {
        "versions": tuple(Saved(*version) for version in versions),
        "copies": tuple(Copied(*copy) for copy in copies),
        "further_lineage": older + further,
        "standards": tuple(_standards_of(found)),
    }


def _notes(request: SignedInRequest, found: Routine) -> dict[str, Any]:
    shown, older = _newest(request, "notes", _notes_on, found, at_first=NOTES_AT_FIRST)
    notes = tuple(Note(pk, name, by == request.user.pk, at, text) for pk, by, name, at, text in shown)
    return {"notes": _writing(request)("bank/_notes.html", notes=notes), "older_notes": older}


def _writing_together(request: SignedInRequest, found: Routine) -> SafeString | None:
    """Whom the owner may take in. The form's own widget would draw each of them by a template."""
    if found.owner_id != request.user.pk:
        return None
    return written_once(
        "bank/_together.html",
        field=CoAuthorForm.base_fields["person"],
        co_authors=tuple((author.pk, author.display_name) for author in found.co_authors.all()),
        colleagues=tuple((person.pk, person.display_name) for person in _offered(found, found.owner_id)),
    )


@require_POST
def copy(request: SignedInRequest, pk: int) -> HttpResponse:
    found = get_object_or_404(Routine.objects.visible_to(request.user).select_related("current_version"), pk=pk)

    def make() -> str:
        made = copy_routine(routine=found, by=request.user)
        messages.success(
            request,
            _("This is your own copy of “%(title)s”. Change what you like; the original stays as it is.")
            % {"title": found.title},
        )
        return reverse("plan_edit", kwargs={"pk": made.pk})

    try:
        return keep_once(request, make)
    except SentBefore as before:  # the button of this page carries no words that could be lost
        return redirect(before.address)


@require_POST
def share(request: SignedInRequest, pk: int) -> HttpResponse:
    found = get_object_or_404(Routine.objects.visible_to(request.user), pk=pk)
    if not found.is_author(request.user):
        raise PermissionDenied
    if found.status == Routine.Status.DRAFT:
        found.share()
        messages.success(
            request,
            _("“%(title)s” is in the bank. Every colleague can read, copy and teach it.") % {"title": found.title},
        )
    return redirect("routine", pk=pk)


@require_POST
def retire(request: SignedInRequest, pk: int) -> HttpResponse:
    """Take a routine out of the bank, or put a retired one back (`back=1`)."""
    found = get_object_or_404(Routine.objects.visible_to(request.user), pk=pk)
    if not found.may_retire(request.user):
        raise PermissionDenied
    if request.POST.get("back"):
        found.share()
        messages.success(request, _("“%(title)s” is in the bank again.") % {"title": found.title})
    else:
        found.retire()
        messages.success(
            request, _("“%(title)s” is out of the bank. Its lessons and copies stay.") % {"title": found.title}
        )
    return redirect("routine", pk=pk)


@require_POST
def add_note(request: SignedInRequest, pk: int) -> HttpResponse:
    found = get_object_or_404(Routine.objects.visible_to(request.user), pk=pk)
    form = NoteForm(request.POST)

    def make() -> str:
        RoutineNote.objects.create(routine=found, by=request.user, text=form.cleaned_data["text"])
        return f"{reverse('routine', kwargs={'pk': pk})}#notes"

    if request.words_removed:
        form.add_error(None, what_went(request.words_removed))
    if form.is_valid():
        try:
            return keep_once(request, make)
        except SentBefore as before:
            form.add_error(None, before.sentence)
    fields = write("bank/_note_fields.html", note_form=form)
    return render(request, "bank/note.html", {"section": "bank", "routine": found, "note_fields": fields}, status=422)


@require_GET
def compare(request: SignedInRequest, pk: int) -> HttpResponse:
    """A copy beside the version it was copied from: both grids, and what changed part by part."""
    seen = Routine.objects.visible_to(request.user)
    copy = get_object_or_404(seen.for_cards().select_related("copied_from_version"), pk=pk)
    original = get_object_or_404(seen.select_related("owner", "grade"), pk=copy.copied_from_id)
    if copy.copied_from_version is None:
        raise Http404
    before, after = copy.copied_from_version.read_plan(), copy.plan
    sides = []
    for plan, of in ((before, original), (after, copy)):
        shown = ShownPlan(plan, of.grade.level)
        sides.append((of, plan, shown, count_in_words(shown.grid), [item.pattern for item in shown.lit]))
    context = {
        "section": "bank",
        "routine": copy,
        "original": original,
        "version": copy.copied_from_version,
        "sides": sides,
        "changes": changes_between(before, after, copy.grade.level),
    }
    return render(request, "bank/compare.html", context)


@require_POST
def co_authors(request: SignedInRequest, pk: int) -> HttpResponse:
    """The owner takes a colleague in as co-author, or lets one go (`leave` is the person); a co-author may go herself."""
    found = get_object_or_404(Routine.objects.visible_to(request.user).prefetch_related("co_authors"), pk=pk)
    leaving = typed_id(request.POST.get("leave", ""))
    if leaving == request.user.pk and found.is_co_author(request.user):
        found.co_authors.remove(request.user)
        messages.success(request, _("Your name is off “%(title)s”.") % {"title": found.title})
        return redirect("my_plans") if found.status == Routine.Status.DRAFT else redirect("routine", pk=pk)
    if found.owner_id != request.user.pk:
        raise PermissionDenied
    if "leave" in request.POST:
        person = get_object_or_404(User.objects.filter(co_authored_routines=found), pk=leaving)
        found.co_authors.remove(person)
        messages.success(request, _("%(name)s writes this plan no longer.") % {"name": person.display_name})
        return redirect("routine", pk=pk)
    form = CoAuthorForm(request.POST, routine=found)
    if form.is_valid():
        found.co_authors.add(form.cleaned_data["person"])
        messages.success(
            request,
            _("%(name)s can change this plan now, and save it.") % {"name": form.cleaned_data["person"].display_name},
        )
    else:
        messages.error(request, " ".join(str(error) for errors in form.errors.values() for error in errors))
    return redirect("routine", pk=pk)
