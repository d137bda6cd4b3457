"""Every address of the app, one file per app."""

from django.urls import include, path

urlpatterns = [
    path("", include("accounts.urls")),
    path("", include("grade_bands.urls")),
    path("", include("routines.urls")),
]

handler500 = "config.full_disk.server_error"
