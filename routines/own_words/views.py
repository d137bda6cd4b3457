"""The page of what is kept, and all of one's own words as a file."""

from uuid import UUID

from django.contrib import messages
from django.http import Http404, HttpResponse
from django.shortcuts import redirect, render
from django.utils.translation import gettext as _
from django.views.decorators.cache import never_cache
from django.views.decorators.http import require_GET, require_http_methods, require_POST

from accounts.fragments import wants_fragment
from accounts.requests import SignedInRequest
from routines.jobs.queue import QueueFull
from routines.models import Job, JobFile

from .making import gathered_for, start_gathering
from .what_is_kept import KEPT


@require_GET
def what_is_kept(request: SignedInRequest) -> HttpResponse:
    return render(request, "own_words/what_is_kept.html", {"kept": KEPT})


@require_http_methods(["GET", "POST"])
def own_words(request: SignedInRequest) -> HttpResponse:
    """How far it is, and the file once it is ready; POST asks for a new one."""
    job = gathered_for(request.user)
    if request.method == "POST":
        try:
            if job is None or job.finished:
                start_gathering(owner=request.user)
        except QueueFull as full:
            messages.error(request, str(full))
        return redirect("own_words")
    template = "own_words/_progress.html" if wants_fragment(request) else "own_words/own_words.html"
    return render(request, template, {"job": job})


def _job(request: SignedInRequest, key: UUID) -> Job:
    job = gathered_for(request.user, key)
    if job is None:
        raise Http404
    return job


@require_POST
def drop_words(request: SignedInRequest, key: UUID) -> HttpResponse:
    """No longer wanted: nobody goes on with it, and a ready file is gone."""
    _job(request, key).delete()
    messages.info(request, _("The file is removed."))
    return redirect("own_words")


@never_cache
@require_GET
def words_zip(request: SignedInRequest, key: UUID) -> HttpResponse:
    file = JobFile.objects.filter(job=_job(request, key)).first()
    if file is None:
        raise Http404
    return HttpResponse(
        bytes(file.content),
        content_type="application/zip",
        headers={"Content-Disposition": 'attachment; filename="my-words.zip"'},
    )
