"""Prints of a routine: the page to choose from, and each print as a PDF or as a page for the browser's own printing."""

from django.http import Http404, HttpResponse
from django.shortcuts import get_object_or_404, render
from django.utils.text import slugify
from django.views.decorators.http import require_GET

from accounts.requests import SignedInRequest
from routines.models import Lesson, Routine
from routines.models.shown_plan import ShownPlan
from routines.paper.document import Document
from routines.paper.forms.prints import LANGUAGES, PrintForm
from routines.paper.press import PaperError
from routines.paper.prints import PRINTS, document_of
from routines.paper.subject import Subject

LESSONS_OFFERED = 12


def _routine(request: SignedInRequest, pk: int) -> Routine:
    return get_object_or_404(Routine.objects.visible_to(request.user).for_cards(), pk=pk)


def _form(request: SignedInRequest, routine: Routine) -> PrintForm:
    lessons = Lesson.objects.open_to(request.user).filter(routine=routine).select_related("class_group", "version")
    return PrintForm(request.GET if request.GET else {}, lessons=lessons)


@require_GET
def print_page(request: SignedInRequest, pk: int) -> HttpResponse:
    return _choose(request, _routine(request, pk))


def _choose(request: SignedInRequest, routine: Routine, form: PrintForm | None = None) -> HttpResponse:
    lessons = Lesson.objects.open_to(request.user).filter(routine=routine).select_related("class_group")
    shown = ShownPlan(routine.plan, routine.grade.level)
    context = {
        "section": "bank",
        "routine": routine,
        "shown": shown,
        "prints": [(name, one, one.picture(shown)) for name, one in PRINTS.items()],
        "languages": [choice for choice in LANGUAGES if choice[0]],
        "chosen_language": shown.plan.language,
        "lessons": lessons[:LESSONS_OFFERED],
        "older_lessons": max(0, lessons.count() - LESSONS_OFFERED),
        "errors": form.errors.as_data() if form is not None else {},
    }
    return render(request, "paper/print.html", context, status=422 if form is not None else 200)


@require_GET
def plan_pdf(request: SignedInRequest, pk: int) -> HttpResponse:
    return print_pdf(request, pk, "plan")


@require_GET
def print_pdf(request: SignedInRequest, pk: int, name: str) -> HttpResponse:
    """One print as a PDF, by its name in PRINTS."""
    routine = _routine(request, pk)
    form = _form(request, routine)
    document = _document(request, routine, form, name)
    if document is None:
        return _choose(request, routine, form)
    try:
        pdf = document.pdf()
    except PaperError as error:
        context = {
            "section": "bank",
            "routine": routine,
            "error": error,
            "name": name,
            "query": request.GET.urlencode(),
        }
        return render(request, "paper/no_paper.html", context, status=503)
    file = f"{slugify(routine.title) or 'count'}-{name}-version-{routine.newest_save.number}.pdf"
    return HttpResponse(
        pdf, content_type="application/pdf", headers={"Content-Disposition": f'inline; filename="{file}"'}
    )


@require_GET
def print_html(request: SignedInRequest, pk: int, name: str) -> HttpResponse:
    """The same sheets as a page that the browser prints."""
    routine = _routine(request, pk)
    form = _form(request, routine)
    document = _document(request, routine, form, name)
    if document is None:
        return _choose(request, routine, form)
    return HttpResponse(document.html(for_browser=True))


def _document(request: SignedInRequest, routine: Routine, form: PrintForm, name: str) -> Document | None:
    """The document, or None where the form has errors. A lesson's poster prints the plan that the lesson taught."""
    if name not in PRINTS:
        raise Http404
    if not form.is_valid():
        return None
    wishes = form.wishes()
    version = wishes.lesson.version if wishes.lesson else routine.newest_save
    version.routine = routine
    return document_of(name, Subject(version, request.school, form.cleaned_data["language"]), wishes)
