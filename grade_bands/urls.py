"""Addresses of set-up, classes, years, grades and standards."""

from django.urls import path

from .views import classes, grades, set_up, turning

app_name = "grade_bands"
urlpatterns = [
    path("set-up/", set_up.set_up, name="set_up"),
    path("school/classes/", classes.classes, name="classes"),
    path("school/classes/new/", classes.edit_class, name="new_class"),
    path("school/classes/<int:pk>/", classes.edit_class, name="edit_class"),
    path("school/classes/<int:pk>/remove/", classes.remove_class, name="remove_class"),
    path("school/years/new/", turning.new_year, name="new_year"),
    path("school/years/<int:pk>/", classes.edit_year, name="edit_year"),
    path("school/years/<int:pk>/remove/", classes.remove_year, name="remove_year"),
    path("school/years/<int:pk>/carry-over/", turning.carry_over, name="carry_over"),
    path("school/grades/", grades.grades, name="grades"),
    path("school/grades/new/", grades.edit_grade, name="new_grade"),
    path("school/grades/<int:pk>/", grades.edit_grade, name="edit_grade"),
    path("school/bands/new/", grades.edit_band, name="new_band"),
    path("school/bands/<int:pk>/", grades.edit_band, name="edit_band"),
    path("school/standards/common-core/", grades.import_common_core, name="import_common_core"),
    path("school/standards/import/", grades.import_standards, name="import_standards"),
    path("school/standards/keep/", grades.keep_standards, name="keep_standards"),
]
