"""Prints of a routine."""

from django.http import HttpRequest, HttpResponse
from django.shortcuts import get_object_or_404, render
from django.utils.text import slugify
from django.views.decorators.http import require_GET

from routines.models import Routine
from routines.paper.plan_page import plan_page_pdf
from routines.paper.press import PaperError


@require_GET
def plan_pdf(request: HttpRequest, pk: int) -> HttpResponse:
    routine = get_object_or_404(Routine.objects.visible_to(request.user).for_cards(), pk=pk)
    try:
        pdf = plan_page_pdf(routine.current_version, request.school)
    except PaperError as error:
        return render(
            request, "routines/no_paper.html", {"section": "bank", "routine": routine, "error": error}, status=503
        )
    name = f"{slugify(routine.title) or 'count'}-version-{routine.current_version.number}.pdf"
    return HttpResponse(
        pdf, content_type="application/pdf", headers={"Content-Disposition": f'inline; filename="{name}"'}
    )
