"""Addresses of the bank and of one count."""

from django.urls import path

from routines.bank.views import bank, mine, routine

urlpatterns = [
    path("bank/", bank.bank, name="bank"),
    path("routines/<int:pk>/", routine.routine, name="routine"),
    path("routines/<int:pk>/copy/", routine.copy, name="routine_copy"),
    path("routines/<int:pk>/share/", routine.share, name="routine_share"),
    path("routines/<int:pk>/retire/", routine.retire, name="routine_retire"),
    path("routines/<int:pk>/notes/", routine.add_note, name="routine_note"),
    path("routines/<int:pk>/compare/", routine.compare, name="routine_compare"),
    path("routines/<int:pk>/co-authors/", routine.co_authors, name="routine_co_authors"),
    path("plans/", mine.my_plans, name="my_plans"),
]
