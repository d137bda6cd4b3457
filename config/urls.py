"""Every address of the app, one file per app."""

from django.urls import include, path

from .views import favicon, kept_backups

urlpatterns = [
    path("favicon.ico", favicon, name="favicon"),
    path("school/backups/", kept_backups, name="backups"),
    path("", include("accounts.urls")),
    path("", include("grade_bands.urls")),
    path("", include("routines.urls")),
]

handler500 = "config.views.server_error"
