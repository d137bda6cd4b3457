"""Addresses of files, out and in."""

from django.urls import path

from routines.exchange import views

urlpatterns = [
    path("routines/<int:pk>/file.json", views.export_routine, name="export_routine"),
    path("routines/<int:pk>/grid.csv", views.export_grid, name="export_grid"),
    path("bank.json", views.export_bank, name="export_bank"),
    path("import/", views.import_file, name="import"),
    path("import/<uuid:key>/", views.import_look, name="import_look"),
    path("import/<uuid:key>/add/", views.import_add, name="import_add"),
    path("import/<uuid:key>/progress/", views.import_progress, name="import_progress"),
    path("import/<uuid:key>/stop/", views.import_stop, name="import_stop"),
    path("file-format.json", views.file_schema, name="file_schema"),
]
