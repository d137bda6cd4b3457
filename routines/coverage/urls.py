"""Addresses of coverage."""

from django.urls import path

from routines.coverage import files, standard_files, standard_views, views

urlpatterns = [
    path("coverage/", views.coverage_page, name="coverage"),
    path("coverage/coverage.csv", files.coverage_csv, name="coverage_csv"),
    path("coverage/coverage.pdf", files.coverage_pdf, name="coverage_pdf"),
    path("coverage/print/", files.coverage_print, name="coverage_print"),
    path("coverage/standards/", standard_views.standards_page, name="coverage_standards"),
    path("coverage/standards/coverage.csv", standard_files.standards_csv, name="coverage_standards_csv"),
    path("coverage/standards/coverage.pdf", standard_files.standards_pdf, name="coverage_standards_pdf"),
    path("coverage/standards/print/", standard_files.standards_print, name="coverage_standards_print"),
    path("coverage/<int:grade>/standards/<int:standard>/", standard_views.standard_cell, name="coverage_standard"),
    path("coverage/<int:grade>/<slug:area>/", views.cell, name="coverage_cell"),
]
