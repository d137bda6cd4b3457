"""Addresses that browsers ask for by themselves."""

from django.contrib.auth.decorators import login_not_required
from django.http import HttpRequest, HttpResponse
from django.shortcuts import redirect
from django.templatetags.static import static
from django.views.decorators.cache import cache_control
from django.views.decorators.http import require_safe


@login_not_required
@cache_control(public=True, max_age=86400)
@require_safe
def favicon(request: HttpRequest) -> HttpResponse:
    """What a browser asks for beside a file that cannot name an icon of its own: a PDF, a table, a JSON document."""
    return redirect(static("img/icon.svg"))
