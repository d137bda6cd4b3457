"""Every address of the app, one file per app."""

from django.urls import include, path

from .views import favicon

urlpatterns = [
    path("favicon.ico", favicon, name="favicon"),
    path("", include("accounts.urls")),
    path("", include("grade_bands.urls")),
    path("", include("routines.urls")),
]

handler500 = "config.full_disk.server_error"
