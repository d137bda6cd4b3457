"""What every page knows without asking: the school, and whether its data are invented."""

from django.http import HttpRequest

from .demo import one_click_sign_in_is_open


def school(request: HttpRequest) -> dict[str, object]:
    return {
        "school": getattr(request, "school", None),
        "demo_sign_in": one_click_sign_in_is_open(request),
    }
